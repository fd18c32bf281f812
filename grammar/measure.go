package grammar

import "saywright/solver/exact"

// unitKind is how a value was measured as it was said.
type unitKind uint8

// The units: none was said, or one of these.
const (
	bare unitKind = iota
	inches
	feet // said in feet, or feet and inches; the value is inches
	metric
	percent
	money
	pieces // "12 boards" never; "6 x" of a count said as such
)

// amount is a value with its unit, as lexed. Lengths in inches, except bare ones, whose unit is decided by what they measure.
type amount struct {
	number
	unit   unitKind
	size   string // a lumber size
	footer bool   // a length of lumber: "twelves", "12-footers"
	sound  bool   // taken from a word that sounds like a number
	times  bool   // "3 times", "1.5x"
	money2 bool   // two decimals, as prices are written
	minus  bool
	per    exact.Rat // inches in one of the unit it was said in; 0 where it has none
}

// inchWords are words for inches.
var inchWords = map[string]bool{"in": true, "inch": true, "inches": true, `"`: true}

// footWords are words for feet.
var footWords = map[string]bool{"ft": true, "foot": true, "feet": true, "'": true}

// yardWords are words for yards.
var yardWords = map[string]bool{"yard": true, "yards": true, "yd": true, "yds": true}

// footerWords are words for boards by their feet.
var footerWords = map[string]bool{"footer": true, "footers": true}

// lumberFeet are lengths of lumber as they are called at a yard.
var lumberFeet = map[string]int{"eights": 8, "tens": 10, "twelves": 12, "fourteens": 14, "sixteens": 16, "eighteens": 18, "twenties": 20, "twentyfours": 24}

// metricWords are the units of the metric system, each in inches.
var metricWords = map[string]exact.Rat{
	"mm": mm(1), "millimeter": mm(1), "millimeters": mm(1), "millimetre": mm(1), "millimetres": mm(1), "mil": mm(1), "mils": mm(1),
	"cm": mm(10), "centimeter": mm(10), "centimeters": mm(10), "centimetre": mm(10), "centimetres": mm(10),
	"m": mm(1000), "meter": mm(1000), "meters": mm(1000), "metre": mm(1000), "metres": mm(1000),
}

// mm is a length in millimeters, in inches.
func mm(n int) exact.Rat { return exact.New(int64(n)*10, 254) }

// afterIn are words after which "in" is no inch: "6 in each bay".
var afterIn = map[string]bool{
	"the": true, "each": true, "every": true, "all": true, "a": true, "an": true, "between": true, "bay": true, "bays": true, "this": true, "that": true,
	"any": true, "total": true, "both": true, "place": true, "front": true, "metric": true, "my": true, "it": true, "there": true, "here": true, "section": true,
	"feet": true, "inches": true, "mm": true, "millimeters": true, "millimetres": true, "2x6": true, "stock": true, "one": true, "two": true, "first": true,
	"second": true, "third": true, "rest": true, "others": true, "either": true, "his": true, "her": true, "their": true, "our": true, "your": true, "order": true, "from": true,
}

// numbered are parts that are told by number.
var numbered = map[string]bool{"bay": true, "rail": true, "post": true, "opening": true, "section": true, "board": true, "panel": true}

// unit reads a unit at i: its kind, how many inches it is, and where it ends.
func (r reader) unit(i int) (k unitKind, size exact.Rat, next int, ok bool) {
	w := r.word(i)
	switch {
	case w == "in" && !r.glued(i) && (afterIn[r.word(i+1)] && !r.glued(i+1) || r.sizeAt(i+1)):
		return 0, size, i, false
	case w == "'" && r.word(i+1) == "'" && r.glued(i+1):
		return inches, exact.Int(1), i + 2, true
	case inchWords[w]:
		return inches, exact.Int(1), r.dot(i + 1), true
	case w == "'" && r.word(i+1) == "s" && r.glued(i+1) && (numbered[r.word(i-2)] || r.vulgarBefore(i)):
		return 0, size, i, false // "bay 1's 62", "68 3/4's what it measures"
	case footWords[w]:
		return feet, exact.Int(12), r.dot(i + 1), true
	case yardWords[w]:
		return feet, exact.Int(36), r.dot(i + 1), true
	}
	if s, ok := metricWords[w]; ok {
		return metric, s, r.dot(i + 1), true
	}
	return 0, size, i, false
}

