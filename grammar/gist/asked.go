package gist

// askedSenses are the senses of words about what is asked for.
const askedSenses = `
howmuch: how_much
what: where_that_leaves where_does_that_leave where_this_leaves where_would_that_leave
toldyou: did_i_tell_you did_i_say did_we_say did_i_give_you did_we_tell_you did_i_want did_we_settle_on did_i_ask_for
light: so_that
light+wish: i_want i_need we_need we_want i_would_like we_would_like let_me_have let_us_have i_would_like_to_have
light+wish+tell: give_me get_me i_would_like_to_see i_want_to_see i_need_to_see let_me_see let_us_see
could+wish: could_i_have can_i_have may_i_have might_i_have could_we_have can_we_have may_we_have can_i_get could_i_get could_i_see can_i_see may_i_see
wish: would_be_nice would_be_handy would_be_useful would_be_helpful would_be_good would_be_great
areyou: are_you what_are_you
light: are_you_able_to
tell: remind_me_of remind_me_what remind_me_how name
gap: space_is_left room_is_left
everything: everything whatever all_the_things what_all
wish: receive furnish supply send hand provide prepare produce
light: in_order_to
how: how_long how_tall how_high how_wide how_big how_large how_small how_deep how_short
what+long+stocked: what_lengths which_lengths
export: export put make turn write save
where: how_far_up how_high_up at_what_point at_which_point what_spot which_spot how_far_along at_which_heights at_which_points at_what_points at_which_places in_what_place in_which_place
mark: MARK pencil_marks pencil_lines layout_marks mark_out marks marking draw_lines draw_my_lines draw_the_lines draw_our_lines scribe scribe_lines bracket_marks ticks tick tick_marks marked
bracketsgo: screw_holes holes screwed screwed_on screwed_to attached fastened fixed mounted mount fasten screw
step: step steps procedure sequence order_of_work order_of_operations what_order in_what_order which_order in_which_order begin start starting getting_started get_started first next stages stage one_thing_after_the_other one_after_the_other from_start_to_finish from_beginning_to_end before_anything_else before_all_else before_everything_else first_thing very_first comes_first go_first goes_first
building: build_it build_this building_it building_this build_the_wall put_it_together putting_it_together putting_this_together put_up_the_wall the_work the_building assemble assemble_it assembly construction
light+building: the_job
caution: worry worried worries concern concerned danger dangers dangerous hazard hazards risk risks safety safe watch_out watch_out_for careful beware aware look_out_for be_careful_of caution cautions pitfalls hurt go_wrong goes_wrong trip_me_up warnings warning mind mindful
caution: warn warn_me warned warn_us alert_me watch_out_about careful_with careful_about care_about go_badly be_wary_of wary traps trap catch snag snags gotchas pitfall mistakes mess_up botch screw_up bite_me come_back_to_bite_me trouble trouble_ahead troubles problems do_wrong get_wrong mind_out_for pay_attention_to
anything: anything anything_else something any
draw: draw drawing drawn picture sketch diagram illustration image look_like looks_like elevation how_it_looks how_she_looks how_it_will_look how_that_looks how_this_looks
picture: drawing picture sketch diagram illustration image elevation
marks: marks pencil_marks layout_marks bracket_marks
cutlist: cuts cut_list cutting_list list_of_cuts cut_lengths
layout: layout arrangement lay_out laid_out figures results result whole_thing everything solution answer come_out comes_out turn_out turns_out came_out
lookup: up_with come_up_with came_up_with leave_us leaves_us leave_me
options: options option choices choice possibilities alternatives combinations ways_to_do_it what_would_work what_works what_fits which_would_work which_counts different_ways
options: whatever_would_fit whatever_fits whatever_works whatever_would_work what_would_fit what_else_fits what_else_works other_ways which_numbers_of_boards which_numbers_of_rails which_number_of_boards which_number_of_rails which_board_counts which_rail_counts which_counts_of_boards which_combinations
workout: work works fit fits come_out come_out_okay come_out_fine come_out_right come_out_properly turn_out_well be_possible possible feasible work_out okay fine properly pick_from choose_from available open_to_me open_to_us have
csv: spreadsheet my_spreadsheet csv spread_sheet comma_separated table_file data_file excel open_in_excel comma_separated_values csv_file csv_format
csvform: form format file shape open read
truck: truck trailer pickup pickup_truck on_the_truck in_the_truck on_the_trailer in_the_cart on_the_cart cart load_up
goesin: go goes has_to_go need_to_go needs_to_go put load
tally: tally tally_up add_up add_it_up add_it_all_up total_up add_up_to adds_up_to come_to comes_to it_comes_to amounts_to bottom_line total sum_total bill grand_total altogether
money: money money_wise moneywise in_dollars dollars price_wise financially
helpme: what_can_i_say what_could_i_say what_should_i_say what_may_i_say what_to_say what_can_i_tell_you what_can_we_say how_do_i_say what_do_i_say what_am_i_supposed_to_say what_are_we_allowed_to_say what_could_i_tell_you what_is_there_to_say
lost: lost stuck confused do_not_know no_idea not_sure
out: out
tell: lay spell_out
maths: math maths mathematics arithmetic calculation calculations computation computations sums workings working_out every_calculation all_the_steps whole_sum whole_calculation whole_computation figuring
full: every_number each_number every_figure each_figure all_the_numbers all_the_figures
full: whole_sum whole_calculation whole_computation whole complete entire full all every each every_step every_line every_bit of_it in_full all_of_the detail details every_detail in_detail
bought: long_list list shopping_list materials_list
losewood: lose loses lost
stocked: lengths lumber_lengths board_lengths
spareof: spare spares extra_boards extra_lumber extra_wood
bigas: how_big how_large how_small size
what+size+bigas: what_size
bigas: how_wide how_long how_tall how_high how_deep
earof: ear ears
reach: reach
clearance: clearance
overall: overall outside_to_outside
`

