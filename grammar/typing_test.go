package grammar

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/spelling"
)

var typedWord = regexp.MustCompile(`[A-Za-z]{2,}`)

// edits are a word with one letter dropped, doubled, or swapped with its neighbor.
func edits(w string) []string {
	var out []string
	for i := range w {
		out = append(out, w[:i]+w[i+1:], w[:i]+w[i:i+1]+w[i:])
		if i+1 < len(w) && w[i] != w[i+1] {
			out = append(out, w[:i]+w[i+1:i+2]+w[i:i+1]+w[i+2:])
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

var figuresIn = regexp.MustCompile(`[0-9][0-9./x-]*( (in|mm)\b|%)?`)

// TestTypingErrors mistypes every word of the first list by one letter. Each line is then read as before, or asked back:
// never as something else, and never with another number or unit. A mistyped word that is another word of the
// vocabulary makes another line, and does not count.
func TestTypingErrors(t *testing.T) {
	said, same, asked, other, wrong := 0, 0, 0, 0, 0
	for _, p := range phraseLists(t) {
		if p.file != "phrases.tsv" {
			continue
		}
		was, clear := hearing(p.said)
		if !clear || namesFile(was) {
			continue // any name is a name to save under, or of a wall
		}
		for _, at := range typedWord.FindAllStringIndex(p.said, -1) {
			word := p.said[at[0]:at[1]]
			for _, typed := range edits(word) {
				line := p.said[:at[0]] + typed + p.said[at[1]:]
				if testing.Short() && said%7 != 0 {
					said++
					continue
				}
				said++
				heard, clear := hearing(line)
				switch {
				case !clear:
					asked++
				case slices.Equal(heard, was):
					same++
				case lex.Words().Known[strings.ToLower(typed)] || spelling.English()[strings.ToLower(typed)] || lexicon.Vocab().Neutral[strings.ToLower(typed)]:
					other++
				default:
					wrong++
					if wrong <= 40 {
						t.Logf("%q: heard %q, was %q", line, heard, was)
					}
					if !slices.Equal(figuresIn.FindAllString(strings.Join(was, " "), -1), figuresIn.FindAllString(strings.Join(heard, " "), -1)) {
						t.Errorf("%q: a number or a unit changed: %q, was %q", line, heard, was)
					}
				}
			}
		}
	}
	t.Logf("%d lines mistyped: %d read the same, %d asked back, %d another word, %d misread (%.3f %%)", said, same, asked, other, wrong,
		100*float64(wrong)/float64(said))
	require.Less(t, float64(wrong), 0.001*float64(said))
}

func namesFile(forms []string) bool {
	return slices.ContainsFunc(forms, func(f string) bool {
		return strings.Contains(f, " wall: ") || strings.HasPrefix(f, "save ") || strings.HasPrefix(f, "open ") || strings.HasPrefix(f, "compare ")
	})
}
