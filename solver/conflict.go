package solver

import (
	"fmt"
	"slices"

	"saywright/solver/exact"
)

// conflictCalls bounds how often a set of rules is tried while all smallest conflicts are sought.
const conflictCalls = 4000

// clash is one smallest conflict of a field, by law index.
type clash struct {
	o    *outcome
	laws []int
}

// clashes finds every smallest conflict of a blocked field; complete is false where the limit on work stopped it.
func (o *outcome) clashes() (out []clash, complete bool) {
	p := o.s.p
	idx := o.on0().list()
	rank := make([]int, len(idx))
	for i, l := range idx {
		rank[i] = bindingRank(p.laws[l].Kind)
	}
	oracle := func(on []bool) (bool, []int) {
		var m set
		for i, use := range on {
			if use {
				m.add(idx[i])
			}
		}
		hit, core := o.s.feasible(m)
		if hit != nil || o.s.spent {
			return true, nil
		}
		var back []int
		for i, l := range idx {
			if core.has(l) {
				back = append(back, i)
			}
		}
		return false, back
	}
	sets, complete := exact.Conflicts(len(idx), rank, oracle, conflictCalls)
	for _, s := range sets {
		c := clash{o: o}
		for _, i := range s {
			c.laws = append(c.laws, idx[i])
		}
		out = append(out, c)
	}
	slices.SortStableFunc(out, func(a, b clash) int { return p.usefulness(a) - p.usefulness(b) })
	return out, complete && !o.s.spent
}

// on0 is what cannot bend: the hard laws of the field.
func (o *outcome) on0() set {
	var m set
	for _, i := range o.s.all.list() {
		if o.s.p.hard.has(i) {
			m.add(i)
		}
	}
	return m
}

// bindingRank orders kinds by how much they bind, least first.
func bindingRank(k RuleKind) int {
	return slices.Index([]RuleKind{Practice, Code, Part, Yours, Geometry}, k)
}

// usefulness puts short conflicts of the person's own words first.
func (p *problem) usefulness(c clash) int {
	n := 10 * len(c.laws)
	for _, i := range c.laws {
		if p.laws[i].Kind != Yours {
			n++
		}
	}
	return n
}

func (c clash) mask() set {
	var m set
	for _, i := range c.laws {
		m.add(i)
	}
	return m
}

func (c clash) rules() []Rule {
	out := make([]Rule, len(c.laws))
	for i, l := range c.laws {
		out[i] = c.o.s.p.laws[l].Rule
	}
	return out
}

// about says which part of the wall a conflict is about.
func (c clash) about() string {
	switch c.o.s.f {
	case upField:
		return "up"
	case alongField:
		return "along"
	}
	return "both"
}

// refusal is one cell refused under a conflict's laws, with its certificate.
type refusal struct {
	sh   *sheet
	cert exact.Certificate
}

// prove runs through every cell once more under the conflict's laws alone and has the independent checker pass each
// certificate. It returns the refusals; whole is false where the limit on work cut the proof short; err tells a proof that
// does not check, which is a fault of ours.
func (c clash) prove() (cells []refusal, whole bool, err error) {
	on := c.mask()
	s := newSearch(c.o.s.p, c.o.s.f)
	s.record = func(sh *sheet, cert exact.Certificate) {
		if e := exact.Check(&sh.sys, cert); e != nil && err == nil {
			err = fmt.Errorf("a proof does not check: %w", e)
		}
		cells = append(cells, refusal{sh, cert})
	}
	if hit, _ := s.feasible(on); hit != nil && err == nil {
		err = fmt.Errorf("a conflict holds after all: %v", c.laws)
	}
	return cells, !s.spent, err
}

// conflict tells a clash with the sums that show it.
func (c clash) conflict() Conflict {
	cells, whole, err := c.prove()
	return Conflict{Rules: c.rules(), About: c.about(), Work: c.sums(cells), Proven: err == nil && whole, Fault: err}
}

// sums shows the conflict in one or two of its cells: those that come nearest from either side.
func (c clash) sums(cells []refusal) []Work {
	var below, above, other *story
	for i := range cells {
		st := tellStory(cells[i])
		switch {
		case st.way < 0:
			below = keepNearer(below, st)
		case st.way > 0:
			above = keepNearer(above, st)
		default:
			other = keepNearer(other, st)
		}
	}
	var out []Work
	for _, st := range []*story{below, above} {
		if st != nil {
			out = append(out, st.lines...)
		}
	}
	if out == nil && other != nil {
		out = other.lines
	}
	if out == nil {
		out = c.countSums()
	}
	return out
}

// countSums shows a conflict of counts alone: no cell is left to be refused.
func (c clash) countSums() []Work {
	p, on := c.o.s.p, c.mask()
	at := map[Quantity]counts{Rails: p.limits(Rails, on, 1), Bays: p.limits(Bays, on, 1), AddedPosts: p.limits(AddedPosts, on, 0),
		Openings: p.limits(Openings, on, 0), Stiffeners: p.stiffenerLimits(on, 0, false)}
	for _, q := range []Quantity{Rails, Bays, AddedPosts, Openings, Stiffeners} {
		if k := at[q]; k.lo > k.hi {
			return []Work{Line(string(q), "clash", Compare(Tally(k.lo), "<=", Tally(k.hi)))}
		}
	}
	if k := at[Openings]; k.lo > MostOpenings {
		return []Work{Line(string(Openings), "clash", Compare(Tally(k.lo), "<=", Tally(MostOpenings)))}
	}
	ks, _ := p.openingCounts(on)
	for _, k := range ks {
		// posts = bays + openings − 1
		if least := at[Bays].lo + k - 1; least > at[AddedPosts].hi {
			return []Work{Line(string(AddedPosts), "posts between", Less(Sum(Tally(at[Bays].lo), Tally(k)), Tally(1))),
				Line(string(AddedPosts), "clash", Compare(Tally(least), "<=", Tally(at[AddedPosts].hi)))}
		}
		if at[Bays].hi < most && at[Bays].hi+k-1 < at[AddedPosts].lo {
			return []Work{Line(string(AddedPosts), "posts between", Less(Sum(Tally(at[Bays].hi), Tally(k)), Tally(1))),
				Line(string(AddedPosts), "clash", Compare(Tally(at[AddedPosts].lo), "<=", Tally(at[Bays].hi+k-1)))}
		}
	}
	return nil
}

// keepNearer keeps the story whose two sides differ least; of equals the first.
func keepNearer(a, b *story) *story {
	if a == nil || b.missing.Less(a.missing) {
		return b
	}
	return a
}
