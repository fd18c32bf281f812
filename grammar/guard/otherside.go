package guard

import (
	"regexp"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/lex"
	"saywright/solver"
)

// "Other side, please": of the opening, where that is what was spoken of and it stands at one side now. Of nothing else there are two sides to choose from, but
// it may be the ground beyond the wall; so what was not just spoken of is asked back.

var (
	otherSideSaid = regexp.MustCompile(`^(?:(?:no|wait|actually|oh|ok|okay|so|and|but|hmm?|um|uh|yeah|nah|nope|sorry|well|now|then|oops)[, ]+)*(what if |what about |how about |could it go |can it go )?` +
		`(?:(?:i|we) (?:want|need|meant|mean|would like) (?:it |that )?|let's (?:try|do|go with) |try )?` +
		`(?:(?:it|that|the (?:opening|doorway|walk[- ]?through|door|gate))(?: is|'s| goes| was| should be| goes over| should go) )?` +
		`(?:(?:put|move|make|flip|switch|swap|set|have|shift|slide|bring|turn|take) (?:it|that|this|the (?:opening|doorway|walk[- ]?through|door|gate)) )?(?:over )?(?:(?:to|on|at|onto|against) )?(?:the )?other (?:side|end)` +
		`(?:(?:,)? (?:please|instead|then|now|thanks|rather|i mean|i guess))*[ .!?]*$`)
	sidesSwapped = regexp.MustCompile(`^(?:(?:no|wait|actually|oh|ok|okay|so|and|but|hm|well|now|then)[, ]+)*(?:can (?:we|you|i) |let's |please )?(?:switch|swap|flip|change) (?:the )?(?:opening'?s? )?(?:sides|ends)(?: (?:please|then|now))*[ .!?]*$`)
	saysOpening  = regexp.MustCompile(`\b(?:opening|doorway|walk[- ]?through|door|gate)`)
)

// OtherSide reads a line that asks for the other side.
func OtherSide(line string, c act.Context) (act.Reading, bool) {
	said := strings.ToLower(line)
	if !strings.Contains(said, "other") && !strings.Contains(said, "sides") && !strings.Contains(said, "ends") {
		return act.Reading{}, false
	}
	said = strings.Join(strings.Fields(said), " ")
	if !strings.Contains(said, "other ") && !strings.Contains(said, "sides") && !strings.Contains(said, "ends") || c.Deep {
		return act.Reading{}, false
	}
	found := otherSideSaid.FindStringSubmatch(said)
	if found == nil && !sidesSwapped.MatchString(said) {
		return act.Reading{}, false
	}
	kind := act.State
	if found != nil && found[1] != "" {
		kind = act.WhatIf
	}
	spoken := saysOpening.MatchString(said)
	for _, n := range c.Lately {
		spoken = spoken || strings.HasPrefix(string(n.Quantity), "opening")
	}
	at := 0
	to := FarSide(c)
	set := func(side string) act.Act {
		st := solver.Statement{Name: solver.Name{Quantity: solver.OpeningSide}, Op: solver.Eq, Value: solver.Value{Word: side}}
		return act.Act{Kind: kind, Statements: []solver.Statement{st}, End: len([]rune(line))}
	}
	switch {
	case to != "" && spoken:
		return act.Reading{Acts: []act.Act{set(to)}}, true
	case to != "":
		form := set(to).String()
		return act.Reading{Ask: &solver.Question{At: &at, Text: "Shall the opening go to the other side?", Choices: []string{form}, Example: form}, Own: true}, true
	case spoken:
		left, right := set("left").String(), set("right").String()
		return act.Reading{Ask: &solver.Question{At: &at, Text: "At which side shall the opening be?", Choices: []string{left, right}, Example: right}, Own: true}, true
	}
	return askback.OtherSide.AskAt(at), true
}

// FarSide is the side that the one opening does not stand at; "" where it stands free, or there is none.
func FarSide(c act.Context) string {
	if c.Now == nil {
		return ""
	}
	if n, ok := c.Now(solver.Name{Quantity: solver.Openings}); !ok || !n.Eq(lex.OneRat) {
		return ""
	}
	for q, side := range map[solver.Quantity]string{solver.OpeningFromLeft: "right", solver.OpeningFromRight: "left"} {
		if from, ok := c.Now(solver.Name{Quantity: q}); ok && from.Sign() == 0 {
			return side
		}
	}
	return ""
}
