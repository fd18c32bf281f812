package grammar

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// A sentence is taken by what its words are about, wherever they stand.
func TestGist(t *testing.T) {
	requireReads(t, Context{}, map[string]string{
		"I should be grateful to learn what you would suggest buying.":           "ask shopping",
		"The store nearby sells its boards in lengths of 8, 10, and 16 feet.":    "stock = 96 in, 120 in, 192 in",
		"Could I please have the list of cuts as a spreadsheet?":                 "ask cuts as csv",
		"what should worry me about this design":                                 "ask cautions",
		"the timber merchant has run out of 4.2 m lengths":                       "stock -= 4200 mm",
		"on the architect's drawing the wall is 1.25 m tall and has seven slats": "check wall height = 1250 mm, rails = 7",
		"Where does a man begin on a job like this?":                             "ask steps",
		"we calculate in mm today, the wall gets 1080 high":                      "units = metric; wall height = 1080 mm",
	})
	for _, line := range []string{
		"should I undo that", "Boards are twelve.", "bay 2", "Two inches and a bit between the boards.", "Make the gap two and a half, bare.",
		"the floor's off by an inch", "I have six boards, twelve footers", "we have four ten foot boards",
	} {
		require.Empty(t, Read(line, Context{}).Acts, line)
	}
}

// Every sense that a frame or a mode speaks of has words.
func TestGistSenses(t *testing.T) {
	b := senseBookOf()
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
			_, ok := readNormal(r.normal, Context{})
			require.True(t, ok || strings.HasSuffix(r.normal, " #"), r.normal)
		}
	}
	for _, m := range gistModes {
		b.set(strings.Trim(m.need, "?#") + " " + m.may)
		require.Len(t, b.number, n, "%s: %s | %s", m.act, m.need, m.may)
	}
}

// What is taken by its gist alone says the same as all the rest of the grammar, where both read a line.
func TestGistAgrees(t *testing.T) {
	b, both, differ := senseBookOf(), 0, 0
	for _, p := range phraseLists(t) {
		letters, _ := foldLine(p.said)
		atoms := split(letters)
		for _, set := range setPlain {
			atoms = set(atoms)
		}
		atoms, _ = pastLead(atoms)
		acts, ok := gistOf(fold(pastTail(atoms)), b, Context{})
		if !ok {
			continue
		}
		both++
		if got := Normal(acts); got != strings.Join(p.want, "; ") {
			differ++
			t.Logf("%s: %s\n    want %s\n    gist %s", p.file, p.said, strings.Join(p.want, "; "), got)
		}
	}
	t.Logf("%d of %d lines differ", differ, both)
	require.LessOrEqual(t, differ, 56, "lines that the gist reads otherwise; see them with -v, and bring the number down")
	require.GreaterOrEqual(t, both-differ, 1150)
}
