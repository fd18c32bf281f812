package paraphrase

import (
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// exceptFirst puts what is to be kept where it is told otherwise: "apart from the height, forget everything" is to forget
// everything except the height.
func exceptFirst(in []scan.Atom) []scan.Atom {
	start := 0
	for start < len(in) && (in[start].Kind == scan.Sign || polite[in[start].Text]) {
		start++
	}
	from := exceptAt(in, start)
	if from == 0 {
		return in
	}
	comma := from
	for comma < len(in) && in[comma].Text != "," && !bidsOn(in, comma) {
		if in[comma].Kind != scan.Word {
			return in
		}
		comma++
	}
	verb := comma + 1
	if comma < len(in) && in[comma].Text != "," {
		verb = comma // "other than the wall height you can forget all of it"
	}
	for verb < len(in) && polite[in[verb].Text] {
		verb++
	}
	if comma == from || verb+1 >= len(in) || !wipes[in[verb].Text] {
		return in
	}
	all := verb + 1
	if in[all].Text == "about" {
		all++
	}
	if all >= len(in) || in[all].Text != "everything" && in[all].Text != "all" && in[all].Text != "anything" {
		return in
	}
	for _, a := range in[all+1:] {
		if a.Kind == scan.Sign && a.Text != "." && a.Text != "!" && a.Text != "," || a.Kind != scan.Word && a.Kind != scan.Sign || a.Kind == scan.Word && !saidSoFar[a.Text] {
			return in
		}
	}
	out := append([]scan.Atom{}, in[verb])
	out = append(out, scan.Atom{Text: "everything", Kind: scan.Word, At: in[all].At, End: in[all].End}, scan.Atom{Text: "except", Kind: scan.Word, At: in[start].At, End: in[start].End})
	return append(out, in[from:comma]...)
}

// exceptAt returns the atom after words that make an exception, 0 where none are.
func exceptAt(in []scan.Atom, i int) int {
	r := measure.Reader{Atoms: in}
	switch w, next := r.Word(i), r.Word(i+1); {
	case (w == "apart" || w == "aside") && next == "from", w == "except" && next == "for", w == "other" && next == "than", w == "but" && next == "for", w == "save" && next == "for":
		return i + 2
	case w == "except", w == "excepting", w == "besides", w == "excluding", w == "barring":
		return i + 1
	case w == "with" && next == "the" && r.Word(i+2) == "exception" && r.Word(i+3) == "of":
		return i + 4
	}
	return 0
}

var (
	polite    = scan.WordSet("please kindly just now then could would can will you i we want like to let us me lets go ahead and ok okay so well d 'd")
	wipes     = scan.WordSet("forget scrap clear wipe drop erase delete lose toss scratch cancel discard remove ditch dump bin throw")
	saidSoFar = scan.WordSet("i we you have 've had said told gave given entered typed mentioned put in so far until now up to else about it that please to the out away of off")
)

// bidsOn reports whether a wish that somebody forgets begins at an atom, with no sign before it.
func bidsOn(in []scan.Atom, i int) bool {
	switch in[i].Text {
	case "you", "we", "i", "please", "let", "just":
	default:
		return wipes[in[i].Text]
	}
	for i < len(in) && polite[in[i].Text] {
		i++
	}
	return i < len(in) && wipes[in[i].Text]
}
