package grammar

import (
	"strings"

	"saywright/solver"
)

// notKnown asks about a word that no table knows. A question about something else than a wall ("is it going to rain")
// is told what can be asked; elsewhere it is the word that is asked about.
func notKnown(tokens []token, t *token) solver.Question {
	at := t.at
	if asksSomething(tokens) && !namesFigure(tokens) {
		return solver.Question{At: &at, Text: "I know only the wall: its sizes, pieces and prices. Which of them?", Example: "how many rails"}
	}
	return solver.Question{At: &at, Text: "What does " + quoted(short(t.text)) + " mean here?", Example: "gap 2-1/2, 6 rails"}
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
