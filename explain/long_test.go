package explain

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"saywright/explain/figure"
	"saywright/solver"
)

// A megabyte, and numbers of a thousand digits, are worded like anything else; the time each takes is printed.
func TestLongLines(t *testing.T) {
	v := &voice{a: &solver.Answer{}}
	for name, s := range map[string]string{
		"words": strings.Repeat("gap two ", 130_000), "one word": strings.Repeat("x", 1<<20), "digits": "gap = " + strings.Repeat("9", 1000) + " in",
		"fraction": "gap = " + strings.Repeat("9", 1000) + "-1/" + strings.Repeat("7", 1000) + " in", "lists": "stock = " + strings.Repeat("96 in, ", 20_000) + "96 in",
		"signs": strings.Repeat("× ", 1<<18), "marks": strings.Repeat("\x01L1/2\x02", 1<<16),
	} {
		began := time.Now()
		at := len(s) / 2
		a := &solver.Answer{Said: s, Verdict: solver.Unclear, Ask: &solver.Question{At: &at, Text: "What was meant?", Choices: []string{s}}}
		Say(a, Options{})
		_ = written(v.phrase(s), figure.Style{})
		_ = ReadBack([]string{s}, false)
		require.NotEmpty(t, a.Text)
		t.Log(name, time.Since(began))
	}
}
