package solver

import (
	"saywright/solver/exact"
	"saywright/solver/stock"
)

// Bought is the cutting of one lumber size: the job, its plan and, in the plan, the proof that none is better.
type Bought struct {
	Size string
	Job  stock.Job
	Plan *stock.Plan
}

// Buying returns what to buy for the site and how to cut it: by size, a plan of proven least cost (without prices: least
// length bought, then fewest boards); hardware; finish, where coats were told; the cost, and the budget held against it.
func (s *Site) Buying() Findings {
	cuts := s.Cuts()
	if cuts.Ask != nil || len(cuts.Conflicts) > 0 {
		return Findings{Ask: cuts.Ask, Conflicts: cuts.Conflicts}
	}
	return s.buy(cuts)
}

func (s *Site) buy(cuts Findings) (f Findings) {
	t := &till{proven: true}
	for _, w := range wantsOf(cuts.Cuts) {
		f.and(s.buyLumber(w, t))
	}
	if len(s.Have) > 0 {
		f.Facts = append(f.Facts, Fact{Key: "told at hand"})
	}
	f.and(s.buyHardware(cuts, t))
	f.and(s.buyFinish(cuts.Cuts, t))
	for _, q := range []struct {
		of     Quantity
		common exact.Rat
	}{{Spare, exact.Int(10)}, {Fit, exact.New(1, 8)}, {Trim, exact.New(1, 2)}} {
		f.Facts = append(f.Facts, s.notCounted(q.of, q.common)...)
	}
	for _, a := range cuts.Assumed {
		f.Assumed = addOnce(f.Assumed, a)
	}
	for _, a := range s.leaned(Stock, Kerf, Fit, Trim, Spare) {
		f.Assumed = addOnce(f.Assumed, a)
	}
	if len(f.Conflicts) > 0 {
		return f // a list that lacks a board is no list: no total, no budget
	}
	f.and(t.close(s))
	if len(f.Conflicts) > 0 {
		ways, facts := s.withinBudget()
		f.Ways, f.Facts = append(f.Ways, ways...), append(f.Facts, facts...)
	}
	return f
}

// buyLumber plans one size, and puts the boards to buy on the list.
func (s *Site) buyLumber(w want, t *till) (f Findings) {
	job := s.jobOf(w)
	plan, err := stock.Solve(job)
	if err != nil {
		return s.noPlan(w, job, err)
	}
	f.Buying = []Bought{{w.size, job, plan}}
	f.Plan = boardsOf(w.size, job, plan)
	for _, b := range f.Plan {
		f.Work = append(f.Work, s.boardSum(b)...)
	}
	f.and(s.whyNoFewer(w, job, plan))
	bought := countBought(plan)
	if len(bought) > 0 {
		f.Facts = append(f.Facts, s.tooShortAtHand(w, job)...)
	}
	f.and(s.addSpare(w, job, &bought))
	for _, l := range bought {
		t.put(w.size, &l.length, l.count, priceIn(job, l.length))
	}
	if plan.Cost != nil && plan.AtLeast != nil {
		t.slack = t.slack.Add(plan.Cost.Sub(*plan.AtLeast))
	}
	t.proven = t.proven && plan.Proven
	f.Facts = append(f.Facts, s.planTold(w, plan))
	return f
}

// tooShortAtHand lists boards at hand that hold none of the pieces, not even the shortest.
func (s *Site) tooShortAtHand(w want, job stock.Job) (facts []Fact) {
	least := w.pieces[0].Length
	for _, p := range w.pieces {
		least = exact.Min(least, p.Length)
	}
	least = least.Add(s.Trim)
	for _, b := range job.OnHand {
		if b.Length.Less(least) {
			facts = append(facts, Fact{Key: "too short at hand", Names: []string{w.size}, Nums: []exact.Rat{exact.Int(b.Have), b.Length, least}})
		}
	}
	return facts
}

// planTold sums a plan up: boards and length bought, boards used from those at hand, whether nothing better exists.
func (s *Site) planTold(w want, plan *stock.Plan) Fact {
	have := boardsUsed(plan)
	goal := "length"
	if plan.Cost != nil {
		goal = "cost"
	}
	proven := "proven"
	if !plan.Proven {
		proven = "not proven"
	}
	nums := []exact.Rat{exact.Int(plan.Boards), plan.Length, exact.Int(have), exact.Int(plan.AtLeastBoards), plan.AtLeastLength}
	if plan.Cost != nil && plan.AtLeast != nil {
		nums = append(nums, *plan.Cost, *plan.AtLeast)
	}
	return Fact{Key: "plan", Names: []string{w.size, goal, proven}, Nums: nums}
}

// boardsUsed counts the boards at hand that a plan cuts.
func boardsUsed(plan *stock.Plan) (n int) {
	for _, c := range plan.Cuttings {
		if c.Have {
			n += c.Times
		}
	}
	return n
}

