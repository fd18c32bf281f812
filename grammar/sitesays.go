package grammar

import (
	"slices"

	"saywright/solver"
)

// siteOnly reports whether all pieces are of some kinds.
func siteOnly(list []siteWord, kinds ...siteKind) bool {
	return !slices.ContainsFunc(list, func(w siteWord) bool { return !slices.Contains(kinds, w.kind) })
}

// siteOf are the pieces of a kind.
func siteOf(list []siteWord, k siteKind) (out []siteWord) {
	for _, w := range list {
		if w.kind == k {
			out = append(out, w)
		}
	}
	return out
}

// siteFact sets a line that tells what was found to its plain order.
func siteFact(in []atom) ([]atom, bool) {
	list, ok := siteScan(in)
	if !ok || len(list) == 0 {
		return nil, false
	}
	for _, set := range []func([]atom, []siteWord) []atom{siteLeaning, siteSlope, siteFallPerFoot, siteHung, siteWished, siteMeasured} {
		if out := set(in, list); out != nil {
			return out, true
		}
	}
	return nil, false
}

// sitePlain are words, and the atoms of a figure, one after the other.
func sitePlain(in []atom, pieces ...any) []atom {
	var out []atom
	for _, p := range pieces {
		switch p := p.(type) {
		case siteWord:
			for k, a := range in[p.from:p.to] {
				if k == 0 {
					a.glued = false
				}
				out = append(out, a)
			}
		case string:
			for _, w := range turn(p) {
				a := atom{text: w, kind: aWord, at: in[0].at, end: in[0].end}
				if w == "," || w == "." {
					a.kind, a.glued = aSign, false
				} else if w[0] >= '0' && w[0] <= '9' {
					a.kind = aDigits
				}
				out = append(out, a)
			}
		}
	}
	if len(out) > 0 {
		out[len(out)-1].end = in[len(in)-1].end
	}
	return out
}

// siteMeasured sets what was measured in bays: each figure has its place right before it, or right behind it.
func siteMeasured(in []atom, list []siteWord) []atom {
	if !siteOnly(list, siteBay, siteRail, siteSpot, siteLength, siteTape, siteRoom) {
		return nil
	}
	var places [][]siteWord
	figures := siteOf(list, siteLength)
	if len(siteOf(list, siteBay)) == 0 || len(figures) == 0 {
		return nil
	}
	for order := range 3 {
		if places = sitePlaces(list, len(figures), order); places != nil {
			break
		}
	}
	if places == nil {
		return nil
	}
	var out []any
	for k, p := range places {
		text := "bay " + itoa(p[0].n) + " rail " + itoa(p[1].n) + " measured"
		if p[1].kind == siteSpot {
			text = "bay " + itoa(p[0].n) + " " + p[1].text + " measured"
		}
		if k > 0 {
			out = append(out, ".")
		}
		out = append(out, text, figures[k])
	}
	return sitePlain(in, out...)
}

// sitePlaces gives each of so many figures the bay, and the rail or the spot, that stand before it (or behind it): what holds for the
// ones before holds on. In the last order the bay stands before its figure, and the spot behind it. It is nil where a place is missing or told twice.
func sitePlaces(list []siteWord, n, order int) [][]siteWord {
	groups := make([][]siteWord, n)
	k := 0
	for _, w := range list {
		switch {
		case w.kind == siteLength:
			k++
		case w.kind == siteTape || w.kind == siteRoom:
		case order == 1 || order == 2 && w.kind != siteBay:
			groups[max(0, k-1)] = append(groups[max(0, k-1)], w)
		case n == 1:
			groups[0] = append(groups[0], w)
		case k == n:
			return nil
		default:
			groups[k] = append(groups[k], w)
		}
	}
	var bay, at *siteWord
	out := make([][]siteWord, n)
	for g, words := range groups {
		fresh := g == 0
		var gotBay, gotAt *siteWord
		for i := range words {
			to := &gotAt
			if words[i].kind == siteBay {
				to = &gotBay
			}
			if *to != nil && ((*to).n != words[i].n || (*to).text != words[i].text) {
				switch {
				case (*to).kind == siteRail && words[i].kind == siteSpot && words[i].text == "top" || n > 1 && g == 0 && words[i].kind == siteBay:
				default:
					return nil
				}
			}
			*to = &words[i]
			fresh = true
		}
		if gotBay != nil {
			bay = gotBay
		}
		if gotAt != nil {
			at = gotAt
		}
		if !fresh || bay == nil || at == nil {
			return nil
		}
		out[g] = []siteWord{*bay, *at}
	}
	for g := range out {
		for h := range g {
			if out[g][0].n == out[h][0].n && out[g][1].n == out[h][1].n && out[g][1].text == out[h][1].text {
				return nil
			}
		}
	}
	return out
}

