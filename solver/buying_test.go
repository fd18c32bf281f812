package solver

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

func price(item, length, cost string) Statement {
	st := Statement{Name: Name{Quantity: Price, Item: item}, Op: Eq, Value: Value{Num: rat(cost), Unit: Currency}}
	if length != "" {
		st.Name.Long = &Value{Num: rat(length), Unit: Inch}
	}
	return st
}

func onSale(item string, lengths ...string) Statement {
	return Statement{Name: Name{Quantity: Stock, Item: item}, Op: Eq, Value: Value{List: inchList(lengths...)}}
}

func list(f Findings) (out []string) {
	for _, b := range f.Shopping {
		s := exact.Int(b.Count).String() + " " + b.Item
		if b.Length != nil {
			s += " " + Fraction(*b.Length)
		}
		if b.Amount != nil {
			s += " = " + Cents(b.Amount.Rat)
		}
		out = append(out, s)
	}
	return out
}

// A8 of the conversation at Saltreed Landing, the figures computed twice by hand.
func TestBuyingForTheUpstreamSide(t *testing.T) {
	s := leaningIn()
	s.Fit, s.Layout.BaseHeight = rat("1/8"), exact.Int(1)
	s.Have = []Statement{have("2x6", "192", 2)}
	f := s.Buying()
	require.Nil(t, f.Ask)
	require.Equal(t, []string{"3 2x6 120", "1 1x4 96", "1 4x4 96", "10 bracket", "60 screws", "1 post base", "1 post cap"}, list(f))
	require.Contains(t, sums(f.Work), "two together: (919/8) + (1839/16) + (1/8) > 192 = true", "229-15/16 is over 192")
	require.Contains(t, sums(f.Work), "boards to buy: 5 - 2 = 3")
	require.Contains(t, sums(f.Work), "out of one board: 2 * (75/2) + (1/8) = 601/8")
	require.Contains(t, sums(f.Work), "brackets: 2 * 5 = 10")
	require.Contains(t, sums(f.Work), "screws: 10 * 4 + 2 * 5 * 2 = 60")
	everyLineTrue(t, f.Work)
	require.Nil(t, f.Cost, "nothing has a price")
	require.Len(t, factsOf(f, "one board at least"), 2, "1x4 and 4x4: a board there must be")
	require.Len(t, factsOf(f, "one piece a board"), 1)
	hand := 0
	for _, b := range f.Plan {
		if b.Have {
			hand += b.Times
		}
	}
	require.Equal(t, 2, hand, "one rail from each of the sixteens")
	require.Equal(t, "not counted", factsOf(f, "not counted")[0].Key)
	require.Equal(t, []string{"spare"}, factsOf(f, "not counted")[0].Names)
	require.Len(t, factsOf(f, "not counted"), 2, "spare and trim; the fit was told")
	require.Len(t, factsOf(f, "anchors as the base asks"), 1)
}

// Four 24 in pieces do not come out of a 96 in board: with three kerfs of 1/8 the last is 3/8 short (worked example of a
// trade article, published.md W10).
func TestKerfCounts(t *testing.T) {
	s := &Site{Kerf: rat("1/8"), Stock: []Statement{onSale("", "96")}, Extra: []Statement{extra("1x4", "24", 4)}}
	f := s.Buying()
	require.Equal(t, []string{"2 1x4 96"}, list(f))
	require.Contains(t, sums(f.Work), "pieces and kerfs: 4 * 24 + 4 * (1/8) = 193/2")
	require.Contains(t, sums(f.Work), "more than that: (193/2) > (769/8) = true", "96-1/2 is more than 96 and a kerf: 3/8 short")
	s.Kerf = exact.Rat{}
	require.Equal(t, []string{"1 1x4 96"}, list(s.Buying()))
}

func TestExtrasAloneNeedNoScrews(t *testing.T) {
	screws := Of(ScrewLength, Eq, Inches(rat("1-5/8")))
	s := &Site{Stock: []Statement{onSale("", "96")}, Extra: []Statement{extra("1x4", "24", 4)}, Defaults: []Statement{screws}}
	require.NotContains(t, s.Buying().Assumed, screws.String())
	wall := upstream()
	wall.Defaults = s.Defaults
	require.Contains(t, wall.Buying().Assumed, screws.String())
}

