package grammar

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/reread"
	"saywright/grammar/scan"
	"saywright/grammar/takeback"
)

// readJudged reads a line without the judgment that begins it. What is left must change or ask something.
func readJudged(atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	if c.Deep {
		return act.Reading{}, false
	}
	at, of := reread.JudgedFirst(atoms, c)
	if at == 0 {
		return act.Reading{}, false
	}
	if of != nil {
		c.Subject = of
	}
	left := reread.WithNoun(atoms[at:], of)
	r, left := takeback.ReadLed(left, c)
	if r.Ask != nil && of != nil {
		var named []scan.Atom
		for _, w := range strings.Fields(string(of.Quantity)) {
			named = append(named, scan.Atom{Kind: scan.Word, Text: w, At: left[0].At, End: left[0].At})
		}
		for _, at := range []int{0, 1} { // "the gap's too big, so two inches", "too tall, try forty"
			if at > 0 && (len(left) < 2 || left[0].Text != "try") {
				break
			}
			if r := hear.Atoms(slices.Concat(left[:at], named, left[at:]), c); r.Ask == nil {
				return r, true
			}
		}
	}
	if r.Ask != nil {
		r = readAgain(left, c, r)
	}
	return r, r.Ask == nil
}
