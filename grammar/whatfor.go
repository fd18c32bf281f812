package grammar

import "strings"

// whatFor turns "what do I need a second post for" into "why do I need a second post": what is asked after is a reason.
func whatFor(in []atom) []atom {
	for i := range in {
		if in[i].kind == aSign && (in[i].text == "." || in[i].text == "?" || in[i].text == "!") && i+1 < len(in) && !in[i+1].glued {
			return append(append(append([]atom{}, whatFor(in[:i])...), in[i]), whatFor(in[i+1:])...) // sentence by sentence
		}
	}
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

// mindings turns "would you mind reminding me" into "would you remind me": what is asked for so is a plain wish.
func mindings(in []atom) []atom {
	for i := 0; i+3 < len(in); i++ {
		if in[i+2].text != "mind" || in[i+1].text != "you" || in[i].text != "would" && in[i].text != "do" {
			continue
		}
		verb := plainVerb(in[i+3].text)
		if verb == "" {
			continue
		}
		out := append(append([]atom{}, in[:i+2]...), in[i+3:]...)
		out[i].text, out[i+2].text = "would", verb
		return out
	}
	return in
}

// plainVerb takes the "ing" from a verb, where what is left is a word that the tables know; "" elsewhere.
func plainVerb(w string) string {
	stem, ok := strings.CutSuffix(w, "ing")
	if !ok || len(stem) < 2 {
		return ""
	}
	n := len(stem)
	for _, v := range []string{stem, stem + "e"} {
		if vocab().known[v] {
			return v
		}
	}
	if stem[n-1] == stem[n-2] && vocab().known[stem[:n-1]] {
		return stem[:n-1] // "putting"
	}
	return ""
}
