package parse

import (
	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
)

// inTurn reads figures alone for the same things, in the same order, as the claim before them: "one says five rails with a 3-1/8
// gap, another six with 2-1/8".
func (s *Speech) inTurn(g *group, list []Item) (act.Act, bool) {
	a := act.Act{Kind: g.force}
	n := len(s.Acts)
	if n == 0 || g.force != act.Check && g.force != act.WhatIf || s.Acts[n-1].Kind != g.force || len(s.Acts[n-1].Statements) < 2 {
		return a, false
	}
	before := s.Acts[n-1].Statements
	for _, it := range list {
		if !it.value() {
			if !it.breaks() {
				return a, false
			}
			continue
		}
		k := len(a.Statements)
		op, ok := it.lim.relation()
		if k == len(before) || !ok || op != solver.Eq || it.lim.of != nil || it.lim.hi != nil || before[k].Op != solver.Eq {
			return a, false
		}
		kind := solver.KindOf(before[k].Name.Quantity)
		v, ok := s.value(*it.lim.lo, kind)
		m := made{st: solver.Statement{Name: before[k].Name, Op: solver.Eq, Value: v}, lim: it.lim, kind: kind}
		if !ok || kind == solver.Length && v.Unit != before[k].Value.Unit || s.doubt(m, *it.lim.lo, measure.Amount{}) != nil {
			return a, false
		}
		a.Statements = append(a.Statements, m.st)
	}
	return a, len(a.Statements) == len(before)
}

// passerBy reports whether what is somebody's at item i is what has to get through, and no plan of theirs: "mother's wheelchair
// needs at least 34 inches to get through".
func (g *grouping) passerBy(i int) bool {
	if i+1 >= len(g.list) {
		return false
	}
	next := g.list[i+1]
	before := lex.FirstWord(leadOf(next))
	if !next.value() {
		before = lex.FirstWord(next.Before)
	}
	id := lexicon.Vocab().Ids["PASSING"]
	for _, c := range lexicon.Vocab().Classes[before] {
		if c == id {
			return !chunk.IsPerson(before)
		}
	}
	return false
}
