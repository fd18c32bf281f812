package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// stackWords settle words about a stack of rails by what stands around them.
func (l *lexing) stackWords() {
	for i := 0; i < len(l.tokens); i++ {
		switch {
		case l.becameBefore(i):
			if l.tokens[i-1].Kind == lexicon.Have {
				l.drop(i)
				l.drop(i - 1)
				i--
			} else {
				l.drop(i)
			}
		case l.fractionMore(i), l.wallTaken(i), l.clearBetween(i), l.closeToFloor(i), l.usedForThat(i), l.closeTogether(i), l.narrowRails(i), l.thanPost(i), l.cutToCount(i), l.boardsRun(i):
		case l.besideStack(i):
			i--
		}
	}
}

// fractionMore reads the name of a fraction alone, after "another", as that much of an inch: "another eighth".
func (l *lexing) fractionMore(i int) bool {
	t := &l.tokens[i]
	if t.Kind == lexicon.Unit && i > 0 && l.tokens[i-1].Kind == lexicon.Another && !t.Plural() && t.Text != "feet" && (i+1 == len(l.tokens) || l.breaks(l.tokens[i+1])) {
		if k, size, _, ok := l.Unit(t.first); ok {
			t.Kind, t.Amt = lexicon.Num, &measure.Amount{Number: measure.Number{Val: size, Words: true}, Unit: k, Per: size} // "the wall needs another inch"
			return true
		}
	}
	d := measure.Denominators[t.Text]
	if t.Kind != lexicon.Ordinal || i == 0 || l.tokens[i-1].Kind != lexicon.Another || d == 0 || i+1 < len(l.tokens) && l.tokens[i+1].Kind == lexicon.Part && indexable(l.tokens[i+1]) > 0 {
		return false
	}
	t.Kind, t.Amt = lexicon.Num, &measure.Amount{Number: measure.Number{Val: exact.New(1, int64(d)), Words: true, Frac: true}, Unit: measure.Inches, Per: OneRat}
	return true
}

// wallTaken takes "this wall" before a height for the wall itself: "we're taking this wall to three foot eight".
func (l *lexing) wallTaken(i int) bool {
	t := &l.tokens[i]
	if t.Kind == lexicon.Loc && t.Key() == "of wall" && l.heightBound(i) {
		t.Kind, t.Found = lexicon.Part, NounOf("wall height") // "no lower than a meter for that wall"
		return true
	}
	if t.Kind != lexicon.Loc || t.Text != "this wall" && t.Text != "that wall" || i+1 >= len(l.tokens) || l.tokens[i+1].Kind != lexicon.Num && i+2 >= len(l.tokens) || i > 0 && !l.breaks(l.tokens[i-1]) && l.tokens[i-1].Kind != lexicon.Move && l.tokens[i-1].Kind != lexicon.Fill {
		return false
	}
	if n := &l.tokens[i+1]; !(n.Kind == lexicon.Num && n.Amt.Size == "" && n.Before == "") && !((n.Kind == lexicon.To || n.Kind == lexicon.Rel) && l.tokens[i+2].Kind == lexicon.Num) {
		return false
	}
	t.Kind, t.Found = lexicon.Part, NounOf("wall height")
	return true
}

// clearBetween takes the clear distance "between them" of rails for their gap.
func (l *lexing) clearBetween(i int) bool {
	t := &l.tokens[i]
	if t.Kind != lexicon.Part || t.Key() != "span" || !strings.HasPrefix(t.Text, "clear ") {
		return false
	}
	for j := i + 1; j < len(l.tokens) && !l.breaks(l.tokens[j]); j++ {
		if n := &l.tokens[j]; n.Kind == lexicon.Loc && n.Key() == "between rails" {
			t.Found = NounOf("gap")
			return true
		}
	}
	return false
}

// closeToFloor drops the "to" of "no closer than two inches to the floor".
func (l *lexing) closeToFloor(i int) bool {
	t := &l.tokens[i]
	if t.Kind != lexicon.To || i < 2 || i+1 >= len(l.tokens) || l.tokens[i+1].Kind != lexicon.Part || l.tokens[i+1].Key() != "floor" {
		return false
	}
	for j := i - 1; j >= 0; j-- {
		switch n := &l.tokens[j]; {
		case n.Kind == lexicon.Rel && (strings.Contains(n.Text, "closer") || strings.Contains(n.Text, "nearer")):
			l.drop(i)
			l.tokens[i].Kind, l.tokens[i].Found = lexicon.Loc, []lexicon.Found{{Entry: aboveFloor}}
			return true
		case n.Kind == lexicon.Num, n.Kind == lexicon.And, n.Kind == lexicon.Dim:
		default:
			return false
		}
	}
	return false
}

