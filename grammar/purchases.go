package grammar

import (
	"strings"

	"saywright/solver/exact"
)

// purchases settles what is bought, given or told by its number by what stands beside it.
func (l *lexing) purchases() {
	l.soldAs()
	l.crossedOff()
	l.spent()
	l.givenBoards()
	l.dashedLength()
	l.lengthsOfSize()
	l.pricedApart()
	l.countedBox()
	l.figuredOn()
	l.spentInAll()
	l.overMoney()
	l.spokenFirst()
	l.lengthsDropped()
	l.fromStock()
	l.quotedFor()
	l.toldToStay()
	l.howListed()
	l.boughtAtAll()
	l.formerPrice()
	l.putDown()
	l.stepsFor()
	l.toTheList()
	l.lumberOf()
}

// givenBoards takes boards that somebody near gave for boards at hand, and no claim: "my father gave me eight 2x6 fourteen footers".
func (l *lexing) givenBoards() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind != kHead || t.key() != string(Check) || !endsIn(t.text, "me") && !endsIn(t.text, "us") || !oneIsIn(givers, t.text) || !setsLimits(t.text) {
			continue
		}
		n := &l.tokens[i+1]
		if n.kind == kNum && n.amt.unit == money {
			t.kind, t.found = kPart, budgetNoun // "my mother gave me $300"
			continue
		}
		if n.kind != kNum || n.amt.unit != bare || !n.amt.val.IsInt() {
			continue
		}
		for k := i + 2; k < len(l.tokens) && k < i+4; k++ {
			if l.tokens[k].kind == kSize {
				t.kind, t.found = kHave, []found{{entry: havesIt}}
			}
		}
	}
}

var (
	givers  = wordSet("gave gives handed passed brought left lent")
	havesIt = &entry{kind: kHave, key: "have"}
)

// isOneOf reports whether a word of a text is a member of a class.
func isOneOf(class, text string) bool {
	id := vocab().ids[class]
	for _, w := range strings.Fields(text) {
		for _, c := range vocab().classes[w] {
			if c == id {
				return true
			}
		}
	}
	return false
}

// dashedLength reads the length behind a size and a dash: "2x6-16 17.85 ea".
func (l *lexing) dashedLength() {
	for i := 0; i+3 < len(l.tokens); i++ {
		size, dash, num := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if size.kind != kSize || dash.text != "-" || num.kind != kNum || num.amt.unit != bare || !num.amt.val.IsInt() || dash.at != size.end || num.at != dash.end {
			continue
		}
		if num.amt.val.Less(exact.Int(6)) || exact.Int(24).Less(num.amt.val) || !l.priceNext(i+3) && l.tokens[i+3].kind != kPriceVerb {
			continue
		}
		inFeet(num)
		l.drop(i + 1)
	}
}

// inFeet makes a bare number one of feet.
func inFeet(t *token) {
	a := *t.amt
	a.val, a.unit, a.footer, a.per = a.val.Mul(twelve), feet, true, twelve
	t.amt = &a
}

// lengthsOfSize takes the lengths of a size for those on sale: "your 4x4 lengths: 8, 10, 16 feet".
func (l *lexing) lengthsOfSize() {
	for i := 0; i+2 < len(l.tokens); i++ {
		size, t, next := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if size.kind != kSize || t.kind != kDim || t.text != "lengths" || i > 0 && l.tokens[i-1].kind == kNum {
			continue
		}
		if next.text == ":" || next.kind == kNum && (lastWord(next.before) == "are" || lastWord(next.before) == "is") {
			t.kind, t.found = kStockWord, []found{{entry: lengthsSold}}
		}
	}
}

var lengthsSold = &entry{kind: kStockWord, key: "stock", sense: meaning("stock | price, have")}

