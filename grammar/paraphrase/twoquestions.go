package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// Two questions joined by "and" or "and then" are two sentences, though nobody hears a stop between them: "what gap do I get and show me a
// picture", "where do I stand the new post and where do I scribe it". Left together, the second one swallows the first. So it is with a
// question and an order behind it, and with "plus" or "also" between two clauses: "the wall is 48 high plus make the gap 2" adds nothing.

// questionsParted puts a comma before an "and" that joins a question, or an order to show something, to another one, and a stop before an
// order to set something behind one: "show me the marks and put the opening on the left".
func questionsParted(in []scan.Atom) []scan.Atom {
	from := 0
	for i := 0; i < len(in); i++ {
		joint := in[i].Text == "and" || in[i].Text == "," || in[i].Text == "plus"
		if in[i].Kind == scan.Sign && !joint {
			if chunk.BreaksClause(in, i) {
				from = i + 1
			}
			continue
		}
		if !joint {
			continue
		}
		next := i + 1
		plus := in[i].Text == "plus"
		for next < len(in) && (andAfter[in[next].Text] || (in[next].Text == "and" || in[next].Text == "plus") && next == i+1) {
			plus = plus || in[next].Text == "plus"
			next++
		}
		sign := partedBy(in[from:i], in[i].Text, in[next:])
		if sign == "" && next < len(in) && (plus || in[next-1].Text == "also") && opensThought(in[next:]) && tellsWhole(in[from:i]) {
			sign = "." // "the wall is 48 high plus make the gap 2" adds nothing to it
		}
		if sign == "" {
			if in[i].Kind == scan.Sign {
				from = i + 1
			}
			continue
		}
		end := i
		if end-from > 4 && in[end-1].Text == "you" && shownToYou[in[end-2].Text] {
			end -= 2 // "do me a picture would you"
		}
		stop := in[i]
		stop.Kind, stop.Text, stop.End, stop.Glued = scan.Sign, sign, stop.At, false
		out := append(append([]scan.Atom{}, in[:end]...), stop)
		if sign == "," {
			out = append(out, chunk.Worded(in[i], "and"))
		}
		return append(out, questionsParted(in[next:])...)
	}
	return in
}

// partedBy is the sign that belongs between a clause and the next one, nothing where what joins them will do.
func partedBy(part []scan.Atom, joint string, next []scan.Atom) string {
	w := measure.Reader{Atoms: next}
	switch {
	case joint == "," && opensTrial(next) && asksForReason(part):
		return "?" // "why six rails, would five rails do"
	case w.Word(0) == "as" && (w.Word(1) == "for" || w.Word(1) == "to" || w.Word(1) == "regards") && AsksWhole(part, "as"):
		return "." // "what size are the posts, and as for the stiffeners, I don't need any"
	case joint != "," && idiom.OpensWholeQuestion(next) && AsksWhole(part, next[0].Text):
		return ","
	case RunOnOrders[w.Word(0)] && w.Word(0) != "save" && w.Word(0) != "forget" || w.Word(0) == "put" || w.Word(0) == "add":
		if v := w.Word(1); v != "the" && v != "my" && v != "a" && v != "another" || len(part) == 0 {
			return ""
		}
		if AsksWhole(part, w.Word(0)) && !slices.ContainsFunc(part, func(a scan.Atom) bool { return Proposes[a.Text] }) {
			return "."
		}
		if joint == "and" && len(part) > 3 && chunk.Figured(part) && part[0].Text == "the" && slices.ContainsFunc(part, func(a scan.Atom) bool { return a.Text == "is" || a.Text == "are" }) && !slices.ContainsFunc(part, func(a scan.Atom) bool { return RunOnTurns[a.Text] }) {
			return "," // "the wall is 48 high and make the gap 2"
		}
	case w.Word(0) == "use" && slices.ContainsFunc(part, func(a scan.Atom) bool { return sellsAt[a.Text] }):
		return "."
	case w.Word(0) == "no" && chunk.IsClass(w.Word(1), "STIFF") && AsksWhole(part, "no"):
		return "."
	case w.Word(0) == "they" && sellsAt[w.Word(1)] && (FiguredAny([][]scan.Atom{part}) || len(part) > 1 && (part[0].Text == "add" || part[0].Text == "lose" || AsksWhole(part, "they"))) && !slices.ContainsFunc(part, func(a scan.Atom) bool { return sellsAt[a.Text] || a.Text == "they" || RunOnTurns[a.Text] }):
		if _, _, ok := sizeEnding(part); !ok {
			return "." // "six rails and they sell eights": no list of lengths
		}
	}
	return ""
}

// opensTrial reports whether a question begins with an atom, whether a figure, or a part with one, would do.
func opensTrial(in []scan.Atom) bool {
	if len(in) < 3 || !idiom.MayAsk[in[0].Text] && in[0].Text != "should" && in[0].Text != "might" {
		return false
	}
	k := 1
	if lex.Speakers[in[1].Text] || in[1].Text == "you" {
		k = 3 // "should I use five"
	}
	for k < 5 && k < len(in) && (lexicon.Vocab().Articles[in[k].Text] || in[k].Text == "not" || in[k].Text == "just" || in[k].Text == "only") {
		k++
	}
	return k < len(in) && (phrase.MayBeginFigure(in[k]) || chunk.OfPart(in[k].Text)) && chunk.Figured(in[k:]) && !slices.ContainsFunc(in, func(a scan.Atom) bool { return leavesOpen[a.Text] })
}

