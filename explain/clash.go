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
	for _, r := range d.rules {
		if (name == "" || r.Rule == name) && d.has(r.Rule, x) && onlyOne(d.rules, r, x) {
			return r, true
		}
	}
	return d.named(name)
}

// onlyOne: of two rules by one name, the one that states the figure.
func onlyOne(rules []solver.Rule, r solver.Rule, x exact.Rat) bool {
	return dispute{rules: []solver.Rule{r}}.has(r.Rule, x)
}

// lead is the clash in a sentence, both sides named.
func (d dispute) lead() string {
	if len(d.stories) == 0 {
		return d.together()
	}
	first := d.stories[0]
	if s := d.countLead(first); s != "" {
		return s
	}
	if _, aboutUp := first.line("wood"); aboutUp && first.side >= 0 {
		return d.upLead()
	}
	switch {
	case first.last.Note == "no room for a rail":
		return "The brackets and the fit leave nothing to cut"
	case first.last.Note == "no post left":
		return "The base takes all of the post"
	case first.last.Note == "screw stays inside":
		return "The screw would come out of the far side: " + d.v.written(first.last.Expr.Args[0]) + " long, and what it goes through comes to " + d.v.written(first.last.Expr.Args[1])
	case first.last.Note == "within budget":
		return "It comes to " + money(first.last.Expr.Args[0].Value) + ", and the budget is " + money(first.last.Expr.Args[1].Value)
	case first.last.Note == "longer than any board":
		return d.v.the(first.last.Of) + " is longer than any board: " + d.v.written(first.last.Expr.Args[0]) + ", and the longest is " + d.v.written(first.last.Expr.Args[1])
	case first.last.Note == "boards missing", first.last.Note == "boards at hand":
		return "There are not enough boards at hand"
	case first.last.Note == "no stiffener left":
		return "Nothing is left for a stiffener"
	case first.last.Note == "screw has a length":
		return "A screw has to have a length"
	case first.last.Note == "weighted" || first.last.Note != "clash":
		return d.together()
	case first.side < 0:
		return d.crossed(first)
	case first.last.Of == string(solver.Span) && len(first.lines) > 0:
		return d.alongLead(first)
	}
	return d.sideOf(first.parts, "", first.last.Of, first.over()) + ", and " + d.sideOf(first.whole, first.last.From, first.last.Of, !first.over())
}

// countLead says a clash of counts: more openings than can be laid out, posts that bays and openings take.
func (d dispute) countLead(t tale) string {
	if t.last.Note != "clash" || !t.last.Expr.IsComparison() {
		return ""
	}
	left, right := t.last.Expr.Args[0].Value, t.last.Expr.Args[1].Value
	a, b := ints([]exact.Rat{left, right})[0], ints([]exact.Rat{left, right})[1]
	between, posts := t.line("posts between")
	switch {
	case t.last.Of == string(solver.Openings):
		return plural(a, "opening", "openings") + " are more than I can lay out: " + count(b) + " at the most"
	case posts && between.Expr.Value.Eq(left):
		return "bays and openings take " + plural(a, "added post", "added posts") + ", and there are to be no more than " + count(b)
	case posts:
		return "bays and openings take no more than " + plural(b, "added post", "added posts") + ", and there are to be " + count(a)
	}
	return ""
}

// together lists what cannot hold together, where no shorter sum shows it.
func (d dispute) together() string {
	var list []string
	for _, r := range d.rules {
		if r.Kind != solver.Geometry {
			list = append(list, d.v.rule(r))
		}
	}
	switch len(list) {
	case 0:
		return "That can't be"
	case 1:
		return "This can't be: " + list[0]
	}
	return "Each of these works alone, together they don't: " + and(list)
}

// crossed names both sides of a length that must be more than it may be.
func (d dispute) crossed(t tale) string {
	lo, hi, _ := strings.Cut(t.last.From, "|")
	a, b := t.last.Expr.Args[0].Value, t.last.Expr.Args[1].Value
	return d.sideOf(a, lo, t.last.Of, true) + ", and " + d.sideOf(b, hi, t.last.Of, false)
}

// sideOf says one side: what wants a length to be at least (lower) or at most so much.
func (d dispute) sideOf(x exact.Rat, name, of string, lower bool) string {
	r, ok := d.stating(name, x)
	if !ok || name != "" && r.Rule != name {
		return d.unnamed(x, of, lower)
	}
	if d.has(r.Rule, x) || !isLength(read(r.Says).value) {
		if s := d.v.demand(r, x, of); s != "" {
			return s
		}
	}
	thing := d.v.the(of)
	if read(r.Says).name == of {
		return thing + " comes to " + d.amount(x, of)
	}
	most := "no more than "
	if lower {
		most = "no less than "
	}
	return d.v.the(read(r.Says).name) + " leaves " + thing + " " + most + d.amount(x, of)
}

// unnamed says a side that no single rule states.
func (d dispute) unnamed(x exact.Rat, of string, lower bool) string {
	what, most := "it takes ", " at the most"
	if lower {
		most = " at the least"
	}
	switch solver.Quantity(of) {
	case solver.WallHeight, solver.PostHeight:
		what = "rails and gaps take "
	case solver.Span:
		what = "bays, openings and posts take "
	case solver.Gap, solver.BottomGap, solver.Opening, solver.Bay:
		return d.v.the(of) + " comes to " + d.amount(x, of) + most
	}
	return what + d.amount(x, of) + most
}

// amount says a figure of what a line is about: a count of a count, a length of a length.
func (d dispute) amount(x exact.Rat, of string) string {
	if t, _, _ := thingOf(of); t.one != "" {
		return number(x)
	}
	return d.v.both(x)
}

