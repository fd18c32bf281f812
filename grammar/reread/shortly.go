package reread

import (
	"regexp"
	"slices"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/grammar/ways"
	"saywright/solver"
)

// Short lines lean on what was just answered: "does it work", "how many will fit", "save it". They are heard as a whole, and only
// where nothing else hears them; what they leave open is asked for by its name.

// shortWay is one kind of short line: what it asks, or what it is asked back.
type shortWay struct {
	way      *regexp.Regexp
	act      act.Act
	first    bool // it goes before what its words say one by one
	claimed  bool // it speaks of what was claimed before
	answered bool // it speaks of the answer to what stands: there is one, and nothing was tried since
	ask      solver.Question
}

var shortWays = sync.OnceValue(func() []shortWay {
	whole := func(way string) *regexp.Regexp {
		return regexp.MustCompile(`^(?:(?:so|ok|okay|and|then|well|now|right|alright|um|uh|hm|hmm|but|please|just|oh|yeah|yes|,) )*(?:` + way + `)(?: (?:then|now|please|though|again|anyway|exactly|,))*(?: [.?!])*$`)
	}
	it := `(?:it|this|that|everything|it all|all of it|the whole thing|the wall|my wall)`
	who := `(?:he|she|they|him|the (?:contractor|builder|carpenter|guy|drawing|sketch|plan|plans|quote|sheet|designer|other guy)|my (?:buddy|neighbor|brother|dad|boss|friend))`
	his := `(?:his|her|their|its|the|those|these)(?: (?:numbers|figures|claims|design|plan|plans|sketch|drawing|version|layout|measurements|dimensions|math|sums))`
	return []shortWay{
		{claimed: true, way: whole(`(?:is|was|are|were) ` + who + ` (?:right|correct|wrong|off|close|on the money|even close)(?: about (?:that|it|this|all that))?`)},
		{claimed: true, way: whole(`(?:does|do|did|will|would) (?:` + his + `|his|hers|theirs)(?: all| really)* (?:work|check out|add up|hold up|hold water|fit|hold|agree|go)`)},
		{claimed: true, way: whole(`(?:check|recheck|verify|test) (?:them|those|it|that|all that|everything|his|hers|theirs|` + his + `|what ` + who + ` (?:said|says|say|claims|claim|claimed))(?: again| once more)?`)},
		{claimed: true, way: whole(`(?:(?:i|we) will |let us )?(?:use|take|enter|put in|go with|set|try) (?:his|her|their)(?: own)? ([a-z]+)(?: height| count| width)?(?: instead)?`), act: act.Act{Kind: act.State}},
		{claimed: true, first: true, way: whole(`(?:where|what)(?: all)? (?:did|does|do|has|have) ` + who + ` (?:go wrong|gone wrong|get wrong|got wrong|gotten wrong|slipped up|messed up|mess up|slip up|slip|err|have wrong|miss)`)},
		{claimed: true, first: true, way: whole(`(?:is there |do you (?:see|find|spot) |was there |have you (?:found|spotted) )?(?:anything|something|a mistake|an error|any mistakes?|any errors?)(?: that is)? (?:wrong|off|amiss|incorrect|not right)?(?: ?(?:with|in|about)) (?:his|her|their|the (?:other )?(?:guys|contractors|builders|neighbors|architects)) (?:figures|numbers|claims|sums|math|arithmetic|work|dimensions|measurements|plan|drawing)`)},
		{claimed: true, way: whole(`(?:which|what)(?: one| figure| number| claim| of (?:his|her|their) (?:figures|numbers|claims|sums|dimensions|measurements)| of them| of those| of the (?:figures|numbers|claims))? (?:is|are) (?:off|wrong|not right|incorrect|the wrong one|bad)`)},
		{way: whole(`(?:does|will|would|can|could) ` + it + `(?: all| even| really| actually| still)* (?:work|fit|do|go|go together|go up|add up|come out|hold up|hold together)(?: out)?(?: like (?:this|that)| this way| that way| as it is)?`), act: act.Act{Kind: act.Ask, Topic: "layout"}, answered: true},
		{way: whole(`is ` + it + `(?: all| even| really| actually| still)* (?:ok|okay|all right|alright|fine|possible|doable|feasible|buildable)(?: like (?:this|that)| this way| that way| as it is)?`), act: act.Act{Kind: act.Ask, Topic: "layout"}, answered: true},
		{way: whole(`(?:is|was) (?:anything|something) (?:wrong|in the way|off|missing)`), act: act.Act{Kind: act.Ask, Topic: "layout"}, answered: true},
		{way: whole(`how many (?:will|would|can|could|do|does)(?: i| we| you| it| they)*(?: be able to)? (?:fit|go|get|squeeze|put|have|stack|fit in|get in|go up)(?: in| in there| there| up| between| between them)*`), act: act.Act{Kind: act.Ask, Name: &solver.Name{Quantity: solver.Rails}}},
		{way: whole(`(?:(?:can|could|would|will|might) (?:i|we|you|it|this|that) (?:do|build|make|get|be done|be built|be made|be|go)(?: it| this| that)? (?:any |for )?(?:cheaper|less|less money)|(?:is there |any |is there any )(?:a )?cheaper (?:way|option|version|layout)(?: to (?:do|build|make) (?:it|this|that))?)`), act: act.Act{Kind: act.WhatIf, Statements: []solver.Statement{{Name: solver.Name{Quantity: solver.Goal}, Value: solver.Value{Word: "cheapest"}}}}},
		{first: true, way: whole(`(?:(?:give|show|hand|read|get) (?:me|us) )?(?:the|my|that) list`), ask: solver.Question{Text: "Which list?", Choices: []string{"ask shopping", "ask cuts", "recap"}, Example: "shopping list"}},
		{first: true, way: whole(`how (?:many|much)(?: of the)?(?: boards| lumber| wood| pieces| board)?(?: will be| would be| are| is| do i have| will i have| do we have)? (?:left over|leftover|left|to spare)(?: (?:after|at the end|when (?:i am|we are) done|in the end))?(?: of the (?:boards|lumber|wood))?`), act: act.Act{Kind: act.Ask, Topic: "shopping"}},
		{first: true, way: whole(`(?:what|which)(?: length| size)? (?:length )?(?:boards|board|lumber|stock|planks) (?:do|should|would|must|will|am)(?: i| we)(?: going)?(?: to| need to| have to| want to)* (?:want|need|buy|get|order|pick up)(?: for (?:this|that|it))?`), act: act.Act{Kind: act.Ask, Topic: "shopping"}},
		{way: whole(`now what(?: do i do| happens)?`), act: act.Act{Kind: act.HelpMe}},
		{way: whole(`(?:does|did|do|will|would|could) (?:that|this|it|those) (?:change|affect|alter|move|shift|mess up|mess with|do anything to) (?:the |my |any of the |all the )?([a-z]+)`), act: act.Act{Kind: act.Ask}},
		{way: whole(`(?:the )?bay (?:measures|is|comes to|reads|tapes) [^,]* (?:at|on|along) the (?:bottom|top|floor)(?: .*)?`), ask: askback.WhichBayIs.Ask()},
		{way: whole(`(?:how|what) (?:does|do|will|would) (?:that|this|it) (?:change|affect|do to|mean for) (?:things|anything|everything|it|the wall|the layout|the plan|us|me)`), act: act.Act{Kind: act.Ask, Topic: "layout"}, answered: true},
		{way: whole(`(?:(?:my|our|the) )?(?:floor|slab|deck|patio|ground|concrete|porch) (?:is not level|is off level|is out of level|is not flat|is uneven|slopes|falls|falls away|is sloped|is sloping|is not even|drops|drops off)`), ask: askback.HowItFalls.Ask()},
		{way: whole(`(?:(?:my|our|the) )?(?:floor|slab|deck|patio|concrete|porch) (?:slopes|falls|is off level|is out of level|is out|drops|is off|runs off|falls off)(?: by)?(?: about| maybe)? (?:[0-9/. -]+|(?:a|an|one|two|three|half|quarter|eighth|inch|inches|and|of|in|sixteenths?|eighths|quarters|five|seven)(?: (?:a|an|one|two|three|half|quarter|eighth|inch|inches|and|of|in|sixteenths?|eighths|quarters|five|seven))*)(?: (?:in|inch|inches))?`), ask: askback.ToWhichSide.Offering("the floor drops 1 in to the right")},
		{way: whole(`(?:(?:my|our|the|one) )?(?:(?:left|right) )?(?:end )?post (?:leans|is leaning|is out of plumb|is not plumb|is crooked|is off plumb|tilts|is tilted)`), ask: askback.HowItLeans.Ask()},
		{way: whole(`print(?: it| this| that| it out| the plan| everything)?`), ask: askback.WhichFile.Ask()},
		{way: whole(`(?:at (?:the )?(?:most|max|maximum) )?how many (?:rails|boards|slats|planks|courses|rows)(?: (?:could|can|would|will|might|do|does))?(?: i| we| you| it)?(?: (?:get|fit|have|put|squeeze|use|go|stack))*(?: in| in there| up| between)*(?: at (?:the )?(?:very )?(?:most|max|maximum))?`), act: act.Act{Kind: act.WhatIf, Statements: []solver.Statement{{Name: solver.Name{Quantity: solver.Goal}, Value: solver.Value{Word: "most rails"}}}}},
		{way: whole(`how many(?: (?:is|are) (?:that|it|they|there|those))?`), ask: askback.HowManyOf.Offering("how many rails", "ask rails", "ask shopping", "ask stiffeners")},
		{way: whole(`how many(?: (?:do|will|would|must|should) (?:i|we) (?:need|want|have to have|get))?`), ask: askback.HowManyOf.Offering("how many rails", "ask rails", "ask shopping", "ask stiffeners")},
		{way: whole(`how wide(?: is it| will it be| does it get)?`), ask: askback.HowWide.Offering("how wide is the gap", "ask gap", "ask bay", "ask opening")},
		{way: whole(`(?:save|store|keep)(?: it| this| that| this one| the (?:plan|wall|design)| my (?:plan|wall|design)| everything)?`), ask: askback.WhichName.Offering("save this as porch")},
		{way: whole(`(?:open|load|bring up)(?: it| that| the (?:plan|other one|old one)| my (?:plan|wall))?`), ask: askback.WhichPlan.Ask()},
	}
})

