package grammar

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/scan"
	"saywright/solver"
)

// A line whose main clause is a question sets nothing: "with six rails, is the opening on the left" tries the rails and asks, in one, of the
// opening. Read clause by clause, the first of them may seem to be told, and the second too where its question is read as a value. Such a line is one
// trial of all that it says; what it asks besides is answered within the trial.

// triedWhole makes one trial of a line that asks.
func triedWhole(r act.Reading, atoms []scan.Atom) act.Reading {
	if r.Ask != nil || len(r.Acts) == 0 || len(atoms) < 3 || len(atoms) > 40 || !slices.ContainsFunc(r.Acts, triesOrSets) {
		return r
	}
	words := make([]string, 0, len(atoms))
	for _, a := range atoms {
		words = append(words, a.Text)
	}
	for len(words) > 0 && (chunk.Joints[words[0]] || words[0] == "," || words[0] == "ok" || words[0] == "well") {
		words = words[1:]
	}
	for len(words) > 0 && (words[len(words)-1] == "?" || words[len(words)-1] == "." || words[len(words)-1] == "then") {
		words = words[:len(words)-1]
	}
	if len(words) < 2 || begsOrTurns(words) {
		return r
	}
	r = costHeld(r, words)
	has := func(kinds ...act.Kind) bool {
		return slices.ContainsFunc(r.Acts, func(a act.Act) bool { return slices.Contains(kinds, a.Kind) })
	}
	switch asked := atoms[len(atoms)-1].Text == "?"; {
	case (givenThenAsked(words) || resultAsked(words)) && !has(act.WhyNot) && (has(act.State) || has(act.WhatIf)):
	case (triedByEye(words) || bestAsked(words, asked)) && has(act.State) && !has(act.Check, act.WhatIf):
	case askedIf(words) && has(act.WhatIf):
	default:
		return r
	}
	return act.Reading{Acts: inOneTrial(r.Acts, words), Taken: r.Taken, Whole: r.Whole}
}

// triesOrSets reports whether an act may be part of a trial.
func triesOrSets(a act.Act) bool { return setsOrChecks(a) || a.Kind == act.WhatIf }

// costHeld takes what a trial costs for its cost, not for what may be spent: "would six rails cost more than 400 dollars".
func costHeld(r act.Reading, words []string) act.Reading {
	if !slices.ContainsFunc(words, func(w string) bool { return w == "cost" || w == "costs" }) || slices.ContainsFunc(words, spends) {
		return r
	}
	for i, a := range r.Acts {
		if a.Kind != act.WhatIf && a.Kind != act.Check {
			continue
		}
		for k, st := range a.Statements {
			op := st.Op
			switch {
			case st.Value.Of != nil || st.Name.Quantity != solver.Budget && (st.Name.Quantity != solver.CostOf || st.Op != solver.LE):
				continue
			case !asksVerb[words[0]] && words[0] != "do":
			case slices.ContainsFunc(words, costsMore):
				op = solver.GT
			case op == solver.Eq && slices.ContainsFunc(words, costsLess):
				op = solver.LT
			}
			if op == solver.Eq {
				continue
			}
			r.Acts[i].Statements = slices.Clone(r.Acts[i].Statements)
			r.Acts[i].Statements[k].Name.Quantity, r.Acts[i].Statements[k].Op = solver.CostOf, op
		}
	}
	return r
}

func spends(w string) bool {
	return w == "budget" || w == "spend" || w == "afford" || w == "may" || w == "must" || w == "not" || w == "no"
}

func costsMore(w string) bool { return w == "more" || w == "over" || w == "above" || w == "exceed" }

func costsLess(w string) bool { return w == "less" || w == "under" || w == "below" }

// setsOrChecks reports whether an act tells a value, or holds one against what stands.
func setsOrChecks(a act.Act) bool {
	return (a.Kind == act.State || a.Kind == act.Check || a.Kind == act.WhyNot) && len(a.Statements) > 0
}

func isKind(k act.Kind) func(act.Act) bool { return func(a act.Act) bool { return a.Kind == k } }

