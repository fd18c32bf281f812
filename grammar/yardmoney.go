package grammar

import "slices"

// struckOff sets "cross the fourteens off" to "drop the fourteens from the list".
func struckOff(atoms []atom) []atom {
	for i := range atoms {
		if !yardStrikers[atoms[i].text] || !yardClauseOpens(atoms[:i], nil) {
			continue
		}
		for j := i + 2; j < len(atoms) && j < i+7 && atoms[j].kind != aSign; j++ {
			if (atoms[j].text == "off" || atoms[j].text == "out") && endsPart(atoms, j+1) && lengthsIn(atoms[i+1:j]) {
				out := reworded(atoms, j, j+1, "from", "the", "list")
				out[i].text = "drop"
				return out
			}
		}
	}
	return atoms
}

var yardStrikers = wordSet("cross strike scratch rule knock tick")

// yardFigureEnd is the atom behind a figure that begins at an atom: digits, number words, a sign of money and its words.
func yardFigureEnd(atoms []atom, i int) int {
	for ; i < len(atoms); i++ {
		a := atoms[i]
		if a.kind == aDigits || a.text == "$" || spelledNumber(a.text) || yardMoneyWords[a.text] || a.text == "." && a.glued || a.text == "-" && a.glued || a.text == "hundred" {
			continue
		}
		if (a.text == "and" || a.text == "a") && i+1 < len(atoms) && (atoms[i+1].kind == aDigits || spelledNumber(atoms[i+1].text) || atoms[i+1].text == "a" || atoms[i+1].text == "quarter") {
			continue
		}
		break
	}
	return i
}

var yardMoneyWords = wordSet("dollar dollars buck bucks cent cents quarter even flat")

// figureIsMoney reports whether a figure is said as money.
func figureIsMoney(figure []atom) bool {
	return slices.ContainsFunc(figure, func(a atom) bool { return a.text == "$" || yardMoneyWords[a.text] })
}

// wasBefore leaves out what a price or the budget was: "a pack of 100 screws was 7.50 but it's 8.20 now".
func wasBefore(atoms []atom) []atom {
	for i := 1; i+3 < len(atoms); i++ {
		if w := atoms[i].text; w != "was" && w != "were" && w != "cost" {
			continue
		}
		end := yardFigureEnd(atoms, i+1)
		if end == i+1 || !yardItemIn(atoms[:i]) && !slices.ContainsFunc(atoms[:i], func(a atom) bool { return a.text == "budget" || a.text == "price" }) {
			continue
		}
		if end < len(atoms) && (atoms[end].text == "apiece" || atoms[end].text == "each") {
			end++
		}
		if end < len(atoms) && atoms[end].text == "," {
			end++
		}
		if end >= len(atoms) || atoms[end].text != "but" && atoms[end].text != "and" && atoms[end].text != "now" {
			continue
		}
		now := end
		for now < len(atoms) && yardChangedTo[atoms[now].text] {
			now++
		}
		if now == end+1 && atoms[end].text != "now" || now >= len(atoms) || yardFigureEnd(atoms, now) == now {
			continue
		}
		out := append(append([]atom{}, atoms[:i+1]...), atoms[now:]...)
		out[i].text = "is"
		return out
	}
	return atoms
}

// yardChangedTo are the words between what something was and what it is.
var yardChangedTo = wordSet("but and now it they that is are has have been got gone went cut dropped raised bumped reduced lowered marked down up to risen come fell rose jumped trimmed slashed knocked the price budget s 's")

// priceMovedTo sets "raise the price of a post base to 26 dollars" to "a post base costs 26 dollars".
func priceMovedTo(atoms []atom) []atom {
	for i := range atoms {
		if !priceMovers[atoms[i].text] || !yardClauseOpens(atoms[:i], nil) {
			continue
		}
		j := i + 1
		for j < len(atoms) && (atoms[j].text == "up" || atoms[j].text == "down" || atoms[j].text == "the") {
			j++
		}
		if j+1 >= len(atoms) || atoms[j].text != "price" || atoms[j+1].text != "of" && atoms[j+1].text != "for" && atoms[j+1].text != "on" {
			continue
		}
		for k := j + 2; k+1 < len(atoms) && atoms[k].kind != aSign; k++ {
			if atoms[k].text == "to" && yardItemIn(atoms[j+2:k]) {
				out := append(append([]atom{}, atoms[:i]...), atoms[j+2:k]...)
				cost := atoms[k]
				cost.text = "costs"
				return append(append(out, cost), atoms[k+1:]...)
			}
		}
	}
	return atoms
}

var priceMovers = wordSet("raise lower increase reduce bump drop bring put cut hike mark knock change set move update correct fix adjust")

