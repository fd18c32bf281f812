package exact

import (
	"fmt"
	"slices"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"
)

// ends is what may be said of a system and does not depend on how it is written.
type ends struct {
	feasible bool
	lo, hi   Bound
}

func endsOf(s *System, obj []Term) ends {
	p := Prepare(s)
	e := ends{feasible: p.Feasible()}
	if e.feasible {
		e.lo, _ = p.Min(obj)
		e.hi, _ = p.Max(obj)
	}
	return e
}

func (e ends) String() string {
	side := func(b Bound) string {
		if b.None {
			return "none"
		}
		return fmt.Sprint(b.Val, b.Open)
	}
	return fmt.Sprint(e.feasible, side(e.lo), side(e.hi))
}

// Ways to write a system that say the same.
func TestWritingItOtherwiseChangesNothing(t *testing.T) {
	d := draw(70)
	for range 4000 {
		s := d.system()
		if d.oneIn(4) {
			s = d.wall()
		}
		obj := d.objective(s.Vars)
		want := endsOf(s, obj).String()
		require.Equal(t, want, endsOf(d.shuffled(s), obj).String(), show(s))
		require.Equal(t, want, endsOf(d.rescaled(s), obj).String(), show(s))
		require.Equal(t, want, endsOf(d.withImplied(s), obj).String(), show(s))
		turned, turnedObj := d.renumbered(s, obj)
		require.Equal(t, want, endsOf(turned, turnedObj).String(), show(s))
	}
}

func (d drawn) shuffled(s *System) *System {
	out := &System{Vars: s.Vars, Rows: slices.Clone(s.Rows)}
	d.Shuffle(len(out.Rows), func(i, j int) { out.Rows[i], out.Rows[j] = out.Rows[j], out.Rows[i] })
	return out
}

var turnedRound = map[Rel]Rel{LE: GE, GE: LE, EQ: EQ, LT: GT, GT: LT}

// times is the row multiplied by f, which is not 0.
func (r Row) times(f Rat) Row {
	out := Row{Rel: r.Rel, RHS: r.RHS.Mul(f), Rule: r.Rule}
	for _, t := range r.Terms {
		out.Terms = append(out.Terms, Term{t.Var, t.Coef.Mul(f)})
	}
	if f.Sign() < 0 {
		out.Rel = turnedRound[r.Rel]
	}
	return out
}

func (d drawn) rescaled(s *System) *System {
	out := &System{Vars: s.Vars}
	for _, r := range s.Rows {
		r = r.times(d.coef())
		slices.Reverse(r.Terms)
		if len(r.Terms) > 0 { // the first term in two parts
			t := r.Terms[0]
			r.Terms[0].Coef = t.Coef.Sub(New(1, 3))
			r.Terms = append(r.Terms, Term{t.Var, New(1, 3)})
		}
		out.Rows = append(out.Rows, r)
	}
	return out
}

// withImplied has one row more, which follows from two others.
func (d drawn) withImplied(s *System) *System {
	sum := Row{Rel: LE, Rule: len(s.Rows)}
	for range 2 {
		r := s.Rows[d.IntN(len(s.Rows))]
		f := Int(d.between(1, 5))
		if r.Rel == GE || r.Rel == GT {
			f = f.Neg()
		}
		r = r.times(f)
		sum.Terms = append(sum.Terms, r.Terms...)
		sum.RHS = sum.RHS.Add(r.RHS)
	}
	sum.RHS = sum.RHS.Add(Int(d.between(0, 1)))
	return &System{Vars: s.Vars, Rows: append(slices.Clone(s.Rows), sum)}
}

func (d drawn) renumbered(s *System, obj []Term) (*System, []Term) {
	to := d.Perm(s.Vars)
	move := func(terms []Term) []Term {
		var out []Term
		for _, t := range terms {
			out = append(out, Term{to[t.Var], t.Coef})
		}
		return out
	}
	out := &System{Vars: s.Vars}
	for _, r := range s.Rows {
		r.Terms = move(r.Terms)
		out.Rows = append(out.Rows, r)
	}
	return out, move(obj)
}

// Inches to millimeters: where every row adds up lengths, all limits grow by 25.4 and so do the ends.
func TestMillimetersAreInches(t *testing.T) {
	d := draw(71)
	mm := Must("25.4")
	for range 1000 {
		s := d.wall()
		obj := d.objective(s.Vars)
		in := endsOf(s, obj)
		out := &System{Vars: s.Vars}
		for _, r := range s.Rows {
			r.RHS = r.RHS.Mul(mm)
			out.Rows = append(out.Rows, r)
		}
		in.lo.Val, in.hi.Val = in.lo.Val.Mul(mm), in.hi.Val.Mul(mm)
		require.Equal(t, in.String(), endsOf(out, obj).String(), show(s))
	}
}

func TestRemovingARuleNeverBreaks(t *testing.T) {
	d := draw(72)
	for range 2000 {
		s := d.system()
		if point, _ := Solve(s); point == nil {
			continue
		}
		i := d.IntN(len(s.Rows))
		less := &System{Vars: s.Vars, Rows: slices.Delete(slices.Clone(s.Rows), i, i+1)}
		point, cert := Solve(less)
		require.NotNil(t, point, show(less))
		require.Nil(t, cert)
	}
}

// said is everything that a system is answered, in bytes.
func said(s *System, obj []Term) string {
	point, cert := Solve(s)
	p := Prepare(s)
	lo, c1 := p.Min(obj)
	hi, c2 := p.Max(obj)
	_, at := p.MinPoint(obj)
	return fmt.Sprint(point, cert, lo, c1, hi, c2, at, p.Point(), p.MinRay(obj))
}

// The same answer every time, whatever was asked before, and with several at a time.
func TestSameInputSameBytes(t *testing.T) {
	d := draw(73)
	var systems []*System
	var objs [][]Term
	var want []string
	for range 300 {
		s := d.system()
		if d.oneIn(3) {
			s = d.wall()
		}
		systems, objs = append(systems, s), append(objs, d.objective(s.Vars))
		want = append(want, said(s, objs[len(objs)-1]))
	}
	var wait sync.WaitGroup
	for range 4 {
		order := d.Perm(len(systems))
		wait.Go(func() {
			for _, i := range order {
				if got := said(systems[i], objs[i]); got != want[i] {
					t.Errorf("got %s, want %s", got, want[i])
				}
			}
		})
	}
	wait.Wait()
}

// A point once given stays as it was, and no objective hinders the next.
func TestObjectivesDoNotDisturbEachOther(t *testing.T) {
	d := draw(74)
	for range 1000 {
		s := d.wall()
		p := Prepare(s)
		if !p.Feasible() {
			continue
		}
		before := fmt.Sprint(p.Point())
		for range 6 {
			obj := d.objective(s.Vars)
			fresh := endsOf(s, obj)
			lo, _ := p.Min(obj)
			hi, _ := p.Max(obj)
			require.Equal(t, fresh.String(), ends{true, lo, hi}.String(), show(s))
		}
		require.Equal(t, before, fmt.Sprint(p.Point()))
	}
}
