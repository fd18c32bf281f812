package grammar

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/solver"
	"saywright/solver/exact"
)

// crossingMark is how many lines of the crossing are heard right, of all: it may only go up. The others are asked back, none is misread.
const crossingMark = 1345

// TestSiteCrossing says what is told of the site and the shop in many shapes of a sentence, each with several fillings. A line of the list that
// begins with "fill" gives the fillings of a kind, one after the other; any other has a kind, a shape, and the normal forms that it says.
func TestSiteCrossing(t *testing.T) {
	t.Parallel()
	data, err := os.ReadFile("../testdata/phrases/crossing/site.tsv")
	require.NoError(t, err)
	fills, right, all := map[string][]*strings.Replacer{}, 0, 0
	for _, row := range strings.Split(strings.TrimSpace(string(data)), "\n") {
		cells := strings.Split(row, "\t")
		if strings.HasPrefix(row, "#") {
			continue
		}
		if cells[0] == "fill" {
			var places []string
			for _, c := range cells[2:] {
				name, value, ok := strings.Cut(c, "=")
				require.True(t, ok, row)
				places = append(places, "{"+name+"}", value)
			}
			fills[cells[1]] = append(fills[cells[1]], strings.NewReplacer(places...))
			continue
		}
		require.Len(t, cells, 3, row)
		require.NotEmpty(t, fills[cells[0]], row)
		for _, fill := range fills[cells[0]] {
			said, want := fill.Replace(cells[1]), fill.Replace(cells[2])
			all++
			r := Read(said, act.Context{})
			switch got := Normal(r.Acts); {
			case r.Ask != nil && want != "unclear":
			case r.Ask == nil && got == want || r.Ask != nil:
				right++
			default:
				t.Errorf("%q is heard as %q, and says %q", said, got, want)
			}
		}
	}
	t.Logf("%d of %d", right, all)
	require.GreaterOrEqual(t, right, crossingMark)
}

// TestWhichBay holds that a width at the floor or at the top is the first bay's only where no other bay stands.
func TestWhichBay(t *testing.T) {
	t.Parallel()
	for _, line := range []string{"the bay measures 139 at the bottom", "it measures 143-5/8 at the bottom and 143-7/8 at the top", "between the posts I get 140 at the floor and 141 at the top", "143-5/8 bottom, 143-7/8 top"} {
		require.Nil(t, Read(line, act.Context{}).Ask, line)
		r := Read(line, act.Context{ManyBays: true})
		require.NotNil(t, r.Ask, line)
		require.Equal(t, "Which bay is that?", r.Ask.Text, line)
		require.Len(t, r.Ask.Choices, 2, line)
		r = Read(line, act.Context{ManyBays: true, Settled: r.Ask.Choices[1:]})
		require.Contains(t, Normal(r.Acts), "measured bay 2 ", line)
	}
	for line, text := range map[string]string{
		"3 bottom, 2-1/2 top": "Is that the width of bay 1?",
		"6 rails at 5-1/2":    "Is that the gap between them, or how wide each is?",
	} {
		r := Read(line, act.Context{})
		require.NotNil(t, r.Ask, line)
		require.Equal(t, text, r.Ask.Text, line)
	}
	require.Nil(t, Read("first bay measures 66 at the bottom and 66-1/4 at the top", act.Context{ManyBays: true}).Ask)
}

// TestLeansAtTheTop holds that the top over which an end post leans is the wall's, where its height stands.
func TestLeansAtTheTop(t *testing.T) {
	t.Parallel()
	stands := act.Context{Now: func(n solver.Name) (exact.Rat, bool) {
		return exact.Int(42), n == solver.Name{Quantity: solver.WallHeight}
	}}
	r := Read("the left post leans in 1/4 at the top", stands)
	require.Nil(t, r.Ask)
	require.Equal(t, "left post leans 1/4 in right in 42 in", Normal(r.Acts))
	for _, line := range []string{"the left post leans in 1/4 at the top", "wall 48 high, left post doesn't lean in 1/4 at the top", "what if the wall is 48 high and the left post leans in 1/4 at the top"} {
		require.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}
