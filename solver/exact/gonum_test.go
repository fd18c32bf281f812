package exact

import (
	"errors"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/optimize/convex/lp"
)

// A reference library that works in floats knows no strict rows; where it finishes, it must come to the same end.
func TestMinAgreesWithGonum(t *testing.T) {
	d := draw(30)
	got := map[string]int{}
	for range 6000 {
		s := d.closed()
		obj := slices.DeleteFunc(d.objective(s.Vars), func(t Term) bool { return !s.uses(t.Var) })
		best, err := gonumMin(s, obj)
		p := Prepare(s)
		b, _ := p.Min(obj)
		switch {
		case err == nil:
			got["least value"]++
			require.True(t, p.Feasible() && !b.None, show(s))
			require.InDelta(t, best, b.Val.Float(), 1e-6, show(s))
		case errors.Is(err, lp.ErrInfeasible):
			got["infeasible"]++
			require.False(t, p.Feasible(), show(s))
		case errors.Is(err, lp.ErrUnbounded):
			got["unbounded"]++
			require.True(t, p.Feasible() && b.None, show(s))
		default: // it wants rows of full rank and columns that are not 0
			got["not taken"]++
		}
	}
	t.Log(got)
	require.Greater(t, got["least value"], 1500)
	require.Greater(t, got["infeasible"], 500)
	require.Greater(t, got["unbounded"], 300)
}

// closed is a system of up to six unknowns without strict rows.
func (d drawn) closed() *System {
	s := &System{Vars: d.between(1, 6)}
	if d.oneIn(2) {
		box(s)
	}
	for i := range d.between(1, 12) {
		r := Row{Rel: LE, RHS: Int(d.between(-4, 9)), Rule: i}
		if d.oneIn(2) {
			r.Rel, r.RHS = GE, r.RHS.Neg()
		}
		if d.oneIn(8) {
			r.Rel = EQ
		}
		for v := range s.Vars {
			if d.oneIn(2) {
				r.Terms = append(r.Terms, Term{v, Int(d.between(-4, 4))})
			}
		}
		s.Rows = append(s.Rows, r)
	}
	return s
}

// uses reports whether a row has the unknown. The library calls a cost on one without rows unbounded before it looks
// whether anything can be at all.
func (s *System) uses(v int) bool {
	return slices.ContainsFunc(s.Rows, func(r Row) bool {
		return slices.ContainsFunc(r.Terms, func(t Term) bool { return t.Var == v && t.Coef.Sign() != 0 })
	})
}

func gonumMin(s *System, obj []Term) (float64, error) {
	c := dense(s.Vars, obj, 1)
	var g, a []float64
	var h, b []float64
	for _, r := range s.Rows {
		switch r.Rel {
		case LE:
			g, h = append(g, dense(s.Vars, r.Terms, 1)...), append(h, r.RHS.Float())
		case GE:
			g, h = append(g, dense(s.Vars, r.Terms, -1)...), append(h, -r.RHS.Float())
		default:
			a, b = append(a, dense(s.Vars, r.Terms, 1)...), append(b, r.RHS.Float())
		}
	}
	if len(h) == 0 || len(b) > s.Vars {
		return 0, errors.New("not for this library")
	}
	var eq mat.Matrix
	if len(b) > 0 {
		eq = mat.NewDense(len(b), s.Vars, a)
	}
	cost, A, rhs := lp.Convert(c, mat.NewDense(len(h), s.Vars, g), h, eq, b)
	best, _, err := lp.Simplex(cost, A, rhs, 1e-10, nil)
	return best, err
}

func dense(n int, terms []Term, sign float64) []float64 {
	row := make([]float64, n)
	for _, t := range terms {
		row[t.Var] += sign * t.Coef.Float()
	}
	return row
}
