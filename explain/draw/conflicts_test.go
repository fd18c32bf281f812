package draw

import "saywright/solver"

// conflicts are one of each kind, with the sums that the solver records for them, worked out by hand.
func conflicts() map[string]solver.Conflict {
	num, tally := func(s string) solver.Expr { return solver.Num(q(s)) }, solver.Tally
	work := func(of, note, from string, e solver.Expr) solver.Work {
		w := solver.Line(of, note, e)
		w.From = from
		return w
	}
	rule := func(name string) solver.Rule { return solver.Rule{Rule: name, Says: name + " as said"} }
	return map[string]solver.Conflict{
		"brackets": {About: "up", Rules: []solver.Rule{rule("gap"), rule("bracket clearance")}, Work: []solver.Work{
			work("gap", "clash", "bracket clearance|gap", solver.Compare(num("2"), "<=", num("13/8")))}},
		"seven": {About: "up", Rules: []solver.Rule{rule("wall height"), rule("rails"), rule("rail size"), rule("bracket clearance")}, Work: []solver.Work{
			work("rail face", "wood", "rail size", solver.Product(tally(7), num("11/2"))),
			work("gap", "gaps", "bracket clearance", solver.Product(tally(6), num("2"))),
			work("wall height", "sum", "", solver.Sum(num("77/2"), num("12"))),
			work("wall height", "clash", "wall height", solver.Compare(num("101/2"), "<=", num("50")))}},
		"three": {About: "up", Rules: []solver.Rule{rule("wall height"), rule("rails"), rule("gap"), rule("bottom gap")}, Work: []solver.Work{
			work("rail face", "wood", "rail size", solver.Product(tally(3), num("11/2"))),
			work("gap", "gaps", "gap", solver.Product(tally(2), num("4"))),
			work("wall height", "sum", "", solver.Sum(num("33/2"), num("8"), num("4"))),
			work("wall height", "clash", "wall height", solver.Compare(num("48"), "<=", num("57/2")))}},
		"floor": {About: "up", Rules: []solver.Rule{rule("bottom gap"), rule("bracket ear")}, Work: []solver.Work{
			work("bottom gap", "clash", "bracket ear|bottom gap", solver.Compare(num("1"), "<=", num("1/2")))}},
		"post": {About: "up", Rules: []solver.Rule{rule("post height"), rule("wall height"), rule("bracket ear")}, Work: []solver.Work{
			work("post height", "sum", "", solver.Sum(num("40"), num("1"))),
			work("post height", "clash", "post height", solver.Compare(num("41"), "<=", num("40")))}},
		"guard": {About: "up", Rules: []solver.Rule{rule("gap"), rule("guard gap")}, Work: []solver.Work{
			work("gap", "clash", "gap|guard gap", solver.Compare(num("5"), "<", num("4")))}},
		"board": {About: "along", Rules: []solver.Rule{rule("span"), rule("bays"), rule("stock")}, Work: []solver.Work{
			work("span", "clash", "span|stock", solver.Compare(num("200"), "<=", num("3075/16")))}},
		"opening": {About: "along", Rules: []solver.Rule{rule("opening")}, Work: []solver.Work{
			work("opening", "clash", "opening|opening", solver.Compare(num("24"), "<=", num("20")))}},
		"span": {About: "along", Rules: []solver.Rule{rule("span"), rule("opening"), rule("bay")}, Work: []solver.Work{
			work("span", "sum or more", "", solver.Sum(num("80"), num("36"))),
			work("span", "clash", "span", solver.Compare(num("116"), "<", num("100")))}},
		"short": {About: "along", Rules: []solver.Rule{rule("span"), rule("bay")}, Work: []solver.Work{
			work("span", "sum", "", solver.Sum(num("48"), num("30"), num("7/2"))),
			work("span", "clash", "span", solver.Compare(num("100"), "<=", num("163/2")))}},
		"tied": {About: "both", Rules: []solver.Rule{rule("gap"), rule("opening")}, Work: []solver.Work{
			work("gap", "clash", "gap|opening", solver.Compare(num("12"), "<=", num("10")))}},
		"touch": {About: "up", Rules: []solver.Rule{rule("gap"), rule("guard gap")}, Work: []solver.Work{
			work("gap", "clash", "gap|guard gap", solver.Compare(num("4"), "<", num("4")))}},
		"count": {About: "up", Work: []solver.Work{
			work("rails", "clash", "", solver.Compare(solver.Tally(7), "<=", solver.Tally(6)))}},
		"none": {About: "up"},
	}
}

// drawable are those of them that show lengths.
func drawable() []string {
	return []string{"board", "brackets", "floor", "guard", "opening", "post", "seven", "short", "span", "three", "tied", "touch"}
}
