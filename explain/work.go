package explain

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// says is one line of work as data: the sum, its result and its unit.
func (v *voice) says(w solver.Work) string {
	s := v.sum(w)
	if w.Expr.IsComparison() || s == "" {
		return s
	}
	switch dimension(w.Expr) {
	case 1:
		s += " " + v.Unit()
	case 2:
		s += " sq " + v.Unit()
	}
	return s
}

// sum writes a line of arithmetic: "5 × 5-1/2 = 27-1/2". A comparison tells both sides.
func (v *voice) sum(w solver.Work) string {
	if w.Expr.IsComparison() {
		return v.comparison(w)
	}
	return v.side(w.Expr)
}

// side writes a term, worked out where it is a sum.
func (v *voice) side(e solver.Expr) string {
	if e.Op == "" {
		return v.amount(e)
	}
	if e = single(e); e.Op == "" {
		return v.result(e)
	}
	return v.expr(e) + " = " + v.result(e)
}

// sentenceSum writes a sum as a part of a sentence, which is also said aloud: "six times five and a half is thirty three".
func (v *voice) sentenceSum(e solver.Expr) string {
	e = single(e)
	if e.Op == "" {
		return v.term(e)
	}
	result := solver.Expr{Value: e.Value, Count: dimension(e) < 1, Cash: e.Cash}
	text := e.Write(v.term, func(op string) string { return mark(operator, op) }) + " " + mark(operator, "=") + " " + v.term(result)
	return strings.NewReplacer("(", mark(operator, "("), ")", mark(operator, ")")).Replace(text)
}

// term is a number of a sum as a figure of a sentence.
func (v *voice) term(e solver.Expr) string {
	switch {
	case e.Cash:
		return mark(cashExact, e.Value.String())
	case e.Count:
		return number(e.Value)
	}
	return mark(inSum, e.Value.String())
}

// dimension is 0 for a count, 1 for a length, 2 for an area.
func dimension(e solver.Expr) int {
	if e.Op == "" {
		if e.Count {
			return 0
		}
		return 1
	}
	d := dimension(e.Args[0])
	for _, a := range e.Args[1:] {
		switch e.Op {
		case "*":
			d += dimension(a)
		case "/":
			d -= dimension(a)
		default:
			d = max(d, dimension(a))
		}
	}
	return d
}

// result writes what a sum comes to. An area is written in squares of the person's unit.
func (v *voice) result(e solver.Expr) string {
	d := dimension(e)
	value := e.Value
	for v.Metric && d > 1 {
		value, d = value.Mul(solver.PerInch), d-1
	}
	return v.amount(solver.Expr{Value: value, Count: d < 1, Cash: e.Cash})
}

// expr writes a sum; a single one of something is that something: "3-1/2" for 1 × 3-1/2.
func (v *voice) expr(e solver.Expr) string { return single(e).Write(v.amount, signOf) }

func single(e solver.Expr) solver.Expr {
	if e.Op == "*" && len(e.Args) == 2 && e.Args[0].Op == "" && e.Args[0].Count && e.Args[0].Value.Eq(exact.Int(1)) && !e.Args[1].Cash {
		return single(e.Args[1])
	}
	if e.Op == "" {
		return e
	}
	args := make([]solver.Expr, len(e.Args))
	for i, a := range e.Args {
		args[i] = single(a)
	}
	e.Args = args
	return e
}

// amount writes a number of an expression: money with two decimals, a length in the person's unit, a count as it is.
func (v *voice) amount(e solver.Expr) string {
	var s string
	switch {
	case e.Cash:
		s = thousands(cash(e.Value))
	case e.Count:
		s = thousands(v.Plain(e.Value))
	default:
		s = thousands(v.Length(e.Value))
	}
	if strings.HasPrefix(s, "-") {
		return "(−" + s[1:] + ")"
	}
	return s
}

// cash writes money with two decimals; an amount of broken cents, which only prices of parts of a board make, stays exact.
func cash(r exact.Rat) string {
	if r.Mul(exact.Int(100)).IsInt() {
		return solver.Cents(r)
	}
	return solver.Fraction(r)
}

func signOf(op string) string {
	switch op {
	case "-":
		return "−"
	case "*":
		return "×"
	case "/":
		return "÷"
	}
	return op
}

// comparison tells what stands against what. Where it is false it says so: "38-1/2 + 12 = 50-1/2, and the wall is 50".
func (v *voice) comparison(w solver.Work) string {
	left, right := w.Expr.Args[0], w.Expr.Args[1]
	a, b := v.side(left), v.side(right)
	if w.Equals == "true" {
		return a + ", " + v.kept(w, left, right) + " " + b
	}
	if what := v.standsAgainst(w); what != "" {
		return a + ", and " + what + " " + b
	}
	return a + ", " + v.missed(w.Expr.Op, left.Value, right.Value) + " " + b
}

// kept words a relation that holds.
func (v *voice) kept(w solver.Work, left, right solver.Expr) string {
	c := left.Value.Cmp(right.Value)
	switch {
	case c == 0:
		return "just"
	case c < 0:
		return "under"
	}
	return "over"
}

// missed words a relation that does not hold.
func (v *voice) missed(op string, left, right exact.Rat) string {
	c := left.Cmp(right)
	switch {
	case c > 0 && strings.HasPrefix(op, "<"):
		return "more than"
	case c < 0 && strings.HasPrefix(op, ">"):
		return "less than"
	case op == "<":
		return "not under"
	case op == ">":
		return "not over"
	}
	return "not"
}
