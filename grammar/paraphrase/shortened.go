package paraphrase

import (
	"maps"
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lumberlist"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
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
	maps.Copy(scan.Unmarked, shortened)
	for _, w := range strings.Fields(withoutVowels) {
		for _, short := range vowelless(w) {
			if _, taken := scan.Unmarked[short]; !taken && len(short) > 2 {
				scan.Unmarked[short] = w
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
func shortNotes(atoms []scan.Atom) []scan.Atom {
	for i := 0; i < len(atoms); i++ {
		switch atoms[i].Text {
		case "h":
			if i > 1 && atoms[i-1].Kind == scan.Digits && chunk.EndsPart(atoms, i+1) && chunk.NamesPart(atoms, 0) {
				atoms = scan.Reworded(atoms, i, i+1, "high") // "wall 45-1/2 h"
			}
		case "lt":
			atoms = leftNoted(atoms, i)
		case "yd":
			if i+1 < len(atoms) && yardDoes[atoms[i+1].Text] {
				atoms = scan.Reworded(atoms, i, i+1, "yard")
			}
		case "sq":
			if i+1 == len(atoms) || !squareUnits[atoms[i+1].Text] {
				atoms = scan.Reworded(atoms, i, i+1, "square")
			}
		case "/":
			atoms = strokeNoted(atoms, i)
		case "-":
			if i > 1 && i+1 < len(atoms) && !atoms[i].Glued && atoms[i+1].Text == "i" {
				atoms = scan.Reworded(atoms, i, i+1, ",") // "gap 2 - I mean 3"
				atoms[i].Kind = scan.Sign
			} else if i > 1 && i+1 < len(atoms) && !atoms[i].Glued && (atoms[i-1].Text == "it" || atoms[i-1].Text == "this") && (atoms[i-2].Text == "save" || atoms[i-2].Text == "sv") {
				atoms = scan.Reworded(atoms, i, i+1, "as")
			} else if countBeforeSize(atoms, i) {
				atoms = scan.CutOut(atoms, i, i+1)
			}
		case "=":
			if i > 2 && i+2 == len(atoms) && atoms[i+1].Text == "?" && (atoms[0].Text == "if" || atoms[0].Text == "try" || scan.StandAt(atoms, 0, "what", "if")) {
				atoms = scan.CutOut(atoms, i, i+1) // "if 7 rls, gap = ?"
			} else if i > 0 && i+2 < len(atoms) && atoms[i+1].Text == "$" && atoms[i-1].Kind == scan.Digits {
				atoms = scan.CutOut(atoms, i, i+1) // "2x6-16 = $15.35"
			}
		case "meant":
			if _, end, ok := (measure.Reader{Atoms: atoms}).Length(i + 1); ok && i > 1 && atoms[i-1].Text == "(" && end < len(atoms) && atoms[end].Text == ")" && chunk.Figured(atoms[:i]) {
				atoms = scan.Reworded(scan.CutOut(atoms, end, end+1), i-1, i+1, ",", "no", ",") // "gap 2 (meant 2-1/4)"
				atoms[i-1].Kind, atoms[i+1].Kind = scan.Sign, scan.Sign
			}
		case "(":
			if i+3 < len(atoms) && atoms[i+1].Kind == scan.Digits && atoms[i+2].Text == ")" && (atoms[i+3].Kind == scan.Word || i+4 < len(atoms) && atoms[i+4].Text == "x") && (i == 0 || chunk.EndsPart(atoms, i-1)) {
				atoms = scan.CutOut(scan.CutOut(atoms, i+2, i+3), i, i+1) // "(2) opgs"
			}
		case "was":
			if _, end, ok := (measure.Reader{Atoms: atoms}).Length(i + 1); ok && i > 1 && atoms[i-1].Text == "(" && end < len(atoms) && atoms[end].Text == ")" && chunk.Figured(atoms[:i]) {
				return shortNotes(scan.CutOut(atoms, i-1, end+1)) // "gap 2-1/2 (was 2-1/4)"
			}
		case "plus":
			if n := i - 1; chunk.EndsPart(atoms, i+1) && n > 0 && (atoms[n].Kind == scan.Digits && atoms[n-1].Text != "/" || unitsNoted[atoms[n].Text] && atoms[n-1].Kind == scan.Digits) && chunk.NamesPart(atoms, 0) {
				atoms = scan.Reworded(atoms, i, i+1, "or", "more") // "opening 3 ft plus"
			}
		case "=>":
			if i > 1 && atoms[i-1].Kind == scan.Digits {
				atoms = arrowNoted(atoms, i)
			}
		case ">", "→":
			atoms = arrowNoted(atoms, i)
		case "per":
			if chunk.EndsPart(atoms, i+1) {
				atoms = pricedNoted(atoms, i, "each")
			}
		case "l", "r", "are":
			if w := map[string]string{"l": "left", "r": "right", "are": "right"}[atoms[i].Text]; i > 1 && (i+1 == len(atoms) || atoms[i+1].Text == "," || atoms[i+1].Text == ".") && atoms[i-1].Kind == scan.Digits && atoms[i].End-atoms[i].At == 1 && sidedBefore(atoms[:i]) {
				atoms = scan.Reworded(atoms, i, i+1, w) // "door 36 L"
			}
		case "+":
			if orMoreNoted(atoms, i) {
				return shortNotes(scan.Reworded(atoms, i, i+1, "or", "more")) // "2'8"+ opening"
			}
			if i > 0 && i+1 < len(atoms) && (idiom.SoldLengths[atoms[i-1].Text] || atoms[i-1].Text == "s" && atoms[i-1].Glued) && (atoms[i+1].Kind == scan.Digits || idiom.SoldLengths[atoms[i+1].Text]) {
				atoms = scan.Reworded(atoms, i, i+1, "and") // "8s, 10s + 12s"
			}
		case "scratch", "strike", "scrap", "nix":
			atoms = slipNoted(atoms, i)
		case "hundred":
			if i > 0 && hundredNoted[atoms[i-1].Text] {
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

// orMoreNoted reports whether a plus is glued to the figure before it, and none follows: what is named is that figure or more.
func orMoreNoted(atoms []scan.Atom, i int) bool {
	if i == 0 || !atoms[i].Glued || i+1 < len(atoms) && atoms[i+1].Glued {
		return false
	}
	before := atoms[i-1]
	if before.Kind != scan.Digits && !(before.Kind == scan.Sign && (before.Text == "\"" || before.Text == "'") || unitsNoted[before.Text]) {
		return false
	}
	if chunk.EndsPart(atoms, i+1) {
		return chunk.NamesPart(atoms, 0)
	}
	return atoms[i+1].Kind == scan.Word && (chunk.PartAt(atoms, i+1) || atoms[i+1].Text == "walk")
}

// sidedBefore reports whether a side may be told behind a figure: of an opening, or of the floor.
func sidedBefore(atoms []scan.Atom) bool {
	for i := len(atoms) - 1; i >= 0 && (!chunk.EndsPart(atoms, i) || atoms[i].Text == ":"); i-- {
		if key, _ := chunk.PartKey(atoms, i); key == "opening" || atoms[i].Text == "slab" || atoms[i].Text == "floor" || atoms[i].Text == "flr" {
			return true
		}
	}
	return false
}

var (
	// sideNouns may stand behind a side written short.
	sideNouns = scan.WordSet("side post end hand pst")
	// unitsNoted are units behind a figure.
	unitsNoted = scan.WordSet("ft feet foot in inch inches mm cm m")
	// yardDoes are verbs behind a yard.
	yardDoes = scan.WordSet("has had have is out only carries stocks sells keeps no got quote price prices list bid :")
	// squareUnits make a unit of area of a "sq".
	squareUnits = scan.WordSet("ft feet foot in inch inches m mm yd yds . /")
)

// leftNoted takes the "lt" of "opg 34 lt side" for the left that it is; by itself it may be "less than".
func leftNoted(atoms []scan.Atom, i int) []scan.Atom {
	side := i+1 < len(atoms) && sideNouns[atoms[i+1].Text]
	last := chunk.EndsPart(atoms, i+1) && i > 1 && (atoms[i-1].Kind == scan.Digits || scan.SidesBefore[atoms[i-1].Text] || atoms[i-1].Text == "," && atoms[i-2].Kind == scan.Digits && sidedBefore(atoms[:i-1]))
	if !side && !last {
		return atoms
	}
	return scan.Reworded(atoms, i, i+1, "left")
}

// eachNoted are words behind a price by the piece.
var eachNoted = scan.WordSet("ea each pc pcs piece bd board")

// strokeNoted takes a stroke for what it says: "3.15/ea", "9.50/c", "8/12/16 ft stock".
func strokeNoted(atoms []scan.Atom, i int) []scan.Atom {
	if i == 0 || i+1 >= len(atoms) || atoms[i-1].Kind != scan.Digits || !atoms[i].Glued {
		return atoms
	}
	next := atoms[i+1]
	switch priced := len(atoms[i-1].Text) > 3 && atoms[i-1].Text[len(atoms[i-1].Text)-3] == '.'; {
	case priced && eachNoted[next.Text]:
		return scan.Reworded(atoms, i, i+2, "each")
	case priced && next.Text == "c" && chunk.EndsPart(atoms, i+2):
		return scan.Reworded(atoms, i, i+2, "per", "hundred")
	case next.Kind == scan.Digits && next.Glued:
		return lengthsByStroke(atoms, i)
	}
	return atoms
}

// stockNoted are words by which lengths are told to be for sale.
var stockNoted = scan.WordSet("stk stock stocks lengths length lgths ft foot feet yard yd sell sells carry carries sold available avail")

// lengthsByStroke parts lengths on sale, "8/12/16 ft stock": three or more even numbers of feet, or two that are no fraction anybody would say.
func lengthsByStroke(atoms []scan.Atom, i int) []scan.Atom {
	if i > 1 && atoms[i-2].Text == "/" || i > 1 && atoms[i-2].Kind == scan.Digits {
		return atoms
	}
	n, to := 1, i
	for to+1 < len(atoms) && atoms[to].Text == "/" && atoms[to].Glued && atoms[to+1].Kind == scan.Digits && atoms[to+1].Glued {
		n, to = n+1, to+2
	}
	stock := false
	for k := range atoms {
		stock = stock || k < i-1 && stockNoted[atoms[k].Text] || k >= to && k < to+3 && stockNoted[atoms[k].Text]
	}
	for k := i - 1; k < to; k += 2 {
		if feet, ok := measure.Atoi(atoms[k].Text); !ok || feet < 6 || feet > 24 || feet%2 > 0 {
			return atoms
		}
	}
	if !stock || to < len(atoms) && atoms[to].Text == "footers" || n == 2 && len(atoms[i-1].Text) == len(atoms[i+1].Text) && atoms[i-1].Text >= atoms[i+1].Text {
		return atoms
	}
	out := append([]scan.Atom{}, atoms...)
	for k := i; k < to; k += 2 {
		out[k].Text, out[k].Glued, out[k+1].Glued = ",", false, false
	}
	return out
}

// ownNoted are words behind which pieces are counted.
var ownNoted = scan.WordSet("onhand hand have has got extra : , ; also plus and")

// countBeforeSize reports whether a hyphen stands between a count and the size of what is counted: "on hand: 4 - 2x6x10".
func countBeforeSize(atoms []scan.Atom, i int) bool {
	if i == 0 || i+3 >= len(atoms) || atoms[i-1].Kind != scan.Digits || atoms[i].Glued != atoms[i+1].Glued || atoms[i+1].Kind != scan.Digits || atoms[i+2].Text != "x" || atoms[i+3].Kind != scan.Digits {
		return false
	}
	count, ok := measure.Atoi(atoms[i-1].Text)
	return ok && count > 0 && (i == 1 || ownNoted[atoms[i-2].Text])
}

// slipNoted takes a slip for what it is: "wh 43-1/2 -- scratch, 44-1/2" sets the figure right.
func slipNoted(atoms []scan.Atom, i int) []scan.Atom {
	from, to := i, i+1
	if to < len(atoms) && (atoms[to].Text == "that" || atoms[to].Text == "it") {
		return atoms // known
	}
	if to < len(atoms) && (chunk.EndsPart(atoms, to) || atoms[to].Text == "-") && atoms[to].Text != "?" {
		to++
	}
	if from > 0 && (chunk.EndsPart(atoms, from-1) || atoms[from-1].Text == "-") {
		from--
	}
	_, end, ok := measure.Reader{Atoms: atoms}.Length(to)
	if !ok || end <= to || !chunk.EndsPart(atoms, end) || from == 0 || !chunk.Figured(atoms[:from]) || backTaken[atoms[0].Text] {
		return atoms
	}
	for k := 0; k+end-to <= from; k++ {
		if sameWords(atoms[k:k+end-to], atoms[to:end]) {
			return atoms // "gap 2, opening 36, scratch 36" takes it back
		}
	}
	out := scan.Reworded(atoms, from, to, ",", "no", ",")
	out[from].Kind, out[from+2].Kind = scan.Sign, scan.Sign
	return out
}

// arrowNoted sets "wh 46->45" to "wh 45": what was, and what is now.
func arrowNoted(atoms []scan.Atom, i int) []scan.Atom {
	from := i
	if atoms[i].Text == ">" {
		if i < 2 || atoms[i-1].Text != "-" && atoms[i-1].Text != "--" && atoms[i-1].Text != "=" {
			return atoms
		}
		from--
	}
	if _, _, ok := (measure.Reader{Atoms: atoms}).Length(i + 1); !ok {
		return atoms
	}
	for k := max(1, from-6); k < from; k++ {
		if _, end, ok := (measure.Reader{Atoms: atoms}).Length(k); ok && end == from && atoms[k-1].Kind == scan.Word {
			return scan.CutOut(atoms, k, i+1)
		}
	}
	return atoms
}

// backTaken are verbs of taking back.
var backTaken = scan.WordSet("forget drop undo delete remove ignore")

// hundredNoted may stand between a price and its hundred.
var hundredNoted = scan.WordSet("a per the each one")

// pricedNoted sets a price said in two numbers before a word to its figures, and another word in its place: "screws are nine fifty a hundred".
func pricedNoted(atoms []scan.Atom, i int, word string) []scan.Atom {
	if i < 2 || !idiom.SoldItems[atoms[0].Text] && !idiom.YardItemIn(atoms[:i]) {
		return atoms
	}
	for from := i - 2; from >= max(1, i-5); from-- {
		if out, end, ok := pricedInTwo(atoms, from); ok && end == i && !chunk.SpelledNumber(atoms[from-1].Text) && atoms[from-1].Kind != scan.Digits {
			return scan.Reworded(out, from+1, from+2, word)
		}
	}
	return atoms
}

// lengthsPriced sets the price behind a length, "twelves ten ninety, sixteens fifteen thirty-five", to its figures.
func lengthsPriced(atoms []scan.Atom, i int) []scan.Atom {
	if i > 0 && (atoms[i-1].Text == "the" && i > 1 || chunk.SpelledNumber(atoms[i-1].Text)) {
		return atoms
	}
	if out, _, ok := pricedInTwo(atoms, i+1); ok && chunk.EndsPart(out, i+2) {
		return out
	}
	return atoms
}

// pricedInTwo sets two numbers, whole and cents, to the figures of a price, and tells where they ended.
func pricedInTwo(atoms []scan.Atom, from int) (out []scan.Atom, end int, ok bool) {
	whole, next := lumberlist.SpokenUpTo99(atoms, from)
	if whole == 0 || next < len(atoms) && atoms[next].Text == "-" {
		return atoms, from, false
	}
	cents, end := lumberlist.SpokenUpTo99(atoms, next)
	if cents > 0 && end+1 < len(atoms) && atoms[end].Text == "-" {
		if one, past := lumberlist.SpokenUpTo99(atoms, end+1); one > 0 && one < 10 && cents%10 == 0 {
			cents, end = cents+one, past // "thirty-five"
		}
	}
	if cents < 10 {
		return atoms, from, false
	}
	out = scan.Reworded(atoms, from, end, measure.Itoa(whole)+"."+measure.Itoa(cents))
	out[from].Kind = scan.Digits
	return out, end, true
}

// costNoted takes signs of money without a figure for the cost: "fewest posts, then $$?", "mat'ls + $".
func costNoted(atoms []scan.Atom, i int) []scan.Atom {
	to := i
	for to < len(atoms) && atoms[to].Text == "$" {
		to++
	}
	if to < len(atoms) && (atoms[to].Text == "total" || atoms[to].Text == "cost") && chunk.EndsPart(atoms, to+1) && (i == 0 || atoms[i-1].Kind != scan.Digits) {
		return scan.Reworded(atoms, i, to+1, "total", "cost")
	}
	if to < len(atoms) && to == i+1 && (atoms[to].Text == "limit" || atoms[to].Text == "cap" || atoms[to].Text == "max") {
		return scan.Reworded(atoms, i, to+1, "budget")
	}
	if to-i > 3 || !chunk.EndsPart(atoms, to) || i > 0 && atoms[i-1].Kind == scan.Digits {
		return atoms
	}
	if from := i - 2; from >= 0 && (atoms[from].Text == "how" || atoms[from].Text == "what") && atoms[from+1].Text == "much" {
		return scan.Reworded(atoms, from, to, "what", "does", "it", "cost")
	}
	if from := i - 1; from >= 0 && (atoms[from].Text == "how" || atoms[from].Text == "what") {
		return scan.Reworded(atoms, from, to, "what", "does", "it", "cost")
	}
	return scan.Reworded(atoms, i, to, "cost")
}
