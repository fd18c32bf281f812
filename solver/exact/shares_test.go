package exact

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
)

// kept is the system with only the rules that are on; at tells each row's place in the whole.
func (s *System) kept(on []bool) (part *System, at []int) {
	part = &System{Vars: s.Vars}
	for i, r := range s.Rows {
		if r.Rule == Background || on[r.Rule] {
			part.Rows, at = append(part.Rows, r), append(at, i)
		}
	}
	return part, at
}

// oracle asks the solver; every refutation passes the checker on the way.
func oracle(t *testing.T, s *System) Oracle {
	return func(on []bool) (bool, []int) {
		part, _ := s.kept(on)
		point, cert := Solve(part)
		if point != nil {
			require.NoError(t, CheckPoint(part, point))
			return true, nil
		}
		require.NoError(t, Check(part, cert))
		return false, cert.Rules(part)
	}
}

// Conflicts of random systems against all subsets, each judged by elimination; and that the draws are worth their time.
func TestConflictsOfSystemsAgreeWithElimination(t *testing.T) {
	d := draw(90)
	const cases = 1500
	blocked, several, hopeless, loose := 0, 0, 0, 0
	for range cases {
		s := d.system()
		n := len(s.Rows) - 1 // row 0 is background
		want := exhaustive(n, func(on []bool) (bool, []int) {
			part, _ := s.kept(on)
			feasible, _, _ := verdict(part, nil)
			return feasible, nil
		})
		sets, complete := Conflicts(n, d.ranks(n), oracle(t, s), 10000)
		require.True(t, complete)
		require.Equal(t, len(want), len(sets), show(s))
		for i := range want {
			require.Equal(t, want[i], append([]int{}, sets[i]...), show(s))
		}
		switch {
		case len(want) > 1:
			several++
			fallthrough
		case len(want) == 1:
			blocked++
		}
		if len(want) > 0 && len(want[0]) == 0 {
			hopeless++
		}
		if len(want) > 0 && looseUnion(s, n) {
			loose++
		}
	}
	t.Logf("of %d random systems %d cannot be (%d %%), %d of them have several conflicts (%d %%), %d are refused by the background alone; "+
		"the first certificate is no smallest conflict in %d", cases, blocked, 100*blocked/cases, several, 100*several/cases, hopeless, loose)
	require.Greater(t, blocked, cases*3/10)
	require.Less(t, blocked, cases*8/10)
	require.Greater(t, several, cases/10)
	require.Greater(t, hopeless, 10)
}

// looseUnion reports whether the rules of the solver's certificate can do without one of them.
func looseUnion(s *System, n int) bool {
	on := make([]bool, n)
	_, cert := Solve(s)
	rules := cert.Rules(s)
	return slices.ContainsFunc(rules, func(leave int) bool {
		for r := range on {
			on[r] = r != leave && slices.Contains(rules, r)
		}
		part, _ := s.kept(on)
		point, _ := Solve(part)
		return point == nil
	})
}

// What a conflict is: it cannot hold, and it can with any one rule gone. On walls, which are too large to try all subsets.
func TestConflictsOfWallsAreSmallest(t *testing.T) {
	d := draw(91)
	several := 0
	for range 400 {
		s := d.wall()
		n := len(s.Rows)
		ask := oracle(t, s)
		sets, complete := Conflicts(n, nil, ask, 10000)
		require.True(t, complete)
		if len(sets) > 1 {
			several++
		}
		for _, set := range sets {
			on := make([]bool, n)
			for _, r := range set {
				on[r] = true
			}
			feasible, _ := ask(on)
			require.False(t, feasible, show(s))
			for _, r := range set {
				on[r] = false
				feasible, _ := ask(on)
				require.True(t, feasible, show(s))
				on[r] = true
			}
		}
		for _, gone := range Hitting(sets, 2) { // and taking away what meets every conflict leaves something that can hold
			on := make([]bool, n)
			for r := range on {
				on[r] = !slices.Contains(gone, r)
			}
			feasible, _ := ask(on)
			require.True(t, feasible, show(s))
		}
	}
	require.Greater(t, several, 40)
}

// Conflicts are the same in whatever order the rules were said.
func TestConflictsDoNotDependOnOrder(t *testing.T) {
	d := draw(92)
	for range 300 {
		s := d.wall()
		n := len(s.Rows)
		want, _ := Conflicts(n, nil, oracle(t, s), 10000)
		again, _ := Conflicts(n, nil, oracle(t, s), 10000)
		require.Equal(t, want, again)
		got, _ := Conflicts(n, d.ranks(n), oracle(t, d.shuffled(s)), 10000)
		require.Equal(t, want, got, "rules keep their numbers, rows come otherwise")
		got, _ = Conflicts(n, nil, oracle(t, d.rescaled(s)), 10000)
		require.Equal(t, want, got)
	}
}
