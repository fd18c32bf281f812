package grammar

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
)

// A figure beyond any count that bounds the one post that was added is its height, or is asked back: it never counts posts.
func TestNewPostIsNotCounted(t *testing.T) {
	heights := 0
	for _, said := range []string{
		"{N} can't go past {F}", "{N} can't be over {F}", "don't let {N} go below {F}", "don't let {N} go over {F}", "I'd hate to see {N} go under {F}", "never let {N} get under {F}", "keep {N} at {F} or less",
		"{F} tops for {N}", "{N} {F} max", "{N} no taller than {F}", "no more than {F} for {N}", "nothing over {F} for {N}", "the limit for {N} is {F}", "{N} must not exceed {F}", "{F} is our ceiling for {N}",
		"take {N} up to {F}", "bring {N} down to {F}", "lift {N} up to {F}", "why is {N} {F}", "{N} is {F}", "{N} at {F}", "make {N} {F}", "{N} between 48 and {F}",
	} {
		for _, name := range []string{"the new post", "the added post", "that new post"} {
			for _, figure := range []string{"50", "fifty", "50 inches", "four feet two"} {
				line := strings.NewReplacer("{N}", name, "{F}", figure).Replace(said)
				r := Read(line, act.Context{})
				if form := Normal(r.Acts); r.Ask == nil {
					require.Contains(t, form, "post height", "%q", line)
					require.NotContains(t, form, ";", "%q", line)
					heights++
				}
			}
		}
	}
	require.Greater(t, heights, 100)
}

// A count that is no whole number is asked back, and is no gap.
func TestCountsAreWhole(t *testing.T) {
	for _, said := range []string{"put {F} {P} in each bay", "{F} {P} per bay", "I want {F} {P} in every bay", "{F} {P} high"} {
		for _, figure := range []string{"two and a half", "2-1/2", "2 1/2", "3.5"} {
			for _, part := range []string{"rails", "boards", "slats", "stiffeners"} {
				line := strings.NewReplacer("{F}", figure, "{P}", part).Replace(said)
				require.NotNil(t, Read(line, act.Context{}).Ask, "%q", line)
			}
		}
	}
	require.Equal(t, []string{"gap = 2-1/2 in"}, strings.Split(Normal(Read("lay the boards two and a half apart in each bay", act.Context{}).Acts), "; "))
}

// One figure for two quantities sets both of them, or is asked back: neither is lost.
func TestBothAreHeard(t *testing.T) {
	heard := 0
	for _, said := range []string{
		"{A} and {B} both {F}", "both {A} and {B} {F}", "make {A} and {B} {F} each", "make {A} and {B} {F}", "I want {F} for {A} and for {B}", "{F} for both {A} and {B}", "keep {A} and {B} under {F}",
		"{A} no more than {F}, same for {B}", "{A} and {B} {F}", "raise {A} and {B} to {F}", "what if both {A} and {B} were {F}", "at most {F} for {A} and {B}", "he says both {A} and {B} are {F}",
	} {
		for _, names := range [][4]string{
			{"the gap", "the bottom gap", "gap", "bottom gap"}, {"gap", "bottom gap", "gap", "bottom gap"}, {"the space between the boards", "the gap under the bottom board", "gap", "bottom gap"},
			{"the opening", "the stiffener spacing", "opening", "stiffener spacing"}, {"the wall height", "the post height", "wall height", "post height"}, {"the bay width", "the opening", "bay", "opening"},
		} {
			figure := "36"
			if names[2] == "gap" {
				figure = "three"
			}
			line := strings.NewReplacer("{A}", names[0], "{B}", names[1], "{F}", figure).Replace(said)
			r := Read(line, act.Context{})
			if r.Ask != nil {
				continue
			}
			heard++
			form := " " + strings.NewReplacer(";", " ", ",", " ").Replace(Normal(r.Acts)) + " "
			require.Contains(t, strings.ReplaceAll(form, " "+names[3]+" ", " "), " "+names[2]+" ", "%q: %s", line, form)
			require.Contains(t, form, " "+names[3]+" ", "%q: %s", line, form)
		}
	}
	require.Greater(t, heard, 40)
}
