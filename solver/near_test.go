package solver

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

// nearFact finds the first fact of a key.
func nearFact(a *Answer, key string) (Fact, bool) {
	for _, f := range a.Facts {
		if f.Key == key {
			return f, true
		}
	}
	return Fact{}, false
}

func mm(n int64) Value { return Value{Num: exact.Int(int(n)).Div(PerInch), Unit: Millimeter} }

// bookSaying says statements one after another.
func bookSaying(t *testing.T, list ...Statement) Book {
	t.Helper()
	b := Book{}
	for _, s := range list {
		next, _, _, err := b.With(s, nil)
		require.NoError(t, err)
		b = next
	}
	return b
}

// Of a wall of a meter five rails leave 80 mm and six 46-2/3: about 50 wants six, where the brackets let them be, though the rule of thumb for the lowest
// rail does not; and where they do not, the answer says so.
func TestNearestToAWishAmongThoseThatHold(t *testing.T) {
	wall := []Statement{Of(WallHeight, Eq, mm(1000)), Of(RailSize, Eq, Value{Word: "120x45"}), Of(Gap, Near, mm(50))}
	for _, row := range []struct {
		clears string
		rails  int
		nearer bool
	}{
		{"2", 5, true}, // 46-2/3 mm is under 2 in
		{"3/2", 6, false},
	} {
		a := Solve(bookSaying(t, append(wall, Of(BracketClearance, Eq, inches(row.clears)))...))
		require.Equal(t, row.rails, a.Layout.Rails, row.clears)
		f, ok := nearFact(a, "off the wish")
		require.True(t, ok)
		require.True(t, f.Nums[2].Eq(a.Layout.Gap.Sub(mm(50).Num)), "what it is off by")
		near, told := nearFact(a, "nearer but")
		require.Equal(t, row.nearer, told, row.clears)
		if told {
			require.True(t, near.Nums[0].Eq(exact.Int(6)))
			require.True(t, near.Nums[1].Less(near.Nums[2]))
		}
	}
}

// A rule of thumb is set aside only where that brings the layout nearer.
func TestThumbStaysWhereItCostsNothing(t *testing.T) {
	a := Solve(bookSaying(t, Of(WallHeight, Eq, inches("48")), Of(Gap, Near, inches("3")), Of(BracketClearance, Eq, inches("1"))))
	require.Equal(t, 6, a.Layout.Rails)
	for _, o := range a.Options.Up {
		require.False(t, o.BottomGap[0].Val.Less(exact.Int(2)), "the bottom rail stays off the floor in all options")
	}
}

// Wishes for stiffeners choose how many are set, and never a post.
func TestWishForStiffenersSetsNoPosts(t *testing.T) {
	span := Of(Span, Eq, inches("149"))
	for _, row := range []struct {
		wish Statement
		want int
	}{
		{Of(StiffenerSpacing, Near, inches("60")), 2}, // 149/3 = 49-2/3 is nearer than 149/2 = 74-1/2
		{Of(StiffenerSpacing, Near, inches("75")), 1},
		{Of(StiffenerSpacing, Near, inches("40")), 3}, // 149/4 = 37-1/4
		{Of(Stiffeners, Near, Number(5)), 5},
		{Of(Stiffeners, Near, Number(1)), 3}, // 48 apart or less, as nobody spoke of how far apart they are
	} {
		a := Solve(bookSaying(t, span, row.wish))
		require.Empty(t, a.Layout.Posts, row.wish.String())
		require.Len(t, a.Layout.Bays[0].Stiffeners, row.want, row.wish.String())
	}
}

// Lengths that were all said in metric units are shown in them, unless units were said.
func TestShownAsSaid(t *testing.T) {
	metric := bookSaying(t, Of(WallHeight, Eq, mm(1200)), Of(Rails, Eq, Number(6)))
	require.True(t, metric.Metric())
	require.True(t, Solve(metric).Tape.Eq(mm(1).Num))
	require.False(t, bookSaying(t, Of(WallHeight, Eq, mm(1200)), Of(Gap, Eq, inches("2"))).Metric())
	require.False(t, bookSaying(t, Of(WallHeight, Eq, mm(1200)), Of(Units, Eq, Value{Word: "customary"})).Metric())
	require.False(t, bookSaying(t, Of(Rails, Eq, Number(6))).Metric())
}
