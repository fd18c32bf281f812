package solver

import "saywright/solver/exact"

// anySpaces are the spaces in the one bay that there always is.
func (s *sheet) anySpaces() tally {
	if p := s.c.probe; p.spaces.lo > 0 && p.seg < 0 {
		return p.spaces
	}
	return s.spacesOf(1, 1, 0, false)
}

// probes lists what can be tried in a cell that stands for many, and how many bays each stands for.
func (s *search) probes(c *cell, on set) (out []probe, bays []int) {
	if c.exact() || s.f&alongField == 0 || !s.p.bindsSpacing(on).both() {
		return nil, nil
	}
	bare := sheet{p: s.p, c: c, f: s.f, on: on, slack: -1}
	if t := bare.spacesOf(1, 1, 0, false); t.lo < t.hi {
		out, bays = append(out, probe{-1, t}), append(bays, 1)
	}
	for i, b := range c.segs {
		if t := bare.spacesOf(b.lo, b.lo, 0, false); b.exact() && b.lo > 0 && t.lo < t.hi {
			out, bays = append(out, probe{i, t}), append(bays, b.lo)
		}
	}
	return out, bays
}

// noSpaces reports whether a cell that stands for many is refused because no number of spaces suits a single bay of it, or a
// segment. by are the laws that refuse them all.
func (s *search) noSpaces(c *cell, on set) (by set, none bool) {
	ps, bays := s.probes(c, on)
	for i, p := range ps {
		by = set{}
		if s.noneOf(c, on, p, bays[i], &by) {
			return by, true
		}
	}
	return set{}, false
}

func (s *search) noneOf(c *cell, on set, p probe, bays int, by *set) bool {
	x := *c
	x.probe = p
	hit, core := s.try(&x, on)
	if hit == nil {
		*by = by.union(core)
		return true
	}
	if s.outOfWork() {
		return false
	}
	bare := sheet{p: s.p, c: c, f: s.f, on: on, slack: -1}
	e := bare.spacingEnds(&piece{bays: 1})
	if n, ok := e.enough(); e.likened || p.spaces.exact() || ok && p.spaces.lo/bays >= n {
		return false
	}
	low, high := p.parted()
	return s.noneOf(c, on, low, bays, by) && s.noneOf(c, on, high, bays, by)
}

// parted splits off the fewest.
func (p probe) parted() (low, high probe) {
	low, high = p, p
	low.spaces.hi, high.spaces.lo = p.spaces.lo, p.spaces.lo+1
	return low, high
}

// probesHelp reports whether, in a cell that stands for many, some number of spaces in each bay and segment that can be
// probed lets law l give by an amount that still helps. Past mostPeeled numbers it is taken to.
func (s *search) probesHelp(c *cell, on set, l, dir int, helps func(exact.Bound) bool) bool {
	ps, bays := s.probes(c, on)
	for i, p := range ps {
		peeled := 0
		var walk func(p probe) bool
		walk = func(p probe) bool {
			x := *c
			x.probe = p
			s.solves()
			sh := s.p.lay(&x, s.f, on, set{}, l, dir)
			prep := exact.Prepare(&sh.sys)
			if !prep.Feasible() {
				return false
			}
			if b, _ := prep.MinPoint([]exact.Term{one(sh.vSlack)}); !helps(b) {
				return false
			}
			n, ok := sh.spacingEnds(&piece{bays: 1}).enough()
			if peeled++; p.spaces.exact() || ok && p.spaces.lo/bays[i] >= n || peeled > mostPeeled {
				return true
			}
			low, high := p.parted()
			return walk(low) || walk(high)
		}
		if !walk(p) {
			return false
		}
	}
	return true
}

// mostPeeled bounds how many numbers of spaces are tried one by one where nothing else bounds them.
const mostPeeled = 64