// pricedApart drops the sign between what is bought and its price: "anchors, $1.75 apiece", "screws, 100 ct, 8.75".
func (l *lexing) pricedApart() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, sign, num := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if t.as(kItem) == nil || i > 0 && l.tokens[i-1].kind != kComma && l.tokens[i-1].kind != kStop && l.tokens[i-1].kind != kAnd || sign.kind != kComma || num.kind != kNum || num.before != "" {
			continue
		}
		if num.amt.unit == money && (i+3 == len(l.tokens) || l.tokens[i+3].kind == kEach || l.tokens[i+3].kind == kComma || l.tokens[i+3].kind == kStop) || num.amt.money2 && i+3 < len(l.tokens) && l.tokens[i+3].kind == kEach {
			l.drop(i + 1)
		}
	}
}

// countedBox drops the signs in "screws, 100 ct, 8.75".
func (l *lexing) countedBox() {
	for i := 0; i+4 < len(l.tokens); i++ {
		t, sign, num, count := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2], &l.tokens[i+3]
		if item := t.as(kItem); item == nil || item.key != "screws" || num.kind != kNum || num.amt.unit != bare || count.text != "count" && count.kind != kBoxOf || sign.kind != kComma {
			continue
		}
		if price := &l.tokens[i+4]; price.kind == kComma && i+5 < len(l.tokens) && l.priceNext(i+5) {
			l.drop(i + 4)
		} else if !l.priceNext(i + 4) {
			continue
		}
		l.drop(i + 1)
	}
}

// figuredOn drops the "figure" that only leads to so much of something: "figure twenty percent spare".
func (l *lexing) figuredOn() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, num := &l.tokens[i], &l.tokens[i+1]
		if t.kind == kWh && t.text == "figure" && num.kind == kNum && num.amt.unit == percent && num.before == "" && (i == 0 || l.tokens[i-1].kind == kComma || l.tokens[i-1].kind == kStop || endsIn(t.before, "so")) {
			l.drop(i)
		}
	}
}

// formerPrice drops what something cost before: "brackets used to be 2.99 but now they're 3.39", "9.30, up from eight".
func (l *lexing) formerPrice() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t, num := &l.tokens[i], &l.tokens[i+1]
		if num.kind != kNum {
			continue
		}
		if t.kind == kUnclear && strings.HasSuffix(t.text, "used to be") && (l.tokens[i-1].as(kItem) != nil || l.tokens[i-1].kind == kNum && l.tokens[i-1].amt.footer) {
			end := i + 2
			for end < len(l.tokens) && (l.tokens[end].breaksOff() || l.tokens[end].kind == kEach) {
				end++
			}
			if end < len(l.tokens) && end > i+2 && l.tokens[end].kind == kNum && oneIsIn(nowadays, l.tokens[end].before) {
				l.tokens = append(l.tokens[:i], l.tokens[end:]...)
			}
			continue
		}
		if t.kind != kFrom || i < 3 || l.tokens[i-1].kind != kUp && l.tokens[i-1].kind != kDown || i+2 < len(l.tokens) && !l.tokens[i+2].breaksOff() {
			continue
		}
		start := i - 1
		if l.tokens[start-1].kind == kComma {
			start--
		}
		if was := &l.tokens[start-1]; was.kind == kNum && (was.amt.unit == money || was.amt.money2) || was.kind == kEach {
			l.tokens = append(l.tokens[:start], l.tokens[i+2:]...)
		}
	}
}

var nowadays = wordSet("now today currently")

// putDown takes what is put down at a figure for what it costs: "put anchors down as two sixty apiece".
func (l *lexing) putDown() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind != kRel || t.text != "down as" && t.text != "down for" && t.text != "down at" || l.tokens[i-1].as(kItem) == nil || l.tokens[i+1].kind != kNum {
			continue
		}
		for k := i + 2; k < len(l.tokens); k++ {
			if l.tokens[k].kind == kEach {
				t.kind, t.found = kPriceVerb, []found{{entry: costs}}
			}
		}
	}
}

