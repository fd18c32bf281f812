package main

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/explain"
	"saywright/solver"
)

// someTalks are the beginnings of fuzzed conversations; those of the transcripts are added.
var someTalks = []string{
	"wall 48 high\ngap 2.5\nwhy six\nwhat if gap = 2 in\ntake that\nundo",
	"span 149, opening 30 on the right\nshow me\nwhat do I cut\nnext\nnext",
	"rails = 7\nwall 50\ntake 2\nteach gap\n33\n17 and 6",
	"wall 4 high\n1\ncheck gap = 2 in\nrecap\nforget gap\nstart over",
	"units = metric\nwall 1.2 m high\ngap sixty\n2\nask options as csv",
	"gap = 1/0\nrails = 1000000000\n\x00\xff\t\ngap += 3\nredo\nsame as north wall",
	"rails0\xb5\xb5wAll/5 = 7",
	"north wall: gap 2\nsouth wall: wall 40\nsame as north wall\nsave a\ngap 3\ncompare a, this\nopen a\ndraw to a",
}

func addTalks(f *testing.F) {
	for _, talk := range someTalks {
		f.Add(talk)
	}
	files, err := filepath.Glob("../../testdata/talk/*.txt")
	require.NoError(f, err)
	for _, name := range files {
		text, err := os.ReadFile(name)
		require.NoError(f, err)
		var said []string
		for _, line := range strings.Split(string(text), "\n") {
			if line, ok := strings.CutPrefix(line, "> "); ok && len(said) < 12 {
				said = append(said, line)
			}
		}
		f.Add(strings.Join(said, "\n"))
	}
}

// FuzzTalk holds a conversation of any lines. Every line has an answer that is whole, every sum in it is true, a line that
// is unclear changes nothing, and undo brings back what a line changed.
func FuzzTalk(f *testing.F) {
	addTalks(f)
	f.Fuzz(func(t *testing.T, conversation string) {
		talk := testTalkIn(t.TempDir(), &explain.Options{Width: 60})
		talk.write = func([]file) error { return nil }
		for i, line := range strings.Split(conversation, "\n") {
			if i == 12 {
				return
			}
			before, past := talk.now, len(talk.past)
			a := talk.Reply(line)
			checkAnswer(t, talk, before, a)
			checkSums(t, a)
			if a.Verdict != solver.Unclear && len(talk.past) == past+1 && a.To.Topic != "redo" {
				was := *talk
				talk.Reply("undo")
				require.True(t, before.same(talk.now), "%q is not undone", line)
				*talk = was
			}
		}
	})
}

// FuzzPipe says any bytes to a program's conversation: one JSON object for each line, in order, and nothing else.
func FuzzPipe(f *testing.F) {
	addTalks(f)
	f.Fuzz(func(t *testing.T, lines string) {
		if strings.Count(lines, "\n") > 12 {
			return
		}
		talk := testTalkIn(t.TempDir(), &explain.Options{Width: 80})
		talk.write = func([]file) error { return nil }
		var out bytes.Buffer
		status := pipe(strings.NewReader(lines), &out, talk, screen{json: true})
		require.Contains(t, []int{0, 1}, status)
		want := strings.Count(lines, "\n")
		if last := lines[strings.LastIndex(lines, "\n")+1:]; last != "" && last != "\r" {
			want++
		}
		require.Equal(t, want, strings.Count(out.String(), "\n"))
		for _, line := range strings.Split(strings.TrimSuffix(out.String(), "\n"), "\n") {
			require.True(t, want == 0 || json.Valid([]byte(line)), "%s", line)
		}
	})
}
