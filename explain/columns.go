package explain

import (
	"strings"

	"saywright/solver"
)

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
	numbers := v.numbered(list)
	for i, w := range list {
		if text := v.shown(w); text != "" {
			remark := v.remark(w)
			if n := numbers[i].remark; n != "" && remark != "" {
				remark += "; " + n
			} else if n != "" {
				remark = n
			}
			s.add(sumRow{lead: numbers[i].lead, sum: text, remark: remark})
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
	out, _ := s.linesAt(width, lead, at)
	cost := len(out)
	for _, r := range s.rows { // where that breaks remarks into slivers, a column farther left may take fewer lines
		n := lead + cells(r.sum) + betweenColumns
		if n >= at {
			continue
		}
		if other, beyond := s.linesAt(width, lead, n); len(other)+beyond < cost {
			out, cost = other, len(other)+beyond
		}
	}
	return out
}

// linesAt lays the rows with their remarks in a column; beyond are those with a remark whose sum reaches over it.
func (s sums) linesAt(width, lead, at int) (out []string, beyond int) {
	for _, r := range s.rows {
		out = append(out, r.lines(width, lead, at)...)
		if r.remark != "" && lead+cells(r.sum) > at-betweenColumns {
			beyond++
		}
	}
	return out, beyond
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
