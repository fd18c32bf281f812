package gist

// alongSenses are the senses of words about what stands along the wall.
const alongSenses = `
bayno:
happen: anything_dreadful anything_bad anything_awful anything_terrible what_would_come_of what_will_come_of what_comes_of come_of_it
stiffgap: between_two_stiffeners between_two_braces between_two_battens between_neighboring_stiffeners between_any_two_stiffeners between_every_two_stiffeners
provided: as_long_as so_long_as
when: morning this_morning yesterday this_afternoon last_night earlier_today just_now today evening
span: from_one_post_to_the_other from_post_to_post post_to_post from_one_end_post_to_the_other from_one_upright_to_the_other
overall: overall over_all
possible: you_can_get_away_with we_can_get_away_with i_can_get_away_with
opening: place_to_walkthrough places_to_walkthrough ways_through spots_to_walkthrough spot_to_walkthrough
right+side: far_right right_end far_right_end right_hand_end extreme_right
left+side: far_left left_end far_left_end extreme_left
railno:
pass: get_through walk_through pass_through come_through squeeze_through fit_through roll_through drive_through push_through pass
opening: to_walkthrough gap_you_walkthrough gap_to_walkthrough space_to_walkthrough space_you_walkthrough hole_to_walkthrough room_to_walkthrough gap_for_the_walkthrough gap_for_the_doorway where_you_walkthrough where_we_walkthrough where_people_walkthrough where_one_walkthrough where_folks_walkthrough you_walkthrough we_walkthrough people_walkthrough to_get_through way_in where_you_get_through where_we_get_through where_you_pass where_people_pass
beyond: beyond behind past other_side far_side outside on_the_other_side of_the_other_side out_there outward
outsidefaces: outside_to_outside outside_faces outer_faces out_to_out outside_of outer_face outside_face outer_side outer_sides outer_edge outer_edges outside_edge outside_edges far_face far_faces outsides measured_over over_all overall outside_dimension outside_measurement
outsidefaces: from_the_outside to_the_outside the_outside on_the_outside
counted: including counting counted included includes posts_and_all post_to_post_inclusive inclusive with_the_posts with_both_posts with_the_end_posts with_both_end_posts
center: centerline centerlines center_line center_lines from_the_center from_the_middle to_the_middle to_the_center middle_to_middle mid_to_mid
lean: lean leans leaning tilts tilt tilting tips tip
leftpost+left+post: left_post left_end_post left_one left_upright left_column left_pillar left_end_one post_on_the_left post_at_the_left post_to_the_left
rightpost+right+post: right_post right_end_post right_one right_upright right_column right_pillar right_end_one the_right_post the_right_end_post the_right_one the_right_upright to_the_right_post to_the_right_end_post to_the_right_one to_the_right_upright on_the_right_post on_the_right_end_post on_the_right_one on_the_right_upright at_the_right_post at_the_right_end_post at_the_right_one at_the_right_upright of_the_right_post of_the_right_end_post of_the_right_one of_the_right_upright from_the_right_post from_the_right_end_post from_the_right_one from_the_right_upright post_on_the_right post_at_the_right post_to_the_right
from+rightpost+right+post: from_the_right_post from_the_right_end_post from_the_right_one
from+post: from_one_post from_one_end_post of_one_post of_one_end_post of_the_one_post of_the_one_end_post from_the_one_post from_the_one_end_post from_one_upright of_one_upright of_one_outer_post from_one_outer_post
other: other other_one of_the_other to_the_other second_one
clear: free open unobstructed empty clearance air clear_space open_space clear_distance free_space
plumb: plumb
most: most maximum largest biggest widest greatest as_much_as_possible as_wide_as as_large_as as_big_as as_roomy_as as_generous_as as_broad_as roomiest
post+few: fewest_posts
equal: EQUAL same identical equal equally evenly alike equal_in_width same_width same_length same_size all_alike
begin: begin begins start starts starting beginning edge near_edge nearest_edge nearer_edge near_side
setin: sink dig dig_in plant drive_in add adding adds added install installing erect erecting plan_on count_on planned put_up putting_in set_up standing
only: only just merely solely single exactly
divide: divide divided split consist consists made_up broken_up broken_into partitioned parted separated_into filled
belong: belong belongs located situated positioned placed over_on far hard tight smack directly right_up straight butted snug go_right goes_right
leaveout: leave_out left_out leaving_out do_without get_by_without manage_without skip omit omitted dispense_with go_without lose without do_away_with
lower: lower_down deeper further_down farther_down below_it lies_lower
higher: higher higher_up raised
slopes: slopes slope sloping falls fall drop drops dropping dips dip sinks runs_downhill downhill sags tilts out_of_level not_level pitches slants
toright: from_left_to_right left_to_right toward_the_right towards_the_right going_right between_the_left_post_and_the_right_post between_the_left_post_and_the_right_one between_the_left_and_the_right from_the_left_post_to_the_right_post from_the_left_post_to_the_right_one from_the_left_to_the_right from_left_post_to_right_post between_left_and_right
thanleft: than_at_the_left than_on_the_left than_the_left than_the_left_one than_at_the_left_one than_the_left_post than_at_the_left_post than_the_left_end than_at_the_left_end than_left than_on_the_left_side than_the_left_side than_over_on_the_left than_by_the_left_post than_over_at_the_left than_at_the_left_side
post+end: the_two_posts the_two_end_posts two_end_posts the_two_outer_posts two_outer_posts these_two_posts those_two_posts my_two_posts our_two_posts both_end_posts the_two_existing_posts the_two_uprights the_two_columns the_two_ends
over+thanwall: higher_than_the_wall taller_than_the_wall higher_than_the_top_of_the_wall above_the_wall over_the_wall above_the_top_of_the_wall over_the_top_of_the_wall past_the_top_of_the_wall beyond_the_top_of_the_wall higher_than_the_wall's_top
thanwall: than_the_wall than_the_top_of_the_wall than_the_wall's_top than_the_wall_does than_the_wall_is than_the_top than_the_top_board than_the_top_rail
level: level by_the_level according_to_the_level by_my_level my_level
taped: tape tapes taped tape_measure tape_says tape_shows tape_reads tape_gives measured measure measures measuring measurement hooked pulled stretched caliper calipers ruler laser
reads: reading reads read in_fact in_reality comes_to come_to come_up_with says shows
than: than
wall: structure
`

