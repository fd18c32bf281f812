package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
)

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
	if before := l.tokens[i].Before; before != "" && i+1 < len(l.tokens) {
		l.tokens[i+1].Before = strings.TrimSpace(before + " " + l.tokens[i+1].Before)
	}
	l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
}

// asOf drops the "as" between a value and what it is the value of: "use 1x4 as the stiffeners".
func (l *lexing) asOf() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t, prev, next := &l.tokens[i], &l.tokens[i-1], &l.tokens[i+1]
		if t.Kind == lexicon.To && prev.Kind == lexicon.Num && next.Kind == lexicon.Part && next.Key() == "wall height" && strings.HasPrefix(next.Text, "top") && (i < 2 || l.tokens[i-2].Kind != lexicon.From) {
			l.drop(i) // "46 to the top of the wall"
			continue
		}
		if t.Kind == lexicon.Rel && t.Text == "as" && (prev.Kind == lexicon.Num || prev.Kind == lexicon.Size || prev.Kind == lexicon.Dim) && (next.Kind == lexicon.Part || next.Kind == lexicon.Loc) {
			l.drop(i)
		}
	}
}

// toRange drops the "to" before a range: "hold the gap to between two and three".
func (l *lexing) toRange() {
	for i := 0; i+2 < len(l.tokens); i++ {
		if l.tokens[i].Kind == lexicon.To && l.tokens[i].Text == "to" && l.tokens[i+1].Kind == lexicon.Between && l.tokens[i+2].Kind == lexicon.Num {
			l.drop(i)
		}
	}
}

// andLimits tells "two and under", which is a limit, from "more than two and under three", which is two of them.
func (l *lexing) andLimits() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		word, ok := strings.CutPrefix(t.Text, "and ")
		if t.Kind != lexicon.Bound || !ok || l.tokens[i+1].Kind != lexicon.Num {
			continue
		}
		kind, e := lexicon.Under, under
		switch word {
		case "under", "below":
		case "over", "above":
			kind, e = lexicon.Over, over
		default:
			continue
		}
		way := *t
		way.Kind, way.Found, way.Text, way.Before = kind, []lexicon.Found{{Entry: e}}, word, ""
		t.Kind, t.Found, t.Text = lexicon.And, nil, "and"
		l.tokens = append(l.tokens[:i+1], append([]Token{way}, l.tokens[i+1:]...)...)
	}
}

var (
	under  = &lexicon.Entry{Kind: lexicon.Under, Key: "<"}
	over   = &lexicon.Entry{Kind: lexicon.Over, Key: ">"}
	atMost = &lexicon.Entry{Kind: lexicon.Rel, Key: "<="}
)

// muchAs takes "as much as" before a number for the limit that it is: "the gap may be as much as four inches".
func (l *lexing) muchAs() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind != lexicon.Same || l.tokens[i+1].Kind != lexicon.Num {
			continue
		}
		if t.Text == "as much as" || t.Text == "as many as" {
			t.Kind, t.Found = lexicon.Rel, []lexicon.Found{{Entry: atMost}}
		}
	}
}

// capAt takes "cap" for a verb where a part and its limit follow: "cap the board count at six".
func (l *lexing) capAt() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind == lexicon.Part && (t.Text == "cap the board" || t.Text == "cap the rail") && l.tokens[i+1].Is(lexicon.Knowing) {
			l.tokens[i+1].Kind, l.tokens[i+1].Found, l.tokens[i+1].Before = lexicon.Part, RailNoun, "the" // "cap the board count at six"
			t.Text = "cap"
		}
		if t.Kind != lexicon.Part || t.Text != "cap" && t.Text != "cap the" || l.tokens[i+1].Kind != lexicon.Part && l.tokens[i+1].Kind != lexicon.Loc {
			continue
		}
		j := i + 2
		for j < len(l.tokens) && (l.tokens[j].Kind == lexicon.Part || l.tokens[j].Kind == lexicon.Loc || l.tokens[j].Kind == lexicon.Dim) {
			j++
		}
		if j < len(l.tokens) && l.tokens[j].Kind == lexicon.Num && strings.HasSuffix(l.tokens[j].Before, "at") {
			t.Kind, t.Found = lexicon.Rel, []lexicon.Found{{Entry: atMost}}
		}
	}
}

