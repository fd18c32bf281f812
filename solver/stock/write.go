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
		c.Table = w.own(l)
	}
	return c
}

// own is the table of a leaf of a single use by itself; nil where its numbers would be too large to be of use.
func (w *writer) own(l *leaf) *Table {
	if len(l.uses) != 1 || l.spend < 0 {
		return nil
	}
	num, den := w.claim.Unit.Frac()
	if num.BitLen() > 40 || den.BitLen() > 40 {
		return nil
	}
	o := owning{s: w.s, t: l.uses[0].t, unit: w.claim.Unit, spend: l.spend}
	o.times, o.parts, o.price = mulInt(l.uses[0].times, num), mulInt(l.scale, den), mulInt(l.scale, num)
	g := new(big.Int).GCD(nil, nil, o.times, new(big.Int).GCD(nil, nil, o.parts, o.price))
	if l.spend > 0 {
		o.spent = mulInt(l.spend, num)
		g.GCD(nil, nil, g, o.spent)
	}
	for _, v := range []*big.Int{o.times, o.parts, o.price, o.spent} {
		if v != nil {
			v.Div(v, g)
		}
	}
	out := o.table(l.box)
	if o.large {
		return nil
	}
	out.ByLength = w.s.isByLength(o.t)
	return out
}

func mulInt(a int64, b *big.Int) *big.Int { return new(big.Int).Mul(big.NewInt(a), b) }

// owning writes a table out: its charges times over, in parts of one of the goal; price is what one unit of price comes to.
type owning struct {
	s                          *search
	t                          *table
	unit                       exact.Rat
	spend                      int64
	times, parts, price, spent *big.Int
	large                      bool
}

// int is v as a number of a table, if it is not too large for one.
func (o *owning) int(v *big.Int) int64 {
	if v.BitLen() > 60 {
		o.large = true
	}
	return v.Int64()
}

func (o *owning) table(b *box) *Table {
	out := &Table{Scale: o.int(o.parts)}
	total := new(big.Int)
	for i, u := range o.t.charge {
		v := mulInt(u, o.times)
		out.Charges = append(out.Charges, o.int(v))
		total.Add(total, mulInt(int64(o.s.demand[i]), v))
	}
	out.Total = o.int(total)
	bound := new(big.Int).Set(total)
	fee := func(f Fee, amount *big.Int) {
		f.Amount = o.int(amount)
		out.Fees = append(out.Fees, f)
		if f.AtMost {
			bound.Sub(bound, mulInt(int64(f.Count), amount))
		} else {
			bound.Add(bound, mulInt(int64(f.Count), amount))
		}
	}
	for i, f := range o.t.fees {
		if f > 0 {
			l := o.t.limits[i]
			fee(Fee{Holds: writeHolds(l.holds), AtMost: l.atMost, Count: l.n}, mulInt(f, o.times))
		}
	}
	if o.spend > 0 {
		fee(Fee{AtMost: true, Spend: true, Count: int(o.s.spendAt), Unit: o.s.spendUnit}, o.spent)
	}
	for k, d := range o.s.p.boards {
		if d.none {
			continue
		}
		load := mulInt(o.t.rate[k], o.times)
		out.Loads = append(out.Loads, o.int(load))
		more := new(big.Int).Sub(load, mulInt(o.s.price[k], o.price))
		if o.spend > 0 {
			more.Sub(more, mulInt(o.s.spend[k], o.spent))
		}
		if more.Sign() > 0 {
			fee(Fee{Boards: []int{k}, AtMost: true, Count: b.up[k]}, more)
		} else if more.Sign() < 0 && b.lo[k] > 0 {
			fee(Fee{Boards: []int{k}, Count: b.lo[k]}, more.Neg(more))
		}
	}
	out.Bound = exact.FromBig(new(big.Rat).SetFrac(bound, o.parts))
	return out
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
