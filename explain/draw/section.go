package draw

import "strconv"

// section is the cut across the wall close to a post, seen along it: the two lowest rails cut through, their
// brackets behind them standing past each rail, the post behind those. The post's depth is centered on the rails.
type section struct {
	sight
	p    *paper
	w    *wall
	r    reading
	zone box
	view run  // heights shown
	cut  bool // the floor is not shown
}

// hasSection reports whether the answer tells what a section shows.
func hasSection(w *wall) bool {
	return w.up != nil && w.up.RailThickness.Sign() > 0 && w.up.Ear.Sign() > 0
}

const farBelow = 14.0 // a bottom gap that leaves the floor out of the section, inches

func newSection(p *paper, w *wall, r reading, zone box) *section {
	s := &section{p: p, w: w, r: r, zone: zone}
	rails := w.rails()
	top := rails[min(1, len(rails)-1)]
	ear := w.up.Ear.Float()
	s.view = run{0, top.hi + ear + 0.8}
	if s.cut = w.stack[0].hi > farBelow; s.cut {
		s.view.lo = w.stack[0].hi - ear - 1.5
	}
	f := &front{r: r}
	left := 5 + leader + f.columnWidth(s.sizes())
	right := 1 + leader + f.columnWidth(s.bracketLabels())
	s.sight = sightOf(fitScale(r.Metric, s.depth(), s.view.size(), zone.w-left-right, zone.h-12))
	s.x0 = zone.x + left + (zone.w-left-right)/2
	s.y0 = zone.y + 8.5 + (zone.h-12-s.view.size()*s.k)/2 + s.view.hi*s.k
	return s
}

// depth of what is drawn across the wall.
func (s *section) depth() float64 {
	return max(s.w.up.RailThickness.Float()+1, s.postDepth())
}

func (s *section) postDepth() float64 {
	if s.w.along == nil {
		return 0
	}
	return s.w.along.EndPostDepth.Float()
}

func (s *section) draw() {
	s.p.raw(`<g data-view="section" data-scale="` + strconv.Itoa(s.scale) + `" data-left="` + mm(s.x0) + `" data-floor="` + mm(s.y0) + `">` + "\n")
	if d := s.postDepth(); d > 0 {
		l, r, top, low := s.x(-d/2), s.x(d/2), s.y(s.view.hi), s.y(s.view.lo)
		s.p.path(fineOut, "", l, top, l, low)
		s.p.path(fineOut, "", r, top, r, low)
		s.zigzag(l, r, top)
		if s.cut {
			s.zigzag(l, r, low)
		}
	}
	if !s.cut {
		s.floor()
	}
	for i, rail := range s.w.rails() {
		if i < 2 {
			s.bracketAndRail(rail)
		}
	}
	s.figures()
	s.p.raw("</g>\n")
}

func (s *section) zigzag(l, r, y float64) {
	m := (l + r) / 2
	s.p.path(thin, "", l-1.5, y, m-0.6, y, m-0.2, y-1.2, m+0.2, y+1.2, m+0.6, y, r+1.5, y)
}

func (s *section) floor() {
	half := s.depth()/2*s.k + 5
	s.p.line(outline, s.x0-half, s.y(0), s.x0+half, s.y(0))
	for x := s.x0 - half; x < s.x0+half-1; x += 2.4 {
		s.p.line(thin, x+1.2, s.y(0)+0.2, x, s.y(0)+1.6)
	}
}

func (s *section) bracketAndRail(rail part) {
	up := s.w.up
	half, ear := up.RailThickness.Float()/2, up.Ear.Float()
	s.p.rect(outline, s.box(run{-half, half}, run{rail.lo - ear, rail.hi + ear}), "#fff", attr{"data-part", "bracket"}, attr{"data-n", strconv.Itoa(rail.n)})
	cut := s.box(run{-half, half}, rail.run)
	s.p.rect(cutLine, cut, "#fff", attr{"data-part", "rail"}, attr{"data-n", strconv.Itoa(rail.n)})
	s.p.hatch(cut, 1.8)
	hole := s.y(up.Marks[rail.n-1].Float())
	s.p.circle(fineOut, s.x0, hole, 0.09*s.k)
	s.p.line(center, s.x0-0.35*s.k-0.6, hole, s.x0+0.35*s.k+0.6, hole)
	s.p.line(center, s.x0, hole-0.3*s.k, s.x0, hole+0.3*s.k)
}

// sizes are the gaps and faces shown, from the bottom.
func (s *section) sizes() []beside {
	var out []beside
	for i, part := range s.w.stack {
		if i <= 3 && part.size() > 0 && (i > 0 || !s.cut) {
			out = append(out, beside{at: part.mid(), says: s.r.size(part.says)})
		}
	}
	return out
}

func (s *section) bracketLabels() []beside {
	up, first := s.w.up, s.w.rails()[0]
	out := []beside{
		{at: up.Marks[0].Float(), says: "hole " + s.r.size(up.Reach) + " over"},
		{at: first.lo - up.Ear.Float()/2, says: "ear " + s.r.size(up.Ear)},
	}
	if up.BracketThickness.Sign() > 0 {
		out = append(out, beside{at: first.mid(), says: "bracket " + s.r.size(up.BracketThickness)})
	}
	return out
}

// figures stand in a column on each side: sizes up the wall at the left, the bracket's at the right.
func (s *section) figures() {
	f := &front{sight: s.sight, p: s.p, r: s.r}
	half, t := s.depth()/2, s.w.up.RailThickness.Float()/2
	chain := s.x(-half) - 5
	for i, part := range s.w.stack {
		if i > 3 || part.size() <= 0 || i == 0 && s.cut {
			continue
		}
		s.p.line(thin, chain, s.y(part.lo), chain, s.y(part.hi))
		for _, y := range []float64{part.lo, part.hi} {
			s.p.tick(chain, s.y(y), 0.8)
			f.extension(s.x(-half), chain, s.y(y))
		}
	}
	within := run{s.y(s.view.hi) - 1.6, s.y(s.view.lo) - 0.6}
	f.column(s.sizes(), chain, -1, within)
	for _, l := range s.bracketLabels() {
		s.p.line(thin, s.x(t)+0.5, s.y(l.at), s.x(half)+1.6, s.y(l.at))
	}
	f.column(s.bracketLabels(), s.x(half)+1, 1, within)
	y := s.y(s.view.hi) - 3.4
	s.p.measure(s.x(-t), s.x(t), y, s.r.size(s.w.up.RailThickness))
	for _, x := range []float64{-t, t} {
		s.p.line(thin, s.x(x), y-1, s.x(x), s.y(s.view.hi)-1.6)
	}
}
