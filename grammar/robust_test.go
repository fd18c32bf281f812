package grammar

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

var badInput = []string{"", " ", "\x00", "\xff\xfe gap 2", "gap = 1/0", "gap 1/0", "rails = 1000000000", "gap " + strings.Repeat("9", 1000), strings.Repeat("gap 2 ", 200000),
	"gap \x01 2", "\u202e gap 2", "gap 2 gap 3", "1/2/3", "12:06", "½½½", "2½½", ";;;", "????", "-", "--", "gap -", "= = =", "2x", "x6", "2x6x", "((((", "and and and", "no no no", "to to to",
	"what if what if", "why not why not", strings.Repeat("a ", 1900), strings.Repeat("2 ", 1900), strings.Repeat("rails ", 600), strings.Repeat("no, ", 900), "gap 2" + strings.Repeat(", no, 3", 300)}

func TestBadInputIsAnsweredInTime(t *testing.T) {
	for _, s := range badInput {
		begin := time.Now()
		r := Read(s, act.Context{})
		require.Less(t, time.Since(begin), 2*time.Second, "%.60q", s)
		require.Equal(t, r.Ask == nil, len(r.Acts) > 0, "%.60q", s)
	}
	require.NotNil(t, Read("gap = 1/0", act.Context{}).Ask)
	require.NotNil(t, Read("rails = 1000000000", act.Context{}).Ask)
}

// Every normal form is read as itself.
func TestNormalFormsAreRead(t *testing.T) {
	for _, s := range normalForms {
		r := Read(s, act.Context{Answered: true})
		require.Nil(t, r.Ask, s)
		require.Equal(t, s, parse.Normal(r.Acts))
	}
}

// Everything that help shows as a line to say is read.
func TestHelpExamplesAreRead(t *testing.T) {
	for _, topic := range append(parse.Topics(), "", "price") {
		lines := Help(topic)
		require.NotEmpty(t, lines, topic)
		for _, l := range lines {
			if example, ok := strings.CutPrefix(l, "  "); ok {
				r := Read(example, act.Context{})
				require.Nil(t, r.Ask, "help %s: %q", topic, example)
			}
		}
	}
}

func TestAnswersToAnOpenQuestion(t *testing.T) {
	c := act.Context{Choices: []string{"wall height = 4 in", "wall height = 48 in"}}
	for said, want := range map[string]string{"1": c.Choices[0], "the second": c.Choices[1], "the first one": c.Choices[0], "feet": c.Choices[1], "4 ft": c.Choices[1], "number two": c.Choices[1], "gap 2": "gap = 2 in"} {
		r := Read(said, c)
		require.Nil(t, r.Ask, said)
		require.Equal(t, want, parse.Normal(r.Acts), said)
	}
	r := Read("the second", act.Context{Ways: 3})
	require.Equal(t, "take 2", parse.Normal(r.Acts))
	r = Read("seventeen, and five", act.Context{Teaching: true})
	require.Equal(t, "figure 17, 5", parse.Normal(r.Acts))
}

// A line that breaks off anywhere, or is heard from anywhere on, is read or asked back.
func TestBrokenOffLinesAreAnswered(t *testing.T) {
	lines := []string{"0A,thAts", "void this ticket, neqxt customer", "compare what", "compare what we"} // found by fuzzing, and by breaking off known lines
	for i, p := range phraseLists(t) {
		if i%12 != 0 && !testing.Verbose() {
			continue
		}
		words := strings.Fields(p.said)
		for k := 1; k < len(words); k++ {
			lines = append(lines, strings.Join(words[:k], " "), strings.Join(words[k:], " "))
		}
	}
	for _, line := range lines {
		require.NotPanics(t, func() { Read(line, act.Context{Answered: true, Tried: true}) }, line)
	}
}
