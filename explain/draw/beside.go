package draw

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// beside is the least width at which two walls stand next to each other; below it they stand one over the other.
const besideFrom = 72

// SideBySide draws a wall before and after a change at one scale, what moved marked in both, and lists what moved.
// What moved is after.Change, or, where that is empty, what differs between the two layouts.
// It returns "" where neither answer has a layout that can be drawn.
func SideBySide(before, after *solver.Answer, o Options) string {
	moved := movedOf(before, after)
	var hot subjects
	for _, m := range moved {
		hot = append(hot, subjectOf(m.Of))
	}
	half := o.width()
	if half >= besideFrom {
		half = (half - 3) / 2
	}
	var views []*view
	for _, a := range []*solver.Answer{before, after} {
		if w, err := layOut(a); err == nil {
			v := newView(w, o, o.reading(a), hot)
			v.quietBays = true
			v.fit(half)
			views = append(views, v)
		} else {
			views = append(views, nil)
		}
	}
	if views[0] == nil && views[1] == nil {
		return ""
	}
	oneScale(views)
	left, right := titled("before", views[0], after), titled("after", views[1], after)
	var out []string
	if half == o.width() {
		out = append(append(left, ""), right...)
	} else {
		out = abreast(left, right, half)
	}
	out = append(out, movedLines(moved, o, after)...)
	return strings.Join(out, "\n") + "\n"
}

// oneScale lets both pictures take the coarser scale of the two and stand on one floor, so that lengths compare.
func oneScale(views []*view) {
	a, b := views[0], views[1]
	if a == nil || b == nil || (a.w.up == nil) != (b.w.up == nil) || (a.w.along == nil) != (b.w.along == nil) {
		return
	}
	a.col, a.row = exact.Max(a.col, b.col), exact.Max(a.row, b.row)
	b.col, b.row = a.col, a.row
	a.sky = max(a.w.highest(), b.w.highest())
	b.sky = a.sky
}

func titled(title string, v *view, after *solver.Answer) []string {
	if v == nil {
		return []string{title, "", nothing(title, after)}
	}
	return append([]string{title}, v.lines()...)
}

func nothing(title string, after *solver.Answer) string {
	if title == "after" && after != nil && after.Verdict == solver.Blocked {
		return "(does not fit)"
	}
	return "(nothing to draw)"
}

func abreast(left, right []string, half int) []string {
	var out []string
	for i := range max(len(left), len(right)) {
		l, r := "", ""
		if i < len(left) {
			l = left[i]
		}
		if i < len(right) {
			r = right[i]
		}
		out = append(out, strings.TrimRight(pad(l, half)+"   "+r, " "))
	}
	return out
}

func movedLines(moved []solver.Moved, o Options, a *solver.Answer) []string {
	arrow, sign := " → ", "► "
	if o.ASCII {
		arrow, sign = " -> ", "> "
	}
	r := o.reading(a)
	var out []string
	for _, m := range moved {
		for i, s := range wrap(r.movedLine(m, arrow), o.width()-2) {
			lead := sign
			if i > 0 {
				lead = "  "
			}
			out = append(out, inked(lead+s, o.Color))
		}
	}
	return out
}

func (r reading) movedLine(m solver.Moved, arrow string) string {
	switch {
	case m.From == "":
		return m.Of + " " + r.moved(m.Of, m.To) + ", new"
	case m.To == "":
		return m.Of + " " + r.moved(m.Of, m.From) + ", gone"
	}
	return m.Of + " " + r.moved(m.Of, m.From) + arrow + r.moved(m.Of, m.To)
}

// moved writes one end of a change, which stands as an exact number of inches or pieces, or as words.
func (r reading) moved(of, value string) string {
	v, err := exact.Parse(value)
	if err != nil || kindOf(of) != solver.Length {
		return value
	}
	return r.size(v)
}

// kindOf is the kind of what a name such as "bay 2" or "post 1 from left" speaks of.
func kindOf(name string) solver.Kind {
	if k := solver.KindOf(solver.Quantity(name)); k != 0 {
		return k
	}
	var words []string
	for _, w := range strings.Fields(name) {
		if strings.Trim(w, "0123456789") != "" {
			words = append(words, w)
		}
	}
	return solver.KindOf(solver.Quantity(strings.Join(words, " ")))
}

// movedOf lists what differs, as the answer tells it or else as the two layouts show it.
func movedOf(before, after *solver.Answer) []solver.Moved {
	if after != nil && len(after.Change) > 0 {
		return after.Change
	}
	var out []solver.Moved
	old, now := named(before), named(after)
	seen := make(map[string]bool)
	for _, e := range append(old, now...) {
		from, to := find(old, e.Of), find(now, e.Of)
		if !seen[e.Of] && from != to {
			out = append(out, solver.Moved{Of: e.Of, From: from, To: to})
		}
		seen[e.Of] = true
	}
	return out
}

func find(list []solver.Moved, of string) string {
	for _, e := range list {
		if e.Of == of {
			return e.To
		}
	}
	return ""
}

// named lists the figures of a layout by name, each in To.
func named(a *solver.Answer) []solver.Moved {
	w, err := layOut(a)
	if err != nil {
		return nil
	}
	var out []solver.Moved
	add := func(of, to string) { out = append(out, solver.Moved{Of: of, To: to}) }
	if up := w.up; up != nil {
		add("wall height", up.WallHeight.String())
		add("rails", exact.Int(up.Rails).String())
		add("gap", up.Gap.String())
		add("bottom gap", up.BottomGap.String())
	}
	if al := w.along; al != nil {
		add("span", al.Span.String())
		add("added posts", exact.Int(len(al.Posts)).String())
		for _, p := range w.chain {
			switch p.kind {
			case "post":
				add("post "+exact.Int(p.n).String()+" from left", p.at.String())
			default:
				add(p.kind+" "+exact.Int(p.n).String(), p.says.String())
			}
		}
		if al.PostHeight != nil && len(al.Posts) > 0 {
			add("post height", al.PostHeight.String())
		}
	}
	return out
}
