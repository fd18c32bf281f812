package main

import (
	"slices"

	"saywright/explain/draw"
	"saywright/solver"
)

// shown is what an answer shows beside its words: the wall where it was asked for, before and after where it was asked
// of a what-if, and where it is blocked the place where it clashes. "" where nothing can be drawn.
func (r *round) shown(p *solver.Answer) string {
	show := r.talk.show()
	o := draw.Options{Width: show.Width, ASCII: show.ASCII, Color: show.Color, Metric: p.Metric}
	if r.spoken != nil {
		o.Mark = r.spoken.String()
	}
	switch {
	case p.To.Kind == "ask" && p.To.Topic == "drawing" && p.Verdict == solver.Blocked && len(p.Conflicts) > 0:
		return draw.Clash(p, p.Conflicts[0], o) // asked for, so it is shown again
	case p.To.Kind == "ask" && p.To.Topic == "drawing" && r.on != nil:
		before := r.talk.base(r.talk.now.book(r.on.wall))
		return draw.SideBySide(before, p, o)
	case p.To.Kind == "ask" && p.To.Topic == "drawing":
		return draw.Elevation(p, o)
	case slices.ContainsFunc(p.Facts, func(f solver.Fact) bool { return f.Key == "still blocked" }):
		return "" // it was shown when it was new
	case p.Verdict == solver.Blocked && len(p.Conflicts) > 0 && clashing[p.To.Kind]:
		return draw.Clash(p, p.Conflicts[0], o)
	}
	return ""
}

// clashing are the replies that lead with a clash.
var clashing = map[string]bool{"state": true, "what if": true, "why not": true}
