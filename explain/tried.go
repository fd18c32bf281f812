package explain

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// tried answers a what-if: what would come of it, what that changes, and that nothing is kept yet.
func (v *voice) tried() {
	switch {
	case v.a.Verdict == solver.Blocked:
		v.blocked()
	case v.onlyNoted():
		v.changesNoLayout()
		return
	case v.onlyUpUntold():
		v.upUntold() // what stands along the wall answers nothing of it
		return
	case v.a.Layout != nil && (v.a.Layout.Up != nil || v.a.Layout.Along != nil):
		v.shorterBoards()
		v.fits()
		v.moved("now", "then")
		v.costsCompared()
		v.driftsUp()
	default:
		v.open()
	}
	v.assumed()
	v.cautions()
	if v.a.Verdict != solver.Blocked && v.a.Ask == nil {
		v.p.add(para{text: "Nothing is changed; `take that` keeps it."})
	}
}

// onlyUpUntold reports whether what is tried is of rails and gaps alone, and the height that tells whether they fit is not known.
func (v *voice) onlyUpUntold() bool {
	for _, s := range v.a.To.Statements {
		switch s.Name.Quantity {
		case solver.Rails, solver.Gap, solver.BottomGap, solver.RailSize:
		default:
			return false
		}
	}
	return v.a.Layout != nil && v.a.Layout.Up == nil && v.a.Layout.Along != nil && v.a.Ask != nil && v.a.Verdict != solver.Blocked
}

// upUntold says what rails and gaps that are tried hang on.
func (v *voice) upUntold() {
	var list []string
	for _, s := range v.a.To.Statements {
		list = append(list, v.phrase(s.String()))
	}
	v.p.say("Whether "+and(list)+" will go hangs on the height of the wall, and none was said", noInk)
	if v.a.Options != nil {
		v.upOptions(v.a.Options)
	}
	v.assumed()
}

// shorterBoards says why boards of another length, which were tried, take more posts than there are now.
func (v *voice) shorterBoards() {
	if !v.saysOf(solver.Stock) {
		return
	}
	more, bay := false, ""
	for _, m := range v.a.Change {
		from, err := exact.Parse(m.From)
		to, wrong := exact.Parse(m.To)
		switch {
		case err != nil || wrong != nil:
		case m.Of == string(solver.AddedPosts):
			more = from.Less(to)
		case m.Of == string(solver.Bay):
			bay = " of " + v.short(from)
		}
	}
	if more {
		v.p.say("Those boards don't reach across a bay"+bay+", so it takes more posts", noInk)
	}
}

// driftsUp says how far the top would go, were rails that run wide or narrow set by the old gaps.
func (v *voice) driftsUp() {
	if w, ok := v.line("drift"); ok {
		v.p.say("Set one from the other with the gap there is now, the top would end up "+v.length(w.Expr.Value)+" off", noInk)
	}
}

// moved lays what differs side by side: what was said in this very line, and what the lead tells anyway, is left out.
func (v *voice) moved(before, after string) {
	t := newTable("<changes", before, after)
	for _, m := range v.a.Change {
		_, q, part := thingOf(m.Of)
		if v.saysOf(q) || q == solver.PostFromLeft || strings.HasPrefix(part, "post") {
			continue
		}
		t.row(v.columnName(m.Of), v.valueOf(q, m.From), v.valueOf(q, m.To))
	}
	if len(t.rows) > 1 {
		v.p.add(*t)
	}
}

// changesNoLayout answers a what-if that bears on cutting, buying or bases alone.
func (v *voice) changesNoLayout() {
	if len(v.a.To.Statements) == 1 && v.cheapestWanted() {
		v.costsCompared() // who asks for a cheaper way asks nothing of the layout
		v.cautions()
		return
	}
	text := "That changes nothing of the layout"
	set := v.spoken()
	for _, a := range []aspect{aboutCuts, aboutBuying, aboutBases} {
		if set[a] {
			text += forEye(" (`take that` keeps it, `" + whereNext[a] + "` then has it in)")
			break
		}
	}
	v.p.say(text, noInk)
	v.costsCompared()
	v.cautions()
}

// columnName says a quantity at the head of a row: "gap", "post 1 from left".
func (v *voice) columnName(of string) string {
	_, q, part := thingOf(of)
	if part == "" && q != "" {
		return string(q)
	}
	return quoted(of)
}

// valueOf writes a value of the data as a figure: a length of a length, a count of a count, words as they are.
func (v *voice) valueOf(q solver.Quantity, s string) string {
	r, err := exact.Parse(s)
	switch {
	case s == "":
		return "none"
	case err != nil:
		return quoted(s)
	case lengthLike(q):
		return v.short(r)
	case solver.KindOf(q) == solver.Money:
		return money(r)
	}
	return number(r)
}

// lengthLike reports whether a figure of that quantity is a length.
func lengthLike(q solver.Quantity) bool {
	switch solver.KindOf(q) {
	case solver.Length, solver.Lengths:
		return true
	case 0:
		return q == solver.Measured || q == solver.CutOf || q == solver.MarksOf || q == solver.FixedRail
	}
	return false
}
