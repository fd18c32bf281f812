package paraphrase

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// Where a phone writes "for", "to", "won", "ate" and their like for a figure, and the words around show that only a figure can stand
// there, the figure is put in its place: "sixty for and a quarter", "bay won", "three foot to inches".

// soundAlike are words that a phone writes for a figure.
var soundAlike = map[string]string{"for": "four", "fore": "four", "to": "two", "too": "two", "won": "one", "wun": "one", "ate": "eight", "tree": "three", "sicks": "six"}

// figureHeard tells of one kind of place whether only a figure can stand at an atom.
type figureHeard func(in []scan.Atom, i int) bool

var figurePlaces = []figureHeard{behindTen, behindFeet, beforeMoney, behindPartName, beforeSizeEnd, oneOfThem, objectCounted, leadsCount, behindBe, pricedPlainly}

// figuresByEar puts figures where words that sound like them stand for them.
func figuresByEar(in []scan.Atom) []scan.Atom {
	own := false
	for i := range in {
		w := in[i].Text
		figure, ok := soundAlike[w]
		switch {
		case w == "eights" || w == "ates":
			if !eighthsMeant(in, i) {
				continue
			}
			figure = "eighths"
		case w == "too" && i > 0 && i+1 < len(in) && in[i-1].Text == in[i+1].Text && sidesMeasured[in[i-1].Text]:
			figure = "to" // "center too center"
		case w == "too" && i > 0 && i+1 < len(in) && !Be[in[i-1].Text] && !partsNumbered[in[i-1].Text] && (measure.Tens[in[i+1].Text] > 0 || scan.Ones[in[i+1].Text] > 4) && i > 1 && lexicon.Vocab().Articles[in[i-2].Text] && lowering[in[0].Text]:
			figure = "to"
		case w == "ate" && i > 0 && in[i-1].Text == "an" && (endsAt(in, i+1) || chunk.TextAt(in, i+1) == "of" || chunk.TextAt(in, i+1) == "inch" || chunk.TextAt(in, i+1) == "and"):
			figure = "eighth"
		case (w == "write" || w == "rite" || w == "wright") && chunk.LastOf(in[:i], 1) == "the" && sideBefore[chunk.LastOf(in[:i], 2)]:
			figure = "right"
		case !ok || in[i].Kind != scan.Word || !heardAt(in, i):
			continue
		}
		if !own {
			in, own = append([]scan.Atom{}, in...), true
		}
		in[i].Text = figure
	}
	return in
}

// sidesMeasured are what a length is measured from and to.
var sidesMeasured = scan.WordSet("center centre centers centres inside outside edge face end post side inner outer top bottom")

// lowering are verbs that bring something to a measure: "lower the wall too forty inches".
var lowering = scan.WordSet("lower raise bring change set drop cut move push widen narrow lengthen shorten take make")

// sideBefore stand before a side: "on the write" is on the right.
var sideBefore = scan.WordSet("on to at from toward towards against off by")

func heardAt(in []scan.Atom, i int) bool {
	for _, place := range figurePlaces {
		if place(in, i) {
			return true
		}
	}
	return false
}

// endsAt reports whether a clause ends before an atom.
func endsAt(in []scan.Atom, i int) bool {
	return i >= len(in) || in[i].Text == "," || in[i].Text == "." || in[i].Text == ";"
}

// everydaySound reports whether a word sounds like a figure and is, in its own right, one of the small words of every sentence.
func everydaySound(w string) bool { return w == "for" || w == "to" || w == "too" }

