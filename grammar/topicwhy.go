package grammar

import "slices"

// What a question is of is named first, with its figure, and asked after in the next clause: "that 33 inch opening, how did you get it",
// "the gap of 2-3/8, where does that come from". It sets nothing: it stands in the answer before.

// onlyTopic leaves out a value that only names what is asked why.
func onlyTopic(acts []Act, atoms []atom) []Act {
	if len(acts) != 2 || acts[0].Kind != State || len(acts[0].Statements) != 1 || acts[1].Kind != Why {
		return acts
	}
	name := acts[0].Statements[0].Name
	if acts[1].Name == nil && acts[1].Topic != "that" || acts[1].Name != nil && *acts[1].Name != name {
		return acts
	}
	end := slices.IndexFunc(atoms, func(a atom) bool { return a.kind == aSign && (a.text == "," || a.text == "-" || a.text == "--") })
	if end < 2 || end+2 >= len(atoms) || !slices.Contains([]string{"that", "the", "this", "your"}, atoms[0].text) {
		return acts
	}
	for _, a := range atoms[:end] {
		if topicVerbs[a.text] || a.text == "=" || a.text == ":" {
			return acts
		}
	}
	why := acts[1]
	why.Name, why.Topic = &name, ""
	return []Act{why}
}

// topicVerbs are words by which a clause says more than what it is of.
var topicVerbs = wordSet("is are be 's was were at should must has have make set give want need goes stays stands sits runs comes gets to on in will can no not")
