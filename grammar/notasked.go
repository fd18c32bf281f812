package grammar

import (
	"slices"
)

// What somebody does not ask for, knows already or wants nobody to do is told beside what he asks or wants: "I know how high it is, tell me
// the gap", "don't draw it, just give me the cuts", "it's not the gap I'm asking about, it's the opening". Such a clause is left out;
// what is left must be understood by itself. Common ways of speech, no source.

// readNotAsked reads a line without what it says is not asked for.
func readNotAsked(line string, atoms []atom, c Context) (Reading, bool) {
	if !slices.ContainsFunc(atoms, func(a atom) bool { return notAskedKeys[a.text] }) {
		return Reading{}, false
	}
	parts := contrastParts(atoms)
	if len(parts) < 2 {
		return Reading{}, false
	}
	var rest, dropped []atom
	for _, part := range parts {
		if len(dropped) == 0 && needless(part) {
			dropped = part
			continue
		}
		rest = append(rest, part...)
	}
	if len(dropped) == 0 || len(rest) == 0 {
		return Reading{}, false
	}
	rest = whatIsAsked(withoutJoint(rest), dropped)
	if rest == nil {
		return Reading{}, false
	}
	for i, a := range rest {
		if i == 0 && rest[0].at < dropped[0].at || rest[0].text == "save" {
			break // it was said before
		}
		if pointsAtDropped[a.text] && !(i > 0 && (rest[i-1].text == "how" || a.text == "it" && reader{rest}.word(i+1) == "is")) {
			return Reading{}, false
		}
	}
	r := readHeld(line, rest, c)
	return r, r.Ask == nil && len(r.Acts) > 0 && !slices.ContainsFunc(r.Acts, func(a Act) bool {
		return a.Kind == Check || a.Kind == Forget && a.Topic == "" && len(a.Statements) == 0
	})
}

var (
	// notAskedKeys are words without one of which no clause says that something is not asked for.
	notAskedKeys = wordSet("know already not need mind asked stays stay alone going quit stop forget fine good")
	// pointsAtDropped may speak of what was left out.
	pointsAtDropped = wordSet("it them those these they that also too either both")
	// wherefores begin what somebody knows, or does not ask.
	wherefores = wordSet("how what why where which when whether")
	// keepsDoing are orders that somebody wants nobody to follow.
	keepsDoing = wordSet("draw print save start undo redo show give tell list open quit explain round")
)

// needless reports whether a clause tells what is not asked for.
func needless(part []atom) bool {
	part = withoutJoint(part)
	if part[len(part)-1].text == "?" {
		return false
	}
	w := wordsOnly(part)
	if at, _ := lastFigure(part); at >= 0 && !(len(w) > 4 && speakers[w[0]] && w[1] == "know" && w[2] == "it" && w[3] == "is" || len(w) > 4 && speakers[w[0]] && w[2] == "why") {
		return false
	}
	for len(w) > 3 && (fillersBefore[w[0]] || w[0] == "thank" || w[0] == "you" && w[1] != "know" || w[0] == "please") {
		w = w[1:]
	}
	if len(w) < 3 {
		return false
	}
	n := len(w)
	switch {
	case speakers[w[0]]:
		return knownAlready(w[1:])
	case endsKnown(w):
		return w[0] != "all" && w[0] != "that" && w[0] != "as" && w[0] != "what" || w[1] == "to" || w[1] == "the"
	case w[0] == "do" && w[1] == "not" && keepsDoing[w[2]]:
		return w[n-1] != "yet" && (w[2] != "save" || slices.Contains(w, "as"))
	case n > 4 && w[0] == "do" && w[1] == "not" && (w[2] == "bother" || w[2] == "fuss" || w[2] == "worry") && (w[3] == "with" || w[3] == "about"):
		return tablesNamed[w[n-1]] && n < 8 // but not "don't bother with stiffeners"
	case n > 3 && w[0] == "no" && w[1] == "need" && w[2] == "to" && keepsDoing[w[3]], w[0] == "need" && w[1] == "not" && keepsDoing[w[2]]:
		return w[n-1] != "yet"
	case w[0] == "never" && w[1] == "mind", w[0] == "forget":
		k := 1
		if w[0] == "never" {
			k = 2
		}
		for k < n && (w[k] == "about" || w[k] == "the") {
			k++
		}
		return w[0] == "never" && k < n && wherefores[w[k]] || n > 5 && slices.Contains([]string{"second", "minute", "moment", "sec"}, w[n-1]) || n > 4 && w[n-2] == "for" && w[n-1] == "now"
	case (w[0] == "quit" || w[0] == "stop") && (w[1] == "giving" || w[1] == "showing" || w[1] == "telling") && w[2] == "me":
		return true
	case w[0] == "leave" && (w[n-1] == "alone" || n > 4 && w[n-3] == "as" && w[n-1] == "is"):
		return true
	case (w[0] == "it" || w[0] == "that") && w[1] == "is" && w[2] == "not":
		return askedAfter(w[3:])
	case n > 4 && (w[n-4] == "fine" || w[n-4] == "good" || w[n-4] == "ok" || w[n-4] == "right") && w[n-3] == "as" && w[n-2] == "it" && w[n-1] == "is":
		return true
	case n > 4 && (w[n-5] == "stays" || w[n-4] == "stays" || w[n-5] == "stay" || w[n-4] == "stay") && w[n-1] != "at":
		return w[n-3] == "as" && (w[n-1] == "is" || w[n-1] == "are") || w[n-2] == "it" && w[n-1] == "is"
	}
	return false
}

