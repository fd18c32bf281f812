package lex

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
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
	if !slices.ContainsFunc(l.tokens, func(t Token) bool { return t.Index > 0 && (t.Key() == "bay" || t.Key() == "per bay") }) {
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
		bay = bay || t.Index > 0 && (t.Key() == "bay" || t.Key() == "per bay")
		spot = spot || t.Index > 0 && t.Key() == "rail" || t.As(lexicon.At) != nil
	}
	return bay && spot
}

// bayNamedBefore reports whether a bay is named before token n.
func (l *lexing) bayNamedBefore(n int) bool {
	return slices.ContainsFunc(l.tokens[:n], func(t Token) bool { return t.Index > 0 && (t.Key() == "bay" || t.Key() == "per bay") })
}

// firstValue is the place of the first value, -1 where there is none.
func (l *lexing) firstValue() int {
	return slices.IndexFunc(l.tokens, func(t Token) bool { return t.Kind == lexicon.Num })
}

// toldInTwo joins a measurement whose place and figure are told one after the other: "my husband just measured the fourth rail in the
// first bay, and he gets 67".
func (l *lexing) toldInTwo() {
	n := l.firstValue()
	if n < 2 || !l.spotBefore(n) && !(l.spotBefore(len(l.tokens)) && l.bayNamedBefore(n)) {
		return
	}
	first := &l.tokens[0]
	tells := first.Kind == lexicon.Measured || first.Kind == lexicon.Head && strings.HasSuffix(first.Text, " measured") || first.Kind == lexicon.Where && first.Text == "where" || hasWord(first.Before, "took") || hasWord(first.Before, "checked")
	if !tells {
		return
	}
	j := n
	for j > 1 && l.retold(&l.tokens[j-1]) {
		j--
	}
	if j == n || !slices.ContainsFunc(l.tokens[j:n], func(t Token) bool { return t.Kind != lexicon.Comma }) {
		return
	}
	switch first.Kind {
	case lexicon.Head, lexicon.Where:
		first.Kind, first.Found = lexicon.Measured, []lexicon.Found{{Entry: measuredEntry}}
	}
	l.tokens[n].Before = ""
	l.tokens = append(l.tokens[:j], l.tokens[n:]...)
}

// retold reports whether a word only leads from where something was measured to what it came to: ", and he gets".
func (l *lexing) retold(t *Token) bool {
	switch t.Kind {
	case lexicon.Comma, lexicon.And, lexicon.It, lexicon.Measured, lexicon.Fill, lexicon.TailFill:
		return true
	case lexicon.Sell, lexicon.Have, lexicon.Head, lexicon.Theirs:
		return EndsIn(t.Text, "gets") || EndsIn(t.Text, "got") || EndsIn(t.Text, "get") || EndsIn(t.Text, "has") || EndsIn(t.Text, "says")
	}
	return false
}

func hasWord(text, word string) bool { return slices.Contains(strings.Fields(text), word) }

// clearOf drops what tells how something was measured, beside a rail or an end of a bay: "post to post", "the clear distance at".
func (l *lexing) clearOf() {
	for i := len(l.tokens) - 1; i >= 0; i-- {
		t := &l.tokens[i]
		if t.Kind != lexicon.Part && t.Kind != lexicon.Loc && t.Kind != lexicon.Dim || t.Index > 0 || len(l.tokens) < 4 {
			continue
		}
		switch {
		case t.Key() == "span", t.Key() == "face to face", t.Key() == "between posts", t.Key() == "gap" && strings.HasPrefix(t.Text, "clear"):
		case t.Kind == lexicon.Dim && t.Key() == "wide" && (t.Text == "wide" || t.Text == "across"):
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
		switch t := &l.tokens[i]; t.Kind {
		case lexicon.Part, lexicon.Loc:
			if k := t.Key(); t.As(lexicon.At) == nil && (t.Index == 0 || k != "bay" && k != "per bay" && k != "rail") && k != "span" && k != "between posts" && !(k == "gap" && strings.HasPrefix(t.Text, "clear")) {
				return false
			}
		case lexicon.Head, lexicon.Cmd, lexicon.Change, lexicon.Size, lexicon.Goal:
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
		if bay.Key() != "bay" || bay.Index == 0 || t.Kind != lexicon.Change && !t.Is(lexicon.Change) || !bends[FirstWord(t.Text)] {
			continue
		}
		j := i + 2
		for j < len(l.tokens) && (l.tokens[j].Kind == lexicon.Up || l.tokens[j].Kind == lexicon.Down || l.tokens[j].Kind == lexicon.Out) {
			j++
		}
		ends := 0
		for k := j; k < len(l.tokens); k++ {
			if l.tokens[k].As(lexicon.At) != nil {
				ends++
			}
		}
		if j < len(l.tokens) && l.tokens[j].Kind == lexicon.Comma && ends == 2 {
			l.tokens = append(l.tokens[:i+1], l.tokens[j+1:]...)
		}
	}
}

// bends are verbs that tell how a bay runs from its bottom to its top.
var bends = scan.WordSet("narrow narrows narrowed narrowing widen widens widened widening taper tapers tapered shrink shrinks shrinking grow grows spread spreads open opens close closes pinch pinches tighten tightens")

// alongFloor takes "along the slab" in a bay for its bottom, where a tape was run.
func (l *lexing) alongFloor() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, floor := &l.tokens[i], &l.tokens[i+1]
		if t.Kind == lexicon.Measured && floor.Kind == lexicon.Part && floor.Key() == "floor" && (EndsIn(t.Text, "along") || EndsIn(t.Text, "across") || EndsIn(t.Text, "on") || EndsIn(t.Text, "the")) {
			*floor = endOf("bottom", *floor)
		}
	}
}