// Shortly hears a short line. ok is false where it is none.
func Shortly(atoms []scan.Atom, c act.Context, first bool) (act.Reading, bool) {
	if len(atoms) > 14 {
		return act.Reading{}, false
	}
	line := scan.Text(atoms)
	for _, w := range shortWays() {
		if w.first != first || w.answered && (!c.Answered || c.Tried) || !ways.MatchesWay(w.way, line) {
			continue
		}
		if w.claimed && w.act.Kind == act.State {
			a := w.act
			a.Statements = claimed(c.Claims, w.way.FindStringSubmatch(line)[1])
			if len(a.Statements) == 0 {
				continue
			}
			var acts []act.Act
			for _, st := range a.Statements {
				acts = append(acts, act.Act{Kind: act.State, Statements: []solver.Statement{st}, At: atoms[0].At, End: atoms[len(atoms)-1].End})
			}
			return act.Reading{Acts: acts}, true
		}
		if w.claimed {
			if len(c.Claims) == 0 {
				at := atoms[0].At
				return act.Reading{Ask: &solver.Question{At: &at, Text: "Nothing was claimed yet. What do they say?", Example: "he says six rails, gap 2-3/8"}}, true
			}
			a := act.Act{Kind: act.Check, Statements: c.Claims, At: atoms[0].At, End: atoms[len(atoms)-1].End}
			return act.Reading{Acts: []act.Act{a}}, true
		}
		if w.act.Kind == act.Ask && w.act.Topic == "" && w.act.Name == nil {
			acts, err := parse.Parse("ask " + changedName(w.way.FindStringSubmatch(line)[1]))
			if err != nil {
				continue
			}
			return act.Reading{Acts: acts}, true
		}
		if w.act.Kind != "" {
			a := w.act
			a.At, a.End = atoms[0].At, atoms[len(atoms)-1].End
			return act.Reading{Acts: []act.Act{a}}, true
		}
		q := w.ask
		for _, choice := range q.Choices {
			if acts, err := parse.Parse(choice); err == nil && slices.Contains(c.Settled, choice) {
				return act.Reading{Acts: acts}, true
			}
		}
		at := atoms[0].At
		q.At = &at
		if askback.AsksOne(&q, askback.WhichPlan) {
			for _, n := range c.Saved[:min(4, len(c.Saved))] {
				q.Choices = append(q.Choices, "open "+n)
			}
		}
		return act.Reading{Ask: &q}, true
	}
	return act.Reading{}, false
}

