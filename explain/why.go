package explain

import (
	"slices"

	"saywright/solver"
)

// why answers where a figure or a table comes from: in a sentence with its sums, or all of it.
func (v *voice) why() {
	to := v.a.To
	if to.Topic != "" && to.Topic != "that" && to.Name == nil {
		v.topic(to.Topic)
		v.sources()
		return
	}
	switch {
	case to.Name != nil:
		if v.a.Verdict == solver.Blocked {
			v.blocked()
		} else {
			v.notSoMany()
			v.figures()
		}
		v.derivation()
	case v.a.Verdict == solver.Blocked:
		v.blocked()
	case v.a.Layout != nil:
		v.fits()
	default:
		v.open()
	}
	v.sources()
	v.assumed()
	v.cautions()
}

// derivation lays the sums of one figure; rail counts are shown beside their neighbors.
func (v *voice) derivation() {
	var list []solver.Work
	for _, w := range v.a.Work {
		if !toldInWords[w.Note] && w.Note != "clash" {
			list = append(list, w)
		}
	}
	if v.a.Verdict != solver.Blocked {
		v.p.lay(v.work(list))
	}
	v.neighbors()
	v.below()
	if l := v.a.Layout; l != nil && l.Up != nil {
		if name := v.a.To.Name; name != nil && aspects[name.Quantity] == aboutUp {
			v.onTape(l.Up)
		}
	}
}

// sources tells, when all of it was asked for, where each figure comes from that the sums lean on.
func (v *voice) sources() {
	if !v.a.To.Full || v.a.Verdict == solver.Blocked {
		return
	}
	t := newTable("<what it leans on", "<from")
	var seen []string
	for _, f := range v.facts("source") {
		if len(f.Names) < 3 || slices.Contains(seen, f.Names[0]) || solver.RuleKind(f.Names[1]) == solver.Geometry {
			continue
		}
		seen = append(seen, f.Names[0])
		t.row(v.granted(f.Names[0]), v.origin(solver.Rule{Kind: solver.RuleKind(f.Names[1]), Source: f.Names[2]}))
	}
	for _, w := range v.a.Work {
		if w.From != "" && published(w.From) && !isRuleName(w.From) && !slices.Contains(seen, w.From) {
			seen = append(seen, w.From)
			t.row(remarks[w.Note], quoted(w.From))
		}
	}
	if len(t.rows) > 0 {
		v.p.add(*t)
	}
}

// isRuleName reports whether what a line says of its origin is a name of the wall, not a source.
func isRuleName(s string) bool {
	_, q, _ := thingOf(s)
	return q != "" || len(s) < 12
}
