package grammar

import "slices"

// totalWords are words of what a whole job costs or may cost.
var totalWords = wordSet("quote quotes quoted bid estimate estimated bill total totals cost costs ticket tab budget spend invoice receipt comes came run runs price priced charge charged charging lot want wants wanted asked asking")

// spokenTotals sets a sum said in three, hundreds, tens and cents, to its figures: "four twelve sixty" is 412.60. Nothing else is said
// in three numbers, the last two of two figures, where a total is told.
func spokenTotals(atoms []atom) []atom {
	if !slices.ContainsFunc(atoms, func(a atom) bool { return totalWords[a.text] }) {
		return atoms
	}
	for i := 0; i < len(atoms); i++ {
		hundreds, next := spokenUpTo99(atoms, i)
		if hundreds == 0 || i > 0 && (atoms[i-1].kind == aDigits || spelledNumber(atoms[i-1].text)) {
			continue
		}
		rest, third := spokenUpTo99(atoms, next)
		cents, end := spokenUpTo99(atoms, third)
		if hundreds >= 8 && rest <= 24 && cents <= 24 {
			continue // "ten, twelve, sixteen" may be lengths of lumber
		}
		if rest < 10 || cents < 10 || end < len(atoms) && (spelledNumber(atoms[end].text) || atoms[end].kind == aDigits || !endsPart(atoms, end) && !afterTotal[atoms[end].text]) {
			continue
		}
		out := reworded(atoms, i, end, itoa(hundreds*100+rest)+"."+itoa(cents))
		out[i].kind = aDigits
		return out
	}
	return atoms
}

// spokenPrices sets a price said in two numbers, behind a verb of price and what is sold, to its figures: "twelve footers run nine
// eighty five".
func spokenPrices(atoms []atom) []atom {
	for i := 1; i+1 < len(atoms); i++ {
		are := atoms[i].text == "are" || atoms[i].text == "is" // only for a box of them: "screws are eleven fifty for a box of 100"
		if !runsAt[atoms[i].text] && !are || !yardItemIn(atoms[:i]) && !lengthsIn(atoms[:i]) {
			continue
		}
		from := i + 1
		for from < len(atoms) && (atoms[from].text == "me" || atoms[from].text == "us" || atoms[from].text == "you" || atoms[from].text == "back") {
			from++
		}
		whole, next := spokenUpTo99(atoms, from)
		cents, end := spokenUpTo99(atoms, next)
		box := end+2 < len(atoms) && (atoms[end].text == "for" || atoms[end].text == "a") && packedIn[atoms[end+1].text] || end+3 < len(atoms) && atoms[end].text == "for" && packedIn[atoms[end+2].text]
		if whole == 0 || cents < 10 || are && !box || !box && !endsPart(atoms, end) && atoms[end].text != "now" && atoms[end].text != "and" && atoms[end].text != "these" {
			continue
		}
		out := reworded(atoms, from, end, itoa(whole)+"."+itoa(cents))
		out[from].kind = aDigits
		return spokenPrices(out)
	}
	return atoms
}

// runsAt are verbs of price.
var runsAt = wordSet("run runs running cost costs costing charge")

// afterTotal are words that may come behind a total.
var afterTotal = wordSet("for is does do and so that sound right all in total altogether even which")

// spokenUpTo99 reads a number word, or a ten and a unit, and returns the atom behind it; 0 where none is.
func spokenUpTo99(atoms []atom, i int) (n, next int) {
	if i >= len(atoms) || atoms[i].kind != aWord {
		return 0, i
	}
	if ten := tens[atoms[i].text]; ten > 0 {
		if i+1 < len(atoms) {
			if one := units[atoms[i+1].text]; one > 0 && one < 10 {
				return int(ten) + int(one), i + 2
			}
		}
		return int(ten), i + 1
	}
	if one := units[atoms[i].text]; one > 0 {
		return int(one), i + 1
	}
	return 0, i
}
