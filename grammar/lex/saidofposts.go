package lex

import (
	"slices"
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// What is told of posts and bays in passing is put where it is read: whose posts, at which ends, on what they stand.

// toldOfPosts puts right what only the words around a token tell of it.
func (l *lexing) toldOfPosts() {
	for i := 0; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		switch {
		case t.Kind == lexicon.At && ownBase(t.Text) && t.As(lexicon.Loc) != nil:
			t.Kind = lexicon.Loc // "3/4 inch above the slab on its base"
		case t.Kind == lexicon.Rest && (t.Text == "everywhere" || t.Text == "elsewhere") && l.sizedPart(i):
			l.drop(i) // "four by four posts everywhere"
		case t.Kind == lexicon.Fixed && i > 0 && i+2 < len(l.tokens) && postNoun(&l.tokens[i-1]) && l.breaks(l.tokens[i+1]) && l.tokens[i+2].Kind == lexicon.Size:
			l.tokens = slices.Delete(l.tokens, i, i+2) // "the end posts are already in, 6x6"
		case t.Kind == lexicon.Side && strings.HasPrefix(t.Text, "center") && i > 0 && l.tokens[i-1].Key() == "end post" && i+2 < len(l.tokens) && l.tokens[i+2].Key() == "apart":
			t.Kind, t.Found = lexicon.Dim, onCenter // "the end posts are centered 148 inches apart"
		case t.Kind == lexicon.And && l.theyAre(i+1) && i > 0 && l.tokens[i-1].Kind == lexicon.Part:
			t.Kind = lexicon.Comma // "the end posts are there already and they're 4x6"
		case t.Kind == lexicon.Have && l.boughtPosts(i):
			l.tokens[i+1].Kind = lexicon.Part
			l.drop(i + 2)
			l.drop(i)
		case t.Kind == lexicon.Num && l.oneAtEach(i):
			l.tokens[i+2].Kind, l.tokens[i+2].Found = lexicon.Part, theEnds
			l.tokens = slices.Delete(l.tokens, i+3, i+6)
			l.drop(i) // "I set two six by six posts, one at each end"
		case t.Kind == lexicon.Size && hung(t.Before) && RailSize(t.Amt.Size) && i > 0 && l.breaks(l.tokens[i-1]) && (i+1 == len(l.tokens) || l.breaks(l.tokens[i+1])):
			rails := Token{Kind: lexicon.Part, Found: RailNoun, Text: "rails", At: t.At, End: t.End, first: t.first}
			l.tokens = slices.Insert(l.tokens, i+1, rails) // "… and hanging two by sixes"
		case t.Kind == lexicon.Goal && strings.HasPrefix(t.Text, "each") && t.Key() == "equal bays" && !l.bayBefore(i):
			t.Kind, t.Found = lexicon.Unknown, nil // each of what
		}
	}
}

// onCenter is what is told from center to center.
var onCenter = func() []lexicon.Found {
	for i := range lexicon.Parts {
		if lexicon.Parts[i].Kind == lexicon.Dim && lexicon.Parts[i].Key == "oc" {
			return []lexicon.Found{{Entry: &lexicon.Parts[i]}}
		}
	}
	panic("grammar: nothing is on center")
}()

// postNoun reports whether a token names posts.
func postNoun(t *Token) bool {
	e := t.As(lexicon.Part)
	return e != nil && (e.Key == "post" || e.Key == "added post" || e.Key == "end post")
}

// sizedPart reports whether a size and posts stand before token i, in either order.
func (l *lexing) sizedPart(i int) bool {
	if i < 2 {
		return false
	}
	a, b := &l.tokens[i-2], &l.tokens[i-1]
	return a.Kind == lexicon.Size && postNoun(b) || postNoun(a) && b.Kind == lexicon.Size
}

// ownBase reports whether words tell of the base that a post stands on: "on its base".
func ownBase(text string) bool {
	return (strings.HasSuffix(text, " base") || strings.HasSuffix(text, " bases")) && (strings.Contains(text, " its ") || strings.Contains(text, " their "))
}

// theyAre reports whether a size stands at token i that what was named before is said to be: "they're six by sixes".
func (l *lexing) theyAre(i int) bool {
	if i >= len(l.tokens) || l.tokens[i].Kind != lexicon.Size {
		return false
	}
	for _, lead := range []string{"they are", "those are", "these are", "which are", "they were", "they will be", "both are", "all are"} {
		if strings.HasPrefix(l.tokens[i].Before, lead) {
			return true
		}
	}
	return false
}

