package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
)

// reaching takes "reach" and "as large as" before a number for the limit that a denial in front of them makes of it: "no gap
// may reach four inches", "I don't want any of the gaps to be as large as four inches".
func (l *lexing) reaching() {
	denied := false
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		switch {
		case t.Kind == lexicon.Stop || t.Kind == lexicon.QMark || t.Kind == lexicon.Comma:
			denied = false
		case t.Kind == lexicon.No || t.Kind == lexicon.Not:
			denied = true
		case !denied || l.tokens[i+1].Kind != lexicon.Num:
		case t.Kind == lexicon.Part && t.Text == "reach", t.Kind == lexicon.Same && strings.HasPrefix(t.Text, "as ") && strings.HasSuffix(t.Text, " as"):
			t.Kind, t.Found, t.Index = lexicon.Rel, []lexicon.Found{{Entry: atLeast}}, 0
		case t.Kind == lexicon.Loc && t.Text == "beyond":
			t.Kind, t.Found = lexicon.Over, []lexicon.Found{{Entry: over}} // "no stretch between posts beyond 1.75 m"
		}
	}
}

var atLeast = &lexicon.Entry{Kind: lexicon.Rel, Key: ">="}

// noMoreOf takes "no more" before lengths that are not to be had for what it says: "no more 16' in stock".
func (l *lexing) noMoreOf() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind != lexicon.Rel && t.Kind != lexicon.Bound || t.Text != "no more" || l.tokens[i+1].Kind != lexicon.Num {
			continue
		}
		j := i + 2
		for j < len(l.tokens) && (l.tokens[j].Kind == lexicon.Size || l.tokens[j].Kind == lexicon.Part && l.tokens[j].Key() == "rail") {
			j++
		}
		if j == len(l.tokens) {
			continue
		}
		if end := &l.tokens[j]; end.Kind == lexicon.Have && end.Text == "in stock" || end.Kind == lexicon.Sell || end.Kind == lexicon.SellLess {
			t.Kind, t.Found = lexicon.SellLess, []lexicon.Found{{Entry: soldLess}}
		}
	}
}

var soldLess = &lexicon.Entry{Kind: lexicon.SellLess, Key: "-="}

// plusOrMinus takes a "+/-" that ends a clause behind a value for "about": `wall 45" +/-`.
func (l *lexing) plusOrMinus() {
	for i := 2; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind != lexicon.OffEach || t.Text != "+/-" && t.Text != "plus or minus" {
			continue
		}
		if i+1 < len(l.tokens) && l.tokens[i+1].Kind != lexicon.Comma && l.tokens[i+1].Kind != lexicon.Stop {
			continue
		}
		if prev := l.tokens[i-1].Kind; prev == lexicon.Num || prev == lexicon.Dim {
			t.Kind, t.Found = lexicon.About, []lexicon.Found{{Entry: roughly}}
		}
	}
}

var roughly = &lexicon.Entry{Kind: lexicon.About, Key: "~"}

// eitherLength takes the "or" between two lengths on sale for an "and": "4x4s only come in eight or ten feet".
func (l *lexing) eitherLength() {
	sold := false
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		switch {
		case t.Kind == lexicon.Stop:
			sold = false
		case t.Kind == lexicon.Sell:
			sold = !l.asksLine()
		case t.Kind == lexicon.Or && sold && i > 0 && l.tokens[i-1].Kind == lexicon.Num && l.tokens[i+1].Kind == lexicon.Num && (l.tokens[i+1].Amt.Unit != measure.Bare || l.tokens[i+1].Amt.Footer):
			t.Kind, t.Found = lexicon.And, nil
		}
	}
}

// asksLine reports whether the line asks: it ends in a question mark, or opens with a word of asking.
func (l *lexing) asksLine() bool {
	n := len(l.tokens)
	switch l.tokens[0].Kind {
	case lexicon.Wh, lexicon.Quest, lexicon.Head, lexicon.Where:
		return true
	}
	return l.tokens[n-1].Kind == lexicon.QMark
}

// sayBy drops a vague measure that is made plain at once: "a touch larger, say by an eighth of an inch".
func (l *lexing) sayBy() {
	for i := 0; i+3 < len(l.tokens); i++ {
		if l.tokens[i].Kind != lexicon.Vague || l.tokens[i+1].Kind != lexicon.More {
			continue
		}
		j := i + 2
		if l.tokens[j].Kind == lexicon.Comma {
			j++
		}
		if j+1 < len(l.tokens) && l.tokens[j].Kind == lexicon.Head && l.tokens[j].Text == "say" && l.tokens[j+1].Kind == lexicon.Num && strings.HasPrefix(l.tokens[j+1].Before, "by") {
			kept := append(l.tokens[:i:i], l.tokens[i+1])
			l.tokens = append(kept, l.tokens[j+1:]...)
		}
	}
}

// thatIsAll drops a "that's all" that closes a list of figures: it ends the list, not the talk.
func (l *lexing) thatIsAll() {
	n := len(l.tokens)
	for n > 0 && l.tokens[n-1].Kind == lexicon.Stop {
		n--
	}
	if n < 3 || l.tokens[n-2].Kind != lexicon.Comma || l.tokens[n-3].Kind != lexicon.Num {
		return
	}
	if t := &l.tokens[n-1]; t.Kind == lexicon.Cmd && t.Key() == "quit" && (t.Text == "that is all" || t.Text == "that is it") {
		l.tokens = append(l.tokens[:n-2], l.tokens[n:]...)
	}
}
