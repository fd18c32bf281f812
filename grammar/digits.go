package grammar

import (
	"strconv"
	"strings"

	"saywright/solver/exact"
)

// longest is the most digits that a figure of a wall can need; more are asked back.
const longest = 12

// digits reads a run of digits with its point or commas.
func (r reader) digits(i int) (number, int, bool) {
	s := r.word(i)
	n := number{plain: s}
	switch {
	case len(s) > longest:
		n.bad = "long"
	case strings.Count(s, ",") == 1 && !strings.Contains(s, "."):
		n = r.comma(i)
	case strings.Contains(s, ","):
		n = grouped(s)
	case strings.Count(s, ".") > 1:
		n.bad = "date"
	default:
		n.val, _ = rat(s)
		if strings.Contains(s, ".") {
			n.point, n.frac, n.plain = true, true, ""
		}
	}
	j := i + 1
	if r.word(j) == ":" && r.glued(j) && r.kind(j+1) == aDigits && r.glued(j+1) {
		n.bad, j = "time", j+2
	}
	if d, ok := atoi(s); ok && n.bad == "" && r.glued(j) && ordinalEnds[r.word(j)] && d > 31 && !tapeDenominator[d] {
		n.bad, j = "fused", j+1 // "116th", "245th"
		n.alts = fusedFraction(s)
	}
	return n, j, true
}

// comma reads a figure with one comma: a decimal comma, or thousands.
func (r reader) comma(i int) number {
	s := r.word(i)
	whole, dec, _ := strings.Cut(s, ",")
	v, ok := rat(whole + "." + dec)
	if !ok {
		return number{bad: "fraction"}
	}
	n := number{val: v, point: true, frac: true}
	if len(dec) != 3 || whole == "0" || len(whole) > 3 {
		return n
	}
	thousands, _ := rat(whole + dec)
	switch r.word(i + 1) {
	case "mm", "millimeters", "millimetres", "dollars":
		return number{val: thousands, plain: whole + dec}
	case "m", "cm", "meters", "metres", "meter", "metre":
		return n
	}
	if r.word(i-1) == "$" {
		return number{val: thousands, plain: whole + dec}
	}
	return number{bad: "comma", alts: []exact.Rat{thousands, v}}
}

// grouped reads "1,200.50" and "1,200,000"; what is not in groups of three was meant as a list and is asked back.
func grouped(s string) number {
	whole, dec, point := strings.Cut(s, ".")
	groups := strings.Split(whole, ",")
	for k, g := range groups {
		if len(g) != 3 && k > 0 || len(g) > 3 {
			return number{bad: "list"}
		}
	}
	if strings.Contains(dec, ",") {
		return number{bad: "list"}
	}
	v, _ := rat(strings.Join(groups, "") + strings.TrimSuffix("."+dec, "."))
	return number{val: v, point: point, frac: point}
}

// rat reads digits with at most one decimal point.
func rat(s string) (exact.Rat, bool) {
	if s == "" || len(s) > 2*longest {
		return exact.Rat{}, false
	}
	if s[0] == '.' {
		s = "0" + s
	}
	if strings.Trim(s, "0123456789.") != "" {
		return exact.Rat{}, false
	}
	v, err := exact.Parse(s)
	return v, err == nil
}

// atoi is the number of some digits.
func atoi(s string) (int, bool) {
	if len(s) == 0 || len(s) > 6 || s[0] > '9' {
		return 0, false // no number, told without an error that somebody would have to make
	}
	n, err := strconv.Atoi(s)
	return n, err == nil
}

// itoa writes a number in digits.
func itoa(n int) string { return strconv.Itoa(n) }

// fusedFraction lists what fused digits may have been as spoken: "58" five eighths, "316" three sixteenths, "238" two and three eighths.
func fusedFraction(s string) []exact.Rat {
	var out []exact.Rat
	for _, den := range []string{"2", "4", "8", "16", "32", "64"} {
		head, ok := strings.CutSuffix(s, den)
		if !ok || head == "" || len(head) > 4 {
			continue
		}
		d, _ := atoi(den)
		for k := 0; k < len(head); k++ {
			num, _ := atoi(head[k:])
			if head[k] == '0' || num >= d || num%2 == 0 || num == 0 {
				continue
			}
			v := exact.New(int64(num), int64(d))
			if k > 0 {
				w, _ := atoi(head[:k])
				v = v.Add(exact.Int(w))
			}
			out = append(out, v)
		}
	}
	return out
}

// fusedFeet lists what fused digits may have been as feet and inches: "126" is 12 foot 6.
func fusedFeet(s string) []exact.Rat {
	var out []exact.Rat
	for k := 1; k < len(s); k++ {
		ft, _ := atoi(s[:k])
		in, _ := atoi(s[k:])
		if in > 0 && in < 12 && s[k] != '0' && ft > 0 && ft < 100 {
			out = append(out, exact.Int(12*ft+in))
		}
	}
	return out
}
