package draw

import (
	"html/template"
	"math"
	"strconv"
	"strings"

	"saywright/solver"
)

// StoryPole draws the marks of a wall at full size, cut over as many pages as it takes, to be glued into one strip and
// held to the posts: an HTML page that needs nothing from outside. Posts whose marks differ have a pole each.
// It returns ErrNothing where the answer has no heights.
func StoryPole(a *solver.Answer, s Sheet) ([]byte, error) {
	w, err := layOut(a)
	if err != nil {
		return nil, err
	}
	if w.up == nil {
		return nil, ErrNothing
	}
	width, height := s.upright()
	doc := poleDoc{Title: s.name() + ": story pole at full size", Width: mm(width), Height: mm(height - 0.4), Page: s.pageName()}
	for _, p := range polesOf(a, w) {
		pages := p.cut(height)
		for i, see := range pages {
			doc.Pages = append(doc.Pages, template.HTML(p.page(s, see, i, len(pages))))
		}
	}
	return render("pole.html", doc)
}

// upright is the page standing, millimeters.
func (s Sheet) upright() (w, h float64) {
	w, h = s.size()
	return h, w
}

func (s Sheet) pageName() string {
	if strings.EqualFold(s.Page, "a4") {
		return "A4"
	}
	return "letter"
}

type poleDoc struct {
	Title, Width, Height, Page string
	Pages                      []template.HTML
}

// pole is the marks of one post, or of several posts that are alike.
type pole struct {
	r     reading
	posts []string
	rows  []solver.RailMark
}

// polesOf groups the posts whose figures are the same.
func polesOf(a *solver.Answer, w *wall) []pole {
	r := Options{}.reading(a)
	if len(a.Marks) == 0 {
		return []pole{{r: r, posts: []string{"every post"}, rows: levelMarks(w.up)}}
	}
	var out []pole
	for _, m := range a.Marks {
		found := false
		for i := range out {
			if sameMarks(out[i].rows, m.Rows) {
				out[i].posts, found = append(out[i].posts, m.Post), true
			}
		}
		if !found {
			out = append(out, pole{r: r, posts: []string{m.Post}, rows: m.Rows})
		}
	}
	return out
}

// levelMarks are the marks as the layout states them, where no table of posts was asked for.
func levelMarks(up *solver.Up) []solver.RailMark {
	out := make([]solver.RailMark, len(up.Tops))
	for i, top := range up.Tops {
		out[i] = solver.RailMark{Rail: i + 1, Underside: top.Sub(up.RailFace), Top: top}
		if i < len(up.Marks) {
			out[i].Hole = up.Marks[i]
		}
	}
	return out
}

func sameMarks(a, b []solver.RailMark) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if !a[i].Hole.Eq(b[i].Hole) || !a[i].Top.Eq(b[i].Top) || !a[i].Underside.Eq(b[i].Underside) {
			return false
		}
	}
	return true
}

const (
	poleHead = 26.0 // room over the strip for the heading and the check of the scale
	poleFoot = 14.0
	poleTab  = 10.0 // glued under the next page
	poleLeft = 24.0
	poleWide = 60.0
)

// cut divides the pole's height, in inches, over pages of so many millimeters.
func (p pole) cut(height float64) []run {
	top := 0.0
	for _, m := range p.rows {
		top = max(top, m.Top.Float(), m.Hole.Float())
	}
	top += 0.5
	each := (height - poleHead - poleFoot - poleTab) / perInch
	pages := int(math.Ceil(top/each - 1e-9))
	var out []run
	for i := range pages {
		out = append(out, run{float64(i) * each, min(float64(i+1)*each, top)})
	}
	return out
}

func (p pole) page(s Sheet, see run, i, of int) string {
	width, height := s.upright()
	g := &paper{}
	says := "page " + strconv.Itoa(i+1) + " of " + strconv.Itoa(of)
	g.begin(width, height, "Story pole, "+p.whose()+", "+says, p.tells(see), trueSize(width, height))
	at := sight{k: perInch, x0: poleLeft, scale: 1, y0: height - poleFoot + see.lo*perInch}
	g.raw(`<g data-view="pole" data-scale="1" data-left="` + mm(at.x0) + `" data-floor="` + mm(at.y0) + `">` + "\n")
	p.heading(g, s, says, width)
	p.ruler(g, at, see)
	last := i == of-1
	end := choice(last, see.hi, see.hi+poleTab/perInch)
	for _, x := range []float64{poleLeft, poleLeft + poleWide} {
		g.line(outline, x, at.y(see.lo), x, at.y(end))
	}
	p.join(g, at, see, i, last)
	p.marks(g, at, see)
	g.raw("</g>\n")
	return string(g.end())
}

// whose names the posts in few words.
func (p pole) whose() string {
	if len(p.posts) > 3 {
		return p.posts[0] + " and " + strconv.Itoa(len(p.posts)-1) + " more alike"
	}
	return strings.Join(p.posts, ", ")
}

