package gist

import (
	"math/bits"
	"strings"

	"saywright/grammar/scan"
)

// statements reads a stretch as statements, a figure each: their plain words, and how much they needed.
func (g *gist) statements(items []gistItem, mode, carried senseSet) ([][]scan.Atom, int, bool) {
	items = trimSigns(items)
	var at []int
	for i := range items {
		if items[i].figure != 0 {
			at = append(at, i)
		}
	}
	switch {
	case len(at) == 0 || len(at) > 6:
		return nil, 0, false
	case len(at) == 1:
		if told, n, ok := g.statement(items, at[0], mode); ok {
			return [][]scan.Atom{told}, n, ok
		}
		if told, n, ok := g.several(items, at, mode); ok {
			return told, n, ok
		}
		told, n, ok := g.statement(g.carrying(items, carried), at[0]+1, mode)
		return [][]scan.Atom{told}, n, ok
	}
	var best [][]scan.Atom
	score := 0
	if told, n, ok := g.several(items, at, mode); ok {
		best, score = told, n
	} else if carried != (senseSet{}) {
		for i := range at {
			at[i]++
		}
		if told, n, ok := g.several(g.carrying(items, carried), at, mode); ok {
			best, score = told, n
		}
		for i := range at {
			at[i]--
		}
	}
	for cut := at[0] + 1; cut <= at[1]; cut++ {
		left, n, ok := g.statement(trimSigns(items[:cut]), at[0]-leadingSigns(items[:cut]), mode)
		if !ok {
			continue
		}
		rest := items[cut:]
		for len(rest) > 0 && (rest[0].sign != "" || g.joint(rest[0])) {
			rest = rest[1:]
		}
		right, k, ok := g.statements(rest, mode, g.spokenOf(items[:cut], carried))
		if !ok {
			continue
		}
		told := append([][]scan.Atom{left}, right...)
		switch {
		case n+k > score:
			best, score = told, n+k
		case n+k == score && !sameGist(gistAct{told: told}, gistAct{told: best}):
			return nil, 0, false
		}
	}
	return best, score, score > 0
}

// gistSubjects are the senses of what may be spoken of on, without its name: "six boards, two inches between them".
const gistSubjects = `board wall`

// SpokenOf is what is spoken of in a statement, or else before it.
func (g *gist) spokenOf(items []gistItem, carried senseSet) (out senseSet) {
	subjects := g.book.set(gistSubjects)
	for i := range items {
		for k, s := range items[i].senses {
			out[k] |= s & subjects[k]
		}
	}
	if out == (senseSet{}) {
		return carried
	}
	return out
}

// carrying puts what was spoken of before a statement into it.
func (g *gist) carrying(items []gistItem, carried senseSet) []gistItem {
	if carried == (senseSet{}) {
		return nil
	}
	return append([]gistItem{{from: items[0].from, to: items[0].from, senses: carried}}, items...)
}

func leadingSigns(items []gistItem) int { return len(items) - len(trimLeft(items)) }

func trimLeft(items []gistItem) []gistItem {
	for len(items) > 0 && items[0].sign != "" {
		items = items[1:]
	}
	return items
}

// statement reads a stretch with one figure: a quantity, how the figure bounds it, and the figure.
func (g *gist) statement(items []gistItem, at int, mode senseSet) ([]scan.Atom, int, bool) {
	if len(items) == 0 {
		return nil, 0, false
	}
	rel, bound, ok := g.relation(items, at)
	if !ok {
		return nil, 0, false
	}
	if !mode.meets(g.book.denied) {
		rel, bound, ok = g.denied(items, at, rel, bound)
		if !ok {
			return nil, 0, false
		}
	}
	var best *gistRow
	score, tied := 0, false
	rest := append(append([]gistItem{}, items[:at]...), items[at+1:]...)
	counted := items[at].figure&figCount != 0 && at+1 < len(items) && items[at+1].senses.meets(g.book.counted)
	all := items
	if rel == "+" || rel == "-" {
		all = append(items[:len(items):len(items)], gistItem{from: items[at].from, to: items[at].from, senses: g.book.set("change")})
	}
	rows, left := gistFrames().names, make([]gistItem, 0, len(all))
	for k := range rows {
		n := &rows[k]
		if !n.doneBy(g.act) || n.fig != figCount && counted || n.fig&items[at].figure == 0 || n.fig == figCount && !g.counts(items, at, n.need) || !g.fits(withoutBounds(left, all, at, bound, -1, n.need), n.need, n.may, mode) && !g.fits(withoutBounds(left, all, at, bound, at-1, n.need), n.need, n.may, mode) {
			continue
		}
		switch {
		case len(n.need) > score:
			best, score, tied = n, len(n.need), false
		case len(n.need) == score && n.plain != best.plain:
			tied = true
		}
	}
	if best == nil || tied || len(rest) == 0 {
		return nil, 0, false
	}
	a := g.atoms[items[at].from]
	plain := plainAtoms(g.withPlaces(best.plain, items), a)
	if best.fig == figCount && rel == "" {
		plain = append(plain, WordAtoms([]string{"="}, a)...)
		plain[len(plain)-1].Kind = scan.Sign
	}
	plain = append(plain, signed(WordAtoms(strings.Fields(rel), a))...)
	plain = append(plain, g.atoms[items[at].from:items[at].to]...)
	return plain, score, true
}

