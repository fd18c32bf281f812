package solver

import (
	"fmt"
	"testing"
)

var benchWalls = []struct {
	name string
	say  []string
}{
	{"feasible", []string{"wall height = 48 in", "gap = 2-1/2 in", "span = 149 in", "opening = 30 in", "opening side = right"}},
	{"two openings, ten statements", []string{"wall height = 48 in", "rail size = 2x6", "gap in 2 in..3 in", "bottom gap = gap",
		"span = 300 in", "openings = 2", "opening = 30 in", "opening 1 side = left", "opening 2 from right = 60 in", "bay <= 96 in"}},
	{"three openings", []string{"wall height = 48 in", "span = 600 in", "openings = 3", "opening = 36 in", "opening 1 side = left",
		"opening 2 from left = 200 in", "opening 3 side = right", "bay <= 96 in"}},
	{"blocked once", []string{"wall height = 50 in", "rails = 7", "bottom gap = gap"}},
	{"blocked six times", []string{"wall height = 48 in", "rails = 7", "gap = 3 in", "bottom gap = 4 in", "span = 60 in",
		"opening = 30 in", "bay >= 40 in", "added posts = 2", "bays = 3"}},
	{"linked", []string{"wall height = 48 in", "gap = 2-1/2 in", "span = 149 in", "opening >= 12 * gap"}},
}

func BenchmarkSolve(b *testing.B) {
	for _, w := range benchWalls {
		b.Run(w.name, func(b *testing.B) {
			book := bookOf(b, w.say...)
			b.ReportAllocs()
			for b.Loop() {
				Solve(book)
			}
		})
	}
}

func BenchmarkWhyNot(b *testing.B) {
	book := bookOf(b, benchWalls[0].say...)
	base := Solve(book)
	not := []Statement{say(b, "rails = 7")}
	b.ReportAllocs()
	for b.Loop() {
		WhyNot(book, base, not)
	}
}

// BenchmarkGrowth shows how an answer grows with openings, rails and statements.
func BenchmarkGrowth(b *testing.B) {
	for k := 0; k <= MostOpenings; k++ {
		say := []string{"wall height = 48 in", "span = 600 in", fmt.Sprintf("openings = %d", k)}
		for i := 1; i <= k; i++ {
			say = append(say, fmt.Sprintf("opening %d from left = %d in", i, 100*i))
		}
		b.Run(fmt.Sprintf("openings=%d", k), func(b *testing.B) { benchBook(b, bookOf(b, say...)) })
	}
	for _, h := range []int{24, 48, 96, 144} {
		b.Run(fmt.Sprintf("height=%d", h), func(b *testing.B) { benchBook(b, bookOf(b, fmt.Sprintf("wall height = %d in", h))) })
	}
	for _, n := range []int{10, 50, 200} {
		var say []string
		for i := 1; i <= n; i++ {
			say = append(say, fmt.Sprintf("bay %d <= %d in", 1+i%40, 40+i), fmt.Sprintf("gap >= 2-%d/1000 in", i))
		}
		b.Run(fmt.Sprintf("statements=%d", n), func(b *testing.B) {
			benchBook(b, bookOf(b, append(say[:n], "span = 3000 in", "wall height = 48 in")...))
		})
	}
}

func benchBook(b *testing.B, book Book) {
	b.ReportAllocs()
	for b.Loop() {
		Solve(book)
	}
}
