package grammar

import "strings"

// wordings sets right what a word means by what stands beside it, before anything else is bound.
func (l *lexing) wordings() {
	l.stackWords()
	l.asOf()
	l.toRange()
	l.andLimits()
	l.muchAs()
	l.capAt()
	l.cutFrom()
	l.sizeNouns()
	l.verbsFirst()
	l.highGreeting()
	l.asksNothing()
	l.soldOut()
	l.hasNone()
	l.madeOf()
	l.tapeReads()
	l.widerThanTheirs()
	l.costLimit()
	l.offEach()
	l.ordered()
	l.isItOK()
	l.beside()
	l.onward()
	l.reaching()
	l.noMoreOf()
	l.plusOrMinus()
	l.eitherLength()
	l.sayBy()
	l.thatIsAll()
	l.openingsApart()
	l.oneBay()
	l.aStiffener()
	l.sizeOfCounted()
	l.pastTop()
	l.belowFloor()
	l.buying()
	l.purchases()
	l.wayThenValue()
	l.goingUp()
	l.loneMarks()
	l.rightAt()
	l.spareOver()
	l.sparesCounted()
	l.widthOfCut()
	l.finerStill()
	l.sizeOfFace()
	l.bodyMeasures()
	l.byHowMuch()
	l.lastNeither()
	l.lowInBay()
	l.lengthsHad()
	l.besidesFor()
	l.multiplied()
	l.thenWhat()
	l.notHaving()
	l.ratherThan()
	l.boardingUp()
	l.whateverIs()
	l.everyPiece()
	l.closeAsCanBe()
	l.startsAt()
}

// drop takes token i out. What stood before it stands before the next.
func (l *lexing) drop(i int) {
	if before := l.tokens[i].before; before != "" && i+1 < len(l.tokens) {
		l.tokens[i+1].before = strings.TrimSpace(before + " " + l.tokens[i+1].before)
	}
	l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
}

// asOf drops the "as" between a value and what it is the value of: "use 1x4 as the stiffeners".
func (l *lexing) asOf() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t, prev, next := &l.tokens[i], &l.tokens[i-1], &l.tokens[i+1]
		if t.kind == kTo && prev.kind == kNum && next.kind == kPart && next.key() == "wall height" && strings.HasPrefix(next.text, "top") && (i < 2 || l.tokens[i-2].kind != kFrom) {
			l.drop(i) // "46 to the top of the wall"
			continue
		}
		if t.kind == kRel && t.text == "as" && (prev.kind == kNum || prev.kind == kSize || prev.kind == kDim) && (next.kind == kPart || next.kind == kLoc) {
			l.drop(i)
		}
	}
}

// toRange drops the "to" before a range: "hold the gap to between two and three".
func (l *lexing) toRange() {
	for i := 0; i+2 < len(l.tokens); i++ {
		if l.tokens[i].kind == kTo && l.tokens[i].text == "to" && l.tokens[i+1].kind == kBetween && l.tokens[i+2].kind == kNum {
			l.drop(i)
		}
	}
}

// andLimits tells "two and under", which is a limit, from "more than two and under three", which is two of them.
func (l *lexing) andLimits() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		word, ok := strings.CutPrefix(t.text, "and ")
		if t.kind != kBound || !ok || l.tokens[i+1].kind != kNum {
			continue
		}
		kind, e := kUnder, under
		switch word {
		case "under", "below":
		case "over", "above":
			kind, e = kOver, over
		default:
			continue
		}
		way := *t
		way.kind, way.found, way.text, way.before = kind, []found{{entry: e}}, word, ""
		t.kind, t.found, t.text = kAnd, nil, "and"
		l.tokens = append(l.tokens[:i+1], append([]token{way}, l.tokens[i+1:]...)...)
	}
}

var (
	under  = &entry{kind: kUnder, key: "<"}
	over   = &entry{kind: kOver, key: ">"}
	atMost = &entry{kind: kRel, key: "<="}
)

