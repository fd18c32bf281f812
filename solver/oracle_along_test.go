package solver

import (
	"fmt"
	"math/big"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

var alongNames = map[Quantity]int{Span: oS, Opening: oO}

// alongCell states what c bays left and r bays right of an opening (k: whether there is one) make of the statements.
func alongCell(ss []Statement, k, c, r int) (facts, bool) {
	var f facts
	vars := alongUnknowns
	v := func(i int, x int64) []*big.Rat { return unit1(vars, i, q(x)) }
	posts := int64(c + r + k - 1)
	f.say(Eq, q(0), sum(v(oS, 1), v(oL, -1), v(oR, -1), v(oO, int64(-k)), v(oP, -posts))...)
	f.say(GT, q(0), v(oP, 1)...)
	f.say(GT, q(0), v(oX, 1)...)
	if k > 0 {
		f.say(GT, q(0), v(oO, 1)...)
	} else {
		f.say(Eq, q(0), v(oO, 1)...)
	}
	// the one bay stands left where there is one; the others share what is left of their side
	onLeft := c > 0
	side := func(x int, n int, holdsOne bool) (rest []*big.Rat, others int) {
		if holdsOne {
			return sum(v(x, 1), v(oX, -1)), n - 1
		}
		return v(x, 1), n
	}
	lrest, ln := side(oL, c, onLeft)
	rrest, rn := side(oR, r, !onLeft)
	sides := []struct {
		form []*big.Rat
		n    int
	}{{lrest, ln}, {rrest, rn}}
	for _, s := range sides {
		if s.n > 0 {
			f.say(GT, q(0), s.form...)
		} else {
			f.say(Eq, q(0), s.form...)
		}
	}
	left := sum(v(oL, 1), v(oP, int64(c)))
	right := sum(v(oR, 1), v(oP, int64(r)))
	for _, s := range ss {
		switch s.Name.Quantity {
		case Bays:
			if !countKeeps(s, c+r) {
				return nil, false
			}
		case AddedPosts:
			if !countKeeps(s, int(posts)) {
				return nil, false
			}
		case PostSize:
			f.say(Eq, big.NewRat(7, 2), v(oP, 1)...)
		case Stock, StiffenerSpacing: // said so wide that they never bind
		case Bay: // every bay by itself: the one, and the others of each side by their number
			f.sayOf(s, vars, v(oX, 1), nil)
			for _, side := range sides {
				if side.n == 0 {
					continue
				}
				many := s
				n := exact.Int(side.n)
				many.Value.Num, many.Upper.Num = s.Value.Num.Mul(n), s.Upper.Num.Mul(n)
				f.sayOf(many, vars, side.form, nil)
			}
		case OpeningFromLeft:
			f.sayOf(s, vars, left, nil)
		case OpeningFromRight:
			f.sayOf(s, vars, right, nil)
		case OpeningSide:
			switch s.Value.Word {
			case "left":
				f.say(Eq, q(0), left...)
			case "right":
				f.say(Eq, q(0), right...)
			default:
				for i := range right {
					right[i] = new(big.Rat).Neg(right[i])
				}
				f.say(Eq, q(0), sum(left, right)...)
			}
		case Goal: // equal bays
			for _, side := range sides {
				if side.n > 0 {
					f.say(Eq, q(0), sum(side.form, v(oX, int64(-side.n)))...)
				}
			}
		default:
			f.sayOf(s, vars, v(alongNames[s.Name.Quantity], 1), nil)
		}
	}
	return f, true
}

func randomAlong(rnd *rand.Rand) (say []string, k int) {
	say = []string{"post size = 4x4", "stock = 600 in", "stiffener spacing <= 600 in", "span = " + randomLength(rnd, 18, 34)}
	if rnd.Intn(4) == 0 {
		at := 18 + rnd.Intn(16)
		say[3] = fmt.Sprintf("span in %d in..%d in", at, at+rnd.Intn(6))
	}
	if rnd.Intn(3) > 0 {
		k = 1
		say = append(say, randomLimit(rnd, "opening", 4, 18))
		switch rnd.Intn(4) {
		case 0:
			say = append(say, "opening side = "+[]string{"left", "right", "middle"}[rnd.Intn(3)])
		case 1:
			say = append(say, randomLimit(rnd, []string{"opening from left", "opening from right"}[rnd.Intn(2)], 3, 18))
		}
	}
	if rnd.Intn(2) == 0 {
		say = append(say, randomLimit(rnd, "bay", 3, 20))
	}
	if rnd.Intn(4) == 0 {
		say = append(say, fmt.Sprintf([]string{"bays = %d", "bays <= %d", "added posts = %d", "added posts >= %d"}[rnd.Intn(4)], 1+rnd.Intn(3)))
	}
	if rnd.Intn(4) == 0 {
		say = append(say, "equal bays")
	}
	return say, k
}

// TestRandomWallsAlong: the same along the wall, over every place of the opening.
func TestRandomWallsAlong(t *testing.T) {
	t.Parallel()
	rnd := rand.New(rand.NewSource(21))
	blocked, all := 0, few(t, wallsAlong)
	for i := range all {
		lines, k := randomAlong(rnd)
		b := bookOf(t, lines...)
		v := pose(b).solveFields(true)
		want := map[int][4]string{}
		can := false                        // at all: the verdict does not stop where the list does
		for bays := 1; bays <= 12; bays++ { // 11 posts of 3-1/2 and more take 38-1/2, and no span is 40
			for c := 0; c <= bays; c++ {
				if k == 0 && c > 0 {
					break
				}
				// the one bay may be any bay: it is looked at on the left, and by the mirror image on the right
				for _, mirrored := range []bool{false, true} {
					ss, cc, rr := b.said, c, bays-c
					if mirrored {
						ss, cc, rr = mirror(b.said), bays-c, c
					}
					f, ok := alongCell(ss, k, cc, rr)
					if !ok || !f.holds(alongUnknowns) {
						continue
					}
					can = true
					if bays+k-1 > mostPostsListed {
						continue
					}
					xl, xh := f.span(alongUnknowns, oX)
					ol, oh := f.span(alongUnknowns, oO)
					w, seen := want[bays]
					if !seen {
						want[bays] = [4]string{xl, xh, ol, oh}
						continue
					}
					want[bays] = [4]string{lowest(w[0], xl), highest(w[1], xh), lowest(w[2], ol), highest(w[3], oh)}
				}
			}
		}
		require.Equal(t, !can, v.blocked(), "wall %d %q", i, lines)
		if v.blocked() {
			blocked++
			continue
		}
		got := map[int][4]string{}
		for _, o := range v.fields[len(v.fields)-1].along {
			bl, bh := o.Bay.written()
			ol, oh := "0", "0"
			if o.Opening != nil {
				ol, oh = o.Opening.written()
			}
			got[o.Bays] = [4]string{bl, bh, ol, oh}
		}
		require.Equal(t, want, got, "wall %d %q", i, lines)
	}
	t.Logf("%d walls, %d blocked", all, blocked)
	require.Greater(t, 6*blocked, all)
}
