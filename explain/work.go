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

// sums is lines of arithmetic with their remarks in a column beside them.
type sums struct {
	rows []sumRow
}

type sumRow struct {
	lead   string // "rail 5": stands before the sum, in a column of its own
	sum    string
	remark string
}

// work lays lines of arithmetic under each other. A line that says nothing is left out.
func (v *voice) work(list []solver.Work) sums {
	var s sums
	for _, w := range list {
		if text := v.shown(w); text != "" {
			s.add(sumRow{sum: text, remark: v.remark(w)})
		}
	}
	return s
}

// add appends a row, unless it says again what the last one said.
func (s *sums) add(r sumRow) {
	if n := len(s.rows); n == 0 || s.rows[n-1] != r {
		s.rows = append(s.rows, r)
	}
}

func (s sums) settled(fix func(string) string) block {
	rows := make([]sumRow, len(s.rows))
	for i, r := range s.rows {
		rows[i] = sumRow{fix(r.lead), fix(r.sum), fix(r.remark)}
	}
	return sums{rows}
}

const (
	betweenColumns = 3  // spaces
	leastRemark    = 18 // columns that a remark beside a sum wants; with less it goes below
)

// lines aligns the remarks behind the longest sum that leaves room for them.
func (s sums) lines(o Options) []string {
	width, lead := o.width(), 0
	for _, r := range s.rows {
		if n := cells(r.lead); n > 0 {
			lead = max(lead, n+2)
		}
	}
	at := s.remarkColumn(width, lead)
	var out []string
	for _, r := range s.rows {
		out = append(out, r.lines(width, lead, at)...)
	}
	return out
}

func (s sums) remarkColumn(width, lead int) int {
	at := 0
	for _, r := range s.rows {
		if n := lead + cells(r.sum) + betweenColumns; r.remark != "" && n+min(leastRemark, cells(r.remark)) <= width {
			at = max(at, n)
		}
	}
	return at
}

func (r sumRow) lines(width, lead, at int) []string {
	front := padded(r.lead, lead)
	text := wrapSum(r.sum, width-lead)
	text[0] = front + text[0]
	for i := 1; i < len(text); i++ {
		text[i] = strings.Repeat(" ", lead) + text[i]
	}
	if r.remark == "" {
		return text
	}
	last := len(text) - 1
	if len(text) == 1 && at > 0 && cells(text[0]) <= at-betweenColumns {
		beside := wrap(r.remark, width-at)
		text[0] = padded(text[0], at) + beside[0]
		for _, more := range beside[1:] {
			text = append(text, strings.Repeat(" ", at)+more)
		}
		return text
	}
	if cells(text[last])+betweenColumns+cells(r.remark) <= width {
		text[last] += strings.Repeat(" ", betweenColumns) + r.remark
		return text
	}
	for _, more := range wrap(r.remark, width-lead-4) {
		text = append(text, strings.Repeat(" ", lead+4)+more)
	}
	return text
}

// wrapSum breaks a sum that is wider than the line before its signs, and never so that a part of it reads as a whole
// sum: the result then has a line of its own.
func wrapSum(sum string, width int) []string {
	if cells(sum) <= width {
		return []string{sum}
	}
	left, rest, isSum := strings.Cut(sum, " = ")
	if !isSum {
		return indentMore(wrap(sum, width-4))
	}
	lines := indentMore(wrapTerms(left, width-4))
	return append(lines, indentAll(wrap("= "+rest, width-4))...)
}

// wrapTerms breaks before a plus or a minus; products stay together.
func wrapTerms(sum string, width int) []string {
	var terms []string
	for _, w := range strings.Fields(sum) {
		if w == "+" || w == "−" || w == "-" || len(terms) == 0 {
			terms = append(terms, w)
			continue
		}
		terms[len(terms)-1] += " " + w
	}
	var lines []string
	line := ""
	for _, t := range terms {
		if line != "" && cells(line)+1+cells(t) > width {
			lines = append(lines, line)
			line = t
			continue
		}
		line = strings.TrimSpace(line + " " + t)
	}
	return append(lines, line)
}

func indentMore(lines []string) []string {
	return append(lines[:1:1], indentAll(lines[1:])...)
}

func indentAll(lines []string) []string {
	out := make([]string, len(lines))
	for i, l := range lines {
		out[i] = "    " + l
	}
	return out
}

func padded(s string, n int) string {
	if d := n - cells(s); d > 0 {
		return s + strings.Repeat(" ", d)
	}
	return s
}
