package draw

import (
	"html/template"
	"strconv"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
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
	j.Assumed = a.Assumed
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

// fig is one figure of a table: the mark nearest, and the exact value where the tape does not show it and it is a
// fraction that can be read.
type fig struct{ Mark, Exact string }

func figOf(r reading, v exact.Rat) fig {
	text, exactly := r.Near(v)
	if exactly {
		return fig{Mark: text}
	}
	f := fig{Mark: r.near + text}
	if !r.Metric && simple(v) {
		f.Exact = r.Length(v)
	}
	return f
}

// alongRow is one bay, post or opening, from the left end post's face.
type alongRow struct{ Name, At, Wide, Stiffeners string }

func alongRows(w *wall, r reading) []alongRow {
	var out []alongRow
	for _, p := range w.chain {
		row := alongRow{Name: p.kind + " " + strconv.Itoa(p.n), At: r.place(p.at), Wide: r.size(p.says)}
		if p.kind == "bay" {
			row.Stiffeners = strings.Join(r.places(w.along.Bays[p.n-1].Stiffeners), ", ")
		}
		out = append(out, row)
	}
	return out
}

// postCard is what to pencil on one post, the top rail first as it stands on the post.
type postCard struct {
	Name, Floor string
	Rows        []markRow
}

type markRow struct {
	Rail                 int
	Hole, Top, Underside fig
}

func postCards(a *solver.Answer, r reading) []postCard {
	marks := a.Marks
	if len(marks) == 0 && a.Layout != nil && a.Layout.Up != nil && len(a.Layout.Tops) == a.Layout.Rails {
		marks = []solver.PostMark{{Post: "every post", Rows: levelMarks(a.Layout.Up)}}
	}
	var out []postCard
	for _, m := range marks {
		c := postCard{Name: m.Post}
		if m.Floor.Sign() != 0 {
			c.Floor = "its floor lies " + r.place(m.Floor.Abs()) + choice(m.Floor.Sign() < 0, " lower", " higher") + " than at the left end post"
		}
		for i := len(m.Rows) - 1; i >= 0; i-- {
			row := m.Rows[i]
			c.Rows = append(c.Rows, markRow{row.Rail, figOf(r, row.Hole), figOf(r, row.Top), figOf(r, row.Underside)})
		}
		out = append(out, c)
	}
	return out
}

// cutRow is one kind of piece; Boxes has an entry for each piece to tick, none where they are too many to tick.
type cutRow struct {
	Piece, Size, Where, Length, Ends string
	Count                            int
	Boxes                            []struct{}
}

const mostBoxes = 24

func boxes(n int) []struct{} {
	if n < 1 || n > mostBoxes {
		return nil
	}
	return make([]struct{}, n)
}

func cutRows(a *solver.Answer, r reading) []cutRow {
	var out []cutRow
	for _, c := range a.Cuts {
		row := cutRow{Piece: c.Piece, Size: c.Size, Length: r.Length(c.Length), Count: c.Count, Boxes: boxes(c.Count)}
		if c.Ends != "square" {
			row.Ends = c.Ends
		}
		var where []string
		for _, part := range []struct {
			name string
			n    int
		}{{"bay", c.Bay}, {"rail", c.Rail}, {"post", c.Post}} {
			if part.n > 0 {
				where = append(where, part.name+" "+strconv.Itoa(part.n))
			}
		}
		if c.Wall != "" {
			where = append([]string{c.Wall}, where...)
		}
		row.Where = strings.Join(where, ", ")
		out = append(out, row)
	}
	return out
}

// buyRow is one line of the buying list.
type buyRow struct {
	Item, Length, Each, Amount string
	Count                      int
}

func buyRows(a *solver.Answer, r reading) ([]buyRow, string) {
	var out []buyRow
	for _, b := range a.Shopping {
		row := buyRow{Item: b.Item, Count: b.Count}
		if b.Length != nil {
			row.Length = r.Length(*b.Length)
		}
		if b.Each != nil {
			row.Each = solver.Cents(b.Each.Rat)
		}
		if b.Amount != nil {
			row.Amount = solver.Cents(b.Amount.Rat)
		}
		out = append(out, row)
	}
	if a.Cost == nil {
		return out, ""
	}
	total := "Together " + solver.Cents(a.Cost.Total.Rat)
	if a.Cost.Proven {
		return out, total + ", and nothing cheaper does it."
	}
	return out, total + "; at least " + solver.Cents(a.Cost.AtLeast.Rat) + " whatever is bought."
}

// sumRow is one line of arithmetic.
type sumRow struct{ Says string }

func sumRows(work []solver.Work, r reading) []sumRow {
	var out []sumRow
	for _, w := range work {
		says := w.Says
		if says == "" {
			says = sumOf(w, r)
		}
		out = append(out, sumRow{Says: says})
	}
	return out
}

// sumOf writes a line of arithmetic where nobody put it into words.
func sumOf(w solver.Work, r reading) string {
	number := func(e solver.Expr) string {
		switch {
		case e.Cash:
			return solver.Cents(e.Value)
		case e.Count:
			return solver.Fraction(e.Value)
		}
		return r.Length(e.Value)
	}
	signs := strings.NewReplacer("*", "×", "/", "÷", "-", "−", "<=", "≤", ">=", "≥")
	s := w.Of + ": " + w.Expr.Write(number, func(op string) string { return signs.Replace(op) })
	if w.Expr.IsComparison() {
		return s + choice(w.Expr.Holds(), "", ", which is not so")
	}
	if w.Expr.Op == "" {
		return s
	}
	return s + " = " + number(solver.Expr{Value: w.Expr.Value, Count: w.Expr.Count, Cash: w.Expr.Cash})
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

// boardFigure is one way to cut a board, drawn, with its pieces in cutting order.
type boardFigure struct {
	Head, Pieces string
	Picture      template.HTML
	Boxes        []struct{}
}

func boardFigures(a *solver.Answer, r reading) []boardFigure {
	longest := exact.Rat{}
	for _, b := range a.Plan {
		longest = exact.Max(longest, b.Board)
	}
	var out []boardFigure
	for _, b := range a.Plan {
		f := boardFigure{Boxes: boxes(b.Times), Picture: boardPicture(b, longest, r)}
		f.Head = b.Size + " of " + r.Length(b.Board)
		if b.Times > 1 {
			f.Head += ", " + strconv.Itoa(b.Times) + " alike"
		}
		if b.Have {
			f.Head += ", at hand"
		}
		var pieces []string
		for _, p := range b.Pieces {
			pieces = append(pieces, r.Length(p))
		}
		f.Pieces = strings.Join(pieces, " · ")
		if b.Left.Sign() > 0 {
			f.Pieces += " · " + r.Length(b.Left) + " left"
		}
		out = append(out, f)
	}
	return out
}

const (
	boardLong = 180.0
	boardHigh = 11.0
	boardType = 5.0
)

// boardPicture draws a board and the pieces in it to scale, the longest board across the page; a piece that is too
// short for its figure stands without it, for the line below tells them all.
func boardPicture(b solver.Board, longest exact.Rat, r reading) template.HTML {
	if longest.Sign() <= 0 {
		return ""
	}
	p := &paper{}
	k := boardLong / longest.Float()
	p.begin(boardLong+2, boardHigh+2, b.Size+" of "+r.Length(b.Board), "A board and the pieces cut from it, from the left.", `class="board"`)
	p.raw(`<g data-view="board" data-scale="` + mm(perInch/k) + `" data-left="1">` + "\n")
	board := box{1, 1, b.Board.Float() * k, boardHigh}
	p.rect(noPen, board, "#fff")
	pieces := piecesAlong(b)
	for i, run := range pieces {
		at := box{1 + run.lo*k, 1, run.size() * k, boardHigh}
		end := board.right()
		if i+1 < len(pieces) {
			end = 1 + pieces[i+1].lo*k
		}
		p.hatch(box{at.right(), 1, end - at.right(), boardHigh}, 2.2)
		p.rect(outline, at, "#fff", attr{"data-part", "piece"}, attr{"data-n", strconv.Itoa(i + 1)})
		says := r.Length(b.Pieces[i])
		if widthOf(says, boardType, true)+1.5 <= at.w {
			p.text(text{x: at.x + at.w/2, y: 1 + boardHigh/2 + 0.36*boardType, size: boardType, bold: true, anchor: "middle", says: says})
		}
	}
	p.rect(outline, board, "none")
	p.raw("</g>\n")
	return template.HTML(p.end())
}

// piecesAlong lays the pieces along a board in cutting order. What is not piece and not left over is what the saw and
// the squaring of the end take: shared evenly between the cuts, as a picture of this size shows it.
func piecesAlong(b solver.Board) []run {
	lost := b.Board.Sub(b.Left)
	for _, p := range b.Pieces {
		lost = lost.Sub(p)
	}
	each := 0.0
	if n := len(b.Pieces); n > 0 && lost.Sign() > 0 {
		each = lost.Float() / float64(n)
	}
	var out []run
	at := 0.0
	for _, p := range b.Pieces {
		out = append(out, run{at, at + p.Float()})
		at += p.Float() + each
	}
	return out
}
