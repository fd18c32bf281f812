package explain

import (
	"strconv"
	"strings"

	"saywright/explain/figure"
	"saywright/solver"
	"saywright/solver/exact"
)

// eared says one figure in words.
func eared(kind rune, value string, style figure.Style) string {
	switch kind {
	case sized:
		return sizeAloud(value)
	case operator:
		return operatorAloud[value]
	case howMany, inWords:
		if n, err := strconv.Atoi(value); err == nil {
			if n == 0 {
				return "no"
			}
			return whole(exact.Int(n))
		}
	}
	r := exact.Must(value)
	switch kind {
	case cashed, cashExact:
		return moneyAloud(r)
	case decimal:
		return decimalAloud(r)
	case percent:
		return decimalAloud(r) + " percent"
	case withUnit:
		if style.Metric {
			return bareAloud(r, style) + " millimeter"
		}
		return bareAloud(r, style) + " inch"
	case plain:
		return numberAloud(r)
	case nearest:
		return lengthAloud(style.Nearest(r), style)
	case cutDown:
		return lengthAloud(r, style)
	case inSum:
		if style.Metric {
			return decimalAloud(r.Mul(solver.PerInch))
		}
		return numberAloud(r)
	case eachOf, bareNearest:
		return bareAloud(r, style)
	case oneByOne:
		return lengthAloud(r, style) + spelled(r, style)
	}
	return lengthAloud(r, style)
}

var operatorAloud = map[string]string{"+": "plus", "-": "minus", "*": "times", "/": "divided by", "=": "is"}

// lengthAloud says a length to the nearest mark of the tape: "two and a half inches", "about one and five eighths inches".
func lengthAloud(r exact.Rat, style figure.Style) string {
	near := style.Nearest(r)
	if !style.Metric && near.Eq(exact.New(1, 2)) && near.Eq(r) {
		return "half an inch"
	}
	s := bareAloud(near, style) + " " + unitAloud(near, style)
	if !near.Eq(r) {
		s = "about " + s
	}
	return s
}

func unitAloud(r exact.Rat, style figure.Style) string {
	unit := "inch"
	if style.Metric {
		unit, r = "millimeter", r.Mul(solver.PerInch)
	}
	switch {
	case r.Abs().Eq(exact.Int(1)):
		return unit
	case !style.Metric && r.Sign() != 0 && r.Abs().Less(exact.Int(1)):
		return "of an inch"
	case unit == "inch":
		return "inches"
	}
	return unit + "s"
}

// bareAloud says a length without its unit.
func bareAloud(r exact.Rat, style figure.Style) string {
	r = style.Nearest(r)
	if style.Metric {
		return decimalAloud(r.Mul(solver.PerInch))
	}
	return numberAloud(r)
}

// sizeAloud says a lumber size: "two by six", "five quarter by six".
func sizeAloud(s string) string {
	a, b, ok := strings.Cut(strings.ReplaceAll(s, "×", "x"), "x")
	if !ok {
		return wordsOnly(s)
	}
	return sideAloud(a) + " by " + sideAloud(b)
}

func sideAloud(s string) string {
	if s == "5/4" {
		return "five quarter"
	}
	r, err := exact.Parse(s)
	if err != nil {
		return wordsOnly(s)
	}
	return numberAloud(r)
}

// moneyAloud says an amount: "three hundred eighty", "fourteen fifty".
func moneyAloud(r exact.Rat) string {
	front, cents, _ := strings.Cut(solver.Cents(r), ".")
	f := exact.Must(front)
	switch {
	case cents == "00":
		return whole(f)
	case f.Sign() == 0:
		return whole(exact.Must(cents)) + " cents"
	}
	if cents[0] == '0' {
		return whole(f) + " and " + whole(exact.Must(cents)) + " cents"
	}
	return whole(f) + " " + whole(exact.Must(cents))
}

// spelled adds the digits of a -teen or -ty, which ears mix up: ", one five".
func spelled(r exact.Rat, style figure.Style) string {
	v := style.Nearest(r)
	if style.Metric {
		v = v.Mul(solver.PerInch)
	}
	v = v.Floor()
	n, ok := v.Int64()
	if !ok || n < 13 {
		return ""
	}
	if last := n % 100; last >= 13 && last <= 19 || last >= 20 && last%10 == 0 {
		return ", " + digitByDigit(v.String())
	}
	return ""
}

// wordsOnly turns what is left of digits and signs into words: nothing that a voice would spell out.
func wordsOnly(s string) string {
	var b strings.Builder
	for _, r := range s {
		switch {
		case r >= '0' && r <= '9':
			b.WriteString(" " + digits[r-'0'] + " ")
		case r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r == ' ' || r == '\'' || r > 0x7f && !strings.ContainsRune("×÷−≤≥°½¼¾″′“”‘’…·–—≈", r):
			b.WriteRune(r)
		default:
			b.WriteByte(' ')
		}
	}
	return strings.Join(strings.Fields(b.String()), " ")
}
