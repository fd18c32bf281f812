package grammar

import "strings"

// Beside an order that says all there is to say ("undo", "forget the gap", "start over"), people tell why: "my wife wants to think
// about it some more". Such talk sets nothing, asks nothing and denies nothing of the order.

// talks reports whether a clause only talks.
func talks(part []atom, c Context) bool {
	w := bareClause(part)
	if len(w) == 0 {
		return true
	}
	if part[len(part)-1].text == "?" {
		return false
	}
	if isBackdrop(part, c, "") || isBackdrop(part, c, "so") {
		return true
	}
	for len(w) > 0 && (causes[w[0].text] || stepBefore[w[0].text] && w[0].text != "you") {
		w = w[1:]
	}
	words := wordsAhead(w)
	if len(words) < len(w) || len(words) < 2 || !narrates(words, true) && !tellsOfDeed(words) {
		return false
	}
	if speakers[words[0]] {
		for _, v := range words {
			if v == "not" || v == "never" {
				return false // "I don't want that" may deny the order
			}
		}
	}
	wishes, parts := false, false
	for i, v := range words {
		if turning[v] || viewed[v] && i > 0 && !(v == "think" && i+1 < len(words) && (words[i+1] == "about" || words[i+1] == "over" || words[i+1] == "on")) || stays[v] {
			return false
		}
		wishes = wishes || wishing[v]
	}
	list := lex(w, c)
	for i := range list {
		switch t := &list[i]; t.kind {
		case kNum, kSize, kGoal, kUnits, kRel, kLim, kWh, kWhere, kCmd, kForgetTail, kQuest, kFix, kTail, kChange, kFactor, kBest, kSide, kName, kCsv, kNo, kTeachHead, kEnter:
			return false
		case kHead:
			if t.key() != string(State) {
				return false
			}
			wishes = wishes || !strings.Contains(t.text, "measure")
		case kPart, kLoc:
			parts = parts || t.key() != "kerf" && t.key() != "tape"
		case kUnknown:
			if worded(t.text) {
				return false
			}
		}
	}
	return !(wishes && parts)
}

// tellsOfDeed reports whether words begin with somebody or something, and tell with a verb of no regular past what it did: "my
// apprentice read the tape upside down".
func tellsOfDeed(words []string) bool {
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

var strongPast = wordSet(`read took got went came gave lost broke bought sold ran wrote drew held left sent hit bent fell found forgot grew knew meant met paid rang saw shot shut sat slept spoke
	spent stole stood stuck swore thought threw told tore wore won did made put set cut let said had has does knows misread mistook misheard`)

// worded reports whether a word that no table knows may be a misspelled number.
func worded(w string) bool { return words().numberish(w) }

// stays are words that take an order back, or put it off.
var stays = wordSet("wait hold hang stop later first yet until till before except but mind kidding joking rather instead keep leave")
