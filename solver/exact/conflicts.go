package exact

import (
	"cmp"
	"slices"
)

// Oracle says whether the rules that are on can hold together. When they cannot, core lists rules among them that already
// cannot; it need not be minimal. What is never to be blamed is inside the oracle and always on.
type Oracle func(on []bool) (feasible bool, core []int)

// Conflicts returns the smallest conflicts among n rules: each set cannot hold together, and can with any one rule gone.
// They come smallest first, then in order of their rules; [[]] when even no rule at all cannot hold.
//
// last ranks the rules (nil: all alike): where a set is reduced, rules of lower rank are dropped first, and among equals the
// first. limit caps the calls of the oracle; when it is hit, complete is false, and the sets found so far are minimal.
//
// The method is that of MARCO (Liffiton, Previti, Malik and Marques-Silva, Fast, flexible MUS enumeration, Constraints 21,
// 2016): ask about a greatest set not yet explored; where it holds, all that is in it is explored; where it does not, reduce
// it to a conflict, and all that contains that is explored. The greatest unexplored sets are what is left when a smallest
// set of rules that meets every conflict known so far is taken away (Reiter, A theory of diagnosis from first principles,
// 1987); they are searched depth first, pass after pass, until a pass finds no new conflict.
func Conflicts(n int, last []int, oracle Oracle, limit int) (sets [][]int, complete bool) {
	e := &explorer{n: n, rank: last, ask: oracle, left: limit, on: make([]bool, n)}
	for !e.stuck {
		before := len(e.conflicts)
		e.descend(newSubset(n), newSubset(n))
		if len(e.conflicts) == before {
			break
		}
	}
	sets = make([][]int, len(e.conflicts))
	for i, c := range e.conflicts {
		sets[i] = c.members()
	}
	sortSets(sets)
	return sets, !e.stuck
}

// explorer is the map of what is known: conflicts, and the rules whose removal was found to be enough.
type explorer struct {
	n         int
	rank      []int
	ask       Oracle
	left      int  // calls of the oracle still allowed
	stuck     bool // a call was wanted and not allowed
	on        []bool
	conflicts []subset
	mended    []subset // each a smallest set of rules without which the rest holds
}

// descend takes the rules of off away, and one more for every known conflict that is left, those in keep excepted; what then
// has no known conflict is put to the oracle.
func (e *explorer) descend(off, keep subset) {
	if e.stuck || !e.needed(off) || e.isMended(off) {
		return
	}
	i := slices.IndexFunc(e.conflicts, func(c subset) bool { return !c.meets(off) })
	if i < 0 {
		if !e.explore(off) {
			return
		}
		i = len(e.conflicts) - 1
	}
	keep = keep.clone()
	for _, r := range e.conflicts[i].members() {
		if keep.has(r) {
			continue
		}
		off.set(r)
		e.descend(off, keep)
		off.unset(r)
		keep.set(r) // the branches after this one keep r, so that no set is reached twice
	}
}

// needed reports whether each rule of off is the only one of them in some known conflict; else off is not a smallest set.
func (e *explorer) needed(off subset) bool {
	for _, r := range off.members() {
		if !slices.ContainsFunc(e.conflicts, func(c subset) bool { return c.meetsOnlyAt(off, r) }) {
			return false
		}
	}
	return true
}

func (e *explorer) isMended(off subset) bool {
	return slices.ContainsFunc(e.mended, func(m subset) bool { return m.equal(off) })
}

// explore asks about all rules but those of off, and returns true when that led to a new conflict.
func (e *explorer) explore(off subset) bool {
	rest := fullSubset(e.n)
	rest.remove(off)
	feasible, core, ok := e.call(rest)
	switch {
	case !ok:
		return false
	case feasible:
		e.mended = append(e.mended, off.clone())
		return false
	}
	c, ok := e.reduce(core)
	if ok {
		e.conflicts = append(e.conflicts, c)
	}
	return ok
}

// reduce drops rules from a set that cannot hold until every rule left is needed; ok is false when the limit is hit first.
func (e *explorer) reduce(c subset) (least subset, ok bool) {
	order := c.members()
	if e.rank != nil {
		slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(e.rank[a], e.rank[b]) })
	}
	for _, r := range order {
		if !c.has(r) {
			continue
		}
		less := c.clone()
		less.unset(r)
		if e.knownToHold(less) {
			continue
		}
		feasible, core, ok := e.call(less)
		if !ok {
			return nil, false
		}
		if !feasible {
			c = core
		}
	}
	return c, true
}

// knownToHold reports whether a set lies within one that was found to hold.
func (e *explorer) knownToHold(c subset) bool {
	return slices.ContainsFunc(e.mended, func(m subset) bool { return !m.meets(c) })
}

// call puts a set to the oracle; core is at most that set. ok is false when no call is left.
func (e *explorer) call(set subset) (feasible bool, core subset, ok bool) {
	if e.left <= 0 {
		e.stuck = true
		return false, nil, false
	}
	e.left--
	for r := range e.on {
		e.on[r] = set.has(r)
	}
	feasible, named := e.ask(e.on)
	if feasible {
		return true, nil, true
	}
	core = newSubset(e.n)
	for _, r := range named {
		if r >= 0 && r < e.n && set.has(r) {
			core.set(r)
		}
	}
	return false, core, true
}
