package gist

import "saywright/grammar/act"

// shopSenses are the senses of words about what is bought, cut and fastened.
const shopSenses = `
buy: BUY shop shopping purchases purchasing buying bring_home pick_up get_from_the_yard get_at_the_yard ordering order materials_list material_list list_of_materials shopping_list bill_of_materials lumber_list order_list haul_home load_up
cost: PRICE spend spending pay paying set_me_back set_us_back run_me run_us money expensive damage come_to_in_money dollars
cut: CUT cuts cut cutting saw sawn sawed sawing trimmed lop cut_list cutting_list list_of_cuts
limit: limit cap ceiling maximum max restriction bound my_limit our_limit absolute_limit upper_limit not_a_penny_more not_a_cent_more not_a_dollar_more top
blade: blade saw saw_blade sawblade kerf saw's blade's circular_saw table_saw miter_saw mitre_saw hand_saw handsaw chop_saw teeth
eat: eats eat eats_up chews_up chews takes takes_out removes cuts wide loses lose waste wastes turns_to_dust takes_away destroys devours lost is_lost gets_lost are_lost turns turned_into becomes turns_into vanishes disappears goes_to goes
dust: sawdust dust turns_to_dust turned_into_sawdust
trim: trim squaring square squared square_up square_off squaring_up squaring_the_end clean_up square_end square_ends clean_end clean_ends rough_end rough_ends end_trim
slot: slot groove slit
lose: lose loses losing take_off takes_off taken_off comes_off come_off cut_off cuts_off goes_off go_to goes_to trim_off trims_off saw_off is_lost lost allow lop_off gone costs_me costs lost is_lost gets_lost loses
peror: per_board each_board every_board a_board per_cut each_cut every_cut a_cut a_pass each_pass every_pass per_pass each_time every_time each_stroke
spare: spare spares extra extras waste_allowance allowance just_in_case to_be_safe safe_side margin for_mistakes on_top on_top_of_that
spare: in_reserve reserve too_many too_much more_than_i_need more_than_we_need more_than_needed more_than_necessary more_than_is_needed more_than_required surplus overage overrun as_insurance for_insurance for_breakage for_waste for_spoilage for_damage for_knots for_bad_boards for_splits for_warping contingency backup backups back_up
spoil: spoil spoils ruin ruins botch botches mess_up mess_one_up mess_something_up mess_it_up break breaks split splits crack cracks wreck wrecks goof bungle bungles cut_wrong cut_one_wrong miscut miscuts mistakes mistake errors goes_bad going_bad turns_out_bad bad knots defects breakage spoilage crooked twisted warped waste insurance
counton: count_on figure_on plan_on allow_for expect reckon_on reckon_with count_with allow
sometimes: always usually sometimes often tend_to one_or_two apiece_or_two a_piece_or_two a_board_or_two a_few in_case just_in_case in_case_i in_case_one
lumber: lumber wood timber material materials boards rails stock planks all_of_it
budget: budget spend spending pay money afford cost limit allowance dollars stretch
allwood: materials material lumber wood hardware all_materials everything total whole_project whole_job whole_wall all_in entire_project project job
afford+mostpaid: budget allowance spending_cap spending_limit price_limit cost_limit
afford: budgeted can_afford i_can_afford we_can_afford could_afford i_can_spend we_can_spend can_spend may_cost can_cost may_spend able_to_spend able_to_pay able_to_afford prepared_to_spend prepared_to_pay willing_to_spend willing_to_pay ready_to_spend can_stretch_to could_stretch_to can_go_to can_go_up_to can_go_as_high_as go_as_high_as have_to_spend to_spend put_aside set_aside saved_up scraped_together allowed_to_spend spending_limit price_limit cost_limit
only: only is_all that_is_all all_that
sell: SELLS sells sell carry carries stock stocks stocked available offer offers come_in comes_in keep_in_stock sold_in_lengths
sell: find you_will_find you_can_find you_find i_can_find can_i_find can_find to_be_had can_be_had can_get can_buy be_bought to_be_bought for_sale on_sale on_the_rack on_the_racks on_the_shelf on_the_shelves in_stock for_purchase
has: has got_in got have carried had
seller: SELLER lumber_aisle aisle lumberyard home_center place_in_town lumber_yard timber_merchant merchant mill sawmill nearby town depot dealer supplier hardware_store big_box_store around_here in_our_area in_this_area local_yard racks rack shelf shelves yard store shop down_the_street down_the_road around_the_corner on_the_corner across_town in_town
outof: out_of run_out_of ran_out_of run_out ran_out sold_out sold_out_of no_longer no_more not_any_more do_not_have does_not_have discontinued gone cannot_be_had can_not_be_had are_not_to_be_had is_out_of are_out_of there_is_not_one there_are_not_any there_is_not_a there_is_not_any there_are_no not_one_left none_left all_gone are_all_gone
newly: arrived came_in has_arrived have_arrived just_came_in just_got_in got_in back_in_stock back_on_the_shelf back_on_the_shelves back_on_the_rack delivered delivery shipment truckload came_off_the_truck just_arrived are_back in_again
newly: have_come_back_in has_come_back_in came_back_in come_back_in is_back is_back_in are_back_in have_come_in has_come_in came_back just_got just_got_a_load have_added added_to_their_stock took_delivery brought_in unloaded
lengths: lengths length boards rails lumber timber wood planks pieces sizes ones footers
collide: collide collides clash clashes CLASH touch touches interfere interferes get_in_each_other's_way hit hits hit_each_other hit_one_another bump bumps bump_into knock knocks knock_into run_into overlap overlaps foul fouls meet meets get_in_the_way rub rubs conflict conflicts
once: once when if as_soon_as whenever unless the_moment the_minute until or
closer: closer tighter nearer narrower smaller falls drops dips shrinks gets
precision: precision precise accurate accuracy nearest finest smallest_mark mark_to work_to tape measure
tape: tape tape_measure ruler rule measuring_tape yardstick folding_rule my_tape square
finest: finest smallest_mark smallest_marks smallest_division smallest_divisions smallest_line smallest_lines finest_mark finest_marks finest_line finest_division nearest to_the_nearest marked_in divided_into graduated_in closest no_finer finer anything_finer no_finer_than any_finer_than anything_finer_than any_closer_than finer_than closer_than anything_closer_than tiniest
little: little least less minimal minimum as_little_as_possible as_little smallest fewest lowest
waste: WASTE scrap offcuts wasted thrown_away thrown_out end_up_as_scrap left_over leftover leftovers discarded
wood: lumber wood timber material
cheap: CHEAP CHEAPEST least_expensive most_economical most_affordable least_money lowest_cost lowest_price
postbase: post_base post_bases base bases post_anchor_base post_shoe post_shoes shoe shoes one_post_base a_single_post_base one_base a_single_base
postcap: post_cap post_caps cap caps finial finials one_post_cap a_single_post_cap one_cap a_single_cap
anchor: anchor anchors anchor_bolt anchor_bolts concrete_anchor concrete_anchors wedge_anchor wedge_anchors one_anchor a_single_anchor
bracket: one_bracket a_single_bracket
screw: screw screws box_of_screws pack_of_screws packet_of_screws
packof: box package pack packet carton bag tub per_box
costs: cost costs price prices priced priced_at charge charges charged_me charging paid pay pays go_for goes_for going_for ring_up rings_up ring_up_at rings_up_at set_me_back sets_me_back set_us_back sets_us_back run_me runs_me run_us runs_us sell_for sells_for marked_at tagged tagged_at tag price_tag sticker asks ask_for asking_price they_ask they_want tag_says sticker_says buys_me buys_you
comes: come_to comes_to come_out_at comes_out_at come comes marked run runs is are wants want
each: apiece a_piece a_pop a_stick per_stick the_stick each each_one per_piece per_unit per_board a_throw for_one for_each for_every every
metal: metal steel sheet_metal material plate stock iron gauge bracket_metal
ear: ear ears flange flanges wings tabs lip lips
stickout: stick_out sticks_out stick_past sticks_past stick_up sticks_up sticks stick stands_proud stand_proud project projects extend extends protrude protrudes stand_past stands_past overhang overhangs reach reaches
hole: hole holes screw_hole top_hole top_screw_hole uppermost_hole highest_hole upper_hole topmost_hole bracketsgo
shy: shy slack play wiggle_room wiggle clearance breathing_room looseness loose_fit
short: short shorter
fitting: slip drop_in slide slide_in slip_in so_they_slip so_they_slide fit easily drop_right_in slip_right_in slide_right_in go_in_easily drop_into_place drop_in_easily so_that
space: space spaces opening_between room gap between_the_brackets between_brackets brackets
ihave: i_have we_have i_have_got we_have_got i_own we_own i_already_have we_already_have i_have_already_got i_still_have we_still_have i_already_own i_have_already we_have_already there_are there_is there_are_already there_are_still i_found we_found i_bought we_bought i_have_bought we_have_bought i_have_already_bought we_have_already_bought i_already_bought we_already_bought i_salvaged we_salvaged i_saved we_saved i_kept i_still_own i_picked_up on_hand in_hand i_got we_got i_already_got i_have_also_got i_also_have gave_me left_me
keptat: against_the_wall against_the_back in_the_back out_back in_back_of garage shed barn basement cellar loft attic workshop carport driveway backyard truck trunk lean_to outbuilding storage storeroom pile stack stash corner rafters home tarp woodpile my_shop our_shop behind_the_shed behind_the_garage
origin: from_last_year year years spring summer fall winter fence deck porch treehouse last_job from_the_last_job from_another_job
leftover: left_over leftover leftovers already still lying laying sitting leaning standing stacked stored waiting around on_hand spare old reclaimed salvaged unused in_good_shape good usable
lies: leaning_against lying laying sitting leaning standing stacked stored waiting left_over leftover already
alsoneed: need needs want wants add include cut buy order get put throw_in require requires
besides: also as_well besides in_addition additionally more on_top on_top_of_that too extra moreover furthermore plus another add while_you_are_at_it while_you_are_there while_we_are_at_it
forwhat: bench planter planters planter_box shelf shelves table workbench flower_box window_box trellis gate birdhouse sandbox doghouse stool box coop crate frame step swing arbor bookcase easel pergola ladder cart out_front
offby: off out wrong inaccurate out_of_true too_long too_short off_by out_by mistaken astray miss misses error errors mistake mistakes too_long_or_too_short too_short_or_too_long
ifeach: if what_if suppose supposing say imagine assume were provided
eachpiece: each every all piece board cut mark everything boards cuts marks pieces
quote: quote quotes quotation estimate bid total invoice bill price_quote offer proposal
lists: list lists listed quoted quotes says wrote_down wrote put_down puts_down counted counts figured wants_to_sell want_to_sell
quoted: quote quoted quotes quotation estimate estimated bid invoice offer total totals material materials costs cost price come_to comes_to altogether all_told adds_up_to amount amounts_to everything all_of_it for_the_lot the_lot for_all_of_it for_it_all for_everything for_the_whole_lot for_the_whole_thing
first: first 1st
second: second 2nd
third: third 3rd
`

