package solver

import (
	"encoding/json"
	"fmt"
	"math/big"
	"math/rand"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
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
