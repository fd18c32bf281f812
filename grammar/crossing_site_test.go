package grammar

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
)

// crossingMark is how many lines of the crossing are heard right, of all: it may only go up. The others are asked back, none is misread.
const crossingMark = 1330

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
