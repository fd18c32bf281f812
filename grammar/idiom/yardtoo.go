package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// addedThose sets "the place has twenties, so add those" to "the place has twenties too".
func addedThose(atoms []scan.Atom) []scan.Atom {
	n := len(atoms)
	for n > 0 && (atoms[n-1].Text == "." || atoms[n-1].Text == "!") {
		n--
	}
	end := n
	for n > 0 && addedWhere[atoms[n-1].Text] {
		n--
	}
	if n < 5 || atoms[n-1].Text != "those" && atoms[n-1].Text != "them" && atoms[n-1].Text != "these" || !addsToList[atoms[n-2].Text] {
		return atoms
	}
	n -= 2
	for n > 0 && (asideJoints[atoms[n-1].Text] || atoms[n-1].Text == "," || atoms[n-1].Text == "." || atoms[n-1].Text == "please") {
		n--
	}
	if told := atoms[:n]; !footersBehind(told, nil) || yardSizeIn(told) && !LengthsIn(told) || slices.ContainsFunc(told, func(a scan.Atom) bool {
		return notMore[a.Text]
	}) {
		return atoms
	}
	if slices.ContainsFunc(atoms[:n], func(a scan.Atom) bool { return keptAtHome[a.Text] }) {
		return scan.CutOut(atoms, n, end) // "four ten-foot 2x6s sitting in my garage, count those in"
	}
	return scan.Reworded(atoms, n, end, "too")
}

// addsToList are the verbs of "add those", addedWhere what may stand behind them, and keptAtHome places where lumber is that somebody has.
var (
	addsToList = scan.WordSet("add include count put write stick throw list note")
	addedWhere = scan.WordSet("in on too please also down there as well to the list stock lengths with others")
	keptAtHome = scan.WordSet("garage shed barn basement attic carport cellar home crawlspace backyard")
)

// notMore are words by which lengths are told as added already, or as gone, or as something else.
var notMore = scan.WordSet("too also well no not out gone if why how what longer out of extra spare another")

// alsoConsidered sets "could you also consider eighteen footers?" to "they also have eighteen footers".
func alsoConsidered(atoms []scan.Atom) []scan.Atom {
	rest, _ := PastLead(atoms)
	i := len(atoms) - len(rest)
	if i+4 >= len(atoms) || !Beggars[atoms[i].Text] || atoms[i+1].Text != "you" {
		return atoms
	}
	j, also := i+2, false
	for j < len(atoms) && (atoms[j].Text == "please" || atoms[j].Text == "also" || atoms[j].Text == "maybe") {
		also = also || atoms[j].Text == "also"
		j++
	}
	if !also || j+1 >= len(atoms) || !considers[atoms[j].Text] || !footersBehind(atoms[j:], nil) || yardItemPriced(atoms[j:]) {
		return atoms
	}
	return phrase.Unasked(scan.Reworded(atoms, i, j+1, "they", "also", "have"))
}

// considers are verbs of taking something into account.
var considers = scan.WordSet("consider allow include count use add take")

// yardItemPriced reports whether money is said.
func yardItemPriced(atoms []scan.Atom) bool { return figureIsMoney(atoms) }

// footersAhead reports whether lengths of lumber, told by their feet, follow.
func footersAhead(_, after []scan.Atom) bool { return footersBehind(yardClauseAhead(after), nil) }

// ownedAhead: "count | the six eight foot 2x6s I've got at home".
func ownedAhead(_, after []scan.Atom) bool {
	ahead := yardClauseAhead(after)
	if !yardSizeIn(ahead) {
		return false
	}
	for i := 1; i+1 < len(ahead); i++ {
		if lex.Speakers[ahead[i].Text] && (ahead[i+1].Text == "have" || ahead[i+1].Text == "got" || ahead[i+1].Text == "already") {
			return true
		}
	}
	return false
}

// piecesListed: "add a | 2x6 thirty inches long to the cut list".
func piecesListed(_, after []scan.Atom) bool {
	ahead := yardClauseAhead(after)
	return yardSizeIn(ahead) && slices.ContainsFunc(ahead, func(a scan.Atom) bool { return a.Text == "list" })
}

// whyBuySo sets "why do I have to buy fourteen boards" to "why do I have to buy so many boards": how many stack up is not asked.
func whyBuySo(atoms []scan.Atom) []scan.Atom {
	why := -1
	for i := range atoms {
		if atoms[i].Text == "why" {
			why = i
		}
		if why < 0 || atoms[i].Text != "buy" && atoms[i].Text != "buying" && atoms[i].Text != "order" && atoms[i].Text != "ordering" {
			continue
		}
		end := yardFigureEnd(atoms, i+1)
		if end == i+1 || end >= len(atoms) || !BoardWords[atoms[end].Text] || !chunk.EndsPart(atoms, end+1) {
			continue
		}
		return scan.Reworded(atoms, i+1, end, "so", "many")
	}
	return atoms
}

// alsoCost sets the "are" of prices told side by side to "cost": "tens are nine a pop and twelves are eleven".
func alsoCost(atoms []scan.Atom) []scan.Atom {
	each := false
	for i := range atoms {
		each = each || i > 1 && (atoms[i].Text == "apiece" || atoms[i].Text == "each" || atoms[i].Text == "pop" && atoms[i-1].Text == "a") && yardFigureEnd(atoms, i-1) > i-1 || i > 1 && atoms[i].Text == "pop" && yardFigureEnd(atoms, i-2) > i-2
	}
	if !each {
		return atoms
	}
	out := atoms
	for i := 1; i+1 < len(out); i++ {
		if w := out[i].Text; (w == "are" || w == "is") && soldByFeet[out[i-1].Text] && yardFigureEnd(out, i+1) > i+1 {
			out = scan.Reworded(out, i, i+1, "cost")
		}
	}
	return out
}

// halfDollars names the money of a price that is told with a half or a quarter: "post caps cost six and a quarter".
func halfDollars(atoms []scan.Atom) []scan.Atom {
	for i := 1; i+4 < len(atoms); i++ {
		if w := atoms[i].Text; w != "costs" && w != "cost" || !YardItemIn(atoms[:i]) {
			continue
		}
		end := yardFigureEnd(atoms, i+1)
		if end < i+5 || atoms[end-1].Text != "half" && atoms[end-1].Text != "quarter" || atoms[end-2].Text != "a" || figureIsMoney(atoms[i+1:end-1]) || end < len(atoms) && !chunk.EndsPart(atoms, end) && atoms[end].Text != "each" && atoms[end].Text != "apiece" {
			continue
		}
		return append(append(append([]scan.Atom{}, atoms[:end]...), scan.Atom{Text: "dollars", Kind: scan.Word, At: atoms[end-1].At, End: atoms[end-1].End}), atoms[end:]...)
	}
	return atoms
}
