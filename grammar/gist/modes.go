package gist

import "saywright/grammar/act"

// modeSenses are the senses of words about what is tried, claimed, asked why and explained.
const modeSenses = `
shouldi: should_i should_we shall_i shall_we do_i do_we am_i are_we must_i must_we
could: could_we can_we could_i can_i might_we may_we may_i could can might may able
kindof: original old new latest revised first_draft permit shop my_neighbor's his her their own_ design
says: SAYS mentioned mentions mention quoted quotes recommend recommends recommended advises advised insists insisted proposes claims claiming saying reckons swears told_me told_us has_it wants_to wanted suggests suggested thinks thought is_of_the_opinion came_up_with comes_up_with gets got figures promised promises
says: SHOWS marks calls_for called_for call_for has_us puts_it puts_them gives lists listed draws drew
check: check confirm verify agree double_check is_that_so is_it_so see_if_you_agree can_that_be could_that_be would_that_be is_that_right is_this_right is_that_correct is_that_true is_it_right is_it_true is_it_correct that_right sound_right sounds_right can_that_be_right could_that_be_right does_that_hold does_that_sound_right does_that_add_up does_that_check_out is_he_right is_she_right are_they_right do_you_agree check_that check_it confirm_that verify_that have_i_got_that_right is_that_possible is_it_possible_here is_that_possible_here any_good
valid: true right correct correctly accurate ok okay all_right hold hold_up holds_up stand_up sound check_out work_out works_out match matches does_that_work would_that_work does_it_work would_it_work make_sense makes_sense possible_here
if: what_if if suppose supposing assuming assume imagine imagining provided say_we say_i let_us_say lets_say in_case were_to what_about how_about what_would_happen_if what_happens_if
whether: whether see_whether
happen: where_do_i_end_up where_do_we_end_up where_does_that_leave_me where_does_that_leave_us what_becomes_of_it what_becomes_of_that what_would_happen what_is_that_do what_does_it_do what_happens what_would_that_do what_does_that_do what_then what_comes_of happen happens be_the_result result results
work: work works fit fits suffice suffices do_the_job do_it be_enough enough possible feasible doable allowed permitted acceptable be_fine be_ok be_okay be_all_right be_alright still succeed
why: why how_come for_what_reason what_makes what_is_the_reason the_reason reason what_makes_it how_is_it_that
explain: explain explained teach understand understanding walk_me_through walk_us_through talk_me_through take_me_through go_through show_me_how help_me_understand demonstrate educate how_it_is_done
calc: calculated calculate calculation computed compute computation figured figure worked_out work_out arithmetic math maths mathematics sum sums formula derived derive derivation arrived_at arrive_at arithmetic_behind come_by comes_about stepbystep step_by_step method determined
if: picture imagine_that just_for_fun for_the_sake_of_argument for_argument's_sake for_the_fun_of_it let_us_assume let_us_suppose let_us_imagine let_us_pretend pretend pretending try_it_with try_that_with try_out hypothetically i_wonder_about i_am_curious_about
whether: i_wonder_whether i_wonder_if i_wonder_how i_am_curious_whether i_am_curious_if i_am_curious_how i_am_curious_what curious_what curious_whether curious_how i_am_wondering_whether i_am_wondering_if wondering_whether wondering_if i_would_like_to_know_whether i_would_like_to_know_if
happen: become_of would_become_of what_would_become_of what_becomes_of come_of would_do be_like look_like how_would_it_look how_would_it_be what_difference_would_it_make
what: where_does_that_leave where_would_that_leave where_does_this_leave what_does_that_do_to what_would_that_do_to what_does_this_do_to what_does_that_make what_would_that_make what_does_that_mean_for what_would_that_mean_for what_does_it_mean_for what_would_it_mean_for how_does_that_affect how_would_that_affect how_does_that_change how_would_that_change
work: get_by get_away_with get_away manage make_do do_with do_without get_along be_done go_in_there be_used still_fit still_work fly stand handle permissible
doable: out_of_the_question a_problem any_trouble any_harm too_much_to_ask asking_too_much unthinkable any_problem harm_in problem_with
dire: anything something bad dreadful terrible awful anything_bad harm harmful dangerous nasty
light+letme: let_me let_us allow_me allow_us permit_me permit_us give_me give_us
says: certain sure convinced positive adamant confident dead_certain dead_sure dead_set absolutely_sure quite_sure maintains maintain holds_that states stated asserts asserted declares declared estimates estimated put_down wrote_down writes writing noted wrote jotted_down quoted reads mentioned_that argues argued told_my_husband told_my_wife told_them told_him told_her swore were_told was_told i_was_told we_were_told i_have_been_told we_have_been_told come_up_with has_it_that lets_on pretends_to_know talks_of speaks_of spoke_of has_down_for has_me_down_for has_us_down_for
person+says: i_was_told we_were_told i_have_been_told we_have_been_told i_hear i_have_heard rumor_has_it word_is
person: children kids twins boys girls grandkids grandchildren baby toddler family team crew team_a team_b team_c class students pupils architect engineer mason designer son-in-law one_of_them another_of_them the_one both_of_them i_hear grandpa he_and_his_wife
person+next: the_other_one the_other the_other_two the_new_one the_second_one the_old_one
paper: blueprint blueprints margin label brochure leaflet manual booklet handbook website web_site web page article table chart listing tag sign permit submittal report letter email e_mail message text estimate quotation invoice napkin note notes sheet book
check: is_that_about_right does_that_seem_right does_that_seem_about_right seem_right seems_right can_it_be could_it_be is_he_correct is_she_correct could_he_be_right could_she_be_right could_they_be_right can_he_be_right can_she_be_right would_he_be_right is_he_off is_she_off does_he_have_it_right does_she_have_it_right did_he_get_it_right did_she_get_it_right did_they_get_it_right do_you_get_that_too do_you_get_the_same do_you_too what_do_you_think what_do_you_say what_do_you_make_of_that
check: does_that_go does_this_go will_that_go is_that_okay is_that_ok is_that_fine is_that_sensible is_that_reasonable is_this_true believe_that believe_it believe_him believe_her trust_that i_do_not_know_whether i_do_not_know_if i_am_not_sure_whether i_am_not_sure_if can_i_believe_that should_i_believe_that should_i_believe_him should_i_trust_that whether_to_believe_that whether_i_can_believe_that whether_i_should_believe_that can_you_believe_that any_truth_in_that any_truth_to_that
check: which_is_it which_is_right which_one_is_it which_one_is_right which_of_them_is_right who_is_right which_of_the_two_is_it which_of_the_two_is_right which_team_has_it which_one_has_it which_team_is_right who_has_it_right who_has_it which_one_holds which_holds whose_is_right true_or_false yes_or_no right_or_wrong
that: that this these those it_all out_of_it of_it
erring: he_is_off he_is_wrong he_is_right he_is_mistaken she_is_off she_is_wrong she_is_right she_is_mistaken they_are_off they_are_wrong they_are_right they_are_mistaken i_am_off i_am_wrong i_am_mistaken we_are_off we_are_wrong i_was_wrong i_got_it_wrong i_measured_wrong he_measured_wrong he_got_it_wrong she_got_it_wrong
remain+left: is_left would_be_left will_be_left be_left are_left left
remain: left_over remains remain is_left_over leave leaves that_leave that_leaves
chose: chose choose chosen choosing picked pick went_with gone_with settled_on settle_on decided_on decide_on came_to came_up_with come_to come_out_at comes_out_at came_out_to ended_up_with end_up_with need needs get gets take takes propose proposed want wants insist_on arrive_at arrived_at land_on landed_on
asks+tell: ask asks asked want_to_know wants_to_know wanted_to_know wonder wonders would_like_to_know keeps_asking keep_asking are_asking is_asking
light: come_out_at comes_out_at come_out_to comes_out_to comes_out lands_at end_up_at ends_up_at works_out_to come_in_at comes_in_at stand_at stands_at
light: am_i_doing_something_wrong did_i_do_something_wrong what_am_i_doing_wrong what_did_i_do_wrong is_something_wrong is_anything_wrong have_i_made_a_mistake did_i_make_a_mistake am_i_missing_something what_am_i_missing i_do_not_get_it i_do_not_understand_it i_do_not_see_it that_much_i_know i_know_that_much that_i_know that_is_certain that_is_for_sure for_certain
light: permit_me_to correct_myself i_must_correct_myself let_me_correct_myself allow_me_to_correct_myself permit_me_to_correct_myself a_correction correction
light: exact
noise: afraid scared worried nervous frightened frightens scares worries stuck hurt climb climbs climbed climbing dog dogs cat cats squeezed bikes raining agreed birthday stairs trust ladder ladders
only: only
`

