package grammar

import "slices"

// A plain question ends a line, or a plain wish to see something, and what stands before it is only talk: "the cat walked on my notes, how
// many rails was it", "hang on, before I climb down off this ladder, what's the gap". Or it begins one, and why it is asked comes
// after: "show me the marks while the chalk line is out". The talk is passed over where it names no part and no figure, nothing
// that is said already, and neither orders nor tries anything.

// askOpeners are words that begin a plain question or a wish to see something.
var askOpeners = wordSet("what how show let give tell which remind where")

// readAskAlone reads a question that stands by itself beside talk.
func readAskAlone(atoms []atom, c Context) (Reading, bool) {
	for i := len(atoms) - 3; i > 0; i-- {
		if !askOpeners[atoms[i].text] || !clauseBeginsAt(atoms, i) {
			continue
		}
		from := i
		for from > 1 && joints[atoms[from-1].text] {
			from--
		}
		if !talksOnly(atoms[:from], c) {
			return Reading{}, false
		}
		if r := readAtoms(atoms[i:], c); onlyAsks(r) && asksByItself(atoms[i:]) {
			return r, true
		}
	}
	return askedFirst(atoms, c)
}

// askedFirst reads a question that begins a line and is followed by why or when it is asked.
func askedFirst(atoms []atom, c Context) (Reading, bool) {
	if !askOpeners[atoms[0].text] {
		return Reading{}, false
	}
	for i := 3; i+2 < len(atoms); i++ {
		added := atoms[i].kind == aSign && breaksClause(atoms, i) && subjectAt(atoms, i+1)
		if !added && !whyAsked[atoms[i].text] || atoms[i+1].text == "of" || atoms[i+1].text == "if" {
			continue
		}
		q := trimStops(atoms[:i])
		if !talksOnly(withoutIt(atoms[i+1:]), c) || !asksByItself(q) {
			continue
		}
		if r := readAtoms(q, c); onlyAsks(r) {
			return r, true
		}
	}
	return Reading{}, false
}

// whyAsked are words that lead to why or when something is asked.
var whyAsked = wordSet("before while whilst since because cause cos so as when whenever till until")

func trimStops(atoms []atom) []atom {
	for len(atoms) > 0 && atoms[len(atoms)-1].kind == aSign {
		atoms = atoms[:len(atoms)-1]
	}
	return atoms
}

// asksByItself reports whether a question names what it is after, and speaks of nothing that stands before it.
func asksByItself(q []atom) bool {
	named := false
	for i, a := range q {
		if a.text == "it" && i > 2 && (q[i-1].text == "was" || q[i-1].text == "is") && named {
			continue // "how many rails was it"
		}
		if pointsBack[a.text] && a.text != "her" && a.text != "him" {
			return false
		}
		key, _ := partKey(q, i)
		named = named || key != "" || topicNamed(q, i)
	}
	return named
}

// topicNamed reports whether a table, a list or the picture is named at an atom.
func topicNamed(atoms []atom, i int) bool {
	f := vocab().match(atoms, i)
	return len(f) > 0 && f[0].entry.kind == kQuest
}

// oneAsked are words before which "one" counts nothing: "quick one: what's the gap".
var oneAsked = wordSet("quick last easy next another simple silly dumb little this small final")

// talksOnly reports whether words only talk: they name no part and no figure, order and try nothing, and take up nothing that was said.
func talksOnly(talk []atom, c Context) bool {
	talk = trimStops(talk)
	if len(talk) == 0 {
		return false
	}
	for i, a := range talk {
		next := textAt(talk, i+1)
		switch {
		case a.kind == aSign && (a.text == "?" || a.text == `"`), a.kind != aSign && a.kind != aWord:
			return false
		case turning[a.text] || turnsTalk[a.text] || a.text == "dropped" || a.text == "skipped" || a.text == "removed":
			return false
		case a.text == "it" && i > 0 && noting[talk[i-1].text]: // "I never wrote it down"
		case a.text == "it" || a.text == "them" || a.text == "they":
			return false
		case (a.text == "that" || a.text == "this" || a.text == "these" || a.text == "those") && (next == "" || !strange(next) || auxiliary[next]) && next != "ladder":
			return false
		case a.text == "one" && i > 0 && oneAsked[talk[i-1].text]:
		case spelledNumber(a.text) && a.text != "second":
			return false
		}
	}
	return !slices.ContainsFunc(lex(talk, c), func(t token) bool { return !talkToken(&t) })
}

