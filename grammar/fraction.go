package grammar

import (
	"strings"

	"saywright/solver/exact"
)

// denominators are the ordinals that end a fraction, one and several, and the names that 2 and 4 have beside them.
var denominators = func() map[string]int {
	m := map[string]int{"half": 2, "halves": 2, "quarter": 4, "quarters": 4, "hundredth": 100, "hundredths": 100, "thousandth": 1000, "thousandths": 1000}
	for w, n := range ordinals {
		if n > 2 {
			m[w], m[w+"s"] = n, n
		}
	}
	for w, n := range units {
		if n > 12 {
			m[w+"th"], m[w+"ths"] = n, n
		}
	}
	for w, n := range tens {
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
		if wholly[r.word(j)] {
			j++ // "a full eighth"
		}
	case w == "half" && (r.word(i+1) == "dozen" || r.word(i+1) == "a" && r.word(i+2) == "dozen"):
		return number{}, i, false
	case denominators[w] == 2: // "half", and never "eighth" alone: that may be an ordinal
		return number{val: exact.New(1, 2), frac: true, words: true}, i + 1, true
	case r.partOfUnit(i):
		j = i
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
	if words && k > 20 && k%10 != 0 && !(k < d && r.skip(i+1) == i+2) {
		f.bad = "ambiguous" // "twenty five eighths", but "twenty-five thirty-seconds"
	}
	if words && k >= 20 && k%10 == 0 && d < 10 && k >= d {
		f.bad = "ambiguous" // "four twenty fifths"
	}
	if k == 1 && (d == 3 || d > 4 && d < 13 && d != 8) && partNext(r, next) {
		f.bad = "ordinal" // "a third rail"
	}
	return f, next, true
}

// wholly are words that say of a part of an inch that nothing is missing from it.
var wholly = map[string]bool{"full": true, "whole": true, "good": true}

// partOfUnit reports whether a part of an inch or a foot is said without its article: "quarter inch", "eighth of an inch".
func (r reader) partOfUnit(i int) bool {
	d := denominators[r.word(i)]
	if d != 4 && d != 8 && d != 16 || strings.HasSuffix(r.word(i), "s") {
		return false
	}
	j := r.skip(i + 1)
	if r.word(j) == "of" && (r.word(j+1) == "an" || r.word(j+1) == "a") {
		j += 2
	}
	k, _, _, ok := r.unit(j)
	return ok && (k == inches || k == feet) && len(r.word(j)) > 1 && !r.isPart(i)
}

// isPart reports whether the word at i is counted by what stands before it: "three quarter inch".
func (r reader) isPart(i int) bool {
	_, one := units[r.word(i-1)]
	return one || r.kind(i-1) == aDigits || r.word(i-1) == "-" && r.glued(i)
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
	if ten, u := tens[r.word(i)], ordinals[strings.TrimSuffix(r.word(i+2), "s")]; ten > 0 && u > 0 && u < 10 && r.skip(i+1) == i+2 {
		return ten + u, i + 3, true
	}
	if d, ok := atoi(r.word(i)); ok && r.kind(i) == aDigits && r.glued(i+1) && ordinalEnds[r.word(i+1)] && tapeDenominator[d] {
		return d, i + 2, true
	}
	return 0, i, false
}

// ordinalEnds are the endings of ordinals written in digits.
var ordinalEnds = map[string]bool{"th": true, "ths": true, "nd": true, "nds": true, "rd": true, "rds": true, "st": true}

// tapeDenominator are denominators that a tape or a builder has.
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
