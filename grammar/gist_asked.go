package grammar

// askedSenses are the senses of words about what is asked for.
const askedSenses = `
howmuch: how_much
mark: MARK pencil_marks pencil_lines layout_marks mark_out marks marking
bracketsgo: screw_holes holes
step: step steps procedure sequence order_of_work order_of_operations what_order in_what_order begin start starting getting_started get_started first next
caution: worry worried worries concern concerned danger dangers dangerous hazard hazards risk risks safety safe watch_out watch_out_for careful beware aware look_out_for be_careful_of caution cautions pitfalls hurt go_wrong goes_wrong trip_me_up warnings warning mind mindful
draw: draw drawing drawn picture sketch diagram illustration image look_like looks_like elevation
layout: layout arrangement lay_out laid_out figures results result whole_thing everything solution answer come_out comes_out turn_out turns_out
options: options option choices choice possibilities alternatives combinations ways_to_do_it what_would_work what_works what_fits which_would_work which_counts different_ways
csv: spreadsheet csv spread_sheet comma_separated table_file data_file
`

// askedLines are what is wanted of what is asked for without a figure.
var askedLines = []gistLine{
	{"ask shopping", "buy", "what tell says shouldi could how many board wood post bracket budget long should everything"},
	{"ask cost", "cost", "what tell how howmuch budget wood wall"},
	{"ask cuts", "cut board|post|long what|how|tell", "shouldi could what how tell long board post stiff many"},
	{"ask cuts as csv", "csv cut", "could tell board long"},
	{"ask shopping as csv", "csv buy", "tell wood"},
	{"ask marks as csv", "csv mark", "tell board post bracket"},
	{"ask marks", "mark what|where|tell|how", "shouldi could board post bracket bracketsgo high highup"},
	{"ask steps", "step what|where|tell|how", "shouldi could person"},
	{"ask cautions", "caution what|tell|how", "shouldi could design about should"},
	{"ask drawing", "draw tell|what|could", "wall layout how"},
	{"ask layout", "layout tell|what|how", "wall design"},
	{"ask options", "options tell|what", "board wall"},
	{"ask posts", "where post", "added tell step"},
}
