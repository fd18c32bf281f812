package solver

import "saywright/solver/exact"

// widthSum is the arithmetic of the clear width at a height: a reading, or a step along the line between two.
func (g *gauge) widthSum(h exact.Rat) Expr {
	if len(g.readings) >= 2 {
		a, b := g.around(h)
		switch {
		case h.Eq(a.height):
			return Num(a.width)
		case h.Eq(b.height):
			return Num(b.width)
		}
		change := b.width.Sub(a.width).Mul(h.Sub(a.height))
		part := Quotient(Product(Num(b.width.Sub(a.width).Abs()), Num(h.Sub(a.height).Abs())), Num(b.height.Sub(a.height)))
		return signed(Num(a.width), part, change.Sign())
	}
	at, e := exact.Rat{}, Num(g.planned)
	if len(g.readings) == 1 {
		at, e = g.readings[0].height, Num(g.readings[0].width)
	}
	rise := h.Sub(at)
	if g.right != nil {
		e = signed(e, g.right.term(rise), g.right.over.Sign()*rise.Sign())
	}
	if g.left != nil {
		e = signed(e, g.left.term(rise), -g.left.over.Sign()*rise.Sign())
	}
	return e
}

// signed adds a term to e, takes it away, or leaves it out, as sign is 1, -1 or 0.
func signed(e, term Expr, sign int) Expr {
	switch sign {
	case 1:
		return Sum(e, term)
	case -1:
		return Less(e, term)
	}
	return e
}

// sum is the arithmetic of what counts for a rail: the width where the rail is tightest, less what a leaning face takes
// over the rail's own height. It is not ok where a single figure says it all.
func (g *gauge) sum(a apart) (Expr, bool) {
	at, held := a.near, g.left
	if a.faces.held == "right" {
		at, held = a.far, g.right
	}
	e := g.widthSum(at)
	if over := a.far.Sub(a.near); over.Sign() != 0 && held != nil {
		e = Less(e, held.term(over))
	}
	return e, e.Op != ""
}

// bevels returns the bevel that each end of a rail wants, nil where square does.
func (s *Site) bevels(r *railPiece) (left, right *bevel) {
	f, face := r.apart.faces, r.high.Sub(r.low)
	if b, told := bevelOf(f.left(r.low).Sub(f.left(r.high)), face, s.mark()); told {
		left = &b
	}
	if b, told := bevelOf(f.right(r.high).Sub(f.right(r.low)), face, s.mark()); told {
		right = &b
	}
	return left, right
}

// slopesTold tells what one bay's measurements and leans say of its posts, and what they do not.
func (s *Site) slopesTold(g *gauge, rails []*railPiece) (f Findings) {
	if len(g.readings) > 0 && g.left == nil && g.right == nil {
		f.Cautions = append(f.Cautions, Caution{Key: "posts leaning alike", Source: "geometry"})
	}
	if len(g.readings) < 2 && (g.left == nil) != (g.right == nil) {
		f.Facts = append(f.Facts, Fact{Key: "taken as plumb", Names: []string{g.unspoken()}, Nums: []exact.Rat{exact.Int(g.bay)}})
	}
	f.and(s.closing(g))
	guessed := Fact{Key: "width guessed", Nums: []exact.Rat{exact.Int(g.bay)}}
	for _, r := range rails {
		if r.apart.guessed {
			guessed.Nums = append(guessed.Nums, exact.Int(r.rail))
		}
	}
	if len(guessed.Nums) > 1 {
		f.Facts = append(f.Facts, guessed)
	}
	if len(g.readings) > 0 || g.left != nil || g.right != nil {
		f.and(s.endsTold(g, rails))
	}
	return f
}

func (g *gauge) unspoken() string {
	if g.left == nil {
		return "left"
	}
	return "right"
}

// closing records by how much a bay closes or opens between each two measurements, and from one rail to the next.
func (s *Site) closing(g *gauge) (f Findings) {
	of := Name{Quantity: Bay, Bay: g.bay}.String()
	for i := 1; i < len(g.readings); i++ {
		a, b := g.readings[i-1], g.readings[i]
		note, by := "closes", Less(Num(a.width), Num(b.width))
		if by.Value.Sign() < 0 {
			note, by = "opens", Less(Num(b.width), Num(a.width))
		}
		run := b.height.Sub(a.height)
		f.Work = append(f.Work, Line(of, note, by))
		f.Facts = append(f.Facts, Fact{Key: note, Nums: []exact.Rat{exact.Int(g.bay), by.Value, run}})
		up := s.Layout.Up
		if len(g.readings) == 2 && len(up.Tops) > 1 && len(up.Gaps) == 0 && by.Value.Sign() != 0 {
			pitch := Sum(Num(up.RailFace), Num(up.Gap))
			f.Work = append(f.Work, Line(of, "rail to rail", pitch),
				Line(of, note+" each rail", Quotient(Product(Num(by.Value), Num(pitch.Value)), Num(run))))
		}
	}
	return f
}

// endsTold tells where the rails are tightest, and each end that wants a bevel; square ends are shown to be enough.
func (s *Site) endsTold(g *gauge, rails []*railPiece) (f Findings) {
	at, most := "", exact.Rat{}
	for i, r := range rails {
		if where := r.tightest(); i == 0 || where == at {
			at = where
		} else {
			at = "here and there"
		}
		left, right := s.bevels(r)
		f.bevelTold("left", r, left)
		f.bevelTold("right", r, right)
		fs := r.apart.faces
		most = exact.Max(most, fs.left(r.low).Sub(fs.left(r.high)).Abs())
		most = exact.Max(most, fs.right(r.low).Sub(fs.right(r.high)).Abs())
	}
	if at != "" {
		f.Facts = append(f.Facts, Fact{Key: "tightest at", Names: []string{at}, Nums: []exact.Rat{exact.Int(g.bay)}})
	}
	if most.Less(s.mark()) {
		f.Facts = append(f.Facts, Fact{Key: "ends square", Nums: []exact.Rat{exact.Int(g.bay), most, s.mark()}})
	}
	return f
}

func (f *Findings) bevelTold(end string, r *railPiece, b *bevel) {
	if b == nil {
		return
	}
	out := exact.Int(-1)
	if b.outward {
		out = exact.Int(1)
	}
	f.Facts = append(f.Facts, Fact{Key: "bevel", Names: []string{end}, Nums: []exact.Rat{
		exact.Int(r.gauge.bay), exact.Int(r.rail), b.over, b.marks, exact.New(b.tenths, 10), out}})
}

// tightest says where a rail is held tightest: along its top edge, its bottom edge, or one end above and one below;
// "" for a rail that is as tight everywhere.
func (r *railPiece) tightest() string {
	a := r.apart
	switch {
	case a.faces.left(r.low).Eq(a.faces.left(r.high)) && a.faces.right(r.low).Eq(a.faces.right(r.high)):
		return ""
	case a.near.Eq(r.high) && a.far.Eq(r.high):
		return "top"
	case a.near.Eq(r.low) && a.far.Eq(r.low):
		return "bottom"
	}
	return "across"
}