var aboveFloor = &lexicon.Entry{Kind: lexicon.Loc, Key: "off floor", Sense: lexicon.Meaning("| wall height, bottom gap, post height, base height, rail top, drop, fixed rail top, marks, bracket reach")}

// usedForThat drops a part that is named again behind "use that for": "the boards were planed to 5-1/4 wide, so use that for the rails".
func (l *lexing) usedForThat(i int) bool {
	t := &l.tokens[i]
	if t.Kind != lexicon.Enter && !(t.Kind == lexicon.Cmd && t.Key() == "take that") || i+1 >= len(l.tokens) || l.tokens[i+1].Kind != lexicon.Part || !strings.HasPrefix(l.tokens[i+1].Before, "for") && !strings.HasPrefix(l.tokens[i+1].Before, "on") {
		return false
	}
	if i+2 < len(l.tokens) && !l.breaks(l.tokens[i+2]) {
		return false
	}
	told := false
	for j := range l.tokens[:i] {
		told = told || l.tokens[j].Kind == lexicon.Num
		if told && l.tokens[j].Kind == lexicon.Size {
			return false
		}
	}
	for j := range l.tokens[:i] {
		if n := &l.tokens[j]; told && n.Kind == lexicon.Part && n.Key() == l.tokens[i+1].Key() {
			l.drop(i + 1)
			return true
		}
	}
	return false
}

// heightBound reports whether all that stands before the wall at token i is how high it may be: "not above 50 with the wall".
func (l *lexing) heightBound(i int) bool {
	bound, figure := false, false
	for j := i - 1; j >= 0 && !l.breaks(l.tokens[j]); j-- {
		switch t := &l.tokens[j]; t.Kind {
		case lexicon.Num:
			figure = true
		case lexicon.Rel, lexicon.Over, lexicon.Under, lexicon.Change, lexicon.More:
			for _, w := range []string{"lower", "higher", "taller", "shorter", "above", "below"} {
				bound = bound || strings.Contains(t.Text, w)
			}
		case lexicon.And, lexicon.GoesIn, lexicon.Fill, lexicon.Head, lexicon.Not:
		default:
			return false
		}
	}
	return bound && figure
}

// besideStack drops words that say nothing beside what stands around them: "out of each gap", "make the rails out of 2x4", "a two inch
// spacer between the rails".
func (l *lexing) besideStack(i int) bool {
	if i == 0 || i+1 >= len(l.tokens) {
		return false
	}
	prev, t, next := &l.tokens[i-1], &l.tokens[i], &l.tokens[i+1]
	switch {
	case t.Kind == lexicon.Each && (prev.Text == "out of" || prev.Text == "off" || prev.Text == "off of") && next.Kind == lexicon.Part && (next.Key() == "gap" || next.Key() == "bottom gap"):
	case t.Text == "out of" && next.Kind == lexicon.Size && prev.Kind == lexicon.Part:
	case t.Kind == lexicon.Quest && strings.HasPrefix(t.Text, "spacer") && prev.Kind == lexicon.Num && next.Kind == lexicon.Loc && next.Key() == "between rails":
	default:
		return false
	}
	l.drop(i)
	return true
}

// closeTogether takes boards that go "as close as they'll go" for the smallest gap.
func (l *lexing) closeTogether(i int) bool {
	t := &l.tokens[i]
	if t.Kind == lexicon.Part && t.Key() == "tape" && t.Text == "closest" && i+1 < len(l.tokens) && l.tokens[i+1].Kind == lexicon.Part && l.tokens[i+1].Key() == "gap" {
		t.Kind, t.Found = lexicon.Best, []lexicon.Found{{Entry: closest}}
		return true
	}
	if t.Kind == lexicon.Best && t.Key() == "smallest" && i > 0 && l.tokens[i-1].Kind == lexicon.Part && l.tokens[i-1].Key() == "rail" && (strings.HasPrefix(t.Text, "as close") || strings.HasPrefix(t.Text, "as tight") || strings.HasPrefix(t.Text, "as snug")) {
		l.tokens[i-1].Found = NounOf("gap")
		return true
	}
	if t.Kind != lexicon.WhyFill || t.Text != "as close" && t.Text != "as tight" && t.Text != "as snug" || i == 0 || i+1 >= len(l.tokens) || l.tokens[i+1].Kind != lexicon.BestTail {
		return false
	}
	p := &l.tokens[i-1]
	if p.Kind != lexicon.Part || p.Key() != "rail" && p.Key() != "gap" {
		return false
	}
	p.Found = NounOf("gap")
	t.Kind, t.Found = lexicon.Best, []lexicon.Found{{Entry: closest}}
	return true
}

