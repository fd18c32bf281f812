package grammar

// exceptFirst puts what is to be kept where it is told otherwise: "apart from the height, forget everything" is to forget
// everything except the height.
func exceptFirst(in []atom) []atom {
	start := 0
	for start < len(in) && (in[start].kind == aSign || polite[in[start].text]) {
		start++
	}
	from := exceptAt(in, start)
	if from == 0 {
		return in
	}
	comma := from
	for comma < len(in) && in[comma].text != "," && !bidsOn(in, comma) {
		if in[comma].kind != aWord {
			return in
		}
		comma++
	}
	verb := comma + 1
	if comma < len(in) && in[comma].text != "," {
		verb = comma // "other than the wall height you can forget all of it"
	}
	for verb < len(in) && polite[in[verb].text] {
		verb++
	}
	if comma == from || verb+1 >= len(in) || !wipes[in[verb].text] {
		return in
	}
	all := verb + 1
	if in[all].text == "about" {
		all++
	}
	if all >= len(in) || in[all].text != "everything" && in[all].text != "all" && in[all].text != "anything" {
		return in
	}
	for _, a := range in[all+1:] {
		if a.kind == aSign && a.text != "." && a.text != "!" && a.text != "," || a.kind != aWord && a.kind != aSign || a.kind == aWord && !saidSoFar[a.text] {
			return in
		}
	}
	out := append([]atom{}, in[verb])
	out = append(out, atom{text: "everything", kind: aWord, at: in[all].at, end: in[all].end}, atom{text: "except", kind: aWord, at: in[start].at, end: in[start].end})
	return append(out, in[from:comma]...)
}

// exceptAt returns the atom after words that make an exception, 0 where none are.
func exceptAt(in []atom, i int) int {
	r := reader{in}
	switch w, next := r.word(i), r.word(i+1); {
	case (w == "apart" || w == "aside") && next == "from", w == "except" && next == "for", w == "other" && next == "than", w == "but" && next == "for", w == "save" && next == "for":
		return i + 2
	case w == "except", w == "excepting", w == "besides", w == "excluding", w == "barring":
		return i + 1
	case w == "with" && next == "the" && r.word(i+2) == "exception" && r.word(i+3) == "of":
		return i + 4
	}
	return 0
}

var (
	polite    = wordSet("please kindly just now then could would can will you i we want like to let us me lets go ahead and ok okay so well d 'd")
	wipes     = wordSet("forget scrap clear wipe drop erase delete lose toss scratch cancel discard remove ditch dump bin throw")
	saidSoFar = wordSet("i we you have 've had said told gave given entered typed mentioned put in so far until now up to else about it that please to the out away of off")
)

// bidsOn reports whether a wish that somebody forgets begins at an atom, with no sign before it.
func bidsOn(in []atom, i int) bool {
	switch in[i].text {
	case "you", "we", "i", "please", "let", "just":
	default:
		return wipes[in[i].text]
	}
	for i < len(in) && polite[in[i].text] {
		i++
	}
	return i < len(in) && wipes[in[i].text]
}
