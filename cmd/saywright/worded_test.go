package main

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/explain"
	"saywright/solver"
)

func TestWhatALineNames(t *testing.T) {
	for line, want := range map[string]int{
		"why 6 rails": 6, "why six rails?": 6, "why is it twelve boards": 12, "why Six rails": 6,
		"why rails": 0, "why 6 rails and not 5 rails": 0, "why 2-6 rails": 0, "why 2x6 rails": 0, "why 1/2 rails": 0, "why 6 inch rails": 0, "why 100 rails": 0,
	} {
		n, ok := railsIn(line)
		require.Equal(t, want, n, line)
		require.Equal(t, want > 0, ok, line)
	}
	for line, want := range map[string]bool{
		"can a child climb it?": true, "can kids climb the wall": true, "could a toddler climb over it": true, "is climbing it easy": true,
		"can a child climb through": false, "can a kid climb under it": false, "can a kid fall through": false, "can kids climb on it": false, "can the kids climb over it": true,
	} {
		require.Equal(t, want, asksToClimb(line), line)
	}
}

// The first words of an answer say yes or no to what was asked.
func TestFirstWords(t *testing.T) {
	c := talking(t)
	c.say("wall height = 48 in; gap >= 2-3/4 in")
	require.Regexp(t, `^Yes: rails climb like a ladder`, c.say("can a child climb it?").Text)
	require.Regexp(t, `^Yes: rails climb like a ladder\. Whether they hold who climbs I can't tell\.`, c.say("can the kids climb over it").Text)
	require.Regexp(t, `^I can't tell\.`, c.say("is it strong enough").Text)
	require.Regexp(t, `^A 4 in ball`, c.say("can a child fall through it?").Text)
	require.Regexp(t, `^It isn't six: six rails leave gaps of 2-1/2, too tight\.\nFive rails\.`, c.say("why 6 rails").Text)
	require.Regexp(t, `^It isn't nine\.\nFive rails\.`, c.say("why 9 rails").Text)
	require.Regexp(t, `^Five rails\.`, c.say("why 5 rails").Text)
}

// Behind a line that was asked back a question is not answered as if it had been heard; what answers it, and a line that states something, is.
func TestNotTakenIn(t *testing.T) {
	c := talking(t)
	c.say("wall height = 48 in; span = 144 in; gap >= 2 in")
	const not = "was not taken in"
	require.NotNil(t, c.say("only fnord boards").Ask)
	a := c.say("what do I buy")
	require.Regexp(t, `^Your line “only fnord boards” was not taken in\.\n`, a.Text)
	require.NotContains(t, c.say("what do I buy").Text, not, "once is enough")

	c.say("only fnord boards")
	require.NotContains(t, c.say("opening 30").Text, not, "it tells what it heard")
	require.NotContains(t, c.say("what do I buy").Text, not)

	require.NotNil(t, c.say("how many do I need").Ask)
	require.NotContains(t, c.say("how many rails").Text, not, "a question asked back changes nothing anyway")

	require.NotNil(t, c.say("thanks").Ask)
	require.NotContains(t, c.say("how many rails").Text, not, "nothing was said")

	require.Equal(t, "never mind the old planks …", shortened("never mind   the old planks … "))
	require.Equal(t, "the quick old ferryman told us some of the long …", shortened("the quick old ferryman told us some of the long boards were gone"))
}

// Lines given for an example are in the units of the talk, and are heard there.
func TestExamplesInMillimeters(t *testing.T) {
	for _, inches := range []string{
		"gap 2-1/2", "gap 2-1/2, 6 rails", "gap 2-1/2, opening at least 24", "what if gap 2-1/2", "opening at least 32", "bay 1 top measures 68 3/8", "span 12 ft 6",
		"I have 4 ten foot 2x6", "8 ft 2x6 are 9.50", "they sell 8, 10 and 12 footers", "the floor drops 1 in to the right", "left post leans 3/8 in right in 48 in",
		"rail 2 in bay 1 came out 3/8 short", "I have six 2x6s, 12 ft long", "he says six rails, gap 2-3/8", "gap under 4", "they say ten 2x6 twelve-footers",
	} {
		a := &solver.Answer{Verdict: solver.Unclear, Metric: true, Ask: &solver.Question{Key: "meant", Text: "What is meant here?", Example: inches}}
		explain.Say(a, explain.Options{})
		require.NotEqual(t, inches, a.Ask.Example)
		c := talking(t)
		c.say("units = metric; wall height = 1200 mm; span = 7200 mm; opening = 900 mm; rail size = 38x140")
		heard := c.say(a.Ask.Example)
		require.NotEqual(t, solver.Unclear, heard.Verdict, a.Ask.Example)
		require.NotEmpty(t, heard.Heard, a.Ask.Example)
	}
}
