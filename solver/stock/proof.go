package stock

import "saywright/solver/exact"

// Proof is why no plan is better: claims, each leaning on those before it. Kinds lists the boards that the claims speak
// of: those on hand, then those on sale that are worth buying, each from the shortest to the longest. A board on sale is
// not listed when another is at least as long and costs no more: any plan can take that one in its place. Pieces lists
// the lengths wanted, the longest first. A job that buys nothing needs no claim.
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

// The goals. FewestBoard counts the boards bought by those plans that reach the claim before it.
const (
	LeastCost   Goal = "cost"
	LeastLength Goal = "length"
	FewestBoard Goal = "boards"
)

// Claim says that no plan has less than Least of its goal. Unit is the greatest measure of what single boards have of it
// (a cent, 24 in, one board): a plan has a whole number of those, so that a bound is raised to the next.
//
// Whatever the plan, its boards keep every one of Tables; Root shows by cases that boards with less than Least do not.
type Claim struct {
	Of     Goal
	Least  exact.Rat
	Unit   exact.Rat
	Tables []*Table
	Root   *Case
}

// Table is a table of charges. Each piece is charged Charges[i] (by its index in Proof.Pieces); no load that fits a board
// of kind b (by its index in Proof.Kinds) is charged more than Loads[b]. All pieces are charged Total, and they all lie on
// some board: so the Loads of a plan's boards sum to Total at least.
//
// Among a claim's tables, Fees are for narrow limits, and make the table one for cases within those: a load that a fee
// counts may be charged Amount more than Loads[b] where there are at most Count such boards, and is charged Amount less at
// least where there are Count or more; Total is then what all pieces are charged, less Count x Amount of each fee of the
// first sort, more Count x Amount of each of the second. Scale and Bound are for a case's own table: see Case.
//
// ByLength says that every piece is charged by its length and kerf, and Loads is what a board has room for.
type Table struct {
	Scale    int64
	Charges  []int64
	Loads    []int64
	Fees     []Fee
	Total    int64
	Bound    exact.Rat
	ByLength bool
}

// Fee makes use of a limit on how many boards there are of the listed kinds (indexes into Proof.Kinds) whose load holds at
// least so many pieces of each length in Holds. Among a claim's tables, Boards is empty and stands for all kinds. With
// Spend, in the table of a case of the second claim, it makes use of the first: all boards have no more of its goal than
// Count of its Units, and each board is priced Amount higher for each Unit of that goal which it has.
type Fee struct {
	Boards []int
	Holds  []Hold
	AtMost bool
	Count  int
	Spend  bool
	Unit   exact.Rat
	Amount int64
}

// Hold asks for at least Count pieces of one length (an index into Proof.Pieces) in one load.
type Hold struct{ Piece, Count int }

// Case is part of a proof by cases. With Split it is parted in two, AtMost and More. Otherwise it is closed by what its
// boards must hold: the tables of Uses, each so many times, taken together. Set Scale parts of charge against each Unit of
// the goal: a board has so much more or less than it holds, and as the case says how many boards there are at least and at
// most, Bound is the least that the goal can be. With Sums, Bound is not enough, but no boards whose goal sums to less than
// Least hold as much. With Exact, no fewer boards than Least have prices (or lengths) that sum to what was claimed before.
//
// Spend, for the second claim, takes what was claimed before into account: each Unit of the first claim's goal on a board
// makes it hold Spend less, and as all boards together have exactly so much of it, that much less need be held.
//
// Table tells a case of a single use by itself, for words: Table.Scale parts make one of the goal (one of money, not one
// Unit). Each board is priced at its Loads. Where that is more than it has of the goal, a fee of the first sort gives back
// Amount for each board that there can be at most; where it is less, one of the second adds Amount for each that there is
// at least. Table.Bound is Total, less and more the fees, over Scale: the bound before it is raised to a whole Unit.
type Case struct {
	Split  *Split
	AtMost *Case // Split.Count of them or fewer
	More   *Case // Split.Count + 1 or more
	Uses   []Use
	Scale  int64
	Spend  int64
	Sums   bool
	Exact  bool
	Bound  exact.Rat
	Table  *Table
}

// Use is a table (an index into Claim.Tables) taken so many times.
type Use struct {
	Table int
	Times int64
}

// Split asks how many boards there are among the listed kinds (indexes into Proof.Kinds). Boards is one kind; with Holds
// it is all kinds, and only boards whose load holds at least so many pieces of each length are counted.
type Split struct {
	Boards []int
	Holds  []Hold
	Count  int
}
