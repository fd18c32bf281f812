package solver

import (
	"math/big"
	"strings"
)

// The oracle along the wall. What its rules say of bays they say of every bay, so of the bays between two openings only
// their mean matters (all rules are linear, and none tells those bays apart), and of one bay looked at by itself only
// the mean of the others.

// Unknowns along the wall.
const (
	bSpan = iota
	bOpening
	bAdded     // face of an added post
	bEnd       // of an end post
	bLone      // the bay that is looked at
	bMean      // of the bays of the first segment; the second and third follow
	bAlongVars = bMean + 3
)

type bruteAlong struct {
	posts, bays  int
	bay, opening bruteRange
	stiffeners   []int
}

// bruteLine is one arrangement: what stands where, as forms.
type bruteLine struct {
	openings int
	widths   []bruteLin // each kind of bay that there is
	left     []bruteLin // from the left end post to each opening
	right    []bruteLin // from each opening to the right end post
	stiff    int        // most stiffeners in a bay; -1: any number
}

// bruteAlongSystem is the wall with so many bays left, between and right of its openings; one bay of segment lone (-1:
// none) is an unknown of its own.
func bruteAlongSystem(rules []bruteRule, on uint, bays []int, lone int) bruteSystem {
	s := bruteSystem{vars: bAlongVars}
	k := len(bays) - 1
	w := bruteLine{openings: k, stiff: bruteMostStiffeners(rules, on)}
	at := bruteLin{}
	for i, n := range bays {
		mean := n
		if i == lone {
			at = at.and(bruteOf(bLone, 1))
			w.widths = append(w.widths, bruteOf(bLone, 1))
			mean--
		}
		if mean > 0 {
			at = at.and(bruteOf(bMean+i, int64(mean)))
			w.widths = append(w.widths, bruteOf(bMean+i, 1))
		}
		at = at.and(bruteOf(bAdded, int64(n))) // a post behind each bay
		if i < k {
			w.left = append(w.left, at)
			at = at.and(bruteOf(bOpening, 1))
			w.right = append(w.right, bruteOf(bSpan, 1).less(at))
			at = at.and(bruteOf(bAdded, 1))
		}
	}
	s.say(at.less(bruteOf(bAdded, 1)).less(bruteOf(bSpan, 1)), "=") // but none behind the last
	for _, v := range []int{bAdded, bEnd, bOpening} {
		s.say(bruteOf(v, 1), ">")
	}
	for _, l := range w.widths {
		s.say(l, ">")
	}
	for i, r := range rules {
		if on>>i&1 != 0 {
			s.keepAlong(r, w)
		}
	}
	return s
}

func (s *bruteSystem) keepAlong(r bruteRule, w bruteLine) {
	span := bruteOf(bSpan, 1)
	name, first, last := r.name, 0, w.openings-1
	if rest, ok := strings.CutPrefix(name, "opening 1 "); ok {
		name, last = "opening "+rest, 0
	} else if rest, ok := strings.CutPrefix(name, "opening 2 "); ok {
		name, first, last = "opening "+rest, 1, 1
	}
	switch name {
	case "bays", "added posts", "openings", "stiffeners", "stock": // counts; boards here are longer than any span
	case "post size":
		s.fix(bAdded, bruteFaces[r.word])
		s.fix(bEnd, bruteFaces[r.word])
	case "span":
		s.keep(r, span, nil)
	case "centers":
		s.keep(r, span.and(bruteOf(bEnd, 1)), nil)
	case "overall":
		s.keep(r, span.and(bruteOf(bEnd, 2)), nil)
	case "opening":
		if w.openings > 0 {
			s.keep(r, bruteOf(bOpening, 1), span)
		}
	case "opening from left":
		s.keep(r, w.left[first], span)
	case "opening from right":
		s.keep(r, w.right[last], span)
	case "opening side":
		s.say(map[string]bruteLin{"left": w.left[first], "right": w.right[last], "middle": w.left[first].less(w.right[last])}[r.word], "=")
	case "bay":
		for _, l := range w.widths {
			s.keep(r, l, span)
		}
	case "equal bays":
		for _, l := range w.widths[1:] {
			s.say(l.less(w.widths[0]), "=")
		}
	case "stiffener spacing":
		for _, l := range w.widths {
			if w.stiff >= 0 {
				s.keep(r, bruteLin{}.plus(l, big.NewRat(1, int64(w.stiff+1))), nil)
			}
		}
	default:
		panic("the oracle does not know " + r.name)
	}
}

