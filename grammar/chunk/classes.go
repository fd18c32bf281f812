package chunk

import (
	"slices"

	"saywright/grammar/lexicon"
)

// IsPerson reports whether a word is one for a person, and no pronoun.
func IsPerson(w string) bool {
	id := lexicon.Vocab().Ids["PERSON"]
	return slices.Contains(lexicon.Vocab().Classes[w], id) && w != "he" && w != "she" && w != "they"
}

// IsClass reports whether a word is of a class of the tables.
func IsClass(w, class string) bool {
	id := lexicon.Vocab().Ids[class]
	for _, c := range lexicon.Vocab().Classes[w] {
		if c == id {
			return true
		}
	}
	return false
}
