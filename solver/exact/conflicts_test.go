package exact

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
)

// family is an oracle made up of sets that cannot hold; it names more rules than it must, and counts its calls.
type family struct {
	sets  [][]int
	calls int
}

func (f *family) ask(on []bool) (bool, []int) {
	f.calls++
	for _, s := range f.sets {
		if !slices.ContainsFunc(s, func(r int) bool { return !on[r] }) {
			core := slices.Clone(s)
			for r := range on {
				if on[r] && (r*7+len(s))%3 == 0 && !slices.Contains(core, r) {
					core = append(core, r)
				}
			}
			return false, core
		}
	}
	return true, nil
}

// exhaustive tries every subset of n rules, smaller ones first, and keeps those that cannot hold and contain no other.
func exhaustive(n int, oracle Oracle) [][]int {
	on := make([]bool, n)
	var sets [][]int
	for size := 0; size <= n; size++ {
		for mask := range 1 << n {
			var set []int
			for r := range n {
				if on[r] = mask>>r&1 != 0; on[r] {
					set = append(set, r)
				}
			}
			if len(set) != size || slices.ContainsFunc(sets, func(s []int) bool { return contains(set, s) }) {
				continue
			}
			if feasible, _ := oracle(on); !feasible {
				sets = append(sets, append([]int{}, set...))
			}
		}
	}
	sortSets(sets)
	return sets
}

func contains(set, part []int) bool {
	return !slices.ContainsFunc(part, func(r int) bool { return !slices.Contains(set, r) })
}

func (d drawn) family(n int) *family {
	f := &family{}
	for range d.between(0, 6) {
		var s []int
		for r := range n {
			if d.oneIn(3) {
				s = append(s, r)
			}
		}
		f.sets = append(f.sets, s)
	}
	return f
}

func (d drawn) ranks(n int) []int {
	if d.oneIn(3) {
		return nil
	}
	last := make([]int, n)
	for r := range last {
		last[r] = d.between(0, 3)
	}
	return last
}

func TestConflictsAgreeWithExhaustiveSubsets(t *testing.T) {
	d := draw(50)
	several := 0
	for range 1500 {
		n := d.between(1, 9)
		f := d.family(n)
		want := exhaustive(n, f.ask)
		sets, complete := Conflicts(n, d.ranks(n), f.ask, 10000)
		require.True(t, complete)
		require.Equal(t, len(want), len(sets), "%v", f.sets)
		for i := range want {
			require.Equal(t, want[i], append([]int{}, sets[i]...))
		}
		if len(want) > 1 {
			several++
		}
	}
	require.Greater(t, several, 500)
}

// At every limit the sets are conflicts, and smallest ones; they are all of them exactly where complete says so.
func TestConflictsWithinALimit(t *testing.T) {
	d := draw(51)
	cut := 0
	for range 150 {
		n := d.between(2, 9)
		f := d.family(n)
		want := exhaustive(n, f.ask)
		last := d.ranks(n)
		f.calls = 0
		Conflicts(n, last, f.ask, 10000)
		need := f.calls
		for limit := range need + 2 {
			f.calls = 0
			sets, complete := Conflicts(n, last, f.ask, limit)
			require.LessOrEqual(t, f.calls, limit)
			require.Equal(t, limit >= need, complete)
			for _, s := range sets {
				require.True(t, slices.ContainsFunc(want, func(w []int) bool { return slices.Equal(w, s) }), "%v of %v", s, want)
			}
			if !complete {
				cut++
			} else {
				require.Len(t, sets, len(want))
			}
		}
	}
	require.Greater(t, cut, 500)
}

// Where two rules say the same, the one of lower rank is left out of the first conflict found.
func TestConflictsDropLowRanksFirst(t *testing.T) {
	f := &family{sets: [][]int{{0, 2}, {1, 2}}}
	plain := func(on []bool) (bool, []int) {
		feasible, _ := f.ask(on)
		core := []int{}
		for r := range on {
			if on[r] {
				core = append(core, r)
			}
		}
		return feasible, core
	}
	// Four calls: all rules, then each of the three left out in turn; the second conflict is out of reach.
	sets, complete := Conflicts(3, []int{0, 1, 2}, plain, 4)
	require.False(t, complete)
	require.Equal(t, [][]int{{1, 2}}, sets)
	sets, _ = Conflicts(3, []int{1, 0, 2}, plain, 4)
	require.Equal(t, [][]int{{0, 2}}, sets)
}

func TestConflictsOfNothing(t *testing.T) {
	never := func([]bool) (bool, []int) { return false, nil }
	always := func([]bool) (bool, []int) { return true, nil }
	for _, n := range []int{0, 1, 70} {
		sets, complete := Conflicts(n, nil, never, 1000)
		require.True(t, complete)
		require.Len(t, sets, 1)
		require.Empty(t, sets[0], "nothing said, and already it cannot be")
		sets, complete = Conflicts(n, nil, always, 1)
		require.True(t, complete)
		require.Empty(t, sets)
	}
	_, complete := Conflicts(3, nil, always, 0)
	require.False(t, complete)
}

// Forty rules and six conflicts that share rules: the number of calls stays small, and more than 64 rules are no matter.
func TestConflictsAmongManyRules(t *testing.T) {
	for _, n := range []int{40, 130} {
		f := &family{sets: [][]int{{0, 5}, {1, 5, 9}, {2, 3, 7}, {2, 9, n - 1}, {0, 30, n - 2}, {4, 7, 8, 31}}}
		sets, complete := Conflicts(n, nil, f.ask, 2000)
		t.Logf("%d rules: %d calls", n, f.calls)
		require.True(t, complete)
		want := slices.Clone(f.sets)
		sortSets(want)
		require.Equal(t, want, sets)
		require.Less(t, f.calls, 500)
	}
}

func TestHitting(t *testing.T) {
	d := draw(52)
	for range 400 {
		n := d.between(1, 8)
		f := d.family(n)
		meets := func(on []bool) (bool, []int) { // a set that meets them all is what cannot be made smaller
			for _, s := range f.sets {
				if !slices.ContainsFunc(s, func(r int) bool { return on[r] }) {
					return true, nil
				}
			}
			return false, nil
		}
		all := exhaustive(n, meets)
		for size := range n + 1 {
			var want [][]int
			for _, s := range all {
				if len(s) <= size {
					want = append(want, s)
				}
			}
			got := Hitting(f.sets, size)
			require.Equal(t, len(want), len(got), "%v", f.sets)
			for i := range want {
				require.Equal(t, want[i], append([]int{}, got[i]...))
			}
		}
	}
	require.Equal(t, [][]int{{}}, Hitting(nil, 3))
	require.Empty(t, Hitting([][]int{{1}, {}}, 3))
	require.Equal(t, [][]int{{5}, {3, 4}}, Hitting([][]int{{5, 3}, {4, 5}}, 2))
}
