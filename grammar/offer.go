package grammar

import (
	"slices"
	"strings"

	"saywright/solver"
)

// A line that was not understood may still hold something that was: without the word that no table knows, clause by clause, or without a
// word or two somewhere in it. That is a guess, so it is never taken, but offered: one word ("yes", "the second") then says it. It is worked
// out apart from reading, as it reads a line many times.

const (
	mostOffers  = 2  // choices of a question
	mostDropped = 3  // words that are left out
	mostTries   = 60 // times that a line is read with something left out: about a tenth of a second
)

// Offer returns up to two normal forms that a line may mean which Read asked back with q, the likelier one first; none where the question has
// choices of its own, or where nothing that the line may mean holds a figure though the line does.
func Offer(line string, c Context, q *solver.Question) (forms []string) {
	letters, bad := foldLine(line)
	if q == nil || len(q.Choices) > 0 || q.At == nil || bad >= 0 || !unheard(q) {
		return nil
	}
	atoms := split(letters)
	if len(atoms) == 0 || len(atoms) > 60 || slices.ContainsFunc(atoms, turnsOffer) || sizesOthers(atoms) || likeOthers(atoms) {
		return nil
	}
	figures := countFigures(atoms)
	offer := func(list []Act) {
		form := Normal(list)
		if len(list) == 0 || len(forms) == mostOffers || slices.Contains(forms, form) || figures > 0 && !strings.ContainsAny(form, "0123456789") || !slices.ContainsFunc(list, worthOffering) || slices.ContainsFunc(list, neverOffered) {
			return
		}
		if _, err := Parse(form); err == nil {
			forms = append(forms, form)
		}
	}
	offer(withoutWords(line, atoms, c, *q.At))
	offer(byClauses(line, atoms, c))
	if len(forms) == 2 && strings.ReplaceAll(strings.TrimPrefix(forms[0], "check "), ", ", "; ") == forms[1] {
		forms = forms[1:] // the same, told and checked: whoever tells it can still say whose it is
	}
	if len(forms) == 0 {
		at := atomAt(atoms, *q.At)
		for _, half := range [][2]int{{0, at}, {at + 1, len(atoms)}} {
			if at >= 0 && half[1]-half[0] > 1 && countFigures(atoms[half[0]:half[1]]) == figures {
				offer(heardIn(line, atoms[half[0]:half[1]], c))
			}
		}
	}
	if len(forms) == 0 {
		withoutSpans(line, atoms, c, func(list []Act) bool {
			offer(list)
			return len(forms) > 0
		})
	}
	return forms
}

// withoutSpans reads a line without each stretch of up to a few words that hold no figure, the shortest first, and tells what is heard each time.
// It goes on through all stretches of a length after told was content with one, as they may say different things.
func withoutSpans(line string, atoms []atom, c Context, told func([]Act) bool) {
	tries, content := 0, false
	for n := 1; n <= mostDropped && n < len(atoms) && !content; n++ {
		for i := 0; i+n <= len(atoms) && tries < mostTries; i++ {
			if slices.ContainsFunc(atoms[i:i+n], ofFigure) || i > 0 && i+n < len(atoms) && ofFigure(atoms[i-1]) && ofFigure(atoms[i+n]) {
				continue // a figure would be lost, or two become one
			}
			tries++
			if told(heardIn(line, cutOut(atoms, i, i+n), c)) {
				content = true
			}
		}
	}
}

// ofFigure reports whether a word is, or may be, a part of a figure or its unit.
func ofFigure(a atom) bool {
	_, metric := metricWords[a.text]
	return numeric(a) || denominators[a.text] > 0 || a.text == "half" || metric || inchWords[a.text] && a.text != "in" || footWords[a.text] || moneyWords[a.text] || soldBy[a.text]
}

// soldBy are signs and words of a price or a share beside those of money.
var soldBy = wordSet("$ % percent apiece each per")

// turnsOffer reports whether a word denies, doubts, excepts or tells of another time or other people, so that what is left without it says the opposite: nothing is
// offered for "I don't want six rails".
func turnsOffer(a atom) bool {
	return turning[a.text] && !sizeUnits[a.text] || withheld[a.text] && !compares[a.text] && !sizesWell[a.text] || bending[a.text] && !sizesWell[a.text] || offersNothing[a.text]
}

