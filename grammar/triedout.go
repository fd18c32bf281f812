package grammar

import "strings"

// Words that say something is only tried may stand behind it: "raise it three inches just to see", "gap 2, just for fun".

// onlyWonders reports whether the words of a head wonder, and do not yet say about what.
func onlyWonders(head string) bool {
	for _, w := range strings.Fields(strings.TrimRight(head, " ,:;-.")) {
		switch strings.TrimRight(w, ",:;.") {
		case "wondering", "curious", "asking", "comparison", "see", "fun", "interest", "curiosity", "exploring", "comparing", "setting", "changing", "comparisons", "test", "experiment", "exercise", "trial":
			switch lastWord(head) {
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
	if g.g.force != State || g.g.cmd != "" || g.empty() || !hasValue(g.g.items) || !onlyWonders(t.text) {
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
	return !g.atBreak(i) && !next.value() && (next.kind == kWh || next.kind == kQuest || next.kind == kWhere)
}

// bidsCheck reports whether a head only bids somebody check: "check his arithmetic".
func bidsCheck(head string) bool {
	switch firstWord(head) {
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
		case it.breaks(), it.kind == kTheirs && k > 0, it.kind == kTail:
		case it.kind == kHead && it.key() == string(Check) && (bidsCheck(it.text) || reckoned[it.text]):
		default:
			return false
		}
	}
	return true
}

// reckoned are words for what somebody worked out.
var reckoned = wordSet("arithmetic math maths sums sum figures numbers work count claim claims reckoning figuring calculation calculations")

// midClause reports whether a part or a figure stands right before, with no break.
func (l *lexing) midClause() bool {
	t := l.last()
	return t != nil && (t.kind == kPart || t.kind == kLoc || t.kind == kNum || t.kind == kDim || t.kind == kSize)
}

// supposesBefore reports whether a word that asks or supposes stands before in the sentence: "would six boards do it".
func (l *lexing) supposesBefore() bool {
	return l.saidSince(func(t *token) bool {
		switch firstWord(t.before) {
		case "would", "will", "could", "can", "might", "does", "do":
			return true
		}
		return t.kind == kHead && t.key() == string(WhatIf)
	})
}

// cutsNoBoard reports whether what stands right before is no board, so that "cut down to" only makes it less.
func (l *lexing) cutsNoBoard() bool {
	t := l.last()
	if n := len(l.tokens); n > 1 && t.kind == kNum {
		t = &l.tokens[n-2] // "bay one was cut down"
	}
	return t != nil && t.kind == kPart && t.key() != "rail" && t.key() != "post" && t.key() != "added post" && t.key() != "stiffener" && t.key() != "bottom"
}
