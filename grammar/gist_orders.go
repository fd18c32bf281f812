package grammar

// orderSenses are the senses of words about what is ordered and wished.
const orderSenses = `
forget: forget drop remove disregard ignore scrap never_mind nevermind do_away_with cancel lift discard strike erase delete dismiss let_go_of no_longer_care_about no_longer_matters abandon withdraw clear take_away changed_my_mind_about get_rid_of throw_out not_bound_by
undo: undo take_that_back take_back put_back put_it_back go_back reverse revert un_do the_way_it_was as_it_was before
redo: redo do_over do_it_again put_it_back_again
startover: start_over start_afresh start_fresh start_anew start_from_scratch begin_again begin_anew begin_afresh clean_slate blank_slate from_scratch wipe_it_all wipe_everything wipe clear_everything from_the_beginning all_over_again fresh_start scrap_everything scrap_it_all fresh anew
design: design plan project wall everything all of_it whole_thing lot
recap: recap summary summarize summarise review what_i_have_told_you what_i_told_you what_i_have_said what_i_said what_we_have_said what_you_have what_we_have_so_far what_have_i_told_you what_have_i_said everything_i_have_told_you everything_i_have_said everything_i_said what_have_we_told_you what_i_have_given_you run_over go_over
sofar: so_far until_now up_to_now to_this_point thus_far
takethat: go_with_that go_with_this take_that take_it keep_that that_is_the_one settle_on_that use_that go_ahead_with_that adopt_that stick_with_that accept_that
back: back
`

// orderLines are what is wanted of what is ordered and wished without a figure.
var orderLines = []gistLine{
	{"start over", "startover", "design forget last"},
	{"undo", "undo last", "forget"},
	{"recap", "recap", "tell sofar what last"},
	{"least waste", "little waste", "wood possible board"},
	{"cheapest", "cheap", "possible wall layout budget what"},
	{"same length", "equal board cut|long", "long cut equal"},
	{"units = metric", "metric think|tell|calc", ""},
	{"units = customary", "customary think|tell|calc", ""},
}
