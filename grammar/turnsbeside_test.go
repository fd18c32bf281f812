package grammar

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// A clause beside a wish that turns it is asked back, wherever it stands.
func TestClausesThatTurnAreAskedBack(t *testing.T) {
	for _, said := range []string{
		"make the gap three inches, I was talking to my brother", "six rails, that was for my apprentice", "six rails, that was the whiskey talking", "I'm only reading aloud, six rails",
		"she hollered from the kitchen, six rails", "six rails, she shouted over the fence", "my father's idea was, a gap of two inches", "the neighbor wants us to make the gap four",
		"for the rabbit hutch, make the gap two", "make the gap two, for the crib I mean", "on my brother's porch, the wall is 42 inches high", "six rails, over at my uncle's place", "when it comes to the stairs, make the gap three",
		"six rails, sorry, wrong job", "2 1/2, that's the gap on my neighbor's wall",
		"six rails, back when we lived there", "make the gap three, before my wife saw the price", "make the gap two, that was the old way", "six rails, it was nice while it lasted",
		"yesterday I was dead set on six rails", "we were going to do seven rails", "last night I wanted six rails", "we had been planning on a gap of three inches",
		"I haven't made up my mind, six rails", "make the gap two, we can't agree on it", "six rails, I'm in two minds about it", "not that I've measured, the wall is 42 inches high", "the wall is 42 inches high, I might have that backwards",
		"make the gap two, let me ask my wife first", "six rails, once the inspector has been", "make the gap three, only if it holds", "six rails, come to think of it, leave it be",
		"make the gap three, which looks awful", "it would be silly to make the gap eight", "you'd be mad to use four rails", "were I a rich man, twenty rails", "make the gap eight, the kids could crawl out of that",
		"six rails, I'm only teasing", "hey, son, listen, six rails", "honey, write this down, six rails", "make the gap two, or that's what I wanted last week", "twenty rails, as though I had money to burn", "make the gap two, I wish we could", "six rails, that ship has sailed",
		"the wall is 42 inches high, the tape was bent", "the wall is 42 inches high, I misread the ruler", "the garage door needs an 8 foot opening",
		"I have six boards", "the walk-through should be comfortable for everybody, please", "save it as that",
	} {
		heard, clear := hearing(said)
		require.False(t, clear, "%q: %q", said, heard)
	}
}

// What only sounds like it turns nothing.
func TestClausesThatOnlySoundSoTurnNothing(t *testing.T) {
	for said, form := range map[string]string{
		"I've changed my mind, six rails":                           "rails = 6",
		"I was going to use seven rails, no, six":                   "rails = 6",
		"five rails, and for the opening, I'll have to ask my wife": "rails = 5",
		"the wall is 40 high, no, 42, I misread the tape":           "wall height = 42 in",
		"oh dear, I wrote five boards but I meant six":              "rails = 6",
		"make the gap two and a half, the dog loves it":             "gap = 2-1/2 in",
		"may I have six rails":                                      "rails = 6",
		"Could I ask for a bottom gap of three inches?":             "bottom gap = 3 in",
		"Might we have one rail fewer?":                             "what if rails -= 1",
		"might I have the wall at 42 inches, please?":               "wall height = 42 in",
		"could I get away with six rails":                           "what if rails = 6",
		"may I have the cut list":                                   "ask cuts",
		"is 290 my limit on this":                                   "ask budget",
		"with the wall at 44, how many boards would fit":            "what if wall height = 44 in; ask rails",
		"how come I can't get eight rails in":                       "why not rails = 8",
		"where'd you get that many boards on the shopping list":     "why shopping",
	} {
		heard, clear := hearing(said)
		require.True(t, clear, "%q: %q", said, heard)
		require.Equal(t, form, strings.Join(heard, "; "), said)
	}
}
