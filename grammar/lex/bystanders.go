package lex

import (
	"saywright/grammar/chunk"
	"saywright/grammar/scan"
)

// bystanders leaves out where somebody sits or whose he is: "a boy in the back row says", "a pupil of mine wonders".
func bystanders(in []scan.Atom) []scan.Atom {
	out := in
	for i := 0; i+2 < len(out); i++ {
		if out[i].Kind != scan.Word || !chunk.IsPerson(out[i].Text) {
			continue
		}
		j := placeOfSitting(out, i+1)
		if j == i+1 || j >= len(out) || out[j].Kind != scan.Word || !reporters[out[j].Text] && !reporting[out[j].Text] {
			continue
		}
		out = append(append([]scan.Atom{}, out[:i+1]...), out[j:]...)
	}
	return out
}

var (
	reporting = scan.WordSet("wonder wonder ask claim think reckon say figure want believe insist is has made makes put puts answer answers answered replies replied")
	ownOnes   = scan.WordSet("mine ours his hers theirs yours")
	rowWords  = scan.WordSet("back front first second third last middle far other next")
	seats     = scan.WordSet("row corner window door counter desk table front back register till rear")
)

// placeOfSitting returns the atom after "of mine", "in the back row", "by the window" at atom i, and i where there is none.
func placeOfSitting(atoms []scan.Atom, i int) int {
	word := func(k int) string {
		if k >= len(atoms) {
			return ""
		}
		return atoms[k].Text
	}
	switch word(i) {
	case "of":
		if ownOnes[word(i+1)] {
			return i + 2
		}
	case "in", "at", "by", "near", "behind", "from", "on":
		j := i + 1
		if w := word(j); w == "the" || w == "our" || w == "my" || w == "that" {
			j++
		}
		if rowWords[word(j)] && seats[word(j+1)] {
			j++
		}
		if seats[word(j)] {
			return j + 1
		}
	}
	return i
}
