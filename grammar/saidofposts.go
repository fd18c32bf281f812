package grammar

import (
	"slices"
	"strings"
)

// What is told of posts and bays in passing is put where it is read: whose posts, at which ends, on what they stand.

// toldOfPosts puts right what only the words around a token tell of it.
func (l *lexing) toldOfPosts() {
	for i := 0; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		switch {
		case t.kind == kAt && ownBase(t.text) && t.as(kLoc) != nil:
			t.kind = kLoc // "3/4 inch above the slab on its base"
		case t.kind == kRest && (t.text == "everywhere" || t.text == "elsewhere") && l.sizedPart(i):
			l.drop(i) // "four by four posts everywhere"
		case t.kind == kFixed && i > 0 && i+2 < len(l.tokens) && postNoun(&l.tokens[i-1]) && l.breaks(l.tokens[i+1]) && l.tokens[i+2].kind == kSize:
			l.tokens = slices.Delete(l.tokens, i, i+2) // "the end posts are already in, 6x6"
		case t.kind == kSide && strings.HasPrefix(t.text, "center") && i > 0 && l.tokens[i-1].key() == "end post" && i+2 < len(l.tokens) && l.tokens[i+2].key() == "apart":
			t.kind, t.found = kDim, onCenter // "the end posts are centered 148 inches apart"
		case t.kind == kAnd && l.theyAre(i+1) && i > 0 && l.tokens[i-1].kind == kPart:
			t.kind = kComma // "the end posts are there already and they're 4x6"
		case t.kind == kHave && l.boughtPosts(i):
			l.tokens[i+1].kind = kPart
			l.drop(i + 2)
			l.drop(i)
		case t.kind == kNum && l.oneAtEach(i):
			l.tokens[i+2].kind, l.tokens[i+2].found = kPart, theEnds
			l.tokens = slices.Delete(l.tokens, i+3, i+6)
			l.drop(i) // "I set two six by six posts, one at each end"
		case t.kind == kSize && hung(t.before) && railSize(t.amt.size) && i > 0 && l.breaks(l.tokens[i-1]) && (i+1 == len(l.tokens) || l.breaks(l.tokens[i+1])):
			rails := token{kind: kPart, found: railNoun, text: "rails", at: t.at, end: t.end, first: t.first}
			l.tokens = slices.Insert(l.tokens, i+1, rails) // "… and hanging two by sixes"
		case t.kind == kGoal && strings.HasPrefix(t.text, "each") && t.key() == "equal bays" && !l.bayBefore(i):
			t.kind, t.found = kUnknown, nil // each of what
		}
	}
}

// onCenter is what is told from center to center.
var onCenter = func() []found {
	for i := range parts {
		if parts[i].kind == kDim && parts[i].key == "oc" {
			return []found{{entry: &parts[i]}}
		}
	}
	panic("grammar: nothing is on center")
}()

// postNoun reports whether a token names posts.
func postNoun(t *token) bool {
	e := t.as(kPart)
	return e != nil && (e.key == "post" || e.key == "added post" || e.key == "end post")
}

// sizedPart reports whether a size and posts stand before token i, in either order.
func (l *lexing) sizedPart(i int) bool {
	if i < 2 {
		return false
	}
	a, b := &l.tokens[i-2], &l.tokens[i-1]
	return a.kind == kSize && postNoun(b) || postNoun(a) && b.kind == kSize
}

// ownBase reports whether words tell of the base that a post stands on: "on its base".
func ownBase(text string) bool {
	return (strings.HasSuffix(text, " base") || strings.HasSuffix(text, " bases")) && (strings.Contains(text, " its ") || strings.Contains(text, " their "))
}

// theyAre reports whether a size stands at token i that what was named before is said to be: "they're six by sixes".
func (l *lexing) theyAre(i int) bool {
	if i >= len(l.tokens) || l.tokens[i].kind != kSize {
		return false
	}
	for _, lead := range []string{"they are", "those are", "these are", "which are", "they were", "they will be", "both are", "all are"} {
		if strings.HasPrefix(l.tokens[i].before, lead) {
			return true
		}
	}
	return false
}

// boughtPosts reports whether token i tells that somebody has the posts whose size is told next: "we bought the posts, they're 6x6s".
func (l *lexing) boughtPosts(i int) bool {
	if i+3 >= len(l.tokens) || l.tokens[i+2].kind != kComma && l.tokens[i+2].kind != kAnd || !l.theyAre(i+3) {
		return false
	}
	return postNoun(&l.tokens[i+1])
}

