package stock

import (
	"math/big"
	"sort"

	"saywright/solver/exact"
)

// kind is one length of piece in whole units, kerf added, and how many are wanted.
type kind struct {
	w      int64
	d      int
	length exact.Rat
	pieces []int // indexes into Job.Pieces
}

// board is one kind of board in whole units: a load fits when its pieces' w sum to at most c.
type board struct {
	c      int64
	have   int   // on hand; -1 for sale
	price  int64 // in parts of the currency, 0 on hand and without prices
	length exact.Rat
	money  exact.Rat // the price itself
	none   bool      // not a real board: it stands for what is missing
}

// problem is a job in whole numbers. The kerf is gone: it was added to every piece and to every board, as
// sum(l) + (k-1)·kerf <= board - trim is sum(l + kerf) <= board - trim + kerf.
type problem struct {
	kinds  []kind  // longest first
	boards []board // on hand, then on sale, each from the shortest
	priced bool
	unit   exact.Rat // how much money one part of a price is
	foot   exact.Rat // how much length one part of a board's length is, for the least bought length
	size   []int64   // each board's length in those parts, 0 on hand
	rough  bool      // the numbers were too large: pieces are rounded up and boards down, and no bound is drawn
	n      int       // pieces in all
}

const (
	mostUnits = 1 << 40 // of a board's length, or of a price
	mostCount = 1 << 24 // pieces in all
)

// newProblem reads a job. It answers with *BadJob or *TooLong where that is no work.
func newProblem(j Job) (*problem, error) {
	if err := sane(j); err != nil {
		return nil, err
	}
	p := &problem{}
	onSale := p.worthBuying(j)
	onHand := handBoards(j)
	if err := longEnough(j, onSale, onHand); err != nil {
		return nil, err
	}
	p.boards = append(onHand, onSale...)
	p.gather(j)
	p.scaleLengths(j)
	p.scalePrices()
	p.scaleSizes()
	return p, nil
}

// worthBuying lists the boards on sale, shortest first, without those that another replaces at no greater cost.
func (p *problem) worthBuying(j Job) []board {
	for _, b := range j.OnSale {
		p.priced = p.priced || b.Price != nil
	}
	var all []board
	for _, b := range j.OnSale {
		if p.priced && b.Price == nil || b.Length.Sub(j.Trim).Sign() <= 0 {
			continue
		}
		n := board{length: b.Length, have: -1}
		if b.Price != nil {
			n.money = *b.Price
		}
		all = append(all, n)
	}
	cost := func(b board) exact.Rat {
		if p.priced {
			return b.money
		}
		return b.length
	}
	sort.SliceStable(all, func(x, y int) bool {
		if c := all[x].length.Cmp(all[y].length); c != 0 {
			return c > 0
		}
		return all[x].money.Less(all[y].money)
	})
	var kept []board
	for _, b := range all {
		if len(kept) == 0 || cost(b).Less(cost(kept[len(kept)-1])) {
			kept = append(kept, b)
		}
	}
	for x, y := 0, len(kept)-1; x < y; x, y = x+1, y-1 {
		kept[x], kept[y] = kept[y], kept[x]
	}
	return kept
}

// handBoards lists the boards on hand, shortest first, alike ones together.
func handBoards(j Job) []board {
	var all []board
	for _, b := range j.OnHand {
		if b.Have > 0 && b.Length.Sub(j.Trim).Sign() > 0 {
			all = append(all, board{length: b.Length, have: b.Have})
		}
	}
	sort.SliceStable(all, func(x, y int) bool { return all[x].length.Less(all[y].length) })
	var out []board
	for _, b := range all {
		if n := len(out); n > 0 && out[n-1].length.Eq(b.length) {
			out[n-1].have += b.have
		} else {
			out = append(out, b)
		}
	}
	return out
}

