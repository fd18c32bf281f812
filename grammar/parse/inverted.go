package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// afterGreeting are words that only a greeting leads on to: "hi there".
var afterGreeting = scan.WordSet("there everyone everybody folks guys all again sir maam buddy")

// withoutLead drops the words that only lead in to what is said.
func withoutLead(words []string) []string {
	for i := len(words) - 1; i >= 0; i-- {
		if w := words[i]; strings.HasSuffix(w, ",") || strings.HasSuffix(w, ":") {
			words = words[i+1:]
			break
		}
	}
	greeted := false
	for len(words) > 0 && (lex.LeadIns[words[0]] || greeted && afterGreeting[words[0]]) {
		greeted = words[0] == "hi" || words[0] == "hey" || words[0] == "hello" || words[0] == "thanks"
		words = words[1:]
	}
	return words
}

// leadingTo returns the empty words before an item, without what only leads in to them.
func leadingTo(it Item) []string {
	before := it.Before
	if it.value() && len(it.lim.lead) > 0 {
		before = it.lim.lead[0].Before
	}
	return withoutLead(strings.Fields(before))
}

// modal are helping verbs that open a question where a value stands right behind them: "would six boards do".
var modal = scan.WordSet("would will could can might should does do did")

// denies takes "wouldn't …" at a break for the question that it is, without its no: "six rails, wouldn't seven fit".
func (g *grouping) denies(i int) bool {
	it := g.list[i]
	if i == 0 || !g.list[i-1].breaks() || it.value() || it.Kind != lexicon.Not || it.Text != "not" || g.g.force != act.State || g.g.sealed || i+1 >= len(g.list) {
		return false
	}
	w := leadingTo(it)
	next := g.list[i+1]
	if len(w) != 1 || lex.Helping[w[0]] == "" || next.Before != "" && !scan.Subjects[lex.FirstWord(next.Before)] && !lexicon.Vocab().Articles[lex.FirstWord(next.Before)] {
		return false
	}
	if next.Before == "" && !next.value() && next.Kind != lexicon.It || !hasFigure(g.list[i:]) {
		return false
	}
	g.flush(group{force: lex.Helping[w[0]]})
	return true
}

// inverted returns what a clause does that begins at item i with its verb before its subject: "…, could the gap be 3", "and is the
// wall 48". It is "" for other clauses: what asks never sets.
func (g *grouping) inverted(i int) act.Kind {
	it := g.list[i]
	if it.breaks() || i > 0 && !g.list[i-1].breaks() {
		return ""
	}
	switch g.g.force {
	case act.State:
		if g.g.sealed && !g.empty() && i == 0 {
			return ""
		}
	case act.Forget, act.ForgetAllBut, act.Check, act.Take:
		if i == 0 || g.empty() {
			return ""
		}
	default:
		return ""
	}
	if !it.value() && it.Kind != lexicon.Part && it.Kind != lexicon.Loc && it.Kind != lexicon.It && it.Kind != lexicon.Theirs {
		return ""
	}
	w := leadingTo(it)
	if len(w) == 0 || len(w) < 2 && !(it.value() && modal[w[0]]) && (it.value() || it.Kind != lexicon.It) {
		return ""
	}
	force := lex.Helping[w[0]]
	subject := it.value() && len(w) == 1 || it.Kind == lexicon.It && !it.value() && len(w) == 1 || len(w) > 1 && (scan.Subjects[w[1]] || lexicon.Vocab().Articles[w[1]])
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
