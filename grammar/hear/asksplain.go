package hear

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
	"saywright/solver"
)

// withoutFollowUp leaves out a question for the layout that only asks what comes of the error just tried, and words of having lost the
// thread before what is asked; what the cheapest layout comes to is its cost.
func withoutFollowUp(acts []act.Act, atoms []scan.Atom) []act.Act {
	n := len(acts)
	if n < 2 {
		return acts
	}
	last := acts[n-1]
	if last.Kind == act.Ask && last.Topic == "layout" {
		switch prior := acts[n-2]; {
		case prior.Kind == act.Tolerance:
			return acts[:n-1] // "if each board's out by an eighth, where does that leave me"
		case prior.Kind == act.State && prior.Statements[0].Name.Quantity == solver.Goal && prior.Statements[0].String() == "cheapest" && paraphrase.ComesToIn(last, atoms):
			last.Topic = "cost"
			return append(acts[:n-1:n-1], last)
		}
	}
	if acts[0].Kind == act.Recap && acts[1].Kind == act.Ask {
		if i := AtomAt(atoms, acts[0].At); i >= 0 && slices.ContainsFunc(atoms[i:], func(a scan.Atom) bool { return a.Text == "lost" && a.At < acts[0].End }) {
			return acts[1:] // "I've lost track, how many boards is it"
		}
	}
	return acts
}
