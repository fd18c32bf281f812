package solver

import (
	"saywright/solver/exact"
	"saywright/solver/lumber"
)

// The slips that give a wrong figure, by key: "nominal size", "bottom gap forgotten", "one gap too many",
// "one gap too few", "post face forgotten", "nominal post".

// slip finds the one common slip that gives exactly the wrong figure, with its sum.
func (p *problem) slip(c Statement, o *outcome, on set) (string, []Work) {
	if c.Op != Eq || c.Value.Of != nil {
		return "", nil
	}
	hit, _ := o.s.feasible(on)
	if hit == nil {
		return "", nil
	}
	sh := p.lay(hit, o.s.f, on, set{}, -1, 0)
	prep := exact.Prepare(&sh.sys)
	x := prep.Point()
	var slips []slipped
	switch c.Name.Quantity {
	case Gap:
		slips = p.gapSlips(sh, x)
	case WallHeight:
		slips = p.heightSlips(sh, x)
	case Bay, Opening:
		slips = p.spanSlips(sh, x, c.Name.Quantity)
	}
	lines := p.rightly(c, sh, x)
	for _, s := range slips {
		if s.e.Value.Eq(c.Value.Num) {
			return s.key, append([]Work{Line(c.Name.String(), "slip", s.e)}, lines...)
		}
	}
	return "", lines
}

// rightly derives the gap as it should have been, where one rail count leaves one gap.
func (p *problem) rightly(c Statement, sh *sheet, x []exact.Rat) []Work {
	n := sh.c.rails
	if c.Name.Quantity != Gap || n < 2 || sh.f&upField == 0 || len(sh.segs) > 1 {
		return nil
	}
	u := &Up{WallHeight: x[vHeight], Rails: n, RailFace: x[vFace], Gap: x[vGap], BottomGap: x[vBottom]}
	wood := Product(Tally(n), Num(u.RailFace))
	return append([]Work{Line(string(Rails), "wood", wood)}, shareOut(u, wood.Value, u.BottomGap.Eq(u.Gap))...)
}

type slipped struct {
	key string
	e   Expr
}

// nominalFace is the larger figure of a size's name, in inches: what a 2x6 is called, not what it measures.
func (p *problem) nominalFace(q Quantity) (exact.Rat, bool) {
	s := p.sizeOf(q)
	if s.Metric || s.Name == "" {
		return exact.Rat{}, false
	}
	return lumber.Nominal(s.Name)
}

func (p *problem) gapSlips(sh *sheet, x []exact.Rat) []slipped {
	n := sh.c.rails
	left := func(face exact.Rat) Expr { return Less(Num(x[vHeight]), Product(Tally(n), Num(face))) }
	share := func(e Expr, k int) Expr { return Quotient(e, Tally(k)) }
	same := x[vBottom].Eq(x[vGap])
	k := n - 1
	if same {
		k = n
	}
	if k < 1 {
		return nil
	}
	var out []slipped
	if f, ok := p.nominalFace(RailSize); ok {
		out = append(out, slipped{"nominal size", share(left(f), k)})
	}
	if same && n > 1 {
		out = append(out, slipped{"bottom gap forgotten", share(left(x[vFace]), n-1)})
	}
	out = append(out, slipped{"one gap too many", share(left(x[vFace]), k+1)})
	if !same && k > 1 {
		out = append(out, slipped{"one gap too few", share(left(x[vFace]), k-1)})
	}
	return out
}

func (p *problem) heightSlips(sh *sheet, x []exact.Rat) []slipped {
	n := sh.c.rails
	sum := func(face exact.Rat, gaps int) Expr {
		return Sum(Product(Tally(n), Num(face)), Product(Tally(gaps), Num(x[vGap])))
	}
	k := n - 1
	if x[vBottom].Eq(x[vGap]) {
		k = n
	}
	var out []slipped
	if f, ok := p.nominalFace(RailSize); ok {
		out = append(out, slipped{"nominal size", sum(f, k)})
	}
	return append(out, slipped{"bottom gap forgotten", sum(x[vFace], n-1)}, slipped{"one gap too many", sum(x[vFace], k+1)})
}

func (p *problem) spanSlips(sh *sheet, x []exact.Rat, q Quantity) []slipped {
	c := sh.c
	if !c.exact() || c.bays.lo != 1 && q == Opening {
		return nil
	}
	other, k := exact.Rat{}, c.bays.lo
	for _, o := range sh.open {
		other = other.Add(x[o])
	}
	if q == Opening {
		other, k = exact.Rat{}, c.openings
		for _, pc := range sh.pieces {
			if pc.opening == 0 {
				other = other.Add(x[pc.v])
			}
		}
	}
	if k < 1 || c.posts() < 1 {
		return nil
	}
	share := func(e Expr) Expr {
		if k == 1 {
			return e
		}
		return Quotient(e, Tally(k))
	}
	out := []slipped{{"post face forgotten", share(Less(Num(x[vSpan]), Num(other)))}}
	if f, ok := p.nominalFace(AddedPostSize); ok {
		out = append(out, slipped{"nominal post", share(Less(Num(x[vSpan]), Num(other), Product(Tally(c.posts()), Num(f))))})
	}
	return out
}
