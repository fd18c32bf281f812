package solver

import (
	"encoding/json"
	"strings"

	"saywright/solver/exact"
)

// Expr is arithmetic as it was done: a tree of numbers and signs that knows its own value.
type Expr struct {
	Op    string // "" a number; "+", "-", "*", "/"; or a comparison "=", "<", "<=", ">", ">="
	Args  []Expr
	Value exact.Rat // of a number or a result; a comparison has none
	Count bool      // a number that counts things, shown without a unit
	Cash  bool      // money, shown with two decimals and no currency
}

// Num is a length in an expression, in inches.
func Num(v exact.Rat) Expr { return Expr{Value: v} }

// Tally is a whole number in an expression.
func Tally(n int) Expr { return Expr{Value: exact.Int(n), Count: true} }

// Scalar is a plain number in an expression, such as a factor.
func Scalar(v exact.Rat) Expr { return Expr{Value: v, Count: true} }

// Paid is an amount of money in an expression.
func Paid(v exact.Rat) Expr { return Expr{Value: v, Count: true, Cash: true} }

// Sum adds its terms. A single term is that term itself.
func Sum(terms ...Expr) Expr {
	if len(terms) == 1 {
		return terms[0]
	}
	e := Expr{Op: "+", Args: terms, Count: allCount(terms), Cash: anyCash(terms)}
	for _, t := range terms {
		e.Value = e.Value.Add(t.Value)
	}
	return e
}

// Less takes the later terms from the first.
func Less(first Expr, rest ...Expr) Expr {
	if len(rest) == 0 {
		return first
	}
	e := Expr{Op: "-", Args: append([]Expr{first}, rest...), Value: first.Value,
		Count: first.Count && allCount(rest), Cash: first.Cash}
	for _, t := range rest {
		e.Value = e.Value.Sub(t.Value)
	}
	return e
}

// Product multiplies two terms.
func Product(a, b Expr) Expr {
	return Expr{Op: "*", Args: []Expr{a, b}, Value: a.Value.Mul(b.Value),
		Count: a.Count && b.Count, Cash: a.Cash || b.Cash}
}

// Quotient divides a by b, which must not be 0. A length by a length is a plain number.
func Quotient(a, b Expr) Expr {
	return Expr{Op: "/", Args: []Expr{a, b}, Value: a.Value.Div(b.Value),
		Count: a.Count == b.Count, Cash: a.Cash && !b.Cash}
}

// Compare states a relation between two terms: "<=", "<", ">=", ">" or "=".
func Compare(a Expr, op string, b Expr) Expr { return Expr{Op: op, Args: []Expr{a, b}} }

// Holds evaluates a comparison.
func (e Expr) Holds() bool {
	c := e.Args[0].Value.Cmp(e.Args[1].Value)
	switch e.Op {
	case "<":
		return c < 0
	case "<=":
		return c <= 0
	case ">":
		return c > 0
	case ">=":
		return c >= 0
	}
	return c == 0
}

// IsComparison reports whether e states a relation and so is true or false.
func (e Expr) IsComparison() bool { return strings.ContainsAny(e.Op, "<>=") }

func allCount(terms []Expr) bool {
	for _, t := range terms {
		if !t.Count {
			return false
		}
	}
	return true
}

func anyCash(terms []Expr) bool {
	for _, t := range terms {
		if t.Cash {
			return true
		}
	}
	return false
}

func rank(op string) int {
	switch op {
	case "+", "-":
		return 1
	case "*", "/":
		return 2
	case "":
		return 3
	}
	return 0
}

// Write renders e with the given way of writing a number and the four signs; parentheses stand where they are needed.
func (e Expr) Write(number func(Expr) string, sign func(op string) string) string {
	if e.Op == "" {
		return number(e)
	}
	var b strings.Builder
	for i, a := range e.Args {
		if i > 0 {
			b.WriteString(" " + sign(e.Op) + " ")
		}
		s := a.Write(number, sign)
		if rank(a.Op) < rank(e.Op) || i > 0 && rank(a.Op) == rank(e.Op) && (e.Op == "-" || e.Op == "/") {
			s = "(" + s + ")"
		}
		b.WriteString(s)
	}
	return b.String()
}

// String writes the bare arithmetic: only numbers, + - * / ( ) and comparisons, fractions in parentheses.
func (e Expr) String() string {
	return e.Write(func(n Expr) string {
		s := n.Value.String()
		if strings.Contains(s, "/") || strings.HasPrefix(s, "-") {
			s = "(" + s + ")"
		}
		return s
	}, func(op string) string { return op })
}

// MarshalJSON writes the bare arithmetic as a string.
func (e Expr) MarshalJSON() ([]byte, error) { return json.Marshal(e.String()) }

// Line records one line of arithmetic for of; note is a key that explain puts into words.
func Line(of, note string, e Expr) Work {
	w := Work{Of: of, Expr: e, Note: note}
	if e.IsComparison() {
		w.Equals = "false"
		if e.Holds() {
			w.Equals = "true"
		}
		return w
	}
	w.Equals = e.Value.String()
	return w
}
