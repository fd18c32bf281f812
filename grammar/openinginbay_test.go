package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// An opening in a bay or between bays is no span and no bay; where it is to be is asked, and the width is kept.
func TestOpeningInBay(t *testing.T) {
	for line, first := range map[string]string{
		"opening of 30 between them":                      "opening = 30 in; opening side = middle",
		"a 3 foot gate between the two bays":              "opening = 36 in; opening side = middle",
		"a 30 inch walkway between bay one and bay two":   "opening = 30 in; opening side = middle",
		"put the opening between bay 1 and bay 2":         "opening side = middle",
		"opening 30 in bay 2":                             "opening = 30 in; opening side = left",
		"put a walk-through in the second bay":            "opening side = left",
		"opening 30 in the last bay":                      "opening = 30 in; opening side = right",
		"the opening goes in the middle bay":              "opening side = middle",
		"the walk-through is in the first bay":            "opening side = left",
		"opening at least 32 wide in the middle of bay 3": "opening >= 32 in; opening side = left",
	} {
		r := Read(line, act.Context{})
		require.NotNil(t, r.Ask, line)
		require.Empty(t, r.Acts, line)
		require.Equal(t, first, r.Ask.Choices[0], line)
	}
	for line, want := range map[string]string{
		"opening 30 in the middle":              "opening = 30 in; opening side = middle",
		"opening 30 inches, bay 2 is 60":        "opening = 30 in; bay 2 = 60 in",
		"how wide is bay 2":                     "ask bay 2",
		"five rails, three inches between them": "rails = 5; gap = 3 in",
	} {
		require.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
}

// What is there already is asked back with what it is; what is counted is heard, and what is only near it is left alone.
func TestThereAlreadyHeard(t *testing.T) {
	for line, items := range map[string][]string{
		"posts are already there":               {"post"},
		"the posts are up already":              {"post"},
		"the added post is in":                  {"post"},
		"we have the posts":                     {"post"},
		"I've got the base and anchors already": {"post base", "anchor"},
		"I already have the brackets":           {"bracket"},
		"no need to buy posts":                  {"post"},
		"leave the posts off the list":          {"post"},
		"the rails are already bought":          {"rail"},
		"we put the posts up yesterday":         {"post"},
		"posts already in":                      {"post"},
		"the lumber's already here":             {"lumber"},
	} {
		r := Read(line, act.Context{})
		require.NotNil(t, r.Ask, line)
		require.Equal(t, "at hand", r.Ask.Key, line)
		require.Equal(t, items, r.Ask.Facts[0].Names, line)
	}
	for line, want := range map[string]string{
		"I have ten brackets":                                   "have bracket x 10",
		"we already have two post bases":                        "have post base x 2",
		"I've got 200 screws in the garage":                     "have screws x 200",
		"posts are up, so what lengths do I saw":                "ask cuts",
		"where are the posts":                                   "ask posts",
		"the two posts that are already there are six by sixes": "end post size = 6x6",
	} {
		require.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
	require.Equal(t, "Which rails are up, and how high are their top edges?", Read("the rails are up already", act.Context{}).Ask.Text)
	for _, line := range []string{"I have about 200 screws", "the rails are up already", "I have the post height already"} {
		r := Read(line, act.Context{})
		require.NotNil(t, r.Ask, line)
		require.NotEqual(t, "at hand", r.Ask.Key, line)
	}
}

// Who asks what to buy and tells what is there gets that asked, and what was asked for besides it.
func TestThereAlreadyBesideShopping(t *testing.T) {
	for line, items := range map[string][]string{
		"the posts are up, what do I buy":                             {"post"},
		"posts are already there so what do I buy":                    {"post"},
		"what do I need to buy if the posts are up":                   {"post"},
		"I've got the posts and brackets, what else do I need to buy": {"post", "bracket"},
		"what do I buy besides the posts":                             {"post"},
		"what do I need to buy apart from the brackets":               {"bracket"},
	} {
		r := Read(line, act.Context{})
		require.NotNil(t, r.Ask, line)
		require.Equal(t, "at hand", r.Ask.Key, line)
		require.Equal(t, items, r.Ask.Facts[0].Names, line)
		require.Equal(t, []string{"ask shopping"}, r.Ask.Facts[1].Names, line)
	}
	for line, want := range map[string]string{
		"what do I need to buy":                            "ask shopping",
		"I have the wall at 45 1/2, what do I need to buy": "wall height = 45-1/2 in; ask shopping",
		"posts are up, so what lengths do I saw":           "ask cuts",
	} {
		require.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
}

// A gap of a few millimeters without its unit is likelier one of inches or centimeters.
func TestGapOfBareMillimeters(t *testing.T) {
	c := act.Context{Metric: true}
	r := Read("make the gaps 3", c)
	require.NotNil(t, r.Ask)
	require.Equal(t, []string{"gap = 3 mm", "gap = 3 in", "gap = 30 mm"}, r.Ask.Choices)
	require.Equal(t, "3 mm or 3 in or 3 cm?", r.Ask.Text)
	require.NotNil(t, Read("what if the bottom gap is 2.5", c).Ask)
	for line, want := range map[string]string{
		"gap 3 mm": "gap = 3 mm", "gap 0": "gap = 0 mm", "gap 10": "gap = 10 mm", "gap at most 8": "gap <= 8 mm", "gap 3 more": "gap += 3 mm",
	} {
		require.Equal(t, want, parse.Normal(Read(line, c).Acts), line)
	}
	require.Equal(t, "gap = 3 in", parse.Normal(Read("make the gaps 3", act.Context{}).Acts))
}

// Only who is gone for good ends the talk.
func TestOnlyGoneForGood(t *testing.T) {
	for _, line := range []string{"I'm off for lunch", "I'm off to lunch", "I'm off to get some lumber", "I'm off for a coffee", "stop for lunch", "see you after lunch", "stop for a bit"} {
		r := Read(line, act.Context{})
		require.NotNil(t, r.Ask, line)
		require.Equal(t, []string{"quit"}, r.Ask.Choices, line)
	}
	for _, line := range []string{"I'm off", "I'm off home", "done for the day", "done for now", "bye", "that'll do, supper's on the table and they're waiting", "quit"} {
		require.Equal(t, "quit", parse.Normal(Read(line, act.Context{}).Acts), line)
	}
}
