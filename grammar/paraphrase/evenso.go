package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// More turns that are set to the plain one before a line is read: one piece for all of its kind, what something costs in length, what
// was said before it was overruled.

// sizesAsked are the dimensions that are asked after.
var sizesAsked = scan.WordSet("thick wide long high tall deep big large broad")

// ofOne sets "how thick is one bracket" to "how thick is bracket".
func ofOne(atoms []scan.Atom) []scan.Atom {
	for i := 0; i+4 < len(atoms); i++ {
		if atoms[i].Text == "how" && sizesAsked[atoms[i+1].Text] && (atoms[i+2].Text == "is" || atoms[i+2].Text == "'s") && (atoms[i+3].Text == "one" || atoms[i+3].Text == "each") {
			if key, next := chunk.PartKey(atoms, i+4); key != "" && chunk.EndsPart(atoms, next) {
				return scan.CutOut(atoms, i+3, i+4)
			}
		}
	}
	return atoms
}

// losers are verbs of what a saw, or a square end, takes in length.
var losers = scan.WordSet("costs cost loses takes eats wastes uses")

// thatCosts leaves out "and that costs us" between what is done to a board and the length that is lost.
func thatCosts(atoms []scan.Atom) []scan.Atom {
	for i := 2; i+2 < len(atoms); i++ {
		if !losers[atoms[i].Text] || atoms[i-1].Text != "that" && atoms[i-1].Text != "it" && atoms[i-1].Text != "which" {
			continue
		}
		j := i + 1
		if atoms[j].Text == "me" || atoms[j].Text == "us" {
			j++
		}
		if _, next, ok := (measure.Reader{Atoms: atoms}).Mixed(j); !ok || next < len(atoms) && (atoms[next].Text == "dollars" || atoms[next].Text == "bucks" || atoms[next].Text == "cents") {
			continue
		}
		from := i - 1
		for from > 0 && (atoms[from-1].Text == "and" || atoms[from-1].Text == ",") {
			from--
		}
		for k := range atoms[:from] {
			if key, _ := chunk.PartKey(atoms, k); key == "trim" || key == "kerf" {
				return scan.CutOut(atoms, from, j)
			}
		}
	}
	return atoms
}

// overrules are verbs of those who will have it otherwise.
var overrules = scan.WordSet("want wants insist insists need needs prefer prefers demand demands like")

// saidBefore sets "I said one doorway, but my kids now insist on two" to "one doorway, no, two".
func saidBefore(atoms []scan.Atom) []scan.Atom {
	if len(atoms) < 7 || atoms[0].Text != "i" && atoms[0].Text != "we" || atoms[1].Text != "said" && !scan.StandAt(atoms, 1, "told", "you") && !scan.StandAt(atoms, 1, "asked", "for") {
		return atoms
	}
	from := 2
	if atoms[1].Text != "said" {
		from = 3
	}
	for i := from + 1; i+3 < len(atoms); i++ {
		if atoms[i].Text != "but" {
			continue
		}
		j, person := i+1, false
		for j < len(atoms) && atoms[j].Kind == scan.Word && !overrules[atoms[j].Text] {
			if w := atoms[j].Text; !chunk.IsPerson(w) && !lex.Outsiders[w] && !lex.Owned[w] && !lexicon.Vocab().Articles[w] && w != "now" && w != "really" && w != "he" && w != "she" && w != "they" {
				return atoms
			}
			person = person || !lexicon.Vocab().Articles[atoms[j].Text] && !lex.Owned[atoms[j].Text]
			j++
		}
		if !person || j+1 >= len(atoms) {
			return atoms
		}
		if j++; atoms[j].Text == "on" || atoms[j].Text == "upon" {
			j++
		}
		if j >= len(atoms) || !phrase.StartsLength(measure.Reader{Atoms: atoms}, j) {
			return atoms
		}
		return scan.Reworded(atoms[:len(atoms):len(atoms)], i, j, "no")[from:]
	}
	return atoms
}

// openThat sets "open that walk-through up" to "open the walk-through up": no plan is opened.
func openThat(atoms []scan.Atom) []scan.Atom {
	for i := 0; i+2 < len(atoms); i++ {
		if atoms[i].Text == "open" && (atoms[i+1].Text == "that" || atoms[i+1].Text == "this") {
			if key, _ := chunk.PartKey(atoms, i+2); tailored[key] {
				return scan.Reworded(atoms, i+1, i+2, "the")
			}
		}
	}
	return atoms
}

// makers are verbs by which there comes to be another opening.
var makers = scan.WordSet("put cut make have had add build want need get got leave in open with use do")

// secondOne sets "put in a second doorway" to "put in two doorways", where nothing more is said of it.
func secondOne(atoms []scan.Atom) []scan.Atom {
	for i := 1; i+2 < len(atoms); i++ {
		if atoms[i].Text != "a" || atoms[i+1].Text != "second" || !makers[atoms[i-1].Text] {
			continue
		}
		key, next := chunk.PartKey(atoms, i+2)
		if key != "opening" {
			continue
		}
		if scan.StandAt(atoms, next, "so", "there") && scan.StandAt(atoms, next+3, "two", "of", "them") {
			return scan.Reworded(scan.CutOut(atoms, next, next+6), i, next, "two", "openings")
		}
		if chunk.EndsPart(atoms, next) || behindNone[atoms[next].Text] && atoms[next].Text != "and" {
			return scan.Reworded(atoms, i, next, "two", "openings")
		}
	}
	return atoms
}

