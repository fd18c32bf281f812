package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// Places where a turn of the yard can mean nothing else.

// sizeThenColon: "lengths for the 4x4: 8 and 10 foot".
func sizeThenColon(_, after []scan.Atom) bool {
	for i := range after {
		if i > 6 {
			break
		}
		if after[i].Text == ":" || after[i].Text == "are" {
			return yardSizeIn(after[:i])
		}
	}
	return false
}

// stockNamed: "include the twelve-foot length among the stock".
func stockNamed(_, after []scan.Atom) bool {
	return LengthsIn(after) && slices.ContainsFunc(yardClauseAhead(after), func(a scan.Atom) bool { return a.Text == "stock" || a.Text == "lengths" })
}

// addsLength: "add the twelve-foot length | among the stock".
func addsLength(before, _ []scan.Atom) bool {
	return LengthsIn(before) && addsFirst(before, nil)
}

// addsFirst reports whether something is added.
func addsFirst(before, _ []scan.Atom) bool {
	return slices.ContainsFunc(before, func(a scan.Atom) bool { return a.Text == "add" || a.Text == "put" })
}

// dropsLength: "remove 4.2 m | from the stock".
func dropsLength(before, after []scan.Atom) bool {
	return yardClauseEnds(before, after) && LengthsIn(before) && slices.ContainsFunc(before, func(a scan.Atom) bool {
		return a.Text == "remove" || a.Text == "drop" || a.Text == "take" || a.Text == "delete" || a.Text == "strike"
	})
}

// sellsNext: "the other yard | sells sixteens too".
func sellsNext(before, after []scan.Atom) bool {
	return yardClauseOpens(before, nil) && len(after) > 1 && slices.Contains(lexicon.Vocab().Classes[after[0].Text], lexicon.Vocab().Ids["SELLS"]) || len(after) > 1 && (after[0].Text == "has" || after[0].Text == "only" || after[0].Text == "also") && LengthsIn(yardClauseAhead(after))
}

// lengthsGone reports whether lengths were said to be gone.
func lengthsGone(before, _ []scan.Atom) bool {
	if !LengthsIn(before) || !footersBehind(before, nil) && !slices.ContainsFunc(before, func(a scan.Atom) bool { return sellsWord[a.Text] }) {
		return false // "no wider than 4 ft" limits
	}
	return slices.ContainsFunc(before, func(a scan.Atom) bool {
		return a.Text == "not" || a.Text == "longer" || a.Text == "out" || a.Text == "gone" || a.Text == "no"
	})
}

// sellsWord are words of what is on sale, beside lengths told by their feet.
var sellsWord = scan.WordSet("sell sells sold selling stock stocks stocked carry carries carried available boards lumber they discontinued left yard store shop")

// yardItemsAhead and yardItemsBehind: a part or lumber that has a price is named in what follows, or stands before; no question is.
func yardItemsAhead(_, after []scan.Atom) bool {
	return YardItemIn(yardClauseAhead(after)) && (len(after) == 0 || after[len(after)-1].Text != "?") && !slices.ContainsFunc(after, func(a scan.Atom) bool { return a.Text == "right" || a.Text == "check" })
}

func yardItemsBehind(before, _ []scan.Atom) bool { return YardItemIn(before) }

// yardFigureAheadOr: a number, or a sign of money, follows.
func yardFigureAheadOr(_, after []scan.Atom) bool { return yardFigureEnd(after, 0) > 0 }

// yardMoneyAhead: a figure follows that is said as money.
func yardMoneyAhead(_, after []scan.Atom) bool {
	end := yardFigureEnd(after, 0)
	return end > 0 && figureIsMoney(after[:end])
}

// yardMoneyBehind: money stands before.
func yardMoneyBehind(before, _ []scan.Atom) bool {
	return figureIsMoney(before) && yardFigureBehind(before, nil)
}

// claimBehind: somebody says or thinks what follows.
func claimBehind(before, _ []scan.Atom) bool {
	return slices.ContainsFunc(before, func(a scan.Atom) bool { return claimsCost[a.Text] })
}

