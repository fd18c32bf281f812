package grammar

import (
	"maps"
	"strings"
)

// shortened are words that notes on the job write short, with the word that each stands for.
var shortened = map[string]string{
	"opgs": "openings", "bgt": "budget", "bdgt": "budget", "budg": "budget", "mks": "marks", "mrks": "marks", "locs": "locations", "locns": "locations",
	"matls": "materials", "mtls": "materials", "mtrls": "materials", "mat'ls": "materials", "qte": "quote", "tot": "total", "ttl": "total",
	"whatif": "what if", "lgst": "largest", "lmbr": "lumber", "sz": "size", "szs": "sizes", "nlt": "at least", "nmt": "at most",
	"incr": "increase", "decr": "decrease", "calc": "calculate", "recalc": "recalculate", "scrws": "screws", "ovrl": "overall", "shpg": "shopping", "shpng": "shopping",
	"chk": "check", "ck": "check", "sez": "says", "clrnc": "clearance", "clrnce": "clearance", "thkns": "thickness", "tol": "tolerance", "del": "delete", "rmv": "remove", "doz": "dozen",
	"meas'd": "measured", "stffnrs": "stiffeners", "stffnr": "stiffener", "apx": "about", "ext'g": "existing", "exg": "existing",
	"sq'ing": "squaring", "horiz": "horizontal", "vert": "vertical", "lim": "limit", "more'n": "more than", "less'n": "less than", "bigger'n": "bigger than", "smaller'n": "smaller than", "wider'n": "wider than",
	"narrower'n": "narrower than", "taller'n": "taller than", "higher'n": "higher than", "lower'n": "lower than", "longer'n": "longer than", "shorter'n": "shorter than",
	"closer'n": "closer than", "tighter'n": "tighter than", "fewer'n": "fewer than", "better'n": "better than",
	"bg": "bottom gap", "fc": "face", "tgt": "target", "bgap": "bottom gap", "qtr": "quarter", "hlf": "half", "hdwe": "hardware", "hdwr": "hardware", "lvl": "level", "cmds": "commands", "avail": "available", "wdths": "widths",
}

// withoutVowels are words of the job that notes write without their vowels: "opnng", "stfnr", "hght".
const withoutVowels = `opening openings bracket brackets stiffener stiffeners spacing height width thickness clearance bottom middle center left right board boards
	drawing layout marks materials material shopping lengths length budget screws total minimum change delete remove forget measured check what ground floor slab bottom correction
	stock kerf span largest smallest fewest cheapest needed drop price prices quote sixteenth eighth quarter hundred inches concrete spare lumber doorway doorways distance
	overall increase decrease existing vertical horizontal hardware dimension dimensions location locations position positions`

func init() {
	maps.Copy(unmarked, shortened)
	for _, w := range strings.Fields(withoutVowels) {
		for _, short := range vowelless(w) {
			if _, taken := unmarked[short]; !taken && len(short) > 2 {
				unmarked[short] = w
			}
		}
	}
}

// vowelless is a word without the vowels behind its first letter, with double letters and with single ones.
func vowelless(w string) []string {
	var all, single []byte
	for i := range len(w) {
		if i > 0 && strings.IndexByte("aeiou", w[i]) >= 0 {
			continue
		}
		all = append(all, w[i])
		if len(single) == 0 || single[len(single)-1] != w[i] {
			single = append(single, w[i])
		}
	}
	return []string{string(all), string(single)}
}

