package measure

import (
	"slices"

	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// WordInt is a whole number that was said in a word.
func WordInt(n int) Number { return Number{Val: exact.Int(n), Words: true} }

// CountNouns are nouns that a bare number before them counts.
var CountNouns = func() map[string]bool {
	m := map[string]bool{}
	for _, w := range []string{"rails", "rls", "boards", "bds", "slats", "planks", "courses", "rows", "members", "pieces", "bays", "sections", "panels", "openings", "ops",
		"doorways", "walkthroughs", "posts", "psts", "stiffeners", "stfnrs", "braces", "battens", "stays", "brackets", "added", "extra", "new", "more", "uprights", "stiff"} {
		m[w] = true
	}
	return m
}()

// PartNext reports whether a part follows that an ordinal could count: "a third rail".
func PartNext(r Reader, i int) bool {
	return CountNouns[r.Word(i)] || CountNouns[r.Word(i)+"s"]
}

// PartLetters stand for parts that are told by number.
var PartLetters = map[string]string{"b": "bay", "r": "rail"}

// LetterAt reports whether a letter for a part stands at atom i with its number glued to it.
func (r Reader) LetterAt(i int) bool {
	if PartLetters[r.Word(i)] == "" || r.Glued(i) && r.Kind(i-1) == scan.Word || r.Kind(i+1) != scan.Digits || !r.Glued(i+1) {
		return false
	}
	n, ok := Atoi(r.Word(i + 1))
	return ok && n > 0 && n < 20 && !(r.Glued(i+2) && (r.Word(i+2) == "/" || r.Word(i+2) == "." || r.Kind(i+2) == scan.Word))
}

// NounsAhead are words after which the name of a sign is a noun: "a new line", "for this period".
var NounsAhead = scan.WordSet("a an the this that my our one each every no any of your his her their in on some")

// PartOf reports whether a word of a class stands at an atom.
func PartOf(r Reader, i int, class string) bool {
	return i >= 0 && slices.Contains(lexicon.Vocab().Classes[r.Word(i)], lexicon.Vocab().Ids[class])
}

// OfBay reports whether a word is one for a bay.
func OfBay(w string) bool {
	return slices.Contains(lexicon.Vocab().Classes[w], lexicon.Vocab().Ids["BAY"])
}