// behindTen: "forty for inches", "sixty for and a quarter", "twenty won", "gap fifty for".
func behindTen(in []scan.Atom, i int) bool {
	if i < 1 || measure.Tens[in[i-1].Text] == 0 && in[i-1].Text != "hundred" || in[i].Glued {
		return false
	}
	w, next := in[i].Text, chunk.TextAt(in, i+1)
	if lengthUnit(next) || measure.MoneyWords[next] || next == "mil" || next == "mils" {
		return true
	}
	if f, _, ok := (measure.Reader{Atoms: in}).Fraction(i + 2); next == "and" && ok && f.Bad == "" && f.Val.Less(lex.OneRat) {
		return true
	}
	if w == "for" && endsAt(in, i+1) {
		return !asksIn(in[:i])
	}
	return !everydaySound(w) && measure.Denominators[next] == 0 && measure.Tens[in[i-1].Text] > 0
}

// lengthUnit reports whether a word is a unit of length that is no small word.
func lengthUnit(w string) bool {
	_, metric := measure.MetricWords[w]
	return w != "in" && w != "m" && (measure.InchWords[w] || measure.FootWords[w] || metric)
}

// asksIn reports whether words ask.
func asksIn(in []scan.Atom) bool {
	for _, a := range in {
		switch a.Text {
		case "what", "which", "who", "how", "why", "where", "whatever", "that", "?":
			return true
		}
	}
	return false
}

// high are words for a side of a thing, behind its measure.
var high = scan.WordSet("high hi tall wide long deep low")

// behindFeet: "three foot to inches from the left", "six foot for". Nobody says "feet to inches" behind a number but who converts.
func behindFeet(in []scan.Atom, i int) bool {
	if i < 2 || !measure.FootWords[in[i-1].Text] || in[i-1].Text == "'" || !chunk.SpelledNumber(in[i-2].Text) && in[i-2].Kind != scan.Digits && soundAlike[in[i-2].Text] == "" {
		return false
	}
	for _, a := range in[:i] {
		switch a.Text {
		case "convert", "change", "switch", "turn", "translate", "from":
			return false
		}
	}
	w, next := in[i].Text, chunk.TextAt(in, i+1)
	if next == "inch" || next == "inches" {
		return true
	}
	if f, _, ok := (measure.Reader{Atoms: in}).Fraction(i + 2); next == "and" && ok && f.Bad == "" && f.Val.Less(lex.OneRat) {
		return true
	}
	return !everydaySound(w) || w == "for" && endsAt(in, i+1) && !asksIn(in[:i]) || w != "too" && high[next] && endsAt(in, i+2)
}

// beforeMoney: "caps are for dollars fifty", "twenty to dollars".
func beforeMoney(in []scan.Atom, i int) bool {
	next := chunk.TextAt(in, i+1)
	if i < 1 || next != "dollar" && next != "dollars" && next != "bucks" && next != "cents" || chunk.SpelledNumber(in[i-1].Text) && everydaySound(in[i].Text) {
		return false
	}
	switch in[i-1].Text {
	case "are", "is", "cost", "costs", "run", "runs", "were", "was", "at", "and", "only", "about", "for", "now", "sell", "each", "under", "over", "than":
		return true
	}
	return !everydaySound(in[i].Text)
}

// partsNumbered are what has a number behind its name; followsNumber is what goes on behind the number.
var (
	partsNumbered = scan.WordSet("bay rail board slat plank course row section panel post upright opening number stretch")
	followsNumber = scan.WordSet("measures measured measure reads taped comes came is was wants needs has leans 's")
	pastNumber    = scan.WordSet("bottom top middle rail board slat")
)

// behindPartName: "bay won bottom", "rail to measures sixty", "bay to bottom measures".
func behindPartName(in []scan.Atom, i int) bool {
	if i < 1 || !partsNumbered[in[i-1].Text] || i > 1 && in[i-2].Text == "per" {
		return false
	}
	if !everydaySound(in[i].Text) {
		return true
	}
	next := chunk.TextAt(in, i+1)
	if followsNumber[next] || (next == "top" || next == "bottom") && (chunk.TextAt(in, i+2) == "at" || chunk.TextAt(in, i+2) == "is") {
		return !asksIn(in[:i])
	}
	if next == "and" && chunk.TextAt(in, i+2) == in[i-1].Text {
		return true // "between rail to and rail three"
	}
	if v := chunk.LastOf(in[:i], 2); (v == "is" || v == "of" || v == "in") && (endsAt(in, i+1) || next == "?") {
		return true // "how wide is bay to"
	}
	if in[i-1].Text != "bay" || !pastNumber[next] {
		return false
	}
	after := chunk.TextAt(in, i+2)
	return (followsNumber[after] || chunk.SpelledNumber(after) || soundAlike[after] != "" || i+2 < len(in) && in[i+2].Kind == scan.Digits) && !asksIn(in[:i]) && !scan.StandAt(in, max(0, i-3), "from")
}

