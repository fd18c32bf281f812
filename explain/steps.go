package explain

import (
	"strings"

	"saywright/solver"
)

// steps lists the order of work for this very wall.
func (v *voice) steps() {
	if len(v.a.Steps) == 0 {
		v.noTable()
		return
	}
	at, of := 1, len(v.a.Steps)
	if f, ok := v.fact("step"); ok && len(f.Nums) > 1 {
		n := ints(f.Nums)
		at, of = n[0], n[1]
	}
	if of == len(v.a.Steps) {
		v.p.say(plural(of, "step", "steps")+forEye("; `next` tells them one by one"), good)
	}
	warned := map[string]bool{}
	for i, s := range v.a.Steps {
		v.step(s, at+i, of, warned[s.Warn])
		warned[s.Warn] = true
	}
	if of == len(v.a.Steps) {
		v.p.hear("First, " + lower(v.doing(v.a.Steps[0])))
	}
}

func (v *voice) step(s solver.StepOf, at, of int, warned bool) {
	if s.Do == "" {
		return
	}
	lead := itoa(at) + ". "
	if len(v.a.Steps) == 1 {
		lead = "Step " + itoa(at) + " of " + itoa(of) + ": "
		v.p.add(para{lead: lead, text: v.doing(s), ink: bold, own: true})
	} else {
		v.p.add(para{lead: lead, text: v.doing(s), ink: bold})
	}
	if s.Key == "center line" || s.Key == "base" {
		v.p.lay(v.work(s.Work))
	}
	if w := v.warning(s.Warn, nil); w != "" && !warned {
		v.p.add(para{lead: strings.Repeat(" ", cells(itoa(at))+2) + "Caution: ", text: w, ink: warning})
	}
}

func (v *voice) fillStep(s *solver.StepOf) {
	s.Do = written(v.doing(*s), v.Style)
	s.Caution = written(v.warning(s.Warn, nil), v.Style)
}

// stepFact finds a figure of a step.
func stepFact(s solver.StepOf, key string, least int) (solver.Fact, bool) {
	for _, f := range s.Facts {
		if f.Key == key && len(f.Nums) >= least {
			return f, true
		}
	}
	return solver.Fact{}, false
}

// doing puts a step into words, with its own figures.
func (v *voice) doing(s solver.StepOf) string {
	var text string
	switch s.Key {
	case "site":
		text = "clear the floor, and look where water, power and gas lines run"
	case "center line":
		text = "snap a center line on the floor between the posts" + v.baseCenters(s)
	case "base":
		text = v.baseStep(s)
	case "anchors":
		text = "set the anchors" + v.turns(s)
	case "post up":
		text = v.postStep(s)
	case "marks":
		text = v.markStep(s)
	case "measure":
		text = "measure each bay at every rail, face to face"
	case "measured":
		text = "hold the tape to each bay once more at every rail; what was measured counts"
	case "first cut":
		text = v.firstCut(s)
	case "cut":
		text = v.cutStep(s)
	case "seal":
		text = "seal every cut end, and stain the boards while you can reach all sides"
	case "brackets":
		text = v.bracketStep(s)
	case "bottom rail":
		text = v.bottomStep(s)
	case "rail by rail":
		text = v.risingStep(s)
	case "stiffeners":
		text = v.stiffenerStep(s)
	case "cap board":
		text = "lay the board on top, and fasten it"
	case "post caps":
		text = "cap the added posts"
		if f, ok := stepFact(s, "caps", 1); ok && ints(f.Nums)[0] == 1 {
			text = "cap the added post"
		}
	case "touch up":
		text = "touch up the stain where it was scraped"
	case "clean up":
		text = "gather screws and offcuts, and sweep"
	}
	return sentence(text)
}

func (v *voice) baseCenters(s solver.StepOf) string {
	var list []string
	for _, f := range s.Facts {
		if f.Key == "base center" && len(f.Nums) > 2 {
			list = append(list, v.about(f.Nums[1]))
		}
	}
	if len(list) == 0 {
		return ""
	}
	return ", and mark the middle of each base on it: " + and(list) + " from the left post"
}

func (v *voice) baseStep(s solver.StepOf) string {
	text := "set the base on its mark and turn it so that its side plates stay clear of the lowest bracket"
	if f, ok := stepFact(s, "hole start", 1); ok {
		text += "; start each hole " + v.length(f.Nums[0]) + " deep through the base, then take the base off and drill on"
	}
	if f, ok := stepFact(s, "hole", 4); ok {
		text += ", " + v.length(f.Nums[3]) + " deep in all from the top of the base"
	} else {
		text += ". How deep hangs on the slab: tell me its thickness and the distance to its edge"
	}
	return text + ". Blow the dust out"
}

