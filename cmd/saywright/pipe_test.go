package main

import (
	"bytes"
	"encoding/json"
	"io"
	"os"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"saywright/explain"
	"saywright/solver"
)

// reported is an answer as another program reads it.
type reported struct {
	Said    *string
	Heard   []string
	Verdict string
	Text    *string
	Ask     *struct {
		At      *int
		Text    string
		Choices []string
	}
}

// piped says lines in JSON mode and returns the answers and the exit status.
func piped(t *testing.T, lines string) ([]reported, int) {
	t.Helper()
	var out bytes.Buffer
	status := pipe(strings.NewReader(lines), &out, testTalk(t, &explain.Options{Width: 80}), screen{json: true})
	var answers []reported
	for _, line := range strings.Split(strings.TrimSuffix(out.String(), "\n"), "\n") {
		if line == "" {
			continue
		}
		var fields map[string]any
		require.NoError(t, json.Unmarshal([]byte(line), &fields), line)
		for _, always := range []string{"said", "heard", "verdict", "text"} { // answers.md: every answer has them
			require.Contains(t, fields, always, line)
			require.NotNil(t, fields[always], line)
		}
		var a reported
		require.NoError(t, json.Unmarshal([]byte(line), &a))
		answers = append(answers, a)
	}
	return answers, status
}

func TestEachLineHasItsAnswerInOrder(t *testing.T) {
	lines := []string{"gap = 2 in", "", "quit", "rails = 6", "   ", "wall height ~ 48 in", "no such words at all", "start over", "recap"}
	answers, status := piped(t, strings.Join(lines, "\n"))
	require.Len(t, answers, len(lines))
	for i, a := range answers {
		require.Equal(t, lines[i], *a.Said)
		require.NotEmpty(t, *a.Text)
	}
	require.Equal(t, "unclear", answers[1].Verdict)
	require.Equal(t, []string{"quit"}, answers[2].Heard)
	require.Equal(t, []string{"rails = 6"}, answers[3].Heard, "quit ends nothing in a pipe")
	require.Zero(t, status)
}

func TestLineEndings(t *testing.T) {
	answers, _ := piped(t, "gap = 2 in\r\nrails = 6\r\n")
	require.Len(t, answers, 2)
	require.Equal(t, "gap = 2 in", *answers[0].Said)
	answers, _ = piped(t, "\n\n")
	require.Len(t, answers, 2)
	answers, status := piped(t, "")
	require.Empty(t, answers)
	require.Zero(t, status)
}

func TestStatusIsThatOfTheLastAnswer(t *testing.T) {
	for lines, want := range map[string]int{
		"gap = 2 in":                                   0,
		"gap = 2 in\nxyzzy plugh":                      1,
		"xyzzy plugh\ngap = 2 in":                      0,
		"gap = 2 in\n\n":                               0, // an empty line asks for nothing
		"rails = 7\ngap = 3 in\nwall height = 48 in\n": 1, // 7 × 5-1/2 + 6 × 3 = 56-1/2, over 48
		"undo": 0,
	} {
		_, status := piped(t, lines)
		require.Equal(t, want, status, lines)
	}
}

// flushed reports each write, so that a test sees what was flushed before the next line is read.
type flushed chan string

func (f flushed) Write(b []byte) (int, error) {
	f <- string(b)
	return len(b), nil
}

func TestEachAnswerIsFlushedBeforeTheNextLineIsRead(t *testing.T) {
	in, say := io.Pipe()
	out := make(flushed, 8)
	done := make(chan int)
	go func() { done <- pipe(in, out, testTalk(t, &explain.Options{Width: 80}), screen{json: true}) }()
	for _, line := range []string{"gap = 2 in", "recap"} {
		io.WriteString(say, line+"\n")
		select {
		case got := <-out:
			require.Contains(t, got, line)
		case <-time.After(5 * time.Second):
			t.Fatal("no answer before the next line")
		}
	}
	say.Close()
	require.Zero(t, <-done)
}

func TestComparisonsAreReadableInJSON(t *testing.T) {
	var out bytes.Buffer
	require.NoError(t, writeJSON(&out, &solver.Answer{Heard: []string{"gap < 4 in"}}))
	require.Contains(t, out.String(), `"gap < 4 in"`)
	require.Equal(t, 1, strings.Count(out.String(), "\n"))
}

func TestFlags(t *testing.T) {
	read := func(args ...string) (out, errs string, status int) {
		folder := t.TempDir()
		t.Setenv("XDG_DATA_HOME", folder)
		open := func(name string) *os.File {
			f, err := os.Create(folder + "/" + name)
			require.NoError(t, err)
			return f
		}
		in, o, e := open("in"), open("out"), open("errs")
		status = run(args, in, o, e)
		a, _ := os.ReadFile(o.Name())
		b, _ := os.ReadFile(e.Name())
		return string(a), string(b), status
	}
	out, errs, status := read("-h")
	require.Zero(t, status)
	require.Empty(t, errs)
	for _, flag := range []string{"-json", "-width", "-no-color", "-plain", "-version"} {
		require.Contains(t, out, flag)
	}
	for _, wrong := range [][]string{{"-nonsense"}, {"-width", "3"}, {"-width", "wide"}, {"-width"}, {"-json=perhaps"}} {
		out, errs, status = read(wrong...)
		require.Equal(t, 2, status, wrong)
		require.Empty(t, out)
		require.Contains(t, errs, "saywright -h")
		require.NotContains(t, errs, "!")
	}
	out, _, status = read("-version")
	require.Zero(t, status)
	require.True(t, strings.HasPrefix(out, "saywright "))

	out, _, status = read("gap", "=", "2", "in\nrails = 6") // words are joined; lines stay lines
	require.Zero(t, status)
	require.NotContains(t, out, "\x1b", "no color in a file")
	out, _, status = read("-json", "gap = 2 in")
	require.Zero(t, status)
	require.Contains(t, out, `"heard":["gap = 2 in"]`)
	_, _, status = read("xyzzy plugh")
	require.Equal(t, 1, status)
}
