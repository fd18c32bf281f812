package solver

import (
	"slices"

	"saywright/solver/exact"
	"saywright/solver/lumber"
)

// faceOf is what a size shows: the larger dressed figure. It is looked up once.
func (p *problem) faceOf(s Statement) exact.Rat {
	if f, ok := p.faces[s.Value.Word]; ok {
		return f
	}
	f := exact.Int(1) // unknown sizes are turned away before they become laws
	if size, err := lumber.Find(s.Value.Word); err == nil {
		f = size.Face
	}
	p.faces[s.Value.Word] = f
	return f
}

// sizeOf is the size of a part under the laws of the problem: said, or by default.
func (p *problem) sizeOf(q Quantity) lumber.Size {
	if s, ok := p.sizes[q]; ok {
		return s
	}
	if q == EndPostSize || q == AddedPostSize {
		return p.sizes[PostSize]
	}
	return lumber.Size{}
}

// raise builds the layout up the wall from a settled sheet; nil where the heights are not all one value.
func (p *problem) raise(sh *sheet, point []exact.Rat, fixed func(int) bool) *Up {
	n := sh.c.rails
	if !fixed(vHeight) || !fixed(vBottom) || !fixed(vFace) {
		return nil
	}
	for i, g := range sh.segs {
		if sh.gapsIn(i) > 0 && !fixed(g) {
			return nil
		}
	}
	u := &Up{
		WallHeight: point[vHeight], Rails: n, RailSize: p.sizeOf(RailSize).Name, RailFace: point[vFace],
		BottomGap: point[vBottom], Gap: point[vGap], Clearance: point[vClearance], Ear: point[vEar],
		Reach: p.parts[BracketReach], Fall: p.fall(point),
		RailThickness: p.sizeOf(RailSize).Thickness, BracketThickness: p.part(BracketThickness),
	}
	p.setGaps(u, sh, point)
	for i := 1; i <= n; i++ {
		f := sh.top(i)
		top := valueAt(f.terms, point)
		u.Tops = append(u.Tops, top)
		u.Marks = append(u.Marks, top.Add(u.Reach))
		if u.Fall.Sign() != 0 {
			u.MarksAtRight = append(u.MarksAtRight, top.Add(u.Reach).Add(u.Fall))
		}
	}
	return u
}

// setGaps lists the gaps where placed rails make them differ, and takes the single one else.
func (p *problem) setGaps(u *Up, sh *sheet, point []exact.Rat) {
	if len(sh.segs) == 1 {
		if u.Rails == 1 { // a single rail has no neighbor: its gap is what is left free, and says nothing
			u.Gap = exact.Max(u.Clearance, u.BottomGap)
		}
		return
	}
	for i, g := range sh.segs {
		for range sh.gapsIn(i) {
			u.Gaps = append(u.Gaps, point[g])
		}
	}
	if len(u.Gaps) > 0 {
		u.Gap = slices.MinFunc(u.Gaps, exact.Rat.Cmp)
		if u.Gap.Eq(slices.MaxFunc(u.Gaps, exact.Rat.Cmp)) {
			u.Gaps = nil
		}
	}
}

// fall is how much lower the floor lies at the right end post.
func (p *problem) fall(point []exact.Rat) exact.Rat {
	if v, ok := p.parts[FloorAtRight]; ok {
		return v.Neg()
	}
	return point[vFall].Neg()
}

// stretch builds the layout along the wall from a settled sheet; nil where the lengths are not all one value.
func (p *problem) stretch(sh *sheet, point []exact.Rat, fixed func(int) bool) *Along {
	if !fixed(vSpan) || !fixed(vPost) || !fixed(vEndPost) {
		return nil
	}
	for _, pc := range sh.pieces {
		if !fixed(pc.v) {
			return nil
		}
	}
	a := &Along{Span: point[vSpan], PostFace: point[vPost], EndPostFace: point[vEndPost],
		StiffenerSize: p.sizeOf(StiffenerSize).Name, StiffenerFace: p.sizeOf(StiffenerSize).Face,
		StiffenerThickness: p.sizeOf(StiffenerSize).Thickness, BaseHeight: p.part(BaseHeight),
		PostDepth: p.sizeOf(AddedPostSize).Thickness, EndPostDepth: p.sizeOf(EndPostSize).Thickness}
	x := exact.Rat{}
	for i, pc := range sh.pieces {
		if i > 0 {
			a.Posts, x = append(a.Posts, Place{x}), x.Add(a.PostFace)
		}
		if pc.opening > 0 {
			a.Openings = append(a.Openings, Stretch{FromLeft: x, Width: point[pc.v]})
			x = x.Add(point[pc.v])
			continue
		}
		x = p.layBays(a, sh, pc, point[pc.v], x)
	}
	return a
}

// layBays lays a run of equal bays from x on, posts between them, and their stiffeners.
func (p *problem) layBays(a *Along, sh *sheet, pc piece, sum, x exact.Rat) exact.Rat {
	width := sum.Div(exact.Int(pc.bays))
	for i := range pc.bays {
		if i > 0 {
			a.Posts, x = append(a.Posts, Place{x}), x.Add(a.PostFace)
		}
		a.Bays = append(a.Bays, Stretch{FromLeft: x, Width: width, Stiffeners: centers(width, p.stiffeners(sh, pc, pc.first+i, width))})
		x = x.Add(width)
	}
	return x
}

// stiffeners is the fewest that the laws allow in a bay of that width, or what comes nearest to a wish for them.
func (p *problem) stiffeners(sh *sheet, pc piece, bay int, width exact.Rat) int {
	if sh.c.spaces != nil && pc.spaces.exact() {
		return pc.spaces.lo/pc.bays - 1
	}
	allowed := p.stiffenerLimits(sh.on, bay, true)
	m := allowed.lo
	if limit, strict, found := p.spacingLimit(sh.on, bay); found && limit.Sign() > 0 {
		m = max(m, fewest(width, limit, strict))
	}
	return p.wishedStiffeners(bay, width, m, allowed.hi)
}

// centers are m center lines that share a width out evenly: k × width/(m+1).
func centers(width exact.Rat, m int) []exact.Rat {
	var out []exact.Rat
	for k := 1; k <= m; k++ {
		out = append(out, width.Mul(exact.New(int64(k), int64(m+1))))
	}
	return out
}