// shortNotes sets what notes write short to plain words where the words beside it tell what is meant.
func shortNotes(atoms []atom) []atom {
	for i := 0; i < len(atoms); i++ {
		switch atoms[i].text {
		case "h":
			if i > 1 && atoms[i-1].kind == aDigits && endsPart(atoms, i+1) && namesPart(atoms, 0) {
				atoms = reworded(atoms, i, i+1, "high") // "wall 45-1/2 h"
			}
		case "lt":
			atoms = leftNoted(atoms, i)
		case "yd":
			if i+1 < len(atoms) && yardDoes[atoms[i+1].text] {
				atoms = reworded(atoms, i, i+1, "yard")
			}
		case "sq":
			if i+1 == len(atoms) || !squareUnits[atoms[i+1].text] {
				atoms = reworded(atoms, i, i+1, "square")
			}
		case "/":
			atoms = strokeNoted(atoms, i)
		case "-":
			if i > 1 && i+1 < len(atoms) && !atoms[i].glued && atoms[i+1].text == "i" {
				atoms = reworded(atoms, i, i+1, ",") // "gap 2 - I mean 3"
				atoms[i].kind = aSign
			} else if i > 1 && i+1 < len(atoms) && !atoms[i].glued && (atoms[i-1].text == "it" || atoms[i-1].text == "this") && (atoms[i-2].text == "save" || atoms[i-2].text == "sv") {
				atoms = reworded(atoms, i, i+1, "as")
			} else if countBeforeSize(atoms, i) {
				atoms = cutOut(atoms, i, i+1)
			}
		case "=":
			if i > 2 && i+2 == len(atoms) && atoms[i+1].text == "?" && (atoms[0].text == "if" || atoms[0].text == "try" || standAt(atoms, 0, "what", "if")) {
				atoms = cutOut(atoms, i, i+1) // "if 7 rls, gap = ?"
			} else if i > 0 && i+2 < len(atoms) && atoms[i+1].text == "$" && atoms[i-1].kind == aDigits {
				atoms = cutOut(atoms, i, i+1) // "2x6-16 = $15.35"
			}
		case "meant":
			if _, end, ok := (reader{atoms}).length(i + 1); ok && i > 1 && atoms[i-1].text == "(" && end < len(atoms) && atoms[end].text == ")" && figured(atoms[:i]) {
				atoms = reworded(cutOut(atoms, end, end+1), i-1, i+1, ",", "no", ",") // "gap 2 (meant 2-1/4)"
				atoms[i-1].kind, atoms[i+1].kind = aSign, aSign
			}
		case "(":
			if i+3 < len(atoms) && atoms[i+1].kind == aDigits && atoms[i+2].text == ")" && (atoms[i+3].kind == aWord || i+4 < len(atoms) && atoms[i+4].text == "x") && (i == 0 || endsPart(atoms, i-1)) {
				atoms = cutOut(cutOut(atoms, i+2, i+3), i, i+1) // "(2) opgs"
			}
		case "was":
			if _, end, ok := (reader{atoms}).length(i + 1); ok && i > 1 && atoms[i-1].text == "(" && end < len(atoms) && atoms[end].text == ")" && figured(atoms[:i]) {
				return shortNotes(cutOut(atoms, i-1, end+1)) // "gap 2-1/2 (was 2-1/4)"
			}
		case "plus":
			if n := i - 1; endsPart(atoms, i+1) && n > 0 && (atoms[n].kind == aDigits && atoms[n-1].text != "/" || unitsNoted[atoms[n].text] && atoms[n-1].kind == aDigits) && namesPart(atoms, 0) {
				atoms = reworded(atoms, i, i+1, "or", "more") // "opening 3 ft plus"
			}
		case "=>":
			if i > 1 && atoms[i-1].kind == aDigits {
				atoms = arrowNoted(atoms, i)
			}
		case ">", "→":
			atoms = arrowNoted(atoms, i)
		case "per":
			if endsPart(atoms, i+1) {
				atoms = pricedNoted(atoms, i, "each")
			}
		case "l", "r", "are":
			if w := map[string]string{"l": "left", "r": "right", "are": "right"}[atoms[i].text]; i > 1 && (i+1 == len(atoms) || atoms[i+1].text == "," || atoms[i+1].text == ".") && atoms[i-1].kind == aDigits && atoms[i].end-atoms[i].at == 1 && sidedBefore(atoms[:i]) {
				atoms = reworded(atoms, i, i+1, w) // "door 36 L"
			}
		case "+":
			if i > 0 && i+1 < len(atoms) && (soldLengths[atoms[i-1].text] || atoms[i-1].text == "s" && atoms[i-1].glued) && (atoms[i+1].kind == aDigits || soldLengths[atoms[i+1].text]) {
				atoms = reworded(atoms, i, i+1, "and") // "8s, 10s + 12s"
			}
		case "scratch", "strike", "scrap", "nix":
			atoms = slipNoted(atoms, i)
		case "hundred":
			if i > 0 && hundredNoted[atoms[i-1].text] {
				atoms = pricedNoted(atoms, i-1, "per")
			}
		case "eights", "tens", "twelves", "fourteens", "sixteens", "eighteens", "twenties":
			atoms = lengthsPriced(atoms, i)
		case "$":
			atoms = costNoted(atoms, i)
		}
	}
	return atoms
}

