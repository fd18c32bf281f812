package lumberlist

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// totalWords are words of what a whole job costs or may cost.
var totalWords = scan.WordSet("quote quotes quoted bid estimate estimated bill total totals cost costs ticket tab budget spend invoice receipt comes came run runs price priced charge charged charging lot want wants wanted asked asking")

// SpokenTotals sets a sum said in three, hundreds, tens and cents, to its figures: "four twelve sixty" is 412.60. Nothing else is said
// in three numbers, the last two of two figures, where a total is told.
func SpokenTotals(atoms []scan.Atom) []scan.Atom {
	if !slices.ContainsFunc(atoms, func(a scan.Atom) bool { return totalWords[a.Text] }) {
		return atoms
	}
	for i := 0; i < len(atoms); i++ {
		hundreds, next := SpokenUpTo99(atoms, i)
		if hundreds == 0 || i > 0 && (atoms[i-1].Kind == scan.Digits || chunk.SpelledNumber(atoms[i-1].Text)) {
			continue
		}
		rest, third := SpokenUpTo99(atoms, next)
		cents, end := SpokenUpTo99(atoms, third)
		if hundreds >= 8 && rest <= 24 && cents <= 24 {
			continue // "ten, twelve, sixteen" may be lengths of lumber
		}
		if rest < 10 || cents < 10 || end < len(atoms) && (chunk.SpelledNumber(atoms[end].Text) || atoms[end].Kind == scan.Digits || !chunk.EndsPart(atoms, end) && !afterTotal[atoms[end].Text]) {
			continue
		}
		out := scan.Reworded(atoms, i, end, measure.Itoa(hundreds*100+rest)+"."+measure.Itoa(cents))
		out[i].Kind = scan.Digits
		return out
	}
	return atoms
}

// SpokenPrices sets a price said in two numbers, behind a verb of price and what is sold, to its figures: "twelve footers run nine
// eighty five".
func SpokenPrices(atoms []scan.Atom) []scan.Atom {
	for i := 1; i+1 < len(atoms); i++ {
		are := atoms[i].Text == "are" || atoms[i].Text == "is" // only for a box of them: "screws are eleven fifty for a box of 100"
		if !runsAt[atoms[i].Text] && !are || !idiom.YardItemIn(atoms[:i]) && !idiom.LengthsIn(atoms[:i]) {
			continue
		}
		from := i + 1
		for from < len(atoms) && (atoms[from].Text == "me" || atoms[from].Text == "us" || atoms[from].Text == "you" || atoms[from].Text == "back") {
			from++
		}
		whole, next := SpokenUpTo99(atoms, from)
		cents, end := SpokenUpTo99(atoms, next)
		box := end+2 < len(atoms) && (atoms[end].Text == "for" || atoms[end].Text == "a") && packedIn[atoms[end+1].Text] || end+3 < len(atoms) && atoms[end].Text == "for" && packedIn[atoms[end+2].Text]
		if whole == 0 || cents < 10 || are && !box || !box && !chunk.EndsPart(atoms, end) && atoms[end].Text != "now" && atoms[end].Text != "and" && atoms[end].Text != "these" {
			continue
		}
		out := scan.Reworded(atoms, from, end, measure.Itoa(whole)+"."+measure.Itoa(cents))
		out[from].Kind = scan.Digits
		return SpokenPrices(out)
	}
	return atoms
}

// runsAt are verbs of price.
var runsAt = scan.WordSet("run runs running cost costs costing charge")

// afterTotal are words that may come behind a total.
var afterTotal = scan.WordSet("for is does do and so that sound right all in total altogether even which")

// SpokenUpTo99 reads a number word, or a ten and a unit, and returns the atom behind it; 0 where none is.
func SpokenUpTo99(atoms []scan.Atom, i int) (n, next int) {
	if i >= len(atoms) || atoms[i].Kind != scan.Word {
		return 0, i
	}
	if ten := measure.Tens[atoms[i].Text]; ten > 0 {
		if i+1 < len(atoms) {
			if one := scan.Ones[atoms[i+1].Text]; one > 0 && one < 10 {
				return int(ten) + int(one), i + 2
			}
		}
		return int(ten), i + 1
	}
	if one := scan.Ones[atoms[i].Text]; one > 0 {
		return int(one), i + 1
	}
	return 0, i
}
