package grammar

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
)

// What was wanted once, what others have and what nobody wants is never set; common practice of speech, no source.
func TestWhatIsOnlyAiredSetsNothing(t *testing.T) {
	values := strings.Split("six rails|a gap of 3|a 36 inch opening|a wall 48 high|two stiffeners a bay|the gap at 3|2x6 rails|equal bays|the tightest gap", "|")
	frames := strings.Split(strings.TrimSpace(`
I used to want X
nobody wants X
I nearly had X
we were about to have X
I would have liked X
I couldn't fit X
we had trouble with X
I wish we had X
I could go with X
we might use X
too bad about X
most people have X
people usually have X
until X
last time we had X
did I say X
do you like X
you want X
I read about X
I'm worried about X
he laughed at X
X was the old idea
X was my first thought
X came up at lunch
X bothers me
and X was a mistake
what do you think of X
would you have X
any thoughts on X`), "\n")
	for _, f := range frames {
		for _, v := range values {
			line := strings.Replace(f, "X", v, 1)
			for _, a := range Read(line, act.Context{}).Acts {
				require.NotEqual(t, act.State, a.Kind, "%s sets %s", line, parse.Normal([]act.Act{a}))
			}
		}
	}
}

// An act that somebody only speaks of is not done.
func TestWhatIsNotDone(t *testing.T) {
	for _, line := range []string{"no need to drop the limit of eight foot on the bays", "nobody told me to forget the budget", "should I forget everything but the height",
		"we could drop the limit of 8 ft on the bays", "I forgot to take one rail out", "I'm afraid to drop the wall 2 inches", "no need to save it as back porch"} {
		r := Read(line, act.Context{})
		for _, a := range r.Acts {
			require.False(t, hear.Alters[a.Kind], "%s does %s", line, parse.Normal([]act.Act{a}))
		}
	}
}

// The same words set a value where it is wanted.
func TestWhatIsWantedIsSet(t *testing.T) {
	for line, want := range map[string]string{
		"I hate offcuts, waste as little lumber as possible": "least waste",
		"sorry, six rails":                            "rails = 6",
		"people will lean on it, so make it 42 high":  "wall height = 42 in",
		"nobody wants a low wall, so make it 48 high": "wall height = 48 in",
	} {
		require.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
}
