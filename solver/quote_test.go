package solver

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

func boards(item, length string, n int) Statement {
	st := have(item, length, n)
	st.Name.Quantity, st.Op = Boards, Eq
	return st
}

func cutClaim(n Name, length string) Statement {
	n.Quantity = CutOf
	return Statement{Name: n, Op: Eq, Value: Inches(rat(length))}
}

func costClaim(v string) Statement { return Of(CostOf, Eq, Value{Num: rat(v), Unit: Currency}) }

func verdicts(f Findings) (out []string) {
	for _, c := range f.Check {
		switch {
		case c.Holds == nil:
			out = append(out, "open")
		case *c.Holds:
			out = append(out, "holds")
		default:
			out = append(out, "fails: "+c.ShouldBe+" "+c.Slip)
		}
	}
	return out
}

// Twelve 45-1/2 and a kerf each: three come out of a 144 (136-1/2 and two kerfs), so four boards; not three, not ten.
func TestQuoteOfBoards(t *testing.T) {
	s := &Site{Kerf: rat("1/8"), Extra: []Statement{extra("2x6", "45-1/2", 12)}, Stock: []Statement{onSale("", "96")}}
	require.Equal(t, []string{"holds"}, verdicts(s.HoldQuote([]Statement{boards("2x6", "144", 4)})))
	require.Equal(t, []string{"fails: 4 "}, verdicts(s.HoldQuote([]Statement{boards("6x2", "144", 10)})))
	f := s.HoldQuote([]Statement{boards("2x6", "144", 3)})
	require.Equal(t, []string{"fails: 4 "}, verdicts(f))
	require.Equal(t, "1", f.Check[0].By)
	require.Contains(t, sums(f.Check[0].Work), "pieces and kerfs: 12 * (91/2) + 12 * (1/8) = 1095/2")
	everyLineTrue(t, f.Check[0].Work)
	s.Have = []Statement{have("2x6", "144", 1)}
	require.Equal(t, []string{"holds"}, verdicts(s.HoldQuote([]Statement{boards("2x6", "144", 3)})))
	require.Equal(t, []string{"open"}, verdicts(s.HoldQuote([]Statement{boards("1x4", "144", 3)})), "no 1x4 is wanted")
	require.Equal(t, []string{"fails:  "}, verdicts(s.HoldQuote([]Statement{boards("2x6", "36", 30)})), "too short for any piece")
	few := boards("2x6", "144", 5)
	few.Op = LE
	require.Equal(t, []string{"holds"}, verdicts(s.HoldQuote([]Statement{few})))
}

// Two lengths in one quote: two 144s hold six pieces, and six more take three 96s of two each.
func TestQuoteOfTwoLengths(t *testing.T) {
	s := &Site{Kerf: rat("1/8"), Extra: []Statement{extra("2x6", "45-1/2", 12)}}
	f := s.HoldQuote([]Statement{boards("2x6", "144", 2), boards("2x6", "96", 3)})
	require.Equal(t, []string{"holds", "holds"}, verdicts(f))
	f = s.HoldQuote([]Statement{boards("2x6", "144", 2), boards("2x6", "96", 4)})
	require.Equal(t, []string{"holds", "fails: 3 "}, verdicts(f), "with four 96s two 144s are still needed: 4 × 2 + 3 < 12")
}

func TestQuoteOfCost(t *testing.T) {
	s := upstream()
	s.Prices = []Statement{price("2x6", "120", "10"), price("1x4", "96", "4"), price("4x4", "96", "14"), price("bracket", "", "3"),
		price("screws", "", "0.10"), price("post base", "", "20"), price("post cap", "", "5")}
	// 50 + 4 + 14 + 30 + 6 + 20 + 5 = 129
	budget := rat("1")
	s.Budget = &budget
	require.Equal(t, []string{"holds", "fails: 129 ", "fails: 129 hardware left out"},
		verdicts(s.HoldQuote([]Statement{costClaim("129"), costClaim("380"), costClaim("68")})))
	s.Prices = s.Prices[1:]
	require.Equal(t, []string{"open"}, verdicts(s.HoldQuote([]Statement{costClaim("129")})), "without the price of the rails nobody can say")
}

