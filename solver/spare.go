package solver

import (
	"saywright/solver/exact"
	"saywright/solver/stock"
)

// addSpare puts the spare boards of one size on its list. A share counts the boards bought, rounded up; a number is that
// many of each size. They are the cheapest boards that hold the size's longest piece (without prices: the shortest), so
// that one can stand in for any piece that goes wrong.
func (s *Site) addSpare(w want, job stock.Job, bought *[]line) (f Findings) {
	n, work := s.spareBoards(w.size, *bought)
	f.Work = work
	if n == 0 {
		return f
	}
	length, ok := spareLength(job, w.longest().Add(s.Trim))
	if !ok {
		f.Facts = append(f.Facts, Fact{Key: "no spare on sale", Names: []string{w.size}, Nums: []exact.Rat{exact.Int(n)}})
		return f
	}
	*bought = addLine(*bought, length, n)
	f.Facts = append(f.Facts, Fact{Key: "spare", Names: []string{w.size}, Nums: []exact.Rat{exact.Int(n), length}})
	return f
}

// spareBoards counts the spare boards of one size.
func (s *Site) spareBoards(size string, bought []line) (int, []Work) {
	if s.Spare == nil || s.Spare.Value.Num.Sign() <= 0 {
		return 0, nil
	}
	if s.Spare.Value.Unit != PercentOf {
		n, _ := s.Spare.Value.Num.Ceil().Int64()
		return int(min(n, mostPieces)), nil
	}
	boards := 0
	for _, l := range bought {
		boards += l.count
	}
	share := Product(Quotient(Scalar(s.Spare.Value.Num), Tally(100)), Tally(boards))
	n, _ := share.Value.Ceil().Int64()
	return int(min(n, mostPieces)), []Work{Line(size, "spare share", share)}
}

// spareLength is the board of which spare is bought: it holds so much, and is the cheapest that does.
func spareLength(job stock.Job, holds exact.Rat) (length exact.Rat, ok bool) {
	priced := anyPrice(job)
	var best stock.Board
	for _, b := range job.OnSale {
		if b.Length.Less(holds) || priced && b.Price == nil {
			continue
		}
		if !ok || cheaper(b, best) {
			best, ok = b, true
		}
	}
	return best.Length, ok
}

func cheaper(a, b stock.Board) bool {
	if a.Price == nil || a.Price.Eq(*b.Price) {
		return a.Length.Less(b.Length)
	}
	return a.Price.Less(*b.Price)
}

func anyPrice(job stock.Job) bool {
	for _, b := range job.OnSale {
		if b.Price != nil {
			return true
		}
	}
	return false
}

// priceIn is what a board of a length costs in a job, nil where nobody said.
func priceIn(job stock.Job, length exact.Rat) *exact.Rat {
	for _, b := range job.OnSale {
		if b.Length.Eq(length) {
			return b.Price
		}
	}
	return nil
}

// buyHardware puts brackets, screws, bases and caps on the list, less what is at hand, by the box where a box was told.
func (s *Site) buyHardware(cuts Findings, t *till) (f Findings) {
	f.and(s.screwRefused(cuts.Cuts))
	f.and(s.hardwareTold(cuts.Cuts))
	for _, p := range s.parts(cuts.Cuts) {
		f.Work = append(f.Work, p.work)
		need := p.count
		if at := s.atHand(p.item); at > 0 {
			still := Less(Tally(p.count), Tally(min(at, p.count)))
			f.Work = append(f.Work, Line(p.item, "less what is at hand", still))
			need -= min(at, p.count)
		}
		boxes := s.boxesOf(kindOfScrew(p.item))
		if len(boxes) == 0 || need == 0 {
			t.put(p.item, nil, need, s.priceOfPart(kindOfScrew(p.item)))
			continue
		}
		f.and(s.buyBoxes(p.item, need, boxes, t))
	}
	return f
}

// buyBoxes takes the cheapest boxes that hold enough.
func (s *Site) buyBoxes(item string, need int, boxes []box, t *till) (f Findings) {
	var held []Expr
	for i, n := range cheapestBoxes(boxes, need) {
		if n > 0 {
			t.put(item+", box of "+Tally(boxes[i].holds).Value.String(), nil, n, &boxes[i].price)
			held = append(held, Product(Tally(n), Tally(boxes[i].holds)))
		}
	}
	f.Work = []Work{Line(item, "boxes hold enough", Compare(Sum(held...), ">=", Tally(need)))}
	return f
}

// kindOfScrew is the name under which a screw is priced, whatever its length.
func kindOfScrew(item string) string {
	if len(item) > len("screws") && item[:len("screws")] == "screws" {
		return "screws"
	}
	return item
}

// atHand counts hardware that is there already.
func (s *Site) atHand(item string) (n int) {
	for _, h := range s.Have {
		if k, ok := howMany(h); ok && h.Name.Long == nil && hardwareName(h.Name.Item) == item {
			n += k
		}
	}
	return n
}
