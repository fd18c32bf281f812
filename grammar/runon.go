package grammar

import (
	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
)

// Who dictates says several things without a stop between them: "make the doorway two inches wider drop the gap an eighth draw it". A line
// that cannot be read as a whole is read once more with a stop before each order and question that plainly begins in it. Nothing is left
// out and no word is taken for another; what turns, denies, claims or supposes may reach over such a place, so a line with such a word is
// left as it is.

// mostStops is how many stops are put into a line.
const mostStops = 4

// readRunOn reads a line with stops before the orders and questions in it.
func readRunOn(line string, atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	if c.Deep || len(atoms) < 6 {
		return act.Reading{}, false
	}
	for i, a := range atoms {
		if paraphrase.RunOnTurns[a.Text] && !(a.Text == "if" && i > 1 && (atoms[i-1].Text == "me" || atoms[i-1].Text == "us")) {
			return act.Reading{}, false // but for "tell me if there is anything to watch out for"
		}
	}
	var out []scan.Atom
	stops := 0
	for i, a := range atoms {
		if i > 1 && i+1 < len(atoms) && beginsAnew(atoms, i) {
			stops++
			stop := a
			stop.Kind, stop.Text, stop.End, stop.Glued = scan.Sign, ".", a.At, false
			out = append(out, stop)
		}
		out = append(out, a)
	}
	if stops == 0 || stops > mostStops {
		return act.Reading{}, false
	}
	c.Deep = true
	r := readPlainly(line, out, c)
	return r, r.Ask == nil && len(r.Acts) > stops
}

// beginsAnew reports whether an order or a question plainly begins at an atom, and what stands before it is over.
func beginsAnew(atoms []scan.Atom, i int) bool {
	was := atoms[i-1]
	if was.Kind == scan.Sign || paraphrase.RunOnLeads[was.Text] || chunk.Joints[was.Text] {
		return false
	}
	w := measure.Reader{Atoms: atoms}
	next := w.Word(i + 1)
	switch v := atoms[i].Text; {
	case v == "what":
		return next == "is" || next == "'s" || next == "do" || next == "does" || next == "are" || next == "gap" || next == "should"
	case v == "how":
		return next == "many" || next == "wide" || next == "high" || next == "tall" || next == "long" || next == "much" || next == "big" || next == "do"
	case v == "where":
		return next == "do" || next == "does" || next == "is" || next == "are"
	case v == "is":
		return next == "there" && (w.Word(i+2) == "anything" || w.Word(i+2) == "something")
	case v == "draw" || v == "show" || v == "give" || v == "tell" || v == "read":
		return next == "it" || next == "me" || next == "us"
	case v == "add" || v == "lose":
		return next == "a" || next == "one" || next == "another" || next == "two"
	case paraphrase.RunOnOrders[v]:
		return next == "the" || next == "my" || next == "it"
	}
	return false
}
