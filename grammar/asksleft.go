package grammar

import (
	"regexp"
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/solver"
)

// What a line asks is asked by what was heard of it, as its figures are told (figuresleft.go): "how high would six rails at two and a half be" is no trial
// of six rails alone.

// askedAfter are the ways to ask after something by a word of its own.
var askedAfter = regexp.MustCompile(`(?:^|[,;.] )(?:(?:so|and|but|ok|okay|well|then|now|hey|say|tell me) )*how (?:high|tall|wide|long|many|much|deep) |\b(?:do|will|would) (?:i|we|you|it|they) (?:still |really |also |even )?need (?:a|an|any|another|more|stiffeners|posts)\b|(?:be|get|come out|work out) (?:any )?cheaper\b`)

// answered is a question that is answered in the same breath: "how many rails? six".
var answered = regexp.MustCompile(`\? *[a-z0-9]`)

// questionLeft asks back what is asked where nothing of what was heard asks.
func questionLeft(r act.Reading, said string) act.Reading {
	if len(r.Acts) == 0 || slices.ContainsFunc(r.Acts, asksSomething) {
		return r
	}
	low := strings.ToLower(said)
	if at := askedAfter.FindStringIndex(low); at != nil && !strings.Contains(low, "how many times") && !answered.MatchString(low[at[0]:]) {
		q := askback.WhatToKnow.Ask()
		q.Example = "what if six rails, then how tall is the wall"
		return askback.BackAt(len([]rune(low[:at[0]])), q)
	}
	return r
}

// orderedBeside is an order that stands by itself in a line: "ooh, go with that, and what does it cost".
var orderedBeside = regexp.MustCompile(`(?:^|[,;.!] |\band |\bthen )(?:(?:yes|yep|yeah|ok|okay|oh|ooh|right|so|please|now|just|then|and|[a-z]*h) )*(?:undo (?:that|it|this)|go (?:with|for) that(?: one)?|(?:take|i'll take|we'll take) (?:that|that one|the (?:first|second|third)(?: one)?)|save (?:it|this|that)|start over)(?:\b[^a-z']*(?:$|and\b|then\b|please\b|as\b|[,;.!])|$)`)

// whyBegins begins a question for a reason; showBehind asks to see something behind what is taught.
var (
	whyBegins  = regexp.MustCompile(`(?:^|[,;.?!] |\band )(?:(?:and|so|but|then) )*why\b`)
	showBehind = regexp.MustCompile(`[a-z] ?(?:,|;|\.)? (?:and|then) (?:then )?(?:show|give|read) me\b`)
)

// whyLeft asks back where fewer reasons were asked for than the line asks, or nothing is shown behind what is taught.
func whyLeft(r act.Reading, said string) act.Reading {
	whys, taught := 0, len(r.Acts) > 0
	for _, a := range r.Acts {
		if a.Kind == act.Why || a.Kind == act.WhyNot {
			whys++
		}
		taught = taught && a.Kind == act.Teach
	}
	if whys == 0 && !taught {
		return r
	}
	low := strings.ToLower(said)
	if whys > 0 && len(whyBegins.FindAllStringIndex(low, -1)) > whys || taught && showBehind.MatchString(low) {
		return askback.BackAt(0, solver.Question{Text: "One question at a time, please. Which first?", Example: "why rails"})
	}
	return r
}

// orderLeft asks back what is ordered where all that was heard are questions.
func orderLeft(r act.Reading, said string) act.Reading {
	if len(r.Acts) == 0 || slices.ContainsFunc(r.Acts, func(a act.Act) bool { return a.Kind != act.Ask && a.Kind != act.Why }) {
		return r
	}
	low := strings.ToLower(said)
	if at := orderedBeside.FindStringIndex(low); at != nil {
		return askback.BackAt(len([]rune(low[:at[0]])), solver.Question{Text: "Shall that be done first? Please say it by itself.", Example: "take that"})
	}
	return r
}

// asksSomething reports whether an act asks, or holds something against what stands.
func asksSomething(a act.Act) bool {
	if slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Name.Quantity == solver.Goal }) {
		return true // "how many rails could I fit at most"
	}
	return a.Kind != act.State && a.Kind != act.WhatIf && a.Kind != act.Check && a.Kind != act.Forget
}
