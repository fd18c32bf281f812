package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// Compares are words of comparison, each with a "than" at or near its right.
var Compares = scan.WordSet("more less fewer greater bigger larger smaller wider narrower longer shorter taller lower higher closer nearer further farther tighter looser thicker thinner")

// becameBefore reports whether a change at token i only tells what came of a thing before what it is now is told: "my rails have shrunk,
// they're only five and a quarter wide now".
func (l *lexing) becameBefore(i int) bool {
	t := &l.tokens[i]
	if t.Kind != lexicon.Change || !became[t.Text] || i+2 >= len(l.tokens) || i == 0 {
		return false
	}
	if h := l.tokens[i-1]; h.Kind != lexicon.Have && !strings.HasSuffix(t.Before, "have") && !strings.HasSuffix(t.Before, "has") && h.Kind != lexicon.Part {
		return false
	}
	switch l.tokens[i+1].Kind {
	case lexicon.Comma, lexicon.Stop, lexicon.And, lexicon.But:
	default:
		return false
	}
	for j := i + 1; j < len(l.tokens) && j < i+6; j++ {
		n := &l.tokens[j]
		for _, w := range strings.Fields(n.Before) {
			if w == "are" || w == "is" || w == "measure" || w == "measures" || w == "now" {
				return true
			}
		}
		if n.Kind == lexicon.Measured {
			return true
		}
		if n.Kind == lexicon.Num {
			return false
		}
	}
	return false
}

var became = scan.WordSet("shrunk shrank swelled swollen grown dropped widened narrowed shortened")
