package grammar

// Most people begin by saying what they build and where: "I'm doing a half wall on a bandstand, posts are six by six". Whatever stands there,
// that clause tells nothing of the wall. Common ways of speech, no source.

var (
	buildsIt    = wordSet("doing building making framing planning starting adding fixing designing pricing putting working laying finishing")
	onWhat      = wordSet("on for at in around along by beside under outside onto near")
	wallBuilt   = wordSet("wall halfwall walls railing")
	halfOf      = wordSet("half low knee little small new open wooden timber rail board")
	longestSite = 8 // words of the place, with its articles
)

// introduced leaves out a first clause that only tells what is built and where, up to its comma or stop.
func introduced(atoms []atom) []atom {
	led, _ := pastLead(atoms)
	r, i := reader{led}, 0
	begun := false
	switch w := r.word(0); {
	case (w == "i" || w == "we") && (r.word(1) == "am" || r.word(1) == "are" || r.word(1) == "'m") && buildsIt[r.word(2)]:
		i, begun = 3, true
	case buildsIt[w]:
		i, begun = 1, true
	case (w == "this" || w == "it" || w == "that") && r.word(1) == "is" && (r.word(2) == "for" || r.word(2) == "on"):
		return pastSite(atoms, led, 3)
	}
	if begun && (r.word(i) == "up" || r.word(i) == "in" || r.word(i) == "out" || r.word(i) == "on") {
		i++
	}
	for vocab().articles[r.word(i)] || owned[r.word(i)] || r.word(i) == "this" {
		i++
	}
	half := false
	for halfOf[r.word(i)] {
		half = half || r.word(i) == "half" || r.word(i) == "low" || r.word(i) == "knee"
		i++
	}
	if !wallBuilt[r.word(i)] || !begun && !half && r.word(i) != "halfwall" {
		return atoms
	}
	if i++; !onWhat[r.word(i)] {
		return atoms
	}
	return pastSite(atoms, led, i+1)
}

// pastSite returns what stands behind a place that begins at an atom, and the line as it was where that is none, or ends the line.
func pastSite(atoms, led []atom, from int) []atom {
	for i := from; i < len(led) && i <= from+longestSite; i++ {
		a := led[i]
		if a.kind == aSign && (a.text == "," || a.text == "." || a.text == ":" || a.text == ";" || a.text == "--") {
			if i == from || i+2 >= len(led) {
				return atoms
			}
			if startsLength(reader{led}, i+1) {
				return append(reworded(led[:i], 0, i, "the", "wall"), led[i+1:]...) // "…, forty one inches to the top"
			}
			return led[i+1:]
		}
		if a.kind != aWord && a.text != "-" && a.text != "'" || !namesSite(a.text) {
			return atoms
		}
	}
	return atoms
}

// namesSite reports whether a word may name a place: it counts nothing, turns nothing, and is of no part of a wall.
func namesSite(w string) bool {
	if vocab().articles[w] || owned[w] || onWhat[w] || w == "of" || w == "'s" || w == "s" {
		return true
	}
	if units[w] > 0 || tens[w] > 0 || turning[w] || asksFirst[w] || sidesNamed[w] || wallBuilt[w] || placeTurns[w] {
		return false
	}
	return !ofPart(w)
}

// ofPart reports whether a word names a part of a wall.
func ofPart(w string) bool {
	for _, class := range []string{"RAIL", "POST", "BAY", "GAP", "OPENING", "STIFF", "BRACKET"} {
		if isClass(w, class) {
			return true
		}
	}
	return false
}

// placeTurns are words that make more of a clause than a place.
var placeTurns = wordSet("with that which and or but so if than i we he she they it want wants need needs should must like would could high tall wide long inch inches foot feet mm cm price cost budget neighbor neighbors neighbour brother dad friend")
