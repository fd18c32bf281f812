package grammar

import (
	"strings"

	"saywright/solver/exact"
)

// stackWords settle words about a stack of rails by what stands around them.
func (l *lexing) stackWords() {
	for i := 0; i < len(l.tokens); i++ {
		switch {
		case l.becameBefore(i):
			if l.tokens[i-1].kind == kHave {
				l.drop(i)
				l.drop(i - 1)
				i--
			} else {
				l.drop(i)
			}
		case l.fractionMore(i), l.wallTaken(i), l.clearBetween(i), l.closeToFloor(i), l.usedForThat(i):
		}
	}
}

// fractionMore reads the name of a fraction alone, after "another", as that much of an inch: "another eighth".
func (l *lexing) fractionMore(i int) bool {
	t := &l.tokens[i]
	d := denominators[t.text]
	if t.kind != kOrdinal || i == 0 || l.tokens[i-1].kind != kAnother || d == 0 || i+1 < len(l.tokens) && l.tokens[i+1].kind == kPart && indexable(l.tokens[i+1]) > 0 {
		return false
	}
	t.kind, t.amt = kNum, &amount{number: number{val: exact.New(1, int64(d)), words: true, frac: true}, unit: inches, per: oneRat}
	return true
}

// wallTaken takes "this wall" before a height for the wall itself: "we're taking this wall to three foot eight".
func (l *lexing) wallTaken(i int) bool {
	t := &l.tokens[i]
	if t.kind != kLoc || t.text != "this wall" && t.text != "that wall" || i+2 >= len(l.tokens) || i > 0 && !l.breaks(l.tokens[i-1]) && l.tokens[i-1].kind != kMove && l.tokens[i-1].kind != kFill {
		return false
	}
	if n := &l.tokens[i+1]; n.kind != kTo && n.kind != kRel || l.tokens[i+2].kind != kNum {
		return false
	}
	t.kind, t.found = kPart, nounOf("wall height")
	return true
}

// clearBetween takes the clear distance "between them" of rails for their gap.
func (l *lexing) clearBetween(i int) bool {
	t := &l.tokens[i]
	if t.kind != kPart || t.key() != "span" || !strings.HasPrefix(t.text, "clear ") {
		return false
	}
	for j := i + 1; j < len(l.tokens) && !l.breaks(l.tokens[j]); j++ {
		if n := &l.tokens[j]; n.kind == kLoc && n.key() == "between rails" {
			t.found = nounOf("gap")
			return true
		}
	}
	return false
}

// closeToFloor drops the "to" of "no closer than two inches to the floor".
func (l *lexing) closeToFloor(i int) bool {
	t := &l.tokens[i]
	if t.kind != kTo || i < 2 || i+1 >= len(l.tokens) || l.tokens[i+1].kind != kPart || l.tokens[i+1].key() != "floor" {
		return false
	}
	for j := i - 1; j >= 0; j-- {
		switch n := &l.tokens[j]; {
		case n.kind == kRel && (strings.Contains(n.text, "closer") || strings.Contains(n.text, "nearer")):
			l.drop(i)
			l.tokens[i].kind, l.tokens[i].found = kLoc, []found{{entry: aboveFloor}}
			return true
		case n.kind == kNum, n.kind == kAnd, n.kind == kDim:
		default:
			return false
		}
	}
	return false
}

var aboveFloor = &entry{kind: kLoc, key: "off floor", sense: meaning("| wall height, bottom gap, post height, base height, rail top, drop, fixed rail top, marks, bracket reach")}

// usedForThat drops a part that is named again behind "use that for": "the boards were planed to 5-1/4 wide, so use that for the rails".
func (l *lexing) usedForThat(i int) bool {
	t := &l.tokens[i]
	if t.kind != kEnter && !(t.kind == kCmd && t.key() == "take that") || i+1 >= len(l.tokens) || l.tokens[i+1].kind != kPart || !strings.HasPrefix(l.tokens[i+1].before, "for") && !strings.HasPrefix(l.tokens[i+1].before, "on") {
		return false
	}
	if i+2 < len(l.tokens) && !l.breaks(l.tokens[i+2]) {
		return false
	}
	told := false
	for j := range l.tokens[:i] {
		told = told || l.tokens[j].kind == kNum
		if told && l.tokens[j].kind == kSize {
			return false
		}
	}
	for j := range l.tokens[:i] {
		if n := &l.tokens[j]; told && n.kind == kPart && n.key() == l.tokens[i+1].key() {
			l.drop(i + 1)
			return true
		}
	}
	return false
}

// affirms reports whether a "do that" at item i, which ends the line, only bids to do what the line has just told: "raise the wall by
// two inches, please do that". Where something was tried or asked it takes that.
func (g *grouping) affirms(i int) bool {
	for _, it := range g.list[i+1:] {
		if it.value() || !it.breaks() && it.kind != kTailFill && it.kind != kFill {
			return false
		}
	}
	all := append(append([]group{}, g.s.groups...), g.g)
	told := false
	for k := range all {
		p := &all[k]
		if len(strip(p.items)) == 0 && p.cmd == "" && p.topic == "" && (p.force == State || p.force == "") {
			continue
		}
		if p.force != State || p.cmd != "" {
			return false
		}
		told = told || hasFigure(p.items)
	}
	return told
}

// thoughtBetter reports whether what somebody was going to do is set right: "I was going to make it 48, no, 46 and a half".
func thoughtBetter(list []item) bool {
	first, fixed := false, false
	for _, it := range list {
		switch {
		case it.value() && fixed:
			return true
		case it.value():
			first = true
		case it.kind == kFix || it.kind == kNo:
			fixed = first
		}
	}
	return false
}
