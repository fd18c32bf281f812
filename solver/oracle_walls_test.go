package solver

import (
	"fmt"
	"math/big"
	"math/rand"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// The unknowns of the oracle up the wall, and along it.
const (
	oH = iota
	oG
	oB
	oW
	oC // bracket clearance
	upUnknowns
)

const (
	oS = iota
	oO
	oL // bays left of the opening, added up
	oR // right of it
	oX // any one bay
	oP // face of a post
	alongUnknowns
)

var oracleFaces = map[string]*big.Rat{"2x4": big.NewRat(7, 2), "2x6": big.NewRat(11, 2), "2x8": big.NewRat(29, 4),
	"2x2": big.NewRat(3, 2), "2x3": big.NewRat(5, 2), "2x10": big.NewRat(37, 4), "2x12": big.NewRat(45, 4)}

func unit1(vars, v int, k *big.Rat) []*big.Rat {
	out := make([]*big.Rat, vars)
	for i := range out {
		out[i] = new(big.Rat)
	}
	out[v] = k
	return out
}

func sum(rows ...[]*big.Rat) []*big.Rat {
	out := make([]*big.Rat, len(rows[0]))
	for i := range out {
		out[i] = new(big.Rat)
		for _, r := range rows {
			out[i].Add(out[i], r[i])
		}
	}
	return out
}

// sayOf adds a statement about a plain length v.
func (f *facts) sayOf(s Statement, vars int, v []*big.Rat, of map[Quantity]int) {
	rhs := s.Value.Num.Big()
	if s.Value.Of != nil {
		k := new(big.Rat).Neg(s.Value.Factor().Big())
		v = sum(v, unit1(vars, of[s.Value.Of.Quantity], k))
	}
	if s.Op == In {
		f.say(GE, rhs, v...)
		f.say(LE, s.Upper.Num.Big(), v...)
		return
	}
	f.say(s.Op, rhs, v...)
}

func countKeeps(s Statement, n int) bool {
	lo, hi := countRange(s) // counts are plain integers; what they mean is tested with the counts themselves below
	return n >= lo && n <= hi
}

var upNames = map[Quantity]int{WallHeight: oH, Gap: oG, BottomGap: oB, RailFace: oW, BracketClearance: oC}

// upCell states what n rails make of the statements; false where a count rules n out.
func upCell(ss []Statement, n int) (facts, bool) {
	var f facts
	v := func(i int, k int64) []*big.Rat { return unit1(upUnknowns, i, q(k)) }
	f.say(Eq, q(0), sum(v(oH, 1), v(oB, -1), v(oW, int64(-n)), v(oG, int64(1-n)))...)
	for _, i := range []int{oH, oG, oB} {
		f.say(GE, q(0), v(i, 1)...)
	}
	f.say(GT, q(0), v(oW, 1)...)
	f.say(GE, q(0), sum(v(oG, 1), v(oC, -1))...)
	for _, s := range ss {
		switch s.Name.Quantity {
		case Rails:
			if !countKeeps(s, n) {
				return nil, false
			}
		case RailSize:
			f.say(Eq, oracleFaces[s.Value.Word], v(oW, 1)...)
		case BracketEar:
		default:
			f.sayOf(s, upUnknowns, v(upNames[s.Name.Quantity], 1), upNames)
		}
	}
	return f, true
}

func upCanHold(ss []Statement, mostRails int) bool {
	for n := 1; n <= mostRails; n++ {
		if f, ok := upCell(ss, n); ok && f.holds(upUnknowns) {
			return true
		}
	}
	return false
}

func randomLength(rnd *rand.Rand, lo, hi int) string {
	whole := lo + rnd.Intn(hi-lo)
	switch rnd.Intn(3) {
	case 0:
		return fmt.Sprintf("%d in", whole)
	case 1:
		return fmt.Sprintf("%d-%d/16 in", whole, 1+2*rnd.Intn(8))
	}
	return fmt.Sprintf("%d-1/2 in", whole)
}

func randomLimit(rnd *rand.Rand, name string, lo, hi int) string {
	op := []string{"=", "<=", ">=", "<", ">", "in"}[rnd.Intn(6)]
	if op == "in" {
		at := lo + rnd.Intn(hi-lo)
		return fmt.Sprintf("%s in %d in..%d in", name, at, at+rnd.Intn(3))
	}
	return name + " " + op + " " + randomLength(rnd, lo, hi)
}

// randomUp is a wall up the wall only, every rule in force said, so that no default takes part. Its height is bounded.
func randomUp(rnd *rand.Rand) []string {
	say := []string{"bracket ear = 0 in", "rail size = " + []string{"2x4", "2x6", "2x8"}[rnd.Intn(3)],
		"bracket clearance = " + []string{"2 in", "1-3/4 in", "2-1/4 in"}[rnd.Intn(3)]}
	if rnd.Intn(2) == 0 {
		say = append(say, "wall height = "+randomLength(rnd, 12, 40))
	} else {
		at := 12 + rnd.Intn(28)
		say = append(say, fmt.Sprintf("wall height in %d in..%d in", at, at+rnd.Intn(4)))
	}
	if rnd.Intn(3) > 0 {
		say = append(say, randomLimit(rnd, "gap", 1, 5))
	}
	if rnd.Intn(3) == 0 {
		say = append(say, []string{"rails = %d", "rails >= %d", "rails <= %d", "rails < %d"}[rnd.Intn(4)])
		say[len(say)-1] = fmt.Sprintf(say[len(say)-1], 2+rnd.Intn(5))
	}
	switch rnd.Intn(4) {
	case 0:
		say = append(say, "bottom gap = gap")
	case 1:
		say = append(say, []string{"bottom gap >= gap", "bottom gap = 2 * gap", "bottom gap <= gap", "bottom gap = gap + 1/2 in"}[rnd.Intn(4)])
	case 2:
		say = append(say, randomLimit(rnd, "bottom gap", 0, 5))
	default:
		say = append(say, "bottom gap >= 0 in")
	}
	return say
}

// wallsUp and wallsAlong are how many random walls are held against the oracle.
const (
	wallsUp    = 17500
	wallsAlong = 600
)

func few(t *testing.T, n int) int {
	if testing.Short() {
		return n / 20
	}
	return n
}

// TestRandomWallsUp: verdict, every count that holds and every exact range, against the oracle.
func TestRandomWallsUp(t *testing.T) {
	t.Parallel()
	rnd := rand.New(rand.NewSource(20))
	blocked, several, all := 0, 0, few(t, wallsUp)
	for i := range all {
		lines := randomUp(rnd)
		b := bookOf(t, lines...)
		v := pose(b).solveFields(true)
		var want []string
		for n := 1; n <= 14; n++ { // 14 rails of 3-1/2 and more are over 44 in
			f, ok := upCell(b.said, n)
			if !ok || !f.holds(upUnknowns) {
				continue
			}
			var ends []string
			for _, x := range []int{oG, oB, oH} {
				lo, hi := f.span(upUnknowns, x)
				ends = append(ends, lo+".."+hi)
			}
			want = append(want, fmt.Sprint(n, ends))
		}
		require.Equal(t, len(want) == 0, v.blocked(), "wall %d %q", i, lines)
		if v.blocked() {
			blocked++
			if cs, _ := v.fields[0].clashes(); len(cs) > 1 {
				several++
			}
			continue
		}
		var got []string
		for _, o := range v.fields[0].up {
			var ends []string
			for _, r := range []Range{o.Gap, o.BottomGap, o.WallHeight} {
				lo, hi := r.written()
				ends = append(ends, lo+".."+hi)
			}
			got = append(got, fmt.Sprint(o.Rails, ends))
		}
		require.Equal(t, want, got, "wall %d %q", i, lines)
	}
	t.Logf("%d walls, %d blocked, %d of them with several conflicts", all, blocked, several)
	require.Greater(t, 5*blocked, all)
	require.Greater(t, 30*several, all)
}

// mirror turns a wall around.
func mirror(ss []Statement) []Statement {
	out := slices.Clone(ss)
	for i, s := range out {
		switch s.Name.Quantity {
		case OpeningFromLeft:
			out[i].Name.Quantity = OpeningFromRight
		case OpeningFromRight:
			out[i].Name.Quantity = OpeningFromLeft
		case OpeningSide:
			if s.Value.Word != "middle" {
				out[i].Value.Word = map[string]string{"left": "right", "right": "left"}[s.Value.Word]
			}
		}
	}
	return out
}

func endOf(s string) (*big.Rat, bool) {
	open := strings.HasPrefix(s, ">") || strings.HasPrefix(s, "<")
	r, _ := new(big.Rat).SetString(strings.TrimLeft(s, "<>"))
	return r, open
}

func lowest(a, b string) string { return outermost(a, b, -1) }

func highest(a, b string) string { return outermost(a, b, 1) }

func outermost(a, b string, way int) string {
	if a == "" || b == "" {
		return ""
	}
	x, open := endOf(a)
	y, _ := endOf(b)
	switch c := x.Cmp(y); {
	case c == way || c == 0 && !open:
		return a
	}
	return b
}
