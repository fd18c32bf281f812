package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// whatFor turns "what do I need a second post for" into "why do I need a second post": what is asked after is a reason.
func whatFor(in []scan.Atom) []scan.Atom {
	for i := range in {
		if in[i].Kind == scan.Sign && (in[i].Text == "." || in[i].Text == "?" || in[i].Text == "!") && i+1 < len(in) && !in[i+1].Glued {
			return append(append(append([]scan.Atom{}, whatFor(in[:i])...), in[i]), whatFor(in[i+1:])...) // sentence by sentence
		}
	}
	end := len(in)
	for end > 0 && in[end-1].Kind != scan.Word {
		end--
	}
	if end < 5 || in[end-1].Text != "for" || !reasoned(in[end-2].Text) {
		return in
	}
	for i := end - 4; i >= 0; i-- {
		if stopAtom(in[i]) {
			return in
		}
		if in[i].Text != "what" {
			continue
		}
		if !reasonVerb[in[i+1].Text] {
			return in
		}
		out := append([]scan.Atom{}, in[:end-1]...)
		out[i].Text = "why"
		return append(out, in[end:]...)
	}
	return in
}

func stopAtom(a scan.Atom) bool {
	return a.Text == "." || a.Text == "?" || a.Text == ";" || a.Text == "!" || a.Text == ","
}

// reasonVerb are the verbs that may follow "what" where a reason is asked for.
var reasonVerb = map[string]bool{"is": true, "are": true, "was": true, "were": true, "do": true, "does": true, "did": true, "would": true, "'s": true}

// reasoned reports whether a word can end the name of a thing that has a reason: "the second post", "put there".
func reasoned(w string) bool {
	if w == "there" {
		return true
	}
	for _, class := range []string{"POST", "UPRIGHT", "STIFF", "RAIL", "BRACKET", "OPENING"} {
		id := lexicon.Vocab().Ids[class]
		for _, c := range lexicon.Vocab().Classes[w] {
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
func mindings(in []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(in); i++ {
		if in[i+2].Text != "mind" || in[i+1].Text != "you" || in[i].Text != "would" && in[i].Text != "do" {
			continue
		}
		verb := plainVerb(in[i+3].Text)
		if verb == "" {
			continue
		}
		out := append(append([]scan.Atom{}, in[:i+2]...), in[i+3:]...)
		out[i].Text, out[i+2].Text = "would", verb
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
		if lexicon.Vocab().Known[v] {
			return v
		}
	}
	if stem[n-1] == stem[n-2] && lexicon.Vocab().Known[stem[:n-1]] {
		return stem[:n-1] // "putting"
	}
	return ""
}
