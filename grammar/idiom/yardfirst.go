package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/scan"
)

// rethoughtPrice leaves out a price that is taken back at once: "eighteen, no, seventeen eighty for a sixteen footer".
func rethoughtPrice(atoms []scan.Atom) []scan.Atom {
	for i := 0; i+5 < len(atoms); i++ {
		j := yardFigureEnd(atoms, i)
		if j == i || atoms[j-1].Kind == scan.Digits || i > 0 && yardFigureEnd(atoms, i-1) > i-1 || j+2 >= len(atoms) {
			continue
		}
		k := j
		for k < len(atoms) && (atoms[k].Text == "," || yardTakesBack[atoms[k].Text]) {
			k++
		}
		end := yardFigureEnd(atoms, k)
		if k < j+2 || end < k+2 || end+1 >= len(atoms) || atoms[end].Text != "for" || !YardItemIn(atoms[end+1:]) {
			continue
		}
		return scan.CutOut(atoms, i, k)
	}
	return atoms
}

var yardTakesBack = scan.WordSet("no sorry wait nope oops")

// priceFirst sets "sixteen eighty for every 2x6 in the sixteen foot" to "every 2x6 in the sixteen foot costs sixteen eighty".
func priceFirst(atoms []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(atoms); i++ {
		end := yardFigureEnd(atoms, i)
		if end < i+2 || end+1 >= len(atoms) || atoms[end].Text != "for" && atoms[end].Text != "per" || i > 0 && !payingLead(atoms[:i]) {
			continue
		}
		stop := end + 1
		for stop < len(atoms) && (atoms[stop].Kind != scan.Sign || atoms[stop].Glued && !chunk.BreaksClause(atoms, stop)) && atoms[stop].Text != "so" && atoms[stop].Text != "and" {
			stop++
		}
		if goods := atoms[end+1 : stop]; !YardItemIn(goods) || !chunk.EndsPart(atoms, stop) || atoms[i].Kind != scan.Word && !figureIsMoney(atoms[i:end]) || slices.ContainsFunc(goods, func(a scan.Atom) bool { return a.Text == "all" || a.Text == "the" && !yardSizeIn(goods) }) {
			continue
		}
		lead := i
		for lead > 0 && atoms[lead-1].Kind == scan.Word && payingWords[atoms[lead-1].Text] {
			lead--
		}
		cost := atoms[end]
		cost.Text = "costs"
		out := append(append([]scan.Atom{}, atoms[:lead]...), atoms[end+1:stop]...)
		return append(append(append(out, cost), atoms[i:end]...), atoms[stop:]...)
	}
	return atoms
}

// payingLead reports whether nothing but words of paying stands between the beginning of a clause and a price.
func payingLead(before []scan.Atom) bool {
	n := len(before)
	for n > 0 && before[n-1].Kind == scan.Word && payingWords[before[n-1].Text] {
		n--
	}
	return n < len(before) && yardClauseOpens(before[:n], nil) || n == len(before) && yardClauseOpens(before, nil)
}

var payingWords = scan.WordSet("would will ring it up i we should reckon figure count on pay are am paying with can must plan that is call take")