// railsCost tells what a length of the rails costs, where no size is told.
const railsCost = "rails #1 cost #2"

// aBoard tells how long a board on sale is.
const aBoard = figFooter | figLength

// shopNames are the quantities of what is bought, cut and fastened.
var shopNames = []gistName{
	{plain: "they sell #*", with: "sell seller|lengths", named: "-", may: "what seller person lengths long wood board only could", list: figFooter | figLength | figBare, only: act.State},
	{plain: "they sell #*", with: "has|only seller", named: "-", may: "what seller lengths long wood board sell only", list: figFooter | figLength, only: act.State},
	{plain: "they are out of #*", with: "outof seller|lengths|person", named: "-", may: "leftover seller person lengths long wood board", list: figFooter | figLength | figBare, only: act.State},
	{plain: "they are out of #*", with: "outof", named: "-", may: "leftover", list: figFooter, only: act.State},
	{plain: "they also sell #*", with: "newly", named: "-", may: "what seller person lengths long wood board besides", list: figFooter, only: act.State},
	{plain: "they also sell #*", with: "newly seller|lengths", named: "-", may: "what person lengths long wood board besides", list: figFooter | figLength, only: act.State},
	{plain: "they also sell #*", with: "sell seller|lengths|person besides", named: "-", may: "what seller person lengths long wood board could", list: figFooter | figLength | figBare, only: act.State},
	{plain: "stock #1 = #*", with: "sell|only", named: "-", may: "what seller person lengths long wood board post has only could", figs: []gistFigure{figSize}, list: figFooter | figLength, only: act.State},

	{plain: "brackets cost #1", with: "bracket costs", named: "-", may: "what lists peror each seller person post", figs: []gistFigure{figMoney | figBare}, only: act.State},
	{plain: "brackets cost #1", with: "bracket comes each", named: "-", may: "what lists peror seller person post", figs: []gistFigure{figMoney | figBare}, only: act.State},
	{plain: "brackets cost #1", with: "bracket each|comes", named: "-", may: "what lists peror each comes seller person post", figs: []gistFigure{figMoney}, only: act.State},
	{plain: "post bases cost #1", with: "postbase costs", named: "-", may: "what lists peror each seller person post", figs: []gistFigure{figMoney | figBare}, only: act.State},
	{plain: "post bases cost #1", with: "postbase comes each", named: "-", may: "what lists peror seller person post", figs: []gistFigure{figMoney | figBare}, only: act.State},
	{plain: "post bases cost #1", with: "postbase each|comes", named: "-", may: "what lists peror each comes seller person post", figs: []gistFigure{figMoney}, only: act.State},
	{plain: "post caps cost #1", with: "postcap costs", named: "-", may: "what lists peror each seller person post", figs: []gistFigure{figMoney | figBare}, only: act.State},
	{plain: "post caps cost #1", with: "postcap comes each", named: "-", may: "what lists peror seller person post", figs: []gistFigure{figMoney | figBare}, only: act.State},
	{plain: "post caps cost #1", with: "postcap each|comes", named: "-", may: "what lists peror each comes seller person post", figs: []gistFigure{figMoney}, only: act.State},
	{plain: "anchors cost #1", with: "anchor costs", named: "-", may: "what lists peror each seller person post", figs: []gistFigure{figMoney | figBare}, only: act.State},
	{plain: "anchors cost #1", with: "anchor comes each", named: "-", may: "what lists peror seller person post", figs: []gistFigure{figMoney | figBare}, only: act.State},
	{plain: "anchors cost #1", with: "anchor each|comes", named: "-", may: "what lists peror each comes seller person post", figs: []gistFigure{figMoney}, only: act.State},
	{plain: "#1 screws cost #2", with: "screw", named: "-", may: "what lists peror costs each seller person packof", figs: []gistFigure{figBare, figMoney}, only: act.State},
	{plain: "#1 screws cost #2", with: "screw costs", named: "-", may: "what lists peror costs each seller person packof", figs: []gistFigure{figBare, figMoney | figBare}, only: act.State},
	{plain: "#1 #2 costs #3", with: "costs|comes", named: "-", may: "what lists peror post costs comes each seller person board boards wood lengths", figs: []gistFigure{figSize, aBoard, figMoney | figBare}, only: act.State},
	{plain: railsCost, with: "board costs", named: "-", may: "what lists peror post costs comes each seller person board boards wood lengths", figs: []gistFigure{aBoard, figMoney}, only: act.State},

	{plain: "have #1 #2 #3", with: "ihave", named: "-", may: "back against origin from last keptat leftover board boards wood lengths long lies", figs: []gistFigure{figCount, figSize, aBoard}, only: act.State},
	{plain: "have #1 #2 #3", with: "keptat", named: "-", may: "back against origin from last leftover board boards wood lengths long lies", figs: []gistFigure{figCount, figSize, aBoard}, only: act.State},
	{plain: "have #1 #2 #3", with: "lies|ihave keptat|ihave", named: "-", may: "back against origin from last leftover board boards wood lengths long lies", figs: []gistFigure{figCount, figSize, aBoard}, only: act.State},
	{plain: "extra #1 #2 at #3", with: "alsoneed besides|forwhat", named: "-", may: "besides forwhat board boards wood lengths long buy cut", figs: []gistFigure{figCount, figSize, figLength | figBare}, only: act.State},

	{plain: "spare =", fig: figPercent, with: "spare", named: "-", may: "spare spoil sometimes lumber wood board boards buy cut"},
	{plain: "#1 spare boards", with: "spare board", named: "-", may: "spoil sometimes lumber wood board boards buy", figs: []gistFigure{figCount}, only: act.State},
	{plain: "#1 spare boards", with: "counton spoil board", named: "-", may: "sometimes boards lumber", figs: []gistFigure{figCount}, only: act.State},
	{plain: "budget", fig: figMoney, with: "afford", named: "mostpaid", may: "wall ihave allwood limit cost afford only budget lumber atmost", only: act.State},
	{plain: "budget", fig: figMoney, with: "limit", named: "-", may: "limit cost afford only budget allwood", only: act.State},
	{plain: "budget", fig: figMoney, with: "budget|allwood atmost|limit", named: "-", may: "allwood limit cost afford only budget lumber atmost", only: act.State},
	{plain: "kerf", fig: figLength | figBare, with: "blade|dust eat|cut|wide|thick|peror", named: "blade wide|thick", may: "what lose slot peror cut dust", only: act.State},
	{plain: "kerf", fig: figLength | figBare, with: "eat peror", named: "-", may: "what lose slot cut dust", only: act.State},
	{plain: "trim", fig: figLength | figBare, with: "trim lose|peror|eat", named: "-", may: "once what peror board end lose wood lumber", only: act.State},
	{plain: "fit", fig: figLength | figBare, with: "short board|cut fitting", named: "-", may: "board cut space fitting end together between bracket", only: act.State},
	{plain: "fit", fig: figLength | figBare, with: "shy board|cut", named: "-", may: "board cut space fitting end together between bracket", only: act.State},

	{plain: "bracket clearance #1", with: "bracket collide", named: "-", may: "board each stack once gap closer under atleast next together", figs: []gistFigure{figLength | figBare}, only: act.State},
	{plain: "bracket thickness", fig: figLength | figBare, with: "bracket thick|metal", named: "bracket thick", may: "metal thick", only: act.State},
	{plain: "bracket ear", fig: figLength | figBare, with: "bracket ear", named: "", may: "stickout board above below over under top bottom long beyond", only: act.State},
	{plain: "bracket reach", fig: figLength | figBare, with: "hole above|over middle|center|added", named: "-", may: "bracket board top end side from beyond stickout above", only: act.State},
	{plain: "tape", fig: figLength | figBare, with: "finest tape", named: "-", may: "mark apart only could precision long", only: act.State},
	{plain: "tape", fig: figLength | figBare, with: "finest precision|think", named: "-", may: "mark apart only tape", only: act.State},
	{plain: "tolerance", fig: figLength | figBare, with: "ifeach|happen offby eachpiece|peror", named: "-", may: "peror sometimes ifeach person eachpiece board boards cut mark happen could", only: act.State},

	{plain: "cost =", fig: figMoney | figBare, with: "quoted|allwood says|check|quote", named: "-", may: "what paper person says each quoted seller person budget kindof check buy wood wall lumber cost allwood", only: act.Check},
	{plain: "cut bay #1 = #2", with: "bay cut says|check|paper", named: "-", may: "where what board boards long kindof person check lengths", figs: []gistFigure{figCount, figLength | figBare}, only: act.Check},
	{plain: "cut @bayno =", fig: figLength | figBare, with: "bayno cut", named: "-", may: "where what board boards long kindof lengths", only: act.Check},
	{plain: "cut bay 1 =", fig: figLength | figBare, with: "first bay cut", named: "-", may: "where what board boards long kindof lengths", only: act.Check},
	{plain: "cut bay 2 =", fig: figLength | figBare, with: "second bay cut", named: "-", may: "where what board boards long kindof lengths", only: act.Check},
	{plain: "cut bay 3 =", fig: figLength | figBare, with: "third bay cut", named: "-", may: "where what board boards long kindof lengths", only: act.Check},
	{plain: "cut post =", fig: figLength | figBare, with: "post cut", named: "-", may: "where what added kindof long", only: act.Check},
	{plain: "boards #2 #3 = #1", with: "lists|check|quote", named: "-", may: "quote seller board boards wood lengths kindof paper buy many", figs: []gistFigure{figCount, figSize, aBoard}, only: act.Check},
	{plain: "marks = #*", with: "mark", named: "-", may: "kindof could post", list: figLength | figBare, only: act.Check},
}
