package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
	"saywright/solver"
)

// What a line says may be at odds with itself, or with each of two things: it is asked back. Common ways of speech, no source.

// TriesOneOfSeveral asks which is tried where the reasons of several were asked for, and the trial names none: "why 2 bays and 3 stiffeners, would 1 do".
func TriesOneOfSeveral(r act.Reading, said []scan.Atom) act.Reading {
	for i := 2; i < len(r.Acts); i++ {
		a, one, other := r.Acts[i], r.Acts[i-2], r.Acts[i-1]
		if a.Kind != act.WhatIf || len(a.Statements) != 1 || one.Kind != act.Why || other.Kind != act.Why || one.Name == nil || other.Name == nil || trialNames(said) {
			continue
		}
		st := a.Statements[0]
		if kind := solver.KindOf(st.Name.Quantity); kind != solver.KindOf(one.Name.Quantity) || kind != solver.KindOf(other.Name.Quantity) {
			continue
		}
		q := solver.Question{Text: "Which of them would be that?"}
		for _, n := range []*solver.Name{one.Name, other.Name} {
			st.Name = *n
			q.Choices = append(q.Choices, act.Act{Kind: act.WhatIf, Statements: []solver.Statement{st}}.String())
		}
		q.Example = q.Choices[0]
		return act.Reading{Ask: &q}
	}
	return r
}

// trialNames reports whether a part is named where a line goes on to what could be.
func trialNames(said []scan.Atom) bool {
	from := len(said) - 1
	for from > 0 && !chunk.BreaksClause(said, from) && !paraphrase.Proposes[said[from].Text] {
		from--
	}
	return slices.ContainsFunc(said[max(from, 0):], func(a scan.Atom) bool { return chunk.OfPart(a.Text) })
}
