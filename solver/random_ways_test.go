package solver

import (
	"math/big"
	"math/bits"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// holdConflicts: each conflict cannot hold and can with any one rule gone, and no other smallest conflict exists.
func holdConflicts(t *testing.T, w randomWall, a *Answer, exhaustive bool, c *randomCount) {
	rules := bruteReadAll(w.say)
	var told []uint
	for _, because := range a.Because {
		var m uint
		for _, r := range because {
			at := slices.Index(w.say, r.Says)
			require.GreaterOrEqual(t, at, 0, "%q is none of %q", r.Says, w.say)
			m |= 1 << at
		}
		told = append(told, m)
	}
	require.NotEmpty(t, told, "%q", w.say)
	if len(told) > 1 {
		c.several++
	}
	for i, m := range told {
		require.False(t, w.holds(rules, m), "%v can hold: %q", a.Because[i], w.say)
		for j := range told {
			require.False(t, i != j && m&told[j] == m, "one conflict holds another: %q", w.say)
		}
	}
	if slices.ContainsFunc(a.Facts, func(f Fact) bool { return f.Key == "not fully reduced" }) {
		c.unreduced++ // the limit on work was reached, and the answer says so
		return
	}
	told = smallest(told, w.fixed)
	for _, m := range told {
		for i := range rules {
			if m>>i&1 != 0 {
				require.True(t, w.holds(rules, m&^(1<<i)), "%v is not smallest, %q is not needed: %q", a.Because, w.say[i], w.say)
			}
		}
	}
	// None is missing: a smallest conflict that was not told would be whole in what is left when every conflict that was
	// told loses a rule, in one of the smallest ways to do so. It would keep that from holding.
	for _, h := range hits(told) {
		require.True(t, w.holds(rules, bruteEvery(rules)&^h), "a conflict is missing: without %b of %q it still cannot hold", h, w.say)
	}
	if exhaustive && len(rules)-bits.OnesCount(w.fixed) <= 9 {
		c.exhaustive++
		slices.Sort(told)
		require.Equal(t, everyConflict(w, rules), told, "%q", w.say)
	}
}

// smallest leaves out the fixed rules, and then each set that holds another.
func smallest(sets []uint, fixed uint) (out []uint) {
	for i := range sets {
		m := sets[i] &^ fixed
		if !slices.ContainsFunc(sets, func(o uint) bool { o &^= fixed; return o != m && o&m == o }) && !slices.Contains(out, m) {
			out = append(out, m)
		}
	}
	return out
}

// hits lists the smallest sets that take a rule from every one of the sets.
func hits(sets []uint) []uint {
	all := []uint{0}
	for _, s := range sets {
		var next []uint
		for _, h := range all {
			if h&s != 0 {
				next = append(next, h)
				continue
			}
			for rest := s; rest != 0; rest &= rest - 1 {
				next = append(next, h|rest&-rest)
			}
		}
		all = smallest(next, 0)
	}
	return all
}

// everyConflict asks after every set of rules, small ones first.
func everyConflict(w randomWall, rules []bruteRule) (out []uint) {
	for size := 0; size <= len(rules); size++ {
		for m := uint(0); m <= bruteEvery(rules); m++ {
			if m&w.fixed != 0 || bits.OnesCount(m) != size || slices.ContainsFunc(out, func(o uint) bool { return o&m == o }) {
				continue
			}
			if !w.holds(rules, m) {
				out = append(out, m)
			}
		}
	}
	slices.Sort(out)
	return out
}

// hair is far less than any tape shows.
var hair = big.NewRat(1, 4096)

// holdWays: each change of one rule holds as offered, and a hair less does not; where nothing is offered nothing exists.
func holdWays(t *testing.T, w randomWall, a *Answer, d drawing, c *randomCount) {
	rules := bruteReadAll(w.say)
	offered := map[string]bool{}
	singles := 0
	for _, way := range a.Ways {
		say := slices.Clone(w.say)
		known := true
		for _, ch := range way.Changes {
			at := slices.Index(w.say, ch.From)
			require.GreaterOrEqual(t, at, 0, "%q is none of %q", ch.From, w.say)
			known = known && ch.Rule != "openings"
			say[at] = ch.New.String()
			if strings.HasPrefix(ch.To, "forget ") {
				say[at] = "openings = " + w.openings() // says nothing new
			}
		}
		if !known {
			continue // with another number of openings the other rules mean other things
		}
		if len(way.Changes) == 2 {
			c.pairs++
			require.True(t, w.holdsAll(say), "%v does not mend %q", way.Changes, w.say)
			continue
		}
		singles++
		offered[way.Changes[0].From] = true
		c.waysTried++
		require.True(t, w.holdsAll(say), "%v does not mend %q", way.Changes, w.say)
		at := slices.Index(w.say, way.Changes[0].From)
		holdLeast(t, w, rules, at, way.Changes[0], d, c)
	}
	if len(a.Ways) == mostWays {
		return
	}
	if singles == 0 {
		c.unmended++
	}
	for i, r := range rules {
		if offered[w.say[i]] || w.fixed>>i&1 != 0 {
			continue
		}
		if r.name == "rail size" {
			require.False(t, w.sizeMends(i), "another size would mend %q", w.say)
			continue
		}
		for _, free := range r.atAnyFigure() {
			freed := slices.Clone(rules)
			freed[i] = free
			require.False(t, w.holds(freed, bruteEvery(rules)), "a change of %q would mend %q; offered: %v", w.say[i], w.say, offered)
		}
	}
}

func (w randomWall) openings() string {
	for _, s := range w.say {
		if n, ok := strings.CutPrefix(s, "openings = "); ok {
			return n
		}
	}
	return "0"
}

func (w randomWall) sizeMends(at int) bool {
	say := slices.Clone(w.say)
	for _, size := range []string{"2x4", "2x6", "2x8", "2x10", "2x12"} {
		say[at] = "rail size = " + size
		if w.holdsAll(say) {
			return true
		}
	}
	return false
}

// holdLeast: nothing less than the change would do, whichever way.
func holdLeast(t *testing.T, w randomWall, rules []bruteRule, at int, ch Change, d drawing, c *randomCount) {
	old := rules[at]
	with := func(by *big.Rat, way int) bool {
		next := slices.Clone(rules)
		next[at] = old.moved(by, way)
		return w.holds(next, bruteEvery(next))
	}
	ways := old.loosening()
	by, ok := new(big.Rat).SetString(ch.By)
	if !ok || old.word != "" || old.op == "" {
		return // a size or a side: there is no less of it
	}
	if isCount(old.name) {
		for n := int64(1); big.NewRat(n, 1).Cmp(by) < 0; n++ {
			for _, way := range ways {
				require.False(t, with(big.NewRat(n, 1), way), "%d less than %v would mend %q", n, ch, w.say)
			}
		}
		return
	}
	if by.Sign() == 0 && ch.To == ch.New.String() { // its end may be reached now, and no figure is another
		require.Contains(t, []string{">=", "<="}, bruteRead(ch.To).op, "%q", w.say)
		require.False(t, w.holds(rules, bruteEvery(rules)), "%q was not blocked", w.say)
		return
	}
	less := new(big.Rat).Sub(by, hair)
	if less.Sign() <= 0 {
		less = new(big.Rat).Quo(by, big.NewRat(2, 1))
	}
	part := new(big.Rat).Mul(by, big.NewRat(int64(d.between(1, 63)), 64))
	for _, way := range ways {
		require.False(t, with(less, way), "a hair less than %q by %s would mend %q", ch.To, ch.By, w.say)
		require.False(t, with(part, way), "%s would mend %q rather than %s, %q", part, w.say, ch.By, ch.To)
	}
	toward := way(old, bruteRead(ch.New.String()))
	if ch.To == ch.New.String() {
		require.True(t, with(by, toward), "%q by %s does not mend %q", ch.To, ch.By, w.say)
		return
	}
	c.openEnds++
	require.Contains(t, []string{">", "<"}, bruteRead(ch.To).op, "%q", w.say)
	require.False(t, with(by, toward), "%q: its very end mends %q", ch.To, w.say)
	require.True(t, with(new(big.Rat).Add(by, hair), toward), "%q: a hair past its end does not mend %q", ch.To, w.say)
}

func isCount(name string) bool {
	return slices.Contains([]string{"rails", "bays", "added posts", "stiffeners"}, name)
}

// loosening lists the ways a rule gives: +1 its figure grows, -1 it shrinks.
func (r bruteRule) loosening() []int {
	switch r.op {
	case "<", "<=":
		return []int{1}
	case ">", ">=":
		return []int{-1}
	}
	return []int{1, -1}
}

// atAnyFigure is what is left of a rule whose figure may be anything: nothing, but of one length for all bays that they
// are alike. Of a range one end moves.
func (r bruteRule) atAnyFigure() []bruteRule {
	switch {
	case r.name == "bay" && r.op == "=":
		return []bruteRule{{name: "equal bays"}}
	case r.op == "in" && !isCount(r.name):
		return []bruteRule{{name: r.name, op: ">=", k: r.k}, {name: r.name, op: "<=", k: r.upper}}
	}
	return []bruteRule{{name: "openings"}}
}

// moved is the rule with its figure moved; of a range the end on that side.
func (r bruteRule) moved(by *big.Rat, way int) bruteRule {
	d := new(big.Rat).Mul(by, big.NewRat(int64(way), 1))
	if r.op == "in" && way > 0 {
		r.upper = new(big.Rat).Add(r.upper, d)
	} else {
		r.k = new(big.Rat).Add(r.k, d)
	}
	return r
}

func way(old, next bruteRule) int {
	if old.op == "in" && old.upper.Cmp(next.upper) < 0 {
		return 1
	}
	return next.k.Cmp(old.k)
}
