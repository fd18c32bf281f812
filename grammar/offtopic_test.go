package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
)

// Whoever asks for something else than the wall is told what can be asked; a word that is not known beside a figure is asked about.
func TestQuestionsBesideTheWall(t *testing.T) {
	for _, line := range []string{"is it going to rain tomorrow", "who painted this wall", "how much does a rail weigh", "what time is it", "are you a robot", "can you sing?"} {
		r := Read(line, act.Context{})
		require.NotNil(t, r.Ask, line)
		require.Contains(t, r.Ask.Text, "I know only the wall", line)
		require.Empty(t, r.Acts, line)
	}
	for _, line := range []string{"my knee hurts", "can I have a 3 in flurb", "flurb 3"} {
		r := Read(line, act.Context{})
		require.NotNil(t, r.Ask, line)
		require.NotContains(t, r.Ask.Text, "I know only the wall", line)
	}
}
