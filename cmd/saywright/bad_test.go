package main

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"saywright/explain"
	"saywright/solver"
)

// bad is what nobody means to say. Each is said after a wall that fits, and must cost nothing.
var bad = map[string]string{
	"empty":                   "",
	"blank":                   " \t ",
	"a megabyte":              strings.Repeat("gap 2 ", 1<<20/6),
	"a megabyte of one word":  strings.Repeat("a", 1<<20),
	"a megabyte of nines":     strings.Repeat("9", 1<<20),
	"a thousand digits":       "gap = " + strings.Repeat("7", 1000) + " in",
	"a thousand digits below": "gap = 1/" + strings.Repeat("7", 1000) + " in",
	"a thousand decimals":     "wall height = 48." + strings.Repeat("3", 1000) + " in",
	"nothing below":           "gap = 1/0",
	"nothing below in inches": "gap = 1/0 in",
	"a billion rails":         "rails = 1000000000",
	"rails past counting":     "rails = 1" + strings.Repeat("0", 60),
	"a billion posts":         "added posts = 1000000000",
	"a billion openings":      "openings = 1000000000",
	"a billion stiffeners":    "stiffeners = 1000000000",
	"a huge span":             "span = 999999999999999999999 in",
	"less than nothing":       "wall height = -48 in",
	"a contradiction":         "gap = 2 in; gap = 3 in",
	"limits that cross":       "gap >= 3 in; gap <= 2 in",
	"a range turned around":   "gap in 3 in..2 in",
	"control characters":      "gap \x01\x02\x07\x1b[31m= 2 in",
	"NUL":                     "gap\x00 = 2 in",
	"not UTF-8":               "gap = 2\xff in",
	"half a character":        "gap = 2\xe2\x80",
	"from right to left":      "\u202egap = 2 in\u202c",
	"no width":                "g\u200bap = 2 in",
	"a mark on each letter":   "g\u0301a\u0301p\u0301 = 2 in",
	"signs":                   "((((((((((= = = .. ;;; ,,,",
	"only semicolons":         strings.Repeat(";", 5000),
	"only brackets":           strings.Repeat("(", 5000),
	"only words":              strings.Repeat("what if ", 1000),
	"only commands":           strings.Repeat("undo; redo; ", 700),
	"leaning on itself":       "gap = gap",
	"leaning in a ring":       "gap = bottom gap; bottom gap = gap + 1 in",
	"a percent of nothing":    "spare = 1000000000000%",
	"a file far away":         "open ../../../../etc/passwd",
	"a way that is not there": "take 99999999999999999999",
	"a rail that is not":      "rail 99 top = 20 in",
	"a bay that is not":       "bay 99 = 20 in",
	"a wall of a name":        strings.Repeat("north ", 1000) + "wall: gap = 2 in",
	"a drop in tape":          "tape = 0 in",
	"a tape of a mile":        "tape = 63360 in",
	"a kerf of a mile":        "kerf = 63360 in; ask cuts; ask shopping",
}

// stood48 is a wall that fits: 6 × 5-1/2 + 6 × 2-1/2 = 48 (check value of the trade, common practice, no source).
const stood48 = "wall height = 48 in; gap = 2-1/2 in; span = 144 in"

func TestBadInputCostsNothing(t *testing.T) {
	slowest, which := time.Duration(0), ""
	for name, line := range bad {
		t.Run(name, func(t *testing.T) {
			talk := testTalk(t, &explain.Options{Width: 80})
			t.Chdir(t.TempDir())
			talk.Reply(stood48)
			before := talk.now
			start := time.Now()
			a := talk.Reply(line)
			if took := time.Since(start); took > slowest {
				slowest, which = took, name
			}
			require.Less(t, time.Since(start), 10*time.Second) // the goal is one; see the log. More is a hang.
			checkAnswer(t, talk, before, a)
			require.Equal(t, line, a.Said)

			checkSums(t, a)
			require.False(t, talk.now.empty(), "nothing that stands is lost")
			talk.Reply("undo")
			require.NotPanics(t, func() { talk.Reply("ask layout; ask options; recap") })
		})
	}
	t.Logf("slowest answer to bad input: %q, %v", which, slowest)
}

// checkAnswer holds an answer to what every answer must be.
func checkAnswer(t *testing.T, talk *Talk, before standing, a *solver.Answer) {
	t.Helper()
	require.NotEmpty(t, a.Text, "%q", a.Said)
	require.True(t, utf8.ValidString(a.Text), "%q", a.Said)
	require.NotContains(t, a.Text, "\x00")
	require.NotNil(t, a.Heard, "%q", a.Said)
	require.Contains(t, []solver.Verdict{solver.Fits, solver.Blocked, solver.Open, solver.Unclear}, a.Verdict, "%q", a.Said)
	if a.Verdict == solver.Unclear {
		require.NotNil(t, a.Ask, "%q", a.Said)
		require.NotEmpty(t, a.Ask.Text, "%q", a.Said)
		require.True(t, before.same(talk.now), "%q is unclear and changed something", a.Said)
	}
	_, err := json.Marshal(a)
	require.NoError(t, err, "%q", a.Said)
}

func TestAMegabyteLineInAPipe(t *testing.T) {
	start := time.Now()
	answers, status := piped(t, "gap = 2 in\n"+bad["a megabyte"]+"\n"+bad["a megabyte of nines"]+"\nrecap\n")
	t.Logf("two megabyte lines and two others: %v", time.Since(start))
	require.Len(t, answers, 4)
	for _, a := range answers[1:3] {
		require.Equal(t, "unclear", a.Verdict)
		require.NotEmpty(t, a.Ask.Text)
		require.Less(t, len(*a.Text), 2000, "a clear answer is short")
	}
	require.Equal(t, []string{"recap"}, answers[3].Heard)
	require.Contains(t, *answers[3].Text, "gap = 2 in", "nothing lost")
	require.Zero(t, status)
}

func TestManyThingsSaidStillAnswer(t *testing.T) {
	talk := testTalk(t, &explain.Options{Width: 80})
	start := time.Now()
	for i := range 200 {
		a := talk.Reply(fmt.Sprintf("gap = %d/16 in", 32+i%32))
		require.NotEqual(t, solver.Unclear, a.Verdict)
	}
	t.Logf("200 lines: %v", time.Since(start))
	for range 200 {
		require.Equal(t, "undo", talk.Reply("undo").To.Topic)
	}
	require.True(t, talk.now.empty())
	require.Equal(t, "nothing to undo", talk.Reply("undo").Ask.Key)
	for range 200 {
		talk.Reply("redo")
	}
	require.Equal(t, []string{"gap = 2-7/16 in"}, forms(talk.now.book(""))) // i is 199 = 6 × 32 + 7, and 39/16 is 2-7/16
}
