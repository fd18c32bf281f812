package grammar

// alongSenses are the senses of words about what stands along the wall.
const alongSenses = `
pass: get_through walk_through pass_through come_through squeeze_through fit_through roll_through drive_through push_through pass
beyond: beyond behind past other_side far_side outside on_the_other_side of_the_other_side
outsidefaces: outside_to_outside outside_faces outer_faces out_to_out outside_of
lean: lean leans
plumb: plumb
most: most maximum largest biggest widest greatest as_much_as_possible
equal: EQUAL same identical equal equally evenly alike equal_in_width same_width same_length same_size
`

// alongNames are the quantities of what stands along the wall.
var alongNames = []gistName{
	{plain: "span", fig: figLength | figBare, with: "between post", named: "", may: "next end clear inside apart face gap from long across wide"},
	{plain: "span", fig: figLength | figBare, with: "post apart", named: "", may: "next end clear inside face"},
	{plain: "overall", fig: figLength | figBare, with: "post outsidefaces", named: "", may: "end from next long wide across"},
	{plain: "centers", fig: figLength | figBare, with: "post center", named: "", may: "end between apart from next"},
	{plain: "added posts", fig: figCount, with: "added post", named: "added post many", may: "between"},
	{plain: "bays", fig: figCount, with: "bay", named: "bay many", may: "post between board"},
	{plain: "bay", fig: figLength | figBare, with: "bay long|wide|atmost|atleast", named: "bay wide|long", may: "post between clear size"},
	{plain: "opening", fig: figLength | figBare, with: "opening", named: "opening wide", may: "wide clear pass between size"},
	{plain: "openings", fig: figCount, with: "opening", named: "opening many", may: "pass"},
	{plain: "opening from left", fig: figLength | figBare, with: "opening left from", named: "", may: "post end begin step side added start"},
	{plain: "opening from right", fig: figLength | figBare, with: "opening right from", named: "", may: "post end begin step side added start"},
	{plain: "post height", fig: figLength | figBare, with: "added post high", named: "post high", may: "top from floor next"},
	{plain: "stiffeners", fig: figCount, with: "stiff", named: "stiff many", may: "bay"},
	{plain: "stiffener spacing", fig: figLength | figBare, with: "stiff gap|apart|between|center", named: "", may: "next bay from"},
	{plain: "post size", fig: figSize, with: "post", named: "post size", may: "wood"},
	{plain: "stiffener size", fig: figSize, with: "stiff", named: "stiff size", may: "wood"},
	{plain: "drop", fig: figLength | figBare, with: "earth lower|below", named: "", may: "wall beyond floor than"},
}

// alongLines are what is wanted of what stands along the wall without a figure.
var alongLines = []gistLine{
	{"fewest posts", "few post", "possible added"},
	{"largest opening", "most opening", "possible wide"},
	{"equal bays", "equal bay", "wide long"},
	{"opening side = left", "opening left against|side", "post end wall step"},
	{"opening side = right", "opening right against|side", "post end wall step"},
	{"opening side = middle", "opening middle", "wall side post"},
	{"stiffeners = 0", "stiff not", "bay"},
	{"openings = 0", "opening not", ""},
}
