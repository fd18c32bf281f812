package grammar

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

// nounsAhead are words after which the name of a sign is a noun: "a new line", "for this period".
var nounsAhead = wordSet("a an the this that my our one each every no any of your his her their in on some")

// lessonVerbs follow a period that is no sign, but an hour at school.
var lessonVerbs = wordSet("says say said got gets has had found taped measured came wants wanted figured thinks class students")

// namesAhead are words behind which the name of a plan begins: "save it as period three".
var namesAhead = wordSet("put set as open name named called with compare and to save saved than against versus vs load reopen from like between fetch does did")

// dictated sets signs where their names are told: "five rails comma what's the gap question mark", "patio dot svg".
func dictated(in []atom) []atom {
	var out []atom
	for i := 0; i < len(in); i++ {
		sign, n := signAt(in, i)
		if n == 0 && !dotAt(in, i) {
			if out != nil {
				out = append(out, in[i])
			}
			continue
		}
		if out == nil {
			out = append(make([]atom, 0, len(in)), in[:i]...)
		}
		if n > 0 {
			out = append(out, atom{text: sign, kind: aSign, at: in[i].at, end: in[i+n-1].end})
			i += n - 1
			continue
		}
		out = append(out, atom{text: ".", kind: aSign, at: in[i].at, end: in[i].end, glued: true})
		i++
		in[i].glued = true
		out = append(out, in[i])
	}
	if out == nil {
		return in
	}
	return out
}

// signAt finds the name of a sign at an atom, and of how many atoms it is made. Nothing but a sign is one at the beginning.
func signAt(in []atom, i int) (sign string, n int) {
	if i == 0 && len(in) > 2 && (in[0].text == "new" || in[0].text == "next") && (in[1].text == "line" || in[1].text == "paragraph") {
		return ".", 2 // "new line the end posts are four by fours"
	}
	if i == 0 || in[i].kind != aWord || i+1 < len(in) && in[i+1].glued {
		return "", 0
	}
	if lesson := in[i].text == "period"; lesson && (ordinals[in[i-1].text] > 0 || ordinalEnds[in[i-1].text] || i+1 < len(in) && (in[i+1].kind == aDigits || lessonVerbs[in[i+1].text]) || namesAhead[in[i-1].text]) {
		return "", 0 // "second period taped it"
	}
	for _, s := range spokenSigns {
		if i+len(s.words) > len(in) {
			continue
		}
		all := len(s.words) > 1 && s.words[0] != "new" && s.words[0] != "next" || !nounsAhead[in[i-1].text]
		for k, w := range s.words {
			all = all && in[i+k].kind == aWord && in[i+k].text == w
		}
		if all {
			return s.sign, len(s.words)
		}
	}
	return "", 0
}

// fileEnds are the ends of the names of files that are written.
var fileEnds = wordSet("svg html htm csv")

// dotAt reports whether "dot" at an atom stands between a name and its end.
func dotAt(in []atom, i int) bool {
	return i > 0 && i+1 < len(in) && in[i].text == "dot" && in[i].kind == aWord && fileEnds[in[i+1].text]
}
