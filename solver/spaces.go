package solver

import (
	"slices"

	"saywright/solver/exact"
)

// Stiffeners part a bay into equal spaces, one more than there are stiffeners. Where the spacing is bound from both sides,
// the number of spaces chooses the bay's length. In a run of bays that nothing tells apart only the spaces of all of
// them together matter: what holds with some sharing holds with the most even one, since every rule bounds each bay
// alike.

// spacesOf is how many spaces so many bays (at most upTo) hold under the laws on stiffeners. alone: it is this bay, else
// any bay.
func (s *sheet) spacesOf(copies, upTo, bay int, alone bool) tally {
	if !s.p.named.spacing {
		return tally{}
	}
	c := s.p.stiffenerLimits(s.on, bay, alone)
	if !alone && !s.c.exact() && s.p.ownStiffenersAnywhere(s.on) {
		c = counts{hi: most}
	}
	t := tally{(c.lo + 1) * copies, most}
	if c.hi < most && upTo < most {
		t.hi = (max(c.hi, 0) + 1) * upTo
	}
	return t
}

func (p *problem) ownStiffenersAnywhere(on set) bool {
	for i := range p.laws {
		s := &p.laws[i].said
		if on.has(i) && s.Name.Quantity == Stiffeners && s.Name.Bay > 0 {
			return true
		}
	}
	return false
}

// shareSpaces gives every run of bays its spaces. A run whose number is settled and does not go into its bays evenly
// becomes two: the bays with one space more stand right.
func (s *sheet) shareSpaces(pieces []piece) []piece {
	if !s.p.named.spacing {
		return pieces
	}
	out := make([]piece, 0, len(pieces)+1)
	run := 0
	for _, pc := range pieces {
		if pc.opening > 0 {
			out = append(out, pc)
			continue
		}
		pc.run, pc.spaces = run, s.spacesOf(pc.bays, pc.upTo, pc.first, pc.bays == 1 && s.c.exact())
		if s.c.spaces != nil {
			pc.spaces = s.c.spaces[run]
		} else if s.c.probe.spaces.lo > 0 && s.c.probe.seg == pc.seg {
			pc.spaces = s.c.probe.spaces
		}
		run++
		out = append(out, pc)
		if more := pc.spaces.lo; s.c.spaces != nil && pc.spaces.exact() && more%pc.bays != 0 {
			few, many := &out[len(out)-1], pc
			many.bays, many.upTo = more%pc.bays, more%pc.bays
			few.bays, few.upTo = pc.bays-many.bays, pc.bays-many.bays
			many.first, many.at = pc.first+few.bays, pc.at+few.bays
			each := more / pc.bays
			few.spaces, many.spaces = tally{each * few.bays, each * few.bays}, tally{(each + 1) * many.bays, (each + 1) * many.bays}
			out = append(out, many)
		}
	}
	return out
}

// spacingBounds tells from which sides the laws that are on bound the spacing of stiffeners.
type spacingBounds struct {
	below, above bool
	likened      bool // to another length, or another length to it
}

func (b spacingBounds) both() bool { return b.below && b.above || b.likened }

func (p *problem) bindsSpacing(on set) (b spacingBounds) {
	if !p.named.spacing {
		return b
	}
	for i := range p.laws {
		s := &p.laws[i].said
		if !on.has(i) {
			continue
		}
		if s.Value.Of != nil && s.Value.Of.Quantity == StiffenerSpacing {
			b.likened = true
		}
		if s.Name.Quantity != StiffenerSpacing {
			continue
		}
		b.likened = b.likened || s.Value.Of != nil
		b.below = b.below || s.Op.fromBelow() && (s.Value.Of != nil || s.Value.Num.Sign() > 0)
		b.above = b.above || s.Op.fromAbove()
	}
	return b
}

// space adds: stiffener spacing op value, for the bays of a form.
func (s *sheet) space(i int, left form, op Op, v Value) {
	rights := []form{{copies: 1}}
	if v.Of != nil {
		rights = rights[:0]
		for _, r := range s.rightForms(*v.Of) {
			rights = append(rights, form{terms: r.each(v.Factor()), plus: r.plus.Mul(v.Factor()), copies: r.copies})
		}
	}
	for _, right := range rights {
		if left.spaces.exact() && left.spaces.hi < most {
			s.boundBy(i, left, relOf[op], right, v.Num, left.spaces.lo)
			continue
		}
		if s.spacingApart() {
			s.boundBy(i, unit(s.spacingOf(left)), relOf[op], right, v.Num, 1)
			continue
		}
		if op.fromBelow() {
			s.boundBy(i, left, oneSided(relOf[op], exact.GE, exact.GT), right, v.Num, left.spaces.lo)
		}
		if op.fromAbove() && left.spaces.hi < most {
			s.boundBy(i, left, oneSided(relOf[op], exact.LE, exact.LT), right, v.Num, left.spaces.hi)
		}
	}
}

