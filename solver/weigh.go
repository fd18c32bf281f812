package solver

import (
	"slices"
	"strings"

	"saywright/solver/exact"
)

// weigh sets the parts of the pivot row against its whole: the first unknown with its own sign.
func (t *teller) weigh(pivot int) *story {
	r := t.rows[pivot]
	whole := r.Terms[0]
	w, ok := t.bound(whole)
	if !ok {
		return nil
	}
	var parts []Expr
	var lines []Work
	open := w.open || r.Rel == exact.LT
	bays := false
	for _, x := range t.merged(r) {
		bays = bays || strings.HasPrefix(t.sh.nameOf(x.Var), string(Bay))
		k, ok := t.bound(x.Term)
		if !ok {
			return nil
		}
		open = open || k.open
		if k.v.Sign() == 0 {
			continue
		}
		e := k.expr
		if n := x.Coef.Abs(); !n.Eq(exact.Int(1)) {
			e = Product(Scalar(n), Num(k.v))
		}
		if e.Op != "" {
			line := Line(t.sh.nameOf(x.Var), x.note, e)
			line.From = t.source(k)
			lines = append(lines, line)
		}
		parts = append(parts, Num(e.Value))
	}
	if len(parts) == 0 {
		return nil
	}
	sum := Sum(parts...)
	if len(parts) > 1 {
		lines = append(lines, Line(t.sh.nameOf(whole.Var), t.sumNote(bays), sum))
	}
	// r: whole − parts ≤ 0 says the whole is at most what the parts can come to; with the signs turned, at least
	left, right, way := w.v, sum.Value, -1
	if whole.Coef.Sign() < 0 {
		left, right, way = sum.Value, w.v, 1
	}
	op := "<="
	if open {
		op = "<"
	}
	last := Line(t.sh.nameOf(whole.Var), "clash", Compare(Num(left), op, Num(right)))
	last.From = t.source(w)
	if last.Equals != "false" {
		return nil
	}
	return &story{lines: append(append(t.lines, lines...), last), way: way, missing: left.Sub(right)}
}

// sumNote tells whether more rails, or more bays than the sum has, would add to a sum of parts.
func (t *teller) sumNote(bays bool) string {
	if t.sh.c.more || bays && t.sh.f&alongField != 0 && t.sh.c.bays.hi >= most {
		return "sum or more"
	}
	return "sum"
}

// part is one term of the whole, with the note that words want.
type part struct {
	exact.Term
	note string
}

// merged lists the parts of the pivot row after its whole; the gap underneath joins the gaps where it is said to be one
// of them.
func (t *teller) merged(r exact.Row) []part {
	var out []part
	for _, x := range r.Terms[1:] {
		out = append(out, part{x, t.sh.noteOf(x.Var)})
	}
	b, okB := t.bound(exact.Term{Var: vBottom, Coef: sameSign(out, vBottom)})
	if okB && b.twin == vGap {
		at := slices.IndexFunc(out, func(p part) bool { return p.Var == vGap })
		under := slices.IndexFunc(out, func(p part) bool { return p.Var == vBottom })
		if at >= 0 && under >= 0 {
			out[at].Coef, out[at].note = out[at].Coef.Add(out[under].Coef), "gaps and under"
			out = slices.Delete(out, under, under+1)
		}
	}
	slices.SortStableFunc(out, func(a, b part) int { return storyRank(a.Var) - storyRank(b.Var) })
	return out
}

func sameSign(parts []part, v int) exact.Rat {
	for _, p := range parts {
		if p.Var == v {
			return p.Coef
		}
	}
	return exact.Int(1)
}

// storyRank tells wood before gaps before what is underneath, bays before openings before posts.
func storyRank(v int) int {
	switch v {
	case vFace:
		return 0
	case vGap:
		return 1
	case vBottom:
		return 2
	case vOpening:
		return 4
	case vPost:
		return 5
	}
	return 3
}

// weightedSum tells a certificate as it is: what its rows come to when they are added up.
func weightedSum(r refusal) *story {
	var plus, minus []Expr
	strict := false
	for _, m := range r.cert {
		row := r.sh.sys.Rows[m.Row]
		strict = strict || row.Rel.Strict()
		c := m.Mult.Mul(row.RHS)
		e := scaled(m.Mult.Abs(), row.RHS.Abs())
		switch c.Sign() {
		case 1:
			plus = append(plus, e)
		case -1:
			minus = append(minus, e)
		}
	}
	for _, side := range []*[]Expr{&plus, &minus} {
		if len(*side) == 0 {
			*side = []Expr{Num(zero)}
		}
	}
	op := "<="
	if strict {
		op = "<"
	}
	left, right := Sum(minus...), Sum(plus...)
	return &story{lines: []Work{Line("together", "weighted", Compare(left, op, right))}, missing: left.Value.Sub(right.Value)}
}