// oneAtEach reports whether two posts of a size stand at token i, one at each end.
func (l *lexing) oneAtEach(i int) bool {
	if i+5 >= len(l.tokens) || l.tokens[i].text != "two" && l.tokens[i].text != "2" || l.tokens[i+1].kind != kSize || l.tokens[i+3].kind != kComma {
		return false
	}
	post, one, ends := &l.tokens[i+2], &l.tokens[i+4], &l.tokens[i+5]
	return post.as(kPart) != nil && post.as(kPart).key == "post" && (one.text == "one" || one.text == "1") && ends.key() == "each end"
}

// hung reports whether the empty words before a size tell of hanging it between the posts, as is done with rails alone.
func hung(before string) bool {
	switch lastWord(before) {
	case "hang", "hanging", "hung", "hangs":
		return true
	}
	return false
}

// bayBefore reports whether bays were spoken of before token i in its sentence.
func (l *lexing) bayBefore(i int) bool {
	for i--; i >= 0 && l.tokens[i].kind != kStop && l.tokens[i].kind != kQMark; i-- {
		if l.tokens[i].key() == "bay" {
			return true
		}
	}
	return false
}

// wantsNone steps over who does not want something: "the boss doesn't want more than three bays" is said as "we don't want …".
func (l *lexing) wantsNone(i int) int {
	if !isPerson(l.word(i)) || vocab().neutral[l.word(i)] || l.kind(i) != aWord {
		return i
	}
	switch l.word(i + 1) {
	case "does", "do", "did", "will", "would", "can", "could":
	default:
		return i
	}
	if l.word(i+2) != "not" || !denyVerbs[l.word(i+3)] && !compares[l.word(i+3)] {
		return i
	}
	l.empty(l.word(i))
	return i + 1
}

// denyVerbs are what somebody does not do who sets a limit.
var denyVerbs = wordSet("want like need allow accept permit let stand tolerate take have care approve")

// doesIt reports whether "do it" asks whether something suffices: "would two posts in between do it".
func (l *lexing) doesIt(i, next int) bool {
	if l.text(i, next) != "do it" {
		return false
	}
	for i--; i >= 0 && l.kind(i) != aSign; i-- {
		switch l.word(i) {
		case "would", "could", "will", "might", "does":
			return true
		}
	}
	return false
}

// countForgotten takes "forget the number of bays" apart: it is the number that is to go, and not how wide they are.
func (l *lexing) countForgotten(i int, f []found) []found {
	for j := i + 1; j < f[0].next; j++ {
		switch l.word(j) {
		case "number", "count", "quantity":
			if k := f[0].next; l.word(k) == "of" || l.word(k-1) == "of" {
				return vocab().match(l.atoms[:j], i)
			}
		}
	}
	return f
}

// markedPost takes "he marked the first new post at 66 from the left" apart, so that the post is spoken of.
func (l *lexing) markedPost(i int, f []found) []found {
	post := 0
	for j := i; j < f[0].next; j++ {
		if id := vocab().ids["POST"]; slices.Contains(vocab().classes[l.word(j)], id) {
			post = j
		}
	}
	if post == 0 || l.word(f[0].next-1) != "at" {
		return f
	}
	for j := f[0].next; j < f[0].next+8; j++ {
		if l.word(j) == "from" {
			for k := i + 1; k < post; k++ {
				if strings.HasPrefix(l.word(k), "mark") || strings.HasPrefix(l.word(k), "drill") {
					return vocab().match(l.atoms[:k+1], i)
				}
			}
		}
	}
	return f
}

// whatIfLast tries what stands before a "what if" at the end of a sentence: "could we get by with 4x4 posts, what if".
func (g *grouping) whatIfLast() {
	n := len(g.s.groups)
	if n-g.first < 2 || g.s.groups[n-1].force != WhatIf || len(strip(g.s.groups[n-1].items)) > 0 {
		return
	}
	p := &g.s.groups[n-2]
	if p.cmd == "" && (p.force == WhatIf || p.force == State && !p.sealed) && hasValue(p.items) {
		p.force = WhatIf
		g.s.groups = g.s.groups[:n-1]
	}
}