// jobOf sets one size up for cutting: what is on sale and at what price, what is at hand, what is wanted.
func (s *Site) jobOf(w want) stock.Job {
	job := stock.Job{Kerf: s.Kerf, Trim: s.Trim}
	for _, length := range s.onSale(w.size) {
		job.OnSale = append(job.OnSale, stock.Board{Length: length, Price: s.priceOf(w.size, length)})
	}
	for _, h := range s.Have {
		n, ok := howMany(h)
		if ok && h.Name.Long != nil && sameSize(s.sizeOf(h.Name.Item), w.size) {
			job.OnHand = append(job.OnHand, stock.Board{Length: h.Name.Long.Num, Have: n})
		}
	}
	for _, p := range w.pieces {
		job.Pieces = append(job.Pieces, stock.Piece{Length: p.Length, Count: p.Count, Name: pieceName(p)})
	}
	return job
}

// onSale lists the lengths that a size is sold in: what was said of that size, else what was said of all; to the common
// lengths that were only taken for granted, those that have a price are added.
func (s *Site) onSale(size string) (lengths []exact.Rat) {
	var list []Value
	granted := false
	for _, st := range s.Stock {
		switch {
		case st.Name.Item == "" && list == nil:
			list, granted = st.Value.List, s.isDefault(st)
		case st.Name.Item != "" && sameSize(s.sizeOf(st.Name.Item), size):
			list, granted = st.Value.List, false
		}
	}
	add := func(length exact.Rat) {
		for _, l := range lengths {
			if l.Eq(length) {
				return
			}
		}
		lengths = append(lengths, length)
	}
	for _, v := range list {
		add(v.Num)
	}
	if !granted {
		return lengths
	}
	for _, p := range s.Prices {
		if p.Name.Long != nil && sameSize(s.sizeOf(p.Name.Item), size) {
			add(p.Name.Long.Num)
		}
	}
	return lengths
}

func (s *Site) isDefault(st Statement) bool {
	for _, d := range s.Defaults {
		if d.String() == st.String() {
			return true
		}
	}
	return false
}

// boardsOf writes a plan as the answer has it.
func boardsOf(size string, job stock.Job, plan *stock.Plan) (boards []Board) {
	for _, c := range plan.Cuttings {
		b := Board{Size: size, Board: c.Board, Times: c.Times, Left: c.Left, Have: c.Have}
		for _, i := range c.Pieces {
			b.Pieces = append(b.Pieces, job.Pieces[i].Length)
			b.Names = append(b.Names, job.Pieces[i].Name)
		}
		boards = append(boards, b)
	}
	return boards
}

// boardSum shows that the pieces of a board fit it: lengths and the kerfs between them, and the trim, within the board.
func (s *Site) boardSum(b Board) []Work {
	if len(b.Pieces) < 2 && s.Trim.Sign() == 0 {
		return nil
	}
	of := b.Size + " " + Inches(b.Board).String()
	takes := s.loadSum(b.Pieces)
	return []Work{Line(of, "out of one board", takes), Line(of, "fits the board", Compare(Num(takes.Value), "<=", Num(b.Board)))}
}

// loadSum adds pieces, longest first and like ones together, a kerf between each two, and the trim.
func (s *Site) loadSum(pieces []exact.Rat) Expr {
	var terms []Expr
	for i := 0; i < len(pieces); {
		n := 1
		for i+n < len(pieces) && pieces[i+n].Eq(pieces[i]) {
			n++
		}
		terms = append(terms, several(n, pieces[i]))
		i += n
	}
	if cuts := len(pieces) - 1; cuts > 0 && s.Kerf.Sign() > 0 {
		terms = append(terms, several(cuts, s.Kerf))
	}
	if s.Trim.Sign() > 0 {
		terms = append(terms, Num(s.Trim))
	}
	return Sum(terms...)
}

// several is n lengths alike.
func several(n int, length exact.Rat) Expr {
	if n == 1 {
		return Num(length)
	}
	return Product(Tally(n), Num(length))
}

// line is boards of one length to buy.
type line struct {
	length exact.Rat
	count  int
}

// countBought counts the boards of a plan that are bought, by length, shortest first.
func countBought(plan *stock.Plan) (lines []line) {
	for _, c := range plan.Cuttings {
		if !c.Have {
			lines = addLine(lines, c.Board, c.Times)
		}
	}
	return lines
}

func addLine(lines []line, length exact.Rat, count int) []line {
	for i := range lines {
		switch lines[i].length.Cmp(length) {
		case 0:
			lines[i].count += count
			return lines
		case 1:
			return append(lines[:i:i], append([]line{{length: length, count: count}}, lines[i:]...)...)
		}
	}
	return append(lines, line{length: length, count: count})
}
