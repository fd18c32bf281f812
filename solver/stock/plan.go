package stock

import (
	"sort"
	"strconv"

	"saywright/solver/exact"
)

// write fills in what a plan cuts: boards on hand first, then from the shortest; pieces in cutting order, longest first. Of
// pieces of one length, those of the job's earlier pieces are dealt out first.
func (p *problem) write(plan *Plan, j Job, q packing) {
	order := append(packing(nil), q...)
	sort.SliceStable(order, func(x, y int) bool {
		a, b := order[x], order[y]
		if a.board != b.board {
			return a.board < b.board
		}
		return longerFirst(a.load, b.load)
	})
	d := &dealer{p: p, next: make([]int, len(p.kinds)), dealt: make([]int, len(p.kinds)), counts: j.Pieces}
	at := map[string]int{}
	for _, c := range order {
		b := p.boards[c.board]
		for range c.times {
			pieces, used := d.deal(c.load, j.Kerf)
			key := strconv.Itoa(c.board)
			for _, i := range pieces {
				key += " " + strconv.Itoa(i)
			}
			if k, ok := at[key]; ok {
				plan.Cuttings[k].Times++
				continue
			}
			at[key] = len(plan.Cuttings)
			left := exact.Max(exact.Rat{}, b.length.Sub(j.Trim).Sub(used))
			plan.Cuttings = append(plan.Cuttings, Cutting{Board: b.length, Have: b.have >= 0, Times: 1, Pieces: pieces, Left: left})
		}
	}
}

// longerFirst orders loads by their longest pieces.
func longerFirst(a, b []entry) bool {
	for i := range a {
		switch {
		case i >= len(b):
			return true
		case a[i].kind != b[i].kind:
			return a[i].kind < b[i].kind
		case a[i].count != b[i].count:
			return a[i].count > b[i].count
		}
	}
	return false
}

// dealer deals out the pieces of each length.
type dealer struct {
	p      *problem
	counts []Piece
	next   []int // by kind: which of its pieces is dealt now
	dealt  []int // and how many of that
}

// deal names the pieces of a load, and sums their lengths with a kerf for each.
func (d *dealer) deal(load []entry, kerf exact.Rat) (pieces []int, used exact.Rat) {
	for _, e := range load {
		k := d.p.kinds[e.kind]
		for range e.count {
			i := k.pieces[d.next[e.kind]]
			pieces = append(pieces, i)
			used = used.Add(k.length).Add(kerf)
			if d.dealt[e.kind]++; d.dealt[e.kind] == d.counts[i].Count {
				d.next[e.kind], d.dealt[e.kind] = d.next[e.kind]+1, 0
			}
		}
	}
	return pieces, used
}

// price sums up what a plan buys.
func (p *problem) price(plan *Plan) {
	var cost exact.Rat
	for _, c := range plan.Cuttings {
		if c.Have {
			continue
		}
		n := exact.Int(c.Times)
		plan.Boards += c.Times
		plan.Length = plan.Length.Add(c.Board.Mul(n))
		for _, b := range p.boards {
			if b.have < 0 && b.length.Eq(c.Board) {
				cost = cost.Add(b.money.Mul(n))
				break
			}
		}
	}
	if p.priced {
		plan.Cost = &cost
		if plan.AtLeast == nil {
			plan.AtLeast = &exact.Rat{}
		}
	}
}
