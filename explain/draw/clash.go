package draw

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// clashKind says what stands against what in a conflict.
type clashKind string

const (
	bracketsMeet  clashKind = "brackets meet"  // need: bracket clearance, has: the gap
	earMeetsFloor clashKind = "ear at floor"   // need: the ear, has: the bottom gap
	earPastPost   clashKind = "ear past post"  // need: what the ear reaches, has: the post's height
	overHeight    clashKind = "over height"    // need: what rails and gaps take, has: the wall's height
	underHeight   clashKind = "under height"   // need: the wall's height, has: the most that rails and gaps fill
	gapWide       clashKind = "gap wide"       // need: the gap, has: what it must stay under
	bayOverBoard  clashKind = "bay over board" // need: the stretch, has: what a board fills
	openingNarrow clashKind = "opening narrow" // need: the opening wanted, has: what is left for it
	overSpan      clashKind = "over span"      // need: what the parts take, has: the span
	underSpan     clashKind = "under span"     // need: the span, has: the most that the parts fill
	twoLengths    clashKind = "two lengths"    // need and has: any two lengths that do not agree
)

// clash is what a picture of a conflict shows, read from the sums that the solver recorded: need is more than has,
// or as much where a strict limit is only touched.
type clash struct {
	kind      clashKind
	of        string // the quantity of the last line
	need, has exact.Rat
	rails     int       // of a stack
	face      exact.Rat // of a rail
	gap       exact.Rat
	parts     []exact.Rat // terms of the sum that makes need (or has)
}

// clashOf reads a conflict. It reports false where the sums end in no comparison of two lengths.
func clashOf(c solver.Conflict) (clash, bool) {
	at := lastClash(c.Work)
	if at < 0 {
		return clash{}, false
	}
	w := c.Work[at]
	left, right := w.Expr.Args[0], w.Expr.Args[1]
	if left.Count || right.Count || left.Cash || right.Cash {
		return clash{}, false
	}
	out := clash{of: w.Of, need: left.Value, has: right.Value}
	if w.Expr.Op == ">" || w.Expr.Op == ">=" || w.Expr.Op == "=" && left.Value.Less(right.Value) {
		out.need, out.has = right.Value, left.Value
	}
	if out.has.Sign() < 0 || out.need.Sign() <= 0 || out.need.Less(out.has) {
		return clash{}, false
	}
	sums := c.Work[since(c.Work, at):at]
	out.readSums(sums)
	out.kind = out.kindOf(c, w, sumBefore(sums))
	return out, true
}

func lastClash(work []solver.Work) int {
	for i := len(work) - 1; i >= 0; i-- {
		e := work[i].Expr
		if e.IsComparison() && len(e.Args) == 2 && !e.Holds() {
			return i
		}
	}
	return -1
}

// since is where the lines that lead to the comparison at begin: after the comparison before it.
func since(work []solver.Work, at int) int {
	for i := at - 1; i >= 0; i-- {
		if work[i].Expr.IsComparison() {
			return i + 1
		}
	}
	return 0
}

// sumBefore is the value of the sum just before the comparison, and whether there is one.
func sumBefore(work []solver.Work) *exact.Rat {
	for i := len(work) - 1; i >= 0; i-- {
		if strings.HasPrefix(work[i].Note, "sum") {
			v := work[i].Expr.Value
			return &v
		}
	}
	return nil
}

// readSums finds the stack of rails and the terms of the sum among the lines before the comparison.
func (c *clash) readSums(work []solver.Work) {
	for _, w := range work {
		e := w.Expr
		switch {
		case w.Note == "wood" && e.Op == "*" && len(e.Args) == 2:
			if n, ok := e.Args[0].Value.Int64(); ok && n > 0 && n <= mostParts {
				c.rails, c.face = int(n), e.Args[1].Value
			}
		case w.Note == "gaps" && e.Op == "*" && len(e.Args) == 2:
			c.gap = e.Args[1].Value
		case strings.HasPrefix(w.Note, "sum") && e.Op == "+":
			c.parts = nil
			for _, t := range e.Args {
				c.parts = append(c.parts, t.Value)
			}
		}
	}
}

// kindOf tells the kinds apart by what the last line is of and by the rules it stands between.
func (c *clash) kindOf(conflict solver.Conflict, w solver.Work, sum *exact.Rat) clashKind {
	rule := func(q solver.Quantity) bool {
		for _, r := range conflict.Rules {
			if r.Rule == string(q) || r.From != nil && r.From.Name.Quantity == q {
				return true
			}
		}
		return false
	}
	from := func(name solver.Quantity) bool { return strings.Contains("|"+w.From+"|", "|"+string(name)+"|") }
	overSum := sum != nil && sum.Eq(c.need)
	underSum := sum != nil && sum.Eq(c.has)
	switch solver.Quantity(w.Of) {
	case solver.Gap:
		switch {
		case from(solver.BracketClearance):
			return bracketsMeet
		case w.Expr.Op == "<" || w.Expr.Op == "<=":
			if from("guard gap") {
				return gapWide
			}
		}
	case solver.BottomGap:
		if from(solver.BracketEar) {
			return earMeetsFloor
		}
	case solver.PostHeight:
		if rule(solver.BracketEar) && overSum && len(c.parts) == 2 {
			return earPastPost
		}
	case solver.WallHeight:
		switch {
		case c.rails > 0 && overSum:
			return overHeight
		case c.rails > 0 && underSum:
			return underHeight
		}
	case solver.Span, solver.Bay:
		switch {
		case rule(solver.Stock):
			return bayOverBoard
		case overSum:
			return overSpan
		case underSum:
			return underSpan
		}
	case solver.Opening:
		return openingNarrow
	}
	return twoLengths
}

// off is by how much the two lengths disagree.
func (c *clash) off() exact.Rat { return c.need.Sub(c.has) }
