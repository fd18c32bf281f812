package stock

import (
	"math/big"
	"slices"

	"saywright/solver/exact"
)

// claim writes a tree of cases down as a claim of a proof.
func (s *search) claim(of Goal, unit exact.Rat, least int64, root *branch) Claim {
	w := &writer{s: s, claim: Claim{Of: of, Unit: unit, Least: units(least, unit)}, at: map[*table]int{}}
	w.claim.Root = w.tree(root)
	return w.claim
}

// units is n of a unit.
func units(n int64, unit exact.Rat) exact.Rat {
	return exact.FromBig(new(big.Rat).SetInt64(n)).Mul(unit)
}

type writer struct {
	s     *search
	claim Claim
	at    map[*table]int
}

func (w *writer) tree(b *branch) *Case {
	if b.leaf != nil {
		return w.leaf(b.leaf)
	}
	return &Case{
		Split:  &Split{Boards: w.boards(b.kind), Holds: writeHolds(b.holds), Count: b.n},
		AtMost: w.tree(b.less), More: w.tree(b.more),
	}
}

// boards lists one kind, or all for -1.
func (w *writer) boards(kind int) []int {
	if kind >= 0 {
		return []int{kind}
	}
	var all []int
	for b, d := range w.s.p.boards {
		if !d.none {
			all = append(all, b)
		}
	}
	return all
}

func (w *writer) leaf(l *leaf) *Case {
	c := &Case{Scale: l.scale, Spend: l.spend, Sums: l.sums, Exact: l.exact, Bound: w.claim.Least}
	for _, u := range l.uses {
		c.Uses = append(c.Uses, Use{Table: w.table(u.t), Times: u.times})
	}
	if l.box != nil {
		v := exact.FromBig(new(big.Rat).SetInt(w.s.bounds(l, l.box)))
		c.Bound = v.Mul(w.claim.Unit)
	}
	return c
}

func (w *writer) table(t *table) int {
	if k, ok := w.at[t]; ok {
		return k
	}
	out := &Table{Charges: slices.Clone(t.charge), Total: t.total, ByLength: w.s.isByLength(t)}
	for b, r := range t.rate {
		if !w.s.p.boards[b].none {
			out.Loads = append(out.Loads, r)
		}
	}
	for i, f := range t.fees {
		if f > 0 {
			l := t.limits[i]
			out.Fees = append(out.Fees, Fee{Holds: writeHolds(l.holds), AtMost: l.atMost, Count: l.n, Amount: f})
		}
	}
	k := len(w.claim.Tables)
	w.at[t] = k
	w.claim.Tables = append(w.claim.Tables, out)
	return k
}

func writeHolds(hs []hold) []Hold {
	var out []Hold
	for _, h := range hs {
		out = append(out, Hold{Piece: h.kind, Count: h.count})
	}
	return out
}

// kinds lists what the claims of a proof speak of.
func (p *problem) proof() Proof {
	var out Proof
	for _, b := range p.boards {
		if !b.none {
			out.Kinds = append(out.Kinds, Kind{Length: b.length, Price: b.money, Have: b.have})
		}
	}
	for _, k := range p.kinds {
		out.Pieces = append(out.Pieces, Sum{Length: k.length, Count: k.d})
	}
	return out
}
