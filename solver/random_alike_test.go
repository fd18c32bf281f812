package solver

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// holdVariants: what must not matter does not.
func holdVariants(t *testing.T, w randomWall, a *Answer, d drawing) {
	require.Equal(t, bytesOf(t, a), bytesOf(t, Solve(bookOf(t, w.say...))), "the same input gives other bytes: %q", w.say)

	mixed := slices.Clone(w.say)
	d.Shuffle(len(mixed), func(i, j int) { mixed[i], mixed[j] = mixed[j], mixed[i] })
	holdAlike(t, a, mixed, "said in another order")

	metric := make([]string, len(w.say))
	for i, s := range w.say {
		st := say(t, s)
		st.Value.Unit, st.Upper.Unit = inMetric(st.Value.Unit), inMetric(st.Upper.Unit)
		for j := range st.Value.List {
			st.Value.List[j].Unit = inMetric(st.Value.List[j].Unit)
		}
		metric[i] = st.String()
	}
	holdAlike(t, a, metric, "said in millimeters")

	for _, s := range []string{"rails >= 1", "wall height >= 0 in", "gap >= 0 in", "bays >= 1", "bay > 0 in", "added posts >= 0"} {
		if isUp := upQuantities[nameOf(strings.Fields(s)[0]).Quantity] || strings.HasPrefix(s, "wall"); isUp != w.along && w.leavesRoom(s) {
			holdAlike(t, a, append(slices.Clone(w.say), s), "with an implied rule, "+s)
			break
		}
	}
	if a.Verdict == Blocked {
		return
	}
	for i, s := range w.say {
		// what stands in for these when nothing is said of them is a rule, too
		if w.fixed>>i&1 != 0 || strings.HasPrefix(s, "bracket") || strings.HasPrefix(s, "rail size") || strings.HasPrefix(s, "rail face") {
			continue
		}
		less := Solve(bookOf(t, slices.Delete(slices.Clone(w.say), i, i+1)...))
		require.NotEqual(t, Blocked, less.Verdict, "blocked without %q: %q", s, w.say)
	}
}

// leavesRoom reports whether nothing said would be replaced by s.
func (w randomWall) leavesRoom(s string) bool {
	r := bruteRead(s)
	return !slices.ContainsFunc(w.say, func(o string) bool {
		old := bruteRead(o)
		return old.name == r.name && (old.op == "in" || strings.HasPrefix(old.op, ">"))
	})
}

func inMetric(u Unit) Unit {
	if u == Inch {
		return Millimeter
	}
	return u
}

func holdAlike(t *testing.T, a *Answer, say []string, how string) {
	b := Solve(bookOf(t, say...))
	require.Equal(t, a.Verdict == Blocked, b.Verdict == Blocked, "%s: %q", how, say)
	require.Equal(t, optionsOfSolver(a), optionsOfSolver(b), "%s: %q", how, say)
	require.Len(t, b.Because, len(a.Because), "%s: %q", how, say)
}
