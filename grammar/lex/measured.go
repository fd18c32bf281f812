package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
)

// moreOf gives a number the unit that stands behind its "more": "two more inches of opening".
func (l *lexing) moreOf() {
	for i := 0; i+2 < len(l.tokens); i++ {
		n, more, u := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if n.Kind != lexicon.Num || n.Amt.Unit != measure.Bare || n.Amt.Size != "" || !more.Is(lexicon.More) || u.Kind != lexicon.Unit {
			continue
		}
		kind, size, _, ok := l.Unit(u.first)
		if !ok {
			continue
		}
		a := *n.Amt
		a.Val, a.Unit, a.Per, a.Plain = a.Val.Mul(size), kind, size, ""
		n.Amt, more.End = &a, u.End
		l.tokens = append(l.tokens[:i+2], l.tokens[i+3:]...)
	}
}

// perUnit reads a unit alone as one of it where a floor falls by so much in each: "10 mm per metre".
func (l *lexing) perUnit() {
	fall := false
	for i := range l.tokens {
		t := &l.tokens[i]
		fall = fall || t.Is(lexicon.Fall)
		if t.Kind != lexicon.Unit || !fall || i < 2 || l.tokens[i-2].Kind != lexicon.Num && l.tokens[i-1].Kind != lexicon.Num {
			continue
		}
		k, size, _, ok := l.Unit(t.first)
		if !ok || k != measure.Metric && k != measure.Feet {
			continue
		}
		if prev := &l.tokens[i-1]; prev.Is(lexicon.Per) || prev.Kind == lexicon.To {
			prev.Kind, prev.Found = lexicon.Per, []lexicon.Found{{Entry: perEach}}
			t.Kind, t.Amt = lexicon.Num, &measure.Amount{Number: measure.Number{Val: size, Words: true}, Unit: k, Per: size}
		}
	}
}

var perEach = &lexicon.Entry{Kind: lexicon.Per, Key: "per"}

// trailingBounds drops the comma before a limit that ends its clause: "$400, no more".
func (l *lexing) trailingBounds() {
	l.andNots()
	l.orBetter()
	if n := len(l.tokens); n > 3 && l.tokens[n-2].Kind == lexicon.Comma && l.tokens[n-1].As(lexicon.Bound) != nil && l.tokens[n-1].Text == "tops" && l.moneyBefore(n-2) {
		l.tokens[n-1].Kind = lexicon.Bound // "we've got 450 dollars for the lumber, tops"
		l.tokens = append(l.tokens[:n-2], l.tokens[n-1])
	}
	for i := 1; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.Kind == lexicon.Rel && t.As(lexicon.Bound) != nil && l.tokens[i-1].Kind == lexicon.Num && next.Kind == lexicon.Part && next.Key() == "size" {
			t.Kind = lexicon.Bound // "500 dollars at most on the material"
		}
		if t.Kind != lexicon.Comma || next.As(lexicon.Bound) == nil || next.As(lexicon.Part) != nil || l.tokens[i-1].Kind != lexicon.Num {
			continue
		}
		if i+2 == len(l.tokens) || l.tokens[i+2].Kind == lexicon.Comma || l.tokens[i+2].Kind == lexicon.Stop {
			next.Kind = lexicon.Bound
			l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
		}
	}
}

// orBetter reads "or better" at the end as a bound, and not as a better word: "three quarters off the floor or better". What
// stands over at the end is no count: "two boards over".
func (l *lexing) orBetter() {
	for i := range l.tokens {
		t := &l.tokens[i]
		last := i+1 == len(l.tokens) || l.tokens[i+1].Kind == lexicon.Stop || l.tokens[i+1].Kind == lexicon.Comma
		switch {
		case !last:
		case t.Kind == lexicon.Fix && t.Text == "or better" && t.As(lexicon.Bound) != nil:
			t.Kind = lexicon.Bound
		case t.Kind == lexicon.Over && i > 1 && l.tokens[i-1].Kind == lexicon.Part && l.tokens[i-1].Key() == "rail" && l.tokens[i-2].Kind == lexicon.Num:
			t.Kind = lexicon.Vague
		}
	}
}

// andNots drops the "and" before a value that is only denied: "2 and not 3".
func (l *lexing) andNots() {
	l.notButs()
	for i := 1; i+2 < len(l.tokens); i++ {
		if l.tokens[i].Kind != lexicon.And || l.tokens[i+1].Kind != lexicon.Not || l.tokens[i+1].Text != "not" || l.tokens[i-1].Kind != lexicon.Num && !(i > 1 && l.tokens[i-1].Kind == lexicon.Part && l.tokens[i-2].Kind == lexicon.Num) || l.tokens[i+2].Kind != lexicon.Num {
			continue
		}
		if i+3 == len(l.tokens) || l.tokens[i+3].Kind == lexicon.Comma || l.tokens[i+3].Kind == lexicon.Stop {
			l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
		}
	}
}

