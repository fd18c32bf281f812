package grammar

import (
	"slices"
	"strconv"

	"saywright/solver"
	"saywright/solver/exact"
)

// What a line says may be at odds with itself, or with each of two things: it is asked back. Common ways of speech, no source.

// noOneWidth asks for the width of a bay where a line tells two that no bay has at once: "bay 1 is 60 wide, 40 high and 38 low". Wide holds those that
// were told.
func noOneWidth(st solver.Statement, wide map[int]solver.Statement) *solver.Question {
	bay := st.Name.Bay
	if bay == 0 || st.Op != solver.Eq || st.Name.Quantity != solver.Bay && (st.Name.Quantity != solver.Measured || st.Name.At != "top" && st.Name.At != "bottom") {
		return nil
	}
	was, ok := wide[bay]
	wide[bay] = st
	if !ok || was.Value.Unit != st.Value.Unit {
		return nil
	}
	small, large := was.Value.Num, st.Value.Num
	if large.Less(small) {
		small, large = large, small
	}
	if large.Less(small.Mul(exact.New(5, 4))) {
		return nil // posts lean, and a tape is read; never by so much
	}
	return &solver.Question{Text: "How wide is bay " + strconv.Itoa(bay) + ", and what is the other figure?", Choices: []string{was.String(), st.String()}, Example: st.String()}
}

// triesOneOfSeveral asks which is tried where the reasons of several were asked for, and the trial names none: "why 2 bays and 3 stiffeners, would 1 do".
func triesOneOfSeveral(r Reading, said []atom) Reading {
	for i := 2; i < len(r.Acts); i++ {
		a, one, other := r.Acts[i], r.Acts[i-2], r.Acts[i-1]
		if a.Kind != WhatIf || len(a.Statements) != 1 || one.Kind != Why || other.Kind != Why || one.Name == nil || other.Name == nil || trialNames(said) {
			continue
		}
		st := a.Statements[0]
		if kind := solver.KindOf(st.Name.Quantity); kind != solver.KindOf(one.Name.Quantity) || kind != solver.KindOf(other.Name.Quantity) {
			continue
		}
		q := solver.Question{Text: "Which of them would be that?"}
		for _, n := range []*solver.Name{one.Name, other.Name} {
			st.Name = *n
			q.Choices = append(q.Choices, Act{Kind: WhatIf, Statements: []solver.Statement{st}}.String())
		}
		q.Example = q.Choices[0]
		return Reading{Ask: &q}
	}
	return r
}

// trialNames reports whether a part is named where a line goes on to what could be.
func trialNames(said []atom) bool {
	from := len(said) - 1
	for from > 0 && !breaksClause(said, from) && !proposes[said[from].text] {
		from--
	}
	return slices.ContainsFunc(said[max(from, 0):], func(a atom) bool { return ofPart(a.text) })
}
