package grammar

import (
	"saywright/solver"
	"saywright/solver/exact"
)

// say understands a stretch of statements, with the corrections that are made in the same breath. It asks back, and
// returns false, where a word is left over or more than one thing can be meant.
func (s *speech) say(g *group, list []item) ([]made, bool) {
	parts := corrections(append([]item{}, list...))
	var done []made
	for p, part := range parts {
		part = strip(part)
		if len(part) == 0 {
			continue
		}
		fixed := false
		if p > 0 && len(done) > 0 {
			next, rest, ok := s.correct(done, part)
			fixed = ok && len(rest) < len(part)
			if !ok {
				s.notUnderstood(g, part)
				return nil, false
			}
			done, part = next, rest
			if len(part) == 0 {
				continue
			}
		}
		r, ok := s.best(g, part, p+1 < len(parts))
		if !ok {
			return nil, false
		}
		if p > 0 && len(done) > 0 && !fixed {
			if r.made, ok = replace(done, r.made); !ok {
				s.notUnderstood(g, part)
				return nil, false
			}
			done = r.made
		} else {
			done = append(done, r.made...)
		}
		s.carry = r.carry
	}
	if len(done) == 0 {
		s.notUnderstood(g, list)
		return nil, false
	}
	done = s.settle(g, done)
	done = oneStock(done)
	return done, s.stands(g, done)
}

// oneStock puts lengths on sale that were said one after the other into one list.
func oneStock(in []made) []made {
	var out []made
	for _, m := range in {
		if n := len(out); n > 0 && m.st.Name.Quantity == solver.Stock && m.st.Op == solver.Eq && out[n-1].st.Op == solver.Eq && out[n-1].st.Name.String() == m.st.Name.String() {
			last := &out[n-1].st.Value
			last.List = append(append([]solver.Value{}, last.List...), m.st.Value.List...)
			continue
		}
		out = append(out, m)
	}
	return out
}

// corrections cuts a list where something is taken back: "two, no, two and a quarter".
func corrections(list []item) [][]item {
	var out [][]item
	start := 0
	for i, it := range list {
		if !it.value() && it.kind == kFix && !hasValue(list[:i]) {
			list[i].lim, list[i].token = nil, nothing
			continue
		}
		if it.value() || it.kind != kFix && !(it.kind == kNo && i > 0 && correcting(list, i)) {
			continue
		}
		out = append(out, list[start:i])
		start = i + 1
	}
	return append(out, list[start:])
}

// nothing stands in the place of a word of correction that corrects nothing: "actually, six boards".
var nothing = &token{kind: kTailFill}

// correcting reports whether the "no" at i takes back what stands before it: a value follows, or a whole clause after a comma.
func correcting(list []item, i int) bool {
	j := i + 1
	comma := false
	for j < len(list) && (list[j].breaks() || !list[j].value() && list[j].kind == kIt) {
		comma = comma || list[j].kind == kComma
		j++
	}
	if j >= len(list) {
		return false
	}
	return list[j].value() || comma && list[j].kind == kPart && list[i-1].value() || comma && list[j].kind == kPart && list[i-1].breaks()
}

// best cuts a stretch into clauses. With more to come after a correction, what is left hanging at its end is dropped.
func (s *speech) best(g *group, part []item, corrected bool) (reading, bool) {
	r := s.cut(part, s.carry, g.force)
	if len(r) == 0 && corrected {
		for j := len(part) - 1; j >= 0; j-- {
			if j == 0 {
				return reading{carry: s.carry}, true
			}
			if r = s.cut(part[:j], s.carry, g.force); len(r) > 0 && !hasValue(part[j:]) {
				break
			}
			r = nil
		}
	}
	switch len(r) {
	case 0:
		if one, ok := s.settledValue(g, part); ok {
			return one, true
		}
		s.notUnderstood(g, part)
		return reading{}, false
	case 1:
		return r[0], true
	}
	if one, ok := s.settledReading(g, r); ok {
		return one, true
	}
	s.ambiguous(g, part, r)
	return reading{}, false
}

// correct puts a value that stands alone after a word of correction in the place of the last one that it can replace.
func (s *speech) correct(done []made, part []item) ([]made, []item, bool) {
	n := 0
	for n < len(part) && !part[n].value() && (idle(part[n].token) || part[n].kind == kIt || part[n].kind == kTo || part[n].kind == kMeasured) {
		n++
	}
	if n >= len(part) || !part[n].value() {
		return done, part, true
	}
	after := n + 1
	for after < len(part) && !part[after].value() && (part[after].kind == kMeasured || idle(part[after].token) || part[after].kind == kEach) {
		after++
	}
	lim := part[n].lim
	if after < len(part) && part[after].value() {
		cents, ok := s.spoken(done, lim, part[after].lim)
		if !ok || after+1 < len(part) && !part[after+1].breaks() {
			return done, part, true
		}
		lim, after = cents, after+1
	}
	if after < len(part) && !part[after].breaks() && !(part[after].kind == kNot && after+1 < len(part) && part[after+1].value()) {
		return done, part, true // it has a noun of its own
	}
	if after < len(part) && part[after].kind == kNot {
		after += 2
	}
	for i := len(done) - 1; i >= 0; i-- {
		m, ok := s.corrected(done[i], lim)
		if !ok {
			continue
		}
		if lim.lo.unit == bare && lim.lo.val.IsInt() && done[i].kind == solver.Length && countBefore(done[:i]) && after >= len(part) && lim.lo.size == "" && !nearly(done[i], lim) {
			return done, part, false // the count or the length
		}
		out := append([]made{}, done...)
		out[i] = m
		name := m.st.Name
		s.carry.name, s.carry.kind = &name, m.kind
		return out, strip(part[after:]), true
	}
	return done, part, false
}

