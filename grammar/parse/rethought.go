package parse

import (
	"strings"

	"saywright/grammar/lexicon"
)

// takesBackAll reports whether a word of correction takes back what stands before a full stop or a question mark, whatever
// follows: "no, …", "wait, no".
func takesBackAll(list []Item, i int) bool {
	it := list[i]
	if it.Kind == lexicon.No {
		return i+1 < len(list) && !list[i+1].value() && (list[i+1].Kind == lexicon.Comma || list[i+1].Kind == lexicon.Fix)
	}
	for _, w := range strings.Fields(it.Text) {
		switch w {
		case "no", "nope", "nah", "scratch", "strike":
			return it.Kind == lexicon.Fix
		}
	}
	return false
}
