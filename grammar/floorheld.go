package grammar

import "strings"

// againstOther drops the side that the floor is held against: "lower at the right than at the left".
func (k *clause) againstOther() []int {
	if len(k.sides) != 2 || k.items[k.sides[0]].key() == k.items[k.sides[1]].key() {
		return k.sides
	}
	for i := k.sides[1] - 1; i > k.sides[0] && !k.items[i].value(); i-- {
		if t := k.items[i]; t.kind == kThan || t.kind == kRel || t.kind == kThanNow || t.kind == kUnder || t.kind == kOver {
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
	side, by := k.items[k.sides[0]].text, k.items[k.sides[0]-1]
	switch by.kind {
	case kThan:
		return true
	case kRel, kOver, kUnder:
		return endsIn(by.text, "than") || !strings.HasPrefix(side, "at ") && !strings.HasPrefix(side, "on ")
	}
	return false
}
