package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
	"saywright/solver"
	"saywright/solver/exact"
)

// nowMeasuring is a talk in which an opening, a gap, a wall and rails measure so much.
func nowMeasuring(opening, gap, wall, rails int) act.Context {
	of := map[solver.Quantity]int{solver.Opening: opening, solver.Gap: gap, solver.WallHeight: wall, solver.Rails: rails}
	return act.Context{Now: func(n solver.Name) (exact.Rat, bool) {
		v, ok := of[n.Quantity]
		return exact.Int(v), ok
	}}
}

// A figure behind a vague change is the new size; a plain change stays one.
func TestNewSize(t *testing.T) {
	stood := nowMeasuring(30, 3, 42, 6)
	for _, c := range []act.Context{{}, stood} {
		for line, want := range map[string]string{
			"make the opening a little wider, say 34":      "opening = 34 in",
			"opening a bit wider: 34":                      "opening = 34 in",
			"the gap a bit tighter, say two and a quarter": "gap = 2-1/4 in",
			"a bit less gap, two and a quarter":            "gap = 2-1/4 in",
			"wall a little higher, forty nine":             "wall height = 49 in",
			"what if the opening were a bit wider, say 34": "what if opening = 34 in",
			"opening two inches wider":                     "opening += 2 in",
			"wall lower by 2":                              "wall height -= 2 in",
			"wall a bit lower, four inches":                "wall height -= 4 in",
			"a quarter more gap":                           "gap += 1/4 in",
			"opening two inches wider, six rails":          "opening += 2 in; rails = 6",
			"gap an inch wider, six rails":                 "gap += 1 in; rails = 6",
			"opening wider by two, six rails":              "opening += 2 in; rails = 6",
			"raise the wall 4":                             "wall height += 4 in",
			"two more rails":                               "rails += 2",
			"make the opening wider by 40 inches":          "opening += 40 in",
		} {
			r := Read(line, c)
			require.Nil(t, r.Ask, line)
			require.Equal(t, want, parse.Normal(r.Acts), line)
		}
	}
	slight := nowMeasuring(36, 2, 40, 6)
	require.Equal(t, "opening = 34 in", parse.Normal(Read("the opening slightly narrower, at 34", slight).Acts))
	require.Equal(t, "gap = 2-3/4 in", parse.Normal(Read("a bit more gap, two and three quarters", slight).Acts))
	require.Equal(t, "wall height = 38 in", parse.Normal(Read("wall lower, 38", stood).Acts))
	require.Equal(t, "rails = 8", parse.Normal(Read("a few more rails, say eight", stood).Acts))
	for line, choices := range map[string][]string{
		"opening a bit wider, 20":        {"opening = 20 in", "opening += 20 in"},
		"drop the wall 38":               {"wall height = 38 in", "wall height -= 38 in"},
		"opening 34 wider":               {"opening = 34 in", "opening += 34 in"},
		"bottom gap a bit higher, say 3": {"bottom gap = 3 in", "bottom gap += 3 in"},
	} {
		r := Read(line, stood)
		require.NotNil(t, r.Ask, line)
		require.Equal(t, choices, r.Ask.Choices, line)
	}
	r := Read("wall lower, 38", act.Context{})
	require.NotNil(t, r.Ask)
	settled := stood
	settled.Settled = []string{"wall height -= 38 in"}
	require.Equal(t, "wall height -= 38 in", parse.Normal(Read("drop the wall 38", settled).Acts))
}

