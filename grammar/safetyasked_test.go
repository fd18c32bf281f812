package grammar

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/solver"
	"saywright/solver/exact"
)

func hears(line string, c act.Context) string {
	r := Read(line, c)
	if r.Ask != nil {
		return "? " + r.Ask.Text
	}
	var list []string
	for _, a := range r.Acts {
		list = append(list, a.String())
	}
	return strings.Join(list, "; ")
}

// What is asked of safety is a question for cautions that knows what it is about; what only speaks of it sets and asks nothing.
func TestSafetyAsked(t *testing.T) {
	for topic, lines := range map[string][]string{
		"strength": {"is it strong enough", "will it hold if somebody leans on it", "can I sit on it", "what if somebody leans on it", "will it blow over", "could I hang a planter on it", "how much weight can it hold"},
		"passage":  {"is that enough for a wheelbarrow", "is the walk-through wide enough for a wheelchair", "can I get a mower through there", "will a stroller fit through", "what about a wheelchair"},
		"guard":    {"can a kid fall through", "could a toddler squeeze under it", "can my kid get his head stuck", "is it safe for kids", "does it count as a guardrail"},
		"permit":   {"do I need a permit", "does this need a building permit", "is a permit needed for this"},
		"cautions": {"is this thing safe", "is it going to hold up", "how safe is it", "is it up to code"},
	} {
		for _, line := range lines {
			r := Read(line, act.Context{})
			require.Len(t, r.Acts, 1, line)
			require.Equal(t, topic, r.Acts[0].Topic, line)
			require.Equal(t, "ask cautions", r.Acts[0].String(), line)
		}
	}
	for _, line := range []string{"I need a permit", "the opening has to be wide enough for a wheelchair", "make it wide enough for a wheelbarrow", "no gap that a kid can fall through",
		"is four inches enough for a kid to fall through", "do I need a permit or six rails"} {
		require.Contains(t, hears(line, act.Context{}), "? ", line)
	}
}

// Boards of another length are tried where they are asked for instead of those that the plan takes.
func TestOtherStockTried(t *testing.T) {
	for line, want := range map[string]string{
		"how many eights would I need instead":     "what if stock = 96 in; ask shopping",
		"how many 8s would I need instead":         "what if stock = 96 in; ask shopping",
		"how many ten-footers would that take?":    "what if stock = 120 in; ask shopping",
		"and with tens instead":                    "what if stock = 120 in; ask shopping",
		"how many boards if I buy sixteens":        "what if stock = 192 in; ask shopping",
		"how many sixteens do I need instead":      "what if stock = 192 in; ask shopping",
		"how many sixteens do I need":              "ask shopping",
		"how many stiffeners would I need instead": "ask stiffeners",
	} {
		require.Equal(t, want, hears(line, act.Context{}), line)
	}
}

// What goes on about other boards is tried behind a trial of some, and sold besides behind what is sold.
func TestStockGoesOn(t *testing.T) {
	stock := solver.Name{Quantity: solver.Stock}
	tried, told := act.Context{TriedStock: true, Tried: true, Answered: true}, act.Context{Subject: &stock, Answered: true}
	for _, row := range []struct {
		line string
		c    act.Context
		want string
	}{
		{"and tens", tried, "what if stock = 120 in; ask shopping"},
		{"or 3 m boards?", tried, "what if stock = 3000 mm; ask shopping"},
		{"and a gap of 3", tried, "gap = 3 in"},
		{"and tens", told, "stock += 120 in"},
		{"and six rails", told, "rails = 6"},
	} {
		require.Equal(t, row.want, hears(row.line, row.c), row.line)
	}
}

// A post that leans into the opening leans to its side; where the side shows by nothing it is asked.
func TestLeansToward(t *testing.T) {
	open := func(side string, posts int) act.Context {
		return act.Context{Now: func(n solver.Name) (exact.Rat, bool) {
			switch n.Quantity {
			case solver.AddedPosts:
				return exact.Int(posts), true
			case solver.Openings:
				return exact.Int(1), true
			case solver.OpeningFromRight:
				return exact.Int(map[string]int{"right": 0, "left": 100}[side]), true
			case solver.OpeningFromLeft:
				return exact.Int(map[string]int{"right": 100, "left": 0}[side]), true
			}
			return exact.Rat{}, false
		}}
	}
	for _, row := range []struct {
		line string
		c    act.Context
		want string
	}{
		{"post 1 leans into the opening 1/2 in 48", open("right", 1), "post 1 leans 1/2 in right in 48 in"},
		{"post 1 leans into the opening 1/2 in 48", open("left", 1), "post 1 leans 1/2 in left in 48 in"},
		{"the added post leans away from the walk-through half an inch over four feet", open("right", 1), "post 1 leans 1/2 in left in 48 in"},
		{"the right post leans into the opening 3/8 in 48", open("right", 1), "right post leans 3/8 in left in 48 in"},
		{"the left post leans into the opening 3/8 in 48", open("left", 1), "left post leans 3/8 in right in 48 in"},
		{"the added post leans in 3/8 over four feet", open("right", 1), "? To the left or to the right?"},
		{"the left post leans in 3/8 over four feet", open("right", 1), "left post leans 3/8 in right in 48 in"},
	} {
		require.Equal(t, row.want, hears(row.line, row.c), row.line)
	}
	for _, row := range []struct {
		line string
		c    act.Context
	}{
		{"post 1 leans into the opening 1/2 in 48", open("right", 2)},
		{"the added post leans into the opening 1/2 in 48", open("right", 2)},
		{"the left post leans into the opening 3/8 in 48", open("right", 1)},
		{"both posts lean into the opening a quarter inch over four feet", open("right", 1)},
		{"post 1 leans into the opening 1/2 in 48", act.Context{}},
	} {
		require.Contains(t, hears(row.line, row.c), "? ", row.line)
	}
}

// A bare yes takes no way out of several, and the one only when asked about it.
func TestYesToWaysOut(t *testing.T) {
	require.Equal(t, "? Which way out? Say its number, 1 to 3.", hears("yes", act.Context{Ways: 3}))
	require.Equal(t, "? Shall I take that way out?", hears("ok", act.Context{Ways: 1}))
	require.Equal(t, "take 2", hears("2", act.Context{Ways: 3}))
}
