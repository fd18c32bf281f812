package draw

import (
	"html/template"
	"strconv"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

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
