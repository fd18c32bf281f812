package explain

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
	"saywright/solver/exact"
)

func rats(list ...string) []exact.Rat {
	out := make([]exact.Rat, len(list))
	for i, s := range list {
		out[i] = exact.Must(s)
	}
	return out
}

func rat(s string) *exact.Rat {
	r := exact.Must(s)
	return &r
}

func paid(s string) *solver.Cash { return &solver.Cash{Rat: exact.Must(s)} }

func num(s string) solver.Expr { return solver.Num(exact.Must(s)) }

// truck is the upstream side at the shop: five rails, two sixteens on the truck. 114-7/8 + 114-15/16 + 1/8 = 229-15/16.
func truck() *solver.Answer {
	return &solver.Answer{
		Verdict: solver.Fits, To: solver.Reply{Kind: "ask", Topic: "shopping"},
		Shopping: []solver.Buy{{Item: "2x6", Length: rat("120"), Count: 3, Each: paid("29/4"), Amount: paid("87/4")},
			{Item: "1x4", Length: rat("96"), Count: 1}, {Item: "bracket", Count: 10}, {Item: "post base", Count: 1}},
		Plan: []solver.Board{{Size: "2x6", Board: exact.Int(192), Times: 2, Have: true, Pieces: rats("919/8"), Left: exact.Int(77)},
			{Size: "1x4", Board: exact.Int(96), Times: 1, Pieces: rats("75/2", "75/2"), Left: exact.Must("167/8")}},
		Cost: &solver.Cost{Total: *paid("87/4"), Proven: true, AtLeast: *paid("87/4")},
		Work: []solver.Work{
			solver.Line("2x6", "two together", solver.Compare(solver.Sum(num("919/8"), num("1839/16"), num("1/8")), ">", num("192"))),
			solver.Line("bracket", "brackets", solver.Product(solver.Tally(2), solver.Tally(5))),
			solver.Line("2x6 120 in", "amount", solver.Product(solver.Tally(3), solver.Paid(exact.Must("29/4"))))},
		Facts: []solver.Fact{
			{Key: "plan", Names: []string{"2x6", "length", "proven"}, Nums: rats("3", "360", "2", "3", "360")},
			{Key: "one piece a board", Names: []string{"2x6"}, Nums: rats("5", "192")},
			{Key: "no price", Names: []string{"1x4", "bracket"}},
			{Key: "not counted", Names: []string{"spare"}, Nums: rats("10")},
			{Key: "anchors as the base asks", Nums: rats("1")}},
	}
}

func TestShopping(t *testing.T) {
	text := said(t, truck())
	requireAll(t, text, "Three 2x6 at 120 and one 1x4 at 96.", "In all 21.75 for what has a price.",
		"2x6: three boards, 360 in all, and two of yours; no plan takes less. Each piece takes a board of its own: two together take 114-7/8 + 114-15/16 + 1/8 = 229-15/16, over 192.",
		"2x6 192, yours 114-7/8 77", "2 at 37-1/2 20-7/8", "3 2x6 120 7.25 21.75", "10 brackets", "1 post base", "3 × 7.25 = 21.75", "2 × 5 = 10 brackets",
		"No price was told for 1x4 and bracket: not in the sum.", "Not counted: spare (a tenth more is common).", "Each post base takes the anchors that it asks for")
	a := truck()
	Say(a, Options{})
	require.Equal(t, "Three two by six at one hundred twenty inches and one one by four at ninety six inches. In all twenty one seventy five for what has a price.", a.Spoken)
	for _, width := range []int{40, 80, 120} {
		narrowEnough(t, Text(truck(), Options{Width: width}), width)
	}
}

func TestPlanNotProven(t *testing.T) {
	a := truck()
	a.Facts = []solver.Fact{{Key: "plan", Names: []string{"2x6", "cost", "not proven"}, Nums: rats("3", "360", "0", "3", "350", "87/4", "21")}}
	requireAll(t, said(t, a), "I could not prove it the cheapest: none costs less than 21.00.")
	a.Facts = []solver.Fact{{Key: "plan", Names: []string{"2x6", "length", "not proven"}, Nums: rats("3", "360", "0", "3", "350")}}
	requireAll(t, said(t, a), "I could not prove it the shortest: none takes less than 350.")
}

// Eleven boards: the pieces and kerfs take 2,011, and ten 192s hold 10 × 192-1/8 = 1921-1/4.
func TestRoomForNoFewer(t *testing.T) {
	a := truck()
	a.Facts = []solver.Fact{{Key: "plan", Names: []string{"2x6", "length", "proven"}, Nums: rats("11", "2112", "0", "11", "2112")},
		{Key: "room for no fewer", Names: []string{"2x6"}, Nums: rats("11", "192")}}
	a.Work = []solver.Work{solver.Line("2x6", "more than that", solver.Compare(num("2011"), ">", num("7685/4")))}
	requireAll(t, said(t, a), "no plan takes less. The pieces and kerfs take 2011, and one board fewer holds 1921-1/4.")
}

