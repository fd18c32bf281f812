package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// coverVerbs are verbs of putting boards where there is room for them; some of them are nouns elsewhere.
var coverVerbs = scan.WordSet(`
	board boards boarding boarded plank planks planking planked panel panels paneling panelling paneled rail rails railing railed slat slats slatting slatted
	wall walls walling walled close closes closing closed fence fences fencing fenced block blocks blocking blocked fill fills filling filled cover covers covering covered
	seal seals sealing sealed shut shuts shutting box boxes boxing boxed screen screens screening screened
`)

// boardingUp drops the verb of "board up three sections": so many are told, and no more or less than before.
func (l *lexing) boardingUp() {
	for i := 0; i+2 < len(l.tokens); i++ {
		t, num, of := &l.tokens[i], &l.tokens[i+1], &l.tokens[i+2]
		if (t.Text == "close up" || t.Text == "close in" || t.Text == "close off") && num.Kind == lexicon.Num && num.Amt.Unit == measure.Bare && of.Kind == lexicon.Part && of.Key() == "bay" {
			l.drop(i)
			continue
		}
		if t.Text != "up" && t.Text != "off" && t.Text != "over" || num.Kind != lexicon.Num || num.Amt.Unit != measure.Bare || of.Kind != lexicon.Part || of.Key() != "bay" {
			continue
		}
		if coverVerbs[LastWord(t.Before)] {
			l.drop(i)
			continue
		}
		if i == 0 || t.Before != "" || !coverVerbs[l.tokens[i-1].Text] || i > 1 && (l.tokens[i-2].Kind == lexicon.Num || l.tokens[i-2].Kind == lexicon.Size || l.tokens[i-2].Kind == lexicon.Part) {
			continue
		}
		if l.tokens[i-1].Kind == lexicon.Part || l.tokens[i-1].Kind == lexicon.Unknown || l.tokens[i-1].Kind == lexicon.Change || l.tokens[i-1].Kind == lexicon.Wall {
			l.drop(i)
			l.drop(i - 1)
		}
	}
}

// boundVerbs are verbs that tell where something begins or is over.
var boundVerbs = scan.WordSet("start starts starting begin begins beginning end ends ending finish finishes finishing stop stops stopping quit quits quitting")

// startsAt asks back where boards begin or end "at" a bare number, which does not count them: "the rails stop at 40".
func (l *lexing) startsAt() {
	for i := 1; i < len(l.tokens); i++ {
		num, t := &l.tokens[i], &l.tokens[i-1]
		up := i+1 < len(l.tokens) && l.tokens[i+1].Kind == lexicon.Up && boundVerbs[LastWord(num.Before)] // "the rails start 3 up"
		if num.Kind != lexicon.Num || num.Amt.Unit != measure.Bare || !up && LastWord(num.Before) != "at" && LastWord(num.Before) != "by" {
			continue
		}
		verb := strings.Fields(num.Before)
		said := up || len(verb) > 1 && boundVerbs[verb[len(verb)-2]]
		if (t.Kind == lexicon.Cmd || t.Kind == lexicon.Quest) && boundVerbs[LastWord(t.Text)] && i > 1 {
			said, t = true, &l.tokens[i-2]
		}
		if t.Kind != lexicon.Part || t.Key() != "rail" || t.Index > 0 {
			continue
		}
		said = said || OneIsIn(boundVerbs, t.Before) || i > 1 && l.tokens[i-2].Kind == lexicon.Cmd && boundVerbs[LastWord(l.tokens[i-2].Text)]
		if k := i - 2; !said || k >= 0 && (l.tokens[k].Kind == lexicon.Num || l.tokens[k].Kind == lexicon.Size) || i+1 < len(l.tokens) && (l.tokens[i+1].Kind == lexicon.Loc || l.tokens[i+1].Kind == lexicon.Dim || l.tokens[i+1].Kind == lexicon.FromSide) {
			continue
		}
		num.Kind = lexicon.Unclear
	}
}

// OneIsIn reports whether one of the words of a text stands in a set.
func OneIsIn(set map[string]bool, text string) bool {
	for _, w := range strings.Fields(text) {
		if set[w] {
			return true
		}
	}
	return false
}