// muchAs takes "as much as" before a number for the limit that it is: "the gap may be as much as four inches".
func (l *lexing) muchAs() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind != kSame || l.tokens[i+1].kind != kNum {
			continue
		}
		if t.text == "as much as" || t.text == "as many as" {
			t.kind, t.found = kRel, []found{{entry: atMost}}
		}
	}
}

// capAt takes "cap" for a verb where a part and its limit follow: "cap the board count at six".
func (l *lexing) capAt() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind == kPart && (t.text == "cap the board" || t.text == "cap the rail") && l.tokens[i+1].is(kKnowing) {
			l.tokens[i+1].kind, l.tokens[i+1].found, l.tokens[i+1].before = kPart, railNoun, "the" // "cap the board count at six"
			t.text = "cap"
		}
		if t.kind != kPart || t.text != "cap" && t.text != "cap the" || l.tokens[i+1].kind != kPart && l.tokens[i+1].kind != kLoc {
			continue
		}
		j := i + 2
		for j < len(l.tokens) && (l.tokens[j].kind == kPart || l.tokens[j].kind == kLoc || l.tokens[j].kind == kDim) {
			j++
		}
		if j < len(l.tokens) && l.tokens[j].kind == kNum && strings.HasSuffix(l.tokens[j].before, "at") {
			t.kind, t.found = kRel, []found{{entry: atMost}}
		}
	}
}

// cutFrom takes boards that are cut from a size for boards of that size: "the slats should be cut from 1x4".
func (l *lexing) cutFrom() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.kind != kPart || t.key() != "fit" || !strings.HasSuffix(t.text, "cut") {
			continue
		}
		if next.kind == kFrom && i+2 < len(l.tokens) && l.tokens[i+2].kind == kSize {
			l.drop(i + 1)
			t, next = &l.tokens[i], &l.tokens[i+1]
			next.before = "from"
		}
		if next.kind == kSize && strings.HasPrefix(next.before, "from") {
			t.kind, t.found, t.text = kPart, railNoun, "rails"
		}
	}
}

// bareOrdinals gives an ordinal the noun of what it is held against: "the second bay as wide as the first".
func (l *lexing) bareOrdinals() {
	for i := 1; i < len(l.tokens); i++ {
		t, prev := &l.tokens[i], &l.tokens[i-1]
		if t.kind != kOrdinal || i+1 < len(l.tokens) && (l.tokens[i+1].kind == kPart || l.tokens[i+1].kind == kNum) {
			continue
		}
		if prev.kind != kSame && prev.kind != kThan && prev.kind != kFactor && !(strings.HasSuffix(prev.text, "than") || strings.HasSuffix(prev.text, "as")) {
			continue
		}
		for j := i - 1; j >= 0 && l.tokens[j].kind != kStop; j-- {
			if p := l.tokens[j]; p.kind == kPart && p.key() == "bay" && p.index > 0 && p.index != t.index {
				t.kind, t.found, t.indexes = kPart, bayNoun, []int{t.index}
				break
			}
		}
	}
}

var bayNoun = nounOf("bay")

// sizeNouns drops what a size is called when it is that of a part: "eight by eight timbers", "made out of 1x4 stock".
func (l *lexing) sizeNouns() {
	for i := 0; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		switch {
		case t.kind == kSize && i+1 < len(l.tokens):
			switch next := &l.tokens[i+1]; next.text {
			case "stock", "timbers", "timber", "lumber":
				if i+2 < len(l.tokens) && l.tokens[i+2].kind == kPart && firstWord(l.tokens[i+2].before) == "for" {
					l.drop(i + 1) // "90x90 timber for the added post"
				} else if l.partBefore(i) && (i+2 == len(l.tokens) || l.tokens[i+2].kind == kComma || l.tokens[i+2].kind == kStop) {
					l.drop(i + 1)
				}
			}
		case (t.kind == kSellLess || t.kind == kOut) && t.text == "out of" && i+1 < len(l.tokens) && l.tokens[i+1].kind == kSize && (l.partBefore(i) || i > 0 && t.before == "" && l.tokens[i-1].kind == kComma && l.partBefore(i-1)):
			l.drop(i) // "two stiffeners in every bay, out of 1x4"
		}
	}
}

