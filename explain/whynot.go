package explain

import (
	"slices"

	"saywright/solver"
	"saywright/solver/exact"
)

// whyNot says what refuses a wish, and what its neighbors would leave.
func (v *voice) whyNot() {
	if v.a.Verdict == solver.Blocked {
		conflicts := v.a.Conflicts
		for i, c := range conflicts {
			v.conflict(c, i)
		}
		v.neighbors()
		v.ways()
		v.cautions()
		return
	}
	v.p.say("Nothing stops it", good)
	if v.a.Layout != nil {
		v.fits()
	} else {
		v.open()
	}
	v.neighbors()
	v.assumed()
	v.cautions()
	if v.a.Ask == nil {
		v.p.add(para{text: "Nothing is changed; say it to have it so."})
	}
}

// neighbors lays the counts beside the one asked after side by side, with what each leaves for a gap.
func (v *voice) neighbors() {
	list := v.facts("neighbor")
	if len(list) == 0 {
		return
	}
	needs, known := v.fact("gap needs")
	t := newTable("rails", "<each gap", "<")
	fit, tight := false, false
	for _, f := range list {
		n := ints(f.Nums[:1])[0]
		fit = fit || f.Names[0] == "fits"
		tight = tight || f.Names[0] == "tight" || f.Names[0] == "no room"
		t.row(mark(plain, exact.Int(n).String()), v.leaves(f), neighborWords[f.Names[0]])
	}
	v.p.add(*t)
	if !known {
		return
	}
	text := v.needed(needs) + " " + v.both(needs.Nums[0])
	if fit && tight {
		text += "; nothing lies between, because a rail is whole"
	}
	v.p.note(text)
}

// below lays the counts beside the one asked after side by side, with what each leaves under the bottom rail.
func (v *voice) below() {
	list := v.facts("below")
	if len(list) == 0 {
		return
	}
	t := newTable("rails", "<left underneath", "<")
	for _, f := range list {
		left := ""
		if len(f.Nums) > 1 {
			left = v.both(f.Nums[1])
		}
		t.row(mark(plain, exact.Int(ints(f.Nums[:1])[0]).String()), left, belowWords[f.Names[0]])
	}
	v.p.add(*t)
	if f, ok := v.fact("below needs"); ok && len(f.Nums) > 0 {
		v.p.note("Under the bottom rail there is to be " + v.both(f.Nums[0]) + " or more")
	}
}

// notSoMany answers why of a count of rails that is not the one there is: first that it is not so, and what that count would leave.
func (v *voice) notSoMany() {
	f, ok := v.fact("not so many")
	if !ok || len(f.Nums) < 2 {
		return
	}
	n := ints(f.Nums)
	text := "It isn't " + count(n[0])
	for _, k := range v.facts("neighbor") {
		if ints(k.Nums[:1])[0] != n[0] {
			continue
		}
		text += ": " + plural(n[0], "rail leaves", "rails leave")
		if left := v.leaves(k); left != "" {
			text += " gaps of " + left + ","
		}
		text += " " + leavesWords[k.Names[0]]
	}
	for _, k := range v.facts("below") {
		if ints(k.Nums[:1])[0] != n[0] {
			continue
		}
		text += ": " + plural(n[0], "rail leaves", "rails leave")
		if len(k.Nums) > 1 {
			text += " " + v.both(k.Nums[1]) + " underneath,"
		}
		text += " " + leavesWords[k.Names[0]]
	}
	v.p.say(text, noInk)
}

// leavesWords say what becomes of a count behind what it leaves.
var leavesWords = map[string]string{"fits": "which goes too", "tight": "too tight", "wide": "too wide", "no room": "no room at all", "open": "as much as you like"}

var belowWords = map[string]string{"fits": "goes", "tight": "too near the floor", "no room": "no room at all"}

// leaves says what a count leaves for each gap: a figure, or a range.
func (v *voice) leaves(f solver.Fact) string {
	if len(f.Nums) < 3 {
		return ""
	}
	if f.Nums[1].Eq(f.Nums[2]) {
		return v.both(f.Nums[1])
	}
	return v.both(f.Nums[1]) + " to " + v.both(f.Nums[2])
}

var neighborWords = map[string]string{
	"fits": "goes", "tight": "too tight", "wide": "too wide", "no room": "no room at all", "open": "as wide as you like",
}

// needed says who needs the least gap.
func (v *voice) needed(f solver.Fact) string {
	if slices.Contains(f.Names, string(solver.BracketClearance)) {
		return "The brackets need"
	}
	return "The gap is to be at least"
}