// bruteMostStiffeners is the most that the rules allow in a bay; -1: any number. Only an upper limit on their spacing is
// asked of the oracle, and the most of them serves that best.
func bruteMostStiffeners(rules []bruteRule, on uint) int {
	for m := 0; m <= 20; m++ {
		if bruteAllowed(rules, on, "stiffeners", m) && !bruteAllowed(rules, on, "stiffeners", m+1) {
			return m
		}
	}
	return -1
}

func bruteOpenings(rules []bruteRule) int {
	for _, r := range rules {
		if r.name == "openings" && r.k != nil {
			return int(r.k.Num().Int64())
		}
	}
	return 0
}

// bruteEachAlong visits every arrangement of up to most bays that can hold, fewest bays first, until visit returns false.
func bruteEachAlong(rules []bruteRule, on uint, most int, visit func(bays []int, total int) bool) {
	k := bruteOpenings(rules)
	for total := 1; total <= most && bruteRoom(rules, on, k, total); total++ {
		if !bruteAllowed(rules, on, "bays", total) || !bruteAllowed(rules, on, "added posts", total+k-1) {
			continue
		}
		for _, bays := range bruteShares(total, k+1) {
			if s := bruteAlongSystem(rules, on, bays, -1); s.holds() && !visit(bays, total) {
				return
			}
		}
	}
}

// bruteRoom: so many times the narrowest bay, with openings and posts, must be no longer than the span, and each opening
// must have a place, whatever stands left of it. Once that cannot be, it cannot be with more bays either.
func bruteRoom(rules []bruteRule, on uint, k, total int) bool {
	s := bruteSystem{vars: bAlongVars + k}
	for _, v := range []int{bAdded, bEnd, bOpening, bLone} {
		s.say(bruteOf(v, 1), ">")
	}
	s.say(bruteOf(bSpan, 1).less(bruteOf(bLone, int64(total))).less(bruteOf(bOpening, int64(k))).
		less(bruteOf(bAdded, int64(total+k-1))), ">=")
	w := bruteLine{openings: k, widths: []bruteLin{bruteOf(bLone, 1)}, stiff: bruteMostStiffeners(rules, on)}
	for i := range k {
		left := bruteOf(bAlongVars+i, 1)
		right := bruteOf(bSpan, 1).less(left).less(bruteOf(bOpening, 1))
		s.say(left, ">=")
		s.say(right, ">=")
		w.left, w.right = append(w.left, left), append(w.right, right)
	}
	for i, r := range rules {
		if on>>i&1 != 0 {
			s.keepAlong(r, w)
		}
	}
	return s.holds()
}

// bruteShares lists every way to share n bays among so many segments.
func bruteShares(n, segments int) [][]int {
	if segments == 1 {
		return [][]int{{n}}
	}
	var out [][]int
	for i := 0; i <= n; i++ {
		for _, rest := range bruteShares(n-i, segments-1) {
			out = append(out, append([]int{i}, rest...))
		}
	}
	return out
}

func bruteAlongHolds(rules []bruteRule, on uint) (holds bool) {
	bruteEachAlong(rules, on, 45, func([]int, int) bool { holds = true; return false })
	return holds
}

func bruteAlongOptions(rules []bruteRule) (out []bruteAlong) {
	on := bruteEvery(rules)
	bruteEachAlong(rules, on, mostPostsListed+1, func(bays []int, total int) bool {
		posts := total + len(bays) - 2
		if posts > mostPostsListed {
			return false
		}
		fresh := len(out) == 0 || out[len(out)-1].posts != posts
		if fresh {
			out = append(out, bruteAlong{posts: posts, bays: total})
		}
		o := &out[len(out)-1]
		for lone, n := range bays {
			if n == 0 {
				continue
			}
			s := bruteAlongSystem(rules, on, bays, lone)
			bay, opening := s.rangeOf(bLone), s.rangeOf(bOpening)
			if fresh {
				o.bay, o.opening, fresh = bay, opening, false
				continue
			}
			o.bay, o.opening = o.bay.hull(bay), o.opening.hull(opening)
		}
		return true
	})
	for i := range out {
		out[i].stiffeners = bruteStiffeners(rules, out[i].bay)
	}
	return out
}

// bruteStiffeners is the fewest m with bay/(m+1) within the spacing, at both ends of the bay's range.
func bruteStiffeners(rules []bruteRule, bay bruteRange) []int {
	for _, r := range rules {
		if r.name != "stiffener spacing" || bay[1].val == nil {
			continue
		}
		var out []int
		for _, e := range bay {
			m := 0
			for ; ; m++ {
				d := new(big.Rat).Quo(e.val, big.NewRat(int64(m+1), 1)).Cmp(r.k)
				if d < 0 || d == 0 && r.op == "<=" {
					break
				}
			}
			out = append(out, m)
		}
		return out
	}
	return nil
}
