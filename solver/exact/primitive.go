package exact

import "math/big"

// primitive divides the terms by a common factor, so that their factors become coprime whole numbers, the first one
// positive, and returns that factor. Rows that differ only in scale then have the same terms.
func primitive(terms []Term) Rat {
	scale := content(terms)
	if terms[0].Coef.Sign() < 0 {
		scale = scale.Neg()
	}
	if inv := scale.Inv(); !inv.Eq(Int(1)) {
		for i := range terms {
			terms[i].Coef = terms[i].Coef.Mul(inv)
		}
	}
	return scale
}

// content returns the greatest positive number of which every factor is a whole multiple.
func content(terms []Term) Rat {
	num, den := int64(0), int64(1)
	for i := range terms {
		c := &terms[i].Coef
		if c.big != nil {
			return contentBig(terms)
		}
		num = gcd(abs(c.num), num)
		l, ok := mul(den, c.d()/gcd(den, c.d()))
		if !ok {
			return contentBig(terms)
		}
		den = l
	}
	return New(num, den)
}

func contentBig(terms []Term) Rat {
	num, den := new(big.Int), big.NewInt(1)
	for _, t := range terms {
		n, d := t.Coef.Frac()
		num.GCD(nil, nil, num, n.Abs(n))
		g := new(big.Int).GCD(nil, nil, den, d)
		den.Mul(den, d.Quo(d, g))
	}
	return FromBig(new(big.Rat).SetFrac(num, den))
}

// finish sorts a refutation and divides it by a common factor: its multipliers become coprime whole numbers.
func (p *Prepared) finish(c Certificate) Certificate {
	c.sort()
	terms := make([]Term, len(c))
	for i := range c {
		terms[i].Coef = c[i].Mult
	}
	inv := content(terms).Inv()
	for i := range c {
		c[i].Mult = c[i].Mult.Mul(inv)
	}
	return c
}
