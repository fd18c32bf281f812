package hear

import (
	"regexp"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lumberlist"
	"saywright/grammar/parse"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
	"saywright/solver"
)

// What a line does not tell for certain is asked back before it is done: whether all of a quantity is to be forgotten or its limit alone,
// whether something goes in any case or only under a condition, whether somebody is done or speaks of a finished size.

var (
	limitNamed      = regexp.MustCompile(`\b(?:limits?|maximums?|minimums?|max|min|ceiling)\b`)
	underIf         = regexp.MustCompile(`^(?:(?:and|but|so|well|ok|okay|then|now) )*(?:if|in case|should)\b`)
	onlyWord        = regexp.MustCompile(`(?:[0-9"]|inch|inches|feet|foot|one|two|three|four|five|six|seven|eight|nine|ten|high|wide|clear|half|quarter|mm) (?:[,.;-] )?(?:and )?(?:all )?(?:finished|complete|completed)\b`)
	notThat         = regexp.MustCompile(`[,.;] (?:but )?not (?:that|this|those)(?: one| much| way)? ?[.!]?$`)
	doneWithOne     = regexp.MustCompile(`\b(?:done|finished|through) with (?:this|that)(?: one| wall| job| layout| project)?(?: [.!])?$`)
	undecided       = regexp.MustCompile(`(?:^|[,.;] )(?:(?:but|and|so|well) )*(?:i|we) (?:do not|don't|never) (?:really |quite |yet )?know (?:yet )?(?:what|which|how) [a-z ]+ (?:i|we) (?:really |even |actually )?(?:want|need|like|prefer|would like)\b`)
	offFigure       = regexp.MustCompile(`[0-9] (?:dollars |bucks )?(?:over|under|above|below|less than|more than) [0-9]|(?:inch|quarter|half|eighth|sixteenth|inches) (?:over|under|above|below|less than|more than) (?:[0-9]|two|three|four|five|six)`)
	pastWhatIsMeant = regexp.MustCompile(`(?:[0-9]|dollars|bucks) (?:over|above|under|below|past|beyond|more than|less than) (?:my|our|the|his|her|their|your|what) `)
	sparesTossed    = regexp.MustCompile(`\b(?:toss|chuck|pitch|throw|dump|bin) (?:a|an|one|two|three|four|five|six|[0-9]+) (?:spares?|extras?)\b`)
	postsSpokenOf   = regexp.MustCompile(`(?:^|[,.;] )(?:all |both |the |my |our )*(?:end |new |added )?posts? (?:is|are|was|were|have been|has been) (?:all |now |already )*(?:in|up|out|off|cut|done|finished|struck|crossed|left|taken|gone|bought|ordered|here|ready)\b|\b(?:done|finished|through|it|work|busy) (?:on|with) (?:all |both |the |my |our )*(?:end |new |added )?posts?\b`)
)

// planNamed tell that a plan's name follows.
var planNamed = scan.WordSet("called named")