func oneSided(rel, closed, open exact.Rel) exact.Rel {
	if rel.Strict() {
		return open
	}
	return closed
}

// spacingApart reports whether the spacing must be an unknown of its own: where laws on it leave it nothing whatever the bays,
// where it is likened to another length, or where one of its laws gives way.
func (s *sheet) spacingApart() bool {
	if s.apart == 0 {
		s.apart = -1
		if e := s.spacingEnds(&piece{bays: 1}); e.likened || e.hasLow && e.hasTop && (e.top.Less(e.low) || e.top.Eq(e.low) && (e.openLow || e.openTop)) {
			s.apart = 1
		}
	}
	return s.apart > 0
}

// spacingOf is the unknown of the spacing in the bays of a form whose spaces are not settled, of all their spaces the mean:
// their length is at least the fewest spaces times that, and at most the most spaces times that.
func (s *sheet) spacingOf(f form) int {
	if x, ok := s.spacing[f.key]; ok {
		return x
	}
	if s.spacing == nil {
		s.spacing = map[int]int{}
	}
	x := s.fresh()
	s.spacing[f.key] = x
	s.truth(exact.GT, zero, one(x))
	s.truth(exact.GE, zero, append(slices.Clone(f.terms), times(x, -f.spaces.lo))...)
	if f.spaces.hi < most {
		s.truth(exact.LE, zero, append(slices.Clone(f.terms), times(x, -f.spaces.hi))...)
	}
	return x
}

// fromBelow and fromAbove tell which ends a relation gives a length.
func (o Op) fromBelow() bool { return o == GE || o == GT || o == Eq || o == In }
func (o Op) fromAbove() bool { return o == LE || o == LT || o == Eq || o == In }

// rightForms are the forms that a name covers where another length is likened to it. Where the cell leaves open how many
// they are, or how many stiffeners stand there, nothing follows.
func (s *sheet) rightForms(n Name) []form {
	all := s.forms(n, false)
	kept := all[:0]
	for _, f := range all {
		if f.upTo != 0 {
			continue
		}
		if n.Quantity == StiffenerSpacing {
			if !f.spaces.exact() {
				continue
			}
			f.terms, f.copies = f.each(exact.New(1, int64(f.spaces.lo))), 1
		}
		kept = append(kept, f)
	}
	return kept
}

// spacingEnds are the least and the most that the laws give the spacing in a piece; likened, where one depends on another
// length or is being loosened.
type spacingEnds struct {
	low, top         exact.Rat
	hasLow, hasTop   bool
	openLow, openTop bool
	likened          bool
}

func (s *sheet) spacingEnds(pc *piece) (e spacingEnds) {
	own := pc.bays == 1 && pc.first > 0 && s.hasOwn(Name{Quantity: StiffenerSpacing, Bay: pc.first})
	for i := range s.p.laws {
		st := &s.p.laws[i].said
		if !s.on.has(i) {
			continue
		}
		if of := st.Value.Of; of != nil && of.Quantity == StiffenerSpacing {
			e.likened = true
		}
		if st.Name.Quantity != StiffenerSpacing || st.Name.Bay > 0 && st.Name.Bay != pc.first || own && st.Name.Bay == 0 && st.Op == Eq {
			continue
		}
		if i == s.slack || st.Value.Of != nil {
			e.likened = true
			continue
		}
		if st.Op.fromBelow() && (!e.hasLow || e.low.Cmp(st.Value.Num) <= 0) {
			e.openLow = st.Op == GT || e.openLow && e.low.Eq(st.Value.Num)
			e.low, e.hasLow = st.Value.Num, true
		}
		v := st.Value.Num
		if st.Op == In {
			v = st.Upper.Num
		}
		if st.Op.fromAbove() && (!e.hasTop || v.Cmp(e.top) <= 0) {
			e.openTop = st.Op == LT || e.openTop && e.top.Eq(v)
			e.top, e.hasTop = v, true
		}
	}
	return e
}

