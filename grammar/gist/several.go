package gist

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/scan"
)

// doneBy reports whether a frame is one for what is done with statements: what was claimed may only be checked, and what is told of the
// shop is no claim, though the shop is a person and "has" tells what papers show.
func (n *gistRow) doneBy(did act.Kind) bool {
	return n.only == "" || (n.only == act.Check) == (did == act.Check)
}

// several reads a stretch whose figures belong to one statement, or that tells two things in one: lengths on sale, the price of a length,
// so many boards of a size. A ";" in the plain words parts two statements.
func (g *gist) several(items []gistItem, at []int, mode senseSet) ([][]scan.Atom, int, bool) {
	var best *gistRow
	var order []int
	score := 0
	rows := gistFrames().names
	for k := range rows {
		n := &rows[k]
		found, ok := n.several(items, at)
		if !ok || !n.doneBy(g.act) || !g.fits(items, n.need, n.may, mode) {
			continue
		}
		switch {
		case len(n.need) > score:
			best, order, score = n, found, len(n.need)
		case len(n.need) == score && n.plain != best.plain:
			return nil, 0, false
		}
	}
	if best == nil || best.plain == railsCost && slices.ContainsFunc(g.items, func(it gistItem) bool { return it.figure == figSize }) {
		return nil, 0, false // of the size that is spoken of elsewhere?
	}
	var told [][]scan.Atom
	var plain []scan.Atom
	for _, w := range g.withPlaces(best.plain, items) {
		switch {
		case w == ";":
			told, plain = append(told, plain), nil
		case w == "#*":
			for i, k := range order[len(best.figs):] {
				if i > 0 {
					plain = append(plain, scan.Atom{Text: ",", Kind: scan.Sign, At: g.atoms[0].At, End: g.atoms[0].End})
				}
				plain = append(plain, g.atoms[items[k].from:items[k].to]...)
			}
		case w[0] == '#':
			k := order[w[1]-'1']
			plain = append(plain, g.atoms[items[k].from:items[k].to]...)
		case w == "=" || w == "+" || w == "-":
			plain = append(plain, scan.Atom{Text: w, Kind: scan.Sign, At: g.atoms[0].At, End: g.atoms[0].End})
		default:
			plain = append(plain, plainAtoms([]string{w}, g.atoms[0])...)
		}
	}
	return append(told, plain), score, true
}

// several finds which of the figures at some items is which of those that a frame of several figures wants: as they stand, or else in the
// only other order that fits them. The figures of a list come last, in their order.
func (n *gistRow) several(items []gistItem, at []int) ([]int, bool) {
	if n.list == 0 && len(n.figs) != len(at) || n.list != 0 && len(n.figs) >= len(at) || len(n.figs)+int(n.list) == 0 {
		return nil, false
	}
	for i := 1; i < len(at); i++ {
		if n.list != 0 && items[at[i-1]].figure&n.list != 0 && items[at[i]].figure&n.list != 0 {
			continue
		}
		for _, between := range items[at[i-1]+1 : at[i]] {
			if between.sign != "" && between.sign != "-" {
				return nil, false
			}
		}
	}
	var ways [][]int
	var place func(taken []int)
	place = func(taken []int) {
		if len(taken) < len(n.figs) {
			for _, k := range at {
				if items[k].figure&n.figs[len(taken)] != 0 && !slices.Contains(taken, k) {
					place(append(slices.Clone(taken), k))
				}
			}
			return
		}
		last := -1
		for _, k := range at {
			if slices.Contains(taken[:len(n.figs)], k) {
				continue
			}
			if items[k].figure&n.list == 0 || last >= 0 && !separate(items[last+1:k]) {
				return
			}
			taken, last = append(taken, k), k
		}
		ways = append(ways, taken)
	}
	place(nil)
	for _, w := range ways {
		if slices.IsSorted(w) {
			return w, true
		}
	}
	if len(ways) != 1 {
		return nil, false
	}
	return ways[0], true
}

// separate reports whether there is nothing but a sign or a joint between two figures of a list.
func separate(between []gistItem) bool {
	for i := range between {
		if between[i].sign == "" && between[i].to > between[i].from+1 || len(between) > 2 {
			return false
		}
	}
	return len(between) > 0
}
