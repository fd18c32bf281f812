package grammar

// The kinds of frames that speak of the site, the yard and the saw, and of orders: their fillings one by one. A place is a word in braces: a sum of
// money ($), a size (S), a length of lumber as an adjective (F, G, H) or as a noun (fs, gs, hs), a count (N), a length (V), a small
// one (D), a side (SIDE), an ordinal and its number (I, i), a name (NAME).

func fillsOf(form string, each ...[]string) (out []filling) {
	for _, places := range each {
		out = append(out, filling{places[:len(places)-1], form + places[len(places)-1]})
	}
	return out
}

// plainFills are the kinds without places.
var plainFills = map[string]string{
	"equal": "equal bays", "samelength": "same length", "metric": "units = metric", "inches": "units = customary", "least": "least waste", "cheapest": "cheapest", "fewestp": "fewest posts",
	"restart": "start over", "recap": "recap", "steps": "ask steps", "options": "ask options", "posts": "ask posts", "cost?": "ask cost", "quit": "quit",
}

// smallFills and longFills are the kinds with one length.
var (
	smallFills = map[string]string{"kerf": "kerf", "tape": "tape", "fit": "fit", "ear": "bracket ear"}
	longFills  = map[string]string{"overall": "overall", "centers": "centers", "span": "span"}
)

var siteFills = map[string][]filling{
	"budget":       fillsOf("budget = ", []string{"$", "412.50", "412.50"}, []string{"$", "290", "290.00"}),
	"cost":         fillsOf("check cost = ", []string{"$", "412.50", "412.50"}, []string{"$", "290", "290.00"}),
	"bracketprice": fillsOf("price bracket = ", []string{"$", "3.45", "3.45"}),
	"screwprice":   fillsOf("price screws 100 = ", []string{"$", "8.75", "8.75"}),
	"baseprice":    fillsOf("price post base = ", []string{"$", "17.90", "17.90"}),
	"price":        fillsOf("price ", []string{"S", "2x6", "F", "twelve foot", "$", "11.85", "2x6 144 in = 11.85"}, []string{"S", "4x4", "F", "10 foot", "$", "18.40", "4x4 120 in = 18.40"}),
	"stockmore":    fillsOf("stock += ", []string{"fs", "tens", "F", "ten foot", "120 in"}, []string{"fs", "sixteens", "F", "sixteen foot", "192 in"}),
	"stockless":    fillsOf("stock -= ", []string{"fs", "tens", "F", "ten foot", "120 in"}, []string{"fs", "sixteens", "F", "sixteen foot", "192 in"}),
	"have":         fillsOf("have ", []string{"N", "six", "F", "twelve foot", "S", "2x6", "2x6 144 in x 6"}, []string{"N", "4", "F", "eight foot", "S", "1x4", "1x4 96 in x 4"}),
	"spare":        fillsOf("spare = ", []string{"N", "two", "2"}, []string{"N", "3", "3"}),
	"floor":        fillsOf("floor at right = -", []string{"D", "half an inch", "SIDE", "right", "1/2 in"}, []string{"D", `3/4"`, "SIDE", "right", "3/4 in"}),
	"drop":         fillsOf("drop = ", []string{"V", "thirty inches", "30 in"}, []string{"V", `18"`, "18 in"}),
	"clearance":    fillsOf("bracket clearance = ", []string{"V", "an inch and a half", "1-1/2 in"}, []string{"V", `1-3/4"`, "1-3/4 in"}),
	"face":         fillsOf("rail face = ", []string{"V", "five and three eighths", "5-3/8 in"}, []string{"V", `5-7/16"`, "5-7/16 in"}),
	"leans":        fillsOf("left post leans ", []string{"D", `3/8"`, "SIDE", "right", "V", "four feet", "3/8 in right in 48 in"}, []string{"D", "half an inch", "SIDE", "left", "V", "42 inches", "1/2 in left in 42 in"}),
	"baytop":       fillsOf("measured bay ", []string{"i", "1", "I", "first", "V", "68-3/8", "1 top = 68-3/8 in"}, []string{"i", "2", "I", "second", "V", "sixty six and a half", "2 top = 66-1/2 in"}),
	"baybottom":    fillsOf("measured bay ", []string{"i", "1", "I", "first", "V", "68-3/8", "1 bottom = 68-3/8 in"}, []string{"i", "2", "I", "second", "V", "sixty six and a half", "2 bottom = 66-1/2 in"}),
	"fixed":        fillsOf("fixed rail ", []string{"i", "2", "I", "second", "V", "16 inches", "2 top = 16 in"}, []string{"i", "3", "I", "third", "V", "24-1/4", "3 top = 24-1/4 in"}),
	"railtop":      fillsOf("rail ", []string{"i", "2", "I", "second", "V", "16 inches", "2 top = 16 in"}, []string{"i", "3", "I", "third", "V", "24-1/4", "3 top = 24-1/4 in"}),
	"side":         fillsOf("opening side = ", []string{"SIDE", "left", "left"}, []string{"SIDE", "right", "right"}),
	"from":         fillsOf("opening from ", []string{"SIDE", "left", "V", "two feet", "left = 24 in"}, []string{"SIDE", "right", "V", `30"`, "right = 30 in"}),
	"save":         fillsOf("save ", []string{"NAME", "porch", "porch"}, []string{"NAME", "shed", "shed"}),
	"open":         fillsOf("open ", []string{"NAME", "porch", "porch"}, []string{"NAME", "shed", "shed"}),
}

// siteFillings are all fillings of a kind of the site; a list of lengths may have two of them or three.
func siteFillings(f frame) []filling {
	if form, ok := plainFills[f.kind]; ok {
		return []filling{{nil, form}}
	}
	if q, ok := smallFills[f.kind]; ok {
		return fillsOf(q+" = ", []string{"D", "an eighth", "1/8 in"}, []string{"D", "1/16 inch", "1/16 in"})
	}
	if q, ok := longFills[f.kind]; ok {
		return fillsOf(q+" = ", []string{"V", "twelve foot six", "150 in"}, []string{"V", `148"`, "148 in"})
	}
	if f.kind == "stock" {
		three := filling{[]string{"fs", "tens", "gs", "twelves", "hs", "sixteens", "F", "ten foot", "G", "twelve foot", "H", "sixteen foot"}, "stock = 120 in, 144 in, 192 in"}
		if left := f.fill([]string{"hs", "", "H", ""}); left == f.said {
			three.form = "stock = 120 in, 144 in"
		}
		return []filling{three}
	}
	return siteFills[f.kind]
}
