package takeback

import (
	"slices"
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
)

// The shapes of a clause that takes something back: a verb and what it takes, a thing and what becomes of it, somebody who no
// longer needs it.

// startOf returns the atom after a phrase of a table that begins a clause, 0 where none does.
func startOf(w []scan.Atom, v *lexicon.Vocabulary) int {
	if f := v.Match(w, 0); len(f) > 0 {
		return f[0].Next
	}
	return 0
}

// behindVerb returns what stands behind a verb of taking back, without the particle that ends the verb.
func behindVerb(w []scan.Atom) ([]scan.Atom, bool) {
	if n := startOf(w, paraphrase.TakingVocab().Leads); n > 0 && n < len(w) {
		w = hear.BareClause(w[n:])
	}
	n := startOf(w, paraphrase.TakingVocab().Verbs)
	if n == 0 || n == len(w) {
		return nil, false
	}
	split := n == 1 && apartVerbs[w[n-1].Text] && !hear.TakeBackVerb[w[n-1].Text]
	if (w[0].Text == "no") && w[1].Text != "need" && !limitNoun[w[n].Text] {
		return nil, false // "no more rails"
	}
	what := w[n:]
	if w[n-1].Text == "lift" && !slices.ContainsFunc(what, func(a scan.Atom) bool { return liftable[a.Text] }) {
		return nil, false // "lift the bottom rail"
	}
	cut := false
	for again := true; again; {
		again = false
		for i := 1; i < len(what); i++ {
			if f := paraphrase.TakingVocab().Particles.Match(what, i); len(f) > 0 && f[0].Next == len(what) {
				if split && what[i].Text == "back" && !takesBack[w[n-1].Text] && (i+1 == len(what) || !offList[what[i+1].Text]) {
					return nil, false // "put the gap back"
				}
				if split && (what[i].Text == "on" || what[i].Text == "back" && i+1 < len(what) && what[i+1].Text == "on") {
					return nil, false // "put the gap on the list"
				}
				what, again, cut = what[:i], true, cut || what[i].Text != "again"
				break
			}
		}
	}
	if p := particle[what[0].Text]; p && len(what) > 1 {
		what, cut = what[1:], true // "throw out the gap", "strike off …"
	}
	if split && !cut {
		return nil, false // "throw the gap"
	}
	return what, len(what) > 0
}

// apartVerbs take something back only with a particle.
var apartVerbs = scan.WordSet("throw take cross toss wipe rub chuck knock pull strip leave keep set put get have let clear move lay turn sweep cut blot edit write score")

// takesBack are those with which "back" takes something away, and offList what it does with every one.
var (
	takesBack = scan.WordSet("take pull")
	offList   = scan.WordSet("off from out")
)

var limitNoun = scan.WordSet("limit limits maximum max minimum min cap restriction condition ceiling bound")

var particle = scan.WordSet("out away off back aside")

// beforeEnd returns what stands before a phrase of a table that ends a clause.
func beforeEnd(w []scan.Atom, v *lexicon.Vocabulary) ([]scan.Atom, bool) {
	for i := 1; i < len(w); i++ {
		if f := v.Match(w, i); len(f) > 0 && f[0].Next == len(w) {
			return w[:i], true
		}
	}
	return nil, false
}

func beforeTopicEnd(w []scan.Atom) ([]scan.Atom, bool) {
	return beforeEnd(w, paraphrase.TakingVocab().Topics)
}

// behindCarer returns what somebody no longer needs: "the inspector doesn't need …".
func behindCarer(w []scan.Atom) ([]scan.Atom, bool) {
	for i := 1; i < len(w) && i < 5; i++ {
		f := paraphrase.TakingVocab().Carers.Match(w, i)
		if len(f) == 0 || f[0].Next == len(w) {
			continue
		}
		who := w[0].Text
		if lex.Speakers[who] || lex.OtherOnes[who] || lex.Owned[who] || chunk.Noun[who] || i == 1 {
			return w[f[0].Next:], true
		}
	}
	return nil, false
}

// deniedLimit returns the limit of which a clause says that it need not be held: "the opening doesn't have to be at least thirty
// any longer".
func deniedLimit(w []scan.Atom) ([]scan.Atom, bool) {
	for i := 1; i+2 < len(w); i++ {
		n := 0
		switch {
		case (w[i].Text == "do" || w[i].Text == "does") && w[i+1].Text == "not" && (w[i+2].Text == "have" || w[i+2].Text == "need") && i+3 < len(w) && w[i+3].Text == "to":
			n = 4
		case (w[i].Text == "need" || w[i].Text == "needs") && w[i+1].Text == "not":
			n = 2
		case i == 1 && noNeedFor(w):
			return mustStay(w[5:])
		case w[i].Text == "no" && w[i+1].Text == "longer" && (w[i+2].Text == "has" || w[i+2].Text == "needs" || w[i+2].Text == "have" || w[i+2].Text == "need") && i+3 < len(w) && w[i+3].Text == "to":
			n = 4
		default:
			continue
		}
		must := w[i]
		must.Text = "must"
		out := append(append([]scan.Atom{}, w[:i]...), must)
		return append(out, w[i+n:]...), true
	}
	return nil, false
}

// noLonger reports whether a clause says that something held till now.
func noLonger(w []scan.Atom) bool {
	for i, a := range w {
		if a.Text == "anymore" || a.Text == "longer" && i > 0 && (w[i-1].Text == "no" || w[i-1].Text == "any") || a.Text == "more" && i > 0 && w[i-1].Text == "any" && i+1 == len(w) {
			return true
		}
	}
	return false
}