// changedName is the name of what a change may bear on.
func changedName(word string) string {
	switch word {
	case "gaps", "spacing":
		return "gap"
	case "boards", "slats", "count":
		return "rails"
	case "height":
		return "wall height"
	case "price", "total", "money":
		return "cost"
	case "list", "order":
		return "shopping"
	case "cut", "lengths":
		return "cuts"
	case "everything", "anything", "wall", "plan", "things":
		return "layout"
	}
	return word
}

// claimedBy are the quantities that a claim can be taken over by, by their first word; with a word for all of it, every one.
var claimedBy = map[string]string{
	"gap": "gap", "gaps": "gap", "spacing": "gap", "rails": "rails", "rail": "rails", "boards": "rails", "slats": "rails", "wall": "wall height", "height": "wall height", "opening": "opening", "doorway": "opening",
	"span": "span", "bay": "bay", "bays": "bays", "stiffeners": "stiffeners", "posts": "added posts",
	"numbers": "", "figures": "", "design": "", "plan": "", "version": "", "layout": "", "measurements": "", "dimensions": "",
}

// claimed lists the claims that a word takes over: what is cut, marked, paid or counted in boards is no setting.
func claimed(claims []solver.Statement, word string) (list []solver.Statement) {
	begins, ok := claimedBy[word]
	for _, st := range claims {
		switch st.Name.Quantity {
		case solver.CutOf, solver.MarksOf, solver.Boards, solver.CostOf:
			continue
		}
		if q := string(st.Name.Quantity); ok && (begins == "" || q == begins) {
			list = append(list, st)
		}
	}
	return list
}
