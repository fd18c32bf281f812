package contrast

import (
	"slices"

	"saywright/grammar/aside"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/scan"
)

// What somebody does not ask for, knows already or wants nobody to do is told beside what he asks or wants: "I know how high it is, tell me
// the gap", "don't draw it, just give me the cuts", "it's not the gap I'm asking about, it's the opening". Such a clause is left out;
// what is left must be understood by itself. Common ways of speech, no source.

var (
	// NotAskedKeys are words without one of which no clause says that something is not asked for.
	NotAskedKeys = scan.WordSet("know already not need mind asked stays stay alone going quit stop forget fine good")
	// PointsAtDropped may speak of what was left out.
	PointsAtDropped = scan.WordSet("it them those these they that also too either both")
	// wherefores begin what somebody knows, or does not ask.
	wherefores = scan.WordSet("how what why where which when whether")
	// keepsDoing are orders that somebody wants nobody to follow.
	keepsDoing = scan.WordSet("draw print save start undo redo show give tell list open quit explain round")
)

// wantsNoWord are verbs of what somebody does not want to hear of.
var wantsNoWord = scan.WordSet("know hear see read learn ask")

// Needless reports whether a clause tells what is not asked for.
func Needless(part []scan.Atom) bool {
	part = aside.WithoutJoint(part)
	if part[len(part)-1].Text == "?" {
		return false
	}
	w := WordsOnly(part)
	if at, _ := idiom.LastFigure(part); at >= 0 && !(len(w) > 4 && lex.Speakers[w[0]] && w[1] == "know" && w[2] == "it" && w[3] == "is" || len(w) > 4 && lex.Speakers[w[0]] && w[2] == "why") {
		return false
	}
	for len(w) > 3 && (FillersBefore[w[0]] || w[0] == "thank" || w[0] == "you" && w[1] != "know" || w[0] == "please") {
		w = w[1:]
	}
	if len(w) < 3 {
		return false
	}
	n := len(w)
	switch {
	case lex.Speakers[w[0]]:
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
		return already && !slices.ContainsFunc(w, func(v string) bool { return fixedThere[v] })
	case "do", "did":
		if len(w) > 3 && w[1] == "not" {
			switch w[2] {
			case "mind", "care":
				return w[3] == "about" || wherefores[w[3]]
			case "ask", "need", "want":
				if len(w) > 4 && w[3] == "to" && (keepsDoing[w[4]] || len(w) > 5 && wantsNoWord[w[4]]) {
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

// fixedThere are words for what hangs already, which is told of the wall: "I have the second rail fixed already, top edge 16 inches".
var fixedThere = scan.WordSet("fixed up on mounted hung screwed nailed bolted attached fastened installed")

// endsKnown reports whether a clause names a thing and says that it is known: "the gap I know", "what to buy I've got already".
func endsKnown(w []string) bool {
	return slices.ContainsFunc(saidKnown, func(row []string) bool {
		return len(w) > len(row)+1 && slices.Equal(w[len(w)-len(row):], row)
	})
}

var saidKnown = hear.WordRows(`i know
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
var wantsToHear = hear.WordRows(`i want to hear
	i want to know
	i want to see
	we want to know
	i would like to hear
	i would like to know
	i need to know`)

// tablesNamed are what the program can show.
var tablesNamed = scan.WordSet("drawing sketch picture cuts marks steps cost price list layout options")

// askedAfter reports whether words name what somebody does not ask about: "the gap i am asking about".
func askedAfter(w []string) bool {
	i := slices.IndexFunc(w, func(v string) bool { return lex.Speakers[v] })
	if i < 1 || i+1 >= len(w) {
		return false
	}
	return slices.Contains(w[i:], "asking") || slices.Contains(w[i:], "after") || slices.Contains(w[i:], "want") || slices.Contains(w[i:], "asked")
}

// WhatIsAsked sets what is asked behind something that is not to a question of its own, nil where it cannot be told.
func WhatIsAsked(rest, dropped []scan.Atom) []scan.Atom {
	for len(rest) > 1 && (rest[0].Text == "just" || rest[0].Text == "only" || rest[0].Text == "but") {
		rest = rest[1:]
	}
	end := len(rest)
	for end > 0 && rest[end-1].Kind == scan.Sign {
		end--
	}
	for _, wish := range wantsToHear {
		if at := end - len(wish); at > 3 && scan.StandAt(rest, at, wish...) {
			rest, end = rest[:at], at
			break
		}
	}
	body := rest[:end]
	switch {
	case scan.StandAt(rest, 0, "what", "i", "do", "not", "know", "is"), scan.StandAt(rest, 0, "what", "we", "do", "not", "know", "is"):
		return scan.Reworded(rest, 0, 6, "what", "is")
	case scan.StandAt(rest, 0, "what", "i", "do", "not", "get", "is"), scan.StandAt(rest, 0, "what", "i", "do", "not", "see", "is"), scan.StandAt(rest, 0, "what", "i", "do", "not", "understand", "is"):
		return rest[6:]
	case scan.StandAt(rest, 0, "what", "i", "want", "to", "know", "is"), scan.StandAt(rest, 0, "what", "i", "need", "to", "know", "is"):
		return scan.Reworded(rest, 0, 6, "what", "is")
	case scan.StandAt(rest, 0, "what", "i", "am", "after", "is"), scan.StandAt(rest, 0, "what", "we", "are", "after", "is"):
		return rest[5:]
	case scan.StandAt(rest, 0, "it", "is", "the"), scan.StandAt(rest, 0, "it", "is", "why"), scan.StandAt(rest, 0, "it", "is", "how"):
		if at, _ := idiom.LastFigure(rest); at >= 0 {
			return nil
		}
		return scan.Reworded(rest, 0, 2, "what", "is")
	case scan.StandAt(rest, 0, "i", "am", "asking"), scan.StandAt(rest, 0, "we", "are", "asking"):
		if len(rest) > 4 && (rest[3].Text == "about" || rest[3].Text == "for") {
			return scan.Reworded(rest, 0, 4, "what", "is")
		}
		return rest[3:]
	case len(body) > 2 && body[len(body)-1].Text == "why" && (scan.StandAt(body, 0, "i", "want", "to", "know") || scan.StandAt(body, 0, "tell", "me")):
		for i := range dropped {
			if key, next := chunk.PartKey(dropped, i); key != "" {
				return append(scan.Reworded(body, 0, len(body), "why", "the"), dropped[i:next]...)
			}
		}
		return nil
	}
	return rest
}
