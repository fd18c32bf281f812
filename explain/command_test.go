package explain

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
)

func TestCommands(t *testing.T) {
	for _, c := range []struct {
		topic string
		facts []solver.Fact
		want  string
	}{
		{"undo", []solver.Fact{{Key: "undone", Names: []string{"gap = 2 in", "rails = 6"}}}, "Taken back: a gap of 2 and six rails."},
		{"undo", []solver.Fact{{Key: "undone", Names: []string{"forget gap"}}}, "Taken back: forgetting the gap."},
		{"redo", []solver.Fact{{Key: "redone", Names: []string{"rails = 6"}}}, "Back again: six rails."},
		{"forget", []solver.Fact{{Key: "forgot", Names: []string{"gap <= 3 in"}}}, "Forgotten: a gap of 3 or less."},
		{"set aside", []solver.Fact{{Key: "set aside", Names: []string{"guard"}}}, "The guard's limits are set aside: they block no more, and the caution stays."},
		{"start over", []solver.Fact{{Key: "started over", Nums: rats("4")}}, "All forgotten. What wall do you want?"},
		{"save", []solver.Fact{{Key: "saved", Names: []string{"porch"}, Nums: rats("3")}, {Key: "saved before", Names: []string{"porch", "porch before"}}},
			"Saved as porch. The one before is kept as porch before."},
		{"open", []solver.Fact{{Key: "opened", Names: []string{"porch"}, Nums: rats("3")}}, "Porch is open."},
		{"same as", []solver.Fact{{Key: "same as", Names: []string{"north wall", "gap = 2 in"}}}, "Taken over from north wall: a gap of 2."},
		{"draw to", []solver.Fact{{Key: "drawn", Names: []string{"porch.svg"}}}, "Drawn to porch.svg."},
		{"print to", []solver.Fact{{Key: "printed", Names: []string{"porch.html"}}}, "The job sheet is ready, in porch.html."},
		{"recap", nil, "Nothing stands yet."},
		{"recap", []solver.Fact{{Key: "recap", Names: []string{"", "gap = 2 in"}}, {Key: "recap", Names: []string{"north wall", "rails = 6"}}},
			"What stands: gap = 2 in a gap of 2 North wall: rails = 6 six rails"},
		{"quit", nil, "Good building."},
		{"next", []solver.Fact{{Key: "steps done", Nums: rats("17")}}, "That was the last step."},
		{"help", []solver.Fact{{Key: "help", Names: []string{"gap", "gap two and a half", "  keep the gap under 4"}}}, "gap two and a half keep the gap under 4"},
		{"help", []solver.Fact{{Key: "help", Names: []string{"moon"}}}, "I have no help on that; `help` alone tells what there is."},
		{"take that", []solver.Fact{{Key: "kept", Names: []string{"gap = 2 in"}}, {Key: "taken", Names: []string{"gpa", "gap"}}}, "I took “gpa” for “gap”. Kept: a gap of 2."},
	} {
		a := &solver.Answer{Verdict: solver.Open, To: solver.Reply{Kind: "command", Topic: c.topic}, Facts: c.facts}
		require.Equal(t, c.want, said(t, a), c.topic)
		require.NotEmpty(t, a.Spoken)
		require.Empty(t, notSpoken.FindAllString(a.Spoken, -1), a.Spoken)
	}
}

func TestCompare(t *testing.T) {
	a := &solver.Answer{Verdict: solver.Fits, To: solver.Reply{Kind: "command", Topic: "compare"},
		Change: []solver.Moved{{Of: "rails", From: "5", To: "6"}, {Of: "gap", From: "5/2", To: "17/6"}, {Of: "opening", From: "", To: "30"}},
		Facts:  []solver.Fact{{Key: "compared", Names: []string{"this", "shed"}}, {Key: "verdicts", Names: []string{"fits", "blocked"}}}}
	require.Equal(t, "This fits, shed is blocked. this shed rails 5 6 gap 2-1/2 2-5/6 opening none 30", said(t, a))
	a.Change = nil
	requireAll(t, said(t, a), "Nothing differs that I can tell.")
}

// What stands is told after what was done, where there is a wall.
func TestCommandThenWhatStands(t *testing.T) {
	c := talk(t)
	c.line("wall height = 40 in; gap = 2-1/2 in")
	a := *c.base
	a.To = solver.Reply{Kind: "command", Topic: "undo"}
	a.Facts = append(a.Facts, solver.Fact{Key: "undone", Names: []string{"gap = 2 in"}})
	requireAll(t, said(t, &a), "Taken back: a gap of 2.", "Five rails, and it comes out even")
}

func TestReplacedIsTold(t *testing.T) {
	c := talk(t)
	c.line("gap = 2-1/2 in; rails = 6")
	requireAll(t, said(t, c.line("gap = 3 in")), "A gap of 3 now, no longer 2-1/2.")
	requireAll(t, said(t, c.line("rails = 5")), "Five rails now, no longer six.")
	requireAll(t, said(t, c.line("gap <= 4 in")), "Five rails")
	requireAll(t, said(t, c.line("gap in 2 in..4 in")), "A gap of 2 to 4")
}

func TestNextTellsOneStep(t *testing.T) {
	c := talk(t)
	c.line("wall height = 40 in; gap = 2-1/2 in; span = 100 in")
	a := c.line("ask steps")
	of := len(a.Steps)
	require.Greater(t, of, 5)
	a.Steps = a.Steps[1:2]
	a.To = solver.Reply{Kind: "command", Topic: "next"}
	a.Facts = append(a.Facts, solver.Fact{Key: "step", Nums: rats("2", "9")})
	requireAll(t, said(t, a), "Step 2 of 9: ")
	require.NotContains(t, a.Text, "Five rails")
}

func TestGreeting(t *testing.T) {
	require.Contains(t, Greeting(Options{}), "`help`")
	narrowEnough(t, Greeting(Options{Width: 40}), 40)
}
