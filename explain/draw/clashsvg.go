package draw

import "saywright/solver"

// The size of a conflict's picture on paper, millimeters.
const (
	clashWide = 104.0
	clashHigh = 56.0
)

// ClashSVG draws the same picture as Clash, as an SVG of its own to stand beside the sum.
// It returns nil where the conflict's sums end in nothing that can be drawn.
func ClashSVG(a *solver.Answer, c solver.Conflict) []byte {
	read, ok := clashOf(c)
	if !ok {
		return nil
	}
	if a == nil {
		a = &solver.Answer{}
	}
	r := Options{}.reading(a)
	s := sketchOf(read, r)
	p := &paper{}
	high := clashHigh
	if !s.upright {
		high = 34
	}
	p.begin(clashWide, high, "What does not fit", s.said+" In "+r.unit()+".", trueSize(clashWide, high))
	if s.upright {
		p.uprightSketch(s, r)
	} else {
		p.lyingSketch(s)
	}
	return p.end()
}

// uprightSketch draws the patches, and the labels in a column at their right.
func (p *paper) uprightSketch(s sketch, r reading) {
	f := &front{p: p, r: r}
	in := box{4, 5, 44, clashHigh - 10}
	f.k = in.h / s.see.size()
	f.y0 = in.bottom() + s.see.lo*f.k
	place := func(t patch) box {
		return box{in.x + t.across.lo*in.w, f.y(t.up.hi), t.across.size() * in.w, t.up.size() * f.k}
	}
	for _, t := range s.parts {
		if !t.hot {
			p.patch(t, place(t))
		}
	}
	edge := in.right() + 2
	for _, t := range s.parts {
		if !t.hot || t.what == line {
			continue
		}
		b := place(t)
		p.patch(t, b)
		p.line(thin, edge, b.y, edge, b.bottom())
		for _, y := range []float64{b.y, b.bottom()} {
			p.line(thin, b.right()+0.5, y, edge+1, y)
			p.tick(edge, y, min(0.9, max(0.3, b.h*0.4)))
		}
	}
	for _, t := range s.parts {
		if t.what == line {
			y := f.y(t.up.lo)
			p.line(cutLine, in.x-2, y, in.right()+1, y)
		}
	}
	var labels []beside
	for _, l := range s.labels {
		labels = append(labels, beside{at: l.y, says: l.text, bold: l.hot})
	}
	f.column(labels, edge+0.5, 1, run{2, clashHigh - 2})
}

func (p *paper) patch(t patch, b box) {
	switch t.what {
	case wood:
		p.rect(outline, b, "#fff")
	case post:
		p.rect(fineOut, b, "#fff")
	case steel:
		p.rect(outline, b, "#ddd")
	case ground:
		p.rect(noPen, b, "#fff")
		p.hatch(b, 2)
		p.line(outline, b.x-2, b.y, b.right()+2, b.y)
	case void:
		p.rect(hidden, b, "#fff")
	}
	if t.hot && t.what != line {
		p.hatch(b, 1.1)
		p.rect(outline, b, "none")
	}
}

// lyingSketch draws the bars one under the other, each with what it says under it.
func (p *paper) lyingSketch(s sketch) {
	in := box{5, 3, clashWide - 10, 0}
	k := in.w / s.see.size()
	y := in.y
	for _, b := range s.bars {
		dimensioned := p.bar(b, in.x-s.see.lo*k, y, k)
		says := text{x: in.x - s.see.lo*k, size: normal, bold: b.hot, says: b.says}
		switch {
		case b.hot: // the difference, under the end where it is
			says.x, says.anchor = in.right(), "end"
			says.y = y + ascent*normal
		case dimensioned:
			says.x, says.anchor = in.x-s.see.lo*k+b.pieces[len(b.pieces)/2].mid()*k, "middle"
			says.y = y + 2.7
			y += 7
		default:
			says.y = y + 5.6 + ascent*normal
			y += 10.4
		}
		p.text(says)
	}
}

// bar draws the pieces of a bar and reports whether it is a dimension line between posts.
func (p *paper) bar(b bar, x0, y, k float64) bool {
	dimensioned := false
	for _, t := range b.pieces {
		at := box{x0 + t.lo*k, y, t.size() * k, 5}
		switch {
		case t.what == line:
			dimensioned = true
			p.line(thin, at.x, y+3.8, at.right(), y+3.8)
			p.tick(at.x, y+3.8, 0.9)
			p.tick(at.right(), y+3.8, 0.9)
		case t.what == post && !t.hot:
			p.rect(outline, at, "#fff")
		default:
			p.patch(patch{what: t.what, hot: t.hot}, at)
		}
	}
	return dimensioned
}
