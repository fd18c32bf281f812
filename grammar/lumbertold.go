package grammar

import (
	"strconv"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// moneyEnd is the atom behind a sum that can be nothing but money: "$8", "8.60", "eight sixty", "nine dollars and ten cents".
func moneyEnd(atoms []atom, i int) int {
	from := i
	if atoms[i].text == "$" {
		if i++; i < len(atoms) && atoms[i].kind == aDigits {
			return i + 1
		}
		return from
	}
	next := i
	if atoms[i].kind == aDigits {
		if next++; centsWritten(atoms[i].text) {
			if next < len(atoms) && coinNames[atoms[next].text] {
				next++
			}
			if next < len(atoms) && (measuredIn(atoms[next].text) || atoms[next].text == "x" || atoms[next].text == "by") {
				return from
			}
			return next
		}
	} else if _, next = spokenUpTo99(atoms, i); next == i {
		return from
	}
	named := next < len(atoms) && coinNames[atoms[next].text]
	if named {
		next++
	} else if atoms[i].kind == aDigits {
		return from
	}
	rest := next
	if rest < len(atoms) && named && atoms[rest].text == "and" {
		rest++
	}
	cents, last := spokenUpTo99(atoms, rest)
	if last == rest && named && rest < len(atoms) && atoms[rest].kind == aDigits && len(atoms[rest].text) == 2 {
		cents, last = 10, rest+1
	}
	if last < len(atoms) && (atoms[last].text == "cents" || atoms[last].text == "cent") {
		return last + 1
	}
	if rest > next && last < len(atoms) && (atoms[last].text == "is" || atoms[last].text == "are") {
		cents = 0 // "six dollars and twelves are nine"
	}
	if cents >= 10 && (last == len(atoms) || atoms[last].kind != aDigits && atoms[last].text != "-" && atoms[last].text != "x" && atoms[last].text != "by" && atoms[last].text != "s" && !measuredIn(atoms[last].text) && !spelledNumber(atoms[last].text)) {
		return last
	}
	if named {
		return next
	}
	return from
}

// centsTold reads a sum that can be nothing but money, in cents.
func centsTold(atoms []atom, i int) (cents, next int) {
	if cents, next := moneyAndHalf(atoms, i, false); next > i {
		return cents, next
	}
	if n, k := spokenUpTo99(atoms, i); k > i && k+1 < len(atoms) && (atoms[k].text == "oh" || atoms[k].text == "o") {
		if one, next := spokenUpTo99(atoms, k+1); one > 0 && one < 10 && (next == len(atoms) || !measuredIn(atoms[next].text)) {
			return 100*n + one, next // "nine oh five"
		}
	}
	end := moneyEnd(atoms, i)
	if end == i {
		return 0, i
	}
	if atoms[i].text == "$" {
		i++
	}
	if whole, small, found := strings.Cut(strings.Replace(atoms[i].text, ",", ".", 1), "."); found && atoms[i].kind == aDigits {
		n, _ := strconv.Atoi(whole)
		k, _ := strconv.Atoi((small + "0")[:2])
		return 100*n + k, end
	}
	n, next := countTold(atoms, i)
	cents = 100 * n
	for ; next < end; next++ {
		if k, after := countTold(atoms, next); after > next && k < 100 {
			return cents + k, end
		}
	}
	return cents, end
}

// coinNames are names of money that stand behind a figure.
var coinNames = wordSet("dollars dollar bucks buck")

// centsWritten reports whether figures are written as money is, with two decimals.
func centsWritten(digits string) bool {
	dot := strings.IndexAny(digits, ".,")
	return dot > 0 && dot == len(digits)-3
}

// measuredIn reports whether a word is a unit of length.
func measuredIn(w string) bool {
	_, metric := metricWords[w]
	return metric || footWords[w] || footerWords[w] || inchWords[w] || yardWords[w]
}

// lumberTold reads a length of lumber, and gives it in plain words: "ten foot", "4.2 m", "fourteens"; once a unit was told, a bare figure, too.
func lumberTold(r reader, i int, unit string) (plain []atom, u string, next int) {
	plain, _, u, next = lumberLong(r, i, unit)
	return plain, u, next
}

// lumberLong reads a length of lumber as lumberTold does, and tells how long it is in its unit.
func lumberLong(r reader, i int, unit string) (plain []atom, long float64, u string, next int) {
	if i >= len(r.atoms) {
		return nil, 0, "", i
	}
	atoms := r.atoms
	figure := atoms[i]
	if feet := lumberFeet[figure.text]; feet > 0 {
		long, next, u = float64(feet), i+1, "footers"
	} else {
		if figure.kind == aDigits {
			long, _ = strconv.ParseFloat(strings.Replace(figure.text, ",", ".", 1), 64)
			next = i + 1
		} else {
			var n int
			n, next = spokenUpTo99(atoms, i)
			long = float64(n)
		}
		if next == i || long == 0 {
			return nil, 0, "", i
		}
		if next < len(atoms) && atoms[next].text == "-" && next+1 < len(atoms) && measuredIn(atoms[next+1].text) {
			next++
		}
		switch w := r.word(next); {
		case w == "s" && figure.kind == aDigits && atoms[next].glued:
			u, next = "footers", next+1
		case footWords[w] || footerWords[w]:
			u, next = "footers", next+1
		case w == "m" || w == "meter" || w == "meters" || w == "metre" || w == "metres":
			u, next = "m", next+1
		case w == "mm" || w == "cm":
			u, next = w, next+1
		default:
			u = unit
		}
		if u != "" && next < len(atoms) && footerWords[atoms[next].text] {
			next++
		}
	}
	if r := soldBetween[u]; u == "" || long < r[0] || long > r[1] {
		return nil, 0, "", i
	}
	figure.text, figure.kind = strconv.FormatFloat(long, 'f', -1, 64), aDigits
	return []atom{figure, {text: u, kind: aWord, at: figure.at, end: figure.end}}, long, u, next
}

// soldBetween are the lengths that lumber is sold in.
var soldBetween = map[string][2]float64{"footers": {4, 24}, "m": {1, 8}, "cm": {100, 800}, "mm": {1000, 8000}}

// colonSaid parts what is priced from its price.
var colonSaid = wordSet(":")

// moneyAndHalf reads "nine and a quarter", and "nine and a half bucks"; bare tells that it may do without a word of money.
func moneyAndHalf(atoms []atom, i int, bare bool) (cents, next int) {
	n, next := countTold(atoms, i)
	if next == i || next+2 >= len(atoms) || atoms[next].text != "and" || atoms[next+1].text != "a" || atoms[next+2].text != "half" && atoms[next+2].text != "quarter" {
		return 0, i
	}
	cents, next = 100*n+50, next+3
	if atoms[next-1].text == "quarter" {
		cents -= 25
	}
	if next < len(atoms) && coinNames[atoms[next].text] {
		return cents, next + 1
	}
	if !bare || next < len(atoms) && measuredIn(atoms[next].text) {
		return 0, i
	}
	return cents, next
}

// neverSold reports whether no lumber is sold in a length: what looks like one was put together of a length and a price ("8 foot 3").
func neverSold(v solver.Value) bool {
	step := exact.Int(6)
	if v.Unit == solver.Millimeter {
		step = mm(50)
	}
	return !v.Num.Div(step).IsInt() && (v.Unit == solver.Millimeter || !v.Num.Sub(precut).Div(exact.Int(12)).IsInt())
}

// precut is what the length of studs that are cut at the mill is beyond whole feet: 92-5/8, 104-5/8.
var precut = exact.Int(5).Div(exact.Int(8)).Add(exact.Int(8))

// tailEnd is the atom behind what tells where and when something costs that, and for how much wood: "at the yard this morning", "a stick".
func (l *priceList) tailEnd(i int) int {
	if i == 0 {
		return 0
	}
	end := i
	for k := i; k < len(l.atoms); {
		next := k
		switch r := (reader{l.atoms}); {
		case r.word(k) == "at" || r.word(k) == "from" || r.word(k) == "down" && r.word(k+1) == "at":
			next = k + 1
			if r.word(next) == "at" {
				next++
			}
			if w := r.word(next); w == "the" || w == "our" || w == "my" || w == "this" {
				next++
			}
			if next < len(l.atoms) && isClass(r.word(next), "SELLER") {
				next++
			} else {
				return end
			}
		case r.word(k) == "this" && (r.word(k+1) == "morning" || r.word(k+1) == "afternoon" || r.word(k+1) == "week"), r.word(k) == "right" && r.word(k+1) == "now", (r.word(k) == "a" || r.word(k) == "the") && pieceWords[r.word(k+1)]:
			next = k + 2
		case priceWords[r.word(k)] == eachWord, r.word(k) == "now", r.word(k) == "today", r.word(k) == "even", r.word(k) == "flat":
			next = k + 1
		}
		if next == k {
			break
		}
		k = next
		if k == len(l.atoms) || endsPart(l.atoms, k) || joints[l.atoms[k].text] {
			end = k
		}
	}
	return end
}

var pieceWords = wordSet("piece stick board length pop plank throw")
