package draw

import (
	"bytes"
	"math"
	"strconv"
	"strings"
)

// A pen is a kind of line. The weights are the 0.5 mm line group of technical drawing, as ISO 128-2 has it
// (from memory): wide 0.5, narrow 0.25; a cut is drawn a step wider than an outline.
type pen int

const (
	noPen   pen = iota // fills only
	outline            // what is seen
	fineOut            // what is seen, where parts lie close
	cutLine            // what is cut through
	thin               // dimension, extension and leader lines, hatching
	center             // center lines: long dash, dot
	hidden             // what lies behind: dashes
	frame              // the border of the sheet
)

var pens = map[pen]string{
	noPen:   `stroke="none"`,
	outline: `stroke="#000" stroke-width="0.5" fill="none"`,
	fineOut: `stroke="#000" stroke-width="0.25" fill="none"`,
	cutLine: `stroke="#000" stroke-width="0.7" fill="none"`,
	thin:    `stroke="#000" stroke-width="0.18" fill="none"`,
	center:  `stroke="#000" stroke-width="0.18" fill="none" stroke-dasharray="4 0.8 0.5 0.8"`,
	hidden:  `stroke="#000" stroke-width="0.25" fill="none" stroke-dasharray="1.6 0.8"`,
	frame:   `stroke="#000" stroke-width="0.7" fill="none"`,
}

// Sizes of lettering, millimeters from line to line of solid type; capitals are about 0.72 of it.
const (
	large  = 5.0
	middle = 3.6
	normal = 3.2
	small  = 2.7
	least  = 2.3
)

// box is a rectangle on the paper, millimeters from its upper left corner.
type box struct{ x, y, w, h float64 }

func (b box) right() float64  { return b.x + b.w }
func (b box) bottom() float64 { return b.y + b.h }

func (b box) inset(by float64) box { return box{b.x + by, b.y + by, b.w - 2*by, b.h - 2*by} }

// paper is an SVG being written, in millimeters. Lines with the same pen share a group.
type paper struct {
	buf  bytes.Buffer
	pen  pen
	open bool
}

func (p *paper) use(n pen) {
	if p.open && p.pen == n {
		return
	}
	p.lift()
	p.buf.WriteString("<g " + pens[n] + ">\n")
	p.pen, p.open = n, true
}

// lift ends the group of the pen in hand.
func (p *paper) lift() {
	if p.open {
		p.buf.WriteString("</g>\n")
		p.open = false
	}
}

func (p *paper) raw(s string) {
	p.lift()
	p.buf.WriteString(s)
}

// mm writes a coordinate to a tenth of a micrometer: at 1:384 that is less than 0.002 in of wall.
func mm(x float64) string {
	s := strconv.FormatFloat(math.Round(x*1e4)/1e4, 'f', -1, 64)
	if s == "-0" {
		return "0"
	}
	return s
}

// attr is one attribute; attrs writes several, their values made safe.
type attr struct{ name, value string }

func attrs(list []attr) string {
	var b strings.Builder
	for _, a := range list {
		b.WriteString(" " + a.name + `="` + escape(a.value) + `"`)
	}
	return b.String()
}

var entities = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&quot;", "'", "&#39;")

// escape makes any text safe inside XML, in an element and in an attribute.
func escape(s string) string { return entities.Replace(printable(s)) }

func (p *paper) line(n pen, x1, y1, x2, y2 float64, tags ...attr) {
	p.use(n)
	p.buf.WriteString(`<line x1="` + mm(x1) + `" y1="` + mm(y1) + `" x2="` + mm(x2) + `" y2="` + mm(y2) + `"` + attrs(tags) + "/>\n")
}

// rect draws a rectangle; fill is a color, "" for none.
func (p *paper) rect(n pen, b box, fill string, tags ...attr) {
	p.use(n)
	if fill != "" {
		tags = append([]attr{{"fill", fill}}, tags...)
	}
	p.buf.WriteString(`<rect x="` + mm(b.x) + `" y="` + mm(b.y) + `" width="` + mm(b.w) + `" height="` + mm(b.h) + `"` + attrs(tags) + "/>\n")
}

func (p *paper) path(n pen, fill string, points ...float64) {
	p.use(n)
	var d strings.Builder
	for i := 0; i+1 < len(points); i += 2 {
		d.WriteString(choice(i == 0, "M", " L") + mm(points[i]) + " " + mm(points[i+1]))
	}
	p.buf.WriteString(`<path d="` + d.String() + choice(fill != "", " Z", "") + `"` + choice(fill != "", ` fill="`+fill+`"`, "") + "/>\n")
}

func (p *paper) circle(n pen, x, y, r float64, tags ...attr) {
	p.use(n)
	p.buf.WriteString(`<circle cx="` + mm(x) + `" cy="` + mm(y) + `" r="` + mm(r) + `"` + attrs(tags) + "/>\n")
}

func choice[T any](yes bool, a, b T) T {
	if yes {
		return a
	}
	return b
}

// hatch fills a box with slanted lines, as cut wood is drawn.
func (p *paper) hatch(b box, every float64) {
	for d := every; d < b.w+b.h; d += every {
		x1, y1 := b.x+max(d-b.h, 0), b.y+min(d, b.h)
		x2, y2 := b.x+min(d, b.w), b.y+max(d-b.w, 0)
		p.line(thin, x1, y1, x2, y2)
	}
}

// tick is the terminator of a dimension line: an oblique stroke at 45°, as building drawings have it.
func (p *paper) tick(x, y, half float64) { p.line(fineOut, x-half, y+half, x+half, y-half) }

// measure is a horizontal dimension line from x1 to x2: its figure over the middle, or past its right end where the
// line is too short for it.
func (p *paper) measure(x1, x2, y float64, says string) {
	p.tick(x1, y, 0.8)
	p.tick(x2, y, 0.8)
	w := widthOf(says, normal, false)
	if w+2 <= x2-x1 {
		p.line(thin, x1, y, x2, y)
		p.text(text{x: (x1 + x2) / 2, y: y - 0.9, size: normal, anchor: "middle", says: says})
		return
	}
	p.line(thin, x1, y, x2+w+3, y)
	p.text(text{x: x2 + 2, y: y - 0.9, size: normal, says: says})
}

// measureUp is a vertical dimension line from the lower y1 to y2: its figure along it, or over its upper end.
func (p *paper) measureUp(y1, y2, x float64, says string) {
	p.tick(x, y1, 0.8)
	p.tick(x, y2, 0.8)
	w := widthOf(says, normal, false)
	if w+2 <= y1-y2 {
		p.line(thin, x, y1, x, y2)
		p.text(text{x: x - 0.9, y: (y1 + y2) / 2, size: normal, anchor: "middle", turned: true, says: says})
		return
	}
	p.line(thin, x, y1, x, y2-w-3)
	p.text(text{x: x - 0.9, y: y2 - 2, size: normal, turned: true, says: says})
}
