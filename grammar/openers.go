package grammar

import (
	"strings"

	"saywright/solver"
)

// onlyAsks reports whether the sentence so far does no more than ask whether something is known.
func (g *grouping) onlyAsks() bool {
	if g.g.force != Check && g.g.force != State || g.g.cmd != "" || g.g.sealed || len(g.g.items) == 0 {
		return false
	}
	for _, it := range g.g.items {
		if it.value() || it.kind != kIt && it.kind != kKnowing && it.kind != kHave && it.kind != kTailFill && it.kind != kAbout && it.kind != kSell && !(it.kind == kBound && it.text == "exactly") && !it.breaks() && !(it.kind == kSellMore && it.text == "also") {
			return false
		}
	}
	return true
}

// wholeQuestion reports whether the words that open a question name all that it asks for: "how many rails will he end up with".
func (g *grouping) wholeQuestion() bool {
	return g.g.force == Ask && g.g.head != nil && g.g.head.kind == kWh && len(g.g.sense) == 1 && !g.g.sense[0].sure.empty() && strings.Count(g.g.head.text, " ") > 2
}

func (g *grouping) teach(i int) bool {
	g.flush(group{force: Teach, head: g.list[i].token})
	return true
}

func (g *grouping) nameWord(i int) bool {
	g.g.name = g.list[i].text
	return true
}

func (g *grouping) csv(i int) bool {
	switch n := len(g.s.groups); {
	case g.g.topic != "" || g.g.force == Ask && !g.empty():
		g.g.csv = true
	case n > g.first:
		g.s.groups[n-1].csv = true
	case i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].kind == kQuest:
		if g.empty() && g.g.force == WhatIf && g.g.head != nil && !strong(g.g.head) {
			g.g = group{force: State} // "can I get a spreadsheet of the cuts"
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
		return !t.value() && t.kind == kPart && !t.plural() && !senseOf(t.token).sure.empty() && countless(senseOf(t.token).sure)
	}
	return false
}

// countless reports whether none of what a word surely speaks of is counted.
func countless(s set) bool { return s.and(ofKind[solver.Count]).empty() }

// whoCounts reports whether a subject stands before a verb.
func whoCounts(before string) bool {
	f := strings.Fields(before)
	return len(f) > 0 && subjects[f[len(f)-1]] || len(f) > 0 && f[len(f)-1] == "you"
}

// utmost reports whether the most or the least of something follows item i, and how much of it there can be.
func (g *grouping) utmost(i int) bool {
	if i+1 < len(g.list) && !g.list[i+1].value() && g.list[i+1].kind == kGoal && (strings.Contains(g.list[i+1].text, " can ") || strings.Contains(g.list[i+1].text, " could ")) {
		return true
	}
	if i+2 >= len(g.list) || g.list[i+1].value() || g.list[i+1].kind != kBest && g.list[i+1].kind != kGoal {
		return false
	}
	for _, it := range g.list[i+2:] {
		if it.breaks() {
			return false
		}
		if !it.value() && (it.kind == kBestTail || it.kind == kTail || it.kind == kGoesIn) {
			return true
		}
	}
	return false
}

// aside reports whether who says so stands between two commas at item i, or at the end behind one: "seven boards, he says, with two
// inches between".
func (g *grouping) aside(i int) bool {
	if i == 0 || g.list[i-1].value() || g.list[i-1].kind != kComma {
		return false
	}
	return i+1 == len(g.list) || !g.list[i+1].value() && g.list[i+1].kind == kComma
}
