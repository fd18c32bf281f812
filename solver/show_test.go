package solver

import (
	"encoding/json"
	"os"
	"strings"
	"testing"
)

// TestShow prints the answer to a book given in SHOW, statements split by semicolons.
func TestShow(t *testing.T) {
	in := os.Getenv("SHOW")
	if in == "" {
		t.Skip("nothing to show")
	}
	var lines []string
	for _, l := range strings.Split(in, ";") {
		lines = append(lines, strings.TrimSpace(l))
	}
	a := Solve(bookOf(t, lines...))
	b, _ := json.MarshalIndent(a, "", " ")
	t.Log(string(b))
	for _, c := range a.Conflicts {
		t.Log("CONFLICT", c.About, c.Proven, c.Fault)
		for _, r := range c.Rules {
			t.Log("   ", r.Kind, r.Says)
		}
		for _, w := range c.Work {
			t.Log("      ", w.Of, "|", w.Expr.String(), "=", w.Equals, "|", w.Note, "|", w.From)
		}
	}
	for _, w := range a.Ways {
		for _, c := range w.Changes {
			t.Log("WAY", c.From, "->", c.To, "by", c.By, "new", c.New.String())
		}
	}
}
