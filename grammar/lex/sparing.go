package lex

import (
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
)

// Boards to spare, the width of a cut and the marks of a tape, settled by what stands beside them.

// sparesCounted takes boards that are counted as extra, or as to be left over, for spare ones where no length of them is told: "order
// three extra boards", "get me two extra", "my wife wants four boards left over".
func (l *lexing) sparesCounted() {
	for i := 0; i+1 < len(l.tokens); i++ {
		num, t := &l.tokens[i], &l.tokens[i+1]
		if num.Kind != lexicon.Num || num.Amt.Unit != measure.Bare || num.Amt.Footer || !num.Amt.Val.IsInt() || num.Amt.Bad != "" {
			continue
		}
		switch {
		case t.Kind == lexicon.Extra && moreBoards[t.Text] && l.sparesEnd(i+2) && !l.sizesSaid(i):
			t.Kind, t.Found = lexicon.Part, spareNoun
		case t.Is(lexicon.More) && t.Text == "extra" && l.sparesEnd(i+2) && !l.sizesSaid(i) && l.bidsMore(i):
			t.Kind, t.Found = lexicon.Part, spareNoun
		case t.Kind == lexicon.Part && t.Key() == "rail" && i+2 < len(l.tokens) && l.tokens[i+2].Kind == lexicon.Have && remaining[l.tokens[i+2].Text] && l.wishedFor(i) && l.sparesEnd(i+3):
			t.Found, t.Text = spareNoun, "spare "+t.Text
			l.drop(i + 2)
		default:
			continue
		}
		if i > 0 && l.tokens[i-1].Kind == lexicon.Sell && Buys[l.tokens[i-1].Text] || i > 0 && l.tokens[i-1].Kind == lexicon.Measured && l.tokens[i-1].Text == "get" {
			l.drop(i - 1)
		}
	}
}

var (
	moreBoards = PhraseSet("extra boards", "extra board", "extra pieces", "extra piece", "extra")
	remaining  = PhraseSet("left over", "leftover", "leftovers")
)

// PhraseSet is a set of phrases.
func PhraseSet(phrases ...string) map[string]bool {
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
	switch t := &l.tokens[i]; t.Kind {
	case lexicon.Stop, lexicon.Reason, lexicon.TailFill:
		return true
	case lexicon.Have, lexicon.HaveTail:
		return t.Text == "onhand" && l.sparesEnd(i+1)
	case lexicon.Comma, lexicon.And:
		if i+1 == len(l.tokens) {
			return true
		}
		next := &l.tokens[i+1]
		return next.Kind != lexicon.Num && next.Kind != lexicon.Size && next.Kind != lexicon.Dim && next.Kind != lexicon.Head
	}
	return false
}

// sizesSaid reports whether a size or a length is told in the sentence of token i: then pieces of it may be what is extra.
func (l *lexing) sizesSaid(i int) bool {
	from, to := i, i
	for from > 0 && l.tokens[from-1].Kind != lexicon.Stop && l.tokens[from-1].Kind != lexicon.QMark {
		from--
	}
	for to < len(l.tokens) && l.tokens[to].Kind != lexicon.Stop && l.tokens[to].Kind != lexicon.QMark {
		to++
	}
	for k := from; k < to; k++ {
		if t := &l.tokens[k]; t.Kind == lexicon.Size || t.Kind == lexicon.Num && k != i && (t.Amt.Footer || t.Amt.Size != "") {
			return true
		}
	}
	return false
}

// bidsMore reports whether a verb of buying stands before the number at token i.
func (l *lexing) bidsMore(i int) bool {
	if i > 0 && (l.tokens[i-1].Kind == lexicon.Sell && Buys[l.tokens[i-1].Text]) {
		return true
	}
	return Buys[LastWord(l.tokens[i].Before)] || EndsIn(l.tokens[i].Before, "throw in")
}

// WishedFor reports whether what is counted at token i is wished, and not had.
func (l *lexing) wishedFor(i int) bool {
	switch LastWord(l.tokens[i].Before) {
	case "want", "wants", "like", "likes", "keep", "prefer", "prefers", "need", "needs":
		return true
	}
	return i > 0 && l.tokens[i-1].Kind == lexicon.Head && l.tokens[i-1].Key() == "state" && !EndsIn(l.tokens[i-1].Text, "said")
}

// widthOfCut takes "the cut is an eighth wide" for the kerf: no piece is told by how wide it is cut.
func (l *lexing) widthOfCut() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, num, dim := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if t.Kind != lexicon.CutWord || t.Text != "cut" || num.Kind != lexicon.Num || num.Amt.Unit == measure.Money || dim.Kind != lexicon.Dim || dim.Key() != "wide" && dim.Key() != "thick" {
			continue
		}
		if w := LastWord(t.Before); w == "the" || w == "each" || w == "every" || w == "my" || w == "a" {
			t.Kind, t.Found = lexicon.Part, kerfNoun
		}
	}
}

var kerfNoun = NounOf("kerf")

// finerStill takes the marks of a tape in a correction for what they are: "go by eighths on the tape, no, sixteenths".
func (l *lexing) finerStill() {
	tape := false
	for i := range l.tokens {
		t := &l.tokens[i]
		switch {
		case t.Kind == lexicon.Part && t.Key() == "tape":
			tape = true
		case t.Kind == lexicon.Stop || t.Kind == lexicon.QMark:
			tape = false
		case t.Kind == lexicon.Unknown && tape && i > 1 && (l.tokens[i-1].Kind == lexicon.No || l.tokens[i-1].Kind == lexicon.Fix || l.tokens[i-1].Kind == lexicon.Comma):
			if a, ok := l.markOf(t); ok {
				t.Kind, t.Amt = lexicon.Num, &a
			}
		}
	}
}

// markOf reads a word as a mark of a tape: "sixteenths" as 1/16.
func (l *lexing) markOf(t *Token) (measure.Amount, bool) {
	d, _, ok := l.Denominator(t.first)
	if !ok || d < 3 {
		return measure.Amount{}, false
	}
	return measure.Amount{Number: measure.Number{Val: OneRat.Div(measure.WordInt(d).Val), Frac: true, Words: true}}, true
}
