package explain

import (
	"strconv"
	"strings"

	"saywright/solver"
)

func itoa(n int) string { return strconv.Itoa(n) }

// marks says what to pencil on each post, each mark from that post's own floor.
func (v *voice) marks() {
	posts := v.a.Marks
	if len(posts) == 0 {
		v.noTable()
		return
	}
	groups := alikePosts(posts)
	if len(groups) == 1 && len(posts) > 1 {
		v.p.say("The same marks on every post, each measured from the floor", good)
	} else {
		v.p.say("Each mark is measured from the floor at its own post", good)
	}
	v.p.hear(v.marksAloud(posts[0]))
	for _, g := range groups {
		v.p.add(*v.markTable(g))
	}
	v.marksTold()
	v.assumed()
}

// alikePosts gathers posts that have the same marks.
func alikePosts(posts []solver.PostMark) (groups [][]solver.PostMark) {
	for _, p := range posts {
		found := false
		for i, g := range groups {
			if sameRows(g[0].Rows, p.Rows) {
				groups[i], found = append(g, p), true
				break
			}
		}
		if !found {
			groups = append(groups, []solver.PostMark{p})
		}
	}
	return groups
}

func sameRows(a, b []solver.RailMark) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if !a[i].Top.Eq(b[i].Top) || !a[i].Hole.Eq(b[i].Hole) || !a[i].Underside.Eq(b[i].Underside) {
			return false
		}
	}
	return true
}

// markTable lists the rails of a post from the top down, as they stand on it.
func (v *voice) markTable(g []solver.PostMark) *table {
	t := newTable("rail", "underside", "top", "bracket hole")
	var names []string
	for _, p := range g {
		names = append(names, quoted(p.Post))
	}
	t.title = upper(and(names)) + ":"
	rows := g[0].Rows
	for i := len(rows) - 1; i >= 0; i-- {
		r := rows[i]
		t.row(mark(plain, itoa(r.Rail)), v.onMark(r.Underside), v.onMark(r.Top), v.onMark(r.Hole))
	}
	return t
}

func (v *voice) marksAloud(p solver.PostMark) string {
	var list []string
	for _, r := range p.Rows {
		list = append(list, mark(bareNearest, r.Hole.String()))
	}
	if len(list) > 8 {
		return ""
	}
	return sentence("bracket holes, from the floor up: " + and(list))
}

// marksTold tells of the floor, of the board that wants a tape, and how far the worst mark is off.
func (v *voice) marksTold() {
	if told := v.fallsUnder(); told != "" {
		v.p.note(told)
	}
	if f, ok := v.fact("tape a board"); ok && len(f.Names) > 0 && len(f.Nums) > 0 {
		v.p.note("Before you mark: hold a tape to one board. A " + size(f.Names[0]) + " is taken as " + v.length(f.Nums[0]) + " on the face")
	}
	if f, ok := v.fact("worst mark"); ok && len(f.Nums) > 0 && f.Nums[0].Sign() > 0 {
		v.p.note("Marks are rounded to the tape, each by itself; none is off by more than " + v.atMost(f.Nums[0]))
	}
}

// fallsUnder is the gap underneath at the first and the last post that carries rails, "" where the floor is level.
func (v *voice) fallsUnder() string {
	f, ok := v.fact("floor falls")
	if !ok || len(f.Nums) < 3 || len(f.Names) < 2 {
		return ""
	}
	which := " lower"
	if f.Nums[0].Sign() < 0 {
		which = " higher"
	}
	at := func(post string) string {
		if end, ok := strings.CutSuffix(post, " end post"); ok {
			return "the " + end
		}
		return quoted(post)
	}
	return "The floor lies " + v.about(f.Nums[0].Abs()) + which + " at the right end post: the gap underneath is " +
		v.about(f.Nums[1]) + " at " + at(f.Names[0]) + " and " + v.about(f.Nums[2]) + " at " + at(f.Names[1])
}

// spacer says the block to set between rails, and where it errs.
func (v *voice) spacer() {
	for _, f := range v.a.Facts {
		if len(f.Nums) < 3 {
			continue
		}
		block := v.length(f.Nums[1])
		switch f.Key {
		case "spacer":
			v.p.say("A spacer of "+block+" between rails"+v.blockOff(f), good)
		case "spacer under":
			v.p.say("Under the bottom rail, "+block+v.blockOff(f), noInk)
		case "spacer of several":
			if len(f.Nums) > 3 {
				v.p.say("For "+count(ints(f.Nums[3:4])[0])+" of the gaps, "+block+v.blockOff(f), good)
			}
		}
	}
	if w, ok := v.line("spacer errs"); ok {
		v.p.say("Set on spacers alone, the top rail ends "+v.about(w.Expr.Value)+" off, so keep to the marks", noInk)
	}
	v.p.lay(v.work(v.lines("spacer errs")))
	if len(v.p.blocks) == 0 {
		v.noTable()
	}
}

// blockOff says how much a block is too large or too small.
func (v *voice) blockOff(f solver.Fact) string {
	switch f.Nums[2].Sign() {
	case 1:
		return forEye(", " + v.length(f.Nums[2]) + " more than the exact " + v.length(f.Nums[0]))
	case -1:
		return forEye(", " + v.length(f.Nums[2].Neg()) + " less than the exact " + v.length(f.Nums[0]))
	}
	return ""
}

// storyPole lists every mark of a pole from the floor up.
func (v *voice) storyPole() {
	list := v.facts("pole")
	if len(list) == 0 {
		v.noTable()
		return
	}
	v.p.say("Mark a straight stick like this, stand it on the floor at each post, and copy the marks over", good)
	post := ""
	var t *table
	for _, f := range list {
		if len(f.Names) < 2 || len(f.Nums) < 3 {
			continue
		}
		if f.Names[0] != post {
			post = f.Names[0]
			if t != nil {
				v.p.add(*t)
			}
			t = newTable("rail", "<what", "from the floor")
			t.title = upper(quoted(post)) + ":"
		}
		t.row(number(f.Nums[0]), poleWords[f.Names[1]], v.onMark(f.Nums[1]))
	}
	if t != nil {
		v.p.add(*t)
	}
	v.marksTold()
}

var poleWords = map[string]string{"underside": "underside", "top": "top edge", "hole": "bracket hole"}
