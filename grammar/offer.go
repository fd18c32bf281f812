package grammar

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/guard"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/paraphrase"
	"saywright/grammar/parse"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
	"saywright/grammar/spelling"
	"saywright/grammar/takeback"
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
func Offer(line string, c act.Context, q *solver.Question) (forms []string) {
	letters, bad := scan.Fold(line)
	if q == nil || len(q.Choices) > 0 || q.At == nil || bad >= 0 || !askback.Unheard(q) {
		return nil
	}
	atoms := scan.Split(letters)
	if len(atoms) == 0 || len(atoms) > 60 || slices.ContainsFunc(atoms, turnsOffer) || slices.ContainsFunc(atoms, perhapsNumber) || sizesOthers(atoms) || likeOthers(atoms) {
		return nil
	}
	figures := countFigures(atoms)
	offer := func(list []act.Act) {
		form := parse.Normal(list)
		if len(list) == 0 || len(forms) == mostOffers || slices.Contains(forms, form) || figures > 0 && !strings.ContainsAny(form, "0123456789") || !slices.ContainsFunc(list, worthOffering) || slices.ContainsFunc(list, neverOffered) {
			return
		}
		if _, err := parse.Parse(form); err == nil {
			forms = append(forms, form)
		}
	}
	offer(withoutWords(line, atoms, c, *q.At))
	offer(byClauses(line, atoms, c))
	if len(forms) == 2 && strings.ReplaceAll(strings.TrimPrefix(forms[0], "check "), ", ", "; ") == forms[1] {
		forms = forms[1:] // the same, told and checked: whoever tells it can still say whose it is
	}
	if len(forms) == 0 {
		at := hear.AtomAt(atoms, *q.At)
		for _, half := range [][2]int{{0, at}, {at + 1, len(atoms)}} {
			if at >= 0 && half[1]-half[0] > 1 && countFigures(atoms[half[0]:half[1]]) == figures {
				offer(heardIn(line, atoms[half[0]:half[1]], c))
			}
		}
	}
	if len(forms) == 0 {
		withoutSpans(line, atoms, c, func(list []act.Act) bool {
			offer(list)
			return len(forms) > 0
		})
	}
	return forms
}

// perhapsNumber reports whether a word that is not known may be a number misspelled: without it the rest of its figure says something else ("thrity two").
func perhapsNumber(a scan.Atom) bool {
	return a.Kind == scan.Word && !lexicon.Vocab().Known[a.Text] && !spelling.English()[a.Text] && lex.Words().Numberish(a.Text)
}

// withoutSpans reads a line without each stretch of up to a few words that hold no figure, the shortest first, and tells what is heard each time.
// It goes on through all stretches of a length after told was content with one, as they may say different things.
func withoutSpans(line string, atoms []scan.Atom, c act.Context, told func([]act.Act) bool) {
	tries, content := 0, false
	for n := 1; n <= mostDropped && n < len(atoms) && !content; n++ {
		for i := 0; i+n <= len(atoms) && tries < mostTries; i++ {
			if slices.ContainsFunc(atoms[i:i+n], idiom.OfFigure) || i > 0 && i+n < len(atoms) && idiom.OfFigure(atoms[i-1]) && idiom.OfFigure(atoms[i+n]) {
				continue // a figure would be lost, or two become one
			}
			tries++
			if told(heardIn(line, scan.CutOut(atoms, i, i+n), c)) {
				content = true
			}
		}
	}
}

// turnsOffer reports whether a word denies, doubts, excepts or tells of another time or other people, so that what is left without it says the opposite: nothing is
// offered for "I don't want six rails".
func turnsOffer(a scan.Atom) bool {
	return phrase.Turning[a.Text] && !aside.SizeUnits[a.Text] || idiom.Withheld[a.Text] && !lex.Compares[a.Text] && !sizesWell[a.Text] || idiom.Bending[a.Text] && !sizesWell[a.Text] || offersNothing[a.Text]
}

// sizesOthers reports whether a figure is told of somebody round the wall: "the dog is 22 high".
func sizesOthers(atoms []scan.Atom) bool {
	for i := 2; i < len(atoms); i++ {
		if guard.LivesThere[atoms[i-2].Text] && (paraphrase.Judges[atoms[i-1].Text] || atoms[i-1].Text == "weighs" || atoms[i-1].Text == "stands") && phrase.StartsLength(measure.Reader{Atoms: atoms}, i) {
			return true
		}
	}
	return false
}