// dot steps over the point of "in." where more of the sentence follows.
func (r reader) dot(i int) int {
	if r.word(i) == "." && r.glued(i) && i+1 < len(r.atoms) && r.kind(i-1) == aWord && len(r.word(i-1)) < 4 && !r.endsSentence(i) {
		return i + 1
	}
	return i
}

// endsSentence reports whether the point behind a unit ends a sentence: no sign of the metric system has a point of its own, and behind
// "in." a new sentence may begin.
func (r reader) endsSentence(i int) bool {
	if _, ok := metricWords[r.word(i-1)]; ok {
		return true
	}
	next := r.word(i + 1)
	return beginsSentence[next] || (next == "min" || next == "max") && r.kind(i+2) == aWord && vocab().known[r.word(i+2)]
}

// beginsSentence are words that begin a sentence behind "in." or "ft.", and go on with no length.
var beginsSentence = wordSet(`
	what how where why which when who can could would will should do does did is are i we he she they it that this his her their my our the then so now go make set put keep use give tell show
	forget drop undo save open compare let please thanks also no yes ok okay suppose try say no not but
`)

// sizeAt reports whether a lumber size stands at an atom.
func (r reader) sizeAt(i int) bool {
	_, _, ok := r.size(i)
	return ok
}

// length reads a value with its unit at i: "12 foot 6", "an inch and three quarters", "1.2 m", "62,5 mm", "10%", "$9.25".
func (r reader) length(i int) (amount, int, bool) {
	if r.word(i) == "$" || r.word(i) == "€" || r.word(i) == "£" {
		n, j, ok := r.mixed(i + 1)
		return amount{number: n, unit: money}, r.dollarWord(j), ok
	}
	if w := r.word(i); (w == "a" || w == "one") && (r.word(i+1) == "dollar" || r.word(i+1) == "buck") {
		return r.cash(amount{number: wordInt(1)}, i+1)
	}
	if n, ok := lumberFeet[r.word(i)]; ok {
		return amount{number: wordInt(12 * n), unit: feet, footer: true, per: exact.Int(12)}, i + 1, true
	}
	if a, j, ok := r.unitFirst(i); ok {
		return a, j, true
	}
	n, j, ok := r.mixed(i)
	if !ok {
		return amount{}, i, false
	}
	a := amount{number: n, money2: r.twoDecimals(i, j)}
	if n.bad != "" {
		return a, r.anyUnit(j), true
	}
	return r.withUnit(a, j)
}

func (r reader) twoDecimals(i, j int) bool {
	w := r.word(i)
	return j == i+1 && len(w) > 3 && w[len(w)-3] == '.'
}

func (r reader) anyUnit(i int) int {
	if _, _, j, ok := r.unit(r.skip(i)); ok {
		return j
	}
	return i
}

// withUnit reads what follows a number: its unit, and smaller parts of it.
func (r reader) withUnit(a amount, i int) (amount, int, bool) {
	j := r.skip(i)
	if r.word(j) == "of" && (r.word(j+1) == "a" || r.word(j+1) == "an") && a.frac {
		if _, _, _, ok := r.unit(j + 2); ok {
			j += 2
		}
	} else if r.word(j-1) == "half" && (r.word(j) == "a" || r.word(j) == "an") {
		if _, _, _, ok := r.unit(j + 1); ok {
			j++ // "half an inch", but "an eighth a foot" is a fall
		}
	}
	switch w := r.word(j); {
	case w == "%" || w == "percent" || w == "pct":
		a.unit = percent
		return a, r.dot(j + 1), true
	case w == "per" && (r.word(j+1) == "cent" || r.word(j+1) == "cents"):
		a.unit = percent
		return a, j + 2, true
	case moneyWords[w]:
		return r.cash(a, j)
	case footerWords[w]:
		a.val, a.unit, a.footer, a.per = a.val.Mul(exact.Int(12)), feet, true, exact.Int(12)
		return a, j + 1, true
	case w == "times" || w == "x" && !r.glued(j+1) && r.glued(j) && a.point:
		a.times = true
		return a, j + 1, true
	}
	k, size, next, ok := r.unit(j)
	if !ok {
		return r.lumberLength(a, i)
	}
	a.val, a.unit, a.plain, a.per = a.val.Mul(size), k, "", size
	if r.glued(next) && r.word(next) == "-" && r.glued(next+1) {
		if f, l, ok := r.inchPart(a, next+1); ok {
			return f, l, true
		}
	}
	if f, l, ok := r.smaller(a, size, next); ok {
		return f, l, true
	}
	return a, next, true
}

