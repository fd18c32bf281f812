package takeback

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// Several things are taken back in one breath: "undo the last two things I said", "undo that twice", "take back my last three changes".
// How many must be said; "go back a few" is asked back.

// MostUndone is how many steps may be taken back in one breath.
const MostUndone = 5

// SeveralUndone is how many things an order takes back, and the atom behind it; 0 where it is none.
func SeveralUndone(led []scan.Atom) (n, to int) {
	w := measure.Reader{Atoms: led}
	i := 0
	switch {
	case w.Word(0) == "undo" || w.Word(0) == "reverse":
		i = 1
	case undoes[w.Word(0)] && (w.Word(1) == "the" || w.Word(1) == "my" || w.Word(1) == "those"):
		i = 1
	case w.Word(0) == "take" && w.Word(1) == "back":
		i = 2
	default:
		return 0, 0
	}
	if p := w.Word(i); (p == "that" || p == "it" || p == "") && i+1 < len(led) || p == "twice" {
		if p != "twice" {
			i++
		}
		if w.Word(i) == "twice" {
			return 2, i + 1
		}
		if k := fewOf[w.Word(i)]; k > 0 && w.Word(i+1) == "times" {
			return k, i + 2
		}
		return 0, 0
	}
	for strings.Contains(" the my our those these ", " "+w.Word(i)+" ") && w.Word(i) != "" {
		i++
	}
	if w.Word(i) != "last" && w.Word(i) != "latest" {
		return 0, 0
	}
	if n = fewOf[w.Word(i+1)]; n == 0 {
		return 0, 0
	}
	i += 2
	if undoneThings[w.Word(i)] {
		i++
	} else if undoes[w.Word(0)] {
		return 0, 0 // "drop the last two": two of what?
	}
	if w.Word(i) == "that" {
		i++
	}
	if lex.Speakers[w.Word(i)] {
		i++
		for undoneSaid[w.Word(i)] && i < len(led) {
			i++
		}
	}
	if i < len(led) && led[i].Kind != scan.Sign && !chunk.Joints[led[i].Text] && led[i].Text != "please" {
		return 0, 0
	}
	return n, i
}

var (
	fewOf        = map[string]int{"two": 2, "2": 2, "three": 3, "3": 3, "four": 4, "4": 4, "five": 5, "5": 5}
	undoes       = scan.WordSet("scratch drop forget scrap cancel erase delete")
	undoneThings = scan.WordSet("things changes entries lines steps ones bits edits statements numbers figures orders")
	undoneSaid   = scan.WordSet("have just said told you made did gave entered typed changed wrote")
)
