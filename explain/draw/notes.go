package draw

import (
	"strconv"
	"strings"

	"saywright/solver"
)

// notes are the lines beside a drawing: cautions first, then what the figures mean, then what is taken for granted.
func notes(a *solver.Answer, w *wall, r reading, omitted bool) []string {
	var out []string
	for _, c := range cautionsOf(a) {
		out = append(out, "Caution: "+c.Text)
	}
	from := "All figures in " + r.unit()
	switch {
	case w.up != nil && w.fall != 0:
		from += ", heights from the floor at the left end post; marks from the floor at each end"
	case w.up != nil:
		from += ", heights from the floor"
	}
	out = append(out, from+".")
	out = append(out, stackNote(w, r)...)
	out = append(out, chainNotes(w, r)...)
	if offTape(w, r) {
		out = append(out, "≈ is the nearest mark on the tape: the exact place lies beside it.")
	}
	if omitted {
		out = append(out, "Some figures find no room at this scale: they stand on the job sheet.")
	}
	if len(a.Assumed) > 0 {
		out = append(out, "Taken for granted: "+strings.Join(r.assumed(a), "; ")+".")
	}
	return out
}

func stackNote(w *wall, r reading) []string {
	if w.up == nil {
		return []string{"The wall's height is not known yet: it is shown from above."}
	}
	up := w.up
	s := strconv.Itoa(up.Rails) + " rail" + choice(up.Rails == 1, "", "s")
	if up.RailSize != "" {
		s += " " + up.RailSize
	}
	s += ", " + r.size(up.RailFace) + " on the face"
	switch {
	case up.Rails == 1:
	case w.evenGaps():
		s += "; gaps " + r.size(up.Gap)
	default:
		var all []string
		for _, g := range w.of(w.stack, "gap") {
			all = append(all, r.size(g.says))
		}
		s += "; gaps from the bottom " + strings.Join(all, ", ")
	}
	s += "; " + r.size(up.BottomGap) + " underneath."
	return []string{s, "A mark is the top hole of a rail's bracket, each measured from the floor."}
}

func chainNotes(w *wall, r reading) []string {
	if w.along == nil {
		return []string{"The wall's length is not known yet."}
	}
	var out []string
	al := w.along
	if len(al.Posts) > 0 {
		out = append(out, "A post is at so much from the left end post's face to its own near face.")
		out = append(out, holesNote(al.Base, r))
		if al.BaseHeight.Sign() > 0 {
			out = append(out, "Added posts stand on bases "+r.size(al.BaseHeight)+" high.")
		}
	}
	for _, s := range w.stiffeners {
		if len(s) > 0 {
			out = append(out, "Stiffeners are measured to their center lines, from the left of their bay.")
			break
		}
	}
	return out
}

// holesNote tells where the anchor holes go: from the post's center, or through the base where its holes are not known.
func holesNote(b *solver.PostBase, r reading) string {
	if b == nil || len(b.Holes) == 0 {
		return "Mark the anchor holes through the base itself."
	}
	var list []string
	for _, h := range b.Holes {
		var at []string
		if h.Right.Sign() != 0 {
			at = append(at, r.size(h.Right.Abs())+choice(h.Right.Sign() > 0, " right", " left"))
		}
		if h.Back.Sign() != 0 {
			at = append(at, r.size(h.Back.Abs())+choice(h.Back.Sign() > 0, " back", " forward"))
		}
		if len(at) == 0 {
			at = []string{"on it"}
		}
		list = append(list, strings.Join(at, " and "))
	}
	s := "Anchor holes from the post's center: " + strings.Join(list, "; ")
	if b.Deep.Sign() > 0 {
		s += "; " + r.size(b.Deep) + " deep"
	}
	return s + "."
}

// offTape reports whether a drawing of the wall has to show a nearest mark.
func offTape(w *wall, r reading) bool {
	off := func(s string) bool { return strings.HasPrefix(s, r.near) }
	if w.up != nil {
		for i, m := range w.up.Marks {
			if off(r.place(m)) || i < len(w.up.MarksAtRight) && off(r.place(w.up.MarksAtRight[i])) {
				return true
			}
		}
		if off(r.size(w.up.WallHeight)) {
			return true
		}
	}
	for _, p := range append(append([]part(nil), w.stack...), w.chain...) {
		if off(r.size(p.says)) || p.kind == "post" && off(r.place(p.at)) {
			return true
		}
	}
	if w.along != nil {
		for _, b := range w.along.Bays {
			for _, s := range b.Stiffeners {
				if off(r.place(s)) {
					return true
				}
			}
		}
	}
	return false
}

// writeNotes sets notes into a box, smaller where they must be; what finds no room is counted in the last line.
func writeNotes(p *paper, list []string, in box) {
	for _, size := range []float64{normal, small, least, 2.1} {
		lines := foldAll(list, in.w, size)
		room := int(in.h / (size * 1.28))
		if len(lines) > room && size > 2.1 {
			continue
		}
		if len(lines) > room && room > 0 {
			lines = append(lines[:room-1], noteLine{"… the rest stands on the job sheet.", false})
		}
		y := in.y + ascent*size
		for _, l := range lines {
			p.text(text{x: in.x, y: y, size: size, bold: l.bold, says: l.says})
			y += size * 1.28
		}
		return
	}
}

type noteLine struct {
	says string
	bold bool
}

func foldAll(list []string, width, size float64) []noteLine {
	var out []noteLine
	for _, s := range list {
		bold := strings.HasPrefix(s, "Caution:")
		for _, l := range fold(s, width, size, bold) {
			out = append(out, noteLine{l, bold})
		}
	}
	return out
}
