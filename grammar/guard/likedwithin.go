package guard

import (
	"regexp"
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/ways"
	"saywright/solver"
)

// What somebody would like best, and how far it may stray from that, is said in one breath: "ideally 36, 32 at the least". The wish is to be come near, as
// the limit would say nothing beside a figure that holds. And what is wanted only if it fits is tried. Plain English, no source.
var (
	likedBest = asWay(`\b{ideally|preferably|prefer|preferred|prefers|if need be|if {i|we} {must|have to}|in a perfect world|best case}\b`)
	rangeSaid = regexp.MustCompile(`\b(?:between|better|anywhere)\b`)
	ifItFits  = asWay(`\bif {it|that|they|those|this} {all|just|will|would|can }*{fits?|works?|works out|work out}{ Stop|please|in there|though}*$`)
)

// likedWithin sets right what was liked best within a limit, and tries what is wanted if it fits.
func likedWithin(acts []act.Act, said string) []act.Act {
	if len(acts) == 1 && saidAsIs(acts[0]) && acts[0].Kind == act.State && len(acts[0].Statements) == 1 && !rangeSaid.MatchString(said) && ways.MatchesWay(ifItFits, said) {
		tried := acts[0]
		tried.Kind = act.WhatIf
		return []act.Act{tried}
	}
	if len(acts) < 2 || !ways.MatchesWay(likedBest, said) {
		return acts
	}
	liked := slices.Clone(acts)
	for i, a := range acts {
		if a.Kind != act.State || len(a.Statements) != 1 || a.Statements[0].Op != solver.Eq || a.Statements[0].Value.Of != nil || !slices.ContainsFunc(acts, limitsOf(a.Statements[0].Name)) {
			continue
		}
		liked[i].Statements = slices.Clone(a.Statements)
		liked[i].Statements[0].Op = solver.Near
	}
	return liked
}

// limitsOf are the acts that set a limit to a quantity.
func limitsOf(of solver.Name) func(act.Act) bool {
	return func(a act.Act) bool {
		return a.Kind == act.State && len(a.Statements) == 1 && a.Statements[0].Name == of && slices.Contains([]solver.Op{solver.LT, solver.LE, solver.GT, solver.GE}, a.Statements[0].Op)
	}
}
