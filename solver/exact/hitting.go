package exact

import (
	"cmp"
	"slices"
)

// Hitting returns all smallest sets of at most size members that have a member in every given set, so that none of them
// contains another: over all conflicts of a system, the rules to take away together so that the rest can hold. They come
// smallest first, then in order of their members. Members are not negative. A given set that is empty cannot be met.
func Hitting(sets [][]int, size int) [][]int {
	n := 0
	for _, s := range sets {
		for _, r := range s {
			n = max(n, r+1)
		}
	}
	h := &hitter{size: size}
	for _, s := range sets {
		b := newSubset(n)
		for _, r := range s {
			b.set(r)
		}
		h.known.conflicts = append(h.known.conflicts, b)
	}
	h.descend(newSubset(n), newSubset(n), 0)
	sortSets(h.found)
	return h.found
}

type hitter struct {
	size  int
	known explorer
	found [][]int
}

func (h *hitter) descend(taken, keep subset, count int) {
	if !h.known.needed(taken) {
		return
	}
	i := slices.IndexFunc(h.known.conflicts, func(c subset) bool { return !c.meets(taken) })
	if i < 0 {
		h.found = append(h.found, taken.members())
		return
	}
	if count >= h.size {
		return
	}
	keep = keep.clone()
	for _, r := range h.known.conflicts[i].members() {
		if !keep.has(r) {
			taken.set(r)
			h.descend(taken, keep, count+1)
			taken.unset(r)
			keep.set(r)
		}
	}
}

// sortSets puts smaller sets first, and sets of one size in order of their members.
func sortSets(sets [][]int) {
	slices.SortFunc(sets, func(a, b []int) int {
		return cmp.Or(cmp.Compare(len(a), len(b)), slices.Compare(a, b))
	})
}