func TestQuoteOfCuts(t *testing.T) {
	s := upstream()
	s.Layout.BaseHeight = exact.Int(1)
	bay := Name{Bay: 1}
	f := s.HoldQuote([]Statement{cutClaim(bay, "115-5/16"), cutClaim(bay, "115-1/2"), cutClaim(bay, "115-13/32"),
		cutClaim(bay, "118-13/16"), cutClaim(bay, "100"), cutClaim(Name{Item: "post"}, "41"), cutClaim(Name{Item: "post"}, "42"),
		cutClaim(Name{Item: "post"}, "40"), cutClaim(Name{Item: "stiffener"}, "37-1/2"), cutClaim(Name{Item: "stiffeners"}, "40"),
		cutClaim(Name{Bay: 2}, "60"), Of(Gap, Eq, Inches(rat("2")))})
	require.Equal(t, []string{"holds", "fails: 1845/16 brackets not deducted", "fails: 1845/16 one bracket deducted",
		"fails: 1845/16 post face forgotten", "fails: 1845/16 ", "holds", "fails: 41 base height forgotten",
		"fails: 41 as high as the wall", "holds", "fails: 75/2 bottom gap forgotten", "open"}, verdicts(f))
	require.Contains(t, sums(f.Check[1].Work), "rail to cut: (231/2) - (3/16) = 1845/16")

	s = leaningIn()
	s.Fit = rat("1/8")
	f = s.HoldQuote([]Statement{cutClaim(bay, "114-7/8"), cutClaim(Name{Bay: 1, Rail: 1}, "115-1/8"), cutClaim(bay, "115"), cutClaim(Name{Bay: 1, Rail: 1}, "115-1/4")})
	require.Equal(t, []string{"holds", "holds", "fails: 919/8 fit forgotten", "fails: 921/8 fit forgotten"}, verdicts(f))
}

// Rail 3 came out a quarter short, in the bay of A6: 115 − 1/4 = 114-3/4, shorter than every other rail.
func TestShortenedRail(t *testing.T) {
	s := leaningIn()
	s.Fit = rat("1/8")
	s.Short = []Statement{{Name: Name{Quantity: Short, Bay: 1, Rail: 3}, Op: Eq, Value: Inches(rat("1/4"))}}
	f := s.Shortened()
	require.Nil(t, f.Ask)
	require.Contains(t, sums(f.Work), "came out: 115 - (1/4) = 459/4")
	require.Contains(t, sums(f.Work), "play: (921/8) - (459/4) = 3/8", "its space takes 115-1/8 without play")
	require.Equal(t, []exact.Rat{exact.Int(1), exact.Int(1), rat("114-3/4"), rat("1/2")}, factsOf(f, "serves nothing")[0].Nums)
	require.Len(t, factsOf(f, "new board"), 1)

	s.Short[0].Value = Inches(rat("1/8")) // 114-7/8 is rail 5, to the mark
	f = s.Shortened()
	require.Equal(t, []string{"bay 1 rail 5"}, factsOf(f, "would serve")[0].Names)
	require.Equal(t, "0", factsOf(f, "would serve")[0].Nums[1].String())

	s.Extra = []Statement{extra("2x6", "60", 1), extra("1x4", "60", 1)}
	s.Short[0].Value = Inches(rat("20"))
	f = s.Shortened()
	require.Len(t, factsOf(f, "would serve"), 1, "the extra 2x6; not the 1x4")
	s.Short[0].Value = Inches(rat("200"))
	require.Equal(t, "short by how much", s.Shortened().Ask.Key)
	s.Short[0].Name.Rail = 9
	require.Equal(t, "no such rail", s.Shortened().Ask.Key)
	require.NotNil(t, (&Site{Short: s.Short}).Shortened().Ask)
}

func TestShortenedComesOutOfALeftover(t *testing.T) {
	s := upstream()
	s.Have = []Statement{have("2x6", "240", 1)}
	s.Extra = []Statement{extra("2x6", "1", 1)}
	s.Short = []Statement{{Name: Name{Quantity: Short, Bay: 1, Rail: 3}, Op: Eq, Value: Inches(rat("1/4"))}}
	f := s.Shortened()
	require.Len(t, factsOf(f, "would serve"), 1)
	require.Equal(t, 1, len(factsOf(f, "new board"))+len(factsOf(f, "from a leftover")))
}