// alongNames are the quantities of what stands along the wall.
var alongNames = []gistName{
	{plain: "span", fig: figLength | figBare, with: "between post", named: "", may: "next other end clear inside apart face gap from long across wide left right taped reads when ihave person"},
	{plain: "span", fig: figLength | figBare, with: "span", named: "-", may: "clear gap inside face taped reads when ihave apart between post end"},
	{plain: "span", fig: figLength | figBare, with: "post apart", named: "", may: "next other end clear inside face across left right taped reads when ihave from gap"},
	{plain: "span", fig: figLength | figBare, with: "post inside", named: "", may: "inside face from other next end left right taped reads when ihave clear between apart gap long across wall"},
	{plain: "span", fig: figLength | figBare, with: "post clear other", named: "-", may: "inside face from next end left right taped reads when ihave gap between"},
	{plain: "span", fig: figLength | figBare, with: "face face other", named: "-", may: "post from next end taped reads when ihave clear"},
	{plain: "overall", fig: figLength | figBare, with: "post outsidefaces", named: "", may: "end from next other long wide across left right taped reads when ihave wall face outsidefaces over beyond from"},
	{plain: "overall", fig: figLength | figBare, with: "wall outsidefaces", named: "", may: "end from next other long wide across taped reads when ihave outsidefaces post counted"},
	{plain: "overall", fig: figLength | figBare, with: "overall long", named: "-", may: "wall taped reads when ihave"},
	{plain: "overall", fig: figLength | figBare, with: "counted post long|wall", named: "-", may: "end long wall taped reads when ihave wide setin"},
	{plain: "centers", fig: figLength | figBare, with: "post center", named: "", may: "end between apart from next other left right taped reads when ihave center middle"},
	{plain: "added posts", fig: figCount, with: "added post", named: "added post many", may: "between end setin only other earth"},
	{plain: "added posts", fig: figCount, with: "between end post", named: "-", may: "added setin only post has"},
	{plain: "bays", fig: figCount, with: "bay", named: "bay many", may: "post between board divide wall only"},
	{plain: "bay", fig: figLength | figBare, with: "bay long|wide|atmost|atleast", named: "bay wide|long", may: "post between clear size long wide across only"},
	{plain: "opening", fig: figLength | figBare, with: "opening", named: "opening wide", may: "wide clear pass between size across only"},
	{plain: "opening", fig: figLength | figBare, with: "between opening post added", named: "-", may: "wide pass across end other"},
	{plain: "openings", fig: figCount, with: "opening", named: "opening many", may: "pass only wall"},
	{plain: "opening from left", fig: figLength | figBare, with: "opening left from", named: "", may: "post end begin step side added taped reads when between"},
	{plain: "opening from right", fig: figLength | figBare, with: "opening right from", named: "", may: "post end begin step side added taped reads when between"},
	{plain: "opening from left", fig: figLength | figBare, with: "opening left begin between", named: "-", may: "post end clear gap"},
	{plain: "opening from right", fig: figLength | figBare, with: "opening right begin between", named: "-", may: "post end clear gap"},
	{plain: "post height", fig: figLength | figBare, with: "added post high", named: "post high", may: "top from floor next above"},
	{plain: "post height", fig: figLength | figBare, with: "added post top", named: "-", may: "high from floor above highup"},
	{plain: "post height", fig: figLength | figBare, with: "post top|high floor", named: "-", may: "high from above highup added top"},
	{plain: "post height = wall height +", fig: figLength | figBare, with: "post thanwall", named: "-", may: "top added over higher above"},
	{plain: "post height = wall height +", fig: figLength | figBare, with: "post wall above", named: "-", may: "top added over high highup board"},
	{plain: "stiffeners", fig: figCount, with: "stiff", named: "stiff many", may: "bay only"},
	{plain: "stiffener spacing", fig: figLength | figBare, with: "stiff gap|apart|between|center", named: "", may: "next bay from other gap apart center between only"},
	{plain: "stiffener spacing", fig: figLength | figBare, with: "stiffgap", named: "-", may: "gap apart clear center"},
	{plain: "opening side left ; opening", fig: figLength | figBare, with: "opening left belong|against wide|reads|taped", named: "-", may: "post end across"},
	{plain: "opening side right ; opening", fig: figLength | figBare, with: "opening right belong|against wide|reads|taped", named: "-", may: "post end across"},
	{plain: "post size", fig: figSize, with: "post", named: "post size", may: "wood"},
	{plain: "end post size", fig: figSize, with: "post end", named: "post size end", may: "wood"},
	{plain: "added post size", fig: figSize, with: "post added", named: "post size added", may: "wood"},
	{plain: "stiffener size", fig: figSize, with: "stiff", named: "stiff size", may: "wood cut"},
	{plain: "drop", fig: figLength | figBare, with: "earth lower|below", named: "", may: "wall beyond floor than lower"},
	{plain: "drop", fig: figLength | figBare, with: "beyond lower|slopes", named: "", may: "wall earth floor than lower slopes below"},
	{plain: "floor at right is #1 lower", with: "floor right lower", named: "-", may: "side end post than thanleft level taped reads when", figs: []gistFigure{figLength}},
	{plain: "floor at right is #1 higher", with: "floor right higher", named: "-", may: "side end post than thanleft level taped reads when", figs: []gistFigure{figLength}},
	{plain: "floor at right is #1 lower", with: "floor toright slopes", named: "-", may: "level taped reads when post", figs: []gistFigure{figLength}},
	{plain: "left post leans #1 right in #2", with: "leftpost lean right", named: "-", may: "high over plumb", figs: []gistFigure{figLength, figLength}},
	{plain: "right post leans #1 left in #2", with: "rightpost lean left", named: "-", may: "high over plumb", figs: []gistFigure{figLength, figLength}},
	{plain: "measured @bayno @railno", fig: figLength | figBare, with: "bayno railno taped", named: "-", may: "long taped reads when person"},
	{plain: "measured @bayno top", fig: figLength | figBare, with: "bayno top taped", named: "-", may: "wide long taped reads when across"},
	{plain: "measured @bayno bottom", fig: figLength | figBare, with: "bayno bottom taped", named: "-", may: "wide long taped reads when across lower"},
}

// alongLines are what is wanted of what stands along the wall without a figure.
var alongLines = []gistLine{
	{"fewest posts", "few post", "possible added"},
	{"largest opening", "most opening", "possible wide"},
	{"equal bays", "equal bay", "wide long"},
	{"opening side = left", "opening left against|side|belong|end", "post end wall step against side belong"},
	{"opening side = right", "opening right against|side|belong|end", "post end wall step against side belong"},
	{"opening side = middle", "opening middle", "wall side post belong"},
	{"stiffeners = 0", "stiff not", "bay wall"},
	{"stiffeners = 0", "stiff leaveout", "bay wall"},
	{"openings = 0", "opening not", "wall"},
	{"openings = 0", "opening leaveout", "wall"},
}