// inOneTrial puts all that acts tell, try and check into one act, where the first of them stands. What is asked stands behind it.
func inOneTrial(acts []act.Act, words []string) []act.Act {
	kind, one := act.WhatIf, act.Act{At: -1}
	switch {
	case slices.ContainsFunc(acts, isKind(act.WhyNot)):
		kind = act.WhyNot
	case words[0] == "does" && !slices.ContainsFunc(acts, isKind(act.WhatIf)) && slices.ContainsFunc(acts, isKind(act.Check)):
		kind = act.Check // "does a two inch gap make it 48 high"
	}
	var rest []act.Act
	for _, a := range acts {
		if !triesOrSets(a) {
			rest = append(rest, a)
			continue
		}
		if one.At < 0 {
			one.At = a.At
		}
		one.End = max(one.End, a.End)
		for _, st := range a.Statements {
			if !slices.ContainsFunc(one.Statements, func(s solver.Statement) bool { return s.String() == st.String() }) {
				one.Statements = append(one.Statements, st)
			}
		}
	}
	one.Kind = kind
	return append([]act.Act{one}, rest...)
}

// begsOrTurns reports whether a line begs for what it says, orders it behind its question, or asks about a claim: then it is no trial as a whole.
func begsOrTurns(words []string) bool {
	for i, w := range words {
		switch {
		case w == "please" || w == "kindly" || w == ";" || w == "?" || w == "." || w == "true" || w == "claims" || w == "says" || w == "said":
			return true
		case orderedNext[w] && i > 0 && (words[i-1] == "and" || words[i-1] == "then" || words[i-1] == "so" || words[i-1] == "," || words[i-1] == "but"):
			return true
		}
	}
	return false
}

var orderedNext = scan.WordSet("make set put use give add drop take leave keep let go cut lower raise move change forget undo save")

// givenThenAsked reports whether a line begins with what is given and then asks: "with a 30 inch opening, is bay 1 under 60", "for six rails
// what is the gap".
func givenThenAsked(words []string) bool {
	if !givenBy[words[0]] {
		return false
	}
	for k := 2; k+1 < len(words) && k < 14; k++ {
		behind := words[k-1] == ","
		if !asksAt(words[k:]) || !behind && (takesVerb[words[k-1]] || words[k] != "do" && figured(words[k+1])) {
			continue
		}
		given := words[1:k]
		if words[0] != "with" && words[0] != "having" && !slices.ContainsFunc(given, figured) && !slices.ContainsFunc(given, addsSome) {
			return false // "at the right post the floor is ..." tells where
		}
		return slices.ContainsFunc(given, givesSome) && (behind || k < 9 && !namesNext(given[1:]))
	}
	return false
}

// givenBy are words by which a line begins with what is given.
var givenBy = scan.WordSet("with at for on given using having running")

// takesVerb are words behind which a verb goes on with what stands before it: "the post that is".
var takesVerb = scan.WordSet("that which who it this there they i we you and or not the a to all is are was")

// givesSome reports whether a word tells that something is given, and not only named: a figure, a change, a place.
func givesSome(w string) bool { return figured(w) || givesWord[w] }

// addsSome reports whether a word changes a count.
func addsSome(w string) bool { return w == "another" || w == "extra" }

// namesNext reports whether another thing is named in what is given; a side of the wall is none.
func namesNext(words []string) bool {
	for i, w := range words {
		if (w == "the" || w == "my" || w == "our") && (i+1 == len(words) || !sideWord[words[i+1]]) {
			return true
		}
	}
	return false
}

var sideWord = scan.WordSet("left right middle floor slab ground")

var givesWord = scan.WordSet("equal even another extra more fewer less no left right middle higher lower taller shorter wider narrower bigger smaller tighter eights tens twelves fourteens sixteens")

func figured(w string) bool {
	return w != "" && w[0] >= '0' && w[0] <= '9' || chunk.SpelledNumber(w)
}

// asksAt reports whether a question begins here.
func asksAt(words []string) bool {
	switch w := words[0]; {
	case w == "what" || w == "how" || w == "why" || w == "where":
		return words[1] != "if" && words[1] != "about"
	case w == "do":
		return pluralActs(words[1:]) || words[1] == "i" || words[1] == "we" || words[1] == "they" || (words[1] == "the" || words[1] == "my") && len(words) > 3
	case asksVerb[w]:
		return askedOf[words[1]] || words[1] != "you" && figured(words[1]) || isPart(words[1])
	}
	return false
}

