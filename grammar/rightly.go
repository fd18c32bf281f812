package grammar

import (
	"slices"
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
		case l.fractionMore(i), l.wallTaken(i), l.clearBetween(i), l.closeToFloor(i), l.usedForThat(i), l.closeTogether(i), l.narrowRails(i), l.thanPost(i), l.cutToCount(i), l.boardsRun(i):
		case l.besideStack(i):
			i--
		}
	}
}

// fractionMore reads the name of a fraction alone, after "another", as that much of an inch: "another eighth".
func (l *lexing) fractionMore(i int) bool {
	t := &l.tokens[i]
	if t.kind == kUnit && i > 0 && l.tokens[i-1].kind == kAnother && !t.plural() && t.text != "feet" && (i+1 == len(l.tokens) || l.breaks(l.tokens[i+1])) {
		if k, size, _, ok := l.unit(t.first); ok {
			t.kind, t.amt = kNum, &amount{number: number{val: size, words: true}, unit: k, per: size} // "the wall needs another inch"
			return true
		}
	}
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
	if t.kind == kLoc && t.key() == "of wall" && l.heightBound(i) {
		t.kind, t.found = kPart, nounOf("wall height") // "no lower than a meter for that wall"
		return true
	}
	if t.kind != kLoc || t.text != "this wall" && t.text != "that wall" || i+1 >= len(l.tokens) || l.tokens[i+1].kind != kNum && i+2 >= len(l.tokens) || i > 0 && !l.breaks(l.tokens[i-1]) && l.tokens[i-1].kind != kMove && l.tokens[i-1].kind != kFill {
		return false
	}
	if n := &l.tokens[i+1]; !(n.kind == kNum && n.amt.size == "" && n.before == "") && !((n.kind == kTo || n.kind == kRel) && l.tokens[i+2].kind == kNum) {
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
		told = told || hasFigure(p.items) || slices.ContainsFunc(p.items, func(it item) bool { return it.kind == kGoal })
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

// heightBound reports whether all that stands before the wall at token i is how high it may be: "not above 50 with the wall".
func (l *lexing) heightBound(i int) bool {
	bound, figure := false, false
	for j := i - 1; j >= 0 && !l.breaks(l.tokens[j]); j-- {
		switch t := &l.tokens[j]; t.kind {
		case kNum:
			figure = true
		case kRel, kOver, kUnder, kChange, kMore:
			for _, w := range []string{"lower", "higher", "taller", "shorter", "above", "below"} {
				bound = bound || strings.Contains(t.text, w)
			}
		case kAnd, kGoesIn, kFill, kHead, kNot:
		default:
			return false
		}
	}
	return bound && figure
}

// besideStack drops words that say nothing beside what stands around them: "out of each gap", "make the rails out of 2x4", "a two inch
// spacer between the rails".
func (l *lexing) besideStack(i int) bool {
	if i == 0 || i+1 >= len(l.tokens) {
		return false
	}
	prev, t, next := &l.tokens[i-1], &l.tokens[i], &l.tokens[i+1]
	switch {
	case t.kind == kEach && (prev.text == "out of" || prev.text == "off" || prev.text == "off of") && next.kind == kPart && (next.key() == "gap" || next.key() == "bottom gap"):
	case t.text == "out of" && next.kind == kSize && prev.kind == kPart:
	case t.kind == kQuest && strings.HasPrefix(t.text, "spacer") && prev.kind == kNum && next.kind == kLoc && next.key() == "between rails":
	default:
		return false
	}
	l.drop(i)
	return true
}

// closeTogether takes boards that go "as close as they'll go" for the smallest gap.
func (l *lexing) closeTogether(i int) bool {
	t := &l.tokens[i]
	if t.kind == kPart && t.key() == "tape" && t.text == "closest" && i+1 < len(l.tokens) && l.tokens[i+1].kind == kPart && l.tokens[i+1].key() == "gap" {
		t.kind, t.found = kBest, []found{{entry: closest}}
		return true
	}
	if t.kind == kBest && t.key() == "smallest" && i > 0 && l.tokens[i-1].kind == kPart && l.tokens[i-1].key() == "rail" && (strings.HasPrefix(t.text, "as close") || strings.HasPrefix(t.text, "as tight") || strings.HasPrefix(t.text, "as snug")) {
		l.tokens[i-1].found = nounOf("gap")
		return true
	}
	if t.kind != kWhyFill || t.text != "as close" && t.text != "as tight" && t.text != "as snug" || i == 0 || i+1 >= len(l.tokens) || l.tokens[i+1].kind != kBestTail {
		return false
	}
	p := &l.tokens[i-1]
	if p.kind != kPart || p.key() != "rail" && p.key() != "gap" {
		return false
	}
	p.found = nounOf("gap")
	t.kind, t.found = kBest, []found{{entry: closest}}
	return true
}

var closest = &entry{kind: kBest, key: "smallest"}

// narrowRails takes rails that are narrower than was said for their face: "the rails are an eighth narrower".
func (l *lexing) narrowRails(i int) bool {
	t := &l.tokens[i]
	if t.text != "narrower" && t.text != "skinnier" || i < 2 || l.tokens[i-1].kind != kNum || l.tokens[i-2].kind != kPart || l.tokens[i-2].key() != "rail" || l.tokens[i-2].index > 0 {
		return false
	}
	l.tokens[i-2].found = nounOf("rail face")
	return true
}

// boardsRun takes boards that "come out at" some width for the rails that they are.
func (l *lexing) boardsRun(i int) bool {
	t := &l.tokens[i]
	if strings.HasSuffix(t.text, " out") && t.key() == "tolerance" && i+1 < len(l.tokens) && l.tokens[i+1].kind == kSize && strings.HasPrefix(l.tokens[i+1].before, "of") {
		t.kind, t.found = kPart, nounOf("rail") // "make the rails out of 2x4"
		return true
	}
	if t.key() != "tolerance" && t.key() != "off" && t.kind != kOffEach || !strings.Contains(t.text, "come") || i+2 >= len(l.tokens) || l.tokens[i+1].kind != kNum || l.tokens[i+2].kind != kPart || l.tokens[i+2].key() != "rail face" {
		return false
	}
	t.kind, t.found = kPart, nounOf("rail")
	return true
}

// thanPost takes the added post that the wall is lower or higher than for its height: "the wall two inches shorter than the new post".
func (l *lexing) thanPost(i int) bool {
	t := &l.tokens[i]
	if t.kind != kPart || t.key() != "added post" || t.index > 0 || i < 2 {
		return false
	}
	rel := &l.tokens[i-1]
	if rel.kind != kUnder && rel.kind != kOver && !(rel.kind == kRel && (strings.Contains(rel.text, "shorter") || strings.Contains(rel.text, "lower") || strings.Contains(rel.text, "taller") || strings.Contains(rel.text, "higher"))) {
		return false
	}
	for j := i - 2; j >= 0 && j > i-5; j-- {
		switch n := &l.tokens[j]; {
		case n.kind == kNum, n.kind == kAnd, n.kind == kDim:
		case n.kind == kPart && (n.key() == "wall" || n.key() == "wall height"):
			t.found = nounOf("post height")
			return true
		default:
			return false
		}
	}
	return false
}

// cutToCount takes "cut the rails down to four" for their number: no board is cut to four inches.
func (l *lexing) cutToCount(i int) bool {
	t := &l.tokens[i]
	if t.kind != kPart || t.key() != "fit" || !strings.HasPrefix(t.text, "cut") || i+2 >= len(l.tokens) {
		return false
	}
	j := i + 1
	if l.tokens[j].kind == kDown {
		j++
	}
	if j+1 >= len(l.tokens) || l.tokens[j].kind != kTo && l.tokens[j].kind != kRel {
		return false
	}
	num := &l.tokens[j+1]
	if num.kind != kNum || num.amt.unit != bare || num.amt.frac || !num.amt.val.IsInt() || !num.amt.val.Less(exact.Int(13)) {
		return false
	}
	t.found = nounOf("rail")
	return true
}

// bidDone reports whether a line goes on with no more than the bidding to do what it told: ", please do that".
func bidDone(rest []atom) bool {
	w := wordsOf(rest)
	for len(w) > 0 && (w[0] == "please" || w[0] == "so" || w[0] == "and" || w[0] == "just") {
		w = w[1:]
	}
	return len(w) == 2 && (w[0] == "do" || w[0] == "set" || w[0] == "enter" || w[0] == "use") && (w[1] == "that" || w[1] == "it" || w[1] == "so")
}
