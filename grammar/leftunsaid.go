package grammar

import (
	"regexp"
	"strings"

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
var planNamed = wordSet("called named")

// leftUnsaid asks back about the first act that a line does not tell for certain.
func leftUnsaid(acts []Act, atoms []atom) *solver.Question {
	for i, a := range acts {
		q := (*solver.Question)(nil)
		if i > 0 && (acts[i-1].Kind == WhatIf || acts[i-1].Kind == Check) && (alters[a.Kind] && a.Kind != State && a.Kind != Take || a.Kind == Quit) && underCondition(acts[i-1], a, atoms) {
			q = &solver.Question{Text: onlyThen.Text, Example: onlyThen.Example}
			at := a.At
			q.At = &at
			return q
		}
		switch a.Kind {
		case Open:
			for _, w := range strings.Fields(strings.Join(a.Words, " ")) {
				if inRoom[w] && !saidBeforeOf(planNamed)(atoms, nil) {
					q = new(qOpenWhich.ask())
				}
			}
		case Forget:
			q = limitOrAll(a, atoms)
		case Check:
			if pastWhatIsMeant.MatchString(textOf(atoms)) && costOnly(a.Statements) || offFromBare(a.Statements) && offFigure.MatchString(textOf(fold(atoms))) {
				q = new(qComesToInAll.ask())
			}
		case Quit:
			if doneWithOne.MatchString(textOf(atoms)) {
				q = &solver.Question{Text: "Done for now, or on to a new wall?", Choices: []string{"quit", "start over"}, Example: "start over"}
			}
			if i > 0 && acts[i-1].Kind == State && onlyWord.MatchString(textOf(atoms)) {
				q = &solver.Question{Text: "Are you done, or is that meant another way?", Choices: []string{"quit"}, Example: "that's all"}
			}
		case State:
			if i > 0 && acts[i-1].Kind == State && offFromBare(append(acts[i-1].Statements[:len(acts[i-1].Statements):len(acts[i-1].Statements)], a.Statements...)) && offFigure.MatchString(textOf(fold(atoms))) {
				q = new(qHowMuchIs.ask("it in all"))
			}
			if q == nil {
				q = pieceUnsaid(a.Statements, atoms)
			}
			if q == nil && i+1 == len(acts) && notThat.MatchString(textOf(atoms)) {
				q = &solver.Question{Text: "Not that, but what?", Example: "gap 2-1/2"}
			}
		case Ask:
			if a.Name != nil && undecided.MatchString(textOf(atoms)) {
				q = &solver.Question{Text: "Shall I work it out, or list what would do?", Choices: []string{Normal([]Act{a}), "ask options"}, Example: "ask options"}
				break
			}
			if a.Topic == "posts" || a.Name != nil && strings.Contains(string(a.Name.Quantity), "post") {
				if postsSpokenOf.MatchString(textOf(atoms)) && !asksAnything(atoms) {
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
func limitOrAll(a Act, atoms []atom) *solver.Question {
	if a.Name == nil || len(a.Statements) > 0 || a.Name.Quantity == solver.Budget || a.Name.Item != "" {
		return nil
	}
	at := atomAt(atoms, a.At)
	if at < 0 {
		return nil
	}
	from, to := clauseAround(atoms, at, atoms[at].end)
	said := textOf(atoms[from:to])
	if a.Name.Quantity == solver.Spare && sparesTossed.MatchString(said) && !strings.Contains(said, " out") && !strings.Contains(said, " away") {
		return &solver.Question{Text: "More spare boards, or none?", Example: "two spare boards"}
	}
	if !limitNamed.MatchString(said) {
		return nil
	}
	all := Normal([]Act{a})
	return &solver.Question{Text: "Which limit is it, or is all of it to go?", Choices: []string{all}, Example: all + " <= 3 in"}
}

// underCondition reports whether a trial before an act is a condition of the same sentence.
func underCondition(tried, a Act, atoms []atom) bool {
	at, to := atomAt(atoms, tried.At), atomAt(atoms, a.At)
	if a.End == 0 {
		to = len(atoms) // an order that filled its clause
	}
	if at < 0 || to < at {
		return false
	}
	from := at
	for from > 0 && !breaks(atoms[from-1]) {
		from--
	}
	for _, x := range atoms[at:to] {
		if x.kind == aSign && (x.text == "." || x.text == "?" || x.text == "!" || x.text == ";") {
			return false
		}
	}
	return underIf.MatchString(textOf(atoms[from:to]))
}

// costOnly reports whether a claim is of the cost alone, as a figure.
func costOnly(all []solver.Statement) bool {
	return len(all) == 1 && all[0].Name.Quantity == "cost" && all[0].Op == solver.Eq
}

// offFromBare reports whether a figure is followed by a limit of the same quantity, and no more.
func offFromBare(all []solver.Statement) bool {
	return len(all) == 2 && all[0].Name == all[1].Name && all[0].Op == solver.Eq && (all[1].Op == solver.LT || all[1].Op == solver.GT)
}

// asksAnything reports whether a word of asking or a question mark stands in a line.
func asksAnything(atoms []atom) bool {
	for _, a := range atoms {
		switch a.text {
		case "?", "where", "how", "what", "which", "why", "show", "tell", "give", "see", "need", "know":
			return true
		}
	}
	return false
}
