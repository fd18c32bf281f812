package explain

import (
	"strconv"
	"strings"

	"saywright/solver"
)

// blocked says what stands in the way: one message for each conflict, then what would mend it.
func (v *voice) blocked() {
	for i, c := range v.a.Conflicts {
		if i > 0 {
			v.p.add(blank{})
		}
		v.conflict(c, i)
	}
	if len(v.a.Conflicts) == 0 {
		for i, rules := range v.a.Because {
			v.conflict(solver.Conflict{Rules: rules, Proven: true}, i)
		}
	}
	v.ways()
}

func (v *voice) conflict(c solver.Conflict, i int) {
	lead := v.clash(c)
	if i > 0 {
		lead = "Then too: " + lead
	}
	v.p.say(lead, bad)
	if s := v.conflictSums(c); len(s.rows) > 0 {
		v.p.add(s)
	}
	if c.Fault != nil {
		v.p.say("The proof of this does not check, which is a fault of this program: please report it with what you said", warning)
	}
}

// conflictSums lays the sums of a conflict; the line that cannot be goes on from the sum that it speaks of.
func (v *voice) conflictSums(c solver.Conflict) sums {
	s := v.work(c.Work)
	return s
}

// clash names both sides of a conflict.
func (v *voice) clash(c solver.Conflict) string {
	var list []string
	for _, r := range c.Rules {
		if r.Kind == solver.Geometry {
			continue
		}
		list = append(list, v.rule(r))
	}
	if len(list) == 0 {
		return "That can't be"
	}
	if len(list) == 1 {
		return "This can't be: " + list[0]
	}
	return "These can't all hold: " + and(list)
}

// rule says one rule as a fact of its own: "the brackets need 2 between rails", "a gap of 1-1/2".
func (v *voice) rule(r solver.Rule) string {
	f := read(r.Says)
	switch r.Rule {
	case "bracket clearance":
		if f.name == string(solver.Gap) {
			return "brackets that need " + v.figureOf(f.value) + " between rails"
		}
	case "stock":
		return "the boards on sale"
	case "guard gap", "guard bottom gap":
		return "a guard, which lets no " + v.figureOf(f.value) + " ball through"
	case "guard height":
		return "a guard, " + v.figureOf(f.value) + " high or more"
	case "off the floor":
		return "the bottom rail " + v.figureOf(f.value) + " or more off the floor"
	}
	return v.phrase(r.Says)
}

// ways lists what would mend it, numbered so that "take 2" works.
func (v *voice) ways() {
	if len(v.a.Ways) == 0 {
		return
	}
	v.p.add(blank{})
	if len(v.a.Ways) == 1 {
		v.p.say("This mends it", bold)
	} else {
		v.p.say("Any one of these mends it", bold)
	}
	for i, w := range v.a.Ways {
		var list []string
		for _, c := range w.Changes {
			list = append(list, v.change(c))
		}
		text := and(list)
		v.p.add(para{lead: strconv.Itoa(i+1) + ". ", text: text, ink: bold})
	}
	v.p.add(para{text: "`take 1` does it."})
}

// change says one change: "a wall of 52-1/2 in place of 50".
func (v *voice) change(c solver.Change) string {
	if strings.TrimSpace(c.To) == "" {
		return "without " + v.phrase(c.From)
	}
	f, g := read(c.From), read(c.To)
	s := v.phrase(c.To)
	if f.name == g.name && f.op == g.op && !leans(f.value) {
		s += " in place of " + v.figureOf(f.value)
	} else if c.From != "" {
		s += " in place of " + v.phrase(c.From)
	}
	return s
}
