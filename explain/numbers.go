package explain

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

var small = [...]string{"no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven",
	"twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen"}

var tens = [...]string{"", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"}

var digits = [...]string{"zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"}

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