// nearly reports whether a corrected length is within half of the one it replaces.
func nearly(m made, lim *limit) bool {
	d := m.st.Value.Num.Sub(lim.lo.val).Abs()
	return d.Add(d).Less(m.st.Value.Num)
}

func countBefore(list []made) bool {
	for _, m := range list {
		if m.kind == solver.Count {
			return true
		}
	}
	return false
}

// spoken reads "nine fifty" as money, in the place of money.
func (s *speech) spoken(done []made, a, b *limit) (*limit, bool) {
	if len(done) == 0 || done[len(done)-1].st.Value.Unit != solver.Currency || a.lo.unit != bare || b.lo.unit != bare {
		return nil, false
	}
	cents := b.lo.val
	if !a.lo.val.IsInt() || !cents.IsInt() || cents.Less(exact.Int(10)) || !cents.Less(exact.Int(100)) {
		return nil, false
	}
	v := amount{number: number{val: a.lo.val.Add(cents.Div(exact.Int(100)))}, unit: money}
	return &limit{lo: &v, loTok: a.loTok}, true
}

// corrected returns m with another value; ok is false where the value cannot be one of its kind.
func (s *speech) corrected(m made, lim *limit) (made, bool) {
	op, ok := lim.relation()
	if !ok || lim.of != nil || m.st.Value.Of != nil || m.st.Value.List != nil || m.st.Op == solver.Set {
		return m, false
	}
	kind := m.kind
	if kind == 0 {
		kind = kindOfValue(m.st.Value)
	}
	if m.st.Op == solver.Times || m.st.Op == solver.In && op != solver.In || m.st.Op != solver.In && op == solver.In && m.st.Op != solver.Eq {
		return m, false
	}
	if op != solver.Eq {
		m.st.Op = op
	}
	lo := *lim.lo
	if lo.unit == bare && kind == solver.Length && m.lim != nil && m.lim.lo.unit != bare && lim.hi == nil {
		lo = likeBefore(lo, m.lim.lo)
	}
	v, ok := s.value(lo, kind)
	if !ok {
		return m, false
	}
	v.Word = m.st.Value.Word
	if kind == solver.Size {
		v.Word = lo.size
	}
	m.st.Value, m.lim = v, lim
	if lim.hi != nil {
		if m.st.Upper, ok = s.value(*lim.hi, kind); !ok {
			return m, false
		}
	}
	m.doubt = s.doubt(m, lo, amount{})
	return m, true
}

// likeBefore reads a bare correction in the unit of what it corrects: "four feet, no, five".
func likeBefore(a amount, was *amount) amount {
	if was.unit == feet && (was.frac || !a.val.Less(exact.Int(20))) {
		return a
	}
	return inUnitOf(a, *was)
}

func kindOfValue(v solver.Value) solver.Kind {
	switch v.Unit {
	case solver.Inch, solver.Millimeter:
		return solver.Length
	case solver.Currency:
		return solver.Money
	case solver.PercentOf:
		return solver.Percent
	}
	return solver.Count
}

// replace puts corrected statements in the place of those they correct: at least one must.
func replace(done, fresh []made) ([]made, bool) {
	out := append([]made{}, done...)
	replaced := false
	for _, f := range fresh {
		at := -1
		for i := range done {
			if out[i].st.Name.String() == f.st.Name.String() && out[i].st.Name.Quantity != solver.Goal {
				at = i
			}
		}
		if at >= 0 {
			out[at], replaced = f, true
		} else {
			out = append(out, f)
		}
	}
	return out, replaced
}

// stands checks what was understood: values that cannot be meant, and what contradicts itself in one breath.
func (s *speech) stands(g *group, list []made) bool {
	seen := map[string]made{}
	for _, m := range list {
		if m.doubt != nil {
			q := *m.doubt
			for i, c := range q.Choices {
				q.Choices[i] = withForce(g.force, c)
			}
			s.fail(m.at, q)
			return false
		}
		name := m.st.Name.String()
		if m.st.Name.Quantity == solver.Goal {
			continue
		}
		if was, ok := seen[name]; ok && (was.st.Op == solver.Eq || was.st.Op == solver.Near || was.st.Op == solver.In) && (m.st.Op == solver.Eq || m.st.Op == solver.Near || m.st.Op == solver.In) {
			if was.st.String() != m.st.String() {
				s.contradicts(g, was, m)
				return false
			}
		}
		seen[name] = m
	}
	return true
}

func withForce(k ActKind, normal string) string {
	if k == WhatIf || k == WhyNot || k == Check {
		return string(k) + " " + normal
	}
	return normal
}
