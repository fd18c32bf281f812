package explain

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// fits says a layout: up the wall, along it, or what of it this line spoke of.
func (v *voice) fits() {
	up, along := v.spokenOf()
	l := v.a.Layout
	if l == nil {
		v.p.say("It fits", good)
	} else {
		if up && l.Up != nil {
			v.upLead(l.Up)
		}
		if along && l.Along != nil {
			v.alongLead(l.Along)
		}
	}
	if s := v.work(v.a.Work); len(s.rows) > 0 {
		v.p.add(s)
	}
}

// spokenOf reports which parts of the layout an answer leads with: those that the line spoke of, both where it spoke of
// neither or where only the other is known.
func (v *voice) spokenOf() (up, along bool) {
	for _, s := range v.a.To.Statements {
		if alongWords[s.Name.Quantity] {
			along = true
		} else {
			up = true
		}
	}
	l := v.a.Layout
	if up == along || l == nil || up && l.Up == nil || along && l.Along == nil {
		return true, true
	}
	return up, along
}

var alongWords = map[solver.Quantity]bool{
	solver.Span: true, solver.Overall: true, solver.Centers: true, solver.AddedPosts: true, solver.Bays: true, solver.Bay: true,
	solver.Opening: true, solver.Openings: true, solver.OpeningFromLeft: true, solver.OpeningFromRight: true,
	solver.OpeningSide: true, solver.PostFromLeft: true, solver.PostFromRight: true, solver.Stiffeners: true,
	solver.StiffenerSpacing: true, solver.PostSize: true, solver.EndPostSize: true, solver.AddedPostSize: true,
	solver.Stock: true,
}

// upLead says rails and gaps: "Five rails, and it comes out even: 2-1/2 between them and underneath."
func (v *voice) upLead(u *solver.Up) {
	rails := plural(u.Rails, "rail", "rails")
	_, on := v.Near(u.Gap)
	switch {
	case u.Rails == 1:
		v.p.say(rails+", with "+v.both(u.BottomGap)+" underneath", good)
	case len(u.Gaps) > 0:
		v.p.say(rails+", with gaps of "+v.gapsOf(u)+" from the bottom up, and "+v.both(u.BottomGap)+" underneath", good)
	case u.Gap.Eq(u.BottomGap) && on:
		v.p.say(rails+", and it comes out even: "+v.length(u.Gap)+" between them, "+v.length(u.BottomGap)+" underneath", good)
	case u.Gap.Eq(u.BottomGap):
		v.p.say(rails+", "+v.both(u.Gap)+" apart, the same underneath", good)
		v.p.say("No tape shows that, so mark each rail from the floor", noInk)
	default:
		v.p.say(rails+", "+v.both(u.Gap)+" apart, and "+v.both(u.BottomGap)+" is left under the bottom one", good)
	}
	v.falling(u)
}

// gapsOf lists gaps that differ, like ones together: "2-5/8, 2-5/8 and 2-9/16".
func (v *voice) gapsOf(u *solver.Up) string {
	var list []string
	for _, g := range u.Gaps {
		list = append(list, v.about(g))
	}
	return and(list)
}

func (v *voice) falling(u *solver.Up) {
	switch u.Fall.Sign() {
	case 1:
		v.p.say("The floor lies "+v.about(u.Fall)+" lower at the right end post, so each post has marks of its own", noInk)
	case -1:
		v.p.say("The floor lies "+v.about(u.Fall.Neg())+" higher at the right end post, so each post has marks of its own", noInk)
	}
}

// alongLead says posts, openings, bays and stiffeners.
func (v *voice) alongLead(a *solver.Along) {
	v.postsLead(a)
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

func (v *voice) postsLead(a *solver.Along) {
	open := v.openOf(a)
	switch n := len(a.Posts); {
	case n == 0:
		v.p.say("No added post: "+v.baysOf(a)+" between the end posts", good)
	case n == 1:
		v.p.say("One added post, its near face "+v.both(a.Posts[0].FromLeft)+" from the left post; "+joinedBy(open, v.baysOf(a)), good)
	default:
		var places []string
		for _, p := range a.Posts {
			places = append(places, v.both(p.FromLeft))
		}
		v.p.say(plural(n, "added post", "added posts")+", their near faces "+and(places)+" from the left post; "+joinedBy(open, v.baysOf(a)), good)
	}
}

func joinedBy(open, bays string) string {
	if open == "" {
		return bays
	}
	return bays + ", and " + open
}

// openOf says what stays open: "30 stays open on the right".
func (v *voice) openOf(a *solver.Along) string {
	var list []string
	for _, o := range a.Openings {
		s := v.both(o.Width) + " open"
		switch {
		case o.FromLeft.Sign() == 0:
			s += " on the left"
		case len(a.Bays) > 0 && lastBay(a).FromLeft.Less(o.FromLeft):
			s += " on the right"
		default:
			s += " from " + v.both(o.FromLeft)
		}
		list = append(list, s)
	}
	if len(list) == 0 {
		return ""
	}
	return and(list)
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
	var parts []string
	for i, b := range a.Bays {
		if len(b.Stiffeners) == 0 {
			continue
		}
		var at []string
		for _, x := range b.Stiffeners {
			at = append(at, v.about(x))
		}
		s := plural(len(at), "stiffener", "stiffeners")
		if len(a.Bays) > 1 {
			s += " in bay " + count(i+1)
		}
		line := ", center lines at "
		if len(at) == 1 {
			line = ", center line at "
		}
		parts = append(parts, s+line+and(at))
	}
	if same := sameStiffeners(a.Bays); same && len(a.Bays) > 1 && len(parts) > 0 {
		n := len(a.Bays[0].Stiffeners)
		return plural(n, "stiffener", "stiffeners") + " in each bay, " + strings.SplitN(parts[0], ", ", 2)[1] + " from its left"
	}
	return strings.Join(parts, "; ")
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
	l := v.a.Layout
	if l != nil && (l.Up != nil || l.Along != nil) {
		v.fits()
		return
	}
	v.p.say("So far nothing stands in the way", noInk)
	v.optionsTable()
	if v.a.Ask == nil {
		v.p.say("Say how high the wall is, or how far apart the posts stand, and I'll lay it out", noInk)
	}
}
