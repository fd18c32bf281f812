package draw

import (
	"strconv"
	"strings"

	"saywright/solver"
)

const typeface = "Helvetica, Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif"

// begin opens an SVG of w by h millimeters; title and desc are for those who listen to it. The generator stands near
// the beginning, so that a file can be known as one of ours before it is written over.
func (p *paper) begin(w, h float64, title, desc string, size string) {
	p.raw(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ` + mm(w) + " " + mm(h) + `" ` + size +
		` role="img" data-generator="saywright" font-family="` + typeface + `" fill="#000">` + "\n" +
		"<title>" + escape(title) + "</title>\n<desc>" + escape(desc) + "</desc>\n" +
		`<rect width="` + mm(w) + `" height="` + mm(h) + `" fill="#fff"/>` + "\n")
}

func (p *paper) end() []byte {
	p.raw("</svg>\n")
	return p.buf.Bytes()
}

func trueSize(w, h float64) string { return `width="` + mm(w) + `mm" height="` + mm(h) + `mm"` }

// size is the page lying on its side, millimeters: US Letter (8-1/2 by 11 in), or A4 of ISO 216.
func (s Sheet) size() (w, h float64) {
	if strings.EqualFold(s.Page, "a4") {
		return 297, 210
	}
	return 279.4, 215.9
}

// SVG draws the measured drawing on a sheet: elevation, section through rail and bracket, plan of a post and its base,
// notes and title block, each to the scale it names, in millimeters of paper. It returns ErrNothing where the answer
// has no layout.
func SVG(a *solver.Answer, s Sheet) ([]byte, error) {
	w, err := layOut(a)
	if err != nil {
		return nil, err
	}
	r := Options{}.reading(a)
	p := &paper{}
	width, height := s.size()
	p.begin(width, height, s.name()+": measured drawing of a half wall", describe(w, r), trueSize(width, height))
	inner := box{0, 0, width, height}.inset(8)
	p.rect(frame, inner, "")
	sheet := &drawing{p: p, a: a, w: w, r: r, s: s, inner: inner.inset(4)}
	sheet.draw()
	return p.end(), nil
}

// drawing is the sheet: where each view goes.
type drawing struct {
	p     *paper
	a     *solver.Answer
	w     *wall
	r     reading
	s     Sheet
	inner box
}

const (
	band    = 80.0  // height of the details under a wide wall
	besides = 104.0 // width of the details beside a tall wall
	block   = 26.0  // height of the title block
	naming  = 7.0   // height of a view's title
)

func (d *drawing) draw() {
	wide := newFront(d.p, d.w, d.r, box{d.inner.x, d.inner.y, d.inner.w, d.inner.h - band - naming - 1})
	tall := newFront(d.p, d.w, d.r, box{d.inner.x, d.inner.y, d.inner.w - besides - 4, d.inner.h - naming})
	if tall.scale < wide.scale {
		tall.draw()
		d.title(box{d.inner.x, d.inner.bottom() - naming + 1, tall.zone.w, 6}, tall.title(), tall.scale)
		d.besideIt(tall)
		return
	}
	wide.draw()
	d.title(box{d.inner.x, d.inner.bottom() - band - naming, d.inner.w, 6}, wide.title(), wide.scale)
	d.underIt(wide)
}

// underIt lays section, plan, notes and title block out in a band under the elevation.
func (d *drawing) underIt(f *front) {
	b := box{d.inner.x, d.inner.bottom() - band, d.inner.w, band}
	d.p.line(fineOut, b.x-4, b.y, b.right()+4, b.y)
	x := b.x
	if hasSection(d.w) {
		d.section(box{x, b.y, 74, band})
		x += 76
	}
	if hasPlan(d.w) {
		d.plan(box{x, b.y, 86, band})
		x += 88
	}
	d.words(f, box{x, b.y, b.right() - x, band})
}

