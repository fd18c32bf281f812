package main

import (
	"strings"
	"testing"
	"unicode/utf8"

	"saywright/explain"
	"saywright/solver"
)

// FuzzTalk holds a conversation of any lines: every line has an answer with a verdict and words, and none crashes.
func FuzzTalk(f *testing.F) {
	for _, seed := range []string{
		"wall 48 high\ngap 2.5\nwhy six\nwhat if gap = 2 in\ntake that\nundo",
		"span 149, opening 30 on the right\nshow me\nwhat do I cut\nnext\nnext",
		"rails = 7\nwall 50\ntake 2\nteach gap\n33\n17 and 6",
		"wall 4 high\n1\ncheck gap = 2 in\nrecap\nforget gap\nstart over",
		"units = metric\nwall 1.2 m high\ngap sixty\n2\nask options as csv",
		"gap = 1/0\nrails = 1000000000\n\x00\xff\t\ngap += 3\nredo\nsame as north wall",
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, conversation string) {
		talk := testTalkIn(t.TempDir(), &explain.Options{Width: 60})
		for i, line := range strings.Split(conversation, "\n") {
			if i == 12 {
				return
			}
			if strings.Contains(line, "to ") && (strings.Contains(line, "draw") || strings.Contains(line, "print")) {
				continue // would write files
			}
			a := talk.Reply(line)
			if a == nil || a.Text == "" || !utf8.ValidString(a.Text) {
				t.Fatalf("%q: no words", line)
			}
			switch a.Verdict {
			case solver.Fits, solver.Blocked, solver.Open, solver.Unclear:
			default:
				t.Fatalf("%q: verdict %q", line, a.Verdict)
			}
		}
	})
}