// ends reads "top and bottom" of a bay as the two ends that it was measured at, and "66 low and 66 3/8 high" likewise.
func (l *lexing) ends() {
	for i := 0; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind == lexicon.Loc && (t.Text == "top and bottom" || t.Text == "bottom and top") {
			f := strings.Fields(t.Text)
			a, b := endOf(f[0], *t), endOf(f[2], *t)
			from := i
			if i > 0 && l.tokens[i-1].Kind == lexicon.Same {
				from--
			}
			l.tokens = slices.Concat(l.tokens[:from], []Token{a, b}, l.tokens[i+1:])
			return
		}
	}
	low, high := -1, -1
	for i := 1; i < len(l.tokens); i++ {
		if l.tokens[i-1].Kind != lexicon.Num {
			continue
		}
		switch t := &l.tokens[i]; t.Text {
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
func endOf(at string, t Token) Token {
	t.Kind, t.Found = lexicon.At, []lexicon.Found{{Entry: endEntries[at]}}
	return t
}

var endEntries = map[string]*lexicon.Entry{"top": {Kind: lexicon.At, Key: "top"}, "bottom": {Kind: lexicon.At, Key: "bottom"}}

// promised takes "the client was promised" for the wish that it tells of, and "can we have" before a goal likewise.
func (l *lexing) promised() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind != lexicon.Head {
			continue
		}
		switch {
		case strings.HasSuffix(t.Text, "was promised"), strings.HasSuffix(t.Text, "were promised"), strings.HasSuffix(t.Text, " we have") && l.tokens[i+1].Kind == lexicon.Goal && t.Key() == string(act.WhatIf) && (i == 0 || l.breaks(l.tokens[i-1])):
			l.drop2(i)
			l.tokens[i].Before = ""
		}
	}
}

// wishedUp takes the "mounted" of "I'd like rail 3 mounted with its top at 24" for a part of the wish, and not for what was done.
func (l *lexing) wishedUp() {
	wish := false
	for i := range l.tokens {
		switch t := &l.tokens[i]; {
		case t.Kind == lexicon.Head:
			wish = t.Key() == string(act.State)
		case t.Kind == lexicon.Stop, t.Kind == lexicon.Comma, t.Kind == lexicon.And:
			wish = false
		case t.Kind == lexicon.Fixed && wish && !strings.Contains(t.Text, " "):
			t.Kind, t.Found = lexicon.TailFill, nil
		}
	}
}

// ownNotes drops "reading my notes here": what somebody noted down is no claim of another's.
func (l *lexing) ownNotes() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind != lexicon.Head || t.Key() != string(act.Check) || !strings.HasPrefix(t.Text, "note") && !strings.HasPrefix(t.Text, "sketchbook") && !strings.HasPrefix(t.Text, "list") {
			continue
		}
		f := strings.Fields(t.Before)
		if n := len(f); n > 1 && (f[n-1] == "my" || f[n-1] == "our") && (f[n-2] == "reading" || f[n-2] == "from" || f[n-2] == "off" || f[n-2] == "by" || f[n-2] == "at") {
			l.drop2(i)
		}
	}
}

// oneIsUp drops the count of "one is in place: rail number two": the rail that follows is the one.
func (l *lexing) oneIsUp() {
	for i := 0; i+3 < len(l.tokens); i++ {
		t, up, sep, rail := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2], &l.tokens[i+3]
		if t.Kind == lexicon.Num && t.Text == "one" && up.Kind == lexicon.Fixed && sep.Kind == lexicon.Comma && rail.Key() == "rail" && rail.Index > 0 {
			l.tokens = slices.Concat(l.tokens[:i], []Token{*rail, *up}, l.tokens[i+4:])
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
		case t.Kind == lexicon.Lean && plumbTool(t.Text):
			if side.Kind != lexicon.Side || !strings.Contains(side.Text, "post") {
				l.drop2(i)
				i--
				continue
			}
			l.tokens[i], l.tokens[i+1] = l.tokens[i+1], l.tokens[i]
			i++
		case t.Kind == lexicon.Side && strings.HasSuffix(t.Text, "post") && i+2 < len(l.tokens) && l.tokens[i+2].Kind == lexicon.Num && postRuns[side.Text] && l.countNums() == 2:
			side.Kind, side.Found = lexicon.Lean, []lexicon.Found{{Entry: leansOver}}
		}
	}
}

