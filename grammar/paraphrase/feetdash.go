package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// Builders say "twelve-six" for twelve feet six inches. Between the end posts nothing else can be meant by two figures with a hyphen
// between them of which the second is the smaller: no stretch of figures goes down.

// farApart are words of the clause that tell that the end posts are measured.
var farApart = scan.WordSet("span spans overall centers centres apart")

// feetDashed writes the feet into such figures: "the span is twelve-six".
func feetDashed(in []scan.Atom) []scan.Atom {
	for i := 1; i+1 < len(in); i++ {
		if in[i].Text != "-" || !in[i].Glued || !in[i+1].Glued || !tellsFarApart(in, i) {
			continue
		}
		feet, ok := dashedFigure(in[i-1])
		inch, whole := dashedFigure(in[i+1])
		if !ok || !whole || feet < 4 || feet > 60 || inch > 11 || inch >= feet || !endsDashed(in, i+2) || i > 1 && in[i-2].Glued && in[i-1].Glued {
			continue
		}
		return feetDashed(scan.Reworded(in, i, i+1, "foot"))
	}
	return in
}

// dashedFigure is the whole number that an atom writes, in a word or in figures.
func dashedFigure(a scan.Atom) (int, bool) {
	if a.Kind == scan.Digits {
		return measure.Atoi(a.Text)
	}
	n, ok := scan.Ones[a.Text]
	return n, ok && n > 0
}

// endsDashed reports whether nothing that goes on with a figure stands at an atom.
func endsDashed(in []scan.Atom, i int) bool {
	if i >= len(in) {
		return true
	}
	if in[i].Glued && in[i].Text != "," && in[i].Text != "." && in[i].Text != ";" && in[i].Text != "?" {
		return false
	}
	w := in[i].Text
	_, metric := measure.MetricWords[w]
	return in[i].Kind != scan.Digits && in[i].Kind != scan.Vulgar && scan.Ones[w] == 0 && measure.Tens[w] == 0 && !measure.InchWords[w] && !measure.FootWords[w] && !metric && w != "percent" && w != "hundred" && w != "half"
}

// tellsFarApart reports whether the clause of an atom measures the end posts against each other.
func tellsFarApart(in []scan.Atom, i int) bool {
	from, to := i, i
	for from > 0 && in[from-1].Text != "." && in[from-1].Text != ";" {
		from--
	}
	for to < len(in) && !chunk.BreaksClause(in, to) {
		to++
	}
	for k := from; k < to; k++ {
		switch w := in[k].Text; {
		case farApart[w], scan.StandAt(in, k, "center", "to", "center"), scan.StandAt(in, k, "centre", "to", "centre"), scan.StandAt(in, k, "post", "to", "post"), scan.StandAt(in, k, "outside", "to", "outside"), scan.StandAt(in, k, "between", "posts"), scan.StandAt(in, k, "between", "end", "posts"):
			return true
		}
	}
	return false
}
