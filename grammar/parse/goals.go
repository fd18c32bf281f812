package parse

import (
	"slices"
	"strings"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
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
		switch t := k.items[i]; t.Kind {
		case lexicon.Goal:
			st = solver.Statement{Name: solver.Name{Wall: k.wallName(), Quantity: solver.Goal}, Value: solver.Value{Word: t.Key()}}
			n++
		case lexicon.Units:
			st = solver.Statement{Name: solver.Name{Quantity: solver.Units}, Op: solver.Eq, Value: solver.Value{Word: t.Key()}}
			n++
		case lexicon.BestTail:
		default:
			if !idle(t.Token) {
				return reading{}, false
			}
		}
	}
	if n != 1 || len(k.things) > 0 && !k.wholeOf(st) {
		return reading{}, false
	}
	r, _ := k.finish(reading{made: []made{{st: st, at: k.at()}}})
	if st.Value.Word == "equal bays" { // "equal bays, none longer than 75 inches"
		r.carry.Name, r.carry.Kind, r.carry.senses = &solver.Name{Quantity: solver.Bay, Wall: k.wallName()}, solver.Length, []lexicon.Sense{lexicon.Meaning("bay |")}
	}
	return r, true
}

// wholeOf reports whether the parts beside a goal are those that it is about.
func (k *clause) wholeOf(st solver.Statement) bool {
	about := map[string]string{"equal bays": "bay", "same length": "rail", "even gaps": "gap", "cheapest": "wall"}[st.Value.Word]
	for _, i := range k.things {
		t := k.items[i]
		if t.Key() != about && t.Key() != "of wall" && t.Key() != "per bay" && t.Key() != "wall" {
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
		t := k.items[i].Token
		var now string
		switch {
		case t.As(lexicon.Best) != nil && t.Kind != lexicon.BestTail:
			now = t.As(lexicon.Best).Key
		case t.Kind == lexicon.Lim && (strings.HasSuffix(t.Text, "limit") || t.Text == "ceiling"):
			return reading{}, false // "the gap limit" names one
		case t.Kind == lexicon.Lim:
			now = map[string]string{">=": "smallest", "<=": "largest"}[t.Key()]
		default:
			continue
		}
		if way != "" && way != now {
			return reading{}, false
		}
		way = now
	}
	if way == "" || !k.only(lexicon.Best, lexicon.Lim, lexicon.BestTail, lexicon.Change, lexicon.Out, lexicon.Up, lexicon.Down) {
		return reading{}, false
	}
	k.things = slices.DeleteFunc(slices.Clone(k.things), func(i int) bool {
		return k.items[i].Key() == "per bay" && k.items[i].Index == 0 && k.has(lexicon.BestTail) != nil
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
		r.carry.Name, r.carry.Kind = &solver.Name{Quantity: q, Wall: k.wallName()}, solver.KindOf(q)
	}
	return r, true
}

// saysMost reports whether the superlative is one of number too.
func (k *clause) saysMost() bool {
	return slices.ContainsFunc(k.words, func(i int) bool {
		return slices.ContainsFunc(k.items[i].Found, func(f lexicon.Found) bool { return f.Entry.Kind == lexicon.Best && f.Entry.Key == "most" })
	})
}

// goalOf tells which quantity a goal is about.
var goalOf = map[string]string{"smallest gap": "gap", "largest gap": "gap", "smallest opening": "opening", "largest opening": "opening",
	"fewest rails": "rails", "most rails": "rails", "fewest posts": "added posts", "fewest stiffeners": "stiffeners", "fewest bays": "bays"}

// goal finds the goal that a superlative and its parts name.
func (k *clause) goal(way string) (string, bool) {
	senses := k.senses(0, len(k.items))
	if len(senses) == 0 {
		if !k.it && !k.s.correcting || k.carry.Name == nil {
			return "", false
		}
		senses = k.carry.senses
	}
	if way == "smallest" || way == "largest" {
		if a, ok := k.pick(senses, lexicon.OfKind[solver.Count], nil, 0); ok && k.has(lexicon.Lim) != nil {
			noun := strings.TrimPrefix(lexicon.Aspects[a], "added ")
			if g := map[string]string{"smallest": "fewest ", "largest": "most "}[way] + noun; slices.Contains(goals, g) {
				return g, true // "min posts"
			}
		}
	}
	if way == "smallest" && k.has(lexicon.Lim) != nil && len(k.things) == 1 && k.about("post") && k.items[k.things[0]].Plural() {
		return "fewest posts", true // "min posts"
	}
	found := ""
	for _, g := range goals {
		about, ok := goalOf[g]
		if !ok || !wayOf(way, g) {
			continue
		}
		n := lexicon.Score(senses, lexicon.AspectIndex[about])
		if about == "gap" && way == "smallest" && n > 0 && k.has(lexicon.Change) != nil {
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
	if len(k.values)+len(k.sides)+len(k.dims) > 0 || len(k.things) == 0 || !k.only(lexicon.No, lexicon.Not) || k.oneOfSeveral() {
		return reading{}, false
	}
	denials := 0
	for _, i := range k.words {
		if kind := k.items[i].Kind; kind == lexicon.No || kind == lexicon.Not {
			denials++
		}
	}
	if denials != 1 || k.notButThat() {
		return reading{}, false
	}
	a, ok := k.pick(k.senses(0, len(k.items)), lexicon.OfKind[solver.Count].Or(lexicon.OfKind[solver.Percent]), nil, 0)
	if !ok && k.about("post") && (k.about("between posts") || k.about("between")) {
		a, ok = lexicon.AspectIndex[string(solver.AddedPosts)], true // "no posts between the end posts"
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
		if lexicon.Score(k.senses(0, len(k.items)), lexicon.AspectIndex[string(q)]) >= 2 {
			m := made{st: solver.Of(q, solver.Eq, k.s.zero()), at: k.at(), kind: solver.Length}
			return k.finish(reading{made: []made{m}})
		}
	}
	return reading{}, false
}

// notButThat reports whether one thing is told from another: "the bottom gap, not the gap" says of neither that there is none.
func (k *clause) notButThat() bool {
	for _, i := range k.words {
		if k.items[i].Kind == lexicon.Not && k.things[0] < i && (i < k.things[len(k.things)-1] || may[lex.LastWord(k.items[i].Before)]) {
			return true
		}
	}
	return false
}

func (s *Speech) zero() solver.Value {
	v := solver.Inches(exact.Int(0))
	if s.Metric {
		v.Unit = solver.Millimeter
	}
	return v
}

// may are helping verbs whose "not" denies what follows, and not that there is any: "the new post can't be taller than 54".
var may = scan.WordSet("can could may might should must will would shall")
