package explain

import (
	"saywright/solver"
)

// compose takes an answer apart into a page: the answer itself first, then its arithmetic, then what was taken for
// granted, then what a person must see.
func (v *voice) compose() *page {
	v.p = page{style: v.Style}
	v.mended()
	switch {
	case v.a.Verdict == solver.Unclear && v.a.Ask != nil:
		v.question()
	case v.a.Ask != nil && v.a.Layout == nil && len(v.a.Conflicts) == 0 && v.nothingElse():
		v.question()
	default:
		v.body()
		if v.a.Ask != nil {
			v.p.add(blank{})
			v.question()
		}
	}
	if len(v.p.blocks) == 0 {
		v.p.say(v.silence(), noInk)
	}
	return &v.p
}

func (v *voice) nothingElse() bool {
	a := v.a
	return len(a.Work)+len(a.Cuts)+len(a.Plan)+len(a.Shopping)+len(a.Steps)+len(a.Marks)+len(a.Check) == 0
}

// body words what an answer holds by what it replies to.
func (v *voice) body() {
	switch v.a.To.Kind {
	case "command":
		v.command()
	case "ask":
		v.asked()
	default:
		v.stated()
	}
}

// stated answers what was said.
func (v *voice) stated() {
	v.replaced()
	switch v.a.Verdict {
	case solver.Blocked:
		v.blocked()
	case solver.Fits:
		v.fits()
	default:
		v.open()
	}
	v.assumed()
	v.cautions()
}

// silence is said where an answer has nothing of its own to say.
func (v *voice) silence() string {
	switch v.a.Verdict {
	case solver.Fits:
		return "It fits"
	case solver.Blocked:
		return "That can't be"
	}
	return "Heard"
}

// mended tells which spellings were taken for which.
func (v *voice) mended() {
	for _, f := range v.facts("taken") {
		if len(f.Names) == 2 {
			v.p.note("I took “" + quoted(f.Names[0]) + "” for “" + quoted(f.Names[1]) + "”")
		}
	}
}

// replaced tells what this line put in the place of what stood.
func (v *voice) replaced() {
	for _, r := range v.a.Replaced {
		old := v.phrase(r.Old.String())
		switch {
		case r.New.Name.Quantity == "":
			v.p.note("No longer: " + old)
		case r.Old.Name.String() == r.New.Name.String():
			v.p.note(v.phrase(r.New.String()) + " now, no longer " + old)
		default:
			v.p.note(v.phrase(r.New.String()) + " takes the place of " + old)
		}
	}
}
