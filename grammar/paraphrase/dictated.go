package paraphrase

import (
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// spokenSigns are signs that are told to a phone by their names, and what they are.
var spokenSigns = []struct {
	words []string
	sign  string
}{
	{[]string{"question", "mark"}, "?"},
	{[]string{"exclamation", "point"}, "!"},
	{[]string{"exclamation", "mark"}, "!"},
	{[]string{"full", "stop"}, "."},
	{[]string{"semi", "colon"}, ","},
	{[]string{"new", "line"}, "."},
	{[]string{"next", "line"}, "."},
	{[]string{"new", "paragraph"}, "."},
	{[]string{"next", "paragraph"}, "."},
	{[]string{"newline"}, "."},
	{[]string{"semicolon"}, ","},
	{[]string{"comma"}, ","},
	{[]string{"period"}, "."},
	{[]string{"colon"}, ":"},
}

// lessonVerbs follow a period that is no sign, but an hour at school.
var lessonVerbs = scan.WordSet("says say said got gets has had found taped measured came wants wanted figured thinks class students")

// namesAhead are words behind which the name of a plan begins: "save it as period three".
var namesAhead = scan.WordSet("put set as open name named called with compare and to save saved than against versus vs load reopen from like between fetch does did")

// dictated sets signs where their names are told: "five rails comma what's the gap question mark", "patio dot svg".
func dictated(in []scan.Atom) []scan.Atom {
	var out []scan.Atom
	for i := 0; i < len(in); i++ {
		sign, n := signAt(in, i)
		if n == 0 && !dotAt(in, i) {
			if out != nil {
				out = append(out, in[i])
			}
			continue
		}
		if out == nil {
			out = append(make([]scan.Atom, 0, len(in)), in[:i]...)
		}
		if n > 0 {
			out = append(out, scan.Atom{Text: sign, Kind: scan.Sign, At: in[i].At, End: in[i+n-1].End})
			i += n - 1
			continue
		}
		out = append(out, scan.Atom{Text: ".", Kind: scan.Sign, At: in[i].At, End: in[i].End, Glued: true})
		i++
		in[i].Glued = true
		out = append(out, in[i])
	}
	if out == nil {
		return in
	}
	return out
}

// signAt finds the name of a sign at an atom, and of how many atoms it is made. Nothing but a sign is one at the beginning.
func signAt(in []scan.Atom, i int) (sign string, n int) {
	if i == 0 && len(in) > 2 && (in[0].Text == "new" || in[0].Text == "next") && (in[1].Text == "line" || in[1].Text == "paragraph") {
		return ".", 2 // "new line the end posts are four by fours"
	}
	if i == 0 || in[i].Kind != scan.Word || i+1 < len(in) && in[i+1].Glued {
		return "", 0
	}
	if lesson := in[i].Text == "period"; lesson && (measure.Ordinals[in[i-1].Text] > 0 || measure.OrdinalEnds[in[i-1].Text] || i+1 < len(in) && (in[i+1].Kind == scan.Digits || lessonVerbs[in[i+1].Text]) || namesAhead[in[i-1].Text]) {
		return "", 0 // "second period taped it"
	}
	for _, s := range spokenSigns {
		if i+len(s.words) > len(in) {
			continue
		}
		all := len(s.words) > 1 && s.words[0] != "new" && s.words[0] != "next" || !measure.NounsAhead[in[i-1].Text]
		for k, w := range s.words {
			all = all && in[i+k].Kind == scan.Word && in[i+k].Text == w
		}
		if all {
			return s.sign, len(s.words)
		}
	}
	return "", 0
}

// fileEnds are the ends of the names of files that are written.
var fileEnds = scan.WordSet("svg html htm csv")

// dotAt reports whether "dot" at an atom stands between a name and its end.
func dotAt(in []scan.Atom, i int) bool {
	return i > 0 && i+1 < len(in) && in[i].Text == "dot" && in[i].Kind == scan.Word && fileEnds[in[i+1].Text]
}
