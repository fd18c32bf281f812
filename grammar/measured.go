package grammar

import "strings"

// moreOf gives a number the unit that stands behind its "more": "two more inches of opening".
func (l *lexing) moreOf() {
	for i := 0; i+2 < len(l.tokens); i++ {
		n, more, u := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if n.kind != kNum || n.amt.unit != bare || n.amt.size != "" || !more.is(kMore) || u.kind != kUnit {
			continue
		}
		kind, size, _, ok := l.unit(u.first)
		if !ok {
			continue
		}
		a := *n.amt
		a.val, a.unit, a.per, a.plain = a.val.Mul(size), kind, size, ""
		n.amt, more.end = &a, u.end
		l.tokens = append(l.tokens[:i+2], l.tokens[i+3:]...)
	}
}

// perUnit reads a unit alone as one of it where a floor falls by so much in each: "10 mm per metre".
func (l *lexing) perUnit() {
	fall := false
	for i := range l.tokens {
		t := &l.tokens[i]
		fall = fall || t.is(kFall)
		if t.kind != kUnit || !fall || i < 2 || l.tokens[i-2].kind != kNum && l.tokens[i-1].kind != kNum {
			continue
		}
		k, size, _, ok := l.unit(t.first)
		if !ok || k != metric && k != feet {
			continue
		}
		if prev := &l.tokens[i-1]; prev.is(kPer) || prev.kind == kTo {
			prev.kind, prev.found = kPer, []found{{entry: perEach}}
			t.kind, t.amt = kNum, &amount{number: number{val: size, words: true}, unit: k, per: size}
		}
	}
}

var perEach = &entry{kind: kPer, key: "per"}

// trailingBounds drops the comma before a limit that ends its clause: "$400, no more".
func (l *lexing) trailingBounds() {
	l.andNots()
	l.orBetter()
	if n := len(l.tokens); n > 3 && l.tokens[n-2].kind == kComma && l.tokens[n-1].as(kBound) != nil && l.tokens[n-1].text == "tops" && l.moneyBefore(n-2) {
		l.tokens[n-1].kind = kBound // "we've got 450 dollars for the lumber, tops"
		l.tokens = append(l.tokens[:n-2], l.tokens[n-1])
	}
	for i := 1; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.kind == kRel && t.as(kBound) != nil && l.tokens[i-1].kind == kNum && next.kind == kPart && next.key() == "size" {
			t.kind = kBound // "500 dollars at most on the material"
		}
		if t.kind != kComma || next.as(kBound) == nil || next.as(kPart) != nil || l.tokens[i-1].kind != kNum {
			continue
		}
		if i+2 == len(l.tokens) || l.tokens[i+2].kind == kComma || l.tokens[i+2].kind == kStop {
			next.kind = kBound
			l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
		}
	}
}

// orBetter reads "or better" at the end as a bound, and not as a better word: "three quarters off the floor or better". What
// stands over at the end is no count: "two boards over".
func (l *lexing) orBetter() {
	for i := range l.tokens {
		t := &l.tokens[i]
		last := i+1 == len(l.tokens) || l.tokens[i+1].kind == kStop || l.tokens[i+1].kind == kComma
		switch {
		case !last:
		case t.kind == kFix && t.text == "or better" && t.as(kBound) != nil:
			t.kind = kBound
		case t.kind == kOver && i > 1 && l.tokens[i-1].kind == kPart && l.tokens[i-1].key() == "rail" && l.tokens[i-2].kind == kNum:
			t.kind = kVague
		}
	}
}

// andNots drops the "and" before a value that is only denied: "2 and not 3".
func (l *lexing) andNots() {
	l.notButs()
	for i := 1; i+2 < len(l.tokens); i++ {
		if l.tokens[i].kind != kAnd || l.tokens[i+1].kind != kNot || l.tokens[i+1].text != "not" || l.tokens[i-1].kind != kNum && !(i > 1 && l.tokens[i-1].kind == kPart && l.tokens[i-2].kind == kNum) || l.tokens[i+2].kind != kNum {
			continue
		}
		if i+3 == len(l.tokens) || l.tokens[i+3].kind == kComma || l.tokens[i+3].kind == kStop {
			l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
		}
	}
}

