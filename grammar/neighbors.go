package grammar

import "strings"

// asksNothing takes "is how thick" and "is what" after a value for what they are: "5/64 is how thick these brackets are".
func (l *lexing) asksNothing() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t, prev, next := &l.tokens[i], &l.tokens[i-1], &l.tokens[i+1]
		if t.kind != kWh || prev.kind != kNum || !strings.HasSuffix(t.before, "is") && !strings.HasSuffix(t.before, "are") || next.kind != kPart && next.kind != kLoc {
			continue
		}
		if i > 1 && l.tokens[i-2].kind != kStop && l.tokens[i-2].kind != kComma && l.tokens[i-2].kind != kAbout && l.tokens[i-2].kind != kRel {
			continue
		}
		word, ok := strings.CutPrefix(t.text, "how ")
		switch dim := dims[word]; {
		case ok && dim != nil:
			t.kind, t.found, t.before = kDim, dim, ""
		case t.text == "what", t.text == "how far", t.text == "how much", t.text == "how far apart":
			l.drop(i)
		}
	}
}

// dims are dimensions as they are asked after.
var dims = map[string][]found{"thick": nounOf("thick"), "wide": nounOf("wide"), "high": nounOf("high"), "tall": nounOf("high"), "long": nounOf("long"), "deep": nounOf("deep")}

// soldOut takes "no more" before lengths of lumber for what is not sold any longer.
func (l *lexing) soldOut() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if (t.kind == kBound || t.kind == kRel) && (t.text == "no more" || t.text == "not more") && next.kind == kNum && next.amt.footer {
			t.kind, t.found = kSellLess, []found{{entry: soldOut}}
		}
	}
}

var soldOut = &entry{kind: kSellLess, key: "-="}

// offEach takes "off each" before boards for how much is taken off them.
func (l *lexing) offEach() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.kind == kOffTail && (t.text == "off each" || t.text == "off every") && next.kind == kPart && next.key() == "rail" && l.tokens[i-1].kind == kNum {
			t.kind, t.found = kOff, []found{{entry: takenOff}}
		}
	}
}

// beside settles what two words that stand side by side mean together. The first reader that knows them decides.
func (l *lexing) beside() {
	for i := range l.tokens {
		if t := &l.tokens[i]; t.kind == kLoc && t.key() == "ends" && strings.Contains(t.text, "both") && i > 0 && l.tokens[i-1].kind == kPart && l.tokens[i-1].key() == "fit" {
			t.found = eachEnd // "an eighth short at both ends"
		}
	}
	for i := 0; i+1 < len(l.tokens); i++ {
		for _, settle := range besides {
			if settle(l, i) {
				break
			}
		}
	}
}

var besides = []func(*lexing, int) bool{(*lexing).onSaleBeside, (*lexing).cutBeside, (*lexing).countedBeside, (*lexing).saidBeside}

// onSaleBeside settles words of buying and selling: "scratch the fourteens", "four for one bracket".
func (l *lexing) onSaleBeside(i int) bool {
	t, next := &l.tokens[i], &l.tokens[i+1]
	switch {
	case t.kind == kCmd && t.key() == "forget" && next.kind == kNum && next.amt.footer && l.sellsAfter(i):
		t.kind, t.found = kSellLess, []found{{entry: soldOut}} // "scratch the fourteens"
	case t.kind == kNum && t.amt.footer && next.kind == kOut && next.text == "in" && i > 0 && (l.tokens[i-1].kind == kSell || l.tokens[i-1].kind == kHead) && strings.Contains(l.tokens[i-1].text, "got"):
		next.kind, next.found = kSellMore, []found{{entry: soldToo}}
	case t.kind == kCmd && t.text == "drop" && next.kind == kTo && i+2 < len(l.tokens) && l.tokens[i+2].kind == kNum && l.tokens[i+2].amt.unit == money:
		t.kind, t.found = kPriceVerb, []found{{entry: costs}}
		l.drop(i + 1)
	case t.kind == kExtra && (strings.HasSuffix(t.text, " in") || strings.HasSuffix(t.text, " on")) && next.kind == kNum && l.speaks(i, "spare"):
		t.kind = kTailFill // "toss in two spare boards"
	case t.kind == kSell && (t.text == "buy" || t.text == "get" || t.text == "order") && next.kind == kNum && l.speaks(i, "spare"):
		t.kind = kTailFill
	case t.kind == kNum && t.text == "one" && strings.HasSuffix(t.before, "for") && next.as(kItem) != nil && i > 0 && l.tokens[i-1].kind == kNum:
		t.kind, t.found = kEach, []found{{entry: apiece}}
	case next.kind == kForgetTail && next.as(kSellLess) != nil && t.kind == kNum && t.amt.footer:
		next.kind = kSellLess // "the fourteens are gone"
	case next.kind == kForgetTail && next.as(kSellLess) != nil && t.kind == kComma && l.footerBefore(i):
		next.kind = kSellLess
	default:
		return false
	}
	return true
}