// boughtPosts reports whether token i tells that somebody has the posts whose size is told next: "we bought the posts, they're 6x6s".
func (l *lexing) boughtPosts(i int) bool {
	if i+3 >= len(l.tokens) || l.tokens[i+2].Kind != lexicon.Comma && l.tokens[i+2].Kind != lexicon.And || !l.theyAre(i+3) {
		return false
	}
	return postNoun(&l.tokens[i+1])
}

// oneAtEach reports whether two posts of a size stand at token i, one at each end.
func (l *lexing) oneAtEach(i int) bool {
	if i+5 >= len(l.tokens) || l.tokens[i].Text != "two" && l.tokens[i].Text != "2" || l.tokens[i+1].Kind != lexicon.Size || l.tokens[i+3].Kind != lexicon.Comma {
		return false
	}
	post, one, ends := &l.tokens[i+2], &l.tokens[i+4], &l.tokens[i+5]
	return post.As(lexicon.Part) != nil && post.As(lexicon.Part).Key == "post" && (one.Text == "one" || one.Text == "1") && ends.Key() == "each end"
}

// hung reports whether the empty words before a size tell of hanging it between the posts, as is done with rails alone.
func hung(before string) bool {
	switch LastWord(before) {
	case "hang", "hanging", "hung", "hangs":
		return true
	}
	return false
}

// bayBefore reports whether bays were spoken of before token i in its sentence.
func (l *lexing) bayBefore(i int) bool {
	for i--; i >= 0 && l.tokens[i].Kind != lexicon.Stop && l.tokens[i].Kind != lexicon.QMark; i-- {
		if l.tokens[i].Key() == "bay" {
			return true
		}
	}
	return false
}

// wantsNone steps over who does not want something: "the boss doesn't want more than three bays" is said as "we don't want …".
func (l *lexing) wantsNone(i int) int {
	if !chunk.IsPerson(l.Word(i)) || lexicon.Vocab().Neutral[l.Word(i)] || l.Kind(i) != scan.Word {
		return i
	}
	switch l.Word(i + 1) {
	case "does", "do", "did", "will", "would", "can", "could":
	default:
		return i
	}
	if l.Word(i+2) != "not" || !denyVerbs[l.Word(i+3)] && !Compares[l.Word(i+3)] {
		return i
	}
	l.empty(l.Word(i))
	return i + 1
}

// denyVerbs are what somebody does not do who sets a limit.
var denyVerbs = scan.WordSet("want like need allow accept permit let stand tolerate take have care approve")

// doesIt reports whether "do it" asks whether something suffices: "would two posts in between do it".
func (l *lexing) doesIt(i, next int) bool {
	if l.Text(i, next) != "do it" {
		return false
	}
	for i--; i >= 0 && l.Kind(i) != scan.Sign; i-- {
		switch l.Word(i) {
		case "would", "could", "will", "might", "does":
			return true
		}
	}
	return false
}

// countForgotten takes "forget the number of bays" apart: it is the number that is to go, and not how wide they are.
func (l *lexing) countForgotten(i int, f []lexicon.Found) []lexicon.Found {
	for j := i + 1; j < f[0].Next; j++ {
		switch l.Word(j) {
		case "number", "count", "quantity":
			if k := f[0].Next; l.Word(k) == "of" || l.Word(k-1) == "of" {
				return lexicon.Vocab().Match(l.Atoms[:j], i)
			}
		}
	}
	return f
}

// markedPost takes "he marked the first new post at 66 from the left" apart, so that the post is spoken of.
func (l *lexing) markedPost(i int, f []lexicon.Found) []lexicon.Found {
	post := 0
	for j := i; j < f[0].Next; j++ {
		if id := lexicon.Vocab().Ids["POST"]; slices.Contains(lexicon.Vocab().Classes[l.Word(j)], id) {
			post = j
		}
	}
	if post == 0 || l.Word(f[0].Next-1) != "at" {
		return f
	}
	for j := f[0].Next; j < f[0].Next+8; j++ {
		if l.Word(j) == "from" {
			for k := i + 1; k < post; k++ {
				if strings.HasPrefix(l.Word(k), "mark") || strings.HasPrefix(l.Word(k), "drill") {
					return lexicon.Vocab().Match(l.Atoms[:k+1], i)
				}
			}
		}
	}
	return f
}
