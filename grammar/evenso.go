package grammar

import "slices"

// More turns that are set to the plain one before a line is read: one piece for all of its kind, what something costs in length, what
// was said before it was overruled.

// sizesAsked are the dimensions that are asked after.
var sizesAsked = wordSet("thick wide long high tall deep big large broad")

// ofOne sets "how thick is one bracket" to "how thick is bracket".
func ofOne(atoms []atom) []atom {
	for i := 0; i+4 < len(atoms); i++ {
		if atoms[i].text == "how" && sizesAsked[atoms[i+1].text] && (atoms[i+2].text == "is" || atoms[i+2].text == "'s") && (atoms[i+3].text == "one" || atoms[i+3].text == "each") {
			if key, next := partKey(atoms, i+4); key != "" && endsPart(atoms, next) {
				return cutOut(atoms, i+3, i+4)
			}
		}
	}
	return atoms
}

// losers are verbs of what a saw, or a square end, takes in length.
var losers = wordSet("costs cost loses takes eats wastes uses")

// thatCosts leaves out "and that costs us" between what is done to a board and the length that is lost.
func thatCosts(atoms []atom) []atom {
	for i := 2; i+2 < len(atoms); i++ {
		if !losers[atoms[i].text] || atoms[i-1].text != "that" && atoms[i-1].text != "it" && atoms[i-1].text != "which" {
			continue
		}
		j := i + 1
		if atoms[j].text == "me" || atoms[j].text == "us" {
			j++
		}
		if _, next, ok := (reader{atoms}).mixed(j); !ok || next < len(atoms) && (atoms[next].text == "dollars" || atoms[next].text == "bucks" || atoms[next].text == "cents") {
			continue
		}
		from := i - 1
		for from > 0 && (atoms[from-1].text == "and" || atoms[from-1].text == ",") {
			from--
		}
		for k := range atoms[:from] {
			if key, _ := partKey(atoms, k); key == "trim" || key == "kerf" {
				return cutOut(atoms, from, j)
			}
		}
	}
	return atoms
}

// overrules are verbs of those who will have it otherwise.
var overrules = wordSet("want wants insist insists need needs prefer prefers demand demands like")

// saidBefore sets "I said one doorway, but my kids now insist on two" to "one doorway, no, two".
func saidBefore(atoms []atom) []atom {
	if len(atoms) < 7 || atoms[0].text != "i" && atoms[0].text != "we" || atoms[1].text != "said" && !standAt(atoms, 1, "told", "you") && !standAt(atoms, 1, "asked", "for") {
		return atoms
	}
	from := 2
	if atoms[1].text != "said" {
		from = 3
	}
	for i := from + 1; i+3 < len(atoms); i++ {
		if atoms[i].text != "but" {
			continue
		}
		j, person := i+1, false
		for j < len(atoms) && atoms[j].kind == aWord && !overrules[atoms[j].text] {
			if w := atoms[j].text; !isPerson(w) && !outsiders[w] && !owned[w] && !vocab().articles[w] && w != "now" && w != "really" && w != "he" && w != "she" && w != "they" {
				return atoms
			}
			person = person || !vocab().articles[atoms[j].text] && !owned[atoms[j].text]
			j++
		}
		if !person || j+1 >= len(atoms) {
			return atoms
		}
		if j++; atoms[j].text == "on" || atoms[j].text == "upon" {
			j++
		}
		if j >= len(atoms) || !startsLength(reader{atoms}, j) {
			return atoms
		}
		return reworded(atoms[:len(atoms):len(atoms)], i, j, "no")[from:]
	}
	return atoms
}

// openThat sets "open that walk-through up" to "open the walk-through up": no plan is opened.
func openThat(atoms []atom) []atom {
	for i := 0; i+2 < len(atoms); i++ {
		if atoms[i].text == "open" && (atoms[i+1].text == "that" || atoms[i+1].text == "this") {
			if key, _ := partKey(atoms, i+2); tailored[key] {
				return reworded(atoms, i+1, i+2, "the")
			}
		}
	}
	return atoms
}

// makers are verbs by which there comes to be another opening.
var makers = wordSet("put cut make have had add build want need get got leave in open with use do")

// secondOne sets "put in a second doorway" to "put in two doorways", where nothing more is said of it.
func secondOne(atoms []atom) []atom {
	for i := 1; i+2 < len(atoms); i++ {
		if atoms[i].text != "a" || atoms[i+1].text != "second" || !makers[atoms[i-1].text] {
			continue
		}
		key, next := partKey(atoms, i+2)
		if key != "opening" {
			continue
		}
		if standAt(atoms, next, "so", "there") && standAt(atoms, next+3, "two", "of", "them") {
			return reworded(cutOut(atoms, next, next+6), i, next, "two", "openings")
		}
		if endsPart(atoms, next) || behindNone[atoms[next].text] && atoms[next].text != "and" {
			return reworded(atoms, i, next, "two", "openings")
		}
	}
	return atoms
}

