package paraphrase

import (
	"saywright/grammar/idiom"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// A figure beside rails is how long they are cut or how wide a face they have, and its size tells which: "the rails are 94-5/8 long, right?", "six rails
// of 5-1/2". Lengths in whole feet are left alone: so boards are sold.

var (
	railNames = scan.WordSet("rail rails board boards slat slats plank planks")
	cutLeast  = exact.Int(24)
	faceLeast = exact.Int(5).Div(exact.Int(2))
	faceMost  = exact.Int(12)
)

// railFigures sets such lines plain.
func railFigures(in []scan.Atom) []scan.Atom {
	named, rails := false, false
	for _, a := range in {
		named = named || railNames[a.Text]
		rails = rails || a.Text == "rail" || a.Text == "rails"
	}
	if !named {
		return in
	}
	r, cut, face, counted, alone := measure.Reader{Atoms: in}, false, false, false, false
	last, end := measure.Amount{}, -1
	for i := 0; i < len(in); i++ {
		if !phrase.MayBeginFigure(in[i]) {
			continue
		}
		a, next, ok := r.Length(i)
		if !ok {
			continue
		}
		if a.Size == "" && !a.Footer && a.Unit != measure.Money && a.Unit != measure.Feet || a.Unit == measure.Feet && !a.Val.Div(exact.Int(12)).IsInt() {
			cut = cut || !a.Val.Less(cutLeast) && (rails || a.Unit == measure.Metric || !a.Val.Div(exact.Int(12)).IsInt())
			wide := !a.Val.Less(faceLeast) && a.Val.Less(faceMost) && (a.Frac || a.Point || a.Unit != measure.Bare)
			face = face || wide
			counted = counted || wide && end == i && last.Unit == measure.Bare && last.Size == "" && !last.Frac && !ofLength[beforeFigure(in, i)] && railNames[r.Word(next)]
			alone = alone || wide && a.Frac && i < 4 && a.Unit == measure.Inches && railNames[r.Word(next)]
		}
		last, end = a, next
		i = next - 1
	}
	if cut && len(in) < 24 {
		in = idiom.RailsCut().SetIn(in)
	}
	if face {
		in = idiom.RailsWide().SetIn(in)
	}
	if counted {
		in = idiom.RailsCountedWide().SetIn(in)
	}
	if alone {
		in = idiom.RailsOfWidth().SetIn(in)
	}
	return in
}

// ofLength are names of lengths: a figure right behind one of them counts no rails ("gap 2 5-1/2 rails").
var ofLength = scan.WordSet("gap gaps space spaces spacing opening doorway wall bay span height")

// beforeFigure is the word before the figure that ends at atom i, "" where there is none.
func beforeFigure(in []scan.Atom, i int) string {
	for i--; i > 0; i-- {
		if !phrase.MayBeginFigure(in[i-1]) && in[i-1].Text != "-" && in[i-1].Text != "/" {
			return in[i-1].Text
		}
	}
	return ""
}
