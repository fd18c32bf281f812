package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// Words that say something is only tried may stand behind it: "raise it three inches just to see", "gap 2, just for fun".

// onlyWonders reports whether the words of a head wonder, and do not yet say about what.
func onlyWonders(head string) bool {
	for _, w := range strings.Fields(strings.TrimRight(head, " ,:;-.")) {
		switch strings.TrimRight(w, ",:;.") {
		case "wondering", "curious", "asking", "comparison", "see", "fun", "interest", "curiosity", "exploring", "comparing", "setting", "changing", "comparisons", "test", "experiment", "exercise", "trial":
			switch lex.LastWord(head) {
			case "if", "whether", "with", "about", "when":
				return false
			}
			return true
		}
	}
	return false
}

// triedOut reports whether a head at item i tells that what stands before it is only tried: nothing, or a question, follows.
func (g *grouping) triedOut(i int) bool {
	t := g.list[i]
	if g.g.force != act.State || g.g.cmd != "" || g.empty() || !hasValue(g.g.items) || !onlyWonders(t.Text) {
		return false
	}
	if g.closes(i) {
		return true
	}
	k := i + 1
	for k < len(g.list) && g.list[k].breaks() {
		k++
	}
	next := g.list[k]
	return !g.atBreak(i) && !next.value() && (next.Kind == lexicon.Wh || next.Kind == lexicon.Quest || next.Kind == lexicon.Where)
}

// bidsCheck reports whether a head only bids somebody check: "check his arithmetic".
func bidsCheck(head string) bool {
	switch lex.FirstWord(head) {
	case "check", "chk", "verify", "confirm", "vet", "recheck", "validate", "test":
		return true
	}
	return false
}

// bidsOnly reports whether a head at item i, and all that follows, only bids somebody check what was claimed: "check his arithmetic".
func (g *grouping) bidsOnly(i int) bool {
	for k, it := range g.list[i:] {
		switch {
		case it.value():
			return false
		case it.breaks(), it.Kind == lexicon.Theirs && k > 0, it.Kind == lexicon.Tail:
		case it.Kind == lexicon.Head && it.Key() == string(act.Check) && (bidsCheck(it.Text) || reckoned[it.Text]):
		default:
			return false
		}
	}
	return true
}

// reckoned are words for what somebody worked out.
var reckoned = scan.WordSet("arithmetic math maths sums sum figures numbers work count claim claims reckoning figuring calculation calculations")
