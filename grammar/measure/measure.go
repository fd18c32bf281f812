package measure

import (
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// UnitKind is how a value was measured as it was said.
type UnitKind uint8

// The units: none was said, or one of these.
const (
	Bare UnitKind = iota
	Inches
	Feet // said in feet, or feet and inches; the value is inches
	Metric
	Percent
	Money
	pieces // "12 boards" never; "6 x" of a count said as such
)

// Amount is a value with its unit, as lexed. Lengths in inches, except bare ones, whose unit is decided by what they measure.
type Amount struct {
	Number
	Unit   UnitKind
	Size   string // a lumber size
	Footer bool   // a length of lumber: "twelves", "12-footers"
	Sound  bool   // taken from a word that sounds like a number
	Times  bool   // "3 times", "1.5x"
	Money2 bool   // two decimals, as prices are written
	Minus  bool
	Per    exact.Rat // inches in one of the unit it was said in; 0 where it has none
}

// InchWords are words for inches.
var InchWords = map[string]bool{"in": true, "inch": true, "inches": true, `"`: true}

// FootWords are words for feet.
var FootWords = map[string]bool{"ft": true, "foot": true, "feet": true, "'": true}

// YardWords are words for yards.
var YardWords = map[string]bool{"yard": true, "yards": true, "yd": true, "yds": true}

// FooterWords are words for boards by their feet.
var FooterWords = map[string]bool{"footer": true, "footers": true}

// LumberFeet are lengths of lumber as they are called at a yard.
var LumberFeet = map[string]int{"eights": 8, "tens": 10, "twelves": 12, "fourteens": 14, "sixteens": 16, "eighteens": 18, "twenties": 20, "twentyfours": 24}

// MetricWords are the units of the metric system, each in inches.
var MetricWords = map[string]exact.Rat{
	"mm": Mm(1), "millimeter": Mm(1), "millimeters": Mm(1), "millimetre": Mm(1), "millimetres": Mm(1), "mil": Mm(1), "mils": Mm(1),
	"cm": Mm(10), "centimeter": Mm(10), "centimeters": Mm(10), "centimetre": Mm(10), "centimetres": Mm(10),
	"m": Mm(1000), "meter": Mm(1000), "meters": Mm(1000), "metre": Mm(1000), "metres": Mm(1000),
}

// Mm is a length in millimeters, in inches.
func Mm(n int) exact.Rat { return exact.New(int64(n)*10, 254) }

// afterIn are words after which "in" is no inch: "6 in each bay".
var afterIn = map[string]bool{
	"the": true, "each": true, "every": true, "all": true, "a": true, "an": true, "between": true, "bay": true, "bays": true, "this": true, "that": true,
	"any": true, "total": true, "both": true, "place": true, "front": true, "metric": true, "my": true, "it": true, "there": true, "here": true, "section": true,
	"feet": true, "inches": true, "mm": true, "millimeters": true, "millimetres": true, "2x6": true, "stock": true, "one": true, "two": true, "first": true,
	"second": true, "third": true, "rest": true, "others": true, "either": true, "his": true, "her": true, "their": true, "our": true, "your": true, "order": true, "from": true,
}

// Numbered are parts that are told by number.
var Numbered = map[string]bool{"bay": true, "rail": true, "post": true, "opening": true, "section": true, "board": true, "panel": true}

// Unit reads a unit at i: its kind, how many inches it is, and where it ends.
func (r Reader) Unit(i int) (k UnitKind, size exact.Rat, next int, ok bool) {
	w := r.Word(i)
	switch {
	case w == "in" && !r.Glued(i) && (afterIn[r.Word(i+1)] && !r.Glued(i+1) || r.SizeAt(i+1)):
		return 0, size, i, false
	case w == "'" && r.Word(i+1) == "'" && r.Glued(i+1):
		return Inches, exact.Int(1), i + 2, true
	case InchWords[w]:
		return Inches, exact.Int(1), r.dot(i + 1), true
	case w == "'" && r.Word(i+1) == "s" && r.Glued(i+1) && (Numbered[r.Word(i-2)] || r.vulgarBefore(i)):
		return 0, size, i, false // "bay 1's 62", "68 3/4's what it measures"
	case FootWords[w]:
		return Feet, exact.Int(12), r.dot(i + 1), true
	case YardWords[w]:
		return Feet, exact.Int(36), r.dot(i + 1), true
	}
	if s, ok := MetricWords[w]; ok {
		return Metric, s, r.dot(i + 1), true
	}
	return 0, size, i, false
}

// dot steps over the point of "in." where more of the sentence follows.
func (r Reader) dot(i int) int {
	if r.Word(i) == "." && r.Glued(i) && i+1 < len(r.Atoms) && r.Kind(i-1) == scan.Word && len(r.Word(i-1)) < 4 && !r.endsSentence(i) {
		return i + 1
	}
	return i
}

// EndsSentence reports whether the point behind a unit ends a sentence: no sign of the metric system has a point of its own, and behind
// "in." a new sentence may begin.
func (r Reader) endsSentence(i int) bool {
	if _, ok := MetricWords[r.Word(i-1)]; ok {
		return true
	}
	next := r.Word(i + 1)
	return beginsSentence[next] || (next == "min" || next == "max") && r.Kind(i+2) == scan.Word && lexicon.Vocab().Known[r.Word(i+2)]
}

// beginsSentence are words that begin a sentence behind "in." or "ft.", and go on with no length.
var beginsSentence = scan.WordSet(`
	what how where why which when who can could would will should do does did is are i we he she they it that this his her their my our the then so now go make set put keep use give tell show
	forget drop undo save open compare let please thanks also no yes ok okay suppose try say no not but
`)

// SizeAt reports whether a lumber size stands at an atom.
func (r Reader) SizeAt(i int) bool {
	_, _, ok := r.Size(i)
	return ok
}

// Length reads a value with its unit at i: "12 foot 6", "an inch and three quarters", "1.2 m", "62,5 mm", "10%", "$9.25".
func (r Reader) Length(i int) (Amount, int, bool) {
	if r.Word(i) == "$" || r.Word(i) == "€" || r.Word(i) == "£" {
		n, j, ok := r.Mixed(i + 1)
		return Amount{Number: n, Unit: Money}, r.dollarWord(j), ok
	}
	if w := r.Word(i); (w == "a" || w == "one") && (r.Word(i+1) == "dollar" || r.Word(i+1) == "buck") {
		return r.cash(Amount{Number: WordInt(1)}, i+1)
	}
	if n, ok := LumberFeet[r.Word(i)]; ok {
		return Amount{Number: WordInt(12 * n), Unit: Feet, Footer: true, Per: exact.Int(12)}, i + 1, true
	}
	if a, j, ok := r.unitFirst(i); ok {
		return a, j, true
	}
	n, j, ok := r.Mixed(i)
	if !ok {
		return Amount{}, i, false
	}
	a := Amount{Number: n, Money2: r.twoDecimals(i, j)}
	if n.Bad != "" {
		return a, r.anyUnit(j), true
	}
	return r.WithUnit(a, j)
}

func (r Reader) twoDecimals(i, j int) bool {
	w := r.Word(i)
	return j == i+1 && len(w) > 3 && w[len(w)-3] == '.'
}

func (r Reader) anyUnit(i int) int {
	if _, _, j, ok := r.Unit(r.Skip(i)); ok {
		return j
	}
	return i
}

// WithUnit reads what follows a number: its unit, and smaller parts of it.
func (r Reader) WithUnit(a Amount, i int) (Amount, int, bool) {
	j := r.Skip(i)
	if r.Word(j) == "of" && (r.Word(j+1) == "a" || r.Word(j+1) == "an") && a.Frac {
		if _, _, _, ok := r.Unit(j + 2); ok {
			j += 2
		}
	} else if r.Word(j-1) == "half" && (r.Word(j) == "a" || r.Word(j) == "an") {
		if _, _, _, ok := r.Unit(j + 1); ok {
			j++ // "half an inch", but "an eighth a foot" is a fall
		}
	}
	switch w := r.Word(j); {
	case w == "%" || w == "percent" || w == "pct":
		a.Unit = Percent
		return a, r.dot(j + 1), true
	case w == "per" && (r.Word(j+1) == "cent" || r.Word(j+1) == "cents"):
		a.Unit = Percent
		return a, j + 2, true
	case MoneyWords[w]:
		return r.cash(a, j)
	case FooterWords[w]:
		a.Val, a.Unit, a.Footer, a.Per = a.Val.Mul(exact.Int(12)), Feet, true, exact.Int(12)
		return a, j + 1, true
	case w == "times" || w == "x" && !r.Glued(j+1) && r.Glued(j) && a.Point:
		a.Times = true
		return a, j + 1, true
	}
	k, size, next, ok := r.Unit(j)
	if !ok {
		return r.lumberLength(a, i)
	}
	a.Val, a.Unit, a.Plain, a.Per = a.Val.Mul(size), k, "", size
	if r.Glued(next) && r.Word(next) == "-" && r.Glued(next+1) {
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
func (r Reader) vulgarBefore(i int) bool {
	return i > 2 && (r.Atoms[i-1].Kind == scan.Vulgar || r.Word(i-2) == "/")
}

// lumberLength reads "12s", "16's": lengths of lumber by their feet.
func (r Reader) lumberLength(a Amount, i int) (Amount, int, bool) {
	j := i
	if r.Word(j) == "'" && r.Glued(j) {
		j++
	}
	if r.Glued(i) && r.Word(j) == "s" && r.Glued(j) && !a.Frac && exact.Int(3).Less(a.Val) && a.Val.Less(exact.Int(41)) {
		a.Val, a.Unit, a.Footer, a.Per = a.Val.Mul(exact.Int(12)), Feet, true, exact.Int(12)
		return a, j + 1, true
	}
	if r.Glued(i) && r.Word(j) == "s" && r.Glued(j) && a.Frac && InMeters(a.Val) {
		a.Val, a.Unit, a.Footer, a.Per = a.Val.Mul(Mm(1000)), Metric, true, Mm(1000)
		return a, j + 1, true // "2.4s"
	}
	return a, i, true
}

// InMeters reports whether a figure can be the length in meters of lumber on sale: tenths from 1.5 to 8.
func InMeters(v exact.Rat) bool {
	return v.Mul(exact.Int(10)).IsInt() && exact.New(14, 10).Less(v) && v.Less(exact.New(81, 10))
}

// smaller reads the smaller part of a length: inches after feet, a fraction after inches, centimeters after meters.
func (r Reader) smaller(a Amount, size exact.Rat, i int) (Amount, int, bool) {
	switch {
	case a.Unit == Feet && size.Eq(exact.Int(12)) && !a.Frac:
		if f, j, ok := r.inchPart(a, i); ok {
			return f, j, true
		}
	case a.Unit == Metric && size.Eq(Mm(1000)) && !a.Frac:
		if f, j, ok := r.centimeters(a, i); ok {
			return f, j, true
		}
	}
	if a.Frac || r.Word(i) != "and" && r.Word(i) != "&" {
		return a, i, false
	}
	f, j, ok := r.Fraction(i + 1)
	if !ok || f.Bad != "" {
		return a, i, false
	}
	if _, _, _, own := r.Unit(r.Skip(j)); own || r.Word(r.Skip(j)) == "of" && (r.Word(r.Skip(j)+1) == "a" || r.Word(r.Skip(j)+1) == "an") {
		g, k, ok := r.WithUnit(Amount{Number: f}, j) // "three foot and half an inch"
		if ok && g.Unit == Inches && a.Unit == Feet {
			a.Val, a.Frac = a.Val.Add(g.Val), true
			return a, k, true
		}
		if g.Unit == a.Unit && a.Unit != Feet { // "an inch and a quarter inch"
			a.Val, a.Frac = a.Val.Add(g.Val), true
			return a, k, true
		}
		return a, i, false
	}
	if a.Unit == Feet && (!f.Words || size.Eq(Twelve) && !f.Val.Mul(Twelve).IsInt() || size.Eq(Twelve) && !a.Val.Eq(Twelve) && f.Val.Mul(exact.Int(4)).IsInt() && !f.Val.Eq(exact.New(1, 2))) {
		a.Bad = "ambiguous" // "12 foot and 5/8", "five feet and a sixteenth": a part of a foot, or of an inch?
	}
	a.Val, a.Frac = a.Val.Add(f.Val.Mul(size)), true
	return a, j, true
}

// inchPart reads the inches after feet: "12 foot 6", `12' 6-1/2"`, "five foot eleven and a quarter", "3 feet and 6 inches".
func (r Reader) inchPart(a Amount, i int) (Amount, int, bool) {
	j := i
	if r.Word(j) == "and" || r.Word(j) == "," || r.Word(j) == "-" {
		j++
	}
	if r.SizeAt(j) {
		return a, i, false
	}
	n, k, ok := r.Mixed(j)
	sound := false
	if !ok || n.Bad != "" || n.Val.Sign() == 0 && r.Word(i) != "-" && !r.Glued(j) || !n.Val.Less(exact.Int(12)) {
		return a, i, false
	}
	u, _, next, own := r.Unit(r.Skip(k))
	if own && u != Inches {
		return a, i, false
	}
	if !own {
		if r.Word(i) == "and" && (!n.Frac || n.Val.Less(exact.Int(1))) || r.Word(i) == "," || r.countFollows(k, n) || MoneyWords[r.Word(k)] || r.Word(k) == "%" || r.Word(k) == "percent" || FooterWords[r.Word(r.Skip(k))] {
			return a, i, false
		}
		if n.Frac && n.Val.Less(exact.Int(1)) && n.Words && r.Word(i) != "and" {
			return a, i, false
		}
		next = k
	}
	a.Val, a.Frac, a.Sound = a.Val.Add(n.Val), n.Frac, sound
	if !own && r.Word(next) == "and" || own && (r.Word(next) == "and" || r.Word(next) == "&") {
		if f, l, ok := r.Fraction(next + 1); ok && !n.Frac && f.Bad == "" && f.Val.Less(exact.Int(1)) {
			if _, _, _, unitAfter := r.Unit(l); !unitAfter || own {
				a.Val, a.Frac, next = a.Val.Add(f.Val), true, r.anyUnit(l)
			}
		}
	}
	return a, next, true
}

// countFollows reports whether a bare number belongs to what is counted next rather than to the feet before it: "wall 4 foot 6 rails".
func (r Reader) countFollows(i int, n Number) bool {
	return !n.Frac && CountNouns[r.Word(i)] || r.Word(i) == "by" || r.Word(i) == "x"
}

// centimeters reads "a metre twenty", "1 m 20", "two metres forty".
func (r Reader) centimeters(a Amount, i int) (Amount, int, bool) {
	if w := r.Word(i); w == "oh" || w == "o" || w == "zero" || w == "nought" {
		if v, ok := scan.Ones[r.Word(i+1)]; ok && v > 0 && v < 10 && !r.countFollows(i+2, WordInt(v)) {
			a.Val = a.Val.Add(exact.Int(v).Mul(Mm(10))) // "a metre oh five"
			return a, i + 2, true
		}
	}
	n, j, ok := r.Whole(i)
	if !ok || n.Point || n.Bad != "" || r.countFollows(j, n) {
		return a, i, false
	}
	if u, size, k, own := r.Unit(j); own {
		if u != Metric || !size.Less(Mm(1000)) {
			return a, i, false
		}
		a.Val = a.Val.Add(n.Val.Mul(size))
		return a, k, true
	}
	switch v, _ := n.Val.Int64(); {
	case v >= 10 && v < 100:
		a.Val = a.Val.Add(n.Val.Mul(Mm(10)))
	case v >= 100 && v < 1000:
		a.Val = a.Val.Add(n.Val.Mul(Mm(1)))
	default:
		a.Bad = "ambiguous" // "a metre five" is 1.05 or 1.5
	}
	return a, j, true
}

// unitFirst reads "an inch and three quarters", "a foot and a half", "inch and a quarter", "a yard", "a metre twenty".
func (r Reader) unitFirst(i int) (Amount, int, bool) {
	j := i
	if w := r.Word(i); w == "a" || w == "an" {
		j++
	} else if r.Kind(i) != scan.Word || r.Glued(i) && r.Kind(i-1) == scan.Digits {
		return Amount{}, i, false
	}
	if w := r.Word(j); w == "full" || w == "whole" || w == "good" && j > i {
		j++
	}
	k, size, next, ok := r.Unit(j)
	if !ok || r.Kind(j) != scan.Word || len(r.Word(j)) < 3 && j == i {
		return Amount{}, i, false
	}
	a := Amount{Number: Number{Val: size, Words: true}, Unit: k, Per: size}
	if f, l, ok := r.smaller(a, size, next); ok {
		return f, l, true
	}
	if j == i {
		return Amount{}, i, false // a unit alone is no length
	}
	return a, next, true
}
