package solver

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

// spacedWall is a wall along whose stiffeners stand neither too close nor too far apart. All lengths are in sixteenths.
type spacedWall struct {
	span, low, top   int // the spacing is from low to top
	bayLow, bayTop   int
	fewest, greatest int // stiffeners in a bay
	left, opening    int // 0: no opening; left is the length to the left of it
	bays             int // 0: not told
}

const spacedPost = 56 // a 4x4's face, 3-1/2 in

var sixteen = exactInt(16)

func exactInt(n int64) exact.Rat { return exact.New(n, 1) }

func drawSpaced(r *rand.Rand) spacedWall {
	w := spacedWall{span: 400 + r.IntN(1000), low: 160 + r.IntN(200), bayTop: 1 << 20, greatest: 99}
	w.top = w.low + []int{0, 0, 8, 40, 100, 400}[r.IntN(6)]
	if r.IntN(3) == 0 {
		w.bayLow = w.low + r.IntN(300)
		w.bayTop = w.bayLow + r.IntN(300)
	}
	if r.IntN(3) == 0 {
		w.fewest = r.IntN(3)
		w.greatest = w.fewest + r.IntN(3)
	}
	if r.IntN(3) == 0 {
		w.left, w.opening = 200+r.IntN(w.span/2), 480
		w.span += w.left + w.opening
	}
	if r.IntN(2) == 0 {
		w.bays = 1 + r.IntN(4)
	}
	return w
}

func (w spacedWall) says() []string {
	in := func(n int) string { return fmt.Sprintf("%d/16 in", n) }
	say := []string{"post size = 4x4", "stock = 960 in", "span = " + in(w.span), "stiffener spacing in " + in(w.low) + ".." + in(w.top)}
	if w.low == w.top {
		say[3] = "stiffener spacing = " + in(w.low)
	}
	if w.bayTop < 1<<20 {
		say = append(say, "bay in "+in(w.bayLow)+".."+in(w.bayTop))
	}
	if w.greatest < 99 {
		say = append(say, fmt.Sprintf("stiffeners in %d..%d", w.fewest, w.greatest))
	}
	if w.opening > 0 {
		say = append(say, "openings = 1", "opening = "+in(w.opening), "opening from left = "+in(w.left))
	} else {
		say = append(say, "openings = 0")
	}
	if w.bays > 0 {
		say = append(say, fmt.Sprintf("bays = %d", w.bays))
	}
	return say
}

// hull is the least and the greatest that one bay can be.
type hull struct{ lo, hi int }

// stretches lists, by number of bays, what a bay can be where so many bays fill a length, by trying every number of spaces
// in every bay.
func (w spacedWall) stretches(length, mostBays int) map[int]hull {
	out := map[int]hull{}
	for n := 1; n <= mostBays; n++ {
		free := length - (n-1)*spacedPost
		var lows, tops []int
		var share func(from, taken int)
		share = func(from, taken int) {
			if len(lows) < n {
				for spaces := from; spaces <= w.greatest+1 && taken+(n-len(lows))*max(w.bayLow, spaces*w.low) <= free; spaces++ {
					lo, hi := max(w.bayLow, spaces*w.low), min(w.bayTop, spaces*w.top)
					if lo > hi {
						continue
					}
					lows, tops = append(lows, lo), append(tops, hi)
					share(spaces, taken+lo)
					lows, tops = lows[:len(lows)-1], tops[:len(tops)-1]
				}
				return
			}
			sumLow, sumTop := 0, 0
			for i := range lows {
				sumLow, sumTop = sumLow+lows[i], sumTop+tops[i]
			}
			if sumLow > free || sumTop < free {
				return
			}
			for i := range lows {
				h := hull{max(lows[i], free-(sumTop-tops[i])), min(tops[i], free-(sumLow-lows[i]))}
				out[n] = out[n].with(h)
			}
		}
		share(w.fewest+1, 0)
	}
	return out
}

func (h hull) with(o hull) hull {
	if h == (hull{}) {
		return o
	}
	return hull{min(h.lo, o.lo), max(h.hi, o.hi)}
}

// holds lists what holds by total bays.
func (w spacedWall) holds() map[int]hull {
	if w.opening == 0 {
		return w.only(w.stretches(w.span, 12))
	}
	out := map[int]hull{}
	left := w.stretches(w.left-spacedPost, 12) // a post between the last bay and the opening
	right := w.stretches(w.span-w.left-w.opening-spacedPost, 12)
	for n, a := range left {
		for m, b := range right {
			out[n+m] = out[n+m].with(a).with(b)
		}
	}
	return w.only(out)
}

func (w spacedWall) only(all map[int]hull) map[int]hull {
	if w.bays == 0 {
		return all
	}
	out := map[int]hull{}
	if h, ok := all[w.bays]; ok {
		out[w.bays] = h
	}
	return out
}

// TestSpacingsAgreeWithTryingThemAll holds verdicts, numbers of bays and what one bay can be against trying every number of
// spaces in every bay.
func TestSpacingsAgreeWithTryingThemAll(t *testing.T) {
	t.Parallel()
	r := rand.New(rand.NewPCG(7, 21))
	fits := 0
	for range 500 {
		w := drawSpaced(r)
		a := Solve(bookOf(t, w.says()...))
		want := w.holds()
		about := strings.Join(w.says(), "; ")
		if len(want) == 0 {
			require.Equal(t, Blocked, a.Verdict, about)
			continue
		}
		fits++
		require.Equal(t, Fits, a.Verdict, about)
		got := map[int]hull{}
		for _, o := range a.Options.Along {
			lo, okLo := o.Bay[0].Val.Mul(sixteen).Int64()
			hi, okHi := o.Bay[1].Val.Mul(sixteen).Int64()
			require.True(t, okLo && okHi, about)
			got[o.Bays] = hull{int(lo), int(hi)}
		}
		require.Equal(t, want, got, about)
		for _, b := range a.Layout.Along.Bays {
			space := int64(len(b.Stiffeners) + 1)
			wide := b.Width.Mul(sixteen)
			require.True(t, wide.Cmp(exactInt(space*int64(w.low))) >= 0 && wide.Cmp(exactInt(space*int64(w.top))) <= 0, about)
		}
	}
	t.Logf("%d of 500 fit", fits)
	require.Greater(t, fits, 80)
	require.Less(t, fits, 420)
}