// leftUnsaid asks back about the first act that a line does not tell for certain.
func leftUnsaid(acts []act.Act, atoms []scan.Atom) *solver.Question {
	for i, a := range acts {
		q := (*solver.Question)(nil)
		if i > 0 && (acts[i-1].Kind == act.WhatIf || acts[i-1].Kind == act.Check) && (Alters[a.Kind] && a.Kind != act.State && a.Kind != act.Take || a.Kind == act.Quit) && underCondition(acts[i-1], a, atoms) {
			q = &solver.Question{Text: parse.OnlyThen.Text, Example: parse.OnlyThen.Example}
			at := a.At
			q.At = &at
			return q
		}
		switch a.Kind {
		case act.Open:
			for _, w := range strings.Fields(strings.Join(a.Words, " ")) {
				if InRoom[w] && !phrase.SaidBeforeOf(planNamed)(atoms, nil) {
					q = new(askback.OpenWhich.Ask())
				}
			}
		case act.Forget:
			q = limitOrAll(a, atoms)
		case act.Check:
			if pastWhatIsMeant.MatchString(scan.Text(atoms)) && CostOnly(a.Statements) || offFromBare(a.Statements) && offFigure.MatchString(scan.Text(chunk.Fold(atoms))) {
				q = new(askback.ComesToInAll.Ask())
			}
		case act.Quit:
			if doneWithOne.MatchString(scan.Text(atoms)) {
				q = &solver.Question{Text: "Done for now, or on to a new wall?", Choices: []string{"quit", "start over"}, Example: "start over"}
			}
			if i > 0 && acts[i-1].Kind == act.State && onlyWord.MatchString(scan.Text(atoms)) {
				q = &solver.Question{Text: "Are you done, or is that meant another way?", Choices: []string{"quit"}, Example: "that's all"}
			}
		case act.State:
			if i > 0 && acts[i-1].Kind == act.State && offFromBare(append(acts[i-1].Statements[:len(acts[i-1].Statements):len(acts[i-1].Statements)], a.Statements...)) && offFigure.MatchString(scan.Text(chunk.Fold(atoms))) {
				q = new(askback.HowMuchIs.Ask("it in all"))
			}
			if q == nil {
				q = lumberlist.PieceUnsaid(a.Statements, atoms)
			}
			if q == nil && i+1 == len(acts) && notThat.MatchString(scan.Text(atoms)) {
				q = &solver.Question{Text: "Not that, but what?", Example: "gap 2-1/2"}
			}
		case act.Ask:
			if a.Name != nil && undecided.MatchString(scan.Text(atoms)) {
				q = &solver.Question{Text: "Shall I work it out, or list what would do?", Choices: []string{parse.Normal([]act.Act{a}), "ask options"}, Example: "ask options"}
				break
			}
			if a.Topic == "posts" || a.Name != nil && strings.Contains(string(a.Name.Quantity), "post") {
				if postsSpokenOf.MatchString(scan.Text(atoms)) && !idiom.AsksAnything(atoms) {
					q = &solver.Question{Text: "What is to be done about the posts?", Example: "where do the posts go"}
				}
			}
		}
		if q != nil {
			at := a.At
			q.At = &at
			return q
		}
	}
	return nil
}

// limitOrAll asks whether all of a quantity is to be forgotten, where a limit was named without its figure.
func limitOrAll(a act.Act, atoms []scan.Atom) *solver.Question {
	if a.Name == nil || len(a.Statements) > 0 || a.Name.Quantity == solver.Budget || a.Name.Item != "" {
		return nil
	}
	at := AtomAt(atoms, a.At)
	if at < 0 {
		return nil
	}
	from, to := clauseAround(atoms, at, atoms[at].End)
	said := scan.Text(atoms[from:to])
	if a.Name.Quantity == solver.Spare && sparesTossed.MatchString(said) && !strings.Contains(said, " out") && !strings.Contains(said, " away") {
		return &solver.Question{Text: "More spare boards, or none?", Example: "two spare boards"}
	}
	if !limitNamed.MatchString(said) {
		return nil
	}
	all := parse.Normal([]act.Act{a})
	return &solver.Question{Text: "Which limit is it, or is all of it to go?", Choices: []string{all}, Example: all + " <= 3 in"}
}

// underCondition reports whether a trial before an act is a condition of the same sentence.
func underCondition(tried, a act.Act, atoms []scan.Atom) bool {
	at, to := AtomAt(atoms, tried.At), AtomAt(atoms, a.At)
	if a.End == 0 {
		to = len(atoms) // an order that filled its clause
	}
	if at < 0 || to < at {
		return false
	}
	from := at
	for from > 0 && !chunk.Breaks(atoms[from-1]) {
		from--
	}
	for _, x := range atoms[at:to] {
		if x.Kind == scan.Sign && (x.Text == "." || x.Text == "?" || x.Text == "!" || x.Text == ";") {
			return false
		}
	}
	return underIf.MatchString(scan.Text(atoms[from:to]))
}

// CostOnly reports whether a claim is of the cost alone, as a figure.
func CostOnly(all []solver.Statement) bool {
	return len(all) == 1 && all[0].Name.Quantity == "cost" && all[0].Op == solver.Eq
}

// offFromBare reports whether a figure is followed by a limit of the same quantity, and no more.
func offFromBare(all []solver.Statement) bool {
	return len(all) == 2 && all[0].Name == all[1].Name && all[0].Op == solver.Eq && (all[1].Op == solver.LT || all[1].Op == solver.GT)
}
