package grammar

import "strings"

// leadIns are words that come before what a sentence says, and do not change whether it asks or states: "so could the gap be 3".
var leadIns = wordSet(`so oh hey hi hello um uh umm er ah eh hmm hm well now then ok okay alright yes yeah yep yup and but also listen look thanks please plz pls anyway
	actually honestly see say alas gee right just really maybe perhaps again still ,`)

// afterGreeting are words that only a greeting leads on to: "hi there".
var afterGreeting = wordSet("there everyone everybody folks guys all again sir maam buddy")

// withoutLead drops the words that only lead in to what is said.
func withoutLead(words []string) []string {
	for i := len(words) - 1; i >= 0; i-- {
		if w := words[i]; strings.HasSuffix(w, ",") || strings.HasSuffix(w, ":") {
			words = words[i+1:]
			break
		}
	}
	greeted := false
	for len(words) > 0 && (leadIns[words[0]] || greeted && afterGreeting[words[0]]) {
		greeted = words[0] == "hi" || words[0] == "hey" || words[0] == "hello" || words[0] == "thanks"
		words = words[1:]
	}
	return words
}

// leadingTo returns the empty words before an item, without what only leads in to them.
func leadingTo(it item) []string {
	before := it.before
	if it.value() && len(it.lim.lead) > 0 {
		before = it.lim.lead[0].before
	}
	return withoutLead(strings.Fields(before))
}

// modal are helping verbs that open a question where a value stands right behind them: "would six boards do".
var modal = wordSet("would will could can might should does do did")

// denies takes "wouldn't …" at a break for the question that it is, without its no: "six rails, wouldn't seven fit".
func (g *grouping) denies(i int) bool {
	it := g.list[i]
	if i == 0 || !g.list[i-1].breaks() || it.value() || it.kind != kNot || it.text != "not" || g.g.force != State || g.g.sealed || i+1 >= len(g.list) {
		return false
	}
	w := leadingTo(it)
	next := g.list[i+1]
	if len(w) != 1 || helping[w[0]] == "" || next.before != "" && !subjects[firstWord(next.before)] && !vocab().articles[firstWord(next.before)] {
		return false
	}
	if next.before == "" && !next.value() && next.kind != kIt || !hasFigure(g.list[i:]) {
		return false
	}
	g.flush(group{force: helping[w[0]]})
	return true
}

// inverted returns what a clause does that begins at item i with its verb before its subject: "…, could the gap be 3", "and is the
// wall 48". It is "" for other clauses: what asks never sets.
func (g *grouping) inverted(i int) ActKind {
	it := g.list[i]
	if it.breaks() || i > 0 && !g.list[i-1].breaks() {
		return ""
	}
	switch g.g.force {
	case State:
		if g.g.sealed && !g.empty() && i == 0 {
			return ""
		}
	case Forget, ForgetAllBut, Check, Take:
		if i == 0 || g.empty() {
			return ""
		}
	default:
		return ""
	}
	if !it.value() && it.kind != kPart && it.kind != kLoc && it.kind != kIt && it.kind != kTheirs {
		return ""
	}
	w := leadingTo(it)
	if len(w) == 0 || len(w) < 2 && !(it.value() && modal[w[0]]) && (it.value() || it.kind != kIt) {
		return ""
	}
	force := helping[w[0]]
	subject := it.value() && len(w) == 1 || it.kind == kIt && !it.value() && len(w) == 1 || len(w) > 1 && (subjects[w[1]] || vocab().articles[w[1]])
	if force == "" || !subject {
		return ""
	}
	personal := len(w) > 1 && (w[1] == "i" || w[1] == "we" || w[1] == "they" || w[1] == "he" || w[1] == "she")
	switch w[0] {
	case "have", "had", "has":
		return "" // "have the gap at 2" is a wish
	case "do":
		if !personal {
			return ""
		}
	}
	figure := false
	for _, x := range g.list[i:] {
		if x.breaks() {
			break
		}
		figure = figure || x.value()
	}
	if !figure {
		return "" // "the bottom gap is 2 and so is the gap"
	}
	if force == g.g.force {
		return ""
	}
	return force
}