// sizesOthers reports whether a figure is told of somebody round the wall: "the dog is 22 high".
func sizesOthers(atoms []atom) bool {
	for i := 2; i < len(atoms); i++ {
		if livesThere[atoms[i-2].text] && (judges[atoms[i-1].text] || atoms[i-1].text == "weighs" || atoms[i-1].text == "stands") && startsLength(reader{atoms}, i) {
			return true
		}
	}
	return false
}

// likeOthers reports whether something is told to be as somebody else has it, or of boards that are none of this wall: nothing of that can be
// offered for "same gap as my cousin has", "the deck boards are still wet".
func likeOthers(atoms []atom) bool {
	held := false
	for i, a := range atoms {
		held = held || a.text == "same" || a.text == "like" || a.text == "as"
		if held && isPerson(a.text) || i > 0 && isClass(a.text, "RAIL") && otherBoards[atoms[i-1].text] {
			return true
		}
	}
	return false
}

// otherBoards are words before "boards" that make them those of another thing.
var otherBoards = wordSet("deck porch patio floor fence gate shed siding skirting ceiling roof stair dock bed barn subfloor decking fascia soffit scaffold scaffolding")

// sizesWell are words among those of denial and change that only size something: "at the very most".
var sizesWell = wordSet("floor ceiling cap capped stop stops top tops early roughly no same most least exactly twice double half")

var offersNothing = wordSet("avoid prevent beware resist exclude oppose opposes forbid forbids forbidden prohibit prohibits outlaw outlaws steer clear lethal illegal deadly remember than against sneaky despise part not never nobody except anything wet dry damp soaked warped rotten frozen might may almost nearly once yesterday ago used before last old previous theirs neighbor neighbors neighbour neighbours next")

// worthOffering are the acts that somebody may have meant by more than a word in passing.
func worthOffering(a Act) bool {
	switch a.Kind {
	case State, Check, WhatIf, WhyNot, Ask, Why, Undo, Save, Open, Compare:
		return true
	}
	return false
}

// neverOffered are acts that lose or end something, which nobody shall do by a "yes" to a guess, changes, of which the word that was not understood may
// tell the direction, and what is no statement.
func neverOffered(a Act) bool {
	switch a.Kind {
	case StartOver, Quit, Forget, Figure, Take, TakeThat, HelpMe:
		return true
	}
	return slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Op == solver.Plus || s.Op == solver.Minus || s.Op == solver.Times
	})
}

func countFigures(atoms []atom) (n int) {
	for i := range atoms {
		if numeric(atoms[i]) && (i == 0 || !numeric(atoms[i-1])) {
			n++
		}
	}
	return n
}

func heardIn(line string, atoms []atom, c Context) []Act {
	if len(atoms) == 0 {
		return nil
	}
	r := readHeld(line, slices.Clone(atoms), c)
	if r.Ask != nil {
		return nil
	}
	return r.Acts
}

// withoutWords reads a line without the words, one after the other, that are asked about.
func withoutWords(line string, atoms []atom, c Context, at int) []Act {
	for n := 0; n < mostDropped; n++ {
		i := atomAt(atoms, at)
		if i < 0 || len(atoms) < 2 || atoms[i].kind != aWord || ofFigure(atoms[i]) || i > 0 && i+1 < len(atoms) && ofFigure(atoms[i-1]) && ofFigure(atoms[i+1]) {
			return nil
		}
		atoms = append(slices.Clone(atoms[:i]), atoms[i+1:]...)
		r := readHeld(line, slices.Clone(atoms), c)
		if r.Ask == nil {
			return r.Acts
		}
		if r.Ask.At == nil || !unheard(r.Ask) {
			return nil
		}
		at = *r.Ask.At
	}
	return nil
}

// byClauses reads each clause of a line by itself, and joins what is heard; nil where a figure would be lost.
func byClauses(line string, atoms []atom, c Context) (acts []Act) {
	cuts := append(clauseStarts(atoms), len(atoms))
	if len(cuts) < 3 || len(cuts) > 7 {
		return nil
	}
	for k := 0; k+1 < len(cuts); k++ {
		part := withoutJoint(atoms[cuts[k]:cuts[k+1]])
		got := heardIn(line, part, c)
		if len(got) == 0 && slices.ContainsFunc(part, ofFigure) {
			return nil
		}
		acts = append(acts, got...)
	}
	return acts
}
