package explain

import (
	"strconv"
	"strings"

	"saywright/explain/figure"
	"saywright/solver"
	"saywright/solver/exact"
)

var small = [...]string{"no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven",
	"twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"}

var tens = [...]string{"", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"}

var digits = [...]string{"zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"}

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

// numberAloud says a mixed fraction: "two and a half", "fifteen sixteenths".
func numberAloud(r exact.Rat) string {
	if r.Sign() < 0 {
		return "minus " + numberAloud(r.Neg())
	}
	floor := r.Floor()
	part := r.Sub(floor)
	if part.Sign() == 0 {
		return whole(floor)
	}
	num, den := part.Frac()
	if !den.IsInt64() || den.Int64() > 100 {
		return "about " + whole(r.Add(exact.New(1, 2)).Floor())
	}
	f := fractionAloud(int(num.Int64()), int(den.Int64()))
	if floor.Sign() == 0 {
		return f
	}
	return whole(floor) + " and " + f
}

func fractionAloud(num, den int) string {
	one := ordinal(den)
	switch den {
	case 2:
		one = "half"
	case 4:
		one = "quarter"
	}
	if num == 1 {
		if den == 8 || den == 11 || den == 18 {
			return "an " + one
		}
		return "a " + one
	}
	return whole(exact.Int(num)) + " " + one + "s"
}

// ordinal says the nth: "sixteenth", "thirty second".
func ordinal(n int) string {
	words := strings.Fields(whole(exact.Int(n)))
	last := words[len(words)-1]
	switch last {
	case "one":
		last = "first"
	case "two":
		last = "second"
	case "three":
		last = "third"
	case "five":
		last = "fifth"
	case "eight":
		last = "eighth"
	case "nine":
		last = "ninth"
	case "twelve":
		last = "twelfth"
	default:
		if strings.HasSuffix(last, "y") {
			last = strings.TrimSuffix(last, "y") + "ie"
		}
		last += "th"
	}
	words[len(words)-1] = last
	return strings.Join(words, " ")
}

// decimalAloud says a decimal digit by digit after the point: "sixty three point five".
func decimalAloud(r exact.Rat) string {
	text := solver.Decimal(r)
	if strings.ContainsAny(text, "/") {
		return numberAloud(r)
	}
	sign := ""
	if strings.HasPrefix(text, "-") {
		sign, text = "minus ", text[1:]
	}
	front, back, _ := strings.Cut(text, ".")
	s := sign + whole(exact.Must(front))
	if back != "" {
		s += " point " + digitByDigit(back)
	}
	return s
}

func digitByDigit(s string) string {
	var words []string
	for _, r := range s {
		if r >= '0' && r <= '9' {
			words = append(words, digits[r-'0'])
		}
	}
	return strings.Join(words, " ")
}

// whole says a whole number. Beyond a billion nobody listens: its digits are said one by one.
func whole(r exact.Rat) string {
	n, ok := r.Int64()
	if !ok || n > 999_999_999 || n < -999_999_999 {
		return digitByDigit(r.String())
	}
	if n < 0 {
		return "minus " + whole(exact.New(-n, 1))
	}
	if n == 0 {
		return "zero"
	}
	var parts []string
	for _, step := range []struct {
		unit int64
		name string
	}{{1_000_000, "million"}, {1_000, "thousand"}} {
		if n >= step.unit {
			parts = append(parts, hundreds(n/step.unit), step.name)
			n %= step.unit
		}
	}
	if n > 0 {
		parts = append(parts, hundreds(n))
	}
	return strings.Join(parts, " ")
}

func hundreds(n int64) string {
	var parts []string
	if n >= 100 {
		parts = append(parts, small[n/100], "hundred")
		n %= 100
	}
	switch {
	case n >= 20:
		parts = append(parts, tens[n/10])
		if n%10 > 0 {
			parts = append(parts, small[n%10])
		}
	case n > 0:
		parts = append(parts, small[n])
	}
	return strings.Join(parts, " ")
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
