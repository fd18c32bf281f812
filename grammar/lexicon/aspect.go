package lexicon

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/solver"
)

// A set holds what a word may speak of: quantities of the vocabulary, and tables that can be asked for.
// Meaning is found by intersection: "slats" and "wide" have only the face of a rail in common.
type Set [2]uint64

// Has reports whether an aspect is in the set.
func (s Set) Has(i int) bool { return s[i>>6]&(1<<(i&63)) != 0 }

// Add puts an aspect into the set.
func (s *Set) Add(i int) { s[i>>6] |= 1 << (i & 63) }

// And is what both sets hold.
func (s Set) And(t Set) Set { return Set{s[0] & t[0], s[1] & t[1]} }

// Or is what one of the sets holds.
func (s Set) Or(t Set) Set { return Set{s[0] | t[0], s[1] | t[1]} }

// Without is the set without an aspect.
func (s Set) Without(i int) Set { s[i>>6] &^= 1 << (i & 63); return s }

// Empty reports whether nothing is in the set.
func (s Set) Empty() bool { return s[0]|s[1] == 0 }

// HasName reports whether an aspect, told by its name, is in the set.
func (s Set) HasName(n string) bool { return s.Has(AspectIndex[n]) }

// Aspects are all that a word can speak of: quantities first, then the tables, each with a question mark in front.
var Aspects = func() []string {
	var list []string
	for _, a := range solver.Vocabulary {
		list = append(list, string(a.Quantity))
	}
	for _, q := range []solver.Quantity{solver.Measured, solver.FixedRail, solver.Price, solver.Have, solver.Extra, solver.FloorFalls,
		solver.PostLeans, solver.Short, solver.CutOf, solver.MarksOf, solver.Boards, solver.CostOf, solver.Tolerance} {
		list = append(list, string(q))
	}
	for _, t := range slices.Concat(Tables, act.Cares) {
		list = append(list, "?"+t)
	}
	return list
}()

// AspectIndex is the place of each aspect in a set.
var AspectIndex = func() map[string]int {
	m := map[string]int{}
	for i, a := range Aspects {
		m[a] = i
	}
	if len(Aspects) > 128 {
		panic("grammar: more aspects than a set holds")
	}
	return m
}()

// Everything is the set of all aspects.
var Everything = func() Set {
	var s Set
	for i := range Aspects {
		s.Add(i)
	}
	return s
}()

// Sense is what one word or phrase speaks of: surely, or only in company.
type Sense struct{ Sure, May Set }

// All is what a sense may speak of, surely or not.
func (s Sense) All() Set { return s.Sure.Or(s.May) }

// Meaning reads a sense as the tables write it: "gap | bottom gap, bay"; "*" after the bar is everything.
func Meaning(text string) Sense {
	sure, may, _ := strings.Cut(text, "|")
	s := Sense{Sure: aspectSet(sure), May: aspectSet(may)}
	return s
}

func aspectSet(list string) Set {
	var s Set
	for _, name := range strings.Split(list, ",") {
		switch name = strings.TrimSpace(name); name {
		case "":
		case "*":
			return Everything
		default:
			i, ok := AspectIndex[name]
			if !ok {
				panic("grammar: no aspect named " + name)
			}
			s.Add(i)
		}
	}
	return s
}

// Score tells how surely a group of senses speaks of aspect i: 2 for each that does so surely, 1 for each that may;
// 0 as soon as one of them cannot.
func Score(senses []Sense, i int) int {
	n := 0
	for _, s := range senses {
		switch {
		case s.Sure.Has(i):
			n += 2
		case s.May.Has(i):
			n++
		default:
			return 0
		}
	}
	return n
}

// Common returns what all senses can speak of.
func Common(senses []Sense) Set {
	s := Everything
	for _, x := range senses {
		s = s.And(x.All())
	}
	return s
}

// OfKind holds the aspects whose values are of each kind.
var OfKind = func() map[solver.Kind]Set {
	m := map[solver.Kind]Set{}
	for _, a := range solver.Vocabulary {
		s := m[a.Kind]
		s.Add(AspectIndex[string(a.Quantity)])
		m[a.Kind] = s
	}
	return m
}()
