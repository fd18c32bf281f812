package explain

import (
	"strconv"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// blocked says what stands in the way: one message for each conflict, then what would mend it.
func (v *voice) blocked() {
	conflicts := v.a.Conflicts
	if len(conflicts) == 0 {
		for _, rules := range v.a.Because {
			conflicts = append(conflicts, solver.Conflict{Rules: rules, Proven: true})
		}
	}
	for i, c := range conflicts {
		v.conflict(c, i)
	}
	if _, ok := v.fact("not fully reduced"); ok {
		v.p.note("I stopped looking before I had every conflict down to its smallest: there may be shorter ones")
	}
	v.ways()
}

// stillBlocked notes what was said where the same thing stands in its way as before it, and reports whether that is so.
func (v *voice) stillBlocked() bool {
	if _, same := v.fact("still blocked"); !same || len(v.a.Conflicts) == 0 {
		return false
	}
	v.noted()
	v.stillInTheWay()
	return true
}

// blockedAgain says what stands in the way: shortly where the conversation was told it with its sums, and asks on.
func (v *voice) blockedAgain() {
	if _, same := v.fact("still blocked"); !same || len(v.a.Conflicts) == 0 {
		v.blocked()
		return
	}
	v.stillInTheWay()
}

func (v *voice) stillInTheWay() {
	v.p.say("Still in the way: "+v.dispute(v.a.Conflicts[0]).lead(), bad)
	var list []string
	for i, w := range v.a.Ways {
		list = append(list, "`take "+strconv.Itoa(i+1)+"` for "+v.shortWay(w))
	}
	if len(list) > 0 {
		v.p.note(upper(strings.Join(list, "; ")))
	}
}

// conflict says one conflict. Of several, all but the first are told in a sentence, unless everything was asked for.
func (v *voice) conflict(c solver.Conflict, i int) {
	d := v.dispute(c)
	lead := d.lead()
	full := i == 0 || v.a.To.Full
	if i > 0 {
		v.p.add(para{text: sentence(lead), lead: "Then too: "})
	} else {
		v.p.say(lead, bad)
	}
	if full {
		if s := d.sums(); len(s.rows) > 0 {
			v.p.add(s)
		}
		if tip := d.onlyTheMost(); tip != "" && i == 0 {
			v.p.note(tip)
		}
	}
	if v.a.To.Full {
		v.parties(c.Rules)
	}
	if c.Fault != nil {
		v.p.say("The proof of this does not check: that is a fault of this program. Please report it with what you said", warning)
	}
}

// parties lists the rules of a conflict, each with what it is and where it comes from.
func (v *voice) parties(rules []solver.Rule) {
	t := newTable("<it takes all of these", "<from")
	for _, r := range rules {
		t.row(v.rule(r), v.origin(r))
	}
	v.p.add(*t)
}

// origin says who made a rule.
func (v *voice) origin(r solver.Rule) string {
	switch r.Kind {
	case solver.Yours:
		return "you said so"
	case solver.Geometry:
		return "always true"
	case solver.Part:
		return "the part: " + sourced(r.Source)
	}
	return sourced(r.Source)
}

func sourced(source string) string {
	if source == "" {
		return solver.NoSource
	}
	return quoted(source)
}

// rule says one rule as a thing that is wanted: "the brackets need 2 between rails", "a gap of 1-1/2".
func (v *voice) rule(r solver.Rule) string {
	f := read(r.Says)
	switch r.Rule {
	case "bracket clearance":
		if f.name == string(solver.Gap) {
			return "brackets that need " + v.figureOf(f.value) + " between rails"
		}
	case "stock":
		return "boards of " + v.figureOf(f.value) + " on sale"
	case "guard gap", "guard bottom gap", "guard height", "pool barrier height":
		if x, ok := length(f.value); ok {
			return v.demand(r, x, f.name)
		}
	case "off the floor":
		return "the bottom rail " + v.figureOf(f.value) + " or more off the floor"
	}
	return v.phrase(r.Says)
}

// ball says the size of the ball that a guard must stop, with its unit.
func (v *voice) ball(x exact.Rat) string { return mark(withUnit, x.String()) }

// ways lists what would mend it, numbered so that "take 2" works.
func (v *voice) ways() {
	if len(v.a.Ways) == 0 {
		return
	}
	v.p.add(blank{})
	head, hint := "Any one of these mends it", " (`take 1` takes the first)"
	if len(v.a.Ways) == 1 {
		head, hint = "This mends it", " (`take 1` takes it)"
	}
	if !takes[v.a.To.Kind] {
		hint = ""
	}
	v.p.add(para{text: head + hint + ":", ink: bold})
	var aloud []string
	for i, w := range v.a.Ways {
		text := v.way(w)
		v.p.add(para{lead: strconv.Itoa(i+1) + ". ", text: upper(text), ink: bold})
		aloud = append(aloud, v.shortWay(w))
	}
	v.p.hear(sentence("what mends it: " + strings.Join(aloud[:min(2, len(aloud))], "; or ")))
}

// shortWay says one way out for the ear: what to change to, not by how much.
func (v *voice) shortWay(w solver.Way) string {
	var list []string
	for _, c := range w.Changes {
		list = append(list, strings.TrimSuffix(v.change(c), v.by(c)))
	}
	return strings.Join(list, " together with ")
}

// takes are the replies after which "take 1" takes the first way out.
var takes = map[string]bool{"state": true, "what if": true, "why not": true, "command": true}

// way says one way out: its changes, and what they lead to.
func (v *voice) way(w solver.Way) string {
	var list []string
	for _, c := range w.Changes {
		list = append(list, v.change(c))
	}
	s := strings.Join(list, ", together with ")
	if w.Layout != nil && w.Layout.Up != nil && len(w.Changes) == 1 {
		switch read(w.Changes[0].To).name {
		case string(solver.Rails), string(solver.RailSize):
			s += " (gaps " + v.length(w.Layout.Gap) + ")"
		case string(solver.Gap), string(solver.BottomGap):
			s += " (" + plural(w.Layout.Rails, "rail", "rails") + ")"
		}
	}
	if len(w.Changes) == 1 {
		s += v.taped(w.Changes[0])
	}
	return s
}

// taped says what a tape shows of a change that no tape shows: the mark on the safe side, or the nearest where only the very figure mends it.
func (v *voice) taped(c solver.Change) string {
	if c.OnTape != nil {
		return forEye("; " + v.length(*c.OnTape) + " on the tape does it too")
	}
	if c.New.Name.Quantity == "" || solver.KindOf(c.New.Name.Quantity) != solver.Length || c.New.Value.Of != nil || c.New.Op == solver.In {
		return ""
	}
	near, on := v.Near(c.New.Value.Num)
	if on || strings.Contains(c.To, "<") || strings.Contains(c.To, ">") {
		return ""
	}
	return forEye("; no tape shows that, the nearest mark is " + quoted(near))
}

// change says one change: "six rails, one fewer", "a wall of 52-1/2, 2-1/2 more".
func (v *voice) change(c solver.Change) string {
	f, g := read(c.From), read(c.To)
	switch {
	case strings.HasPrefix(c.To, "forget ") || c.To == "":
		return "without " + v.phrase(c.From)
	case strings.HasPrefix(c.To, "set aside "):
		return "the " + strings.TrimPrefix(c.To, "set aside ") + " set aside, where local code allows it"
	case g.name == string(solver.BracketClearance):
		return "brackets that clear at " + v.figureOf(g.value) + v.by(c)
	case g.name == string(solver.Gap) && c.Rule == string(solver.BracketClearance):
		return "brackets that clear at " + v.figureOf(g.value) + v.by(c)
	case g.name == string(solver.BracketEar):
		return "brackets that stand past their rail" + strings.TrimPrefix(v.by(c), ",")
	case g.name == string(solver.Stock):
		return "a board of " + v.figureOf(g.value) + " on sale"
	case c.New.Name.Quantity == solver.Stock && g.op == "+=":
		return v.phrase(c.New.Name.String()+" = "+g.value) + " on sale too"
	case solver.KindOf(solver.Quantity(g.name)) == solver.Size && c.Old.Value.Word != "":
		return v.phrase(c.To) + " in place of " + c.Old.Value.Word
	case c.By == "" || f.name != g.name:
		if f.name == g.name && f.op == "=" && !leans(f.value) {
			return v.phrase(c.To) + " in place of " + v.figureOf(f.value)
		}
		return v.phrase(c.To) + " in place of " + v.phrase(c.From)
	}
	return v.phrase(c.To) + v.by(c)
}

// by says how much a change takes: ", 2-1/2 more", ", one fewer".
func (v *voice) by(c solver.Change) string {
	r, err := exact.Parse(c.By)
	if err != nil || r.Sign() == 0 {
		return ""
	}
	up := r.Sign() > 0
	if old, now, ok := figuresOf(c); ok {
		up = old.Less(now)
	}
	if solver.KindOf(c.New.Name.Quantity) == solver.Money {
		if up {
			return ", " + money(r.Abs()) + " more"
		}
		return ", " + money(r.Abs()) + " less"
	}
	if n, whole := r.Abs().Int64(); whole && solver.KindOf(c.New.Name.Quantity) == solver.Count {
		if up {
			return ", " + count(int(n)) + " more"
		}
		return ", " + count(int(n)) + " fewer"
	}
	if up {
		return ", " + v.length(r.Abs()) + " more"
	}
	return ", " + v.length(r.Abs()) + " less"
}

// figuresOf returns the figures that a change goes from and to; of a range the end that moved.
func figuresOf(c solver.Change) (old, now exact.Rat, ok bool) {
	if c.New.Name.Quantity == "" {
		return old, now, false
	}
	old, now = c.Old.Value.Num, c.New.Value.Num
	if c.Old.Op == solver.In && c.New.Op == solver.In && old.Eq(now) {
		old, now = c.Old.Upper.Num, c.New.Upper.Num
	}
	return old, now, !old.Eq(now)
}
