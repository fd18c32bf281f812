package parse

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
)

// affirms reports whether a "do that" at item i, which ends the line, only bids to do what the line has just told: "raise the wall by
// two inches, please do that". Where something was tried or asked it takes that.
func (g *grouping) affirms(i int) bool {
	for _, it := range g.list[i+1:] {
		if it.value() || !it.breaks() && it.Kind != lexicon.TailFill && it.Kind != lexicon.Fill {
			return false
		}
	}
	all := append(append([]group{}, g.s.groups...), g.g)
	told := false
	for k := range all {
		p := &all[k]
		if len(strip(p.items)) == 0 && p.cmd == "" && p.topic == "" && (p.force == act.State || p.force == "") {
			continue
		}
		if p.force != act.State || p.cmd != "" {
			return false
		}
		told = told || hasFigure(p.items) || slices.ContainsFunc(p.items, func(it Item) bool { return it.Kind == lexicon.Goal })
	}
	return told
}

// thoughtBetter reports whether what somebody was going to do is set right: "I was going to make it 48, no, 46 and a half".
func thoughtBetter(list []Item) bool {
	first, fixed := false, false
	for _, it := range list {
		switch {
		case it.value() && fixed:
			return true
		case it.value():
			first = true
		case it.Kind == lexicon.Fix || it.Kind == lexicon.No:
			fixed = first
		}
	}
	return false
}
