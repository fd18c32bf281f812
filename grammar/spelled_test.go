package grammar

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/measure"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/solver"
	"saywright/solver/exact"
)

// atomsOf cuts a line as Read does.
func atomsOf(line string) []scan.Atom {
	letters, _ := scan.Fold(line)
	return scan.Split(letters)
}

// unhyphenated are the ways that a spelled number is written or dictated: with its hyphens, and without.
func unhyphenated(words string) []string {
	if !strings.Contains(words, "-") {
		return []string{words}
	}
	return []string{words, strings.ReplaceAll(words, "-", " ")}
}

// TestCardinals reads every whole number from 0 to 9,999 as Unicode CLDR 41 spells it (common/rbnf/en.xml,
// spellout-cardinal and spellout-cardinal-verbose): by the reader of numbers, as money, and, where such a wall can be
// meant, as a length and as a count.
func TestCardinals(t *testing.T) {
	s := readSpellRules(t)
	for n := 0; n < 10_000; n++ {
		for _, set := range []string{"spellout-cardinal", "spellout-cardinal-verbose"} {
			for _, words := range unhyphenated(s.spell(set, n)) {
				holdsCardinal(t, words, n)
			}
		}
	}
}

func holdsCardinal(t *testing.T, words string, n int) {
	r := measure.Reader{Atoms: atomsOf(words)}
	got, next, ok := r.Whole(0)
	require.True(t, ok && got.Bad == "" && next == len(r.Atoms), "%q: got %+v up to word %d", words, got, next)
	require.True(t, got.Val.Eq(exact.Int(n)), "%q: got %s want %d", words, got.Val, n)
	if n == 0 {
		return // nothing of the three can be 0
	}
	holdsLine(t, "budget "+words+" dollars", solver.Of(solver.Budget, solver.Eq, solver.Value{Num: exact.Int(n), Unit: solver.Currency}))
	if n >= 24 && n <= 1200 {
		holdsLine(t, "span "+words+" inches", solver.Of(solver.Span, solver.Eq, solver.Inches(exact.Int(n))))
	}
	if n <= 60 {
		holdsLine(t, words+" rails", solver.Of(solver.Rails, solver.Eq, solver.Number(n)))
	}
}

func holdsLine(t *testing.T, line string, want solver.Statement) {
	got := Read(line, act.Context{})
	require.Nil(t, got.Ask, "%q was asked back: %+v", line, got.Ask)
	require.Equal(t, want.String(), parse.Normal(got.Acts), "%q", line)
}

// denominator is a part of an inch in words: an ordinal of Unicode CLDR 41 (common/rbnf/en.xml, spellout-ordinal), and the
// two words that English has beside them, half and quarter.
func (s spellRules) denominators(d int) []string {
	switch d {
	case 2:
		return []string{"half"}
	case 4:
		return []string{"quarter", s.spell("spellout-ordinal", 4)}
	}
	return []string{s.spell("spellout-ordinal", d)}
}

// TestSpelledFractions reads every proper fraction with a denominator up to 64 as it is spelled with CLDR's cardinals and
// ordinals ("one half", "three quarters", "eleven sixteenths", "thirty-one sixty-fourths"), alone and after a whole
// number. Without its hyphens a fraction that no tape has, or one of more than twenty parts, may be asked back ("twenty one
// thirty seconds" is 21/32 or 20-1/32), and is never taken for another.
func TestSpelledFractions(t *testing.T) {
	s := readSpellRules(t)
	read, asked := 0, 0
	for d := 2; d <= 64; d++ {
		for k := 1; k < d; k++ {
			for _, part := range s.denominators(d) {
				words := s.spell("spellout-cardinal", k) + " " + plural(part, k)
				f := exact.New(int64(k), int64(d))
				for i, said := range unhyphenated(words) {
					clear := i == 0 || measure.TapeDenominator[d] && (k <= 20 || k%10 == 0)
					for _, whole := range []int{0, 2, 35} {
						line, want := said, f
						if whole > 0 {
							line, want = s.spell("spellout-cardinal", whole)+" and "+said, f.Add(exact.Int(whole))
						}
						if holdsFraction(t, line, want, clear) {
							read++
						} else {
							asked++
						}
					}
				}
			}
		}
	}
	t.Logf("%d spelled fractions read, %d without hyphens asked back", read, asked)
}

// TestSpelledDecimals reads decimals as CLDR 41 spells them: the whole number, "point", and the digits one by one
// (spellout-cardinal, rule x.x).
func TestSpelledDecimals(t *testing.T) {
	s := readSpellRules(t)
	for n := 0; n < 24; n++ {
		for _, digits := range []string{"5", "25", "75", "125", "375", "0625", "37", "06", "805"} {
			words := s.spell("spellout-cardinal", n) + " point"
			for _, d := range digits {
				words += " " + s.spell("spellout-cardinal", int(d-'0'))
			}
			want := exact.Must(strconv.Itoa(n) + "." + digits)
			holdsLine(t, "gap "+words+" inches", solver.Of(solver.Gap, solver.Eq, solver.Inches(want)))
		}
	}
}

func plural(part string, k int) string {
	switch {
	case k == 1:
		return part
	case part == "half":
		return "halves"
	}
	return part + "s"
}

// holdsFraction reports whether a fraction was read; it must be where it is clear, and must be right where it is read.
func holdsFraction(t *testing.T, line string, want exact.Rat, clear bool) bool {
	r := measure.Reader{Atoms: atomsOf(line)}
	got, next, ok := r.Mixed(0)
	if !clear && (!ok || got.Bad != "" || next < len(r.Atoms)) {
		r := Read("gap "+line, act.Context{})
		require.NotNil(t, r.Ask, "%q was taken for %s", line, parse.Normal(r.Acts))
		return false
	}
	require.True(t, ok && got.Bad == "" && next == len(r.Atoms), "%q: got %+v up to word %d of %d", line, got, next, len(r.Atoms))
	require.True(t, got.Val.Eq(want), "%q: got %s want %s", line, got.Val, want)
	if v := exact.Int(24); want.Less(v) {
		holdsLine(t, "gap "+line+" inches", solver.Of(solver.Gap, solver.Eq, solver.Inches(want)))
	}
	return true
}