// signed makes signs of the words of a sum.
func signed(in []scan.Atom) []scan.Atom {
	for i := range in {
		if in[i].Text == "+" || in[i].Text == "-" {
			in[i].Kind = scan.Sign
		}
	}
	return in
}

// counts reports whether a figure stands before what it counts, with two words between them at the most, or a number is spoken of.
func (g *gist) counts(items []gistItem, at int, need []senseSet) bool {
	many := g.book.sense("many")
	for i := range items {
		if i > at && i <= at+3 && items[i].senses.meets(need[len(need)-1]) || items[i].senses.has(many) {
			return true
		}
	}
	return false
}

// withoutBounds leaves out the figure, and the words that only bind it where a frame does not need them; also a word at one item,
// whatever else it may mean. What is left is put into out.
func withoutBounds(out, items []gistItem, at int, bound []int, also int, need []senseSet) []gistItem {
	needed := senseSet{}
	for _, s := range need {
		needed = needed.with(s)
	}
	out, deny := out[:0], SenseBookOf().sense("deny")
next:
	for i := range items {
		if i == at {
			continue
		}
		for _, b := range bound {
			if b == i && (items[i].senses.count() <= 1 && !items[i].senses.meets(needed) || i == also || items[i].senses.has(deny)) {
				continue next
			}
		}
		out = append(out, items[i])
	}
	return out
}

// count is how many senses a set has.
func (s senseSet) count() (n int) {
	for _, w := range s {
		n += bits.OnesCount64(w)
	}
	return n
}

// deniedBound are the bounds that a denial turns round: "no gap may be wider than three" is at most three.
var deniedBound = map[string]string{"more than": "at most", "less than": "at least"}

// denied turns a bound round that is denied once, before it. Any other denial is left for the frame to refuse.
func (g *gist) denied(items []gistItem, at int, rel string, bound []int) (string, []int, bool) {
	turned := deniedBound[rel]
	if turned == "" {
		return rel, bound, true
	}
	deny, found := g.book.sense("deny"), -1
	for i := range items {
		if w := g.atoms[items[i].from].Text; i < at && (w == "may" || w == "can") && items[i].to == items[i].from+1 {
			bound = append(bound, i)
		}
		if items[i].senses.has(deny) {
			if found >= 0 || i > at {
				return "", nil, false
			}
			found = i
		}
	}
	if found < 0 {
		return rel, bound, true
	}
	return turned, append(bound, found), true
}

// relation finds how the figure at an item is bound: right before it, right behind it, or by words that can only bind.
func (g *gist) relation(items []gistItem, at int) (plain string, bound []int, ok bool) {
	for i := range items {
		for sense, p := range g.book.rel {
			if !items[i].senses.has(sense) {
				continue
			}
			if p == "+" || p == "-" {
				if i == at+1 {
					if plain != "" {
						return "", nil, false
					}
					plain, bound = p, append(bound, i)
				}
				continue
			}
			nextTo := i == at-1 || i == at-2 && items[at-1].senses.meets(g.book.light)
			if (p == "less than" || p == "more than" || p == "about") && !nextTo && !(p == "about" && i == at+1) {
				continue
			}
			if plain != "" && plain != p {
				return "", nil, false
			}
			plain, bound = p, append(bound, i)
		}
	}
	return plain, bound, true
}