// leftBay gives the bay at the left its number: bays are counted from there.
func (l *lexing) leftBay() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, bay := &l.tokens[i], &l.tokens[i+1]
		if t.kind != kSide || t.text != "left" || bay.kind != kPart || bay.key() != "bay" || bay.plural() {
			continue
		}
		bay.index, bay.indexes, bay.at = 1, []int{1}, t.at
		l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
	}
}

// verbsOfChange tells "change the gap to 3" from the second change of several, and "take an inch out of the gap" from a
// length that is sold out.
func (l *lexing) verbsOfChange() {
	for i := 0; i+1 < len(l.tokens); i++ {
		switch t, next := &l.tokens[i], &l.tokens[i+1]; {
		case t.kind == kWayOut && t.as(kMove) != nil && (next.kind == kPart || next.kind == kLoc):
			t.kind = kMove
		case t.kind == kCutWord && t.text == "cut" && next.kind == kPart && i+2 < len(l.tokens) && (l.tokens[i+2].kind == kDown || l.tokens[i+2].kind == kNum && strings.HasSuffix(l.tokens[i+2].before, "by")):
			t.kind, t.found = kChange, []found{{entry: minusSign}} // "cut the wall down to 44"
		case t.kind == kCmd && t.text == "take" && l.takenAway(i+1):
			t.kind, t.found = kChange, []found{{entry: minusSign}} // "take one rail away"
		case t.kind == kCmd && t.text == "take" && next.kind == kNum && i+3 < len(l.tokens) && (l.tokens[i+2].kind == kLim || l.tokens[i+2].kind == kBound || l.tokens[i+2].is(kLim)) && l.tokens[i+3].kind == kOff:
			t.found = []found{{entry: forgetting}} // "take the two inch minimum off the gap"
			l.drop(i + 3)
		case t.kind == kSellLess && t.text == "out of" && i > 0 && l.tokens[i-1].kind == kNum && next.kind == kPart && !next.is(kStockWord):
			t.kind, t.found = kOff, []found{{entry: takenOff}}
		}
	}
}

var takenOff = &entry{kind: kOff, key: "off"}

// someWall takes "a wall" after a preposition for the wall itself: "we decided on a wall 45 inches above the patio".
func (l *lexing) someWall() {
	for i := range l.tokens {
		if t := &l.tokens[i]; t.kind == kLoc && t.key() == "of wall" && strings.Contains(t.text, " a ") {
			t.kind, t.found = kPart, wallNoun
		}
	}
}

var wallNoun = nounOf("wall")

// bothPosts takes "the two posts" for the end posts and not for a count, and "4x4 in the middle" for the posts between them.
func (l *lexing) bothPosts() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		switch {
		case t.kind == kNum && t.text == "two" && strings.HasSuffix(t.before, "the") && next.as(kPart) != nil && next.as(kPart).key == "post" && next.plural():
			next.at, next.kind = t.at, kPart
			l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
		case t.kind == kOrdinal && next.kind == kNum && next.before == "" && i+2 < len(l.tokens) && l.tokens[i+2].kind == kPart && l.tokens[i+2].plural() && l.tokens[i+2].before == "":
			if !l.firstRails(i) {
				t.kind = kUnclear // "the first two boards"
			}
		case t.kind == kSize && next.is(kPart) && next.key() != "rail" && strings.HasPrefix(next.text, "post") && i+2 < len(l.tokens) && l.tokens[i+2].kind == kSide && l.tokens[i+2].key() == "middle":
			l.tokens[i+2].kind, l.tokens[i+2].found = kLoc, betweenPosts
			next.kind = kPart
		case t.kind == kNum && t.amt.unit == bare && next.is(kPart) && strings.HasPrefix(next.text, "post") && i+2 < len(l.tokens) && l.tokens[i+2].kind == kSide && l.tokens[i+2].key() == "middle":
			l.tokens[i+2].kind, l.tokens[i+2].found = kLoc, betweenPosts // "at most one post in the middle"
			next.kind = kPart
		case t.kind == kSize && next.kind == kSide && next.key() == "middle":
			next.kind, next.found = kLoc, betweenPosts
		}
	}
}

