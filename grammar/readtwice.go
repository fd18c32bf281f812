package grammar

import (
	"slices"
	"strings"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/solver"
)

// A line of several clauses that was heard as a whole is held against what the clauses say by themselves: "the merchant has 4.2 m lengths,
// and the gap is 2" claimed the gap, "I'm after two inches of daylight plus in what order do I do things" added the two. Where a clause that
// stands by itself says something else alone, both are given to choose from.

// readTwice holds what was heard of a line against what its clauses say alone.
func readTwice(line string, atoms []scan.Atom, c act.Context, r act.Reading) act.Reading {
	if r.Ask != nil || c.Part || c.Deep || len(atoms) < 5 || len(atoms) > 60 || clausesTurn(atoms) || goesOverClauses(r.Acts, atoms) {
		return r
	}
	cuts := partings(atoms)
	if plainlySaid(r.Acts, len(cuts)) {
		return r
	}
	alone := sync.OnceValue(func() act.Context { return ofAPart(c, atoms) })
	claimed := slices.ContainsFunc(atoms, func(a scan.Atom) bool { return claimers[a.Text] })
	for _, cut := range cuts {
		right := atoms[cut.next:]
		if cut.end < 3 || !ofItself(right, cut.onward) || goesOn(right) || onlyParts(right) || halfBehind(atoms, cut) {
			continue
		}
		then := readSpoken(line, right, alone())
		if then.Ask != nil || leadsToNext(then.Acts, right) || slices.ContainsFunc(then.Acts, func(a act.Act) bool { return !clauseOfItsOwn(a) }) {
			continue
		}
		first := readSpoken(line, atoms[:cut.end], alone())
		if first.Ask != nil || leadsToNext(first.Acts, atoms) || hasSeen(first.Acts, atoms) || ofOneThing(first.Acts, then.Acts) || saysBoth(r.Acts, first.Acts, then.Acts, claimed) {
			continue
		}
		return askback.BackAt(right[0].At, askback.BothOrWhole.Offering("the first", parse.Normal(slices.Concat(first.Acts, then.Acts)), parse.Normal(r.Acts)))
	}
	return r
}

// onlyParts reports whether a clause but names the parts that what stands before it is of: "6x6, the whole lot of the posts".
func onlyParts(right []scan.Atom) bool {
	named := false
	for _, a := range right {
		switch {
		case a.Kind == scan.Sign || lexicon.Vocab().Articles[a.Text] || allOfThem[a.Text]:
		case chunk.IsClass(a.Text, "POST"):
			named = true
		default:
			return false
		}
	}
	return named
}

var allOfThem = scan.WordSet("all every each of whole lot for both end new added extra my our one")

// plainlySaid reports whether a line says as many things as it has clauses, and each plainly: a value, a limit, a question.
func plainlySaid(acts []act.Act, cuts int) bool {
	n := 0
	for _, a := range acts {
		if a.Kind != act.State && a.Kind != act.Ask || slices.ContainsFunc(a.Statements, func(st solver.Statement) bool { return parse.Changes(st.Op) }) {
			return false
		}
		n += max(1, len(a.Statements))
	}
	return n > cuts
}

// clausesTurn reports whether one clause of a line may turn what another says.
func clausesTurn(atoms []scan.Atom) bool {
	return triesFrom(atoms) || noBehind(atoms) || slices.ContainsFunc(atoms, func(a scan.Atom) bool { return turnsBoth[a.Text] })
}

// goesOverClauses reports whether what was heard goes on from clause to clause, so that the later ones say less alone: a named wall, what people
// tell piece by piece, a list of prices or of lengths on sale.
func goesOverClauses(acts []act.Act, atoms []scan.Atom) bool {
	return slices.ContainsFunc(acts, ofWallOrPieces) || oneList(acts) && !idiom.HoldsWord(atoms, "have", "got", "already", "own")
}

// turnsBoth are words by which one clause may turn what another says.
var turnsBoth = scan.WordSet("er um know idk without never if unless suppose supposing instead rather except wait sorry scratch actually correction oops undo meant mean")

