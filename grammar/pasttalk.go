package grammar

import (
	"slices"
)

// People who are asked nothing tell why they want a thing, and what goes on round them, at length: "seeing as how the grandkids run through
// there full tilt, the walk-through had better be 38", "the neighbors have complained, keep the wall to 1.1 m". Where a line could not be
// read as a whole, such clauses are left out. They hold no figure and nothing that is set, asked or ordered; a clause that does not begin
// as a reason neither denies, doubts, claims, judges nor supposes, and does not point at what was said. What is left must be understood by
// itself.

// readPastTalk reads a line without the clauses that only talk.
func readPastTalk(atoms []atom, c Context) (Reading, bool) {
	var left []atom
	dropped, mid := false, 0
	parts := talkParts(atoms)
	if len(parts) < 2 {
		return Reading{}, false
	}
	for _, part := range parts {
		if onlyTalk(part, c) && !(relatives[part[0].text] && len(left) > 0 && hasFigures(left)) {
			dropped, mid = true, len(left)
			if n := len(left); n > 0 && left[n-1].kind == aSign && part[len(part)-1].kind == aSign && part[len(part)-1].text != "," {
				left[n-1] = part[len(part)-1]
			}
			continue
		}
		if len(left) == 0 {
			part = withoutJoint(part)
		}
		if dropped && (pointsBack[part[0].text] && part[0].text != "it" || causes[part[0].text] && part[0].text != "so") {
			return Reading{}, false // it may speak of what was left out
		}
		left = append(left, part...)
	}
	for len(left) > 0 && left[len(left)-1].kind == aSign && left[len(left)-1].text != "?" && left[len(left)-1].text != "." {
		left = left[:len(left)-1]
	}
	if !dropped || len(left) == 0 {
		return Reading{}, false
	}
	if r, ok := readLeft(left, c); ok {
		return r, true
	}
	if mid > 0 && mid < len(left) && left[mid-1].text == "," {
		return readLeft(cutOut(left, mid-1, mid), c) // what was left out stood inside a clause
	}
	return Reading{}, false
}

// readLeft reads what is left of a line.
func readLeft(left []atom, c Context) (Reading, bool) {
	r, ok := readAlone(left, c)
	if ok {
		return r, !takesUp(r.Acts, left)
	}
	if c.deep {
		return Reading{}, false
	}
	c.deep = true
	r = readPlainly(textOf(left), left, c)
	return r, r.Ask == nil && doneByWish(r.Acts) && !takesUp(r.Acts, left)
}

// talkParts cuts a line into its clauses, also before a joint that leads on to a wish.
func talkParts(atoms []atom) (parts [][]atom) {
	starts := clauseStarts(atoms)
	from, within := 0, 0
	for i := 1; i < len(atoms); i++ {
		if end, ok := figureEnd(atoms, i-1); ok && end > i {
			within = max(within, end)
		}
		if i < within {
			continue // "two and a half"
		}
		w, next := atoms[i].text, reader{atoms}.word(i+1)
		if !slices.Contains(starts, i) && !(w == "so" || w == "but") && !(w == "and" && (speakers[next] || owned[next] || next == "the" && breaksClause(atoms, i-1))) {
			continue
		}
		parts = append(parts, atoms[from:i])
		from = i
	}
	return append(parts, atoms[from:])
}

