package solver

import (
	"sort"

	"saywright/solver/exact"
	"saywright/solver/stock"
)

// whyNoFewer records, in sums that stand by themselves, why no plan takes less: a whole proof where one fits in a line
// or two (every piece needs a board of its own; the pieces and kerfs need more room than one board fewer has), else the
// charges of the proof, which Bought carries in full.
func (s *Site) whyNoFewer(w want, job stock.Job, plan *stock.Plan) (f Findings) {
	if !plan.Proven || w.count() == 0 {
		return f
	}
	if oneBoardAtLeast(w, job, plan) {
		f.Facts = append(f.Facts, Fact{Key: "one board at least", Names: []string{w.size}, Nums: []exact.Rat{w.longest()}})
		return f
	}
	longest := longestBoard(job)
	if line, ok := s.noTwoTogether(w, longest); ok {
		f.Work = append(f.Work, line)
		if hand := boardsUsed(plan); hand > 0 && plan.Boards > 0 {
			f.Work = append(f.Work, Line(w.size, "boards to buy", Less(Tally(w.count()), Tally(hand))))
		}
		f.Facts = append(f.Facts, Fact{Key: "one piece a board", Names: []string{w.size}, Nums: []exact.Rat{exact.Int(w.count()), longest}})
		return f
	}
	if work, ok := s.moreThanFewerHold(w, job, plan); ok {
		f.Work = append(f.Work, work...)
		f.Facts = append(f.Facts, Fact{Key: "room for no fewer", Names: []string{w.size}, Nums: []exact.Rat{exact.Int(plan.Boards), longest}})
		return f
	}
	return s.charges(w, plan)
}

// oneBoardAtLeast reports whether a plan needs no more words: it buys one board, nothing is at hand, and no board that
// holds the longest piece costs less (without prices: is shorter).
func oneBoardAtLeast(w want, job stock.Job, plan *stock.Plan) bool {
	if plan.Boards != 1 || len(job.OnHand) > 0 {
		return false
	}
	length, ok := spareLength(job, w.longest().Add(job.Trim))
	if !ok {
		return false
	}
	if least := priceIn(job, length); least != nil {
		return plan.Cost != nil && plan.Cost.Eq(*least)
	}
	return plan.Length.Eq(length)
}

// longestBoard is the longest that a job can be cut from.
func longestBoard(job stock.Job) (longest exact.Rat) {
	priced := anyPrice(job)
	for _, b := range job.OnSale {
		if !priced || b.Price != nil {
			longest = exact.Max(longest, b.Length)
		}
	}
	for _, b := range job.OnHand {
		longest = exact.Max(longest, b.Length)
	}
	return longest
}

// noTwoTogether shows, where it is so, that not even the two shortest pieces come out of the longest board.
func (s *Site) noTwoTogether(w want, longest exact.Rat) (Work, bool) {
	var shortest []exact.Rat
	for _, p := range w.pieces {
		for range min(p.Count, 2) {
			shortest = append(shortest, p.Length)
		}
	}
	if len(shortest) < 2 {
		return Work{}, false
	}
	sort.Slice(shortest, func(i, j int) bool { return shortest[i].Less(shortest[j]) })
	takes := Compare(s.loadSum(shortest[:2]), ">", Num(longest))
	return Line(w.size, "two together", takes), takes.Holds()
}

// moreThanFewerHold shows, where one length is bought and no other could be, that the pieces and a kerf for each need more
// room than one board fewer has, with all that is at hand. (A board has room for its pieces and a kerf for each when it is
// counted one kerf longer: the last piece needs no cut after it.)
func (s *Site) moreThanFewerHold(w want, job stock.Job, plan *stock.Plan) ([]Work, bool) {
	length, ok := onlyLength(w, job)
	if !ok || plan.Boards < 1 {
		return nil, false
	}
	var terms []Expr
	for _, p := range w.pieces {
		terms = append(terms, several(p.Count, p.Length))
	}
	if s.Kerf.Sign() > 0 {
		terms = append(terms, several(w.count(), s.Kerf))
	}
	needs := Sum(terms...)
	var rooms []Expr
	if plan.Boards > 1 {
		rooms = append(rooms, Product(Tally(plan.Boards-1), s.room(length)))
	}
	for _, h := range job.OnHand {
		rooms = append(rooms, Product(Tally(h.Have), s.room(h.Length)))
	}
	if len(rooms) == 0 {
		return nil, false
	}
	hold := Sum(rooms...)
	short := Compare(Num(needs.Value), ">", Num(hold.Value))
	return []Work{Line(w.size, "pieces and kerfs", needs), Line(w.size, "one board fewer holds", hold),
		Line(w.size, "more than that", short)}, short.Holds()
}

