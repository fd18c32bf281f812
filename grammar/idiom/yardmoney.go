package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// struckOff sets "cross the fourteens off" to "drop the fourteens from the list".
func struckOff(atoms []scan.Atom) []scan.Atom {
	for i := range atoms {
		if !yardStrikers[atoms[i].Text] || !yardClauseOpens(atoms[:i], nil) {
			continue
		}
		for j := i + 2; j < len(atoms) && j < i+7 && atoms[j].Kind != scan.Sign; j++ {
			if (atoms[j].Text == "off" || atoms[j].Text == "out") && chunk.EndsPart(atoms, j+1) && LengthsIn(atoms[i+1:j]) {
				out := scan.Reworded(atoms, j, j+1, "from", "the", "list")
				out[i].Text = "drop"
				return out
			}
		}
	}
	return atoms
}

var yardStrikers = scan.WordSet("cross strike scratch rule knock tick")

// yardFigureEnd is the atom behind a figure that begins at an atom: digits, number words, a sign of money and its words.
func yardFigureEnd(atoms []scan.Atom, i int) int {
	for ; i < len(atoms); i++ {
		a := atoms[i]
		if a.Kind == scan.Digits || a.Text == "$" || chunk.SpelledNumber(a.Text) || yardMoneyWords[a.Text] || a.Text == "." && a.Glued || a.Text == "-" && a.Glued || a.Text == "hundred" {
			continue
		}
		if (a.Text == "and" || a.Text == "a") && i+1 < len(atoms) && (atoms[i+1].Kind == scan.Digits || chunk.SpelledNumber(atoms[i+1].Text) || atoms[i+1].Text == "a" || atoms[i+1].Text == "quarter") {
			continue
		}
		break
	}
	return i
}

var yardMoneyWords = scan.WordSet("dollar dollars buck bucks cent cents quarter even flat")

// figureIsMoney reports whether a figure is said as money.
func figureIsMoney(figure []scan.Atom) bool {
	return slices.ContainsFunc(figure, func(a scan.Atom) bool { return a.Text == "$" || yardMoneyWords[a.Text] })
}

// wasBefore leaves out what a price or the budget was: "a pack of 100 screws was 7.50 but it's 8.20 now".
func wasBefore(atoms []scan.Atom) []scan.Atom {
	for i := 1; i+3 < len(atoms); i++ {
		if w := atoms[i].Text; w != "was" && w != "were" && w != "cost" {
			continue
		}
		end := yardFigureEnd(atoms, i+1)
		if end == i+1 || !YardItemIn(atoms[:i]) && !slices.ContainsFunc(atoms[:i], func(a scan.Atom) bool { return a.Text == "budget" || a.Text == "price" }) {
			continue
		}
		if end < len(atoms) && (atoms[end].Text == "apiece" || atoms[end].Text == "each") {
			end++
		}
		if end < len(atoms) && atoms[end].Text == "," {
			end++
		}
		if end >= len(atoms) || atoms[end].Text != "but" && atoms[end].Text != "and" && atoms[end].Text != "now" {
			continue
		}
		now := end
		for now < len(atoms) && yardChangedTo[atoms[now].Text] {
			now++
		}
		if now == end+1 && atoms[end].Text != "now" || now >= len(atoms) || yardFigureEnd(atoms, now) == now {
			continue
		}
		out := append(append([]scan.Atom{}, atoms[:i+1]...), atoms[now:]...)
		out[i].Text = "is"
		return out
	}
	return atoms
}

// yardChangedTo are the words between what something was and what it is.
var yardChangedTo = scan.WordSet("but and now it they that is are has have been got gone went cut dropped raised bumped reduced lowered marked down up to risen come fell rose jumped trimmed slashed knocked the price budget s 's")

// priceMovedTo sets "raise the price of a post base to 26 dollars" to "a post base costs 26 dollars".
func priceMovedTo(atoms []scan.Atom) []scan.Atom {
	for i := range atoms {
		if !priceMovers[atoms[i].Text] || !yardClauseOpens(atoms[:i], nil) {
			continue
		}
		j := i + 1
		for j < len(atoms) && (atoms[j].Text == "up" || atoms[j].Text == "down" || atoms[j].Text == "the") {
			j++
		}
		if j+1 >= len(atoms) || atoms[j].Text != "price" || atoms[j+1].Text != "of" && atoms[j+1].Text != "for" && atoms[j+1].Text != "on" {
			continue
		}
		for k := j + 2; k+1 < len(atoms) && atoms[k].Kind != scan.Sign; k++ {
			if atoms[k].Text == "to" && YardItemIn(atoms[j+2:k]) {
				out := append(append([]scan.Atom{}, atoms[:i]...), atoms[j+2:k]...)
				cost := atoms[k]
				cost.Text = "costs"
				return append(append(out, cost), atoms[k+1:]...)
			}
		}
	}
	return atoms
}

var priceMovers = scan.WordSet("raise lower increase reduce bump drop bring put cut hike mark knock change set move update correct fix adjust")

