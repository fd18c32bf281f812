package exact

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
)

// show writes a system so that a failure can be read and made a case of its own.
func show(s *System) string {
	out := fmt.Sprintf("%d unknowns\n", s.Vars)
	for i, r := range s.Rows {
		out += fmt.Sprintf("%d: ", i)
		for _, t := range r.Terms {
			out += fmt.Sprintf("%+v·x%d ", t.Coef, t.Var)
		}
		out += fmt.Sprintf("%v %v (rule %d)\n", r.Rel, r.RHS, r.Rule)
	}
	return out
}

func requireBound(t *testing.T, want, got Bound, s *System, obj []Term) {
	t.Helper()
	require.Equal(t, want.None, got.None, "none: %v\n%s", obj, show(s))
	if !want.None {
		require.Equal(t, want.Val.String(), got.Val.String(), "value: %v\n%s", obj, show(s))
		require.Equal(t, want.Open, got.Open, "open: %v\n%s", obj, show(s))
	}
}

// agree holds one system and one objective against elimination, and every answer against the checker.
func agree(t *testing.T, s *System, obj []Term) (feasible bool) {
	t.Helper()
	feasible, lo, hi := verdict(s, obj)
	point, cert := Solve(s)
	require.Equal(t, feasible, point != nil, show(s))
	require.Equal(t, !feasible, cert != nil, show(s))
	p := Prepare(s)
	require.Equal(t, feasible, p.Feasible())
	if !feasible {
		require.NoError(t, Check(s, cert), show(s))
		b, c := p.Min(obj)
		require.True(t, b.None)
		require.NoError(t, Check(s, c))
		return false
	}
	require.NoError(t, CheckPoint(s, point), show(s))
	least, c1 := p.Min(obj)
	requireBound(t, lo, least, s, obj)
	most, c2 := p.Max(obj)
	requireBound(t, hi, most, s, obj)
	requireProof(t, s, obj, least, c1, true)
	requireProof(t, s, obj, most, c2, false)
	requireEnd(t, s, obj, least, p.MinPoint)
	requireEnd(t, s, obj, most, p.MaxPoint)
	return true
}

func requireProof(t *testing.T, s *System, obj []Term, b Bound, c Certificate, atLeast bool) {
	t.Helper()
	if b.None {
		require.Nil(t, c)
		return
	}
	require.NoError(t, CheckBound(s, obj, atLeast, b, c), show(s))
}

func requireEnd(t *testing.T, s *System, obj []Term, want Bound, end func([]Term) (Bound, []Rat)) {
	t.Helper()
	b, point := end(obj)
	requireBound(t, want, b, s, obj)
	require.NoError(t, CheckPoint(s, point), show(s))
	if !b.None {
		require.Equal(t, !b.Open, value(obj, point).Eq(b.Val), show(s))
	}
}

func TestSolveAgreesWithElimination(t *testing.T) {
	d := draw(1)
	blocked := 0
	const cases = 20000
	for range cases {
		s := d.system()
		if !agree(t, s, d.objective(s.Vars)) {
			blocked++
		}
	}
	t.Logf("%d of %d cannot be", blocked, cases)
	require.Greater(t, blocked, cases/5)
	require.Less(t, blocked, cases*4/5)
}

func TestSolveWallsAgreesWithElimination(t *testing.T) {
	d := draw(2)
	blocked := 0
	const cases = 3000
	for range cases {
		s := d.wall()
		if !agree(t, s, d.objective(s.Vars)) {
			blocked++
		}
	}
	t.Logf("%d of %d cannot be", blocked, cases)
	require.Greater(t, blocked, cases/5)
	require.Less(t, blocked, cases*4/5)
}
