package takeback

import (
	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/gist"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
)

// wantedBack is the plan that is wanted back by its name: "I need the front deck plan back".
func wantedBack(rest []scan.Atom, c act.Context) string {
	n := len(rest)
	for n > 0 && (paraphrase.Courtesy[rest[n-1].Text] || rest[n-1].Text == "up" || rest[n-1].Text == "again" && n > 1 && rest[n-2].Text == "back") {
		n--
	}
	if n < 3 || rest[n-1].Text != "back" && rest[n-1].Text != "again" || !planKinds[rest[n-2].Text] {
		return ""
	}
	name := gist.PlanName(rest[:n-2], c)
	for _, a := range rest[:n-2] {
		if gist.PointsAtPlan[a.Text] || chunk.SpelledNumber(a.Text) || chunk.IsRail(a.Text) {
			return ""
		}
	}
	return name
}

var planKinds = scan.WordSet("plan version design layout sketch job file setup project")

// listedNames reads what is compared as a list: "front deck, back deck".
func listedNames(w []scan.Atom, c act.Context) []string {
	if names := twoNames(w, c); names != nil {
		return names
	}
	for i := 1; i+1 < len(w); i++ {
		if w[i].Text == "," {
			one, other := gist.ComparedName(w[:i], c), gist.ComparedName(gist.WithoutPlanEnd(w[i+1:]), c)
			if one != "" && other != "" && one != other {
				return []string{one, other}
			}
		}
	}
	return nil
}

// wallAfter reports whether "as" at an atom likens something to a wall: "just as the south wall is".
func wallAfter(atoms []scan.Atom, i int) bool {
	if atoms[i-1].Text != "just" && atoms[i-1].Text != "exactly" {
		return false
	}
	for j := i + 1; j < len(atoms) && j < i+5; j++ {
		if atoms[j].Text == "wall" {
			return true
		}
	}
	return false
}
