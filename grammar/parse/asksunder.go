package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
)

// asksUnder reports whether the noun of a question opens its sentence, and what it is asked under follows: "cost with 5 rails",
// "cuts given a 30 inch opening", "cost if 5 rails".
func (g *grouping) asksUnder(i int) bool {
	if g.g.force != act.State || g.g.cmd != "" || !g.empty() || i+1 >= len(g.list) || len(strip(g.list[:i])) > 0 || !hasFigure(g.list[i+1:]) {
		return false
	}
	next := g.list[i+1]
	if !next.value() && next.As(lexicon.Head) != nil && next.As(lexicon.Head).Key == string(act.WhatIf) {
		return strings.HasPrefix(next.Text, "if")
	}
	return conditional(next)
}
