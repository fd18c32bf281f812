package grammar

// Builders say "twelve-six" for twelve feet six inches. Between the end posts nothing else can be meant by two figures with a hyphen
// between them of which the second is the smaller: no stretch of figures goes down.

// farApart are words of the clause that tell that the end posts are measured.
var farApart = wordSet("span spans overall centers centres apart")

// feetDashed writes the feet into such figures: "the span is twelve-six".
func feetDashed(in []atom) []atom {
	for i := 1; i+1 < len(in); i++ {
		if in[i].text != "-" || !in[i].glued || !in[i+1].glued || !tellsFarApart(in, i) {
			continue
		}
		feet, ok := dashedFigure(in[i-1])
		inch, whole := dashedFigure(in[i+1])
		if !ok || !whole || feet < 4 || feet > 60 || inch > 11 || inch >= feet || !endsDashed(in, i+2) || i > 1 && in[i-2].glued && in[i-1].glued {
			continue
		}
		return feetDashed(reworded(in, i, i+1, "foot"))
	}
	return in
}

// dashedFigure is the whole number that an atom writes, in a word or in figures.
func dashedFigure(a atom) (int, bool) {
	if a.kind == aDigits {
		return atoi(a.text)
	}
	n, ok := units[a.text]
	return n, ok && n > 0
}

// endsDashed reports whether nothing that goes on with a figure stands at an atom.
func endsDashed(in []atom, i int) bool {
	if i >= len(in) {
		return true
	}
	if in[i].glued && in[i].text != "," && in[i].text != "." && in[i].text != ";" && in[i].text != "?" {
		return false
	}
	w := in[i].text
	_, metric := metricWords[w]
	return in[i].kind != aDigits && in[i].kind != aVulgar && units[w] == 0 && tens[w] == 0 && !inchWords[w] && !footWords[w] && !metric && w != "percent" && w != "hundred" && w != "half"
}

// tellsFarApart reports whether the clause of an atom measures the end posts against each other.
func tellsFarApart(in []atom, i int) bool {
	from, to := i, i
	for from > 0 && in[from-1].text != "." && in[from-1].text != ";" {
		from--
	}
	for to < len(in) && !breaksClause(in, to) {
		to++
	}
	for k := from; k < to; k++ {
		switch w := in[k].text; {
		case farApart[w], standAt(in, k, "center", "to", "center"), standAt(in, k, "centre", "to", "centre"), standAt(in, k, "post", "to", "post"), standAt(in, k, "outside", "to", "outside"), standAt(in, k, "between", "posts"), standAt(in, k, "between", "end", "posts"):
			return true
		}
	}
	return false
}
