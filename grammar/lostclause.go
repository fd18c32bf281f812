package grammar

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/grammar/takeback"
)

// What asks for something by itself is never passed over as idle talk: "how wide is the spot we walk through, and which side's it on" asks two things.

// asksPlainly are words that open a question or ask for a table.
var asksPlainly = scan.WordSet("how what where which show draw give list print do")

// asksNoMore are words by which a question is done with: "what to buy I've got already".
var asksNoMore = scan.WordSet("already know knew got have had said told not never forget done only")

// withLostQuestions adds to what was heard of a line the questions of clauses of which nothing was.
func withLostQuestions(line string, atoms []scan.Atom, c act.Context, r act.Reading) act.Reading {
	if r.Ask != nil || len(r.Acts) != 1 || r.Acts[0].Kind != act.Ask || c.Deep {
		return r
	}
	cuts := append(takeback.ClauseStarts(atoms), len(atoms))
	if len(cuts) != 3 {
		return r
	}
	var acts []act.Act
	for k := 0; k < 2; k++ {
		part := aside.WithoutJoint(atoms[cuts[k]:cuts[k+1]])
		if len(part) < 3 || !asksPlainly[part[0].Text] || slices.ContainsFunc(part, func(a scan.Atom) bool { return asksNoMore[a.Text] }) {
			return r
		}
		got := readHeld(line, slices.Clone(part), c)
		if got.Ask != nil || len(got.Acts) != 1 || got.Acts[0].Kind != act.Ask {
			return r
		}
		acts = append(acts, got.Acts...)
	}
	if parse.Normal(acts[:1]) == parse.Normal(acts[1:]) || parse.Normal(acts[:1]) != parse.Normal(r.Acts) && parse.Normal(acts[1:]) != parse.Normal(r.Acts) {
		return r
	}
	return act.Reading{Acts: acts, Taken: r.Taken}
}
