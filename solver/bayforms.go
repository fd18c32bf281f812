package solver

import (
	"slices"

	"saywright/solver/exact"
)

func (s *sheet) bayForms(n Name, specific bool) []form {
	if !s.c.exact() {
		return s.looseBayForms(n, specific)
	}
	var out []form
	for i := range s.pieces {
		pc := &s.pieces[i]
		if pc.opening > 0 || n.Bay > 0 && (pc.first != n.Bay || pc.bays != 1) {
			continue
		}
		if n.Bay == 0 && specific && pc.bays == 1 && s.hasOwn(Name{Quantity: n.Quantity, Bay: pc.first}) {
			continue
		}
		f := form{terms: []exact.Term{one(pc.v)}, copies: pc.bays, key: pc.v, spaces: pc.spaces}
		out = append(out, f)
	}
	return out
}

// looseBayForms covers bays that the cell only counts from below and above: segment by segment, all together, and each
// bay that is named. Where an equation leaves out bays that have one of their own, only the others together are covered.
// One bay there always is: what holds of every bay holds of it.
func (s *sheet) looseBayForms(n Name, specific bool) []form {
	if n.Bay > 0 {
		return s.loneForm(n.Bay)
	}
	var apart []lone
	if specific {
		var all bool
		if apart, all = s.excepted(n.Quantity); !all {
			return nil
		}
	}
	var out []form
	if len(apart) == 0 {
		out = append(out, form{terms: []exact.Term{one(vBay)}, copies: 1, key: vBay, spaces: s.anySpaces()})
	}
	all := form{copies: s.c.bays.lo - len(apart), upTo: s.c.bays.hi, key: -1 - len(apart)}
	if all.upTo < most {
		all.upTo -= len(apart)
	}
	segs := 0
	for _, pc := range s.pieces {
		if pc.opening == 0 {
			if segs++; len(apart) == 0 {
				out = append(out, form{terms: []exact.Term{one(pc.v)}, copies: pc.bays, upTo: pc.upTo, key: pc.v, spaces: pc.spaces})
			}
			all.terms = append(all.terms, one(pc.v))
		}
	}
	for _, l := range s.lone {
		if slices.Contains(apart, l) {
			all.terms = append(all.terms, minus(l.v))
		} else {
			out = append(out, s.loneForm(l.bay)...)
		}
	}
	if n.Quantity == Bay && len(apart) == 0 {
		out = append(out, s.baysBeside()...)
	}
	if segs != 1 || len(apart) > 0 {
		all.spaces = s.spacesOf(all.copies, all.upTo, 0, false)
		out = append(out, all)
	}
	return out
}

// equalBays: every run of bays is its count times the common width.
func (s *sheet) equalBays(i int) {
	state := func(terms []exact.Term, b tally) {
		if b.exact() {
			s.row(exact.EQ, zero, i, append(terms, times(vEqual, -b.lo))...)
			return
		}
		s.row(exact.GE, zero, i, append(slices.Clone(terms), times(vEqual, -b.lo))...)
		if b.hi < most {
			s.row(exact.LE, zero, i, append(slices.Clone(terms), times(vEqual, -b.hi))...)
		}
	}
	var all []exact.Term
	for _, pc := range s.pieces {
		if pc.opening == 0 {
			state([]exact.Term{one(pc.v)}, tally{pc.bays, pc.upTo})
			all = append(all, one(pc.v))
		}
	}
	if !s.c.exact() {
		state(all, s.c.bays)
		state([]exact.Term{one(vBay)}, tally{1, 1})
		for _, l := range s.lone {
			state([]exact.Term{one(l.v)}, tally{1, 1})
		}
	}
}
