package measure

import (
	"strings"

	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// Number is a figure as it was said, before its unit.
type Number struct {
	Val   exact.Rat
	Words bool   // said in words
	Frac  bool   // has a fraction, or is one
	Point bool   // written with a decimal point
	Plain string // its digits, where it is digits only
	Bad   string // why it can't be taken: see BadNumber
	alts  []exact.Rat
}

// Tens are the words of tens.
var Tens = map[string]int{
	"twenty": 20, "thirty": 30, "forty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80, "ninety": 90,
}

// Homophones are taken for a number only where nothing else can be meant.
var Homophones = map[string]int{"to": 2, "too": 2, "for": 4, "fore": 4, "ate": 8}

// Reader walks the atoms of a line.
type Reader struct{ Atoms []scan.Atom }

// Word is the text of an atom, "" outside of the line.
func (r Reader) Word(i int) string {
	if i < 0 || i >= len(r.Atoms) {
		return ""
	}
	return r.Atoms[i].Text
}

// Kind is the kind of an atom, 0 outside of the line.
func (r Reader) Kind(i int) scan.AtomKind {
	if i < 0 || i >= len(r.Atoms) {
		return 0
	}
	return r.Atoms[i].Kind
}

// Glued reports whether nothing stands between an atom and the one before.
func (r Reader) Glued(i int) bool { return i >= 0 && i < len(r.Atoms) && r.Atoms[i].Glued }

// Skip steps over a hyphen that ties words together ("twenty-five", "three-quarters").
func (r Reader) Skip(i int) int {
	if r.Word(i) == "-" && r.Glued(i) && r.Glued(i+1) {
		return i + 1
	}
	return i
}

// Mixed reads a whole number, a fraction, or both: "2 1/2", "two and a half", "2½", "five eighths".
func (r Reader) Mixed(i int) (n Number, next int, ok bool) {
	if f, j, ok := r.Fraction(i); ok && !r.partThenHalf(i, f) {
		return f, j, true
	}
	n, next, ok = r.Whole(i)
	if !ok || n.Bad != "" || n.Point {
		return n, next, ok
	}
	if f, j, ok := r.fractionAfter(next); ok && !((f.Words || n.Words) && r.Word(next) != "and" && r.Word(next) != "&" && r.numbersPart(i, n)) && f.Val.Less(exact.Int(1)) {
		if f.Bad == "" && n.Words && f.Words && r.Word(next) != "and" && f.Val.Sign() > 0 && r.tensThenNumerator(i, next) {
			n.Bad = "ambiguous"
		}
		if f.Bad != "" {
			n.Bad = f.Bad
		}
		n.Val, n.Frac, n.Plain = n.Val.Add(f.Val), true, ""
		n.Words = n.Words || f.Words
		return n, j, true
	}
	return n, next, ok
}

// Whole reads digits or number words, without a fraction.
func (r Reader) Whole(i int) (Number, int, bool) {
	if r.Kind(i) == scan.Digits {
		return r.digits(i)
	}
	if r.Word(i) == "point" && !NounsAhead[r.Word(i-1)] && r.decimals(i+1) {
		return r.pointed(0, i+1) // "point one two five"
	}
	n, j, ok := r.wordNumber(i)
	if !ok {
		return Number{}, i, false
	}
	if r.Word(j) == "point" {
		return r.pointed(n, j+1)
	}
	if w := r.Word(i); w == "hundred" && (r.Word(i-1) == "for" || r.Word(i-1) == "to") {
		return Number{Val: exact.Int(n), Words: true, Bad: "ambiguous"}, j, true // "budget to hundred": a hundred, or two?
	}
	return Number{Val: exact.Int(n), Words: true}, j, true
}

// pointed reads the decimals of "two point three seven five".
func (r Reader) pointed(n, i int) (Number, int, bool) {
	digits := ""
	for {
		d, ok := scan.Ones[r.Word(i)]
		if r.Kind(i) == scan.Digits && len(r.Word(i)) < 4 && !strings.ContainsAny(r.Word(i), ".,") {
			digits += r.Word(i)
		} else if ok && d < 10 {
			digits += string(rune('0' + d))
		} else if t, ok := Tens[r.Word(i)]; ok && digits == "" { // "two point twenty five"
			digits = string(rune('0' + t/10))
			if u := scan.Ones[r.Word(r.Skip(i+1))]; u > 0 && u < 10 {
				digits, i = digits+string(rune('0'+u)), r.Skip(i+1)
			}
		} else if ok && digits == "" && d > 9 {
			digits = Itoa(d)
		} else {
			break
		}
		i++
	}
	v, ok := rat(Itoa(n) + "." + digits)
	if digits == "" || !ok {
		return Number{Bad: "point"}, i, true
	}
	return Number{Val: v, Words: true, Point: true, Frac: true}, i, true
}

// wordNumber reads "a hundred and forty four", "twelve hundred", "half a dozen", "forty-two".
func (r Reader) wordNumber(i int) (n, next int, ok bool) {
	if w := r.Word(i); (w == "a" || w == "an") && (r.Word(i+1) == "hundred" || r.Word(i+1) == "dozen" || r.Word(i+1) == "thousand") {
		i++
	}
	if r.Word(i) == "half" && r.Word(i+1) == "a" && r.Word(i+2) == "dozen" {
		return 6, i + 3, true
	}
	if r.Word(i) == "half" && r.Word(i+1) == "dozen" {
		return 6, i + 2, true
	}
	if j := i + 1; (r.Word(i) == "a" || r.Word(i) == "one") && r.Word(j) == "pair" && r.Word(j+1) == "of" {
		return 2, j + 2, true
	}
	n, j, ok := r.below100(i)
	if !ok {
		n, j = 1, i
	}
	switch r.Word(r.Skip(j)) {
	case "dozen":
		return 12 * n, r.Skip(j) + 1, true
	case "hundred":
		return r.rest(n*100, r.Skip(j)+1)
	case "thousand":
		return r.rest(n*1000, r.Skip(j)+1)
	}
	return n, j, ok
}

func (r Reader) rest(n, i int) (int, int, bool) {
	j := r.Skip(i)
	if r.Word(j) == "and" {
		j++
	}
	if m, k, ok := r.below100(j); ok {
		if r.Word(r.Skip(k)) == "hundred" && n >= 1000 {
			return r.rest(n+100*m, r.Skip(k)+1)
		}
		if _, _, isFraction := r.Denominator(r.Skip(k)); !isFraction || r.Word(j-1) == "and" && m >= 20 {
			return n + m, k, true
		}
	}
	return n, i, true
}

func (r Reader) below100(i int) (n, next int, ok bool) {
	if n, ok := scan.Ones[r.Word(i)]; ok {
		return n, i + 1, true
	}
	n, ok = Tens[r.Word(i)]
	if !ok {
		return 0, i, false
	}
	j := r.Skip(i + 1)
	u, one := scan.Ones[r.Word(j)]
	if !one || u == 0 || u > 9 {
		return n, i + 1, true
	}
	if _, _, isFraction := r.Denominator(r.Skip(j + 1)); isFraction && r.Skip(i+1) == i+1 {
		return n, i + 1, true // "sixty six eighths" is told apart by tensThenNumerator
	}
	return n + u, j + 1, true
}

// decimals reports whether digits in words, as they stand behind a point, begin at an atom.
func (r Reader) decimals(i int) bool {
	d, ok := scan.Ones[r.Word(i)]
	return ok && d < 10
}

// HalfOfNumber reports whether the "half" at i ends a number: "gap two and a half, wall 48" without its comma.
func (r Reader) HalfOfNumber(i int) bool {
	if r.Word(i) != "half" || r.Word(i-1) != "a" || r.Word(i-2) != "and" && r.Word(i-2) != "&" {
		return false
	}
	_, one := scan.Ones[r.Word(i-3)]
	_, ten := Tens[r.Word(i-3)]
	return one || ten || r.Kind(i-3) == scan.Digits
}

// Ordinals are the words of ordinals, with their numbers.
var Ordinals = map[string]int{"first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5, "sixth": 6, "seventh": 7, "eighth": 8, "ninth": 9, "tenth": 10, "eleventh": 11, "twelfth": 12}

// Twelve is the number twelve.
var Twelve = exact.Int(12)

// numbersPart reports whether the number at atom i tells which bay, post, opening or rail is spoken of: "bay one a sixteenth over 68",
// "opening two half an inch narrower". The fraction behind it is another figure.
func (r Reader) numbersPart(i int, n Number) bool {
	if r.Kind(i) == scan.Digits && (OfBay(r.Word(i-1)) || PartOf(r, i-1, "POST")) {
		return true
	}
	return Numbered[r.Word(i-1)] && n.Val.Less(exact.Int(10)) && r.Word(i-2) != "bottom"
}

// partThenHalf reports whether the fraction f at atom i is the number of a part and a half of an inch behind it: "bay one half an inch wider".
func (r Reader) partThenHalf(i int, f Number) bool {
	if !Numbered[r.Word(i-1)] || r.Word(i+1) != "half" || r.Word(i) == "a" || r.Word(i) == "an" {
		return false
	}
	return f.Bad != "" || r.Word(i+2) == "an" || r.Word(i+2) == "a"
}
