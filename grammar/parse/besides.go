package parse

import (
	"strings"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
)

// offBoards is the class of "on each board" where what is lost on one is told.
func (k *clause) offBoards() lexicon.Kind {
	if k.about("trim") || k.about("fit") {
		return lexicon.OffTail
	}
	return lexicon.Not
}

// shared reports whether a value at item i follows a "per bay" that only shares out what was counted before it: "two
// stiffeners a bay at 24 inches" gives no bay its width.
func (k *clause) shared(i int) bool {
	if len(k.things) != 1 || k.things[0] != i-1 || !lex.EndsIn(leadOf(k.items[i]), "at") {
		return false
	}
	t := k.items[i-1]
	if t.Kind != lexicon.Loc || t.Key() != "per bay" || t.Index > 0 {
		return false
	}
	switch w, _, _ := strings.Cut(t.Text, " "); w {
	case "in", "per", "a", "for", "to", "of", "within", "along", "/":
		return true
	}
	return false
}

// withoutPurpose leaves out "for the brackets" after a limit on a gap: it tells why.
func (k *clause) withoutPurpose(i int, senses []lexicon.Sense) []lexicon.Sense {
	gap, last := false, -1
	for _, t := range k.things {
		if t < i {
			gap = gap || k.items[t].Key() == "gap" && strings.HasPrefix(k.items[t].Text, "gap")
		} else {
			last = t
		}
	}
	if !gap || last < 0 || len(k.things) != 2 || len(k.dims) > 0 || k.items[last].Key() != "bracket" || !strings.HasPrefix(k.items[last].Before, "for") {
		return senses
	}
	return k.senses(0, last)
}
