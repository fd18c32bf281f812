package explain

import (
	"strconv"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// numbered gives a number to each line of a whole derivation whose result is used in two or more later lines, and names
// it beside those. A figure that was also said or taken for granted is never traced to a line: it may come from there.
func (v *voice) numbered(list []solver.Work) map[int]sumRow {
	out := map[int]sumRow{}
	if !v.a.To.Full {
		return out
	}
	known := v.figuresTold()
	n := 0
	for i, w := range list {
		if !computed(w.Expr) || known[w.Expr.Value.String()] || resultBefore(list[:i], w.Expr.Value) {
			continue
		}
		var uses []int
		for j := i + 1; j < len(list); j++ {
			if hasLeaf(list[j].Expr, w.Expr.Value) {
				uses = append(uses, j)
			}
		}
		if len(uses) < 2 {
			continue
		}
		n++
		lead := "(" + strconv.Itoa(n) + ")"
		row := out[i]
		row.lead = lead
		out[i] = row
		for _, j := range uses {
			row := out[j]
			from := v.amount(solver.Expr{Value: w.Expr.Value, Count: w.Expr.Count, Cash: w.Expr.Cash}) + " from " + lead
			if row.remark != "" {
				from = row.remark + ", " + from
			}
			row.remark = from
			out[j] = row
		}
	}
	return out
}

// computed reports whether an expression comes to a figure by arithmetic.
func computed(e solver.Expr) bool {
	switch e.Op {
	case "+", "-", "*", "/":
		return true
	}
	return false
}

func resultBefore(list []solver.Work, r exact.Rat) bool {
	for _, w := range list {
		if computed(w.Expr) && w.Expr.Value.Eq(r) {
			return true
		}
	}
	return false
}

// hasLeaf reports whether a figure stands in an expression as it is, not as the result of a part of it.
func hasLeaf(e solver.Expr, r exact.Rat) bool {
	if e.Op == "" {
		return !e.Count && e.Value.Eq(r)
	}
	for _, a := range e.Args {
		if hasLeaf(a, r) {
			return true
		}
	}
	return false
}

// figuresTold are the figures that were said, or that parts, tables and custom give.
func (v *voice) figuresTold() map[string]bool {
	known := map[string]bool{}
	for _, f := range v.facts("source") {
		if len(f.Names) == 0 {
			continue
		}
		for _, s := range strings.Split(read(f.Names[0]).value, ", ") {
			if r, ok := length(strings.TrimSuffix(s, " in") + " in"); ok {
				known[r.String()] = true
			}
		}
	}
	return known
}
