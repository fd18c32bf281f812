package solver

import (
	"encoding/binary"
	"slices"
)

// tally is a count from lo to hi; hi most: no upper end.
type tally struct{ lo, hi int }

func (b tally) exact() bool { return b.lo == b.hi }

// cell is one choice of counts: with it fixed, only lengths are left, and every rule is linear. A cell may also stand for
// many: this many rails or more, or segments with so many bays at least and so many at most. Then its rows are what all
// of those have in common, so that what refuses the cell refuses each.
//
// The openings whose place a law speaks of part the wall into segments; within a segment bays are alike.
type cell struct {
	rails    int
	more     bool // this many rails or more
	openings int
	bays     tally   // all bays together
	segs     []tally // bays of each segment, left to right
	// spaces between stiffeners in each run of bays, all its bays together, where both ends of their spacing are bound;
	// nil: as many as the laws allow
	spaces []tally
	probe  probe
}

// probe is a number of spaces that is tried in a cell that stands for many: in all bays of a segment that has a fixed number
// of them, or (seg −1) in any single bay.
type probe struct {
	seg    int
	spaces tally // none: nothing is tried
}

// exact reports whether the cell fixes every count along the wall.
func (c *cell) exact() bool {
	return c.bays.exact() && !slices.ContainsFunc(c.segs, func(b tally) bool { return !b.exact() })
}

func (c *cell) posts() int { return c.bays.lo + c.openings - 1 }

// key tells cells apart.
func (c *cell) key() string {
	b := make([]byte, 0, 32)
	b = binary.AppendVarint(b, int64(c.rails))
	flags := int64(c.openings) << 1
	if c.more {
		flags |= 1
	}
	b = binary.AppendVarint(b, flags)
	b = binary.AppendVarint(binary.AppendVarint(b, int64(c.bays.lo)), int64(c.bays.hi))
	for _, s := range c.segs {
		b = binary.AppendVarint(binary.AppendVarint(b, int64(s.lo)), int64(s.hi))
	}
	for _, m := range c.spaces {
		b = binary.AppendVarint(binary.AppendVarint(b, int64(m.lo)+1), int64(m.hi))
	}
	if c.probe.spaces.lo > 0 {
		b = binary.AppendVarint(append(b, 0), int64(c.probe.seg))
		b = binary.AppendVarint(binary.AppendVarint(b, int64(c.probe.spaces.lo)), int64(c.probe.spaces.hi))
	}
	return string(b)
}

func (p *problem) namesOpening(i int) bool { return p.named.openings.has(i) }

// namesPost reports whether a law speaks of added post j by its place.
func (p *problem) namesPost(j int) bool { return j >= 0 && j < maxLaws && p.named.posts.has(j) }

// namedParts are the parts that laws speak of one by one.
type namedParts struct {
	bays, openings, posts set
	stiffeners, spacing   bool // whether any law speaks of their number, of their spacing
}

// takeNames collects them once, since every cell asks.
func (p *problem) takeNames() {
	note := func(n Name) {
		p.named.stiffeners = p.named.stiffeners || n.Quantity == Stiffeners
		p.named.spacing = p.named.spacing || n.Quantity == StiffenerSpacing
		if n.Bay > 0 && n.Bay < maxLaws && alongQuantities[n.Quantity] {
			p.named.bays.add(n.Bay)
		}
		if n.Quantity == Opening && n.Opening > 0 && n.Opening < maxLaws {
			p.named.openings.add(n.Opening)
		}
		if n.Post > 0 && n.Post < maxLaws && alongQuantities[n.Quantity] {
			p.named.posts.add(n.Post)
		}
	}
	for i := range p.laws {
		note(p.laws[i].said.Name)
		if of := p.laws[i].said.Value.Of; of != nil {
			note(*of)
		}
	}
}

func (p *problem) names(hit func(Name) bool) bool {
	for i := range p.laws {
		s := &p.laws[i].said
		if hit(s.Name) || s.Value.Of != nil && hit(*s.Value.Of) {
			return true
		}
	}
	return false
}
