package solver

import (
	"fmt"
	"math/big"
	"math/rand/v2"
)

// randomWall is a wall in normal form.
type randomWall struct {
	say   []string
	along bool
	fixed uint // rules that the oracle never lifts: what they set (openings, a post's face) has no value without them
}

func (w randomWall) holds(rules []bruteRule, on uint) bool {
	if w.along {
		return bruteAlongHolds(rules, on|w.fixed)
	}
	return bruteUpHolds(rules, on)
}

func (w randomWall) holdsAll(say []string) bool {
	rules := bruteReadAll(say)
	return w.holds(rules, bruteEvery(rules))
}

// drawing draws walls.
type drawing struct{ *rand.Rand }

func (d drawing) between(lo, hi int) int  { return lo + d.IntN(hi-lo+1) }
func (d drawing) chance(percent int) bool { return d.IntN(100) < percent }
func pick[T any](d drawing, of ...T) T    { return of[d.IntN(len(of))] }

// sixteenths writes n/16 in as a normal form.
func sixteenths(n int) string { return inchForm(big.NewRat(int64(n), 16)) }

func inchForm(r *big.Rat) string {
	if r.Sign() < 0 {
		return "-" + inchForm(new(big.Rat).Neg(r))
	}
	whole := new(big.Int).Quo(r.Num(), r.Denom())
	part := new(big.Rat).Sub(r, new(big.Rat).SetInt(whole))
	switch {
	case part.Sign() == 0:
		return whole.String() + " in"
	case whole.Sign() == 0:
		return part.RatString() + " in"
	}
	return whole.String() + "-" + part.RatString() + " in"
}

// about says something of a length near v (sixteenths), by up to so much.
func (d drawing) about(q string, v, slack int) []string {
	off := func() int {
		if d.chance(70) {
			return 0
		}
		return d.between(-slack, slack)
	}
	at := func(n int) string { return sixteenths(max(n, 1)) }
	low, high := v-d.between(0, slack)+off(), v+d.between(0, slack)+off()
	switch d.IntN(8) {
	case 0, 1, 2:
		return []string{q + " = " + at(v+off())}
	case 3:
		return []string{q + " in " + at(min(low, high)) + ".." + at(max(low, high))}
	case 4:
		return []string{q + pick(d, " <= ", " < ") + at(high)}
	case 5:
		return []string{q + pick(d, " >= ", " > ") + at(low)}
	case 6:
		return []string{q + pick(d, " >= ", " > ") + at(low), q + pick(d, " <= ", " < ") + at(high)}
	}
	return []string{q + " = " + at(v+off()), q + pick(d, " <= ", " >= ") + at(v+off())}
}

func (d drawing) aboutCount(q string, n, least int) []string {
	n = max(least, n+pick(d, 0, 0, 0, 1, -1))
	switch d.IntN(5) {
	case 0:
		return []string{fmt.Sprintf("%s = %d", q, n)}
	case 1:
		return []string{fmt.Sprintf("%s in %d..%d", q, n, n+d.IntN(3))}
	case 2:
		return []string{fmt.Sprintf("%s <= %d", q, n)}
	case 3:
		return []string{fmt.Sprintf("%s < %d", q, n+1)}
	}
	return []string{fmt.Sprintf("%s >= %d", q, n)}
}

// up draws a wall up from the floor.
func (d drawing) up() randomWall {
	size := pick(d, "2x4", "2x6", "2x6", "2x8")
	face := map[string]int{"2x4": 56, "2x6": 88, "2x8": 116}[size]
	var w randomWall
	w.say = []string{"rail size = " + size}
	if d.chance(10) {
		face -= 2
		w.say = append(w.say, "rail face = "+sixteenths(face))
	}
	clear := pick(d, 16, 24, 32, 32, 36)
	w.say = append(w.say, "bracket clearance = "+sixteenths(clear))
	w.say = append(w.say, pick(d, "bracket ear = 1/2 * bracket clearance", "bracket ear = "+sixteenths(clear/2)))
	n, gap := d.between(1, 6), clear+d.between(0, 40)
	bottom := pick(d, gap, clear/2+d.between(0, 60))
	height := bottom + n*face + (n-1)*gap
	if d.chance(90) {
		w.say = append(w.say, d.about("wall height", height, 30)...)
	}
	if d.chance(65) {
		w.say = append(w.say, d.aboutCount("rails", n, 1)...)
	}
	if d.chance(80) {
		w.say = append(w.say, d.about("gap", gap, 20)...)
	}
	w.say = append(w.say, d.bottom(gap, bottom)...)
	if d.chance(8) {
		w.say = append(w.say, pick(d, "post height = wall height + 2 in", "post height <= "+sixteenths(height+d.between(0, 80))))
	}
	return w
}

