package takeback

import (
	"slices"
	"strings"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/chunk"
	"saywright/grammar/gist"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/paraphrase"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// Beside an order that says all there is to say ("undo", "forget the gap", "start over"), people tell why: "my wife wants to think
// about it some more". Such talk sets nothing, asks nothing and denies nothing of the order.

// talks reports whether a clause only talks.
func talks(part []scan.Atom, c act.Context) bool {
	w := hear.BareClause(part)
	if len(w) == 0 {
		return true
	}
	if part[0].Text == "but" {
		return false // what is said against what stands before it
	}
	if part[len(part)-1].Text == "?" {
		return false
	}
	if courteous(w) || idleTalks(part) {
		return true
	}
	if misspelled(part, c) {
		return false // "smalest gap u can do"
	}
	if IsBackdrop(part, c, "") {
		return true
	}
	if w[0].Text == "as" && (len(w) < 5 || asMuch(w)) {
		return false // "as few as | you possibly can"
	}
	for len(w) > 0 && (paraphrase.Causes[w[0].Text] || aside.StepBefore[w[0].Text] && w[0].Text != "you") {
		w = w[1:]
	}
	words := paraphrase.WordsAhead(w)
	if len(words) < len(w) || len(words) < 2 || !aside.Narrates(words, true) && !tellsOfDeed(words) {
		return false
	}
	if enables(words) {
		return true
	}
	words = withoutThought(words)
	denied := false
	if lex.Speakers[words[0]] {
		for _, v := range words {
			if v == "not" || v == "never" {
				return false // "I don't want that" may deny the order
			}
		}
	}
	wishes, parts := false, false
	for _, v := range words {
		wishes = wishes || musts[v]
		if lex.Speakers[words[0]] && hear.Wishing[v] && v != "have" && v != "keep" {
			return false
		}
	}
	for _, v := range words {
		denied = denied || v == "not" || v == "never" || v == "only"
	}
	for i, v := range words {
		if phrase.Turning[v] || idiom.Viewed[v] && i > 0 || stays[v] && !(v == "later" && i > 1 && puts[words[i-1]]) {
			return false
		}
		wishes = wishes || hear.Wishing[v]
	}
	list := lex.Tokens(gist.WordAtoms(words, w[0]), c)
	for i := range list {
		switch t := &list[i]; t.Kind {
		case lexicon.Quest:
			if t.Text != "posts" || i > 0 {
				return false
			}
		case lexicon.Units:
			if !denied || lex.Speakers[words[0]] {
				return false
			}
		case lexicon.Side:
			if !lex.ToBe[lex.LastWord(t.Before)] {
				return false
			}
		case lexicon.Num, lexicon.Size, lexicon.Goal, lexicon.Rel, lexicon.Lim, lexicon.Wh, lexicon.Where, lexicon.Cmd, lexicon.ForgetTail, lexicon.Fix, lexicon.Tail, lexicon.Change, lexicon.Factor, lexicon.Best, lexicon.Name, lexicon.Csv, lexicon.No, lexicon.TeachHead, lexicon.Enter:
			return false
		case lexicon.Head:
			if t.Key() != string(act.State) {
				return false
			}
			wishes = wishes || !strings.Contains(t.Text, "measure")
		case lexicon.Part, lexicon.Loc:
			parts = parts || t.Key() != "kerf" && t.Key() != "tape"
		case lexicon.Unknown:
			if numberLike(t.Text) {
				return false
			}
		}
	}
	return !(wishes && parts)
}

// misspelled reports whether a word of a clause that no table knows may be a word of the vocabulary misspelled.
func misspelled(part []scan.Atom, c act.Context) bool {
	list := lex.Tokens(part, c)
	for i := range list {
		if t := &list[i]; t.Kind == lexicon.Unknown && !hear.Foreign(t) {
			return true
		}
	}
	return false
}

func asMuch(w []scan.Atom) bool {
	for _, a := range w {
		switch a.Text {
		case "can", "possible", "possibly", "could", "like", "will", "may", "able":
			return true
		}
	}
	return false
}

// withoutThought leaves out what one has yet to do in one's head: "wants to think about it some more".
func withoutThought(words []string) []string {
	for i, v := range words {
		if i > 1 && (v == "think" || v == "sleep" || v == "mull" || v == "talk") && i+1 < len(words) && (words[i+1] == "about" || words[i+1] == "over" || words[i+1] == "on" || words[i+1] == "it") {
			for _, w := range words[i+1:] {
				if !thoughts[w] {
					return words
				}
			}
			return words[:i]
		}
	}
	return words
}

var thoughts = scan.WordSet("about over on it that this the matter thing things some a bit more again first longer while yet still")

// enables reports whether a clause tells what becomes possible, for whom: "so I can show the boss".
func enables(words []string) bool {
	if len(words) < 3 || !lex.Speakers[words[0]] && !lex.OtherOnes[words[0]] && !((lex.Owned[words[0]] || chunk.Noun[words[0]]) && (lex.Outsiders[words[1]] || idiom.IsOf(words[1], lexicon.Vocab().Ids["PERSON"]))) {
		return false
	}
	for i := 1; i < len(words) && i < 4; i++ {
		if words[i] == "can" || words[i] == "may" || words[i] == "will" || words[i] == "could" {
			for _, v := range words[i+1:] {
				if v == "not" || scan.Ones[v] > 0 || measure.Tens[v] > 0 || phrase.Turning[v] || stays[v] && v != "hang" && v != "keep" {
					return false
				}
			}
			return i+1 < len(words)
		}
	}
	return false
}

// courteous reports whether a clause is no more than courtesy, or tells who is speaking: "if I may", "old carpenter here".
func courteous(w []scan.Atom) bool {
	n := len(w)
	if wholeKey(courtesyVocab(), w) != "" {
		return true
	}
	if n < 2 || n > 5 || w[n-1].Text != "here" && w[n-1].Text != "speaking" {
		return false
	}
	id := lexicon.Vocab().Ids["PERSON"]
	for _, c := range lexicon.Vocab().Classes[w[n-2].Text] {
		if c == id {
			return true
		}
	}
	return false
}

// idleClauses are clauses that say nothing by themselves.
var idleClauses = []lexicon.Entry{
	{Kind: lexicon.Fill, Key: "idle", Ways: `
		if (i|we|you) (may|can|could|would|will|please) [(kindly|be so kind|be so good)]
		if (you|it) (do not mind|is possible|is no trouble|is not too much trouble|is all the same to you|is ok|is alright|is all right|is not too late)
		if (possible|that is (ok|alright|fine|possible)|that works|that suits you)
		(hang on|wait|hold on|hold it|wait a (minute|moment|second|sec|bit)|just a (minute|moment|second|sec)|one (moment|second|sec|minute)|no wait|wait no|oh dear|oh no|hey)
		(much obliged|ta|bless you|thank you kindly|no offence|no offense|no hard feelings|my apologies|apologies|begging your pardon|beg pardon|if it pleases you)
		(i|we) (need|want|would like|must have) (it|this|it all|this all|everything|all of it|the lot|all) (on|in) (paper|print|writing|black and white)`},
}

var courtesyVocab = sync.OnceValue(func() *lexicon.Vocabulary { return lexicon.Compile(nil, idleClauses) })

// puts are verbs of what one does later: "I'll decide later".
var puts = scan.WordSet("decide it that measure choose think settle")

// musts bind what they are said of.
var musts = scan.WordSet("should must shall ought cannot")

// tellsOfDeed reports whether words begin with somebody or something, and tell with a verb of no regular past what it did: "my
// apprentice read the tape upside down".
func tellsOfDeed(words []string) bool {
	if words[1] == "'s" || words[1] == "is" || words[1] == "are" || words[1] == "has" || words[1] == "have" || words[1] == "was" || words[1] == "were" {
		return len(words) > 2 && !asksWord[words[0]] && !phrase.Turning[words[0]] && !lex.Pointing[words[0]] // "lumber's gone up"
	}
	if !lex.Owned[words[0]] && !chunk.Noun[words[0]] && !lex.Outsiders[words[0]] {
		return false
	}
	for i, v := range words {
		if i > 0 && i < 5 && strongPast[v] {
			return true
		}
	}
	return false
}

var asksWord = scan.WordSet("what which who whose how where when why is are was were do does did can could would will should may might if no not none nothing all any")

var strongPast = scan.WordSet(`read took got went came gave lost broke bought sold ran wrote drew held left sent hit bent fell found forgot grew knew meant met paid rang saw shot shut sat slept spoke
	spent stole stood stuck swore thought threw told tore wore won did made put set cut let said had has does knows misread mistook misheard`)

// worded reports whether a word that no table knows may be a misspelled number.
func numberLike(w string) bool { return lex.Words().Numberish(w) }

// stays are words that take an order back, or put it off.
var stays = scan.WordSet("wait hold hang stop later first yet until till before except but mind kidding joking rather instead keep leave")

// TalkParts cuts a line into its clauses, also before a joint that leads on to a wish.
func TalkParts(atoms []scan.Atom) (parts [][]scan.Atom) {
	starts := ClauseStarts(atoms)
	from, within := 0, 0
	for i := 1; i < len(atoms); i++ {
		if end, ok := idiom.FigureEnd(atoms, i-1); ok && end > i {
			within = max(within, end)
		}
		if i < within {
			continue // "two and a half"
		}
		w, next := atoms[i].Text, measure.Reader{Atoms: atoms}.Word(i+1)
		if !slices.Contains(starts, i) && !(w == "so" || w == "but") && !(w == "and" && (lex.Speakers[next] || lex.Owned[next] || next == "the" && chunk.BreaksClause(atoms, i-1))) {
			continue
		}
		parts = append(parts, atoms[from:i])
		from = i
	}
	return append(parts, atoms[from:])
}

// idleTalks reports whether a clause is talk that a table knows.
func idleTalks(part []scan.Atom) bool {
	w := hear.BareClause(part)
	for len(w) > 1 && (paraphrase.Causes[w[0].Text] || aside.StepBefore[w[0].Text] && w[0].Text != "you") {
		w = w[1:]
	}
	return len(w) > 1 && part[len(part)-1].Text != "?" && wholeKey(paraphrase.ClauseTables().Talk, w) != ""
}
