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

var units = map[string]int{
	"zero": 0, "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "ten": 10, "eleven": 11,
	"twelve": 12, "thirteen": 13, "fourteen": 14, "fifteen": 15, "sixteen": 16, "seventeen": 17, "eighteen": 18, "nineteen": 19,
}

var tens = map[string]int{
	"twenty": 20, "thirty": 30, "forty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80, "ninety": 90,
}

var denominators = map[string]int{
	"half": 2, "halves": 2, "third": 3, "thirds": 3, "quarter": 4, "quarters": 4, "fourth": 4, "fourths": 4, "fifth": 5, "fifths": 5,
	"sixth": 6, "sixths": 6, "seventh": 7, "sevenths": 7, "eighth": 8, "eighths": 8, "ninth": 9, "ninths": 9, "tenth": 10, "tenths": 10,
	"twelfth": 12, "twelfths": 12, "fourteenth": 14, "fourteenths": 14, "sixteenth": 16, "sixteenths": 16, "twentieth": 20, "twentieths": 20,
	"hundredth": 100, "hundredths": 100, "thousandth": 1000, "thousandths": 1000,
}

// longDenominators are said in two words: "three thirty-seconds".
var longDenominators = map[string]map[string]int{
	"thirty": {"second": 32, "seconds": 32, "sixth": 36, "sixths": 36},
	"sixty":  {"fourth": 64, "fourths": 64},
	"forty":  {"eighth": 48, "eighths": 48},
	"twenty": {"fourth": 24, "fourths": 24},
}

// homophones are taken for a number only where nothing else can be meant.
var homophones = map[string]int{"to": 2, "too": 2, "for": 4, "fore": 4, "ate": 8}

// reader walks the atoms of a line.
type reader struct{ atoms []atom }

func (r reader) word(i int) string {
	if i < 0 || i >= len(r.atoms) {
		return ""
	}
	return r.atoms[i].text
}

func (r reader) kind(i int) atomKind {
	if i < 0 || i >= len(r.atoms) {
		return 0
	}
	return r.atoms[i].kind
}

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
	if f, j, ok := r.fractionAfter(next); ok && f.val.Less(exact.Int(1)) {
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

// tensThenNumerator reports whether a number ends in bare tens right before a counted fraction, as in "twenty five eighths",
// which is 20-5/8 or 25/8.
func (r reader) tensThenNumerator(i, next int) bool {
	_, ten := tens[r.word(next-1)]
	_, one := units[r.word(r.skip(next))]
	return ten && one && next > i
}

// fractionAfter reads the fraction of a mixed number: " 1/2", "-1/2", "½", " and a half", " & 1/2".
func (r reader) fractionAfter(i int) (number, int, bool) {
	j := i
	switch w := r.word(i); {
	case w == "and" || w == "&":
		j++
		if f, k, ok := r.fraction(j); ok {
			return f, k, true
		}
		return number{}, i, false
	case w == "-" && r.glued(i) && r.glued(i+1):
		j++
	}
	return r.fraction(j)
}

// fraction reads "5/8", "½", "five eighths", "a quarter", "half", "3 8ths", "an 8th".
func (r reader) fraction(i int) (number, int, bool) {
	if r.kind(i) == aVulgar {
		return number{val: exact.Must(r.word(i)), frac: true}, r.ths(i + 1), true
	}
	if r.kind(i) == aDigits && r.word(i+1) == "/" && r.kind(i+2) == aDigits {
		return r.slashed(i)
	}
	k := 1
	j := i
	words := true
	switch w := r.word(i); {
	case w == "a" || w == "an" || w == "one":
		j = r.skip(i + 1)
	case w == "half" && r.word(i+1) == "a" && r.word(i+2) == "dozen":
		return number{}, i, false
	case denominators[w] == 2: // "half", and never "eighth" alone: that may be an ordinal
		return number{val: exact.New(1, 2), frac: true, words: true}, i + 1, true
	default:
		n, next, ok := r.whole(i)
		if !ok || n.bad != "" || n.point || n.val.Less(exact.Int(1)) || !n.val.Less(exact.Int(100)) {
			return number{}, i, false
		}
		v, _ := n.val.Int64()
		k, j, words = int(v), r.skip(next), n.words
	}
	d, next, ok := r.denominator(j)
	if !ok {
		return number{}, i, false
	}
	f := number{val: exact.New(int64(k), int64(d)), frac: true, words: words}
	if words && k > 20 && k%10 != 0 {
		f.bad = "ambiguous" // "twenty five eighths"
	}
	if k == 1 && (d == 3 || d == 5) && partNext(r, next) {
		f.bad = "ordinal" // "a third rail"
	}
	return f, next, true
}

// denominator reads "eighths", "thirty-seconds", "16ths", "8th".
func (r reader) denominator(i int) (int, int, bool) {
	if d, ok := denominators[r.word(i)]; ok {
		return d, i + 1, true
	}
	if m := longDenominators[r.word(i)]; m != nil {
		if d, ok := m[r.word(r.skip(i+1))]; ok {
			return d, r.skip(i+1) + 1, true
		}
	}
	if d, ok := atoi(r.word(i)); ok && r.kind(i) == aDigits && r.glued(i+1) && ordinalEnds[r.word(i+1)] && tapeDenominator[d] {
		return d, i + 2, true
	}
	return 0, i, false
}

var ordinalEnds = map[string]bool{"th": true, "ths": true, "nd": true, "nds": true, "rd": true, "rds": true, "st": true}

var tapeDenominator = map[int]bool{2: true, 3: true, 4: true, 5: true, 6: true, 8: true, 10: true, 12: true, 16: true, 32: true, 64: true}

// ths steps over the ending of "5/8ths".
func (r reader) ths(i int) int {
	if r.glued(i) && (ordinalEnds[r.word(i)] || r.word(i) == "s" && !r.glued(i+1)) {
		return i + 1
	}
	return i
}

// slashed reads "5/8". A date, a chain of slashes and a denominator of 0 are no number.
func (r reader) slashed(i int) (number, int, bool) {
	num, ok1 := rat(r.word(i))
	den, ok2 := rat(r.word(i + 2))
	next := r.ths(i + 3)
	n := number{frac: true}
	switch {
	case !ok1 || !ok2 || strings.ContainsAny(r.word(i)+r.word(i+2), ".,"):
		n.bad = "fraction"
	case den.Sign() == 0:
		n.bad = "zero"
	case r.word(next) == "/" && r.kind(next+1) == aDigits:
		n.bad = "date"
		for r.word(next) == "/" && r.kind(next+1) == aDigits {
			next += 2
		}
	default:
		n.val = num.Div(den)
	}
	return n, next, true
}

// whole reads digits or number words, without a fraction.
func (r reader) whole(i int) (number, int, bool) {
	if r.kind(i) == aDigits {
		return r.digits(i)
	}
	n, j, ok := r.wordNumber(i)
	if !ok {
		return number{}, i, false
	}
	if r.word(j) == "point" {
		return r.pointed(n, j+1)
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
