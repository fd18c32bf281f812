package solver

import (
	"slices"

	"saywright/solver/exact"
)

// story is why one cell is refused, as arithmetic: what the parts come to, and what stands against it.
type story struct {
	lines   []Work
	way     int       // +1 the parts come to too much, −1 to too little, 0 told otherwise
	missing exact.Rat // by how much
}

// known is a bound on an unknown that the certificate's rows give, with the arithmetic that it came from.
type known struct {
	v    exact.Rat
	expr Expr
	open bool
	law  int  // the law it comes from; −1 where from geometry
	twin int  // an unknown that this one is said to equal; −1 none
	told bool // it took a line of its own
}

// teller follows the rows of one certificate, each in the direction in which it is used.
type teller struct {
	sh       *sheet
	rows     []exact.Row // Σ a·x ≤ b, after multiplying by the certificate
	from     []exact.Row // as they stood
	low, top map[int]known
	lines    []Work
}

// tellStory turns a certificate into arithmetic a person can follow: bounds are carried from row to row until the sum
// of the parts stands against the whole. Where that does not reach, the certificate's own weighted sum is told.
func tellStory(r refusal) *story {
	t := &teller{sh: r.sh, low: map[int]known{}, top: map[int]known{}}
	for _, m := range r.cert {
		row := r.sh.sys.Rows[m.Row]
		t.from = append(t.from, row)
		t.rows = append(t.rows, oriented(row, m.Mult))
	}
	pivot := t.pivot()
	for range len(t.rows) {
		for i := range t.rows {
			if i != pivot {
				t.carry(i)
			}
			if st := t.crossed(); st != nil {
				return st
			}
		}
	}
	if pivot >= 0 {
		if st := t.weigh(pivot); st != nil {
			return st
		}
	}
	return weightedSum(r)
}

// oriented writes a row as Σ a·x ≤ b in the direction of its multiplier.
func oriented(row exact.Row, mult exact.Rat) exact.Row {
	k := exact.Int(1)
	if mult.Sign() < 0 {
		k = exact.Int(-1)
	}
	out := exact.Row{Rel: exact.LE, RHS: row.RHS.Mul(k), Rule: row.Rule}
	if row.Rel.Strict() {
		out.Rel = exact.LT
	}
	for _, x := range row.Terms {
		at := slices.IndexFunc(out.Terms, func(o exact.Term) bool { return o.Var == x.Var })
		if at < 0 {
			out.Terms = append(out.Terms, exact.Term{Var: x.Var})
			at = len(out.Terms) - 1
		}
		out.Terms[at].Coef = out.Terms[at].Coef.Add(x.Coef.Mul(k))
	}
	out.Terms = slices.DeleteFunc(out.Terms, func(o exact.Term) bool { return o.Coef.Sign() == 0 })
	return out
}

// pivot is the row that adds the parts up to a whole: the geometry row with the most unknowns.
func (t *teller) pivot() int {
	best := -1
	for i, r := range t.rows {
		if r.Rule == exact.Background && len(r.Terms) >= 3 && (best < 0 || len(r.Terms) > len(t.rows[best].Terms)) {
			best = i
		}
	}
	return best
}

// bound is what is known of coef·x from below.
func (t *teller) bound(x exact.Term) (known, bool) {
	side := t.low
	if x.Coef.Sign() < 0 {
		side = t.top
	}
	k, ok := side[x.Var]
	return k, ok
}

// carry derives a bound on each unknown of row i whose others are known.
func (t *teller) carry(i int) {
	r := t.rows[i]
	for j, x := range r.Terms {
		rest, open, twin, ok := t.others(r, j)
		if !ok {
			continue
		}
		// a·x ≤ b − rest
		v := r.RHS.Sub(rest).Div(x.Coef)
		side := t.top
		if x.Coef.Sign() < 0 {
			side = t.low
		}
		if _, have := side[x.Var]; have {
			continue
		}
		k := known{v: v, open: open || r.Rel == exact.LT, law: r.Rule, twin: twin}
		k.expr, k.told = t.derive(r, j, v)
		if twin >= 0 {
			if o, ok := t.bound(exact.Term{Var: twin, Coef: x.Coef.Neg()}); ok && k.law < 0 {
				k.law = o.law
			}
		}
		side[x.Var] = k
	}
}

// others sums the least of all terms of r but the jth. twin is the other unknown where there is just one, with the
// same coefficient and nothing added: then the two are equal, and no line is needed.
func (t *teller) others(r exact.Row, j int) (sum exact.Rat, open bool, twin int, ok bool) {
	twin = -1
	for i, x := range r.Terms {
		if i == j {
			continue
		}
		k, found := t.bound(x)
		if !found {
			return sum, false, -1, false
		}
		sum, open = sum.Add(x.Coef.Mul(k.v)), open || k.open
		if len(r.Terms) == 2 && r.RHS.Sign() == 0 && x.Coef.Add(r.Terms[j].Coef).Sign() == 0 {
			twin = x.Var
		}
	}
	return sum, open, twin, true
}

