package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
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

// SiteFact sets a line that tells what was found to its plain order.
func SiteFact(in []scan.Atom) ([]scan.Atom, bool) {
	list, ok := siteScan(in)
	if !ok || len(list) == 0 {
		return nil, false
	}
	for _, set := range []func([]scan.Atom, []siteWord) []scan.Atom{siteLeaning, siteSlope, siteFallPerFoot, siteHung, siteWished, siteMeasured} {
		if out := set(in, list); out != nil {
			return out, true
		}
	}
	return nil, false
}

// sitePlain are words, and the atoms of a figure, one after the other.
func sitePlain(in []scan.Atom, pieces ...any) []scan.Atom {
	var out []scan.Atom
	for _, p := range pieces {
		switch p := p.(type) {
		case siteWord:
			for k, a := range in[p.from:p.to] {
				if k == 0 {
					a.Glued = false
				}
				out = append(out, a)
			}
		case string:
			for _, w := range phrase.Turn(p) {
				a := scan.Atom{Text: w, Kind: scan.Word, At: in[0].At, End: in[0].End}
				if w == "," || w == "." {
					a.Kind, a.Glued = scan.Sign, false
				} else if w[0] >= '0' && w[0] <= '9' {
					a.Kind = scan.Digits
				}
				out = append(out, a)
			}
		}
	}
	if len(out) > 0 {
		out[len(out)-1].End = in[len(in)-1].End
	}
	return out
}

// siteMeasured sets what was measured in bays: each figure has its place right before it, or right behind it.
func siteMeasured(in []scan.Atom, list []siteWord) []scan.Atom {
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
		text := "bay " + measure.Itoa(p[0].n) + " rail " + measure.Itoa(p[1].n) + " measured"
		if p[1].kind == siteSpot {
			text = "bay " + measure.Itoa(p[0].n) + " " + p[1].text + " measured"
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
func siteHung(in []scan.Atom, list []siteWord) []scan.Atom {
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
	return sitePlain(in, "rail "+measure.Itoa(rails[0].n)+" is already up , its top is at", figures[0])
}

// siteWished sets where the top of a board is to be: "top of number five goes at forty and a half, that's rail five".
func siteWished(in []scan.Atom, list []siteWord) []scan.Atom {
	rails, figures := siteOf(list, siteRail), siteOf(list, siteLength)
	if !siteOnly(list, siteRail, siteSpot, siteLength, siteWant) || len(figures) != 1 || !siteTopOfOne(rails, siteOf(list, siteSpot)) {
		return nil
	}
	return sitePlain(in, "the top of rail "+measure.Itoa(rails[0].n)+" at", figures[0])
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
func siteLeaning(in []scan.Atom, list []siteWord) []scan.Atom {
	if !siteOnly(list, sitePost, siteSide, siteLength, siteLean, siteTape, siteWant, siteNot) {
		return nil
	}
	plumb := 0
	for i := range in {
		if in[i].Text == "plumb" {
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
	if run.inches.Val.Less(by.inches.Val) {
		by, run = run, by
	}
	if run.inches.Val.Less(by.inches.Val.Mul(lex.OneRat.Add(lex.OneRat)).Mul(lex.OneRat.Add(lex.OneRat))) {
		return nil
	}
	if run.inches.Unit == measure.Bare && by.inches.Unit == measure.Metric || by.inches.Unit == measure.Bare && run.inches.Unit == measure.Metric {
		return nil
	}
	return sitePlain(in, posts[0].text+" post leans", by, sides[0].text+" over", run)
}

// siteSlope sets how a floor lies at one end against the other.
func siteSlope(in []scan.Atom, list []siteWord) []scan.Atom {
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
	if at := figures[0].from; at > 0 && siteAbout[in[at-1].Text] || at > 1 && siteAbout[in[at-2].Text] && lexicon.Vocab().Articles[in[at-1].Text] {
		is += " about"
	}
	return sitePlain(in, is, figures[0], falls[0].text+" at the "+side)
}

// siteAbout are words by which a length is told no closer.
var siteAbout = scan.WordSet("about around roughly approximately")

// siteLost are verbs that a floor alone goes with from one side to the other: "we lose an inch from left to right".
var siteLost = scan.WordSet("lose loses")

// said is the word itself that tells a piece.
func (w siteWord) said(in []scan.Atom) string { return in[w.from].Text }

// siteFallPerFoot sets how a floor falls in each foot: "every foot you go to the right, the floor is another sixteenth lower".
func siteFallPerFoot(in []scan.Atom, list []siteWord) []scan.Atom {
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
func siteAgainst(before []scan.Atom) bool {
	for k := 1; k <= 3; k++ {
		switch chunk.LastOf(before, k) {
		case "than", "from", "against", "compared":
			return true
		case "the", "at", "on", "to", "with", "my", "our":
		default:
			return false
		}
	}
	return false
}
