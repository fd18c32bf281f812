package grammar

import (
	"strings"

	"saywright/solver"
)

// unknownWord is the question for a word that no table knows.
const unknownWord = "What does "

// onlyTheWall is what is told instead to whoever asks.
const onlyTheWall = "I know only the wall: its sizes, pieces and prices. Which of them?"

// toldWhatIsKnown tells whoever asks for something else than the wall ("is it going to rain") what can be asked. A line that
// holds a figure may well be of the wall: there the word that no table knows is asked about.
func toldWhatIsKnown(r Reading, atoms []atom) Reading {
	if r.Ask == nil || !strings.HasPrefix(r.Ask.Text, unknownWord) || !asksSomething(atoms) || figured(atoms) {
		return r
	}
	q := *r.Ask
	q.Text, q.Example = onlyTheWall, "how many rails"
	return Reading{Ask: &q}
}

// notKnown asks about a word that no table knows.
func notKnown(t *token) solver.Question {
	at := t.at
	return solver.Question{At: &at, Text: unknownWord + quoted(short(t.text)) + " mean here?", Example: "gap 2-1/2, 6 rails"}
}

// asksSomething reports whether a line is a question by its first word or by its mark.
func asksSomething(atoms []atom) bool {
	if atoms[len(atoms)-1].text == "?" {
		return true
	}
	for i := range atoms {
		if atoms[i].kind == aWord && !leadWords[atoms[i].text] {
			return asksByWord[atoms[i].text]
		}
	}
	return false
}

// asksByWord are words that open a question.
var asksByWord = wordSet("who whose whom when why what whats how hows where are is do does did can could will would have has am")