// Two posts that stand so far apart are the end posts.
func TestPostsApart(t *testing.T) {
	for line, want := range map[string]string{
		"I've got two posts 144 apart, inside to inside, and I want a wall of 42":   "span = 144 in; wall height = 42 in",
		"got two posts, hundred forty four and three eighths between them, wall 42": "span = 144-3/8 in; wall height = 42 in",
		"two posts already standing, 144 apart face to face":                        "span = 144 in",
		"there's two posts and 144 between em":                                      "span = 144 in",
		"I have two posts 12 feet apart, wall 42":                                   "span = 144 in; wall height = 42 in",
		"we have two posts standing already and 120 and a half between them":        "span = 120-1/2 in",
		"I have two posts 144 apart on center, wall 42":                             "centers = 144 in; wall height = 42 in",
		"span 144, opening 36 and two posts":                                        "span = 144 in; opening = 36 in; added posts = 2",
	} {
		require.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
	for _, line := range []string{"add two posts 48 apart", "two posts 48 apart", "span 150, two posts with 48 between them"} {
		require.NotContains(t, parse.Normal(Read(line, act.Context{}).Acts), "span = 48", line)
		require.NotContains(t, parse.Normal(Read(line, act.Context{}).Acts), "span = 144", line)
	}
}

// "Too" behind a part is no two; a two that was said is one.
func TestAsWellOrTwo(t *testing.T) {
	for line, first := range map[string]string{
		"gap 3, bottom gap too":          "gap = 3 in; bottom gap = 3 in",
		"opening 36, and the bays too":   "opening = 36 in; bays = 2",
		"rails 6 and the stiffeners too": "rails = 6; stiffeners = 6",
	} {
		r := Read(line, act.Context{})
		require.NotNil(t, r.Ask, line)
		require.Equal(t, first, r.Ask.Choices[0], line)
	}
	for line, want := range map[string]string{
		"i want fore boards and a gap of too": "rails = 4; gap = 2 in",
		"gap 3, bottom gap two":               "gap = 3 in; bottom gap = 2 in",
		"gap two, bottom gap too":             "gap = 2 in; bottom gap = 2 in", // either way
	} {
		require.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
}

// Boards that are kept for something else, or are no good, are not at hand; what is at hand is heard.
func TestSpokenFor(t *testing.T) {
	for _, line := range []string{
		"I have six 2x6 tens and four twelves but I need them for the coop", "I have six 2x6 tens and four twelves but they're rotten",
		"I have six 2x6 tens and four twelves but they're all split", "six 2x6 tens and four twelves stored at a friend's, but he needs them",
		"I have six 2x6 tens and four twelves on hold", "I have six 2x6 tens in mind", "he has six 2x6 tens and four twelves", "my buddy has six 2x6 tens", "drop the eight and ten foot bays",
	} {
		r := Read(line, act.Context{})
		require.NotNil(t, r.Ask, line)
		require.Empty(t, r.Acts, line)
	}
	for line, want := range map[string]string{
		"I have six 2x6 tens and four twelves":               "have 2x6 120 in x 6; have 2x6 144 in x 4",
		"I have six 2x6 tens and they are all straight":      "have 2x6 120 in x 6",
		"I have six 2x6 tens, and I need them for this wall": "have 2x6 120 in x 6",
		"the floor falls 2 inches to the right":              "floor at right = -2 in",
	} {
		require.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
}

// What is knocked off at both ends is knocked off twice; an opening as wide as a share of a bay is put nowhere.
func TestShortAtEnds(t *testing.T) {
	for line, want := range map[string]string{
		"knock off a quarter at both ends": "fit = 1/2 in",
		"leave an eighth at both ends":     "fit = 1/4 in",
		"leave 1/8\" at both ends":         "fit = 1/4 in",
		"leave half an inch at both ends":  "fit = 1 in",
		"an eighth of play on both ends":   "fit = 1/4 in",
		"cut the boards a quarter short":   "fit = 1/4 in",
		"opening is half of bay 2":         "opening = 1/2 * bay 2",
		"opening is a third of bay 1":      "opening = 1/3 * bay 1",
	} {
		require.Equal(t, want, parse.Normal(Read(line, act.Context{}).Acts), line)
	}
	require.NotNil(t, Read("opening 36 at the left of bay 2", act.Context{}).Ask)
}