// siteHung sets where a board hangs already: "R2 in place. Top 398 mm."
func siteHung(in []atom, list []siteWord) []atom {
	if !siteOnly(list, siteRail, siteSpot, siteLength, siteUp, siteTape, siteMove, siteNot) {
		return nil
	}
	if still := len(siteOf(list, siteMove)); still != len(siteOf(list, siteNot)) {
		return nil
	}
	rails, figures, spots := siteOf(list, siteRail), siteOf(list, siteLength), siteOf(list, siteSpot)
	if len(rails) == 0 || len(figures) != 1 || len(siteOf(list, siteUp))+len(siteOf(list, siteMove)) == 0 || !siteTopOfOne(rails, spots) {
		return nil
	}
	return sitePlain(in, "rail "+itoa(rails[0].n)+" is already up , its top is at", figures[0])
}

// siteWished sets where the top of a board is to be: "top of number five goes at forty and a half, that's rail five".
func siteWished(in []atom, list []siteWord) []atom {
	rails, figures := siteOf(list, siteRail), siteOf(list, siteLength)
	if !siteOnly(list, siteRail, siteSpot, siteLength, siteWant) || len(figures) != 1 || !siteTopOfOne(rails, siteOf(list, siteSpot)) {
		return nil
	}
	return sitePlain(in, "the top of rail "+itoa(rails[0].n)+" at", figures[0])
}

// siteTopOfOne reports whether the top of one board is spoken of.
func siteTopOfOne(rails, spots []siteWord) bool {
	for _, r := range rails {
		if r.n != rails[0].n {
			return false
		}
	}
	for _, s := range spots {
		if s.text != "top" {
			return false
		}
	}
	return len(rails) > 0 && len(spots) > 0
}

// siteLeaning sets how a post leans: the longer figure is how far up it was measured.
func siteLeaning(in []atom, list []siteWord) []atom {
	if !siteOnly(list, sitePost, siteSide, siteLength, siteLean, siteTape, siteWant, siteNot) {
		return nil
	}
	plumb := 0
	for i := range in {
		if in[i].text == "plumb" {
			plumb++
		}
	}
	if plumb < len(siteOf(list, siteWant))+len(siteOf(list, siteNot)) {
		return nil // "the left post must not lean"
	}
	posts, sides, figures := siteOf(list, sitePost), siteOf(list, siteSide), siteOf(list, siteLength)
	if len(posts) != 1 || len(sides) != 1 || len(figures) != 2 {
		return nil
	}
	by, run := figures[0], figures[1]
	if run.inches.val.Less(by.inches.val) {
		by, run = run, by
	}
	if run.inches.val.Less(by.inches.val.Mul(oneRat.Add(oneRat)).Mul(oneRat.Add(oneRat))) {
		return nil
	}
	if run.inches.unit == bare && by.inches.unit == metric || by.inches.unit == bare && run.inches.unit == metric {
		return nil
	}
	return sitePlain(in, posts[0].text+" post leans", by, sides[0].text+" over", run)
}

// siteSlope sets how a floor lies at one end against the other.
func siteSlope(in []atom, list []siteWord) []atom {
	if !siteOnly(list, siteFloor, siteSide, sitePost, siteLength, siteFall, siteThan, siteTape) {
		return nil
	}
	figures, falls, floors := siteOf(list, siteLength), siteOf(list, siteFall), siteOf(list, siteFloor)
	if len(figures) != 1 || len(falls) == 0 || len(floors) > 1 || len(floors) == 0 && !(siteLost[falls[0].said(in)] && len(siteOf(list, siteSide)) == 2) {
		return nil
	}
	for _, f := range falls {
		if f.text != falls[0].text {
			return nil
		}
	}
	side := ""
	for _, w := range list {
		if w.kind != siteSide && w.kind != sitePost {
			continue
		}
		against := w.from > 0 && siteAgainst(in[:w.from])
		if against {
			continue
		}
		if side != "" {
			return nil
		}
		side = w.text
	}
	if side == "" {
		return nil
	}
	is := "the floor is"
	if at := figures[0].from; at > 0 && siteAbout[in[at-1].text] || at > 1 && siteAbout[in[at-2].text] && vocab().articles[in[at-1].text] {
		is += " about"
	}
	return sitePlain(in, is, figures[0], falls[0].text+" at the "+side)
}