// cutFrom takes boards that are cut from a size for boards of that size: "the slats should be cut from 1x4".
func (l *lexing) cutFrom() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.Kind != lexicon.Part || t.Key() != "fit" || !strings.HasSuffix(t.Text, "cut") {
			continue
		}
		if next.Kind == lexicon.From && i+2 < len(l.tokens) && l.tokens[i+2].Kind == lexicon.Size {
			l.drop(i + 1)
			t, next = &l.tokens[i], &l.tokens[i+1]
			next.Before = "from"
		}
		if next.Kind == lexicon.Size && strings.HasPrefix(next.Before, "from") {
			t.Kind, t.Found, t.Text = lexicon.Part, RailNoun, "rails"
		}
	}
}

// bareOrdinals gives an ordinal the noun of what it is held against: "the second bay as wide as the first".
func (l *lexing) bareOrdinals() {
	for i := 1; i < len(l.tokens); i++ {
		t, prev := &l.tokens[i], &l.tokens[i-1]
		if t.Kind != lexicon.Ordinal || i+1 < len(l.tokens) && (l.tokens[i+1].Kind == lexicon.Part || l.tokens[i+1].Kind == lexicon.Num) {
			continue
		}
		if prev.Kind != lexicon.Same && prev.Kind != lexicon.Than && prev.Kind != lexicon.Factor && !(strings.HasSuffix(prev.Text, "than") || strings.HasSuffix(prev.Text, "as")) {
			continue
		}
		for j := i - 1; j >= 0 && l.tokens[j].Kind != lexicon.Stop; j-- {
			if p := l.tokens[j]; p.Kind == lexicon.Part && p.Key() == "bay" && p.Index > 0 && p.Index != t.Index {
				t.Kind, t.Found, t.Indexes = lexicon.Part, bayNoun, []int{t.Index}
				break
			}
		}
	}
}

var bayNoun = NounOf("bay")

// sizeNouns drops what a size is called when it is that of a part: "eight by eight timbers", "made out of 1x4 stock".
func (l *lexing) sizeNouns() {
	for i := 0; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		switch {
		case t.Kind == lexicon.Size && i+1 < len(l.tokens):
			switch next := &l.tokens[i+1]; next.Text {
			case "stock", "timbers", "timber", "lumber":
				if i+2 < len(l.tokens) && l.tokens[i+2].Kind == lexicon.Part && FirstWord(l.tokens[i+2].Before) == "for" {
					l.drop(i + 1) // "90x90 timber for the added post"
				} else if l.partBefore(i) && (i+2 == len(l.tokens) || l.tokens[i+2].Kind == lexicon.Comma || l.tokens[i+2].Kind == lexicon.Stop) {
					l.drop(i + 1)
				}
			}
		case (t.Kind == lexicon.SellLess || t.Kind == lexicon.Out) && t.Text == "out of" && i+1 < len(l.tokens) && l.tokens[i+1].Kind == lexicon.Size && (l.partBefore(i) || i > 0 && t.Before == "" && l.tokens[i-1].Kind == lexicon.Comma && l.partBefore(i-1)):
			l.drop(i) // "two stiffeners in every bay, out of 1x4"
		}
	}
}

