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
		in := hundredSaid(atoms, next)
		rest, third := SpokenUpTo99(atoms, in)
		cents, end := SpokenUpTo99(atoms, third)
		if in == next && hundreds >= 8 && rest <= 24 && cents <= 24 {
			continue // "ten, twelve, sixteen" may be lengths of lumber
		}
		if rest == 0 || in == next && rest < 10 || cents < 10 || end < len(atoms) && (chunk.SpelledNumber(atoms[end].Text) || atoms[end].Kind == scan.Digits || !chunk.EndsPart(atoms, end) && !afterTotal[atoms[end].Text]) {
			continue
		}
		out := scan.Reworded(atoms, i, end, measure.Itoa(hundreds*100+rest)+"."+measure.Itoa(cents))
		out[i].Kind = scan.Digits
		return out
	}
	return atoms
}

// hundredSaid is the atom behind a "hundred" or a "hundred and": "four hundred and twelve fifty".
func hundredSaid(atoms []scan.Atom, i int) int {
	if i < len(atoms) && atoms[i].Text == "hundred" {
		i++
		if i < len(atoms) && atoms[i].Text == "and" {
			i++
		}
	}
	return i
}

// SpokenPrices sets a price said in two numbers, behind a verb of price and what is sold, to its figures: "twelve footers run nine
// eighty five".
func SpokenPrices(atoms []scan.Atom) []scan.Atom {
	atoms = retoldPrice(atoms)
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

// retoldPrice leaves out a price in words that is taken back at once, in its clause, for another that has more or fewer words: "post bases
// eighteen fifty, no, nineteen", "screws nine, no, nine fifty a hundred". Left to stand, the dollars of one would be read with the cents
// of the other.
func retoldPrice(atoms []scan.Atom) []scan.Atom {
	for i := 1; i+2 < len(atoms); i++ {
		whole, next := SpokenUpTo99(atoms, i)
		if whole == 0 || chunk.SpelledNumber(atoms[i-1].Text) || atoms[i-1].Kind == scan.Digits || atoms[i-1].Text == "by" || atoms[i-1].Text == "x" || !pricedBefore(atoms[:i]) {
			continue
		}
		cents, end := SpokenUpTo99(atoms, next)
		back := end
		for back < len(atoms) && (atoms[back].Text == "," || takesBackPrice[atoms[back].Text]) {
			back++
		}
		if back == end || atoms[back-1].Text == "," && back == end+1 || cents > 0 && cents < 10 {
			continue
		}
		again, then := SpokenUpTo99(atoms, back)
		centsAgain, last := SpokenUpTo99(atoms, then)
		written := back < len(atoms) && atoms[back].Kind == scan.Digits && idiom.CentsWritten(atoms[back].Text)
		if written {
			last = back + 1
		} else if again == 0 || centsAgain > 0 && centsAgain < 10 || cents == 0 && centsAgain == 0 {
			continue
		}
		if written && cents > 0 || !chunk.EndsPart(atoms, last) && !behindPrice[atoms[last].Text] {
			continue
		}
		out := scan.CutOut(atoms, i, back)
		if written {
			return out
		}
		price := measure.Itoa(again) + ".00"
		if centsAgain > 0 {
			price = measure.Itoa(again) + "." + measure.Itoa(centsAgain)
		}
		out = scan.Reworded(out, i, i+last-back, price)
		out[i].Kind = scan.Digits
		return out
	}
	return atoms
}

// pricedBefore reports whether what has a price is named in the clause that stands before.
func pricedBefore(before []scan.Atom) bool {
	from := len(before)
	for from > 0 && !chunk.BreaksClause(before, from-1) {
		from--
	}
	return idiom.YardItemIn(before[from:]) || idiom.LengthsIn(before[from:])
}

var (
	takesBackPrice = scan.WordSet("no sorry wait nope oops actually rather make that it i mean")
	behindPrice    = scan.WordSet("a per each apiece now and so these dollars bucks for")
)

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
