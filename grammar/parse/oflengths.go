package parse

import (
	"slices"
	"strings"

	"saywright/grammar/lexicon"
)

// lengthWords are words of comparing that are said of lengths alone.
var lengthWords = map[string]bool{"apart": true, "wider": true, "narrower": true, "closer": true, "nearer": true, "tighter": true, "looser": true,
	"farther": true, "further": true, "thicker": true, "thinner": true, "taller": true}

// ofLengths reports whether a limit is said with a word that only lengths are compared with: "no farther apart than 30".
func (l *limit) ofLengths() bool {
	for _, t := range l.lead {
		if t.Kind != lexicon.Rel && t.Kind != lexicon.Over {
			continue
		}
		for _, w := range strings.Fields(t.Text) {
			if lengthWords[w] {
				return true
			}
		}
	}
	return false
}

// bayBetween reports whether a bay is told of with the posts that it stands between: "the bays should be 66 inches between the posts".
// Between the end posts is the span.
func (k *clause) bayBetween() bool {
	if len(k.things) != 2 || !k.about("bay") || len(k.dims) > 1 {
		return false
	}
	for _, i := range k.things {
		if t := k.items[i]; (t.Key() == "between posts" || t.Key() == "span") && !slices.ContainsFunc(strings.Fields(t.Text), func(w string) bool { return w == "end" || w == "two" || w == "both" }) {
			return true
		}
	}
	return false
}
