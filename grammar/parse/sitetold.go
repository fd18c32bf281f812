package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
)

// siteWish reports whether a width is wished and not found: "I want bay 1 to be 60 at the top".
func (k *clause) siteWish() bool {
	if h := k.s.head; h != nil && h.Kind == lexicon.Head && h.Key() == string(act.Check) {
		return false
	}
	said := ""
	if h := k.s.head; h != nil && h.Kind == lexicon.Head {
		said = h.Text
	}
	for _, it := range k.items {
		before := said + " " + leadOf(it)
		if !it.value() {
			before = said + " " + it.Before
		}
		for _, w := range strings.Fields(before) {
			switch w {
			case "want", "wants", "should", "must", "need", "needs", "prefer", "wish", "like", "love", "ought":
				return true
			}
		}
	}
	return false
}

// leanUnit gives a bare height the unit of what a post leans in it: "10 mm over 1200".
func (k *clause) leanUnit(by, run int) {
	lo, like := k.items[run].lim.lo, k.items[by].lim.lo
	if lo.Unit == measure.Bare && like.Unit == measure.Metric {
		a := inUnitOf(*lo, *like)
		k.items[run].lim.lo = &a
	}
}
