package exact

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// Within a limit on the work nothing false is said: either the whole answer, or that the search stopped.
func TestWorkLimit(t *testing.T) {
	d := draw(80)
	stopped := 0
	for range 400 {
		s := d.large(8, 30, d.between(0, 2))
		obj := d.objective(s.Vars)
		free := Prepare(s)
		want, _ := free.Min(obj)
		for limit := range free.Pivots() + 1 {
			p := PrepareWithin(s, limit)
			require.LessOrEqual(t, p.Pivots(), limit)
			if p.Stopped() {
				stopped++
				require.False(t, p.Feasible())
				require.Nil(t, p.Certificate())
				continue
			}
			require.Equal(t, free.Feasible(), p.Feasible())
			if !p.Feasible() {
				require.NoError(t, Check(s, p.Certificate()))
				continue
			}
			got, c := p.Min(obj)
			if p.Stopped() {
				stopped++
				require.True(t, got.None)
				require.Nil(t, c)
				require.Nil(t, p.MinRay(obj))
				continue
			}
			requireBound(t, want, got, s, obj)
		}
		require.False(t, free.Stopped())
	}
	require.Greater(t, stopped, 1000)
}

// Where there is no end, a direction shows it, and the checker takes no other.
func TestRays(t *testing.T) {
	d := draw(81)
	seen := 0
	for range 4000 {
		s := d.system()
		obj := d.objective(s.Vars)
		p := Prepare(s)
		for _, falls := range []bool{true, false} {
			end, ray := p.Max, p.MaxRay
			if falls {
				end, ray = p.Min, p.MinRay
			}
			b, _ := end(obj)
			r := ray(obj)
			require.Equal(t, b.None && p.Feasible(), r != nil, show(s))
			if r == nil {
				continue
			}
			seen++
			require.NoError(t, CheckRay(s, obj, falls, r), show(s))
			require.Error(t, CheckRay(s, obj, !falls, r))
			require.Error(t, CheckRay(s, obj, falls, r[1:]))
			barred := &System{Vars: s.Vars, Rows: append(s.Rows[:len(s.Rows):len(s.Rows)], Row{Terms: obj, Rel: LE})}
			if falls {
				barred.Rows[len(s.Rows)].Rel = GE
			}
			require.Error(t, CheckRay(barred, obj, falls, r))
		}
	}
	require.Greater(t, seen, 1000)
}

// A large system, float in none of it: points and proofs pass the checker.
func TestLargeSystems(t *testing.T) {
	d := draw(82)
	held := 0
	for range 60 {
		s := d.large(20, 80, d.between(0, 2))
		p := Prepare(s)
		if !p.Feasible() {
			require.NoError(t, Check(s, p.Certificate()))
			continue
		}
		held++
		require.NoError(t, CheckPoint(s, p.Point()))
		for v := range 4 {
			obj := []Term{{v, Int(1)}}
			if b, c := p.Min(obj); b.None {
				require.NoError(t, CheckRay(s, obj, true, p.MinRay(obj)))
			} else {
				require.NoError(t, CheckBound(s, obj, true, b, c))
			}
			_, at := p.MaxPoint(obj)
			require.NoError(t, CheckPoint(s, at))
		}
	}
	require.Greater(t, held, 15)
	require.Less(t, held, 50)
}
