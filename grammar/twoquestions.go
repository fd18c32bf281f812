package grammar

// Two questions joined by "and" or "and then" are two sentences, though nobody hears a stop between them: "what gap do I get and show me a
// picture", "where do I stand the new post and where do I scribe it". Left together, the second one swallows the first.

// questionsParted puts a comma before an "and" that joins a question, or an order to show something, to another one.
func questionsParted(in []atom) []atom {
	from := 0
	for i := 0; i < len(in); i++ {
		if in[i].kind == aSign {
			from = i + 1
			continue
		}
		if in[i].text != "and" || i-from < 3 {
			continue
		}
		next := i + 1
		for next < len(in) && andAfter[in[next].text] {
			next++
		}
		if !opensWholeQuestion(in[next:]) || !asksWhole(in[from:i], in[next].text) {
			continue
		}
		comma := in[i]
		comma.kind, comma.text, comma.end, comma.glued = aSign, ",", comma.at, false
		end := i
		if end-from > 4 && in[end-1].text == "you" && shownToYou[in[end-2].text] {
			end -= 2 // "do me a picture would you"
		}
		out := append(append([]atom{}, in[:end]...), comma, in[i])
		return append(out, questionsParted(in[next:])...)
	}
	return in
}

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
	if len(led) < 3 {
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
