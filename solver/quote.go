package solver

import (
	"saywright/solver/exact"
	"saywright/solver/stock"
)

// HoldQuote holds claims about boards, cost and cuts against what the site needs: each holds, fails with what it should
// be, or cannot be judged. Claims about anything else are left out, for others to hold. A claim of boards holds when
// exactly so many are needed; one board more is told as one too many.
func (s *Site) HoldQuote(claims []Statement) (f Findings) {
	for _, c := range claims {
		switch c.Name.Quantity {
		case Boards:
			f.Check = append(f.Check, s.holdBoards(c, claims))
		case CostOf:
			f.Check = append(f.Check, s.holdCost(c))
		case CutOf:
			f.Check = append(f.Check, s.holdCut(c))
		}
	}
	return f
}

// judged compares what a claim says with what is so.
func judged(c Statement, is exact.Rat) Claim {
	said, holds := c.Value.Num, false
	switch order := is.Cmp(said); c.Op {
	case LT:
		holds = order < 0
	case LE:
		holds = order <= 0
	case GT:
		holds = order > 0
	case GE:
		holds = order >= 0
	case In:
		holds = order >= 0 && is.Cmp(c.Upper.Num) <= 0
	default:
		holds = order == 0
	}
	claim := Claim{Claim: c.String(), Holds: &holds}
	if !holds {
		claim.ShouldBe = is.String()
		claim.By = said.Sub(is).Abs().String()
	}
	return claim
}

// holdBoards judges one claim of boards. Claims of several lengths of one size are boards of one quote: together they
// must hold all pieces, and none may be to spare.
func (s *Site) holdBoards(c Statement, claims []Statement) Claim {
	open := Claim{Claim: c.String()}
	w, ok := s.wanted(c.Name.Item)
	if !ok || c.Name.Long == nil {
		return open
	}
	job := s.jobOf(w)
	job.OnSale = []stock.Board{{Length: c.Name.Long.Num}}
	others := 0
	for _, o := range claims {
		n, whole := o.Value.Num.Int64()
		same := o.Name.Quantity == Boards && o.Name.Long != nil && sameSize(s.sizeOf(o.Name.Item), w.size)
		if !same || o.Name.Long.Num.Eq(c.Name.Long.Num) || !whole || n < 0 || n > mostPieces {
			continue
		}
		others++
		job.OnHand = append(job.OnHand, stock.Board{Length: o.Name.Long.Num, Have: int(n)})
	}
	plan, err := stock.Solve(job)
	if err != nil {
		return s.claimTooShort(open, job, err)
	}
	need := plan.Boards
	spare, _ := s.spareBoards(w.size, countBought(plan))
	if others == 0 {
		need += spare
	}
	claim := judged(c, exact.Int(need))
	if said, whole := c.Value.Num.Int64(); !plan.Proven && whole && int(said) >= plan.AtLeastBoards && int(said) < need {
		return open // not ruled out, and not found either
	}
	claim.Work = s.quoteWork(w, job, plan)
	return claim
}

// quoteWork is why so many boards are needed, with the boards of the claim alone on sale.
func (s *Site) quoteWork(w want, job stock.Job, plan *stock.Plan) (work []Work) {
	for _, b := range boardsOf(w.size, job, plan) {
		work = append(work, s.boardSum(b)...)
	}
	return append(work, s.whyNoFewer(w, job, plan).Work...)
}

// claimTooShort fails a claim of boards that are all too short for some piece; what else cannot be cut stays open.
func (s *Site) claimTooShort(claim Claim, job stock.Job, err error) Claim {
	fails := false
	if few, ok := err.(*stock.TooFew); ok && len(job.OnSale) == 1 && job.OnSale[0].Length.Less(few.Length) {
		claim.Holds = &fails
		claim.Work = []Work{Line("boards", "longer than any board", Compare(Num(few.Length), "<=", Num(job.OnSale[0].Length)))}
		return claim
	}
	long, ok := err.(*stock.TooLong)
	if !ok {
		return claim
	}
	claim.Holds = &fails
	claim.Work = []Work{Line(long.Name, "longer than any board", Compare(Num(long.Needs), "<=", Num(long.Longest)))}
	return claim
}

// wanted is everything wanted of one size.
func (s *Site) wanted(item string) (want, bool) {
	for _, w := range wantsOf(s.Cuts().Cuts) {
		if sameSize(w.size, s.sizeOf(item)) {
			return w, true
		}
	}
	return want{}, false
}

func (s *Site) holdCost(c Statement) Claim {
	open := Claim{Claim: c.String()}
	trial := *s
	trial.Budget = nil
	f := trial.Buying()
	if f.Cost == nil || len(f.Conflicts) > 0 {
		return open
	}
	for _, fact := range f.Facts {
		if fact.Key == "no price" {
			return open
		}
	}
	total := exact.Must(Cents(f.Cost.Total.Rat))
	claim := judged(c, total)
	for _, w := range f.Work {
		if w.Note == "amount" || w.Note == "total" {
			claim.Work = append(claim.Work, w)
		}
	}
	if !*claim.Holds && c.Value.Num.Eq(lumberAlone(f.Shopping)) {
		claim.Slip = "hardware left out"
	}
	return claim
}

func lumberAlone(lines []Buy) (total exact.Rat) {
	for _, b := range lines {
		if b.Length != nil && b.Amount != nil {
			total = total.Add(b.Amount.Rat)
		}
	}
	return total
}
