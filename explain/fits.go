package explain

import (
	"slices"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// fits says a layout: up the wall, along it, or what of it this line spoke of; then the sums of that part.
func (v *voice) fits() {
	up, along := v.parts()
	l := v.a.Layout
	if list := v.untold(); len(list) > 0 {
		v.p.say("Heard: "+and(list)+". Nothing stands in the way so far", noInk)
		if l.Up != nil && !v.spoken()[aboutUp] && len(v.a.Change) == 0 || l.Along != nil && !v.spoken()[aboutAlong] && len(v.a.Change) == 0 {
			return
		}
	}
	if up {
		v.upLead(l.Up)
		v.markedSo(l.Up)
	}
	if along {
		v.alongLead(l.Along)
	}
	v.offTheWish(up, along)
	v.layoutSums(up, along)
	if up {
		v.tapeSums(l.Up)
		v.wouldBe()
	}
}

// untold is what this line set of a part of the layout that is not worked out yet, so that no layout shows it.
func (v *voice) untold() (list []string) {
	l := v.a.Layout
	if l == nil || v.a.To.Kind != "state" {
		return nil
	}
	for _, s := range v.a.To.Statements {
		switch aspects[s.Name.Quantity] {
		case aboutUp:
			if l.Up == nil {
				list = append(list, v.phrase(s.String()))
			}
		case aboutAlong:
			if l.Along == nil {
				list = append(list, v.phrase(s.String()))
			}
		}
	}
	return list
}

// parts reports which parts of the layout an answer tells: those that the line spoke of, and both where it spoke of
// neither or only of what is not known.
func (v *voice) parts() (up, along bool) {
	l := v.a.Layout
	if l == nil {
		return false, false
	}
	knowsUp, knowsAlong := l.Up != nil, l.Along != nil
	set := v.spoken()
	up, along = set[aboutUp] && knowsUp, set[aboutAlong] && knowsAlong
	for _, m := range v.a.Change {
		_, q, _ := thingOf(m.Of)
		switch aspects[q] {
		case aboutUp:
			up = up || knowsUp
		case aboutAlong:
			along = along || knowsAlong && m.Of != string(solver.PostHeight)
		}
	}
	if !up && !along {
		return knowsUp, knowsAlong
	}
	return up, along
}

// layoutSums lays the lines of work that belong to the parts told.
func (v *voice) layoutSums(up, along bool) {
	var list []solver.Work
	for _, w := range v.a.Work {
		if toldInWords[w.Note] {
			continue
		}
		_, q, _ := thingOf(w.Of)
		if a := aspects[q]; a == aboutUp && !up || a == aboutAlong && !along {
			continue
		}
		list = append(list, w)
	}
	v.p.lay(v.work(list))
}

// toldInWords are the lines that have a sentence of their own.
var toldInWords = map[string]bool{
	"off the mark": true, "tape gaps": true, "one more": true, "even wall": true, "neighbor": true, "more gap": true,
	"narrowest": true,
}

// lay adds sums to the page, if there are any.
func (p *page) lay(s sums) {
	if len(s.rows) > 0 {
		p.add(s)
	}
}

// rails says how many, and after a what-if whether that is still so.
func (v *voice) rails(n int) string {
	s := plural(n, "rail", "rails")
	if v.a.To.Kind == "what if" && !v.changes(string(solver.Rails)) && !v.saysOf(solver.Rails) {
		s += " still,"
	}
	return s
}

func (v *voice) changes(of string) bool {
	return slices.ContainsFunc(v.a.Change, func(m solver.Moved) bool { return m.Of == of })
}

// saysOf reports whether this line spoke of a quantity.
func (v *voice) saysOf(q solver.Quantity) bool {
	return slices.ContainsFunc(v.a.To.Statements, func(s solver.Statement) bool { return s.Name.Quantity == q })
}

// upLead says rails and gaps: "Five rails, and it comes out even: 2-1/2 between them and underneath."
func (v *voice) upLead(u *solver.Up) {
	rails := v.rails(u.Rails)
	plainly := strings.TrimSuffix(rails, ",")
	_, on := v.Near(u.Gap)
	even := u.Gap.Eq(u.BottomGap)
	switch {
	case u.Rails == 1:
		v.p.say(plainly+", with "+v.both(u.BottomGap)+" underneath", good)
	case v.uneven(u):
		v.p.say(rails+" with gaps of "+v.gapsOf(u.Gaps)+" from the bottom up, and "+v.both(u.BottomGap)+" underneath", good)
	case even && on:
		v.p.say(plainly+", and it comes out even: "+v.length(u.Gap)+" between them, the same underneath", good)
	case even:
		v.p.say(plainly+", "+v.both(u.Gap)+" apart, the same underneath", good)
	default:
		v.p.say(rails+" "+v.both(u.Gap)+" apart, and "+v.both(u.BottomGap)+" is left under the bottom one", good)
	}
	v.falling(u)
}

// uneven reports whether the gaps differ because rails were placed, not because of the tape.
func (v *voice) uneven(u *solver.Up) bool {
	_, taped := v.line("tape gaps")
	if taped || len(u.Gaps) == 0 {
		return false
	}
	for _, g := range u.Gaps { // on the tape, where every mark was rounded by itself, gaps differ by one mark of it
		if v.smallest().Less(g.Sub(u.Gap).Abs()) {
			return true
		}
	}
	_, on := v.Near(u.Gap)
	return on
}

// smallest is the smallest mark worked to.
func (v *voice) smallest() exact.Rat {
	if v.a.Tape.Sign() > 0 {
		return v.a.Tape
	}
	return exact.New(1, 16)
}

// line finds the first line of work with a note.
func (v *voice) line(note string) (solver.Work, bool) {
	for _, w := range v.a.Work {
		if w.Note == note {
			return w, true
		}
	}
	return solver.Work{}, false
}

func (v *voice) lines(note string) (list []solver.Work) {
	for _, w := range v.a.Work {
		if w.Note == note {
			list = append(list, w)
		}
	}
	return list
}

// gapsOf lists gaps that differ, from the bottom up.
func (v *voice) gapsOf(gaps []exact.Rat) string {
	var list []string
	for _, g := range gaps {
		list = append(list, v.about(g))
	}
	return and(list)
}

func (v *voice) falling(u *solver.Up) {
	which := " lower"
	if u.Fall.Sign() < 0 {
		which = " higher"
	}
	if u.Fall.Sign() != 0 {
		v.p.say("The floor lies "+v.about(u.Fall.Abs())+which+" at the right end post, so each post has marks of its own", noInk)
	}
}

// wouldBe tells what one rail more would take, and which walls would come out even.
func (v *voice) wouldBe() {
	if f, ok := v.fact("next rails"); ok && len(f.Nums) == 3 {
		n := ints(f.Nums[:1])[0]
		text := count(n) + " are " + v.both(f.Nums[2]) + " too high with nothing under them"
		if w, ok := v.line("one more"); ok {
			text += ": " + v.sentenceSum(w.Expr)
		}
		v.p.note(text)
	}
	walls := v.lines("even wall")
	if len(walls) == 0 || v.a.Layout == nil || v.a.Layout.Up == nil {
		return
	}
	var heights, sums []string
	for _, w := range walls {
		heights, sums = append(heights, v.both(w.Expr.Value)), append(sums, v.sentenceSum(w.Expr))
	}
	v.p.note("Even gaps of " + v.both(v.a.Layout.Gap) + " want a wall of " + joined(heights, "or") + ": " + and(sums))
}
