package explain

import (
	"strconv"

	"saywright/solver"
)

// compose takes an answer apart into a page: the answer itself first, then its arithmetic, then what was taken for
// granted, then what a person must see.
func (v *voice) compose() *page {
	v.p = page{style: v.Style}
	v.mended()
	v.whichWall()
	v.fault()
	v.notTakenIn()
	v.noneComesOff()
	v.whichLayout()
	if v.a.Ask != nil && v.onlyAsks() {
		if v.a.To.Kind == "state" && v.a.Verdict == solver.Open && len(v.a.To.Statements) > 0 {
			v.noted()
			v.cautions()
		}
		v.question()
		return &v.p
	}
	v.body()
	if v.a.Ask != nil && (v.a.Verdict != solver.Blocked || len(v.a.Conflicts) == 0) {
		if len(v.p.blocks) > 0 {
			v.p.add(blank{})
		}
		v.question()
	}
	if len(v.p.blocks) == 0 {
		v.p.say(v.silence(), noInk)
	}
	return &v.p
}

// onlyAsks reports whether the question is all that there is to say.
func (v *voice) onlyAsks() bool {
	a := v.a
	if a.Verdict == solver.Unclear {
		return true
	}
	if a.To.Kind == "ask" && aboutSafety[a.To.Topic] {
		return false
	}
	if a.Layout != nil || a.Options != nil || a.Cost != nil || len(a.Conflicts)+len(a.Because)+len(a.Replaced) > 0 {
		return false
	}
	return len(a.Work)+len(a.Cuts)+len(a.Plan)+len(a.Shopping)+len(a.Steps)+len(a.Marks)+len(a.Check) == 0
}

// body words what an answer holds by what it replies to.
func (v *voice) body() {
	switch v.a.To.Kind {
	case "command":
		v.command()
	case "ask":
		v.asked()
	case "what if":
		v.tried()
	case "why not":
		v.whyNot()
	case "check":
		v.checked()
	case "why":
		v.why()
	case "teach":
		v.taught()
	case "tolerance":
		v.drifted()
	default:
		v.stated()
	}
}

// stated answers what was said.
func (v *voice) stated() {
	v.replaced()
	switch {
	case v.a.Verdict == solver.Blocked && v.stillBlocked():
		v.cautions()
		return
	case v.a.Verdict == solver.Blocked:
		v.blocked()
	case v.onlyNoted():
		v.noted()
		v.notAsMeasured()
		v.cautions()
		return
	case v.a.Layout != nil && (v.a.Layout.Up != nil || v.a.Layout.Along != nil):
		v.fits()
		v.mixedUnits()
		v.costsCompared()
	default:
		v.open()
	}
	v.notAsMeasured()
	v.assumed()
	v.cautions()
}

// mixedUnits tells once, where lengths were said in metric units and in others, how to have them in millimeters.
func (v *voice) mixedUnits() {
	if _, ok := v.fact("mixed units"); ok && !v.Metric && v.first("mixed units") {
		v.p.note(forEye("All in inches; say `metric` for millimeters"))
	}
}

// notTakenIn tells that the line before was asked back, so that the answer does not look as if it had been heard.
func (v *voice) notTakenIn() {
	if f, ok := v.fact("not taken in"); ok && len(f.Names) > 0 {
		v.p.note("Your line “" + quoted(f.Names[0]) + "” was not taken in")
		v.p.hear("Your last line was not taken in.")
	}
}

// silence is said where an answer has nothing of its own to say.
func (v *voice) silence() string {
	switch v.a.Verdict {
	case solver.Fits:
		return "It fits"
	case solver.Blocked:
		return "That can't be"
	case solver.Unclear:
		return "Say it another way"
	}
	return "Nothing stands yet"
}

// mended tells which spellings were taken for which.
func (v *voice) mended() {
	for _, f := range v.facts("taken") {
		if len(f.Names) == 2 {
			v.p.note("I took “" + quoted(f.Names[0]) + "” for “" + quoted(f.Names[1]) + "”")
		}
	}
}

// fault tells an answer of ours that did not check; it is not shown as an answer.
func (v *voice) fault() {
	f, ok := v.fact("fault")
	if !ok {
		return
	}
	v.p.say("An answer of this program did not pass its own check, so I don't give it. That is a fault of the program: please report these lines", warning)
	for _, line := range f.Names {
		v.p.add(para{text: quoted(line), lead: "  "})
	}
}

// whichLayout tells, behind what was only tried, whether the answer is of that or of what stands.
func (v *voice) whichLayout() {
	if f, ok := v.fact("of the trial"); ok {
		v.p.say("Of what you tried: "+v.phrases(f.Names), noInk)
	}
	if f, ok := v.fact("without the trial"); ok {
		v.p.say("Of what stands, without what you tried: "+v.phrases(f.Names), noInk)
	}
}

// replaced tells what this line put in the place of what stood. What a relation to another quantity replaces is told in
// full; of a figure only the old one.
func (v *voice) replaced() {
	if v.a.To.Kind != "state" && v.a.To.Kind != "command" {
		return
	}
	for _, r := range v.a.Replaced {
		old := v.phrase(r.Old.String())
		switch {
		case r.New.Name.Quantity == "":
			v.p.note("No longer: " + old)
		case r.Old.Name.String() == r.New.Name.String() && r.Old.String() == r.New.String():
		case r.Old.Name.String() == r.New.Name.String():
			v.p.note(v.phrase(r.New.String()) + " now, no longer " + v.shortOf(r))
		default:
			v.p.note(v.phrase(r.New.String()) + " takes the place of " + old)
		}
	}
}

// shortOf says the statement that was replaced: its figure alone where the rest is the same.
func (v *voice) shortOf(r solver.Replaced) string {
	f, g := read(r.Old.String()), read(r.New.String())
	t, q, _ := thingOf(f.name)
	if n, err := strconv.Atoi(f.value); err == nil && t.one != "" && f.op == "=" && g.op == "=" {
		return countOrNone(n)
	}
	if f.op == "=" && g.op == "=" && isLength(f.value) && !leans(f.value) && q != "" {
		return v.figureOf(f.value)
	}
	return v.phrase(r.Old.String())
}
