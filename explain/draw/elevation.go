package draw

import (
	"math"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// Elevation draws the wall from the front for a terminal: posts, rails, gaps, openings, stiffeners and the ground,
// each within a character of its place at the scale that the last lines name, dimensioned with the answer's figures.
// It returns "" where the answer has no layout that can be drawn.
func Elevation(a *solver.Answer, o Options) string {
	w, err := layOut(a)
	if err != nil {
		return ""
	}
	v := newView(w, o, o.reading(a), subjects{subjectOf(o.Mark)})
	v.fit(o.width())
	return strings.Join(v.lines(), "\n") + "\n"
}

// view is one elevation on its way to the terminal.
type view struct {
	w        *wall
	o        Options
	st       reading
	hot      subjects
	col, row exact.Rat // inches in a column, in a row
	width    int
	*raster
	sky  float64 // what must be seen above the floor at the least, inches
	top  float64 // height of the picture's upper edge, inches
	side []label // beside the picture
	rest []string

	quietBays bool // a bay that is marked shows it in its dimension only
}

// mostRows is how many rows a wall may take, so that it can be seen at a glance.
const mostRows = 40

func newView(w *wall, o Options, st reading, hot subjects) *view {
	return &view{w: w, o: o, st: st, hot: hot}
}

// fit chooses the scale for a picture of so many columns.
func (v *view) fit(width int) {
	v.width = width
	rungs := ladderOf(v.st.Metric)
	room := max(width-v.sideWidth(), 8)
	v.col = rungs.up(v.extent() / float64(room))
	if v.w.up == nil {
		v.row = v.col.Mul(exact.Int(2))
		return
	}
	tall := v.w.highest() - v.w.lowest()
	if v.w.along != nil { // a column is half as wide as a row is high: keep the true shape where it fits
		v.col = rungs.up(max(v.col.Float(), tall/mostRows/2))
	}
	v.row = v.col.Mul(exact.Int(2))
	if detail := v.finest() * float64(v.finestRows()); v.w.along == nil || detail < v.row.Float() {
		v.row = rungs.up(max(rungs.down(detail).Float(), tall/mostRows))
	}
}

// finestRows is how many of the finest stripes a row can show: a gap that is marked takes whole rows.
func (v *view) finestRows() int {
	if v.o.ASCII || v.hot.about("gap", 1) || v.hot.about("bottom gap", 0) {
		return 1
	}
	return 2
}

// stub is how much of a wall of unknown length is shown.
const stub = 48.0

func (v *view) extent() float64 {
	if v.w.along == nil {
		return stub
	}
	return v.w.span + 2*v.w.endFace
}

// finest is the least height that must be seen as a stripe of its own.
func (v *view) finest() float64 {
	least := v.w.up.RailFace.Float()
	for _, p := range v.w.stack {
		if s := p.size(); s > 1e-9 {
			least = min(least, s)
		}
	}
	return least
}

func (v *view) lines() []string {
	if v.w.up == nil {
		v.plan()
	} else {
		v.elevation()
	}
	out := v.body()
	out = append(out, v.dimensions()...)
	for _, s := range append(v.rest, v.scaleLine()) {
		out = append(out, wrap(s, v.width)...)
	}
	for i, s := range out {
		out[i] = strings.TrimRight(s, " ")
	}
	return out
}

// elevation fills the picture: from back to front rails, stiffeners, posts, ground.
func (v *view) elevation() {
	r := v.row.Float()
	above := int(math.Ceil(max(v.w.highest(), v.sky)/r-1e-9)) + 1
	below := int(math.Ceil(max(v.w.fall, 0)/r-1e-9)) + 1
	v.raster = newRaster(v.columnsWide(), above+below, v.o.ASCII)
	v.top = float64(above) * r
	if v.w.along == nil {
		v.endlessBay()
	} else {
		v.chainOf()
	}
	v.groundLine()
	v.sideLabels()
}

func (v *view) columnsWide() int { return max(v.x(v.extent()-v.w.endFace), 3) }

// x and y are the column and the sub row at which a place begins.
func (v *view) x(at float64) int { return round((at + v.w.endFace) / v.col.Float()) }

func (v *view) y(at float64) int {
	return round((v.top - at) / v.row.Float() * float64(v.sub))
}

// wide returns the columns of a run, one at the least.
func (v *view) wide(r run) (x0, x1 int) {
	x0, x1 = v.x(r.lo), v.x(r.hi)
	return x0, max(x1, x0+1)
}

func (v *view) endlessBay() {
	v.stackIn(1, v.cols-2, 0)
	v.fill(0, 1, 0, v.y(0), post, false)
}

func (v *view) chainOf() {
	for _, b := range v.w.bays() {
		x0, x1 := v.wide(b.run)
		v.stackIn(x0, x1, b.n)
		v.uprights(b)
	}
	for _, o := range v.w.of(v.w.chain, "opening") {
		if v.hot.about("opening", o.n) {
			x0, x1 := v.wide(o.run)
			v.fill(x0, x1, v.y(v.w.height), v.y(v.w.floorAt(o.mid())), void, true)
		}
	}
	for _, p := range v.w.of(v.w.chain, "post") {
		x0, x1 := v.wide(p.run)
		v.fill(x0, x1, v.y(v.topOf()), v.y(v.w.floorAt(p.mid())), post, v.hot.about("post", p.n) || v.hot.about("post height", 0))
	}
	left, right := max(v.x(0), 1), min(v.x(v.w.span), v.cols-1)
	v.fill(0, left, 0, v.y(0), post, v.hot.about("end post", 1))
	v.fill(right, v.cols, 0, v.y(-v.w.fall), post, v.hot.about("end post", 2))
}

// topOf is where added posts end: at the wall's top where nothing is said of them.
func (v *view) topOf() float64 { return max(v.w.postTop, v.w.height) }

func (v *view) stackIn(x0, x1, bay int) {
	hot := bay > 0 && !v.quietBays && v.hot.about("bay", bay)
	for _, p := range v.w.stack {
		y0, y1 := v.y(p.hi), v.y(p.lo)
		switch {
		case p.kind == "rail":
			v.fill(x0, x1, y0, max(y1, y0+1), wood, hot || v.hot.about("rail", p.n))
		case v.hot.about(p.kind, p.n):
			v.fill(x0, x1, y0, y1, void, true)
		}
	}
}

func (v *view) uprights(bay part) {
	if bay.n > len(v.w.stiffeners) || len(v.w.stack) == 0 {
		return
	}
	at := v.w.stiffeners[bay.n-1]
	if x0, x1 := v.wide(bay.run); x1-x0 < 3*len(at) {
		return // they would hide the rails: the lines below tell them
	}
	for i, at := range at {
		x := int(math.Floor((at + v.w.endFace) / v.col.Float()))
		v.fill(x, x+1, v.y(v.w.height), v.y(v.w.stack[0].hi), upright, v.hot.about("stiffener", i+1))
	}
}

func (v *view) groundLine() {
	for x := range v.cols {
		floor := v.w.floorAt((float64(x)+0.5)*v.col.Float() - v.w.endFace)
		if v.w.along == nil {
			floor = 0
		}
		row := (v.y(floor) + v.sub - 1) / v.sub
		v.fill(x, x+1, row*v.sub, (row+1)*v.sub, ground, false)
	}
}

// plan shows a wall of unknown height from above.
func (v *view) plan() {
	v.raster = newRaster(v.columnsWide(), 1, v.o.ASCII)
	for _, b := range v.w.bays() {
		x0, x1 := v.wide(b.run)
		v.fill(x0, x1, 0, v.sub, wood, v.hot.about("bay", b.n))
		for i, at := range v.w.stiffeners[b.n-1] {
			x := int(math.Floor((at + v.w.endFace) / v.col.Float()))
			v.fill(x, x+1, 0, v.sub, upright, v.hot.about("stiffener", i+1))
		}
	}
	for _, p := range v.w.chain {
		x0, x1 := v.wide(p.run)
		switch {
		case p.kind == "post":
			v.fill(x0, x1, 0, v.sub, post, v.hot.about("post", p.n))
		case p.kind == "opening" && v.hot.about("opening", p.n):
			v.fill(x0, x1, 0, v.sub, void, true)
		}
	}
	v.fill(0, max(v.x(0), 1), 0, v.sub, post, false)
	v.fill(min(v.x(v.w.span), v.cols-1), v.cols, 0, v.sub, post, false)
}

// body writes the rows of the picture with the labels beside them.
func (v *view) body() []string {
	beside := v.placeSide()
	var out []string
	for i := range v.rows {
		s := v.raster.row(i, v.o.Color)
		if l, ok := beside[i]; ok {
			s = pad(s, v.cols+1) + inked(v.sign(l.hot)+l.text, v.o.Color && l.hot)
		}
		out = append(out, s)
	}
	return out
}
