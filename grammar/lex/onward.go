package lex

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
)

// onward sets right what words mean by the part that they are said of.
func (l *lexing) onward() {
	for i := range l.tokens {
		if t := &l.tokens[i]; t.Kind == lexicon.Quest && t.Key() == "cuts" && t.As(lexicon.Goal) != nil && CutWord(FirstWord(t.Text)) && (strings.Contains(t.Text, " one ") || strings.Contains(t.Text, " same ")) {
			t.Kind = lexicon.Goal // "cut all of one length"
		}
	}
	l.orderedBesides()
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		switch {
		case t.Kind == lexicon.Not && next.Kind == lexicon.PriceVerb && strings.HasPrefix(next.Text, "pay") && i+2 < len(l.tokens) && (l.tokens[i+2].Kind == lexicon.Over || l.tokens[i+2].Kind == lexicon.More || l.tokens[i+2].Kind == lexicon.Rel):
			next.Kind, next.Found = lexicon.Part, []lexicon.Found{{Entry: spending}} // "I won't pay over 500 for materials"
		case t.Kind == lexicon.Num && next.Kind == lexicon.Side && next.Text == "right" && next.Before == "" && (i+2 == len(l.tokens) || l.tokens[i+2].Kind == lexicon.Stop) && l.asksOf(i):
			l.tokens = append(l.tokens[:i+1], l.tokens[i+2:]...) // "is his total of 390 right"
		case t.Kind == lexicon.Goal && next.Kind == lexicon.BestTail && next.As(lexicon.Best) == nil, // "make it the cheapest you can"
			t.Kind == lexicon.Not && next.Kind == lexicon.Only && t.Text != "not" && Denials[t.Text],                                                                              // "instead of just the one"
			t.Kind == lexicon.Num && next.Kind == lexicon.Rel && (next.Text == "down for" || next.Text == "down as") && i+2 < len(l.tokens) && l.tokens[i+2].Kind == lexicon.Part: // "he put 2-3/4 down for the gap"
			l.tokens = append(l.tokens[:i+1], l.tokens[i+2:]...)
		case t.Kind == lexicon.More && (t.Text == "additional" || t.Text == "extra") && (t.Before == "an" || strings.HasSuffix(t.Before, " an")) && next.Kind == lexicon.Part && !next.Plural():
			t.Kind, t.Found = lexicon.Another, []lexicon.Found{{Entry: oneMore}}
		case t.Kind == lexicon.PriceVerb && (t.Text == "is now" || t.Text == "are now") && next.Kind == lexicon.Num && i > 0 && l.tokens[i-1].Kind == lexicon.Part && !goodsKeys[l.tokens[i-1].Key()]:
			t.Kind = lexicon.TailFill // "the budget is now 480"
		case t.Kind == lexicon.Num && next.Kind == lexicon.Part && next.Key() == "drop" && strings.HasSuffix(next.Text, "wall") && l.postBefore(i):
			l.pastWall(i + 1)
		case t.Kind == lexicon.Part && next.Kind == lexicon.Rel && next.Text == "up to" && (lifts[FirstWord(t.Before)] || i > 0 && lifts[l.tokens[i-1].Text]):
			next.Kind, next.Found = lexicon.To, nil // "get the wall up to 46"
		case t.Kind == lexicon.Factor && next.Kind == lexicon.Part && next.Key() == "bottom gap" && !strings.HasPrefix(next.Text, "bottom") && keeps[FirstWord(t.Before)]:
			t.Kind = lexicon.Unclear // "leave twice the gap under the bottom board": of which gap?
		case t.Kind == lexicon.Part && t.Key() == "wall" && (next.Kind == lexicon.Change || next.Kind == lexicon.More) && i+2 < len(l.tokens) && l.tokens[i+2].Kind == lexicon.Num && signs[next.Text] != nil && l.postBefore(i):
			l.overWall(i, signs[next.Text]) // "post height wall plus 3"
		case next.Kind == lexicon.Comma && i+2 < len(l.tokens) && l.tokens[i+2].Kind == lexicon.Bound && l.tokens[i+2].Text == "tops" && i+3 == len(l.tokens) && t.Kind == lexicon.Part && i > 0 && l.tokens[i-1].Kind == lexicon.Num:
			l.tokens = append(l.tokens[:i+1], l.tokens[i+2:]...) // "two inch gaps, tops"
		}
	}
}

