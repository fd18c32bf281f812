package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// asCloseTo reads "as close to 34 as you can" for about that much. It returns the atom after "to", and i where no length follows.
func (l *lexing) asCloseTo(i int) int {
	if l.Word(i) != "as" {
		return i
	}
	switch l.Word(i + 1) {
	case "close", "near", "nearly", "closely":
	default:
		return i
	}
	to := i + 2
	if l.Word(to) == "as" {
		for to++; nearing[l.Word(to)]; to++ {
		}
	}
	if _, _, ok := l.Length(to + 1); !ok || l.Word(to) != "to" {
		return i
	}
	l.add(lexicon.About, i, to+1).Found = []lexicon.Found{{Entry: closeTo}}
	return to + 1
}

// nearing are the words between "as close as" and "to 34".
var nearing = scan.WordSet("possible you we i it they can could will get come comes go goes be make manage is practical practicable may might")

var closeTo = &lexicon.Entry{Kind: lexicon.About, Key: "~"}

// closeAsCanBe drops the end of "as close to 34 as you can".
func (l *lexing) closeAsCanBe() {
	for i := 0; i+2 < len(l.tokens); i++ {
		if t := &l.tokens[i]; t.Kind != lexicon.About || !strings.HasPrefix(t.Text, "as ") || l.tokens[i+1].Kind != lexicon.Num {
			continue
		}
		for j := i + 2; j < len(l.tokens) && j < i+4; j++ {
			if l.tokens[j].Kind == lexicon.BestTail {
				l.drop(j)
			}
		}
	}
}

// whateverIs drops the word between "ten times" and what it is that many times of: "ten times whatever the gap is".
func (l *lexing) whateverIs() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t, prev, next := &l.tokens[i], &l.tokens[i-1], &l.tokens[i+1]
		if t.Text != "whatever" && t.Text != "what" || next.Kind != lexicon.Part {
			continue
		}
		if prev.Kind == lexicon.Num && prev.Amt.Times || prev.Kind == lexicon.Factor || prev.Kind == lexicon.Times || prev.Kind == lexicon.Same {
			l.drop(i)
		}
	}
}

// everyPiece drops "everything" where a bay follows, whose boards are told: "everything in bay 1 gets cut at 58".
func (l *lexing) everyPiece() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.Kind != lexicon.Unknown || t.Text != "everything" || next.Key() != "per bay" && next.Key() != "bay" {
			continue
		}
		for j := i + 2; j < len(l.tokens) && l.tokens[j].Kind != lexicon.Stop; j++ {
			if l.tokens[j].Kind == lexicon.CutWord {
				l.drop(i)
				break
			}
		}
	}
}
