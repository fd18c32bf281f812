package grammar

import "slices"

// addedThose sets "the place has twenties, so add those" to "the place has twenties too".
func addedThose(atoms []atom) []atom {
	n := len(atoms)
	for n > 0 && (atoms[n-1].text == "." || atoms[n-1].text == "!") {
		n--
	}
	end := n
	for n > 0 && addedWhere[atoms[n-1].text] {
		n--
	}
	if n < 5 || atoms[n-1].text != "those" && atoms[n-1].text != "them" && atoms[n-1].text != "these" || !addsToList[atoms[n-2].text] {
		return atoms
	}
	n -= 2
	for n > 0 && (asideJoints[atoms[n-1].text] || atoms[n-1].text == "," || atoms[n-1].text == "." || atoms[n-1].text == "please") {
		n--
	}
	if told := atoms[:n]; !footersBehind(told, nil) || yardSizeIn(told) && !lengthsIn(told) || slices.ContainsFunc(told, func(a atom) bool {
		return notMore[a.text]
	}) {
		return atoms
	}
	if slices.ContainsFunc(atoms[:n], func(a atom) bool { return keptAtHome[a.text] }) {
		return cutOut(atoms, n, end) // "four ten-foot 2x6s sitting in my garage, count those in"
	}
	return reworded(atoms, n, end, "too")
}

// addsToList are the verbs of "add those", addedWhere what may stand behind them, and keptAtHome places where lumber is that somebody has.
var (
	addsToList = wordSet("add include count put write stick throw list note")
	addedWhere = wordSet("in on too please also down there as well to the list stock lengths with others")
	keptAtHome = wordSet("garage shed barn basement attic carport cellar home crawlspace backyard")
)

// notMore are words by which lengths are told as added already, or as gone, or as something else.
var notMore = wordSet("too also well no not out gone if why how what longer out of extra spare another")

// alsoConsidered sets "could you also consider eighteen footers?" to "they also have eighteen footers".
func alsoConsidered(atoms []atom) []atom {
	rest, _ := pastLead(atoms)
	i := len(atoms) - len(rest)
	if i+4 >= len(atoms) || !beggars[atoms[i].text] || atoms[i+1].text != "you" {
		return atoms
	}
	j, also := i+2, false
	for j < len(atoms) && (atoms[j].text == "please" || atoms[j].text == "also" || atoms[j].text == "maybe") {
		also = also || atoms[j].text == "also"
		j++
	}
	if !also || j+1 >= len(atoms) || !considers[atoms[j].text] || !footersBehind(atoms[j:], nil) || yardItemPriced(atoms[j:]) {
		return atoms
	}
	return unasked(reworded(atoms, i, j+1, "they", "also", "have"))
}

// considers are verbs of taking something into account.
var considers = wordSet("consider allow include count use add take")

// yardItemPriced reports whether money is said.
func yardItemPriced(atoms []atom) bool { return figureIsMoney(atoms) }

// footersAhead reports whether lengths of lumber, told by their feet, follow.
func footersAhead(_, after []atom) bool { return footersBehind(yardClauseAhead(after), nil) }

// ownedAhead: "count | the six eight foot 2x6s I've got at home".
func ownedAhead(_, after []atom) bool {
	ahead := yardClauseAhead(after)
	if !yardSizeIn(ahead) {
		return false
	}
	for i := 1; i+1 < len(ahead); i++ {
		if speakers[ahead[i].text] && (ahead[i+1].text == "have" || ahead[i+1].text == "got" || ahead[i+1].text == "already") {
			return true
		}
	}
	return false
}

// piecesListed: "add a | 2x6 thirty inches long to the cut list".
func piecesListed(_, after []atom) bool {
	ahead := yardClauseAhead(after)
	return yardSizeIn(ahead) && slices.ContainsFunc(ahead, func(a atom) bool { return a.text == "list" })
}

// whyBuySo sets "why do I have to buy fourteen boards" to "why do I have to buy so many boards": how many stack up is not asked.
func whyBuySo(atoms []atom) []atom {
	why := -1
	for i := range atoms {
		if atoms[i].text == "why" {
			why = i
		}
		if why < 0 || atoms[i].text != "buy" && atoms[i].text != "buying" && atoms[i].text != "order" && atoms[i].text != "ordering" {
			continue
		}
		end := yardFigureEnd(atoms, i+1)
		if end == i+1 || end >= len(atoms) || !boardWords[atoms[end].text] || !endsPart(atoms, end+1) {
			continue
		}
		return reworded(atoms, i+1, end, "so", "many")
	}
	return atoms
}

// alsoCost sets the "are" of prices told side by side to "cost": "tens are nine a pop and twelves are eleven".
func alsoCost(atoms []atom) []atom {
	each := false
	for i := range atoms {
		each = each || i > 1 && (atoms[i].text == "apiece" || atoms[i].text == "each" || atoms[i].text == "pop" && atoms[i-1].text == "a") && yardFigureEnd(atoms, i-1) > i-1 || i > 1 && atoms[i].text == "pop" && yardFigureEnd(atoms, i-2) > i-2
	}
	if !each {
		return atoms
	}
	out := atoms
	for i := 1; i+1 < len(out); i++ {
		if w := out[i].text; (w == "are" || w == "is") && soldByFeet[out[i-1].text] && yardFigureEnd(out, i+1) > i+1 {
			out = reworded(out, i, i+1, "cost")
		}
	}
	return out
}

// halfDollars names the money of a price that is told with a half or a quarter: "post caps cost six and a quarter".
func halfDollars(atoms []atom) []atom {
	for i := 1; i+4 < len(atoms); i++ {
		if w := atoms[i].text; w != "costs" && w != "cost" || !yardItemIn(atoms[:i]) {
			continue
		}
		end := yardFigureEnd(atoms, i+1)
		if end < i+5 || atoms[end-1].text != "half" && atoms[end-1].text != "quarter" || atoms[end-2].text != "a" || figureIsMoney(atoms[i+1:end-1]) || end < len(atoms) && !endsPart(atoms, end) && atoms[end].text != "each" && atoms[end].text != "apiece" {
			continue
		}
		return append(append(append([]atom{}, atoms[:end]...), atom{text: "dollars", kind: aWord, at: atoms[end-1].at, end: atoms[end-1].end}), atoms[end:]...)
	}
	return atoms
}