// ofWallOrPieces reports whether an act is of a named wall, which goes on over what follows, or of what people tell piece by piece.
func ofWallOrPieces(a act.Act) bool {
	return a.Wall != "" || toldInParts(a) && a.Kind == act.State && len(a.Statements) > 0 && a.Statements[0].Name.Quantity != solver.Stock || slices.ContainsFunc(a.Statements, func(st solver.Statement) bool { return st.Name.Wall != "" })
}

// sparesCounted reports whether a clause counts the spare boards that the one before speaks of: "a couple of spares, two boards".
func sparesCounted(first, then []act.Act) bool {
	of := func(a act.Act, q solver.Quantity) bool {
		return len(a.Statements) > 0 && a.Statements[0].Name.Quantity == q
	}
	return of(first[0], solver.Spare) && of(then[0], solver.Rails)
}

// hasSeen reports whether a clause only tells what somebody has before him: "…, and I've got the cut list, what about the marks".
func hasSeen(acts []act.Act, atoms []scan.Atom) bool {
	return acts[len(acts)-1].Kind == act.Ask && idiom.HoldsWord(atoms, "got")
}

// leadsToNext reports whether a clause only leads to what follows: "go ahead and stack five boards", "back up, I want 2x6", "I've got the
// cuts, what about the marks".
func leadsToNext(acts []act.Act, atoms []scan.Atom) bool {
	switch a := acts[0]; {
	case len(acts) > 1:
		return acts[len(acts)-1].Kind == act.Undo // "gap 2, before that, how high is the wall"
	case a.Kind == act.Ask:
		return a.String() == "ask layout" || atoms[0].Text == "i"
	default:
		return a.Kind == act.Undo || a.Kind == act.TakeThat || a.Kind == act.Quit
	}
}

// noBehind reports whether somebody takes back what stands before ("or no, just the cuts"), or says what others said word for word.
func noBehind(atoms []scan.Atom) bool {
	for i := 1; i < len(atoms); i++ {
		if atoms[i].Text == "no" && (chunk.BreaksClause(atoms, i-1) || atoms[i-1].Text == "or") {
			return true
		}
	}
	return atoms[0].Text == `"`
}

// claimers are words of those whose claim goes on over what follows.
var claimers = scan.WordSet("he she they his her their says say said tells told claims claim asserts assert insists swears reckons thinks figures wants wrote quotes quoted shows calls")

// goesOn reports whether a clause says nothing, or not the same, without the one before: it has no subject ("… and gets two stiffeners"), asks
// of nothing named ("…, how many do you get"), or is a figure alone.
func goesOn(right []scan.Atom) bool {
	w, n := measure.Reader{Atoms: right}, len(right)
	first, second := w.Word(0), w.Word(1)
	switch asks := lex.Helping[w.Word(2)] != ""; {
	case goesOnWith[first], ofWhole[first] && second != "of":
		return true
	case asks && (first == "how" && second == "many" || first == "what" && ofNothingNamed[second]):
		return true
	case indirect[first] && lexicon.Vocab().Articles[second]:
		return true // "explain to us, step by step, how the opening is found"
	case w.Word(n-2) == "and" && w.Word(n-1) == "all":
		return true // "hold it to 300, materials and all"
	case first == "any", first == "show" && n < 3, first == "i" && second == "am" && w.Word(2) == "off":
		return true // "…, any mistakes?", "…, show me", "…, I'm off to the yard"
	case figureOnly(right), nthAlone[w.Word(n-1)], w.Word(n-1) == "?" && nthAlone[w.Word(n-2)]:
		return true
	}
	return idiom.HoldsWord(right, "new") && !idiom.HoldsWord(right, "post")
}

// figureOnly reports whether a clause is a size or a figure, and hardly more: "what are the posts? 4x4, thanks".
func figureOnly(right []scan.Atom) bool {
	w := measure.Reader{Atoms: right}
	return chunk.Numeric(right[0]) && w.Word(1) == "x" || len(right) < 3 && (idiom.SoldLengths[w.Word(0)] || figureAt(right[0])) ||
		!slices.ContainsFunc(right, func(a scan.Atom) bool { return a.Kind == scan.Word && a.Text != "x" && a.Text != "by" })
}