// sidedBefore reports whether a side may be told behind a figure: of an opening, or of the floor.
func sidedBefore(atoms []atom) bool {
	for i := len(atoms) - 1; i >= 0 && (!endsPart(atoms, i) || atoms[i].text == ":"); i-- {
		if key, _ := partKey(atoms, i); key == "opening" || atoms[i].text == "slab" || atoms[i].text == "floor" || atoms[i].text == "flr" {
			return true
		}
	}
	return false
}

// pointedShort are words written short with a point behind them that ends nothing where more of the note follows.
var pointedShort = wordSet("clr vert horiz btm bot add'l addl thk btwn exist ext")

// pointLost reports whether the point behind a word written short is to be left out: "CLR. SPAN 12'", "BTM. RAIL", "BRACKET THK. 1/8".
func pointLost(in []atom, i int) bool {
	if i+2 >= len(in) || in[i+1].text != "." || !in[i+1].glued || in[i+2].glued {
		return false
	}
	if w := in[i+2].text; (in[i].text == "min" || in[i].text == "max") && (w == "clear" || w == "clr") {
		return true
	}
	if !pointedShort[in[i].text] {
		return false
	}
	if in[i].text == "thk" {
		return in[i+2].kind == aDigits && (i == 0 || in[i-1].kind == aWord)
	}
	for k := i - 1; k >= 0 && in[k].text != "," && in[k].text != "." && in[k].text != ";" && in[k].text != ":"; k-- {
		if in[k].kind == aWord && in[k].text != "x" {
			return in[i-1].kind == aWord // "span 144 clr. opening 36" says two things
		}
	}
	return true
}

var (
	// sideNouns may stand behind a side written short.
	sideNouns = wordSet("side post end hand pst")
	// unitsNoted are units behind a figure.
	unitsNoted = wordSet("ft feet foot in inch inches mm cm m")
	// yardDoes are verbs behind a yard.
	yardDoes = wordSet("has had have is out only carries stocks sells keeps no got quote price prices list bid :")
	// squareUnits make a unit of area of a "sq".
	squareUnits = wordSet("ft feet foot in inch inches m mm yd yds . /")
)

// leftNoted takes the "lt" of "opg 34 lt side" for the left that it is; by itself it may be "less than".
func leftNoted(atoms []atom, i int) []atom {
	side := i+1 < len(atoms) && sideNouns[atoms[i+1].text]
	last := endsPart(atoms, i+1) && i > 1 && (atoms[i-1].kind == aDigits || sidesBefore[atoms[i-1].text] || atoms[i-1].text == "," && atoms[i-2].kind == aDigits && sidedBefore(atoms[:i-1]))
	if !side && !last {
		return atoms
	}
	return reworded(atoms, i, i+1, "left")
}

// eachNoted are words behind a price by the piece.
var eachNoted = wordSet("ea each pc pcs piece bd board")

