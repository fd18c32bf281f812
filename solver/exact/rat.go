// Package exact decides systems of linear rules over exact rationals, and proves what it says.
//
// It does rational numbers, strict limits, linear programs, certificates and their checker, smallest
// conflicts and smallest changes. It knows no wood, no walls and no words: a rule is a number to it.
package exact

import (
	"encoding/json"
	"fmt"
	"math/big"
	"math/bits"
	"strings"
)

// Rat is an exact rational number. The zero value is 0. A Rat never changes: every operation returns a new one.
// Small values are held in two machine words; what does not fit moves to big.Rat and back, unseen.
type Rat struct {
	num, den int64 // value num/den in lowest terms, den 0 meaning 1; used when big is nil
	big      *big.Rat
}

// New returns num/den. It panics when den is 0: callers check divisors where a person's figure comes in.
func New(num, den int64) Rat {
	if den == 0 {
		panic("exact: denominator 0")
	}
	if num == minInt || den == minInt {
		return FromBig(new(big.Rat).SetFrac(big.NewInt(num), big.NewInt(den)))
	}
	if den < 0 {
		num, den = -num, -den
	}
	if g := gcd(abs(num), den); g > 1 {
		num, den = num/g, den/g
	}
	return Rat{num: num, den: den}
}

// Int returns n as a rational.
func Int(n int) Rat { return Rat{num: int64(n), den: 1} }

// FromBig returns r, in the small form where it fits. It keeps no reference to r.
func FromBig(r *big.Rat) Rat {
	if r.Num().IsInt64() && r.Denom().IsInt64() {
		n, d := r.Num().Int64(), r.Denom().Int64()
		if n != minInt {
			return Rat{num: n, den: d}
		}
	}
	return Rat{big: new(big.Rat).Set(r)}
}

// Parse reads "5", "-17/2" or "2.37".
func Parse(s string) (Rat, error) {
	if strings.ContainsAny(s, "eEpPxX_ ") {
		return Rat{}, fmt.Errorf("exact: %q is no rational number", s)
	}
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		return Rat{}, fmt.Errorf("exact: %q is no rational number", s)
	}
	return FromBig(r), nil
}

// Must is Parse for figures written in code and tables. It panics when s is no number.
func Must(s string) Rat {
	r, err := Parse(s)
	if err != nil {
		panic(err)
	}
	return r
}

const minInt = -1 << 63

func (a Rat) d() int64 {
	if a.den == 0 {
		return 1
	}
	return a.den
}

// Big returns a copy as a big.Rat.
func (a Rat) Big() *big.Rat {
	if a.big != nil {
		return new(big.Rat).Set(a.big)
	}
	return big.NewRat(a.num, a.d())
}

// Add returns a + b.
func (a Rat) Add(b Rat) Rat {
	if a.big == nil && b.big == nil {
		if a.d() == b.d() {
			if s, ok := add(a.num, b.num); ok {
				return New(s, a.d())
			}
		}
		x, ok1 := mul(a.num, b.d())
		y, ok2 := mul(b.num, a.d())
		s, ok3 := add(x, y)
		d, ok4 := mul(a.d(), b.d())
		if ok1 && ok2 && ok3 && ok4 {
			return New(s, d)
		}
	}
	return FromBig(new(big.Rat).Add(a.Big(), b.Big()))
}

// Sub returns a - b.
func (a Rat) Sub(b Rat) Rat { return a.Add(b.Neg()) }

// Mul returns a × b.
func (a Rat) Mul(b Rat) Rat {
	if a.big == nil && b.big == nil {
		n, ok1 := mul(a.num, b.num)
		d, ok2 := mul(a.d(), b.d())
		if ok1 && ok2 {
			return New(n, d)
		}
	}
	return FromBig(new(big.Rat).Mul(a.Big(), b.Big()))
}

// Div returns a / b. It panics when b is 0.
func (a Rat) Div(b Rat) Rat { return a.Mul(b.Inv()) }

// Inv returns 1/a. It panics when a is 0.
func (a Rat) Inv() Rat {
	if a.Sign() == 0 {
		panic("exact: division by 0")
	}
	if a.big == nil {
		return New(a.d(), a.num)
	}
	return FromBig(new(big.Rat).Inv(a.big))
}

