package paraphrase

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/parse"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// AsksByItself reports whether a question names what it is after, and speaks of nothing that stands before it.
func AsksByItself(q []scan.Atom) bool {
	named := false
	for i, a := range q {
		if a.Text == "it" && i > 2 && (q[i-1].Text == "was" || q[i-1].Text == "is") && named {
			continue // "how many rails was it"
		}
		if idiom.PointsBack[a.Text] && a.Text != "her" && a.Text != "him" {
			return false
		}
		key, _ := chunk.PartKey(q, i)
		named = named || key != "" || topicNamed(q, i)
	}
	return named
}

// topicNamed reports whether a table, a list or the picture is named at an atom.
func topicNamed(atoms []scan.Atom, i int) bool {
	f := lexicon.Vocab().Match(atoms, i)
	return len(f) > 0 && f[0].Entry.Kind == lexicon.Quest
}

// TurnsTalk are words by which talk before a question judges, denies or changes what is asked about.
var TurnsTalk = scan.WordSet("wrong mistake instead rather different old previous last yesterday neither nor use used wants change changed if whether except besides without other others")

// whileAsking are words that lead a clause which tells why or when something is asked.
var whileAsking = scan.WordSet("since as while whilst seeing before because")

// askedMeanwhile leaves out why and when something is asked, at the beginning and at the end of a line: "since you've got the numbers,
// what's the gap", "let me see the marks, I've got my pencil ready". It names no part, holds no figure, and turns nothing.
func askedMeanwhile(atoms []scan.Atom) []scan.Atom {
	if len(atoms) < 7 {
		return atoms
	}
	comma := 0
	for comma < len(atoms) && atoms[comma].Text != "," {
		comma++
	}
	if comma < 2 || comma+3 > len(atoms) {
		return atoms
	}
	first, rest := atoms[:comma], atoms[comma+1:]
	switch {
	case whileAsking[first[0].Text] && idiom.AskOpeners[rest[0].Text] && AsksByItself(rest) && besideTheWall(first[1:], false):
		return rest
	case idiom.AskOpeners[first[0].Text] && SubjectAt(rest, 0) && AsksByItself(first) && besideTheWall(rest, true):
		return first
	}
	return atoms
}

// besideTheWall reports whether a clause speaks of no part of the wall, holds no figure, and neither asks, wishes nor turns anything.
func besideTheWall(part []scan.Atom, behind bool) bool {
	if len(part) < 3 {
		return false
	}
	for i, a := range part {
		w := a.Text
		if a.Kind == scan.Word && (WishesOrBids[w] && w != "have" && w != "has" || phrase.Turning[w] || TurnsTalk[w] || idiom.Withheld[w] || parse.QuestionOpeners[w] || AsksFor[w] || chunk.SpelledNumber(w) && w != "second" || w == "so" || w == "and" || w == "but" || behind && (idiom.Viewed[w] || idiom.Bids[w] && w != "have" && w != "can")) {
			return false
		}
		if a.Kind != scan.Word && !(a.Kind == scan.Sign && i == len(part)-1 && (w == "." || w == "!")) {
			return false
		}
	}
	return !slices.ContainsFunc(lex.Tokens(part, act.Context{}), func(t lex.Token) bool {
		return (t.Kind == lexicon.Part || t.Kind == lexicon.Loc) && t.Key() != "tape" && t.Key() != "kerf"
	})
}
