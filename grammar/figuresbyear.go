package grammar

import "strings"

// Where a phone writes "for", "to", "won", "ate" and their like for a figure, and the words around show that only a figure can stand
// there, the figure is put in its place: "sixty for and a quarter", "bay won", "three foot to inches".

// soundAlike are words that a phone writes for a figure.
var soundAlike = map[string]string{"for": "four", "fore": "four", "to": "two", "too": "two", "won": "one", "wun": "one", "ate": "eight", "tree": "three", "sicks": "six"}

// figureHeard tells of one kind of place whether only a figure can stand at an atom.
type figureHeard func(in []atom, i int) bool

var figurePlaces = []figureHeard{behindTen, behindFeet, beforeMoney, behindPartName, beforeSizeEnd, oneOfThem, objectCounted, leadsCount, behindBe, pricedPlainly}

// figuresByEar puts figures where words that sound like them stand for them.
func figuresByEar(in []atom) []atom {
	own := false
	for i := range in {
		w := in[i].text
		figure, ok := soundAlike[w]
		switch {
		case w == "eights" || w == "ates":
			if !eighthsMeant(in, i) {
				continue
			}
			figure = "eighths"
		case w == "too" && i > 0 && i+1 < len(in) && in[i-1].text == in[i+1].text && sidesMeasured[in[i-1].text]:
			figure = "to" // "center too center"
		case w == "too" && i > 0 && i+1 < len(in) && !be[in[i-1].text] && !partsNumbered[in[i-1].text] && (tens[in[i+1].text] > 0 || units[in[i+1].text] > 4) && i > 1 && vocab().articles[in[i-2].text] && lowering[in[0].text]:
			figure = "to"
		case w == "ate" && i > 0 && in[i-1].text == "an" && (endsAt(in, i+1) || textAt(in, i+1) == "of" || textAt(in, i+1) == "inch" || textAt(in, i+1) == "and"):
			figure = "eighth"
		case (w == "write" || w == "rite" || w == "wright") && lastOf(in[:i], 1) == "the" && sideBefore[lastOf(in[:i], 2)]:
			figure = "right"
		case !ok || in[i].kind != aWord || !heardAt(in, i):
			continue
		}
		if !own {
			in, own = append([]atom{}, in...), true
		}
		in[i].text = figure
	}
	return in
}

// sidesMeasured are what a length is measured from and to.
var sidesMeasured = wordSet("center centre centers centres inside outside edge face end post side inner outer top bottom")

// lowering are verbs that bring something to a measure: "lower the wall too forty inches".
var lowering = wordSet("lower raise bring change set drop cut move push widen narrow lengthen shorten take make")

// sideBefore stand before a side: "on the write" is on the right.
var sideBefore = wordSet("on to at from toward towards against off by")

func heardAt(in []atom, i int) bool {
	for _, place := range figurePlaces {
		if place(in, i) {
			return true
		}
	}
	return false
}

// textAt is the text of an atom, nothing where there is none.
func textAt(in []atom, i int) string { return reader{in}.word(i) }

// endsAt reports whether a clause ends before an atom.
func endsAt(in []atom, i int) bool {
	return i >= len(in) || in[i].text == "," || in[i].text == "." || in[i].text == ";"
}

// everydaySound reports whether a word sounds like a figure and is, in its own right, one of the small words of every sentence.
func everydaySound(w string) bool { return w == "for" || w == "to" || w == "too" }

// behindTen: "forty for inches", "sixty for and a quarter", "twenty won", "gap fifty for".
func behindTen(in []atom, i int) bool {
	if i < 1 || tens[in[i-1].text] == 0 && in[i-1].text != "hundred" || in[i].glued {
		return false
	}
	w, next := in[i].text, textAt(in, i+1)
	if lengthUnit(next) || moneyWords[next] || next == "mil" || next == "mils" {
		return true
	}
	if f, _, ok := (reader{in}).fraction(i + 2); next == "and" && ok && f.bad == "" && f.val.Less(oneRat) {
		return true
	}
	if w == "for" && endsAt(in, i+1) {
		return !asksIn(in[:i])
	}
	return !everydaySound(w) && denominators[next] == 0 && tens[in[i-1].text] > 0
}

// lengthUnit reports whether a word is a unit of length that is no small word.
func lengthUnit(w string) bool {
	_, metric := metricWords[w]
	return w != "in" && w != "m" && (inchWords[w] || footWords[w] || metric)
}

// asksIn reports whether words ask.
func asksIn(in []atom) bool {
	for _, a := range in {
		switch a.text {
		case "what", "which", "who", "how", "why", "where", "whatever", "that", "?":
			return true
		}
	}
	return false
}

// high are words for a side of a thing, behind its measure.
var high = wordSet("high hi tall wide long deep low")

