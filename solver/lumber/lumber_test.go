package lumber

import (
	"errors"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

// The figures below were typed from the published table (DOC PS 20, as transcribed in the NDS Supplement 2018, table 1A)
// as mixed numbers, apart from the fractions in the package.
func TestDressedSizes(t *testing.T) {
	mixed := func(w, n, d int64) exact.Rat { return exact.New(w*d+n, d) }
	for name, want := range map[string][2]exact.Rat{
		"1x4": {mixed(0, 3, 4), mixed(3, 1, 2)}, "1x6": {mixed(0, 3, 4), mixed(5, 1, 2)}, "1x8": {mixed(0, 3, 4), mixed(7, 1, 4)},
		"5/4x4": {mixed(1, 0, 1), mixed(3, 1, 2)}, "5/4x6": {mixed(1, 0, 1), mixed(5, 1, 2)},
		"2x2": {mixed(1, 1, 2), mixed(1, 1, 2)}, "2x3": {mixed(1, 1, 2), mixed(2, 1, 2)}, "2x4": {mixed(1, 1, 2), mixed(3, 1, 2)},
		"2x6": {mixed(1, 1, 2), mixed(5, 1, 2)}, "2x8": {mixed(1, 1, 2), mixed(7, 1, 4)}, "2x10": {mixed(1, 1, 2), mixed(9, 1, 4)},
		"2x12": {mixed(1, 1, 2), mixed(11, 1, 4)}, "4x4": {mixed(3, 1, 2), mixed(3, 1, 2)}, "4x6": {mixed(3, 1, 2), mixed(5, 1, 2)},
		"6x6": {mixed(5, 1, 2), mixed(5, 1, 2)},
	} {
		got, err := Find(name)
		require.NoError(t, err, name)
		require.True(t, got.Thickness.Eq(want[0]), "%s thickness %s", name, got.Thickness)
		require.True(t, got.Face.Eq(want[1]), "%s face %s", name, got.Face)
		require.False(t, got.Metric || got.FromMemory)
		require.Contains(t, got.Source, "PS 20")
	}
}

// Same source, the green columns of two rows; and no green size may be smaller than the dry one.
func TestGreenSizes(t *testing.T) {
	six, err := Find("2x6")
	require.NoError(t, err)
	require.Equal(t, "25/16", six.Green.Thickness.String())
	require.Equal(t, "45/8", six.Green.Face.String())
	for _, s := range All() {
		if s.Green != nil {
			require.False(t, s.Green.Face.Less(s.Face) || s.Green.Thickness.Less(s.Thickness), s.Name)
		}
	}
}

func TestOrderAsSaid(t *testing.T) {
	a, err := Find("6x2")
	require.NoError(t, err)
	require.Equal(t, "6x2", a.Name)
	require.Equal(t, "11/2", a.Face.String())
	b, err := Find("90x45")
	require.NoError(t, err)
	require.Equal(t, "90x45", b.Name)
	require.True(t, b.Metric && b.FromMemory)
	require.Equal(t, "from memory", b.Source[len(b.Source)-len("from memory"):])
	require.True(t, b.Face.Eq(exact.New(900, 254)), "90 mm")
	require.True(t, b.Thickness.Eq(exact.New(450, 254)), "45 mm")
}

func TestMetricIsItsOwnSize(t *testing.T) {
	s, err := Find("120x28")
	require.NoError(t, err)
	require.Equal(t, itsOwnSize, s.Source)
	require.False(t, s.FromMemory)
	require.True(t, s.Face.Mul(exact.New(254, 10)).Eq(exact.Int(120)))
	s, err = Find("89x38")
	require.NoError(t, err)
	require.True(t, s.FromMemory, "the CLS values are known from memory only")
	s, err = Find("140x89")
	require.NoError(t, err)
	require.False(t, s.FromMemory)
	require.Contains(t, s.Source, "trade table")
}

func TestUnknown(t *testing.T) {
	for _, name := range []string{"", "x", "2x", "x6", "2x7", "3x5", "two by six", "2x6x8", "-2x6", "0x4", "1e3x4",
		"2x99999999999999999999", "10x10", "2/0x4", "NaNx4"} {
		_, err := Find(name)
		var u *Unknown
		require.True(t, errors.As(err, &u), name)
		require.Contains(t, u.Known, "2x6")
		require.Contains(t, err.Error(), "want one of")
	}
	// A wide timber is refused with the reason: the published tables disagree on it.
	for _, name := range []string{"6x8", "8x8", "8x6", "6x12"} {
		_, err := Find(name)
		require.ErrorContains(t, err, "disagree", name)
	}
}

func TestAllAreFound(t *testing.T) {
	seen := map[string]bool{}
	for _, s := range All() {
		require.False(t, seen[s.Name], s.Name)
		seen[s.Name] = true
		require.False(t, s.Face.Less(s.Thickness), s.Name)
		require.NotEmpty(t, s.Source)
		again, err := Find(s.Name)
		require.NoError(t, err)
		require.Equal(t, s, again)
	}
	require.Greater(t, len(seen), 30)
}
