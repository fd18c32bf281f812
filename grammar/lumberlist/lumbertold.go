package lumberlist

import (
	"strconv"
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver"
	"saywright/solver/exact"
)

// moneyEnd is the atom behind a sum that can be nothing but money: "$8", "8.60", "eight sixty", "nine dollars and ten cents".
func moneyEnd(atoms []scan.Atom, i int) int {
	from := i
	if atoms[i].Text == "$" {
		if i++; i < len(atoms) && atoms[i].Kind == scan.Digits {
			return i + 1
		}
		return from
	}
	next := i
	if atoms[i].Kind == scan.Digits {
		if next++; idiom.CentsWritten(atoms[i].Text) {
			if next < len(atoms) && idiom.CoinNames[atoms[next].Text] {
				next++
			}
			if next < len(atoms) && (measuredIn(atoms[next].Text) || atoms[next].Text == "x" || atoms[next].Text == "by") {
				return from
			}
			return next
		}
	} else if _, next = SpokenUpTo99(atoms, i); next == i {
		return from
	}
	named := next < len(atoms) && idiom.CoinNames[atoms[next].Text]
	if named {
		next++
	} else if atoms[i].Kind == scan.Digits {
		return from
	}
	rest := next
	if rest < len(atoms) && named && atoms[rest].Text == "and" {
		rest++
	}
	cents, last := SpokenUpTo99(atoms, rest)
	if last == rest && named && rest < len(atoms) && atoms[rest].Kind == scan.Digits && len(atoms[rest].Text) == 2 {
		cents, last = 10, rest+1
	}
	if last < len(atoms) && (atoms[last].Text == "cents" || atoms[last].Text == "cent") {
		return last + 1
	}
	if rest > next && last < len(atoms) && (atoms[last].Text == "is" || atoms[last].Text == "are") {
		cents = 0 // "six dollars and twelves are nine"
	}
	if cents >= 10 && (last == len(atoms) || atoms[last].Kind != scan.Digits && atoms[last].Text != "-" && atoms[last].Text != "x" && atoms[last].Text != "by" && atoms[last].Text != "s" && !measuredIn(atoms[last].Text) && !chunk.SpelledNumber(atoms[last].Text)) {
		return last
	}
	if named {
		return next
	}
	return from
}

