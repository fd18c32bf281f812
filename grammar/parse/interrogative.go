package parse

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
	"saywright/solver"
)

// opening returns the first words of a sentence as they were said, at most four of them.
func opening(list []Item) []string {
	var out []string
	for len(list) > 1 && list[0].breaks() {
		list = list[1:]
	}
	for i, it := range list {
		if i == 0 {
			out = leadingTo(it)
			if it.value() && len(it.lim.lead) > 0 {
				out = append(out, strings.Fields(it.Text)...)
			} else {
				out = append(out, strings.Fields(it.Text)...)
			}
			if len(out) >= 4 {
				return out[:4]
			}
			continue
		}
		if it.value() && len(it.lim.lead) > 0 {
			out = append(out, strings.Fields(it.lim.lead[0].Before)...)
		}
		out = append(out, strings.Fields(it.Before+" "+it.Text)...)
		if len(out) >= 4 {
			return out[:4]
		}
	}
	return append(out, "", "", "", "")[:4]
}

// interrogative keeps a sentence that opens as a question from setting anything, or being obeyed: "do we need two
// stiffeners", "is that the smallest gap", "should I undo that", "when do I quit".
func (g *grouping) interrogative() {
	if g.first >= len(g.s.groups) {
		return
	}
	alone := len(g.s.groups) == g.first+1
	for k := g.first; k < len(g.s.groups); k++ {
		if p := &g.s.groups[k]; p.force == act.State && p.cmd == "" && (hedged(p.items) || alone && hedged(g.list)) {
			p.force = act.WhatIf // "I might use seven rails"
		}
	}
	for k := g.first; k < len(g.s.groups); k++ {
		if p := &g.s.groups[k]; p.force == act.WhatIf && p.cmd == "" && p.head != nil && (strings.Contains(p.head.Text, "was going to") || strings.Contains(p.head.Text, "were going to")) && thoughtBetter(p.items) {
			p.force = act.State
		}
	}
	o := opening(g.list)
	force, helps := lex.Helping[o[0]]
	if p := &g.s.groups[g.first]; force == act.Check && p.force == act.WhatIf && p.cmd == "" && len(g.list) > 0 && !g.list[0].value() && g.list[0].Kind == lexicon.Theirs && hasValue(p.items) {
		p.force = act.Check // "does his 3 inch gap work"
	}
	switch {
	case o[0] == "do" && o[1] != "i" && o[1] != "we" && o[1] != "you" && o[1] != "they":
		return // "do it the cheapest way"
	case o[0] == "have" && !g.asked && determiners[o[1]] && !perfect(g.list, "come", "become"):
		return // "have the gap at least as big as the others"
	case helps && (scan.Subjects[o[1]] || o[1] == "you" && force == act.Check):
	case o[1] != "" && lex.Helping[o[1]] != "" && (o[0] == "when" || o[0] == "who" || o[0] == "how" || o[0] == "where"):
		g.refuse(o[0])
		return
	default:
		return
	}
	p := &g.s.groups[g.first]
	if force == act.WhatIf && o[2] == "have" && p.force == act.Check && hasValue(p.items) {
		p.force = act.WhatIf // "could he have used seven rails"
	}
	if force == act.WhatIf && o[1] != "i" && o[1] != "we" && (p.force == act.State || p.force == act.WhatIf) && p.cmd == "" && hasValue(p.items) && asClaimed(g.list) {
		p.force = act.Check // "could the bay be 70 inches as he claims"
	}
	if p.force == act.Check && o[0] == "do" && (o[1] == "i" || o[1] == "we") && alone && buysOnly(p.items) {
		p.force, p.items, p.topic = act.Ask, nil, "shopping" // "do I need to buy any 4x4s"
		return
	}
	if knowing(o, g.list) && (p.force == act.Check || p.force == act.State || p.force == act.WhatIf) && p.cmd == "" && alone && onlyNames(withoutSelling(p.items)) && !onlyPost(p.items) {
		p.force, p.items = act.Ask, withoutSelling(p.items) // "have you got the gap", "do we need stiffeners"
		return
	}
	if polite := (o[0] == "can" || o[0] == "could" || o[0] == "may") && (o[1] == "i" || o[1] == "we"); polite && (p.cmd != "" || !hasFigure(p.items) || changesBudget(p.items)) {
		return // "can we start over", "can we change to metric" are wishes
	}
	switch {
	case p.force == act.Forget, p.cmd != "" && p.head != nil && !strings.HasPrefix(p.head.Text, o[0]):
		g.s.fail(p.head.At, solver.Question{Text: "A question, or a wish?", Example: "undo"})
	case p.force == act.State && p.cmd == "" && speaksOfUnits(p.items):
		g.s.fail(p.items[0].startAt(), solver.Question{Text: "A question, or a wish?", Example: "units = metric"})
	case p.force == act.State && p.cmd == "" && len(strip(p.items)) > 0:
		p.force = force
	}
}

