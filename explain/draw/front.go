package draw

import (
	"math"
	"strconv"
)

// front is the elevation on paper: the wall seen from the front, in its zone of the sheet.
type front struct {
	sight
	p       *paper
	w       *wall
	r       reading
	zone    box
	left    float64 // room for figures beside the wall, millimeters
	right   float64
	above   float64
	below   float64
	slim    bool      // for a narrow screen: the stack is told beside the picture, not in it
	sizes   []float64 // of the figures beside it; nil: as on a sheet
	omitted bool      // some figure found no room
}

// newFront chooses the scale for a zone and the place of the wall in it.
func newFront(p *paper, w *wall, r reading, zone box) *front {
	f := &front{p: p, w: w, r: r, zone: zone}
	f.room()
	f.sight = sightOf(fitScale(r.Metric, f.extent(), f.high(), zone.w-f.left-f.right, zone.h-f.above-f.below))
	f.headroom()
	f.centered()
	return f
}

// headroom makes room over a wall that is so low on paper that its height is written past the end of its dimension.
func (f *front) headroom() {
	if f.w.up == nil {
		return
	}
	figure := widthOf(f.r.size(f.w.up.WallHeight), normal, false)
	if f.w.postTop > 0 {
		figure = max(figure, widthOf(f.r.size(*f.w.along.PostHeight), normal, false))
	}
	if f.w.height*f.k < figure+2 {
		f.above = max(f.above, figure+4)
	}
}

// high is the height that is drawn, in inches.
func (f *front) high() float64 {
	if f.w.up == nil {
		return f.depth()
	}
	return f.w.highest() - f.w.lowest()
}

// centered puts the wall and its figures into the middle of the zone.
func (f *front) centered() {
	free := f.zone.w - f.left - f.right - f.extent()*f.k
	f.x0 = f.zone.x + f.left + free/2 + f.w.endFace*f.k
	spare := f.zone.h - f.above - f.below - f.high()*f.k
	f.y0 = f.zone.y + f.above + spare/2 + (f.high()+min(f.w.lowest(), 0))*f.k
	if f.w.up == nil {
		f.y0 = f.zone.y + f.above + spare/2 + f.high()*f.k
	}
}

// newFill is an elevation at whatever scale fills a width, no higher than most; its zone ends where it ends.
// It suits a page that is read on a screen, where no rule is held to it.
func newFill(p *paper, w *wall, r reading, width, most float64, slim bool) *front {
	f := &front{p: p, w: w, r: r, zone: box{0, 0, width, most}, slim: slim}
	f.room()
	f.k = max(min((width-f.left-f.right)/f.extent(), (most-f.above-f.below)/f.high()), 1e-6)
	f.headroom()
	f.zone.h = f.above + f.below + f.high()*f.k
	f.centered()
	return f
}

func (f *front) extent() float64 {
	if f.w.along == nil {
		return stub
	}
	return f.w.span + 2*f.w.endFace
}

// depth of the wall as seen from above, where its height is not known.
func (f *front) depth() float64 {
	return max(f.w.along.EndPostDepth.Float(), f.w.endFace, f.w.along.PostFace.Float())
}

// room sets aside what the figures around the wall need; it does not depend on the scale.
func (f *front) room() {
	f.left, f.right, f.above, f.below = 6, 6, 4, 8
	if f.w.up != nil {
		f.left = 5 + leader + f.columnWidth(f.stackLabels()) + 8
		if f.slim {
			f.left = 11
		}
		f.right = 1 + leader + max(f.columnWidth(f.markLabels()), 16) + 2
		f.above = 13
	}
	if f.w.up != nil && len(f.w.up.MarksAtRight) > 0 {
		f.right += 10 // for the longer heading
	}
	if f.w.postTop > 0 && f.w.up != nil {
		f.left += 8
	}
	if f.hasUprights() {
		f.above = max(f.above, 14)
	}
	if f.w.along != nil {
		f.below = chainDrop + 2
		if len(f.w.chain) > 1 {
			f.below = chainDrop + 19
		}
	}
}

func (f *front) hasUprights() bool {
	for _, s := range f.w.stiffeners {
		if len(s) > 0 {
			return true
		}
	}
	return false
}

func (f *front) columnWidth(list []beside) float64 {
	most := 0.0
	for _, l := range list {
		most = max(most, widthOf(l.says, normal, l.bold))
	}
	return most
}

// title is what the view is called: a wall of unknown height is seen from above.
func (f *front) title() string {
	if f.w.up == nil {
		return "Plan"
	}
	return "Elevation"
}

// draw lays down the wall and then its figures.
func (f *front) draw() {
	f.p.raw(`<g data-view="elevation" data-scale="` + mm(perInch/f.k) + `" data-left="` + mm(f.x0) + `" data-floor="` + mm(f.y0) + `">` + "\n")
	if f.w.up == nil {
		f.fromAbove()
	} else {
		f.ground()
		f.rails()
		f.uprights()
		f.posts()
		f.markTicks()
		f.leftFigures()
		f.rightFigures()
	}
	if f.w.along != nil {
		f.upperFigures()
		f.lowerFigures()
	}
	f.p.raw("</g>\n")
}

// fine is the pen for parts that lie close on paper.
func (f *front) fine() pen {
	closest := math.Inf(1)
	for _, p := range f.w.stack {
		if s := p.size() * f.k; s > 1e-9 {
			closest = min(closest, s)
		}
	}
	if closest < 1.6 {
		return fineOut
	}
	return outline
}

// ends are the outer edges of what is drawn, in inches along the wall.
func (f *front) ends() run { return run{-f.w.endFace, f.extent() - f.w.endFace} }

