package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// widerThere are words by which one end of a bay is held against the other.
var widerThere = scan.WordSet("wider narrower bigger smaller tighter looser broader longer shorter more less")

// widerAtTop leaves out by how much one end of a bay is wider where its own figure follows: "bay 2 is an eighth wider at the top, 66 1/8"
// changes no bay.
func widerAtTop(in []scan.Atom) []scan.Atom {
	r := measure.Reader{Atoms: in}
	for i := 2; i+5 < len(in); i++ {
		_, next, ok := r.Length(i)
		if !ok || !widerThere[r.Word(next)] || r.Word(next+1) != "at" && r.Word(next+1) != "across" {
			continue
		}
		j := chunk.SkipArticle(in, next+2)
		if !edges[r.Word(j)] || r.Word(j+1) != "," && r.Word(j+1) != ":" && r.Word(j+1) != "at" || !phrase.StartsLength(r, j+2) {
			continue
		}
		from := i
		for from > 0 && (in[from-1].Text == "is" || in[from-1].Text == "'s" || in[from-1].Text == "about" || in[from-1].Text == "gets" || in[from-1].Text == "measures") {
			from--
		}
		if n, end := siteNumbered(r, max(0, from-2), partOfBay); n == 0 || end != from {
			continue
		}
		return append(scan.CutOut(in, j+1, j+2)[:from:from], scan.CutOut(in, j+1, j+2)[next+1:]...)
	}
	return in
}

// wouldHelpOnly leaves out that something would help, which asks for no help: "that would help", "which would be a big help".
func wouldHelpOnly(in []scan.Atom) []scan.Atom {
	for i := 0; i+2 < len(in); i++ {
		if w := in[i].Text; w != "it" && w != "that" && w != "this" && w != "which" || in[i+1].Text != "would" && in[i+1].Text != "'d" || i > 0 && in[i-1].Kind == scan.Word && in[i-1].Text != "and" {
			continue
		}
		j, help := i+2, false
		for ; j < len(in) && in[j].Kind == scan.Word && (helped[in[j].Text] || in[j].Text == "help" || in[j].Text == "be" || in[j].Text == "really" || in[j].Text == "big" || in[j].Text == "sure"); j++ {
			help = help || in[j].Text == "help"
		}
		if help && chunk.EndsPart(in, j) && (j == len(in) || in[j].Text != "?") {
			return scan.CutOut(in, i, j)
		}
	}
	return in
}

// alikeSoThat sets "can we have every board come out the same length, so I only set the stop once?", which gives its reason, to the wish
// that it is.
func alikeSoThat(in []scan.Atom) []scan.Atom {
	if len(in) < 8 || !idiom.Beggars[in[0].Text] || in[1].Text != "we" && in[1].Text != "i" || in[2].Text != "have" && in[2].Text != "get" && in[2].Text != "make" {
		return in
	}
	for i := 5; i+2 < len(in); i++ {
		if in[i].Text != "," || in[i+1].Text != "so" || !SubjectAt(in, i+2) || in[i-1].Text != "length" && in[i-1].Text != "width" && in[i-1].Text != "equal" && in[i-1].Text != "same" {
			continue
		}
		out := scan.Reworded(in, 0, 3, "we", "want")
		if out[len(out)-1].Text == "?" {
			out = out[:len(out)-1]
		}
		return out
	}
	return in
}
