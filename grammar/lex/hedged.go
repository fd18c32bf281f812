package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// hedges are words before a figure that tells how much a vague word is: "a hair wider, maybe an eighth".
var hedges = scan.WordSet("maybe perhaps probably roughly around like")

// howMuch puts a figure that comes after a break in the place of the vague word that it makes plain: "a touch larger, say by an
// eighth" is an eighth larger.
func (l *lexing) howMuch() {
	for i := 0; i+2 < len(l.tokens); i++ {
		if l.tokens[i].Kind != lexicon.Vague {
			continue
		}
		j := i + 1
		changes := i > 0 && changesSize(&l.tokens[i-1])
		for j < len(l.tokens) && (changesSize(&l.tokens[j]) || l.tokens[j].Kind == lexicon.Part) {
			changes = changes || l.tokens[j].Kind != lexicon.Part
			j++
		}
		if !changes || j >= len(l.tokens) || l.tokens[j].Kind != lexicon.Comma && l.tokens[j].Text != "-" && l.tokens[j].Text != "--" {
			continue
		}
		from := j
		for j++; j < len(l.tokens) && hedge(&l.tokens[j]); j++ {
		}
		if j >= len(l.tokens) || l.tokens[j].Kind != lexicon.Num || l.tokens[j].Amt.Size != "" || j+1 < len(l.tokens) && l.tokens[j+1].Kind != lexicon.Stop && l.tokens[j+1].Kind != lexicon.Comma && l.tokens[j+1].Kind != lexicon.QMark {
			continue
		}
		num := l.tokens[j]
		num.Before = l.tokens[i].Before
		l.tokens[i] = num
		l.tokens = append(l.tokens[:from], l.tokens[j+1:]...)
	}
}

// changesSize reports whether a word says that something becomes more or less.
func changesSize(t *Token) bool {
	return t.Kind == lexicon.More || t.Kind == lexicon.Change || t.Kind == lexicon.Up || t.Kind == lexicon.Down || t.As(lexicon.More) != nil
}

// hedge reports whether a word only makes a figure less sure.
func hedge(t *Token) bool {
	return t.Kind == lexicon.About || t.Kind == lexicon.Unknown && hedges[t.Text] || t.Kind == lexicon.Head && t.Text == "say" || t.Kind == lexicon.Fill
}

// statedSo leaves out an "actually" between a part, its verb and its figure: "the gap is actually 2" corrects nothing that was said in
// the same breath.
func (l *lexing) statedSo() {
	for i := 1; i+1 < len(l.tokens); i++ {
		t, part, next := &l.tokens[i], &l.tokens[i-1], &l.tokens[i+1]
		if t.Kind != lexicon.Fix || t.Text != "actually" || part.Kind != lexicon.Part && part.Kind != lexicon.Quest && part.Kind != lexicon.Loc && part.Kind != lexicon.Dim || next.Kind != lexicon.Num && next.Kind != lexicon.Size && next.Kind != lexicon.Measured && next.Kind != lexicon.Rel && next.Kind != lexicon.About {
			continue
		}
		if !ToBe[LastWord(t.Before)] && !ToBe[FirstWord(next.Before)] && next.Kind != lexicon.Measured {
			continue
		}
		next.Before = strings.TrimSpace(t.Before + " " + next.Before)
		l.tokens = append(l.tokens[:i], l.tokens[i+1:]...)
	}
}