// asksForReason reports whether a clause asks for a reason: "why six rails", "how come the gap is 2", "how did you get two bays".
func asksForReason(part []scan.Atom) bool {
	led, _ := idiom.PastLead(part)
	w := measure.Reader{Atoms: led}
	switch w.Word(0) {
	case "why", "explain":
		return len(led) > 1
	case "how":
		return w.Word(1) == "come" || w.Word(1) == "did" || w.Word(1) == "do" && w.Word(2) == "you"
	}
	return false
}

// opensThought reports whether an order, or what somebody tells or wants, begins with an atom.
func opensThought(in []scan.Atom) bool {
	w := measure.Reader{Atoms: in}
	switch v := w.Word(0); v {
	case "make", "keep", "set", "put", "use", "raise", "lower", "widen", "narrow", "lose", "drop", "go", "add", "show", "tell", "draw", "print", "give":
		return len(in) > 1
	case "i", "we", "they", "he", "she", "there":
		return len(in) > 2 && w.Word(1) != "and"
	case "the", "my", "our", "that":
		for k := 2; k < min(len(in), 5); k++ {
			if idiom.VerbAsks(in[k].Text) {
				return true
			}
		}
		return len(in) > 3 && chunk.IsClass(w.Word(1), "BRACKET")
	}
	return len(in) > 2 && chunk.IsClass(w.Word(0), "BRACKET")
}

// tellsWhole reports whether a clause tells or orders something by itself: it has a figure, or a verb.
func tellsWhole(part []scan.Atom) bool {
	if len(part) < 2 || part[0].Text == "would" || part[0].Text == "could" || slices.ContainsFunc(part, func(a scan.Atom) bool { return leavesOpen[a.Text] }) {
		return false
	}
	return FiguredAny([][]scan.Atom{part}) || slices.ContainsFunc(part, func(a scan.Atom) bool { return idiom.VerbAsks(a.Text) || sellsAt[a.Text] }) || opensThought(part)
}

// Proposes are words of a question that tries or proposes something, which an order behind it goes on with: "why don't we go down to five".
var Proposes = scan.WordSet("not if about would could happens")

// leavesOpen are words by which a clause supposes or claims, so that what follows may belong to it.
var leavesOpen = scan.WordSet("if unless whether suppose supposing because since until or says said claims thinks")

// sizeEnding finds a lumber size at the end of a clause.
func sizeEnding(part []scan.Atom) (from, end int, ok bool) {
	for i := range part {
		if _, end, ok := (measure.Reader{Atoms: part}).Size(i); ok && end == len(part) {
			return i, end, true
		}
	}
	return 0, 0, false
}

// sellsAt are verbs of what a yard does with lumber.
var sellsAt = scan.WordSet("sell sells carry carries stock stocks have has")

// andAfter are words behind an "and" that only tell the order of what is asked.
var andAfter = scan.WordSet("then also finally lastly afterwards")

// AsksWhole reports whether a clause asks, or orders to show something, and is over where the next one opens.
func AsksWhole(part []scan.Atom, next string) bool {
	led, _ := idiom.PastLead(part)
	if scan.StandAt(led, 0, "draw", "it") || scan.StandAt(led, 0, "print", "it") {
		return true
	}
	if len(led) < 3 || led[0].Text == "do" && led[1].Text != "me" && led[1].Text != "us" {
		return false
	}
	for orders := !opensAsking[led[0].Text]; orders && len(led) > 3 && shownToYou[led[len(led)-1].Text]; {
		led = led[:len(led)-1]
	}
	last := led[len(led)-1].Text
	if RunOnLeads[last] && last != "it" && last != "i" && last != "me" && last != "for" && last != "on" && last != "about" && last != "at" && last != "with" {
		return false
	}
	verb, asked := false, false
	for k, a := range led {
		v := a.Text
		verb = verb || idiom.VerbAsks(v)
		asked = asked || k > 0 && (v == "how" || v == "what" || v == "where" || v == "why")
		if a.Kind == scan.Word && (v == "if" || v == "whether" || v == "says" || v == "said") {
			return false
		}
	}
	switch led[0].Text {
	case "where", "what", "how", "which":
		return verb
	case "why":
		return true // "why six rails"
	case "show", "tell", "give", "draw", "teach", "list", "explain", "print", "work", "do":
		return !asked || !opensAsking[next] // "tell me how wide and how high it is"
	}
	return false
}

// opensAsking are words that open a question.
var opensAsking = scan.WordSet("how what where why which")

// shownToYou are words that may end an order, asking for it: "do me a picture would you".
var shownToYou = scan.WordSet("would will could can you please first")