func (d drawing) bottom(gap, bottom int) []string {
	switch {
	case gap == bottom && d.chance(70):
		return []string{"bottom gap = gap"}
	case d.chance(20):
		return []string{pick(d, "bottom gap >= gap", "bottom gap <= 2 * gap", "bottom gap = gap + 1/2 in", "bottom gap > gap - 1/4 in"),
			"bottom gap " + pick(d, ">=", "<=") + " " + sixteenths(bottom)}
	}
	return d.about("bottom gap", bottom, 24)
}

// across draws a wall along its span. The number of bays or posts always has an upper end.
func (d drawing) across() randomWall {
	w := randomWall{along: true, fixed: 7}
	size, post := "4x4", 56
	if d.chance(20) {
		size, post = "6x6", 88
	}
	k := pick(d, 0, 0, 0, 0, 1, 1, 1, 1, 1, 2)
	w.say = []string{"post size = " + size, fmt.Sprintf("openings = %d", k), "stock = 480 in"}
	shares := make([]int, k+1)
	bays := d.between(1, 4-k)
	for range bays {
		shares[d.IntN(k+1)]++
	}
	bay, opening := d.between(200, 560), d.between(380, 600)
	span := bays*bay + k*opening + (bays+k-1)*post
	left := shares[0] * (bay + post)
	w.say = append(w.say, pick(d, d.about("span", span, 60), d.about("centers", span+post, 60), d.about("overall", span+2*post, 60))...)
	if q := bruteRead(w.say[len(w.say)-1]); q.op[0] == '>' { // the span never goes on for ever
		w.say = append(w.say, q.name+" <= "+sixteenths(span+2*post+d.between(0, 90)))
	}
	w.say = append(w.say, d.aboutBays(bays, bay, k)...)
	if k > 0 {
		w.say = append(w.say, d.about("opening", opening, 40)...)
		w.say = append(w.say, d.place(k, left, span-left-opening)...)
	}
	return w
}

func (d drawing) aboutBays(bays, bay, k int) []string {
	cap := bays + pick(d, 0, 0, 0, 1, 2)
	out := []string{pick(d, fmt.Sprintf("bays <= %d", cap), fmt.Sprintf("bays = %d", bays),
		fmt.Sprintf("bays in %d..%d", bays, cap), fmt.Sprintf("added posts <= %d", cap+k-1),
		fmt.Sprintf("added posts = %d", bays+k-1))}
	if d.chance(55) {
		out = append(out, d.about("bay", bay, 60)...)
	}
	if d.chance(30) {
		out = append(out, "equal bays")
	}
	limit := d.between(300, 800)
	out = append(out, "stiffener spacing "+pick(d, "<=", "<=", "<")+" "+sixteenths(limit))
	if d.chance(25) {
		out = append(out, fmt.Sprintf("stiffeners %s %d", pick(d, "=", "<="), max(0, bay/limit+pick(d, 0, 0, -1, 1))))
	}
	return out
}

func (d drawing) place(k, left, right int) []string {
	switch d.IntN(6) {
	case 0:
		if k == 2 {
			return []string{"opening 1 side = left", "opening 2 side = right"}
		}
		return []string{"opening side = " + pick(d, "left", "right", "middle")}
	case 1, 2:
		if left > 0 {
			return d.about("opening from left", left, 60)
		}
		return []string{"opening side = left"}
	case 3:
		if k == 1 && right > 0 {
			return d.about("opening from right", right, 60)
		}
	case 4:
		return []string{"opening side = middle"}
	}
	return nil
}
