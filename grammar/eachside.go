package grammar

import (
	"strings"

	"saywright/solver/exact"
)

// openingsApart numbers two openings that are told by their sides: "two openings, one on the left and one on the right", "one
// at each end". They are counted from the left.
func (l *lexing) openingsApart() {
	for p := range l.tokens {
		part := &l.tokens[p]
		if part.kind != kPart || part.key() != "opening" || part.index > 0 {
			continue
		}
		two := p > 0 && l.tokens[p-1].kind == kNum && l.tokens[p-1].amt.unit == bare && l.tokens[p-1].amt.val.Eq(exact.Int(2))
		one := lastWord(part.before) == "an" || lastWord(part.before) == "a"
		if !two && !one {
			continue
		}
		next, sides := l.twoSides(p+1, two)
		if next == 0 {
			continue
		}
		var put []token
		if one {
			part.before = ""
			part.text = "openings"
			put = append(put, token{kind: kNum, text: "two", amt: &amount{number: wordInt(2)}, at: part.at, end: part.at, first: part.first})
		}
		put = append(put, *part)
		for n, side := range sides {
			put = append(put, token{kind: kComma, text: ",", at: part.at, end: part.end, first: part.first},
				token{kind: kPart, found: openingNoun, text: "opening", index: n + 1, indexes: []int{n + 1}, at: part.at, end: part.end, first: part.first}, side)
		}
		put = append(put, l.tokens[next:]...)
		l.tokens = append(l.tokens[:p:p], put...)
		return
	}
}

var openingNoun = nounOf("opening")

// twoSides reads where two openings are, from token i on. It returns the token behind, 0 where that is not told.
func (l *lexing) twoSides(i int, two bool) (next int, sides [2]token) {
	skip := func() {
		for i < len(l.tokens) && (l.tokens[i].kind == kComma || l.tokens[i].kind == kAnd) {
			i++
		}
	}
	counted := func() bool {
		if i >= len(l.tokens) {
			return false
		}
		t := &l.tokens[i]
		if t.kind == kNum && t.amt.unit == bare && t.amt.val.Eq(oneRat) && t.amt.words || t.kind == kUnknown && t.text == "other" || t.kind == kAnother {
			i++
			return true
		}
		return false
	}
	skip()
	one := two && counted()
	if i >= len(l.tokens) {
		return 0, sides
	}
	if t := l.tokens[i]; (t.key() == "each end" || t.key() == "ends") && (strings.Contains(t.text, "each") || strings.Contains(t.text, "both") || strings.Contains(t.text, "either")) {
		left, right := t, t
		left.kind, left.found, left.text = kSide, []found{{entry: onLeft}}, "left"
		right.kind, right.found, right.text = kSide, []found{{entry: onRight}}, "right"
		return i + 1, [2]token{left, right}
	}
	if !two || l.tokens[i].kind != kSide {
		return 0, sides
	}
	sides[0] = l.tokens[i]
	i++
	joined := i
	skip()
	if i == joined || one && !counted() || i >= len(l.tokens) || l.tokens[i].kind != kSide {
		return 0, sides
	}
	sides[1] = l.tokens[i]
	a, b := sideOrder[sides[0].key()], sideOrder[sides[1].key()]
	if a == b {
		return 0, sides
	}
	if a > b {
		sides[0], sides[1] = sides[1], sides[0]
	}
	return i + 1, sides
}

var (
	sideOrder = map[string]int{"left": 1, "middle": 2, "right": 3}
	onLeft    = &entry{kind: kSide, key: "left", sense: meaning("opening side")}
	onRight   = &entry{kind: kSide, key: "right", sense: meaning("opening side")}
)