// heldUp leaves out a clause in which somebody only looked at one piece: "…, I held one up to see".
func heldUp(atoms []atom) []atom {
	for i := 2; i+3 < len(atoms); i++ {
		if atoms[i].text != "i" && atoms[i].text != "we" || !looks[atoms[i+1].text] && !triers[atoms[i+1].text] {
			continue
		}
		from := i
		if joints[atoms[from-1].text] || causes[atoms[from-1].text] {
			from--
		}
		for from > 0 && atoms[from-1].kind == aSign && atoms[from-1].text != "." {
			from--
		}
		if from == 0 || from == i {
			continue
		}
		j := i + 2
		one := false
		for j < len(atoms) && atoms[j].kind == aWord && trialWords[atoms[j].text] {
			one = one || atoms[j].text == "one"
			j++
		}
		if one && endsPart(atoms, j) {
			return cutOut(atoms, from, j)
		}
	}
	return atoms
}

// triers are verbs of looking closely at a piece, and trialWords what is said of it.
var (
	triers     = wordSet("measured tried looked took bought got have had")
	trialWords = wordSet("one up to see it them of these those the in my hand here with a tape ruler caliper calipers against board and looked checked measured be sure make certain at out for myself twice myself two already there")
)

// pretended sets "pretend there is no kerf: set it to zero" to the wish at its end.
func pretended(atoms []atom) []atom {
	if !standAt(atoms, 0, "pretend", "there", "is", "no") {
		return atoms
	}
	key, next := partKey(atoms, 4)
	if key == "" || next >= len(atoms) {
		return atoms
	}
	i := next
	for i < len(atoms) && (atoms[i].kind == aSign || joints[atoms[i].text]) {
		i++
	}
	if standAt(atoms, i, "set", "it", "to") || standAt(atoms, i, "make", "it") {
		return append(append([]atom{}, atoms[4:next]...), atoms[i+2:]...)
	}
	return atoms
}

// usedUp are quantities that somebody works with.
var usedUp = map[string]bool{"fit": true, "kerf": true, "trim": true, "spare": true, "tape": true, "bracket clearance": true, "bracket reach": true, "bracket ear": true, "bracket thickness": true}

// whatIsUsed sets "what fit are you using for the rails" to "what is the fit", and "how much trim per board have you counted" to "how
// much trim per board".
func whatIsUsed(atoms []atom) []atom {
	for i := 0; i+3 < len(atoms); i++ {
		much := standAt(atoms, i, "how", "much") || standAt(atoms, i, "how", "many")
		if !much && atoms[i].text != "what" && atoms[i].text != "which" {
			continue
		}
		noun := i + 1
		if much {
			noun++
		}
		key, next := partKey(atoms, noun)
		if atoms[noun].text == "fit" {
			key, next = "fit", noun+1
		}
		be := next
		for much && be < next+4 && be < len(atoms) && !beUsing[atoms[be].text] {
			be++
		}
		if !usedUp[key] || !beUsing[reader{atoms}.word(be)] || !standAt(atoms, be+1, "you") && !standAt(atoms, be+1, "we") && !standAt(atoms, be+1, "they") {
			continue
		}
		end := be + 2
		for end < len(atoms) && atoms[end].kind == aWord && !joints[atoms[end].text] {
			end++
		}
		switch {
		case !endsPart(atoms, end):
		case much && atoms[noun].text != "fit":
			return cutOut(atoms, be, end)
		default:
			return append(reworded(atoms[:next:next], i, noun, "what", "is", "the"), atoms[end:]...)
		}
	}
	return atoms
}

var beUsing = wordSet("are did do have were")

// madeOf sets "what are the stiffeners made of" to "what size are the stiffeners".
func madeOf(atoms []atom) []atom {
	i := slices.IndexFunc(atoms, func(a atom) bool { return a.text == "what" })
	if i < 0 || len(atoms) < i+5 || atoms[i+1].text != "are" && atoms[i+1].text != "is" {
		return atoms
	}
	key, next := partKey(atoms, skipArticle(atoms, i+2))
	if key != "stiffener" && key != "rail" && key != "post" && key != "added post" && key != "end post" || !standAt(atoms, next, "made") {
		return atoms
	}
	end := next + 1
	for end < len(atoms) && (atoms[end].text == "of" || atoms[end].text == "from" || atoms[end].text == "out") {
		end++
	}
	if end == next+1 || !endsPart(atoms, end) {
		return atoms
	}
	return append(reworded(atoms[:next:next], i, i+1, "what", "size"), atoms[end:]...)
}
