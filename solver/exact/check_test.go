package exact

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
)

// A certificate of the solver uses only rows it needs, so that any change to it makes it prove nothing.
func TestCheckRejectsMutatedRefutations(t *testing.T) {
	d := draw(20)
	seen := 0
	for range 6000 {
		s := d.system()
		_, c := Solve(s)
		if c == nil {
			continue
		}
		require.NoError(t, Check(s, c))
		for i := range c {
			seen++
			for name, m := range mutations(d, s, c, i) {
				require.Error(t, Check(s, m), "%s at %d of %v\n%s", name, i, c, show(s))
			}
		}
		require.Error(t, Check(s, negated(c)), "all signs\n%s", show(s))
		require.NoError(t, Check(s, scaled(c, New(7, 3))))
	}
	require.Greater(t, seen, 4000)
}

// mutations of the multiplier i, each of which must be rejected.
func mutations(d drawn, s *System, c Certificate, i int) map[string]Certificate {
	change := func(f func(m *Multiplier)) Certificate {
		m := slices.Clone(c)
		f(&m[i])
		return m
	}
	out := map[string]Certificate{
		"sign flipped": change(func(m *Multiplier) { m.Mult = m.Mult.Neg() }),
		"row dropped":  slices.Delete(slices.Clone(c), i, i+1),
		"zero":         change(func(m *Multiplier) { m.Mult = Rat{} }),
		"no such row":  change(func(m *Multiplier) { m.Row = len(s.Rows) }),
		"row below 0":  change(func(m *Multiplier) { m.Row = -1 }),
	}
	terms := gather(nil, s.Rows[c[i].Row].Terms)
	if len(terms) > 0 { // a row of nothing but numbers refutes at any size
		out["multiplier grown"] = change(func(m *Multiplier) { m.Mult = m.Mult.Add(New(1, 1000000)) })
		out["multiplier halved"] = change(func(m *Multiplier) { m.Mult = m.Mult.Mul(New(1, 2)) })
	}
	if j := d.IntN(len(s.Rows)); !sameTerms(terms, gather(nil, s.Rows[j].Terms)) {
		out["wrong row"] = change(func(m *Multiplier) { m.Row = j })
		if len(gather(nil, s.Rows[j].Terms)) == 0 {
			delete(out, "wrong row") // it may be a refutation by itself
		}
	}
	return out
}

func scaled(c Certificate, f Rat) Certificate {
	m := slices.Clone(c)
	for i := range m {
		m[i].Mult = m[i].Mult.Mul(f)
	}
	return m
}

func negated(c Certificate) Certificate { return scaled(c, Int(-1)) }

// What can be cannot be refuted: not by any certificate, whether made up or made for a system that was a little different.
func TestCheckRejectsEverythingAboutWhatCanBe(t *testing.T) {
	d := draw(21)
	made, borrowed := 0, 0
	for range 8000 {
		s := d.system()
		if feasible, _, _ := verdict(s, nil); feasible {
			made++
			for range 5 {
				require.Error(t, Check(s, d.certificate(s)), show(s))
			}
			continue
		}
		_, c := Solve(s)
		loose := loosened(d, s)
		if feasible, _, _ := verdict(loose, nil); feasible {
			borrowed++
			require.Error(t, Check(loose, c), show(loose))
		}
	}
	require.Greater(t, made, 1000)
	require.Greater(t, borrowed, 300)
}

// certificate is made up, with signs that fit, and mostly so that its unknowns cancel where two rows allow it.
func (d drawn) certificate(s *System) Certificate {
	var c Certificate
	for i, r := range s.Rows {
		m := New(int64(d.between(0, 6)), 2)
		if r.Rel == GE || r.Rel == GT || r.Rel == EQ && d.oneIn(2) {
			m = m.Neg()
		}
		c = append(c, Multiplier{i, m})
	}
	if len(s.Rows) > 1 && d.oneIn(2) {
		i := d.between(1, len(s.Rows)-1)
		return Certificate{c[0], c[i]}
	}
	return c
}

// loosened is the system with its strict rows not strict, or with some right sides moved out.
func loosened(d drawn, s *System) *System {
	out := &System{Vars: s.Vars, Rows: slices.Clone(s.Rows)}
	move := d.oneIn(2)
	for i := range out.Rows {
		r := &out.Rows[i]
		switch {
		case move && (r.Rel == LE || r.Rel == LT):
			r.RHS = r.RHS.Add(Int(4))
		case move && (r.Rel == GE || r.Rel == GT):
			r.RHS = r.RHS.Sub(Int(4))
		case r.Rel == LT:
			r.Rel = LE
		case r.Rel == GT:
			r.Rel = GE
		}
	}
	return out
}

