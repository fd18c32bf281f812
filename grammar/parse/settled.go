package parse

import (
	"slices"
	"strings"

	"saywright/solver"
)

// A question about one part of a line leaves its other parts waiting. Once it is answered the line is read again, with
// the answer in Context.Settled, so that nothing of it has to be said twice.

// settles reports whether one of the forms that a question would offer was chosen already.
func (s *Speech) settles(g *group, form string) bool {
	return slices.Contains(s.C.Settled, withForce(g.force, form))
}

// settle puts what was chosen in the place of what was doubted, and drops what was not chosen of what contradicts itself.
func (s *Speech) settle(g *group, list []made) []made {
	if len(s.C.Settled) == 0 {
		return list
	}
	var out []made
	for _, m := range list {
		if m.doubt != nil {
			m = s.settleDoubt(g, m)
		}
		rival := slices.IndexFunc(out, func(o made) bool { return o.st.Name.String() == m.st.Name.String() && o.st.String() != m.st.String() })
		switch {
		case rival >= 0 && s.settles(g, out[rival].st.String()) && !s.settles(g, m.st.String()):
		case rival >= 0 && s.settles(g, m.st.String()):
			out[rival] = m
		default:
			out = append(out, m)
		}
	}
	return out
}

func (s *Speech) settleDoubt(g *group, m made) made {
	for _, form := range m.doubt.Choices {
		acts, err := Parse(form)
		if s.settles(g, form) && err == nil && len(acts) == 1 && len(acts[0].Statements) == 1 {
			m.st, m.doubt = acts[0].Statements[0], nil
			return m
		}
	}
	return m
}

// settledReading returns the reading that was chosen among several.
func (s *Speech) settledReading(g *group, list []reading) (reading, bool) {
	for _, r := range list {
		var forms []string
		for _, m := range r.made {
			forms = append(forms, m.st.String())
		}
		if s.settles(g, strings.Join(forms, sep(g.force))) {
			return r, true
		}
	}
	return reading{}, false
}

// settledValue returns what the value of a stretch that could mean several things was chosen to be for.
func (s *Speech) settledValue(g *group, part []Item) (reading, bool) {
	if len(s.C.Settled) == 0 {
		return reading{}, false
	}
	q, i := s.whichOf(g, part)
	for _, form := range q.Choices {
		if !slices.Contains(s.C.Settled, form) { // these have their force in front
			continue
		}
		acts, err := Parse(form)
		if err != nil || len(acts) != 1 || len(acts[0].Statements) != 1 {
			continue
		}
		m := made{st: acts[0].Statements[0], at: part[i].startAt(), lim: part[i].lim}
		m.kind = solver.KindOf(m.st.Name.Quantity)
		return reading{made: []made{m}, carry: s.Carry}, true
	}
	return reading{}, false
}
