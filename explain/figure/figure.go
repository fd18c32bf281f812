// Package figure writes lengths as a person reads them: 2-1/2, 2-5/6, 63.5.
//
// It does mixed fractions, the nearest mark of a tape, and millimeters. It knows no walls, no words
// around a figure and no units beside it; rounding here is for reading only and decides nothing.
package figure

import (
	"saywright/solver"
	"saywright/solver/exact"
)

// Style is how the lengths of one answer are written. Every length taken is in inches.
// The zero value writes inches and works to 1/16 in.
type Style struct {
	Metric bool      // write millimeters
	Tape   exact.Rat // smallest mark worked to, inches; 0 is 1/16 in, or 0.1 mm when Metric
}

// Of returns the style that an answer asks for.
func Of(a *solver.Answer) Style { return Style{Metric: a.Metric, Tape: a.Tape} }

// Unit returns "in" or "mm", to stand once where a table or a drawing says what its figures are.
func (s Style) Unit() string {
	if s.Metric {
		return "mm"
	}
	return "in"
}

// Length writes r exactly. Inches are mixed fractions (2-1/2, 2-5/6); a decimal that is no handy fraction
// stays a decimal (2.37). Millimeters are decimals where those end within six places, else mixed fractions.
func (s Style) Length(r exact.Rat) string {
	if s.Metric {
		return millimeters(r.Mul(solver.PerInch))
	}
	if decimalReadsBetter(r) {
		return solver.Decimal(r)
	}
	return solver.Fraction(r)
}

// Plain writes a number that is no length, such as a count or a share: it is exact, in whatever unit the answer is.
func (s Style) Plain(r exact.Rat) string {
	if decimalReadsBetter(r) {
		return solver.Decimal(r)
	}
	return solver.Fraction(r)
}

// Near writes the tape mark nearest to r, half a mark upward, and reports whether r lies on it.
func (s Style) Near(r exact.Rat) (text string, exactly bool) {
	m := s.Nearest(r)
	return s.mark(m), m.Eq(r)
}

// About writes r where it lies on the tape, and "about" the nearest mark where it does not.
func (s Style) About(r exact.Rat) string {
	text, exactly := s.Near(r)
	if exactly {
		return text
	}
	return "about " + text
}

// Down writes the last tape mark that is not past r, as lengths to cut are rounded.
func (s Style) Down(r exact.Rat) string {
	step := s.step()
	return s.mark(r.Div(step).Floor().Mul(step))
}

// Nearest returns the tape mark nearest to r in inches, half a mark upward: 8-5/6 is 8-13/16 on sixteenths.
func (s Style) Nearest(r exact.Rat) exact.Rat {
	step := s.step()
	return r.Div(step).Add(exact.New(1, 2)).Floor().Mul(step)
}

func (s Style) mark(r exact.Rat) string {
	if s.Metric {
		return millimeters(r.Mul(solver.PerInch))
	}
	return solver.Fraction(r)
}

var (
	sixteenth  = exact.New(1, 16)
	millitenth = exact.New(1, 254) // 0.1 mm in inches
)

// step is the smallest mark that figures are rounded to. A tape of inch fractions shows no millimeters:
// with Metric it gives way to tenths of a millimeter.
func (s Style) step() exact.Rat {
	switch {
	case s.Metric && (s.Tape.Sign() <= 0 || !s.Tape.Div(millitenth).IsInt()):
		return millitenth
	case s.Tape.Sign() <= 0:
		return sixteenth
	}
	return s.Tape
}

func millimeters(mm exact.Rat) string {
	if mm.Mul(exact.Int(1_000_000)).IsInt() {
		return solver.Decimal(mm)
	}
	return solver.Fraction(mm)
}

// decimalReadsBetter holds for figures such as 2.37 and 0.1575: they end within four places,
// and as a fraction they would have a denominator that nobody reads off a tape or does in the head (above 20).
func decimalReadsBetter(r exact.Rat) bool {
	_, den := r.Frac()
	return den.IsInt64() && den.Int64() > 20 && 10_000%den.Int64() == 0
}