// siteAbout are words by which a length is told no closer.
var siteAbout = wordSet("about around roughly approximately")

// siteLost are verbs that a floor alone goes with from one side to the other: "we lose an inch from left to right".
var siteLost = wordSet("lose loses")

// said is the word itself that tells a piece.
func (w siteWord) said(in []atom) string { return in[w.from].text }

// siteFallPerFoot sets how a floor falls in each foot: "every foot you go to the right, the floor is another sixteenth lower".
func siteFallPerFoot(in []atom, list []siteWord) []atom {
	figures, falls, sides := siteOf(list, siteLength), siteOf(list, siteFall), siteOf(list, siteSide)
	if !siteOnly(list, siteFloor, siteSide, siteLength, siteFall, siteFoot) || len(figures) != 1 || len(siteOf(list, siteFoot)) != 1 || len(siteOf(list, siteFloor)) != 1 || len(falls) == 0 {
		return nil
	}
	for _, f := range falls {
		if f.text != "lower" {
			return nil
		}
	}
	if len(sides) > 1 || len(sides) == 1 && sides[0].text != "right" {
		return nil
	}
	return sitePlain(in, "the floor falls", figures[0], "per foot")
}

// siteAgainst reports whether what follows is only what the floor is held against: "lower than at the left", "down from the left".
func siteAgainst(before []atom) bool {
	for k := 1; k <= 3; k++ {
		switch lastOf(before, k) {
		case "than", "from", "against", "compared":
			return true
		case "the", "at", "on", "to", "with", "my", "our":
		default:
			return false
		}
	}
	return false
}

// longestSiteLine is the most words and signs of a line in which a fact of the site is looked for piece by piece.
const longestSiteLine = 120

// siteFound reads a line that tells what was found at the site, or a line of which one end does.
func siteFound(atoms []atom, c Context) (Reading, bool) {
	claimed := slices.ContainsFunc(lex(atoms, c), func(t token) bool { return t.kind == kHead && t.key() == string(Check) })
	try := func(head, plain, tail []atom) (Reading, bool) {
		all := append(append(append([]atom{}, head...), plain...), tail...)
		r := readAtoms(all, c)
		if r.Ask == nil && claimed && stated(solver.FloorAtRight, solver.Drop)(r.Acts[0]) {
			return r, false // "the guy with the level claims the slab drops an inch": what is claimed is no fact
		}
		return r, r.Ask == nil
	}
	if len(atoms) > longestSiteLine {
		return Reading{}, false
	}
	if plain, ok := siteFact(atoms); ok {
		return try(nil, plain, nil)
	}
	cuts := clauseStarts(atoms)
	for len(cuts) > 1 && cuts[len(cuts)-1] >= len(atoms) {
		cuts = cuts[:len(cuts)-1]
	}
	stop := []atom{{text: ".", kind: aSign, at: atoms[0].at, end: atoms[0].end}}
	for k := len(cuts) - 1; k > 0; k-- {
		if plain, ok := siteFact(atoms[:cuts[k]]); ok {
			tail := withoutJoint(atoms[cuts[k]:])
			if r, ok := try(nil, plain, append(stop, tail...)); ok {
				return r, true
			}
		}
	}
	for k := 1; k < len(cuts); k++ {
		if plain, ok := siteFact(withoutJoint(atoms[cuts[k]:])); ok {
			head := append([]atom{}, atoms[:cuts[k]]...)
			for len(head) > 0 && head[len(head)-1].kind == aSign && head[len(head)-1].text != "?" {
				head = head[:len(head)-1]
			}
			head = append(head, stop...)
			if r, ok := try(head, plain, nil); ok {
				return r, true
			}
		}
	}
	return Reading{}, false
}
