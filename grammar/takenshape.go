package grammar

import "slices"

import "strings"

// The shapes of a clause that takes something back: a verb and what it takes, a thing and what becomes of it, somebody who no
// longer needs it.

// startOf returns the atom after a phrase of a table that begins a clause, 0 where none does.
func startOf(w []atom, v *vocabulary) int {
	if f := v.match(w, 0); len(f) > 0 {
		return f[0].next
	}
	return 0
}

// behindVerb returns what stands behind a verb of taking back, without the particle that ends the verb.
func behindVerb(w []atom) ([]atom, bool) {
	if n := startOf(w, takingVocab().leads); n > 0 && n < len(w) {
		w = bareClause(w[n:])
	}
	n := startOf(w, takingVocab().verbs)
	if n == 0 || n == len(w) {
		return nil, false
	}
	split := n == 1 && apartVerbs[w[n-1].text] && !takeBackVerb[w[n-1].text]
	if (w[0].text == "no") && w[1].text != "need" && !limitNoun[w[n].text] {
		return nil, false // "no more rails"
	}
	what := w[n:]
	if w[n-1].text == "lift" && !slices.ContainsFunc(what, func(a atom) bool { return liftable[a.text] }) {
		return nil, false // "lift the bottom rail"
	}
	cut := false
	for again := true; again; {
		again = false
		for i := 1; i < len(what); i++ {
			if f := takingVocab().particles.match(what, i); len(f) > 0 && f[0].next == len(what) {
				if split && what[i].text == "back" && !takesBack[w[n-1].text] && (i+1 == len(what) || !offList[what[i+1].text]) {
					return nil, false // "put the gap back"
				}
				what, again, cut = what[:i], true, cut || what[i].text != "again"
				break
			}
		}
	}
	if p := particle[what[0].text]; p && len(what) > 1 {
		what, cut = what[1:], true // "throw out the gap", "strike off …"
	}
	if split && !cut {
		return nil, false // "throw the gap"
	}
	return what, len(what) > 0
}

// apartVerbs take something back only with a particle.
var apartVerbs = wordSet("throw take cross toss wipe rub chuck knock pull strip leave keep set put get have let clear move lay turn sweep cut blot edit write score")

// takesBack are those with which "back" takes something away, and offList what it does with every one.
var (
	takesBack = wordSet("take pull")
	offList   = wordSet("off from out")
)

var limitNoun = wordSet("limit limits maximum max minimum min cap restriction condition ceiling bound")

var particle = wordSet("out away off back aside")

// beforeEnd returns what stands before a phrase of a table that ends a clause.
func beforeEnd(w []atom, v *vocabulary) ([]atom, bool) {
	for i := 1; i < len(w); i++ {
		if f := v.match(w, i); len(f) > 0 && f[0].next == len(w) {
			return w[:i], true
		}
	}
	return nil, false
}

func beforeTopicEnd(w []atom) ([]atom, bool) { return beforeEnd(w, takingVocab().topics) }

// behindCarer returns what somebody no longer needs: "the inspector doesn't need …".
func behindCarer(w []atom) ([]atom, bool) {
	for i := 1; i < len(w) && i < 5; i++ {
		f := takingVocab().carers.match(w, i)
		if len(f) == 0 || f[0].next == len(w) {
			continue
		}
		who := w[0].text
		if speakers[who] || otherOnes[who] || owned[who] || noun[who] || i == 1 {
			return w[f[0].next:], true
		}
	}
	return nil, false
}

// deniedLimit returns the limit of which a clause says that it need not be held: "the opening doesn't have to be at least thirty
// any longer".
func deniedLimit(w []atom) ([]atom, bool) {
	for i := 1; i+2 < len(w); i++ {
		n := 0
		switch {
		case (w[i].text == "do" || w[i].text == "does") && w[i+1].text == "not" && (w[i+2].text == "have" || w[i+2].text == "need") && i+3 < len(w) && w[i+3].text == "to":
			n = 4
		case (w[i].text == "need" || w[i].text == "needs") && w[i+1].text == "not":
			n = 2
		case i == 1 && noNeedFor(w):
			return mustStay(w[5:])
		case w[i].text == "no" && w[i+1].text == "longer" && (w[i+2].text == "has" || w[i+2].text == "needs" || w[i+2].text == "have" || w[i+2].text == "need") && i+3 < len(w) && w[i+3].text == "to":
			n = 4
		default:
			continue
		}
		must := w[i]
		must.text = "must"
		out := append(append([]atom{}, w[:i]...), must)
		return append(out, w[i+n:]...), true
	}
	return nil, false
}

// noLonger reports whether a clause says that something held till now.
func noLonger(w []atom) bool {
	for i, a := range w {
		if a.text == "anymore" || a.text == "longer" && i > 0 && (w[i-1].text == "no" || w[i-1].text == "any") || a.text == "more" && i > 0 && w[i-1].text == "any" && i+1 == len(w) {
			return true
		}
	}
	return false
}

