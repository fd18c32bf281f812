package solver

import (
	"saywright/solver/exact"
)

// leastSlack is the least by which law l must give so that some cell holds: branch and bound over the counts. What a cell
// that stands for many needs at the least, each of those needs too, and is proven by its own linear program.
func (o *outcome) leastSlack(l int, on set, dir int) (best exact.Bound, ok bool) {
	s := newSearch(o.s.p, o.s.f)
	with := on
	with.add(l)
	s.descend(with, func(c *cell) (cut, bool) {
		if _, refused := s.untied(c, on); refused {
			return cut{}, false
		}
		sh := s.p.lay(c, s.f, with, set{}, l, dir)
		prep := exact.Prepare(&sh.sys)
		if !prep.Feasible() {
			return cut{}, false
		}
		b, point := prep.MinPoint([]exact.Term{one(sh.vSlack)})
		if ok && !better(b, best) {
			return cut{}, false // nothing inside can do better than what was found
		}
		if !s.probesHelp(c, with, l, dir, func(b exact.Bound) bool { return !ok || better(b, best) }) {
			return cut{}, false
		}
		if !c.more && (s.f&alongField == 0 || c.exact()) && sh.openRun() < 0 {
			best, ok = b, true
			return cut{}, false
		}
		return sh.cutAt(point), true
	})
	return best, ok && !s.spent && !s.putOff // what was cut short may not be the least
}

// better reports whether a least amount is less than another, or is reached where that is not.
func better(a, b exact.Bound) bool {
	return a.Val.Less(b.Val) || a.Val.Eq(b.Val) && b.Open && !a.Open
}

// descend runs through the cells of a field, those that stand for many first. visit tells whether to look inside, and
// where to part. with has the law that gives way: what it names must be there.
func (s *search) descend(with set, visit func(*cell) (cut, bool)) {
	if s.f == alongField {
		s.descendBays(with, &cell{}, visit)
		return
	}
	c := s.p.limits(Rails, with, 1)
	for n := c.lo; n <= c.hi && n < c.lo+mostWalked; n++ {
		more := &cell{rails: n, more: true}
		if s.f == upField {
			if _, in := visit(more); !in {
				return
			}
			visit(&cell{rails: n})
			continue
		}
		worth := false
		s.descendBays(with, more, func(x *cell) (cut, bool) {
			at, in := visit(x)
			if in && (worth || !x.exact() || at.spaces != nil) {
				return at, !worth
			}
			worth = worth || in
			return cut{}, false
		})
		if !worth || s.outOfWork() {
			return
		}
		s.descendBays(with, &cell{rails: n}, visit)
	}
}

// mostWalked bounds how many rail counts are tried; what lies past it is no way out for anybody.
const mostWalked = 400

func (s *search) descendBays(with set, base *cell, visit func(*cell) (cut, bool)) {
	ks, _ := s.p.openingCounts(with)
	for _, k := range ks {
		if root, _, ok := s.root(base, k, with); ok {
			s.descendCell(root, visit)
		}
	}
}

func (s *search) descendCell(c *cell, visit func(*cell) (cut, bool)) {
	s.solves()
	if !c.tighten() || s.outOfWork() {
		return
	}
	at, in := visit(c)
	if !in {
		return
	}
	if c.exact() && c.spaces == nil {
		s.endless = 0
	}
	if c.exact() && at.spaces != nil && at.spaces[at.seg].hi == most {
		s.endless++
	}
	if s.endless > mostEndless {
		s.putOff = true
		return
	}
	low, high := c.parted(at)
	s.descendCell(low, visit)
	s.descendCell(high, visit)
}
