package draw

import (
	"math"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// Clash draws a conflict small, to stand beside its sum: brackets where they meet, rails over the height line, a bay
// against the longest board, an opening against the width that is wanted; the difference dimensioned and marked.
// It returns "" where the conflict's sums end in nothing that can be drawn, such as counts or money.
func Clash(a *solver.Answer, c solver.Conflict, o Options) string {
	read, ok := clashOf(c)
	if !ok {
		return ""
	}
	if a == nil {
		a = &solver.Answer{}
	}
	v := &view{o: o, st: o.reading(a), width: o.width()}
	s := sketchOf(read, v.st)
	var out []string
	if s.upright {
		out = v.uprightSketch(s)
	} else {
		out = v.lyingSketch(s)
	}
	for i := range out {
		out[i] = strings.TrimRight(out[i], " ")
	}
	return strings.Join(out, "\n") + "\n"
}

// Sizes of a small picture, in characters.
const (
	sketchRows    = 12
	sketchColumns = 24
)

func (v *view) uprightSketch(s sketch) []string {
	wide := sketchColumns
	for _, l := range s.labels {
		wide = min(wide, max(v.width-len([]rune(l.text))-4, 8))
	}
	least := s.see.size()
	for _, p := range s.parts {
		if p.hot {
			least = min(least, p.up.size())
		}
	}
	rungs := ladderOf(v.st.Metric)
	v.row = rungs.up(max(rungs.down(min(least, s.see.size()/8)).Float(), s.see.size()/sketchRows))
	row := v.row.Float()
	above := math.Ceil((s.see.hi-s.datum)/row - 1e-9)
	v.top = s.datum + above*row
	v.raster = newRaster(wide, int(above+math.Ceil((s.datum-s.see.lo)/row-1e-9)), v.o.ASCII)
	v.col = exact.Int(1)
	for _, p := range s.parts {
		v.patch(p)
	}
	v.side = s.labels
	out := v.body()
	for _, s := range v.rest {
		out = append(out, wrap(s, v.width)...)
	}
	return trimmed(out)
}

// trimmed drops empty lines at both ends.
func trimmed(lines []string) []string {
	for len(lines) > 0 && lines[0] == "" {
		lines = lines[1:]
	}
	for len(lines) > 0 && lines[len(lines)-1] == "" {
		lines = lines[:len(lines)-1]
	}
	return lines
}

func (v *view) patch(p patch) {
	x0, x1 := round(p.across.lo*float64(v.cols)), round(p.across.hi*float64(v.cols))
	y0, y1 := v.y(p.up.hi), v.y(p.up.lo)
	if p.what == line { // in the row on that side of the line which nothing is to be seen on
		if !p.hot {
			y0--
		}
		y0 = min(max(y0, 0), v.rows*v.sub-1)
		v.fill(x0, x1, y0, y0+1, line, false)
		return
	}
	if p.hot && y1-y0 < v.sub { // a difference is seen, however small
		y0, y1 = y1-v.sub, max(y1, y0)
	}
	v.fill(x0, x1, y0, y1, p.what, p.hot)
}

// lyingSketch draws each bar in a row of its own, what it says at its end or, where that is too long, under it.
func (v *view) lyingSketch(s sketch) []string {
	wide := min(v.width, 60)
	longest := 0
	for _, b := range s.bars {
		longest = max(longest, len([]rune(b.says)))
	}
	beside := wide-longest-3 >= 16
	if beside {
		wide -= longest + 3
	}
	var out []string
	for _, b := range s.bars {
		text := inked(v.sign(b.hot)+b.says, b.hot && v.o.Color)
		row := v.barRow(b, s.see, wide)
		if beside {
			out = append(out, pad(row, wide+1)+text)
			continue
		}
		if row != "" {
			out = append(out, row)
		}
		for _, l := range wrap(v.sign(b.hot)+b.says, v.width) {
			out = append(out, inked(l, b.hot && v.o.Color))
		}
	}
	return out
}

// barRow draws a bar over so many columns; a line in it becomes a dimension line.
func (v *view) barRow(b bar, see run, wide int) string {
	v.raster = newRaster(wide, 1, v.o.ASCII)
	at := func(x float64) int { return round((x - see.lo) / see.size() * float64(wide)) }
	dimension, from := "", 0
	for _, p := range b.pieces {
		x0, x1 := at(p.lo), max(at(p.hi), at(p.lo)+1)
		if p.what == line {
			dimension, _ = v.dimension("", x1-x0, false)
			from = x0
			continue
		}
		if x1 > wide {
			x0, x1 = wide-1, wide
		}
		v.fill(x0, x1, 0, v.sub, p.what, p.hot)
	}
	row := v.raster.row(0, v.o.Color)
	if dimension == "" {
		return row
	}
	r := []rune(pad(row, wide))
	copy(r[from:], []rune(dimension))
	return string(r)
}