// onlyTalk reports whether a clause only tells a reason, or what goes on.
func onlyTalk(part []atom, c Context) bool {
	if part[len(part)-1].text == "?" {
		return false
	}
	part = withoutLittleOnes(withoutJoint(part))
	if figured(part) {
		return false
	}
	if at, _ := lastFigure(part); at >= 0 {
		return false
	}
	w := wordsAhead(part)
	for len(w) > 2 && (stepBefore[w[0]] && !pointing[w[0]] && w[0] != "you" || fillersBefore[w[0]]) {
		w = w[1:]
	}
	if len(w) < 3 || len(w) > 16 || w[0] == "or" || part[0].text == "or" {
		return false
	}
	for _, opener := range reasonOpeners {
		if standAtWords(w, opener) {
			return nothingSet(part, c, true) && ofElsewhereAltogether(part, c) && !slices.ContainsFunc(w[len(opener):], func(v string) bool { return v == "if" || v == "unless" || v == "whether" || v == "instead" })
		}
	}
	aside := relatives[w[0]]
	if !nothingSet(part, c, aside) || !ofElsewhereAltogether(part, c) || !aside && !narrates(w, false) && w[0] != "there" || pointing[w[len(w)-1]] {
		return false
	}
	for i, v := range w {
		if !aside && i > 0 && (v == "it" || v == "them" || v == "those" || v == "that") || turning[v] || viewed[v] || judgesIt[v] && !(aside && i < 3) || asideTurns[v] && v != "was" && v != "were" && v != "had" && v != "truck" || wishing[v] && i < 3 || v == "these" || asideModal[v] && v != "mind" || v == "you" && i == 0 {
			return false
		}
	}
	return aside || !actsOnWish(w)
}

// relatives begin what is told of something just named: "…, which he did on a napkin, …".
var relatives = wordSet("who which where")

// ofElsewhereAltogether reports whether a clause holds a word that no table knows, and that is no misspelled one.
func ofElsewhereAltogether(part []atom, c Context) bool {
	for _, t := range lex(part[:len(part):len(part)], c) {
		if t.kind == kUnknown && (foreign(&t) || english()[t.text]) {
			return true
		}
	}
	return false
}

// standAtWords reports whether words begin with others, and go on.
func standAtWords(w, opener []string) bool {
	return len(w) > len(opener) && slices.Equal(w[:len(opener)], opener)
}

var (
	// reasonOpeners begin a clause that tells why, and never turns what stands beside it.
	reasonOpeners = wordRows(`seeing as how
	seeing as
	seeing that
	seeing how
	seeing
	since
	because
	in view of
	in light of
	given that
	given
	considering that
	considering
	what with
	on account of
	thanks to
	knowing
	now that
	what being
	after
	with
	much as
	speaking as`)

	// judgesIt are words by which a clause judges, denies or doubts what stands beside it.
	judgesIt = wordSet(`barely asleep not no never none nobody nothing nor neither without hardly cannot wrong mistake misread mistaken incorrect error off rather guess wonder wondering ridiculous nuts crazy nonsense silly stupid awful terrible horrible
		refuse reject object disagree hate hates dislike dislikes impossible overkill smudged torn blurred illegible`)
)

// withoutLittleOnes sets "the little one", which is a child, to one word.
func withoutLittleOnes(part []atom) []atom {
	for i := 1; i < len(part); i++ {
		if (part[i].text == "one" || part[i].text == "ones") && (part[i-1].text == "little" || part[i-1].text == "young" || part[i-1].text == "wee") {
			return append(append(slices.Clone(part[:i-1]), worded(part[i], "child")), part[i+1:]...)
		}
	}
	return part
}

// nothingSet reports whether a clause holds nothing that could be set, asked or ordered.
func nothingSet(part []atom, c Context, reason bool) bool {
	if slices.ContainsFunc(part, func(a atom) bool {
		return a.kind == aWord && len(a.text) > 2 && words().numberish(a.text) && !vocab().neutral[a.text]
	}) {
		return false
	}
	for _, t := range lex(part[:len(part):len(part)], c) {
		switch t.kind {
		case kUnknown:
			if words().numberish(t.text) && !vocab().neutral[t.text] {
				return false
			}
		case kNum, kSize, kGoal, kFix, kLim, kBest, kUnits, kWayOut, kFactor, kAnother:
			return false
		case kSell, kStockWord, kSellLess, kPriceVerb, kItem:
			if !reason {
				return false
			}
		case kWh, kQuest:
			if !reason {
				return false
			}
		case kPart:
			if !reason || !thingsAbout[t.key()] && t.key() != "kerf" {
				return false
			}
		}
	}
	return true
}
