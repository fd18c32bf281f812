package gist

// orderSenses are the senses of words about what is ordered and wished.
const orderSenses = `
forget: forget drop remove disregard ignore scrap never_mind nevermind do_away_with cancel lift discard strike erase delete dismiss let_go_of no_longer_care_about no_longer_matters abandon withdraw clear take_away changed_my_mind_about get_rid_of throw_out not_bound_by
forget: do_not_have_to_hold_to need_not_hold_to does_not_matter_any_longer does_not_matter_any_more does_not_matter_anymore do_not_need_to_hold_to changed_our_minds_about changed_my_mind_on throw_away toss toss_out cross_out scratch_out strike_out rub_out wipe_out nix
forget: up_to_you for_you_to_decide for_you_to_choose free_to_choose free_to_pick be_whatever_it_wants be_whatever_comes_out whatever_it_wants
anymore: any_more anymore any_longer
no: no nope
oops: oops whoops mistake a_mistake by_mistake wrong silly something_silly nonsense slip something_wrong slipped
undo: undo take_that_back take_back put_back put_it_back go_back reverse revert un_do the_way_it_was as_it_was before
undo: where_we_were where_we_were_before where_i_was where_i_was_before how_things_were restore the_way_it_was_before as_it_was_before the_way_it_was_a_moment_ago the_way_they_were_a_moment_ago the_way_they_were the_way_things_were how_it_was how_it_was_before take_it_back back_up_one back_up_a_step roll_back one_step_back a_step_back back_up_one_step take_my_last_entry_back take_my_last_back cancel_that
entry: entry sentence line command remark words
redo: redo do_over do_it_again put_it_back_again bring_back_what_i_undid what_i_undid what_i_just_undid what_i_took_back i_undid
startover: start_over start_afresh start_fresh start_anew start_from_scratch begin_again begin_anew begin_afresh clean_slate blank_slate from_scratch wipe_it_all wipe_everything wipe clear_everything from_the_beginning all_over_again fresh_start scrap_everything scrap_it_all fresh anew
startover: clear_out_everything clear_it_all empty_the_plan throw_it_all_away throw_it_all_out start_again_from_nothing from_nothing back_to_zero from_zero from_square_one empty_the_whole_plan erase_everything forget_everything forget_it_all delete_everything
beginanew: begin start
design: design plan project wall everything all of_it whole_thing lot
recap: recap summary summarize summarise review what_i_have_told_you what_i_told_you what_i_have_said what_i_said what_we_have_said what_you_have what_we_have_so_far what_have_i_told_you what_have_i_said everything_i_have_told_you everything_i_have_said everything_i_said what_have_we_told_you what_i_have_given_you run_over go_over
recap: what_did_i_tell_you what_did_i_say what_did_we_say what_did_we_tell_you everything_i_told_you everything_i_have_given_you what_have_i_given_you what_i_gave_you all_i_have_told_you all_that_i_have_told_you all_i_told_you all_my_wishes all_of_my_wishes
refresh: refresh_my_memory refresh_our_memory
memory: memory refresh_my_memory refresh_our_memory remind_me remind repeat back_to_me read_back play_back forgot forgotten i_have_forgotten
sofar: so_far until_now up_to_now to_this_point thus_far up_to_this_point
takethat: go_with_that go_with_this take_that take_it keep_that that_is_the_one settle_on_that use_that go_ahead_with_that adopt_that stick_with_that accept_that
taketried: keep adopt accept take use go_with stick_with settle_on hold_on_to like have
tried: what_we_just_tried what_i_just_tried what_you_just_tried the_one_we_just_tried the_one_you_just_tried the_one_you_have_just_tried what_you_just_showed_me the_one_you_just_showed_me what_we_tried what_you_showed_me the_last_idea that_last_idea
back: back
keepas: save store keep file stash remember hang_on_to hang_onto hold_on_to put_away make_a_note_of write_down note_down record preserve put_aside tuck_away park file_away store_away hold_onto put_down
bringup: open load fetch bring_up pull_up bring_back call_up dig_out dig_up retrieve reopen restore go_back_to return_to carry_on_with go_on_with continue_with see look look_at go_back_into have_another_look_at get_out go_get go_fetch pull_out take_me_back_to switch_to show tell
plan: plan design layout this_one that_one the_one wall version project job it this that all_of_this drawing everything
later: later safekeeping another_day tomorrow next_time the_record another_time
hatelose: hate_to_lose_it do_not_want_to_lose_it such_a_pretty pretty lovely nice
differ: differ differs differing difference differences different compare compares compared comparing comparison contrast side_by_side stack_up stacks_up
lowprice: price cost costs expense expenses total bill money
low: low lowest down little
spendless: spend_no_more_than_i_must spend_no_more_than_you_must spend_no_more_than_you_have_to spend_no_more_than_we_have_to spend_no_more_than_i_have_to spend_no_more_than_necessary spend_no_more_than_needed as_little_money spend_as_little costs_the_least cost_the_least whatever_costs_the_least
little: hardly_any scarcely_any next_to_no almost_no
samelong: as_long_as_the_next as_long_as_the_other as_long_as_the_others as_long_as_any_other as_long_as_every_other
think: comfortable more_comfortable
wasteless: as_little_left_over as_few_offcuts as_little_scrap do_not_throw_away_more do_not_waste_more do_not_waste_any_more no_more_waste throw_away_as_little waste_as_little lose_as_little
must: than_you_have_to than_you_must than_needed than_necessary than_i_must than_we_must than_i_have_to than_we_have_to than_is_needed
minimum: minimum to_a_minimum
digless: do_not_want_to_dig_more do_not_want_more do_not_want_to_set_more
posthole: holes post_holes
onestop: one_stop one_setting one_stop_setting a_single_stop one_length one_and_the_same_length a_single_length gang_cut
closeup: close_up squeeze_together push_together pack
asmuch: as_much_as_you_can as_much_as_possible as_far_as_possible as_far_as_you_can as_close_as_possible as_tight_as_possible as_tight_as_you_can
spaced: spaced evenly_spaced equally_spaced spread spread_out match
guard: guard guard_rule guard_question guard_rail guardrail guard_thing guard_matter guard_issue guard_business
guardset: settled settled_already dealt_with taken_care_of cleared sorted_out sorted cleared_up resolved approved set_aside put_aside has_been_settled let_it_rest
official: inspector building_office office building_department town city county inspector's
already: already
endit: that_is_it that_is_all that_will_be_all that_will_be_everything that_is_everything
quit: i_am_done we_are_done i_am_finished we_are_finished goodbye good_bye bye bye_bye so_long farewell good_night close_it_down shut_it_down stop_here call_it_a_day call_it_quits sign_off signing_off log_off quit exit
fornow: for_today for_now for_tonight for_the_day for_this_time today tonight now
`

