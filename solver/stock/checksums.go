package stock

import (
	"fmt"
	"math/big"
	"sort"
)

const (
	sumsUnits = 1 << 26 // of a goal up to which its sums are looked at
	mostWays  = 500_000 // of taking boards that do not hold just what they have of the goal
	hairBits  = 26      // a board that holds so nearly what it has of the goal is taken to hold just that
)

// sums looks for boards that hold enough and have less of the goal than was claimed.
//
// A board that holds less than it has of the goal (set scale against unit) loses the difference, and all may lose gap in
// all. So those that lose anything worth the name are tried in every way there is, which are few; for each, the others must
// sum to one of a few amounts, and which amounts they can sum to at all is a set of bits.
type sums struct {
	c      *claimed
	scale  *big.Int
	lossy  []losing
	ways   int
	fits   []uint64 // amounts that the others can sum to
	spare  *big.Int // what the others may hold beyond what they have
	failed bool
}

// losing is a board that loses by each one taken beyond the least (or left out below the most).
type losing struct {
	goal, n, most int64
	step          int64 // 1 or -1
	loss          *big.Int
	hold          *big.Int
}

func (c *claimed) noSums(at *Case, in caseOf, hold []*big.Int, total *big.Int) error {
	if c.want > sumsUnits {
		return fmt.Errorf("sums of %d units are too many to look at", c.want)
	}
	s := &sums{c: c, scale: big.NewInt(at.Scale), spare: new(big.Int)}
	need := new(big.Int).Set(total)
	gap := new(big.Int).Mul(s.scale, big.NewInt(c.want-1))
	s.fits = make([]uint64, c.want/64+1)
	base, free := int64(0), []int{}
	for b, h := range hold {
		d := new(big.Int).Mul(s.scale, big.NewInt(c.goal[b]))
		hair := new(big.Int).Rsh(d, hairBits)
		d.Sub(d, h)
		lo, up := big.NewInt(in.lo[b]), big.NewInt(in.up[b])
		switch {
		case c.goal[b] == 0: // it has nothing of the goal: as many as hold most
			if h.Sign() < 0 {
				up = lo
			}
			need.Sub(need, up.Mul(up, h))
		case new(big.Int).Abs(d).Cmp(hair) <= 0:
			if d.Sign() < 0 {
				s.spare.Sub(s.spare, d.Mul(d, up))
			}
			base += c.goal[b] * in.lo[b]
			free = append(free, b)
		case d.Sign() < 0:
			gap.Sub(gap, new(big.Int).Mul(d, up))
			s.lossy = append(s.lossy, losing{c.goal[b], in.up[b], in.up[b] - in.lo[b], -1, d.Neg(d), h})
		default:
			gap.Sub(gap, new(big.Int).Mul(d, lo))
			s.lossy = append(s.lossy, losing{c.goal[b], in.lo[b], in.up[b] - in.lo[b], 1, d, h})
		}
	}
	if base >= c.want {
		return nil
	}
	s.fits[base/64] |= 1 << (base % 64)
	for _, b := range free {
		s.more(c.goal[b], in.up[b]-in.lo[b])
	}
	sort.SliceStable(s.lossy, func(x, y int) bool { return s.lossy[x].loss.Cmp(s.lossy[y].loss) > 0 })
	gap.Sub(gap, need)
	gap.Add(gap, s.spare)
	s.try(0, 0, need, gap)
	if s.failed {
		return fmt.Errorf("boards with less than %d units hold enough", c.want)
	}
	if s.ways > mostWays {
		return fmt.Errorf("too many ways to look at")
	}
	return nil
}

// more lets up to n boards more be among those that fit.
func (s *sums) more(goal, n int64) {
	for lot := int64(1); n > 0; lot *= 2 {
		k := min(lot, n)
		n -= k
		shift := goal * k
		if shift/64 >= int64(len(s.fits)) || k > 1<<40/goal {
			continue
		}
		word, bit := int(shift/64), uint(shift%64)
		for i := len(s.fits) - 1; i >= word; i-- {
			v := s.fits[i-word] << bit
			if bit > 0 && i > word {
				v |= s.fits[i-word-1] >> (64 - bit)
			}
			s.fits[i] |= v
		}
	}
}

// try takes lossy boards from the k-th on in every way that the gap allows.
func (s *sums) try(k int, goal int64, need, gap *big.Int) {
	if s.ways++; s.ways > mostWays || s.failed {
		return
	}
	if k == len(s.lossy) {
		s.failed = s.amount(goal, need)
		return
	}
	l := s.lossy[k]
	left := new(big.Int).Set(gap)
	for n := int64(0); n <= l.most && left.Sign() >= 0; n++ {
		x := l.n + l.step*n
		rest := new(big.Int).Mul(big.NewInt(x), l.hold)
		s.try(k+1, goal+x*l.goal, rest.Sub(need, rest), left)
		left.Sub(left, l.loss)
	}
}

// amount reports whether the other boards can sum to an amount that is enough and not too much.
func (s *sums) amount(goal int64, need *big.Int) bool {
	low := new(big.Int).Sub(need, s.spare)
	low.Neg(low).Div(low, s.scale) // Euclidean, the scale is positive: the floor
	low.Neg(low)
	most := s.c.want - 1 - goal
	if most < 0 || low.Cmp(big.NewInt(most)) > 0 {
		return false
	}
	for v := max(0, low.Int64()); v <= most; v++ {
		if s.fits[v/64]>>(v%64)&1 == 1 {
			return true
		}
	}
	return false
}

// fewestExactly is the fewest boards to be bought that make up exactly what was claimed before.
func (c *claimed) fewestExactly(in caseOf) int64 {
	if c.spend == nil || c.spent > sumsUnits || c.Of != FewestBoard {
		return -1
	}
	const never = int64(1) << 60
	count := make([]int64, c.spent+1)
	for v := range count {
		count[v] = never
	}
	count[0] = 0
	for b, q := range c.spend {
		switch {
		case c.proof.Kinds[b].Have >= 0 || in.up[b] == 0:
			continue
		case q == 0:
			return -1 // any number of them makes up nothing
		}
		for v := int64(0); v+q <= c.spent; v++ {
			if count[v] < never {
				count[v+q] = min(count[v+q], count[v]+1)
			}
		}
	}
	return count[c.spent]
}
