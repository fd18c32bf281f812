package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/scan"
)

// plusParts turns a "plus" before what plainly begins a clause into a comma: "the wall is a metre tall plus tape reads 157-5/8 from post to post".
func plusParts(in []scan.Atom) []scan.Atom {
	out := in
	for i := 2; i+2 < len(in); i++ {
		if in[i].Text != "plus" || !beginsClause[in[i+1].Text] && !(in[i+1].Text == "bay" && (chunk.Numeric(in[i+2]) || chunk.SpelledNumber(in[i+2].Text))) {
			continue
		}
		if &out[0] == &in[0] {
			out = slices.Clone(in)
		}
		out[i].Text, out[i].Kind = ",", scan.Sign
	}
	return out
}

// beginsClause are words that a clause of its own begins with, and no part or figure that could be added.
var beginsClause = scan.WordSet("how what which where when why who may can could will would shall should")