// moneyBuys sets "nineteen dollars buys one post base" to "one post base costs nineteen dollars".
func moneyBuys(atoms []atom) []atom {
	for i := 1; i+1 < len(atoms); i++ {
		w := atoms[i].text
		if w != "buys" && w != "gets" && w != "buy" && w != "get" && w != "bought" || yardClauseOpens(atoms[:i], nil) {
			continue
		}
		from := i - 1
		for from > 0 && (!yardClauseOpens(atoms[:from], nil) || yardFigureEnd(atoms, from-1) > from-1) {
			from--
		}
		stop := i
		if atoms[i-1].text == "will" || atoms[i-1].text == "would" {
			stop--
		}
		if yardFigureEnd(atoms, from) != stop || stop == from || !figureIsMoney(atoms[from:stop]) {
			continue
		}
		start := i + 1
		if w := atoms[start].text; w == "you" || w == "me" || w == "us" {
			start++
		}
		end := start
		for end < len(atoms) && atoms[end].kind == aWord || end < len(atoms) && atoms[end].kind == aDigits {
			end++
		}
		if !yardItemIn(atoms[start:end]) {
			continue
		}
		cost := atoms[i]
		cost.text = "costs"
		out := append(append([]atom{}, atoms[:from]...), atoms[start:end]...)
		return append(append(append(out, cost), atoms[from:stop]...), atoms[end:]...)
	}
	return atoms
}

// boughtFor sets "you can get a bracket for two ninety nine" to "a bracket costs two ninety nine".
func boughtFor(atoms []atom) []atom {
	if len(atoms) == 0 || atoms[len(atoms)-1].text == "?" {
		return atoms
	}
	for i := 1; i+3 < len(atoms); i++ {
		if !yardAcquires[atoms[i].text] || slices.ContainsFunc(atoms[:i], func(a atom) bool {
			return a.text == "what" || a.text == "if" || a.text == "could" || claimsCost[a.text]
		}) {
			continue
		}
		from := i
		for from > 0 && (yardAcquirers[atoms[from-1].text] || isPerson(atoms[from-1].text) || vocab().articles[atoms[from-1].text]) {
			from--
		}
		if standAt(atoms, i-1, "only") && !speakers[atoms[from].text] || standAt(atoms, i+1, "only") && !speakers[atoms[from].text] {
			continue // "they only have twelves at 9.79" tells what is on sale, too
		}
		if from == i || !yardClauseOpens(atoms[:from], nil) || atoms[from].text == "can" || atoms[from].text == "may" {
			continue
		}
		start := i + 1
		for start < len(atoms) && (atoms[start].text == "me" || atoms[start].text == "us" || atoms[start].text == "up") {
			start++
		}
		j := start
		for j < len(atoms) && atoms[j].text != "for" && atoms[j].text != "at" && (atoms[j].kind != aSign || atoms[j].text == "-") {
			j++
		}
		if j >= len(atoms) || j == start || j > start+7 || atoms[j].kind == aSign || !yardItemIn(atoms[start:j]) {
			continue
		}
		if atoms[j].text == "at" && !pricedFigure(atoms, j+1) && !pairAhead(nil, atoms[j+1:]) {
			continue // "we have the base at 1-1/2"
		}
		end := yardFigureEnd(atoms, j+1)
		if end < len(atoms) && (atoms[end].text == "each" || atoms[end].text == "apiece" || atoms[end].text == "even") {
			end++
		}
		if end == j+1 || !endsPart(atoms, end) && atoms[end].text != "so" && atoms[end].text != "now" && atoms[end].text != "and" {
			continue
		}
		out := append(append([]atom{}, atoms[:from]...), atoms[start:]...)
		out[from+j-start].text = "costs"
		return out
	}
	return atoms
}

var (
	yardAcquires  = wordSet("get gets got buy buys bought find finds found have had picked gives sells lets")
	yardAcquirers = wordSet("i we you they he she my our the can will have has could just only old good")
	claimsCost    = wordSet("says say thinks think claims claim reckons reckon said thought list quote bid")
)