// leftBay gives the bay at the left its number: bays are counted from there.
func (l *lexing) leftBay() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, bay := &l.tokens[i], &l.tokens[i+1]
		if t.Kind != lexicon.Side || t.Text != "left" || bay.Kind != lexicon.Part || bay.Key() != "bay" || bay.Plural() {
			continue
		}
		bay.Index, bay.Indexes, bay.At = 1, []int{1}, t.At
		l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
	}
}

// verbsOfChange tells "change the gap to 3" from the second change of several, and "take an inch out of the gap" from a
// length that is sold out.
func (l *lexing) verbsOfChange() {
	for i := 0; i+1 < len(l.tokens); i++ {
		switch t, next := &l.tokens[i], &l.tokens[i+1]; {
		case t.Kind == lexicon.WayOut && t.As(lexicon.Move) != nil && (next.Kind == lexicon.Part || next.Kind == lexicon.Loc):
			t.Kind = lexicon.Move
		case t.Kind == lexicon.CutWord && t.Text == "cut" && next.Kind == lexicon.Part && i+2 < len(l.tokens) && (l.tokens[i+2].Kind == lexicon.Down || l.tokens[i+2].Kind == lexicon.Num && strings.HasSuffix(l.tokens[i+2].Before, "by")):
			t.Kind, t.Found = lexicon.Change, []lexicon.Found{{Entry: MinusSign}} // "cut the wall down to 44"
		case t.Kind == lexicon.Cmd && t.Text == "take" && l.takenAway(i+1):
			t.Kind, t.Found = lexicon.Change, []lexicon.Found{{Entry: MinusSign}} // "take one rail away"
		case t.Kind == lexicon.Cmd && t.Text == "take" && next.Kind == lexicon.Num && i+3 < len(l.tokens) && (l.tokens[i+2].Kind == lexicon.Lim || l.tokens[i+2].Kind == lexicon.Bound || l.tokens[i+2].Is(lexicon.Lim)) && l.tokens[i+3].Kind == lexicon.Off:
			t.Found = []lexicon.Found{{Entry: forgetting}} // "take the two inch minimum off the gap"
			l.drop(i + 3)
		case t.Kind == lexicon.SellLess && t.Text == "out of" && i > 0 && l.tokens[i-1].Kind == lexicon.Num && next.Kind == lexicon.Part && !next.Is(lexicon.StockWord):
			t.Kind, t.Found = lexicon.Off, []lexicon.Found{{Entry: takenOff}}
		}
	}
}

var takenOff = &lexicon.Entry{Kind: lexicon.Off, Key: "off"}

// someWall takes "a wall" after a preposition for the wall itself: "we decided on a wall 45 inches above the patio".
func (l *lexing) someWall() {
	for i := range l.tokens {
		if t := &l.tokens[i]; t.Kind == lexicon.Loc && t.Key() == "of wall" && strings.Contains(t.Text, " a ") {
			t.Kind, t.Found = lexicon.Part, wallNoun
		}
	}
}

var wallNoun = NounOf("wall")

// bothPosts takes "the two posts" for the end posts and not for a count, and "4x4 in the middle" for the posts between them.
func (l *lexing) bothPosts() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		switch {
		case t.Kind == lexicon.Num && t.Text == "two" && strings.HasSuffix(t.Before, "the") && next.As(lexicon.Part) != nil && next.As(lexicon.Part).Key == "post" && next.Plural():
			next.At, next.Kind = t.At, lexicon.Part
			l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
		case t.Kind == lexicon.Ordinal && next.Kind == lexicon.Num && next.Before == "" && i+2 < len(l.tokens) && l.tokens[i+2].Kind == lexicon.Part && l.tokens[i+2].Plural() && l.tokens[i+2].Before == "":
			if !l.firstRails(i) {
				t.Kind = lexicon.Unclear // "the first two boards"
			}
		case t.Kind == lexicon.Size && next.Is(lexicon.Part) && next.Key() != "rail" && strings.HasPrefix(next.Text, "post") && i+2 < len(l.tokens) && l.tokens[i+2].Kind == lexicon.Side && l.tokens[i+2].Key() == "middle":
			l.tokens[i+2].Kind, l.tokens[i+2].Found = lexicon.Loc, betweenPosts
			next.Kind = lexicon.Part
		case t.Kind == lexicon.Num && t.Amt.Unit == measure.Bare && next.Is(lexicon.Part) && strings.HasPrefix(next.Text, "post") && i+2 < len(l.tokens) && l.tokens[i+2].Kind == lexicon.Side && l.tokens[i+2].Key() == "middle":
			l.tokens[i+2].Kind, l.tokens[i+2].Found = lexicon.Loc, betweenPosts // "at most one post in the middle"
			next.Kind = lexicon.Part
		case t.Kind == lexicon.Size && next.Kind == lexicon.Side && next.Key() == "middle":
			next.Kind, next.Found = lexicon.Loc, betweenPosts
		}
	}
}