// orderLines are what is wanted of what is ordered and wished without a figure.
var orderLines = []gistLine{
	{"start over", "startover", "design forget last beginanew"},
	{"undo", "undo last|undo", "forget oops no entry plan bringup last"},
	{"undo", "forget|undo last entry", "oops tell"},
	{"redo", "redo", "oops plan last"},
	{"take that", "taketried tried", "plan last"},
	{"recap", "recap", "tell sofar what last memory how"},
	{"recap", "refresh what", ""},
	{"recap", "recap memory", "tell sofar what last how"},
	{"least waste", "little waste", "wood possible board minimum low"},
	{"least waste", "waste minimum", "wood board low"},
	{"least waste", "wasteless", "wood possible must board waste highup"},
	{"cheapest", "cheap", "possible wall layout budget what"},
	{"cheapest", "spendless", "possible cost budget"},
	{"cheapest", "lowprice low possible|minimum", "wall what"},
	{"cheapest", "lowprice minimum", "wall low"},
	{"fewest posts", "digless post must", "posthole"},
	{"same length", "equal board cut|long", "long cut equal onestop"},
	{"same length", "board samelong", "long"},
	{"same length", "board onestop", "cut long"},
	{"equal bays", "spaced post bay", "equal valid"},
	{"equal bays", "spaced equal post", "wish"},
	{"even gaps", "equal gap", "next between board top bottom from high highup"},
	{"smallest gap", "closeup board asmuch", "together gap"},
	{"units = metric", "metric think|tell|calc", ""},
	{"units = customary", "customary think|tell|calc", ""},
	{"quit", "quit", "fornow think endit quit"},
	{"quit", "endit fornow", "think"},
	{"set aside guard", "guard guardset", "already official"},
	{"save #", "keepas named", "plan later could design hatelose"},
	{"save #", "plan named goesin", "later could design"},
	{"open #", "bringup named", "plan could last next design wish back"},
	{"open #", "workedon wish|could|bringup", "plan could last next design wish back"},
	{"compare #", "setapart what|tell|how", "could wish what tell how"},
	{"compare #", "differ paired", "tell what how could differ plan wish next between apart noise"},
}
