package exact

import (
	"encoding/json"
	"math"
	"math/big"
	"testing"

	"github.com/stretchr/testify/require"
)

// edges are numbers around which int64 arithmetic goes wrong.
var edges = []int64{0, 1, -1, 2, -2, 3, 6, 16, 127, 1 << 31, 1<<31 - 1, 1<<32 + 1, -1 << 32, 3037000499, 3037000500, -3037000500,
	1 << 62, 1<<62 - 1, -1 << 62, math.MaxInt64 - 1, math.MaxInt64, -math.MaxInt64, math.MinInt64, math.MinInt64 + 2}

// requireRat holds a number against math/big, and its form against what is promised: lowest terms, two words where they do.
func requireRat(t *testing.T, want *big.Rat, got Rat, what string) {
	t.Helper()
	require.Zero(t, want.Cmp(got.Big()), "%s: got %s, want %s", what, got, want.RatString())
	require.Equal(t, want.RatString(), got.String(), what)
	fits := want.Num().IsInt64() && want.Num().Int64() != math.MinInt64 && want.Denom().IsInt64()
	require.Equal(t, fits, got.big == nil, "%s: form of %s", what, got)
	if fits {
		require.Equal(t, want.Num().Int64(), got.num, what)
		require.Equal(t, want.Denom().Int64(), got.d(), what)
	}
	require.Equal(t, want.Sign(), got.Sign(), what)
	require.Equal(t, want.IsInt(), got.IsInt(), what)
}

// edgeRats are fractions of edges, small ones, and ones of many digits.
func edgeRats() []Rat {
	var all []Rat
	for i, n := range edges {
		all = append(all, New(n, 1))
		if d := edges[(i*7+5)%len(edges)]; d != 0 {
			all = append(all, New(n, d))
		}
		if d := edges[len(edges)-1-i]; d != 0 {
			all = append(all, New(n, d))
		}
	}
	d := draw(10)
	for range 24 {
		all = append(all, New(int64(d.Uint64()), int64(d.Uint64()|1)), New(int64(d.between(-99, 99)), int64(d.between(1, 32))))
	}
	huge := new(big.Int).Exp(big.NewInt(7), big.NewInt(90), nil)
	return append(all, Rat{}, FromBig(new(big.Rat).SetInt(huge)), FromBig(new(big.Rat).SetFrac(big.NewInt(-5), huge)))
}

func TestRatAgreesWithBig(t *testing.T) {
	all := edgeRats()
	for _, a := range all {
		x := a.Big()
		requireRat(t, x, FromBig(x), "FromBig")
		requireRat(t, new(big.Rat).Neg(x), a.Neg(), "Neg")
		requireRat(t, new(big.Rat).Abs(x), a.Abs(), "Abs")
		if a.Sign() != 0 {
			requireRat(t, new(big.Rat).Inv(x), a.Inv(), "Inv")
		}
		requireWhole(t, x, a)
		for _, b := range all {
			y := b.Big()
			requireRat(t, new(big.Rat).Add(x, y), a.Add(b), "Add")
			requireRat(t, new(big.Rat).Sub(x, y), a.Sub(b), "Sub")
			requireRat(t, new(big.Rat).Mul(x, y), a.Mul(b), "Mul")
			if b.Sign() != 0 {
				requireRat(t, new(big.Rat).Quo(x, y), a.Div(b), "Div")
			}
			require.Equal(t, x.Cmp(y), a.Cmp(b), "%s and %s", a, b)
			require.Equal(t, x.Cmp(y) == 0, a.Eq(b))
			require.Equal(t, x.Cmp(y) < 0, a.Less(b))
			require.True(t, Min(a, b).Cmp(Max(a, b)) <= 0)
			require.True(t, Min(a, b).Add(Max(a, b)).Eq(a.Add(b)))
		}
	}
}

func TestRatPlusProductAgreesWithBig(t *testing.T) {
	all := edgeRats()
	d := draw(11)
	for range 20000 {
		a, b, c := all[d.IntN(len(all))], all[d.IntN(len(all))], all[d.IntN(len(all))]
		want := new(big.Rat).Mul(b.Big(), c.Big())
		requireRat(t, want.Add(want, a.Big()), a.plusProduct(b, c), "a + b·c")
	}
}