var betweenPosts = nounOf("between")

// facesOfBoards takes a size for the boards of it where they are said to measure something else: "my two by sixes actually
// measure five and three eighths".
func (l *lexing) facesOfBoards() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind != kSize || !railSize(t.amt.size) {
			continue
		}
		j, says := i+1, false
		for j < len(l.tokens) && (l.tokens[j].kind == kMeasured || l.tokens[j].kind == kFix && l.tokens[j].text == "actually") {
			says = says || l.tokens[j].kind == kMeasured
			j++
		}
		if j == len(l.tokens) || l.tokens[j].kind != kNum || !l.tokens[j].amt.frac || l.tokens[j].amt.unit == money || l.tokens[j].amt.money2 {
			continue
		}
		if says || strings.HasSuffix(l.tokens[j].before, "really") || strings.HasSuffix(l.tokens[j].before, "run") {
			t.kind, t.found, t.amt = kPart, railNoun, nil
			says := token{kind: kMeasured, found: []found{{entry: measures}}, text: "measure", at: t.end, end: t.end}
			l.tokens = append(l.tokens[:i+1:i+1], append([]token{says}, l.tokens[j:]...)...)
		}
	}
}

var measures = &entry{kind: kMeasured, key: "measured"}

// notButs drops the "but" after a value that is denied, before the one that is meant: "not 44 inches tall but 41 and a half".
func (l *lexing) notButs() {
	l.comeOut()
	for i := 2; i+1 < len(l.tokens); i++ {
		if l.tokens[i].kind != kBut || l.tokens[i].text != "but" || l.tokens[i+1].kind != kNum {
			continue
		}
		j := i - 1
		if l.tokens[j].kind == kDim {
			j--
		}
		if j > 0 && l.tokens[j].kind == kNum && l.tokens[j-1].kind == kNot && l.tokens[j-1].text == "not" {
			l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
		}
	}
}

// comeOut drops the "out" of "has to come out 34".
func (l *lexing) comeOut() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind == kOut && t.text == "out" && strings.HasSuffix(t.before, "come") && l.valueAt(i+1) {
			l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
		}
	}
}

// takenAway reports whether a count of parts and "away" or "out" stand at token i, after "take". It drops the latter.
func (l *lexing) takenAway(i int) bool {
	if l.tokens[i].kind == kNum && (l.tokens[i].amt.unit != bare || !l.tokens[i].amt.val.IsInt()) {
		return false
	}
	j := i
	if l.tokens[j].kind == kNum {
		j++
	} else if w := lastWord(l.tokens[j].before); w != "a" && w != "one" {
		return false
	}
	if j+1 >= len(l.tokens) || !l.tokens[j].is(kPart) || l.tokens[j].index > 0 || !takenParts[l.tokens[j].as(kPart).key] {
		return false
	}
	if w := l.tokens[j+1].text; w != "away" && w != "out" && w != "off" {
		return false
	}
	if j+2 < len(l.tokens) && l.tokens[j+2].kind != kComma && l.tokens[j+2].kind != kStop && l.tokens[j+2].kind != kQMark && l.tokens[j+2].kind != kAnd {
		return false
	}
	l.tokens[j].kind = kPart
	l.drop(j + 1)
	return true
}

// takenParts are parts of which some can be taken away.
var takenParts = map[string]bool{"rail": true, "stiffener": true, "post": true, "added post": true, "bay": true, "opening": true}

var forgetting = &entry{kind: kCmd, key: "forget"}
