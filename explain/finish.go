package explain

import (
	"saywright/solver"
	"saywright/solver/exact"
)

// finish says the area of all faces, and the stain that it takes.
func (v *voice) finish() {
	told := false
	for _, f := range v.a.Facts {
		if len(f.Nums) < 8 || f.Key != "smooth wood" && f.Key != "rough wood" && f.Key != "coverage told" {
			continue
		}
		if !told {
			v.p.say("About "+number(f.Nums[0].Add(exact.New(1, 2)).Floor())+" square feet, faces and ends", good)
		}
		told = true
		v.p.say(v.stain(f), noInk)
	}
	if !told {
		v.noTable()
		return
	}
	v.p.lay(v.work(v.finishSums()))
	for _, f := range v.facts("size not known") {
		v.p.note("What a " + and(sizes(f.Names)) + " measures is not known: its area is not counted")
	}
	if f, ok := v.fact("smooth wood"); ok && len(f.Names) > 0 && f.Names[0] != "" {
		v.p.note("Coverage: " + quoted(f.Names[0]))
	}
	v.assumed()
}

// stain says how much one kind of wood takes, least and most, to a tenth upward.
func (v *voice) stain(f solver.Fact) string {
	kind := map[string]string{"smooth wood": "On smooth wood ", "rough wood": "On rough or weathered wood ", "coverage told": "At that coverage "}[f.Key]
	least, most, unit := f.Nums[4], f.Nums[5], " gallons"
	if v.Metric {
		least, most, unit = f.Nums[6], f.Nums[7], " liters"
	}
	text := kind + plural(ints(f.Nums[1:2])[0], "coat takes ", "coats take ")
	if f.Key == "smooth wood" || f.Key == "rough wood" {
		return text + tenth(least) + " to " + tenth(most) + unit
	}
	return text + tenth(most) + unit
}

// tenth writes an amount rounded up to a tenth.
func tenth(r exact.Rat) string {
	return mark(decimal, r.Mul(exact.Int(10)).Ceil().Div(exact.Int(10)).String())
}

// finishSums are the sums of areas, where it was asked why; volumes, whose fractions nobody reads, only where all was.
func (v *voice) finishSums() (list []solver.Work) {
	for _, w := range v.a.Work {
		switch {
		case v.a.To.Kind == "why" && (w.Note == "faces and ends" || w.Note == "square feet"), v.a.To.Full && w.Of == "finish":
			list = append(list, w)
		}
	}
	return list
}
