package grammar

import (
	"strings"

	"saywright/solver"
)

// notKnown asks about a word that no table knows.
func notKnown(_ []token, t *token) solver.Question {
	at := t.at
	return solver.Question{At: &at, Text: "What does " + quoted(short(t.text)) + meanHere, Example: "gap 2-1/2, 6 rails"}
}

const meanHere = " mean here?"

// besideTheWall tells what can be asked where a line asks for something else than a wall ("is it going to rain"). It comes last: what
// reads a line again goes by the word that was asked about.
func besideTheWall(r Reading, atoms []atom, c Context) Reading {
	if r.Ask == nil || !strings.HasPrefix(r.Ask.Text, "What does ") || !strings.HasSuffix(r.Ask.Text, meanHere) {
		return r
	}
	if tokens := lex(atoms, c); asksSomething(tokens) && !namesFigure(tokens) {
		q := *r.Ask
		q.Text, q.Example = "I know only the wall: its sizes, pieces and prices. Which of them?", "how many rails"
		r.Ask = &q
	}
	return r
}

// asksSomething reports whether a line is a question by its first word or by its mark.
func asksSomething(tokens []token) bool {
	first := true
	for i := range tokens {
		t := &tokens[i]
		if word, _, _ := strings.Cut(strings.TrimSpace(t.before+" "+t.text), " "); first && asksByWord[word] {
			return true
		}
		switch t.kind {
		case kQMark:
			return true
		case kWh, kQuest, kHead, kWhere, kTeachHead:
			if first {
				return true
			}
		case kFill, kIt, kComma:
			continue
		}
		first = false
	}
	return false
}

// asksByWord are the words that open a question and have no other use here.
var asksByWord = phraseSet("who", "whose", "whom", "when", "why", "what", "whats", "what's", "how", "hows", "how's", "are", "is", "do", "does", "did", "can", "could", "will", "would")

// namesFigure reports whether a figure is said, which is not to be passed over as idle talk.
func namesFigure(tokens []token) bool {
	for i := range tokens {
		if k := tokens[i].kind; k == kNum || k == kSize {
			return true
		}
	}
	return false
}