var oneMore = &lexicon.Entry{Kind: lexicon.Another, Key: "+="}

// goodsKeys are parts that have a price.
var goodsKeys = map[string]bool{"rail": true, "bracket": true, "size": true, "post": true, "anchor size": true, "screw length": true, "cap": true, "stiffener": true}

// lifts are verbs that bring something to a value; keeps are verbs that leave it as it is said.
var (
	lifts = map[string]bool{"get": true, "bring": true, "take": true, "carry": true, "build": true, "run": true}
	keeps = map[string]bool{"leave": true, "keep": true, "have": true, "want": true, "put": true, "set": true}
)

// FirstWord is the first word of a text.
func FirstWord(s string) string {
	w, _, _ := strings.Cut(s, " ")
	return w
}

// postBefore reports whether a post is named before token i in its part of the line.
func (l *lexing) postBefore(i int) bool {
	for i--; i >= 0 && l.tokens[i].Kind != lexicon.Stop && l.tokens[i].Kind != lexicon.Comma; i-- {
		if e := l.tokens[i].As(lexicon.Part); e != nil && (e.Key == "post" || e.Key == "added post" || e.Key == "post height") {
			return true
		}
	}
	return false
}

// orderedBesides takes pieces of a size that are put on the order for extra ones: "add two 2x4s 30 inches long to the order".
func (l *lexing) orderedBesides() {
	size, long, n := false, false, len(l.tokens)
	if n < 4 || l.tokens[n-1].Kind != lexicon.TailFill || l.tokens[n-1].Key() != "to order" {
		return
	}
	first := &l.tokens[0]
	for i := range l.tokens {
		t := &l.tokens[i]
		size = size || t.Kind == lexicon.Size
		long = long || t.Kind == lexicon.Num && (t.Amt.Unit == measure.Inches || t.Amt.Unit == measure.Metric || t.Amt.Frac)
	}
	if !size || !long || first.Kind != lexicon.Change || first.Text != "add" {
		return
	}
	first.Kind, first.Found = lexicon.Extra, []lexicon.Found{{Entry: extraPieces}}
	l.tokens = l.tokens[:n-1]
}

var extraPieces = &lexicon.Entry{Kind: lexicon.Extra, Key: "extra"}

// signs are the words of a sum that stand for what lies above and below.
var signs = map[string]*lexicon.Entry{"+": over, "plus": over, "-": under, "minus": under, "less": under}

// overWall reads the sum of the wall at token i and a length as that much over it or under it.
func (l *lexing) overWall(i int, way *lexicon.Entry) {
	wall, num := l.tokens[i], l.tokens[i+2]
	l.tokens[i], l.tokens[i+2] = num, wall
	t := &l.tokens[i+1]
	t.Found = []lexicon.Found{{Entry: way}}
	if t.Kind, t.Text = lexicon.Over, "over"; way == under {
		t.Kind, t.Text = lexicon.Under, "under"
	}
	for j := range l.tokens[:i] {
		if p := &l.tokens[j]; p.Kind == lexicon.Quest && p.As(lexicon.Part) != nil {
			p.Kind = lexicon.Part
		}
	}
}

// pastWall takes "past the wall" at token i for what lies above it: "the posts stick up three inches past the wall".
func (l *lexing) pastWall(i int) {
	way := l.tokens[i]
	way.Kind, way.Found, way.Text = lexicon.Over, []lexicon.Found{{Entry: over}}, "past"
	t := &l.tokens[i]
	t.Found, t.Text, t.Before = wallNoun, "wall", "the"
	l.tokens = append(l.tokens[:i], append([]Token{way}, l.tokens[i:]...)...)
	for j := range l.tokens[:i] {
		if p := &l.tokens[j]; p.Kind == lexicon.Quest && p.As(lexicon.Part) != nil {
			p.Kind = lexicon.Part
		}
	}
}

// spending is what is paid for the material.
var spending = &lexicon.Entry{Kind: lexicon.Part, Key: "budget", Sense: lexicon.Meaning("budget")}

// asksOf reports whether a claim that ends at token i is asked about: "is his total of …".
func (l *lexing) asksOf(i int) bool {
	for ; i >= 0 && l.tokens[i].Kind != lexicon.Stop; i-- {
		if t := &l.tokens[i]; t.Kind == lexicon.Head && t.Key() == string(act.Check) {
			return FirstWord(t.Text) == "is" || FirstWord(t.Text) == "are"
		}
	}
	return false
}
