package grammar

import (
	"slices"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// whole reads a word that is a statement by itself: a goal, a change of units.
func (k *clause) whole() (reading, bool) {
	if len(k.values)+len(k.sides)+len(k.dims) > 0 || len(k.words) == 0 {
		return reading{}, false
	}
	var st solver.Statement
	n := 0
	for _, i := range k.words {
		switch t := k.items[i]; t.kind {
		case kGoal:
			st = solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: solver.Goal}, Value: solver.Value{Word: t.key()}}
			n++
		case kUnits:
			st = solver.Statement{Name: solver.Name{Quantity: solver.Units}, Op: solver.Eq, Value: solver.Value{Word: t.key()}}
			n++
		case kBestTail:
		default:
			if !idle(t.token) {
				return reading{}, false
			}
		}
	}
	if n != 1 || len(k.things) > 0 && !k.wholeOf(st) {
		return reading{}, false
	}
	r, _ := k.finish(reading{made: []made{{st: st, at: k.at()}}})
	if st.Value.Word == "equal bays" { // "equal bays, none longer than 75 inches"
		r.carry.name, r.carry.kind, r.carry.senses = &solver.Name{Quantity: solver.Bay, Wall: k.wallName()}, solver.Length, []sense{meaning("bay |")}
	}
	return r, true
}

// wholeOf reports whether the parts beside a goal are those that it is about.
func (k *clause) wholeOf(st solver.Statement) bool {
	about := map[string]string{"equal bays": "bay", "same length": "rail", "even gaps": "gap", "cheapest": "wall"}[st.Value.Word]
	for _, i := range k.things {
		t := k.items[i]
		if t.key() != about && t.key() != "of wall" && t.key() != "per bay" && t.key() != "wall" {
			return false
		}
	}
	return true
}

// best reads a wish for the most or the least of something: "smallest gap", "as wide an opening as you can", "max op".
func (k *clause) best() (reading, bool) {
	if len(k.values)+len(k.sides) > 0 {
		return reading{}, false
	}
	way := ""
	for _, i := range k.words {
		t := k.items[i].token
		var now string
		switch {
		case t.as(kBest) != nil && t.kind != kBestTail:
			now = t.as(kBest).key
		case t.kind == kLim && (strings.HasSuffix(t.text, "limit") || t.text == "ceiling"):
			return reading{}, false // "the gap limit" names one
		case t.kind == kLim:
			now = map[string]string{">=": "smallest", "<=": "largest"}[t.key()]
		default:
			continue
		}
		if way != "" && way != now {
			return reading{}, false
		}
		way = now
	}
	if way == "" || !k.only(kBest, kLim, kBestTail, kChange, kOut, kUp, kDown) {
		return reading{}, false
	}
	k.things = slices.DeleteFunc(slices.Clone(k.things), func(i int) bool {
		return k.items[i].key() == "per bay" && k.items[i].index == 0 && k.has(kBestTail) != nil
	})
	word, ok := "", false
	if way == "largest" && k.saysMost() {
		word, ok = k.goal("most") // "most rails, equal bays"
	}
	if !ok {
		word, ok = k.goal(way)
	}
	if !ok {
		return reading{}, false
	}
	st := solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: solver.Goal}, Value: solver.Value{Word: word}}
	r, _ := k.finish(reading{made: []made{{st: st, at: k.at()}}})
	if q := solver.Quantity(goalOf[word]); q != "" {
		r.carry.name, r.carry.kind = &solver.Name{Quantity: q, Wall: k.wallName()}, solver.KindOf(q)
	}
	return r, true
}

// saysMost reports whether the superlative is one of number too.
func (k *clause) saysMost() bool {
	return slices.ContainsFunc(k.words, func(i int) bool {
		return slices.ContainsFunc(k.items[i].found, func(f found) bool { return f.entry.kind == kBest && f.entry.key == "most" })
	})
}

// goalOf tells which quantity a goal is about.
var goalOf = map[string]string{"smallest gap": "gap", "largest gap": "gap", "smallest opening": "opening", "largest opening": "opening",
	"fewest rails": "rails", "most rails": "rails", "fewest posts": "added posts", "fewest stiffeners": "stiffeners", "fewest bays": "bays"}

