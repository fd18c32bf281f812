package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/solver"
)

// choosing reports whether a way out was named right before: "I like the second way out better, take it".
func (g *grouping) choosing() bool {
	_, ok := wayOut(strip(g.g.items))
	return ok && g.g.force == act.State || g.g.force == act.Take && !g.empty()
}

// doubted reports whether the sentence opens as a question of what may be done: no command follows then.
func (g *grouping) doubted() bool {
	f := strings.Fields(g.list[0].Before)
	if len(f) == 0 {
		return false
	}
	switch f[0] {
	case "can", "could", "should", "would", "may", "might", "must", "do", "does", "did", "is", "are", "will":
		return len(f) == 1 || f[1] != "you" && f[1] != "please"
	}
	return false
}

// limitOf reports whether the value at item i is a limit on a part that is named after it.
func (g *grouping) limitOf(i int) bool {
	if !g.list[i].value() {
		return false
	}
	if op, ok := g.list[i].lim.relation(); !ok || op == solver.Eq {
		return false
	}
	for k := i + 1; k < len(g.list) && !g.list[k].breaks(); k++ {
		if !g.list[k].value() && (g.list[k].Kind == lexicon.Part || g.list[k].Kind == lexicon.Loc) {
			return true
		}
	}
	return false
}

// forgets reports whether a word that takes back is said of a part: "never mind the budget".
func (g *grouping) forgets(i int) bool {
	if !strings.HasPrefix(g.list[i].Text, "never") || i+1 >= len(g.list) || g.list[i+1].value() || g.list[i+1].Kind != lexicon.Part {
		return false
	}
	end := i + 1
	for end < len(g.list) && !g.list[end].breaks() {
		end++
	}
	return !hasValue(g.list[i+1:end]) && (end == len(g.list) || end+1 < len(g.list) && !hasValue(g.list[end+1:]) || len(g.list) > end+1 && fixes(g.list[end+1]))
}

// fixes reports whether an item sets right what stands before it: "make it zero".
func fixes(it Item) bool {
	return !it.value() && it.Kind == lexicon.Fix || imperative(it.Before)
}