// likeOthers reports whether something is told to be as somebody else has it, or of boards that are none of this wall: nothing of that can be
// offered for "same gap as my cousin has", "the deck boards are still wet".
func likeOthers(atoms []scan.Atom) bool {
	held := false
	for i, a := range atoms {
		held = held || a.Text == "same" || a.Text == "like" || a.Text == "as"
		if held && chunk.IsPerson(a.Text) || i > 0 && chunk.IsClass(a.Text, "RAIL") && otherBoards[atoms[i-1].Text] {
			return true
		}
	}
	return false
}

// otherBoards are words before "boards" that make them those of another thing.
var otherBoards = scan.WordSet("deck porch patio floor fence gate shed siding skirting ceiling roof stair dock bed barn subfloor decking fascia soffit scaffold scaffolding")

// sizesWell are words among those of denial and change that only size something: "at the very most".
var sizesWell = scan.WordSet("floor ceiling cap capped stop stops top tops early roughly no same most least exactly twice double half")

var offersNothing = scan.WordSet("avoid prevent beware resist exclude oppose opposes forbid forbids forbidden prohibit prohibits outlaw outlaws steer clear lethal illegal deadly remember than against sneaky despise part not never nobody except anything wet dry damp soaked warped rotten frozen might may almost nearly once yesterday ago used before last old previous theirs neighbor neighbors neighbour neighbours next")

// worthOffering are the acts that somebody may have meant by more than a word in passing.
func worthOffering(a act.Act) bool {
	switch a.Kind {
	case act.State, act.Check, act.WhatIf, act.WhyNot, act.Ask, act.Why, act.Undo, act.Save, act.Open, act.Compare:
		return true
	}
	return false
}

// neverOffered are acts that lose or end something, which nobody shall do by a "yes" to a guess, changes, of which the word that was not understood may
// tell the direction, and what is no statement.
func neverOffered(a act.Act) bool {
	switch a.Kind {
	case act.StartOver, act.Quit, act.Forget, act.Figure, act.Take, act.TakeThat, act.HelpMe:
		return true
	}
	return slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Op == solver.Plus || s.Op == solver.Minus || s.Op == solver.Times
	})
}

func countFigures(atoms []scan.Atom) (n int) {
	for i := range atoms {
		if chunk.Numeric(atoms[i]) && (i == 0 || !chunk.Numeric(atoms[i-1])) {
			n++
		}
	}
	return n
}

func heardIn(line string, atoms []scan.Atom, c act.Context) []act.Act {
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
func withoutWords(line string, atoms []scan.Atom, c act.Context, at int) []act.Act {
	for n := 0; n < mostDropped; n++ {
		i := hear.AtomAt(atoms, at)
		if i < 0 || len(atoms) < 2 || atoms[i].Kind != scan.Word || idiom.OfFigure(atoms[i]) || i > 0 && i+1 < len(atoms) && idiom.OfFigure(atoms[i-1]) && idiom.OfFigure(atoms[i+1]) {
			return nil
		}
		atoms = append(slices.Clone(atoms[:i]), atoms[i+1:]...)
		r := readHeld(line, slices.Clone(atoms), c)
		if r.Ask == nil {
			return r.Acts
		}
		if r.Ask.At == nil || !askback.Unheard(r.Ask) {
			return nil
		}
		at = *r.Ask.At
	}
	return nil
}

// byClauses reads each clause of a line by itself, and joins what is heard; nil where a figure would be lost.
func byClauses(line string, atoms []scan.Atom, c act.Context) (acts []act.Act) {
	cuts := append(takeback.ClauseStarts(atoms), len(atoms))
	if len(cuts) < 3 || len(cuts) > 7 {
		return nil
	}
	for k := 0; k+1 < len(cuts); k++ {
		part := aside.WithoutJoint(atoms[cuts[k]:cuts[k+1]])
		got := heardIn(line, part, c)
		if len(got) == 0 && slices.ContainsFunc(part, idiom.OfFigure) {
			return nil
		}
		acts = append(acts, got...)
	}
	return acts
}