// vulgarBefore reports whether a fraction stands before an atom: no length of lumber.
func (r reader) vulgarBefore(i int) bool {
	return i > 2 && (r.atoms[i-1].kind == aVulgar || r.word(i-2) == "/")
}

// lumberLength reads "12s", "16's": lengths of lumber by their feet.
func (r reader) lumberLength(a amount, i int) (amount, int, bool) {
	j := i
	if r.word(j) == "'" && r.glued(j) {
		j++
	}
	if r.glued(i) && r.word(j) == "s" && r.glued(j) && !a.frac && exact.Int(3).Less(a.val) && a.val.Less(exact.Int(41)) {
		a.val, a.unit, a.footer, a.per = a.val.Mul(exact.Int(12)), feet, true, exact.Int(12)
		return a, j + 1, true
	}
	if r.glued(i) && r.word(j) == "s" && r.glued(j) && a.frac && inMeters(a.val) {
		a.val, a.unit, a.footer, a.per = a.val.Mul(mm(1000)), metric, true, mm(1000)
		return a, j + 1, true // "2.4s"
	}
	return a, i, true
}

// inMeters reports whether a figure can be the length in meters of lumber on sale: tenths from 1.5 to 8.
func inMeters(v exact.Rat) bool {
	return v.Mul(exact.Int(10)).IsInt() && exact.New(14, 10).Less(v) && v.Less(exact.New(81, 10))
}

// smaller reads the smaller part of a length: inches after feet, a fraction after inches, centimeters after meters.
func (r reader) smaller(a amount, size exact.Rat, i int) (amount, int, bool) {
	switch {
	case a.unit == feet && size.Eq(exact.Int(12)) && !a.frac:
		if f, j, ok := r.inchPart(a, i); ok {
			return f, j, true
		}
	case a.unit == metric && size.Eq(mm(1000)) && !a.frac:
		if f, j, ok := r.centimeters(a, i); ok {
			return f, j, true
		}
	}
	if a.frac || r.word(i) != "and" && r.word(i) != "&" {
		return a, i, false
	}
	f, j, ok := r.fraction(i + 1)
	if !ok || f.bad != "" {
		return a, i, false
	}
	if _, _, _, own := r.unit(r.skip(j)); own || r.word(r.skip(j)) == "of" && (r.word(r.skip(j)+1) == "a" || r.word(r.skip(j)+1) == "an") {
		g, k, ok := r.withUnit(amount{number: f}, j) // "three foot and half an inch"
		if ok && g.unit == inches && a.unit == feet {
			a.val, a.frac = a.val.Add(g.val), true
			return a, k, true
		}
		if g.unit == a.unit && a.unit != feet { // "an inch and a quarter inch"
			a.val, a.frac = a.val.Add(g.val), true
			return a, k, true
		}
		return a, i, false
	}
	if a.unit == feet && !f.words {
		a.bad = "ambiguous" // "12 foot and 5/8"
	}
	a.val, a.frac = a.val.Add(f.val.Mul(size)), true
	return a, j, true
}