// cutBeside settles words of sawing: "knock 3/4 off every board to square it up".
func (l *lexing) cutBeside(i int) bool {
	t, next := &l.tokens[i], &l.tokens[i+1]
	switch {
	case t.kind == kNo && next.kind == kChange && next.text == "trimming":
		next.kind, next.found = kPart, trimNoun
	case t.kind == kMove && next.kind == kNum && i+2 < len(l.tokens) && l.tokens[i+2].kind == kPart && l.tokens[i+2].key() == "trim":
		t.kind = kTailFill // "knock 3/4 off every board to square it up"
	case t.kind == kChange && t.text == "trimming" && next.kind == kComma && strings.HasSuffix(t.before, "for"):
		t.kind, t.found = kPart, trimNoun
	case t.kind == kOffTail && forEach[t.text] && next.is(kPart) && !l.tolerates():
		l.drop(i) // "6x6 for all the posts"
	case t.kind == kOff && next.kind == kPer && (next.text == "every" || next.text == "each") && i+2 < len(l.tokens) && l.tokens[i+2].kind == kPart && l.tokens[i+2].key() == "rail":
		l.drop(i + 1)
	default:
		return false
	}
	return true
}

// countedBeside settles what is counted and what is told by its place: "go from six boards to seven", "don't add any posts".
func (l *lexing) countedBeside(i int) bool {
	t, next := &l.tokens[i], &l.tokens[i+1]
	switch {
	case t.kind == kChange && t.text == "add" && i > 0 && l.tokens[i-1].kind == kNot && next.as(kPart) != nil && next.as(kPart).key == "post" && next.plural():
		next.kind, next.found = kPart, addedPosts // "don't add any posts"
		l.drop(i)
	case t.kind == kFrom && l.countsTo(i):
		l.tokens = append(l.tokens[:i], l.tokens[i+2:]...) // "go from six boards to seven"
	case t.kind == kFrom && next.kind == kSize && i > 0 && l.tokens[i-1].is(kPart):
		l.drop(i) // "rails from 1x6"
	case t.kind == kOrdinal && (strings.HasPrefix(next.before, "one") || next.before == "'s") && (next.kind == kFixed || next.kind == kTop):
		t.kind, t.found, t.indexes = kPart, railNoun, []int{t.index}
	default:
		return false
	}
	return true
}

// saidBeside settles words that lead from what is named to what is said of it: "I measured the ear and it's 13/16".
func (l *lexing) saidBeside(i int) bool {
	t, next := &l.tokens[i], &l.tokens[i+1]
	switch {
	case t.kind == kBestTail && t.text == "you can" && next.kind == kNot:
		l.drop(i)
	case t.kind == kPer && next.kind == kGoal:
		l.drop(i)
	case (t.kind == kLim || t.kind == kRel && t.as(kLim) != nil) && next.kind == kQuest && next.as(kPart) != nil && (i+2 == len(l.tokens) || l.tokens[i+2].kind == kComma):
		next.kind = kPart
	case t.kind == kAnd && next.kind == kNum && tellsOn[next.before] && i > 0 && (l.tokens[i-1].kind == kPart || l.tokens[i-1].kind == kAt) && !l.valueBefore(i):
		l.drop(i) // "I measured the bracket ear and it's 13/16"
	case t.kind == kAnd && next.kind == kIt && i+2 < len(l.tokens) && l.tokens[i+2].kind == kNum && onward[l.tokens[i+2].before] && i > 0 && (l.tokens[i-1].kind == kPart || l.tokens[i-1].kind == kAt) && !l.valueBefore(i):
		l.drop(i)
	case (t.kind == kForgetTail || t.kind == kCmd) && t.text == "drop it" && (next.kind == kDown || next.kind == kTo) && l.numberSoon(i+1):
		t.kind, t.found = kChange, []found{{entry: minusSign}}
	case t.kind == kHead && next.kind == kNum && letsSay[t.text] && i > 1 && l.tokens[i-1].kind == kComma && l.tokens[i-2].kind == kNum && (i+2 == len(l.tokens) || l.tokens[i+2].kind == kComma || l.tokens[i+2].kind == kStop):
		t.kind, t.found = kFix, []found{{entry: setRight}}
	case t.kind == kBetween && t.text == "within" && next.kind == kNum && !(i+2 < len(l.tokens) && (l.tokens[i+2].kind == kAnd || l.tokens[i+2].kind == kTo || l.tokens[i+2].kind == kDash)):
		t.kind, t.found = kRel, []found{{entry: atMost}}
	default:
		return false
	}
	return true
}