func (f *front) ground() {
	e := f.ends()
	l, r := f.x(e.lo)-4, f.x(e.hi)+4
	y0, y1 := f.y(0), f.y(-f.w.fall)
	if f.w.along == nil {
		y1 = y0
	}
	f.p.line(outline, l, y0, f.x(0), y0)
	f.p.line(outline, f.x(0), y0, f.x(f.w.span), y1, attr{"data-part", "floor"})
	f.p.line(outline, f.x(f.w.span), y1, r, y1)
	for x := l; x < r-1; x += 2.4 {
		y := f.y(f.w.floorAt((x + 1 - f.x0) / f.k))
		if f.w.along == nil {
			y = y0
		}
		f.p.line(thin, x+1.2, y+0.2, x, y+1.6)
	}
}

func (f *front) rails() {
	if f.w.along == nil {
		for _, rail := range f.w.rails() {
			f.rail(rail, run{0, stub}, 0)
		}
		f.breakLine(f.x(0), -1)
		f.breakLine(f.x(stub), 1)
		return
	}
	for _, bay := range f.w.bays() {
		for _, rail := range f.w.rails() {
			f.rail(rail, bay.run, bay.n)
		}
	}
}

func (f *front) rail(rail part, along run, bay int) {
	f.p.rect(f.fine(), f.box(along, rail.run), "#fff", attr{"data-part", "rail"},
		attr{"data-bay", strconv.Itoa(bay)}, attr{"data-n", strconv.Itoa(rail.n)})
}

// breakLine ends a wall of unknown length: a thin line with a zigzag, over the rails' open ends.
func (f *front) breakLine(x float64, side float64) {
	top, mid, low := f.y(f.w.height)-3, f.y(f.w.height/2), f.y(0)
	f.p.rect(noPen, box{x - 0.5, top, 1, low - top - 0.3}, "#fff")
	f.p.path(thin, "", x, top, x, mid-2, x+1.5*side, mid-0.8, x-1.5*side, mid+0.8, x, mid+2, x, low)
}

func (f *front) uprights() {
	if f.w.along == nil {
		return
	}
	half := f.w.along.StiffenerFace.Float() / 2
	for b, list := range f.w.stiffeners {
		for i, at := range list {
			y := run{f.w.stack[0].hi, f.w.height}
			f.p.rect(f.fine(), f.box(run{at - half, at + half}, y), "#fff", attr{"data-part", "stiffener"},
				attr{"data-bay", strconv.Itoa(b + 1)}, attr{"data-n", strconv.Itoa(i + 1)}, attr{"data-at", mm(f.x(at))})
			f.p.line(center, f.x(at), f.y(f.w.height)-1.5, f.x(at), f.y(y.lo)+1.5)
		}
	}
}

func (f *front) posts() {
	if f.w.along == nil {
		return
	}
	top := max(f.w.postTop, f.w.height)
	base := f.w.along.BaseHeight.Float()
	for _, p := range f.w.of(f.w.chain, "post") {
		floor := f.w.floorAt(p.mid())
		f.p.rect(f.postPen(p.run), f.box(p.run, run{floor + base, top}), "#fff", attr{"data-part", "post"}, attr{"data-n", strconv.Itoa(p.n)})
		if base > 0 { // the base that holds the post up: its side view is not known, its height is
			b := f.box(p.run, run{floor, floor + base})
			f.p.rect(fineOut, box{b.x - 0.6, b.y, b.w + 1.2, b.h}, "#fff")
			f.p.line(fineOut, b.x-0.6, b.bottom(), b.right()+0.6, b.y)
		}
	}
	f.endPost(run{-f.w.endFace, 0}, 0)
	f.endPost(run{f.w.span, f.w.span + f.w.endFace}, -f.w.fall)
}

// endPost stands on, past the wall: its upper end is broken off.
func (f *front) endPost(x run, floor float64) {
	l, r, top, low := f.x(x.lo), f.x(x.hi), f.y(f.w.highest())-9, f.y(floor)
	f.p.path(noPen, "#fff", l, low, l, top, r, top, r, low)
	f.p.path(f.postPen(x), "", l, top, l, low, r, low, r, top)
	m := (l + r) / 2
	f.p.path(thin, "", l-1, top, m-0.5, top, m-0.2, top-1.1, m+0.2, top+1.1, m+0.5, top, r+1, top)
}

// markTicks are the bracket holes on the posts: a short stroke into the post from the face that a bay meets.
func (f *front) markTicks() {
	for i, m := range f.w.up.Marks {
		y := f.y(m.Float())
		tags := []attr{{"data-part", "mark"}, {"data-n", strconv.Itoa(i + 1)}}
		if f.w.along == nil {
			f.p.line(fineOut, f.x(0), y, f.x(0)+2, y, tags...)
			continue
		}
		for _, bay := range f.w.bays() {
			f.p.line(fineOut, f.x(bay.lo)-f.stroke(), y, f.x(bay.lo), y, tags...)
			f.p.line(fineOut, f.x(bay.hi), y, f.x(bay.hi)+f.stroke(), y, tags...)
		}
	}
}

// stroke is as long as a mark can be on the narrowest post without meeting the one from the other side.
func (f *front) stroke() float64 {
	narrow := f.w.endFace
	if len(f.w.along.Posts) > 0 {
		narrow = min(narrow, f.w.along.PostFace.Float()/2)
	}
	return min(1.4, 0.8*narrow*f.k)
}

// postPen is thinner where a post is only a line's breadth on paper.
func (f *front) postPen(x run) pen {
	if x.size()*f.k < 1.6 {
		return fineOut
	}
	return outline
}