// enough is the number of spaces from which on a bay may have any length: n spaces reach as far up as n+1 reach down. ok is
// false where no number is enough.
func (e spacingEnds) enough() (n int, ok bool) {
	switch {
	case e.likened:
		return 0, false
	case !e.hasLow || !e.hasTop || e.low.Sign() <= 0:
		return 1, true
	case e.top.Cmp(e.low) <= 0:
		return 0, false
	}
	// n × top ≥ (n+1) × low
	q := e.low.Div(e.top.Sub(e.low))
	n = max(whole(q.Ceil()), 1)
	if q.IsInt() && e.openLow && e.openTop {
		n++
	}
	return n, n < most/2
}

// openRun is the first piece whose number of spaces is not settled and matters; −1: none.
func (s *sheet) openRun() int {
	if s.f&alongField == 0 || !s.c.exact() || !s.p.bindsSpacing(s.on).both() {
		return -1
	}
	for i := range s.pieces {
		pc := &s.pieces[i]
		if pc.opening > 0 || pc.spaces.lo >= pc.spaces.hi {
			continue
		}
		if n, ok := s.spacingEnds(pc).enough(); ok && pc.spaces.lo/pc.bays >= n {
			continue
		}
		return i
	}
	return -1
}

// spaceCut is where to part the spaces of the first run that is not settled, so that neither part holds the solution
// that was found if that can be.
func (s *sheet) spaceCut(point []exact.Rat) cut {
	i := s.openRun()
	if i < 0 {
		return cut{}
	}
	pc := &s.pieces[i]
	at, e := pc.spaces.lo, s.spacingEnds(pc)
	if point != nil && !e.likened && e.hasLow && e.hasTop && e.low.Sign() > 0 && e.top.Sign() > 0 {
		if up := whole(point[pc.v].Div(e.low).Floor()); up >= pc.spaces.lo && up < pc.spaces.hi {
			at = up
		} else if down := whole(point[pc.v].Div(e.top).Ceil()) - 1; down >= pc.spaces.lo && down < pc.spaces.hi {
			at = down
		}
	}
	if n, ok := e.enough(); ok {
		at = min(at, n*pc.bays-1)
	}
	return cut{seg: pc.run, at: at, spaces: s.tallies()}
}

// tallies are the spaces of each run.
func (s *sheet) tallies() []tally {
	var out []tally
	for _, pc := range s.pieces {
		switch {
		case pc.opening > 0:
		case pc.run < len(out):
			out[pc.run] = tally{out[pc.run].lo + pc.spaces.lo, out[pc.run].hi + pc.spaces.hi}
		default:
			out = append(out, pc.spaces)
		}
	}
	return out
}

func (c *cell) partedSpaces(k cut) (low, high *cell) {
	a, b := *c, *c
	a.spaces, b.spaces = slices.Clone(k.spaces), slices.Clone(k.spaces)
	a.spaces[k.seg].hi, b.spaces[k.seg].lo = k.at, k.at+1
	return &a, &b
}

// share visits a cell with fixed counts once for each number of spaces in its runs that makes a difference.
func (s *search) share(c *cell, on set, core *set, visit func(*cell) bool) bool {
	if !s.p.bindsSpacing(on).both() {
		return visit(c)
	}
	if s.unshared && c.spaces == nil {
		held := false
		s.unshared = false
		s.share(c, on, core, func(*cell) bool { held = true; return false })
		s.unshared = true
		return (!held || visit(c)) && !s.outOfWork()
	}
	sh := sheet{p: s.p, c: c, f: s.f, on: on, slack: -1}
	sh.pieces = sh.shareSpaces(sh.cutPieces())
	at := sh.spaceCut(nil)
	if at.spaces == nil {
		return visit(c)
	}
	if s.outOfWork() {
		return false
	}
	if was := s.cells[c.key()].split; was.seg == at.seg && slices.Equal(was.spaces, at.spaces) {
		at = was
	}
	if c.spaces == nil {
		s.endless = 0
	}
	if at.spaces[at.seg].hi == most {
		s.endless++
	}
	if s.endless > mostEndless {
		s.putOff = true
		return true
	}
	low, high := c.partedSpaces(at)
	return s.branch(low, on, core, visit) && s.branch(high, on, core, visit)
}

// mostEndless is how often the spaces of one arrangement are parted where no number of them is too many. Where nothing bounds
// a wall's length that could go on for ever; what holds only past it is not found, and the search says so.
const mostEndless = 60