// heldUp leaves out a clause in which somebody only looked at one piece: "…, I held one up to see".
func heldUp(atoms []scan.Atom) []scan.Atom {
	for i := 2; i+3 < len(atoms); i++ {
		if atoms[i].Text != "i" && atoms[i].Text != "we" || !Looks[atoms[i+1].Text] && !triers[atoms[i+1].Text] {
			continue
		}
		from := i
		if chunk.Joints[atoms[from-1].Text] || Causes[atoms[from-1].Text] {
			from--
		}
		for from > 0 && atoms[from-1].Kind == scan.Sign && atoms[from-1].Text != "." {
			from--
		}
		if from == 0 || from == i {
			continue
		}
		j := i + 2
		one := false
		for j < len(atoms) && atoms[j].Kind == scan.Word && trialWords[atoms[j].Text] {
			one = one || atoms[j].Text == "one"
			j++
		}
		if one && chunk.EndsPart(atoms, j) {
			return scan.CutOut(atoms, from, j)
		}
	}
	return atoms
}

// triers are verbs of looking closely at a piece, and trialWords what is said of it.
var (
	triers     = scan.WordSet("measured tried looked took bought got have had")
	trialWords = scan.WordSet("one up to see it them of these those the in my hand here with a tape ruler caliper calipers against board and looked checked measured be sure make certain at out for myself twice myself two already there")
)

// pretended sets "pretend there is no kerf: set it to zero" to the wish at its end.
func pretended(atoms []scan.Atom) []scan.Atom {
	if !scan.StandAt(atoms, 0, "pretend", "there", "is", "no") {
		return atoms
	}
	key, next := chunk.PartKey(atoms, 4)
	if key == "" || next >= len(atoms) {
		return atoms
	}
	i := next
	for i < len(atoms) && (atoms[i].Kind == scan.Sign || chunk.Joints[atoms[i].Text]) {
		i++
	}
	if scan.StandAt(atoms, i, "set", "it", "to") || scan.StandAt(atoms, i, "make", "it") {
		return append(append([]scan.Atom{}, atoms[4:next]...), atoms[i+2:]...)
	}
	return atoms
}

// usedUp are quantities that somebody works with.
var usedUp = map[string]bool{"fit": true, "kerf": true, "trim": true, "spare": true, "tape": true, "bracket clearance": true, "bracket reach": true, "bracket ear": true, "bracket thickness": true}

// whatIsUsed sets "what fit are you using for the rails" to "what is the fit", and "how much trim per board have you counted" to "how
// much trim per board".
func whatIsUsed(atoms []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(atoms); i++ {
		much := scan.StandAt(atoms, i, "how", "much") || scan.StandAt(atoms, i, "how", "many")
		if !much && atoms[i].Text != "what" && atoms[i].Text != "which" {
			continue
		}
		noun := i + 1
		if much {
			noun++
		}
		key, next := chunk.PartKey(atoms, noun)
		if atoms[noun].Text == "fit" {
			key, next = "fit", noun+1
		}
		be := next
		for much && be < next+4 && be < len(atoms) && !beUsing[atoms[be].Text] {
			be++
		}
		if !usedUp[key] || !beUsing[measure.Reader{Atoms: atoms}.Word(be)] || !scan.StandAt(atoms, be+1, "you") && !scan.StandAt(atoms, be+1, "we") && !scan.StandAt(atoms, be+1, "they") {
			continue
		}
		end := be + 2
		for end < len(atoms) && atoms[end].Kind == scan.Word && !chunk.Joints[atoms[end].Text] {
			end++
		}
		switch {
		case !chunk.EndsPart(atoms, end):
		case much && atoms[noun].Text != "fit":
			return scan.CutOut(atoms, be, end)
		default:
			return append(scan.Reworded(atoms[:next:next], i, noun, "what", "is", "the"), atoms[end:]...)
		}
	}
	return atoms
}

var beUsing = scan.WordSet("are did do have were")

// madeOf sets "what are the stiffeners made of" to "what size are the stiffeners".
func madeOf(atoms []scan.Atom) []scan.Atom {
	i := slices.IndexFunc(atoms, func(a scan.Atom) bool { return a.Text == "what" })
	if i < 0 || len(atoms) < i+5 || atoms[i+1].Text != "are" && atoms[i+1].Text != "is" {
		return atoms
	}
	key, next := chunk.PartKey(atoms, chunk.SkipArticle(atoms, i+2))
	if key != "stiffener" && key != "rail" && key != "post" && key != "added post" && key != "end post" || !scan.StandAt(atoms, next, "made") {
		return atoms
	}
	end := next + 1
	for end < len(atoms) && (atoms[end].Text == "of" || atoms[end].Text == "from" || atoms[end].Text == "out") {
		end++
	}
	if end == next+1 || !chunk.EndsPart(atoms, end) {
		return atoms
	}
	return append(scan.Reworded(atoms[:next:next], i, i+1, "what", "size"), atoms[end:]...)
}
