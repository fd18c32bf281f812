package gist

import "saywright/grammar/scan"

// gistRelations are the senses that bind a figure to a quantity by a relation, with plain words for it.
var gistRelations = map[string]string{
	"atleast": "at least",
	"atmost":  "at most",
	"under":   "less than",
	"over":    "more than",
	"about":   "about",
	"grow":    "+",
	"shrink":  "-",
}

// gistChatter are the senses, beside the light ones, of words that may stand in what is only chatter.
const gistChatter = `reasonword taped when person pass board boards post wall floor earth opening stiff bracket paper seller blade wood side work think next could kindof`

// commonSenses are the senses of words: a sense (or several, joined by "+"), and what has it; a turn of words is joined by "_", and a CLASS
// stands for all of its words. A word may stand in several lines. "light" are words that say nothing by themselves.
const commonSenses = `
light: a an the this these those is are am be being been do does to of at in on for with it its i we you my our your me us them there here as by into onto so and then also just 's
light: really actually quite exactly precisely simply basically truly certainly surely well now today right_now at_present at_the_minute this_time_around this_time currently again once first_of_all
light: will shall would should must ought must_i has have had need needs want wants like likes get gets getting got let let_us let_me make makes made making go goes going come comes put puts set sets sit sits stand stands run runs keep keeps hold holds leave leaves use uses using give gives given lies lie be_made end_up ends_up ended_up
light: each every all both any whole entire one's own whatever
light: would_like would_love would_rather would_prefer would_appreciate prefer wish wishes plan_on planning plan_to intend intends going_to gonna trying_to try_to hoping_to able_to
light: place spot thing things stuff kind sort way job project time
light: myself ourselves yourself itself everything_else us_all in_all all_told altogether in_total all_together total overall_total
light: because_of_that therefore thus hence anyway anyhow
light: could_you can_you would_you will_you would_you_mind might_you be_able be_so_kind if_you_would if_you_could if_you_can if_possible would_it_be_possible_to is_it_possible_to
light: please kindly thanks thank_you thank grateful glad happy appreciate appreciated delighted pleased sorry excuse forgive pardon hello hi dear good_morning good_afternoon good_evening much very_much so_much wondering was_wondering were_wondering wonder hope hoping hoped ask asking_you like_to love love_to kind_enough
light: rather_than_guess for_me for_us for_now at_this_point at_the_moment in_front in_mind
light: says_here
light+many: number_of numbers_of count_of
light: old_one our_own my_own
light: say so_to_speak as_it_were you_know i_mean
light: nearby local particular specific certain actual
person: PERSON KIN somebody someone anyone neighbors mother father wife husband people folks contractor's
paper: PAPER magazine instructions video
not: not no never none without nothing nobody nor neither isn't
cannot: cannot can_not could_not not_possible impossible not_allowed not_fit not_work will_not would_not does_not do_not not_be not_have not_get not_go not_permitted not_enough
what: what which what_is what_are
how: how
many: many how_many number count quantity numbers
where: where whereabouts at_what_height at_what_heights at_which_height which_spot
tell: tell show list give see know learn hear find_out read_out let_me_know figure_out work_out say display report write print read read_me fill_in provide
long: long LENGTH lengths how_long
last: last latest most_recent previous just_said just_told that change statement step thing
board: RAIL board's
boards: boards rails slats planks rows courses
post: POST UPRIGHT post's
end: end ends outer outside outermost existing corner
added: added new extra additional intermediate middle inner in_between freestanding free_standing additional_one center
bracket: BRACKET
stiff: STIFF
bay: BAY
opening: OPENING walk_through way_through place_to_walk_through room_to_walk_through way_to_get_through pass_through
gap: GAP gapped spacing spacings spaces openings_between clear_space breathing_room
apart: apart from_each_other from_one_another distant separated
together: together
between: BETWEEN between in_between from_one_board_to_the_next from_board_to_board from_one_to_the_next one_to_the_next from_one_post_to_the_other from_post_to_post post_to_post board_to_board separating separates
next: next other the_next the_other next_one other_one another neighboring neighbouring adjacent neighbor neighbors
wall: WALL
floor: FLOOR
earth: EARTH flower_bed flower_beds flowerbed bed beds path driveway sidewalk ramp gravel lawn_below yard_below meadow field creek bank riverbank slope
high: HIGH HEIGHT how_tall how_high stands_tall
wide: WIDE WIDTH how_wide
thick: thick thickness
size: SIZEWORD
face: face faces
across: across
clear: clear
inside: inside inner inside_faces inner_faces face_to_face inside_to_inside
center: center_to_center centre_to_centre centers centres on_center on_centre on_centers
left: LEFT
side: side sides hand hand_side
middle: middle midway halfway center_of_the_wall centre
against: against hard_against up_against tight_to flush_with next_to right_against beside
from: from away_from off measured_from in_from
atleast: at_least no_less_than not_less_than no_fewer_than minimum min or_more or_better or_wider or_higher or_taller no_smaller_than no_narrower_than no_lower_than no_shorter_than not_under nothing_under nothing_less_than upward and_up or_over no_closer_than no_tighter_than never_less_than not_below never_below never_under at_the_least at_the_very_least >=
atleast+apart: no_closer_together_than no_nearer_together_than not_closer_together_than no_closer_than never_closer_than
atmost: at_most no_more_than not_more_than maximum max or_less or_fewer no_wider_than no_longer_than no_taller_than no_higher_than no_larger_than no_bigger_than no_greater_than not_over nothing_over nothing_more_than up_to and_under or_under not_exceed not_exceeding never_more_than never_over not_above never_above at_the_most at_the_very_most not_longer_than not_wider_than not_higher_than never_longer_than never_wider_than
atmost+apart: no_further_apart_than no_farther_apart_than not_further_apart_than never_more_than_apart
under: under less_than below smaller_than narrower_than shorter_than lower_than closer_than tighter_than fewer_than
over: over more_than above greater_than wider_than bigger_than larger_than longer_than taller_than higher_than
about: about around roughly approximately or_so give_or_take more_or_less or_thereabouts somewhere_around in_the_neighborhood_of nearly near_enough approx circa close_to
possible: possible as_possible we_can i_can you_can can_be
metric: metric millimeters millimetres mm
customary: CUSTOMARY feet_and_inches
think: think work working measure measuring talk speak figures numbers units
right: right_hand right_side the_right on_the_right to_the_right right_post right_hand_side
`

// Occasions are times, meetings, ways to speak, and places of trade.
var Occasions = scan.WordSet(`
	year years month months week weeks weekend weekends day days season seasons spring summer autumn fall winter morning mornings afternoon evening evenings night nights noon midnight dawn dusk lunch breakfast supper
	dinner coffee tea break holiday holidays vacation easter christmas monday tuesday wednesday thursday friday saturday sunday january february march april may june july august september october november december
	today tonight tomorrow yesterday moment present time times bell exam exams class lesson semester term recess graduation
	meeting meetings visit visits appointment inspection interview party wedding picnic barbecue ceremony reunion gathering opening
	phone radio video internet web website online email mail letter message
	checkout register till counter cashier desk aisle aisles shop store mill sawmill yard lumberyard depot warehouse market supermarket sale auction outlet dealer dealership merchant supplier vendor
	town city village county country downtown neighborhood area region parts
	rush hurry haste earnest honesty fairness seriousness truth fact short general particular principle practice theory reality hindsight passing
	record records house sake everyone everybody folks
`)