func TestLeftAfterTheLastCut(t *testing.T) {
	s := &Site{Kerf: rat("1/8"), Stock: []Statement{onSale("", "96")}, Extra: []Statement{extra("1x4", "24", 3)}}
	f := s.Buying()
	require.Equal(t, rat("96").Sub(rat("72")).Sub(rat("3/8")).String(), f.Plan[0].Left.String(), "three cuts, three kerfs")
	require.Equal(t, []string{"extra", "extra", "extra"}, f.Plan[0].Names)
}

func TestPricesAndCost(t *testing.T) {
	s := upstream()
	s.Stock = []Statement{onSale("", "120", "144"), onSale("4x4", "96")}
	s.Prices = []Statement{price("rails", "120", "10.25"), price("2x6", "144", "12.00"), price("2x6", "144", "12.80"), price("1x4", "120", "4.40"),
		price("4x4", "96", "14"), price("bracket", "", "3.49"), price("post bases", "", "18.50"), price("post cap", "", "5")}
	screws := price("screws", "", "9.00")
	screws.Name.Box = 100
	s.Prices = append(s.Prices, screws)
	f := s.Buying()
	require.Equal(t, []string{"5 2x6 120 = 51.25", "1 1x4 120 = 4.40", "1 4x4 96 = 14.00", "10 bracket = 34.90",
		"1 screws, box of 100 = 9.00", "1 post base = 18.50", "1 post cap = 5.00"}, list(f))
	require.Equal(t, "137.05", Cents(f.Cost.Total.Rat), "51.25 + 4.40 + 14 + 34.90 + 9 + 18.50 + 5")
	require.True(t, f.Cost.Proven)
	require.Empty(t, factsOf(f, "no price"))
	everyLineTrue(t, f.Work)
	total, ok := s.Costing(s.Layout)
	require.True(t, ok)
	require.Equal(t, "137.05", Cents(total))

	s.Prices = s.Prices[:5]
	f = s.Buying()
	require.Equal(t, "69.65", Cents(f.Cost.Total.Rat))
	require.Equal(t, []string{"bracket", "screws", "post base", "post cap"}, factsOf(f, "no price")[0].Names)
	_, ok = s.Costing(s.Layout)
	require.False(t, ok, "what lacks prices cannot be compared")
}

// A length without a price is not bought once any of that size has one.
func TestUnpricedLengthIsNotBought(t *testing.T) {
	s := upstream()
	s.Prices = []Statement{price("2x6", "192", "18.56")}
	require.Equal(t, "5 2x6 192 = 92.80", list(s.Buying())[0])
	s.Prices = []Statement{price("2x6", "96", "8.00")}
	f := s.Buying()
	require.NotEmpty(t, f.Conflicts)
	require.Equal(t, []exact.Rat{rat("120")}, factsOf(f, "price missing")[0].Nums)
}

func TestLengthsOnSale(t *testing.T) {
	granted := onSale("", "96", "120", "144", "192")
	s := &Site{Stock: []Statement{granted, onSale("4x4", "96", "120")}, Defaults: []Statement{granted},
		Prices: []Statement{price("2x6", "168", "15"), price("4x4", "168", "15")}}
	show := func(size string) (out []string) {
		for _, l := range s.onSale(size) {
			out = append(out, l.String())
		}
		return out
	}
	require.Equal(t, []string{"96", "120", "144", "192", "168"}, show("2x6"), "a price says that it is sold")
	require.Equal(t, []string{"96", "120"}, show("4x4"), "what was said of a size is all of it")
	s.Defaults = nil
	require.Equal(t, []string{"96", "120", "144", "192"}, show("2x6"), "what was said of all sizes too")
	require.Equal(t, show("2x6"), show("6x2"))
}

func TestBoxesAtTheLeastPrice(t *testing.T) {
	boxes := []box{{100, rat("9")}, {350, rat("25")}, {25, rat("3")}}
	for n := 1; n <= 900; n++ {
		counts := cheapestBoxes(boxes, n)
		holds, cost := 0, exact.Rat{}
		for i, k := range counts {
			holds += k * boxes[i].holds
			cost = cost.Add(boxes[i].price.Mul(exact.Int(k)))
		}
		require.GreaterOrEqual(t, holds, n)
		least := exact.Int(1 << 20) // every mix that could matter, tried out
		for a := 0; a <= 10; a++ {
			for b := 0; b <= 3; b++ {
				for c := 0; c <= 14; c++ {
					if a*100+b*350+c*25 >= n {
						least = exact.Min(least, exact.Int(9*a+25*b+3*c))
					}
				}
			}
		}
		require.True(t, cost.Eq(least), "%d screws: %s, want %s", n, cost, least)
	}
	require.Equal(t, []int{1000, 0}, boxesOfOneKind([]box{{100, rat("9")}, {10, rat("2")}}, 100000))
	require.Equal(t, []int{0, 1000}, boxesOfOneKind([]box{{10, rat("2")}, {100, rat("9")}}, 100000))
	require.Equal(t, []int{1000, 0}, cheapestBoxes([]box{{100, rat("9")}, {10, rat("2")}}, 100000))
}

