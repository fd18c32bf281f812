package askback

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestQuestionsStandOnce holds the words of every kind of question to one place: worded elsewhere, it would be asked without its kind, and nothing would answer it.
func TestQuestionsStandOnce(t *testing.T) {
	files, err := filepath.Glob("../*.go")
	require.NoError(t, err)
	below, err := filepath.Glob("../*/*.go")
	require.NoError(t, err)
	literal := regexp.MustCompile("\"(?:[^\"\\\\]|\\\\.)*\"|`[^`]*`")
	for _, f := range append(files, below...) {
		if filepath.Base(f) == "askedback.go" || strings.HasSuffix(f, "_test.go") {
			continue
		}
		text, err := os.ReadFile(f)
		require.NoError(t, err)
		said := slices.DeleteFunc(strings.Split(string(text), "\n"), func(l string) bool { return strings.HasPrefix(strings.TrimSpace(l), "//") })
		for _, quoted := range literal.FindAllString(strings.Join(said, "\n"), -1) {
			for kind, row := range questionTexts {
				for _, part := range strings.Split(row.text, "%") {
					require.False(t, len(part) > 6 && strings.Contains(quoted, part), "%s words the question %q by itself: %s", f, kind, quoted)
				}
			}
		}
	}
}

// TestQuestionsAreShort holds every question that is worded anywhere in the grammar to under 15 words.
func TestQuestionsAreShort(t *testing.T) {
	worded := regexp.MustCompile(`(?:OpenQuestion\(|Text:\s*|AskedBack\([^"]*)"((?:[^"\\\\]|\\\\.)*)"`)
	below, err := filepath.Glob("../*/*.go")
	require.NoError(t, err)
	files, err := filepath.Glob("../*.go")
	require.NoError(t, err)
	n := 0
	for _, f := range append(files, below...) {
		if strings.HasSuffix(f, "_test.go") {
			continue
		}
		text, err := os.ReadFile(f)
		require.NoError(t, err)
		for _, m := range worded.FindAllStringSubmatch(string(text), -1) {
			n++
			require.Less(t, len(strings.Fields(m[1])), 15, "%s: %s", f, m[1])
		}
	}
	require.Greater(t, n, 400)
	for kind, row := range questionTexts {
		require.Less(t, len(strings.Fields(row.text)), 15, kind)
	}
}

// TestQuestionIsAboutWhatItNames finds what a question is about in its words and in its facts, whatever signs that holds.
func TestQuestionIsAboutWhatItNames(t *testing.T) {
	q := ReallyMeant.Ask("20 %", "spare")
	require.Equal(t, "Is 20 % really meant for the spare?", q.Text)
	require.Equal(t, []string{"20 %", "spare"}, q.Facts[0].Names)
	require.True(t, AsksOne(&q, Vague, ReallyMeant))
	for kind, row := range questionTexts {
		require.NotEmpty(t, row.text, kind)
		require.True(t, strings.ContainsAny(row.text, "?"), kind)
	}
}