// dashedPrice sets "anchor - 2.75 a piece" to "anchor costs 2.75 a piece", and "$18.75/post base" to "$18.75 per post base".
func dashedPrice(atoms []atom) []atom {
	for i := 1; i+1 < len(atoms); i++ {
		switch a := atoms[i]; {
		case a.text == "-" && !a.glued && !atoms[i+1].glued && soldItems[atoms[i-1].text] && pricedFigure(atoms, i+1):
			return reworded(atoms, i, i+1, "costs")
		case a.text == "-" && !a.glued && !atoms[i+1].glued && yardVerifying[atoms[i+1].text]:
			out := append([]atom{}, atoms...)
			out[i].text = ","
			return out
		case a.text == "/" && atoms[i-1].kind == aDigits && yardItemIn(atoms[i+1:min(i+3, len(atoms))]) && !lengthsIn(atoms[i+1:min(i+3, len(atoms))]) && slices.ContainsFunc(atoms[max(0, i-4):i], func(a atom) bool { return a.text == "$" }):
			return reworded(atoms, i, i+1, "per")
		case a.text == "," && i > 4 && thirdMeasure(atoms[:i]) && yardFigureEnd(atoms, i+1) > i+1 && figureIsMoney(atoms[i+1:yardFigureEnd(atoms, i+1)]):
			return reworded(atoms, i, i+1, "costs")
		}
	}
	return atoms
}

// yardVerifying are words that have what stands before them checked.
var yardVerifying = wordSet("verify check right correct ok okay true agree confirm")

// pricedFigure reports whether a figure is one of money, or priced by the piece.
func pricedFigure(atoms []atom, i int) bool {
	end := yardFigureEnd(atoms, i)
	if end == i {
		return false
	}
	return figureIsMoney(atoms[i:end]) || end < len(atoms) && (atoms[end].text == "a" || atoms[end].text == "each" || atoms[end].text == "apiece" || atoms[end].text == "ea") || end >= i+1 && len(atoms[i].text) > 3
}

// thirdMeasure reports whether "two by six by ten" stands at the end.
func thirdMeasure(before []atom) bool {
	n := len(before)
	by := func(a atom) bool { return a.text == "by" || a.text == "x" }
	return n >= 5 && by(before[n-2]) && by(before[n-4])
}

// forWhatElse leaves out what extra pieces are for: "two more 4x4s at 52 inches for the gate".
func forWhatElse(atoms []atom) []atom {
	if !yardSizeIn(atoms) || !slices.ContainsFunc(atoms, func(a atom) bool { return piecesBesideWords[a.text] }) {
		return atoms
	}
	for i := 3; i+1 < len(atoms); i++ {
		if atoms[i].text != "for" || !vocab().articles[atoms[i+1].text] && !owned[atoms[i+1].text] && !madeThings()[atoms[i+1].text] {
			continue
		}
		j := i + 1
		for j < len(atoms) && atoms[j].kind == aWord && atoms[j].text != "and" && j < i+5 {
			j++
		}
		if endsPart(atoms, j) && madeThings()[atoms[j-1].text] {
			return cutOut(atoms, i, j)
		}
	}
	return atoms
}

var piecesBesideWords = wordSet("extra xtra more also additional besides another added add")

// dearOnes leaves out why something costs so much: ", the coated ones are dear".
func dearOnes(atoms []atom) []atom {
	for i := 2; i+3 < len(atoms); i++ {
		if atoms[i].text != "," && atoms[i].text != "because" && atoms[i].text != "since" {
			continue
		}
		j := i + 1
		for j < len(atoms) && atoms[j].kind == aWord && j < i+8 {
			j++
		}
		if !endsPart(atoms, j) || j < i+4 || !yardCostly[atoms[j-1].text] || atoms[i+1].text == "is" || atoms[i+1].text == "are" || atoms[i+1].text == "how" || atoms[i+1].text == "why" {
			continue
		}
		if slices.ContainsFunc(atoms[i+1:j], func(a atom) bool { return a.text == "are" || a.text == "is" || a.text == "get" }) && !slices.ContainsFunc(atoms[i+1:j], func(a atom) bool { return a.text == "not" || a.text == "too" || a.text == "if" }) {
			return cutOut(atoms, i, j)
		}
	}
	return atoms
}

var yardCostly = wordSet("dear expensive pricey yardCostly cheaper dearer pricier")

// andAskToo leaves out the "too" of what is asked besides: "let me see a drawing and tell me the cost too".
func andAskToo(atoms []atom) []atom {
	n := len(atoms)
	for n > 0 && atoms[n-1].kind == aSign {
		n--
	}
	if n < 5 || atoms[n-1].text != "too" && atoms[n-1].text != "also" || slices.ContainsFunc(atoms, func(a atom) bool { return a.kind == aDigits || spelledNumber(a.text) || soldLengths[a.text] }) {
		return atoms
	}
	for i := 1; i+3 < n; i++ {
		if atoms[i].text == "and" && (atoms[i+1].text == "tell" || atoms[i+1].text == "show" || atoms[i+1].text == "give") {
			return cutOut(atoms, n-1, n)
		}
	}
	return atoms
}
