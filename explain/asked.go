package explain

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// asked answers a question: a quantity's figure, or a table.
func (v *voice) asked() {
	if v.a.To.Name != nil && v.a.To.Topic == "" {
		v.figures()
		v.narrowest()
		v.offTheWish(aspects[v.a.To.Name.Quantity] == aboutUp, aspects[v.a.To.Name.Quantity] == aboutAlong)
		switch {
		case v.a.Verdict == solver.Blocked:
			v.blockedAgain()
		default:
			v.derivation()
		}
		v.cautions()
		return
	}
	v.topic(v.a.To.Topic)
}

// topic answers a question that has a name of its own.
func (v *voice) topic(topic string) {
	if v.a.Verdict == solver.Blocked && !standsAlone[topic] {
		v.blockedAgain()
		return
	}
	switch topic {
	case "options":
		v.options()
	case "marks":
		v.marks()
	case "posts":
		v.postPlaces()
	case "cuts":
		v.cuts()
	case "spacer":
		v.spacer()
	case "story pole":
		v.storyPole()
	case "hardware":
		v.hardware()
	case "shopping", "cost", "plan":
		v.shopping()
	case "finish":
		v.finish()
	case "steps":
		v.steps()
	case "cautions":
		v.cautionsAsked()
	case "anchors":
		v.anchors()
	case "shrinkage":
		v.shrinkage()
	case "strength":
		v.strength()
	case "passage":
		v.passage()
	case "guard":
		v.ballPasses()
	case "permit":
		v.permitAsked()
	case "drawing":
		v.drawingLead()
	default:
		v.stated()
	}
}

// noTable answers where there is no table to show: with the question that comes first, or with what stands.
func (v *voice) noTable() {
	if v.a.Ask == nil {
		v.stated()
	}
}

// standsAlone are the topics that can be answered of a wall that is blocked, or of none.
var standsAlone = map[string]bool{"cautions": true, "shrinkage": true, "shopping": true, "cost": true, "plan": true,
	"strength": true, "permit": true}

// figures says the value of a quantity: one figure, or one for each part, or a word.
func (v *voice) figures() {
	for _, f := range v.facts("value word") {
		if len(f.Names) > 1 {
			v.p.say(v.wordValue(f.Names[0], f.Names[1]), good)
		}
	}
	var parts []string
	for _, f := range v.facts("value") {
		if s := v.figure(f); s != "" {
			parts = append(parts, s)
		}
	}
	v.leftOpen()
	switch falls := v.fallsUnder(); {
	case falls != "":
		v.p.say(falls, good) // the one figure is that at the left end post, where there may be no rail
	case len(parts) > 1:
		v.p.say(and(parts), good)
	case len(parts) == 1:
		v.p.say(parts[0], good)
	}
	for _, f := range v.facts("not known") {
		if len(f.Names) > 0 && v.a.Verdict != solver.Blocked {
			v.p.say("I can't tell "+v.the(f.Names[0])+" from what is known", noInk)
		}
	}
}

// leftOpen tells that what was said of the quantity is left out, so that it may be solved for, and which counts are kept.
func (v *voice) leftOpen() {
	f, ok := v.fact("left open")
	if !ok || len(f.Names) == 0 {
		return
	}
	text := "With what you said of " + v.the(f.Names[0]) + " left open"
	for i, n := range f.Nums {
		if i+1 < len(f.Names) {
			t := things[solver.Quantity(f.Names[i+1])]
			text += " and " + plural(ints([]exact.Rat{n})[0], t.one, t.many)
		}
	}
	v.p.say(text+":", noInk)
}

