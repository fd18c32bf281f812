package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
)

// claimedBefore takes what stands before a word of claiming for the claim: "seven rails, they say", "outside to outside
// they show 157".
func (g *grouping) claimedBefore(i int) bool {
	switch n := len(g.g.items); {
	case g.g.force == act.Check && n > 1 && !g.g.items[n-1].value() && g.g.items[n-1].Kind == lexicon.And && pronoun(g.list[i].Text):
		return true // "the bid comes to 418 and they quote …"
	case g.g.force == act.Check && g.empty() && g.g.head != nil && g.g.head.Kind == lexicon.Theirs:
		g.g.head = g.list[i].Token // "their quote came to 389.90"
		return true
	case g.g.force == act.Check && g.empty() && g.g.head != nil && lex.CutWord(g.list[i].Text) && !lex.CutWord(g.g.head.Text):
		g.g.head = g.list[i].Token // "day shift says they cut bay one at 66"
		return true
	case g.list[i].As(lexicon.Fill) != nil && !g.empty():
		return true // "two spare boards in the order"
	case g.g.force == act.State && g.g.cmd == "" && !g.g.sealed && !g.atBreak(i) && hasValue(g.g.items) && i+1 < len(g.list) && g.list[i+1].breaks():
		g.g.force, g.g.head = act.Check, g.list[i].Token // "the wall is 42 by their count, …"
		return true
	case g.afterthought(i):
		return g.turn(act.Check, act.State)
	case g.g.force == act.State && g.g.cmd == "" && !g.g.sealed && !g.empty() && !g.atBreak(i) && !hasValue(g.g.items):
		g.g.force, g.g.head = act.Check, g.list[i].Token
		return true
	}
	return false
}

// householdInsists reports whether those at home are told to insist: that wishes, where a builder's word is held against the rest.
func householdInsists(text string) bool {
	insists, home := false, false
	for _, w := range strings.Fields(text) {
		insists = insists || w == "insists" || w == "insist" || w == "insisted"
		home = home || lex.Household[w]
	}
	return insists && home
}

// bidsToBe reports whether what somebody insists on is bid and not told: "that the gap be three inches", and not "that it is three".
func bidsToBe(list []Item) bool {
	for _, it := range list {
		if it.breaks() {
			return false
		}
		before := it.Before
		if it.value() && len(it.lim.lead) > 0 {
			before = it.lim.lead[0].Before
		}
		said := strings.Fields(before + " " + it.Text)
		for k, w := range said {
			switch {
			case w == "is", w == "are", w == "was", w == "were", w == "will", w == "would":
				return false
			case w == "be" && (k == 0 || said[k-1] != "can" && said[k-1] != "could" && said[k-1] != "may" && said[k-1] != "might"):
				return true
			}
		}
	}
	return false
}

// needs reports whether a wish may be somebody else's word for it: "he says we need ten".
func needs(head string) bool {
	return strings.Contains(head, "need") || strings.Contains(head, "will") || strings.Contains(head, "have")
}

// pronoun reports whether a word of claiming is said of somebody who was named before.
func pronoun(head string) bool {
	switch word, _, _ := strings.Cut(head, " "); word {
	case "he", "she", "they", "it":
		return true
	}
	return false
}

// afterthought reports whether nothing but breaks and words of doubt follow item i in its sentence.
func (g *grouping) afterthought(i int) bool {
	for _, it := range g.list[i+1:] {
		if it.value() || !it.breaks() && it.Kind != lexicon.Tail && it.Kind != lexicon.It && it.Kind != lexicon.TailFill {
			return false
		}
	}
	return !g.empty() || len(g.s.groups) > 0
}
