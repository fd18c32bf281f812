package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// Most people begin by saying what they build and where: "I'm doing a half wall on a bandstand, posts are six by six". Whatever stands there,
// that clause tells nothing of the wall. Common ways of speech, no source.

var (
	buildsIt    = scan.WordSet("doing building making framing planning starting adding fixing designing pricing putting working laying finishing")
	onWhat      = scan.WordSet("on for at in around along by beside under outside onto near")
	wallBuilt   = scan.WordSet("wall halfwall walls railing")
	halfOf      = scan.WordSet("half low knee little small new open wooden timber rail board")
	longestSite = 8 // words of the place, with its articles
)

// introduced leaves out a first clause that only tells what is built and where, up to its comma or stop.
func introduced(atoms []scan.Atom) []scan.Atom {
	led, _ := idiom.PastLead(atoms)
	r, i := measure.Reader{Atoms: led}, 0
	begun := false
	switch w := r.Word(0); {
	case (w == "i" || w == "we") && (r.Word(1) == "am" || r.Word(1) == "are" || r.Word(1) == "'m") && buildsIt[r.Word(2)]:
		i, begun = 3, true
	case buildsIt[w]:
		i, begun = 1, true
	case (w == "this" || w == "it" || w == "that") && r.Word(1) == "is" && (r.Word(2) == "for" || r.Word(2) == "on"):
		return pastSite(atoms, led, 3)
	}
	if begun && (r.Word(i) == "up" || r.Word(i) == "in" || r.Word(i) == "out" || r.Word(i) == "on") {
		i++
	}
	for lexicon.Vocab().Articles[r.Word(i)] || lex.Owned[r.Word(i)] || r.Word(i) == "this" {
		i++
	}
	half := false
	for halfOf[r.Word(i)] {
		half = half || r.Word(i) == "half" || r.Word(i) == "low" || r.Word(i) == "knee"
		i++
	}
	if !wallBuilt[r.Word(i)] || !begun && !half && r.Word(i) != "halfwall" {
		return atoms
	}
	if i++; !onWhat[r.Word(i)] {
		return atoms
	}
	return pastSite(atoms, led, i+1)
}

// pastSite returns what stands behind a place that begins at an atom, and the line as it was where that is none, or ends the line.
func pastSite(atoms, led []scan.Atom, from int) []scan.Atom {
	for i := from; i < len(led) && i <= from+longestSite; i++ {
		a := led[i]
		if a.Kind == scan.Sign && (a.Text == "," || a.Text == "." || a.Text == ":" || a.Text == ";" || a.Text == "--") {
			if i == from || i+2 >= len(led) {
				return atoms
			}
			if phrase.StartsLength(measure.Reader{Atoms: led}, i+1) {
				return append(scan.Reworded(led[:i], 0, i, "the", "wall"), led[i+1:]...) // "…, forty one inches to the top"
			}
			return led[i+1:]
		}
		if a.Kind != scan.Word && a.Text != "-" && a.Text != "'" || !namesSite(a.Text) {
			return atoms
		}
	}
	return atoms
}

// namesSite reports whether a word may name a place: it counts nothing, turns nothing, and is of no part of a wall.
func namesSite(w string) bool {
	if lexicon.Vocab().Articles[w] || lex.Owned[w] || onWhat[w] || w == "of" || w == "'s" || w == "s" {
		return true
	}
	if scan.Ones[w] > 0 || measure.Tens[w] > 0 || phrase.Turning[w] || lex.AsksFirst[w] || idiom.SidesNamed[w] || wallBuilt[w] || placeTurns[w] {
		return false
	}
	return !chunk.OfPart(w)
}

// placeTurns are words that make more of a clause than a place.
var placeTurns = scan.WordSet("with that which and or but so if than i we he she they it want wants need needs should must like would could high tall wide long inch inches foot feet mm cm price cost budget neighbor neighbors neighbour brother dad friend")
