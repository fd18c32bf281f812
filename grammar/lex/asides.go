package lex

import (
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// bidsMind steps over a "mind" that stands by itself: "all rails one length, mind, …". Where something follows that is to be
// minded, it is left as it is. It returns the atom after it, and i where there is none.
func (l *lexing) bidsMind(i int) int {
	if l.Word(i) != "mind" || i > 0 && l.Kind(i-1) != scan.Sign || i == 0 && l.Word(1) != "you" {
		return i
	}
	j := i + 1
	if l.Word(j) == "you" {
		j++
	}
	if w := l.Word(j); l.Word(i+1) == "you" && (w == "keep" || w == "leave" || w == "make" || w == "have" || w == "put" || w == "use" || w == "set" || w == "space") {
		l.empty("mind you")
		return j // "mind you keep the gaps even"
	}
	if j < len(l.Atoms) && l.Kind(j) != scan.Sign {
		return i
	}
	l.empty("mind")
	return j
}

// Checking are verbs of making sure.
var Checking = scan.WordSet("verify check confirm chk validate vet test recheck")

// checksAll reads a wish at the end of a sentence that all that was claimed be checked: "… and a 34 inch walk-through; verify all
// three". It returns the atom after it, and i where something else is to be checked.
func (l *lexing) checksAll(i int) int {
	if !Checking[l.Word(i)] || i > 0 && l.Kind(i-1) != scan.Sign && l.Word(i-1) != "and" && l.Word(i-1) != "please" {
		return i
	}
	j := i + 1
	switch l.Word(j) {
	case "all", "both", "each", "every":
		j++
	default:
		return i
	}
	for w := l.Word(j); l.Kind(j) == scan.Word && (w == "of" || w == "them" || w == "those" || w == "these" || w == "it" || w == "one" || scan.Ones[w] > 0); w = l.Word(j) {
		j++
	}
	end := j
	for w := l.Word(j); w == "please" || w == "for" || w == "me" || w == "us" || w == "thanks"; w = l.Word(j) {
		j++
	}
	if j < len(l.Atoms) && l.Kind(j) != scan.Sign {
		return i
	}
	l.add(lexicon.Tail, i, end).Found = []lexicon.Found{{Entry: checkAll}}
	return end
}

var checkAll = &lexicon.Entry{Kind: lexicon.Tail, Key: "verify"}

// allOfThem drops the number from "all three gaps", which tells of no gap of three.
func (l *lexing) allOfThem() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.Kind == lexicon.Num && t.Amt.Unit == measure.Bare && t.Amt.Val.IsInt() && LastWord(t.Before) == "all" && next.Kind == lexicon.Part && next.Key() == "gap" && next.Plural() && next.Before == "" {
			next.Before = t.Before
			l.drop(i)
		}
	}
}

// readings takes "my tape reads" for a measurement where the value is too large to be the smallest mark of a tape.
func (l *lexing) readings() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.Kind != lexicon.Part || t.Key() != "tape" || next.Kind != lexicon.Num || !readOff[LastWord(t.Text)] {
			continue
		}
		if a := next.Amt; a.Unit == measure.Metric && twoInches.Less(a.Val) || a.Unit != measure.Metric && !a.Val.Less(exact.Int(3)) {
			t.Kind, t.Found = lexicon.Measured, []lexicon.Found{{Entry: measuredEntry}}
		}
	}
}

var (
	readOff       = scan.WordSet("reads read says shows gives measures")
	twoInches     = exact.Int(51) // in millimeters
	measuredEntry = &lexicon.Entry{Kind: lexicon.Measured, Key: "measured"}
)

// gapsEven takes "the gaps even" at the end of its part of the line for the wish that they be.
func (l *lexing) gapsEven() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.Kind != lexicon.Part || t.Key() != "gap" || !t.Plural() || next.Text != "even" && next.Text != "equal" || next.Before != "" && next.Before != "all" || i > 0 && l.tokens[i-1].Kind != lexicon.Comma && l.tokens[i-1].Kind != lexicon.And && l.tokens[i-1].Kind != lexicon.Stop {
			continue
		}
		if i+2 < len(l.tokens) && l.tokens[i+2].Kind != lexicon.Comma && l.tokens[i+2].Kind != lexicon.Stop && l.tokens[i+2].Kind != lexicon.And {
			continue
		}
		if w := FirstWord(t.Before); w == "are" || w == "is" {
			continue // "are the gaps even"
		}
		t.Kind, t.Found, t.End = lexicon.Goal, []lexicon.Found{{Entry: evenGaps}}, next.End
		l.drop(i + 1)
	}
}

var evenGaps = &lexicon.Entry{Kind: lexicon.Goal, Key: "even gaps"}
