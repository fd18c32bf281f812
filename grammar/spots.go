package grammar

import (
	"slices"
	"strings"
)

// Where something was measured, and what came of it, are told in many orders: "I measured the bottom of bay 2, and it was 63",
// "where rail five goes in bay one it's 66 post to post". The steps here set them in the order that a measurement is read in.

// spots takes those steps, once the parts of a line have their numbers.
func (l *lexing) spots() {
	l.askedIn()
	l.promised()
	l.wishedUp()
	l.ownNotes()
	l.oneIsUp()
	l.instruments()
	l.baseOfPost()
	if !slices.ContainsFunc(l.tokens, func(t token) bool { return t.index > 0 && (t.key() == "bay" || t.key() == "per bay") }) {
		return
	}
	l.ends()
	l.alongFloor()
	l.narrowing()
	l.clearOf()
	l.toldInTwo()
}

// spotBefore reports whether a rail of a bay, or its top or bottom, is named before token n with nothing measured there yet.
func (l *lexing) spotBefore(n int) bool {
	bay, spot := false, false
	for i := range l.tokens[:n] {
		t := &l.tokens[i]
		bay = bay || t.index > 0 && (t.key() == "bay" || t.key() == "per bay")
		spot = spot || t.index > 0 && t.key() == "rail" || t.as(kAt) != nil
	}
	return bay && spot
}

// bayNamedBefore reports whether a bay is named before token n.
func (l *lexing) bayNamedBefore(n int) bool {
	return slices.ContainsFunc(l.tokens[:n], func(t token) bool { return t.index > 0 && (t.key() == "bay" || t.key() == "per bay") })
}

// firstValue is the place of the first value, -1 where there is none.
func (l *lexing) firstValue() int {
	return slices.IndexFunc(l.tokens, func(t token) bool { return t.kind == kNum })
}

// toldInTwo joins a measurement whose place and figure are told one after the other: "my husband just measured the fourth rail in the
// first bay, and he gets 67".
func (l *lexing) toldInTwo() {
	n := l.firstValue()
	if n < 2 || !l.spotBefore(n) && !(l.spotBefore(len(l.tokens)) && l.bayNamedBefore(n)) {
		return
	}
	first := &l.tokens[0]
	tells := first.kind == kMeasured || first.kind == kHead && strings.HasSuffix(first.text, " measured") || first.kind == kWhere && first.text == "where" || hasWord(first.before, "took") || hasWord(first.before, "checked")
	if !tells {
		return
	}
	j := n
	for j > 1 && l.retold(&l.tokens[j-1]) {
		j--
	}
	if j == n || !slices.ContainsFunc(l.tokens[j:n], func(t token) bool { return t.kind != kComma }) {
		return
	}
	switch first.kind {
	case kHead, kWhere:
		first.kind, first.found = kMeasured, []found{{entry: measuredEntry}}
	}
	l.tokens[n].before = ""
	l.tokens = append(l.tokens[:j], l.tokens[n:]...)
}

// retold reports whether a word only leads from where something was measured to what it came to: ", and he gets".
func (l *lexing) retold(t *token) bool {
	switch t.kind {
	case kComma, kAnd, kIt, kMeasured, kFill, kTailFill:
		return true
	case kSell, kHave, kHead, kTheirs:
		return endsIn(t.text, "gets") || endsIn(t.text, "got") || endsIn(t.text, "get") || endsIn(t.text, "has") || endsIn(t.text, "says")
	}
	return false
}

func hasWord(text, word string) bool { return slices.Contains(strings.Fields(text), word) }

// clearOf drops what tells how something was measured, beside a rail or an end of a bay: "post to post", "the clear distance at".
func (l *lexing) clearOf() {
	for i := len(l.tokens) - 1; i >= 0; i-- {
		t := &l.tokens[i]
		if t.kind != kPart && t.kind != kLoc && t.kind != kDim || t.index > 0 || len(l.tokens) < 4 {
			continue
		}
		switch {
		case t.key() == "span", t.key() == "face to face", t.key() == "between posts", t.key() == "gap" && strings.HasPrefix(t.text, "clear"):
		case t.kind == kDim && t.key() == "wide" && (t.text == "wide" || t.text == "across"):
		default:
			continue
		}
		n := l.firstValue()
		if n >= 0 && l.spotBefore(len(l.tokens)) && l.onlySpots() {
			l.drop2(i)
		}
	}
}

// onlySpots reports whether nothing is named but bays, rails and their ends.
func (l *lexing) onlySpots() bool {
	for i := range l.tokens {
		switch t := &l.tokens[i]; t.kind {
		case kPart, kLoc:
			if k := t.key(); t.as(kAt) == nil && (t.index == 0 || k != "bay" && k != "per bay" && k != "rail") && k != "span" && k != "between posts" && !(k == "gap" && strings.HasPrefix(t.text, "clear")) {
				return false
			}
		case kHead, kCmd, kChange, kSize, kGoal:
			return false
		}
	}
	return true
}

// drop2 drops a token and the empty words before it.
func (l *lexing) drop2(i int) { l.tokens = append(l.tokens[:i], l.tokens[i+1:]...) }