// beforeSizeEnd: "are to buy sixes", "won by fours".
func beforeSizeEnd(in []scan.Atom, i int) bool {
	next, end := chunk.TextAt(in, i+1), chunk.TextAt(in, i+2)
	if next != "by" && next != "buy" && next != "bye" && next != "x" || measure.SizeWords[end] == 0 && measure.SizeWords[end+"s"] == 0 && !chunk.SpelledNumber(end) {
		return false
	}
	switch {
	case !everydaySound(in[i].Text):
		return true
	case i == 0 || next != "buy" && next != "bye":
		return false
	}
	return chunk.LastOf(in[:i], 1) == "are" && chunk.LastOf(in[:i], 2) != "we" && chunk.LastOf(in[:i], 2) != "you" && chunk.LastOf(in[:i], 2) != "they"
}

// oneOfThem: "won added post", "won inch", "the other won".
func oneOfThem(in []scan.Atom, i int) bool {
	if in[i].Text != "won" && in[i].Text != "wun" || i > 0 && winners[in[i-1].Text] {
		return false
	}
	next := chunk.TextAt(in, i+1)
	if i > 0 && pointers[in[i-1].Text] && !countsSingle(in, i+1) {
		return next != "the" && next != "a"
	}
	return lengthUnit(next) || measure.MoneyWords[next] || countsSingle(in, i+1) || next == "and" && measure.Denominators[chunk.TextAt(in, i+3)] > 0 || next == "by"
}

// countsSingle reports whether a single part is named at an atom, also behind a word that says what kind it is.
func countsSingle(in []scan.Atom, i int) bool {
	w := chunk.TextAt(in, i)
	if w == "more" || w == "added" || w == "new" || w == "extra" || w == "less" || w == "fewer" || w == "vertical" {
		w = chunk.TextAt(in, i+1)
	}
	return measure.CountNouns[w+"s"]
}

var (
	winners  = scan.WordSet("i we they he she you who team kid son daughter has have")
	pointers = scan.WordSet("the other this that which first last next second third left right new another each same wrong")
)

// objectVerbs lack what they are done to, where "for" and a part follow; clauseLeads is what may stand before them.
var (
	objectVerbs = scan.WordSet("had have has want wants need needs use used using with if said says say")
	clauseLeads = scan.WordSet("i we you they he she it suppose supposing if imagine say so ok okay and let us just please can could should would will to the wall bay each every side had have has d well design layout plan about no only")
)

// objectCounted: "suppose we had for rails with three inch gaps". What is "for rails" tells its size or its count.
func objectCounted(in []scan.Atom, i int) bool {
	if in[i].Text != "for" && in[i].Text != "fore" || i < 1 || !objectVerbs[in[i-1].Text] {
		return false
	}
	noun := chunk.TextAt(in, i+1)
	if i > 1 && in[i-2].Text == "no" {
		return false // "no use for stiffeners": there is none
	}
	if !measure.CountNouns[noun] || !strings.HasSuffix(noun, "s") || !countEnds(in, i+2) {
		return false
	}
	for k := i - 2; k >= 0 && !endsAt(in, k); k-- {
		if in[k].Text == "what" && chunk.TextAt(in, k+1) == "if" {
			return true
		}
		if !clauseLeads[in[k].Text] {
			return false
		}
	}
	return true
}