func TestCheckStrictRows(t *testing.T) {
	one := []Term{{0, Int(1)}}
	row := func(rel Rel, rhs string) Row { return Row{Terms: one, Rel: rel, RHS: Must(rhs)} }
	sum := Certificate{{0, Int(1)}, {1, Int(-1)}}
	for _, c := range []struct {
		a, b Row
		ok   bool
	}{
		{row(LE, "3"), row(GE, "3"), false},
		{row(LT, "3"), row(GE, "3"), true},
		{row(LE, "3"), row(GT, "3"), true},
		{row(LT, "3"), row(GT, "3"), true},
		{row(LT, "3"), row(GT, "2.999"), false},
		{row(LE, "3"), row(GE, "3.001"), true},
		{row(EQ, "3"), row(GT, "3"), true},
		{row(EQ, "3"), row(EQ, "3"), false},
		{row(EQ, "3"), row(EQ, "4"), true},
	} {
		s := &System{Vars: 1, Rows: []Row{c.a, c.b}}
		err := Check(s, sum)
		require.Equal(t, c.ok, err == nil, "%s: %v", show(s), err)
		_, cert := Solve(s)
		require.Equal(t, c.ok, cert != nil, show(s))
	}
	// A strict row that takes no part makes nothing strict.
	s := &System{Vars: 1, Rows: []Row{row(LE, "3"), row(GE, "3"), row(LT, "9")}}
	require.Error(t, Check(s, Certificate{{0, Int(1)}, {1, Int(-1)}, {2, Rat{}}}))
	require.Error(t, Check(s, nil))
}

func TestCheckBoundRejectsMutatedBounds(t *testing.T) {
	d := draw(22)
	hair := New(1, 1_000_000_000)
	closed, open := 0, 0
	for range 8000 {
		s := d.system()
		p := Prepare(s)
		if !p.Feasible() {
			continue
		}
		obj := d.objective(s.Vars)
		for _, atLeast := range []bool{true, false} {
			end, in := p.Max, hair.Neg()
			if atLeast {
				end, in = p.Min, hair
			}
			b, c := end(obj)
			if b.None {
				require.Error(t, CheckBound(s, obj, atLeast, b, c))
				continue
			}
			require.NoError(t, CheckBound(s, obj, atLeast, b, c))
			require.Error(t, CheckBound(s, obj, atLeast, Bound{Val: b.Val.Add(in), Open: b.Open}, c), "tighter by a hair\n%s", show(s))
			require.NoError(t, CheckBound(s, obj, atLeast, Bound{Val: b.Val.Sub(in), Open: true}, c))
			if b.Open {
				open++
				require.NoError(t, CheckBound(s, obj, atLeast, Bound{Val: b.Val}, c))
			} else {
				closed++
				require.Error(t, CheckBound(s, obj, atLeast, Bound{Val: b.Val, Open: true}, c), show(s))
			}
			requireMutatedBoundRejected(t, d, s, obj, atLeast, b, c)
		}
	}
	require.Greater(t, closed, 1000)
	require.Greater(t, open, 300)
}

func requireMutatedBoundRejected(t *testing.T, d drawn, s *System, obj []Term, atLeast bool, b Bound, c Certificate) {
	t.Helper()
	for i := range c {
		for name, m := range mutations(d, s, c, i) {
			require.Error(t, CheckBound(s, obj, atLeast, b, m), "%s at %d of %v\n%s", name, i, c, show(s))
		}
	}
	if v := d.IntN(s.Vars); len(c) > 0 {
		other := append(slices.Clone(obj), Term{v, New(1, 3)})
		require.Error(t, CheckBound(s, other, atLeast, b, c), "another objective\n%s", show(s))
		if slices.ContainsFunc(c, func(m Multiplier) bool { return s.Rows[m.Row].Rel != EQ }) {
			require.Error(t, CheckBound(s, obj, !atLeast, b, c), "the other end of %v\n%s", b, show(s))
		}
	}
}

func TestCheckPoint(t *testing.T) {
	d := draw(23)
	seen := 0
	for range 4000 {
		s := d.system()
		point, _ := Solve(s)
		if point == nil {
			continue
		}
		require.NoError(t, CheckPoint(s, point))
		require.Error(t, CheckPoint(s, point[1:]))
		for _, r := range s.Rows { // the same point, a rule that it just breaks
			if len(gather(nil, r.Terms)) == 0 {
				continue
			}
			seen++
			at := value(r.Terms, point)
			for _, broken := range []Row{{r.Terms, LT, at, 0}, {r.Terms, GT, at, 0}, {r.Terms, EQ, at.Add(New(1, 1<<40)), 0},
				{r.Terms, LE, at.Sub(New(1, 1<<40)), 0}, {r.Terms, GE, at.Add(New(1, 1<<40)), 0}, {r.Terms, Rel(9), at, 0}} {
				bad := &System{Vars: s.Vars, Rows: append(slices.Clone(s.Rows), broken)}
				require.Error(t, CheckPoint(bad, point))
			}
		}
	}
	require.Greater(t, seen, 2000)
}

func TestCheckReportsUnknownsThatAreNotThere(t *testing.T) {
	s := &System{Vars: 1, Rows: []Row{{Terms: []Term{{1, Int(1)}}, Rel: LE, RHS: Int(-1)}}}
	require.ErrorContains(t, Check(s, Certificate{{0, Int(1)}}), "unknown 1")
	require.ErrorContains(t, CheckPoint(s, []Rat{{}}), "unknown 1")
	require.ErrorContains(t, CheckRay(s, nil, true, []Rat{{}}), "unknown 1")
	require.ErrorContains(t, CheckBound(&System{Vars: 1}, []Term{{-1, Int(1)}}, true, Bound{}, nil), "unknown -1")
	require.Panics(t, func() { Solve(s) })
	s.Rows[0] = Row{Rel: Rel(9), RHS: Int(-1)}
	require.ErrorContains(t, Check(s, Certificate{{0, Int(1)}}), "relation 9")
	require.ErrorContains(t, CheckRay(s, []Term{{7, Int(1)}}, true, []Rat{{}}), "unknown 7")
}
