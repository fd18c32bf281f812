package solver

import (
	"encoding/json"
	"math/rand"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

// TestRandomConflicts: all smallest conflicts, against every subset of what was said.
func TestRandomConflicts(t *testing.T) {
	t.Parallel()
	rnd := rand.New(rand.NewSource(22))
	walls, sets := 0, 0
	for walls < few(t, 160) {
		lines := randomUp(rnd)
		b := bookOf(t, lines...)
		v := pose(b).solveFields(false)
		if !v.blocked() {
			continue
		}
		walls++
		n := len(b.said)
		holds := make([]bool, 1<<n)
		for mask := range holds {
			var ss []Statement
			smaller := true
			for i := range n {
				if mask&(1<<i) != 0 {
					ss = append(ss, b.said[i])
					smaller = smaller && holds[mask&^(1<<i)]
				}
			}
			holds[mask] = smaller && upCanHold(ss, 14)
		}
		var want []string
		for mask := range holds {
			minimal := !holds[mask]
			var names []string
			for i := range n {
				if mask&(1<<i) != 0 {
					minimal = minimal && holds[mask&^(1<<i)]
					names = append(names, b.said[i].String())
				}
			}
			if minimal {
				slices.Sort(names)
				want = append(want, strings.Join(names, "; "))
			}
		}
		cs, complete := v.fields[0].clashes()
		require.True(t, complete)
		var got []string
		for _, c := range cs {
			told := c.conflict()
			require.NoError(t, told.Fault)
			require.True(t, told.Proven)
			require.NotEmpty(t, told.Work)
			require.Equal(t, "false", told.Work[len(told.Work)-1].Equals)
			var names []string
			for _, r := range told.Rules {
				names = append(names, r.From.String())
			}
			slices.Sort(names)
			got = append(got, strings.Join(names, "; "))
		}
		slices.Sort(want)
		slices.Sort(got)
		require.Equal(t, want, got, "%q", lines)
		sets += len(want)
	}
	t.Logf("%d blocked walls, %d smallest conflicts", walls, sets)
}

// TestRandomWays: every single change mends at its amount and not a hair below it; where none is offered, none of the
// lengths and counts could be changed to mend it, however far.
func TestRandomWays(t *testing.T) {
	t.Parallel()
	rnd := rand.New(rand.NewSource(23))
	hair := exact.New(1, 4096)
	changes, none := 0, 0
	for changes < few(t, 1200) {
		lines := randomUp(rnd)
		b := bookOf(t, lines...)
		a := Solve(b)
		if a.Verdict != Blocked {
			continue
		}
		single := false
		for _, w := range a.Ways {
			for _, c := range w.Changes {
				require.NotEmpty(t, c.To)
			}
			if len(w.Changes) != 1 {
				continue
			}
			single = true
			c := w.Changes[0]
			if strings.HasPrefix(c.To, "forget") {
				continue
			}
			require.True(t, upCanHold(b.changed(c).said, 40), "%q: %s", lines, c.To)
			if KindOf(c.Old.Name.Quantity) != Length {
				continue
			}
			changes++
			less, ok := nearly(c, hair)
			if ok {
				require.False(t, upCanHold(b.changed(Change{Old: c.Old, New: less}).said, 40), "%q: %s, and %s holds too", lines, c.To, less)
			}
		}
		if single {
			continue
		}
		none++
		for i, s := range b.said {
			rest := slices.Delete(slices.Clone(b.said), i, i+1)
			if KindOf(s.Name.Quantity) == Size {
				continue // only sizes that are sold could take its place
			}
			require.False(t, upCanHold(rest, 40), "%q: without %s it holds, and no way is offered", lines, s)
		}
	}
	t.Logf("%d changes of a length, %d walls that no single change mends", changes, none)
	require.Positive(t, none)
}

// nearly is a change a hair short of enough. Of an end that is not reached, that is the end itself.
func nearly(c Change, hair exact.Rat) (Statement, bool) {
	by := exact.Must(c.By)
	out := c.Old
	toward := func(old, now exact.Rat) exact.Rat {
		step := by.Sub(hair)
		if !now.Sub(old).Abs().Eq(by) { // the end is not reached: at it, nothing is mended
			step = by
		}
		if now.Less(old) {
			return old.Sub(step)
		}
		return old.Add(step)
	}
	if c.Old.Op == In && !c.Old.Upper.Num.Eq(c.New.Upper.Num) {
		out.Upper.Num = toward(c.Old.Upper.Num, c.New.Upper.Num)
		return out, true
	}
	if by.Cmp(hair) <= 0 {
		return out, false
	}
	out.Value.Num = toward(c.Old.Value.Num, c.New.Value.Num)
	return out, true
}

// TestMetamorphic: less said never breaks, order and units do not matter, an implied rule changes no verdict, and the
// same input gives the same bytes.
func TestMetamorphic(t *testing.T) {
	rnd := rand.New(rand.NewSource(24))
	for range few(t, 600) {
		lines := randomUp(rnd)
		b := bookOf(t, lines...)
		a := Solve(b)
		same, err := json.Marshal(Solve(b))
		require.NoError(t, err)
		again, err := json.Marshal(a)
		require.NoError(t, err)
		require.Equal(t, string(same), string(again), "%q", lines)
		turned := slices.Clone(lines)
		rnd.Shuffle(len(turned), func(i, j int) { turned[i], turned[j] = turned[j], turned[i] })
		other := Solve(bookOf(t, turned...))
		require.Equal(t, a.Verdict, other.Verdict, "%q", turned)
		require.Equal(t, a.Options, other.Options, "%q", turned)
		metric := b
		metric.said = slices.Clone(b.said)
		for i := range metric.said {
			if metric.said[i].Value.Unit == Inch {
				metric.said[i].Value.Unit, metric.said[i].Upper.Unit = Millimeter, Millimeter
			}
		}
		require.Equal(t, a.Options, Solve(metric).Options, "%q", lines)
		implied := b
		implied.said = append(slices.Clone(b.said), say(t, "wall height >= 1 in"))
		require.Equal(t, a.Verdict, Solve(implied).Verdict, "%q", lines)
		if a.Verdict != Blocked {
			fewer := b
			i := rnd.Intn(len(b.said))
			if _, filled := defaultOf(b.said[i].Name.Quantity); filled || b.said[i].Name.Quantity == BracketEar {
				continue // a part has its own figure where nothing is said of it: that is another rule, not one less
			}
			fewer.said = slices.Delete(slices.Clone(b.said), i, i+1)
			require.NotEqual(t, Blocked, Solve(fewer).Verdict, "%q without %s", lines, b.said[i])
		}
	}
}
