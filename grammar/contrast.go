package grammar

import (
	"slices"
)

// Who tells what is wanted often tells beside it what was, what others have or what was nearly done: "last time it was six boards, now it's
// five", "next door they have three inch gaps, ours are two and a quarter", "I was going to say two, but make the gap 2-3/8". Only what
// is wanted stands. A clause is left out so where its own words tell that it is of another time or of others, and the clause beside it
// that it is of now and of us. What somebody claims, what was measured, bought or built is never left out. What is wanted may lean on what
// was told for the part, the unit and the words behind the figure. Common ways of speech, no source.

// contrast is what is told beside what is wanted.
type contrast struct {
	told, wanted []atom
}

// readContrasted reads a line in which something else stands beside what is wanted.
func readContrasted(line string, atoms []atom, c Context) (Reading, bool) {
	parts := contrastParts(atoms)
	if len(parts) < 2 {
		return Reading{}, false
	}
	var x contrast
	for i, part := range parts {
		if len(x.told) == 0 && (setApart(part) || i+1 < len(parts) && beganNow(parts[i+1]) && ofSomethingElse(part)) {
			x.told = part
			continue
		}
		x.wanted = append(x.wanted, part...)
	}
	for len(x.wanted) > 0 && x.wanted[len(x.wanted)-1].kind == aSign {
		if x.wanted[len(x.wanted)-1].text == "?" {
			return Reading{}, false
		}
		x.wanted = x.wanted[:len(x.wanted)-1]
	}
	if len(x.told) == 0 || len(x.wanted) == 0 || leansOnTold(x.wanted) || othersClaim(x.told) || misspeltIn(x.told) {
		return Reading{}, false
	}
	told := wordsOnly(withoutJoint(x.told))
	if len(told) > 1 && speakers[told[0]] && told[1] == "thought" && x.wanted[0].text != "but" && x.wanted[0].text != "turns" {
		return Reading{}, false
	}
	last := x.told[len(x.told)-1].end > x.wanted[len(x.wanted)-1].end
	if !saysNow(x.wanted) && !complains(x.told) && !(last && plainlyOnce(x.told)) && !insteadOf(withoutJoint(x.told), told) && !turnedOut(x.told, x.wanted) {
		return Reading{}, false
	}
	for _, said := range x.ways() {
		if byTheHundred(x.told) && !byTheHundred(said) {
			continue // the price is of so many
		}
		if r := readHeld(line, said, c); r.Ask == nil && len(r.Acts) > 0 && !slices.ContainsFunc(r.Acts, notWanted) {
			if tellsOfSite(readHeld(line, slices.Clone(withoutJoint(x.told)), c), r.Acts) {
				return Reading{}, false
			}
			return r, true
		}
	}
	if intends(told) > 0 || othersHave(told) && slices.ContainsFunc(x.wanted, func(a atom) bool { return a.text == "ours" || a.text == "mine" }) {
		q := onThisWall(Act{}, nil)
		return Reading{Ask: &q}, true // what was told is not wanted, and what is cannot be read
	}
	return Reading{}, false
}

// onThisWall asks what is wanted of this wall, where only another is told of.
var onThisWall = openQuestion("How is it to be on this wall?", "bottom gap 2")

// byTheHundred reports whether a price is told for a hundred.
func byTheHundred(part []atom) bool {
	for i := 1; i < len(part); i++ {
		if part[i].text == "hundred" && (part[i-1].text == "a" || part[i-1].text == "per") {
			return true
		}
	}
	return false
}

// notWanted are acts that no clause of what is wanted comes to.
func notWanted(a Act) bool {
	return a.Kind != State && a.Kind != Ask && a.Kind != WhatIf && a.Kind != WhyNot || len(a.Statements) > 0 && a.Statements[0].Name.Wall != ""
}

// plainlyOnce reports whether a clause behind what is wanted can only tell what was: "…, the old one was only 26".
func plainlyOnce(told []atom) bool {
	w := wordsOnly(told)
	return othersHave(w) || slices.Contains(w, "old") || slices.Contains(w, "until") || slices.Contains(w, "before") || intends(w) > 0
}

// misspeltIn reports whether a word of what is told may be a misspelled one, so that it cannot be known whose word it is.
func misspeltIn(told []atom) bool {
	return slices.ContainsFunc(told, func(a atom) bool {
		return a.kind == aWord && len(a.text) > 3 && !daysOfWeek[a.text] && !english()[a.text] && len(vocab().classes[a.text]) == 0 && !words().known[a.text]
	})
}

// othersClaim reports whether a drawing is told of, which is to be checked whatever it had before.
func othersClaim(told []atom) bool {
	return slices.ContainsFunc(told, func(a atom) bool { return isClass(a.text, "PAPER") || claimedOf[a.text] })
}

// turnedOut reports whether something was expected, and turned out: "I expected 71, it measures 70-3/4".
func turnedOut(told, wanted []atom) bool {
	w := wordsOnly(withoutJoint(wanted))
	return intends(wordsOnly(told)) > 0 && len(w) > 1 && w[0] == "it" && (w[1] == "measures" || w[1] == "measured" || w[1] == "came" || w[1] == "comes" || w[1] == "is")
}

// leansOnTold reports whether what is wanted may speak of what was told: "yesterday it was six, that stands".
func leansOnTold(part []atom) bool {
	for i, a := range part {
		if a.text == "that" && i > 0 && (part[i-1].text == "than" || part[i-1].text == "under" || part[i-1].text == "over") {
			continue
		}
		if i+1 < len(part) && (a.text == "than" || moreOrLess[a.text]) && slices.ContainsFunc(part[i+1:], func(b atom) bool { return b.text == "that" || b.text == "theirs" }) {
			continue // "wider than that" leans on the figure alone
		}
		if !leaning[a.text] || i == 0 && (a.text == "what" || a.text == "why") || i == 1 && a.text == "if" && part[0].text == "what" || i > 1 && (a.text == "than" && part[i-2].text == "no" || part[i-1].text == "is" && a.text == "what") {
			continue
		}
		if i > 0 && (part[i-1].text == "no" || a.text == "like" && part[i-1].text == "would") || i > 0 && slices.ContainsFunc(part[max(i-3, 0):i], func(b atom) bool { return b.text == "not" }) {
			continue // "no more than", "not a cent more"
		}
		return true
	}
	return false
}

// contrastParts cuts a line at the signs that break it, and before the words that set a clause against the one before.
func contrastParts(atoms []atom) (parts [][]atom) {
	from := 0
	for i := 1; i < len(atoms); i++ {
		w := atoms[i].text
		next := reader{atoms}.word(i + 1)
		switch {
		case breaksClause(atoms, i-1):
		case w == "but" || w == "yet" || w == "whereas" || w == "while" || w == "unlike":
		case w == "instead" && next == "of", w == "rather" && next == "than", w == "compared" && (next == "with" || next == "to"), w == "as" && next == "opposed":
		case (w == "so" || w == "and") && (ofUs[next] || ofToday[next] || next == "make" || next == "let" || w == "so" && (next == "the" || next == "my")):
		default:
			continue
		}
		if (w == "who" || w == "which") && atoms[from].text == "unlike" {
			continue // "unlike our neighbors, who used 4x4 posts"
		}
		if from < i {
			parts = append(parts, atoms[from:i])
		}
		from = i
	}
	return append(parts, atoms[from:])
}
