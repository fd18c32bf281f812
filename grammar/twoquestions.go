package grammar

import "slices"

// Two questions joined by "and" or "and then" are two sentences, though nobody hears a stop between them: "what gap do I get and show me a
// picture", "where do I stand the new post and where do I scribe it". Left together, the second one swallows the first. So it is with a
// question and an order behind it, and with "plus" or "also" between two clauses: "the wall is 48 high plus make the gap 2" adds nothing.

// questionsParted puts a comma before an "and" that joins a question, or an order to show something, to another one, and a stop before an
// order to set something behind one: "show me the marks and put the opening on the left".
func questionsParted(in []atom) []atom {
	from := 0
	for i := 0; i < len(in); i++ {
		joint := in[i].text == "and" || in[i].text == "," || in[i].text == "plus"
		if in[i].kind == aSign && !joint {
			if breaksClause(in, i) {
				from = i + 1
			}
			continue
		}
		if !joint {
			continue
		}
		next := i + 1
		plus := in[i].text == "plus"
		for next < len(in) && (andAfter[in[next].text] || (in[next].text == "and" || in[next].text == "plus") && next == i+1) {
			plus = plus || in[next].text == "plus"
			next++
		}
		sign := partedBy(in[from:i], in[i].text, in[next:])
		if sign == "" && next < len(in) && (plus || in[next-1].text == "also") && opensThought(in[next:]) && tellsWhole(in[from:i]) {
			sign = "." // "the wall is 48 high plus make the gap 2" adds nothing to it
		}
		if sign == "" {
			if in[i].kind == aSign {
				from = i + 1
			}
			continue
		}
		end := i
		if end-from > 4 && in[end-1].text == "you" && shownToYou[in[end-2].text] {
			end -= 2 // "do me a picture would you"
		}
		stop := in[i]
		stop.kind, stop.text, stop.end, stop.glued = aSign, sign, stop.at, false
		out := append(append([]atom{}, in[:end]...), stop)
		if sign == "," {
			out = append(out, worded(in[i], "and"))
		}
		return append(out, questionsParted(in[next:])...)
	}
	return in
}

// partedBy is the sign that belongs between a clause and the next one, nothing where what joins them will do.
func partedBy(part []atom, joint string, next []atom) string {
	w := reader{next}
	switch {
	case joint == "," && opensTrial(next) && asksForReason(part):
		return "?" // "why six rails, would five rails do"
	case w.word(0) == "as" && (w.word(1) == "for" || w.word(1) == "to" || w.word(1) == "regards") && asksWhole(part, "as"):
		return "." // "what size are the posts, and as for the stiffeners, I don't need any"
	case joint != "," && opensWholeQuestion(next) && asksWhole(part, next[0].text):
		return ","
	case runOnOrders[w.word(0)] && w.word(0) != "save" && w.word(0) != "forget" || w.word(0) == "put" || w.word(0) == "add":
		if v := w.word(1); v != "the" && v != "my" && v != "a" && v != "another" || len(part) == 0 {
			return ""
		}
		if asksWhole(part, w.word(0)) && !slices.ContainsFunc(part, func(a atom) bool { return proposes[a.text] }) {
			return "."
		}
		if joint == "and" && len(part) > 3 && figured(part) && part[0].text == "the" && slices.ContainsFunc(part, func(a atom) bool { return a.text == "is" || a.text == "are" }) && !slices.ContainsFunc(part, func(a atom) bool { return runOnTurns[a.text] }) {
			return "," // "the wall is 48 high and make the gap 2"
		}
	case w.word(0) == "use" && slices.ContainsFunc(part, func(a atom) bool { return sellsAt[a.text] }):
		return "."
	case w.word(0) == "no" && isClass(w.word(1), "STIFF") && asksWhole(part, "no"):
		return "."
	case w.word(0) == "they" && sellsAt[w.word(1)] && (figuredAny([][]atom{part}) || len(part) > 1 && (part[0].text == "add" || part[0].text == "lose" || asksWhole(part, "they"))) && !slices.ContainsFunc(part, func(a atom) bool { return sellsAt[a.text] || a.text == "they" || runOnTurns[a.text] }):
		if _, _, ok := sizeEnding(part); !ok {
			return "." // "six rails and they sell eights": no list of lengths
		}
	}
	return ""
}

// opensTrial reports whether a question begins with an atom, whether a figure, or a part with one, would do.
func opensTrial(in []atom) bool {
	if len(in) < 3 || !mayAsk[in[0].text] && in[0].text != "should" && in[0].text != "might" {
		return false
	}
	k := 1
	if speakers[in[1].text] || in[1].text == "you" {
		k = 3 // "should I use five"
	}
	for k < 5 && k < len(in) && (vocab().articles[in[k].text] || in[k].text == "not" || in[k].text == "just" || in[k].text == "only") {
		k++
	}
	return k < len(in) && (mayBeginFigure(in[k]) || ofPart(in[k].text)) && figured(in[k:]) && !slices.ContainsFunc(in, func(a atom) bool { return leavesOpen[a.text] })
}