// goal finds the goal that a superlative and its parts name.
func (k *clause) goal(way string) (string, bool) {
	senses := k.senses(0, len(k.items))
	if len(senses) == 0 {
		if !k.it && !k.s.correcting || k.carry.name == nil {
			return "", false
		}
		senses = k.carry.senses
	}
	if way == "smallest" || way == "largest" {
		if a, ok := k.pick(senses, ofKind[solver.Count], nil, 0); ok && k.has(kLim) != nil {
			noun := strings.TrimPrefix(aspects[a], "added ")
			if g := map[string]string{"smallest": "fewest ", "largest": "most "}[way] + noun; slices.Contains(goals, g) {
				return g, true // "min posts"
			}
		}
	}
	if way == "smallest" && k.has(kLim) != nil && len(k.things) == 1 && k.about("post") && k.items[k.things[0]].plural() {
		return "fewest posts", true // "min posts"
	}
	found := ""
	for _, g := range goals {
		about, ok := goalOf[g]
		if !ok || !wayOf(way, g) {
			continue
		}
		n := score(senses, aspectIndex[about])
		if about == "gap" && way == "smallest" && n > 0 && k.has(kChange) != nil {
			n = 2 // "close the boards up as tight as they'll go"
		}
		if about == "added posts" && n > 0 {
			n = 2
		}
		if n < 2 {
			continue
		}
		if found != "" {
			return "", false
		}
		found = g
	}
	return found, found != ""
}

// wayOf reports whether a superlative can begin the goal: of counts "largest" and "most" are one.
func wayOf(way, goal string) bool {
	begins := func(w string) bool { return len(goal) > len(w) && goal[:len(w)] == w }
	switch way {
	case "largest":
		return begins("largest")
	case "smallest":
		return begins("smallest") || begins("lowest")
	}
	return begins(way)
}

// none reads "no stiffeners", "without an opening", "no spare": a count of 0.
func (k *clause) none() (reading, bool) {
	if len(k.values)+len(k.sides)+len(k.dims) > 0 || len(k.things) == 0 || !k.only(kNo, kNot) || k.oneOfSeveral() {
		return reading{}, false
	}
	denials := 0
	for _, i := range k.words {
		if kind := k.items[i].kind; kind == kNo || kind == kNot {
			denials++
		}
	}
	if denials != 1 || k.notButThat() {
		return reading{}, false
	}
	a, ok := k.pick(k.senses(0, len(k.items)), ofKind[solver.Count].or(ofKind[solver.Percent]), nil, 0)
	if !ok && k.about("post") && (k.about("between posts") || k.about("between")) {
		a, ok = aspectIndex[string(solver.AddedPosts)], true // "no posts between the end posts"
	}
	if ok {
		n, kind, ok := k.build(a)
		if ok && n.Quantity != solver.Rails && n.Quantity != solver.Bays {
			v := solver.Number(0)
			if kind == solver.Percent {
				v.Unit = solver.PercentOf
			}
			m := made{st: solver.Statement{Name: n, Op: solver.Eq, Value: v}, at: k.at(), kind: kind}
			r, ok := k.finish(reading{made: []made{m}})
			if k.bay == 0 {
				r.carry.senses = nil // nothing can be said of what is not there
			}
			return r, ok
		}
	}
	for _, q := range []solver.Quantity{solver.Fit, solver.Trim, solver.Kerf, solver.Drop, solver.BottomGap} {
		if score(k.senses(0, len(k.items)), aspectIndex[string(q)]) >= 2 {
			m := made{st: solver.Of(q, solver.Eq, k.s.zero()), at: k.at(), kind: solver.Length}
			return k.finish(reading{made: []made{m}})
		}
	}
	return reading{}, false
}

// notButThat reports whether one thing is told from another: "the bottom gap, not the gap" says of neither that there is none.
func (k *clause) notButThat() bool {
	for _, i := range k.words {
		if k.items[i].kind == kNot && k.things[0] < i && (i < k.things[len(k.things)-1] || may[lastWord(k.items[i].before)]) {
			return true
		}
	}
	return false
}

func (s *speech) zero() solver.Value {
	v := solver.Inches(exact.Int(0))
	if s.metric {
		v.Unit = solver.Millimeter
	}
	return v
}

// may are helping verbs whose "not" denies what follows, and not that there is any: "the new post can't be taller than 54".
var may = wordSet("can could may might should must will would shall")
