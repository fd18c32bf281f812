package explain

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// lead is the clash in a sentence, both sides named.
func (d dispute) lead() string {
	if len(d.stories) == 0 {
		return d.together()
	}
	first := d.stories[0]
	if s := d.countLead(first); s != "" {
		return s
	}
	if s := d.spacesLead(); s != "" {
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
	case t.last.Of == string(solver.Stiffeners):
		return "there are to be " + number(left) + " or more stiffeners in a bay, and no more than " + number(right)
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
	low, top := d.sideOf(a, lo, t.last.Of, true), d.sideOf(b, hi, t.last.Of, false)
	if low == top { // one end comes from several rules together
		return d.together()
	}
	return low + ", and " + top
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

// spacing is the rule that sets the stiffeners' spacing to a figure, where a clash is about no more than how many such spaces go into the span.
func (d dispute) spacing() (solver.Rule, bool) {
	r, ok := d.named(string(solver.StiffenerSpacing))
	if !ok || read(r.Says).op != "=" || leans(read(r.Says).value) {
		return r, false
	}
	for _, t := range d.stories {
		bays, spaced := t.line("bays")
		if !spaced || bays.Expr.Op != "*" || !d.has(r.Rule, bays.Expr.Args[1].Value) || t.last.Of != string(solver.Span) || t.last.Note != "clash" {
			return r, false
		}
	}
	return r, len(d.stories) > 1
}

// spacesLead says that spaces of one width do not come out: how far each number of them reaches, with what stands between.
func (d dispute) spacesLead() string {
	r, ok := d.spacing()
	if !ok {
		return ""
	}
	var list []string
	for _, t := range d.stories {
		bays, _ := t.line("bays")
		n := ints([]exact.Rat{bays.Expr.Args[0].Value})[0]
		reach, takes := t.parts, " reach "
		if t.side < 0 {
			reach = t.last.Expr.Args[0].Value
		}
		if t.side < 0 || t.over() {
			takes = " take "
		}
		list = append(list, count(n)+d.between(t)+takes+d.v.both(reach))
	}
	whole := d.stories[0]
	return "spaces of " + d.v.figureOf(read(r.Says).value) + " don't come out: " + strings.Join(list, ", ") + ", and " + d.wholeOf(whole)
}

// between says what stands between the spaces of a tale.
func (d dispute) between(t tale) string {
	sum, ok := t.line("sum")
	if !ok {
		return ""
	}
	with := " with one post"
	_, opening := d.named(string(solver.Opening))
	if opening || len(sum.Expr.Args) != 2 {
		return " with the posts and the opening"
	}
	if posts, ok := t.line("posts"); ok && posts.Expr.Op == "*" {
		with = " with " + plural(ints([]exact.Rat{posts.Expr.Args[0].Value})[0], "post", "posts")
	}
	return with
}

// onlyTheMost tells how to say that a spacing is a limit: most who say one mean no more than that.
func (d dispute) onlyTheMost() string {
	r, ok := d.spacing()
	if !ok {
		return ""
	}
	return "If " + d.v.figureOf(read(r.Says).value) + " is only the most: `forget stiffener spacing, stiffeners no more than " + d.v.figureOf(read(r.Says).value) + " apart`"
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
