package grammar

import "strings"

// conditions puts what is tried before what is asked of it: "what would it cost if we used 1x6 rails", "with seven rails
// what would the gap be".
func (g *grouping) conditions() {
	list := g.s.groups
	for k := g.first; k+1 < len(list); k++ {
		a, b := &list[k], &list[k+1]
		switch {
		case a.force == Ask && b.force == WhatIf && b.inside && hasValue(b.items):
			*a, *b = *b, *a
			k++
		case a.force == WhatIf && b.force == WhatIf && b.inside && !hasValue(a.items) && hasValue(b.items) && named(a.items):
			a.force = Ask // "what would happen to the gap if …"
			*a, *b = *b, *a
			k++
		case a.force == State && a.cmd == "" && a.head == nil && b.force == Ask && supposes(a.items) && hasValue(a.items):
			a.force = WhatIf
		}
	}
}

// named reports whether a stretch names a part.
func named(list []item) bool {
	for _, it := range list {
		if !it.value() && (it.kind == kPart || it.kind == kLoc) {
			return true
		}
	}
	return false
}

// supposes reports whether a stretch opens with a word that only supposes: "with seven rails", "given a wall of 40".
func supposes(list []item) bool {
	if len(list) == 0 {
		return false
	}
	return conditional(list[0])
}

// conditional reports whether "with", "given" or "using" stands before an item.
func conditional(it item) bool {
	before := it.before
	if it.value() && len(it.lim.lead) > 0 {
		before = it.lim.lead[0].before
	}
	for _, word := range strings.Fields(before) {
		if word == "with" || word == "given" || word == "using" {
			return true
		}
	}
	return false
}
