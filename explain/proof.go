package explain

import (
	"saywright/solver"
	"saywright/solver/exact"
)

// proofSum are the lines that show that no plan buys less.
var proofSum = map[string]bool{
	"out of one board": true, "fits the board": true, "two together": true, "pieces and kerfs": true, "one board fewer holds": true,
	"more than that": true, "charged in all": true, "less the fees": true, "boards to buy": true,
}

// planProof says of each size what is bought, and why nothing less does.
func (v *voice) planProof() {
	for _, f := range v.facts("plan") {
		if len(f.Names) < 3 || len(f.Nums) < 5 {
			continue
		}
		v.p.note(v.planWords(f))
	}
	v.chargeTables()
}

func (v *voice) planWords(f solver.Fact) string {
	name, goal, proven := f.Names[0], f.Names[1], f.Names[2] == "proven"
	n := ints(f.Nums[:1])[0]
	text := size(name) + ": "
	if n == 0 {
		text += "nothing to buy"
	} else {
		text += plural(n, "board", "boards") + ", " + v.length(f.Nums[1]) + " in all"
	}
	if k := ints(f.Nums[2:3])[0]; k > 0 {
		text += ", and " + count(k) + " of yours"
	}
	if n == 0 && proven {
		return text
	}
	return text + "; " + v.atLeast(f, goal, proven) + v.proofOf(name)
}

// atLeast says that nothing does better, or how much better a plan might still be.
func (v *voice) atLeast(f solver.Fact, goal string, proven bool) string {
	switch {
	case proven && goal == "cost":
		return "no plan costs less"
	case proven:
		return "no plan takes less"
	case goal == "cost" && len(f.Nums) > 6:
		return "I could not prove it the cheapest: none costs less than " + money(f.Nums[6])
	}
	return "I could not prove it the shortest: none takes less than " + v.length(f.Nums[4])
}

// proofOf says the shortest proof for a size: two pieces never share a board, or the boards hold too little.
func (v *voice) proofOf(name string) string {
	if v.speaksOf("one piece a board", name) {
		for _, w := range v.a.Work {
			if w.Note == "two together" && ofSize(w, name) {
				return ". Each piece takes a board of its own: two together take " + v.side(w.Expr.Args[0]) + ", over " + v.amount(w.Expr.Args[1])
			}
		}
	}
	if v.speaksOf("room for no fewer", name) {
		for _, w := range v.a.Work {
			if w.Note == "more than that" && ofSize(w, name) {
				return ". The pieces and kerfs take " + v.amount(solver.Expr{Value: w.Expr.Args[0].Value}) + ", and one board fewer holds " +
					v.amount(solver.Expr{Value: w.Expr.Args[1].Value})
			}
		}
	}
	for _, f := range v.facts("proven at least") {
		if len(f.Names) > 0 && f.Names[0] == name && !v.a.To.Full {
			return ". A table of charges shows it (`show it all`)"
		}
	}
	return ""
}

// speaksOf reports whether a fact of a key speaks of a size.
func (v *voice) speaksOf(key, name string) bool {
	for _, f := range v.facts(key) {
		if len(f.Names) > 0 && f.Names[0] == name {
			return true
		}
	}
	return false
}

// ofSize reports whether a line is about boards of a size: "2x6", "2x6 192 in".
func ofSize(w solver.Work, name string) bool {
	return w.Of == name || len(w.Of) > len(name) && w.Of[:len(name)+1] == name+" "
}

// chargeTables shows, when all of it was asked for, the charges that prove a plan: each piece is charged so much that no
// board's load is charged more than the board costs; all pieces together are charged what the plan costs.
func (v *voice) chargeTables() {
	if !v.a.To.Full {
		return
	}
	for _, p := range v.facts("proven at least") {
		if len(p.Names) < 2 || len(p.Nums) < 1 {
			continue
		}
		name, goal := p.Names[0], p.Names[1]
		v.p.note(size(name) + ": charge each piece as below. No board's load is then charged more than the board's own " + goalWord(goal) +
			", and all pieces together are charged " + v.bound(goal, p.Nums[0]) + ": no plan comes to less")
		for _, c := range v.casesOf(name) {
			v.caseTable(name, goal, c)
		}
		if v.speaksOf("case by sums", name) {
			v.p.note("Some cases are closed by what the boards' " + goalWord(goal) + "s can add up to at all")
		}
	}
}

func goalWord(goal string) string {
	switch goal {
	case "cost":
		return "price"
	case "boards":
		return "count of one"
	}
	return "length"
}

func (v *voice) bound(goal string, r exact.Rat) string {
	switch goal {
	case "cost":
		return money(r)
	case "boards":
		return number(r)
	}
	return v.length(r)
}

// casesOf lists the cases of a size's proof, in order.
func (v *voice) casesOf(name string) (list []exact.Rat) {
	for _, f := range v.facts("charge") {
		if len(f.Names) > 0 && f.Names[0] == name && len(f.Nums) > 0 && (len(list) == 0 || !list[len(list)-1].Eq(f.Nums[0])) {
			list = append(list, f.Nums[0])
		}
	}
	return list
}

func (v *voice) caseTable(name, goal string, at exact.Rat) {
	t := newTable("piece", "how many", "charge each")
	for _, f := range v.facts("case") {
		if len(f.Names) > 1 && f.Names[0] == name && len(f.Nums) > 2 && f.Nums[0].Eq(at) {
			t.title = "With " + f.Names[1] + " " + solver.Fraction(f.Nums[1]) + " of those boards:"
		}
	}
	for _, f := range v.facts("charge") {
		if len(f.Names) > 0 && f.Names[0] == name && len(f.Nums) > 3 && f.Nums[0].Eq(at) {
			charge := number(f.Nums[3])
			if goal == "cost" {
				charge = mark(cashExact, f.Nums[3].String())
			}
			t.row(v.bare(f.Nums[1]), number(f.Nums[2]), charge)
		}
	}
	v.p.add(*t)
}
