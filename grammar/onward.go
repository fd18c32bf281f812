package grammar

import "strings"

// onward sets right what words mean by the part that they are said of.
func (l *lexing) onward() {
	for i := range l.tokens {
		if t := &l.tokens[i]; t.kind == kQuest && t.key() == "cuts" && t.as(kGoal) != nil && cutWord(firstWord(t.text)) && (strings.Contains(t.text, " one ") || strings.Contains(t.text, " same ")) {
			t.kind = kGoal // "cut all of one length"
		}
	}
	l.orderedBesides()
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		switch {
		case t.kind == kNot && next.kind == kPriceVerb && strings.HasPrefix(next.text, "pay") && i+2 < len(l.tokens) && (l.tokens[i+2].kind == kOver || l.tokens[i+2].kind == kMore || l.tokens[i+2].kind == kRel):
			next.kind, next.found = kPart, []found{{entry: spending}} // "I won't pay over 500 for materials"
		case t.kind == kNum && next.kind == kSide && next.text == "right" && next.before == "" && (i+2 == len(l.tokens) || l.tokens[i+2].kind == kStop) && l.asksOf(i):
			l.tokens = append(l.tokens[:i+1], l.tokens[i+2:]...) // "is his total of 390 right"
		case t.kind == kGoal && next.kind == kBestTail && next.as(kBest) == nil, // "make it the cheapest you can"
			t.kind == kNot && next.kind == kOnly && t.text != "not" && denials[t.text],                                                                       // "instead of just the one"
			t.kind == kNum && next.kind == kRel && (next.text == "down for" || next.text == "down as") && i+2 < len(l.tokens) && l.tokens[i+2].kind == kPart: // "he put 2-3/4 down for the gap"
			l.tokens = append(l.tokens[:i+1], l.tokens[i+2:]...)
		case t.kind == kMore && (t.text == "additional" || t.text == "extra") && (t.before == "an" || strings.HasSuffix(t.before, " an")) && next.kind == kPart && !next.plural():
			t.kind, t.found = kAnother, []found{{entry: oneMore}}
		case t.kind == kPriceVerb && (t.text == "is now" || t.text == "are now") && next.kind == kNum && i > 0 && l.tokens[i-1].kind == kPart && !goodsKeys[l.tokens[i-1].key()]:
			t.kind = kTailFill // "the budget is now 480"
		case t.kind == kNum && next.kind == kPart && next.key() == "drop" && strings.HasSuffix(next.text, "wall") && l.postBefore(i):
			l.pastWall(i + 1)
		case t.kind == kPart && next.kind == kRel && next.text == "up to" && (lifts[firstWord(t.before)] || i > 0 && lifts[l.tokens[i-1].text]):
			next.kind, next.found = kTo, nil // "get the wall up to 46"
		case t.kind == kFactor && next.kind == kPart && next.key() == "bottom gap" && !strings.HasPrefix(next.text, "bottom") && keeps[firstWord(t.before)]:
			t.kind = kUnclear // "leave twice the gap under the bottom board": of which gap?
		case t.kind == kPart && t.key() == "wall" && (next.kind == kChange || next.kind == kMore) && i+2 < len(l.tokens) && l.tokens[i+2].kind == kNum && signs[next.text] != nil && l.postBefore(i):
			l.overWall(i, signs[next.text]) // "post height wall plus 3"
		case next.kind == kComma && i+2 < len(l.tokens) && l.tokens[i+2].kind == kBound && l.tokens[i+2].text == "tops" && i+3 == len(l.tokens) && t.kind == kPart && i > 0 && l.tokens[i-1].kind == kNum:
			l.tokens = append(l.tokens[:i+1], l.tokens[i+2:]...) // "two inch gaps, tops"
		}
	}
}

var oneMore = &entry{kind: kAnother, key: "+="}

// goodsKeys are parts that have a price.
var goodsKeys = map[string]bool{"rail": true, "bracket": true, "size": true, "post": true, "anchor size": true, "screw length": true, "cap": true, "stiffener": true}

// lifts are verbs that bring something to a value; keeps are verbs that leave it as it is said.
var (
	lifts = map[string]bool{"get": true, "bring": true, "take": true, "carry": true, "build": true, "run": true}
	keeps = map[string]bool{"leave": true, "keep": true, "have": true, "want": true, "put": true, "set": true}
)

// firstWord is the first word of a text.
func firstWord(s string) string {
	w, _, _ := strings.Cut(s, " ")
	return w
}

// postBefore reports whether a post is named before token i in its part of the line.
func (l *lexing) postBefore(i int) bool {
	for i--; i >= 0 && l.tokens[i].kind != kStop && l.tokens[i].kind != kComma; i-- {
		if e := l.tokens[i].as(kPart); e != nil && (e.key == "post" || e.key == "added post" || e.key == "post height") {
			return true
		}
	}
	return false
}

// orderedBesides takes pieces of a size that are put on the order for extra ones: "add two 2x4s 30 inches long to the order".
func (l *lexing) orderedBesides() {
	size, long, n := false, false, len(l.tokens)
	if n < 4 || l.tokens[n-1].kind != kTailFill || l.tokens[n-1].key() != "to order" {
		return
	}
	first := &l.tokens[0]
	for i := range l.tokens {
		t := &l.tokens[i]
		size = size || t.kind == kSize
		long = long || t.kind == kNum && (t.amt.unit == inches || t.amt.unit == metric || t.amt.frac)
	}
	if !size || !long || first.kind != kChange || first.text != "add" {
		return
	}
	first.kind, first.found = kExtra, []found{{entry: extraPieces}}
	l.tokens = l.tokens[:n-1]
}

var extraPieces = &entry{kind: kExtra, key: "extra"}

// signs are the words of a sum that stand for what lies above and below.
var signs = map[string]*entry{"+": over, "plus": over, "-": under, "minus": under, "less": under}

// overWall reads the sum of the wall at token i and a length as that much over it or under it.
func (l *lexing) overWall(i int, way *entry) {
	wall, num := l.tokens[i], l.tokens[i+2]
	l.tokens[i], l.tokens[i+2] = num, wall
	t := &l.tokens[i+1]
	t.found = []found{{entry: way}}
	if t.kind, t.text = kOver, "over"; way == under {
		t.kind, t.text = kUnder, "under"
	}
	for j := range l.tokens[:i] {
		if p := &l.tokens[j]; p.kind == kQuest && p.as(kPart) != nil {
			p.kind = kPart
		}
	}
}

// pastWall takes "past the wall" at token i for what lies above it: "the posts stick up three inches past the wall".
func (l *lexing) pastWall(i int) {
	way := l.tokens[i]
	way.kind, way.found, way.text = kOver, []found{{entry: over}}, "past"
	t := &l.tokens[i]
	t.found, t.text, t.before = wallNoun, "wall", "the"
	l.tokens = append(l.tokens[:i], append([]token{way}, l.tokens[i:]...)...)
	for j := range l.tokens[:i] {
		if p := &l.tokens[j]; p.kind == kQuest && p.as(kPart) != nil {
			p.kind = kPart
		}
	}
}

// spending is what is paid for the material.
var spending = &entry{kind: kPart, key: "budget", sense: meaning("budget")}

// asksOf reports whether a claim that ends at token i is asked about: "is his total of …".
func (l *lexing) asksOf(i int) bool {
	for ; i >= 0 && l.tokens[i].kind != kStop; i-- {
		if t := &l.tokens[i]; t.kind == kHead && t.key() == string(Check) {
			return firstWord(t.text) == "is" || firstWord(t.text) == "are"
		}
	}
	return false
}
