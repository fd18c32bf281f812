package grammar

// Boards to spare, the width of a cut and the marks of a tape, settled by what stands beside them.

// sparesCounted takes boards that are counted as extra, or as to be left over, for spare ones where no length of them is told: "order
// three extra boards", "get me two extra", "my wife wants four boards left over".
func (l *lexing) sparesCounted() {
	for i := 0; i+1 < len(l.tokens); i++ {
		num, t := &l.tokens[i], &l.tokens[i+1]
		if num.kind != kNum || num.amt.unit != bare || num.amt.footer || !num.amt.val.IsInt() || num.amt.bad != "" {
			continue
		}
		switch {
		case t.kind == kExtra && moreBoards[t.text] && l.sparesEnd(i+2) && !l.sizesSaid(i):
			t.kind, t.found = kPart, spareNoun
		case t.is(kMore) && t.text == "extra" && l.sparesEnd(i+2) && !l.sizesSaid(i) && l.bidsMore(i):
			t.kind, t.found = kPart, spareNoun
		case t.kind == kPart && t.key() == "rail" && i+2 < len(l.tokens) && l.tokens[i+2].kind == kHave && remaining[l.tokens[i+2].text] && l.wishedFor(i) && l.sparesEnd(i+3):
			t.found, t.text = spareNoun, "spare "+t.text
			l.drop(i + 2)
		default:
			continue
		}
		if i > 0 && l.tokens[i-1].kind == kSell && buys[l.tokens[i-1].text] || i > 0 && l.tokens[i-1].kind == kMeasured && l.tokens[i-1].text == "get" {
			l.drop(i - 1)
		}
	}
}

var (
	moreBoards = phraseSet("extra boards", "extra board", "extra pieces", "extra piece", "extra")
	remaining  = phraseSet("left over", "leftover", "leftovers")
)

// phraseSet is a set of phrases.
func phraseSet(phrases ...string) map[string]bool {
	m := map[string]bool{}
	for _, p := range phrases {
		m[p] = true
	}
	return m
}

// sparesEnd reports whether a clause about spare boards ends before token i, and no length of them follows.
func (l *lexing) sparesEnd(i int) bool {
	if i >= len(l.tokens) {
		return true
	}
	switch t := &l.tokens[i]; t.kind {
	case kStop, kReason, kTailFill:
		return true
	case kHave, kHaveTail:
		return t.text == "onhand" && l.sparesEnd(i+1)
	case kComma, kAnd:
		if i+1 == len(l.tokens) {
			return true
		}
		next := &l.tokens[i+1]
		return next.kind != kNum && next.kind != kSize && next.kind != kDim && next.kind != kHead
	}
	return false
}

// sizesSaid reports whether a size or a length is told in the sentence of token i: then pieces of it may be what is extra.
func (l *lexing) sizesSaid(i int) bool {
	from, to := i, i
	for from > 0 && l.tokens[from-1].kind != kStop && l.tokens[from-1].kind != kQMark {
		from--
	}
	for to < len(l.tokens) && l.tokens[to].kind != kStop && l.tokens[to].kind != kQMark {
		to++
	}
	for k := from; k < to; k++ {
		if t := &l.tokens[k]; t.kind == kSize || t.kind == kNum && k != i && (t.amt.footer || t.amt.size != "") {
			return true
		}
	}
	return false
}

// bidsMore reports whether a verb of buying stands before the number at token i.
func (l *lexing) bidsMore(i int) bool {
	if i > 0 && (l.tokens[i-1].kind == kSell && buys[l.tokens[i-1].text]) {
		return true
	}
	return buys[lastWord(l.tokens[i].before)] || endsIn(l.tokens[i].before, "throw in")
}

// wishedFor reports whether what is counted at token i is wished, and not had.
func (l *lexing) wishedFor(i int) bool {
	switch lastWord(l.tokens[i].before) {
	case "want", "wants", "like", "likes", "keep", "prefer", "prefers", "need", "needs":
		return true
	}
	return i > 0 && l.tokens[i-1].kind == kHead && l.tokens[i-1].key() == "state" && !endsIn(l.tokens[i-1].text, "said")
}

// widthOfCut takes "the cut is an eighth wide" for the kerf: no piece is told by how wide it is cut.
func (l *lexing) widthOfCut() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, num, dim := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if t.kind != kCutWord || t.text != "cut" || num.kind != kNum || num.amt.unit == money || dim.kind != kDim || dim.key() != "wide" && dim.key() != "thick" {
			continue
		}
		if w := lastWord(t.before); w == "the" || w == "each" || w == "every" || w == "my" || w == "a" {
			t.kind, t.found = kPart, kerfNoun
		}
	}
}

var kerfNoun = nounOf("kerf")

// finerStill takes the marks of a tape in a correction for what they are: "go by eighths on the tape, no, sixteenths".
func (l *lexing) finerStill() {
	tape := false
	for i := range l.tokens {
		t := &l.tokens[i]
		switch {
		case t.kind == kPart && t.key() == "tape":
			tape = true
		case t.kind == kStop || t.kind == kQMark:
			tape = false
		case t.kind == kUnknown && tape && i > 1 && (l.tokens[i-1].kind == kNo || l.tokens[i-1].kind == kFix || l.tokens[i-1].kind == kComma):
			if a, ok := l.markOf(t); ok {
				t.kind, t.amt = kNum, &a
			}
		}
	}
}

// markOf reads a word as a mark of a tape: "sixteenths" as 1/16.
func (l *lexing) markOf(t *token) (amount, bool) {
	d, _, ok := l.denominator(t.first)
	if !ok || d < 3 {
		return amount{}, false
	}
	return amount{number: number{val: oneRat.Div(wordInt(d).val), frac: true, words: true}}, true
}
