package solver

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestWhatWasCutShortClaimsNothing: once the work allowed for an answer is done, nothing that was not looked at is said to be
// blocked, and no conflict is called proven.
func TestWhatWasCutShortClaimsNothing(t *testing.T) {
	book := bookOf(t, "span = 95 in", "opening = 30 in", "opening from left = 50 in", "bay >= 47 in")
	p := pose(book)
	*p.spent = answerLimit + 1
	v := p.work(true)
	a := &Answer{To: Reply{Kind: "state"}}
	v.tell(a)
	require.NotEqual(t, Blocked, a.Verdict)
	require.Empty(t, a.Because)
	require.Equal(t, "too much to try", a.Ask.Key)

	p = pose(book)
	v = p.work(true)
	require.True(t, v.blocked())
	cs, complete := v.fields[0].clashes()
	require.True(t, complete)
	*p.spent = answerLimit + 1
	require.False(t, cs[0].conflict().Proven)
}

// TestStiffenersThatContradict: no bay has four or more of them and none.
func TestStiffenersThatContradict(t *testing.T) {
	for _, more := range []string{"bays >= 1", "stiffener spacing >= 10 in", "stiffener spacing <= 30 in"} {
		a := Solve(bookOf(t, "stiffeners >= 4", "stiffeners <= 2", "span = 96 in", more))
		require.Equal(t, Blocked, a.Verdict)
		require.True(t, slices.ContainsFunc(a.Conflicts, func(c Conflict) bool {
			return len(c.Rules) == 2 && c.Rules[0].Rule == "stiffeners" && c.Rules[1].Rule == "stiffeners" && c.Proven
		}))
		var told []string
		for _, w := range a.Ways {
			told = append(told, w.Changes[0].To)
		}
		require.Contains(t, told, "stiffeners >= 2")
		require.Contains(t, told, "stiffeners <= 4")
	}
}
