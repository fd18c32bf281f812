package exact

import (
	"encoding/json"
	"fmt"
	"math/big"
	"strings"
)

// Parse reads "5", "-17/2", "2.37" or ".5": a sign if any, then decimal digits, with one "/" or one "." between them if any.
// Leading zeros mean nothing. Whatever else it is given, a denominator 0 among it, is an error.
func Parse(s string) (Rat, error) {
	digits := strings.TrimLeft(s, "+-")
	if len(s)-len(digits) > 1 {
		return Rat{}, notNumber(s)
	}
	whole, part, slash := strings.Cut(digits, "/")
	if !slash {
		whole, part, _ = strings.Cut(digits, ".")
	}
	if slash && whole == "" || part == "" && whole != digits || !isDigits(whole+part) {
		return Rat{}, notNumber(s)
	}
	if len(digits) <= 18 { // both numbers fit a word
		return parseSmall(s, whole, part, slash)
	}
	num, den := new(big.Int), big.NewInt(1)
	if slash {
		num.SetString(whole, 10)
		den.SetString(part, 10)
	} else {
		num.SetString(whole+part, 10)
		den.Exp(big.NewInt(10), big.NewInt(int64(len(part))), nil)
	}
	if den.Sign() == 0 {
		return Rat{}, notNumber(s)
	}
	if s[0] == '-' {
		num.Neg(num)
	}
	return FromBig(new(big.Rat).SetFrac(num, den)), nil
}

// parseSmall is Parse for at most eighteen digits, already known to be digits.
func parseSmall(s, whole, part string, slash bool) (Rat, error) {
	var num, den int64 = 0, 1
	for _, c := range []byte(whole) {
		num = 10*num + int64(c-'0')
	}
	if slash {
		den = 0
	}
	for _, c := range []byte(part) {
		if slash {
			den = 10*den + int64(c-'0')
		} else {
			num, den = 10*num+int64(c-'0'), 10*den
		}
	}
	if den == 0 {
		return Rat{}, notNumber(s)
	}
	if s[0] == '-' {
		num = -num
	}
	return New(num, den), nil
}

func notNumber(s string) error { return fmt.Errorf("exact: %q is no rational number", s) }

func isDigits(s string) bool {
	return s != "" && strings.Trim(s, "0123456789") == ""
}

// Must is Parse for figures written in code and tables. It panics when s is no number.
func Must(s string) Rat {
	r, err := Parse(s)
	if err != nil {
		panic(err)
	}
	return r
}

// String returns "5" or "-17/2".
func (a Rat) String() string {
	if a.big == nil {
		if a.d() == 1 {
			return fmt.Sprint(a.num)
		}
		return fmt.Sprintf("%d/%d", a.num, a.d())
	}
	return a.big.RatString()
}

// MarshalJSON writes the number as a string, "17/2".
func (a Rat) MarshalJSON() ([]byte, error) { return json.Marshal(a.String()) }

// UnmarshalJSON reads what MarshalJSON wrote; what it cannot read leaves a as it was.
func (a *Rat) UnmarshalJSON(b []byte) error {
	var s string
	if err := json.Unmarshal(b, &s); err != nil {
		return err
	}
	r, err := Parse(s)
	if err != nil {
		return err
	}
	*a = r
	return nil
}
