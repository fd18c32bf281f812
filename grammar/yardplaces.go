package grammar

import "slices"

// Places where a turn of the yard can mean nothing else.

// sizeThenColon: "lengths for the 4x4: 8 and 10 foot".
func sizeThenColon(_, after []atom) bool {
	for i := range after {
		if i > 6 {
			break
		}
		if after[i].text == ":" || after[i].text == "are" {
			return yardSizeIn(after[:i])
		}
	}
	return false
}

// stockNamed: "include the twelve-foot length among the stock".
func stockNamed(_, after []atom) bool {
	return lengthsIn(after) && slices.ContainsFunc(yardClauseAhead(after), func(a atom) bool { return a.text == "stock" || a.text == "lengths" })
}

// addsLength: "add the twelve-foot length | among the stock".
func addsLength(before, _ []atom) bool {
	return lengthsIn(before) && addsFirst(before, nil)
}

// addsFirst reports whether something is added.
func addsFirst(before, _ []atom) bool {
	return slices.ContainsFunc(before, func(a atom) bool { return a.text == "add" || a.text == "put" })
}

// dropsLength: "remove 4.2 m | from the stock".
func dropsLength(before, after []atom) bool {
	return yardClauseEnds(before, after) && lengthsIn(before) && slices.ContainsFunc(before, func(a atom) bool {
		return a.text == "remove" || a.text == "drop" || a.text == "take" || a.text == "delete" || a.text == "strike"
	})
}

// sellsNext: "the other yard | sells sixteens too".
func sellsNext(before, after []atom) bool {
	return yardClauseOpens(before, nil) && len(after) > 1 && slices.Contains(vocab().classes[after[0].text], vocab().ids["SELLS"]) || len(after) > 1 && (after[0].text == "has" || after[0].text == "only" || after[0].text == "also") && lengthsIn(yardClauseAhead(after))
}

// lengthsGone reports whether lengths were said to be gone.
func lengthsGone(before, _ []atom) bool {
	if !lengthsIn(before) || !footersBehind(before, nil) && !slices.ContainsFunc(before, func(a atom) bool { return sellsWord[a.text] }) {
		return false // "no wider than 4 ft" limits
	}
	return slices.ContainsFunc(before, func(a atom) bool {
		return a.text == "not" || a.text == "longer" || a.text == "out" || a.text == "gone" || a.text == "no"
	})
}

// sellsWord are words of what is on sale, beside lengths told by their feet.
var sellsWord = wordSet("sell sells sold selling stock stocks stocked carry carries carried available boards lumber they discontinued left yard store shop")

// yardItemsAhead and yardItemsBehind: a part or lumber that has a price is named in what follows, or stands before; no question is.
func yardItemsAhead(_, after []atom) bool {
	return yardItemIn(yardClauseAhead(after)) && (len(after) == 0 || after[len(after)-1].text != "?") && !slices.ContainsFunc(after, func(a atom) bool { return a.text == "right" || a.text == "check" })
}
func yardItemsBehind(before, _ []atom) bool { return yardItemIn(before) }

// yardFigureAheadOr: a number, or a sign of money, follows.
func yardFigureAheadOr(_, after []atom) bool { return yardFigureEnd(after, 0) > 0 }

// yardMoneyAhead: a figure follows that is said as money.
func yardMoneyAhead(_, after []atom) bool {
	end := yardFigureEnd(after, 0)
	return end > 0 && figureIsMoney(after[:end])
}

// yardMoneyBehind: money stands before.
func yardMoneyBehind(before, _ []atom) bool {
	return figureIsMoney(before) && yardFigureBehind(before, nil)
}

// claimBehind: somebody says or thinks what follows.
func claimBehind(before, _ []atom) bool {
	return slices.ContainsFunc(before, func(a atom) bool { return claimsCost[a.text] })
}

// asideOrOpens: a clause by itself, at the beginning or the end.
func asideOrOpens(before, after []atom) bool {
	return yardAsideEnds(before, after) || yardClauseOpens(before, nil) && (yardClauseEnds(nil, after) || len(after) > 0 && joints[after[0].text])
}

// ordersWhat: "what to order | from the yard".
func ordersWhat(before, _ []atom) bool {
	if w := lastOf(before, 1); w != "order" && w != "buy" && w != "get" && w != "up" && w != "need" {
		return false
	}
	return slices.ContainsFunc(before, func(a atom) bool { return a.text == "what" }) && !yardFigureBehind(before, nil)
}

// asksAfter: ", so what …" follows.
func asksAfter(_, after []atom) bool {
	return slices.ContainsFunc(after[:min(len(after), 4)], func(a atom) bool { return a.text == "what" })
}

// pricedParts: "bracket 2.65, anchor 1.95, | cap 6.80" goes on with prices of parts.
func pricedParts(before, after []atom) bool {
	if len(after) == 0 || after[0].kind != aDigits && after[0].text != "$" || !yardClauseOpens(before, nil) {
		return false
	}
	return slices.ContainsFunc(before, func(a atom) bool { return soldItems[a.text] }) && yardFigureBehind(before, nil) && lastOf(before, 1) == ","
}

// plusAsked: "lumber list | + price" asks for two things.
func plusAsked(before, after []atom) bool {
	return len(before) > 0 && len(after) > 0 && before[len(before)-1].kind == aWord && after[0].kind == aWord && !spelledNumber(after[0].text) && !yardFigureBehind(before, nil) && after[0].text != "a"
}

// pricedBehind: money stands right before.
func pricedBehind(before, _ []atom) bool {
	return len(before) > 2 && itemOrSize(before) && yardFigureEnd(before, len(before)-1) == len(before)
}

func itemOrSize(before []atom) bool { return yardItemIn(before) || yardSizeIn(before) }

// pairAhead: a price told in words follows, dollars and cents: "two sixty".
func pairAhead(_, after []atom) bool {
	end := yardFigureEnd(after, 0)
	return end > 1 && end < 5 && (figureIsMoney(after[:end]) || end < 4 && spelledNumber(after[0].text) && spelledNumber(after[1].text) && after[1].text != "half")
}

// zeroAlone: "zero spare, please", and no count of boards.
func zeroAlone(_, after []atom) bool { return len(after) == 0 || !boardWords[after[0].text] }

// lengthsAtOnce: "suppose I just got | fourteen footers": a length of lumber follows, and no size and no number of boards.
func lengthsAtOnce(_, after []atom) bool {
	ahead := yardClauseAhead(after)
	if yardSizeIn(ahead) || len(ahead) == 0 {
		return false
	}
	if soldByFeet[ahead[0].text] {
		return true
	}
	end := yardFigureEnd(ahead, 0)
	return end > 0 && end < len(ahead) && (soldByFeet[ahead[end].text] || ahead[end].text == "-" && end+1 < len(ahead) && soldByFeet[ahead[end+1].text])
}

// wishPassedOn: "she says she'd like | the wall at 44": nobody is asked whether it is right.
func wishPassedOn(_, after []atom) bool {
	return !slices.ContainsFunc(after, func(a atom) bool { return verifies[a.text] })
}

// verifies are words by which somebody asks whether a claim holds.
var verifies = wordSet("? right correct check true verify confirm agree sound okay ok work works wrong possible add")

// soldBehindFooters: "I only see eights and tens | in the bin": a length told by its feet stands right before.
func soldBehindFooters(before, _ []atom) bool {
	return len(before) > 1 && soldByFeet[lastOf(before, 1)]
}