// narrowing drops what two measurements come to: "the first bay narrows going up: it's 67 at the bottom and 66 at the top".
func (l *lexing) narrowing() {
	for i := 0; i+3 < len(l.tokens); i++ {
		bay, t := &l.tokens[i], &l.tokens[i+1]
		if bay.key() != "bay" || bay.index == 0 || t.kind != kChange && !t.is(kChange) || !bends[firstWord(t.text)] {
			continue
		}
		j := i + 2
		for j < len(l.tokens) && (l.tokens[j].kind == kUp || l.tokens[j].kind == kDown || l.tokens[j].kind == kOut) {
			j++
		}
		ends := 0
		for k := j; k < len(l.tokens); k++ {
			if l.tokens[k].as(kAt) != nil {
				ends++
			}
		}
		if j < len(l.tokens) && l.tokens[j].kind == kComma && ends == 2 {
			l.tokens = append(l.tokens[:i+1], l.tokens[j+1:]...)
		}
	}
}

// bends are verbs that tell how a bay runs from its bottom to its top.
var bends = wordSet("narrow narrows narrowed narrowing widen widens widened widening taper tapers tapered shrink shrinks shrinking grow grows spread spreads open opens close closes pinch pinches tighten tightens")

// alongFloor takes "along the slab" in a bay for its bottom, where a tape was run.
func (l *lexing) alongFloor() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, floor := &l.tokens[i], &l.tokens[i+1]
		if t.kind == kMeasured && floor.kind == kPart && floor.key() == "floor" && (endsIn(t.text, "along") || endsIn(t.text, "across") || endsIn(t.text, "on") || endsIn(t.text, "the")) {
			*floor = endOf("bottom", *floor)
		}
	}
}

// ends reads "top and bottom" of a bay as the two ends that it was measured at, and "66 low and 66 3/8 high" likewise.
func (l *lexing) ends() {
	for i := 0; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind == kLoc && (t.text == "top and bottom" || t.text == "bottom and top") {
			f := strings.Fields(t.text)
			a, b := endOf(f[0], *t), endOf(f[2], *t)
			from := i
			if i > 0 && l.tokens[i-1].kind == kSame {
				from--
			}
			l.tokens = slices.Concat(l.tokens[:from], []token{a, b}, l.tokens[i+1:])
			return
		}
	}
	low, high := -1, -1
	for i := 1; i < len(l.tokens); i++ {
		if l.tokens[i-1].kind != kNum {
			continue
		}
		switch t := &l.tokens[i]; t.text {
		case "low":
			low = i
		case "high":
			high = i
		}
	}
	if low > 0 && high > 0 {
		l.tokens[low], l.tokens[high] = endOf("bottom", l.tokens[low]), endOf("top", l.tokens[high])
	}
}

// endOf is the token of an end of a bay in the place of another.
func endOf(at string, t token) token {
	t.kind, t.found = kAt, []found{{entry: endEntries[at]}}
	return t
}

var endEntries = map[string]*entry{"top": {kind: kAt, key: "top"}, "bottom": {kind: kAt, key: "bottom"}}

// promised takes "the client was promised" for the wish that it tells of, and "can we have" before a goal likewise.
func (l *lexing) promised() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind != kHead {
			continue
		}
		switch {
		case strings.HasSuffix(t.text, "was promised"), strings.HasSuffix(t.text, "were promised"), strings.HasSuffix(t.text, " we have") && l.tokens[i+1].kind == kGoal && t.key() == string(WhatIf) && (i == 0 || l.breaks(l.tokens[i-1])):
			l.drop2(i)
			l.tokens[i].before = ""
		}
	}
}

// wishedUp takes the "mounted" of "I'd like rail 3 mounted with its top at 24" for a part of the wish, and not for what was done.
func (l *lexing) wishedUp() {
	wish := false
	for i := range l.tokens {
		switch t := &l.tokens[i]; {
		case t.kind == kHead:
			wish = t.key() == string(State)
		case t.kind == kStop, t.kind == kComma, t.kind == kAnd:
			wish = false
		case t.kind == kFixed && wish && !strings.Contains(t.text, " "):
			t.kind, t.found = kTailFill, nil
		}
	}
}

// ownNotes drops "reading my notes here": what somebody noted down is no claim of another's.
func (l *lexing) ownNotes() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.kind != kHead || t.key() != string(Check) || !strings.HasPrefix(t.text, "note") && !strings.HasPrefix(t.text, "sketchbook") && !strings.HasPrefix(t.text, "list") {
			continue
		}
		f := strings.Fields(t.before)
		if n := len(f); n > 1 && (f[n-1] == "my" || f[n-1] == "our") && (f[n-2] == "reading" || f[n-2] == "from" || f[n-2] == "off" || f[n-2] == "by" || f[n-2] == "at") {
			l.drop2(i)
		}
	}
}

