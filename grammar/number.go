package grammar

import (
	"strings"

	"saywright/solver/exact"
)

// number is a figure as it was said, before its unit.
type number struct {
	val   exact.Rat
	words bool   // said in words
	frac  bool   // has a fraction, or is one
	point bool   // written with a decimal point
	plain string // its digits, where it is digits only
	bad   string // why it can't be taken: see badNumber
	alts  []exact.Rat
}

// units are the words of numbers below twenty.
var units = map[string]int{
	"zero": 0, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10, "eleven": 11,
	"twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16, "seventeen": 17, "eighteen": 18, "nineteen": 19,
}

// tens are the words of tens.
var tens = map[string]int{
	"twenty": 20, "thirty": 30, "forty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80, "ninety": 90,
}

// homophones are taken for a number only where nothing else can be meant.
var homophones = map[string]int{"to": 2, "too": 2, "for": 4, "fore": 4, "ate": 8}

// reader walks the atoms of a line.
type reader struct{ atoms []atom }

// word is the text of an atom, "" outside of the line.
func (r reader) word(i int) string {
	if i < 0 || i >= len(r.atoms) {
		return ""
	}
	return r.atoms[i].text
}

// kind is the kind of an atom, 0 outside of the line.
func (r reader) kind(i int) atomKind {
	if i < 0 || i >= len(r.atoms) {
		return 0
	}
	return r.atoms[i].kind
}

// glued reports whether nothing stands between an atom and the one before.
func (r reader) glued(i int) bool { return i >= 0 && i < len(r.atoms) && r.atoms[i].glued }

// skip steps over a hyphen that ties words together ("twenty-five", "three-quarters").
func (r reader) skip(i int) int {
	if r.word(i) == "-" && r.glued(i) && r.glued(i+1) {
		return i + 1
	}
	return i
}

// mixed reads a whole number, a fraction, or both: "2 1/2", "two and a half", "2½", "five eighths".
func (r reader) mixed(i int) (n number, next int, ok bool) {
	if f, j, ok := r.fraction(i); ok {
		return f, j, true
	}
	n, next, ok = r.whole(i)
	if !ok || n.bad != "" || n.point {
		return n, next, ok
	}
	if f, j, ok := r.fractionAfter(next); ok && !(r.kind(i) == aDigits && f.words && r.word(next) != "and" && (ofBay(r.word(i-1)) || partOf(r, i-1, "POST"))) && f.val.Less(exact.Int(1)) {
		if f.bad == "" && n.words && f.words && r.word(next) != "and" && f.val.Sign() > 0 && r.tensThenNumerator(i, next) {
			n.bad = "ambiguous"
		}
		if f.bad != "" {
			n.bad = f.bad
		}
		n.val, n.frac, n.plain = n.val.Add(f.val), true, ""
		n.words = n.words || f.words
		return n, j, true
	}
	return n, next, ok
}

// whole reads digits or number words, without a fraction.
func (r reader) whole(i int) (number, int, bool) {
	if r.kind(i) == aDigits {
		return r.digits(i)
	}
	if r.word(i) == "point" && !nounsAhead[r.word(i-1)] && r.decimals(i+1) {
		return r.pointed(0, i+1) // "point one two five"
	}
	n, j, ok := r.wordNumber(i)
	if !ok {
		return number{}, i, false
	}
	if r.word(j) == "point" {
		return r.pointed(n, j+1)
	}
	if w := r.word(i); w == "hundred" && (r.word(i-1) == "for" || r.word(i-1) == "to") {
		return number{val: exact.Int(n), words: true, bad: "ambiguous"}, j, true // "budget to hundred": a hundred, or two?
	}
	return number{val: exact.Int(n), words: true}, j, true
}

// pointed reads the decimals of "two point three seven five".
func (r reader) pointed(n, i int) (number, int, bool) {
	digits := ""
	for {
		d, ok := units[r.word(i)]
		if r.kind(i) == aDigits && len(r.word(i)) < 4 && !strings.ContainsAny(r.word(i), ".,") {
			digits += r.word(i)
		} else if ok && d < 10 {
			digits += string(rune('0' + d))
		} else if t, ok := tens[r.word(i)]; ok && digits == "" { // "two point twenty five"
			digits = string(rune('0' + t/10))
			if u := units[r.word(r.skip(i+1))]; u > 0 && u < 10 {
				digits, i = digits+string(rune('0'+u)), r.skip(i+1)
			}
		} else if ok && digits == "" && d > 9 {
			digits = itoa(d)
		} else {
			break
		}
		i++
	}
	v, ok := rat(itoa(n) + "." + digits)
	if digits == "" || !ok {
		return number{bad: "point"}, i, true
	}
	return number{val: v, words: true, point: true, frac: true}, i, true
}

// wordNumber reads "a hundred and forty four", "twelve hundred", "half a dozen", "forty-two".
func (r reader) wordNumber(i int) (n, next int, ok bool) {
	if w := r.word(i); (w == "a" || w == "an") && (r.word(i+1) == "hundred" || r.word(i+1) == "dozen" || r.word(i+1) == "thousand") {
		i++
	}
	if r.word(i) == "half" && r.word(i+1) == "a" && r.word(i+2) == "dozen" {
		return 6, i + 3, true
	}
	if r.word(i) == "half" && r.word(i+1) == "dozen" {
		return 6, i + 2, true
	}
	if j := i + 1; (r.word(i) == "a" || r.word(i) == "one") && r.word(j) == "pair" && r.word(j+1) == "of" {
		return 2, j + 2, true
	}
	n, j, ok := r.below100(i)
	if !ok {
		n, j = 1, i
	}
	switch r.word(r.skip(j)) {
	case "dozen":
		return 12 * n, r.skip(j) + 1, true
	case "hundred":
		return r.rest(n*100, r.skip(j)+1)
	case "thousand":
		return r.rest(n*1000, r.skip(j)+1)
	}
	return n, j, ok
}

func (r reader) rest(n, i int) (int, int, bool) {
	j := r.skip(i)
	if r.word(j) == "and" {
		j++
	}
	if m, k, ok := r.below100(j); ok {
		if r.word(r.skip(k)) == "hundred" && n >= 1000 {
			return r.rest(n+100*m, r.skip(k)+1)
		}
		if _, _, isFraction := r.denominator(r.skip(k)); !isFraction || r.word(j-1) == "and" && m >= 20 {
			return n + m, k, true
		}
	}
	return n, i, true
}

func (r reader) below100(i int) (n, next int, ok bool) {
	if n, ok := units[r.word(i)]; ok {
		return n, i + 1, true
	}
	n, ok = tens[r.word(i)]
	if !ok {
		return 0, i, false
	}
	j := r.skip(i + 1)
	u, one := units[r.word(j)]
	if !one || u == 0 || u > 9 {
		return n, i + 1, true
	}
	if _, _, isFraction := r.denominator(r.skip(j + 1)); isFraction && r.skip(i+1) == i+1 {
		return n, i + 1, true // "sixty six eighths" is told apart by tensThenNumerator
	}
	return n + u, j + 1, true
}

// decimals reports whether digits in words, as they stand behind a point, begin at an atom.
func (r reader) decimals(i int) bool {
	d, ok := units[r.word(i)]
	return ok && d < 10
}
