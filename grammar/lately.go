package grammar

import (
	"strings"

	"saywright/solver"
)

// ofGaps are verbs that are said of gaps alone.
var ofGaps = map[string]bool{"tighten": true, "tightens": true, "tightened": true, "tightening": true, "tighter": true, "tight": true,
	"snug": true, "loosen": true, "loosens": true, "loosened": true, "loosening": true, "looser": true}

// spokenOf returns what "it" can only mean: the one thing that was spoken of last, or of several the one that the verb is
// said of ("wall forty, gap two and a half": "tighten it to two").
func (c Context) spokenOf(tokens []token) *solver.Name {
	if c.Subject != nil {
		return c.Subject
	}
	for i := range tokens {
		for _, word := range strings.Fields(tokens[i].text) {
			if ofGaps[word] {
				return c.lately(solver.Gap)
			}
		}
	}
	return nil
}

// lately returns the name of a quantity that the last line spoke of, where it spoke of one such only.
func (c Context) lately(q solver.Quantity) *solver.Name {
	var one *solver.Name
	for i := range c.Lately {
		if n := &c.Lately[i]; n.Quantity == q {
			if one != nil && one.String() != n.String() {
				return nil
			}
			one = n
		}
	}
	return one
}
