package gist

import "strings"

// upSenses are the senses of words about what stacks up the wall.
const upSenses = `
board+stack: boards_high rails_high slats_high planks_high rows_high courses_high
board+stack: one_board_on_top_of_another one_rail_on_top_of_another one_slat_on_top_of_another one_board_over_another one_rail_over_another one_slat_over_another one_board_above_the_other one_rail_above_the_other
lower: lower down below drops falls lies_below sits_below lower_down fall drop deep depth falls_away drops_off
highup: raised up off clear_of clear_off up_off float floats hover hovers sticks_up
top: TOP top tops upmost
topedge: top_edge upper_edge very_top top_of_it top_of_this top_of_the_wall top_of_this_wall top_of_our_wall top_of_this_thing top_of_the_thing top_of_the_whole_thing top_side upper_side highest_point highest_edge
bottom: LOWEST bottom_most bottommost first_board_up undermost
below: UNDER underneath beneath underside
underside: underside under_side lower_edge bottom_edge lower_side bottom_side
above: above over past up_past beyond
stack: stacked stack stacked_up stack_up up_the_wall in_a_stack vertically one_above_another one_above_the_other one_over_the_other one_over_another one_on_top_of_another one_on_top_of_the_other on_top_of_each_other on_top_of_one_another piled_up
few: few fewest smallest_number least_number lowest_number minimum_number as_few as_few_as_possible as_few_as
within: in_it in_the_wall in_each in_each_bay in_every_bay in_each_section in_a_bay per_bay up_the_wall per_section per_stretch per_panel each_section every_section
clear: free free_space open open_air
gap: slit slits crack cracks slot slots of_light of_nothing of_daylight of_air of_space of_room breathing_space airspace
apart: spaced spread how_far_apart far_apart away_from_each_other away_from_one_another
many: in_all all_told in_total altogether in_number
wall: whole_thing this_thing the_thing structure rail_wall
high: as_far_as_height_goes in_height height_wise heightwise upward upwards from_top_to_bottom top_to_bottom
fill: fill fills filled to_fill fill_up filled_up make_up makes_up made_up made_up_of occupy occupies contain contains consist consists consisting built_of made_of
finish: finish finishes finish_out finish_up finish_off finished land_at lands_at landing_at end ends top_out tops_out topping_out reach reaches reaching come_up comes_up coming_up come_to comes_to rise rises rising stand_up stands_up that_reaches that_rises that_stands that_comes that_goes reaches_up_to reach_up_to comes_up_to come_up_to rises_to rise_to goes_up_to go_up_to stands_up_to that_reaches_up_to that_comes_up_to that_goes_up_to extend extends wind_up winds_up work_out
measured: measure measures measuring measured taped gauged checked caliper calipers ruler rule tape_measure with_the_caliper with_the_calipers with_a_ruler in_reality in_truth true real reality tape
rest: rest others other_ones everywhere_else elsewhere the_other_gaps other_gaps other_spaces all_the_others throughout
alike: same the_same equal identical matching match matches as_much as_big as_wide as_large just_as_much just_as_big alike
asbottom: same_as_the_bottom same_as_at_the_bottom same_as_below same_as_under as_the_bottom equal_to_the_bottom equal_to_the_space match_the_bottom matching_the_bottom
double: double doubled twice two_times
light: what_i_have_in_mind_is what_i_want_is what_we_want_is what_i_need_is what_we_need_is what_i_am_after_is what_we_are_after_is what_i_picture_is what_i_see_is what_i_would_like_is what_we_would_like_is what_i_would_love_is what_i_would_really_love_is what_i_really_want_is
light: is_what_i_want is_what_we_want is_what_i_am_after is_what_we_are_after is_what_i_see is_what_i_picture is_what_i_have_in_mind is_what_we_need is_what_i_need is_what_i_like is_what_i_would_like is_what_we_would_like is_what_i_settled_on is_what_we_settled_on i_am_after we_are_after
reasonword: because since cause seeing_that given_that seeing_as after
light: and_she_is and_it_is
next: the_one_above the_one_above_it the_one_below the_one_below_it the_one_next_to_it the_next_one the_one_over_it the_one_under_it the_one_beneath_it its_neighbor its_neighbour its_neighbors
under: just_under just_below a_bit_under slightly_under
over: just_over just_above slightly_over
grow: more wider bigger larger taller higher
shrink: less narrower tighter smaller lower shorter
shave: take knock cut shave lop trim chop whack saw
light: sounds_nice sounds_good looks_nice looks_good would_be_nice would_be_good would_look_nice would_look_good would_be_lovely would_be_perfect would_suit_me would_suit_us suits_me suits_us
light: i_settled_on we_settled_on i_decided_on we_decided_on we_have_decided_on i_have_decided_on we_agreed_on we_have_agreed_on i_went_with we_went_with we_are_going_with i_am_going_with i_chose we_chose i_picked we_picked agreed_on settled_on decided_on going_with
tight: tight tightest smallest narrowest closest as_close_as as_tight_as as_small_as close_together
manymost: as_many_as_possible as_many most largest_number greatest_number maximum_number
deny: no never nothing not must_not shall_not should_not may_not can_not cannot could_not will_not ought_not is_not_to are_not_to must_never should_never may_never shall_never can_never will_never do_not_want do_not_let do_not_make do_not_have do_not_put do_not_leave do_not_like would_not_want would_not_like would_not_have no_part no_part_of nowhere
`

