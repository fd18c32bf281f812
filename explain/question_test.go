package explain

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
	"saywright/solver/exact"
)

func asks(q solver.Question, said string) *solver.Answer {
	a := &solver.Answer{Said: said, Verdict: solver.Unclear, Ask: &q}
	Say(a, Options{Width: 40})
	return a
}

func TestQuestionPointsAtThePlace(t *testing.T) {
	at := 5
	a := asks(solver.Question{At: &at, Text: "4 in or 4 ft?", Choices: []string{"wall height = 4 in", "wall height = 48 in"}, Example: "wall 48 high"}, "wall 4 high")
	require.Equal(t, strings.Join([]string{
		"4 in or 4 ft?",
		"  wall 4 high",
		"       ^",
		"  1. wall height = 4 in",
		"  2. wall height = 48 in",
		"For example: wall 48 high",
	}, "\n"), a.Text)
	require.Equal(t, "four in or four ft? Say one for a wall of four inches, or two for a wall of forty eight inches.", strings.ToLower(a.Spoken[:1])+a.Spoken[1:])
}

// The caret stands under the place, whatever stands before it.
func TestCaret(t *testing.T) {
	for _, c := range []struct {
		said string
		at   int
		line string
	}{
		{"gap\ttoo", 4, "  gap too\n      ^"},                                        // a tab takes one column
		{"板 gap", 2, "  板 gap\n     ^"},                                              // wide characters take two
		{"e\u0301 gap", 3, "  e\u0301 gap\n    ^"},                                   // what combines takes none
		{"gap", 99, "  gap\n     ^"},                                                 // past the end
		{"gap", -1, "  gap\n  ^"},                                                    // before the beginning
		{"\x1b[2Jgap", 4, "  [2Jgap\n     ^"},                                        // nothing reaches the terminal that could move it
		{strings.Repeat("many words ", 30) + "gpa", 330, "rds many words gpa\n"},     // a long line is cut around the place
		{"gpa " + strings.Repeat("many words ", 30), 0, "  gpa many words many wor"}, //
	} {
		at := c.at
		a := asks(solver.Question{At: &at, Text: "What?"}, c.said)
		require.Contains(t, a.Text+"\n", c.line, "%q", c.said)
		narrowEnough(t, a.Text, 40)
	}
}

func TestQuestionsByKey(t *testing.T) {
	for _, c := range []struct {
		q    solver.Question
		want string
	}{
		{solver.Question{Key: "want height"}, "How high is the wall to be, or how many rails?"},
		{solver.Question{Key: "layout first", Facts: []solver.Fact{{Key: "missing", Names: []string{"wall height", "span"}}}},
			"For that I need the wall's height and the span between the end posts first. What is it?"},
		{solver.Question{Key: "neighbors apart", Facts: []solver.Fact{{Names: []string{"measured bay 1 bottom = 68 in", "measured bay 1 top = 66 in"},
			Nums: []exact.Rat{exact.Int(68), exact.Int(66), exact.Int(2)}}}},
			"Bay 1 at the bottom measures 68 and bay 1 at the top 66: they differ by 2, more than a leaning post makes. Which one is right?"},
		{solver.Question{Key: "no such bay", Facts: []solver.Fact{{Nums: []exact.Rat{exact.Int(3), exact.Int(2)}}}},
			"There is no bay 3: the wall has two bays. Which one was it?"},
		{solver.Question{Key: "fewer ways", Facts: []solver.Fact{{Nums: []exact.Rat{exact.Int(7), exact.Int(4)}}}}, "There is no way 7; I told 4. Which one?"},
		{solver.Question{Key: "not saved", Facts: []solver.Fact{{Key: "name", Names: []string{"porch"}}, {Key: "saved", Names: []string{"shed", "deck"}}}},
			"Nothing is saved as porch; there is shed and deck. Which one?"},
		{solver.Question{Key: "a key of tomorrow", Text: "Which?"}, "Which?"},
		{solver.Question{Key: "a key of tomorrow"}, "What was meant?"},
		{solver.Question{Key: "neighbors apart"}, "What was meant?"}, // figures missing: no panic, no half sentence
	} {
		q := c.q
		a := &solver.Answer{Verdict: solver.Unclear, Ask: &q}
		Say(a, Options{})
		require.Equal(t, c.want, a.Ask.Text, c.q.Key)
		require.True(t, strings.HasSuffix(a.Ask.Text, "?"))
	}
}
