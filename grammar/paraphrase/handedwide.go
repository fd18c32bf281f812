package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// footersHigh takes "a four footer" for how high the wall is, where the wall is all that is spoken of.
func footersHigh(in []scan.Atom) []scan.Atom {
	wall := false
	for i := range in {
		switch w := in[i].Text; {
		case chunk.IsClass(w, "WALL"):
			wall = true
		case chunk.IsClass(w, "RAIL") && w != "bar", chunk.IsClass(w, "SELLS"), chunk.IsClass(w, "LUMBER"), w == "buy", w == "bought", w == "lengths":
			return in
		}
	}
	if !wall {
		return in
	}
	for i := 2; i < len(in); i++ {
		if in[i].Text != "footer" {
			continue
		}
		for j := max(0, i-6); j < i-1; j++ {
			if (in[j].Text == "a" || in[j].Text == "an") && phrase.StartsLength(measure.Reader{Atoms: in}, j+1) {
				out := append(append([]scan.Atom{}, in[:j]...), in[j+1:]...)
				out[i-1].Text = "feet"
				return out
			}
		}
	}
	return in
}

// finallyIs reads "I bought brackets for eight boards per bay, so eight boards it is" as its end.
func finallyIs(in []scan.Atom) []scan.Atom {
	end := len(in)
	for end > 0 && in[end-1].Kind == scan.Sign {
		end--
	}
	if end < 6 || in[end-1].Text != "is" || in[end-2].Text != "it" {
		return in
	}
	so := -1
	for i := end - 3; i > 0; i-- {
		if in[i].Text == "so" || in[i].Text == "," {
			so = i
			break
		}
	}
	if so < 1 {
		return in
	}
	r := measure.Reader{Atoms: in}
	_, after, ok := r.Length(so + 1)
	if !ok || after >= end-2 {
		return in // a bare figure needs what is said before it
	}
	told, figures := false, 0
	for i := 0; i < so; i++ {
		if phrase.Turning[in[i].Text] || in[i].Text == "?" || idiom.Withheld[in[i].Text] || idiom.Viewed[in[i].Text] {
			return in
		}
		if n, next, ok := r.Length(i); ok && next > i {
			same, _, _ := r.Length(so + 1)
			told = told || n.Val.Sub(same.Val).Sign() == 0
			figures++
			i = next - 1
		}
	}
	if !told && figures > 0 || figures > 1 {
		return in
	}
	return append([]scan.Atom{}, in[so+1:end-2]...)
}

// thatWide hands the figure of a thing on to "that wide": "my roller is 2 1/4 thick, so give me gaps at least that wide".
func thatWide(in []scan.Atom) []scan.Atom {
	for i := 3; i+1 < len(in); i++ {
		if in[i].Text != "that" || !asBig[in[i+1].Text] {
			continue
		}
		so := i
		for so > 0 && in[so].Text != "so" {
			so--
		}
		if so < 3 || so == i-1 {
			return in
		}
		stop := so
		for stop > 0 && in[stop-1].Kind == scan.Sign {
			stop--
		}
		from, to := handedFigure(in[:stop])
		if from == to {
			return in
		}
		out := append([]scan.Atom{}, in[:sentenceStart(in, so)]...)
		out = append(append(out, in[so+1:i]...), in[from:to]...)
		return append(out, in[i+2:]...)
	}
	return in
}

var asBig = scan.WordSet("wide big large thick high tall much long deep broad")
