package takeback

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/gist"
	"saywright/grammar/hear"
	"saywright/grammar/lexicon"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
)

// planOrder reads a clause that names a plan. The topic is a plan that was only spoken of.
func planOrder(w []scan.Atom, c act.Context) (a act.Act, topic, ok bool) {
	for _, from := range []int{0, startOf(w, paraphrase.TakingVocab().Leads), startOf(w, paraphrase.TakingVocab().Wishing)} {
		if from >= len(w) {
			continue
		}
		part := hear.BareClause(w[from:])
		for _, f := range gist.PlanVocab().Leads.Match(part, 0) {
			rest := gist.WithoutPlanEnd(part[f.Next:])
			switch f.Entry.Key {
			case "set beside":
				if names := twoNames(rest, c); names != nil && names[0] == "this" && !lexicon.Vocab().Articles[rest[len(rest)-len(strings.Fields(names[1]))-1].Text] {
					return act.Act{Kind: act.Compare, Words: names}, false, true
				}
			case "compare":
				if names := twoNames(rest, c); names != nil {
					return act.Act{Kind: act.Compare, Words: names}, false, true
				}
			case "compare list":
				if names := listedNames(rest, c); names != nil {
					return act.Act{Kind: act.Compare, Words: names}, false, true
				}
			case "want back":
				if name := wantedBack(part[f.Next:], c); name != "" {
					return act.Act{Kind: act.Open, Words: []string{name}}, false, true
				}
			case "opened", "open":
				if name := gist.PlanName(rest, c); name != "" {
					return act.Act{Kind: act.Open, Words: []string{name}}, f.Entry.Key == "opened", true
				}
			case "open again":
				if name := gist.PlanName(rest, c); name != "" && len(rest) < len(part[f.Next:]) && againLater[part[f.Next:][len(rest)].Text] {
					return act.Act{Kind: act.Open, Words: []string{name}}, false, true
				}
			case "called":
				if name := gist.PlanName(rest, c); name != "" {
					return act.Act{Kind: act.Save, Words: []string{name}}, true, true
				}
			case "save", "same as":
				if name := gist.PlanName(rest, c); name != "" && (f.Entry.Key == "save" || isWall(name, c)) {
					return act.Act{Kind: act.Kind(f.Entry.Key), Words: []string{name}}, false, true
				}
			}
		}
	}
	return act.Act{}, false, false
}

// againLater are words that tell that a plan was there before.
var againLater = scan.WordSet("again once where one")

// isWall reports whether a name can be that of a wall or plan to be copied.
func isWall(name string, c act.Context) bool {
	f := strings.Fields(name)
	switch f[len(f)-1] {
	case "wall", "plan", "one", "side", "fence", "screen", "job", "version", "design":
		return len(f) > 1
	}
	for _, known := range append(append([]string{}, c.Walls...), c.Saved...) {
		if strings.EqualFold(name, known) {
			return true
		}
	}
	return false
}

// twoNames reads what is compared with what.
func twoNames(w []scan.Atom, c act.Context) []string {
	for i := 1; i < len(w); i++ {
		for _, f := range gist.PlanVocab().Between.Match(w, i) {
			if f.Next >= len(w) {
				continue
			}
			one, other := gist.ComparedName(w[:i], c), gist.ComparedName(gist.WithoutPlanEnd(w[f.Next:]), c)
			if one != "" && other != "" && one != other {
				return []string{one, other}
			}
		}
	}
	return nil
}