// demand says what a rule wants, as a clause of its own: "the brackets need 2 between rails", "the wall is 50".
func (v *voice) demand(r solver.Rule, x exact.Rat, of string) string {
	switch r.Rule {
	case "bracket clearance":
		return "the brackets need " + v.both(x) + " between rails"
	case "bracket ear":
		if of == string(solver.PostHeight) {
			return "the top bracket wants a post up to " + v.both(x)
		}
		return "the lowest bracket stands " + v.both(x) + " below its rail"
	case "guard gap", "guard bottom gap":
		return "a guard lets no " + v.ball(x) + " ball through"
	case "guard height":
		return "a guard is " + v.length(x) + " high or more"
	case "pool barrier height":
		return "a pool barrier is " + v.length(x) + " high or more"
	case "stock":
		return "the longest board fills " + v.both(x)
	}
	f := read(r.Says)
	thing := v.the(f.name)
	switch f.op {
	case "=":
		if leans(f.value) {
			return v.phrase(r.Says)
		}
		if _, q, _ := thingOf(f.name); q == solver.OpeningSide {
			return v.phrase(r.Says)
		}
		if t, q, _ := thingOf(f.name); solver.KindOf(q) == solver.Size {
			return "the " + strings.TrimPrefix(t.a, "a ") + isOrAre(t.a) + v.figureOf(f.value)
		}
		return thing + isOrAre(thing) + v.figureOf(f.value)
	case "":
		return v.phrase(r.Says)
	}
	if leans(f.value) {
		return v.phrase(r.Says)
	}
	return thing + isOrAre(thing) + "to be " + v.held(f)
}

// upLead says a clash up the wall: one count of rails that cannot be, or none that can.
func (d dispute) upLead() string {
	v := d.v
	if len(d.stories) > 1 && d.stories[1].side >= 0 {
		var list []string
		for _, t := range d.stories {
			verb := " reach "
			if t.over() {
				verb = " take "
			}
			list = append(list, count(t.counted())+verb+v.both(t.parts))
		}
		list[0] = strings.Replace(list[0], " reach ", " rails reach ", 1)
		list[0] = strings.Replace(list[0], " take ", " rails take ", 1)
		return "no number of rails comes out: " + strings.Join(list, ", ") + ", and " + d.wholeOf(d.stories...)
	}
	t := d.stories[0]
	rails := plural(t.counted(), "rail", "rails")
	gaps, hasGaps := t.line("gaps")
	switch {
	case t.over() && !hasGaps:
		return rails + " won't go: the wood alone takes " + v.both(t.parts) + ", and " + d.wholeOf(t)
	case t.over():
		s := rails + " won't go: with " + d.gapsWith(gaps) + " they take " + v.both(t.parts)
		if !d.countsUnder(t) {
			s += " before anything is left underneath"
		}
		return s + ", and " + d.wholeOf(t)
	case hasGaps:
		return rails + " don't fill it: with " + d.gapsWith(gaps) + " they reach " + v.both(t.parts) + ", and " + d.wholeOf(t)
	}
	return rails + " don't fill it: they reach " + v.both(t.parts) + ", and " + d.wholeOf(t)
}

// countsUnder reports whether what lies under the bottom rail is among the parts of a tale.
func (d dispute) countsUnder(t tale) bool {
	if g, ok := t.line("gaps"); ok && g.Note == "gaps and under" {
		return true
	}
	sum, ok := t.line("sum")
	return ok && len(sum.Expr.Args) > 2
}

func (d dispute) gapsWith(w solver.Work) string {
	if w.From == string(solver.BracketClearance) {
		return "the least gaps the brackets leave"
	}
	if w.Expr.Op == "*" {
		return "gaps of " + d.v.both(w.Expr.Args[1].Value)
	}
	return "those gaps"
}

// wholeOf says what the whole is held to.
func (d dispute) wholeOf(ts ...tale) string {
	t := ts[0]
	if r, ok := d.stating(t.last.From, t.whole); ok && r.Rule == t.last.From {
		if s := d.v.demand(r, t.whole, t.last.Of); s != "" {
			return s
		}
	}
	return d.v.the(t.last.Of) + isOrAre(d.v.the(t.last.Of)) + d.amount(t.whole, t.last.Of)
}

// alongLead says a clash along the wall.
func (d dispute) alongLead(t tale) string {
	subject := "it"
	for _, r := range d.rules {
		f := read(r.Says)
		if f.op == "=" && (f.name == string(solver.AddedPosts) || f.name == string(solver.Bays)) {
			subject = d.v.phrase(r.Says)
		}
	}
	won := " doesn't fill the span: it reaches "
	if t.over() {
		won = " is too long: it takes "
	}
	if subject != "it" {
		won = " won't do: it reaches "
		if t.over() {
			won = " won't do: it takes "
		}
		if !strings.HasPrefix(subject, mark(howMany, "1")) {
			won = strings.NewReplacer("it reaches", "they reach", "it takes", "they take").Replace(won)
		}
	}
	return subject + won + d.v.both(t.parts) + ", and " + d.wholeOf(t)
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
			rows = append(rows, sumRow{sum: d.v.crossing(t.last)})
		case t.last.Expr.IsComparison() && t.last.Note != "clash" && t.last.Expr.Args[0].Op+t.last.Expr.Args[1].Op != "":
			rows = append(rows, sumRow{sum: d.v.sum(t.last)})
		}
		s.rows = append(s.rows, rows...)
	}
	return s
}

// crossing is the last line of two sides that cross: "2 wanted, 1-1/2 allowed".
func (v *voice) crossing(w solver.Work) string {
	return v.amount(w.Expr.Args[0]) + " at the least, and " + v.amount(w.Expr.Args[1]) + " at the most"
}

// written is a figure of a sum as a figure of a sentence.
func (v *voice) written(e solver.Expr) string { return v.both(e.Value) }