// behindBe: "the gap should be to", "set the rails to for", "I want it to be for inches", "we have to added posts", "go with number for".
func behindBe(in []scan.Atom, i int) bool {
	if i < 1 || !everydaySound(in[i].Text) {
		return false
	}
	w, prev, next := in[i].Text, in[i-1].Text, chunk.TextAt(in, i+1)
	switch {
	case next == "added" && measure.CountNouns[chunk.TextAt(in, i+2)]:
		return CountsNext[prev]
	case prev == "between" && next == "and":
		return true // "between to and three inches"
	case prev == "from" && next == "to":
		return chunk.SpelledNumber(chunk.TextAt(in, i+2))
	case CountsNext[prev] && w != "too" && prev != "and" && chunk.SpelledNumber(next):
		end := chunk.TextAt(in, i+2)
		return measure.FootWords[end] || measure.FooterWords[end] || end == "by" && measure.SizeWords[chunk.TextAt(in, i+3)] > 0
	case next == "hundred":
		return beforeHundred[prev] || prev == "to" && chunk.LastOf(in[:i], 2) != "up"
	case w == "for" && next == "to":
		return idiom.BayWords[chunk.TextAt(in, i+3)] || chunk.TextAt(in, i+2) == "each"
	case prev == "be" || prev == "exactly" || prev == "least" || prev == "most" || prev == "than" || prev == "under" || prev == "over":
		return next == "inch" || next == "inches" || next == "foot" || next == "feet" || prev == "be" && w != "too" && endsAt(in, i+1) && !asksIn(in[:i])
	case prev == "to":
		return w == "for" && endsAt(in, i+1) && !asksIn(in[:i])
	case prev == "number" || prev == "option" || prev == "choice":
		return endsAt(in, i+1)
	case (prev == "about" || prev == "with") && w != "for":
		return measure.CountNouns[next] && strings.HasSuffix(next, "s")
	case prev == "would" || prev == "will" || prev == "could":
		return w == "for" && measure.CountNouns[next] && strings.HasSuffix(next, "s") && workOut[chunk.TextAt(in, i+2)]
	case (prev == "it" || prev == "that") && chunk.LastOf(in[:i], 2) == "make":
		return measure.CountNouns[next] && strings.HasSuffix(next, "s") && (endsAt(in, i+2) || chunk.TextAt(in, i+2) == "instead")
	}
	return false
}

// beforeHundred stand before a number: "the budget is for hundred dollars".
var beforeHundred = scan.WordSet("is was about of under over than exactly around most least roughly")

// workOut are verbs of what holds.
var workOut = scan.WordSet("work fit do be cost go pass run")

// pricedPlainly: "brackets are to fifty each".
func pricedPlainly(in []scan.Atom, i int) bool {
	if i < 2 || in[i-1].Text != "are" && in[i-1].Text != "is" && in[i-1].Text != "cost" && in[i-1].Text != "costs" || measure.Tens[chunk.TextAt(in, i+1)] == 0 {
		return false
	}
	for k := i + 2; k < len(in) && k < i+4; k++ {
		if in[k].Text == "each" || in[k].Text == "apiece" {
			return true
		}
	}
	return false
}

// countEnds reports whether what stands behind a counted noun leaves it counted, and tells no size of it.
func countEnds(in []scan.Atom, i int) bool {
	switch w := chunk.TextAt(in, i); w {
	case "with", "at", "instead", "high", "total", "only", "?", "stacked":
		return w != "at" || i+1 < len(in)
	case "and":
		return !measure.CountNouns[chunk.TextAt(in, i+1)] && !measure.CountNouns[chunk.TextAt(in, i+2)]
	case "in", "per":
		n := chunk.TextAt(in, i+1)
		return n == "each" || n == "every" || n == "a" || n == "the" || n == "bay"
	}
	return endsAt(in, i) && (i+1 >= len(in) || in[i+1].Kind != scan.Digits && !chunk.SpelledNumber(in[i+1].Text))
}
