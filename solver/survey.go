package solver

import (
	"slices"

	"saywright/solver/exact"
)

// site gathers from what stands and the layout chosen all that measuring, cutting, buying and building need.
func (v *solved) site(a *Answer) *Site {
	p := v.p
	s := &Site{Wall: p.book.Wall, Layout: a.Layout, Metric: p.book.Metric(),
		RailSize: p.sizeOf(RailSize).Name, AddedPostSize: p.sizeOf(AddedPostSize).Name,
		EndPostSize: p.sizeOf(EndPostSize).Name, StiffenerSize: p.sizeOf(StiffenerSize).Name,
		BracketThickness: p.part(BracketThickness), Fit: p.part(Fit), Kerf: p.part(Kerf), Trim: p.part(Trim), Tape: p.tape(),
		ScrewLength: p.part(ScrewLength), SameLength: p.book.Wants("same length"), EvenGaps: p.book.Wants("even gaps")}
	if limit, _, ok := v.spacing(0); ok {
		s.StiffenerLimit = &limit
	}
	for _, st := range p.book.said {
		s.take(st)
	}
	if long, ok := p.screwSaid(); !ok {
		s.ScrewLength = s.screwThatFits(long)
	}
	for _, d := range Defaults {
		if p.speaksOf(d.Quantity) || d.Quantity == PostSize && p.speaksOf(AddedPostSize) {
			continue
		}
		if d.Quantity == Tape && s.Metric {
			d.Value = Value{Num: millimeter, Unit: Millimeter}
		}
		if d.Quantity == ScrewLength {
			d.Value = Inches(s.ScrewLength)
		}
		s.Defaults = append(s.Defaults, Of(d.Quantity, Eq, d.Value))
	}
	if !slices.ContainsFunc(s.Stock, func(st Statement) bool { return st.Name.Item == "" }) { // who tells what one size comes in says nothing of the others
		st := Of(Stock, Eq, Value{List: DefaultStock()})
		s.Stock, s.Defaults = append(s.Stock, st), append(s.Defaults, st)
	}
	return s
}

// screwSaid tells whether a screw's length was said; a limit alone is none. It returns what such a limit says a screw must be shorter than, 0 for none.
func (p *problem) screwSaid() (under exact.Rat, said bool) {
	for _, s := range p.book.said {
		if s.Name.Quantity != ScrewLength {
			continue
		}
		if s.Op != LT {
			return under, true
		}
		under = s.Value.Num
	}
	return under, false
}

// part is a part's figure: said, by default, or the nearest said limit.
func (p *problem) part(q Quantity) exact.Rat {
	if v, ok := p.parts[q]; ok {
		return v
	}
	var out exact.Rat
	for _, s := range p.book.said {
		if s.Name.Quantity == q && s.Value.Of == nil {
			out = s.Value.Num
		}
	}
	return out
}

// take puts one statement where the site wants it.
func (s *Site) take(st Statement) {
	figure := func() *exact.Rat { v := st.Value.Num; return &v }
	switch st.Name.Quantity {
	case CapSize:
		s.CapSize = st.Value.Word
	case Measured:
		s.Measured = append(s.Measured, st)
	case PostLeans:
		s.Leans = append(s.Leans, st)
	case FixedRail:
		if !slices.Contains(s.Fixed, st.Name.Rail) {
			s.Fixed = append(s.Fixed, st.Name.Rail)
		}
	case Short:
		s.Short = append(s.Short, st)
	case Stock:
		s.Stock = append(s.Stock, st)
	case Price:
		s.Prices = append(s.Prices, st)
	case Have:
		s.Have = append(s.Have, st)
	case Extra:
		s.Extra = append(s.Extra, st)
	case Spare:
		s.Spare = &st
	case Budget:
		s.Budget = figure()
	case AnchorSize:
		s.AnchorSize = figure()
	case SlabThickness:
		s.Slab = figure()
	case EdgeDistance:
		s.Edge = figure()
	case Coverage:
		s.Coverage = figure()
	case Coats:
		if n, ok := st.Value.Num.Int64(); ok {
			k := int(n)
			s.Coats = &k
		}
	}
}

// needsSite reports whether a topic is answered from the site, not from the layout alone.
var siteTopics = map[string]func(*Site) Findings{
	"marks":      (*Site).Marks,
	"cuts":       (*Site).Cuts,
	"spacer":     (*Site).Spacer,
	"story pole": (*Site).StoryPole,
	"hardware":   (*Site).Hardware,
	"finish":     (*Site).Finish,
	"anchors":    (*Site).Anchors,
	"steps":      (*Site).Steps,
}
