package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver/exact"
)

// onePostHigh takes the one post that was added for its height where words tell of up and down beside a figure that can count no posts:
// "don't let the new post go below 50". What tells neither ("50 tops for the new post") may be a place along the wall as well.
func (l *lexing) onePostHigh() {
	for i := range l.tokens {
		t := &l.tokens[i]
		if t.Kind != lexicon.Part || t.Key() != "added post" || t.Plural() || t.Index > 0 || len(t.Indexes) > 0 {
			continue
		}
		switch LastWord(t.Before) {
		case "the", "that", "this", "my", "our", "your":
			if l.upright(i) {
				t.Found = NounOf("post height")
			}
		}
	}
}

// manyPosts is what no number of added posts comes to.
var manyPosts = exact.Int(16)

// upright reports whether nothing in the clause of token i tells of anything but a limit by up and down with such a figure, or asks why it is that.
func (l *lexing) upright(i int) bool {
	figure, limit := false, false
	see := func(t *Token) (on, ok bool) {
		switch t.Kind {
		case lexicon.Stop, lexicon.QMark, lexicon.Comma, lexicon.But:
			return false, true
		case lexicon.Num:
			if strings.HasSuffix(t.Before, "at") || strings.HasSuffix(t.Before, "from") || t.Amt.Unit == measure.Bare && !manyPosts.Less(t.Amt.Val) {
				return false, false
			}
			figure = true
		case lexicon.Under, lexicon.Over:
			limit = true
		case lexicon.Rel, lexicon.Bound, lexicon.Lim:
			for _, w := range []string{"above", "below", "under", "over", "lower", "higher", "taller", "shorter", "exceed"} {
				limit = limit || strings.Contains(t.Text, w)
			}
		case lexicon.Head:
			limit = limit || t.Key() == "why" // what is there already is told by its height
		case lexicon.Not, lexicon.No, lexicon.GoesIn, lexicon.And, lexicon.Quest, lexicon.Fill, lexicon.Only:
		default:
			return false, false
		}
		return true, true
	}
	for _, step := range []int{-1, 1} {
		for j := i + step; j >= 0 && j < len(l.tokens); j += step {
			on, ok := see(&l.tokens[j])
			if !ok {
				return false
			}
			if !on {
				break
			}
		}
	}
	return figure && limit
}
