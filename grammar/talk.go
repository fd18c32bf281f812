package grammar

import (
	"strings"
	"sync"
)

// Beside an order that says all there is to say ("undo", "forget the gap", "start over"), people tell why: "my wife wants to think
// about it some more". Such talk sets nothing, asks nothing and denies nothing of the order.

// talks reports whether a clause only talks.
func talks(part []atom, c Context) bool {
	w := bareClause(part)
	if len(w) == 0 {
		return true
	}
	if part[0].text == "but" {
		return false // what is said against what stands before it
	}
	if part[len(part)-1].text == "?" {
		return false
	}
	if courteous(w) || idleTalks(part) {
		return true
	}
	if misspelled(part, c) {
		return false // "smalest gap u can do"
	}
	if isBackdrop(part, c, "") {
		return true
	}
	if w[0].text == "as" && (len(w) < 5 || asMuch(w)) {
		return false // "as few as | you possibly can"
	}
	for len(w) > 0 && (causes[w[0].text] || stepBefore[w[0].text] && w[0].text != "you") {
		w = w[1:]
	}
	words := wordsAhead(w)
	if len(words) < len(w) || len(words) < 2 || !narrates(words, true) && !tellsOfDeed(words) {
		return false
	}
	if enables(words) {
		return true
	}
	words = withoutThought(words)
	denied := false
	if speakers[words[0]] {
		for _, v := range words {
			if v == "not" || v == "never" {
				return false // "I don't want that" may deny the order
			}
		}
	}
	wishes, parts := false, false
	for _, v := range words {
		wishes = wishes || musts[v]
		if speakers[words[0]] && wishing[v] && v != "have" && v != "keep" {
			return false
		}
	}
	for _, v := range words {
		denied = denied || v == "not" || v == "never" || v == "only"
	}
	for i, v := range words {
		if turning[v] || viewed[v] && i > 0 || stays[v] && !(v == "later" && i > 1 && puts[words[i-1]]) {
			return false
		}
		wishes = wishes || wishing[v]
	}
	list := lex(wordAtoms(words, w[0]), c)
	for i := range list {
		switch t := &list[i]; t.kind {
		case kQuest:
			if t.text != "posts" || i > 0 {
				return false
			}
		case kUnits:
			if !denied || speakers[words[0]] {
				return false
			}
		case kSide:
			if !toBe[lastWord(t.before)] {
				return false
			}
		case kNum, kSize, kGoal, kRel, kLim, kWh, kWhere, kCmd, kForgetTail, kFix, kTail, kChange, kFactor, kBest, kName, kCsv, kNo, kTeachHead, kEnter:
			return false
		case kHead:
			if t.key() != string(State) {
				return false
			}
			wishes = wishes || !strings.Contains(t.text, "measure")
		case kPart, kLoc:
			parts = parts || t.key() != "kerf" && t.key() != "tape"
		case kUnknown:
			if numberLike(t.text) {
				return false
			}
		}
	}
	return !(wishes && parts)
}

// misspelled reports whether a word of a clause that no table knows may be a word of the vocabulary misspelled.
func misspelled(part []atom, c Context) bool {
	list := lex(part, c)
	for i := range list {
		if t := &list[i]; t.kind == kUnknown && !foreign(t) {
			return true
		}
	}
	return false
}

