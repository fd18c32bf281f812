package exact

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestSmoke(t *testing.T) {
	r := func(terms []Term, rel Rel, rhs string, rule int) Row { return Row{terms, rel, Must(rhs), rule} }
	x, y := Term{0, Int(1)}, Term{1, Int(1)}
	s := &System{Vars: 2, Rows: []Row{r([]Term{x, y}, LE, "10", 0), r([]Term{x}, GT, "3", 1), r([]Term{y}, GE, "5/2", 2), r([]Term{x, {1, Int(-2)}}, EQ, "0", 3)}}
	p := Prepare(s)
	require.True(t, p.Feasible())
	require.NoError(t, CheckPoint(s, p.Point()))
	for _, o := range [][]Term{{x}, {y}, {x, y}} {
		b, c := p.Min(o)
		t.Log(b.Val, b.Open, b.None, c)
		require.NoError(t, CheckBound(s, o, true, b, c))
		b, c = p.Max(o)
		t.Log(b.Val, b.Open, b.None, c)
		require.NoError(t, CheckBound(s, o, false, b, c))
	}
	s.Rows = append(s.Rows, r([]Term{y, x}, GT, "10", 4))
	pt, c := Solve(s)
	require.Nil(t, pt)
	require.NoError(t, Check(s, c))
	t.Log(c, c.Rules(s))
}
