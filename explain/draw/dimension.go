package draw

import (
	"math"
	"strconv"
	"strings"

	"saywright/solver/exact"
)

// label is a figure beside the picture, at the height y; edge: y is an upper edge, else a middle.
type label struct {
	y    float64
	text string
	hot  bool
	edge bool
}

// sign leads from a figure back to the picture; a part that the sentence is about has an arrowhead.
func (v *view) sign(hot bool) string {
	switch {
	case v.o.ASCII && hot:
		return "< "
	case v.o.ASCII:
		return "- "
	case hot:
		return "◄ "
	}
	return "╴ "
}

// heights lists what stands beside the picture, the most telling first.
func (v *view) heights() []label {
	w, up := v.w, v.w.up
	if up == nil {
		return nil
	}
	out := []label{{w.height, v.st.size(up.WallHeight) + " wall", v.hot.about("wall height", 0), true}}
	if v.hot.about("mark", 0) {
		for i, m := range up.Marks {
			out = append(out, label{m.Float(), v.st.place(m) + " mark " + strconv.Itoa(i+1), true, true})
		}
	}
	out = append(out, v.gapLabels()...)
	rails := w.rails()
	mid := rails[(len(rails)-1)/2]
	if one := v.hotRail(); one > 0 {
		mid = rails[one-1]
	}
	out = append(out, label{mid.mid(), v.st.size(up.RailFace) + " rail", v.hot.about("rail", mid.n), false})
	if w.postTop > 0 {
		out = append(out, label{w.postTop, v.st.size(*w.along.PostHeight) + " post", v.hot.about("post height", 0), true})
	}
	return out
}

func (v *view) hotRail() int {
	for _, s := range v.hot {
		if s.kind == "rail" && s.n <= v.w.up.Rails {
			return s.n
		}
	}
	return 0
}

// gapLabels names the gap under the wall and one between rails, or each of them where they differ.
func (v *view) gapLabels() []label {
	bottom := v.w.stack[0]
	var out []label
	if bottom.says.Sign() > 0 {
		out = append(out, label{bottom.mid(), v.st.size(bottom.says) + " under", v.hot.about("bottom gap", 0), false})
	}
	gaps := v.w.of(v.w.stack, "gap")
	if len(gaps) > 0 && v.w.evenGaps() {
		gaps = gaps[len(gaps)/2 : len(gaps)/2+1]
	}
	for _, g := range gaps {
		out = append(out, label{g.mid(), v.st.size(g.says) + " gap", v.hot.about("gap", g.n), false})
	}
	return out
}

func (v *view) sideWidth() int {
	most := 0
	for _, l := range v.heights() {
		most = max(most, len([]rune(l.text)))
	}
	if most == 0 {
		return 0
	}
	return most + 3
}

func (v *view) sideLabels() { v.side = v.heights() }

// placeSide gives each label its row, or the row above or below where that is taken; what finds none is told below.
func (v *view) placeSide() map[int]label {
	taken := make(map[int]label)
	for _, l := range v.side {
		row, placed := v.rowOf(l), false
		for _, r := range []int{row, row - 1, row + 1} {
			if _, ok := taken[r]; !ok && r >= 0 && r < v.rows && v.cols+3+len([]rune(l.text)) <= v.width {
				taken[r], placed = l, true
				break
			}
		}
		if !placed {
			v.rest = append(v.rest, strings.TrimSpace(v.sign(l.hot))+" "+l.text)
		}
	}
	v.rest = joined(v.rest)
	return taken
}

func (v *view) rowOf(l label) int {
	if l.edge {
		return min(v.y(l.y)/v.sub, v.rows-1)
	}
	return min(int(math.Floor((v.top-l.y)/v.row.Float()+1e-9)), v.rows-1)
}

// joined puts short notes on one line.
func joined(notes []string) []string {
	if len(notes) < 2 {
		return notes
	}
	return []string{strings.Join(notes, "; ")}
}

