package grammar

// widerThere are words by which one end of a bay is held against the other.
var widerThere = wordSet("wider narrower bigger smaller tighter looser broader longer shorter more less")

// widerAtTop leaves out by how much one end of a bay is wider where its own figure follows: "bay 2 is an eighth wider at the top, 66 1/8"
// changes no bay.
func widerAtTop(in []atom) []atom {
	r := reader{in}
	for i := 2; i+5 < len(in); i++ {
		_, next, ok := r.length(i)
		if !ok || !widerThere[r.word(next)] || r.word(next+1) != "at" && r.word(next+1) != "across" {
			continue
		}
		j := skipArticle(in, next+2)
		if !edges[r.word(j)] || r.word(j+1) != "," && r.word(j+1) != ":" && r.word(j+1) != "at" || !startsLength(r, j+2) {
			continue
		}
		from := i
		for from > 0 && (in[from-1].text == "is" || in[from-1].text == "'s" || in[from-1].text == "about" || in[from-1].text == "gets" || in[from-1].text == "measures") {
			from--
		}
		if n, end := siteNumbered(r, max(0, from-2), partOfBay); n == 0 || end != from {
			continue
		}
		return append(cutOut(in, j+1, j+2)[:from:from], cutOut(in, j+1, j+2)[next+1:]...)
	}
	return in
}

// wouldHelpOnly leaves out that something would help, which asks for no help: "that would help", "which would be a big help".
func wouldHelpOnly(in []atom) []atom {
	for i := 0; i+2 < len(in); i++ {
		if w := in[i].text; w != "it" && w != "that" && w != "this" && w != "which" || in[i+1].text != "would" && in[i+1].text != "'d" || i > 0 && in[i-1].kind == aWord && in[i-1].text != "and" {
			continue
		}
		j, help := i+2, false
		for ; j < len(in) && in[j].kind == aWord && (helped[in[j].text] || in[j].text == "help" || in[j].text == "be" || in[j].text == "really" || in[j].text == "big" || in[j].text == "sure"); j++ {
			help = help || in[j].text == "help"
		}
		if help && endsPart(in, j) && (j == len(in) || in[j].text != "?") {
			return cutOut(in, i, j)
		}
	}
	return in
}

// alikeSoThat sets "can we have every board come out the same length, so I only set the stop once?", which gives its reason, to the wish
// that it is.
func alikeSoThat(in []atom) []atom {
	if len(in) < 8 || !beggars[in[0].text] || in[1].text != "we" && in[1].text != "i" || in[2].text != "have" && in[2].text != "get" && in[2].text != "make" {
		return in
	}
	for i := 5; i+2 < len(in); i++ {
		if in[i].text != "," || in[i+1].text != "so" || !subjectAt(in, i+2) || in[i-1].text != "length" && in[i-1].text != "width" && in[i-1].text != "equal" && in[i-1].text != "same" {
			continue
		}
		out := reworded(in, 0, 3, "we", "want")
		if out[len(out)-1].text == "?" {
			out = out[:len(out)-1]
		}
		return out
	}
	return in
}
