package grammar

import "slices"

// What asks for something by itself is never passed over as idle talk: "how wide is the spot we walk through, and which side's it on" asks two things.

// asksPlainly are words that open a question or ask for a table.
var asksPlainly = wordSet("how what where which show draw give list print do")

// asksNoMore are words by which a question is done with: "what to buy I've got already".
var asksNoMore = wordSet("already know knew got have had said told not never forget done only")

// withLostQuestions adds to what was heard of a line the questions of clauses of which nothing was.
func withLostQuestions(line string, atoms []atom, c Context, r Reading) Reading {
	if r.Ask != nil || len(r.Acts) != 1 || r.Acts[0].Kind != Ask || c.deep {
		return r
	}
	cuts := append(clauseStarts(atoms), len(atoms))
	if len(cuts) != 3 {
		return r
	}
	var acts []Act
	for k := 0; k < 2; k++ {
		part := withoutJoint(atoms[cuts[k]:cuts[k+1]])
		if len(part) < 3 || !asksPlainly[part[0].text] || slices.ContainsFunc(part, func(a atom) bool { return asksNoMore[a.text] }) {
			return r
		}
		got := readHeld(line, slices.Clone(part), c)
		if got.Ask != nil || len(got.Acts) != 1 || got.Acts[0].Kind != Ask {
			return r
		}
		acts = append(acts, got.Acts...)
	}
	if Normal(acts[:1]) == Normal(acts[1:]) || Normal(acts[:1]) != Normal(r.Acts) && Normal(acts[1:]) != Normal(r.Acts) {
		return r
	}
	return Reading{Acts: acts, Taken: r.Taken}
}
