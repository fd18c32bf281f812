package stock

import "saywright/solver/exact"

// Proof is why no plan is better: claims, each leaning on those before it. Kinds lists the boards that the claims
// speak of: those on hand, then those on sale that are worth buying, each from the shortest to the longest. A board on
// sale is not listed when another is at least as long and costs no more: any plan can take that one in its place.
type Proof struct {
	Kinds  []Kind
	Pieces []Sum
	Claims []Claim
}

// Kind is one kind of board. Price is 0 on hand and where no prices were told; Have is -1 for a board on sale.
type Kind struct {
	Length exact.Rat
	Price  exact.Rat
	Have   int
}

// Sum is one length of piece and how many are wanted in all, whatever their names.
type Sum struct {
	Length exact.Rat
	Count  int
}

// Goal is what a claim bounds from below.
type Goal string

// The goals. Fewest counts the boards bought by plans that reach the claim before it.
const (
	LeastCost   Goal = "cost"
	LeastLength Goal = "length"
	FewestBoard Goal = "boards"
)

// Claim says that no plan has less than Least of its goal. Every plan's boards keep each of the Tables: their loads' charges
// sum to the table's total at least. No basket of boards that has less than Least keeps them all, which is a matter of a
// few whole numbers. Root tells the strongest table by itself.
type Claim struct {
	Of     Goal
	Least  exact.Rat
	Tables []*Table
	Root   *Case
}

// Case is part of a proof by cases: either it is split in two by how many boards are cut in some way, or it is closed
// by a table of charges, or (Sums) by the sums that the boards' prices or lengths can make at all.
type Case struct {
	Split  *Split
	AtMost *Case // Split.Count of them or fewer
	More   *Case // Split.Count + 1 or more
	Table  *Table
	Sums   bool
}

// Split asks how many boards there are among the listed kinds (indexes into Proof.Kinds) whose load holds at least so
// many pieces of each listed length. Without Holds it counts the boards themselves.
type Split struct {
	Boards []int
	Holds  []Hold
	Count  int
}

// Hold asks for at least Count pieces of one length (an index into Proof.Pieces) in one load.
type Hold struct{ Piece, Count int }

// Table closes one case. Every piece is charged Charges[i] (by its index in Proof.Pieces), in parts of which Scale make
// one unit of the goal. No load that fits a board of kind b is charged more than Loads[b], and Loads[b] is at most the
// board's own price in those parts, with what Fees add. All pieces together are charged Total; less what the fees give
// away, that is Bound: no plan of this case has less.
//
// ByLength says that each piece is charged by its length and kerf alone: the bound is one of room.
type Table struct {
	Scale    int64
	Charges  []int64
	Loads    []int64
	Fees     []Fee
	Total    int64
	Bound    exact.Rat
	ByLength bool
}

// Fee makes use of one limit of the case. AtMost: each board that the limit counts is priced Amount higher, and as there
// are Count of them at most, that is Count x Amount too much at most. Otherwise: each is priced Amount lower, and as there
// are at least Count, that is Count x Amount too little at least. With Spend, the limit is that of the claim before: all
// boards together have no more of that claim's goal than was claimed, and a board is priced Amount higher for each Unit
// of that goal that it has.
type Fee struct {
	Boards []int
	Holds  []Hold
	AtMost bool
	Count  int
	Spend  bool
	Unit   exact.Rat
	Amount int64
}
