package phrase

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// Places where phrases can mean nothing else.

// beggedFor takes the question mark behind a wish, and the one at the end of the line, for a full stop.
func beggedFor(atoms []scan.Atom, from int) []scan.Atom {
	for i := from; i < len(atoms) && atoms[i].Text != "."; i++ {
		if atoms[i].Text == "?" && atoms[i].Kind == scan.Sign {
			atoms[i].Text = "."
			break
		}
	}
	return Unasked(atoms)
}

// EndsLine: nothing but a stop or a courtesy comes behind it.
func EndsLine(_, after []scan.Atom) bool {
	return len(after) == 0 || after[0].Kind == scan.Sign && (len(after) == 1 || after[0].Text == "." || after[0].Text == "!" || after[0].Text == ";")
}

// EndsClause: a clause ends behind it, and something stands before it.
func EndsClause(before, after []scan.Atom) bool {
	return len(before) > 0 && (chunk.EndsPart(after, 0) || after[0].Text == "so" || after[0].Text == "and" || after[0].Text == "but")
}

// StartsClause: a clause begins with it.
func StartsClause(before, _ []scan.Atom) bool {
	return len(before) == 0 || before[len(before)-1].Kind == scan.Sign && chunk.BreaksClause(before, len(before)-1) || chunk.Joints[chunk.LastOf(before, 1)] || chunk.LastOf(before, 1) == "okay" || chunk.LastOf(before, 1) == "ok"
}

// AmountNext: a length follows, past a comma or an "is".
func AmountNext(_, after []scan.Atom) bool {
	for len(after) > 0 && (after[0].Text == "," || after[0].Text == ":" || after[0].Text == "is" || after[0].Text == "=" || after[0].Text == "at" || after[0].Text == "about") {
		after = after[1:]
	}
	return StartsLength(measure.Reader{Atoms: after}, 0)
}

// AmountBefore: a figure stands right before it.
func AmountBefore(before, _ []scan.Atom) bool {
	n := len(before)
	for k := 1; k <= 3 && k <= n; k++ {
		if StartsLength(measure.Reader{Atoms: before}, n-k) {
			return true
		}
	}
	return false
}

// SaidBeforeOf reports whether one of some words stands before a place.
func SaidBeforeOf(words map[string]bool) func(before, after []scan.Atom) bool {
	return func(before, _ []scan.Atom) bool {
		for _, a := range before {
			if words[a.Text] {
				return true
			}
		}
		return false
	}
}

// BothHold is the place where two conditions hold.
func BothHold(a, b func(before, after []scan.Atom) bool) func(before, after []scan.Atom) bool {
	return func(before, after []scan.Atom) bool { return a(before, after) && b(before, after) }
}

// Turning are words by which a clause takes back, doubts or bounds what is said beside it, whatever joins the two.
var Turning = scan.WordSet(`
	if unless whether suppose supposing imagine pretend maybe perhaps instead either cancel ignore forget scratch undo scrap disregard
	unsure undecided doubt doubts guessing testing joking kidding toying debating contemplating hesitating
	inch inches foot feet yard yards cm mm meter meters metre metres millimeters centimeters percent maximum minimum max min limit limits limited equal equals
`)

// MadeBesides are things that somebody makes beside the wall.
var MadeBesides = lexicon.WordClass{Name: "MADE", Words: `bench benches planter planters shelf shelves step steps trellis table box boxes stool rack sawhorse sawhorses ladder sign birdhouse flowerbox flowerbed swing sandbox
	workbench bookshelf pergola arbor bin coop hutch stand seat doghouse playhouse ramp easel crate frame footstool cradle lattice gate`}

// Unasked takes the question mark at the end of a wish for a full stop.
func Unasked(out []scan.Atom) []scan.Atom {
	for n := len(out); n > 0 && out[n-1].Kind == scan.Sign; n-- {
		if out[n-1].Text == "?" {
			out[n-1].Text = "."
		}
	}
	return out
}

// StartsLength reports whether a length begins at an atom.
func StartsLength(r measure.Reader, i int) bool {
	_, _, ok := r.Length(i)
	return ok
}

// Turn is a turn of phrase word by word.
func Turn(text string) []string { return strings.Fields(text) }