// Neg returns -a.
func (a Rat) Neg() Rat {
	if a.big != nil {
		return FromBig(new(big.Rat).Neg(a.big))
	}
	if a.num == minInt {
		return FromBig(new(big.Rat).Neg(a.Big()))
	}
	return Rat{num: -a.num, den: a.d()}
}

// Abs returns the distance of a from 0.
func (a Rat) Abs() Rat {
	if a.Sign() < 0 {
		return a.Neg()
	}
	return a
}

// Sign returns -1, 0 or 1.
func (a Rat) Sign() int {
	if a.big != nil {
		return a.big.Sign()
	}
	switch {
	case a.num < 0:
		return -1
	case a.num > 0:
		return 1
	}
	return 0
}

// Cmp returns -1, 0 or 1 as a is less than, equal to or more than b.
func (a Rat) Cmp(b Rat) int {
	if a.big == nil && b.big == nil {
		if a.d() == b.d() {
			switch {
			case a.num < b.num:
				return -1
			case a.num > b.num:
				return 1
			}
			return 0
		}
		x, ok1 := mul(a.num, b.d())
		y, ok2 := mul(b.num, a.d())
		if ok1 && ok2 {
			switch {
			case x < y:
				return -1
			case x > y:
				return 1
			}
			return 0
		}
	}
	return a.Big().Cmp(b.Big())
}

// Eq reports whether a and b are the same number. Never compare two Rat with ==.
func (a Rat) Eq(b Rat) bool { return a.Cmp(b) == 0 }

// Less reports whether a < b.
func (a Rat) Less(b Rat) bool { return a.Cmp(b) < 0 }

// IsInt reports whether a is a whole number.
func (a Rat) IsInt() bool {
	if a.big != nil {
		return a.big.IsInt()
	}
	return a.d() == 1
}

// Floor returns the greatest whole number that is not more than a.
func (a Rat) Floor() Rat {
	if a.big == nil {
		q := a.num / a.d()
		if a.num%a.d() < 0 {
			q--
		}
		return Rat{num: q, den: 1}
	}
	q := new(big.Int)
	q.Div(a.big.Num(), a.big.Denom()) // Euclidean: the denominator is positive, so this is the floor
	return FromBig(new(big.Rat).SetInt(q))
}

// Ceil returns the least whole number that is not less than a.
func (a Rat) Ceil() Rat { return a.Neg().Floor().Neg() }

// Int64 returns a as an integer; ok is false when a is not whole or does not fit.
func (a Rat) Int64() (n int64, ok bool) {
	if a.big != nil || a.d() != 1 {
		return 0, false
	}
	return a.num, true
}

// Frac returns numerator and denominator in lowest terms, the denominator positive.
func (a Rat) Frac() (num, den *big.Int) {
	b := a.Big()
	return b.Num(), b.Denom()
}

// Float returns the nearest float64: for pictures only, never for a decision.
func (a Rat) Float() float64 {
	f, _ := a.Big().Float64()
	return f
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

// UnmarshalJSON reads what MarshalJSON wrote.
func (a *Rat) UnmarshalJSON(b []byte) error {
	var s string
	if err := json.Unmarshal(b, &s); err != nil {
		return err
	}
	r, err := Parse(s)
	*a = r
	return err
}

// Min returns the lesser of a and b.
func Min(a, b Rat) Rat {
	if b.Less(a) {
		return b
	}
	return a
}

// Max returns the greater of a and b.
func Max(a, b Rat) Rat {
	if a.Less(b) {
		return b
	}
	return a
}

func abs(a int64) int64 {
	if a < 0 {
		return -a
	}
	return a
}

func gcd(a, b int64) int64 {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

func add(a, b int64) (int64, bool) {
	s := a + b
	return s, (s > a) == (b > 0) && s != minInt
}

func mul(a, b int64) (int64, bool) {
	hi, lo := bits.Mul64(uint64(abs(a)), uint64(abs(b)))
	if hi != 0 || lo > 1<<63-1 {
		return 0, false
	}
	if (a < 0) != (b < 0) {
		return -int64(lo), true
	}
	return int64(lo), true
}