// moneyBuys sets "nineteen dollars buys one post base" to "one post base costs nineteen dollars".
func moneyBuys(atoms []scan.Atom) []scan.Atom {
	for i := 1; i+1 < len(atoms); i++ {
		w := atoms[i].Text
		if w != "buys" && w != "gets" && w != "buy" && w != "get" && w != "bought" || yardClauseOpens(atoms[:i], nil) {
			continue
		}
		from := i - 1
		for from > 0 && (!yardClauseOpens(atoms[:from], nil) || yardFigureEnd(atoms, from-1) > from-1) {
			from--
		}
		stop := i
		if atoms[i-1].Text == "will" || atoms[i-1].Text == "would" {
			stop--
		}
		if yardFigureEnd(atoms, from) != stop || stop == from || !figureIsMoney(atoms[from:stop]) {
			continue
		}
		start := i + 1
		if w := atoms[start].Text; w == "you" || w == "me" || w == "us" {
			start++
		}
		end := start
		for end < len(atoms) && atoms[end].Kind == scan.Word || end < len(atoms) && atoms[end].Kind == scan.Digits {
			end++
		}
		if !YardItemIn(atoms[start:end]) {
			continue
		}
		cost := atoms[i]
		cost.Text = "costs"
		out := append(append([]scan.Atom{}, atoms[:from]...), atoms[start:end]...)
		return append(append(append(out, cost), atoms[from:stop]...), atoms[end:]...)
	}
	return atoms
}

// boughtFor sets "you can get a bracket for two ninety nine" to "a bracket costs two ninety nine".
func boughtFor(atoms []scan.Atom) []scan.Atom {
	if len(atoms) == 0 || atoms[len(atoms)-1].Text == "?" {
		return atoms
	}
	for i := 1; i+3 < len(atoms); i++ {
		if !yardAcquires[atoms[i].Text] || slices.ContainsFunc(atoms[:i], func(a scan.Atom) bool {
			return a.Text == "what" || a.Text == "if" || a.Text == "could" || claimsCost[a.Text]
		}) {
			continue
		}
		from := i
		for from > 0 && (yardAcquirers[atoms[from-1].Text] || chunk.IsPerson(atoms[from-1].Text) || lexicon.Vocab().Articles[atoms[from-1].Text]) {
			from--
		}
		if scan.StandAt(atoms, i-1, "only") && !lex.Speakers[atoms[from].Text] || scan.StandAt(atoms, i+1, "only") && !lex.Speakers[atoms[from].Text] {
			continue // "they only have twelves at 9.79" tells what is on sale, too
		}
		if from == i || !yardClauseOpens(atoms[:from], nil) || atoms[from].Text == "can" || atoms[from].Text == "may" {
			continue
		}
		start := i + 1
		for start < len(atoms) && (atoms[start].Text == "me" || atoms[start].Text == "us" || atoms[start].Text == "up") {
			start++
		}
		j := start
		for j < len(atoms) && atoms[j].Text != "for" && atoms[j].Text != "at" && (atoms[j].Kind != scan.Sign || atoms[j].Text == "-") {
			j++
		}
		if j >= len(atoms) || j == start || j > start+7 || atoms[j].Kind == scan.Sign || !YardItemIn(atoms[start:j]) {
			continue
		}
		if atoms[j].Text == "at" && !pricedFigure(atoms, j+1) && !pairAhead(nil, atoms[j+1:]) {
			continue // "we have the base at 1-1/2"
		}
		end := yardFigureEnd(atoms, j+1)
		if end < len(atoms) && (atoms[end].Text == "each" || atoms[end].Text == "apiece" || atoms[end].Text == "even") {
			end++
		}
		if end == j+1 || !chunk.EndsPart(atoms, end) && atoms[end].Text != "so" && atoms[end].Text != "now" && atoms[end].Text != "and" {
			continue
		}
		out := append(append([]scan.Atom{}, atoms[:from]...), atoms[start:]...)
		out[from+j-start].Text = "costs"
		return out
	}
	return atoms
}

var (
	yardAcquires  = scan.WordSet("get gets got buy buys bought find finds found have had picked gives sells lets")
	yardAcquirers = scan.WordSet("i we you they he she my our the can will have has could just only old good")
	claimsCost    = scan.WordSet("says say thinks think claims claim reckons reckon said thought list quote bid")
)