func TestChargesProveAPlan(t *testing.T) {
	a := truck()
	a.To.Full, a.To.Kind = true, "why"
	a.Facts = []solver.Fact{{Key: "plan", Names: []string{"2x6", "cost", "proven"}, Nums: rats("3", "360", "0", "3", "360", "87/4", "87/4")},
		{Key: "proven at least", Names: []string{"2x6", "cost"}, Nums: rats("87/4", "1")},
		{Key: "charge", Names: []string{"2x6", "cost"}, Nums: rats("1", "919/8", "5", "87/20")}}
	requireAll(t, said(t, a), "2x6: charge each piece as below. No board's load is then charged more than the board's own price, and all pieces together are charged 21.75: no plan comes to less.",
		"114-7/8 5 4.35")
	a.To.Full = false
	requireAll(t, said(t, a), "A table of charges shows it (`show it all`)")
}

// 60 is more than 40 by 20: the budget blocks, and the list is seen all the same.
func TestBudgetBlocks(t *testing.T) {
	a := truck()
	over := solver.Line("budget", "within budget", solver.Compare(solver.Paid(exact.Int(60)), "<=", solver.Paid(exact.Int(40))))
	a.Verdict = solver.Blocked
	budget := solver.Statement{Name: solver.Name{Quantity: solver.Budget}, Op: solver.Eq, Value: solver.Value{Num: exact.Int(40), Unit: solver.Currency}}
	a.Conflicts = []solver.Conflict{{About: "cost", Work: []solver.Work{over}, Proven: true, Rules: []solver.Rule{{Rule: "budget", Kind: solver.Yours, Says: budget.String()}}}}
	more := budget
	more.Value.Num = exact.Int(60)
	a.Ways = []solver.Way{{Changes: []solver.Change{{Rule: "budget", From: budget.String(), To: more.String(), By: "20", Old: budget, New: more, Kind: solver.Yours}}}}
	text := said(t, a)
	requireAll(t, text, "It comes to 60.00, and the budget is 40.00.", "A budget of 60.00, 20.00 more", "To buy:")
}

func TestPieceLongerThanAnyBoard(t *testing.T) {
	a := &solver.Answer{Verdict: solver.Open, To: solver.Reply{Kind: "ask", Topic: "shopping"}, Shopping: []solver.Buy{{Item: "bracket", Count: 2}},
		Facts: []solver.Fact{{Key: "too long", Names: []string{"bay 1 rail", "2x6"}, Nums: rats("200", "192", "200")},
			{Key: "bay that would do", Nums: rats("1", "3075/16")}, {Key: "board that would do", Names: []string{"2x6"}, Nums: rats("216")}}}
	requireAll(t, said(t, a), "No board is long enough for a rail: it is 200, and the longest 2x6 is 192.", "A bay of 192-3/16 or less would do", "A 2x6 of 216 would do: the shortest common one")
}

// Whatever keys an answer brings, words that are not known here are silence, never a panic.
func TestUnknownKeysAreSilence(t *testing.T) {
	base := truck()
	Say(base, Options{})
	more := truck()
	more.Work = append(more.Work, solver.Line("moon", "a note of tomorrow", solver.Sum(num("1"), num("2"))))
	more.Facts = append(more.Facts, solver.Fact{Key: "a fact of tomorrow", Names: []string{"x"}, Nums: rats("7")})
	more.Cautions = append(more.Cautions, solver.Caution{Key: "a caution of tomorrow"})
	Say(more, Options{})
	require.Equal(t, base.Text, more.Text)
	for _, kind := range []string{"state", "what if", "why", "why not", "check", "ask", "teach", "tolerance", "command", "kind of tomorrow", ""} {
		for _, topic := range []string{"", "cuts", "marks", "options", "shopping", "steps", "next", "recap", "help", "compare", "topic of tomorrow"} {
			for _, f := range []solver.Fact{{Key: "value"}, {Key: "wrong"}, {Key: "right"}, {Key: "lesson"}, {Key: "neighbor", Names: []string{""}, Nums: rats("1")}, {Key: "compared"}, {Key: "saved"}} {
				for _, verdict := range []solver.Verdict{solver.Fits, solver.Blocked, solver.Open, solver.Unclear} {
					a := &solver.Answer{Verdict: verdict, To: solver.Reply{Kind: kind, Topic: topic}, Facts: []solver.Fact{f}}
					Say(a, Options{})
					require.NotEmpty(t, a.Text)
				}
			}
		}
	}
}
