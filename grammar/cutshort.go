package grammar

import (
	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
)

// cutShort asks what was to follow where a line breaks off behind a word that joins: of "gap two and a" the fraction may be lost, so that
// two inches would be a wrong cut. Dictation breaks off so. Common ways of speech, no source.
func cutShort(atoms []scan.Atom) (act.Reading, bool) {
	n := len(atoms)
	for n > 0 && stopsShort[atoms[n-1].Text] {
		n--
	}
	end := n
	if n > 1 && articles[atoms[n-1].Text] {
		n--
	}
	if n < 2 || !joinsMore[atoms[n-1].Text] {
		return act.Reading{}, false
	}
	return askback.WordWhat.AskAt(atoms[n-1].At, parse.Quoted(scan.Text(atoms[n-1:end]))), true
}

var (
	stopsShort = scan.WordSet(". , ; : - -- ... !")
	articles   = scan.WordSet("a an the my our another")
	joinsMore  = scan.WordSet("and or but")
)
