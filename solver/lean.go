package solver

import "saywright/solver/exact"

// tilt is how far a post face was told to lean: so far to the right (negative: left) over so much height. Inches.
type tilt struct{ over, run exact.Rat }

// slope is inches to the right for each inch upward; a post of which nothing was told counts as plumb.
func (t *tilt) slope() exact.Rat {
	if t == nil {
		return exact.Rat{}
	}
	return t.over.Div(t.run)
}

// term is how far the face goes over a height, without sign.
func (t *tilt) term(height exact.Rat) Expr {
	return Quotient(Product(Num(t.over.Abs()), Num(height.Abs())), Num(t.run))
}

// leansBeside returns the leans that were told of the posts at a bay's two ends, nil where nothing was told.
func (s *Site) leansBeside(b Stretch) (left, right *tilt) {
	before, after := s.postsBeside(b)
	for _, st := range s.Leans {
		t, ok := tiltSaid(st)
		if !ok {
			continue
		}
		switch n := st.Name.Post; {
		case n == 0 && st.Name.At == "left" && before == 0, n > 0 && n == before:
			left = t
		case n == 0 && st.Name.At == "right" && after == 0, n > 0 && n == after:
			right = t
		}
	}
	return left, right
}

// postsBeside returns the numbers of the added posts at a bay's two ends, 0 for an end post.
func (s *Site) postsBeside(b Stretch) (before, after int) {
	posts := s.Layout.Along.Posts
	for i, p := range posts {
		if p.FromLeft.Less(b.FromLeft) {
			before = i + 1
		}
	}
	if before < len(posts) {
		after = before + 1
	}
	return before, after
}

// tiltSaid reads "leans 3/8 in right in 48 in". It is not ok for a lean across the wall, or over no height.
func tiltSaid(st Statement) (*tilt, bool) {
	if st.Upper.Num.Sign() <= 0 {
		return nil, false
	}
	switch st.Value.Word {
	case "right":
		return &tilt{st.Value.Num, st.Upper.Num}, true
	case "left":
		return &tilt{st.Value.Num.Neg(), st.Upper.Num}, true
	}
	return nil, false
}

// bevel is how far out of square an end wants to be, over the face of a rail.
type bevel struct {
	over    exact.Rat // inches over the face, without sign
	marks   exact.Rat // the same in tape marks, to the nearest
	tenths  int64     // degrees times ten, correctly rounded
	outward bool      // the end's top edge reaches farther out than its bottom edge
}

// bevelOf returns the bevel of an end whose post face moves by shift, away from the rail, over the face. It is told
// when it reaches a mark of the tape.
func bevelOf(shift, face, mark exact.Rat) (bevel, bool) {
	b := bevel{over: shift.Abs(), outward: shift.Sign() > 0}
	if b.over.Less(mark) || face.Sign() <= 0 {
		return b, false
	}
	b.marks = b.over.Div(mark).Add(exact.New(1, 2)).Floor()
	b.tenths = DegreeTenths(b.over.Div(face))
	return b, true
}

// DegreeTenths returns the angle whose tangent is the given ratio, 0 or more, in tenths of a degree, correctly rounded.
// The angle is enclosed between two rationals by partial sums of the arctangent series (its terms alternate and shrink, so
// neighboring sums enclose it), π likewise by Machin's formula 16·atan(1/5) − 4·atan(1/239); more terms are taken
// until both ends round alike. They always do in the end: tan of a rational number of degrees is rational only at
// multiples of 45° (Niven's theorem and its tangent form), and no rounding limit, an odd multiple of 1/20°, is one.
func DegreeTenths(tangent exact.Rat) int64 {
	for terms := 8; ; terms *= 2 {
		piLow, piHigh := piWithin(terms)
		low, high := arctanWithin(tangent, terms)
		a := roundInt(low.Mul(exact.Int(1800)).Div(piHigh))
		b := roundInt(high.Mul(exact.Int(1800)).Div(piLow))
		if a == b {
			return a
		}
	}
}

func roundInt(r exact.Rat) int64 {
	n, _ := r.Add(exact.New(1, 2)).Floor().Int64()
	return n
}

// arctanWithin encloses atan(t) for t ≥ 0. Beyond 1/2 the argument is turned: atan(t) = π/2 − atan(1/t) for t > 1, and
// atan(t) = atan(1/2) + atan((t − 1/2)/(1 + t/2)) for 1/2 < t ≤ 1, so that the series shrinks at least fourfold a term.
func arctanWithin(t exact.Rat, terms int) (low, high exact.Rat) {
	half := exact.New(1, 2)
	switch {
	case exact.Int(1).Less(t):
		a, b := arctanWithin(t.Inv(), terms)
		piLow, piHigh := piWithin(terms)
		return piLow.Mul(half).Sub(b), piHigh.Mul(half).Sub(a)
	case half.Less(t):
		a, b := arctanSeries(half, terms)
		c, d := arctanSeries(t.Sub(half).Div(exact.Int(1).Add(t.Mul(half))), terms)
		return a.Add(c), b.Add(d)
	}
	return arctanSeries(t, terms)
}

// arctanSeries returns two neighboring partial sums of t − t³/3 + t⁵/5 − …, lower and upper, for 0 ≤ t ≤ 1/2.
func arctanSeries(t exact.Rat, terms int) (low, high exact.Rat) {
	power, square := t, t.Mul(t)
	for k := 0; k < 2*terms; k++ {
		term := power.Div(exact.Int(2*k + 1))
		if k%2 == 0 {
			high = low.Add(term)
		} else {
			low = high.Sub(term)
		}
		power = power.Mul(square)
	}
	return low, high
}

func piWithin(terms int) (low, high exact.Rat) {
	a, b := arctanSeries(exact.New(1, 5), terms)
	c, d := arctanSeries(exact.New(1, 239), terms)
	return a.Mul(exact.Int(16)).Sub(d.Mul(exact.Int(4))), b.Mul(exact.Int(16)).Sub(c.Mul(exact.Int(4)))
}