// gistModes are the modes, the plain statement first. A "?" among the needs wants a part that asks, a "#" one figure beside the name.
var gistModes = []gistMode{
	{act.State, "", "", false, true},
	{act.WhatIf, "if", "happen work valid what how could that were erring dire person design but", false, true},
	{act.WhatIf, "whether work|happen", "could happen that", false, true},
	{act.WhatIf, "could work|happen", "work happen valid that person", false, true},
	{act.WhatIf, "? work|happen", "work happen valid that letme", false, true},
	{act.WhatIf, "? doable", "could that", false, true},
	{act.WhatIf, "happen", "work could that were", false, true},
	{act.Check, "person|paper says", "person paper kindof check valid work could tell that were agree only", false, true},
	{act.Check, "check", "person paper kindof says valid work could tell that were only", false, true},
	{act.WhyNot, "why not|cannot|work", "cannot work if person kindof not could letme says that asks", false, true},
	{act.Forget, "forget", "limit could", true, false},
	{act.Why, "why", "many high wide long howmuch how calc asks person chose that", true, false},
	{act.Why, "# why chose", "asks person that how", true, false},
	{act.Ask, "what|how|tell|many|howmuch", "what how tell howmuch calc could happen shouldi toldyou remain that", true, false},
	{act.Teach, "explain", "calc how tell step", true, false},
	{act.Teach, "how calc", "tell step", true, false},
}
