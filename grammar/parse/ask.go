package parse

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/solver"
)

// ambiguous asks which of several readings was meant.
func (s *Speech) ambiguous(g *group, part []Item, list []reading) {
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

func sep(k act.Kind) string {
	if k == act.State {
		return "; "
	}
	return ", "
}

// contradicts asks which of two values of one quantity holds.
func (s *Speech) contradicts(g *group, a, b made) {
	q := askback.WhichHolds.Ask(a.st.Value.String(), b.st.Value.String())
	q.Choices, q.Example = []string{withForce(g.force, a.st.String()), withForce(g.force, b.st.String())}, b.st.String()
	s.fail(b.at, q)
}

// notUnderstood asks after what a stretch of the line lacks, or which word of it is not known.
func (s *Speech) notUnderstood(g *group, list []Item) {
	if s.Ask != nil {
		return
	}
	at := 0
	if g.head != nil {
		at = g.head.At
	}
	if len(list) > 0 {
		at = list[0].startAt()
	}
	if s.odd(list) || s.lacks(list, at) {
		return
	}
	values, things := 0, 0
	var lone *Item
	var thing *lex.Token
	for i := range list {
		it := &list[i]
		switch {
		case it.value():
			values++
			lone = it
		case it.Kind == lexicon.Part || it.Kind == lexicon.Loc || it.Kind == lexicon.FromSide:
			things++
			thing = it.Token
		}
	}
	switch {
	case values == 1 && things == 0:
		s.fail(lone.startAt(), s.whatOf(g, lone))
	case values == 0 && things > 0 && (g.force == act.State || g.force == act.WhatIf || g.force == act.Check || g.force == act.WhyNot):
		s.fail(at, howMuchFor(thing))
	case len(list) == 0:
		s.fail(at, askback.WhatAbout.Ask())
	default:
		if q, _ := s.whichOf(g, list); len(q.Choices) > 0 {
			s.fail(at, q)
			return
		}
		s.fail(at, askback.Meant.Offering("gap 2-1/2, opening at least 24"))
	}
}

// lacks asks for what boards at hand, or a post out of plumb, are short of.
func (s *Speech) lacks(list []Item, at int) bool {
	values, long, size, have, lean, cash, boards := 0, false, false, false, false, false, false
	for _, it := range list {
		switch {
		case it.value():
			values++
			long = long || it.lim.lo.Footer || it.lim.lo.Unit == measure.Feet || it.lim.lo.Unit == measure.Metric
			size = size || it.lim.lo.Size != ""
			cash = cash || it.lim.lo.Unit == measure.Money || it.lim.lo.Money2
		case it.Kind == lexicon.Have:
			have = true
		case it.Kind == lexicon.Sell:
			have = have || ours(it.Text)
		case it.Kind == lexicon.Lean:
			lean = true
		case it.Kind == lexicon.Part && (it.Key() == "rail" || it.Key() == "size"):
			boards = true
		}
	}
	switch {
	case have && values == 2 && long && !size:
		s.fail(at, askback.WhatSize.Ask())
	case lean && values == 1:
		s.fail(at, askback.OverHeight.Ask())
	case cash && !long && (values == 1 && boards || values == 2 && size):
		s.fail(at, askback.LengthCosts.Ask())
	default:
		return false
	}
	return true
}

// odd asks after two numbers in a row, a choice that is left open, or a vague word.
func (s *Speech) odd(list []Item) bool {
	for i, it := range list {
		if it.value() {
			if i > 0 && list[i-1].value() && it.lim.lo.Unit == measure.Bare && list[i-1].lim.lo.Unit == measure.Bare && it.lim.lo.Size == "" && list[i-1].lim.lo.Size == "" {
				a, b := list[i-1].lim.lo, it.lim.lo
				s.fail(list[i-1].At, askback.TwoNumbers.Ask(figureOf(a), figureOf(b)))
				return true
			}
			continue
		}
		switch it.Kind {
		case lexicon.Vague:
			s.fail(it.At, askback.Vague.Ask(Quoted(it.Text)))
			return true
		case lexicon.Or:
			s.fail(it.At, askback.WhichOfTwo.Ask())
			return true
		}
	}
	return false
}

func figureOf(a *measure.Amount) string { return solver.Fraction(a.Val) }

// Quoted puts quotation marks round what was said.
func Quoted(s string) string { return `"` + s + `"` }

// whatOf asks which quantity a value that stands alone is for.
func (s *Speech) whatOf(g *group, it *Item) solver.Question {
	lim := it.lim
	op, ok := lim.relation()
	if !ok || lim.hi != nil || lim.of != nil {
		op = solver.Eq
	}
	q := askback.FigureOf.Ask(figureText(lim.lo))
	for _, quantity := range []solver.Quantity{solver.Gap, solver.Rails, solver.WallHeight, solver.Opening, solver.Span, solver.RailSize, solver.PostSize, solver.StiffenerSize, solver.Spare, solver.Budget} {
		a := lexicon.AspectIndex[string(quantity)]
		kind := solver.KindOf(quantity)
		if !lim.kinds().Has(a) || kind == solver.Percent && lim.lo.Unit != measure.Percent || kind == solver.Money && lim.lo.Unit != measure.Money || len(q.Choices) == 4 || lim.hi != nil || lim.of != nil {
			continue
		}
		v, ok := s.value(*lim.lo, kind)
		m := made{st: solver.Of(quantity, op, v), kind: kind, lim: lim}
		if ok && s.doubt(m, *lim.lo, measure.Amount{}) == nil {
			q.Choices = append(q.Choices, withForce(g.force, m.st.String()))
		}
	}
	return q
}

func figureText(a *measure.Amount) string {
	if a.Size != "" {
		return a.Size
	}
	if a.Unit == measure.Percent {
		return a.Says(false) + " %"
	}
	return a.Says(false)
}

// exampleOf is a line that says something of a part.
func exampleOf(t *lex.Token) string {
	switch t.Key() {
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

// BadNumber is the question for a number that cannot be taken as it stands.
func BadNumber(t *lex.Token) solver.Question {
	word := Quoted(Short(t.Text))
	switch t.Amt.Bad {
	case "time":
		return askback.TimeOrLength.Ask()
	case "date":
		return askback.DateOrLength.Ask()
	case "zero":
		return solver.Question{Text: "What is divided by zero here?", Example: "gap 2-1/2"}
	case "long":
		return askback.SaidShorter.Ask()
	case "size":
		return solver.Question{Text: word + ": which lumber size?", Example: "rails 2x6"}
	case "fused":
		return askback.WhichLength.Ask(word)
	case "list":
		return solver.Question{Text: "One number, or several?", Example: "they sell 8, 10 and 12 footers"}
	case "comma":
		return solver.Question{Text: "Thousands, or a decimal comma?", Example: "wall 1200 mm"}
	case "ambiguous":
		q := askback.WhichNumber.Ask(word)
		q.Example = "gap 2 and 5/8"
		return q
	case "ordinal":
		return solver.Question{Text: word + ": one more, or its number?", Example: "3 rails"}
	}
	return askback.WhichNumber.Ask(word)
}

// Short is a text of which no more than 24 runes are shown.
func Short(s string) string {
	if r := []rune(s); len(r) > 24 {
		return string(r[:24]) + "…"
	}
	return s
}

// howMuchFor asks for the figure of a part that was named; an opening and a post may also be moved by it.
func howMuchFor(thing *lex.Token) solver.Question {
	k := askback.HowMuchFor
	if part := thing.Key(); strings.HasPrefix(part, "opening") || strings.HasPrefix(part, "post") {
		k = askback.HowMuchOrFar
	}
	q := k.Ask(thing.Key())
	q.Example = exampleOf(thing)
	return q
}

// allOfThem reports whether words before a part take in all of it: "all my pieces".
func allOfThem(before string) bool {
	return slices.ContainsFunc(phrase.Turn(before), func(w string) bool { return w == "all" || w == "every" || w == "each" || w == "both" })
}