// partBefore reports whether a part that has a size is named before token i in its clause.
func (l *lexing) partBefore(i int) bool {
	for i--; i >= 0; i-- {
		switch t := &l.tokens[i]; t.kind {
		case kComma, kStop, kQMark, kNum, kSell, kHave:
			return false
		case kPart, kLoc, kQuest:
			e := t.as(kPart)
			if e == nil {
				e = t.as(kLoc)
			}
			if e == nil {
				continue
			}
			switch e.key {
			case "rail", "post", "end post", "added post", "stiffener", "upright", "between posts":
				return true
			}
		}
	}
	return false
}

// verbsFirst takes a word for a verb of change where a part and its change follow: "stretch the overall by four inches".
func (l *lexing) verbsFirst() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, part := &l.tokens[i], &l.tokens[i+1]
		if i > 0 && l.tokens[i-1].kind != kComma && l.tokens[i-1].kind != kStop && l.tokens[i-1].kind != kAnd || part.kind != kPart {
			continue
		}
		num := &l.tokens[i+2]
		if num.kind != kNum && num.kind != kTo || num.kind == kNum && !strings.HasSuffix(num.before, "by") {
			continue
		}
		switch t.text {
		case "stretch", "extend", "spread":
			t.kind, t.found = kChange, []found{{entry: plusSign}}
		case "squeeze", "pinch", "cinch", "trim", "shave", "cut":
			t.kind, t.found = kChange, []found{{entry: minusSign}}
		}
	}
}

// highGreeting drops a "hi" that is not how high something is.
func (l *lexing) highGreeting() {
	for i := len(l.tokens) - 1; i >= 0; i-- {
		if t := &l.tokens[i]; t.kind == kDim && t.text == "hi" && (i == 0 || l.tokens[i-1].kind != kNum) {
			l.drop(i)
		}
	}
}

// ordered drops a verb of buying before a share of lumber: "ordered fifteen percent extra".
func (l *lexing) ordered() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.kind == kUnknown && (t.text == "ordered" || t.text == "ordering" || t.text == "order") && next.kind == kNum && next.amt.unit == percent {
			l.drop(i)
		}
	}
}

// isItOK takes an "ok" after what a question speaks of for what asks whether it can be: "is a 3 inch gap alright".
func (l *lexing) isItOK() {
	if len(l.tokens) == 0 || l.tokens[0].kind == kHead || l.tokens[0].kind == kTail {
		return
	}
	if o := firstWord(l.tokens[0].before); o != "is" && o != "are" {
		return
	}
	named := func(t *token) bool { return t.kind == kNum || t.kind == kSize || t.kind == kPart || t.kind == kDim }
	for i := 1; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind == kStop || t.kind == kComma {
			return
		}
		if t.kind == kTail && t.key() == "verify" && fine[firstWord(t.text)] && named(&l.tokens[i-1]) {
			t.text, t.found = "fit", []found{{entry: canBe}}
			return
		}
		if fine[firstWord(t.before)] && named(&l.tokens[i-1]) {
			at := t.at
			_, t.before, _ = strings.Cut(t.before, " ")
			l.tokens = append(l.tokens[:i], append([]token{{kind: kTail, text: "fit", at: at, end: at, found: []found{{entry: canBe}}}}, l.tokens[i:]...)...)
			return
		}
	}
	if at := l.atoms[len(l.atoms)-1]; fine[firstWord(l.before)] && named(l.last()) {
		l.tokens = append(l.tokens, token{kind: kTail, text: "fit", at: at.at, end: at.end, found: []found{{entry: canBe}}})
	}
}

var canBe = &entry{kind: kTail, key: "fit"}

// fine are words of consent.
var fine = map[string]bool{"ok": true, "okay": true, "fine": true, "alright": true, "allowed": true, "okay?": true, "ok?": true, "alright?": true}
