package parse

import (
	"strings"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
)

// unsaid takes out values that are only denied: "two, not three"; ok is false where a denial is of something else.
func (k *clause) unsaid() (map[int]bool, bool) {
	live := map[int]bool{}
	for _, i := range k.values {
		n := k.noun(i + 1)
		if k.items[i].Text == "one" && n != nil && strings.HasPrefix(n.Before, "of") {
			return nil, false // "one of our boards" sets no count
		}
		live[i] = !(k.items[i].Text == "one" && n != nil && n.Key() == "bracket" && len(k.values) > 1)
	}
	for _, w := range k.words {
		t := k.items[w]
		if t.Kind != lexicon.Not || w+1 >= len(k.items) || !k.items[w+1].value() {
			continue
		}
		lim := k.items[w+1].lim
		if op, ok := lim.relation(); ok && op != solver.Eq {
			continue
		}
		if !lex.Denials[t.Text] || len(k.values) < 2 {
			return nil, false
		}
		delete(live, w+1)
	}
	return live, true
}

// denied reports whether the relation of the value at item i is turned by a "no" or a "not" before it. ok is false where
// a break stands between them: then it is not known what is denied.
func (k *clause) denied(i int) (turned, ok bool) {
	n := 0
	for x, w := range k.words {
		if x > 0 && k.items[w].Kind == lexicon.No && k.items[k.words[x-1]].Kind == lexicon.Not {
			continue // "ain't no bay"
		}
		if it := k.items[w]; it.Kind == lexicon.No || it.Kind == lexicon.Not && !(w+1 < len(k.items) && k.items[w+1].value() && k.plainValue(w+1)) {
			n++
		}
	}
	return n%2 == 1, n == 0 || !k.brokenBefore(i)
}

// brokenBefore reports whether a break stands between the first denial of the clause and item i, or the denial after it.
func (k *clause) brokenBefore(i int) bool {
	for _, w := range k.words {
		if it := k.items[w]; it.Kind != lexicon.No && it.Kind != lexicon.Not || w > i && k.items[w].Kind == lexicon.Not && w+1 < len(k.items) && k.items[w+1].value() {
			continue
		}
		if w > i {
			return true
		}
		for j := w; j < i; j++ {
			if k.items[j].breaks() {
				return true
			}
		}
	}
	return false
}

func (k *clause) plainValue(i int) bool {
	op, ok := k.items[i].lim.relation()
	return ok && op == solver.Eq && !k.notOne(i)
}

// notOne reports whether the value at item i is the "one" of "not one bay over six feet": that bounds them all.
func (k *clause) notOne(i int) bool {
	if n := k.noun(i + 1); k.items[i].lim.lo.Plain != "" || !k.items[i].lim.lo.Words || !k.items[i].lim.lo.Val.Eq(lex.OneRat) || k.items[i].lim.lo.Unit != measure.Bare || n == nil {
		return false
	}
	for _, v := range k.values {
		if op, ok := k.items[v].lim.relation(); v > i && ok && op != solver.Eq {
			return true
		}
	}
	return false
}

// inner reports whether an "and" or a "but" stands inside the clause: there it would put two things together.
func (k *clause) inner() bool {
	for i, it := range k.items {
		if !it.value() && (it.Kind == lexicon.And || it.Kind == lexicon.But) && i > 0 && !(k.items[i-1].Kind == lexicon.Comma && !k.items[i-1].value()) {
			return true
		}
	}
	return false
}

// besideOpening reports whether a side is told of the opening and not of the wall: "two feet of wall to the left of the
// opening" is how far the opening is from that end.
func (k *clause) besideOpening() bool {
	for _, i := range k.sides {
		if i+1 < len(k.items) && !k.items[i+1].value() && k.items[i+1].Key() == "opening" && strings.HasPrefix(k.items[i+1].Before, "of") {
			return true
		}
	}
	return false
}

// RunsOn reports whether the wall is said to run so far: that is no height.
func (k *clause) runsOn() bool {
	return k.has(lexicon.PriceVerb) != nil && k.has(lexicon.PriceVerb).Text == "runs" && k.about("wall") && !k.about("overall") && !k.about("span") && !k.about("between posts") && len(k.dims) == 0
}

// clash reports whether brackets are said to meet: "they hit one another once the gap is under 1-3/4".
func (k *clause) clash() bool {
	for _, i := range k.things {
		if t := k.items[i]; t.Key() == "bracket clearance" && !strings.Contains(t.Text, "clear") && !strings.Contains(t.Text, "clr") && !strings.Contains(t.Text, "room") {
			return true
		}
	}
	return false
}

// topAlone reports whether a "top" stands in the clause that is not part of a name.
func (k *clause) topAlone() bool {
	for _, w := range k.words {
		if k.items[w].Kind == lexicon.Top {
			return true
		}
	}
	return false
}

// movesBy reports whether something is moved by a length, and not to one: "move the opening over 6 inches".
func (k *clause) movesBy() bool {
	t := k.has(lexicon.Move)
	if t == nil || t.Text == "come" || len(k.sides) > 0 && len(k.values) == 0 {
		return false
	}
	for _, i := range k.things {
		if k.items[i].Kind == lexicon.FromSide || k.items[i].Kind == lexicon.Loc {
			return false
		}
	}
	for _, i := range k.values {
		lim := k.items[i].lim
		if lim.to || lim.of != nil || lim.lo.Size != "" {
			continue
		}
		if op, ok := lim.relation(); ok && (op == solver.Eq || len(lim.lead) > 0 && lim.lead[0].Kind == lexicon.Over) {
			return true
		}
	}
	return false
}

// runs reports whether boards are said to run so much: "rails really run 5-3/8".
func (k *clause) runs(i int) bool {
	if !k.about("rail") || len(k.things) != 1 || k.items[i].lim.lo.Unit == measure.Bare && !k.items[i].lim.lo.Frac {
		return false
	}
	for _, w := range strings.Fields(k.items[i].Before) {
		if w == "run" || w == "runs" {
			return true
		}
	}
	return false
}

// twoLimits reports whether two limits of one thing stand on both sides of an "and": "no less than two and no more than
// three inches between the rails".
func (k *clause) twoLimits() bool {
	if len(k.values) != 2 || k.values[1] != k.values[0]+2 || k.items[k.values[0]+1].Kind != lexicon.And || len(k.sides) > 0 || len(k.words) > 0 {
		return false
	}
	a, b := k.items[k.values[0]].lim, k.items[k.values[1]].lim
	x, ok1 := a.relation()
	y, ok2 := b.relation()
	if !ok1 || !ok2 || !(lower(x) && upper(y) || upper(x) && lower(y)) || a.of != nil || b.of != nil || a.lo.Size != "" || b.lo.Size != "" {
		return false
	}
	if a.lo.Unit == measure.Bare && b.lo.Unit != measure.Bare {
		like := inUnitOf(*a.lo, *b.lo)
		a.lo = &like
	}
	return true
}