func (v *voice) turns(s solver.StepOf) string {
	text := "; a nut on the thread saves it from the hammer"
	if f, ok := stepFact(s, "turns past snug", 2); ok {
		text += ". Tighten " + number(f.Nums[0]) + " to " + number(f.Nums[1]) + " turns past snug"
	}
	if f, ok := stepFact(s, "thread left", 1); ok {
		text += ", with at least " + v.length(f.Nums[0]) + " of thread above the base"
	}
	return text + ". Washers shim a base that rocks"
}

func (v *voice) postStep(s solver.StepOf) string {
	text := "stand the post, plumb both ways, and fix it"
	var pieces []string
	for _, f := range s.Facts {
		if f.Key == "post piece" && len(f.Nums) > 2 {
			pieces = append(pieces, v.length(f.Nums[1]))
		}
	}
	if len(pieces) > 0 {
		text = "cut the post to " + and(pieces) + ", stand it, plumb both ways, and fix it"
	}
	if f, ok := stepFact(s, "post height", 1); ok {
		text += "; its top comes to " + v.length(f.Nums[0])
	}
	return text
}

func (v *voice) markStep(s solver.StepOf) string {
	text := "hold a tape to one board first"
	if f, ok := stepFact(s, "board face", 1); ok {
		text += " (its face is taken as " + v.length(f.Nums[0]) + ")"
	}
	text += ". Then mark the bracket holes on every post, each from its own floor"
	var first solver.Fact
	same := true
	for _, f := range s.Facts {
		if f.Key != "holes" {
			continue
		}
		if first.Key == "" {
			first = f
		}
		same = same && sameList(first.Nums, f.Nums)
	}
	if first.Key == "" || !same || len(first.Nums) > 24 {
		return text + " (`ask marks` lists them)"
	}
	var list []string
	for _, r := range first.Nums {
		list = append(list, v.bare(r))
	}
	return text + ": " + and(list)
}

func (v *voice) firstCut(s solver.StepOf) string {
	if f, ok := stepFact(s, "piece", 1); ok && len(f.Names) > 0 {
		return "cut one rail first, at " + v.length(f.Nums[0]) + ", and try it in its place"
	}
	return "cut one rail first, and try it in its place"
}

func (v *voice) cutStep(s solver.StepOf) string {
	var list []string
	for _, f := range s.Facts {
		if f.Key == "piece" && len(f.Names) > 1 && len(f.Nums) > 1 {
			name := v.pieceOf(f.Names[0])
			if k := ints(f.Nums[1:2])[0]; k > 1 {
				name = count(k) + " " + name + "s"
			}
			list = append(list, name+" at "+v.length(f.Nums[0]))
		}
	}
	if len(list) == 0 || len(list) > 12 {
		return "cut the rest, as `ask cuts` lists it"
	}
	return "cut the rest: " + strings.Join(list, "; ")
}

func (v *voice) bracketStep(s solver.StepOf) string {
	f, ok := stepFact(s, "brackets", 4)
	if !ok {
		return "screw a bracket on each end of every rail"
	}
	return "screw a bracket on each end of every rail, in the middle both ways: " + number(f.Nums[0]) + " brackets, " +
		number(f.Nums[1]) + " screws of " + v.onTapeOrExact(f.Nums[3]) + " into each end"
}

func (v *voice) bottomStep(s solver.StepOf) string {
	text := "set the bottom rail on spacers"
	if f, ok := stepFact(s, "spacer", 2); ok {
		text += " of " + v.length(f.Nums[1])
	}
	text += ": top holes at their marks"
	if f, ok := stepFact(s, "hole", 1); ok {
		text += " (" + v.length(f.Nums[0]) + ")"
	}
	return text + ", then level and plumb, then the bottom holes"
}

func (v *voice) risingStep(s solver.StepOf) string {
	text := "go up rail by rail, each to its own marks"
	if f, ok := stepFact(s, "rails", 1); ok {
		text += ", " + count(ints(f.Nums)[0]) + " more"
	}
	if f, ok := stepFact(s, "spacer", 2); ok {
		text += "; a block of " + v.length(f.Nums[1]) + " holds each while you screw"
	}
	return text
}

func (v *voice) stiffenerStep(s solver.StepOf) string {
	f, ok := stepFact(s, "stiffeners", 3)
	if !ok {
		return "screw on the stiffeners, evenly spaced"
	}
	text := "screw on " + plural(ints(f.Nums)[0], "stiffener", "stiffeners") + ", " + number(f.Nums[2]) + " screws of " +
		v.onTapeOrExact(f.Nums[1]) + " at each rail"
	for _, m := range s.Facts {
		if m.Key == "stiffener marks" && len(m.Nums) > 1 && len(m.Nums) < 10 {
			text += "; bay " + number(m.Nums[0]) + ": " + centerLines(len(m.Nums)-1) + v.places(m.Nums[1:])
		}
	}
	return text
}

// lower makes the first letter small, for a sentence that goes on inside another.
func lower(s string) string {
	if s == "" || s[0] < 'A' || s[0] > 'Z' {
		return s
	}
	return string(s[0]+'a'-'A') + s[1:]
}
