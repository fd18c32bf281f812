package grammar

// upSenses are the senses of words about what stacks up the wall.
const upSenses = `
board+stack: boards_high rails_high slats_high planks_high rows_high courses_high
lower: lower down below drops falls lies_below sits_below lower_down fall drop deep depth falls_away drops_off
highup: raised up off clear_of
top: TOP top tops
bottom: LOWEST bottom_most first_board_up
below: UNDER underneath beneath
above: above over past up_past beyond
stack: stacked stack stacked_up up_the_wall in_a_stack vertically one_above_another one_above_the_other one_over_the_other
few: few fewest smallest_number least_number lowest_number minimum_number as_few as_few_as_possible as_few_as
manymost: as_many_as_possible as_many most largest_number greatest_number maximum_number
tight: tight tightest smallest narrowest closest as_close_as as_tight_as as_small_as close_together
`

// upNames are the quantities of what stacks up the wall.
var upNames = []gistName{
	{plain: "gap", fig: figLength | figBare, with: "gap", named: "gap", may: "board between next clear apart leave wide size"},
	{plain: "gap", fig: figLength | figBare, with: "board apart", named: "", may: "gap clear between next together"},
	{plain: "gap", fig: figLength | figBare, with: "board between", named: "", may: "gap clear apart next"},
	{plain: "bottom gap", fig: figLength | figBare, with: "gap|clear|bottom|below|board floor|earth|bottom", named: "gap|below|high bottom|below", may: "board below bottom floor earth gap between clear top from high above highup up"},
	{plain: "wall height", fig: figLength | figBare, with: "wall high|top", named: "wall high", may: "top board from floor high above"},
	{plain: "wall height", fig: figLength | figBare, with: "top board", named: "-", may: "wall from floor high above highup"},
	{plain: "rails", fig: figCount, with: "board", named: "board many", may: "stack bay wall boards"},
	{plain: "rail size", fig: figSize, with: "board", named: "board size", may: "wood"},
}

// upLines are what is wanted of what stacks up the wall without a figure.
var upLines = []gistLine{
	{"fewest rails", "few board", "possible stack bay"},
	{"most rails", "manymost board", "possible stack bay"},
	{"smallest gap", "tight gap|board", "possible gap between"},
}
