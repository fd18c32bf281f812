package grammar

// "X so Y": whatever X says, where Y bids or asks something of the wall, X is only why. "It rains buckets here so get the bottom board
// two inches clear of the patio", "he's got a mower thirty inches wide, so let's make the opening 33". X is passed over where it tells
// nothing of the wall itself: no figure beside a part, and nothing that could be set, asked or taken back by it alone.

// bids are words that begin a wish, an order or a question of what is wanted.
var bids = wordSet(`please let keep make put set get give use leave go hold take have allow count add show tell cut plan build run bring call figure
	what how where which could can would will should must shall`)

// wishers are those whose wish it is, and wishes what they do.
var (
	wishers   = wordSet("i we")
	wishVerbs = wordSet("want need would will should must have like prefer am are shall")
)

// notSo are words behind which a "so" tells of a degree or an answer, and none before which it tells why.
var (
	notSo    = wordSet("not or just even do does did think hope say said says very ever is are was were be been looks look seems seem if why how told guess suppose reckon believe")
	soDegree = wordSet("far much many long that too be called on high wide tall big small few little tight close")
)

// readWish reads what somebody wishes by its reason, by what it stands against, and by what comes after it.
func readWish(atoms []atom, c Context) (Reading, bool) {
	for i := 1; i+3 < len(atoms); i++ {
		switch w := atoms[i].text; {
		case w == "so" && !notSo[atoms[i-1].text] && !soDegree[atoms[i+1].text]:
			if !onlyReason(atoms[:i], c, true) || !wishBegins(afterSo(atoms[i+1:])) {
				continue
			}
		case w == "but" || (w == "." || w == ";" || w == "!") && atoms[i].kind == aSign:
			if !onlyReason(atoms[:i], c, false) || !standsAlone(afterSo(atoms[i+1:])) {
				continue
			}
		default:
			continue
		}
		if r, ok := readAlone(afterSo(atoms[i+1:]), c); ok {
			return r, true
		}
	}
	for i := len(atoms) - 3; i > 2; i-- {
		if tailReasons[atoms[i].text] && atoms[i-1].text == "," && onlyReason(atoms[i+1:], c, atoms[i].text != "which") && !weighsAny(atoms[i+1:], atoms[i].text) {
			if r, ok := readAlone(atoms[:i-1], c); ok {
				return r, true
			}
		}
	}
	return Reading{}, false
}

// tailReasons are words that lead to a reason, or to what is only added, behind a wish.
var tailReasons = wordSet("as since because for which")

// weighsAny reports whether what is only added judges or changes what it is added to; a reason may say what it likes.
func weighsAny(tail []atom, lead string) bool {
	if lead != "which" {
		return false
	}
	for _, a := range tail {
		if a.kind == aWord && (weighs(a.text) || a.text == "is" || a.text == "are") {
			return true
		}
	}
	return false
}

func afterSo(wish []atom) []atom {
	for len(wish) > 1 && (wish[0].text == "," || wish[0].text == "please" || wish[0].text == "then") {
		wish = wish[1:]
	}
	return wish
}

// readAlone reads a wish by itself: it is set, tried or asked, and nothing else.
func readAlone(wish []atom, c Context) (Reading, bool) {
	r := readAtoms(wish, c)
	if r.Ask != nil {
		g, ok := readGist(wish, c, r.Ask)
		if !ok {
			return r, false
		}
		r = g
	}
	return r, doneByWish(r.Acts)
}

// standsAlone reports whether words hold a figure or begin as a wish or a question, and speak of nothing that stands before them.
func standsAlone(w []atom) bool {
	if len(w) < 3 || pointsBack[w[0].text] || joints[w[0].text] {
		return false
	}
	for _, a := range w {
		if a.text == "it" || a.text == "them" {
			return false
		}
	}
	return figured(w) || wishBegins(w) || w[len(w)-1].text == "?"
}

// wishBegins reports whether words begin a wish, an order or a question, and speak of nothing that stands before them.
func wishBegins(w []atom) bool {
	if len(w) < 3 {
		return false
	}
	if !bids[w[0].text] && !(wishers[w[0].text] && (wishVerbs[w[1].text] || w[1].text == "'ll" || w[1].text == "'d")) {
		return false
	}
	for i, a := range w {
		if i > 0 && (a.text == "it" || a.text == "them" || a.text == "those" || (a.text == "that" || a.text == "this") && (i+1 == len(w) || w[i+1].kind == aSign)) {
			return false
		}
	}
	return true
}

// turnsWish are words by which a reason would turn what follows it: it is supposed, claimed, asked or taken back.
var turnsWish = wordSet(`if suppose supposing imagine pretend assuming assume unless until say says said claims claimed insists insisted thinks reckons told tells
	what why which who whether forget scratch undo cancel drop scrap instead rather sorry wait oops used`)

// onlyReason reports whether a clause tells nothing of the wall itself; where it is no reason, it denies nothing and holds no figure.
func onlyReason(why []atom, c Context, reason bool) bool {
	for i, a := range why {
		if a.text == "who" && (i == 0 || outsiders[why[i-1].text]) {
			continue // a toddler who squeezes through everything
		}
		if !reason && i > 0 && a.text != "have" && (bids[a.text] || a.text == "us") {
			return false // "…, so let's keep it." bids as well
		}
		if turnsWish[a.text] || a.text == "?" || !reason && (a.text == "not" || a.text == "no" || a.text == "never" || a.text == "cannot") {
			return false
		}
	}
	figure, part, dim, strange := false, false, false, false
	for _, t := range lex(why, c) {
		switch t.kind {
		case kNum, kSize:
			if figure = true; !reason {
				return false
			}
		case kPart, kLoc:
			part = true
		case kDim:
			dim = true
		case kCmd, kHead, kQuest, kWh, kWhere, kGoal, kFix:
			if t.text != "who" {
				return false
			}
		case kUnknown:
			strange = strange || foreign(&t)
			if !foreign(&t) && !outsiders[t.text] {
				return false // a misspelled word may hide in it
			}
		}
	}
	for _, w := range why {
		strange = strange || outsiders[w.text]
	}
	return strange && !(figure && part) && !(figure && dim && !tellsOfThing(why))
}

// tellsOfThing reports whether a clause tells of a thing that is not of the wall: "the mower is 29 wide".
func tellsOfThing(why []atom) bool {
	for i, a := range why {
		if i > 0 && (vocab().articles[why[i-1].text] || owned[why[i-1].text]) && (outsiders[a.text] || english()[a.text] && !vocab().known[a.text]) {
			return true
		}
	}
	return false
}

// doneByWish reports whether all that is done is set, tried or asked.
func doneByWish(acts []Act) bool {
	for _, a := range acts {
		if a.Kind != State && a.Kind != Ask && a.Kind != WhatIf {
			return false
		}
	}
	return len(acts) > 0
}