// takesClauseBack reports whether a line takes back a whole clause, with a verb of its own: "forget that the gap can't go over
// three inches".
func takesClauseBack(atoms []scan.Atom) bool {
	for i := 1; i+3 < len(atoms); i++ {
		if atoms[i].Text != "that" || !lexicon.Vocab().Articles[atoms[i+1].Text] && !foreignNot(atoms, i+1) {
			continue
		}
		switch w := atoms[i-1].Text; {
		case hear.TakeBackVerb[w], w == "back" && i > 1 && (atoms[i-2].Text == "take" || atoms[i-2].Text == "took"):
		default:
			continue
		}
		for j := i + 2; j < len(atoms) && !chunk.BreaksClause(atoms, j); j++ {
			switch atoms[j].Text {
			case "can", "could", "must", "should", "has", "have", "is", "are", "was", "were", "needs", "need", "may", "be", "cannot", "shall", "will", "had", "stays", "stay":
				return true
			}
		}
	}
	return false
}

// foreignNot reports whether a part of the wall is named at an atom.
func foreignNot(atoms []scan.Atom, i int) bool {
	f := lexicon.Vocab().Match(atoms, i)
	return len(f) > 0 && (f[0].Entry.Kind == lexicon.Part || f[0].Entry.Kind == lexicon.Loc)
}

// asObject leaves out of the name of what is taken back the words round it: "the figure I gave you for the gap". It reports
// whether they said that it is a limit.
func asObject(what []scan.Atom) (w []scan.Atom, limits bool) {
	w = hear.BareClause(what)
	for {
		f := paraphrase.TakingVocab().Naming.Match(w, 0)
		if len(f) == 0 || f[0].Next >= len(w) {
			break
		}
		limits = limits || f[0].Entry.Kind == lexicon.Lim
		w = w[f[0].Next:]
	}
	for again := true; again; {
		again = false
		for i := 1; i < len(w); i++ {
			if f := paraphrase.TakingVocab().Said.Match(w, i); len(f) > 0 && f[0].Next == len(w) {
				w, again = w[:i], true
				break
			}
		}
	}
	out := append([]scan.Atom{}, w...)
	for i := range out {
		if out[i].Text == "being" || limits && out[i].Text == "be" && i > 0 && !lex.Auxiliary[out[i-1].Text] && out[i-1].Text != "to" && out[i-1].Text != "not" {
			out[i].Text = "is"
		}
	}
	return out, limits
}

// saidGoes reports whether a line begins with what was said, and tells what becomes of it: "what I told you about the kerf no longer
// holds".
func saidGoes(atoms []scan.Atom) bool {
	if len(atoms) < 5 || atoms[0].Text != "what" && atoms[0].Text != "whatever" && atoms[0].Text != "everything" || !lex.Speakers[atoms[1].Text] {
		return false
	}
	_, ok := beforeEnd(hear.BareClause(breaths(atoms)[0]), paraphrase.TakingVocab().Ends)
	return ok
}

// noNeedFor reports whether a clause begins with "there is no need for", and something behind it.
func noNeedFor(w []scan.Atom) bool {
	return len(w) > 8 && w[0].Text == "there" && w[1].Text == "is" && w[2].Text == "no" && (w[3].Text == "need" || w[3].Text == "reason" || w[3].Text == "call") && w[4].Text == "for"
}

// mustStay returns the limit that "the gap to stay under three inches any more" names.
func mustStay(w []scan.Atom) ([]scan.Atom, bool) {
	for i := 1; i+2 < len(w); i++ {
		if w[i].Text != "to" || !staysSo[w[i+1].Text] {
			continue
		}
		must, be := w[i], w[i+1]
		must.Text, be.Text = "must", "be"
		out := append(append(append([]scan.Atom{}, w[:i]...), must, be), w[i+2:]...)
		kept, _ := asObject(out)
		return kept, true
	}
	return nil, false
}

var staysSo = scan.WordSet("stay be remain keep hold come stand go measure run sit")

// behindRegret returns what somebody wishes not to have said: "I shouldn't have given you a wall height yet".
func behindRegret(w []scan.Atom) ([]scan.Atom, bool) {
	n := startOf(w, paraphrase.TakingVocab().Regrets)
	if n == 0 || n >= len(w) {
		return nil, false
	}
	what := w[n:]
	for len(what) > 1 && (what[len(what)-1].Text == "yet" || what[len(what)-1].Text == "already" || what[len(what)-1].Text == "so" || what[len(what)-1].Text == "soon") {
		what = what[:len(what)-1]
	}
	return what, len(what) > 0
}

// needsNoMore reports whether a line says that there is no need to keep something, or for something to stay as it is.
func needsNoMore(atoms []scan.Atom) bool {
	said := " " + scan.Text(atoms)
	at := strings.Index(said, " no need ")
	if at < 0 || strings.Contains(said, "?") {
		return false
	}
	rest := said[at:]
	return hear.NeedsNoKeeping(rest) || strings.HasPrefix(rest, " no need for ") && (strings.Contains(rest, " any more") || strings.Contains(rest, " anymore") || strings.Contains(rest, " any longer") || strings.Contains(rest, " now"))
}

// liftable is what is lifted by taking it back, and not with the hands.
var liftable = scan.WordSet("limit limits limitation cap max maximum min minimum ceiling rule rules restriction restrictions bound bounds requirement ban budget constraint freeze hold guard figure price it that this")