// dimensions are the lines under the picture: the chain of bays and openings, the span, and what found no room.
func (v *view) dimensions() []string {
	if v.w.along == nil {
		return nil
	}
	var chain strings.Builder
	at := 0
	var told []string
	for _, p := range v.w.chain {
		if p.kind == "post" {
			continue
		}
		x0, x1 := v.wide(p.run)
		s, ok := v.dimension(v.st.size(p.says), x1-x0, v.hot.about(p.kind, p.n))
		if !ok {
			told = append(told, p.kind+" "+v.st.size(p.says))
		}
		chain.WriteString(strings.Repeat(" ", max(x0-at, 0)))
		chain.WriteString(s)
		at = max(x1, at)
	}
	out := []string{chain.String()}
	if len(v.w.chain) > 1 {
		x0, x1 := v.wide(run{0, v.w.span})
		s, ok := v.dimension(v.st.size(v.w.along.Span), x1-x0, v.hot.about("span", 0))
		if ok {
			out = append(out, strings.Repeat(" ", x0)+s)
		}
	}
	v.tell(told)
	return out
}

// dimension draws |--- 30 ---| over so many columns; ok is false where the figure has no room.
func (v *view) dimension(text string, width int, hot bool) (s string, ok bool) {
	dash, left, right := "─", "├", "┤"
	if v.o.ASCII {
		dash, left, right = "-", "|", "|"
	}
	if hot && v.o.ASCII {
		text = "> " + text + " <"
	} else if hot {
		text = "► " + text + " ◄"
	}
	n := len([]rune(text))
	switch {
	case n == 0 && width >= 2:
		s = left + strings.Repeat(dash, width-2) + right
	case width >= n+4:
		free := width - n - 4
		s = left + strings.Repeat(dash, free/2) + " " + text + " " + strings.Repeat(dash, free-free/2) + right
	case width >= n+2:
		s = left + pad(text, width-2) + right
	case width >= n+1:
		s = pad(text, width)
	case width >= 2:
		return left + strings.Repeat(dash, width-2) + right, false
	default:
		return strings.Repeat(dash, width), false
	}
	return inked(s, hot && v.o.Color), true
}

// tell puts into words what the picture had no room for, and the figures that it shows no lines for.
func (v *view) tell(noRoom []string) {
	if len(noRoom) > 0 {
		v.rest = append(v.rest, strings.Join(counted(noRoom), ", "))
	}
	al := v.w.along
	if len(al.Posts) > 0 {
		v.rest = append(v.rest, "added posts "+v.st.size(al.PostFace)+" wide, near faces from the left: "+v.places())
	}
	var lists []string
	for _, b := range al.Bays {
		if s := v.list(b.Stiffeners); s != "" {
			lists = append(lists, s)
		}
	}
	if len(lists) > 0 {
		v.rest = append(v.rest, "stiffeners, from the left of their bay: "+strings.Join(grouped(lists), "; "))
	}
}

func (v *view) places() string {
	var at []exact.Rat
	for _, p := range v.w.along.Posts {
		at = append(at, p.FromLeft)
	}
	return v.list(at)
}

func (v *view) list(at []exact.Rat) string { return strings.Join(v.st.places(at), ", ") }

// counted writes what repeats once, with how many there are.
func counted(list []string) []string {
	times := make(map[string]int)
	for _, s := range list {
		times[s]++
	}
	out := grouped(list)
	for i, s := range out {
		if times[s] > 1 {
			out[i] = s + " (" + strconv.Itoa(times[s]) + " of them)"
		}
	}
	return out
}

// grouped writes what repeats once.
func grouped(list []string) []string {
	seen := make(map[string]bool)
	var out []string
	for _, s := range list {
		if !seen[s] {
			out = append(out, s)
		}
		seen[s] = true
	}
	return out
}

func (v *view) scaleLine() string {
	s := "In " + v.st.unit() + "; "
	col, row := v.st.Length(v.col), v.st.Length(v.row)
	switch {
	case v.w.along == nil:
		return s + "a row is " + row + "; the length is not known yet."
	case v.w.up == nil:
		return s + "a column is " + col + "; from above: the height is not known yet."
	}
	return s + "a column is " + col + ", a row " + row + "."
}

// wrap breaks s at blanks into lines of at most width characters.
func wrap(s string, width int) []string {
	var out []string
	line := ""
	for _, word := range strings.Fields(s) {
		word = cut(word, width)
		switch {
		case line == "":
			line = word
		case len([]rune(line))+1+len([]rune(word)) <= width:
			line += " " + word
		default:
			out = append(out, line)
			line = word
		}
	}
	return append(out, line)
}
