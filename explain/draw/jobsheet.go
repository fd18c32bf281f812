package draw

import (
	"html/template"
	"strconv"
	"strings"

	"saywright/solver"
)

// JobSheet makes one self-contained HTML page for the shop wall, which prints on Letter and A4 and reads on a phone:
// drawing, marks of every post with boxes to tick, cuts, boards, buying list, steps with their cautions, assumptions,
// and the arithmetic. What the answer does not carry is left out. A blocked answer gives the conflicts and their sums.
// It returns ErrNothing where the answer has neither a layout nor a conflict.
func JobSheet(a *solver.Answer, s Sheet) ([]byte, error) {
	w, err := layOut(a)
	if err != nil && (a == nil || len(a.Conflicts) == 0) {
		return nil, err
	}
	r := Options{}.reading(a)
	j := job{Title: s.name(), Date: printable(s.Date), Unit: r.unit()}
	if s.Page != "" {
		j.Page = s.pageName()
	}
	if err == nil {
		j.draw(a, w, r)
	}
	j.Clashes = clashFigures(a, r)
	j.Cautions = cautionsOf(a)
	j.Posts = postCards(a, r)
	j.Cuts = cutRows(a, r)
	j.Plan = boardFigures(a, r)
	j.Buy, j.Total = buyRows(a, r)
	j.Steps = stepsOf(a)
	j.Assumed = r.assumed(a)
	j.Sums = sumRows(a.Work, r)
	return render("job.html", j)
}

// job is what the page shows, in words and pictures ready to stand.
type job struct {
	Title, Date, Page, Unit, Lead string
	Wide, Narrow, Section, Plans  template.HTML
	Clashes                       []clashFigure
	Cautions                      []solver.Caution
	Along                         []alongRow
	Posts                         []postCard
	Cuts                          []cutRow
	Plan                          []boardFigure
	Buy                           []buyRow
	Total                         string
	Steps                         []solver.StepOf
	Assumed                       []string
	Sums                          []sumRow
	Notes                         []string
}

// Widths of the elevation: for paper and wide screens, and for a phone.
const (
	widePicture   = 190.0
	narrowPicture = 96.0
	detailWide    = 92.0
	detailHigh    = 78.0
)

func (j *job) draw(a *solver.Answer, w *wall, r reading) {
	j.Lead = leadOf(w, r)
	j.Along = alongRows(w, r)
	wide := &paper{}
	f := newFill(wide, w, r, widePicture, 130, false)
	j.Wide = figureOf(wide, f.zone.w, f.zone.h, j.Title, describe(w, r), f.draw)
	narrow := &paper{}
	g := newFill(narrow, w, r, narrowPicture, 150, true)
	j.Narrow = figureOf(narrow, g.zone.w, g.zone.h, j.Title, describe(w, r), g.draw)
	in := box{1, 1, detailWide - 2, detailHigh - 2}
	if hasSection(w) {
		p := &paper{}
		v := newSection(p, w, r, in)
		j.Section = figureOf(p, detailWide, detailHigh, "Section at a post", "The two lowest rails cut through, with their brackets.", v.draw)
	}
	if hasPlan(w) {
		p := &paper{}
		v := newPlan(p, a, w, r, in)
		j.Plans = figureOf(p, detailWide, detailHigh, "Plan of "+v.name, "The post seen from above, on its center lines.", v.draw)
	}
	j.Notes = notes(&solver.Answer{}, w, r, false)
}

func figureOf(p *paper, w, h float64, title, desc string, draw func()) template.HTML {
	p.begin(w, h, title, desc, `class="drawing"`)
	draw()
	return template.HTML(p.end())
}

func leadOf(w *wall, r reading) string {
	var s []string
	if w.up != nil {
		s = append(s, strconv.Itoa(w.up.Rails)+" rail"+choice(w.up.Rails == 1, "", "s")+", "+r.size(w.up.WallHeight)+" high")
	}
	if w.along != nil {
		s = append(s, r.size(w.along.Span)+" between the end posts")
	}
	return strings.Join(s, ", ")
}

func cautionsOf(a *solver.Answer) []solver.Caution {
	var out []solver.Caution
	for _, c := range a.Cautions {
		if c.Text != "" {
			out = append(out, c)
		}
	}
	return out
}

func stepsOf(a *solver.Answer) []solver.StepOf {
	var out []solver.StepOf
	for _, s := range a.Steps {
		if s.Do != "" {
			out = append(out, s)
		}
	}
	return out
}

// clashFigure is a conflict with its picture and its sums.
type clashFigure struct {
	Picture template.HTML
	Rules   []string
	Sums    []sumRow
}

func clashFigures(a *solver.Answer, r reading) []clashFigure {
	var out []clashFigure
	for _, c := range a.Conflicts {
		f := clashFigure{Picture: template.HTML(ClashSVG(a, c)), Sums: sumRows(c.Work, r)}
		for _, rule := range c.Rules {
			if rule.Says != "" {
				f.Rules = append(f.Rules, rule.Says)
			}
		}
		out = append(out, f)
	}
	return out
}
