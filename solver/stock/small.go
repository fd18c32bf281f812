package stock

import (
	"math"
	"math/big"
)

// smallScales are parts of a unit of price in which charges are tried, few before many: a table that still closes its cases
// in tens of cents is easier to follow than one in millionths.
var smallScales = []float64{
	.01, .02, .04, .05, .1, .2, .25, .5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 16, 18, 20, 24, 25, 30, 36, 40, 48, 50, 60, 80, 100, 120,
	200, 250, 500, 1000, 2000, 5000, 10000,
}

// smallCases is up to how many cases a proof is made easier to follow.
const smallCases = 100

// simplify puts tables of small numbers in the place of those of a proof, where they close the same cases.
func (s *search) simplify(root *branch, target int64) {
	users := map[*table][]*branch{}
	var order []*table
	mixed := map[*table]bool{}
	n := 0
	root.leaves(func(b *branch) {
		n++
		for _, u := range b.leaf.uses {
			if users[u.t] == nil {
				order = append(order, u.t)
			}
			users[u.t] = append(users[u.t], b)
			mixed[u.t] = mixed[u.t] || len(b.leaf.uses) > 1 || b.leaf.spend != 0
		}
	})
	if n > smallCases {
		return
	}
	if s.merge(root, target) {
		s.simplify(root, target)
		return
	}
	for _, t := range order {
		if !mixed[t] && len(t.limits) == 0 && !s.isByLength(t) {
			s.shrink(t, users[t], target)
		}
	}
}

// merge makes one table of those of each case. It reports whether there were any to merge.
func (s *search) merge(root *branch, target int64) (merged bool) {
	root.leaves(func(b *branch) {
		if len(b.leaf.uses) < 2 {
			return
		}
		t := &table{charge: make([]int64, len(s.demand)), rate: make([]int64, len(s.price))}
		for i := range t.charge {
			v := new(big.Int)
			for _, u := range b.leaf.uses {
				v.Add(v, new(big.Int).Mul(big.NewInt(u.times), big.NewInt(u.t.charge[i])))
			}
			t.charge[i] = v.Div(v, big.NewInt(fine)).Int64()
		}
		s.tighten(t)
		t.weigh(s.demand)
		l := &leaf{uses: []using{{t, fine}}, scale: b.leaf.scale, spend: b.leaf.spend, sums: b.leaf.sums, box: b.leaf.box}
		if g := gcd64(fine, gcd64(l.scale, abs64(l.spend))); g > 1 {
			l.uses[0].times, l.scale, l.spend = fine/g, l.scale/g, l.spend/g
		}
		if l.sums && !s.shut(l, l.box, target) {
			return
		}
		if v := s.bounds(l, l.box); l.sums || v.IsInt64() && v.Int64() >= target {
			b.leaf, merged = l, true
		}
	})
	return merged
}

func abs64(a int64) int64 { return max(a, -a) }

func (b *branch) leaves(f func(*branch)) {
	if b.leaf != nil {
		f(b)
		return
	}
	b.less.leaves(f)
	b.more.leaves(f)
}

func (s *search) isByLength(t *table) bool {
	for i, k := range s.p.kinds {
		if t.charge[i] != k.w {
			return false
		}
	}
	return true
}

// shrink finds the coarsest table that does what t does for its cases.
func (s *search) shrink(t *table, users []*branch, target int64) {
	for _, scale := range smallScales {
		for _, half := range []float64{.5, 0} { // to the nearest, or down
			u := &table{charge: make([]int64, len(t.charge)), rate: make([]int64, len(t.rate))}
			for i, c := range t.charge {
				u.charge[i] = int64(math.Floor(float64(c)*scale/s.scale + half))
			}
			s.tighten(u)
			u.weigh(s.demand)
			if leaves := s.instead(u, users, target); leaves != nil {
				for i, b := range users {
					b.leaf = leaves[i]
				}
				return
			}
		}
	}
}

// instead closes cases by another table, all or none.
func (s *search) instead(t *table, users []*branch, target int64) []*leaf {
	var out []*leaf
	for _, b := range users {
		l, v := s.single(t, b.leaf.box)
		if l == nil {
			return nil
		}
		if !v.IsInt64() || v.Int64() < target {
			if !b.leaf.sums || !s.shut(l, b.leaf.box, target) {
				return nil
			}
			l.sums = true
		}
		l.box = b.leaf.box
		out = append(out, l)
	}
	return out
}
