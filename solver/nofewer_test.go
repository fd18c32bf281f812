package solver

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
	"saywright/solver/stock"
)

func sums2(pairs ...int) (out []stock.Sum) {
	for i := 0; i < len(pairs); i += 2 {
		out = append(out, stock.Sum{Length: exact.Int(pairs[i]), Count: pairs[i+1]})
	}
	return out
}

// Chvátal, Linear Programming (1983), p. 195, as transcribed in a public notebook: boards of 100, pieces 45, 36, 31, 14,
// wanted 97, 610, 395, 211. The charges 1/2, 1/2, 1/4, 0 come to 452-1/4: no plan takes fewer than 453 boards.
func TestChargesTold(t *testing.T) {
	plan := &stock.Plan{Boards: 453, Proven: true, Length: exact.Int(45300), Proof: stock.Proof{
		Kinds: []stock.Kind{{Length: exact.Int(100), Have: -1}}, Pieces: sums2(45, 97, 36, 610, 31, 395, 14, 211),
		Claims: []stock.Claim{{Of: stock.FewestBoard, Least: exact.Int(453), Root: &stock.Case{Table: &stock.Table{Scale: 4,
			Charges: []int64{2, 2, 1, 0}, Loads: []int64{4}, Total: 1809, Bound: exact.New(1809, 4)}}}}}}
	f := (&Site{}).charges(want{size: "2x6"}, plan)
	require.Equal(t, []string{"charged in all: 97 * (1/2) + 610 * (1/2) + 395 * (1/4) = 1809/4"}, sums(f.Work))
	require.Equal(t, []exact.Rat{exact.Int(453), exact.Int(1)}, factsOf(f, "proven at least")[0].Nums)
	require.Len(t, factsOf(f, "charge"), 4)
	everyLineTrue(t, f.Work)
}

// Two cases, each with its condition and, in the first, a fee for what the limit gives.
func TestCasesTold(t *testing.T) {
	split := &stock.Split{Boards: []int{0}, Count: 4}
	first := &stock.Case{Table: &stock.Table{Scale: 100, Charges: []int64{500}, Total: 5000, Fees: []stock.Fee{{Boards: []int{0}, AtMost: true, Count: 4, Amount: 50}}}}
	plan := &stock.Plan{Proven: true, Proof: stock.Proof{Kinds: []stock.Kind{{Length: exact.Int(144), Have: -1}}, Pieces: sums2(60, 10),
		Claims: []stock.Claim{{Of: stock.LeastCost, Least: exact.Int(48), Root: &stock.Case{Split: split, AtMost: first, More: &stock.Case{Sums: true}}}}}}
	f := (&Site{}).charges(want{size: "2x6"}, plan)
	require.Equal(t, []string{"charged in all: 10 * 5 = 50", "less the fees: 50 - 4 * (1/2) = 48"}, sums(f.Work))
	require.True(t, f.Work[0].Expr.Cash && f.Work[1].Expr.Cash)
	cases := factsOf(f, "case")
	require.Equal(t, []string{"2x6", "at most"}, cases[0].Names)
	require.Equal(t, []exact.Rat{exact.Int(1), exact.Int(4), exact.Int(1), exact.Int(144)}, cases[0].Nums)
	require.Equal(t, []string{"2x6", "at least"}, cases[1].Names)
	require.Equal(t, "5", cases[1].Nums[1].String())
	require.Len(t, factsOf(f, "case by sums"), 1)
}

// One length on sale and one board at hand: 12 pieces of 45-1/2 and a kerf each are 547-1/2; two boards of 144 and the one
// at hand hold 3 × 144-1/8 = 432-3/8: three are to be bought.
func TestRoomWithBoardsAtHand(t *testing.T) {
	s := &Site{Kerf: rat("1/8"), Stock: []Statement{onSale("", "144")}, Extra: []Statement{extra("2x6", "45-1/2", 12)}, Have: []Statement{have("2x6", "144", 1)}}
	f := s.Buying()
	require.Equal(t, []string{"3 2x6 144"}, list(f))
	require.Contains(t, sums(f.Work), "one board fewer holds: 2 * (144 + (1/8)) + 1 * (144 + (1/8)) = 3459/8")
	require.Contains(t, sums(f.Work), "more than that: (1095/2) > (3459/8) = true")
}
