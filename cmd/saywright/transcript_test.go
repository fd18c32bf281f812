package main

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/explain"
)

var update = flag.Bool("update", false, "write the answers of this program into the transcripts")

// A transcript is a conversation: "> " begins a line that is said, the answer stands indented below, "#" begins a
// remark. "# width 40" and "# plain" lay out what follows.
const indent = "    "

func testTalk(t *testing.T, show *explain.Options) *Talk { return testTalkIn(t.TempDir(), show) }

func testTalkIn(folder string, show *explain.Options) *Talk {
	talk := newTalk(folder, func() explain.Options { return *show })
	talk.today = func() string { return "2031-05-04" }
	return talk
}

func TestTranscripts(t *testing.T) {
	files, err := filepath.Glob("../../testdata/talk/*.txt")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	sums := 0
	for _, name := range files {
		t.Run(filepath.Base(name), func(t *testing.T) {
			name, err := filepath.Abs(name) // a replay works in a folder of its own
			require.NoError(t, err)
			want, err := os.ReadFile(name)
			require.NoError(t, err)
			got, n := replay(t, string(want))
			sums += n
			if *update {
				require.NoError(t, os.WriteFile(name, []byte(got), 0o644))
				return
			}
			require.Equal(t, string(want), got)
		})
	}
	t.Logf("%d sums evaluated again", sums)
}

// replay says the lines of a transcript and returns it with the answers of this program, and how many sums it held.
func replay(t *testing.T, text string) (string, int) {
	show := &explain.Options{Width: 80}
	talk := testTalk(t, show)
	t.Chdir(t.TempDir())
	var out strings.Builder
	sums := 0
	for _, line := range strings.Split(strings.TrimRight(text, "\n"), "\n") {
		said, isSaid := strings.CutPrefix(line, ">")
		switch {
		case isSaid:
			a := talk.Reply(strings.TrimPrefix(said, " "))
			sums += checkSums(t, a)
			fmt.Fprintf(&out, "%s\n%s\n", line, indented(a.Text))
		case strings.HasPrefix(line, "#"):
			fmt.Fprintln(&out, line)
			fmt.Sscanf(line, "# width %d", &show.Width)
			show.ASCII = show.ASCII || line == "# plain"
		case line == "" && !strings.HasSuffix(out.String(), "\n\n"):
			out.WriteString("\n")
		}
	}
	return strings.TrimRight(out.String(), "\n") + "\n", sums
}

func indented(text string) string {
	var b strings.Builder
	for _, line := range strings.Split(strings.TrimRight(text, "\n"), "\n") {
		b.WriteString(strings.TrimRight(indent+line, " ") + "\n")
	}
	return b.String()
}
