package grammar

import (
	"slices"
	"strings"
)

// siteWords sets plain what is said at the site: "show the apprentice where …" shows me, "rail 5's top" is the top of rail 5, "another
// sixteenth lower" is a sixteenth lower, and "r3 up" is rail 3.
func siteWords(in []atom) []atom {
	out := in
	own := func() {
		if len(out) > 0 && &out[0] == &in[0] {
			out = append([]atom{}, in...)
		}
	}
	for i := 0; i < len(out); i++ {
		r := reader{out}
		switch {
		case showing[out[i].text] && (i == 0 || out[i-1].kind == aSign || leadIns[out[i-1].text]) && personAt(out, i+1) > 0:
			own()
			end := personAt(out, i+1)
			out[i+1].text = "me"
			out = append(out[:i+2:i+2], out[end:]...)
		case out[i].text == "s" && r.word(i-1) == "'" && r.kind(i-2) == aDigits && numbered[r.word(i-3)] && edges[r.word(i+1)]:
			own()
			out = append(out[:i-1:i-1], out[i+1:]...)
			i -= 2
		case out[i].text == "foot" && (partOf(r, i-1, "POST") || r.word(i-1) == "'s" && partOf(r, i-2, "POST")) && out[i].kind == aWord && !r.glued(i):
			own()
			out[i].text = "underside" // "the added post's foot 3/4 off the slab"
		case ordinals[out[i].text] > 0 && r.word(i+1) == "one" && r.word(i+2) == "up" && (r.word(i+3) == "is" || r.word(i+3) == "has" || r.word(i+3) == "'"):
			own()
			out[i+1].text = "rail"
			out = append(out[:i+2:i+2], out[i+3:]...)
		case out[i].text == "another" && fallen[r.word(i+2)] && r.kind(i+1) == aWord && strings.HasSuffix(r.word(i+1), "th") || out[i].text == "another" && r.word(i+1) == "quarter" && fallen[r.word(i+2)]:
			own()
			out[i].text = "a"
		}
	}
	return out
}

var (
	showing = wordSet("show tell give read")
	edges   = wordSet("top tops upper bottom")
	fallen  = wordSet("lower higher")
)

// personAt returns the atom after a person named at atom i, with "the" or "my" before, and 0 where there is none or the person goes on
// to do something.
func personAt(in []atom, i int) int {
	if i+1 >= len(in) || !noun[in[i].text] && !owned[in[i].text] || !isPerson(in[i+1].text) {
		return 0
	}
	return i + 2
}

// partOf reports whether a word of a class stands at an atom.
func partOf(r reader, i int, class string) bool {
	return i >= 0 && slices.Contains(vocab().classes[r.word(i)], vocab().ids[class])
}
