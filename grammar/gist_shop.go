package grammar

// shopSenses are the senses of words about what is bought, cut and fastened.
const shopSenses = `
buy: BUY shop shopping purchases purchasing buying bring_home pick_up get_from_the_yard get_at_the_yard ordering order materials_list material_list list_of_materials shopping_list bill_of_materials lumber_list order_list haul_home load_up
cost: PRICE spend spending pay paying set_me_back set_us_back run_me run_us money expensive damage come_to_in_money dollars
cut: CUT cuts cut cutting saw sawn sawed sawing trimmed lop cut_list cutting_list list_of_cuts
limit: limit cap ceiling maximum max restriction bound
blade: blade saw saw_blade sawblade kerf saw's blade's
eat: eats eat takes take takes_out removes cuts wide loses lose waste wastes turns_to_dust
trim: trim squaring square squared square_up square_off squaring_up squaring_the_end clean_up
peror: per_board each_board every_board a_board per_cut each_cut every_cut a_cut
spare: spare spares extra extras waste_allowance allowance just_in_case to_be_safe safe_side on_hand margin for_mistakes crooked twisted warped bad_ones
budget: budget spend spending pay money afford cost limit allowance dollars stretch materials material lumber all_materials everything total
sell: SELLS sells sell carry carries stock stocks stocked available offer offers come_in comes_in keep_in_stock sold in_lengths
has: has got_in got have carried had
seller: SELLER lumber_aisle aisle lumberyard home_center place_in_town lumber_yard timber_merchant merchant mill sawmill nearby
outof: out_of run_out_of ran_out_of sold_out sold_out_of no_longer no_more not_any_more do_not_have does_not_have discontinued gone
lengths: lengths length boards rails lumber timber wood planks pieces sizes ones
collide: collide collides clash clashes CLASH touch touches interfere interferes get_in_each_other's_way
once: once when if as_soon_as whenever unless
closer: closer tighter nearer narrower
precision: precision precise accurate accuracy nearest finest smallest_mark mark_to work_to tape measure
little: little least less minimal minimum as_little_as_possible as_little smallest fewest lowest
waste: WASTE scrap offcuts wasted thrown_away thrown_out end_up_as_scrap left_over leftover leftovers discarded
wood: lumber wood timber material
cheap: CHEAP CHEAPEST least_expensive most_economical most_affordable least_money lowest_cost lowest_price
`

// shopNames are the quantities of what is bought, cut and fastened.
var shopNames = []gistName{
	{plain: "they sell #*", with: "sell seller|lengths", named: "-", may: "seller person lengths long wood board", list: figFooter | figLength | figBare},
	{plain: "they sell #*", with: "has seller", named: "-", may: "seller lengths long wood board sell", list: figFooter | figLength},
	{plain: "they are out of #*", with: "outof seller|lengths|person", named: "-", may: "seller person lengths long wood board", list: figFooter | figLength | figBare},
	{plain: "bracket clearance", fig: figLength | figBare, with: "bracket collide", named: "-", may: "stack once gap closer under next together"},
	{plain: "bracket thickness", fig: figLength | figBare, with: "bracket thick", named: "", may: ""},
	{plain: "kerf", fig: figLength | figBare, with: "blade eat|cut|wide|thick", named: "blade wide|thick", may: "peror cut"},
	{plain: "budget", fig: figMoney, with: "budget", named: "budget", may: "limit spend cost"},
}
