package main

import (
	"maps"
	"slices"
	"strings"

	"saywright/explain"
	"saywright/grammar"
	"saywright/solver"
)

// answer puts together what the acts of a line answer. Each part is worded by itself; the verdict is that of the last.
func (r *round) answer(read grammar.Reading) *solver.Answer {
	whole := &solver.Answer{Said: r.line, Heard: heard(read.Acts), Facts: taken(read)}
	if r.ctx.Err() != nil {
		return whole
	}
	metric := r.talk.now.inMillimeters()
	var text []string
	show := r.talk.show()
	r.talk.before = maps.Clone(r.talk.before)
	if r.talk.before == nil {
		r.talk.before = map[string]bool{}
	}
	show.Before = r.talk.before
	for i, p := range r.parts {
		p.Said, p.Heard, p.Metric = whole.Said, nil, shownMetric(p, metric)
		if asksAgain(p, r.parts[i+1:]) {
			p.Ask = nil
		}
		if i == 0 && r.lead != nil {
			p.Facts = append(slices.Clip(p.Facts), *r.lead)
		}
		if i == 0 {
			p.Heard, p.Facts = whole.Heard, append(whole.Facts, p.Facts...)
		}
		explain.Say(p, show)
		if picture := r.shown(p); picture != "" {
			p.Text += "\n\n" + strings.TrimRight(picture, "\n")
		}
		if !blockedAlready(p, text) {
			text = append(text, p.Text)
		}
		join(whole, p)
	}
	whole.Text = strings.Join(text, "\n\n")
	return whole
}

// shownMetric reports whether an answer is shown in millimeters: as it was asked for, else as the person works.
func shownMetric(p *solver.Answer, works bool) bool {
	if p.To.Units != "" {
		return p.To.Units == "metric"
	}
	return p.Metric || works
}

// blockedAlready reports whether a question is answered by no more than what blocks it, and an earlier part of the line told that.
func blockedAlready(p *solver.Answer, earlier []string) bool {
	lead, _, _ := strings.Cut(p.Text, "\n")
	return p.Verdict == solver.Blocked && p.To.Kind == "ask" && lead != "" && slices.ContainsFunc(earlier, func(t string) bool {
		return strings.HasPrefix(t, lead+"\n")
	})
}

// asksAgain reports whether a later part of the same line asks what p asks: it is asked once, at the end.
func asksAgain(p *solver.Answer, later []*solver.Answer) bool {
	return p.Ask != nil && slices.ContainsFunc(later, func(o *solver.Answer) bool {
		return o.Ask != nil && o.Ask.Key == p.Ask.Key && o.Ask.Text == p.Ask.Text
	})
}

// join adds a part to the whole. What the part has takes the place of what an earlier part had of the same kind;
// sums, cautions and what is assumed add up.
func join(whole, p *solver.Answer) {
	whole.Verdict, whole.To, whole.Metric, whole.Tape = p.Verdict, p.To, p.Metric, p.Tape
	if p.Spoken != "" {
		whole.Spoken = p.Spoken
	}
	if p.Ask != nil {
		whole.Ask = p.Ask
	}
	if p.Layout != nil || len(p.Because) > 0 {
		whole.Layout, whole.Options, whole.Because, whole.Ways, whole.Conflicts = p.Layout, p.Options, p.Because, p.Ways, p.Conflicts
	}
	if p.Options != nil {
		whole.Options = p.Options
	}
	if p.Cost != nil {
		whole.Cost = p.Cost
	}
	later(&whole.Change, p.Change)
	later(&whole.Check, p.Check)
	later(&whole.Cuts, p.Cuts)
	later(&whole.Plan, p.Plan)
	later(&whole.Shopping, p.Shopping)
	later(&whole.Steps, p.Steps)
	later(&whole.Marks, p.Marks)
	whole.Replaced = append(whole.Replaced, p.Replaced...)
	for _, w := range p.Work {
		if !slices.ContainsFunc(whole.Work, func(o solver.Work) bool { return o.Of == w.Of && o.Says == w.Says }) {
			whole.Work = append(whole.Work, w)
		}
	}
	for _, form := range p.Assumed {
		if !slices.Contains(whole.Assumed, form) {
			whole.Assumed = append(whole.Assumed, form)
		}
	}
	for _, c := range p.Cautions {
		if !slices.ContainsFunc(whole.Cautions, func(o solver.Caution) bool { return o.Text == c.Text }) {
			whole.Cautions = append(whole.Cautions, c)
		}
	}
}

func later[T any](was *[]T, now []T) {
	if len(now) > 0 {
		*was = now
	}
}
