package parse

import (
	"strings"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
)

// againstOther drops the side that the floor is held against: "lower at the right than at the left".
func (k *clause) againstOther() []int {
	if len(k.sides) != 2 || k.items[k.sides[0]].Key() == k.items[k.sides[1]].Key() {
		return k.sides
	}
	for i := k.sides[1] - 1; i > k.sides[0] && !k.items[i].value(); i-- {
		if t := k.items[i]; t.Kind == lexicon.Than || t.Kind == lexicon.Rel || t.Kind == lexicon.ThanNow || t.Kind == lexicon.Under || t.Kind == lexicon.Over {
			return k.sides[:1]
		}
	}
	return k.sides
}

// heldAgainst reports whether the only side that is named is the one that the floor is held against: "an inch higher than the left".
func (k *clause) heldAgainst() bool {
	if len(k.sides) != 1 || k.sides[0] == 0 || k.items[k.sides[0]-1].value() || k.values[0] > k.sides[0] {
		return false
	}
	side, by := k.items[k.sides[0]].Text, k.items[k.sides[0]-1]
	switch by.Kind {
	case lexicon.Than:
		return true
	case lexicon.Rel, lexicon.Over, lexicon.Under:
		return lex.EndsIn(by.Text, "than") || !strings.HasPrefix(side, "at ") && !strings.HasPrefix(side, "on ")
	}
	return false
}
