package explain

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// dispute is one conflict taken apart for words: the sums of each way in which it fails, and the rules by name.
type dispute struct {
	v       *voice
	rules   []solver.Rule
	stories []tale
}

// tale is the sums of one count that cannot be: its lines, and the last of them, in which two sides stand against
// each other.
type tale struct {
	lines []solver.Work // without the last
	last  solver.Work
	side  int       // which argument of the last line is the whole, -1 where neither
	parts exact.Rat // what stands against the whole
	whole exact.Rat
}

func (v *voice) dispute(c solver.Conflict) dispute {
	d := dispute{v: v, rules: c.Rules}
	var lines []solver.Work
	for _, w := range c.Work {
		if !w.Expr.IsComparison() {
			lines = append(lines, w)
			continue
		}
		d.stories = append(d.stories, d.tale(lines, w))
		lines = nil
	}
	if len(lines) > 0 {
		d.stories = append(d.stories, tale{lines: lines, side: -1})
	}
	return d
}

// tale finds out which side of the last line is the whole, and which is what the parts come to.
func (d dispute) tale(lines []solver.Work, last solver.Work) tale {
	t := tale{lines: lines, last: last, side: -1}
	left, right := last.Expr.Args[0].Value, last.Expr.Args[1].Value
	lo, hi, two := strings.Cut(last.From, "|")
	switch {
	case last.Note != "clash" || two && lo != "" && hi != "":
		return t
	case len(lines) > 0 && lines[len(lines)-1].Expr.Value.Eq(left):
		t.side = 1
	case len(lines) > 0 && lines[len(lines)-1].Expr.Value.Eq(right):
		t.side = 0
	case d.has(last.From, left) && !d.has(last.From, right):
		t.side = 0
	default:
		t.side = 1
	}
	t.whole, t.parts = right, left
	if t.side == 0 {
		t.whole, t.parts = left, right
	}
	return t
}

// over reports whether the parts come to more than the whole.
func (t tale) over() bool { return t.whole.Less(t.parts) || t.whole.Eq(t.parts) && t.side == 1 }

// counted returns how many rails the wood of a tale is made of, 0 where there is none.
func (t tale) counted() int {
	for _, w := range t.lines {
		if w.Note == "wood" && w.Expr.Op == "*" {
			n, _ := w.Expr.Args[0].Value.Int64()
			return int(n)
		}
	}
	return 0
}

func (t tale) line(note string) (solver.Work, bool) {
	for _, w := range t.lines {
		if strings.HasPrefix(w.Note, note) {
			return w, true
		}
	}
	return solver.Work{}, false
}

// named finds a rule of the conflict by its name.
func (d dispute) named(name string) (solver.Rule, bool) {
	for _, r := range d.rules {
		if r.Rule == name {
			return r, true
		}
	}
	return solver.Rule{}, false
}

// has reports whether the rule of a name states that figure.
func (d dispute) has(name string, x exact.Rat) bool {
	for _, r := range d.rules {
		if r.Rule != name {
			continue
		}
		f := read(r.Says)
		for _, s := range []string{f.value, f.upper} {
			if y, ok := length(s); ok && y.Eq(x) {
				return true
			}
		}
	}
	return false
}

// stating finds a rule that states a figure, by name if one is given.
func (d dispute) stating(name string, x exact.Rat) (solver.Rule, bool) {
	return d.bounding(name, x, "")
}

// bounding finds a rule that states a figure as an end from one side: none that only has the other one, whose relations are
// given, may be meant.
func (d dispute) bounding(name string, x exact.Rat, other string) (solver.Rule, bool) {
	for _, r := range d.rules {
		op := read(r.Says).op
		if (name == "" || r.Rule == name) && (dispute{rules: []solver.Rule{r}}).has(r.Rule, x) && (op == "" || !strings.HasPrefix(op, other) || other == "") {
			return r, true
		}
	}
	return d.named(name)
}

// tail is what goes behind the last sum of a tale: ", and the wall is 50".
func (d dispute) tail(t tale) string {
	if t.side < 0 {
		return ""
	}
	return ", and " + d.wholeOf(t)
}

// sums lays the sums of a conflict under each other, each ending in what cannot be.
func (d dispute) sums() sums {
	var s sums
	for _, t := range d.stories {
		rows := d.v.work(t.lines).rows
		switch {
		case t.side >= 0 && len(rows) > 0:
			last := &rows[len(rows)-1]
			last.sum += d.tail(t)
			if t.lines[len(t.lines)-1].Note == "sum" {
				last.remark = ""
			}
		case len(rows) > 0 && t.last.Note == "clash":
			rows = append(rows, sumRow{sum: d.crossing(t.last)})
		case t.last.Expr.IsComparison() && t.last.Note != "clash" && t.last.Expr.Args[0].Op+t.last.Expr.Args[1].Op != "":
			rows = append(rows, sumRow{sum: d.v.sum(t.last)})
		}
		s.rows = append(s.rows, rows...)
	}
	return s
}

// crossing is the last line of two sides that cross: "2 wanted, 1-1/2 allowed".
func (d dispute) crossing(w solver.Work) string {
	v := d.v
	if r, ok := d.named(string(solver.Span)); ok && w.Of == string(solver.Span) && strings.HasSuffix(w.From, "|"+string(solver.Span)) && read(r.Says).op == "=" && d.has(r.Rule, w.Expr.Args[1].Value) {
		return v.amount(w.Expr.Args[0]) + ", and the span is " + v.amount(w.Expr.Args[1])
	}
	return v.amount(w.Expr.Args[0]) + " at the least, and " + v.amount(w.Expr.Args[1]) + " at the most"
}

// written is a figure of a sum as a figure of a sentence.
func (v *voice) written(e solver.Expr) string { return v.both(e.Value) }