var betweenPosts = NounOf("between")

// facesOfBoards takes a size for the boards of it where they are said to measure something else: "my two by sixes actually
// measure five and three eighths".
func (l *lexing) facesOfBoards() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind != lexicon.Size || !RailSize(t.Amt.Size) {
			continue
		}
		j, says := i+1, false
		for j < len(l.tokens) && (l.tokens[j].Kind == lexicon.Measured || l.tokens[j].Kind == lexicon.Fix && l.tokens[j].Text == "actually") {
			says = says || l.tokens[j].Kind == lexicon.Measured
			j++
		}
		if j == len(l.tokens) || l.tokens[j].Kind != lexicon.Num || !l.tokens[j].Amt.Frac || l.tokens[j].Amt.Unit == measure.Money || l.tokens[j].Amt.Money2 {
			continue
		}
		if says || strings.HasSuffix(l.tokens[j].Before, "really") || strings.HasSuffix(l.tokens[j].Before, "run") {
			t.Kind, t.Found, t.Amt = lexicon.Part, RailNoun, nil
			says := Token{Kind: lexicon.Measured, Found: []lexicon.Found{{Entry: measures}}, Text: "measure", At: t.End, End: t.End}
			l.tokens = append(l.tokens[:i+1:i+1], append([]Token{says}, l.tokens[j:]...)...)
		}
	}
}

var measures = &lexicon.Entry{Kind: lexicon.Measured, Key: "measured"}

// notButs drops the "but" after a value that is denied, before the one that is meant: "not 44 inches tall but 41 and a half".
func (l *lexing) notButs() {
	l.comeOut()
	for i := 2; i+1 < len(l.tokens); i++ {
		if l.tokens[i].Kind != lexicon.But || l.tokens[i].Text != "but" || l.tokens[i+1].Kind != lexicon.Num {
			continue
		}
		j := i - 1
		if l.tokens[j].Kind == lexicon.Dim {
			j--
		}
		if j > 0 && l.tokens[j].Kind == lexicon.Num && l.tokens[j-1].Kind == lexicon.Not && l.tokens[j-1].Text == "not" {
			l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
		}
	}
}

// comeOut drops the "out" of "has to come out 34".
func (l *lexing) comeOut() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind == lexicon.Out && t.Text == "out" && strings.HasSuffix(t.Before, "come") && l.valueAt(i+1) {
			l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
		}
	}
}

// takenAway reports whether a count of parts and "away" or "out" stand at token i, after "take". It drops the latter.
func (l *lexing) takenAway(i int) bool {
	if l.tokens[i].Kind == lexicon.Num && (l.tokens[i].Amt.Unit != measure.Bare || !l.tokens[i].Amt.Val.IsInt()) {
		return false
	}
	j := i
	if l.tokens[j].Kind == lexicon.Num {
		j++
	} else if w := LastWord(l.tokens[j].Before); w != "a" && w != "one" {
		return false
	}
	if j+1 >= len(l.tokens) || !l.tokens[j].Is(lexicon.Part) || l.tokens[j].Index > 0 || !takenParts[l.tokens[j].As(lexicon.Part).Key] {
		return false
	}
	if w := l.tokens[j+1].Text; w != "away" && w != "out" && w != "off" {
		return false
	}
	if j+2 < len(l.tokens) && l.tokens[j+2].Kind != lexicon.Comma && l.tokens[j+2].Kind != lexicon.Stop && l.tokens[j+2].Kind != lexicon.QMark && l.tokens[j+2].Kind != lexicon.And {
		return false
	}
	l.tokens[j].Kind = lexicon.Part
	l.drop(j + 1)
	return true
}

// takenParts are parts of which some can be taken away.
var takenParts = map[string]bool{"rail": true, "stiffener": true, "post": true, "added post": true, "bay": true, "opening": true}

var forgetting = &lexicon.Entry{Kind: lexicon.Cmd, Key: "forget"}
