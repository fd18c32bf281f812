package explain

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
	"saywright/solver/exact"
)

// said words an answer and returns its text on one line, so that a test need not know where lines break.
func said(t *testing.T, a *solver.Answer) string {
	t.Helper()
	Say(a, Options{Width: 200})
	return strings.Join(strings.Fields(a.Text), " ")
}

// requireAll wants every one of the lines in a text, wherever they stand.
func requireAll(t *testing.T, text string, want ...string) {
	t.Helper()
	for _, w := range want {
		require.Contains(t, text, w)
	}
}

// At the sawhorse: the upstream side of a ferry-landing shelter. Each figure was worked out by hand: 5 × 5-1/2 = 27-1/2,
// 5 × 2-1/2 = 12-1/2, and so on; the words around them may change, the figures not.
func TestAtTheSawhorse(t *testing.T) {
	c := talk(t)
	requireAll(t, said(t, c.line("wall height = 40 in; gap = 2-1/2 in")),
		"Five rails, and it comes out even", "5 × 5-1/2 = 27-1/2 wood", "5 × 2-1/2 = 12-1/2 four gaps between, one underneath", "27-1/2 + 12-1/2 = 40",
		"2x6 rails, 5-1/2 on the face (hold a tape to yours)", "a level floor", "the same gap underneath")

	requireAll(t, said(t, c.line("what if gap = 2 in")),
		"Five rails still", "4-1/2 is left under the bottom one", "40 − 27-1/2 − 8 = 4-1/2", "Six are 3 too high with nothing under them: 6 × 5-1/2 + 5 × 2 = 43",
		"Even gaps of 2 want a wall of 37-1/2 or 45: 5 × 7-1/2 = 37-1/2 and 6 × 7-1/2 = 45", "the brackets just touch: no room for error",
		"Nothing is changed; `take that` keeps it")

	text := said(t, c.line("span = 149 in; opening = 30 in; opening side = right"))
	requireAll(t, text, "One added post, its near face 115-1/2 from the left post; 30 stays open on the right", "149 − 30 − 3-1/2 = 115-1/2 the bay",
		"Two stiffeners, center lines at 38-1/2 and 77", "115-1/2 ÷ 3 = 38-1/2", "115-1/2 ÷ 2 = 57-3/4 with one fewer; 48 is allowed", "The post stands 42",
		"40 + 2 = 42", "held only at its foot; a base holds it down, not upright", "Without the base's rating I can't call it safe: tie its top")
	require.NotContains(t, text, "Five rails") // the line spoke of the length of the wall, not of its height

	requireAll(t, said(t, c.line("what if added posts = 2")), "Two bays of 56", "149 − 30 − 2 × 3-1/2 = 112", "112 ÷ 2 = 56", "One stiffener in each bay", "56 ÷ 2 = 28")

	requireAll(t, said(t, c.line("measured bay 1 bottom = 115-1/2 in; measured bay 1 top = 115-3/16 in")), "Noted: bay 1 at the bottom measures 115-1/2")
	requireAll(t, said(t, c.line("ask cuts")), "115-1/2 − 115-3/16 = 5/16 closes over 40", "5/16 × 8 ÷ 40 = 1/16 less at each rail going up",
		"rail 5 115-3/16 − 3/16 = 115 ", "rail 4 115-1/4 − 3/16 = 115-1/16 ", "rail 3 115-5/16 − 3/16 = 115-1/8 ", "rail 2 115-3/8 − 3/16 = 115-3/16 ",
		"rail 1 115-7/16 − 3/16 = 115-1/4 ", "each rail's top edge, its narrowest", "Ends square: over one face an end is out by less than a 1/16 mark",
		"Two widths don't show posts that lean the same way: hold a level to each")

	c.line("fit = 1/8 in")
	requireAll(t, said(t, c.line("ask cuts")), "from 115-1/8 at the bottom to 114-7/8 at the top", "115-1/4 − 3/16 − 1/8 = 114-15/16")
	c.line("same length")
	requireAll(t, said(t, c.line("ask cuts")), "Five rails at 114-7/8", "115-1/4 − 114-7/8 = 3/8", "3/8 of play, 3/16 an end")
}

