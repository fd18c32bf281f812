package solver

import (
	"fmt"
	"math"
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

// single is a wall of one bay and no opening, its rails stacked on even gaps; brackets take nothing.
func single(n int, width string) *Site {
	w := rat(width)
	return &Site{Layout: &Layout{Up: stacked(n, "11/2", "5/2", "5/2"), Along: &Along{Span: w, Bays: []Stretch{{Width: w}}}},
		RailSize: "2x6", Tape: rat("1/16")}
}

// Equal widths between posts that lean alike still want a shorter rail: 5-1/2 · 3/4 / 48 = 11/128 in.
func TestPostsLeaningAlike(t *testing.T) {
	s := single(5, "115-1/2")
	s.Measured = []Statement{measured(1, 0, "bottom", "115-1/2"), measured(1, 0, "top", "115-1/2")}
	require.Equal(t, "231/2", s.Cuts().Cuts[0].Exact.String(), "widths alone cannot see it")
	s.Leans = []Statement{leans("left", "3/4", "right", "48")}
	f := s.Cuts()
	require.Equal(t, rat("115-1/2").Sub(exact.New(11, 128)).String(), f.Cuts[0].Exact.String())
	require.Equal(t, []string{"across"}, factsOf(f, "tightest at")[0].Names)
	require.Contains(t, sums(f.Work), "width that counts: (231/2) - (3/4) * (11/2) / 48 = 14773/128")
	require.Equal(t, "115-3/8", Fraction(f.Cuts[0].Length), "115-53/128 lies between 115-6/16 and 115-7/16")
	require.Empty(t, f.Cautions, "with a lean told there is nothing left to warn of")
	s.Leans = []Statement{leans("right", "3/4", "left", "48")}
	require.Equal(t, rat("115-1/2").Sub(exact.New(11, 128)).String(), s.Cuts().Cuts[0].Exact.String())
}

// The bevel is told when it reaches a mark over the face: 3/4 in 48 is 11/128 over 5-1/2, atan(1/64) is 0.895°.
func TestBevelTold(t *testing.T) {
	s := single(5, "115-1/2")
	s.Measured = []Statement{measured(1, 0, "bottom", "115-1/2"), measured(1, 0, "top", "115-1/2")}
	s.Leans = []Statement{leans("left", "3/4", "right", "48")}
	f := s.Cuts()
	told := factsOf(f, "bevel")
	require.Len(t, told, 10, "five rails, two ends: equal widths make the right post lean too")
	require.Equal(t, "bevel both", f.Cuts[0].Ends)
	require.Equal(t, []string{"left"}, told[0].Names)
	require.Equal(t, []exact.Rat{exact.Int(1), exact.Int(1), exact.New(11, 128), exact.Int(1), exact.New(9, 10), exact.Int(-1)}, told[0].Nums)
	s.Leans = []Statement{leans("left", "1/2", "right", "48")}
	f = s.Cuts() // 11/192 over the face is less than 1/16
	require.Empty(t, factsOf(f, "bevel"))
	require.Equal(t, "square", f.Cuts[0].Ends)
	s.Tape = rat("1/32")
	require.Len(t, factsOf(s.Cuts(), "bevel"), 10)
}

// One lean and one width: the other post is taken as plumb, and that is said.
func TestOneLeanOneWidth(t *testing.T) {
	s := single(2, "100")
	s.Leans = []Statement{leans("left", "1", "right", "16")}
	f := s.Cuts()
	require.Equal(t, []string{"right"}, factsOf(f, "taken as plumb")[0].Names)
	require.Equal(t, []string{"top"}, factsOf(f, "tightest at")[0].Names)
	// The left face has moved in by h/16; rails reach up to 8 and 16: half an inch and one inch.
	require.Equal(t, []string{"99-1/2", "99"}, railLengths(f))
	s.Leans[0] = leans("left", "1", "left", "16") // now it moves out: each rail is tightest at its bottom edge
	require.Equal(t, rat("100").Add(rat("5/32")).String(), s.Cuts().Cuts[0].Exact.String())
	s.Leans = []Statement{leans("right", "1", "left", "16")}
	f = s.Cuts()
	require.Equal(t, []string{"99-1/2", "99"}, railLengths(f))
	require.Equal(t, []string{"left"}, factsOf(f, "taken as plumb")[0].Names)
}

func TestLeanOfAnAddedPost(t *testing.T) {
	s := single(1, "100")
	s.Layout.Along = &Along{Span: rat("203-1/2"), PostFace: rat("7/2"), Posts: []Place{{rat("100")}},
		Bays: []Stretch{{Width: rat("100")}, {FromLeft: rat("103-1/2"), Width: rat("100")}}}
	s.Leans = []Statement{{Name: Name{Quantity: PostLeans, Post: 1}, Value: Value{Num: rat("1"), Word: "left"}, Upper: Inches(rat("16"))}}
	f := s.Cuts()
	require.Equal(t, []string{"99-1/2", "100-1/8"}, railLengths(f), "it leans into bay 1 and out of bay 2: 100 + 2-1/2/16 = 100-5/32")
	for _, bad := range []Statement{leans("left", "1", "in", "48"), leans("left", "1", "right", "0"), leans("middle", "1", "right", "48")} {
		s.Leans = []Statement{bad}
		require.Equal(t, []string{"100", "100"}, railLengths(s.Cuts()))
	}
}

// Both leans and both widths, which do not quite agree: the narrower reading counts.
func TestTooMuchToldAndNotInAgreement(t *testing.T) {
	s := single(1, "100")
	s.Measured = []Statement{measured(1, 0, "bottom", "100"), measured(1, 0, "top", "99-7/8")}
	s.Leans = []Statement{leans("left", "1/8", "right", "8"), leans("right", "1/8", "right", "8")}
	// From 2-1/2 to 8. By the left post: R = 100 at every height, L reaches 1/8: 99-7/8. By the right post: R is 5/128 at
	// least, L = R − W reaches 1/8 − 99-7/8 = 1/4 − 100: 100 − 1/4 + 5/128, which is less.
	f := s.Cuts()
	require.Equal(t, rat("100").Sub(rat("1/4")).Add(exact.New(5, 128)).String(), f.Cuts[0].Exact.String())
	everyLineTrue(t, f.Work)
	s.Leans[1] = leans("right", "2", "right", "8")
	require.Equal(t, "leans and widths", s.Cuts().Ask.Key)
}

// Brute force: a level rectangle of the length to cut is slid along a fine grid between two straight post faces, and every
// grid height of its ends is looked at. One of that length goes in; one that is a tape mark longer goes nowhere.
func TestRailReallyGoesIn(t *testing.T) {
	rng := rand.New(rand.NewSource(5))
	leaning, bothWays := 0, 0
	for trial := range 300 {
		s := single(1+rng.Intn(5), "60")
		wall := s.Layout.WallHeight
		// Faces move by whole 1/64ths of an inch over the wall's height, so that a grid of slides can meet them exactly.
		left, right := exact.New(int64(rng.Intn(97)-48), 64), exact.New(int64(rng.Intn(97)-48), 64)
		bottom := rat("60").Add(exact.New(int64(rng.Intn(32)), 32))
		s.Measured = []Statement{measured(1, 0, "bottom", bottom.String()), measured(1, 0, "top", bottom.Add(right).Sub(left).String())}
		faces := func(h exact.Rat) (a, b exact.Rat) {
			return left.Mul(h).Div(wall), bottom.Add(right.Mul(h).Div(wall))
		}
		switch trial % 4 {
		case 0: // widths alone: the lean is shared
			half := right.Sub(left).Mul(exact.New(1, 2))
			faces = func(h exact.Rat) (a, b exact.Rat) {
				return half.Neg().Mul(h).Div(wall), bottom.Add(half.Mul(h).Div(wall))
			}
		case 1:
			s.Leans = []Statement{{Name: Name{Quantity: PostLeans, At: "left"}, Value: Value{Num: left, Word: "right"}, Upper: Inches(wall)}}
		case 2:
			s.Leans = []Statement{{Name: Name{Quantity: PostLeans, At: "right"}, Value: Value{Num: right, Word: "right"}, Upper: Inches(wall)}}
		case 3: // one width and both leans
			s.Measured = s.Measured[:1]
			s.Leans = []Statement{{Name: Name{Quantity: PostLeans, At: "left"}, Value: Value{Num: left, Word: "right"}, Upper: Inches(wall)},
				{Name: Name{Quantity: PostLeans, At: "right"}, Value: Value{Num: right, Word: "right"}, Upper: Inches(wall)}}
			bothWays++
		}
		all, q := s.gauges()
		require.Nil(t, q)
		for _, r := range s.railPieces(all) {
			if r.low.Sign() > 0 && !left.Eq(right) {
				leaning++
			}
			require.True(t, goesIn(faces, r.low, r.high, r.length), "trial %d: %s", trial, r.name())
			require.False(t, goesIn(faces, r.low, r.high, r.length.Add(s.Tape)), "trial %d: %s", trial, r.name())
			e, ok := r.gauge.sum(r.apart)
			require.True(t, !ok || e.Value.Eq(r.apart.counts), "trial %d: %s is %s, want %s", trial, e, e.Value, r.apart.counts)
		}
	}
	require.Greater(t, leaning, 300)
	require.Greater(t, bothWays, 50)
}

// goesIn tries every place from the left-most to the right-most, in steps of 1/128 in and wherever a sampled height
// just touches; heights are sampled at both edges and 22 in between.
func goesIn(faces func(h exact.Rat) (a, b exact.Rat), low, high, length exact.Rat) bool {
	var lefts, rights, places []exact.Rat
	for k := range 24 {
		h := low.Add(high.Sub(low).Mul(exact.New(int64(k), 23)))
		a, b := faces(h)
		lefts, rights = append(lefts, a), append(rights, b)
		places = append(places, a)
	}
	for k := int64(-128); k <= 128; k++ {
		places = append(places, exact.New(k, 128))
	}
	for _, x := range places {
		clear := true
		for i := range lefts {
			clear = clear && !x.Less(lefts[i]) && !rights[i].Less(x.Add(length))
		}
		if clear {
			return true
		}
	}
	return false
}

// A bay measured at several rails has corners where it was measured; what counts is still its narrowest place.
func TestSeveralReadings(t *testing.T) {
	s := single(5, "100")
	s.Measured = []Statement{measured(1, 1, "", "100"), measured(1, 3, "", "99-3/4"), measured(1, 5, "", "100-1/4")}
	f := s.Cuts()
	require.Nil(t, f.Ask)
	all, _ := s.gauges()
	third := s.railPieces(all)[2]
	require.Equal(t, "399/4", third.apart.counts.String(), "the corner lies inside the rail's own height")
	require.Equal(t, "399/4", all[0].width(s.Layout.Tops[2].Sub(rat("11/4"))).String())
	second := s.railPieces(all)[1] // from 10-1/2 to 16; the line from (5-1/4, 100) to (21-1/4, 99-3/4)
	require.Equal(t, rat("100").Sub(exact.New(1, 64).Mul(rat("10-3/4"))).String(), second.apart.counts.String())
	require.Empty(t, factsOf(f, "width guessed"))
	everyLineTrue(t, f.Work)
}

func TestBeyondWhatWasMeasured(t *testing.T) {
	s := single(5, "100")
	s.Measured = []Statement{measured(1, 2, "", "100"), measured(1, 3, "", "99-7/8")}
	f := s.Cuts()
	require.Equal(t, []exact.Rat{exact.Int(1), exact.Int(1), exact.Int(4), exact.Int(5)}, factsOf(f, "width guessed")[0].Nums)
	all, _ := s.gauges()
	require.Equal(t, "799/8", all[0].width(s.Layout.Tops[2].Sub(rat("11/4"))).String())
	require.Equal(t, "399/4", all[0].width(s.Layout.Tops[3].Sub(rat("11/4"))).String(), "on the same line")
	s.Measured = s.Measured[:1]
	f = s.Cuts()
	require.Equal(t, "100", railLengths(f)[4])
	require.Equal(t, []exact.Rat{exact.Int(1), exact.Int(1), exact.Int(3), exact.Int(4), exact.Int(5)}, factsOf(f, "width guessed")[0].Nums)
}

func TestWhereARailWasMeasured(t *testing.T) {
	s := single(5, "100")
	for at, want := range map[string]string{"": "53/4", "bottom": "11", "top": "33/2"} {
		m := measured(1, 2, at, "100")
		h, q := s.heightOf(m, 1)
		require.Nil(t, q)
		if at == "" {
			require.Equal(t, "53/4", h.String(), "2-1/2 + 8 + 2-3/4")
			continue
		}
		require.Equal(t, map[string]string{"bottom": "21/2", "top": "16"}[at], h.String(), want)
	}
}

func TestMeasurementsAskedBack(t *testing.T) {
	key := func(s *Site) string {
		f := s.Cuts()
		require.NotNil(t, f.Ask)
		require.Empty(t, f.Cuts, "nothing is cut on a doubt")
		return f.Ask.Key
	}
	s := upstream()
	s.Measured = []Statement{measured(1, 0, "bottom", "115-1/2"), measured(1, 0, "top", "113-1/2")}
	require.Equal(t, "neighbors apart", key(s))
	require.Equal(t, []string{"forget measured bay 1 bottom", "forget measured bay 1 top"}, s.Cuts().Ask.Choices)
	require.Equal(t, "measured bay 1 rail 1 = 114-1/2 in", s.Cuts().Ask.Example)
	s.Measured = []Statement{measured(1, 0, "bottom", "115-1/2"), measured(1, 3, "", "114-1/2"), measured(1, 0, "top", "113-1/2")}
	require.Nil(t, s.Cuts().Ask, "a reading in between settles it: exactly an inch is not more than an inch")

	s.Measured = []Statement{measured(1, 0, "bottom", "105-1/2")}
	require.Equal(t, "span missed", key(s))
	require.Equal(t, []string{"bay 1 = 105-1/2 in", "forget measured bay 1 bottom"}, s.Cuts().Ask.Choices)
	wider := Statement{Name: Name{Quantity: Measured, Opening: 1}, Op: Eq, Value: Inches(rat("40"))}
	s.Measured = append(s.Measured, wider)
	f := s.Cuts()
	require.Nil(t, f.Ask, "105-1/2 + 40 + 3-1/2 = 149")
	require.Contains(t, sums(f.Work), "along: (211/2) + 40 + 1 * (7/2) = 149")
	require.Equal(t, []exact.Rat{exact.Int(1), rat("115-1/2"), rat("105-1/2")}, factsOf(f, "measured bay")[0].Nums)
	require.Len(t, factsOf(f, "measured opening"), 1)
	s.Measured[1].Name = Name{Quantity: Measured, At: "opening"}
	require.Nil(t, s.Cuts().Ask, "the one opening needs no number")

	s.Measured = []Statement{measured(2, 0, "bottom", "100")}
	require.Equal(t, "no such bay", key(s))
	s.Measured = []Statement{measured(1, 6, "", "115-1/2")}
	require.Equal(t, "no such rail", key(s))
	s.Measured = []Statement{measured(1, 0, "bottom", "-4")}
	require.Equal(t, "width not positive", key(s))
	wider.Name.Opening = 2
	s.Measured = []Statement{wider}
	require.Equal(t, "no such opening", key(s))
}

// A floor that falls: "bottom" is taken at the bay's higher end, where a level tape can lie.
func TestBottomOfABayOnAFallingFloor(t *testing.T) {
	s := single(2, "100")
	s.Layout.Fall = rat("-2") // the right end's floor lies 2 higher
	h, _ := s.heightOf(measured(1, 0, "bottom", "100"), 1)
	require.Equal(t, "2", h.String())
	s.Layout.Fall = rat("2")
	h, _ = s.heightOf(measured(1, 0, "bottom", "100"), 1)
	require.Equal(t, "0", h.String())
}

// Degrees against math.Atan, a method of its own, wherever that is far enough from a rounding limit to be sure; and
// against angles that are known exactly: tan 45° is 1.
func TestDegreeTenths(t *testing.T) {
	require.EqualValues(t, 450, DegreeTenths(exact.Int(1)))
	require.EqualValues(t, 0, DegreeTenths(exact.Int(0)))
	require.EqualValues(t, 900, DegreeTenths(exact.Int(100000)))
	rng := rand.New(rand.NewSource(1))
	for range 2000 {
		n, d := rng.Int63n(4000), 1+rng.Int63n(4000)
		exactly := math.Atan2(float64(n), float64(d)) * 1800 / math.Pi
		if math.Abs(exactly-math.Floor(exactly)-0.5) < 1e-9 {
			continue
		}
		require.EqualValues(t, math.Round(exactly), DegreeTenths(exact.New(n, d)), fmt.Sprintf("%d/%d", n, d))
	}
}

// A tangent a hair on either side of a rounding limit, 0.05°: tan(π/3600) = 0.000872664847…
func TestDegreesNextToALimit(t *testing.T) {
	require.EqualValues(t, 0, DegreeTenths(exact.Must("0.00087266484")))
	require.EqualValues(t, 1, DegreeTenths(exact.Must("0.00087266486")))
}
