package exact

import (
	"cmp"
	"slices"
)

// Rel says how the sum of a row stands to its right side.
type Rel int8

// The relations of a row: at most, at least, equal, less than, more than.
const (
	LE Rel = iota
	GE
	EQ
	LT
	GT
)

// String returns the sign of the relation: "<=", ">=", "=", "<" or ">".
func (r Rel) String() string {
	if r < LE || r > GT {
		return "?"
	}
	return [...]string{"<=", ">=", "=", "<", ">"}[r]
}

// Strict reports whether the relation leaves its limit out.
func (r Rel) Strict() bool { return r == LT || r == GT }

// upper and lower report on which side the relation bounds its sum.
func (r Rel) upper() bool { return r == LE || r == LT || r == EQ }
func (r Rel) lower() bool { return r == GE || r == GT || r == EQ }

// Term is Coef times the unknown with index Var.
type Term struct {
	Var  int
	Coef Rat
}

// Background is the Rule of a row that always holds: it takes part in the arithmetic and is never blamed.
const Background = -1

// Row is one linear rule: the sum of Terms stands in Rel to RHS. A Var may occur in several terms; they add up.
type Row struct {
	Terms []Term
	Rel   Rel
	RHS   Rat
	Rule  int // the caller's rule this row belongs to; several rows may share one; Background for none
}

// System is a set of rows over Vars unknowns, numbered from 0. An unknown is free unless rows bound it. A Term whose
// Var is not in 0..Vars-1 is a mistake of the caller: the solver panics on it, the checker reports it.
type System struct {
	Vars int
	Rows []Row
}

// Multiplier says how often a row is taken in a weighted sum.
type Multiplier struct {
	Row  int // index into System.Rows
	Mult Rat
}

// Certificate is a weighted sum of rows, ascending by row, each multiplied so that all of them point the same way.
//
// A refutation points to "at most": Mult is positive on LE and LT rows, negative on GE and GT rows, either on EQ rows.
// The unknowns of its sum cancel, and what is left is false: 0 is at most a negative number, or, where a strict row
// takes part, 0 is less than 0. That such a sum exists for every system without a solution is Farkas' lemma (1902),
// with strict rows Motzkin's (1936).
//
// The proof of a lower bound points to "at least" (positive on GE and GT, negative on LE and LT), that of an upper
// bound to "at most"; the unknowns of its sum are the objective, and its right side is the bound.
type Certificate []Multiplier

// Rules returns the rules whose rows take part, ascending, each once, without Background.
func (c Certificate) Rules(s *System) []int {
	var rules []int
	for _, m := range c {
		if r := s.Rows[m.Row].Rule; r != Background {
			rules = append(rules, r)
		}
	}
	slices.Sort(rules)
	return slices.Compact(rules)
}

func (c Certificate) sort() {
	slices.SortFunc(c, func(a, b Multiplier) int { return cmp.Compare(a.Row, b.Row) })
}

// Bound is the least or the greatest value of an objective.
type Bound struct {
	Val  Rat
	Open bool // the value is approached but never attained: a strict row stands in the way
	None bool // there is no bound on this side; Val and Open mean nothing
}
