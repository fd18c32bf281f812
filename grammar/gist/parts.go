package gist

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/scan"
)

// list reads a stretch as a whole, or as parts at its joints, no more than that many. A part at a sign may be chatter, or what the grammar
// reads by itself.
func (g *gist) list(items []gistItem, parts int, c act.Context) ([]gistAct, bool) {
	items = trimSigns(items)
	if len(items) == 0 {
		return nil, false
	}
	if last := items[len(items)-1]; last.to == last.from+1 && dangles[g.atoms[last.from].Text] {
		return nil, false // "gap between two and"
	}
	if a, ok := g.whole(items); ok {
		if two := g.bothAsked(items); two != nil && parts > 1 {
			return two, true
		}
		return []gistAct{a}, true
	}
	if a, ok := g.amended(items); ok {
		return []gistAct{a}, true
	}
	if parts == 1 {
		return nil, false
	}
	for cut := 1; cut < len(items); cut++ {
		if items[cut].sign == "" {
			continue
		}
		left, right := trimSigns(items[:cut]), items[cut+1:]
		switch {
		case g.chatters(left) && items[cut].sign != ":":
			if list, ok := g.list(right, parts-1, c); ok {
				return list, true
			}
		case g.chatters(trimSigns(right)) && g.adds(trimSigns(right)):
			if list, ok := g.list(left, parts-1, c); ok {
				return list, true
			}
		}
		if list, ok := g.twoParts(left, right, parts, c); ok {
			return list, true
		}
	}
	if cut := g.asksOn(items); cut > 0 {
		if list, ok := g.twoParts(trimSigns(items[:cut]), items[cut:], parts, c); ok {
			return list, true
		}
	}
	for cut := 1; cut < len(items); cut++ {
		if g.goesOn(items, cut) && g.chatters(items[:cut]) {
			if list, ok := g.list(items[cut:], parts-1, c); ok {
				return list, true
			}
		}
	}
	for cut := 1; cut < len(items); cut++ {
		if g.joint(items[cut]) {
			if list, ok := g.twoParts(trimSigns(items[:cut]), items[cut+1:], parts, c); ok && !(len(list) > 1 && list[0].act == act.Ask && list[1].act == act.State) { // "the cost with five rails" tries them
				return list, true
			}
		}
	}
	return nil, false
}

// goesOn reports whether a clause begins at an item for which the words before it are but the reason: "… so hold the board up",
// "because the cat is small I want …".
func (g *gist) goesOn(items []gistItem, cut int) bool {
	w := g.atoms[items[cut].from].Text
	if items[cut].figure != 0 || items[cut].sign != "" {
		return false
	}
	return w == "so" || (w == "i" || w == "we" || w == "let" || w == "please") && gistReasons[g.atoms[items[0].from].Text]
}

// gistReasons are words that begin why something is wanted.
var gistReasons = scan.WordSet("because since cause after seeing given for")

// dangles are words that more was to follow.
var dangles = scan.WordSet("and or with but plus at by to for of than then the a an is are be my our its from in on under over")

// bothAsked are the two things that a stretch without figures asks or orders, where either side of a joint is one by itself: the frame of
// the one may have place for the words of the other.
func (g *gist) bothAsked(items []gistItem) []gistAct {
	for i := range items {
		if items[i].figure != 0 {
			return nil
		}
	}
	for cut := 1; cut+1 < len(items); cut++ {
		if items[cut].sign == "" && !g.joint(items[cut]) {
			continue
		}
		left, right := trimSigns(items[:cut]), trimSigns(items[cut+1:])
		for len(right) > 0 && g.joint(right[0]) {
			right = right[1:]
		}
		if len(left) == 0 || len(right) == 0 {
			continue
		}
		one, ok := g.whole(left)
		other, too := g.whole(right)
		if ok && too && !sameGist(one, other) {
			return []gistAct{one, other}
		}
	}
	return nil
}

// twoParts reads a part and what follows it.
func (g *gist) twoParts(left, right []gistItem, parts int, c act.Context) ([]gistAct, bool) {
	first, ok := g.part(left, c)
	if !ok {
		return nil, false
	}
	if first.measures() {
		return nil, false // "bay 1: 66 at the floor, 65 at the top of the wall"
	}
	rest, ok := g.list(right, parts-1, c)
	if !ok && first.act == act.Check {
		if next, also := g.carried(left, trimSigns(right)); also {
			return []gistAct{first, next}, true
		}
	}
	if !ok {
		if last, byGrammar := g.part(trimSigns(right), c); byGrammar && first.acts == nil && (first.act != act.WhatIf && first.act != act.Check || last.acts[0].Kind != act.State) && (first.act != act.State || last.acts[0].Kind != act.WhatIf) {
			return []gistAct{first, last}, true
		}
		return nil, false
	}
	for _, a := range rest[0].acts {
		if a.Kind == act.State && (first.act == act.WhatIf || first.act == act.Check) {
			return nil, false // what goes on after a claim is claimed as well
		}
	}
	if n := len(first.acts); n > 0 && first.acts[n-1].Kind != act.Ask && first.acts[n-1].Kind != act.State && (rest[0].act == act.State || len(rest[0].acts) > 0 && rest[0].acts[0].Kind == act.State || rest[0].act == first.acts[n-1].Kind) {
		return nil, false // tried or claimed as well, or told beside it?
	}
	if (rest[0].act == act.State || len(rest[0].acts) > 0 && rest[0].acts[0].Kind == act.State || rest[0].act == first.act && g.unlike(first, rest[0])) && len(rest[0].told) > 0 && (first.act == act.WhatIf || first.act == act.Check) {
		first.told = append(first.told[:len(first.told):len(first.told)], rest[0].told...)
		rest = rest[1:]
	}
	return append([]gistAct{first}, rest...), true
}