// asksForReason reports whether a clause asks for a reason: "why six rails", "how come the gap is 2", "how did you get two bays".
func asksForReason(part []atom) bool {
	led, _ := pastLead(part)
	w := reader{led}
	switch w.word(0) {
	case "why", "explain":
		return len(led) > 1
	case "how":
		return w.word(1) == "come" || w.word(1) == "did" || w.word(1) == "do" && w.word(2) == "you"
	}
	return false
}

// opensThought reports whether an order, or what somebody tells or wants, begins with an atom.
func opensThought(in []atom) bool {
	w := reader{in}
	switch v := w.word(0); v {
	case "make", "keep", "set", "put", "use", "raise", "lower", "widen", "narrow", "lose", "drop", "go", "add", "show", "tell", "draw", "print", "give":
		return len(in) > 1
	case "i", "we", "they", "he", "she", "there":
		return len(in) > 2 && w.word(1) != "and"
	case "the", "my", "our", "that":
		for k := 2; k < min(len(in), 5); k++ {
			if verbAsks(in[k].text) {
				return true
			}
		}
		return len(in) > 3 && isClass(w.word(1), "BRACKET")
	}
	return len(in) > 2 && isClass(w.word(0), "BRACKET")
}

// tellsWhole reports whether a clause tells or orders something by itself: it has a figure, or a verb.
func tellsWhole(part []atom) bool {
	if len(part) < 2 || part[0].text == "would" || part[0].text == "could" || slices.ContainsFunc(part, func(a atom) bool { return leavesOpen[a.text] }) {
		return false
	}
	return figuredAny([][]atom{part}) || slices.ContainsFunc(part, func(a atom) bool { return verbAsks(a.text) || sellsAt[a.text] }) || opensThought(part)
}

// proposes are words of a question that tries or proposes something, which an order behind it goes on with: "why don't we go down to five".
var proposes = wordSet("not if about would could happens")

// leavesOpen are words by which a clause supposes or claims, so that what follows may belong to it.
var leavesOpen = wordSet("if unless whether suppose supposing because since until or says said claims thinks")

// sizeEnding finds a lumber size at the end of a clause.
func sizeEnding(part []atom) (from, end int, ok bool) {
	for i := range part {
		if _, end, ok := (reader{part}).size(i); ok && end == len(part) {
			return i, end, true
		}
	}
	return 0, 0, false
}

// sellsAt are verbs of what a yard does with lumber.
var sellsAt = wordSet("sell sells carry carries stock stocks have has")

// andAfter are words behind an "and" that only tell the order of what is asked.
var andAfter = wordSet("then also finally lastly afterwards")

// opensWholeQuestion reports whether a question that says all by itself begins with an atom, or an order to show something.
func opensWholeQuestion(in []atom) bool {
	w := reader{in}
	next := w.word(1)
	switch w.word(0) {
	case "where", "what", "why", "how", "which":
		for k := 1; k < min(len(in), 6); k++ {
			if verbAsks(in[k].text) {
				return true
			}
			if in[k].kind != aWord || speakers[in[k].text] || in[k].text == "if" || in[k].text == "the" {
				return false
			}
		}
		return false
	case "show", "tell", "give", "draw", "teach", "do":
		return next == "me" || next == "us"
	case "list", "explain", "print":
		return next == "the" || next == "it" || next == "that"
	case "work":
		return next == "it" && w.word(2) == "out"
	}
	return false
}

// asksWhole reports whether a clause asks, or orders to show something, and is over where the next one opens.
func asksWhole(part []atom, next string) bool {
	led, _ := pastLead(part)
	if standAt(led, 0, "draw", "it") || standAt(led, 0, "print", "it") {
		return true
	}
	if len(led) < 3 || led[0].text == "do" && led[1].text != "me" && led[1].text != "us" {
		return false
	}
	for orders := !opensAsking[led[0].text]; orders && len(led) > 3 && shownToYou[led[len(led)-1].text]; {
		led = led[:len(led)-1]
	}
	last := led[len(led)-1].text
	if runOnLeads[last] && last != "it" && last != "i" && last != "me" && last != "for" && last != "on" && last != "about" && last != "at" && last != "with" {
		return false
	}
	verb, asked := false, false
	for k, a := range led {
		v := a.text
		verb = verb || verbAsks(v)
		asked = asked || k > 0 && (v == "how" || v == "what" || v == "where" || v == "why")
		if a.kind == aWord && (v == "if" || v == "whether" || v == "says" || v == "said") {
			return false
		}
	}
	switch led[0].text {
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
var opensAsking = wordSet("how what where why which")

// shownToYou are words that may end an order, asking for it: "do me a picture would you".
var shownToYou = wordSet("would will could can you please first")

// verbAsks reports whether a word is the verb of a question.
func verbAsks(w string) bool {
	return auxiliary[w] || helping[w] != "" || w == "am" || w == "'s"
}