// dashedPrice sets "anchor - 2.75 a piece" to "anchor costs 2.75 a piece", and "$18.75/post base" to "$18.75 per post base".
func dashedPrice(atoms []scan.Atom) []scan.Atom {
	for i := 1; i+1 < len(atoms); i++ {
		switch a := atoms[i]; {
		case a.Text == "-" && !a.Glued && !atoms[i+1].Glued && SoldItems[atoms[i-1].Text] && pricedFigure(atoms, i+1):
			return scan.Reworded(atoms, i, i+1, "costs")
		case a.Text == "-" && !a.Glued && !atoms[i+1].Glued && yardVerifying[atoms[i+1].Text]:
			out := append([]scan.Atom{}, atoms...)
			out[i].Text = ","
			return out
		case a.Text == "/" && atoms[i-1].Kind == scan.Digits && YardItemIn(atoms[i+1:min(i+3, len(atoms))]) && !LengthsIn(atoms[i+1:min(i+3, len(atoms))]) && slices.ContainsFunc(atoms[max(0, i-4):i], func(a scan.Atom) bool { return a.Text == "$" }):
			return scan.Reworded(atoms, i, i+1, "per")
		case a.Text == "," && i > 4 && thirdMeasure(atoms[:i]) && yardFigureEnd(atoms, i+1) > i+1 && figureIsMoney(atoms[i+1:yardFigureEnd(atoms, i+1)]):
			return scan.Reworded(atoms, i, i+1, "costs")
		}
	}
	return atoms
}

// yardVerifying are words that have what stands before them checked.
var yardVerifying = scan.WordSet("verify check right correct ok okay true agree confirm")

// pricedFigure reports whether a figure is one of money, or priced by the piece.
func pricedFigure(atoms []scan.Atom, i int) bool {
	end := yardFigureEnd(atoms, i)
	if end == i {
		return false
	}
	return figureIsMoney(atoms[i:end]) || end < len(atoms) && (atoms[end].Text == "a" || atoms[end].Text == "each" || atoms[end].Text == "apiece" || atoms[end].Text == "ea") || end >= i+1 && len(atoms[i].Text) > 3
}

// thirdMeasure reports whether "two by six by ten" stands at the end.
func thirdMeasure(before []scan.Atom) bool {
	n := len(before)
	by := func(a scan.Atom) bool { return a.Text == "by" || a.Text == "x" }
	return n >= 5 && by(before[n-2]) && by(before[n-4])
}

// forWhatElse leaves out what extra pieces are for: "two more 4x4s at 52 inches for the gate".
func forWhatElse(atoms []scan.Atom) []scan.Atom {
	if !yardSizeIn(atoms) || !slices.ContainsFunc(atoms, func(a scan.Atom) bool { return piecesBesideWords[a.Text] }) {
		return atoms
	}
	for i := 3; i+1 < len(atoms); i++ {
		if atoms[i].Text != "for" || !lexicon.Vocab().Articles[atoms[i+1].Text] && !lex.Owned[atoms[i+1].Text] && !madeThings()[atoms[i+1].Text] {
			continue
		}
		j := i + 1
		for j < len(atoms) && atoms[j].Kind == scan.Word && atoms[j].Text != "and" && j < i+5 {
			j++
		}
		if chunk.EndsPart(atoms, j) && madeThings()[atoms[j-1].Text] {
			return scan.CutOut(atoms, i, j)
		}
	}
	return atoms
}

var piecesBesideWords = scan.WordSet("extra xtra more also additional besides another added add")

// dearOnes leaves out why something costs so much: ", the coated ones are dear".
func dearOnes(atoms []scan.Atom) []scan.Atom {
	for i := 2; i+3 < len(atoms); i++ {
		if atoms[i].Text != "," && atoms[i].Text != "because" && atoms[i].Text != "since" {
			continue
		}
		j := i + 1
		for j < len(atoms) && atoms[j].Kind == scan.Word && j < i+8 {
			j++
		}
		if !chunk.EndsPart(atoms, j) || j < i+4 || !yardCostly[atoms[j-1].Text] || atoms[i+1].Text == "is" || atoms[i+1].Text == "are" || atoms[i+1].Text == "how" || atoms[i+1].Text == "why" {
			continue
		}
		if slices.ContainsFunc(atoms[i+1:j], func(a scan.Atom) bool { return a.Text == "are" || a.Text == "is" || a.Text == "get" }) && !slices.ContainsFunc(atoms[i+1:j], func(a scan.Atom) bool { return a.Text == "not" || a.Text == "too" || a.Text == "if" }) {
			return scan.CutOut(atoms, i, j)
		}
	}
	return atoms
}

var yardCostly = scan.WordSet("dear expensive pricey yardCostly cheaper dearer pricier")

// andAskToo leaves out the "too" of what is asked besides: "let me see a drawing and tell me the cost too".
func andAskToo(atoms []scan.Atom) []scan.Atom {
	n := len(atoms)
	for n > 0 && atoms[n-1].Kind == scan.Sign {
		n--
	}
	if n < 5 || atoms[n-1].Text != "too" && atoms[n-1].Text != "also" || slices.ContainsFunc(atoms, func(a scan.Atom) bool {
		return a.Kind == scan.Digits || chunk.SpelledNumber(a.Text) || SoldLengths[a.Text]
	}) {
		return atoms
	}
	for i := 1; i+3 < n; i++ {
		if atoms[i].Text == "and" && (atoms[i+1].Text == "tell" || atoms[i+1].Text == "show" || atoms[i+1].Text == "give") {
			return scan.CutOut(atoms, n-1, n)
		}
	}
	return atoms
}
