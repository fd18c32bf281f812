package guard

import (
	"regexp"
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/grammar/ways"
	"saywright/solver"
)

// A question whose verb comes first holds something against what stands, or tries it: "do the gaps have to be 3", "are twelves 14.50", "would even gaps
// work". Where it was read as a wish, it is made the question that it is. Plain English, no source.

// recast is a way to ask, with what is read of it and what it is.
type recast struct {
	looks    func(act.Act) bool
	way, not *regexp.Regexp
	to       func(act.Act) act.Act
	whole    bool // only where nothing stands behind a pause: what follows may be another thing
}

const (
	leads = `^{Lead|hey|wait|say|then|, }*`
	// Parts or boards behind the verb that begins a question; what they do stands behind them.
	partsNamed = `{the|all|all the|all of the|all my|both|both the|my|our|these|those|each of the|any of the|any|most|a|one|an|each|every|that|this}? ?([a-z0-9]+ ){0,3}`
	doVerbs    = `{all|both|still|really|only|always|just|even|usually|each|ever|actually|currently|now }*{have to|need to|got to|ought to|sit|go|stay|come|stand|cost|run|measure|hang|reach|stop|end|fit|start|want to|hold|equal|keep|land|get|work out|sell|total|average|fetch|retail|list|match|need|carry}`
)

// recasts are such ways.
var recasts = []recast{
	{looks: statesIt, way: asWay(leads + `do{ not}? ` + partsNamed + doVerbs + `\b`), not: asWay(leads + `do{ not}? {i|we|you|they|he|she|it|this|that|so|not|without|what|as|whatever|with|my best|a|an|let|please} |\b{for|to} me\b`), to: claims, whole: true},
	{looks: statesIt, way: asWay(leads + `does{ not}? ` + partsNamed), not: asWay(`does not {have|need|matter|want|hurt|be}\b`), to: claims, whole: true},
	{looks: statesIt, way: asWay(leads + `{have|has}{ not}? ` + partsNamed + `{got to|to} {be|stay|have|measure|stand|sit|go} `), not: asWay(leads + `{have|has} {it|them|him|her|me|us} `), to: claims, whole: true},
	{looks: costsOne, way: asWay(leads + `{do|does|did}{ not}? {a|an|the|one|each|every|your|these|those}? ?brackets? {cost|run|sell for|go for} `), to: pricesOf("bracket"), whole: true},
	{looks: costsOne, way: asWay(leads + `{do|does|did}{ not}? {a|an|the|one|each|every|your|these|those}? ?anchors? {cost|run|sell for|go for} `), to: pricesOf("anchor"), whole: true},
	{looks: costsOne, way: asWay(leads + `{do|does|did}{ not}? {a|an|the|one|each|every|your|these|those}? ?post bases? {cost|run|sell for|go for} `), to: pricesOf("post base"), whole: true},
	{looks: costsOne, way: asWay(leads + `{do|does|did}{ not}? {a|an|the|one|each|every|your|these|those}? ?post caps? {cost|run|sell for|go for} `), to: pricesOf("post cap"), whole: true},
	{looks: statesIt, way: asWay(leads + `do there {still|really|always }?{have to|need to|got to|ought to} be `), to: claims, whole: true},
	{looks: statesIt, way: asWay(leads + `{are|is|was|were}{ not}? ` + partsNamed), not: asWay(leads + `{are|is|was|were}{ not}? {it|that|this|there|no|down|out|up|going|gonna|now|at|about|to|for}\b`), to: claims, whole: true},
	{looks: hear.Stated(solver.Price), way: asWay(leads + `did{ not}? ` + partsNamed + `{cost|go|run|sell|use|get} `), to: claims, whole: true},
	{looks: triesPrice, way: asWay(leads + `{was|were}{ not}? `), to: claims, whole: true},
	{looks: aimsFor, way: asWay(leads + `{would|will|might|does|do|should} {even|equal|cutting|making|having|keeping|setting|spacing|the|all|both|leaving|going} `), not: asWay(`\bplease\b|^do {the|all|both} `), to: tries, whole: true},
	{looks: aimsFor, way: asWay(leads + `{can|could|may|should} {i|we} {just|simply|also|all }?{cut|saw|make|keep|get|leave|trim} .*\b{same|equal|even|alike|one length}\b`), not: asWay(`\bplease\b`), to: tries, whole: true},
	{looks: statesIt, way: asWay(`\b{could|may|might|should} {also|well|just|very well|still|actually|probably|really|possibly|even }*{work|do|suit|be (fine|ok|okay|enough|good|right|plenty|better|nice|possible|nicer)}{ too|as well|here|for us|for me|out|better|fine|nicely}*{ Stop}*$`), not: asWay(`\b{so|make|let|please|but|,}\b`), to: tries},
	{looks: limitsBudget, way: asWay(leads + `{will|does|is|would|do|did|has} {it|that|this|they|all|the|everything|my|our} .*\b{under|below|less than|within}\b`), not: asWay(`\b{stay|keep|remain|hold}\b`), to: claimsUnder, whole: true},
	{looks: limitsBudget, way: asWay(leads + `{will|does|is|would|do|did|has} {it|that|this|they|all|the|everything|my|our} .*\b{over|above|more than|past}\b`), not: asWay(`\b{stay|keep|remain|hold}\b`), to: claimsOver, whole: true},
	{looks: statesOfWall, way: asWay(leads + `{the|our|local|building|fire|state|city|town|county|residential }*{codes?|rule ?book|rules|regulations?|standards?|ordinance|bylaws?|regs} {only|really|here|also|now }*{calls? for|wants?|requires?|demands?|asks? for|needs?|insists? on|specif(y|ies)|mandates?|prescribes?|expects?|stipulates?} `), not: asWay(`\b{so|stick|make|keep|build|follow|go with|do that|that is what|please|let}\b`), to: claims, whole: true},
	{looks: statesOfWall, way: asWay(leads + `{i|we} {have|once|just|also }*{read|heard|saw|learned|was told|were told|gather|understood}{ somewhere|once|online|in [a-z]+|that|it said}* {the|it|a|an|all|every|your|there|no|you} .*\b{should|must|has to|have to|needs? to|ought to|is supposed to|are supposed to|shall|can not|may not}\b`), not: asWay(`\b{so|make|let|please|but|paper|note}\b`), to: claims, whole: true},
	{looks: asksOf(solver.Bay), way: asWay(`\bhow long {is|are|will|does} (the|my|our|that) {opening|doorway|walk - through|walkthrough|entrance|passage|gateway|entry}\b`), to: asksAfter(solver.Opening)},
	{looks: asksOf(solver.OpeningSide), way: asWay(`\bwhere (does|do|will|would|should) (the|my|our|that) {opening|doorway|walk - through|walkthrough|entrance|passage|gateway|entry} {start|begin|commence}( from)?( \?)*$`), to: asksAfter(solver.OpeningFromLeft)},
	{looks: claimsIt, way: asWay(leads + `{could|can|might|may} {my|our|the|his|her} {Asked|son|daughter|brother|sister|crew|kids?|client|owner|friend|uncle|aunt|grandma|grandpa|parents} {still|also|just }?{have|get|use|go with|do|build|make|put} `), to: tries, whole: true},
}

