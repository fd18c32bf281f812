package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/scan"
)

// Causes begin a clause that tells why.
var Causes = map[string]bool{"because": true, "since": true, "as": true, "cause": true, "cos": true, "cuz": true, "so": true, "or": true, "otherwise": true, "lest": true}

// SubjectAt reports whether a subject may begin at i.
func SubjectAt(atoms []scan.Atom, i int) bool {
	for i < len(atoms) && atoms[i].Text == "that" && i+1 < len(atoms) && !lex.Auxiliary[atoms[i+1].Text] {
		i++ // "so that they …"
	}
	if i >= len(atoms) || atoms[i].Kind != scan.Word {
		return false
	}
	w := atoms[i].Text
	return lex.Speakers[w] || lex.OtherOnes[w] || lex.Pointing[w] || lex.Owned[w] || chunk.Noun[w] || lex.Outsiders[w] && Pleads(PlainWords(atoms[i:]))
}

// PlainWords are the words of a clause, up to the first sign.
func PlainWords(part []scan.Atom) (w []string) {
	for len(part) > 1 && (chunk.Joints[part[0].Text] || Causes[part[0].Text]) {
		part = part[1:]
	}
	return WordsAhead(part)
}

// WordsAhead are the words up to the first sign.
func WordsAhead(part []scan.Atom) (w []string) {
	for _, a := range part {
		if a.Kind != scan.Word {
			break
		}
		w = append(w, a.Text)
	}
	return w
}

// Looks are verbs of making sure: "I shot it with a laser".
var Looks = scan.WordSet("shot checked measured counted verified confirmed sighted taped eyeballed leveled levelled laid held put pulled")
