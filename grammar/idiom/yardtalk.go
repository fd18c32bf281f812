package idiom

import (
	"slices"
	"strings"
	"sync"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// yardPhrasings finds the turns of phrase of the yard and the counter.
var yardPhrasings = sync.OnceValue(func() *phrase.Book { return phrase.BookOf(yardTurns) })

// YardPlain sets the turns of the yard plain.
func YardPlain(atoms []scan.Atom) []scan.Atom {
	for _, step := range []func([]scan.Atom) []scan.Atom{struckOff, whyBuySo, alsoCost, addedThose, alsoConsidered, rethoughtPrice, priceFirst, wasBefore, priceMovedTo, moneyBuys, boughtFor, dashedPrice, forWhatElse, dearOnes, andAskToo, halfDollars} {
		atoms = step(atoms)
	}
	book := yardPhrasings()
	words := book.LookUp(atoms)
	m := phrase.Match{Atoms: atoms, Words: words, Awake: book.Awakened(words)}
	for i := 0; i < len(atoms); i++ {
		t, end := book.Best(&m, i, nil)
		if t == nil {
			continue
		}
		from := yardBegins(t, atoms, i)
		before := atoms[:from]
		if asideJoints[atoms[i].Text] {
			before = atoms[:i+1]
		}
		if t.Where != nil && !t.Where(before, atoms[end:]) {
			continue
		}
		if len(t.Plain) == 0 && yardClauseEnds(nil, atoms[end:]) {
			for from > 0 && (atoms[from-1].Text == "," || atoms[from-1].Text == "-" || asideJoints[atoms[from-1].Text]) {
				from--
			}
		}
		if len(t.Plain) == 0 && from == 0 && end < len(atoms) && atoms[end].Kind == scan.Sign {
			end++
		}
		if len(t.Plain) == 0 && from == 0 && end >= len(atoms) {
			continue
		}
		atoms = scan.Reworded(atoms, from, end, t.Plain...)
		m.Now(atoms)
		m.Awake.Waken(book.LookUp(atoms[from : from+len(t.Plain)]))
		i = from - 1
		if len(t.Plain) > 0 {
			i = from + len(t.Plain) - 1
		}
	}
	return atoms
}

// yardBegins is where a turn begins: an article before it goes with it where a sentence of its own stands for it.
func yardBegins(t *phrase.Pattern, atoms []scan.Atom, i int) int {
	if len(t.Plain) > 0 && !lex.Speakers[t.Plain[0]] && !lex.OtherOnes[t.Plain[0]] {
		return i
	}
	for i > 0 && (chunk.Noun[atoms[i-1].Text] && atoms[i-1].Text != "one" || lex.Owned[atoms[i-1].Text]) {
		i--
	}
	return i
}

// asideJoints join a clause that says nothing to the one before it.
var asideJoints = scan.WordSet("and so because since as")

// SoldLengths are lengths of lumber by their feet, in the plural.
var SoldLengths = scan.WordSet("sixes sevens eights nines tens twelves fourteens sixteens eighteens twenties footer footers foot feet ft")

// soldByFeet are those that can be nothing else, and no height or width.
var soldByFeet = scan.WordSet("sixes sevens eights nines tens twelves fourteens sixteens eighteens twenties footer footers")

// footersBehind reports whether lengths of lumber, told by their feet, stand before.
func footersBehind(before, _ []scan.Atom) bool {
	return slices.ContainsFunc(before, func(a scan.Atom) bool { return soldByFeet[a.Text] || a.Text == "stock" || a.Text == "lengths" })
}

// yardClauseAhead is what stands up to the next sign that ends a clause.
func yardClauseAhead(after []scan.Atom) []scan.Atom {
	for i := range after {
		if chunk.BreaksClause(after, i) && after[i].Text != "," {
			return after[:i]
		}
	}
	return after
}

// lengthsAhead reports whether lengths of lumber follow.
func lengthsAhead(_, after []scan.Atom) bool { return LengthsIn(yardClauseAhead(after)) }

// notAskedWhat: what is to be bought is not asked: "what do we have to buy if the yard only has tens".
func notAskedWhat(before, _ []scan.Atom) bool {
	return !phrase.SaidBeforeOf(scan.WordSet("what which how do does did would"))(before[max(0, len(before)-4):], nil)
}

// lengthsBehind reports whether lengths of lumber stand before.
func lengthsBehind(before, _ []scan.Atom) bool { return LengthsIn(before) }

// LengthsIn reports whether lengths on sale are among atoms.
func LengthsIn(atoms []scan.Atom) bool {
	for i, a := range atoms {
		if SoldLengths[a.Text] || i > 0 && (a.Text == "m" || a.Text == "mm") && atoms[i-1].Kind == scan.Digits {
			return true
		}
	}
	return false
}

// yardClauseOpens reports whether nothing of a clause stands before.
func yardClauseOpens(before, _ []scan.Atom) bool {
	if len(before) == 0 {
		return true
	}
	last := before[len(before)-1]
	return last.Kind == scan.Sign && chunk.BreaksClause(before, len(before)-1) || chunk.Joints[last.Text] || LeadWords[last.Text]
}

// yardClauseEnds reports whether nothing of a clause follows.
func yardClauseEnds(_, after []scan.Atom) bool {
	return chunk.EndsPart(after, 0) || after[0].Text == "-" && !after[0].Glued
}

// yardAsideEnds is a clause by itself at the end of a sentence.
func yardAsideEnds(before, after []scan.Atom) bool {
	if len(before) < 2 || !yardClauseEnds(before, after) {
		return false
	}
	last := before[len(before)-1]
	return last.Kind == scan.Sign && last.Text != "?" || asideJoints[last.Text] || soldByFeet[last.Text]
}

// yardFigureAhead reports whether a number follows at once.
func yardFigureAhead(_, after []scan.Atom) bool {
	return len(after) > 0 && (after[0].Kind == scan.Digits || after[0].Text == "$" || chunk.SpelledNumber(after[0].Text))
}

// yardFigureBehind reports whether a number stands before.
func yardFigureBehind(before, _ []scan.Atom) bool {
	return slices.ContainsFunc(before, func(a scan.Atom) bool { return a.Kind == scan.Digits || chunk.SpelledNumber(a.Text) })
}

// yardBoth joins two conditions.
func yardBoth(a, b func(before, after []scan.Atom) bool) func(before, after []scan.Atom) bool {
	return func(before, after []scan.Atom) bool { return a(before, after) && b(before, after) }
}

// SoldItems are the parts that have a price.
var SoldItems = scan.WordSet("bracket brackets brkt brkts hanger hangers base bases cap caps anchor anchors screw screws")

// YardItemIn reports whether a part that has a price, or lumber by its feet, is named.
func YardItemIn(atoms []scan.Atom) bool {
	if slices.ContainsFunc(atoms, func(a scan.Atom) bool { return SoldItems[a.Text] || soldByFeet[a.Text] }) {
		return true
	}
	return LengthsIn(atoms) && (yardSizeIn(atoms) || slices.ContainsFunc(atoms, func(a scan.Atom) bool { return BoardWords[a.Text] }))
}

// BoardWords name lumber by the piece.
var BoardWords = scan.WordSet("board boards stick sticks length lengths plank planks piece pieces lumber timber")

// yardSizeIn reports whether a size of lumber is named: "2x6", "two by sixes".
func yardSizeIn(atoms []scan.Atom) bool {
	for i := 1; i+1 < len(atoms); i++ {
		if (atoms[i].Text == "x" || atoms[i].Text == "by") && (atoms[i-1].Kind == scan.Digits || chunk.SpelledNumber(atoms[i-1].Text)) && (atoms[i+1].Kind == scan.Digits || chunk.SpelledNumber(strings.TrimSuffix(strings.TrimSuffix(atoms[i+1].Text, "s"), "e")) || atoms[i+1].Text == "sixes") {
			return true
		}
	}
	return false
}

// yardSizeAhead and yardSizeBehind report whether a size of lumber follows, or stands before.
func yardSizeAhead(_, after []scan.Atom) bool { return yardSizeIn(after) }

func yardSizeBehind(before, _ []scan.Atom) bool { return yardSizeIn(before) }

// wasteAhead reports whether waste is spoken of next.
func wasteAhead(_, after []scan.Atom) bool {
	return slices.ContainsFunc(yardClauseAhead(after), func(a scan.Atom) bool {
		return slices.Contains(lexicon.Vocab().Classes[a.Text], lexicon.Vocab().Ids["WASTE"]) || a.Text == "offcuts"
	})
}

var madeThings = sync.OnceValue(func() map[string]bool { return scan.WordSet(phrase.MadeBesides.Words) })