func TestHardwareAtHandAndExtra(t *testing.T) {
	s := upstream()
	s.Have = []Statement{{Name: Name{Quantity: Have, Item: "brackets"}, Op: Each, Value: Number(4)},
		{Name: Name{Quantity: Have, Item: "post base"}, Op: Each, Value: Number(3)}}
	s.Extra = []Statement{{Name: Name{Quantity: Extra, Item: "anchors"}, Op: Each, Value: Number(4)},
		{Name: Name{Quantity: Extra, Item: "screw"}, Op: Each, Value: Number(10)}}
	f := s.Buying()
	require.Subset(t, list(f), []string{"6 bracket", "70 screws", "4 anchor"})
	require.NotContains(t, list(f), "1 post base")
	require.Empty(t, factsOf(f, "anchors as the base asks"))
	everyLineTrue(t, f.Work)
}

func TestSpare(t *testing.T) {
	s := upstream()
	tenth := Of(Spare, Eq, Value{Num: exact.Int(10), Unit: PercentOf})
	s.Spare = &tenth
	f := s.Buying()
	require.Equal(t, []string{"6 2x6 120", "2 1x4 96", "2 4x4 96"}, list(f)[:3], "a tenth of five, of one and of one, each rounded up")
	require.Contains(t, sums(f.Work), "spare share: 10 / 100 * 5 = 1/2")
	two := Of(Spare, Eq, Number(2))
	s.Spare = &two
	require.Equal(t, []string{"7 2x6 120", "3 1x4 96", "3 4x4 96"}, list(s.Buying())[:3])
	s.Have = []Statement{have("2x6", "120", 9)}
	s.Spare = &tenth
	require.Equal(t, []string{"2 1x4 96", "2 4x4 96"}, list(s.Buying())[:2], "what is not bought needs no share of spare")
}

func TestBudget(t *testing.T) {
	s := upstream()
	s.Prices = []Statement{price("2x6", "120", "10"), price("1x4", "96", "4"), price("4x4", "96", "14"), price("bracket", "", "3")}
	within, under := rat("98"), rat("90")
	s.Budget = &within // 50 + 4 + 14 + 30 = 98
	f := s.Buying()
	require.Empty(t, f.Conflicts)
	require.Contains(t, sums(f.Work), "left of the budget: 98 - 98 = 0")
	s.Budget = &under
	f = s.Buying()
	require.Len(t, f.Conflicts, 1)
	last := f.Conflicts[0].Work[len(f.Conflicts[0].Work)-1]
	require.Equal(t, "98 <= 90", last.Expr.String())
	require.Equal(t, "false", last.Equals)
	require.Contains(t, sums(f.Work), "over budget: 98 - 90 = 8")
	require.Equal(t, "budget = 98.00", f.Ways[0].Changes[0].To)
	s.Prices = nil
	require.Equal(t, "prices first", s.Buying().Ask.Key)
}

// What would bring it within the budget is bought and added up again: a length that is not on sale but has a price, no spare.
func TestWaysWithinBudget(t *testing.T) {
	s := upstream()
	s.Layout.Along.Posts = nil
	s.Layout.Along.Span, s.Layout.Along.Openings = rat("115-1/2"), nil
	s.Stock = []Statement{onSale("", "144"), onSale("1x4", "96")}
	one, most := Of(Spare, Eq, Number(1)), rat("125")
	s.Spare, s.Budget = &one, &most
	s.Prices = []Statement{price("2x6", "144", "20"), price("2x6", "120", "12"), price("1x4", "96", "4"), price("bracket", "", "0.50"), price("screws", "", "0.10")}
	f := s.Buying() // 6 × 20 + 2 × 4 + 5 + 6 = 139; without spare 100 + 4 + 11 = 115; with 120s 72 + 8 + 11 = 91
	require.Len(t, f.Conflicts, 1)
	var to []string
	for _, w := range f.Ways {
		to = append(to, w.Changes[0].To)
	}
	require.Equal(t, []string{"budget = 139.00", "spare = 0", "stock 2x6 += 120 in"}, to)
	require.Equal(t, []exact.Rat{rat("91"), rat("34")}, factsOf(f, "within budget")[1].Nums)
	most = rat("100")
	require.Len(t, s.Buying().Ways, 2)
}