// strokeNoted takes a stroke for what it says: "3.15/ea", "9.50/c", "8/12/16 ft stock".
func strokeNoted(atoms []atom, i int) []atom {
	if i == 0 || i+1 >= len(atoms) || atoms[i-1].kind != aDigits || !atoms[i].glued {
		return atoms
	}
	next := atoms[i+1]
	switch priced := len(atoms[i-1].text) > 3 && atoms[i-1].text[len(atoms[i-1].text)-3] == '.'; {
	case priced && eachNoted[next.text]:
		return reworded(atoms, i, i+2, "each")
	case priced && next.text == "c" && endsPart(atoms, i+2):
		return reworded(atoms, i, i+2, "per", "hundred")
	case next.kind == aDigits && next.glued:
		return lengthsByStroke(atoms, i)
	}
	return atoms
}

// stockNoted are words by which lengths are told to be for sale.
var stockNoted = wordSet("stk stock stocks lengths length lgths ft foot feet yard yd sell sells carry carries sold available avail")

// lengthsByStroke parts lengths on sale, "8/12/16 ft stock": three or more even numbers of feet, or two that are no fraction anybody would say.
func lengthsByStroke(atoms []atom, i int) []atom {
	if i > 1 && atoms[i-2].text == "/" || i > 1 && atoms[i-2].kind == aDigits {
		return atoms
	}
	n, to := 1, i
	for to+1 < len(atoms) && atoms[to].text == "/" && atoms[to].glued && atoms[to+1].kind == aDigits && atoms[to+1].glued {
		n, to = n+1, to+2
	}
	stock := false
	for k := range atoms {
		stock = stock || k < i-1 && stockNoted[atoms[k].text] || k >= to && k < to+3 && stockNoted[atoms[k].text]
	}
	for k := i - 1; k < to; k += 2 {
		if feet, ok := atoi(atoms[k].text); !ok || feet < 6 || feet > 24 || feet%2 > 0 {
			return atoms
		}
	}
	if !stock || to < len(atoms) && atoms[to].text == "footers" || n == 2 && len(atoms[i-1].text) == len(atoms[i+1].text) && atoms[i-1].text >= atoms[i+1].text {
		return atoms
	}
	out := append([]atom{}, atoms...)
	for k := i; k < to; k += 2 {
		out[k].text, out[k].glued, out[k+1].glued = ",", false, false
	}
	return out
}

// ownNoted are words behind which pieces are counted.
var ownNoted = wordSet("onhand hand have has got extra : , ; also plus and")

// countBeforeSize reports whether a hyphen stands between a count and the size of what is counted: "on hand: 4 - 2x6x10".
func countBeforeSize(atoms []atom, i int) bool {
	if i == 0 || i+3 >= len(atoms) || atoms[i-1].kind != aDigits || atoms[i].glued != atoms[i+1].glued || atoms[i+1].kind != aDigits || atoms[i+2].text != "x" || atoms[i+3].kind != aDigits {
		return false
	}
	count, ok := atoi(atoms[i-1].text)
	return ok && count > 0 && (i == 1 || ownNoted[atoms[i-2].text])
}

// slipNoted takes a slip for what it is: "wh 43-1/2 -- scratch, 44-1/2" sets the figure right.
func slipNoted(atoms []atom, i int) []atom {
	from, to := i, i+1
	if to < len(atoms) && (atoms[to].text == "that" || atoms[to].text == "it") {
		return atoms // known
	}
	if to < len(atoms) && (endsPart(atoms, to) || atoms[to].text == "-") && atoms[to].text != "?" {
		to++
	}
	if from > 0 && (endsPart(atoms, from-1) || atoms[from-1].text == "-") {
		from--
	}
	_, end, ok := reader{atoms}.length(to)
	if !ok || end <= to || !endsPart(atoms, end) || from == 0 || !figured(atoms[:from]) || backTaken[atoms[0].text] {
		return atoms
	}
	for k := 0; k+end-to <= from; k++ {
		if sameWords(atoms[k:k+end-to], atoms[to:end]) {
			return atoms // "gap 2, opening 36, scratch 36" takes it back
		}
	}
	out := reworded(atoms, from, to, ",", "no", ",")
	out[from].kind, out[from+2].kind = aSign, aSign
	return out
}