// unlike reports whether two parts tell of different quantities: the claims of two people about one are held against the rest one by one.
func (g *gist) unlike(a, b gistAct) bool {
	return len(a.told) > 0 && len(b.told) > 0 && a.told[0][0].Text != b.told[0][0].Text
}

// measures reports whether a part ends in what was measured, so that what follows may be measured as well.
func (a *gistAct) measures() bool {
	n := len(a.acts)
	if n == 0 || a.acts[n-1].Kind != act.State || len(a.acts[n-1].Statements) == 0 {
		return false
	}
	last := a.acts[n-1].Statements
	return strings.HasPrefix(last[len(last)-1].String(), "measured")
}

// part reads a part by its gist, or as the grammar reads it by itself.
func (g *gist) part(items []gistItem, c act.Context) (gistAct, bool) {
	if len(items) == 0 {
		return gistAct{}, false
	}
	if a, ok := g.whole(items); ok {
		return a, true
	}
	figured := items[len(items)-1].sign == "?"
	for i := range items {
		figured = figured || items[i].figure != 0
	}
	if !figured || len(items) < 3 || g.pointsBack(items) {
		return gistAct{}, false
	}
	if items[0].senses.has(g.book.sense("not")) || len(items) > 1 && items[1].senses.has(g.book.sense("not")) && items[0].senses.meets(g.book.light) {
		return gistAct{}, false // "actually no, three" takes something back
	}
	r := hear.Atoms(g.atoms[items[0].from:items[len(items)-1].to], c)
	for _, a := range r.Acts {
		if a.Kind != act.State && a.Kind != act.Ask && a.Kind != act.WhatIf && a.Kind != act.Check {
			return gistAct{}, false
		}
	}
	return gistAct{acts: r.Acts}, r.Ask == nil
}

// chatters reports whether a part holds words of no sense, and nothing by which something is told, asked, tried or denied.
func (g *gist) chatters(items []gistItem) bool {
	noisy := false
	for i := range items {
		if items[i].figure != 0 || items[i].sign == "?" || items[i].sign == "" && !items[i].senses.meets(g.book.chatter) {
			return false
		}
		noisy = noisy || items[i].senses.meets(g.book.noise)
	}
	return noisy
}

// adds reports whether chatter behind what was told speaks of somebody or something of its own: "my husband nags me about it".
func (g *gist) adds(items []gistItem) bool {
	if g.pointsBack(items) {
		return false
	}
	for len(items) > 1 && (g.joint(items[0]) || items[0].sign != "") {
		items = items[1:]
	}
	w := g.atoms[items[0].from].Text
	return len(items) > 2 && (lex.Speakers[w] || lex.OtherOnes[w] || lex.Owned[w] || items[0].senses.has(g.book.sense("person")))
}

// PointsBack reports whether a part speaks of what was said before it.
func (g *gist) pointsBack(items []gistItem) bool {
	for i := range items {
		for _, a := range g.atoms[items[i].from:items[i].to] {
			if idiom.PointsBack[a.Text] {
				return true
			}
		}
	}
	return false
}

func trimSigns(items []gistItem) []gistItem {
	for len(items) > 0 && items[0].sign != "" {
		items = items[1:]
	}
	for len(items) > 0 && items[len(items)-1].sign != "" && items[len(items)-1].sign != "?" {
		items = items[:len(items)-1]
	}
	return items
}

// gistJoints are words at which a stretch may be parted.
var gistJoints = scan.WordSet("and with but then plus &")

func (g *gist) joint(it gistItem) bool {
	return it.figure == 0 && it.to == it.from+1 && gistJoints[g.atoms[it.from].Text]
}

// WordAtoms makes atoms of words, at the place of one.
func WordAtoms(words []string, at scan.Atom) (out []scan.Atom) {
	for _, w := range words {
		out = append(out, scan.Atom{Text: w, Kind: scan.Word, At: at.At, End: at.End})
	}
	return out
}
