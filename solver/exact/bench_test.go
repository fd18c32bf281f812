package exact

import "testing"

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

func BenchmarkSolveLarge(b *testing.B) {
	d := draw(4)
	for _, size := range []struct {
		name       string
		vars, rows int
	}{{"8x40", 8, 40}, {"16x80", 16, 80}, {"25x120", 25, 120}, {"40x250", 40, 250}} {
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
		b.Run(size.name, func(b *testing.B) {
			b.ReportAllocs()
			i := 0
			for b.Loop() {
				Solve(systems[i%len(systems)])
				i++
			}
			b.ReportMetric(float64(pivots)/float64(len(systems)), "pivots/op")
			b.ReportMetric(float64(feasible)/float64(len(systems)), "feasible")
		})
	}
}
