package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver/exact"
)

// topOfWall takes "the top" for the top of the wall where nothing else that has a top is spoken of: "the top can't be over 44
// inches".
func (l *lexing) topOfWall() {
	for i := range l.tokens {
		t := &l.tokens[i]
		if t.Text != "top" || t.Kind != lexicon.Top && t.Kind != lexicon.At || LastWord(t.Before) != "the" {
			switch t.Kind {
			case lexicon.Part, lexicon.Ordinal, lexicon.CutWord, lexicon.Fixed, lexicon.Item, lexicon.At, lexicon.Loc, lexicon.Measured, lexicon.FromSide:
				return
			}
			continue
		}
		for j := i + 1; j < len(l.tokens); j++ {
			switch n := &l.tokens[j]; n.Kind {
			case lexicon.Not, lexicon.Up, lexicon.About, lexicon.Rel, lexicon.Over, lexicon.Under, lexicon.Between, lexicon.Lim, lexicon.Out, lexicon.Best, lexicon.But:
				continue
			case lexicon.Num:
				if n.Amt.Unit != measure.Percent && n.Amt.Unit != measure.Money && exact.Int(20).Less(n.Amt.Val) && !l.pieces(n.first) {
					t.Kind, t.Found = lexicon.Part, topNoun
				}
			}
			return
		}
		return
	}
}

var topNoun = NounOf("wall height")

// forBrackets drops whom a space between the boards is for: "at least two inches between boards for my brackets".
func (l *lexing) forBrackets() {
	for i := 2; i < len(l.tokens); i++ {
		t := &l.tokens[i]
		f := strings.Fields(t.Before)
		if t.Kind != lexicon.Part || t.Key() != "bracket" || len(f) < 2 || f[0] != "for" || i+1 < len(l.tokens) && !l.breaks(l.tokens[i+1]) {
			continue
		}
		if p := &l.tokens[i-1]; p.Kind == lexicon.Loc && p.Key() == "between rails" && l.tokens[i-2].Kind == lexicon.Num {
			l.drop(i)
			return
		}
	}
}

// nextOpening reads "a second walk-through" as how many there are then.
func (l *lexing) nextOpening(i int) int {
	n := measure.Ordinals[l.Word(i)]
	if n < 2 || n > 3 || l.Word(i-1) != "a" || !l.ofClass(i+1, "OPENING") || l.Word(i+2) == "side" {
		return i
	}
	if f := lexicon.Vocab().Match(l.Reader.Atoms, i+1); len(f) == 0 || f[0].Entry.Kind != lexicon.Part || f[0].Entry.Key != "opening" || f[0].Next != i+2 {
		return i
	}
	t := l.add(lexicon.Num, i, i+1)
	t.Amt = &measure.Amount{Number: measure.WordInt(n)}
	p := l.add(lexicon.Part, i+1, i+2)
	p.Text, p.Found = "openings", openingsNoun
	return i + 2
}

var openingsNoun = []lexicon.Found{{Entry: &lexicon.Entry{Kind: lexicon.Part, Key: "openings", Sense: lexicon.Meaning("openings")}}}
