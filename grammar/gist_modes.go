package grammar

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
`

// gistModes are the modes, the plain statement first.
var gistModes = []gistMode{
	{State, "", "", false, true},
	{WhatIf, "if", "happen work valid what how could", false, true},
	{WhatIf, "whether work", "could happen", false, true},
	{WhatIf, "could work|happen", "work happen valid", false, true},
	{WhatIf, "happen", "work could", false, true},
	{Check, "person|paper says", "person paper kindof check valid work could tell", false, true},
	{Check, "check", "person paper kindof says valid work could tell", false, true},
	{WhyNot, "why not|cannot|work", "cannot work if person kindof not could", false, true},
	{Forget, "forget", "limit could", true, false},
	{Why, "why", "many high wide long howmuch how calc", true, false},
	{Ask, "what|how|tell|many|howmuch", "what how tell howmuch calc could happen shouldi toldyou", true, false},
	{Teach, "explain", "calc how tell stepbystep step", true, false},
	{Teach, "how calc", "tell step", true, false},
}
