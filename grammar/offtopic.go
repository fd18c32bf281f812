package grammar

import "saywright/solver"

// toldWhatIsKnown tells whoever asks for something else than the wall ("is it going to rain") what can be asked. A line that
// holds a figure may well be of the wall: there the word that no table knows is asked about.
func toldWhatIsKnown(r Reading, atoms []atom) Reading {
	if r.Ask == nil || !asksWhatItMeans(r.Ask) || !asksSomething(atoms) || figured(atoms) {
		return r
	}
	q := qOnlyTheWall.ask()
	q.At, q.Choices = r.Ask.At, r.Ask.Choices
	return Reading{Ask: &q}
}

// notKnown asks about a word that no table knows.
func notKnown(t *token) solver.Question {
	q := qUnknownWord.ask(quoted(short(t.text)))
	q.At = new(t.at)
	return q
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