func (p pole) tells(see run) string {
	var s []string
	for _, m := range p.rows {
		if y := m.Hole.Float(); y >= see.lo && y < see.hi {
			s = append(s, "rail "+strconv.Itoa(m.Rail)+" hole at "+p.r.place(m.Hole))
		}
	}
	return choice(len(s) == 0, "No mark on this page.", strings.Join(s, ", ")+" "+p.r.unit()+" from the floor.")
}

func (p pole) heading(g *paper, s Sheet, says string, width float64) {
	right := width - 12
	g.text(text{x: poleLeft, y: 11, size: large, bold: true, says: short(s.name(), right-poleLeft-32, large, true)})
	g.text(text{x: right, y: 11, size: middle, anchor: "end", says: says})
	g.text(text{x: poleLeft, y: 17, size: middle, says: short("Story pole: "+p.whose(), right-poleLeft-72, middle, false)})
	long, name := 4*perInch, "this line is 4 in long: if not, print again at 100 %"
	if p.r.Metric {
		long, name = 100, "this line is 100 mm long: if not, print again at 100 %"
	}
	x, y := right-long, 22.0
	g.line(thin, x, y, right, y)
	g.tick(x, y, 0.9)
	g.tick(right, y, 0.9)
	g.text(text{x: right, y: y - 1.2, size: small, anchor: "end", says: name})
}

// ruler is a scale along the strip's left edge: inches, or centimeters, from the floor.
func (p pole) ruler(g *paper, at sight, see run) {
	step, named := 1.0, 6
	if p.r.Metric {
		step, named = 10/perInch, 10
	}
	for i := int(math.Ceil(see.lo/step - 1e-9)); float64(i)*step <= see.hi+1e-9; i++ {
		y := at.y(float64(i) * step)
		long := choice(i%named == 0, 4.0, 2.0)
		g.line(thin, poleLeft-long, y, poleLeft, y)
		if i%named == 0 && y < at.y(see.lo)-1 && y > at.y(see.hi)+1 {
			says := strconv.Itoa(i)
			if p.r.Metric {
				says = strconv.Itoa(i * 10)
			}
			g.text(text{x: poleLeft - 5, y: y + 0.27*small, size: small, anchor: "end", says: says})
		}
	}
}

// join is where the page is cut at its lower end, and the tab that goes under the next page.
func (p pole) join(g *paper, at sight, see run, i int, last bool) {
	low, x := at.y(see.lo), poleLeft+poleWide
	g.line(cutLine, poleLeft-12, low, x+12, low, attr{"data-part", "cut"})
	says := "cut here and lay on the line of page " + strconv.Itoa(i)
	if i == 0 {
		says = "floor: cut here"
	}
	g.text(text{x: poleLeft, y: low + 5, size: normal, says: says})
	if !last {
		y := at.y(see.hi)
		g.line(hidden, poleLeft-12, y, x+12, y, attr{"data-part", "join"})
		g.text(text{x: poleLeft + 2, y: y - 3.5, size: normal, says: "page " + strconv.Itoa(i+2) + " goes on here"})
	}
}

// marks are the lines of a page: a rail's zone is hatched at its edge, its hole a heavy line across the strip.
func (p pole) marks(g *paper, at sight, see run) {
	var labels []beside
	right := poleLeft + poleWide
	within := func(y float64) bool { return y >= see.lo-1e-9 && y < see.hi-1e-9 }
	for _, m := range p.rows {
		name := "rail " + strconv.Itoa(m.Rail)
		under, top, hole := m.Underside.Float(), m.Top.Float(), m.Hole.Float()
		if lo, hi := max(under, see.lo), min(top, see.hi); hi > lo {
			g.hatch(box{right - 8, at.y(hi), 8, (hi - lo) * perInch}, 3)
		}
		edge := func(y float64, what, says string) {
			if within(y) {
				g.line(fineOut, poleLeft, at.y(y), right, at.y(y), attr{"data-part", what}, attr{"data-n", strconv.Itoa(m.Rail)})
				labels = append(labels, beside{at: y, says: name + " " + what + "  " + says})
			}
		}
		edge(under, "underside", p.r.place(m.Underside))
		edge(top, "top", p.r.place(m.Top))
		if within(hole) && hole > 0 {
			g.line(cutLine, poleLeft, at.y(hole), right, at.y(hole), attr{"data-part", "mark"}, attr{"data-n", strconv.Itoa(m.Rail)})
			g.circle(outline, poleLeft+poleWide/2, at.y(hole), 1.6)
			labels = append(labels, beside{at: hole, says: name + " HOLE  " + p.r.place(m.Hole), bold: true})
		}
	}
	f := &front{sight: at, p: g, r: p.r, sizes: []float64{large, middle, normal, small}}
	f.column(labels, right, 1, run{at.y(see.hi) + 0.5, at.y(see.lo) - 0.5})
}
