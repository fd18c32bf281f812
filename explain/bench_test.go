package explain

import "testing"

func BenchmarkSay(b *testing.B) {
	t := &testing.T{}
	c := talk(t)
	a := c.line("wall height = 40 in; gap = 2-1/2 in; span = 149 in; opening = 30 in; opening side = right")
	b.ReportAllocs()
	for b.Loop() {
		copied := *a
		Say(&copied, Options{})
	}
}
