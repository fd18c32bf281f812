package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/solver"
)

// What holds only under a condition, or of some other wall, is not set: it is asked back.

// conditions are the words that begin one, besides "if", which is tried.
var conditions = map[string]bool{"when": true, "whenever": true, "unless": true, "provided": true}

// otherWalls are what a wall is called that is not this one, and walls what is called so.
var (
	otherWalls = map[string]bool{"old": true, "previous": true, "former": true, "last": true, "existing": true, "original": true}
	walls      = map[string]bool{"wall": true, "fence": true, "railing": true, "one": true}
)

// OnlyThen asks whether something is wanted in one case alone.
var OnlyThen = solver.Question{Text: "Only then, or in any case?", Example: "what if gap 2-1/2"}

// saidAt is a word of a sentence with the place of its item.
type saidAt struct {
	word string
	at   int
}

func (g *grouping) words() (out []saidAt) {
	for _, it := range g.list {
		said := it.Before
		if it.value() && len(it.lim.lead) > 0 {
			said = it.lim.lead[0].Before
		}
		for _, w := range strings.Fields(said + " " + it.Text) {
			out = append(out, saidAt{w, it.startAt()})
		}
	}
	return out
}

// provisos asks back about a sentence that would set something under a condition, or that tells of another wall.
func (g *grouping) provisos() {
	sets, tried, last := false, false, -1
	for k := g.first; k < len(g.s.groups); k++ {
		p := &g.s.groups[k]
		for _, it := range p.items {
			if !it.value() && it.Kind == lexicon.Measured {
				return // "when I measured bay 2 it was 72"
			}
			if it.value() {
				last = max(last, it.startAt())
			}
		}
		if sets && p.force == act.WhatIf && p.head != nil && strings.HasPrefix(p.head.Text, "if") && hasFigure(p.items) {
			g.s.fail(p.head.At, OnlyThen) // "six rails if the gap is over 2"
		}
		if tried && p.force == act.Forget {
			g.s.fail(p.head.At, OnlyThen) // "if the gap's under two, drop a board"
		}
		tried = tried || p.force == act.WhatIf && p.head != nil && strings.Contains(p.head.Text, "if") && hasFigure(p.items)
		sets = sets || p.force == act.State && p.cmd == "" && hasFigure(p.items)
	}
	if !sets {
		return
	}
	words := g.words()
	for i, w := range words {
		next := ""
		if i+1 < len(words) {
			next = words[i+1].word
		}
		switch {
		case w.word == "when" && (next == "i" || next == "we") && i+2 < len(words) && (measuring[words[i+2].word] || i+4 < len(words) && laying[words[i+2].word] && (rulers[words[i+3].word] || rulers[words[i+4].word])): // "when I measured the drop it was 29"
		case w.word == "when" && i > 0 && words[i-1].word == "back": // "back when we sketched it"
		case conditions[w.word] && last > w.at && !(w.word == "when" && i+2 < len(words) && (words[i+2].word == "comes" || words[i+2].word == "come" || words[i+2].word == "get")):
			g.s.fail(w.at, OnlyThen)
		case otherWalls[w.word] && walls[next] && (tells(words[i+1:]) || tells(words[max(0, i-3):i])): // "the old wall was 40", "that was the old wall"
			g.s.fail(w.at, solver.Question{Text: "Of that wall, or of the new one?", Example: "wall 48 high"})
		}
	}
}

// measuring are verbs of finding a figure on site.
var measuring = map[string]bool{"measured": true, "measure": true, "checked": true, "taped": true, "remeasured": true, "looked": true}

// laying and rulers are what else is told of measuring: "when I held my ruler across a rail".
var (
	laying = map[string]bool{"held": true, "put": true, "laid": true, "ran": true, "hooked": true, "stretched": true, "pulled": true, "set": true}
	rulers = map[string]bool{"ruler": true, "tape": true, "rule": true, "calipers": true, "caliper": true, "level": true, "laser": true, "yardstick": true}
)

// tells reports whether what follows tells of what was.
func tells(words []saidAt) bool {
	for _, w := range words {
		switch w.word {
		case "had", "was", "were", "used":
			return true
		}
	}
	return false
}