// room is what pieces and a kerf for each may take of a board.
func (s *Site) room(board exact.Rat) Expr {
	room := Num(board)
	if s.Kerf.Sign() > 0 {
		room = Sum(room, Num(s.Kerf))
	}
	if s.Trim.Sign() > 0 {
		room = Less(room, Num(s.Trim))
	}
	return room
}

// onlyLength is the one length on sale from which any piece can be cut and that has a price where one has; not ok where
// there is a choice: then fewer boards are not yet less length, or less cost.
func onlyLength(w want, job stock.Job) (length exact.Rat, ok bool) {
	priced, shortest := anyPrice(job), w.longest()
	for _, p := range w.pieces {
		shortest = exact.Min(shortest, p.Length)
	}
	for _, b := range job.OnSale {
		if priced && b.Price == nil || b.Length.Less(shortest.Add(job.Trim)) {
			continue
		}
		if ok && !b.Length.Eq(length) {
			return length, false
		}
		length, ok = b.Length, true
	}
	return length, ok
}

// mostCases is how many cases of a proof are told one by one.
const mostCases = 10

// charges tells a proof by tables of charges: for each case the charge of each length, the charge of all pieces
// together, and what that proves. A proof of many cases is only counted.
func (s *Site) charges(w want, plan *stock.Plan) (f Findings) {
	for _, c := range plan.Proof.Claims {
		leaves := leavesOf(c.Root, nil)
		f.Facts = append(f.Facts, Fact{Key: "proven at least", Names: []string{w.size, string(c.Of)},
			Nums: []exact.Rat{c.Least, exact.Int(len(leaves))}})
		if len(leaves) > mostCases {
			continue
		}
		for i, l := range leaves {
			f.and(chargesOf(w.size, plan.Proof, c, l, i+1))
		}
	}
	return f
}

// leaf is one closed case of a proof, and the splits that lead to it.
type leaf struct {
	closed *stock.Case
	path   []turn
}

// turn is one split, and which side of it was taken.
type turn struct {
	split *stock.Split
	more  bool
}

func leavesOf(c *stock.Case, path []turn) []leaf {
	if c == nil {
		return nil
	}
	if c.Split == nil {
		return []leaf{{c, append([]turn(nil), path...)}}
	}
	return append(leavesOf(c.AtMost, append(path, turn{c.Split, false})), leavesOf(c.More, append(path, turn{c.Split, true}))...)
}

// chargesOf records one case: its conditions, a table of charges, and the sum that closes it.
func chargesOf(size string, proof stock.Proof, claim stock.Claim, l leaf, number int) (f Findings) {
	for _, t := range l.path {
		f.Facts = append(f.Facts, conditionOf(size, proof, t, number))
	}
	t := l.closed.Table
	if t == nil || t.Scale == 0 {
		f.Facts = append(f.Facts, Fact{Key: "case by sums", Names: []string{size, string(claim.Of)}, Nums: []exact.Rat{exact.Int(number)}})
		return f
	}
	unit := map[stock.Goal]func(exact.Rat) Expr{stock.LeastCost: Paid, stock.LeastLength: Num, stock.FewestBoard: Scalar}[claim.Of]
	var terms []Expr
	for i, p := range proof.Pieces {
		charge := exact.New(t.Charges[i], t.Scale)
		f.Facts = append(f.Facts, Fact{Key: "charge", Names: []string{size, string(claim.Of)},
			Nums: []exact.Rat{exact.Int(number), p.Length, exact.Int(p.Count), charge}})
		if charge.Sign() != 0 {
			terms = append(terms, Product(Tally(p.Count), unit(charge)))
		}
	}
	if len(terms) == 0 {
		return f
	}
	total := Sum(terms...)
	f.Work = append(f.Work, Line(size, "charged in all", total))
	bound := unit(total.Value)
	for _, fee := range t.Fees {
		part := Product(Tally(fee.Count), unit(exact.New(fee.Amount, t.Scale)))
		if fee.AtMost || fee.Spend {
			bound = Less(bound, part)
		} else {
			bound = Sum(bound, part)
		}
	}
	if len(t.Fees) > 0 {
		f.Work = append(f.Work, Line(size, "less the fees", bound))
	}
	return f
}

// conditionOf tells one split on the way to a case: how many boards of some lengths, holding so many of some pieces.
func conditionOf(size string, proof stock.Proof, t turn, number int) Fact {
	side, limit := "at most", t.split.Count
	if t.more {
		side, limit = "at least", t.split.Count+1
	}
	fact := Fact{Key: "case", Names: []string{size, side}, Nums: []exact.Rat{exact.Int(number), exact.Int(limit), exact.Int(len(t.split.Boards))}}
	for _, b := range t.split.Boards {
		fact.Nums = append(fact.Nums, proof.Kinds[b].Length)
	}
	for _, h := range t.split.Holds {
		fact.Nums = append(fact.Nums, proof.Pieces[h.Piece].Length, exact.Int(h.Count))
	}
	return fact
}
