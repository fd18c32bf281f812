package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/grammar/ways"
)

// What must not happen is told before what is wanted because of it: "we can't have kids stuck so keep the gap below four". The denial is of the reason alone.

var deniesReason = scan.WordSet("not no nobody never none nothing cannot")

// withoutDeniedReason leaves out such a reason, which names no figure, where a figure stands behind its "so".
func withoutDeniedReason(in []scan.Atom) []scan.Atom {
	if !idiom.HoldsWord(in, "so") {
		return in
	}
	from, denied := 0, false
	for i := range in {
		switch w := in[i].Text; {
		case chunk.EndsSentence(in, i):
			from, denied = i+1, false
		case w != "a" && w != "an" && w != "in" && (chunk.Numeric(in[i]) || scan.Ones[w] > 0 || measure.Tens[w] > 0) || w == "if" || w == "why" || w == "how" || w == "what" || w == "?":
			return in
		case deniesReason[w]:
			denied = true
		case w == "so" && denied && i-from > 2 && i+2 < len(in) && in[i+1].Text != "as":
			next := i + 1
			manner := soDone(in[from:i])
			if in[next].Text == "that" {
				if !manner {
					return in
				}
				next++
			}
			for k := next; k < len(in); k++ {
				if _, _, _, ok := sideAt(in, k); !ok {
					continue
				}
				out := append([]scan.Atom{}, in[:from]...)
				if manner {
					out = append(append(out, in[next:k]...), chunk.Worded(in[k], "not"))
					return append(out, in[k:]...)
				}
				return append(out, in[next:]...)
			}
			return in
		}
	}
	return in
}

// soDone reports whether a "so" behind a stretch tells how something is done: "set it up so", "build them so".
func soDone(part []scan.Atom) bool {
	n := len(part)
	if n > 0 && (part[n-1].Text == "up" || part[n-1].Text == "out" || part[n-1].Text == "down" || part[n-1].Text == "together") {
		n--
	}
	if n < 2 {
		return false
	}
	switch part[n-1].Text {
	case "it", "them", "this", "that", "things", "everything":
		return ways.DoneSo[part[n-2].Text]
	}
	return false
}

// staysWithin reads the verb of "stay under 300" as a verb: a stay is a stiffener, too.
func staysWithin(in []scan.Atom) []scan.Atom {
	for i := 0; i+1 < len(in); i++ {
		if in[i].Text != "stay" || !chunk.ClauseBeginsAt(in, i) && !joinsBefore(in, i) && !(in[i+1].Text == "with" && wishBeforeStay[in[i-1].Text]) {
			continue
		}
		switch in[i+1].Text {
		case "under", "below", "over", "above", "within", "beneath", "inside", "between", "around", "near", "close", "at", "less", "more":
			out := append([]scan.Atom{}, in...)
			out[i] = chunk.Worded(in[i], "keep")
			return out
		case "with":
			out := append([]scan.Atom{}, in...)
			out[i] = chunk.Worded(in[i], "stick") // "no, let's stay with 2x6"
			return out
		}
	}
	return in
}

// wishBeforeStay may stand before "stay with".
var wishBeforeStay = scan.WordSet("us we i will to please just should rather")

// whoCannot puts back who is meant where a line only begins with what cannot be: "can't be four inches or more between boards" asks nothing.
func whoCannot(in []scan.Atom) []scan.Atom {
	if len(in) < 4 || idiom.HoldsWord(in, "?") || in[len(in)-1].Kind == scan.Sign && in[len(in)-1].Text != "." {
		return in
	}
	for i := 0; i+3 < len(in); i++ {
		if in[i].Text != "can" || in[i+1].Text != "not" || i > 0 && !joinsBefore(in, i) {
			continue
		}
		if who := cannotWhat[in[i+2].Text]; who != "" && (i == 0 || who == "we") {
			return append(append(in[:i:i], chunk.Worded(in[i], who)), in[i:]...)
		}
	}
	return in
}

// cannotWhat is who is meant where nobody is named, by what cannot be done. Behind another clause, an "it" would be of that one.
var cannotWhat = map[string]string{"be": "it", "go": "it", "have": "we", "let": "we", "spend": "we", "exceed": "it"}

// joinsBefore reports whether a clause begins at atom i, behind a break or a word that joins.
func joinsBefore(in []scan.Atom, i int) bool {
	return chunk.BreaksClause(in, i-1) || in[i-1].Text == "and" || in[i-1].Text == "plus" || in[i-1].Text == "also" || in[i-1].Text == "then" || in[i-1].Text == "but" || in[i-1].Text == "so"
}
