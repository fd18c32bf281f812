package explain

import (
	"encoding/csv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
	"saywright/solver/exact"
)

func rowsOf(t *testing.T, s string) [][]string {
	t.Helper()
	rows, err := csv.NewReader(strings.NewReader(s)).ReadAll()
	require.NoError(t, err)
	return rows
}

func TestCSV(t *testing.T) {
	c := talk(t)
	c.line("wall height = 40 in; gap = 2-1/2 in; span = 149 in; opening = 30 in; opening side = right")
	cuts := rowsOf(t, CSV(c.line("ask cuts"), "cuts"))
	require.Equal(t, []string{"wall", "piece", "bay", "rail", "post", "size", "length in", "count", "ends"}, cuts[0])
	require.Equal(t, []string{"", "rail", "1", "", "", "2x6", "115-5/16", "5", "square"}, cuts[1]) // 115-1/2 − 3/16: trade.md
	require.Len(t, cuts, 4)

	marks := rowsOf(t, CSV(c.line("ask marks"), "marks"))
	require.Equal(t, []string{"left end post", "1", "2-1/2", "8", "8-1/2"}, marks[1])
	require.Len(t, marks, 11)

	steps := c.line("ask steps")
	Say(steps, Options{})
	require.Len(t, rowsOf(t, CSV(steps, "steps")), len(steps.Steps)+1)

	options := rowsOf(t, CSV(c.line("ask options"), "options"))
	require.Equal(t, []string{"5", "", "", "2-1/2", "2-1/2", "2-1/2", "2-1/2", "40", "40", "", "", "", ""}, options[1])

	require.Empty(t, CSV(&solver.Answer{}, "cuts"))
	require.Empty(t, CSV(c.base, "gap"))
}

func TestCSVIsAnAnswerOfItsOwn(t *testing.T) {
	c := talk(t)
	c.line("wall height = 40 in; gap = 2-1/2 in; span = 149 in; opening = 30 in")
	a := c.line("ask cuts")
	a.To.As, a.To.Topic = "csv", "cuts"
	Say(a, Options{})
	require.Equal(t, CSV(a, "cuts"), a.Text)
	require.NotEmpty(t, a.Spoken)
}

// A spreadsheet takes a cell that begins with one of these for a formula.
func TestCSVHoldsNoFormula(t *testing.T) {
	a := &solver.Answer{Shopping: []solver.Buy{{Item: "=1+1", Count: 1}, {Item: "@x", Count: 1}, {Item: "a,\"b\"", Count: 2}}}
	rows := rowsOf(t, CSV(a, "shopping"))
	require.Equal(t, "'=1+1", rows[1][0])
	require.Equal(t, "'@x", rows[2][0])
	require.Equal(t, "a,\"b\"", rows[3][0])
	require.Equal(t, "-1-1/2", harmless("-1-1/2"))
}

func TestPlanAsCSV(t *testing.T) {
	a := &solver.Answer{Plan: []solver.Board{{Size: "2x6", Board: exact.Int(192), Times: 2, Have: true,
		Pieces: []exact.Rat{exact.Must("919/8"), exact.Int(60)}, Left: exact.Must("67/4")}}}
	rows := rowsOf(t, CSV(a, "plan"))
	require.Equal(t, []string{"2x6", "192", "2", "114-7/8; 60", "16-3/4", "yes"}, rows[1])
}
