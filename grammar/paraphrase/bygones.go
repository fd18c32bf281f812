package paraphrase

import (
	"sync"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// bygone is how such a sentence begins.
var bygone = []lexicon.Entry{{Kind: lexicon.Fill, Key: "bygone", Loose: true, Ways: `
	[back] in (my|his|her|our|their|old|olden|good old|those|those old|father|dad|grandfather|grandpa|granddad) (day|days|time|times)
	[(some|many|few|thirty|forty|fifty|twenty|ten)] years (ago|back)
	when (i|we|he|she) (was|were) [(just|only|still)] (boy|young|lad|kid|child|little|small|apprentice|girl|learning|youngster|younger)
	once upon a time
	[old] (father|dad|daddy|grandfather|grandpa|granddad|old man|boss|master|teacher|uncle|grandad|foreman) (always|never|used to|would always|would have|would never)
	time was`}}

// BygoneVocab holds the ways to speak of the old days.
var BygoneVocab = sync.OnceValue(func() *lexicon.Vocabulary { return lexicon.Compile(nil, bygone) })

// SentenceEnd returns the atom after the sentence that begins at an atom.
func SentenceEnd(atoms []scan.Atom, from int) int {
	for i := from; i < len(atoms); i++ {
		switch atoms[i].Text {
		case ".", "?", "!", ";":
			if chunk.BreaksClause(atoms, i) {
				return i + 1
			}
		}
	}
	return len(atoms)
}
