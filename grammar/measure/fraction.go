package measure

import (
	"strings"

	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// Denominators are the ordinals that end a fraction, one and several, and the names that 2 and 4 have beside them.
var Denominators = func() map[string]int {
	m := map[string]int{"half": 2, "halves": 2, "quarter": 4, "quarters": 4, "hundredth": 100, "hundredths": 100, "thousandth": 1000, "thousandths": 1000}
	for w, n := range Ordinals {
		if n > 2 {
			m[w], m[w+"s"] = n, n
		}
	}
	for w, n := range scan.Ones {
		if n > 12 {
			m[w+"th"], m[w+"ths"] = n, n
		}
	}
	for w, n := range Tens {
		stem := strings.TrimSuffix(w, "y")
		m[stem+"ieth"], m[stem+"ieths"] = n, n
	}
	return m
}()

// longDenominators are said in two words: "three thirty-seconds". Those of a tape, and a few like them, are known without
// their hyphen too.
var longDenominators = map[string]map[string]int{
	"thirty": {"second": 32, "seconds": 32, "sixth": 36, "sixths": 36},
	"sixty":  {"fourth": 64, "fourths": 64},
	"forty":  {"eighth": 48, "eighths": 48},
	"twenty": {"fourth": 24, "fourths": 24},
}

// tensThenNumerator reports whether a number ends in bare tens right before a counted fraction, as in "twenty five eighths",
// which is 20-5/8 or 25/8.
func (r Reader) tensThenNumerator(i, next int) bool {
	_, ten := Tens[r.Word(next-1)]
	_, one := scan.Ones[r.Word(r.Skip(next))]
	return ten && one && next > i
}

// fractionAfter reads the fraction of a mixed number: " 1/2", "-1/2", "½", " and a half", " & 1/2".
func (r Reader) fractionAfter(i int) (Number, int, bool) {
	j := i
	switch w := r.Word(i); {
	case w == "and" || w == "&":
		j++
		if f, k, ok := r.Fraction(j); ok {
			return f, k, true
		}
		return Number{}, i, false
	case w == "-" && r.Glued(i) && r.Glued(i+1):
		j++
	}
	return r.Fraction(j)
}

// Fraction reads "5/8", "½", "five eighths", "a quarter", "half", "3 8ths", "an 8th".
func (r Reader) Fraction(i int) (Number, int, bool) {
	if r.Kind(i) == scan.Vulgar {
		return Number{Val: exact.Must(r.Word(i)), Frac: true}, r.ths(i + 1), true
	}
	if r.Kind(i) == scan.Digits && r.Word(i+1) == "/" && r.Kind(i+2) == scan.Digits {
		return r.slashed(i)
	}
	k := 1
	j := i
	words := true
	switch w := r.Word(i); {
	case w == "a" || w == "an" || w == "one":
		j = r.Skip(i + 1)
		if wholly[r.Word(j)] {
			j++ // "a full eighth"
		}
	case w == "half" && (r.Word(i+1) == "dozen" || r.Word(i+1) == "a" && r.Word(i+2) == "dozen"):
		return Number{}, i, false
	case Denominators[w] == 2: // "half", and never "eighth" alone: that may be an ordinal
		return Number{Val: exact.New(1, 2), Frac: true, Words: true}, i + 1, true
	case r.partOfUnit(i):
		j = i
	default:
		n, next, ok := r.Whole(i)
		if !ok || n.Bad != "" || n.Point || n.Val.Less(exact.Int(1)) || !n.Val.Less(exact.Int(100)) {
			return Number{}, i, false
		}
		v, _ := n.Val.Int64()
		k, j, words = int(v), r.Skip(next), n.Words
	}
	d, next, ok := r.Denominator(j)
	if !ok {
		d, next, ok = r.soundPart(i, j, Number{Val: exact.Int(k)})
	}
	if !ok {
		return Number{}, i, false
	}
	f := Number{Val: exact.New(int64(k), int64(d)), Frac: true, Words: words}
	if words && k > 20 && k%10 != 0 && !(k < d && r.Skip(i+1) == i+2) {
		f.Bad = "ambiguous" // "twenty five eighths", but "twenty-five thirty-seconds"
	}
	if words && k >= 20 && k%10 == 0 && d < 10 && k >= d {
		f.Bad = "ambiguous" // "four twenty fifths"
	}
	if (d == 2 || d == 4) && k > 1 && next == j+1 && !strings.HasSuffix(r.Word(j), "s") && (d == 2 && r.Word(j) == "half" || k == 2 || k > 8) {
		f.Bad = "ambiguous" // "two half": half of two, or two and a half?
	}
	if k == 1 && (d == 3 || d > 4 && d < 13 && d != 8) && PartNext(r, next) {
		f.Bad = "ordinal" // "a third rail"
	}
	return f, next, true
}

// wholly are words that say of a part of an inch that nothing is missing from it.
var wholly = map[string]bool{"full": true, "whole": true, "good": true}

// partOfUnit reports whether a part of an inch or a foot is said without its article: "quarter inch", "eighth of an inch".
func (r Reader) partOfUnit(i int) bool {
	d := Denominators[r.Word(i)]
	if d != 4 && d != 8 && d != 16 || strings.HasSuffix(r.Word(i), "s") {
		return false
	}
	j := r.Skip(i + 1)
	if r.Word(j) == "of" && (r.Word(j+1) == "an" || r.Word(j+1) == "a") {
		j += 2
	}
	k, _, _, ok := r.Unit(j)
	return ok && (k == Inches || k == Feet) && len(r.Word(j)) > 1 && !r.isPart(i)
}

// isPart reports whether the word at i is counted by what stands before it: "three quarter inch".
func (r Reader) isPart(i int) bool {
	_, one := scan.Ones[r.Word(i-1)]
	return one || r.Kind(i-1) == scan.Digits || r.Word(i-1) == "-" && r.Glued(i)
}

// Denominator reads "eighths", "thirty-seconds", "16ths", "8th".
func (r Reader) Denominator(i int) (int, int, bool) {
	if d, ok := Denominators[r.Word(i)]; ok {
		return d, i + 1, true
	}
	if m := longDenominators[r.Word(i)]; m != nil {
		if d, ok := m[r.Word(r.Skip(i+1))]; ok {
			return d, r.Skip(i+1) + 1, true
		}
	}
	if ten, u := Tens[r.Word(i)], Ordinals[strings.TrimSuffix(r.Word(i+2), "s")]; ten > 0 && u > 0 && u < 10 && r.Skip(i+1) == i+2 {
		return ten + u, i + 3, true
	}
	if d, ok := Atoi(r.Word(i)); ok && r.Kind(i) == scan.Digits && r.Glued(i+1) && OrdinalEnds[r.Word(i+1)] && TapeDenominator[d] {
		return d, i + 2, true
	}
	return 0, i, false
}

// OrdinalEnds are the endings of ordinals written in digits.
var OrdinalEnds = map[string]bool{"th": true, "ths": true, "nd": true, "nds": true, "rd": true, "rds": true, "st": true}

// TapeDenominator are denominators that a tape or a builder has.
var TapeDenominator = map[int]bool{2: true, 3: true, 4: true, 5: true, 6: true, 8: true, 10: true, 12: true, 16: true, 32: true, 64: true}

// ths steps over the ending of "5/8ths".
func (r Reader) ths(i int) int {
	if r.Glued(i) && (OrdinalEnds[r.Word(i)] || r.Word(i) == "s" && !r.Glued(i+1)) {
		return i + 1
	}
	return i
}

// slashed reads "5/8". A date, a chain of slashes and a denominator of 0 are no number.
func (r Reader) slashed(i int) (Number, int, bool) {
	num, ok1 := rat(r.Word(i))
	den, ok2 := rat(r.Word(i + 2))
	next := r.ths(i + 3)
	n := Number{Frac: true}
	switch {
	case !ok1 || !ok2 || strings.ContainsAny(r.Word(i)+r.Word(i+2), ".,"):
		n.Bad = "fraction"
	case den.Sign() == 0:
		n.Bad = "zero"
	case r.Word(next) == "/" && r.Kind(next+1) == scan.Digits:
		n.Bad = "date"
		for r.Word(next) == "/" && r.Kind(next+1) == scan.Digits {
			next += 2
		}
	default:
		n.Val = num.Div(den)
	}
	return n, next, true
}
