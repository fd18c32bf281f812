package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/scan"
)

// WishesOrBids are words by which what leads up to a question wishes, orders or bounds something.
var WishesOrBids = scan.WordSet(`
	want wants wanted need needs prefer prefers like likes would should must shall let please make keep set put use add have has no not never without nor neither none nothing nobody only just
	more less fewer bigger smaller tighter wider narrower taller shorter higher lower longer closer twice half double same equal even most least instead either or than
	lost losing gained moving moved moves adding added skip skips skipping skipped switch switches switched switching widening widened narrowing narrowed raising raised lowering lowered cutting shifting shifted
	change changed swap swapped drop dropped lose remove forget cancel undo scratch
`)

// AsksFor are verbs by which somebody else asks for something: "he wants the layout".
var AsksFor = scan.WordSet("wants want needs need asks asked wonders")

// beforeTheyDo leaves out from the end of a line what it is to be done before: "before she says yes", "before he signs off".
func beforeTheyDo(in []scan.Atom) []scan.Atom {
	for i := len(in) - 3; i > 2; i-- {
		if in[i].Text != "before" || !lex.OtherOnes[in[i+1].Text] && !chunk.IsPerson(in[i+1].Text) && !(lex.Owned[in[i+1].Text] && i+3 < len(in) && chunk.IsPerson(in[i+2].Text)) {
			continue
		}
		rest := WordsAhead(in[i+1:])
		if i+1+len(rest) < len(in)-1 || len(rest) > 8 || !slices.ContainsFunc(rest, func(w string) bool { return consents[w] }) {
			return in
		}
		from := i
		if chunk.BreaksClause(in, i-1) {
			from--
		}
		return slices.Concat(in[:from:from], in[i+1+len(rest):])
	}
	return in
}

// consents are what somebody does once he has seen what he wants to see.
var consents = scan.WordSet("signs sign agrees agree approves approve says yes decides decide pays pay commits commit writes oks okays buys nod nods believes")
