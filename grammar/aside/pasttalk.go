package aside

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
	"saywright/grammar/spelling"
)

// Relatives begin what is told of something just named: "…, which he did on a napkin, …".
var Relatives = scan.WordSet("who which where")

// OfElsewhereAltogether reports whether a clause holds a word that no table knows, and that is no misspelled one.
func OfElsewhereAltogether(part []scan.Atom, c act.Context) bool {
	for _, t := range lex.Tokens(part[:len(part):len(part)], c) {
		if t.Kind == lexicon.Unknown && (hear.Foreign(&t) || spelling.English()[t.Text]) {
			return true
		}
	}
	return false
}

// StandAtWords reports whether words begin with others, and go on.
func StandAtWords(w, opener []string) bool {
	return len(w) > len(opener) && slices.Equal(w[:len(opener)], opener)
}

var (
	// ReasonOpeners begin a clause that tells why, and never turns what stands beside it.
	ReasonOpeners = hear.WordRows(`seeing as how
	seeing as
	seeing that
	seeing how
	seeing
	since
	because
	in view of
	in light of
	given that
	given
	considering that
	considering
	what with
	on account of
	thanks to
	knowing
	now that
	what being
	after
	with
	much as
	speaking as`)

	// JudgesIt are words by which a clause judges, denies or doubts what stands beside it.
	JudgesIt = scan.WordSet(`barely asleep not no never none nobody nothing nor neither without hardly cannot wrong mistake misread mistaken incorrect error off rather guess wonder wondering ridiculous nuts crazy nonsense silly stupid awful terrible horrible
		refuse reject object disagree hate hates dislike dislikes impossible overkill smudged torn blurred illegible`)
)

// WithoutLittleOnes sets "the little one", which is a child, to one word.
func WithoutLittleOnes(part []scan.Atom) []scan.Atom {
	for i := 1; i < len(part); i++ {
		if (part[i].Text == "one" || part[i].Text == "ones") && (part[i-1].Text == "little" || part[i-1].Text == "young" || part[i-1].Text == "wee") {
			return append(append(slices.Clone(part[:i-1]), chunk.Worded(part[i], "child")), part[i+1:]...)
		}
	}
	return part
}
