package grammar

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/parse"
	"saywright/grammar/reread"
	"saywright/grammar/scan"
)

// A line that could not be read and has misspelled words is read anew as if it had been typed right, from its first step on: "the groud on the other side is
// 26 inches lowwer" is set plain only by words that are spelled so. All ways to set its words right that can be read must say the same.

const (
	mostTypedWrong = 4  // misspelled words
	mostTypedAnew  = 32 // lines tried for them
)

// typedAnew reads a line that was asked back once more with its misspelled words set right.
func typedAnew(line string, atoms []scan.Atom, c act.Context, r act.Reading) act.Reading {
	if r.Ask == nil || c.Part || c.Deep || len(atoms) > 60 {
		return r
	}
	places, _ := reread.Misspelled(atoms, c)
	if len(places) == 0 || len(places) > mostTypedWrong {
		return r
	}
	lines := [][]string{nil}
	for _, i := range places {
		words := lex.Words().AllNear(atoms[i].Text) // also what is not the nearest may be meant: "aprt" is apart, and no part
		var longer [][]string
		for _, begun := range lines {
			for _, w := range words {
				longer = append(longer, append(slices.Clone(begun), w))
			}
		}
		if lines = longer; len(lines) > mostTypedAnew || len(lines) == 0 {
			return r
		}
	}
	var best act.Reading
	for _, words := range lines {
		told := readLine(respelled(line, atoms, places, words), c)
		switch {
		case told.Ask != nil:
		case len(best.Acts) == 0:
			for k, i := range places {
				told.Taken = append(told.Taken, act.Taken{Was: atoms[i].Text, Now: words[k], At: atoms[i].At})
			}
			best = told
		case parse.Normal(told.Acts) != parse.Normal(best.Acts):
			return r
		}
	}
	if len(best.Acts) == 0 {
		return r
	}
	return best
}

// respelled is a line with other words in some places.
func respelled(line string, atoms []scan.Atom, places []int, words []string) string {
	runes := []rune(line)
	for k, i := range slices.Backward(places) {
		runes = slices.Concat(runes[:atoms[i].At], []rune(words[k]), runes[atoms[i].End:])
	}
	return string(runes)
}
