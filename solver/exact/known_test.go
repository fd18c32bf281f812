package exact

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
)

// rows writes a system in short: each row is its factors, unknown by unknown, then relation and right side.
func rows(vars int, lines ...[]any) *System {
	s := &System{Vars: vars}
	for i, line := range lines {
		r := Row{Rel: line[vars].(Rel), RHS: Must(fmt.Sprint(line[vars+1])), Rule: i}
		for v := range vars {
			r.Terms = append(r.Terms, Term{v, Must(fmt.Sprint(line[v]))})
		}
		s.Rows = append(s.Rows, r)
	}
	return s
}

func terms(factors ...any) []Term {
	var out []Term
	for v, f := range factors {
		out = append(out, Term{v, Must(fmt.Sprint(f))})
	}
	return out
}

// Beale's example of 1955, on which the simplex method with the usual choice of pivots goes round in a circle (from memory).
func TestBealeDoesNotCycle(t *testing.T) {
	s := rows(4,
		[]any{"1/4", -60, "-1/25", 9, LE, 0},
		[]any{"1/2", -90, "-1/50", 3, LE, 0},
		[]any{0, 0, 1, 0, LE, 1},
		[]any{1, 0, 0, 0, GE, 0}, []any{0, 1, 0, 0, GE, 0}, []any{0, 0, 1, 0, GE, 0}, []any{0, 0, 0, 1, GE, 0})
	obj := terms("-3/4", 150, "-1/50", 6)
	p := Prepare(s)
	b, c := p.Min(obj)
	requireBound(t, Bound{Val: Must("-1/20")}, b, s, obj)
	require.NoError(t, CheckBound(s, obj, true, b, c))
	require.Less(t, p.Pivots(), 50)
}

// Klee and Minty's cubes (1972), whose greatest value is 5 to the number of unknowns (from memory).
func TestKleeMinty(t *testing.T) {
	best := int64(1)
	for n := 1; n <= 9; n++ {
		best *= 5
		s := &System{Vars: n}
		var obj []Term
		limit := int64(1)
		for i := range n {
			limit *= 5
			r := Row{Rel: LE, RHS: New(limit, 1), Rule: i}
			for j := range i {
				r.Terms = append(r.Terms, Term{j, New(2<<(i-j), 1)})
			}
			r.Terms = append(r.Terms, Term{i, Int(1)})
			s.Rows = append(s.Rows, r, Row{Terms: []Term{{i, Int(1)}}, Rel: GE, Rule: Background})
			obj = append(obj, Term{i, New(1<<(n-1-i), 1)})
		}
		b, c := Prepare(s).Max(obj)
		requireBound(t, Bound{Val: New(best, 1)}, b, s, obj)
		require.NoError(t, CheckBound(s, obj, false, b, c))
	}
}

// Rails 5-1/2 in, gap and bottom gap 2-1/2 in, 48 in high: six rails and no other number (common practice, no source).
func TestRailsOfAHalfWall(t *testing.T) {
	for n := 1; n <= 12; n++ {
		s := railed(n, "48")
		s.Rows = append(s.Rows, Row{terms(0, 1), EQ, Must("2.5"), 2}, Row{terms(0, 1, -1), EQ, Rat{}, 3})
		point, cert := Solve(s)
		require.Equal(t, n == 6, point != nil, "%d rails", n)
		if cert != nil {
			require.NoError(t, Check(s, cert))
			blamed := []int{0, 1, 2, 3}
			if n > 6 { // the gaps alone are too much, whatever is under the bottom rail
				blamed = blamed[:3]
			}
			require.Equal(t, blamed, cert.Rules(s))
		}
	}
}

// railed: unknowns height, gap, bottom gap; rule 0 adds n rails of 5-1/2 in up, rule 1 is the height.
func railed(n int, height string) *System {
	return &System{Vars: 3, Rows: []Row{
		{terms(1, 1-n, -1), EQ, Must("5.5").Mul(Int(n)), 0},
		{terms(1), EQ, Must(height), 1},
		{terms(0, 0, 1), GE, Rat{}, Background},
	}}
}

