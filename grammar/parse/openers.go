package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
	"saywright/solver"
)

// onlyAsks reports whether the sentence so far does no more than ask whether something is known.
func (g *grouping) onlyAsks() bool {
	if g.g.force != act.Check && g.g.force != act.State || g.g.cmd != "" || g.g.sealed || len(g.g.items) == 0 {
		return false
	}
	for _, it := range g.g.items {
		if it.value() || it.Kind != lexicon.It && it.Kind != lexicon.Knowing && it.Kind != lexicon.Have && it.Kind != lexicon.TailFill && it.Kind != lexicon.About && it.Kind != lexicon.Sell && !(it.Kind == lexicon.Bound && it.Text == "exactly") && !it.breaks() && !(it.Kind == lexicon.SellMore && it.Text == "also") {
			return false
		}
	}
	return true
}

// wholeQuestion reports whether the words that open a question name all that it asks for: "how many rails will he end up with".
func (g *grouping) wholeQuestion() bool {
	return g.g.force == act.Ask && g.g.head != nil && g.g.head.Kind == lexicon.Wh && len(g.g.sense) == 1 && !g.g.sense[0].Sure.Empty() && strings.Count(g.g.head.Text, " ") > 2
}

func (g *grouping) teach(i int) bool {
	g.flush(group{force: act.Teach, head: g.list[i].Token})
	return true
}

func (g *grouping) nameWord(i int) bool {
	g.g.name = g.list[i].Text
	return true
}

func (g *grouping) csv(i int) bool {
	switch n := len(g.s.groups); {
	case g.g.topic != "" || g.g.force == act.Ask && !g.empty():
		g.g.csv = true
	case n > g.first:
		g.s.groups[n-1].csv = true
	case i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].Kind == lexicon.Quest:
		if g.empty() && g.g.force == act.WhatIf && g.g.head != nil && !strong(g.g.head) {
			g.g = group{force: act.State} // "can I get a spreadsheet of the cuts"
		}
		g.asCsv = true
	default:
		return false
	}
	return true
}

// uncounted reports whether the last thing that the question names has no count: "that gap number".
func (g *grouping) uncounted() bool {
	if n := len(g.g.items); n > 0 {
		t := g.g.items[n-1]
		return !t.value() && t.Kind == lexicon.Part && !t.Plural() && !senseOf(t.Token).Sure.Empty() && countless(senseOf(t.Token).Sure)
	}
	return false
}

// countless reports whether none of what a word surely speaks of is counted.
func countless(s lexicon.Set) bool { return s.And(lexicon.OfKind[solver.Count]).Empty() }

// whoCounts reports whether a subject stands before a verb.
func whoCounts(before string) bool {
	f := strings.Fields(before)
	return len(f) > 0 && scan.Subjects[f[len(f)-1]] || len(f) > 0 && f[len(f)-1] == "you"
}

// utmost reports whether the most or the least of something follows item i, and how much of it there can be.
func (g *grouping) utmost(i int) bool {
	if i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].Kind == lexicon.Goal && (strings.Contains(g.list[i+1].Text, " can ") || strings.Contains(g.list[i+1].Text, " could ")) {
		return true
	}
	if i+2 >= len(g.list) || g.list[i+1].value() || g.list[i+1].Kind != lexicon.Best && g.list[i+1].Kind != lexicon.Goal {
		return false
	}
	for _, it := range g.list[i+2:] {
		if it.breaks() {
			return false
		}
		if !it.value() && (it.Kind == lexicon.BestTail || it.Kind == lexicon.Tail || it.Kind == lexicon.GoesIn) {
			return true
		}
	}
	return false
}

// aside reports whether who says so stands between two commas at item i, or at the end behind one: "seven boards, he says, with two
// inches between".
func (g *grouping) aside(i int) bool {
	if i == 0 || g.list[i-1].value() || g.list[i-1].Kind != lexicon.Comma {
		return false
	}
	return i+1 == len(g.list) || !g.list[i+1].value() && g.list[i+1].Kind == lexicon.Comma
}

var QuestionOpeners = scan.WordSet("what which where whereabouts how why")
