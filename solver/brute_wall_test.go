package solver

import "math/big"

// The oracle up the wall. on tells which rules are in force, so that any set of them can be asked after.

// Dressed faces, inches: PS 20 minimum dressed sizes, dry; the sizes that a change may put in place among them.
var bruteFaces = map[string]*big.Rat{
	"2x2": big.NewRat(3, 2), "2x3": big.NewRat(5, 2), "2x4": big.NewRat(7, 2), "2x6": big.NewRat(11, 2),
	"2x8": big.NewRat(29, 4), "2x10": big.NewRat(37, 4), "2x12": big.NewRat(45, 4),
	"4x4": big.NewRat(7, 2), "6x6": big.NewRat(11, 2), "4x6": big.NewRat(11, 2),
}

// Unknowns up the wall.
const (
	bHeight = iota
	bGap
	bBottom
	bPost
	bFace
	bClear
	bEar
	bUpVars
)

var bruteUpNames = map[string]int{
	"wall height": bHeight, "gap": bGap, "bottom gap": bBottom, "post height": bPost, "rail face": bFace,
	"bracket clearance": bClear, "bracket ear": bEar,
}

type bruteUp struct {
	rails               int
	gap, bottom, height bruteRange
}

// bruteUpSystem is the wall with n rails, or, loose, what every wall with n rails or more keeps.
func bruteUpSystem(rules []bruteRule, on uint, n int, loose bool) bruteSystem {
	s := bruteSystem{vars: bUpVars}
	h := bruteOf(bHeight, 1).less(bruteOf(bBottom, 1)).less(bruteOf(bFace, int64(n))).less(bruteOf(bGap, int64(n-1)))
	if loose {
		s.say(h, ">=")
	} else {
		s.say(h, "=")
	}
	for _, v := range []int{bHeight, bGap, bBottom, bClear, bEar} {
		s.say(bruteOf(v, 1), ">=")
	}
	s.say(bruteOf(bFace, 1), ">")
	s.say(bruteOf(bGap, 1).less(bruteOf(bClear, 1)), ">=")                          // brackets of neighboring rails
	s.say(bruteOf(bBottom, 1).less(bruteOf(bEar, 1)), ">=")                         // the lowest ear
	s.say(bruteOf(bPost, 1).less(bruteOf(bHeight, 1)).less(bruteOf(bEar, 1)), ">=") // the top ear
	measured := false
	for _, r := range rules {
		measured = measured || r.name == "rail face"
	}
	for i, r := range rules {
		if on>>i&1 == 0 || r.name == "rails" || r.name == "openings" {
			continue
		}
		if r.name == "rail size" {
			if !measured { // a measured face goes before the published one
				s.fix(bFace, bruteFaces[r.word])
			}
			continue
		}
		v, known := bruteUpNames[r.name]
		if !known {
			panic("the oracle does not know " + r.name)
		}
		s.keep(r, bruteOf(v, 1), bruteOf(bruteUpNames[r.of], 1))
	}
	return s
}

// bruteEachUp visits every rail count up to most that can hold, until visit returns false.
func bruteEachUp(rules []bruteRule, on uint, most int, visit func(n int, s bruteSystem) bool) {
	for n := 1; n <= most; n++ {
		if bruteAllowed(rules, on, "rails", n) {
			if s := bruteUpSystem(rules, on, n, false); s.holds() {
				if !visit(n, s) {
					return
				}
				continue
			}
		}
		// Each further rail and gap only adds: once no wall of at least n rails' height can hold, none holds more.
		if loose := bruteUpSystem(rules, on, n, true); !loose.holds() {
			return
		}
	}
}

// bruteAllowed reports whether the rules on a count allow n.
func bruteAllowed(rules []bruteRule, on uint, name string, n int) bool {
	for i, r := range rules {
		if on>>i&1 != 0 && r.name == name && !r.allows(n) {
			return false
		}
	}
	return true
}

func bruteEvery(rules []bruteRule) uint { return 1<<len(rules) - 1 }

func bruteUpHolds(rules []bruteRule, on uint) (holds bool) {
	bruteEachUp(rules, on, 120, func(int, bruteSystem) bool { holds = true; return false })
	return holds
}

func bruteUpOptions(rules []bruteRule) (out []bruteUp) {
	bruteEachUp(rules, bruteEvery(rules), mostRailsListed, func(n int, s bruteSystem) bool {
		out = append(out, bruteUp{n, s.rangeOf(bGap), s.rangeOf(bBottom), s.rangeOf(bHeight)})
		return true
	})
	return out
}
