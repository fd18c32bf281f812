package solver

// segments lists the openings behind each segment of bays: one ends at each opening whose place a law speaks of, with
// the others of its group before it; what is left over stands at the right end.
func (p *problem) segments(k int) [][]int {
	var groups [][]int
	var open []int
	for i := 1; i <= k; i++ {
		open = append(open, i)
		if p.watches(i, k) {
			groups, open = append(groups, open), nil
		}
	}
	return append(groups, open)
}

// parts reports whether bay, at element at, must not join the bay before it.
func (s *sheet) parts(bay, at int) bool {
	return s.p.namesBay(bay) || s.p.namesBay(bay-1) || s.solo(bay) || s.solo(bay-1) || s.p.namesPost(at)
}

func (s *sheet) solo(bay int) bool { return bay < maxLaws && s.named.has(bay) }

func (p *problem) namesBay(i int) bool { return i >= 0 && i < maxLaws && p.named.bays.has(i) }
