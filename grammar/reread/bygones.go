package reread

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/lex"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
	"saywright/solver"
)

// What was done in the old days is told and not wished: "in my day we'd have used five rails. Would five do here?" A sentence
// that begins so is left out; what it spoke of stays in mind, as if it had been said before.

// TellsOfOldDays reports whether a sentence begins as such tales do.
func TellsOfOldDays(part []scan.Atom) bool {
	return bygoneEnd(part) > 0
}

// bygoneEnd returns the atom after such a beginning, 0 where there is none.
func bygoneEnd(part []scan.Atom) int {
	i := 0
	for i < len(part) && (chunk.Joints[part[0].Text] || part[i].Text == "well" || part[i].Text == "now" || part[i].Text == "," || lex.Owned[part[i].Text]) {
		i++
	}
	for _, at := range []int{i, i - 1} {
		if at < 0 {
			break
		}
		if f := paraphrase.BygoneVocab().Match(part, at); len(f) > 0 {
			return f[0].Next
		}
	}
	return 0
}

// isNow tells what was as what is.
func isNow(part []scan.Atom) []scan.Atom {
	out := append([]scan.Atom{}, part...)
	for i := range out {
		switch out[i].Text {
		case "was":
			out[i].Text = "is"
		case "were":
			out[i].Text = "are"
		}
	}
	return out
}

// SpokenIn is the one thing that a sentence says something of, nil where it is none or not known.
func SpokenIn(part []scan.Atom, c act.Context) *solver.Name {
	for i := range part {
		if w := part[i].Text; w == "was" || w == "were" {
			if r := hear.Atoms(isNow(part[bygoneEnd(part):]), c); r.Ask == nil && len(r.Acts) == 1 && len(r.Acts[0].Statements) == 1 {
				return &r.Acts[0].Statements[0].Name // "in my day the gap was two"
			}
		}
		for _, have := range []string{"have used", "have had", "have put", "had", "used", "put", "made", "built", "have built", "have made", "left", "set"} {
			words := strings.Fields(have)
			if !scan.StandAt(part, i, words...) {
				continue
			}
			r := hear.Atoms(part[i+len(words):], c)
			if r.Ask == nil && len(r.Acts) == 1 && r.Acts[0].Kind == act.State && len(r.Acts[0].Statements) == 1 {
				return &r.Acts[0].Statements[0].Name
			}
		}
	}
	return nil
}
