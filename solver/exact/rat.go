// Package exact decides systems of linear rules over exact rationals, and proves what it says.
//
// It does rational numbers, strict limits, linear programs, certificates and their checker, smallest
// conflicts and the smallest sets of rules that meet them all. It knows no wood, no walls and no words: a rule is a number to it.
package exact

import (
	"cmp"
	"math/big"
	"math/bits"
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
func Int(n int) Rat { return New(int64(n), 1) }

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

// into sets z to a, sparing memory where a fits two words, and returns it.
func (a Rat) into(z *big.Rat) *big.Rat {
	if a.big != nil {
		return z.Set(a.big)
	}
	if a.den <= 1 {
		return z.SetInt64(a.num)
	}
	return z.SetFrac64(a.num, a.den)
}

// Add returns a + b.
func (a Rat) Add(b Rat) Rat {
	if a.big == nil && b.big == nil {
		if a.den <= 1 && b.den <= 1 {
			if s, ok := add(a.num, b.num); ok {
				return Rat{num: s, den: 1}
			}
		} else if s, ok := addSmall(a.num, a.d(), b.num, b.d()); ok {
			return s
		}
	}
	return FromBig(new(big.Rat).Add(a.Big(), b.Big()))
}

// addSmall adds two fractions in lowest terms; taking the common part of the denominators out first keeps the
// intermediate numbers small (Knuth, The Art of Computer Programming, vol. 2, 4.5.1).
func addSmall(n1, d1, n2, d2 int64) (Rat, bool) {
	g := gcd(d1, d2)
	x, ok1 := mul(n1, d2/g)
	y, ok2 := mul(n2, d1/g)
	s, ok3 := add(x, y)
	if !ok1 || !ok2 || !ok3 {
		return Rat{}, false
	}
	h := int64(1)
	if g > 1 {
		h = gcd(abs(s), g)
	}
	d, ok := mul(d1/g, d2/h)
	return Rat{num: s / h, den: d}, ok
}

// Sub returns a - b.
func (a Rat) Sub(b Rat) Rat { return a.Add(b.Neg()) }

// Mul returns a × b.
func (a Rat) Mul(b Rat) Rat {
	if a.big == nil && b.big == nil {
		if a.den <= 1 && b.den <= 1 {
			if n, ok := mul(a.num, b.num); ok {
				return Rat{num: n, den: 1}
			}
		} else if p, ok := mulSmall(a.num, a.d(), b.num, b.d()); ok {
			return p
		}
	}
	return FromBig(new(big.Rat).Mul(a.Big(), b.Big()))
}

// mulSmall multiplies two fractions in lowest terms, cancelling crosswise first.
func mulSmall(n1, d1, n2, d2 int64) (Rat, bool) {
	if n1 == 0 || n2 == 0 {
		return Rat{}, true
	}
	g, h := gcd(abs(n1), d2), gcd(abs(n2), d1)
	n, ok1 := mul(n1/g, n2/h)
	d, ok2 := mul(d1/h, d2/g)
	return Rat{num: n, den: d}, ok1 && ok2
}

// plusProduct returns a + b × c, in one step where all three are whole.
func (a Rat) plusProduct(b, c Rat) Rat {
	if a.den <= 1 && b.den <= 1 && c.den <= 1 && a.big == nil && b.big == nil && c.big == nil {
		if p, ok := mul(b.num, c.num); ok {
			if s, ok := add(a.num, p); ok {
				return Rat{num: s, den: 1}
			}
		}
	}
	return a.Add(b.Mul(c))
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
	return Rat{num: -a.num, den: a.den}
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
			return cmp.Compare(a.num, b.num)
		}
		return cmpSmall(a.num, a.d(), b.num, b.d())
	}
	return a.Big().Cmp(b.Big())
}

// cmpSmall compares n1/d1 with n2/d2 by cross products of 128 bits, which cannot overflow.
func cmpSmall(n1, d1, n2, d2 int64) int {
	if (n1 < 0) != (n2 < 0) || n1 == 0 || n2 == 0 {
		return cmp.Compare(n1, n2)
	}
	h1, l1 := bits.Mul64(uint64(abs(n1)), uint64(d2))
	h2, l2 := bits.Mul64(uint64(abs(n2)), uint64(d1))
	c := cmp.Compare(h1, h2)
	if c == 0 {
		c = cmp.Compare(l1, l2)
	}
	if n1 < 0 {
		return -c
	}
	return c
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
	if a.big != nil {
		return a.big.Num().Int64(), a.big.IsInt() && a.big.Num().IsInt64()
	}
	return a.num, a.den <= 1
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
