package grammar

import "slices"

// rethoughtPrice leaves out a price that is taken back at once: "eighteen, no, seventeen eighty for a sixteen footer".
func rethoughtPrice(atoms []atom) []atom {
	for i := 0; i+5 < len(atoms); i++ {
		j := yardFigureEnd(atoms, i)
		if j == i || atoms[j-1].kind == aDigits || i > 0 && yardFigureEnd(atoms, i-1) > i-1 || j+2 >= len(atoms) {
			continue
		}
		k := j
		for k < len(atoms) && (atoms[k].text == "," || yardTakesBack[atoms[k].text]) {
			k++
		}
		end := yardFigureEnd(atoms, k)
		if k < j+2 || end < k+2 || end+1 >= len(atoms) || atoms[end].text != "for" || !yardItemIn(atoms[end+1:]) {
			continue
		}
		return cutOut(atoms, i, k)
	}
	return atoms
}

var yardTakesBack = wordSet("no sorry wait nope oops")

// priceFirst sets "sixteen eighty for every 2x6 in the sixteen foot" to "every 2x6 in the sixteen foot costs sixteen eighty".
func priceFirst(atoms []atom) []atom {
	for i := 0; i+3 < len(atoms); i++ {
		end := yardFigureEnd(atoms, i)
		if end < i+2 || end+1 >= len(atoms) || atoms[end].text != "for" && atoms[end].text != "per" || i > 0 && !payingLead(atoms[:i]) {
			continue
		}
		stop := end + 1
		for stop < len(atoms) && (atoms[stop].kind != aSign || atoms[stop].glued && !breaksClause(atoms, stop)) && atoms[stop].text != "so" && atoms[stop].text != "and" {
			stop++
		}
		if goods := atoms[end+1 : stop]; !yardItemIn(goods) || !endsPart(atoms, stop) || atoms[i].kind != aWord && !figureIsMoney(atoms[i:end]) || slices.ContainsFunc(goods, func(a atom) bool { return a.text == "all" || a.text == "the" && !yardSizeIn(goods) }) {
			continue
		}
		lead := i
		for lead > 0 && atoms[lead-1].kind == aWord && payingWords[atoms[lead-1].text] {
			lead--
		}
		cost := atoms[end]
		cost.text = "costs"
		out := append(append([]atom{}, atoms[:lead]...), atoms[end+1:stop]...)
		return append(append(append(out, cost), atoms[i:end]...), atoms[stop:]...)
	}
	return atoms
}

// payingLead reports whether nothing but words of paying stands between the beginning of a clause and a price.
func payingLead(before []atom) bool {
	n := len(before)
	for n > 0 && before[n-1].kind == aWord && payingWords[before[n-1].text] {
		n--
	}
	return n < len(before) && yardClauseOpens(before[:n], nil) || n == len(before) && yardClauseOpens(before, nil)
}

var payingWords = wordSet("would will ring it up i we should reckon figure count on pay are am paying with can must plan that is call take")