// oneIsUp drops the count of "one is in place: rail number two": the rail that follows is the one.
func (l *lexing) oneIsUp() {
	for i := 0; i+3 < len(l.tokens); i++ {
		t, up, sep, rail := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2], &l.tokens[i+3]
		if t.kind == kNum && t.text == "one" && up.kind == kFixed && sep.kind == kComma && rail.key() == "rail" && rail.index > 0 {
			l.tokens = slices.Concat(l.tokens[:i], []token{*rail, *up}, l.tokens[i+4:])
			return
		}
	}
}

// instruments sets the post before what a level or a plumb bob says of it: "plumb bob on the right post says …". What a level on
// anything else says is no lean. A post that runs so far to a side in so much height leans.
func (l *lexing) instruments() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, side := &l.tokens[i], &l.tokens[i+1]
		switch {
		case t.kind == kLean && plumbTool(t.text):
			if side.kind != kSide || !strings.Contains(side.text, "post") {
				l.drop2(i)
				i--
				continue
			}
			l.tokens[i], l.tokens[i+1] = l.tokens[i+1], l.tokens[i]
			i++
		case t.kind == kSide && strings.HasSuffix(t.text, "post") && i+2 < len(l.tokens) && l.tokens[i+2].kind == kNum && postRuns[side.text] && l.countNums() == 2:
			side.kind, side.found = kLean, []found{{entry: leansOver}}
		}
	}
}

var (
	leansOver = &entry{kind: kLean, key: "leans"}
	postRuns  = wordSet("runs goes comes heads drifts wanders falls tips")
)

func plumbTool(text string) bool {
	return strings.Contains(text, "level") || strings.Contains(text, "bob") || strings.Contains(text, "plumb line") || strings.Contains(text, "laser")
}

func (l *lexing) countNums() (n int) {
	for i := range l.tokens {
		if l.tokens[i].kind == kNum {
			n++
		}
	}
	return n
}

// baseOfPost drops what only tells that a post stands on its base, and takes "the post base stands two inches tall under the added
// post" for how high that holds it.
func (l *lexing) baseOfPost() {
	at := slices.IndexFunc(l.tokens, func(t token) bool { return t.kind == kPart && t.key() == "base height" })
	for i := 0; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		if at >= 0 && t.as(kAt) != nil && strings.HasSuffix(t.text, "base") {
			l.drop2(i)
			i--
		}
	}
	for i := 0; i+2 < len(l.tokens); i++ {
		base := &l.tokens[i]
		if base.kind != kItem || base.key() != "post base" || l.tokens[i+1].kind != kNum || at >= 0 {
			continue
		}
		j := i + 2
		if l.tokens[j].kind == kDim {
			j++
		}
		if j+1 < len(l.tokens) && (l.tokens[j].kind == kUnder || l.tokens[j].is(kUnder)) && l.tokens[j+1].kind == kPart && (l.tokens[j+1].key() == "added post" || l.tokens[j+1].key() == "post") {
			base.kind, base.found = kPart, nounOf("base height")
			l.tokens = append(l.tokens[:i+2], l.tokens[j+2:]...)
			return
		}
	}
}

// firstRails takes "the first two rails" for rails 1 and 2 where they are told to be up already, or where their tops are told.
func (l *lexing) firstRails(i int) bool {
	n, rail := &l.tokens[i+1], &l.tokens[i+2]
	count, ok := n.amt.val.Int64()
	if l.tokens[i].index != 1 || !ok || count < 2 || count > 6 || rail.key() != "rail" || n.amt.unit != bare {
		return false
	}
	if !slices.ContainsFunc(l.tokens[i+3:], func(t token) bool { return t.kind == kTop || t.as(kTop) != nil }) {
		return false
	}
	rail.at, rail.before = l.tokens[i].at, l.tokens[i].before
	rail.number(1, int(count))
	l.tokens = append(l.tokens[:i], l.tokens[i+2:]...)
	return true
}

// number gives a part the numbers from one to another.
func (t *token) number(from, to int) {
	t.index, t.indexes = from, nil
	for n := from; n <= to; n++ {
		t.indexes = append(t.indexes, n)
	}
}

// railsThrough reads "rails 1 through 3" where as many figures follow.
func (l *lexing) railsThrough() {
	for i := 0; i+4 < len(l.tokens); i++ {
		t, from, thru, to := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2], &l.tokens[i+3]
		if t.kind != kPart || t.key() != "rail" || !t.plural() || from.kind != kNum || to.kind != kNum || thru.kind != kTo && thru.kind != kDash && thru.text != "through" && thru.text != "thru" {
			continue
		}
		a, ok1 := from.amt.val.Int64()
		b, ok2 := to.amt.val.Int64()
		if !ok1 || !ok2 || from.amt.unit != bare || to.amt.unit != bare || a < 1 || b <= a || b > a+11 {
			continue
		}
		figures := 0
		for _, after := range l.tokens[i+4:] {
			if after.kind == kNum {
				figures++
			}
		}
		if figures != int(b-a)+1 {
			continue
		}
		t.number(int(a), int(b))
		t.end = to.end
		l.tokens = append(l.tokens[:i+1], l.tokens[i+4:]...)
	}
}

// ofBay reports whether a word is one for a bay.
func ofBay(w string) bool { return slices.Contains(vocab().classes[w], vocab().ids["BAY"]) }