// asideOrOpens: a clause by itself, at the beginning or the end.
func asideOrOpens(before, after []scan.Atom) bool {
	return yardAsideEnds(before, after) || yardClauseOpens(before, nil) && (yardClauseEnds(nil, after) || len(after) > 0 && chunk.Joints[after[0].Text])
}

// ordersWhat: "what to order | from the yard".
func ordersWhat(before, _ []scan.Atom) bool {
	if w := chunk.LastOf(before, 1); w != "order" && w != "buy" && w != "get" && w != "up" && w != "need" {
		return false
	}
	return slices.ContainsFunc(before, func(a scan.Atom) bool { return a.Text == "what" }) && !yardFigureBehind(before, nil)
}

// asksAfter: ", so what …" follows.
func asksAfter(_, after []scan.Atom) bool {
	return slices.ContainsFunc(after[:min(len(after), 4)], func(a scan.Atom) bool { return a.Text == "what" })
}

// pricedParts: "bracket 2.65, anchor 1.95, | cap 6.80" goes on with prices of parts.
func pricedParts(before, after []scan.Atom) bool {
	if len(after) == 0 || after[0].Kind != scan.Digits && after[0].Text != "$" || !yardClauseOpens(before, nil) {
		return false
	}
	return slices.ContainsFunc(before, func(a scan.Atom) bool { return SoldItems[a.Text] }) && yardFigureBehind(before, nil) && chunk.LastOf(before, 1) == ","
}

// plusAsked: "lumber list | + price" asks for two things.
func plusAsked(before, after []scan.Atom) bool {
	return len(before) > 0 && len(after) > 0 && before[len(before)-1].Kind == scan.Word && after[0].Kind == scan.Word && !chunk.SpelledNumber(after[0].Text) && !yardFigureBehind(before, nil) && after[0].Text != "a"
}

// pricedBehind: money stands right before.
func pricedBehind(before, _ []scan.Atom) bool {
	return len(before) > 2 && itemOrSize(before) && yardFigureEnd(before, len(before)-1) == len(before)
}

func itemOrSize(before []scan.Atom) bool { return YardItemIn(before) || yardSizeIn(before) }

// pairAhead: a price told in words follows, dollars and cents: "two sixty".
func pairAhead(_, after []scan.Atom) bool {
	end := yardFigureEnd(after, 0)
	return end > 1 && end < 5 && (figureIsMoney(after[:end]) || end < 4 && chunk.SpelledNumber(after[0].Text) && chunk.SpelledNumber(after[1].Text) && after[1].Text != "half")
}

// zeroAlone: "zero spare, please", and no count of boards.
func zeroAlone(_, after []scan.Atom) bool { return len(after) == 0 || !BoardWords[after[0].Text] }

// lengthsAtOnce: "suppose I just got | fourteen footers": a length of lumber follows, and no size and no number of boards.
func lengthsAtOnce(_, after []scan.Atom) bool {
	ahead := yardClauseAhead(after)
	if yardSizeIn(ahead) || len(ahead) == 0 {
		return false
	}
	if soldByFeet[ahead[0].Text] {
		return true
	}
	end := yardFigureEnd(ahead, 0)
	return end > 0 && end < len(ahead) && (soldByFeet[ahead[end].Text] || ahead[end].Text == "-" && end+1 < len(ahead) && soldByFeet[ahead[end+1].Text])
}

// wishPassedOn: "she says she'd like | the wall at 44": nobody is asked whether it is right.
func wishPassedOn(_, after []scan.Atom) bool {
	return !slices.ContainsFunc(after, func(a scan.Atom) bool { return verifies[a.Text] })
}

// verifies are words by which somebody asks whether a claim holds.
var verifies = scan.WordSet("? right correct check true verify confirm agree sound okay ok work works wrong possible add")

// soldBehindFooters: "I only see eights and tens | in the bin": a length told by its feet stands right before.
func soldBehindFooters(before, _ []scan.Atom) bool {
	return len(before) > 1 && soldByFeet[chunk.LastOf(before, 1)]
}
