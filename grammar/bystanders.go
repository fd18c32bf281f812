package grammar

import (
	"slices"

	"saywright/solver"
)

// bystanders leaves out where somebody sits or whose he is: "a boy in the back row says", "a pupil of mine wonders".
func bystanders(in []atom) []atom {
	out := in
	for i := 0; i+2 < len(out); i++ {
		if out[i].kind != aWord || !isPerson(out[i].text) {
			continue
		}
		j := placeOfSitting(out, i+1)
		if j == i+1 || j >= len(out) || out[j].kind != aWord || !reporters[out[j].text] && !reporting[out[j].text] {
			continue
		}
		out = append(append([]atom{}, out[:i+1]...), out[j:]...)
	}
	return out
}

var (
	reporting = wordSet("wonder wonder ask claim think reckon say figure want believe insist is has made makes put puts answer answers answered replies replied")
	ownOnes   = wordSet("mine ours his hers theirs yours")
	rowWords  = wordSet("back front first second third last middle far other next")
	seats     = wordSet("row corner window door counter desk table front back register till rear")
)

// placeOfSitting returns the atom after "of mine", "in the back row", "by the window" at atom i, and i where there is none.
func placeOfSitting(atoms []atom, i int) int {
	word := func(k int) string {
		if k >= len(atoms) {
			return ""
		}
		return atoms[k].text
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

// isPerson reports whether a word is one for a person, and no pronoun.
func isPerson(w string) bool {
	id := vocab().ids["PERSON"]
	return slices.Contains(vocab().classes[w], id) && w != "he" && w != "she" && w != "they"
}

// boughtLast reports whether what was said last in the line is of what is bought.
func (s *speech) boughtLast() bool {
	n := len(s.acts)
	if n == 0 || len(s.acts[n-1].Statements) == 0 {
		return false
	}
	list := s.acts[n-1].Statements
	switch list[len(list)-1].Name.Quantity {
	case solver.Spare, solver.Price, solver.Stock, solver.Have, solver.Extra, solver.Budget:
		return true
	}
	return false
}