// besideIt stacks them at the right of a tall wall.
func (d *drawing) besideIt(f *front) {
	b := box{d.inner.right() - besides, d.inner.y, besides, d.inner.h}
	d.p.line(fineOut, b.x-2, b.y-4, b.x-2, b.bottom()+4)
	y := b.y
	if hasSection(d.w) {
		d.section(box{b.x, y, besides, 68})
		y += 70
	}
	if hasPlan(d.w) {
		d.plan(box{b.x, y, besides, 58})
		y += 60
	}
	d.words(f, box{b.x, y, besides, b.bottom() - y})
}

func (d *drawing) section(zone box) {
	v := newSection(d.p, d.w, d.r, box{zone.x, zone.y, zone.w, zone.h - 6})
	v.draw()
	d.title(box{zone.x, zone.bottom() - 6, zone.w, 6}, "Section at a post", v.scale)
}

func (d *drawing) plan(zone box) {
	v := newPlan(d.p, d.a, d.w, d.r, box{zone.x, zone.y, zone.w, zone.h - 6})
	v.draw()
	d.title(box{zone.x, zone.bottom() - 6, zone.w, 6}, "Plan of "+v.name, v.scale)
}

// words are the notes and, at the bottom, the title block.
func (d *drawing) words(f *front, zone box) {
	in := box{zone.x, zone.y + 3, zone.w - 2, zone.h - block - 5}
	writeNotes(d.p, notes(d.a, d.w, d.r, f.omitted), in)
	width := min(zone.w+4, 116)
	d.titleBlock(box{zone.right() + 4 - width, zone.bottom() - block + 4, width, block}, f)
}

// title names a view and its scale, under it.
func (d *drawing) title(in box, says string, scale int) {
	d.p.text(text{x: in.x, y: in.y + ascent*middle + 0.5, size: middle, bold: true, says: says + ", 1:" + strconv.Itoa(scale)})
}

// titleBlock has the fields that ISO 7200 asks a small drawing for: what it is, its date, scale, unit and sheet.
func (d *drawing) titleBlock(b box, f *front) {
	p := d.p
	p.rect(outline, b, "#fff")
	mid, low := b.y+11, b.y+17.5
	p.line(fineOut, b.x, mid, b.right(), mid)
	p.line(fineOut, b.x, low, b.right(), low)
	p.text(text{x: b.x + 2, y: b.y + 7.4, size: large, bold: true, says: short(d.s.name(), b.w-4, large, true)})
	p.text(text{x: b.x + 2, y: mid + 4.4, size: normal, says: "Half wall: measured drawing"})
	cells := []struct{ name, says string }{
		{"scale, " + strings.ToLower(f.title()), scaleText(f.scale, d.r.Metric)}, {"date", d.s.Date}, {"figures in", d.r.unit()}, {"sheet", "1 of 1"},
	}
	shares := []float64{0.40, 0.24, 0.21, 0.15}
	x := b.x
	for i, c := range cells {
		w := b.w * shares[i]
		if i > 0 {
			p.line(fineOut, x, low, x, b.bottom())
		}
		p.text(text{x: x + 1.2, y: low + 2.6, size: 2, says: short(c.name, w-2, 2, false)})
		p.text(text{x: x + 1.2, y: low + 6.8, size: small, says: short(c.says, w-2, small, false)})
		x += w
	}
}

// describe tells the drawing to those who do not see it.
func describe(w *wall, r reading) string {
	var s []string
	if up := w.up; up != nil {
		s = append(s, r.size(up.WallHeight)+" high.", stackNote(w, r)[0],
			"Marks from the floor: "+strings.Join(r.places(up.Marks), ", ")+".")
	}
	if w.along != nil {
		var chain []string
		for _, p := range w.chain {
			chain = append(chain, p.kind+" "+strconv.Itoa(p.n)+" "+r.size(p.says)+" wide")
		}
		s = append(s, r.size(w.along.Span)+" between the end posts, from the left: "+strings.Join(chain, ", ")+".")
	}
	return strings.Join(append(s, "In "+r.unit()+"."), " ")
}
