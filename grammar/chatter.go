package grammar

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// People talk beside what they want: "forget the budget, they've changed their minds", "nine twelve foot 2x6s down in the cellar". A clause, or a place that
// something lies in, that holds a word which no table knows, and no figure, no part of the wall, no question and nothing that turns the sense, says nothing of
// the wall: the rest is read without it. Common ways of speech, no source.

// readChatter reads a line that was asked back for a word that is not known without the talk that holds it.
func readChatter(atoms []scan.Atom, c act.Context, r act.Reading) act.Reading {
	if r.Ask == nil || c.Part || c.Deep || len(atoms) > 60 || !askback.AsksOne(r.Ask, askback.UnknownWord, askback.Meant) {
		return r
	}
	for _, cut := range append(chatterClauses(atoms), chatterPlaces(atoms)...) {
		rest := trimSigns(scan.CutOut(atoms, cut[0], cut[1]))
		if len(rest) == 0 || slices.ContainsFunc(rest, func(a scan.Atom) bool { return offersNothing[a.Text] || asksWord[a.Text] && saidWord[a.Text] }) {
			continue
		}
		if told := readSpoken("", rest, c); told.Ask == nil && len(told.Acts) > 0 && !slices.ContainsFunc(told.Acts, endsTalk) {
			return told
		}
	}
	return r
}

// endsTalk are acts that no line may be taken for by leaving a part of it out.
func endsTalk(a act.Act) bool { return a.Kind == act.Quit || a.Kind == act.WhatIf && len(a.Statements) == 0 }

// chatterClauses are the first and the last clause of a line, from sign to sign, where they are talk.
func chatterClauses(atoms []scan.Atom) (cuts [][2]int) {
	var signs []int
	for i, a := range atoms {
		if clauseSign[a.Text] && i > 0 && i < len(atoms)-1 {
			signs = append(signs, i)
		}
	}
	if len(signs) == 0 {
		return nil
	}
	if last := signs[len(signs)-1]; isChatter(atoms[last+1:]) {
		cuts = append(cuts, [2]int{last, len(atoms)})
	}
	if isChatter(atoms[:signs[0]]) {
		cuts = append(cuts, [2]int{0, signs[0] + 1})
	}
	return cuts
}

var clauseSign = scan.WordSet(", ; . ! : -- -")

// isChatter reports whether a clause holds a word that is not known and nothing of the wall.
func isChatter(clause []scan.Atom) bool {
	unknown := false
	for i, a := range clause {
		if saysOfWall(clause, i) || turnsOffer(a) && a.Text != "not" || asksWord[a.Text] || ordersWord[a.Text] {
			return false
		}
		unknown = unknown || a.Kind == scan.Word && len(a.Text) > 1 && !lexicon.Vocab().Known[a.Text]
	}
	return unknown && len(clause) > 1 && !ordersWord[clause[0].Text]
}

// saysOfWall reports whether an atom is a figure, a unit or a word for a part of the wall.
func saysOfWall(atoms []scan.Atom, i int) bool {
	a := atoms[i]
	if a.Kind == scan.Digits || a.Kind == scan.Vulgar || chunk.SpelledNumber(a.Text) && a.Text != "one" || measure.FootWords[a.Text] || measure.InchWords[a.Text] && a.Text != "in" {
		return true
	}
	return slices.ContainsFunc(wallClasses, func(class string) bool { return chunk.IsClass(a.Text, class) })
}

var (
	wallClasses = strings.Fields("RAIL STIFF POST GAP OPENING WALL BAY METRIC HEIGHT LUMBER SLAB")
	asksWord    = scan.WordSet("what how which where why who when whose ? if unless or but then and let say said says wait shoot mark marks")
	saidWord    = scan.WordSet("say said says let wait")
	ordersWord  = scan.WordSet("undo redo save open forget drop clear show draw list print read tell give make set put use take keep leave add remove lose change compare rack yard store lumber boards stock sell sells check help quit start bracket brackets anchor anchors screws base bases cap caps budget spare tape kerf bottom top side left right middle higher lower wider narrower taller shorter more less fewer same even equal cheapest")
)

// chatterPlaces are places that something lies in or at, whose name is not known: "down in the cellar", "out in the machine shed".
func chatterPlaces(atoms []scan.Atom) (cuts [][2]int) {
	for i := 1; i+2 < len(atoms); i++ {
		if !placeWord[atoms[i].Text] || !determiner[atoms[i+1].Text] {
			continue
		}
		for n := 3; n <= 4 && i+n <= len(atoms); n++ {
			place := atoms[i+2 : i+n]
			if slices.ContainsFunc(place, func(a scan.Atom) bool { return a.Kind != scan.Word || asksWord[a.Text] || ordersWord[a.Text] || turnsOffer(a) }) ||
				slices.ContainsFunc(place, func(a scan.Atom) bool { return saysOfWall([]scan.Atom{a}, 0) }) ||
				!slices.ContainsFunc(place, func(a scan.Atom) bool { return !lexicon.Vocab().Known[a.Text] }) {
				continue
			}
			from := i
			if before := atoms[i-1].Text; before == "down" || before == "out" || before == "over" || before == "back" || before == "up" {
				from--
			}
			if from > 0 && !leadsToPlace[atoms[from-1].Text] {
				cuts = append(cuts, [2]int{from, i + n})
			}
		}
	}
	slices.SortStableFunc(cuts, func(a, b [2]int) int { return (b[1] - b[0]) - (a[1] - a[0]) })
	return cuts
}

var (
	placeWord    = scan.WordSet("in at behind inside")
	determiner   = scan.WordSet("the my our this that his her their a")
	leadsToPlace = scan.WordSet("opening doorway starts start begins ends stops height high level goes is it stands sits from to measured")
)

// trimSigns leaves the signs out that a line begins or ends with.
func trimSigns(atoms []scan.Atom) []scan.Atom {
	for len(atoms) > 0 && atoms[0].Kind == scan.Sign && clauseSign[atoms[0].Text] {
		atoms = atoms[1:]
	}
	for len(atoms) > 0 && atoms[len(atoms)-1].Text == "," {
		atoms = atoms[:len(atoms)-1]
	}
	return atoms
}