// partBefore reports whether a part that has a size is named before token i in its clause.
func (l *lexing) partBefore(i int) bool {
	for i--; i >= 0; i-- {
		switch t := &l.tokens[i]; t.Kind {
		case lexicon.Comma, lexicon.Stop, lexicon.QMark, lexicon.Num, lexicon.Sell, lexicon.Have:
			return false
		case lexicon.Part, lexicon.Loc, lexicon.Quest:
			e := t.As(lexicon.Part)
			if e == nil {
				e = t.As(lexicon.Loc)
			}
			if e == nil {
				continue
			}
			switch e.Key {
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
		if i > 0 && l.tokens[i-1].Kind != lexicon.Comma && l.tokens[i-1].Kind != lexicon.Stop && l.tokens[i-1].Kind != lexicon.And || part.Kind != lexicon.Part {
			continue
		}
		num := &l.tokens[i+2]
		if num.Kind != lexicon.Num && num.Kind != lexicon.To || num.Kind == lexicon.Num && !strings.HasSuffix(num.Before, "by") {
			continue
		}
		switch t.Text {
		case "stretch", "extend", "spread":
			t.Kind, t.Found = lexicon.Change, []lexicon.Found{{Entry: PlusSign}}
		case "squeeze", "pinch", "cinch", "trim", "shave", "cut":
			t.Kind, t.Found = lexicon.Change, []lexicon.Found{{Entry: MinusSign}}
		}
	}
}

// highGreeting drops a "hi" that is not how high something is.
func (l *lexing) highGreeting() {
	for i := len(l.tokens) - 1; i >= 0; i-- {
		if t := &l.tokens[i]; t.Kind == lexicon.Dim && t.Text == "hi" && (i == 0 || l.tokens[i-1].Kind != lexicon.Num) {
			l.drop(i)
		}
	}
}

// ordered drops a verb of buying before a share of lumber: "ordered fifteen percent extra".
func (l *lexing) ordered() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.Kind == lexicon.Unknown && (t.Text == "ordered" || t.Text == "ordering" || t.Text == "order") && next.Kind == lexicon.Num && next.Amt.Unit == measure.Percent {
			l.drop(i)
		}
	}
}

// isItOK takes an "ok" after what a question speaks of for what asks whether it can be: "is a 3 inch gap alright".
func (l *lexing) isItOK() {
	if len(l.tokens) == 0 || l.tokens[0].Kind == lexicon.Head || l.tokens[0].Kind == lexicon.Tail {
		return
	}
	if o := FirstWord(l.tokens[0].Before); o != "is" && o != "are" {
		return
	}
	named := func(t *Token) bool {
		return t.Kind == lexicon.Num || t.Kind == lexicon.Size || t.Kind == lexicon.Part || t.Kind == lexicon.Dim
	}
	for i := 1; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind == lexicon.Stop || t.Kind == lexicon.Comma {
			return
		}
		if t.Kind == lexicon.Tail && t.Key() == "verify" && fine[FirstWord(t.Text)] && named(&l.tokens[i-1]) {
			t.Text, t.Found = "fit", []lexicon.Found{{Entry: canBe}}
			return
		}
		if fine[FirstWord(t.Before)] && named(&l.tokens[i-1]) {
			at := t.At
			_, t.Before, _ = strings.Cut(t.Before, " ")
			l.tokens = append(l.tokens[:i], append([]Token{{Kind: lexicon.Tail, Text: "fit", At: at, End: at, Found: []lexicon.Found{{Entry: canBe}}}}, l.tokens[i:]...)...)
			return
		}
	}
	if at := l.Atoms[len(l.Atoms)-1]; fine[FirstWord(l.before)] && named(l.last()) {
		l.tokens = append(l.tokens, Token{Kind: lexicon.Tail, Text: "fit", At: at.At, End: at.End, Found: []lexicon.Found{{Entry: canBe}}})
	}
}

var canBe = &lexicon.Entry{Kind: lexicon.Tail, Key: "fit"}

// fine are words of consent.
var fine = map[string]bool{"ok": true, "okay": true, "fine": true, "alright": true, "allowed": true, "okay?": true, "ok?": true, "alright?": true}

// tagsEnd ends a sentence behind a tag that took its question mark with it: "…, right? Boards are 5-3/8".
func (l *lexing) tagsEnd() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind != lexicon.Tail || !strings.HasSuffix(t.Text, "?") || l.tokens[i+1].Kind == lexicon.QMark || l.tokens[i+1].Kind == lexicon.Stop {
			continue
		}
		mark := Token{Kind: lexicon.QMark, Text: "?", At: t.End - 1, End: t.End}
		l.tokens = append(l.tokens[:i+1], append([]Token{mark}, l.tokens[i+1:]...)...)
	}
}
