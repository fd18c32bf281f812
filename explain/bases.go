package explain

import (
	"saywright/solver"
	"saywright/solver/exact"
)

// anchors says where each base goes, and how its anchors stand against the slab.
func (v *voice) anchors() {
	if _, none := v.fact("no added post"); none {
		v.p.say("There is no added post to anchor", noInk)
		return
	}
	for _, f := range v.facts("base center") {
		if len(f.Nums) > 3 {
			v.p.say("Middle of base "+number(f.Nums[0])+": "+v.about(f.Nums[1])+" from the left post, "+v.about(f.Nums[2])+
				" from the right one, on the center line", good)
		}
	}
	if f, ok := v.fact("hole"); ok && len(f.Nums) > 3 {
		v.p.say("Holes "+v.length(f.Nums[3])+" deep from the top of the base, for "+v.length(f.Nums[0])+" anchors "+v.length(f.Nums[1])+
			" long with "+v.length(f.Nums[2])+" of thread left", good)
	}
	if f, ok := v.fact("anchor of another size"); ok && len(f.Nums) > 1 {
		v.p.say("For an anchor of "+v.length(f.Nums[0])+" I know no depth, only for "+v.length(f.Nums[1])+": its own instructions decide", noInk)
	}
	if f, ok := v.fact("hold near the edge"); ok && len(f.Nums) > 2 {
		v.p.note("So near the edge (" + v.length(f.Nums[0]) + ", and " + v.length(f.Nums[1]) + " for the full hold) the concrete holds " +
			mark(decimal, hundredth(f.Nums[2]).String()) + " of it")
	}
	v.p.lay(v.work(v.baseSums()))
	v.cautions()
}

// hundredth rounds a share down to hundredths, so that no more is said to hold than does.
func hundredth(r exact.Rat) exact.Rat { return r.Mul(exact.Int(100)).Floor().Div(exact.Int(100)) }

// baseSums are the lines about the bases and their anchors.
func (v *voice) baseSums() (list []solver.Work) {
	for _, w := range v.a.Work {
		if w.Of == "anchor" || w.Note == "base center" {
			list = append(list, w)
		}
	}
	return list
}
