package grammar

// whatFor turns "what do I need a second post for" into "why do I need a second post": what is asked after is a reason.
func whatFor(in []atom) []atom {
	end := len(in)
	for end > 0 && in[end-1].kind != aWord {
		end--
	}
	if end < 5 || in[end-1].text != "for" || !reasoned(in[end-2].text) {
		return in
	}
	for i := end - 4; i >= 0; i-- {
		if stopAtom(in[i]) {
			return in
		}
		if in[i].text != "what" {
			continue
		}
		if !reasonVerb[in[i+1].text] {
			return in
		}
		out := append([]atom{}, in[:end-1]...)
		out[i].text = "why"
		return append(out, in[end:]...)
	}
	return in
}

func stopAtom(a atom) bool {
	return a.text == "." || a.text == "?" || a.text == ";" || a.text == "!" || a.text == ","
}

// reasonVerb are the verbs that may follow "what" where a reason is asked for.
var reasonVerb = map[string]bool{"is": true, "are": true, "was": true, "were": true, "do": true, "does": true, "did": true, "would": true, "'s": true}

// reasoned reports whether a word can end the name of a thing that has a reason: "the second post", "put there".
func reasoned(w string) bool {
	if w == "there" {
		return true
	}
	for _, class := range []string{"POST", "UPRIGHT", "STIFF", "RAIL", "BRACKET", "OPENING"} {
		id := vocab().ids[class]
		for _, c := range vocab().classes[w] {
			if c == id {
				return true
			}
		}
	}
	switch w {
	case "gap", "gaps", "spare", "trim", "fit", "kerf", "cap", "drop":
		return true
	}
	return false
}
