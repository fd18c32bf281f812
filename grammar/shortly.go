package grammar

import (
	"regexp"
	"slices"
	"strings"
	"sync"

	"saywright/solver"
)

// Short lines lean on what was just answered: "does it work", "how many will fit", "save it". They are heard as a whole, and only
// where nothing else hears them; what they leave open is asked for by its name.

// shortWay is one kind of short line: what it asks, or what it is asked back.
type shortWay struct {
	way      *regexp.Regexp
	act      Act
	answered bool // it speaks of the answer to what stands: there is one, and nothing was tried since
	ask      solver.Question
}

var shortWays = sync.OnceValue(func() []shortWay {
	whole := func(way string) *regexp.Regexp {
		return regexp.MustCompile(`^(?:(?:so|ok|okay|and|then|well|now|right|alright|um|uh|hm|hmm|but|please|just|oh|yeah|yes|,) )*(?:` + way + `)(?: (?:then|now|please|though|again|anyway|exactly|,))*(?: [.?!])*$`)
	}
	it := `(?:it|this|that|everything|it all|all of it|the whole thing|the wall|my wall)`
	return []shortWay{
		{way: whole(`(?:does|will|would|can|could) ` + it + `(?: all| even| really| actually| still)* (?:work|fit|do|go|go together|go up|add up|come out|hold up|hold together)(?: out)?(?: like (?:this|that)| this way| that way| as it is)?`), act: Act{Kind: Ask, Topic: "layout"}, answered: true},
		{way: whole(`is ` + it + `(?: all| even| really| actually| still)* (?:ok|okay|all right|alright|fine|possible|doable|feasible|buildable)(?: like (?:this|that)| this way| that way| as it is)?`), act: Act{Kind: Ask, Topic: "layout"}, answered: true},
		{way: whole(`(?:is|was) (?:anything|something) (?:wrong|in the way|off|missing)`), act: Act{Kind: Ask, Topic: "layout"}, answered: true},
		{way: whole(`how many (?:will|would|can|could|do|does)(?: i| we| you| it| they)*(?: be able to)? (?:fit|go|get|squeeze|put|have|stack|fit in|get in|go up)(?: in| in there| there| up| between| between them)*`), act: Act{Kind: Ask, Name: &solver.Name{Quantity: solver.Rails}}},
		{way: whole(`(?:(?:can|could|would|will|might) (?:i|we|you|it|this|that) (?:do|build|make|get|be done|be built|be made|be|go)(?: it| this| that)? (?:any |for )?(?:cheaper|less|less money)|(?:is there |any |is there any )(?:a )?cheaper (?:way|option|version|layout)(?: to (?:do|build|make) (?:it|this|that))?)`), act: Act{Kind: WhatIf, Statements: []solver.Statement{{Name: solver.Name{Quantity: solver.Goal}, Value: solver.Value{Word: "cheapest"}}}}},
		{way: whole(`(?:how|what) (?:does|do|will|would) (?:that|this|it) (?:change|affect|do to|mean for) (?:things|anything|everything|it|the wall|the layout|the plan|us|me)`), act: Act{Kind: Ask, Topic: "layout"}, answered: true},
		{way: whole(`(?:(?:my|our|the) )?(?:floor|slab|deck|patio|ground|concrete|porch) (?:is not level|is off level|is out of level|is not flat|is uneven|slopes|falls|falls away|is sloped|is sloping|is not even|drops|drops off)`), ask: solver.Question{Text: "How far does it fall, and to which side?", Example: "the floor drops 1 in to the right"}},
		{way: whole(`(?:(?:my|our|the|one) )?(?:(?:left|right) )?(?:end )?post (?:leans|is leaning|is out of plumb|is not plumb|is crooked|is off plumb|tilts|is tilted)`), ask: solver.Question{Text: "How far, to which side, over what height?", Example: "left post leans 3/8 in right in 48 in"}},
		{way: whole(`print(?: it| this| that| it out| the plan| everything)?`), ask: solver.Question{Text: "Into which file?", Example: "print to porch.html"}},
		{way: whole(`how many(?: (?:is|are) (?:that|it|they|there|those))?`), ask: solver.Question{Text: "How many of what?", Choices: []string{"ask rails", "ask shopping", "ask stiffeners"}, Example: "how many rails"}},
		{way: whole(`how many(?: (?:do|will|would|must|should) (?:i|we) (?:need|want|have to have|get))?`), ask: solver.Question{Text: "How many of what?", Choices: []string{"ask rails", "ask shopping", "ask stiffeners"}, Example: "how many rails"}},
		{way: whole(`how wide(?: is it| will it be| does it get)?`), ask: solver.Question{Text: "How wide is what?", Choices: []string{"ask gap", "ask bay", "ask opening"}, Example: "how wide is the gap"}},
		{way: whole(`(?:save|store|keep)(?: it| this| that| this one| the (?:plan|wall|design)| my (?:plan|wall|design)| everything)?`), ask: solver.Question{Text: "Under which name?", Example: "save this as porch"}},
		{way: whole(`(?:open|load|bring up)(?: it| that| the (?:plan|other one|old one)| my (?:plan|wall))?`), ask: solver.Question{Text: "Which plan?", Example: "open porch"}},
	}
})

// shortly hears a short line. ok is false where it is none.
func shortly(atoms []atom, c Context) (Reading, bool) {
	if len(atoms) > 14 {
		return Reading{}, false
	}
	said := make([]string, len(atoms))
	for i, a := range atoms {
		said[i] = a.text
	}
	line := strings.Join(said, " ")
	for _, w := range shortWays() {
		if !w.way.MatchString(line) || w.answered && (!c.Answered || c.Tried) {
			continue
		}
		if w.act.Kind != "" {
			a := w.act
			a.At, a.End = atoms[0].at, atoms[len(atoms)-1].end
			return Reading{Acts: []Act{a}}, true
		}
		q := w.ask
		for _, choice := range q.Choices {
			if acts, err := Parse(choice); err == nil && slices.Contains(c.Settled, choice) {
				return Reading{Acts: acts}, true
			}
		}
		at := atoms[0].at
		q.At = &at
		if strings.HasPrefix(q.Example, "open") {
			for _, n := range c.Saved[:min(4, len(c.Saved))] {
				q.Choices = append(q.Choices, "open "+n)
			}
		}
		return Reading{Ask: &q}, true
	}
	return Reading{}, false
}