// asClaimed reports whether somebody's word is named for what stands before it: "… as he claims", "… like the drawing says".
func asClaimed(list []Item) bool {
	for i, it := range list {
		if !it.value() && i > 0 && (it.As(lexicon.Head) != nil && it.As(lexicon.Head).Key == string(act.Check) || it.Kind == lexicon.Tail && it.Key() == "claimed") {
			switch lex.FirstWord(it.Text) {
			case "as", "like", "per", "according":
				return true
			}
		}
	}
	return false
}

// refuse asks back where a question of when, who, where or how would set something or be obeyed.
func (g *grouping) refuse(word string) {
	for _, p := range g.s.groups[g.first:] {
		set := p.force == act.State && p.cmd == "" && hasValue(p.items)
		obeyed := p.force == act.Forget || p.cmd != "" && p.head != nil && !strings.HasPrefix(p.head.Text, word) && p.cmd != "help" && p.cmd != "next" && p.cmd != "why that" && p.cmd != "recap"
		if set && (word == "when" || word == "who") || obeyed {
			g.s.fail(g.list[0].At, solver.Question{Text: "A question, or a wish?", Example: "gap 2-1/2"})
			return
		}
	}
}

// hedged reports whether what is said only might be.
func hedged(list []Item) bool {
	for _, it := range list {
		before := it.Before
		if it.value() && len(it.lim.lead) > 0 {
			before = it.lim.lead[0].Before
		}
		if strings.Contains(" "+before+" ", " might ") {
			return hasFigure(list)
		}
	}
	return false
}

// determiners are words that lead to a noun.
var determiners = map[string]bool{"the": true, "my": true, "our": true, "those": true, "these": true}

// perfect reports whether "been" or another word of what has come to be stands in a sentence, but for words that may bid as well:
// "have the post come up past the wall".
func perfect(list []Item, but ...string) bool {
	for _, it := range list {
		for _, w := range strings.Fields(it.Before + " " + it.Text) {
			if slices.Contains(but, w) {
				continue
			}
			switch w {
			case "been", "become", "gone", "changed", "moved", "come", "grown", "shrunk":
				return true
			}
		}
	}
	return false
}

func hasFigure(list []Item) bool {
	for _, it := range list {
		if it.value() {
			return true
		}
	}
	return false
}

func speaksOfUnits(list []Item) bool {
	for _, it := range list {
		if !it.value() && it.Kind == lexicon.Units {
			return true
		}
	}
	return false
}

// knowing reports whether a question is after what is known or needed: "do you have the gap", "will we need stiffeners".
func knowing(said []string, list []Item) bool {
	switch said[1] {
	case "you":
		return said[0] == "do" || said[0] == "did" || said[0] == "have"
	case "i", "we":
		for _, it := range list {
			if !it.value() && (strings.Contains(it.Before, "need") || strings.Contains(it.Text, "need")) {
				return true
			}
		}
	}
	return false
}

// withoutSelling drops words of having, getting and needing.
func withoutSelling(list []Item) []Item {
	var out []Item
	for _, it := range list {
		if it.value() || it.Kind != lexicon.Sell && it.Kind != lexicon.Have && it.Kind != lexicon.Head && it.Kind != lexicon.GoesIn {
			out = append(out, it)
		}
	}
	return out
}

// onlyPost reports whether posts are named without a word that tells which: that is no question after their number.
func onlyPost(list []Item) bool {
	for _, it := range list {
		if !it.value() && it.Kind == lexicon.Part && it.Key() == "post" {
			return true
		}
	}
	return false
}

// buysOnly reports whether nothing but lumber that is bought is spoken of.
func buysOnly(list []Item) bool {
	buys, goods := false, false
	for _, it := range list {
		switch {
		case it.value() && (it.Kind == lexicon.Size || it.lim.lo.Footer) && len(it.lim.lead)+len(it.lim.tail) == 0:
			goods = true
		case !it.value() && it.Kind == lexicon.Sell:
			buys = true
		case !it.value() && (it.Kind == lexicon.GoesIn || it.breaks()):
		default:
			return false
		}
	}
	return buys && goods
}

// works reports whether a verb of fitting stands between a value and what it is the value of.
func (g *grouping) works() bool {
	for i, it := range g.g.items {
		if i > 0 && !it.value() && it.Kind == lexicon.GoesIn && (it.Text == "work" || it.Text == "fit" || it.Text == "hold") && hasFigure(g.g.items[:i]) {
			return true
		}
	}
	return false
}
