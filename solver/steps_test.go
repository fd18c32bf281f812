package solver

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

func stepKeys(f Findings) (keys []string) {
	for _, st := range f.Steps {
		keys = append(keys, st.Key)
	}
	return keys
}

// The order of work of the trade (common practice, no source).
func TestStepsInOrder(t *testing.T) {
	s := leaningIn()
	f := s.Steps()
	require.Equal(t, []string{"site", "center line", "base", "anchors", "post up", "marks", "measured", "first cut", "cut", "seal",
		"brackets", "bottom rail", "rail by rail", "stiffeners", "post caps", "touch up", "clean up"}, stepKeys(f))
	for _, st := range f.Steps {
		everyLineTrue(t, st.Work)
		if st.Key == "bottom rail" {
			require.Equal(t, []exact.Rat{rat("5/2"), rat("5/2")}, st.Facts[0].Nums)
			require.Equal(t, []exact.Rat{rat("8-1/2")}, st.Facts[1].Nums)
		}
	}
	plain := single(1, "60")
	require.Equal(t, []string{"site", "marks", "measure", "first cut", "cut", "seal", "brackets", "bottom rail", "touch up", "clean up"}, stepKeys(plain.Steps()))
	require.Equal(t, "layout first", (&Site{}).Steps().Ask.Key)
	alone := &Site{Extra: []Statement{extra("2x6", "60", 1)}}
	require.Equal(t, "layout first", alone.Steps().Ask.Key)
}

func TestCapBoard(t *testing.T) {
	s := upstream()
	s.CapSize = "2x6"
	f := s.Cuts()
	last := f.Cuts[len(f.Cuts)-1]
	require.Equal(t, "cap", last.Piece)
	require.Equal(t, "115-1/2", Fraction(last.Length), "between the posts, without brackets")
	require.Contains(t, stepKeys(s.Steps()), "cap board")
}
