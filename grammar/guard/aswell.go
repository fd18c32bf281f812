package guard

import (
	"regexp"

	"saywright/grammar/act"
	"saywright/grammar/parse"
	"saywright/grammar/ways"
	"saywright/solver"
	"saywright/solver/exact"
)

// "Gap 3, bottom gap too": behind a part, at the end of what is said, "too" is "as well" and no two, though it sounds like one and is written for one. Plain English,
// no source.

var (
	partToo = regexp.MustCompile(`\b(?:gaps?|spac(?:es|ing)|openings?|doorways?|bays?|rails?|boards?|slats?|planks?|posts?|stiffeners?|uprights?|brackets?|walls?|span|height|drop|reach|play|kerf|trim) too(?: [.,;!?]| please| then| and| but|$)`)
	aTwo    = regexp.MustCompile(`\b(?:2|two|twos|twice|pair|couple|to)\b`)
)

// AsWellOrTwo asks back where a two was heard in a "too", with what was said before it and with the two.
func AsWellOrTwo(r act.Reading, said string) act.Reading {
	if r.Ask != nil || !ways.MatchesWay(partToo, said) {
		return r
	}
	two, plain := exact.Int(2), len(aTwo.FindAllString(said, -1))
	for i, a := range r.Acts {
		if !valued(a) {
			continue
		}
		for j, s := range a.Statements {
			if s.Value.Of != nil || s.Value.Word != "" || !s.Value.Num.Eq(two) {
				continue
			}
			if plain--; plain >= 0 {
				continue // that one was said
			}
			at := a.At
			q := solver.Question{At: &at, Text: "As well, or two of it?", Example: "bottom gap the same as the gap", Choices: []string{parse.Normal(r.Acts)}}
			if before := statedBefore(r.Acts, i, j); before != nil && solver.KindOf(before.Name.Quantity) == solver.KindOf(s.Name.Quantity) {
				as := withOp(r.Acts, i, j, before.Op)
				as[i].Statements[j].Value = before.Value
				if said := parse.Normal(as); said == q.Choices[0] {
					return r // "the gap is 2 and the bottom gap too" is two either way
				} else {
					q.Choices = []string{said, q.Choices[0]}
				}
			}
			q.Example = q.Choices[0]
			return act.Reading{Ask: &q}
		}
	}
	return r
}

// statedBefore is the statement right before one of an act; nil where there is none.
func statedBefore(acts []act.Act, act, at int) *solver.Statement {
	for at--; act >= 0; {
		if at >= 0 {
			return &acts[act].Statements[at]
		}
		if act--; act >= 0 {
			at = len(acts[act].Statements) - 1
		}
	}
	return nil
}