// tellsOn are words by which a clause goes on with the value of what was named.
var tellsOn = map[string]bool{"it is": true, "it was": true, "they are": true, "got": true, "i got": true, "that is": true, "it came to": true, "found": true, "she is": true, "he is": true, "she came to": true, "she was": true}

// valueBefore reports whether a value stands before token i in its sentence.
func (l *lexing) valueBefore(i int) bool {
	for i--; i >= 0 && l.tokens[i].kind != kStop; i-- {
		if l.tokens[i].kind == kNum || l.tokens[i].kind == kSize {
			return true
		}
	}
	return false
}

// moneyBefore reports whether a sum of money stands before token i in its part of the line.
func (l *lexing) moneyBefore(i int) bool {
	for i--; i >= 0 && l.tokens[i].kind != kStop && l.tokens[i].kind != kComma; i-- {
		if l.tokens[i].kind == kNum && l.tokens[i].amt.unit == money {
			return true
		}
	}
	return false
}

var (
	costs    = &entry{kind: kPriceVerb, key: "price"}
	apiece   = &entry{kind: kEach, key: "each"}
	trimNoun = nounOf("trim")
)

// onward are words between "it" and its value.
var onward = map[string]bool{"is": true, "was": true, "came to": true, "comes to": true, "measures": true, "reads": true}

// speaks reports whether a part of that key stands behind token i in its sentence.
func (l *lexing) speaks(i int, key string) bool {
	for i++; i < len(l.tokens) && l.tokens[i].kind != kStop; i++ {
		if l.tokens[i].kind == kPart && l.tokens[i].key() == key {
			return true
		}
	}
	return false
}

// footerBefore reports whether a length of lumber stands before token i in its sentence, with a word of having no more.
func (l *lexing) footerBefore(i int) bool {
	footer, less := false, false
	for i--; i >= 0 && l.tokens[i].kind != kStop; i-- {
		t := &l.tokens[i]
		footer, less = footer || t.kind == kNum && t.amt.footer, less || t.kind == kSellLess || t.kind == kNo
	}
	return footer && less
}

// letsSay are words of supposing that correct a value where another stands right before them.
var letsSay = map[string]bool{"let us say": true, "let us call it": true}

var setRight = &entry{kind: kFix, key: "fix"}

// forEach are words that say no more than that all of something are alike.
var forEach = map[string]bool{"for all": true, "for each": true, "for every": true, "on all": true, "on each": true, "on every": true}

// tolerates reports whether the line tells how far things may be off.
func (l *lexing) tolerates() bool {
	for i := range l.tokens {
		if l.tokens[i].kind == kOffEach {
			return true
		}
	}
	return false
}

// numberSoon reports whether no more than "down" and "to" stand between token i and a number.
func (l *lexing) numberSoon(i int) bool {
	for i < len(l.tokens) && (l.tokens[i].kind == kDown || l.tokens[i].kind == kTo) {
		i++
	}
	return i < len(l.tokens) && l.tokens[i].kind == kNum
}

// countsTo reports whether a count and another that takes its place stand at token i: "from six boards to seven".
func (l *lexing) countsTo(i int) bool {
	if i+4 >= len(l.tokens) || i == 0 || l.tokens[i-1].kind != kGoesIn && l.tokens[i-1].kind != kMove && l.tokens[i-1].kind != kChange {
		return false // a range, it may be
	}
	a, part, to, b := &l.tokens[i+1], &l.tokens[i+2], &l.tokens[i+3], &l.tokens[i+4]
	if a.kind != kNum || b.kind != kNum || !part.is(kPart) || !part.plural() || to.kind != kTo {
		return false
	}
	return a.amt.unit == bare && b.amt.unit == bare && a.amt.val.IsInt() && b.amt.val.IsInt() && !a.amt.val.Eq(b.amt.val)
}

var eachEnd = []found{{entry: &entry{kind: kLoc, key: "each end", sense: meaning("fit |")}}}

var soldToo = &entry{kind: kSellMore, key: "+="}

// sellsAfter reports whether a word of selling stands behind token i in its sentence.
func (l *lexing) sellsAfter(i int) bool {
	for i++; i < len(l.tokens) && l.tokens[i].kind != kStop; i++ {
		if k := l.tokens[i].kind; k == kSell || k == kSellLess {
			return true
		}
	}
	return false
}

var addedPosts = nounOf("added post")