// knownAlready reports whether words behind "I" or "we" tell that something is known, or not asked.
func knownAlready(w []string) bool {
	n := len(w)
	already := w[n-1] == "already"
	if w[0] == "already" {
		w, already = w[1:], true
	}
	if len(w) < 2 {
		return false
	}
	switch w[0] {
	case "understand", "see", "get":
		return w[1] == "why"
	case "know", "knew":
		return w[1] != "that" || already
	case "have", "got":
		return already
	case "do", "did":
		if len(w) > 3 && w[1] == "not" {
			switch w[2] {
			case "mind", "care":
				return w[3] == "about" || wherefores[w[3]]
			case "ask", "need", "want":
				if len(w) > 4 && w[3] == "to" && keepsDoing[w[4]] {
					return true
				}
				return slices.ContainsFunc(w[3:], func(v string) bool { return wherefores[v] || tablesNamed[v] })
			}
		}
	case "am", "are", "was", "were":
		if len(w) > 3 && (w[1] == "not" && w[2] == "asking" || w[1] == "going" && w[2] == "to" && w[3] == "ask") {
			return true
		}
	case "asked":
		return n > 3 && (w[1] == "you" || w[1] == "about" || w[1] == "for")
	}
	return false
}

// endsKnown reports whether a clause names a thing and says that it is known: "the gap I know", "what to buy I've got already".
func endsKnown(w []string) bool {
	return slices.ContainsFunc(saidKnown, func(row []string) bool {
		return len(w) > len(row)+1 && slices.Equal(w[len(w)-len(row):], row)
	})
}

var saidKnown = wordRows(`i know
	we know
	i know already
	we know already
	i have already
	we have already
	i got already
	we got already
	i have got already
	we have got already`)

// wantsToHear are words behind what is asked by which somebody wants to hear it.
var wantsToHear = wordRows(`i want to hear
	i want to know
	i want to see
	we want to know
	i would like to hear
	i would like to know
	i need to know`)

// tablesNamed are what the program can show.
var tablesNamed = wordSet("drawing sketch picture cuts marks steps cost price list layout options")

// askedAfter reports whether words name what somebody does not ask about: "the gap i am asking about".
func askedAfter(w []string) bool {
	i := slices.IndexFunc(w, func(v string) bool { return speakers[v] })
	if i < 1 || i+1 >= len(w) {
		return false
	}
	return slices.Contains(w[i:], "asking") || slices.Contains(w[i:], "after") || slices.Contains(w[i:], "want") || slices.Contains(w[i:], "asked")
}

// whatIsAsked sets what is asked behind something that is not to a question of its own, nil where it cannot be told.
func whatIsAsked(rest, dropped []atom) []atom {
	for len(rest) > 1 && (rest[0].text == "just" || rest[0].text == "only" || rest[0].text == "but") {
		rest = rest[1:]
	}
	end := len(rest)
	for end > 0 && rest[end-1].kind == aSign {
		end--
	}
	for _, wish := range wantsToHear {
		if at := end - len(wish); at > 3 && standAt(rest, at, wish...) {
			rest, end = rest[:at], at
			break
		}
	}
	body := rest[:end]
	switch {
	case standAt(rest, 0, "what", "i", "do", "not", "know", "is"), standAt(rest, 0, "what", "we", "do", "not", "know", "is"):
		return reworded(rest, 0, 6, "what", "is")
	case standAt(rest, 0, "what", "i", "do", "not", "get", "is"), standAt(rest, 0, "what", "i", "do", "not", "see", "is"), standAt(rest, 0, "what", "i", "do", "not", "understand", "is"):
		return rest[6:]
	case standAt(rest, 0, "what", "i", "want", "to", "know", "is"), standAt(rest, 0, "what", "i", "need", "to", "know", "is"):
		return reworded(rest, 0, 6, "what", "is")
	case standAt(rest, 0, "what", "i", "am", "after", "is"), standAt(rest, 0, "what", "we", "are", "after", "is"):
		return rest[5:]
	case standAt(rest, 0, "it", "is", "the"), standAt(rest, 0, "it", "is", "why"), standAt(rest, 0, "it", "is", "how"):
		if at, _ := lastFigure(rest); at >= 0 {
			return nil
		}
		return reworded(rest, 0, 2, "what", "is")
	case standAt(rest, 0, "i", "am", "asking"), standAt(rest, 0, "we", "are", "asking"):
		if len(rest) > 4 && (rest[3].text == "about" || rest[3].text == "for") {
			return reworded(rest, 0, 4, "what", "is")
		}
		return rest[3:]
	case len(body) > 2 && body[len(body)-1].text == "why" && (standAt(body, 0, "i", "want", "to", "know") || standAt(body, 0, "tell", "me")):
		for i := range dropped {
			if key, next := partKey(dropped, i); key != "" {
				return append(reworded(body, 0, len(body), "why", "the"), dropped[i:next]...)
			}
		}
		return nil
	}
	return rest
}