// The apprentice and the gap: the bench side.
func TestTheApprentice(t *testing.T) {
	c := talk(t)
	text := said(t, c.line("wall height = 50 in; rail size = 2x6; rails = 7; bottom gap = gap"))
	requireAll(t, text, "Seven rails won't go", "before anything is left underneath", "7 × 5-1/2 = 38-1/2 wood", "6 × 2 = 12 the least the brackets leave between rails",
		"38-1/2 + 12 = 50-1/2, and the wall is 50", "Six rails, one fewer (gaps 2-5/6)", "A wall of 52-1/2, 2-1/2 more", "Brackets that clear at 1-9/14, 5/14 less")
	require.Less(t, strings.Index(text, "the wall is 50"), strings.Index(text, "mends it")) // first what is wrong, then what would mend it

	requireAll(t, said(t, c.line("check gap = 1-11/12 in")), "No, 1-9/14 (about 1-5/8): the gap underneath was left out", "(50 − 7 × 5-1/2) ÷ 6 = 1-11/12", "Either way it doesn't stand")

	requireAll(t, said(t, c.line("rails = 6")), "Six rails now, no longer seven", "50 − 33 = 17", "17 ÷ 6 = 2-5/6",
		"Bracket holes: 8-13/16, 17-3/16, 25-1/2, 33-13/16, 42-3/16 and 50-1/2", "No mark is off by more than 1/48, and none adds to the next",
		"The gaps come out four of 2-13/16 and two of 2-7/8: 4 × 2-13/16 + 2 × 2-7/8 = 17")

	requireAll(t, said(t, c.line("why not rails = 7; gap = 1-5/8 in")), "The brackets need 2 between rails, and the gap is 1-5/8", "49-7/8", "2-5/6", "1-9/14",
		"nothing lies between, because a rail is whole")
	requireAll(t, said(t, c.line("what if rail size = 2x4; rails = 8")), "Eight rails, and it comes out even: 2-3/4", "8 × 3-1/2 = 28", "50 − 28 = 22", "22 ÷ 8 = 2-3/4")
}

// A lesson says what was right, or which slip gives exactly the wrong figure, and asks for the next one.
func TestALesson(t *testing.T) {
	c := talk(t)
	c.line("wall height = 50 in; rail size = 2x6; rails = 6; bottom gap = gap")
	lesson, a := solver.NewLesson(c.book, c.base, solver.Gap)
	requireAll(t, said(t, a), "Six rails, wall 50. How much of the 50 is wood?")
	for _, step := range []struct {
		figures []string
		want    string
	}{
		{[]string{"36"}, "That's 6 × 6 = 36, the name. A 2x6 is 5-1/2 on the face. So?"},
		{[]string{"33"}, "Right, 6 × 5-1/2 = 33. What is left, and how many gaps share it?"},
		{[]string{"17", "5"}, "17 is right: 50 − 33 = 17. Five lie between the rails; the one underneath makes six. So each is?"},
		{[]string{"17/6"}, "Right, 17 ÷ 6 = 2-5/6. Against what the brackets need, 2-5/6 − 2 = 5/6 to spare. No tape shows that gap, so mark each rail from the floor. Bracket holes: 8-13/16, 17-3/16, 25-1/2"},
	} {
		var figures []solver.Value
		for _, f := range step.figures {
			figures = append(figures, solver.Value{Num: exact.Must(f)})
		}
		requireAll(t, said(t, lesson.Hear(figures)), step.want)
	}
	require.True(t, lesson.Done())
}

// Neither blame nor noise: words that no answer uses.
func TestPlainWords(t *testing.T) {
	eachAnswer(t, Options{}, func(t *testing.T, a *solver.Answer) {
		low := strings.ToLower(a.Text)
		for _, bad := range []string{"invalid", "illegal", "error:", "!", "sorry", "oops", "unfortunately", "infeasible", "constraint", "map[", "%!", "<nil>"} {
			require.NotContains(t, low, bad, a.Text)
		}
	})
}

// The last line of a conflict says, by itself too, which side is the whole: 38-1/2 + 12 against a wall of 50, and for a
// wall of 47 five rails that come to 40, six that come to 48.
func TestTheLastLineOfAConflict(t *testing.T) {
	for line, want := range map[string][]string{
		"wall height = 50 in; rail size = 2x6; rails = 7; bottom gap = gap": {"50-1/2, and the wall is 50"},
		"wall height = 47 in; gap = 2-1/2 in; bottom gap = gap":             {"40, and the wall is 47", "48, and the wall is 47"},
		"wall height = 48 in; gap = 1-1/2 in":                               {"2 at the least, and 1-1/2 at the most"},
	} {
		a := talk(t).line(line)
		Say(a, Options{})
		var says []string
		for _, w := range a.Work {
			if w.Note == "clash" {
				says = append(says, w.Says)
			}
		}
		require.Equal(t, want, says, line)
	}
}