// Seven rails and six gaps of 2 in are 38-1/2 + 12 = 50-1/2 in, and the wall is 50: worked by hand.
func TestCertificateIsTheSumOnPaper(t *testing.T) {
	s := railed(7, "50")
	s.Rows = append(s.Rows, Row{terms(0, 1), GE, Int(2), 2})
	_, c := Solve(s)
	require.NoError(t, Check(s, c))
	require.Equal(t, "[{0 -1} {1 1} {2 -1} {3 -6}]", fmt.Sprint(c))
	require.Equal(t, []int{0, 1, 2}, c.Rules(s))

	s.Rows[1].RHS = Must("50.5")
	point, _ := Solve(s)
	require.Equal(t, "[101/2 2 0]", fmt.Sprint(point))

	s.Rows[3].Rel = GT // more than 2 in: now 50-1/2 will not do, and nothing but more than 50-1/2 will
	_, c = Solve(s)
	require.NoError(t, Check(s, c))
	s.Rows[1].Rel, s.Rows[1].RHS = LE, Int(100)
	b, _ := Prepare(s).Min(terms(1))
	requireBound(t, Bound{Val: Must("50.5"), Open: true}, b, s, terms(1))
}

func TestSmallestSystems(t *testing.T) {
	point, cert := Solve(&System{})
	require.NotNil(t, point)
	require.Nil(t, cert)
	for rel, holds := range map[Rel][3]bool{LE: {false, true, true}, GE: {true, true, false}, EQ: {false, true, false}, LT: {false, false, true}, GT: {true, false, false}} {
		for i, ok := range holds { // 0 rel -1, 0, 1
			s := &System{Vars: 1, Rows: []Row{{nil, rel, Int(i - 1), 0}}}
			point, cert := Solve(s)
			require.Equal(t, ok, point != nil, show(s))
			if !ok {
				require.NoError(t, Check(s, cert))
			}
			s.Rows[0].Terms = []Term{{0, Int(2)}, {0, Int(-2)}} // terms that cancel are no terms
			point, cert = Solve(s)
			require.Equal(t, ok, point != nil, show(s))
			require.Equal(t, ok, cert == nil)
		}
	}
	b, c := Prepare(&System{Vars: 1}).Min(nil)
	require.Equal(t, Bound{}, b, "nothing adds up to 0")
	require.NotNil(t, c)
}

// Of two rows that say the same, the one that is never blamed is named.
func TestBackgroundIsBlamedFirst(t *testing.T) {
	for _, swap := range []bool{false, true} {
		s := rows(1, []any{1, GE, 5}, []any{2, GE, 10}, []any{1, LE, 4})
		s.Rows[1].Rule = Background
		if swap {
			s.Rows[0], s.Rows[1] = s.Rows[1], s.Rows[0]
		}
		_, c := Solve(s)
		require.Equal(t, []int{2}, c.Rules(s))
	}
}

// Numbers of a thousand digits are numbers like others.
func TestManyDigits(t *testing.T) {
	d := draw(60)
	digits := make([]byte, 1000)
	for i := range digits {
		digits[i] = '1' + byte(d.IntN(9))
	}
	a, b := string(digits), string(digits[1:])+"7"
	s := rows(2, []any{a, b, EQ, b}, []any{b, a, LE, a}, []any{1, 0, GT, 0}, []any{"1/" + a, 1, GE, 0})
	obj := terms(1, "1/"+b)
	require.Equal(t, b < a, agree(t, s, obj)) // by hand: x·(b - a²/b) <= 0 is left, and x > 0
	s.Rows[2].Rel = GE
	require.True(t, agree(t, s, obj))
}

// Factors whose common denominator does not fit a word.
func TestFactorsOfManyDenominators(t *testing.T) {
	a, b := "1/3037000507", "1/9223372036854775783"
	s := rows(2, []any{a, b, GE, 1}, []any{"2/3037000507", "2/9223372036854775783", LT, 2}, []any{1, 0, GE, 0}, []any{0, 1, GE, 0})
	require.False(t, agree(t, s, terms(1, 1)), "twice the first row against the second")
	require.Equal(t, []int{0, 1}, Prepare(s).Certificate().Rules(s))
	s.Rows[1].Rel = LE
	require.True(t, agree(t, s, terms(1, 1)))
}
