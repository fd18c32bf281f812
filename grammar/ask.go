package grammar

import (
	"strings"

	"saywright/solver"
)

// ambiguous asks which of several readings was meant.
func (s *speech) ambiguous(g *group, part []item, list []reading) {
	q := solver.Question{Text: "Which is meant?", Example: "gap 2-1/2, 6 rails"}
	for _, r := range list {
		var forms []string
		for _, m := range r.made {
			forms = append(forms, m.st.String())
		}
		q.Choices = append(q.Choices, withForce(g.force, strings.Join(forms, sep(g.force))))
	}
	s.fail(part[0].startAt(), q)
}

func sep(k ActKind) string {
	if k == State {
		return "; "
	}
	return ", "
}

// contradicts asks which of two values of one quantity holds.
func (s *speech) contradicts(g *group, a, b made) {
	q := qWhichHolds.ask(a.st.Value.String(), b.st.Value.String())
	q.Choices, q.Example = []string{withForce(g.force, a.st.String()), withForce(g.force, b.st.String())}, b.st.String()
	s.fail(b.at, q)
}

// notUnderstood asks after what a stretch of the line lacks, or which word of it is not known.
func (s *speech) notUnderstood(g *group, list []item) {
	if s.ask != nil {
		return
	}
	at := 0
	if g.head != nil {
		at = g.head.at
	}
	if len(list) > 0 {
		at = list[0].startAt()
	}
	if s.odd(list) || s.lacks(list, at) {
		return
	}
	values, things := 0, 0
	var lone *item
	var thing *token
	for i := range list {
		it := &list[i]
		switch {
		case it.value():
			values++
			lone = it
		case it.kind == kPart || it.kind == kLoc || it.kind == kFromSide:
			things++
			thing = it.token
		}
	}
	switch {
	case values == 1 && things == 0:
		s.fail(lone.startAt(), s.whatOf(g, lone))
	case values == 0 && things > 0 && (g.force == State || g.force == WhatIf || g.force == Check || g.force == WhyNot):
		s.fail(at, howMuchFor(thing))
	case len(list) == 0:
		s.fail(at, qWhatAbout.ask())
	default:
		if q, _ := s.whichOf(g, list); len(q.Choices) > 0 {
			s.fail(at, q)
			return
		}
		s.fail(at, qMeant.offering("gap 2-1/2, opening at least 24"))
	}
}

// lacks asks for what boards at hand, or a post out of plumb, are short of.
func (s *speech) lacks(list []item, at int) bool {
	values, long, size, have, lean, cash, boards := 0, false, false, false, false, false, false
	for _, it := range list {
		switch {
		case it.value():
			values++
			long = long || it.lim.lo.footer || it.lim.lo.unit == feet || it.lim.lo.unit == metric
			size = size || it.lim.lo.size != ""
			cash = cash || it.lim.lo.unit == money || it.lim.lo.money2
		case it.kind == kHave:
			have = true
		case it.kind == kSell:
			have = have || ours(it.text)
		case it.kind == kLean:
			lean = true
		case it.kind == kPart && (it.key() == "rail" || it.key() == "size"):
			boards = true
		}
	}
	switch {
	case have && values == 2 && long && !size:
		s.fail(at, qWhatSize.ask())
	case lean && values == 1:
		s.fail(at, qOverHeight.ask())
	case cash && !long && (values == 1 && boards || values == 2 && size):
		s.fail(at, qLengthCosts.ask())
	default:
		return false
	}
	return true
}

// odd asks after two numbers in a row, a choice that is left open, or a vague word.
func (s *speech) odd(list []item) bool {
	for i, it := range list {
		if it.value() {
			if i > 0 && list[i-1].value() && it.lim.lo.unit == bare && list[i-1].lim.lo.unit == bare && it.lim.lo.size == "" && list[i-1].lim.lo.size == "" {
				a, b := list[i-1].lim.lo, it.lim.lo
				s.fail(list[i-1].at, qTwoNumbers.ask(figureOf(a), figureOf(b)))
				return true
			}
			continue
		}
		switch it.kind {
		case kVague:
			s.fail(it.at, qVague.ask(quoted(it.text)))
			return true
		case kOr:
			s.fail(it.at, qWhichOfTwo.ask())
			return true
		}
	}
	return false
}

func figureOf(a *amount) string { return solver.Fraction(a.val) }

// quoted puts quotation marks round what was said.
func quoted(s string) string { return `"` + s + `"` }

// whatOf asks which quantity a value that stands alone is for.
func (s *speech) whatOf(g *group, it *item) solver.Question {
	lim := it.lim
	op, ok := lim.relation()
	if !ok || lim.hi != nil || lim.of != nil {
		op = solver.Eq
	}
	q := qFigureOf.ask(figureText(lim.lo))
	for _, quantity := range []solver.Quantity{solver.Gap, solver.Rails, solver.WallHeight, solver.Opening, solver.Span, solver.RailSize, solver.PostSize, solver.StiffenerSize, solver.Spare, solver.Budget} {
		a := aspectIndex[string(quantity)]
		kind := solver.KindOf(quantity)
		if !lim.kinds().has(a) || kind == solver.Percent && lim.lo.unit != percent || kind == solver.Money && lim.lo.unit != money || len(q.Choices) == 4 || lim.hi != nil || lim.of != nil {
			continue
		}
		v, ok := s.value(*lim.lo, kind)
		m := made{st: solver.Of(quantity, op, v), kind: kind, lim: lim}
		if ok && s.doubt(m, *lim.lo, amount{}) == nil {
			q.Choices = append(q.Choices, withForce(g.force, m.st.String()))
		}
	}
	return q
}

func figureText(a *amount) string {
	if a.size != "" {
		return a.size
	}
	if a.unit == percent {
		return a.says(false) + " %"
	}
	return a.says(false)
}

// exampleOf is a line that says something of a part.
func exampleOf(t *token) string {
	switch t.key() {
	case "rail":
		return "6 rails"
	case "bay", "per bay":
		return "no bay over 8 ft"
	case "opening":
		return "opening at least 24"
	case "post", "added post":
		return "one added post"
	case "stiffener":
		return "2 stiffeners"
	case "wall", "wall height":
		return "wall 48 high"
	case "span", "between posts":
		return "span 12 ft"
	}
	return "gap 2-1/2"
}

// badNumber is the question for a number that cannot be taken as it stands.
func badNumber(t *token) solver.Question {
	word := quoted(short(t.text))
	switch t.amt.bad {
	case "time":
		return qTimeOrLength.ask()
	case "date":
		return qDateOrLength.ask()
	case "zero":
		return solver.Question{Text: "What is divided by zero here?", Example: "gap 2-1/2"}
	case "long":
		return qSaidShorter.ask()
	case "size":
		return solver.Question{Text: word + ": which lumber size?", Example: "rails 2x6"}
	case "fused":
		return qWhichLength.ask(word)
	case "list":
		return solver.Question{Text: "One number, or several?", Example: "they sell 8, 10 and 12 footers"}
	case "comma":
		return solver.Question{Text: "Thousands, or a decimal comma?", Example: "wall 1200 mm"}
	case "ambiguous":
		q := qWhichNumber.ask(word)
		q.Example = "gap 2 and 5/8"
		return q
	case "ordinal":
		return solver.Question{Text: word + ": one more, or its number?", Example: "3 rails"}
	}
	return qWhichNumber.ask(word)
}

// short is a text of which no more than 24 runes are shown.
func short(s string) string {
	if r := []rune(s); len(r) > 24 {
		return string(r[:24]) + "…"
	}
	return s
}