var (
	leansOver = &lexicon.Entry{Kind: lexicon.Lean, Key: "leans"}
	postRuns  = scan.WordSet("runs goes comes heads drifts wanders falls tips")
)

func plumbTool(text string) bool {
	return strings.Contains(text, "level") || strings.Contains(text, "bob") || strings.Contains(text, "plumb line") || strings.Contains(text, "laser")
}

func (l *lexing) countNums() (n int) {
	for i := range l.tokens {
		if l.tokens[i].Kind == lexicon.Num {
			n++
		}
	}
	return n
}

// baseOfPost drops what only tells that a post stands on its base, and takes "the post base stands two inches tall under the added
// post" for how high that holds it.
func (l *lexing) baseOfPost() {
	at := slices.IndexFunc(l.tokens, func(t Token) bool { return t.Kind == lexicon.Part && t.Key() == "base height" })
	for i := 0; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		if at >= 0 && t.As(lexicon.At) != nil && strings.HasSuffix(t.Text, "base") {
			l.drop2(i)
			i--
		}
	}
	for i := 0; i+2 < len(l.tokens); i++ {
		base := &l.tokens[i]
		if base.Kind != lexicon.Item || base.Key() != "post base" || l.tokens[i+1].Kind != lexicon.Num || at >= 0 {
			continue
		}
		j := i + 2
		if l.tokens[j].Kind == lexicon.Dim {
			j++
		}
		if j+1 < len(l.tokens) && (l.tokens[j].Kind == lexicon.Under || l.tokens[j].Is(lexicon.Under)) && l.tokens[j+1].Kind == lexicon.Part && (l.tokens[j+1].Key() == "added post" || l.tokens[j+1].Key() == "post") {
			base.Kind, base.Found = lexicon.Part, NounOf("base height")
			l.tokens = append(l.tokens[:i+2], l.tokens[j+2:]...)
			return
		}
	}
}

// firstRails takes "the first two rails" for rails 1 and 2 where they are told to be up already, or where their tops are told.
func (l *lexing) firstRails(i int) bool {
	n, rail := &l.tokens[i+1], &l.tokens[i+2]
	count, ok := n.Amt.Val.Int64()
	if l.tokens[i].Index != 1 || !ok || count < 2 || count > 6 || rail.Key() != "rail" || n.Amt.Unit != measure.Bare {
		return false
	}
	if !slices.ContainsFunc(l.tokens[i+3:], func(t Token) bool { return t.Kind == lexicon.Top || t.As(lexicon.Top) != nil }) {
		return false
	}
	rail.At, rail.Before = l.tokens[i].At, l.tokens[i].Before
	rail.number(1, int(count))
	l.tokens = append(l.tokens[:i], l.tokens[i+2:]...)
	return true
}

// number gives a part the numbers from one to another.
func (t *Token) number(from, to int) {
	t.Index, t.Indexes = from, nil
	for n := from; n <= to; n++ {
		t.Indexes = append(t.Indexes, n)
	}
}

// railsThrough reads "rails 1 through 3" where as many figures follow.
func (l *lexing) railsThrough() {
	for i := 0; i+4 < len(l.tokens); i++ {
		t, from, thru, to := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2], &l.tokens[i+3]
		if t.Kind != lexicon.Part || t.Key() != "rail" || !t.Plural() || from.Kind != lexicon.Num || to.Kind != lexicon.Num || thru.Kind != lexicon.To && thru.Kind != lexicon.Dash && thru.Text != "through" && thru.Text != "thru" {
			continue
		}
		a, ok1 := from.Amt.Val.Int64()
		b, ok2 := to.Amt.Val.Int64()
		if !ok1 || !ok2 || from.Amt.Unit != measure.Bare || to.Amt.Unit != measure.Bare || a < 1 || b <= a || b > a+11 {
			continue
		}
		figures := 0
		for _, after := range l.tokens[i+4:] {
			if after.Kind == lexicon.Num {
				figures++
			}
		}
		if figures != int(b-a)+1 {
			continue
		}
		t.number(int(a), int(b))
		t.End = to.End
		l.tokens = append(l.tokens[:i+1], l.tokens[i+4:]...)
	}
}