// inchPart reads the inches after feet: "12 foot 6", `12' 6-1/2"`, "five foot eleven and a quarter", "3 feet and 6 inches".
func (r reader) inchPart(a amount, i int) (amount, int, bool) {
	j := i
	if r.word(j) == "and" || r.word(j) == "," || r.word(j) == "-" {
		j++
	}
	if r.sizeAt(j) {
		return a, i, false
	}
	n, k, ok := r.mixed(j)
	sound := false
	if !ok || n.bad != "" || n.val.Sign() == 0 && r.word(i) != "-" && !r.glued(j) || !n.val.Less(exact.Int(12)) {
		return a, i, false
	}
	u, _, next, own := r.unit(r.skip(k))
	if own && u != inches {
		return a, i, false
	}
	if !own {
		if r.word(i) == "and" && (!n.frac || n.val.Less(exact.Int(1))) || r.word(i) == "," || r.countFollows(k, n) || moneyWords[r.word(k)] || r.word(k) == "%" || r.word(k) == "percent" || footerWords[r.word(r.skip(k))] {
			return a, i, false
		}
		if n.frac && n.val.Less(exact.Int(1)) && n.words && r.word(i) != "and" {
			return a, i, false
		}
		next = k
	}
	a.val, a.frac, a.sound = a.val.Add(n.val), n.frac, sound
	if !own && r.word(next) == "and" || own && (r.word(next) == "and" || r.word(next) == "&") {
		if f, l, ok := r.fraction(next + 1); ok && !n.frac && f.bad == "" && f.val.Less(exact.Int(1)) {
			if _, _, _, unitAfter := r.unit(l); !unitAfter || own {
				a.val, a.frac, next = a.val.Add(f.val), true, r.anyUnit(l)
			}
		}
	}
	return a, next, true
}

// countFollows reports whether a bare number belongs to what is counted next rather than to the feet before it: "wall 4 foot 6 rails".
func (r reader) countFollows(i int, n number) bool {
	return !n.frac && countNouns[r.word(i)] || r.word(i) == "by" || r.word(i) == "x"
}

// centimeters reads "a metre twenty", "1 m 20", "two metres forty".
func (r reader) centimeters(a amount, i int) (amount, int, bool) {
	if w := r.word(i); w == "oh" || w == "o" || w == "zero" || w == "nought" {
		if v, ok := units[r.word(i+1)]; ok && v > 0 && v < 10 && !r.countFollows(i+2, wordInt(v)) {
			a.val = a.val.Add(exact.Int(v).Mul(mm(10))) // "a metre oh five"
			return a, i + 2, true
		}
	}
	n, j, ok := r.whole(i)
	if !ok || n.point || n.bad != "" || r.countFollows(j, n) {
		return a, i, false
	}
	if u, size, k, own := r.unit(j); own {
		if u != metric || !size.Less(mm(1000)) {
			return a, i, false
		}
		a.val = a.val.Add(n.val.Mul(size))
		return a, k, true
	}
	switch v, _ := n.val.Int64(); {
	case v >= 10 && v < 100:
		a.val = a.val.Add(n.val.Mul(mm(10)))
	case v >= 100 && v < 1000:
		a.val = a.val.Add(n.val.Mul(mm(1)))
	default:
		a.bad = "ambiguous" // "a metre five" is 1.05 or 1.5
	}
	return a, j, true
}

// unitFirst reads "an inch and three quarters", "a foot and a half", "inch and a quarter", "a yard", "a metre twenty".
func (r reader) unitFirst(i int) (amount, int, bool) {
	j := i
	if w := r.word(i); w == "a" || w == "an" {
		j++
	} else if r.kind(i) != aWord || r.glued(i) && r.kind(i-1) == aDigits {
		return amount{}, i, false
	}
	if w := r.word(j); w == "full" || w == "whole" || w == "good" && j > i {
		j++
	}
	k, size, next, ok := r.unit(j)
	if !ok || r.kind(j) != aWord || len(r.word(j)) < 3 && j == i {
		return amount{}, i, false
	}
	a := amount{number: number{val: size, words: true}, unit: k, per: size}
	if f, l, ok := r.smaller(a, size, next); ok {
		return f, l, true
	}
	if j == i {
		return amount{}, i, false // a unit alone is no length
	}
	return a, next, true
}