// requireWhole checks the roundings by what defines them: floor <= a < floor + 1, ceil - 1 < a <= ceil.
func requireWhole(t *testing.T, x *big.Rat, a Rat) {
	t.Helper()
	f, c := a.Floor(), a.Ceil()
	require.True(t, f.IsInt() && c.IsInt())
	require.True(t, f.Cmp(a) <= 0 && a.Less(f.Add(Int(1))), "floor of %s: %s", a, f)
	require.True(t, a.Cmp(c) <= 0 && c.Sub(Int(1)).Less(a), "ceil of %s: %s", a, c)
	n, ok := a.Int64()
	require.Equal(t, x.IsInt() && x.Num().IsInt64(), ok, "Int64 of %s", a)
	if ok {
		require.Equal(t, x.Num().Int64(), n)
	}
	num, den := a.Frac()
	require.Zero(t, x.Num().Cmp(num))
	require.Zero(t, x.Denom().Cmp(den))
}

// Multiplying what comes in must not be seen in what went out before.
func TestRatNeverChanges(t *testing.T) {
	x := new(big.Rat).SetInt(new(big.Int).Lsh(big.NewInt(1), 100))
	a := FromBig(x)
	before := a.String()
	x.SetInt64(1)
	a.Big().SetInt64(2)
	num, _ := a.Frac()
	num.SetInt64(3)
	_, _, _ = a.Neg(), a.Inv(), a.Add(a)
	require.Equal(t, before, a.String())
}

func TestRatRefusesZeroDivisors(t *testing.T) {
	require.Panics(t, func() { New(1, 0) })
	require.Panics(t, func() { Int(1).Div(Rat{}) })
	require.Panics(t, func() { Rat{}.Inv() })
}

func TestParse(t *testing.T) {
	for in, want := range map[string]string{"5": "5", "-17/2": "-17/2", "2.37": "237/100", ".5": "1/2", "+3": "3", "0010": "10", "010/4": "5/2",
		"000000000000000000000010/00000000000000000000004": "5/2", "-00000000000000000000000.500": "-1/2", "999999999999999999": "999999999999999999",
		".000000000000000001": "1/1000000000000000000", "-99999999/99999999": "-1", "6/4": "3/2", "-0": "0", "0/7": "0", "-9223372036854775808": "-9223372036854775808", "1/9223372036854775808": "1/9223372036854775808"} {
		r, err := Parse(in)
		require.NoError(t, err, in)
		require.Equal(t, want, r.String(), in)
	}
	for _, in := range []string{"", "-", "+", ".", "/", "1/", "/2", "5.", "1/0", "1/-2", "--1", "+-1", "1.5/2", "1/2/3", "1.2.3", "1e3", "0x10", "0b1/2", "1_0",
		" 1", "1 ", "½", "NaN", "Inf", "1/0.5", "1\n"} {
		_, err := Parse(in)
		require.Error(t, err, "%q", in)
	}
	require.Panics(t, func() { Must("five") })
}

func TestRatJSON(t *testing.T) {
	for _, a := range edgeRats() {
		out, err := json.Marshal(a)
		require.NoError(t, err)
		var back Rat
		require.NoError(t, json.Unmarshal(out, &back))
		require.True(t, a.Eq(back), string(out))
	}
	kept := Int(7)
	for _, bad := range []string{`"x"`, `5`, `null`, `""`, `{}`} {
		require.Error(t, json.Unmarshal([]byte(bad), &kept), bad)
		require.Equal(t, "7", kept.String())
	}
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{"5", "-17/2", "2.37", "1/0", "0/0", "--1", ".5", "99999999999999999999"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		r, err := Parse(s)
		if err != nil {
			return
		}
		want, ok := new(big.Rat).SetString(s)
		if s[0] == '0' || len(s) > 1 && s[1] == '0' { // big.Rat reads a leading 0 before "/" as base 8
			want, ok = r.Big(), true
		}
		require.True(t, ok && want.Cmp(r.Big()) == 0, s)
		back, err := Parse(r.String())
		require.NoError(t, err)
		require.True(t, back.Eq(r))
	})
}
