package measure

import (
	"saywright/solver"
	"saywright/solver/exact"
)

// Says writes an amount as it was said: "4 in", "4 ft", "1.2".
func (a Amount) Says(inMetric bool) string {
	switch a.Unit {
	case Inches:
		return solver.Fraction(a.Val) + " in"
	case Feet:
		if a.Per.Sign() > 0 && a.Val.Div(a.Per).IsInt() && a.Per.Eq(Twelve) {
			return a.Val.Div(a.Per).String() + " ft"
		}
		return solver.Fraction(a.Val) + " in"
	case Metric:
		return solver.Decimal(a.Val.Mul(solver.PerInch)) + " mm"
	}
	if a.Size != "" {
		return a.Size
	}
	if inMetric {
		return solver.Decimal(a.Val) + " mm"
	}
	return solver.Fraction(a.Val)
}

// Scale is how many inches one of the unit is that the amount was said in.
func (a Amount) Scale() exact.Rat {
	if a.Per.Sign() != 0 {
		return a.Per
	}
	return exact.Int(1)
}