// behindFeet: "three foot to inches from the left", "six foot for". Nobody says "feet to inches" behind a number but who converts.
func behindFeet(in []atom, i int) bool {
	if i < 2 || !footWords[in[i-1].text] || in[i-1].text == "'" || !spelledNumber(in[i-2].text) && in[i-2].kind != aDigits && soundAlike[in[i-2].text] == "" {
		return false
	}
	for _, a := range in[:i] {
		switch a.text {
		case "convert", "change", "switch", "turn", "translate", "from":
			return false
		}
	}
	w, next := in[i].text, textAt(in, i+1)
	if next == "inch" || next == "inches" {
		return true
	}
	if f, _, ok := (reader{in}).fraction(i + 2); next == "and" && ok && f.bad == "" && f.val.Less(oneRat) {
		return true
	}
	return !everydaySound(w) || w == "for" && endsAt(in, i+1) && !asksIn(in[:i]) || w != "too" && high[next] && endsAt(in, i+2)
}

// beforeMoney: "caps are for dollars fifty", "twenty to dollars".
func beforeMoney(in []atom, i int) bool {
	next := textAt(in, i+1)
	if i < 1 || next != "dollar" && next != "dollars" && next != "bucks" && next != "cents" || spelledNumber(in[i-1].text) && everydaySound(in[i].text) {
		return false
	}
	switch in[i-1].text {
	case "are", "is", "cost", "costs", "run", "runs", "were", "was", "at", "and", "only", "about", "for", "now", "sell", "each", "under", "over", "than":
		return true
	}
	return !everydaySound(in[i].text)
}

// partsNumbered are what has a number behind its name; followsNumber is what goes on behind the number.
var (
	partsNumbered = wordSet("bay rail board slat plank course row section panel post upright opening number stretch")
	followsNumber = wordSet("measures measured measure reads taped comes came is was wants needs has leans 's")
	pastNumber    = wordSet("bottom top middle rail board slat")
)

// behindPartName: "bay won bottom", "rail to measures sixty", "bay to bottom measures".
func behindPartName(in []atom, i int) bool {
	if i < 1 || !partsNumbered[in[i-1].text] || i > 1 && in[i-2].text == "per" {
		return false
	}
	if !everydaySound(in[i].text) {
		return true
	}
	next := textAt(in, i+1)
	if followsNumber[next] || (next == "top" || next == "bottom") && (textAt(in, i+2) == "at" || textAt(in, i+2) == "is") {
		return !asksIn(in[:i])
	}
	if next == "and" && textAt(in, i+2) == in[i-1].text {
		return true // "between rail to and rail three"
	}
	if v := lastOf(in[:i], 2); (v == "is" || v == "of" || v == "in") && (endsAt(in, i+1) || next == "?") {
		return true // "how wide is bay to"
	}
	if in[i-1].text != "bay" || !pastNumber[next] {
		return false
	}
	after := textAt(in, i+2)
	return (followsNumber[after] || spelledNumber(after) || soundAlike[after] != "" || i+2 < len(in) && in[i+2].kind == aDigits) && !asksIn(in[:i]) && !standAt(in, max(0, i-3), "from")
}

// beforeSizeEnd: "are to buy sixes", "won by fours".
func beforeSizeEnd(in []atom, i int) bool {
	next, end := textAt(in, i+1), textAt(in, i+2)
	if next != "by" && next != "buy" && next != "bye" && next != "x" || sizeWords[end] == 0 && sizeWords[end+"s"] == 0 && !spelledNumber(end) {
		return false
	}
	switch {
	case !everydaySound(in[i].text):
		return true
	case i == 0 || next != "buy" && next != "bye":
		return false
	}
	return lastOf(in[:i], 1) == "are" && lastOf(in[:i], 2) != "we" && lastOf(in[:i], 2) != "you" && lastOf(in[:i], 2) != "they"
}

// oneOfThem: "won added post", "won inch", "the other won".
func oneOfThem(in []atom, i int) bool {
	if in[i].text != "won" && in[i].text != "wun" || i > 0 && winners[in[i-1].text] {
		return false
	}
	next := textAt(in, i+1)
	if i > 0 && pointers[in[i-1].text] && !countsSingle(in, i+1) {
		return next != "the" && next != "a"
	}
	return lengthUnit(next) || moneyWords[next] || countsSingle(in, i+1) || next == "and" && denominators[textAt(in, i+3)] > 0 || next == "by"
}

// countsSingle reports whether a single part is named at an atom, also behind a word that says what kind it is.
func countsSingle(in []atom, i int) bool {
	w := textAt(in, i)
	if w == "more" || w == "added" || w == "new" || w == "extra" || w == "less" || w == "fewer" || w == "vertical" {
		w = textAt(in, i+1)
	}
	return countNouns[w+"s"]
}

var (
	winners  = wordSet("i we they he she you who team kid son daughter has have")
	pointers = wordSet("the other this that which first last next second third left right new another each same wrong")
)

// objectVerbs lack what they are done to, where "for" and a part follow; clauseLeads is what may stand before them.
var (
	objectVerbs = wordSet("had have has want wants need needs use used using with if said says say")
	clauseLeads = wordSet("i we you they he she it suppose supposing if imagine say so ok okay and let us just please can could should would will to the wall bay each every side had have has d well design layout plan about no only")
)