var (
	indirect       = scan.WordSet("how what why where which")                               // begin a clause that is asked of by the one before
	ofWhole        = scan.WordSet("top bottom total")                                       // are of what stood before, unless it is said of what
	ofNothingNamed = scan.WordSet("spacing width height length size number distance price") // are of something
	nthAlone       = scan.WordSet("then first second third fourth last lot")                // end a clause that leans on a list
)

// goesOnWith are verbs whose subject stands in the clause before.
var goesOnWith = scan.WordSet("gets has is are was goes needs takes stays comes sits stands")

// oneList reports whether a line is a list of prices or of lengths on sale, each entry of which may lean on the first.
func oneList(acts []act.Act) bool {
	return !slices.ContainsFunc(acts, func(a act.Act) bool {
		return a.Kind != act.State || slices.ContainsFunc(a.Statements, func(st solver.Statement) bool {
			return st.Name.Quantity != solver.Price && st.Name.Quantity != solver.Stock
		})
	})
}

// halfBehind reports whether a cut parts a figure from its fraction: "three and a half".
func halfBehind(atoms []scan.Atom, cut partedAt) bool {
	w := measure.Reader{Atoms: atoms[cut.next:]}
	return figureAt(atoms[cut.end-1]) && (partsOfInch[w.Word(0)] || (w.Word(0) == "a" || w.Word(0) == "an") && partsOfInch[w.Word(1)])
}

// partsOfInch are words of fractions behind a whole number.
var partsOfInch = scan.WordSet("half quarter quarters eighth eighths sixteenth sixteenths third thirds")

// ofOneThing reports whether a clause goes on with what the one before speaks of.
func ofOneThing(first, then []act.Act) bool {
	return sparesCounted(first, then) || sharesThing(first, then)
}

// sharesThing reports whether two clauses speak of one quantity: the later one may correct the first, or go on with its list.
func sharesThing(first, then []act.Act) bool {
	for _, a := range first {
		for _, b := range then {
			for _, s := range a.Statements {
				for _, t := range b.Statements {
					if s.Name.Quantity == t.Name.Quantity || s.Name.Quantity == solver.Units {
						return true
					}
				}
			}
		}
	}
	return false
}

// saysBoth reports whether a whole line says what its two clauses say: what the second one states may be tried behind a question, and
// claimed or tried where the first is.
func saysBoth(whole, first, then []act.Act, claimed bool) bool {
	said := map[string]act.Kind{}
	for _, a := range whole {
		for _, form := range saidIn([]act.Act{a}) {
			said[ofAnyPost(form)] = a.Kind
		}
	}
	lead := first[len(first)-1].Kind
	for i, acts := range [][]act.Act{first, then} {
		for _, a := range acts {
			for _, form := range saidIn([]act.Act{a}) {
				switch kind, ok := said[ofAnyPost(form)]; {
				case !ok && form == "ask hardware":
					// "a list of the lumber and hardware": it stands on the list of what to buy
				case !ok && form == "ask cautions" && whole[0].Kind == act.Check:
					// "any mistakes?" behind a claim asks whether it holds
				case !ok:
					return false
				case kind == a.Kind || a.Kind != act.State:
				case kind == act.Check && changesSomething(form):
					return false // nobody claims a change
				case kind == act.Check && !claimed && !(i == 1 && lead == act.Check), kind == act.WhatIf && (i == 0 || lead == act.State):
					return false
				}
			}
		}
	}
	return true
}

// changesSomething reports whether a normal form changes a value rather than tells it.
func changesSomething(form string) bool {
	return strings.Contains(form, " += ") || strings.Contains(form, " -= ") || strings.Contains(form, " *= ")
}

// ofAnyPost takes the size of end posts and of added ones for that of posts: which are meant may show only by what else is said.
func ofAnyPost(form string) string {
	if strings.Contains(form, "post size") {
		form = strings.TrimPrefix(strings.TrimPrefix(form, "end "), "added ")
	}
	return form
}
