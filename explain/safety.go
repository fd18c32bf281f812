package explain

import (
	"saywright/solver"
	"saywright/solver/exact"
)

// Whoever asks whether it is safe hears what is known, what is not worked out, and who decides; never that it is safe.

// aboutSafety are the topics that are answered of any wall and of none.
var aboutSafety = map[string]bool{"strength": true, "passage": true, "guard": true, "permit": true, "cautions": true}

// notStrength is why nothing here is called safe.
const notStrength = "I work out sizes, not what they carry"

// strength answers whether it is strong enough.
func (v *voice) strength() {
	if _, ok := v.fact("climbing"); ok {
		v.p.say("Yes: rails climb like a ladder. Whether they hold who climbs I can't tell", warning)
	} else {
		v.p.say("I can't tell", noInk)
	}
	v.p.say(notStrength, noInk)
	if f, ok := v.fact("posts"); ok && len(f.Nums) > 0 {
		if f.Nums[0].Eq(exact.Int(1)) {
			v.p.say("The weak spot is the added post, held only at its foot: tie its top to the structure, or get a base made and rated for it", warning)
		} else {
			v.p.say("The weak spots are the added posts, held only at their feet: tie their tops to the structure, or get bases made and rated for it", warning)
		}
	}
	if v.first("what a guard carries") { // who asks again hears the answer, not all of it again
		v.p.note("The brackets hold by screws in the rails' ends, and end grain holds screws poorly")
		if f, ok := v.fact("loads"); ok && len(f.Nums) > 4 {
			push, square := number(f.Nums[0])+" pounds", number(f.Nums[2])+" pounds on any square foot"
			if v.Metric {
				push, square = number(f.Nums[1])+" newtons", number(f.Nums[3])+" newtons on any square of "+v.length(f.Nums[4])
			}
			v.p.note("To compare: a guard has to stand a push of " + push + " anywhere along its top, and " + square + " of its boards. I check neither" + v.sourceOf(f))
		}
	}
	v.p.note("A licensed professional can tell; local code decides")
}

func (v *voice) sourceOf(f solver.Fact) string {
	if len(f.Names) == 0 {
		return ""
	}
	return forEye(" (" + quoted(f.Names[0]) + ")")
}

// passage answers whether wheels get through an opening.
func (v *voice) passage() {
	w, ok := v.fact("widths")
	if !ok || len(w.Nums) < 6 {
		v.open()
		return
	}
	list := v.facts("passes")
	for _, f := range list {
		if len(f.Nums) > 4 {
			v.passes(f, w)
		}
	}
	if len(list) == 0 {
		v.p.say("No walk-through is worked out yet; a barrow or a walking frame wants "+v.thumb(w.Nums[2]), noInk)
	}
	v.p.lay(v.work(v.a.Work))
	v.p.note("For a wheelchair: an accessible opening is " + v.length(w.Nums[3]) + " clear or more, " + v.length(w.Nums[4]) + " where it is more than " + v.length(w.Nums[5]) +
		" deep" + v.sourceOf(w))
	v.p.note("Barrows and chairs differ: measure yours with hands on it. I don't check the floor or the turn into it; local code decides")
}

func (v *voice) passes(f, w solver.Fact) {
	opening := "The opening"
	if !f.Nums[4].Eq(exact.Int(1)) {
		opening = "Opening " + number(f.Nums[0])
	}
	text := opening + " is " + v.downTo(f.Nums[1])
	if f.Nums[3].Sign() != 0 {
		text = opening + " is " + v.downTo(f.Nums[2]) + " at its narrowest, " + v.about(f.Nums[3]) + " up, where a post leans into it"
	}
	least := f.Nums[2]
	switch {
	case least.Less(w.Nums[0]):
		text += ": too narrow to walk through, which takes " + v.thumb(w.Nums[0])
	case least.Less(w.Nums[1]):
		text += ": a squeeze to walk through, and a barrow or a walking frame wants " + v.thumb(w.Nums[2])
	case least.Less(w.Nums[2]):
		text += ": tight for a barrow or a walking frame; they want " + v.thumb(w.Nums[2])
	default:
		text += ", and a barrow or a walking frame wants " + v.thumb(w.Nums[2])
	}
	v.p.say(text, noInk)
}

// ballPasses answers whether a child gets through.
func (v *voice) ballPasses() {
	if _, ok := v.fact("climbing"); ok {
		v.p.say("Yes: rails climb like a ladder, and no gap stops that", warning)
	}
	if f, ok := v.fact("ball"); ok && len(f.Nums) > 2 {
		gap, under, ball := f.Nums[0], f.Nums[1], f.Nums[2]
		through, stays := gap.Sign() > 0 && !gap.Less(ball), under.Less(ball)
		the := "A " + v.ball(ball) + " ball, the test for a small child, "
		switch {
		case through && !stays:
			v.p.say(the+"goes through the gaps and underneath", warning)
		case through:
			v.p.say(the+"goes through the gaps", warning)
		case !stays:
			v.p.say(the+"goes through underneath", warning)
		default:
			v.p.say(the+"does not go through, nor underneath", noInk)
		}
	} else {
		v.p.say("I can't tell before the gaps are worked out", noInk)
	}
	if _, ok := v.fact("climbing"); !ok {
		v.p.say("Rails climb like a ladder, so a ball that stays out is no promise for a child", noInk)
	}
	if f, ok := v.fact("tall"); ok && len(f.Nums) > 1 && f.Nums[0].Less(f.Nums[1]) {
		v.p.say("The wall is "+v.about(f.Nums[0])+" high, and a guard is "+v.length(f.Nums[1])+" or more", warning)
	}
	v.p.lay(v.work(v.a.Work))
	if f, ok := v.fact("openings"); ok && len(f.Nums) > 0 {
		v.p.say("The walk-through stops nobody: to keep a child in it wants a gate", noInk)
	}
	v.p.note("I don't check what the rails carry")
	v.cautions()
}

// permitAsked answers whether a permit is needed.
func (v *voice) permitAsked() {
	v.p.say("I can't tell, and local code decides", noInk)
	v.p.say("Ask your building department before you start", noInk)
	var known []string
	if f, ok := v.fact("tall"); ok && len(f.Nums) > 0 {
		known = append(known, "the wall is "+v.about(f.Nums[0])+" high")
	}
	if f, ok := v.fact("dropped"); ok && len(f.Nums) > 1 {
		drops := "the ground beyond drops " + v.length(f.Nums[0])
		if f.Nums[1].Less(f.Nums[0]) {
			drops += " (that makes it a guard)"
		}
		known = append(known, drops)
	}
	if f, ok := v.fact("not told"); ok {
		for _, q := range f.Names {
			known = append(known, v.notTold(q, f.Nums))
		}
	}
	if len(known) > 0 {
		v.p.note("What bears on it, as far as I know: " + and(known))
	}
	v.cautions()
}

// notTold says of the drop or a pool that nothing was told of it.
func (v *voice) notTold(q string, nums []exact.Rat) string {
	switch {
	case q == string(solver.Pool):
		return "no pool was told"
	case len(nums) > 0:
		return "how far the ground beyond drops was not told (more than " + v.length(nums[0]) + " makes it a guard)"
	}
	return "how far the ground beyond drops was not told"
}