// noting are verbs of what is done with what one is told.
var noting = wordSet("wrote write jotted jot scribbled scribble missed heard hear catch caught forgot copied copying write writing noted note remembered remember recall")

// withoutIt leaves out the "it" of what comes behind a question: it means what is asked for.
func withoutIt(talk []atom) []atom {
	return slices.DeleteFunc(slices.Clone(talk), func(a atom) bool { return a.text == "it" })
}

// turnsTalk are words by which talk before a question judges, denies or changes what is asked about.
var turnsTalk = wordSet("wrong mistake instead rather different old previous last yesterday neither nor use used wants change changed if whether except besides without other others")

// talkToken reports whether a token may stand in talk.
func talkToken(t *token) bool {
	switch t.kind {
	case kUnknown:
		return !words().numberish(t.text) && (foreign(t) || isPerson(t.text) || handy[t.text])
	case kNum:
		return t.text == "one" || t.text == "second"
	case kChange:
		return t.text == "climb" || t.text == "climbing" || t.text == "climbed"
	case kHead:
		return t.key() == string(State) || t.key() == "say" || t.key() == string(Check)
	case kPart:
		return t.key() == "kerf" || t.key() == "tape" || t.key() == "through" || t.key() == "beyond"
	case kNot, kEnter, kMeasured, kAnd, kBut, kIt, kFill, kComma, kStop, kFix, kReason, kTo, kAt, kOut, kUp, kDown, kOff, kOver, kUnder, kFrom, kTheirs, kKnowing, kStockWord, kCutWord, kGoesIn, kOnly, kHave, kSell, kSide, kVague, kAbout, kBetween:
		return true
	}
	return false
}

// whileAsking are words that lead a clause which tells why or when something is asked.
var whileAsking = wordSet("since as while whilst seeing before because")

// askedMeanwhile leaves out why and when something is asked, at the beginning and at the end of a line: "since you've got the numbers,
// what's the gap", "let me see the marks, I've got my pencil ready". It names no part, holds no figure, and turns nothing.
func askedMeanwhile(atoms []atom) []atom {
	if len(atoms) < 7 {
		return atoms
	}
	comma := 0
	for comma < len(atoms) && atoms[comma].text != "," {
		comma++
	}
	if comma < 2 || comma+3 > len(atoms) {
		return atoms
	}
	first, rest := atoms[:comma], atoms[comma+1:]
	switch {
	case whileAsking[first[0].text] && askOpeners[rest[0].text] && asksByItself(rest) && besideTheWall(first[1:], false):
		return rest
	case askOpeners[first[0].text] && subjectAt(rest, 0) && asksByItself(first) && besideTheWall(rest, true):
		return first
	}
	return atoms
}

// besideTheWall reports whether a clause speaks of no part of the wall, holds no figure, and neither asks, wishes nor turns anything.
func besideTheWall(part []atom, behind bool) bool {
	if len(part) < 3 {
		return false
	}
	for i, a := range part {
		w := a.text
		if a.kind == aWord && (wishesOrBids[w] && w != "have" && w != "has" || turning[w] || turnsTalk[w] || withheld[w] || questionOpeners[w] || asksFor[w] || spelledNumber(w) && w != "second" || w == "so" || w == "and" || w == "but" || behind && (viewed[w] || bids[w] && w != "have" && w != "can")) {
			return false
		}
		if a.kind != aWord && !(a.kind == aSign && i == len(part)-1 && (w == "." || w == "!")) {
			return false
		}
	}
	return !slices.ContainsFunc(lex(part, Context{}), func(t token) bool {
		return (t.kind == kPart || t.kind == kLoc) && t.key() != "tape" && t.key() != "kerf"
	})
}