// objectCounted: "suppose we had for rails with three inch gaps". What is "for rails" tells its size or its count.
func objectCounted(in []atom, i int) bool {
	if in[i].text != "for" && in[i].text != "fore" || i < 1 || !objectVerbs[in[i-1].text] {
		return false
	}
	noun := textAt(in, i+1)
	if !countNouns[noun] || !strings.HasSuffix(noun, "s") || !countEnds(in, i+2) {
		return false
	}
	for k := i - 2; k >= 0 && !endsAt(in, k); k-- {
		if in[k].text == "what" && textAt(in, k+1) == "if" {
			return true
		}
		if !clauseLeads[in[k].text] {
			return false
		}
	}
	return true
}

// behindBe: "the gap should be to", "set the rails to for", "I want it to be for inches", "we have to added posts", "go with number for".
func behindBe(in []atom, i int) bool {
	if i < 1 || !everydaySound(in[i].text) {
		return false
	}
	w, prev, next := in[i].text, in[i-1].text, textAt(in, i+1)
	switch {
	case next == "added" && countNouns[textAt(in, i+2)]:
		return countsNext[prev]
	case prev == "between" && next == "and":
		return true // "between to and three inches"
	case prev == "from" && next == "to":
		return spelledNumber(textAt(in, i+2))
	case countsNext[prev] && w != "too" && prev != "and" && spelledNumber(next):
		end := textAt(in, i+2)
		return footWords[end] || footerWords[end] || end == "by" && sizeWords[textAt(in, i+3)] > 0
	case next == "hundred":
		return beforeHundred[prev] || prev == "to" && lastOf(in[:i], 2) != "up"
	case w == "for" && next == "to":
		return bayWords[textAt(in, i+3)] || textAt(in, i+2) == "each"
	case prev == "be" || prev == "exactly" || prev == "least" || prev == "most" || prev == "than" || prev == "under" || prev == "over":
		return next == "inch" || next == "inches" || next == "foot" || next == "feet" || prev == "be" && w != "too" && endsAt(in, i+1) && !asksIn(in[:i])
	case prev == "to":
		return w == "for" && endsAt(in, i+1) && !asksIn(in[:i])
	case prev == "number" || prev == "option" || prev == "choice":
		return endsAt(in, i+1)
	case (prev == "about" || prev == "with") && w != "for":
		return countNouns[next] && strings.HasSuffix(next, "s")
	case prev == "would" || prev == "will" || prev == "could":
		return w == "for" && countNouns[next] && strings.HasSuffix(next, "s") && workOut[textAt(in, i+2)]
	case (prev == "it" || prev == "that") && lastOf(in[:i], 2) == "make":
		return countNouns[next] && strings.HasSuffix(next, "s") && (endsAt(in, i+2) || textAt(in, i+2) == "instead")
	}
	return false
}

// beforeHundred stand before a number: "the budget is for hundred dollars".
var beforeHundred = wordSet("is was about of under over than exactly around most least roughly")

// countedNext: "take of one stiffener" takes one off.
func countedNext(_, after []atom) bool {
	return len(after) > 1 && (after[0].kind == aDigits || spelledNumber(after[0].text) || after[0].text == "a" || after[0].text == "won" || after[0].text == "another")
}

// askedWhatWould: "what would five rails due to the gap".
func askedWhatWould(before, _ []atom) bool {
	for i := range before {
		if before[i].text == "what" && (textAt(before, i+1) == "would" || textAt(before, i+1) == "will" || textAt(before, i+1) == "wood") {
			return true
		}
	}
	return false
}

// workOut are verbs of what holds.
var workOut = wordSet("work fit do be cost go pass run")

// pricedPlainly: "brackets are to fifty each".
func pricedPlainly(in []atom, i int) bool {
	if i < 2 || in[i-1].text != "are" && in[i-1].text != "is" && in[i-1].text != "cost" && in[i-1].text != "costs" || tens[textAt(in, i+1)] == 0 {
		return false
	}
	for k := i + 2; k < len(in) && k < i+4; k++ {
		if in[k].text == "each" || in[k].text == "apiece" {
			return true
		}
	}
	return false
}

// countEnds reports whether what stands behind a counted noun leaves it counted, and tells no size of it.
func countEnds(in []atom, i int) bool {
	switch w := textAt(in, i); w {
	case "with", "at", "instead", "high", "total", "only", "?", "stacked":
		return w != "at" || i+1 < len(in)
	case "and":
		return !countNouns[textAt(in, i+1)] && !countNouns[textAt(in, i+2)]
	case "in", "per":
		n := textAt(in, i+1)
		return n == "each" || n == "every" || n == "a" || n == "the" || n == "bay"
	}
	return endsAt(in, i) && (i+1 >= len(in) || in[i+1].kind != aDigits && !spelledNumber(in[i+1].text))
}
