package grammar

import (
	"slices"
	"strings"

	"saywright/solver"
)

// A set holds what a word may speak of: quantities of the vocabulary, and tables that can be asked for.
// Meaning is found by intersection: "slats" and "wide" have only the face of a rail in common.
type set [2]uint64

// has reports whether an aspect is in the set.
func (s set) has(i int) bool { return s[i>>6]&(1<<(i&63)) != 0 }

// add puts an aspect into the set.
func (s *set) add(i int) { s[i>>6] |= 1 << (i & 63) }

// and is what both sets hold.
func (s set) and(t set) set { return set{s[0] & t[0], s[1] & t[1]} }

// or is what one of the sets holds.
func (s set) or(t set) set { return set{s[0] | t[0], s[1] | t[1]} }

// without is the set without an aspect.
func (s set) without(i int) set { s[i>>6] &^= 1 << (i & 63); return s }

// empty reports whether nothing is in the set.
func (s set) empty() bool { return s[0]|s[1] == 0 }

// hasName reports whether an aspect, told by its name, is in the set.
func (s set) hasName(n string) bool { return s.has(aspectIndex[n]) }

// aspects are all that a word can speak of: quantities first, then the tables, each with a question mark in front.
var aspects = func() []string {
	var list []string
	for _, a := range solver.Vocabulary {
		list = append(list, string(a.Quantity))
	}
	for _, q := range []solver.Quantity{solver.Measured, solver.FixedRail, solver.Price, solver.Have, solver.Extra, solver.FloorFalls,
		solver.PostLeans, solver.Short, solver.CutOf, solver.MarksOf, solver.Boards, solver.CostOf, solver.Tolerance} {
		list = append(list, string(q))
	}
	for _, t := range slices.Concat(tables, cares) {
		list = append(list, "?"+t)
	}
	return list
}()

// aspectIndex is the place of each aspect in a set.
var aspectIndex = func() map[string]int {
	m := map[string]int{}
	for i, a := range aspects {
		m[a] = i
	}
	if len(aspects) > 128 {
		panic("grammar: more aspects than a set holds")
	}
	return m
}()

// everything is the set of all aspects.
var everything = func() set {
	var s set
	for i := range aspects {
		s.add(i)
	}
	return s
}()

// sense is what one word or phrase speaks of: surely, or only in company.
type sense struct{ sure, may set }

// all is what a sense may speak of, surely or not.
func (s sense) all() set { return s.sure.or(s.may) }

// meaning reads a sense as the tables write it: "gap | bottom gap, bay"; "*" after the bar is everything.
func meaning(text string) sense {
	sure, may, _ := strings.Cut(text, "|")
	s := sense{sure: aspectSet(sure), may: aspectSet(may)}
	return s
}

func aspectSet(list string) set {
	var s set
	for _, name := range strings.Split(list, ",") {
		switch name = strings.TrimSpace(name); name {
		case "":
		case "*":
			return everything
		default:
			i, ok := aspectIndex[name]
			if !ok {
				panic("grammar: no aspect named " + name)
			}
			s.add(i)
		}
	}
	return s
}

// score tells how surely a group of senses speaks of aspect i: 2 for each that does so surely, 1 for each that may;
// 0 as soon as one of them cannot.
func score(senses []sense, i int) int {
	n := 0
	for _, s := range senses {
		switch {
		case s.sure.has(i):
			n += 2
		case s.may.has(i):
			n++
		default:
			return 0
		}
	}
	return n
}

// common returns what all senses can speak of.
func common(senses []sense) set {
	s := everything
	for _, x := range senses {
		s = s.and(x.all())
	}
	return s
}

// ofKind holds the aspects whose values are of each kind.
var ofKind = func() map[solver.Kind]set {
	m := map[solver.Kind]set{}
	for _, a := range solver.Vocabulary {
		s := m[a.Kind]
		s.add(aspectIndex[string(a.Quantity)])
		m[a.Kind] = s
	}
	return m
}()