var (
	asksVerb = scan.WordSet("is are am does can could will would may might should must")
	askedOf  = scan.WordSet("the my our it that this they there i we each every both all a an bay bays")
)

// isPart reports whether a word names a part of a wall, of which there are many.
func isPart(w string) bool { return partsMany[w] }

var partsMany = scan.WordSet("rails boards slats planks posts stiffeners bays gaps openings brackets bay gap eights tens twelves fourteens sixteens")

// pluralActs reports whether words begin with several things and what they may do: "six rails give a two inch gap", "twelves work".
func pluralActs(words []string) bool {
	for k := 1; k < len(words) && k < 6 && words[0] != "not"; k++ {
		if comesOf[words[k]] && (partsMany[words[k-1]] || strings.HasSuffix(words[k-1], "s") || figured(words[k-1])) {
			return true
		}
		if words[k] == "," || words[k] == "and" || words[k] == "with" {
			return false
		}
	}
	return false
}

// comesOf are verbs for what may come of something.
var comesOf = scan.WordSet("work works fit give gives make makes look looks leave leaves mean need get take cost waste weigh help suffice serve clear touch meet hold come put bring save have go keep")

// resultAsked reports whether a line begins by asking what would come of something: "do six rails give a two inch gap", "would six rails make it 48 high".
func resultAsked(words []string) bool {
	switch words[0] {
	case "do":
		return pluralActs(words[1:])
	case "does", "would", "will":
		if words[1] == "not" || saysWho[words[1]] || !slices.ContainsFunc(words[1:min(len(words), 6)], givesSome) && !comesOf[words[len(words)-1]] {
			return false
		}
		return slices.ContainsFunc(words[2:min(len(words), 9)], func(w string) bool { return comesOf[w] })
	}
	return false
}

var saysWho = scan.WordSet("you he she they it that this i we somebody anyone")

// triedByEye reports whether a line asks to look at something that has no answer yet: "let's look at a two inch gap".
func triedByEye(words []string) bool {
	said := strings.Join(words[:min(len(words), 8)], " ")
	for _, lead := range looksAt {
		rest, ok := strings.CutPrefix(said, lead)
		if !ok {
			continue
		}
		w, _, _ := strings.Cut(rest, " ")
		return w == "a" || w == "an" || figured(w) || w != "no" && givesWord[w]
	}
	return false
}

var looksAt = func() (out []string) {
	for _, who := range []string{"let us ", "let 's ", "lets ", "let me ", "i would like to ", "i 'd like to ", "we would like to ", "i would love to ", "can i ", "could i ", "can we "} {
		for _, look := range []string{"see ", "look at ", "have a look at ", "take a look at "} {
			for _, it := range []string{"", "it with ", "it at ", "that with ", "this with ", "how it looks with ", "what it looks like with "} {
				out = append(out, who+look+it)
			}
		}
	}
	out = append(out, "i want to see it with ", "we want to see it with ", "i want to see it at ", "i want to look at it with ") // "I want to see two inches between them" wishes
	slices.SortFunc(out, func(a, b string) int { return len(b) - len(a) })
	return out
}()

// bestAsked reports whether a line asks how far something may go: "what's the max opening", "maximum opening?".
func bestAsked(words []string, asked bool) bool {
	k := slices.IndexFunc(words[:min(len(words), 6)], func(w string) bool { return furthest[w] })
	return k > 0 && words[0] == "what" || k == 0 && asked && len(words) < 5
}

var furthest = scan.WordSet("max maximum min minimum")

// askedIf reports whether a line asks whether something is so if something else is: "is the gap under two if I use six rails".
func askedIf(words []string) bool {
	k := slices.Index(words, "if")
	if k < 3 || words[k-1] == "what" || words[k-1] == "and" || words[k-1] == "," || words[k-1] == "see" {
		return false
	}
	return asksVerb[words[0]] && words[1] != "you" || words[0] == "do" || words[0] == "why" && words[1] == "not"
}
