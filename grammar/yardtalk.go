package grammar

import (
	"slices"
	"strings"
	"sync"
)

// yardPhrasings finds the turns of phrase of the yard and the counter.
var yardPhrasings = sync.OnceValue(func() *phrasebook { return phrasebookOf(yardTurns) })

// madeBesides are things that somebody makes beside the wall.
var madeBesides = wordClass{"MADE", `bench benches planter planters shelf shelves step steps trellis table box boxes stool rack sawhorse sawhorses ladder sign birdhouse flowerbox flowerbed swing sandbox
	workbench bookshelf pergola arbor bin coop hutch stand seat doghouse playhouse ramp easel crate frame footstool cradle lattice gate`}

// yardPlain sets the turns of the yard plain.
func yardPlain(atoms []atom) []atom {
	for _, step := range []func([]atom) []atom{struckOff, whyBuySo, alsoCost, addedThose, alsoConsidered, rethoughtPrice, priceFirst, wasBefore, priceMovedTo, moneyBuys, boughtFor, dashedPrice, forWhatElse, dearOnes, andAskToo, halfDollars} {
		atoms = step(atoms)
	}
	book := yardPhrasings()
	words := book.lookUp(atoms)
	m := phraseMatch{atoms: atoms, words: words, awake: book.awakened(words)}
	for i := 0; i < len(atoms); i++ {
		t, end := book.best(&m, i, nil)
		if t == nil {
			continue
		}
		from := yardBegins(t, atoms, i)
		before := atoms[:from]
		if asideJoints[atoms[i].text] {
			before = atoms[:i+1]
		}
		if t.where != nil && !t.where(before, atoms[end:]) {
			continue
		}
		if len(t.plain) == 0 && yardClauseEnds(nil, atoms[end:]) {
			for from > 0 && (atoms[from-1].text == "," || atoms[from-1].text == "-" || asideJoints[atoms[from-1].text]) {
				from--
			}
		}
		if len(t.plain) == 0 && from == 0 && end < len(atoms) && atoms[end].kind == aSign {
			end++
		}
		if len(t.plain) == 0 && from == 0 && end >= len(atoms) {
			continue
		}
		atoms = reworded(atoms, from, end, t.plain...)
		m.now(atoms)
		m.awake.waken(book.lookUp(atoms[from : from+len(t.plain)]))
		i = from - 1
		if len(t.plain) > 0 {
			i = from + len(t.plain) - 1
		}
	}
	return atoms
}

// yardBegins is where a turn begins: an article before it goes with it where a sentence of its own stands for it.
func yardBegins(t *pattern, atoms []atom, i int) int {
	if len(t.plain) > 0 && !speakers[t.plain[0]] && !otherOnes[t.plain[0]] {
		return i
	}
	for i > 0 && (noun[atoms[i-1].text] && atoms[i-1].text != "one" || owned[atoms[i-1].text]) {
		i--
	}
	return i
}

// asideJoints join a clause that says nothing to the one before it.
var asideJoints = wordSet("and so because since as")

// soldLengths are lengths of lumber by their feet, in the plural.
var soldLengths = wordSet("sixes sevens eights nines tens twelves fourteens sixteens eighteens twenties footer footers foot feet ft")

// soldByFeet are those that can be nothing else, and no height or width.
var soldByFeet = wordSet("sixes sevens eights nines tens twelves fourteens sixteens eighteens twenties footer footers")

// footersBehind reports whether lengths of lumber, told by their feet, stand before.
func footersBehind(before, _ []atom) bool {
	return slices.ContainsFunc(before, func(a atom) bool { return soldByFeet[a.text] || a.text == "stock" || a.text == "lengths" })
}

// yardClauseAhead is what stands up to the next sign that ends a clause.
func yardClauseAhead(after []atom) []atom {
	for i := range after {
		if breaksClause(after, i) && after[i].text != "," {
			return after[:i]
		}
	}
	return after
}

// lengthsAhead reports whether lengths of lumber follow.
func lengthsAhead(_, after []atom) bool { return lengthsIn(yardClauseAhead(after)) }