// AskedOfIt makes what was read as a wish the question that it is. Where more stands behind a pause, it is asked back.
func AskedOfIt(r act.Reading, text string) act.Reading {
	if r.Ask != nil || len(r.Acts) == 0 {
		return r
	}
	for i := range recasts {
		w := &recasts[i]
		if slices.ContainsFunc(r.Acts, func(a act.Act) bool { return !w.looks(a) }) || !ways.MatchesWay(w.way, text) || w.not != nil && w.not.MatchString(text) {
			continue
		}
		if w.whole && goesOnBehind.MatchString(text[len(ledOn.FindString(text)):]) {
			q := askback.Meant.Open("is the gap 3")(r.Acts[0], r.Acts)
			return askback.BackAt(r.Acts[0].At, q)
		}
		acts := slices.Clone(r.Acts)
		for i, a := range acts {
			acts[i] = w.to(a)
		}
		for len(acts) > 1 && acts[0].Kind == acts[1].Kind && acts[0].Kind != act.Ask { // what is asked at once is held against the rest at once
			acts[0].Statements = slices.Concat(acts[0].Statements, acts[1].Statements)
			acts[0].End = acts[1].End
			acts = slices.Delete(acts, 1, 2)
		}
		r.Acts = acts
		return r
	}
	return r
}

// ledOn is what leads a line on.
var ledOn = asWay(leads)

// goesOnBehind is more than one question: what stands behind a pause may be a wish.
var goesOnBehind = regexp.MustCompile(`[,;:.!?] .*[a-z0-9]|\b(?:then|so|because|but)\b`)

func statesIt(a act.Act) bool { return a.Kind == act.State && len(a.Statements) > 0 }

func claimsIt(a act.Act) bool { return a.Kind == act.Check && len(a.Statements) > 0 }

func triesPrice(a act.Act) bool {
	return a.Kind == act.WhatIf && len(a.Statements) == 1 && a.Statements[0].Name.Quantity == solver.Price
}

// aimsFor reports whether a goal is set that has no value: equal bays, even gaps, all rails of one length.
func aimsFor(a act.Act) bool {
	return statesIt(a) && a.Statements[0].Name.Quantity == solver.Goal
}

// limitsBudget reports whether more or less than an amount is tried, or held against the budget: what something costs is no budget.
func limitsBudget(a act.Act) bool {
	return (a.Kind == act.WhatIf || a.Kind == act.Check) && len(a.Statements) == 1 && a.Statements[0].Name.Quantity == solver.Budget
}

// costsOne reports whether an amount is claimed to be what all of it costs.
func costsOne(a act.Act) bool {
	return claimsIt(a) && len(a.Statements) == 1 && a.Statements[0].Name.Quantity == solver.CostOf
}

// pricesOf makes what was claimed of the whole cost the price of one thing: "does a bracket cost 3.49".
func pricesOf(item string) func(act.Act) act.Act {
	return func(a act.Act) act.Act {
		a.Statements = slices.Clone(a.Statements)
		a.Statements[0].Name = solver.Name{Quantity: solver.Price, Item: item}
		return a
	}
}

// asksOf are the acts that ask after a quantity.
func asksOf(q solver.Quantity) func(act.Act) bool {
	return func(a act.Act) bool { return a.Kind == act.Ask && a.Name != nil && a.Name.Quantity == q }
}

func claims(a act.Act) act.Act {
	a.Kind = act.Check
	return a
}

func tries(a act.Act) act.Act {
	a.Kind = act.WhatIf
	return a
}

func claimsCost(a act.Act) act.Act {
	a.Kind = act.Check
	a.Statements = slices.Clone(a.Statements)
	a.Statements[0].Name = solver.Name{Quantity: solver.CostOf}
	return a
}

// claimsUnder and claimsOver are for budgets that were read without the word by which they are a limit.
func claimsUnder(a act.Act) act.Act {
	a = claimsCost(a)
	a.Statements[0].Op = solver.LT
	return a
}

func claimsOver(a act.Act) act.Act {
	a = claimsCost(a)
	a.Statements[0].Op = solver.GT
	return a
}

func asksAfter(q solver.Quantity) func(act.Act) act.Act {
	return func(a act.Act) act.Act {
		a.Name = &solver.Name{Quantity: q}
		return a
	}
}
