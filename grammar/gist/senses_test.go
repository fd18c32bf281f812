package gist

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Every sense that a frame or a mode speaks of has words.
func TestGistSenses(t *testing.T) {
	b := SenseBookOf()
	for _, l := range strings.Split(strings.Join(gistWords, "\n"), "\n") {
		if name, _, ok := strings.Cut(l, ":"); ok {
			for _, s := range strings.Split(name, "+") {
				b.set(s)
			}
		}
	}
	b.sense("change") // put in where a figure tells a change
	n := len(b.number)
	for _, list := range gistNames {
		for _, r := range list {
			b.set(r.with + " " + strings.Trim(r.named, "-") + " " + r.may)
			require.Len(t, b.number, n, "%s: %s | %s | %s", r.plain, r.with, r.named, r.may)
		}
	}
	for _, list := range gistLines {
		for _, r := range list {
			b.set(r.need + " " + r.may)
			require.Len(t, b.number, n, "%s: %s | %s", r.normal, r.need, r.may)
			_, ok := parse.ReadNormal(r.normal, act.Context{})
			require.True(t, ok || strings.HasSuffix(r.normal, " #"), r.normal)
		}
	}
	for _, m := range gistModes {
		b.set(strings.Trim(m.need, "?#") + " " + m.may)
		require.Len(t, b.number, n, "%s: %s | %s", m.act, m.need, m.may)
	}
}
