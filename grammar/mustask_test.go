package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
)

// Lines that hold the words of a statement, and none of its meaning, do nothing; common speech, no source.
func TestMustBeAsked(t *testing.T) {
	for _, line := range []string{
		"Not that I want the wall to be 54 inches high, mind you.",
		"this sawhorse is 32 high",
		"post ht = wh +",
		"gap between two and",
		"open the window, it's dusty in here",
		"open the other box of screws",
		"I've sanded five boards and my back is killing me",
		"she keeps telling me forget the gap",
	} {
		require.Empty(t, Read(line, act.Context{}).Acts, line)
	}
	requireReads(t, act.Context{}, map[string]string{
		"less gap than 3 inches":                                 "gap < 3 in",
		"no more gap than an inch and three quarters":            "gap <= 1-3/4 in",
		"no less opening than 30":                                "opening >= 30 in",
		"start the opening right at 40 inches off the left post": "opening from left = 40 in",
		"open porch": "open porch",
		"the guy with the level claims the slab drops an inch and a half to the right": "check floor at right = -1-1/2 in",
	})
}

// Small words that make another statement of the rest: "none", "step by step", "lost", "as scrap".
func TestSmallWordsTurn(t *testing.T) {
	requireReads(t, act.Context{}, map[string]string{
		"Would you please tell me why it isn't possible to have nine boards?":    "why not rails = 9",
		"don't let none of the bays go past seven foot two":                      "bay <= 86 in",
		"what if we lost one board and made the wall 46":                         "what if rails -= 1, wall height = 46 in",
		"Could you help me understand, step by step, how the gap is calculated?": "teach gap",
		"try her numbers out, five boards 3 1/8 apart":                           "what if rails = 5, gap = 3-1/8 in",
		"Would you believe it, I still have seven 10-foot 2x6s left over.":       "have 2x6 120 in x 7",
		"we want as little wood as possible to end up as scrap":                  "least waste",
		"Put the opening in the middle, that's where the kids run anyway.":       "opening side = middle",
	})
}

// A stroke that stands free parts notes; between figures it does not.
func TestStrokesPartNotes(t *testing.T) {
	for _, c := range [][2]string{
		{"HT 45.5 / RLS 5 / GAP 2.75", "wall height = 45-1/2 in; rails = 5; gap = 2-3/4 in"},
		{"8 RLS 2X4 / WHAT GAP", "rails = 8; rail size = 2x4; ask gap"},
		{"STIFFS 2 PER BAY / 1X3 / 22 OC", "stiffeners = 2; stiffener size = 1x3; stiffener spacing = 22 in"},
		{"WALKTHRU 32 TO 36 / LEFT SIDE", "opening in 32 in..36 in; opening side = left"},
		{"gap 2 / 3", "gap = 2/3 in"},
		{"opening left / right 30", ""},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
}

// A wish stands behind its reason, whatever the reason tells; what it tells of the wall itself is not passed over.
func TestWishBehindReason(t *testing.T) {
	for _, c := range [][2]string{
		{"it rains buckets here so get the bottom board at least two inches clear of the patio", "bottom gap >= 2 in"},
		{"been at this twenty six years and i don't like em sagging so keep every bay to sixty inches or under", "bay <= 60 in"},
		{"usin two by fours for the slats this time around", "rail size = 2x4"},
		{"the posts wobble at twelve feet so make the gap 2", ""},
		{"he says it rains so the gap should be 2", ""},
		{"it rains buckets so forget the gap", ""},
	} {
		got := parse.Normal(Read(c[0], act.Context{}).Acts)
		if c[1] == "" {
			require.NotContains(t, got, "gap = 2 in", c[0])
			continue
		}
		require.Equal(t, c[1], got, c[0])
	}
}

// Slips owned up to, surprise, spares, and what is left out of it; common speech, no source.
func TestBesideTheMatter(t *testing.T) {
	for _, c := range [][2]string{
		{"Sorry, I made a mistake: the gap should be 2 1/4 inches, not 2 1/2.", "gap = 2-1/4 in"},
		{"what in the world made you put the post there", "why posts"},
		{"is it right what he wrote, six rails and a gap of no more than 2 1/2", "check rails = 6, gap <= 2-1/2 in"},
		{"don't let the opening come in under twenty eight", "opening >= 28 in"},
		{"buy me two boards over what it takes, as spares", "spare = 2"},
		{"leave his sketch out of it, how many boards do you come up with", "ask rails"},
		{"It would be convenient for us if all of the boards could be cut to one and the same length.", "same length"},
		{"how come there's so much lumber on the list", "why shopping"},
		{"I would like the wall to be a comfortable height.", ""},
		{"add 10s to stock, lose 14s", "stock += 120 in; stock -= 168 in"},
		{"how come his three inch gap is no good", "why not gap = 3 in"},
		{"can you tell me why a 2 foot walk-through is no good", "why not opening = 24 in"},
		{"how come the gap is three inches", "why gap"},
	} {
		require.Equal(t, c[1], parse.Normal(Read(c[0], act.Context{}).Acts), c[0])
	}
}