// notAskedWhat: what is to be bought is not asked: "what do we have to buy if the yard only has tens".
func notAskedWhat(before, _ []atom) bool {
	return !saidBeforeOf(wordSet("what which how do does did would"))(before[max(0, len(before)-4):], nil)
}

// lengthsBehind reports whether lengths of lumber stand before.
func lengthsBehind(before, _ []atom) bool { return lengthsIn(before) }

// lengthsIn reports whether lengths on sale are among atoms.
func lengthsIn(atoms []atom) bool {
	for i, a := range atoms {
		if soldLengths[a.text] || i > 0 && (a.text == "m" || a.text == "mm") && atoms[i-1].kind == aDigits {
			return true
		}
	}
	return false
}

// yardClauseOpens reports whether nothing of a clause stands before.
func yardClauseOpens(before, _ []atom) bool {
	if len(before) == 0 {
		return true
	}
	last := before[len(before)-1]
	return last.kind == aSign && breaksClause(before, len(before)-1) || joints[last.text] || leadWords[last.text]
}

// yardClauseEnds reports whether nothing of a clause follows.
func yardClauseEnds(_, after []atom) bool {
	return endsPart(after, 0) || after[0].text == "-" && !after[0].glued
}

// yardAsideEnds is a clause by itself at the end of a sentence.
func yardAsideEnds(before, after []atom) bool {
	if len(before) < 2 || !yardClauseEnds(before, after) {
		return false
	}
	last := before[len(before)-1]
	return last.kind == aSign && last.text != "?" || asideJoints[last.text] || soldByFeet[last.text]
}

// yardFigureAhead reports whether a number follows at once.
func yardFigureAhead(_, after []atom) bool {
	return len(after) > 0 && (after[0].kind == aDigits || after[0].text == "$" || spelledNumber(after[0].text))
}

// yardFigureBehind reports whether a number stands before.
func yardFigureBehind(before, _ []atom) bool {
	return slices.ContainsFunc(before, func(a atom) bool { return a.kind == aDigits || spelledNumber(a.text) })
}

// yardBoth joins two conditions.
func yardBoth(a, b func(before, after []atom) bool) func(before, after []atom) bool {
	return func(before, after []atom) bool { return a(before, after) && b(before, after) }
}

// soldItems are the parts that have a price.
var soldItems = wordSet("bracket brackets brkt brkts hanger hangers base bases cap caps anchor anchors screw screws")

// yardItemIn reports whether a part that has a price, or lumber by its feet, is named.
func yardItemIn(atoms []atom) bool {
	if slices.ContainsFunc(atoms, func(a atom) bool { return soldItems[a.text] || soldByFeet[a.text] }) {
		return true
	}
	return lengthsIn(atoms) && (yardSizeIn(atoms) || slices.ContainsFunc(atoms, func(a atom) bool { return boardWords[a.text] }))
}

// boardWords name lumber by the piece.
var boardWords = wordSet("board boards stick sticks length lengths plank planks piece pieces lumber timber")

// yardSizeIn reports whether a size of lumber is named: "2x6", "two by sixes".
func yardSizeIn(atoms []atom) bool {
	for i := 1; i+1 < len(atoms); i++ {
		if (atoms[i].text == "x" || atoms[i].text == "by") && (atoms[i-1].kind == aDigits || spelledNumber(atoms[i-1].text)) && (atoms[i+1].kind == aDigits || spelledNumber(strings.TrimSuffix(strings.TrimSuffix(atoms[i+1].text, "s"), "e")) || atoms[i+1].text == "sixes") {
			return true
		}
	}
	return false
}

// yardSizeAhead and yardSizeBehind report whether a size of lumber follows, or stands before.
func yardSizeAhead(_, after []atom) bool   { return yardSizeIn(after) }
func yardSizeBehind(before, _ []atom) bool { return yardSizeIn(before) }

// wasteAhead reports whether waste is spoken of next.
func wasteAhead(_, after []atom) bool {
	return slices.ContainsFunc(yardClauseAhead(after), func(a atom) bool {
		return slices.Contains(vocab().classes[a.text], vocab().ids["WASTE"]) || a.text == "offcuts"
	})
}

var madeThings = sync.OnceValue(func() map[string]bool { return wordSet(madeBesides.words) })
