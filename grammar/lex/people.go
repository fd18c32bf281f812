package lex

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// callers takes the name of somebody who says something for a "he": "Maria says seven rails fit", "Tom's group got 2-1/4". A
// name is a word of no table, at the beginning of a clause, with a verb of saying behind it.
func callers(in []scan.Atom) []scan.Atom {
	out := in
	for i := 0; i+2 < len(out); i++ {
		if out[i].Kind != scan.Word || i > 0 && out[i-1].Kind != scan.Sign && !chunk.Joints[out[i-1].Text] && out[i-1].Text != "check" && out[i-1].Text != "verify" {
			continue
		}
		next, named := i+1, ForeignWord(out[i].Text)
		if out[next].Text == "'s" && next+2 < len(out) && circles[out[next+1].Text] {
			next, named = next+2, named || Strange(out[i].Text)
		}
		if next == i+1 && out[next].Text == "'s" && workings[out[next+1].Text] && Strange(out[i].Text) {
			one := out[i]
			one.Text, one.End = "his", out[next].End
			out = append(append(append([]scan.Atom{}, out[:i]...), one), out[next+1:]...) // "Jenna's work: seven rails"
			continue
		}
		if !reporters[out[next].Text] || !named || out[i].Text == "what" {
			continue
		}
		if out[next].Text == "got" && next+1 < len(out) && out[next+1].Kind == scan.Word && scan.Ones[out[next+1].Text] == 0 {
			continue // "supper got cold"
		}
		one := out[i]
		one.Text, one.End = "he", out[next-1].End
		out = append(append(append([]scan.Atom{}, out[:i]...), one), out[next:]...)
	}
	return out
}

// Strange reports whether a word is of no table, though it may look like one that is.
func Strange(w string) bool {
	return !lexicon.Vocab().Known[w] && !lexicon.Vocab().Neutral[w] && !Words().Known[w]
}

var (
	reporters = scan.WordSet("says said thinks thought claims claimed reckons reckoned figures figured swears insists wants asks asked got gets found measured taped told tells believes wonders calculated worked")
	workings  = scan.WordSet("work answer answers figures numbers sums sum calculation calculations plan drawing sketch idea guess result results layout design version")
	circles   = scan.WordSet("group team table crew bench partner class side family friend friends guy guys")
)

// MeasuredBy reports whether words of a claim tell what somebody measured: that is no view but a measurement.
func MeasuredBy(head string) bool {
	f := strings.Fields(head)
	switch f[len(f)-1] {
	case "measured", "taped", "remeasured":
		return !OnPaper(head)
	}
	return false
}

// OnPaper reports whether a paper is what says something: "the drawing measured".
func OnPaper(head string) bool {
	id := lexicon.Vocab().Ids["PAPER"]
	for _, w := range strings.Fields(head) {
		for _, c := range lexicon.Vocab().Classes[w] {
			if c == id {
				return true
			}
		}
	}
	return false
}

// WishedFor reports whether the empty words before somebody's thing end in a verb of making or wishing.
func WishedFor(before string) bool {
	f := strings.Fields(before)
	if len(f) == 0 {
		return false
	}
	switch f[len(f)-1] {
	case "make", "set", "put", "leave", "keep", "give", "wants", "want", "needs", "need", "like", "likes", "prefers", "prefer":
		return true
	}
	return false
}

// tapeReads takes "my tape shows 29 for the opening" for a measurement, and no mark on the tape.
func (l *lexing) tapeReads() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, num, next := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if t.Kind == lexicon.Part && t.Key() == "tape" && t.As(lexicon.Head) != nil && num.Kind == lexicon.Num && OneRat.Less(num.Amt.Val) && (next.Kind == lexicon.Part || next.Kind == lexicon.Loc) {
			t.Kind = lexicon.Head
		}
	}
}

// widerThanTheirs asks how wide theirs is: "six inches wider than he has it" bounds nothing by six inches.
func (l *lexing) widerThanTheirs() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t := &l.tokens[i]
		if t.Kind != lexicon.Rel || l.tokens[i-1].Kind != lexicon.Num || !strings.HasSuffix(t.Text, " than") {
			continue
		}
		switch l.tokens[i+1].Kind {
		case lexicon.Head, lexicon.Tail, lexicon.Theirs:
			t.Kind = lexicon.Unclear
		}
	}
}

// enteredHere reports whether a phrase that may claim is an order to take figures down: "record these: …".
func enteredHere(f []lexicon.Found, first, second string) int {
	if first != "record" && first != "note" && first != "list" || second != "these" && second != "those" && second != "this" && second != "the" && second != "down" {
		return 0
	}
	for k := range f {
		if f[k].Entry.Kind == lexicon.Enter {
			return k
		}
	}
	return 0
}

// WordsOf are the words and figures of a clause, without its signs.
func WordsOf(part []scan.Atom) (w []string) {
	for _, a := range part {
		if a.Kind != scan.Sign {
			w = append(w, a.Text)
		}
	}
	return w
}

// Young are those whose age is told.
var Young = scan.WordSet("daughter daughters son sons baby toddler twins kid kids grandson granddaughter grandkid grandkids boy girl boys girls child children niece nephew dog puppy")
