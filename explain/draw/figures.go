package draw

import (
	"strconv"
)

// beside is a figure that stands in a column at the side of the wall, led to the height at (inches).
type beside struct {
	at   float64
	says string
	bold bool
}

// stackLabels are the figures at the left: the gap underneath, the gaps and the rails; what repeats is said once.
func (f *front) stackLabels() []beside {
	var gaps []beside
	bottom := f.w.stack[0]
	var out []beside
	if bottom.says.Sign() > 0 {
		out = append(out, beside{at: bottom.mid(), says: f.r.size(bottom.says)})
	}
	for _, g := range f.w.of(f.w.stack, "gap") {
		if g.says.Sign() > 0 {
			gaps = append(gaps, beside{at: g.mid(), says: f.r.size(g.says)})
		}
	}
	if f.w.evenGaps() && len(gaps) > 1 {
		one := gaps[len(gaps)/2]
		gaps = []beside{{at: one.at, says: strconv.Itoa(len(gaps)) + " × " + one.says}}
	}
	rails := f.w.rails()
	rail := beside{at: rails[0].mid(), says: f.r.size(rails[0].says)}
	if len(rails) > 1 {
		rail.says = strconv.Itoa(len(rails)) + " × " + rail.says
	}
	return append(append(out, rail), gaps...)
}

// markLabels stand at the heights of the marks; where the floor falls each says its height at both end posts.
func (f *front) markLabels() []beside {
	up := f.w.up
	var out []beside
	for i, m := range up.Marks {
		says := f.r.place(m)
		if i < len(up.MarksAtRight) {
			says += " → " + f.r.place(up.MarksAtRight[i])
		}
		out = append(out, beside{at: m.Float(), says: says})
	}
	return out
}

// leader is how long the line is that leads from a part to its figure, the space at the figure counted in.
const leader = 4.2

// leftFigures are the chain up the wall, the wall's height and that of the added posts.
func (f *front) leftFigures() {
	face := f.x(f.ends().lo)
	chain := face - 5
	at, from := chain-1, face
	if !f.slim {
		labels := f.stackLabels()
		f.stackChain(face, chain)
		f.column(labels, chain, -1, run{f.y(f.w.height) + 0.6, f.y(0) - 0.6}) // between the extension lines of the height
		at, from = chain-leader-f.columnWidth(labels)-2.5, chain
	}
	f.p.measureUp(f.y(0), f.y(f.w.height), at, f.r.size(f.w.up.WallHeight))
	f.extension(from, at, f.y(0))
	f.extension(from, at, f.y(f.w.height))
	if f.w.postTop > 0 {
		posts := f.w.of(f.w.chain, "post")
		f.p.measureUp(f.y(0), f.y(f.w.postTop), at-8, f.r.size(*f.w.along.PostHeight))
		f.extension(f.x(posts[0].lo), at-8, f.y(f.w.postTop))
		f.extension(at, at-8, f.y(0))
	}
}

// stackChain is the chain of gaps and rails up the wall.
func (f *front) stackChain(face, chain float64) {
	f.extension(face, chain, f.y(0))
	f.p.tick(chain, f.y(0), f.tickSize())
	for _, s := range f.w.stack {
		if s.size() <= 0 {
			continue
		}
		kind := choice(s.kind == "rail", "face", "gap")
		f.p.line(thin, chain, f.y(s.lo), chain, f.y(s.hi), attr{"data-part", kind}, attr{"data-n", strconv.Itoa(s.n)})
		f.p.tick(chain, f.y(s.hi), f.tickSize())
		f.extension(face, chain, f.y(s.hi))
	}
}

// tickSize keeps the ticks of a crowded chain apart.
func (f *front) tickSize() float64 {
	size := 0.9
	for _, s := range f.w.stack {
		if h := s.size() * f.k; h > 1e-9 {
			size = min(size, max(0.4*h, 0.35))
		}
	}
	return size
}

// extension leads from the wall out to a dimension line, past it by a little.
func (f *front) extension(from, to, y float64) {
	if to < from {
		f.p.line(thin, from-0.8, y, to-1.2, y)
		return
	}
	f.p.line(thin, from+0.8, y, to+1.2, y)
}

// rightFigures are the marks. Nothing else stands there, so that they may spread up and down.
func (f *front) rightFigures() {
	x := f.x(f.ends().hi) + 1
	head := "marks"
	if len(f.w.up.MarksAtRight) > 0 {
		head = "marks: left → right"
	}
	top := f.y(f.w.highest()) - 9.5
	f.p.text(text{x: x + leader, y: top, size: small, says: head})
	low := f.y(f.w.lowest()) + 2
	if f.w.along != nil {
		low += chainDrop + 10
	}
	f.column(f.markLabels(), x, 1, run{top + 1.5, low})
}

// column writes figures one under the other beside the line x, to its left (-1) or right (1), each led to its height;
// they move apart where they would lie on each other, grow smaller where they must, and thin out where even that fails.
func (f *front) column(list []beside, x float64, side float64, within run) {
	if len(list) == 0 {
		return
	}
	sorted := byHeight(list)
	for every := 1; ; every++ {
		some := thinned(sorted, every)
		for _, size := range f.lettering() {
			if at, ok := f.spreadDown(some, size, within); ok {
				f.write(some, at, size, x, side)
				f.omitted = f.omitted || every > 1
				return
			}
		}
		if every > len(list) {
			f.omitted = true
			return
		}
	}
}

// lettering is the sizes to try for a column of figures.
func (f *front) lettering() []float64 {
	if f.sizes != nil {
		return f.sizes
	}
	return sizes
}

// byHeight sorts from the top down, as the paper's y runs.
func byHeight(list []beside) []beside {
	out := append([]beside(nil), list...)
	for i := range out {
		for j := i; j > 0 && out[j].at > out[j-1].at; j-- {
			out[j], out[j-1] = out[j-1], out[j]
		}
	}
	return out
}

// thinned keeps every so manyth figure, counted from the bottom.
func thinned(list []beside, every int) []beside {
	var out []beside
	for i, l := range list {
		if (len(list)-1-i)%every == 0 {
			out = append(out, l)
		}
	}
	return out
}

func (f *front) spreadDown(list []beside, size float64, within run) ([]float64, bool) {
	want, long := make([]float64, len(list)), make([]float64, len(list))
	for i, l := range list {
		want[i], long[i] = f.y(l.at), (ascent+descent)*size
	}
	return spread(want, long, within.lo, within.hi, 0.3)
}

// write sets the figures and leads each to its height: straight where it lies there, else with an elbow.
func (f *front) write(list []beside, at []float64, size, x, side float64) {
	for i, l := range list {
		y := f.y(l.at)
		anchor := "start"
		if side < 0 {
			anchor = "end"
		}
		f.p.path(thin, "", x+0.6*side, y, x+1.2*side, y, x+3.2*side, at[i], x+3.8*side, at[i])
		f.p.text(text{x: x + leader*side, y: at[i] + (ascent-descent)/2*size, size: size, anchor: anchor, bold: l.bold, says: l.says})
	}
}