// askedLines are what is wanted of what is asked for without a figure.
var askedLines = []gistLine{
	{"ask shopping", "buy what|tell|wish|many|howmuch", "what tell says shouldi could many howmuch board wood post bracket mostpaid long everything wish"},
	{"ask shopping", "truck goesin|what|tell|buy", "what tell shouldi everything wish goesin buy layout last"},
	{"ask shopping", "seller everything tell|wish", "tell wish from buy"},
	{"ask shopping", "howmuch wood", "shouldi buy could"},
	{"ask cost", "cost what|tell|howmuch|wish|tally", "what tell howmuch wood wall wish tally design"},
	{"ask cost", "cost", ""},
	{"ask cost", "tally money|cost", "what tell howmuch wood wall wish cost layout"},
	{"ask cuts", "cutlist wish|what|tell", "could last board"},
	{"ask cuts", "cut board|post|long what|how|tell", "shouldi could what how tell long board post stiff many short"},
	{"ask cuts as csv", "csv cut", "could tell board long csvform wish what export last"},
	{"ask shopping as csv", "csv buy", "tell wood csvform could wish what export last"},
	{"ask marks as csv", "csv mark", "tell board post bracket csvform could wish what export last"},
	{"ask marks", "mark what|where|tell|how", "shouldi could board post bracket bracketsgo high highup top bottom layout"},
	{"ask marks", "marks wish|what|tell", "board post bracket top bottom layout could last"},
	{"ask marks", "bracket bracketsgo where|how", "shouldi could board post high highup"},
	{"ask marks", "bracket where", "think highup shouldi could post"},
	{"ask steps", "step what|where|tell|how", "shouldi could person building"},
	{"ask cautions", "caution what|tell|how|could", "shouldi could design about anything tell"},
	{"ask cautions", "caution anything", "shouldi could design about tell"},
	{"ask drawing", "draw tell|what|could", "wall layout how what design tell could"},
	{"ask drawing", "picture wish|tell|what|could", "wall layout how what design tell could last"},
	{"ask layout", "layout tell|what|how", "wall design could"},
	{"ask layout", "lookup what|where", "wall design layout"},
	{"ask options", "options tell|what|wish|could", "anything board wall workout could person"},
	{"ask posts", "where post", "added tell step shouldi could middle"},
	{"why shopping", "why buy", "many board long wood shouldi"},
	{"show it all", "maths tell full", "explain wish could what out"},
	{"show it all", "maths full wish|tell", "could out"},
	{"help", "helpme", "lost tell"},
	{"help gap", "helpme gap", "about lost"},
	{"help opening", "helpme opening", "about lost"},
	{"help stiffeners", "helpme stiff", "about lost"},
	{"help posts", "helpme post", "about lost"},
	{"help bays", "helpme bay", "about lost"},
	{"help rails", "helpme board", "about lost"},
}

// askedNames are quantities that are only asked for by these words, without a figure.
var askedNames = []gistName{
	{plain: "stock", with: "stocked sell|has seller", may: "seller board wood lengths long what"},
	{plain: "kerf", with: "blade losewood|eat", may: "cut howmuch peror wood"},
	{plain: "spare", with: "spareof", may: "board wood howmuch buy toldyou"},
	{plain: "bracket ear", with: "bracket earof", may: "long high"},
	{plain: "bracket reach", with: "bracket reach", may: "high top"},
	{plain: "bracket clearance", with: "bracket clearance", may: ""},
	{plain: "overall", with: "overall", may: "long wide wall bigas"},
	{plain: "gap", with: "gap bigas", may: "board between"},
	{plain: "opening", with: "opening bigas", may: "wide"},
	{plain: "bay", with: "bay bigas", may: "wide"},
	{plain: "bottom gap", with: "gap below|bottom", may: "board bottom below howmuch"},
}