// stepsFor steps over steps that more pieces are for: "for the steps we want two extra two by sixes".
func (l *lexing) stepsFor() {
	for i := 0; i+3 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind != kQuest || !endsIn(t.text, "steps") || !strings.HasPrefix(t.before, "for") || i > 0 && !l.tokens[i-1].breaksOff() {
			continue
		}
		for k := i + 1; k < len(l.tokens) && k < i+5; k++ {
			if w := l.tokens[k].text; w == "extra" || w == "more" || w == "additional" || l.tokens[k].kind == kExtra {
				if t.before = ""; l.tokens[i+1].kind == kComma {
					l.drop(i + 1)
				}
				l.drop(i)
				break
			}
		}
	}
}

// toTheList drops the list that pieces are added to: "add six more 2x6 pieces at 22 to the list".
func (l *lexing) toTheList() {
	n := len(l.tokens)
	for n > 0 && l.tokens[n-1].kind == kStop {
		n--
	}
	if n < 5 || l.tokens[n-2].kind != kTo || l.tokens[n-1].text != "list" || l.tokens[0].text != "add" && l.tokens[0].kind != kExtra {
		return
	}
	size := false
	for i := range l.tokens[:n-2] {
		size = size || l.tokens[i].kind == kSize
	}
	if size {
		l.tokens = append(l.tokens[:n-2], l.tokens[n:]...)
	}
}

// lumberOf drops the lumber behind its size, where it is told next what is sold of it: "as for the 4x4 lumber, they sell it in …".
func (l *lexing) lumberOf() {
	for i := 0; i+3 < len(l.tokens); i++ {
		t := &l.tokens[i+1]
		if l.tokens[i].kind == kSize && t.kind == kPart && t.key() == "size" && !t.plural() && l.tokens[i+2].kind == kComma && l.tokens[i+3].kind == kSell {
			l.drop(i + 1)
		}
	}
}

// quotedFor makes money of a figure before what it is for: "fourteen ninety for each sixteen foot rail board", "14.90 for a
// sixteen foot 2x6".
func (l *lexing) quotedFor() {
	for i := 0; i+2 < len(l.tokens); i++ {
		last := i
		if l.spokenPair(i) {
			last++
		} else if num := &l.tokens[i]; num.kind != kNum || !num.amt.money2 || num.amt.unit != bare {
			continue
		}
		next := last + 1
		per := next < len(l.tokens) && l.tokens[next].kind == kPer
		if per {
			next++
		}
		if next+1 >= len(l.tokens) || !per && !strings.HasPrefix(l.tokens[next].before, "for") {
			continue
		}
		long, of := &l.tokens[next], &l.tokens[next+1]
		if long.kind != kNum || long.amt.unit != feet || of.kind != kSize && !(of.kind == kPart && of.key() == "rail" && of.index == 0) {
			continue
		}
		cash := amount{number: number{val: l.tokens[i].amt.val}, unit: money}
		if last > i {
			cash.val = cash.val.Add(l.tokens[last].amt.val.Div(exact.Int(100)))
			l.tokens[i].end = l.tokens[last].end
			l.tokens = append(l.tokens[:last], l.tokens[last+1:]...)
		}
		l.tokens[i].amt = &cash
	}
}

// howListed takes "how" before a list that was worked out for the asking after a reason: "show me how the shopping list was worked
// out".
func (l *lexing) howListed() {
	for i := 0; i+2 < len(l.tokens); i++ {
		how, list, tail := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if how.kind != kWh || how.text != "how" || list.kind != kQuest || list.key() != "shopping" || tail.kind != kTail || tail.key() != "why" {
			continue
		}
		how.kind, how.found = kHead, []found{{entry: &entry{kind: kHead, key: string(Why)}}}
		if i > 0 && l.tokens[i-1].kind == kWh {
			l.drop(i - 1)
		}
	}
}
