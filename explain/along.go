package explain

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// alongLead says posts, openings, bays and stiffeners.
func (v *voice) alongLead(a *solver.Along) {
	v.postsLead(a)
	v.baysDiffer()
	v.postsAdded()
	v.spanGrown()
	v.openingGrown()
	if s := v.stiffenersOf(a); s != "" {
		v.p.say(s, noInk)
	}
	if a.PostHeight != nil && len(a.Posts) > 0 {
		one := "The post stands "
		if len(a.Posts) > 1 {
			one = "The posts stand "
		}
		v.p.say(one+v.both(*a.PostHeight), noInk)
	}
}

// postsAdded tells of posts that came in though nobody spoke of them.
func (v *voice) postsAdded() {
	f, ok := v.fact("posts added")
	if !ok || len(f.Nums) < 3 {
		return
	}
	n := ints(f.Nums)
	text := plural(n[2], "post comes", "posts come") + " in that you did not ask for: " + countOrNone(n[0]) + " before, " + count(n[1]) + " now"
	for _, s := range v.a.To.Statements {
		if s.Name.Quantity == solver.Stiffeners {
			text += ", as so few stiffeners would stand too far apart in a longer bay"
			break
		}
	}
	v.p.say(text, warning)
}

// baysDiffer tells why the bays are not equal beside an opening in the middle.
func (v *voice) baysDiffer() {
	f, ok := v.fact("bays differ")
	if !ok || len(f.Nums) < 2 {
		return
	}
	n := ints(f.Nums)
	text := "With the opening in the middle both sides have the same room: " + plural(n[0], "bay", "bays") + " on the left and " + count(n[1]) + " on the right can't be equal"
	if v.first(text) {
		v.p.say(text, noInk)
	}
}

// spanGrown tells of a wall that got longer or shorter though nobody spoke of its length.
func (v *voice) spanGrown() {
	before, after, by, ok := v.grown("span grown", "longer", "shorter")
	if !ok {
		return
	}
	text := "That makes the wall " + by + ": " + after + " between the end posts, " + before + " before"
	if v.first("how far apart they stand") {
		text += ". If they stand already, tell me how far apart"
	}
	v.p.say(text, warning)
}

// openingGrown tells of an opening that got wider or narrower though nobody spoke of it.
func (v *voice) openingGrown() {
	if before, _, by, ok := v.grown("opening grown", "wider", "narrower"); ok {
		v.p.say("That makes the opening "+by+": it was "+before, warning)
	}
}

// grown says what a fact tells of a length that changed with another: what it was, what it is, and by how much it is more or less.
func (v *voice) grown(key, more, less string) (before, after, by string, ok bool) {
	f, ok := v.fact(key)
	if !ok || len(f.Nums) < 3 {
		return "", "", "", false
	}
	word, n := more, f.Nums[2]
	if n.Sign() < 0 {
		word, n = less, n.Neg()
	}
	return v.both(f.Nums[0]), v.both(f.Nums[1]), v.both(n) + " " + word, true
}

func countOrNone(n int) string {
	if n == 0 {
		return "none"
	}
	return count(n)
}

func (v *voice) postsLead(a *solver.Along) {
	open := v.openOf(a)
	switch n := len(a.Posts); {
	case n == 0:
		v.p.say("No added post: "+v.baysOf(a)+" between the end posts", good)
		return
	case n == 1:
		v.p.say("One added post, its near face "+v.both(a.Posts[0].FromLeft)+" from the left post"+open, good)
	case n > 6:
		v.p.say(plural(n, "added post", "added posts")+open, good)
	default:
		var places []string
		for _, p := range a.Posts {
			places = append(places, v.both(p.FromLeft))
		}
		where := ", near faces " + and(places) + " from the left post"
		if n > 2 {
			where = forEye(where)
		}
		v.p.say(plural(n, "added post", "added posts")+where+open, good)
	}
	if len(a.Bays) != 1 || len(a.Openings) == 0 || a.Bays[0].FromLeft.Sign() != 0 {
		v.p.say(v.baysOf(a), noInk)
	}
}

// openOf says what stays open: "; 30 stays open on the right".
func (v *voice) openOf(a *solver.Along) string {
	var list []string
	for _, o := range a.Openings {
		s := v.both(o.Width) + " stays open"
		switch {
		case len(a.Bays) == 0:
		case o.FromLeft.Sign() == 0:
			s += " on the left"
		case lastBay(a).FromLeft.Less(o.FromLeft):
			s += " on the right"
		default:
			s += ", beginning " + v.both(o.FromLeft) + " from the left post"
		}
		list = append(list, s)
	}
	if len(list) == 0 {
		return ""
	}
	return "; " + and(list)
}

func lastBay(a *solver.Along) solver.Stretch { return a.Bays[len(a.Bays)-1] }

// baysOf says the bays: "one bay of 115-1/2", "two bays of 56", "bays of 40 and 72".
func (v *voice) baysOf(a *solver.Along) string {
	if len(a.Bays) == 0 {
		return "no bay"
	}
	same := true
	var list []string
	for _, b := range a.Bays {
		same = same && b.Width.Eq(a.Bays[0].Width)
		list = append(list, v.both(b.Width))
	}
	if same {
		return plural(len(a.Bays), "bay", "bays") + " of " + list[0]
	}
	return "bays of " + and(list)
}

// stiffenersOf says the stiffeners: in one bay with their places, in several how many in each.
func (v *voice) stiffenersOf(a *solver.Along) string {
	if sameStiffeners(a.Bays) && len(a.Bays) > 1 && len(a.Bays[0].Stiffeners) > 0 {
		b := a.Bays[0]
		return plural(len(b.Stiffeners), "stiffener", "stiffeners") + " in each bay, " + v.centersOf(b) + " from its left"
	}
	var parts []string
	for i, b := range a.Bays {
		if len(b.Stiffeners) == 0 {
			continue
		}
		s := plural(len(b.Stiffeners), "stiffener", "stiffeners")
		if len(a.Bays) > 1 {
			s += " in bay " + mark(plain, exact.Int(i+1).String())
		}
		parts = append(parts, s+", "+v.centersOf(b))
	}
	return strings.Join(parts, "; ")
}

func (v *voice) centersOf(b solver.Stretch) string {
	if len(b.Stiffeners) > 8 {
		return "evenly"
	}
	return centerLines(len(b.Stiffeners)) + v.places(b.Stiffeners)
}

func centerLines(n int) string {
	if n == 1 {
		return "center line at "
	}
	return "center lines at "
}

// places lists where something goes, as a tape shows it; "about" is said once for all.
func (v *voice) places(at []exact.Rat) string {
	var list []string
	off := false
	for _, x := range at {
		_, on := v.Near(x)
		off = off || !on
		list = append(list, mark(nearest, x.String()))
	}
	if off {
		return "about " + and(list)
	}
	return and(list)
}

func sameStiffeners(bays []solver.Stretch) bool {
	for _, b := range bays {
		if !sameList(b.Stiffeners, bays[0].Stiffeners) {
			return false
		}
	}
	return true
}

func sameList(a, b []exact.Rat) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if !a[i].Eq(b[i]) {
			return false
		}
	}
	return true
}

// open says that nothing blocks, and what is still wanted for a layout.
func (v *voice) open() {
	if v.a.Verdict == solver.Blocked {
		return
	}
	var list []string
	for _, s := range v.a.To.Statements {
		list = append(list, v.phrase(s.String()))
	}
	if len(list) > 0 {
		v.p.say("Heard: "+and(list)+". Nothing stands in the way so far", noInk)
	}
	if v.a.Options != nil {
		v.optionsTable()
	}
}