// oneBoardSenses are the senses of "one" where it counts nothing: from one board to the next, one of the boards.
var oneBoardSenses = func() string {
	var s strings.Builder
	for _, n := range strings.Fields("board rail slat plank row") {
		s.WriteString("board:")
		for _, t := range strings.Fields("and_the to_the from_the and_another to_another from_another and_its") {
			s.WriteString(" one_" + n + "_" + t)
		}
		for _, t := range strings.Fields("the these those my our your") {
			s.WriteString(" one_of_" + t + "_" + n + "s")
		}
		s.WriteString("\n")
	}
	return s.String()
}()

// upNames are the quantities of what stacks up the wall.
var upNames = []gistName{
	{plain: "gap", fig: figLength | figBare, with: "gap", named: "gap", may: "ihave board between next clear apart wide size measured above"},
	{plain: "gap", fig: figLength | figBare, with: "board apart", named: "", may: "ihave gap clear between next together measured from"},
	{plain: "gap", fig: figLength | figBare, with: "board between", named: "", may: "ihave gap clear apart next measured above from"},
	{plain: "gap", fig: figLength | figBare, with: "board next from", named: "-", may: "ihave gap clear apart measured above"},
	{plain: "gap", fig: figLength | figBare, with: "board top underside next|above", named: "-", may: "ihave gap clear from measured between"},
	{plain: "bottom gap", fig: figLength | figBare, with: "gap|clear|bottom|below|board floor|earth|bottom", named: "gap|below|high bottom|below", may: "ihave board below bottom floor earth gap between clear top from high above highup measured finish underside"},
	{plain: "wall height", fig: figLength | figBare, with: "wall high|top", named: "wall high", may: "ihave top board from floor high above finish measured topedge"},
	{plain: "wall height", fig: figLength | figBare, with: "wall finish", named: "-", may: "ihave from floor high above highup measured"},
	{plain: "wall height", fig: figLength | figBare, with: "topedge", named: "-", may: "ihave wall top board from floor high above highup finish measured"},
	{plain: "wall height", fig: figLength | figBare, with: "top board", named: "-", may: "ihave wall from floor high above highup finish measured topedge"},
	{plain: "gap", fig: figLength, with: "gap change", named: "-", may: "ihave board between apart"},
	{plain: "gap", fig: figLength, with: "board between|apart change", named: "-", may: "ihave "},
	{plain: "bottom gap", fig: figLength, with: "gap|below bottom change", named: "-", may: "ihave board"},
	{plain: "wall height", fig: figLength, with: "wall change", named: "-", may: "ihave top high"},
	{plain: "wall height - #1", figs: []gistFigure{figLength}, with: "shave from top|topedge|wall", named: "-", may: "wall high"},
	{plain: "rails", fig: figCount, with: "board", named: "board many", may: "stack bay wall boards fill within many"},
	{plain: "#1 rails ; rail size is #2", figs: []gistFigure{figCount, figSize}, with: "within|fill wall|board|bay", named: "-", may: "stack fill"},
	{plain: "rail size", fig: figSize, with: "board", named: "board size", may: "wood fill"},
	{plain: "rail face", fig: figLength | figBare, with: "board face", named: "", may: "wide across measured"},
	{plain: "rail face", fig: figLength | figBare, with: "board wide|across measured", named: "-", may: "face"},
}

// upLines are what is wanted of what stacks up the wall without a figure.
var upLines = []gistLine{
	{"fewest rails", "few board", "possible stack bay"},
	{"most rails", "manymost board", "possible stack bay"},
	{"smallest gap", "tight gap|board", "possible gap between"},
	{"bottom gap = gap", "alike below|bottom gap|between", "ihave board between floor rest gap clear bottom below"},
	{"bottom gap = 2 * gap", "double below|bottom gap gap|between", "ihave board between floor rest gap below"},
}