// centsTold reads a sum that can be nothing but money, in cents.
func centsTold(atoms []scan.Atom, i int) (cents, next int) {
	if cents, next := moneyAndHalf(atoms, i, false); next > i {
		return cents, next
	}
	if n, k := SpokenUpTo99(atoms, i); k > i && k+1 < len(atoms) && (atoms[k].Text == "oh" || atoms[k].Text == "o") {
		if one, next := SpokenUpTo99(atoms, k+1); one > 0 && one < 10 && (next == len(atoms) || !measuredIn(atoms[next].Text)) {
			return 100*n + one, next // "nine oh five"
		}
	}
	end := moneyEnd(atoms, i)
	if end == i {
		return 0, i
	}
	if atoms[i].Text == "$" {
		i++
	}
	if whole, small, found := strings.Cut(strings.Replace(atoms[i].Text, ",", ".", 1), "."); found && atoms[i].Kind == scan.Digits {
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

// measuredIn reports whether a word is a unit of length.
func measuredIn(w string) bool {
	_, metric := measure.MetricWords[w]
	return metric || measure.FootWords[w] || measure.FooterWords[w] || measure.InchWords[w] || measure.YardWords[w]
}

// lumberTold reads a length of lumber, and gives it in plain words: "ten foot", "4.2 m", "fourteens"; once a unit was told, a bare figure, too.
func lumberTold(r measure.Reader, i int, unit string) (plain []scan.Atom, u string, next int) {
	plain, _, u, next = lumberLong(r, i, unit)
	return plain, u, next
}

// lumberLong reads a length of lumber as lumberTold does, and tells how long it is in its unit.
func lumberLong(r measure.Reader, i int, unit string) (plain []scan.Atom, long float64, u string, next int) {
	if i >= len(r.Atoms) {
		return nil, 0, "", i
	}
	atoms := r.Atoms
	figure := atoms[i]
	if feet := measure.LumberFeet[figure.Text]; feet > 0 {
		long, next, u = float64(feet), i+1, "footers"
	} else {
		if figure.Kind == scan.Digits {
			long, _ = strconv.ParseFloat(strings.Replace(figure.Text, ",", ".", 1), 64)
			next = i + 1
		} else {
			var n int
			n, next = SpokenUpTo99(atoms, i)
			long = float64(n)
		}
		if next == i || long == 0 {
			return nil, 0, "", i
		}
		if next < len(atoms) && atoms[next].Text == "-" && next+1 < len(atoms) && measuredIn(atoms[next+1].Text) {
			next++
		}
		switch w := r.Word(next); {
		case w == "s" && figure.Kind == scan.Digits && atoms[next].Glued:
			u, next = "footers", next+1
		case measure.FootWords[w] || measure.FooterWords[w]:
			u, next = "footers", next+1
		case w == "m" || w == "meter" || w == "meters" || w == "metre" || w == "metres":
			u, next = "m", next+1
		case w == "mm" || w == "cm":
			u, next = w, next+1
		default:
			u = unit
		}
		if u != "" && next < len(atoms) && measure.FooterWords[atoms[next].Text] {
			next++
		}
	}
	if r := soldBetween[u]; u == "" || long < r[0] || long > r[1] {
		return nil, 0, "", i
	}
	figure.Text, figure.Kind = strconv.FormatFloat(long, 'f', -1, 64), scan.Digits
	return []scan.Atom{figure, {Text: u, Kind: scan.Word, At: figure.At, End: figure.End}}, long, u, next
}

// soldBetween are the lengths that lumber is sold in.
var soldBetween = map[string][2]float64{"footers": {4, 24}, "m": {1, 8}, "cm": {100, 800}, "mm": {1000, 8000}}

// colonSaid parts what is priced from its price.
var colonSaid = scan.WordSet(":")

// moneyAndHalf reads "nine and a quarter", and "nine and a half bucks"; bare tells that it may do without a word of money.
func moneyAndHalf(atoms []scan.Atom, i int, bare bool) (cents, next int) {
	n, next := countTold(atoms, i)
	if next == i || next+2 >= len(atoms) || atoms[next].Text != "and" || atoms[next+1].Text != "a" || atoms[next+2].Text != "half" && atoms[next+2].Text != "quarter" {
		return 0, i
	}
	cents, next = 100*n+50, next+3
	if atoms[next-1].Text == "quarter" {
		cents -= 25
	}
	if next < len(atoms) && idiom.CoinNames[atoms[next].Text] {
		return cents, next + 1
	}
	if !bare || next < len(atoms) && measuredIn(atoms[next].Text) {
		return 0, i
	}
	return cents, next
}

// neverSold reports whether no lumber is sold in a length: what looks like one was put together of a length and a price ("8 foot 3").
func neverSold(v solver.Value) bool {
	step := exact.Int(6)
	if v.Unit == solver.Millimeter {
		step = measure.Mm(50)
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
		switch r := (measure.Reader{Atoms: l.atoms}); {
		case r.Word(k) == "at" || r.Word(k) == "from" || r.Word(k) == "down" && r.Word(k+1) == "at":
			next = k + 1
			if r.Word(next) == "at" {
				next++
			}
			if w := r.Word(next); w == "the" || w == "our" || w == "my" || w == "this" {
				next++
			}
			if next < len(l.atoms) && chunk.IsClass(r.Word(next), "SELLER") {
				next++
			} else {
				return end
			}
		case r.Word(k) == "this" && (r.Word(k+1) == "morning" || r.Word(k+1) == "afternoon" || r.Word(k+1) == "week"), r.Word(k) == "right" && r.Word(k+1) == "now", (r.Word(k) == "a" || r.Word(k) == "the") && pieceWords[r.Word(k+1)]:
			next = k + 2
		case priceWords[r.Word(k)] == eachWord, r.Word(k) == "now", r.Word(k) == "today", r.Word(k) == "even", r.Word(k) == "flat":
			next = k + 1
		}
		if next == k {
			break
		}
		k = next
		if k == len(l.atoms) || chunk.EndsPart(l.atoms, k) || chunk.Joints[l.atoms[k].Text] {
			end = k
		}
	}
	return end
}

var pieceWords = scan.WordSet("piece stick board length pop plank throw")
