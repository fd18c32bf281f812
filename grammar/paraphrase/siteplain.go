package paraphrase

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// siteWords sets plain what is said at the site: "show the apprentice where …" shows me, "rail 5's top" is the top of rail 5, "another
// sixteenth lower" is a sixteenth lower, and "r3 up" is rail 3.
func siteWords(in []scan.Atom) []scan.Atom {
	out := in
	own := func() {
		if len(out) > 0 && &out[0] == &in[0] {
			out = append([]scan.Atom{}, in...)
		}
	}
	for i := 0; i < len(out); i++ {
		r := measure.Reader{Atoms: out}
		switch {
		case showing[out[i].Text] && (i == 0 || out[i-1].Kind == scan.Sign || lex.LeadIns[out[i-1].Text]) && personAt(out, i+1) > 0:
			own()
			end := personAt(out, i+1)
			out[i+1].Text = "me"
			out = append(out[:i+2:i+2], out[end:]...)
		case out[i].Text == "s" && r.Word(i-1) == "'" && r.Kind(i-2) == scan.Digits && measure.Numbered[r.Word(i-3)] && edges[r.Word(i+1)]:
			own()
			out = append(out[:i-1:i-1], out[i+1:]...)
			i -= 2
		case out[i].Text == "foot" && (measure.PartOf(r, i-1, "POST") || r.Word(i-1) == "'s" && measure.PartOf(r, i-2, "POST")) && out[i].Kind == scan.Word && !r.Glued(i):
			own()
			out[i].Text = "underside" // "the added post's foot 3/4 off the slab"
		case measure.Ordinals[out[i].Text] > 0 && r.Word(i+1) == "one" && r.Word(i+2) == "up" && (r.Word(i+3) == "is" || r.Word(i+3) == "has" || r.Word(i+3) == "'"):
			own()
			out[i+1].Text = "rail"
			out = append(out[:i+2:i+2], out[i+3:]...)
		case out[i].Text == "another" && fallen[r.Word(i+2)] && r.Kind(i+1) == scan.Word && strings.HasSuffix(r.Word(i+1), "th") || out[i].Text == "another" && r.Word(i+1) == "quarter" && fallen[r.Word(i+2)]:
			own()
			out[i].Text = "a"
		}
	}
	return out
}

var (
	showing = scan.WordSet("show tell give read")
	edges   = scan.WordSet("top tops upper bottom")
	fallen  = scan.WordSet("lower higher")
)

// personAt returns the atom after a person named at atom i, with "the" or "my" before, and 0 where there is none or the person goes on
// to do something.
func personAt(in []scan.Atom, i int) int {
	if i+1 >= len(in) || !chunk.Noun[in[i].Text] && !lex.Owned[in[i].Text] || !chunk.IsPerson(in[i+1].Text) {
		return 0
	}
	return i + 2
}