var closest = &lexicon.Entry{Kind: lexicon.Best, Key: "smallest"}

// narrowRails takes rails that are narrower than was said for their face: "the rails are an eighth narrower".
func (l *lexing) narrowRails(i int) bool {
	t := &l.tokens[i]
	if t.Text != "narrower" && t.Text != "skinnier" || i < 2 || l.tokens[i-1].Kind != lexicon.Num || l.tokens[i-2].Kind != lexicon.Part || l.tokens[i-2].Key() != "rail" || l.tokens[i-2].Index > 0 {
		return false
	}
	l.tokens[i-2].Found = NounOf("rail face")
	return true
}

// boardsRun takes boards that "come out at" some width for the rails that they are.
func (l *lexing) boardsRun(i int) bool {
	t := &l.tokens[i]
	if strings.HasSuffix(t.Text, " out") && t.Key() == "tolerance" && i+1 < len(l.tokens) && l.tokens[i+1].Kind == lexicon.Size && strings.HasPrefix(l.tokens[i+1].Before, "of") {
		t.Kind, t.Found = lexicon.Part, NounOf("rail") // "make the rails out of 2x4"
		return true
	}
	if t.Key() != "tolerance" && t.Key() != "off" && t.Kind != lexicon.OffEach || !strings.Contains(t.Text, "come") || i+2 >= len(l.tokens) || l.tokens[i+1].Kind != lexicon.Num || l.tokens[i+2].Kind != lexicon.Part || l.tokens[i+2].Key() != "rail face" {
		return false
	}
	t.Kind, t.Found = lexicon.Part, NounOf("rail")
	return true
}

// thanPost takes the added post that the wall is lower or higher than for its height: "the wall two inches shorter than the new post".
func (l *lexing) thanPost(i int) bool {
	t := &l.tokens[i]
	if t.Kind != lexicon.Part || t.Key() != "added post" || t.Index > 0 || i < 2 {
		return false
	}
	rel := &l.tokens[i-1]
	if rel.Kind != lexicon.Under && rel.Kind != lexicon.Over && !(rel.Kind == lexicon.Rel && (strings.Contains(rel.Text, "shorter") || strings.Contains(rel.Text, "lower") || strings.Contains(rel.Text, "taller") || strings.Contains(rel.Text, "higher"))) {
		return false
	}
	for j := i - 2; j >= 0 && j > i-5; j-- {
		switch n := &l.tokens[j]; {
		case n.Kind == lexicon.Num, n.Kind == lexicon.And, n.Kind == lexicon.Dim:
		case n.Kind == lexicon.Part && (n.Key() == "wall" || n.Key() == "wall height"):
			t.Found = NounOf("post height")
			return true
		default:
			return false
		}
	}
	return false
}

// cutToCount takes "cut the rails down to four" for their number: no board is cut to four inches.
func (l *lexing) cutToCount(i int) bool {
	t := &l.tokens[i]
	if t.Kind != lexicon.Part || t.Key() != "fit" || !strings.HasPrefix(t.Text, "cut") || i+2 >= len(l.tokens) {
		return false
	}
	j := i + 1
	if l.tokens[j].Kind == lexicon.Down {
		j++
	}
	if j+1 >= len(l.tokens) || l.tokens[j].Kind != lexicon.To && l.tokens[j].Kind != lexicon.Rel {
		return false
	}
	num := &l.tokens[j+1]
	if num.Kind != lexicon.Num || num.Amt.Unit != measure.Bare || num.Amt.Frac || !num.Amt.Val.IsInt() || !num.Amt.Val.Less(exact.Int(13)) {
		return false
	}
	t.Found = NounOf("rail")
	return true
}

// BidDone reports whether a line goes on with no more than the bidding to do what it told: ", please do that".
func BidDone(rest []scan.Atom) bool {
	w := WordsOf(rest)
	for len(w) > 0 && (w[0] == "please" || w[0] == "so" || w[0] == "and" || w[0] == "just") {
		w = w[1:]
	}
	return len(w) == 2 && (w[0] == "do" || w[0] == "set" || w[0] == "enter" || w[0] == "use") && (w[1] == "that" || w[1] == "it" || w[1] == "so")
}