func TestPieceLongerThanAnyBoard(t *testing.T) {
	s := upstream()
	s.Stock = []Statement{onSale("", "96")}
	f := s.Buying()
	require.Len(t, f.Conflicts, 1, "the rails; the rest comes out of a 96")
	require.Equal(t, "(1845/16) <= 96", f.Conflicts[0].Work[0].Expr.String())
	require.Equal(t, "false", f.Conflicts[0].Work[0].Equals)
	require.Equal(t, []exact.Rat{rat("120")}, factsOf(f, "board that would do")[0].Nums)
	require.Equal(t, []exact.Rat{exact.Int(1), rat("96-3/16")}, factsOf(f, "bay that would do")[0].Nums)
	require.Equal(t, "stock 2x6 += 120 in", f.Ways[0].Changes[0].To)
	require.Nil(t, f.Cost)
	s.Stock[0].Value.List = append(s.Stock[0].Value.List, Inches(rat("120")))
	require.Empty(t, s.Buying().Conflicts, "what was offered does")
	s.Trim = rat("5")
	require.NotEmpty(t, s.Buying().Conflicts, "115-5/16 and 5 of trim are more than 120")

	s = &Site{Stock: []Statement{onSale("", "96")}, Extra: []Statement{extra("2x6", "300", 1)}}
	f = s.Buying()
	require.Empty(t, f.Ways)
	require.Len(t, factsOf(f, "no common board"), 1)
}

func TestNothingToCutFrom(t *testing.T) {
	s := upstream()
	s.Stock = nil
	f := s.Buying()
	require.NotEmpty(t, f.Conflicts)
	require.Equal(t, "no boards", f.Ask.Key)
	require.Equal(t, "stock 2x6 = 120 in", f.Ask.Example)
	s = upstream()
	s.Kerf = rat("-1/8")
	require.Equal(t, "bad figure", s.Buying().Ask.Key)
	require.Equal(t, "layout first", (&Site{}).Buying().Ask.Key)
}

func TestScrewThatComesOut(t *testing.T) {
	s := upstream()
	s.ScrewLength = rat("9/4")
	f := s.Buying()
	require.Len(t, f.Conflicts, 1)
	require.Equal(t, "(9/4) < (3/4) + (3/2)", f.Conflicts[0].Work[0].Expr.String())
	require.Equal(t, "screw length < 2-1/4 in", f.Ways[0].Changes[0].To)
	s.ScrewLength = rat("2")
	f = s.Hardware()
	require.Empty(t, f.Conflicts)
	require.Equal(t, []string{"10 bracket", "40 screws 1-5/8 in", "20 screws 2 in", "1 post base", "1 post cap"}, list(f))
	s.ScrewLength = rat("-2")
	require.Len(t, s.Hardware().Conflicts, 1)
}

// Two faces of an 8 ft 2x6 and its edges and ends: 2 × (1-1/2 + 5-1/2) × 96 + 2 × 1-1/2 × 5-1/2 = 1360-1/2 square inches.
// Coverage from the Wood Handbook FPL-GTR-190, chapter 16: smooth 200 to 400, saw-textured 100 to 200 square feet a gallon.
func TestFinish(t *testing.T) {
	s := &Site{Extra: []Statement{extra("2x6", "96", 16)}}
	f := s.Finish()
	require.Contains(t, sums(f.Work), "faces and ends: 16 * (2 * ((3/2) + (11/2)) * 96 + 2 * (3/2) * (11/2)) = 21768")
	require.Contains(t, sums(f.Work), "square feet: 21768 / 144 = 907/6")
	smooth := factsOf(f, "smooth wood")[0]
	require.Equal(t, exact.New(907, 2400).String(), smooth.Nums[4].String())
	require.Equal(t, exact.New(907, 1200).String(), smooth.Nums[5].String())
	require.InDelta(t, 3.78541*907/1200, smooth.Nums[7].Float(), 1e-4, "1 US gal is 3.785 41 L (Handbook 44)")
	require.Equal(t, []string{"coats = 1"}, f.Assumed)
	everyLineTrue(t, f.Work)
	two, cover := 2, rat("150")
	s.Coats, s.Coverage = &two, &cover
	s.Stock = []Statement{onSale("", "96")}
	require.Contains(t, list(s.Buying()), "3 finish", "2 × 151-1/6 ÷ 150 = 2.02")
}
