package measure

import (
	"strconv"
	"strings"

	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// longest is the most digits that a figure of a wall can need; more are asked back.
const longest = 12

// digits reads a run of digits with its point or commas.
func (r Reader) digits(i int) (Number, int, bool) {
	s := r.Word(i)
	n := Number{Plain: s}
	switch {
	case len(s) > longest:
		n.Bad = "long"
	case strings.Count(s, ",") == 1 && !strings.Contains(s, "."):
		n = r.comma(i)
	case strings.Contains(s, ","):
		n = grouped(s)
	case strings.Count(s, ".") > 1:
		n.Bad = "date"
	default:
		n.Val, _ = rat(s)
		if strings.Contains(s, ".") {
			n.Point, n.Frac, n.Plain = true, true, ""
		}
	}
	j := i + 1
	if r.Word(j) == ":" && r.Glued(j) && r.Kind(j+1) == scan.Digits && r.Glued(j+1) {
		n.Bad, j = "time", j+2
	}
	if d, ok := Atoi(s); ok && n.Bad == "" && r.Glued(j) && OrdinalEnds[r.Word(j)] && d > 31 && !TapeDenominator[d] {
		n.Bad, j = "fused", j+1 // "116th", "245th"
		n.alts = FusedFraction(s)
	}
	return n, j, true
}

// comma reads a figure with one comma: a decimal comma, or thousands.
func (r Reader) comma(i int) Number {
	s := r.Word(i)
	whole, dec, _ := strings.Cut(s, ",")
	v, ok := rat(whole + "." + dec)
	if !ok {
		return Number{Bad: "fraction"}
	}
	n := Number{Val: v, Point: true, Frac: true}
	if len(dec) != 3 || whole == "0" || len(whole) > 3 {
		return n
	}
	thousands, _ := rat(whole + dec)
	switch r.Word(i + 1) {
	case "mm", "millimeters", "millimetres", "dollars":
		return Number{Val: thousands, Plain: whole + dec}
	case "m", "cm", "meters", "metres", "meter", "metre":
		return n
	}
	if r.Word(i-1) == "$" {
		return Number{Val: thousands, Plain: whole + dec}
	}
	return Number{Bad: "comma", alts: []exact.Rat{thousands, v}}
}

// grouped reads "1,200.50" and "1,200,000"; what is not in groups of three was meant as a list and is asked back.
func grouped(s string) Number {
	whole, dec, point := strings.Cut(s, ".")
	groups := strings.Split(whole, ",")
	for k, g := range groups {
		if len(g) != 3 && k > 0 || len(g) > 3 {
			return Number{Bad: "list"}
		}
	}
	if strings.Contains(dec, ",") {
		return Number{Bad: "list"}
	}
	v, _ := rat(strings.Join(groups, "") + strings.TrimSuffix("."+dec, "."))
	return Number{Val: v, Point: point, Frac: point}
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

// Atoi is the number of some digits.
func Atoi(s string) (int, bool) {
	if len(s) == 0 || len(s) > 6 || s[0] > '9' {
		return 0, false // no number, told without an error that somebody would have to make
	}
	n, err := strconv.Atoi(s)
	return n, err == nil
}

// Itoa writes a number in digits.
func Itoa(n int) string { return strconv.Itoa(n) }

// FusedFraction lists what fused digits may have been as spoken: "58" five eighths, "316" three sixteenths, "238" two and three eighths.
func FusedFraction(s string) []exact.Rat {
	var out []exact.Rat
	for _, den := range []string{"2", "4", "8", "16", "32", "64"} {
		head, ok := strings.CutSuffix(s, den)
		if !ok || head == "" || len(head) > 4 {
			continue
		}
		d, _ := Atoi(den)
		for k := 0; k < len(head); k++ {
			num, _ := Atoi(head[k:])
			if head[k] == '0' || num >= d || num%2 == 0 || num == 0 {
				continue
			}
			v := exact.New(int64(num), int64(d))
			if k > 0 {
				w, _ := Atoi(head[:k])
				v = v.Add(exact.Int(w))
			}
			out = append(out, v)
		}
	}
	return out
}

// FusedFeet lists what fused digits may have been as feet and inches: "126" is 12 foot 6.
func FusedFeet(s string) []exact.Rat {
	var out []exact.Rat
	for k := 1; k < len(s); k++ {
		ft, _ := Atoi(s[:k])
		in, _ := Atoi(s[k:])
		if in > 0 && in < 12 && s[k] != '0' && ft > 0 && ft < 100 {
			out = append(out, exact.Int(12*ft+in))
		}
	}
	return out
}