// figure says one value: "the gap is 2-1/2", "six rails".
func (v *voice) figure(f solver.Fact) string {
	if len(f.Names) == 0 || len(f.Nums) == 0 {
		return ""
	}
	name := f.Names[0]
	t, q, part := thingOf(name)
	if t.one != "" && f.Nums[0].IsInt() {
		n := ints(f.Nums[:1])[0]
		if all, ok := v.fact("in all"); ok && len(all.Nums) > 0 {
			return plural(n, t.one, t.many) + " in each bay, " + count(ints(all.Nums)[0]) + " in all"
		}
		return plural(n, t.one, t.many) + inPart(part)
	}
	value := v.both(f.Nums[0])
	switch kind := solver.KindOf(q); {
	case kind == solver.Money:
		value = money(f.Nums[0])
	case kind == solver.Percent:
		value = number(f.Nums[0])
	case q != "" && !lengthLike(q):
		value = number(f.Nums[0])
	}
	if v.a.Layout != nil && v.a.Layout.Up != nil && q == solver.Gap && v.uneven(v.a.Layout.Up) {
		return "the gaps are " + v.gapsOf(v.a.Layout.Gaps) + " from the bottom up"
	}
	return v.the(name) + isOrAre(v.the(name)) + value
}

func isOrAre(thing string) string {
	if strings.HasSuffix(thing, "s") && !strings.HasSuffix(thing, "'s") && !strings.HasSuffix(thing, "ss") {
		return " are "
	}
	return " is "
}

func (v *voice) wordValue(name, word string) string {
	_, q, part := thingOf(name)
	if q == solver.OpeningSide {
		if word == "between" {
			return v.theOpening(part) + " is between two bays"
		}
		return v.theOpening(part) + " is " + sideWords(word)
	}
	if t, _, _ := thingOf(name); solver.KindOf(q) == solver.Size {
		return "the " + strings.TrimPrefix(t.a, "a ") + isOrAre(t.a) + size(word)
	}
	return v.the(name) + " is " + quoted(word)
}

// postPlaces says where each added post goes, from both end posts.
func (v *voice) postPlaces() {
	list := v.facts("post place")
	if v.a.Layout == nil || v.a.Layout.Along == nil {
		v.open()
		return
	}
	if len(list) == 0 {
		v.p.say("No added post is needed", good)
		return
	}
	v.alongLead(v.a.Layout.Along)
	if len(list) > 1 {
		t := newTable("post", "from left", "from right")
		for _, f := range list {
			t.row(number(f.Nums[0]), v.about(f.Nums[1]), v.about(f.Nums[2]))
		}
		v.p.add(*t)
	} else {
		v.p.note("From the right post it is " + v.both(list[0].Nums[2]) + ", face to face")
	}
	v.p.lay(v.work(v.a.Work))
	v.assumed()
	v.cautions()
}

// drawingLead says the layout in a sentence above its picture.
func (v *voice) drawingLead() {
	l := v.a.Layout
	switch {
	case l == nil:
		v.open()
	default:
		if l.Up != nil {
			v.upLead(l.Up)
		}
		if l.Along != nil {
			v.postsLead(l.Along)
		}
	}
}

// drifted answers what happens when each rail is a little off.
func (v *voice) drifted() {
	f, ok := v.fact("tolerance")
	if !ok || len(f.Nums) == 0 {
		v.noTable()
		return
	}
	if w, ok := v.line("drift"); ok {
		v.p.say("With each rail "+v.length(f.Nums[0])+" off the same way, and each set from the one below, the top ends up to "+
			v.length(w.Expr.Value)+" off", noInk)
		v.p.say("Marked from the floor, no rail is off by more than its own "+v.length(f.Nums[0]), noInk)
	}
	v.p.lay(v.work(v.a.Work))
}

// shrinkage says what drying does to a board that was sawn green, and to the gaps.
func (v *voice) shrinkage() {
	if f, ok := v.fact("no green size"); ok && len(f.Names) > 0 {
		v.p.say("No green size is published for "+size(f.Names[0])+", so I can't tell what it loses", noInk)
		return
	}
	dried, ok := v.line("dried face")
	if !ok {
		v.open()
		return
	}
	v.p.say("A rail sawn green dries to about "+v.length(v.Nearest(dried.Expr.Value))+" on the face", noInk)
	if w, ok := v.line("gap grows"); ok {
		v.p.say("Each gap opens to about "+v.length(v.Nearest(w.Expr.Value)), noInk)
	}
	v.p.lay(v.work(v.a.Work))
	if w, ok := v.line("green loses"); ok && w.From != "" {
		v.p.note("Source: " + quoted(w.From))
	}
}
