package parse

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
)

// strayOrdinal reports whether an ordinal picks out one of several things that are not told apart: "the first gap", "the
// first two boards".
func (k *clause) strayOrdinal(i int) bool {
	it := k.items[i]
	if it.value() || it.Kind != lexicon.Ordinal || i+1 >= len(k.items) {
		return false
	}
	next := k.items[i+1]
	if next.Before != "" {
		return false // "first the gap, then …"
	}
	return next.value() && next.lim.lo.Unit == measure.Bare && i+2 < len(k.items) && !k.items[i+2].value() && k.items[i+2].Kind == lexicon.Part && k.items[i+2].Plural() || !next.value() && next.Kind == lexicon.Part
}

// someBay reports whether one bay is spoken of by its size, where what is said would be taken for every bay: "two
// stiffeners in the long bay", "the long bay is 6 feet".
func (k *clause) someBay(i int) bool {
	it := k.items[i]
	if it.value() || it.Key() != "bay" && it.Key() != "per bay" || it.Index > 0 || it.Plural() {
		return false
	}
	for _, w := range append(strings.Fields(it.Text), strings.Fields(it.Before)...) {
		switch w {
		case "long", "longer", "longest", "short", "shorter", "shortest", "wide", "wider", "widest", "big", "bigger", "biggest", "narrow", "narrower", "narrowest":
			return k.saysOfBays()
		}
	}
	return i > 0 && !k.items[i-1].value() && k.items[i-1].Kind == lexicon.Dim && k.saysOfBays()
}

// saysOfBays reports whether stiffeners or widths of bays are set or counted here.
func (k *clause) saysOfBays() bool {
	values := false
	for _, it := range k.items {
		if it.value() {
			op, ok := it.lim.relation()
			values = values || ok && op == "="
		}
		if !it.value() && (it.Key() == "added post" || it.Key() == "post") {
			return false
		}
	}
	return values
}

// buried reports whether "in the ground" stands at item i: how deep a post stands is no height.
func (k *clause) buried(i int) bool {
	it := k.items[i]
	return i > 0 && !it.value() && it.Kind == lexicon.Part && it.Key() == "floor" && !k.items[i-1].value() && k.items[i-1].Text == "in"
}

// atTheEnd reports whether only the last of several like things are spoken of: "the end rails", "end gap".
func (k *clause) atTheEnd(i int) bool {
	it := k.items[i]
	if it.value() || it.Kind != lexicon.Part || it.Key() != "rail" && it.Key() != "gap" && it.Key() != "bay" {
		return false
	}
	words := strings.Fields(it.Before)
	return len(words) > 0 && words[len(words)-1] == "end"
}

// centeredAt reports whether the middle of the opening is told by a length: "opening centered 66 from the left". Neither its
// width nor where it begins is said then.
func (k *clause) centeredAt() bool {
	for _, i := range k.sides {
		if k.items[i].Key() != "middle" {
			continue
		}
		for _, v := range k.values {
			if words := strings.Fields(k.items[v].Before); len(words) > 0 && words[len(words)-1] == "at" && v > i {
				return true
			}
		}
		for _, t := range k.things {
			if k.items[t].Kind == lexicon.FromSide && len(k.values) > 0 {
				return true
			}
		}
	}
	return false
}

// asking are words that begin a question or a wish to be told, wherever they stand.
var asking = []string{"what", "how", "where", "which", "tell", "show", "give", "read", "let", "see", "any", "list", "draw", "have", "want", "sketch", "work", "figure", "get"}

// stray asks back where a question without a word of asking, or a command, stands in the middle of something else.
func (g *grouping) stray(i int) {
	if g.empty() || g.atBreak(i) || !hasValue(g.g.items) {
		return
	}
	t := g.list[i]
	for _, w := range asking {
		if strings.Contains(t.Text, w) {
			return
		}
	}
	g.s.fail(t.At, solver.Question{Text: "Is " + Quoted(Short(t.Text)) + " a wish of its own?", Example: "gap 2-1/2, show me"})
}
