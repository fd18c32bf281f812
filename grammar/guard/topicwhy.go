package guard

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/scan"
)

// What a question is of is named first, with its figure, and asked after in the next clause: "that 33 inch opening, how did you get it",
// "the gap of 2-3/8, where does that come from". It sets nothing: it stands in the answer before.

// OnlyTopic leaves out a value that only names what is asked why.
func OnlyTopic(acts []act.Act, atoms []scan.Atom) []act.Act {
	if len(acts) != 2 || acts[0].Kind != act.State || len(acts[0].Statements) != 1 || acts[1].Kind != act.Why {
		return acts
	}
	name := acts[0].Statements[0].Name
	if acts[1].Name == nil && acts[1].Topic != "that" || acts[1].Name != nil && *acts[1].Name != name {
		return acts
	}
	end := slices.IndexFunc(atoms, func(a scan.Atom) bool {
		return a.Kind == scan.Sign && (a.Text == "," || a.Text == "-" || a.Text == "--")
	})
	if end < 2 || end+2 >= len(atoms) || !slices.Contains([]string{"that", "the", "this", "your"}, atoms[0].Text) {
		return acts
	}
	for _, a := range atoms[:end] {
		if topicVerbs[a.Text] || a.Text == "=" || a.Text == ":" {
			return acts
		}
	}
	why := acts[1]
	why.Name, why.Topic = &name, ""
	return []act.Act{why}
}

// topicVerbs are words by which a clause says more than what it is of.
var topicVerbs = scan.WordSet("is are be 's was were at should must has have make set give want need goes stays stands sits runs comes gets to on in will can no not")