// gather brings pieces of one length together, longest first.
func (p *problem) gather(j Job) {
	order := make([]int, 0, len(j.Pieces))
	for i, q := range j.Pieces {
		if q.Count > 0 {
			order = append(order, i)
			p.n += q.Count
		}
	}
	sort.SliceStable(order, func(x, y int) bool { return j.Pieces[order[y]].Length.Less(j.Pieces[order[x]].Length) })
	for _, i := range order {
		q := j.Pieces[i]
		if n := len(p.kinds); n > 0 && p.kinds[n-1].length.Eq(q.Length) {
			p.kinds[n-1].d += q.Count
			p.kinds[n-1].pieces = append(p.kinds[n-1].pieces, i)
		} else {
			p.kinds = append(p.kinds, kind{length: q.Length, d: q.Count, pieces: []int{i}})
		}
	}
}

// scaleLengths turns lengths into whole units, as large as they can be: the greatest common measure of all pieces with
// their kerfs. A board holds a whole number of those; what is over is of no use.
func (p *problem) scaleLengths(j Job) {
	ws := make([]exact.Rat, len(p.kinds))
	for i, k := range p.kinds {
		ws[i] = k.length.Add(j.Kerf)
	}
	unit := measure(ws)
	room := make([]exact.Rat, len(p.boards))
	var most exact.Rat
	for b := range p.boards {
		room[b] = p.boards[b].length.Sub(j.Trim).Add(j.Kerf)
		most = exact.Max(most, room[b])
	}
	if len(ws) > 0 && exact.Int(mostUnits).Less(most.Div(unit)) {
		unit, p.rough = most.Div(exact.Int(mostUnits)), true
	}
	for i := range p.kinds {
		p.kinds[i].w = whole(ws[i].Div(unit).Ceil())
	}
	for b := range p.boards {
		if len(ws) > 0 {
			p.boards[b].c = whole(room[b].Div(unit).Floor())
		}
	}
}

// scalePrices turns prices into whole parts of their greatest common measure.
func (p *problem) scalePrices() {
	var money []exact.Rat
	for _, b := range p.boards {
		money = append(money, b.money)
	}
	p.unit = measure(money)
	var most exact.Rat
	for _, m := range money {
		most = exact.Max(most, m.Div(p.unit))
	}
	if exact.Int(mostUnits).Less(most) {
		p.unit, p.rough = p.unit.Mul(most).Div(exact.Int(mostUnits)), true
	}
	for b := range p.boards {
		p.boards[b].price = whole(money[b].Div(p.unit).Ceil())
	}
}

// scaleSizes does the same for the boards' own lengths, which are what is kept small when there are no prices.
func (p *problem) scaleSizes() {
	var ls []exact.Rat
	var most exact.Rat
	for _, b := range p.boards {
		if b.have < 0 {
			ls = append(ls, b.length)
			most = exact.Max(most, b.length)
		}
	}
	p.foot = measure(ls)
	if exact.Int(mostUnits).Less(most.Div(p.foot)) {
		p.foot, p.rough = most.Div(exact.Int(mostUnits)), true
	}
	p.size = make([]int64, len(p.boards))
	for b := range p.boards {
		if p.boards[b].have < 0 {
			p.size[b] = whole(p.boards[b].length.Div(p.foot).Ceil())
		}
	}
}

// measure returns the greatest rational of which every r is a whole multiple, and 1 when all are 0.
func measure(rs []exact.Rat) exact.Rat {
	num, den := new(big.Int), big.NewInt(1)
	for _, r := range rs {
		if r.Sign() == 0 {
			continue
		}
		_, d := r.Frac()
		g := new(big.Int).GCD(nil, nil, den, d)
		den.Mul(den, new(big.Int).Div(d, g))
	}
	for _, r := range rs {
		n, d := r.Frac()
		n = new(big.Int).Mul(n, new(big.Int).Div(den, d))
		num.GCD(nil, nil, num, n)
	}
	if num.Sign() == 0 {
		return exact.Int(1)
	}
	return exact.FromBig(new(big.Rat).SetFrac(num, den))
}

func whole(r exact.Rat) int64 {
	n, _ := r.Int64()
	return n
}
