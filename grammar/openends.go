package grammar

import (
	"regexp"

	"saywright/solver"
)

// Words at the end of a line that leave open what was said before them: "six boards plus", "wall 48 high no wait", "six boards, yeah
// right", "not quite six boards". They are looked for as they were said; what was read before them is asked back. Common ways of
// speech, no source.

var openEnds = []openWay{
	{looks: changesByItself, way: regexp.MustCompile(`[a-z0-9"] ,? ?(?:plus|minus|and down)(?: [.!])*$`), ask: openQuestion("How much more, or how much less?", "half an inch more")},
	{looks: valued, way: regexp.MustCompile(`[a-z0-9"] ,? ?no ,? ?(?:wait|hold on|hang on)(?: [,.!-])*$`), ask: whatThen},
	{looks: valued, way: regexp.MustCompile(`\bnot quite (?:a |an )?` + anyFigure + `\b`), not: regexp.MustCompile(`\b(?:but|make|say|says)\b`), ask: openQuestion("A little less: how much is it?", "gap 2-7/8")},
	{looks: valued, way: regexp.MustCompile(`[a-z0-9"] ,? ?yeah ,? ?(?:right|sure)(?: [.!])*$`), ask: wantedHere},
	{looks: kindOf(Quit), way: regexp.MustCompile(`[a-z0-9"] (?:until|till) (?:tomorrow|monday|next week|then|later)(?: [.!])*$`), not: regexp.MustCompile(`\b(?:done|finished|quit|bye|see you|leave it|that is it|enough)\b`), ask: wantedHere},
	{looks: kindOf(State), way: regexp.MustCompile(`[a-z0-9"] last (?:year|summer|winter|fall|spring|month|week|time)(?: [.!])*$`), not: regexp.MustCompile(`\b(?:like|as|than|not|from|but|same|since|now|more|less|before|bought|ordered|sold|got|have)\b`), ask: wantedHere},
	{looks: kindOf(State), way: regexp.MustCompile(`^[^?]*[a-z0-9"] ,? ?do you think(?: [.!?])*$`), not: regexp.MustCompile(`^(?:[a-z]+ , )?(?:what|how|which|why|is|are|can|could|will|would|should|do|does|where|when)\b`), ask: openQuestion("Shall I set that, or only try it?", "what if five rails")},
	{looks: kindOf(Check), way: regexp.MustCompile(`^(?:(?:and|but|so|well) )*(?:he|she|they|(?:my|the|our) [a-z]+) (?:once |first |always |just )?wanted [^?]*$`), not: regexp.MustCompile(`\b(?:is|can|will|would|does|do) (?:he|she|it|that|they|this)\b|\b(?:right|possible|check|ok|okay|work|fit)\b`), ask: wantedHere},
	{looks: stated(solver.WallHeight), way: regexp.MustCompile(`^(?:the|my|our) (?:roof|stack|pile|slope|deck|porch|slab|patio|ditch) (?:is|stands|sits) (?:about )?[0-9a-z -]+ (?:high|tall)(?: [.!])*$`), ask: openQuestion("Is that the height of the wall?", "wall 48 high")},
}

// anyFigure is a figure as it is written or said, its first word.
const anyFigure = `(?:[0-9]+|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|[a-z]+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)`

// changesByItself are acts that change a value by an amount.
func changesByItself(a Act) bool {
	return valued(a) && (a.Statements[0].Op == solver.Plus || a.Statements[0].Op == solver.Minus)
}
