package gist

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/scan"
)

// gistChoice keeps the reading that needs most of what it may be, and whether another one needs as much.
type gistChoice struct {
	best  gistAct
	score int
	tied  bool
}

func (c *gistChoice) take(a gistAct, n int) {
	switch {
	case n > c.score:
		c.best, c.score, c.tied = a, n, false
	case n == c.score && !sameGist(a, c.best):
		c.tied = true
	}
}

// whole reads a stretch as one thing that is done. Of the modes and frames that fit, the one that needs most is taken; where two need as
// much, none is.
func (g *gist) whole(items []gistItem) (gistAct, bool) {
	var choice gistChoice
	figures := 0
	for i := range items {
		if items[i].figure != 0 {
			figures++
		}
	}
	if figures == 0 {
		g.asLine(items, &choice)
	}
	modes := gistFrames().modes
	for i := range modes {
		g.inMode(&modes[i], items, figures, &choice)
	}
	return choice.best, choice.score > 0 && !choice.tied
}

// asLine reads a stretch without a figure as a question, an order or a wish.
func (g *gist) asLine(items []gistItem, choice *gistChoice) {
	first := g.atoms[items[0].from].Text
	asks := g.inverted(items) || items[len(items)-1].sign == "?" && (first == "has" || first == "have" || first == "had")
	lines := gistFrames().lines
	for i := range lines {
		if l := &lines[i]; (!asks || !l.orders) && g.fits(items, l.need, l.may, senseSet{}) {
			choice.take(g.lineAct(l.normal, items), len(l.need))
		}
	}
}

// inMode reads a stretch in a mode, as what the mode can be of: a quantity that is named, a line that states, or statements.
func (g *gist) inMode(m *gistModeRow, items []gistItem, figures int, choice *gistChoice) {
	if m.act == act.Check {
		if g.ownBefore(items) {
			return
		}
		items = g.withoutSource(items)
	}
	if m.figure && figures == 1 {
		items = withoutFigure(items)
	} else if m.figure || m.names && figures > 0 {
		return
	}
	if m.asks && items[len(items)-1].sign != "?" && !g.inverted(items) || !meetsAll(items, m.need) ||
		m.act == act.WhatIf && (g.asksOn(items) > 0 || g.statedBefore(items)) {
		return
	}
	switch {
	case m.states && figures == 0:
		g.lineIn(m, items, choice)
	case m.names:
		g.nameIn(m, items, choice)
	case m.act == act.State && (items[len(items)-1].sign == "?" || g.inverted(items)):
	default:
		g.statementsIn(m, items, choice)
	}
}

// lineIn reads a line that states something without a figure, as it is tried or claimed.
func (g *gist) lineIn(m *gistModeRow, items []gistItem, choice *gistChoice) {
	if m.act == act.State {
		return // a line of its own
	}
	lines := gistFrames().lines
	for i := range lines {
		if l := &lines[i]; l.states && g.deniedOnce(items) && g.fits(items, bothNeeds(m.need, l.need), l.may, m.may) {
			choice.take(gistAct{act: m.act, normal: string(m.act) + " " + l.normal}, len(m.need)+len(l.need))
		}
	}
}

// nameIn reads the name of a quantity, as it is asked for, explained or forgotten.
func (g *gist) nameIn(m *gistModeRow, items []gistItem, choice *gistChoice) {
	names := gistFrames().names
	for i := range names {
		if n := &names[i]; !n.never && g.names(items, m, n) {
			choice.take(gistAct{act: m.act, normal: string(m.act) + " " + n.plain}, len(m.need)+len(n.named))
		}
	}
}

// statementsIn reads statements with their figures.
func (g *gist) statementsIn(m *gistModeRow, items []gistItem, choice *gistChoice) {
	g.act = m.act
	told, n, ok := g.statements(items, m.may, senseSet{})
	if !ok || m.act == act.Check && told[0][0].Text == "they" && !eachMet(items, bothNeeds(m.need, g.needs("seller|lengths")), 0, nil) {
		return // "the yard has tens" is no claim of the yard's
	}
	choice.take(gistAct{act: m.act, told: told}, len(m.need)+n)
}

// bothNeeds are the needs of a mode and of what it is of.
func bothNeeds(a, b []senseSet) []senseSet { return append(a[:len(a):len(a)], b...) }

// inverted reports whether a part begins as a question does.
func (g *gist) inverted(items []gistItem) bool {
	for len(items) > 1 && items[0].to == items[0].from+1 && (items[0].sign != "" || g.joint(items[0]) || idiom.LeadWords[g.atoms[items[0].from].Text]) {
		items = items[1:]
	}
	first := g.atoms[items[0].from]
	if items[0].to > items[0].from+1 {
		return false
	}
	had := (first.Text == "have" || first.Text == "has" || first.Text == "had") && items[0].to < len(g.atoms) && lex.Speakers[g.atoms[items[0].to].Text]
	return first.Kind == scan.Word && (idiom.AskingWords[first.Text] || had)
}

// names reports whether a stretch names a quantity in a mode. What asks may name it as well: "how many boards", "how wide".
func (g *gist) names(items []gistItem, m *gistModeRow, n *gistRow) bool {
	if m.act == act.Ask {
		return g.fits(items, n.named, n.may, m.may)
	}
	if last := trimSigns(items); m.act == act.Why && last[len(last)-1].senses.meets(m.need[0]) {
		return false // "how many stiffeners are there, and why"
	}
	return g.fits(items, bothNeeds(m.need, n.named), n.may, m.may)
}

func sameGist(a, b gistAct) bool {
	if a.act != b.act || a.normal != b.normal || len(a.told) != len(b.told) {
		return false
	}
	for i := range a.told {
		if scan.Text(a.told[i]) != scan.Text(b.told[i]) {
			return false
		}
	}
	return true
}

func meetsAll(items []gistItem, need []senseSet) bool {
	for _, s := range need {
		met := false
		for i := range items {
			if items[i].senses.meets(s) {
				met = true
				break
			}
		}
		if !met {
			return false
		}
	}
	return true
}

// needs looks up needed senses.
func (g *gist) needs(names string) (out []senseSet) {
	for _, n := range strings.Fields(names) {
		out = append(out, g.book.set(n))
	}
	return out
}

// withoutFigure leaves out the figures of a stretch.
func withoutFigure(items []gistItem) []gistItem {
	return slices.DeleteFunc(slices.Clone(items), func(it gistItem) bool { return it.figure != 0 })
}

// fits reports whether a stretch has what is needed, each by an item of its own, and nothing that may not be.
func (g *gist) fits(items []gistItem, need []senseSet, may, also senseSet) bool {
	all := may.with(also)
	for _, s := range need {
		all = all.with(s)
	}
	for i := range items {
		if items[i].sign == "" && items[i].figure == 0 && !items[i].senses.meets(all) {
			return false
		}
		for k := range items[:i] { // two bays, or two boards, that are named by their numbers
			if items[i].plain != "" && items[k].plain != "" && items[i].senses == items[k].senses {
				return false
			}
		}
	}
	return eachMet(items, need, 0, nil)
}

// eachMet gives each need an item of its own.
func eachMet(items []gistItem, need []senseSet, k int, taken []int) bool {
	if k == len(need) {
		return true
	}
next:
	for i := range items {
		if !items[i].senses.meets(need[k]) {
			continue
		}
		for _, t := range taken {
			if t == i {
				continue next
			}
		}
		if eachMet(items, need, k+1, append(taken, i)) {
			return true
		}
	}
	return false
}
