package takeback

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
	"saywright/solver"
)

// What is to be forgotten is named by words that all must be understood; a figure among them that is no place is never lost.

// namesAPlace reports whether the figures among what is forgotten may be places: "the reading on rail 3 in bay 1".
func namesAPlace(a act.Act) bool {
	n := a.Name
	return n != nil && (n.Bay+n.Rail+n.Post+n.Opening > 0 || n.Item != "")
}

// clearOf reports whether what stands behind a "clear" is no order: "clear space from rail to rail has to stay below four".
func clearOf(what []scan.Atom) bool {
	switch what[0].Text {
	case "space", "opening", "span", "width", "distance", "height", "run", "gap":
		for _, a := range what {
			if lex.Auxiliary[a.Text] {
				return true
			}
		}
	}
	return false
}

// movesTo reports whether words end in a figure that something is brought to: "lift | the wall to 50".
func movesTo(what []scan.Atom) bool {
	for i := range what {
		if (what[i].Text == "to" || what[i].Text == "at" || what[i].Text == "by" || what[i].Text == "is" || what[i].Text == "are" || what[i].Text == "=") && idiom.HasFigures(what[i+1:]) {
			return true
		}
	}
	return false
}

// ofThem puts what was spoken of in place of the "them" in "as few of them as you can": "posts are dear this year, so …".
func ofThem(kept, dropped []scan.Atom, c act.Context) []scan.Atom {
	at := -1
	for i := 1; i < len(kept); i++ {
		if kept[i].Text == "them" && kept[i-1].Text == "of" {
			at = i
		}
	}
	if at < 0 {
		return kept
	}
	var noun *lex.Token
	for _, x := range lex.Tokens(dropped, c) {
		if x.Kind == lexicon.Part && x.Plural() || x.Kind == lexicon.Quest && x.Text == "posts" {
			if noun != nil {
				return kept
			}
			noun = &x
		}
	}
	if noun == nil {
		return kept
	}
	one := kept[at]
	one.Text = noun.Text
	return append(append(append([]scan.Atom{}, kept[:at-1]...), one), kept[at+1:]...)
}

// valueGiven returns the atom at which a value stands behind a bare verb of setting, 0 where it says more.
func valueGiven(w []scan.Atom) int {
	i := 0
	for i < len(w) && (w[i].Text == "put" || w[i].Text == "make" || w[i].Text == "enter" || w[i].Text == "use" || w[i].Text == "it" || w[i].Text == "in" || w[i].Text == "set" || w[i].Text == "to" || w[i].Text == "at" || w[i].Text == "is" || w[i].Text == "say" || i > 0 && w[0].Text == "it" && readsAs[w[i].Text]) {
		i++
	}
	if i == 0 || i == len(w) {
		return 0
	}
	l := measure.Reader{Atoms: w}
	if _, next, ok := l.Length(i); ok && next == len(w) {
		return i
	}
	return 0
}

// nameAtoms writes a name as its normal form, in the place of an atom.
func nameAtoms(n solver.Name, at scan.Atom) []scan.Atom {
	return paraphrase.WrittenAt(n.String(), at)
}

// named reads a clause that only names something that was said: "the second rail in bay two".
func (t *takingBack) named(w []scan.Atom) (act.Act, bool) {
	if len(w) < 2 || len(w) > 9 {
		return act.Act{}, false
	}
	for _, a := range w {
		if a.Text == "'s" || lex.Auxiliary[a.Text] {
			return act.Act{}, false
		}
	}
	for _, x := range lex.Tokens(w, t.c) {
		switch x.Kind {
		case lexicon.Part, lexicon.Loc, lexicon.Dim, lexicon.StockWord, lexicon.Ordinal, lexicon.Num, lexicon.Measured, lexicon.Top, lexicon.Lim, lexicon.At, lexicon.Out, lexicon.Item, lexicon.Size, lexicon.Unit:
		default:
			return act.Act{}, false
		}
		for _, v := range strings.Fields(x.Before) {
			if !lexicon.Vocab().Articles[v] && v != "of" && v != "in" && v != "on" && v != "for" && v != "at" && v != "that" && v != "this" {
				return act.Act{}, false
			}
		}
	}
	return t.forgotten(w)
}

// longestObject is the most words that name what is to be forgotten.
const longestObject = 20

// object reads what is to be forgotten.
func (t *takingBack) object(what []scan.Atom) (act.Act, bool) {
	what, limits := asObject(atEnd(what))
	if len(what) == 0 || len(what) > longestObject {
		return act.Act{}, false
	}
	if a, ok := t.limit(what, limits); ok && len(a.Statements) > 0 && idiom.HasFigures(what) {
		return a, true
	}
	if a, ok := t.forgotten(what); ok && !(limits && a.Name != nil && idiom.HasFigures(what)) {
		return a, true
	}
	return t.limit(what, limits)
}

// forgotten reads words behind a plain "forget".
func (t *takingBack) forgotten(what []scan.Atom) (act.Act, bool) {
	verb := scan.Atom{Text: "forget", Kind: scan.Word, At: what[0].At, End: what[0].At}
	r := hear.Atoms(append([]scan.Atom{verb}, what...), t.c)
	if r.Ask != nil || len(r.Acts) != 1 || r.Acts[0].Kind != act.Forget {
		return act.Act{}, false
	}
	return r.Acts[0], true
}

// limit reads a limit that is told as it was said: "the gap can't go over three inches".
func (t *takingBack) limit(what []scan.Atom, told bool) (act.Act, bool) {
	r := hear.Atoms(what, t.c)
	if r.Ask != nil || len(r.Acts) != 1 || r.Acts[0].Kind != act.State || len(r.Acts[0].Statements) != 1 {
		return act.Act{}, false
	}
	a := r.Acts[0]
	a.Kind = act.Forget
	switch st := a.Statements[0]; st.Op {
	case solver.LE, solver.LT, solver.GE, solver.GT, solver.In:
	case solver.Eq, solver.Near:
		if !told || st.Name.Quantity == solver.Stock {
			return act.Act{}, false // "forget the twelve footers": one length of the list, not all of it
		}
		a.Name, a.Statements = &st.Name, nil
	default:
		return act.Act{}, false
	}
	return a, true
}

// withoutSigns leaves out commas, and puts the word that says what is meant by a place in front: "the measurement".
func withoutSigns(in []scan.Atom) (out []scan.Atom) {
	for _, a := range hear.BareClause(in) {
		switch {
		case a.Kind == scan.Sign && (a.Text == "," || a.Text == "-" || a.Text == "--" || a.Text == ":"):
		case a.Text == "measurement" || a.Text == "reading":
			out = append([]scan.Atom{a}, out...)
		default:
			out = append(out, a)
		}
	}
	return out
}

func onlyPronoun(what []scan.Atom) bool {
	for len(what) > 1 && (what[len(what)-1].Text == "one" || what[len(what)-1].Text == "limit" || what[len(what)-1].Text == "measurement" || what[len(what)-1].Text == "figure" || what[len(what)-1].Text == "number" || what[len(what)-1].Text == "rule") {
		what = what[:len(what)-1]
	}
	if len(what) != 1 {
		return false
	}
	switch strings.ToLower(what[0].Text) {
	case "it", "that", "this", "them", "those":
		return true
	}
	return false
}