// derive records the line by which a bound came about; a plain figure or an equal unknown needs none.
func (t *teller) derive(r exact.Row, j int, v exact.Rat) (Expr, bool) {
	x := r.Terms[j]
	if len(r.Terms) == 1 {
		if n, each, ok := t.spaces(r, v); ok {
			return Product(Tally(n), Num(each)), false
		}
		if n := t.sh.copiesOf(x.Var); n > 1 {
			return Product(Tally(n), Num(v.Div(exact.Int(n)))), false
		}
		return Num(v), false
	}
	if len(r.Terms) == 2 && r.RHS.Sign() == 0 && x.Coef.Add(r.Terms[1-j].Coef).Sign() == 0 {
		if k, ok := t.bound(r.Terms[1-j]); ok && !k.told {
			return k.expr, false
		}
		return Num(v), false
	}
	var plus, minus []Expr
	if c := r.RHS.Div(x.Coef); c.Sign() > 0 {
		plus = append(plus, Num(c))
	} else if c.Sign() < 0 {
		minus = append(minus, Num(c.Neg()))
	}
	for i, y := range r.Terms {
		if i == j {
			continue
		}
		k, _ := t.bound(y)
		c := y.Coef.Neg().Div(x.Coef)
		e := scaled(c.Abs(), k.v)
		if k.v.Sign() == 0 {
			continue
		}
		if c.Sign() > 0 {
			plus = append(plus, e)
		} else {
			minus = append(minus, e)
		}
	}
	if len(plus) == 0 {
		plus = []Expr{Num(zero)}
	}
	t.lines = append(t.lines, Line(t.sh.nameOf(x.Var), "follows", Less(Sum(plus...), minus...)))
	return Num(v), true
}

// spaces writes a length that a law on the spacing of stiffeners gives bays as spaces × spacing.
func (t *teller) spaces(r exact.Row, v exact.Rat) (n int, each exact.Rat, ok bool) {
	if r.Rule < 0 || t.sh.p.laws[r.Rule].said.Name.Quantity != StiffenerSpacing {
		return 0, each, false
	}
	st := t.sh.p.laws[r.Rule].said
	each = st.Value.Num
	if st.Op == In && r.Terms[0].Coef.Sign() > 0 {
		each = st.Upper.Num
	}
	if st.Value.Of != nil || each.Sign() <= 0 || !v.Div(each).IsInt() {
		return 0, each, false
	}
	n = whole(v.Div(each))
	return n, each, n > 1
}

// scaled writes c × v, or v alone.
func scaled(c, v exact.Rat) Expr {
	if c.Eq(exact.Int(1)) {
		return Num(v)
	}
	if c.IsInt() {
		return Product(Scalar(c), Num(v))
	}
	if n := c.Inv(); n.IsInt() {
		return Quotient(Num(v), Scalar(n))
	}
	return Product(Scalar(c), Num(v))
}

// crossed reports an unknown that must be more than it may be.
func (t *teller) crossed() *story {
	for v := range t.sh.vars {
		lo, okLo := t.low[v]
		hi, okHi := t.top[v]
		if !okLo || !okHi || lo.v.Less(hi.v) || lo.v.Eq(hi.v) && !lo.open && !hi.open {
			continue
		}
		op := "<="
		if lo.open || hi.open {
			op = "<"
		}
		w := Line(t.sh.nameOf(v), "clash", Compare(Num(lo.v), op, Num(hi.v)))
		w.From = t.source(lo) + "|" + t.source(hi)
		for _, k := range []known{lo, hi} {
			if k.expr.Op != "" && !k.told {
				of := v
				if k.twin >= 0 {
					of = k.twin
				}
				line := Line(t.sh.nameOf(of), t.sh.noteOf(of), k.expr)
				line.From = t.source(k)
				t.lines = append(t.lines, line)
			}
		}
		return &story{lines: append(t.lines, w), way: t.spacedWay(lo, hi), missing: lo.v.Sub(hi.v)}
	}
	return nil
}

// spacedWay: with so many spaces a bay comes out too long (+1), or too short (−1).
func (t *teller) spacedWay(lo, hi known) int {
	spaced := func(k known) bool { return k.law >= 0 && t.sh.p.laws[k.law].said.Name.Quantity == StiffenerSpacing }
	switch {
	case spaced(lo) && !spaced(hi):
		return 1
	case spaced(hi) && !spaced(lo):
		return -1
	}
	return 0
}

func (t *teller) source(k known) string {
	if k.law < 0 {
		return ""
	}
	return t.sh.p.laws[k.law].Rule.Rule
}