func asMuch(w []atom) bool {
	for _, a := range w {
		switch a.text {
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

var thoughts = wordSet("about over on it that this the matter thing things some a bit more again first longer while yet still")

// wordAtoms makes atoms of words, at the place of one.
func wordAtoms(words []string, at atom) (out []atom) {
	for _, w := range words {
		out = append(out, atom{text: w, kind: aWord, at: at.at, end: at.end})
	}
	return out
}

// enables reports whether a clause tells what becomes possible, for whom: "so I can show the boss".
func enables(words []string) bool {
	if len(words) < 3 || !speakers[words[0]] && !otherOnes[words[0]] && !((owned[words[0]] || noun[words[0]]) && (outsiders[words[1]] || isOf(words[1], vocab().ids["PERSON"]))) {
		return false
	}
	for i := 1; i < len(words) && i < 4; i++ {
		if words[i] == "can" || words[i] == "may" || words[i] == "will" || words[i] == "could" {
			for _, v := range words[i+1:] {
				if v == "not" || units[v] > 0 || tens[v] > 0 || turning[v] || stays[v] && v != "hang" && v != "keep" {
					return false
				}
			}
			return i+1 < len(words)
		}
	}
	return false
}

// courteous reports whether a clause is no more than courtesy, or tells who is speaking: "if I may", "old carpenter here".
func courteous(w []atom) bool {
	n := len(w)
	if wholeKey(courtesyVocab(), w) != "" {
		return true
	}
	if n < 2 || n > 5 || w[n-1].text != "here" && w[n-1].text != "speaking" {
		return false
	}
	id := vocab().ids["PERSON"]
	for _, c := range vocab().classes[w[n-2].text] {
		if c == id {
			return true
		}
	}
	return false
}

// idleClauses are clauses that say nothing by themselves.
var idleClauses = []entry{
	{kind: kFill, key: "idle", ways: `
		if (i|we|you) (may|can|could|would|will|please) [(kindly|be so kind|be so good)]
		if (you|it) (do not mind|is possible|is no trouble|is not too much trouble|is all the same to you|is ok|is alright|is all right|is not too late)
		if (possible|that is (ok|alright|fine|possible)|that works|that suits you)
		(hang on|wait|hold on|hold it|wait a (minute|moment|second|sec|bit)|just a (minute|moment|second|sec)|one (moment|second|sec|minute)|no wait|wait no|oh dear|oh no|hey)
		(much obliged|ta|bless you|thank you kindly|no offence|no offense|no hard feelings|my apologies|apologies|begging your pardon|beg pardon|if it pleases you)
		(i|we) (need|want|would like|must have) (it|this|it all|this all|everything|all of it|the lot|all) (on|in) (paper|print|writing|black and white)`},
}

var courtesyVocab = sync.OnceValue(func() *vocabulary { return compile(nil, idleClauses) })

// puts are verbs of what one does later: "I'll decide later".
var puts = wordSet("decide it that measure choose think settle")

// musts bind what they are said of.
var musts = wordSet("should must shall ought cannot")

// toBe are forms of "to be".
var toBe = wordSet("is was are were be been 's")

// tellsOfDeed reports whether words begin with somebody or something, and tell with a verb of no regular past what it did: "my
// apprentice read the tape upside down".
func tellsOfDeed(words []string) bool {
	if words[1] == "'s" || words[1] == "is" || words[1] == "are" || words[1] == "has" || words[1] == "have" || words[1] == "was" || words[1] == "were" {
		return len(words) > 2 && !asksWord[words[0]] && !turning[words[0]] && !pointing[words[0]] // "lumber's gone up"
	}
	if !owned[words[0]] && !noun[words[0]] && !outsiders[words[0]] {
		return false
	}
	for i, v := range words {
		if i > 0 && i < 5 && strongPast[v] {
			return true
		}
	}
	return false
}

var asksWord = wordSet("what which who whose how where when why is are was were do does did can could would will should may might if no not none nothing all any")

var strongPast = wordSet(`read took got went came gave lost broke bought sold ran wrote drew held left sent hit bent fell found forgot grew knew meant met paid rang saw shot shut sat slept spoke
	spent stole stood stuck swore thought threw told tore wore won did made put set cut let said had has does knows misread mistook misheard`)

// worded reports whether a word that no table knows may be a misspelled number.
func numberLike(w string) bool { return words().numberish(w) }

// stays are words that take an order back, or put it off.
var stays = wordSet("wait hold hang stop later first yet until till before except but mind kidding joking rather instead keep leave")