// takesClauseBack reports whether a line takes back a whole clause, with a verb of its own: "forget that the gap can't go over
// three inches".
func takesClauseBack(atoms []atom) bool {
	for i := 1; i+3 < len(atoms); i++ {
		if atoms[i].text != "that" || !vocab().articles[atoms[i+1].text] && !foreignNot(atoms, i+1) {
			continue
		}
		switch w := atoms[i-1].text; {
		case takeBackVerb[w], w == "back" && i > 1 && (atoms[i-2].text == "take" || atoms[i-2].text == "took"):
		default:
			continue
		}
		for j := i + 2; j < len(atoms) && !breaksClause(atoms, j); j++ {
			switch atoms[j].text {
			case "can", "could", "must", "should", "has", "have", "is", "are", "was", "were", "needs", "need", "may", "be", "cannot", "shall", "will", "had", "stays", "stay":
				return true
			}
		}
	}
	return false
}

// foreignNot reports whether a part of the wall is named at an atom.
func foreignNot(atoms []atom, i int) bool {
	f := vocab().match(atoms, i)
	return len(f) > 0 && (f[0].entry.kind == kPart || f[0].entry.kind == kLoc)
}

// takeBackVerb are verbs of taking back.
var takeBackVerb = wordSet(takebackWords)

// asObject leaves out of the name of what is taken back the words round it: "the figure I gave you for the gap". It reports
// whether they said that it is a limit.
func asObject(what []atom) (w []atom, limits bool) {
	w = bareClause(what)
	for {
		f := takingVocab().naming.match(w, 0)
		if len(f) == 0 || f[0].next >= len(w) {
			break
		}
		limits = limits || f[0].entry.kind == kLim
		w = w[f[0].next:]
	}
	for again := true; again; {
		again = false
		for i := 1; i < len(w); i++ {
			if f := takingVocab().said.match(w, i); len(f) > 0 && f[0].next == len(w) {
				w, again = w[:i], true
				break
			}
		}
	}
	out := append([]atom{}, w...)
	for i := range out {
		if out[i].text == "being" || limits && out[i].text == "be" && i > 0 && !auxiliary[out[i-1].text] && out[i-1].text != "to" && out[i-1].text != "not" {
			out[i].text = "is"
		}
	}
	return out, limits
}

// saidGoes reports whether a line begins with what was said, and tells what becomes of it: "what I told you about the kerf no longer
// holds".
func saidGoes(atoms []atom) bool {
	if len(atoms) < 5 || atoms[0].text != "what" && atoms[0].text != "whatever" && atoms[0].text != "everything" || !speakers[atoms[1].text] {
		return false
	}
	_, ok := beforeEnd(bareClause(breaths(atoms)[0]), takingVocab().ends)
	return ok
}

// noNeedFor reports whether a clause begins with "there is no need for", and something behind it.
func noNeedFor(w []atom) bool {
	return len(w) > 8 && w[0].text == "there" && w[1].text == "is" && w[2].text == "no" && (w[3].text == "need" || w[3].text == "reason" || w[3].text == "call") && w[4].text == "for"
}

// mustStay returns the limit that "the gap to stay under three inches any more" names.
func mustStay(w []atom) ([]atom, bool) {
	for i := 1; i+2 < len(w); i++ {
		if w[i].text != "to" || !staysSo[w[i+1].text] {
			continue
		}
		must, be := w[i], w[i+1]
		must.text, be.text = "must", "be"
		out := append(append(append([]atom{}, w[:i]...), must, be), w[i+2:]...)
		kept, _ := asObject(out)
		return kept, true
	}
	return nil, false
}

var staysSo = wordSet("stay be remain keep hold come stand go measure run sit")

// behindRegret returns what somebody wishes not to have said: "I shouldn't have given you a wall height yet".
func behindRegret(w []atom) ([]atom, bool) {
	n := startOf(w, takingVocab().regrets)
	if n == 0 || n >= len(w) {
		return nil, false
	}
	what := w[n:]
	for len(what) > 1 && (what[len(what)-1].text == "yet" || what[len(what)-1].text == "already" || what[len(what)-1].text == "so" || what[len(what)-1].text == "soon") {
		what = what[:len(what)-1]
	}
	return what, len(what) > 0
}

// needsNoMore reports whether a line says that there is no need to keep something, or for something to stay as it is.
func needsNoMore(atoms []atom) bool {
	said := " " + textOf(atoms)
	at := strings.Index(said, " no need ")
	if at < 0 || strings.Contains(said, "?") {
		return false
	}
	rest := said[at:]
	return needsNoKeeping(rest) || strings.HasPrefix(rest, " no need for ") && (strings.Contains(rest, " any more") || strings.Contains(rest, " anymore") || strings.Contains(rest, " any longer") || strings.Contains(rest, " now"))
}

// liftable is what is lifted by taking it back, and not with the hands.
var liftable = wordSet("limit limits limitation cap max maximum min minimum ceiling rule rules restriction restrictions bound bounds requirement ban budget constraint freeze hold guard figure price it that this")