// arrowNoted sets "wh 46->45" to "wh 45": what was, and what is now.
func arrowNoted(atoms []atom, i int) []atom {
	from := i
	if atoms[i].text == ">" {
		if i < 2 || atoms[i-1].text != "-" && atoms[i-1].text != "--" && atoms[i-1].text != "=" {
			return atoms
		}
		from--
	}
	if _, _, ok := (reader{atoms}).length(i + 1); !ok {
		return atoms
	}
	for k := max(1, from-6); k < from; k++ {
		if _, end, ok := (reader{atoms}).length(k); ok && end == from && atoms[k-1].kind == aWord {
			return cutOut(atoms, k, i+1)
		}
	}
	return atoms
}

// backTaken are verbs of taking back.
var backTaken = wordSet("forget drop undo delete remove ignore")

// hundredNoted may stand between a price and its hundred.
var hundredNoted = wordSet("a per the each one")

// pricedNoted sets a price said in two numbers before a word to its figures, and another word in its place: "screws are nine fifty a hundred".
func pricedNoted(atoms []atom, i int, word string) []atom {
	if i < 2 || !soldItems[atoms[0].text] && !yardItemIn(atoms[:i]) {
		return atoms
	}
	for from := i - 2; from >= max(1, i-5); from-- {
		if out, end, ok := pricedInTwo(atoms, from); ok && end == i && !spelledNumber(atoms[from-1].text) && atoms[from-1].kind != aDigits {
			return reworded(out, from+1, from+2, word)
		}
	}
	return atoms
}

// lengthsPriced sets the price behind a length, "twelves ten ninety, sixteens fifteen thirty-five", to its figures.
func lengthsPriced(atoms []atom, i int) []atom {
	if i > 0 && (atoms[i-1].text == "the" && i > 1 || spelledNumber(atoms[i-1].text)) {
		return atoms
	}
	if out, _, ok := pricedInTwo(atoms, i+1); ok && endsPart(out, i+2) {
		return out
	}
	return atoms
}

// pricedInTwo sets two numbers, whole and cents, to the figures of a price, and tells where they ended.
func pricedInTwo(atoms []atom, from int) (out []atom, end int, ok bool) {
	whole, next := spokenUpTo99(atoms, from)
	if whole == 0 || next < len(atoms) && atoms[next].text == "-" {
		return atoms, from, false
	}
	cents, end := spokenUpTo99(atoms, next)
	if cents > 0 && end+1 < len(atoms) && atoms[end].text == "-" {
		if one, past := spokenUpTo99(atoms, end+1); one > 0 && one < 10 && cents%10 == 0 {
			cents, end = cents+one, past // "thirty-five"
		}
	}
	if cents < 10 {
		return atoms, from, false
	}
	out = reworded(atoms, from, end, itoa(whole)+"."+itoa(cents))
	out[from].kind = aDigits
	return out, end, true
}

// costNoted takes signs of money without a figure for the cost: "fewest posts, then $$?", "mat'ls + $".
func costNoted(atoms []atom, i int) []atom {
	to := i
	for to < len(atoms) && atoms[to].text == "$" {
		to++
	}
	if to < len(atoms) && (atoms[to].text == "total" || atoms[to].text == "cost") && endsPart(atoms, to+1) && (i == 0 || atoms[i-1].kind != aDigits) {
		return reworded(atoms, i, to+1, "total", "cost")
	}
	if to < len(atoms) && to == i+1 && (atoms[to].text == "limit" || atoms[to].text == "cap" || atoms[to].text == "max") {
		return reworded(atoms, i, to+1, "budget")
	}
	if to-i > 3 || !endsPart(atoms, to) || i > 0 && atoms[i-1].kind == aDigits {
		return atoms
	}
	if from := i - 2; from >= 0 && (atoms[from].text == "how" || atoms[from].text == "what") && atoms[from+1].text == "much" {
		return reworded(atoms, from, to, "what", "does", "it", "cost")
	}
	if from := i - 1; from >= 0 && (atoms[from].text == "how" || atoms[from].text == "what") {
		return reworded(atoms, from, to, "what", "does", "it", "cost")
	}
	return reworded(atoms, i, to, "cost")
}
