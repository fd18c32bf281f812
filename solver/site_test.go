package solver

import (
	"math/rand"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

// odd picks a figure of the kind that mistakes are made of.
func odd(rng *rand.Rand) exact.Rat {
	odds := rats("0", "-1", "1/16", "1/3", "1-1/2", "40", "115-1/2", "1000000000", "99999999999999999999", "-115/2")
	return odds[rng.Intn(len(odds))]
}

func oddItem(rng *rand.Rand) string {
	items := []string{"", "2x6", "6x2", "4x4", "1x4", "rails", "bracket", "screws", "post base", "9x9", "90x45", "anchor", "two by six"}
	return items[rng.Intn(len(items))]
}

// oddSite is a site on which nearly anything may be wrong.
func oddSite(rng *rand.Rand) *Site {
	s := upstream()
	if rng.Intn(4) == 0 {
		s = single(1+rng.Intn(3), "60")
	}
	fields := []*exact.Rat{&s.BracketThickness, &s.Fit, &s.Kerf, &s.Trim, &s.Tape, &s.ScrewLength}
	for range max(0, rng.Intn(5)-2) {
		*fields[rng.Intn(len(fields))] = odd(rng)
	}
	switch rng.Intn(8) {
	case 0:
		s.Layout = nil
	case 1:
		s.Layout = &Layout{Up: s.Layout.Up}
	case 2:
		s.Layout = &Layout{Along: s.Layout.Along}
	case 3:
		s.Layout.Fall = odd(rng)
	}
	ats := []string{"", "bottom", "top", "opening", "left", "right", "middle"}
	name := func(q Quantity) Name {
		n := Name{Quantity: q, Bay: rng.Intn(4) - 1, Rail: rng.Intn(8) - 1, Post: rng.Intn(3) - 1, Opening: rng.Intn(3) - 1, At: ats[rng.Intn(len(ats))],
			Item: oddItem(rng), Box: rng.Intn(3) * 50}
		if rng.Intn(2) == 0 {
			v := Inches(odd(rng))
			n.Long = &v
		}
		return n
	}
	value := func() Value {
		return Value{Num: odd(rng), Unit: Unit(rng.Intn(5)), Word: ats[rng.Intn(len(ats))], List: inchList("96", "0", "144")[:rng.Intn(4)]}
	}
	for _, list := range []struct {
		to *[]Statement
		q  Quantity
	}{{&s.Measured, Measured}, {&s.Leans, PostLeans}, {&s.Short, Short}, {&s.Prices, Price}, {&s.Have, Have}, {&s.Extra, Extra}} {
		for range max(0, rng.Intn(5)-2) {
			*list.to = append(*list.to, Statement{Name: name(list.q), Op: Eq, Value: value(), Upper: value()})
		}
	}
	if rng.Intn(2) == 0 {
		st := Of(Spare, Eq, value())
		st.Value.Num = exact.Min(st.Value.Num, exact.Int(50)) // a spare of a billion boards is another test's affair
		s.Spare = &st
	}
	budget, slab := odd(rng), odd(rng)
	s.Budget, s.Slab, s.Edge = &budget, &slab, &slab
	s.SameLength, s.Fixed = rng.Intn(2) == 0, []int{rng.Intn(4) - 1}
	return s
}

// Whatever is wrong on a site, every question gets an answer, and every line of arithmetic outside a conflict is true.
func TestNothingOddBreaksIt(t *testing.T) {
	rng := rand.New(rand.NewSource(7))
	cut, asked, blocked := 0, 0, 0
	for range 1500 {
		s := oddSite(rng)
		claims := []Statement{{Name: Name{Quantity: Boards, Item: oddItem(rng), Long: &Value{Num: odd(rng)}}, Op: Eq, Value: Value{Num: odd(rng)}},
			{Name: Name{Quantity: CutOf, Bay: rng.Intn(3), Item: oddItem(rng)}, Op: Eq, Value: Value{Num: odd(rng)}}}
		for _, f := range []Findings{s.Cuts(), s.Buying(), s.Marks(), s.Spacer(), s.StoryPole(), s.Hardware(), s.Finish(), s.Anchors(),
			s.Steps(), s.Shortened(), s.HoldQuote(claims)} {
			everyLineTrue(t, f.Work)
			for _, c := range f.Cuts {
				require.Positive(t, c.Length.Sign())
				cut++
			}
			for _, c := range f.Conflicts {
				require.Equal(t, "false", c.Work[len(c.Work)-1].Equals)
				blocked++
			}
			if f.Ask != nil {
				require.NotEmpty(t, f.Ask.Key)
				asked++
			}
			f.AddTo(&Answer{Verdict: Fits})
		}
	}
	require.Greater(t, cut, 1000)
	require.Greater(t, asked, 500)
	require.Greater(t, blocked, 300)
}
