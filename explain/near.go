package explain

import (
	"saywright/solver"
	"saywright/solver/exact"
)

// offTheWish tells what the layout is off by where a figure was said with "about", of the parts told: once, while it stays so.
func (v *voice) offTheWish(up, along bool) {
	for _, f := range v.facts("off the wish") {
		if len(f.Names) == 0 || len(f.Nums) < 3 {
			continue
		}
		_, q, _ := thingOf(f.Names[0])
		if a := aspects[q]; a == aboutUp && !up || a == aboutAlong && !along {
			continue
		}
		text := v.missedBy(f.Names[0], f.Nums)
		if !v.first(text) {
			continue
		}
		v.p.say(text, noInk)
		if near, ok := v.fact("nearer but"); ok && q == solver.Gap && len(near.Nums) > 2 {
			v.p.note(v.nearerBut(near.Nums))
		}
	}
}

// missedBy says it of one quantity: "The gap is 1/2 less than the 3 you had in mind", "That is one rail fewer than the seven you had in mind".
func (v *voice) missedBy(name string, n []exact.Rat) string {
	t, q, _ := thingOf(name)
	less := n[2].Sign() < 0
	if solver.KindOf(q) == solver.Count && t.one != "" {
		of := " more than the "
		if less {
			of = " fewer than the "
		}
		return "That is " + plural(ints([]exact.Rat{n[2].Abs()})[0], t.one, t.many) + of + count(ints(n[1:2])[0]) + " you had in mind"
	}
	of := " more than the "
	if less {
		of = " less than the "
	}
	thing := v.the(name)
	return thing + isOrAre(thing) + v.about(n[2].Abs()) + of + v.onMark(n[1]) + " you had in mind"
}

// nearerBut tells which count would come nearer, and that its brackets would meet.
func (v *voice) nearerBut(n []exact.Rat) string {
	text := count(ints(n[:1])[0]) + " rails would come nearer, but their gaps are " + v.about(n[1]) + " and brackets need " + v.length(n[2])
	return upper(text) + forEye(" (tell me if yours need less)")
}
