package exact

import (
	"fmt"
	"testing"
)

func walls(n int) []*System {
	d := draw(3)
	out := make([]*System, n)
	for i := range out {
		out[i] = d.wall()
	}
	return out
}

// One answer solves one such wall for each count of rails, bays and posts: see the time for two hundred.
func BenchmarkSolve200Walls(b *testing.B) {
	b.ReportAllocs()
	ws := walls(200)
	for b.Loop() {
		for _, w := range ws {
			Solve(w)
		}
	}
}

func BenchmarkPrepareAndAllEnds(b *testing.B) {
	b.ReportAllocs()
	ws := walls(200)
	for b.Loop() {
		for _, w := range ws {
			p := Prepare(w)
			for v := range w.Vars {
				p.Min([]Term{{v, Int(1)}})
				p.Max([]Term{{v, Int(1)}})
			}
		}
	}
}

// How the time grows with unknowns and rows, where every row is a random sum: walls are far from that.
func BenchmarkSolveLarge(b *testing.B) {
	for _, size := range []struct{ vars, rows int }{{8, 40}, {16, 80}, {25, 120}} {
		b.Run(fmt.Sprintf("%dx%d", size.vars, size.rows), func(b *testing.B) {
			d := draw(4)
			systems := make([]*System, 16)
			feasible, pivots := 0, 0
			for i := range systems {
				systems[i] = d.large(size.vars, size.rows, i%3)
				p := Prepare(systems[i])
				pivots += p.Pivots()
				if p.Feasible() {
					feasible++
				}
			}
			b.ReportAllocs()
			for i := 0; b.Loop(); i++ {
				Solve(systems[i%len(systems)])
			}
			b.ReportMetric(float64(pivots)/float64(len(systems)), "pivots/op")
			b.ReportMetric(float64(feasible)/float64(len(systems)), "feasible")
		})
	}
}

// All smallest conflicts of a wall, of twelve to nineteen rules.
func BenchmarkConflicts(b *testing.B) {
	b.ReportAllocs()
	ws := walls(200)
	calls, sets := 0, 0
	for i := 0; b.Loop(); i++ {
		s := ws[i%len(ws)]
		found, _ := Conflicts(len(s.Rows), nil, func(on []bool) (bool, []int) {
			calls++
			part, _ := s.kept(on)
			point, cert := Solve(part)
			if point != nil {
				return true, nil
			}
			return false, cert.Rules(part)
		}, 10000)
		sets += len(found)
	}
	b.ReportMetric(float64(calls)/float64(b.N), "calls/op")
	b.ReportMetric(float64(sets)/float64(b.N), "conflicts/op")
}

func BenchmarkCheck(b *testing.B) {
	b.ReportAllocs()
	var systems []*System
	var certs []Certificate
	for _, s := range walls(400) {
		if _, c := Solve(s); c != nil {
			systems, certs = append(systems, s), append(certs, c)
		}
	}
	for i := 0; b.Loop(); i++ {
		if err := Check(systems[i%len(systems)], certs[i%len(systems)]); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkCheckPoint(b *testing.B) {
	b.ReportAllocs()
	for _, s := range walls(400) {
		if point, _ := Solve(s); point != nil {
			for b.Loop() {
				if err := CheckPoint(s, point); err != nil {
					b.Fatal(err)
				}
			}
			return
		}
	}
}
