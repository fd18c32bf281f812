package draw

import (
	"strconv"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

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
