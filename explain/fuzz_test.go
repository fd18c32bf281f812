package explain

import (
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"saywright/explain/figure"
	"saywright/solver"
)

// Whatever stands in a normal form or a line, it is worded without a panic, and nothing that could move a cursor gets through.
func FuzzWords(f *testing.F) {
	for _, s := range []string{"gap = 2-1/2 in", "opening >= 2 * gap", "have 2x6 144 in x 6", "price screws 100 = 9.00", "left post leans 3/8 in right in 48 in",
		"gap in 2 in..3 in", "measured bay 1 rail 3 = 68-3/8 in", "rails = 99999999999999999999", "gap = 1/0 in", "\x01L1/0\x02", "a: b: c = = d", "x\x03y\x04", ""} {
		f.Add(s, 3)
	}
	f.Fuzz(func(t *testing.T, s string, at int) {
		v := &voice{a: &solver.Answer{}}
		_ = written(v.phrase(s), figure.Style{})
		_ = heard(v.phrase(s), figure.Style{Metric: true})
		_ = v.change(solver.Change{From: s, To: s, By: s})
		require.Empty(t, notSpoken.FindAllString(strings.Map(ascii7, ReadBack([]string{s}, false)), -1))
		a := &solver.Answer{Said: s, Verdict: solver.Unclear, Assumed: []string{s}, Ask: &solver.Question{At: &at, Text: s, Choices: []string{s}, Example: s},
			Facts: []solver.Fact{{Key: "taken", Names: []string{s, s}}}}
		Say(a, Options{Width: 40})
		require.True(t, utf8.ValidString(a.Text))
		for _, r := range a.Text {
			require.False(t, r < ' ' && r != '\n', "%q", a.Text)
		}
	})
}

// ascii7 leaves out letters of other alphabets, which may well be said.
func ascii7(r rune) rune {
	if r > 0x7e {
		return -1
	}
	return r
}
