package aside

import (
	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/scan"
)

// ToldWhatIsKnown tells whoever asks for something else than the wall ("is it going to rain") what can be asked. A line that
// holds a figure may well be of the wall: there the word that no table knows is asked about.
func ToldWhatIsKnown(r act.Reading, atoms []scan.Atom) act.Reading {
	if r.Ask == nil || !askback.AsksWhatItMeans(r.Ask) || !asksSomething(atoms) || chunk.Figured(atoms) {
		return r
	}
	q := askback.OnlyTheWall.Ask()
	q.At, q.Choices = r.Ask.At, r.Ask.Choices
	return act.Reading{Ask: &q}
}

// asksSomething reports whether a line is a question by its first word or by its mark.
func asksSomething(atoms []scan.Atom) bool {
	if atoms[len(atoms)-1].Text == "?" {
		return true
	}
	for i := range atoms {
		if atoms[i].Kind == scan.Word && !idiom.LeadWords[atoms[i].Text] {
			return AsksByWord[atoms[i].Text]
		}
	}
	return false
}

// AsksByWord are words that open a question.
var AsksByWord = scan.WordSet("who whose whom when why what whats how hows where are is do does did can could will would have has am")
