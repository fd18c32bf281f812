package exact

// Cases are systems of which one is enough, one for each way to count, say. Their rows share one list of rules. It
// remembers what refuted each case and which points were found in it, so that asking about many sets of rules, as
// Conflicts does, solves few systems. It is not safe for use by several goroutines at a time.
type Cases struct {
	rules   int
	systems []*System
	memory  []memory // of each case
	part    System   // the rows of a case whose rules are on
	rowOf   []int    // their place among the case's rows
}

type memory struct {
	refuted []refuted
	points  []subset // of each point found, the rules it breaks
}

// refuted is a certificate over all rows of a case, and its rules.
type refuted struct {
	by    subset
	proof Certificate
}

// NewCases returns the cases over rules 0..rules-1. Rows of Background are always on. The systems must not change afterwards.
func NewCases(rules int, systems ...*System) *Cases {
	return &Cases{rules: rules, systems: systems, memory: make([]memory, len(systems))}
}

// Ask reports whether, with only the rules that are on, some case can be; if none, core lists rules that refute every
// case, ascending. It is an Oracle. Without any case nothing can be, and core is empty.
func (c *Cases) Ask(on []bool) (feasible bool, core []int) {
	blame, ok := c.refute(on)
	if !ok {
		return true, nil
	}
	all := newSubset(c.rules)
	for _, r := range blame {
		all.add(r.by)
	}
	return false, all.members()
}

// Refutations returns, for each case, a certificate over its rows that takes part in no rule but those that are on; nil
// when some case can be.
func (c *Cases) Refutations(on []bool) []Certificate {
	blame, ok := c.refute(on)
	if !ok {
		return nil
	}
	proofs := make([]Certificate, len(blame))
	for i, r := range blame {
		proofs[i] = r.proof
	}
	return proofs
}

// refute finds a refutation of every case that keeps to the rules that are on; ok is false when some case can be.
func (c *Cases) refute(on []bool) (blame []refuted, ok bool) {
	off := newSubset(c.rules)
	for r := range c.rules {
		if !on[r] {
			off.set(r)
		}
	}
	kept := fullSubset(c.rules)
	kept.remove(off)
	for i := range c.memory {
		if c.memory[i].holds(kept) {
			return nil, false
		}
	}
	all := newSubset(c.rules)
	for i := range c.systems {
		r := c.memory[i].nearest(off, all)
		if r == nil {
			if r = c.solve(i, kept); r == nil {
				return nil, false
			}
		}
		all.add(r.by)
		blame = append(blame, *r)
	}
	return blame, true
}

// holds reports whether a point is known that keeps to all these rules.
func (m *memory) holds(kept subset) bool {
	for _, broken := range m.points {
		if !broken.meets(kept) {
			return true
		}
	}
	return false
}

// nearest returns the known refutation without rules that are off that adds the fewest to those blamed already; nil for none.
func (m *memory) nearest(off, blamed subset) *refuted {
	var best *refuted
	least := 0
	for i := range m.refuted {
		r := &m.refuted[i]
		if r.by.meets(off) {
			continue
		}
		if more := r.by.countWithout(blamed); best == nil || more < least {
			best, least = r, more
		}
	}
	return best
}

// solve decides case i with the kept rules alone and remembers the outcome; nil when it can be.
func (c *Cases) solve(i int, kept subset) *refuted {
	s, m := c.systems[i], &c.memory[i]
	c.part.Vars, c.part.Rows, c.rowOf = s.Vars, c.part.Rows[:0], c.rowOf[:0]
	for k := range s.Rows {
		if r := s.Rows[k].Rule; r == Background || kept.has(r) {
			c.part.Rows = append(c.part.Rows, s.Rows[k])
			c.rowOf = append(c.rowOf, k)
		}
	}
	point, proof := Solve(&c.part)
	if point != nil {
		m.points = append(m.points, c.broken(s, kept, point))
		return nil
	}
	for k := range proof {
		proof[k].Row = c.rowOf[proof[k].Row]
	}
	by := newSubset(c.rules)
	for _, r := range proof.Rules(s) {
		by.set(r)
	}
	m.refuted = append(m.refuted, refuted{by, proof})
	return &m.refuted[len(m.refuted)-1]
}

// broken returns the rules that a point breaks; it is known to keep to some.
func (c *Cases) broken(s *System, kept subset, point []Rat) subset {
	broken := newSubset(c.rules)
	for i := range s.Rows {
		row := &s.Rows[i]
		if row.Rule != Background && !kept.has(row.Rule) && !broken.has(row.Rule) && !row.holds(point) {
			broken.set(row.Rule)
		}
	}
	return broken
}

func (r *Row) holds(point []Rat) bool {
	var sum Rat
	for _, t := range r.Terms {
		sum = sum.plusProduct(t.Coef, point[t.Var])
	}
	switch c := sum.Cmp(r.RHS); r.Rel {
	case LE:
		return c <= 0
	case GE:
		return c >= 0
	case EQ:
		return c == 0
	case LT:
		return c < 0
	default:
		return c > 0
	}
}
