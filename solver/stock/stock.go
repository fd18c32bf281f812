// Package stock cuts pieces from boards and buys the boards, to a plan of proven least cost.
//
// It does boards on sale and on hand, saw kerf and end trim, the search for the cheapest plan, and a proof that no
// plan is cheaper: tables of charges that a person can follow and Check verifies with whole-number arithmetic. It
// knows no walls, no lumber sizes and no words: a board is a length and a price, a piece a length and a count.
// Every length of one job is in one unit, every price in one currency; which, the caller knows.
package stock

import "saywright/solver/exact"

// Board is a length of board that can be had. In Job.OnSale, Price is what one costs, nil where it was not told, and
// Have is not read: there are as many as are wanted. In Job.OnHand, Have is how many there are; they cost nothing.
type Board struct {
	Length exact.Rat
	Price  *exact.Rat
	Have   int
}

// Piece is what is to be cut: Count alike, each of exactly Length. Name is the caller's, carried through untouched.
type Piece struct {
	Length exact.Rat
	Count  int
	Name   string
}

// Job is one size of lumber: what is to be cut from what. k pieces fit a board when the sum of their lengths and
// (k - 1) kerfs is at most the board less the trim. Once any board on sale has a price, one without is not bought.
type Job struct {
	Kerf, Trim exact.Rat
	OnSale     []Board
	OnHand     []Board
	Pieces     []Piece
}

// Cutting is a board and what is cut from it, Times over. Pieces are indexes into Job.Pieces in cutting order, longest
// first. Left is what remains after the last cut and its kerf, 0 where the last piece ends at the board's end.
type Cutting struct {
	Board  exact.Rat
	Have   bool // from the boards on hand
	Times  int
	Pieces []int
	Left   exact.Rat
}

// Plan is how to cut a job. With prices it costs the least, and takes few boards among plans of that cost; without, it
// buys the least length, then the fewest boards. Cost, Length and Boards count what is bought, not what is on hand.
// AtLeast, AtLeastLength and AtLeastBoards are bounds that were proven: no plan costs less (buys less length; among
// plans as good in what goes before, takes fewer boards). Cost and AtLeast are nil without prices, AtLeastLength is 0
// with them. Proven says that the plan reaches its bounds: on cost with prices, on length and boards without.
type Plan struct {
	Cuttings      []Cutting
	Cost          *exact.Rat
	AtLeast       *exact.Rat
	Length        exact.Rat
	AtLeastLength exact.Rat
	Boards        int
	AtLeastBoards int
	Proven        bool
	Proof         Proof
}
