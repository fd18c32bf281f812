package exact

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// Brute force: every point of a grid of halves.
const gridEnd = 8 // from -4 to 4

// onGrid calls f with every point; f must not keep it.
func onGrid(vars int, f func(point []Rat)) {
	point := make([]Rat, vars)
	var fill func(v int)
	fill = func(v int) {
		if v == vars {
			f(point)
			return
		}
		for i := -gridEnd; i <= gridEnd; i++ {
			point[v] = New(int64(i), 2)
			fill(v + 1)
		}
	}
	fill(0)
}

func (r *Row) holds(point []Rat) bool {
	return stands(value(r.Terms, point).Cmp(r.RHS), r.Rel)
}

// gridEnds returns how many points satisfy the system, and the ends of the objective over them.
func gridEnds(s *System, obj []Term) (count int, lo, hi Rat) {
	onGrid(s.Vars, func(point []Rat) {
		for i := range s.Rows {
			if !s.Rows[i].holds(point) {
				return
			}
		}
		z := value(obj, point)
		if count == 0 {
			lo, hi = z, z
		}
		count, lo, hi = count+1, Min(lo, z), Max(hi, z)
	})
	return count, lo, hi
}

// box keeps every unknown on the grid's ground.
func box(s *System) {
	for v := range s.Vars {
		s.Rows = append(s.Rows, Row{[]Term{{v, Int(1)}}, GE, Int(-gridEnd / 2), Background}, Row{[]Term{{v, Int(1)}}, LE, Int(gridEnd / 2), Background})
	}
}

// No grid point may be where the solver says that nothing can be, or past an end it gives.
func TestGridStaysWithinTheEnds(t *testing.T) {
	d := draw(40)
	held, empty := 0, 0
	for range 600 {
		s := d.system()
		box(s)
		obj := d.objective(s.Vars)
		count, lo, hi := gridEnds(s, obj)
		p := Prepare(s)
		if !p.Feasible() {
			empty++
			require.Zero(t, count, show(s))
			continue
		}
		if count == 0 {
			continue
		}
		held++
		least, _ := p.Min(obj)
		most, _ := p.Max(obj)
		require.False(t, least.None || most.None, show(s))
		require.True(t, least.Val.Less(lo) || least.Val.Eq(lo) && !least.Open, show(s))
		require.True(t, hi.Less(most.Val) || most.Val.Eq(hi) && !most.Open, show(s))
	}
	require.Greater(t, held, 150)
	require.Greater(t, empty, 150)
}

// Rows that hold one unknown against another, x - y <= c, have all their corners on the grid that the right sides lie on
// (their matrix is totally unimodular): there the grid decides, and its ends are the ends.
func TestGridDecidesDifferences(t *testing.T) {
	d := draw(41)
	held, empty := 0, 0
	for range 600 {
		s := &System{Vars: d.between(2, 3)}
		for i := range d.between(2, 6) {
			x := d.IntN(s.Vars)
			y := (x + d.between(1, s.Vars-1)) % s.Vars
			rel := LE + Rel(d.IntN(2))
			if d.oneIn(6) {
				rel = EQ
			}
			s.Rows = append(s.Rows, Row{[]Term{{x, Int(1)}, {y, Int(-1)}}, rel, New(int64(d.between(-7, 7)), 2), i})
		}
		box(s)
		obj := []Term{{0, Int(d.between(-3, 3))}, {1, Int(d.between(-3, 3))}}
		count, lo, hi := gridEnds(s, obj)
		p := Prepare(s)
		require.Equal(t, count > 0, p.Feasible(), show(s))
		if count == 0 {
			empty++
			continue
		}
		held++
		least, _ := p.Min(obj)
		most, _ := p.Max(obj)
		requireBound(t, Bound{Val: lo}, least, s, obj)
		requireBound(t, Bound{Val: hi}, most, s, obj)
	}
	require.Greater(t, held, 150)
	require.Greater(t, empty, 150)
}
