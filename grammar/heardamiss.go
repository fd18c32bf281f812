package grammar

import (
	"regexp"
	"strings"

	"saywright/solver"
)

// Lines of which something is heard though something else is said: what is not asked for ("no need to tell me why the gap is what it is"), what
// is asked of the hearer's own work, help with a lift, rails that are gone, a count that reads as inches ("can I get six in there").

// countWord is a count that may stand without its noun.
const countWord = `(?:one|two|three|four|five|six|seven|eight|nine|ten|[0-9]+)`

// heardAmiss are such lines, each with what is heard of it.
var heardAmiss = []openWay{
	{looks: kindOf(Ask, Why, Teach, ShowAll), way: regexp.MustCompile(`\b(?:no need|do not bother|no point|no use) (?:to|in|for you to) (?:tell|telling|show|showing|explain|explaining|say|give|list|draw|read|go)\b`), ask: qWhatToKnow.open("gap 2-1/2")},
	{looks: asksAny, way: regexp.MustCompile(`\byour own (?:fence|wall|deck|porch|house|place|gate|garden|yard)\b`), ask: qOnlyTheWall.open("how many rails")},
	{looks: kindOf(Forget), way: regexp.MustCompile(`\b(?:lift|hold|move|carry|grab|raise) (?:this|that|these|those) (?:[a-z]+|[0-9]+) (?:by|x) (?:[a-z]+|[0-9]+)`), ask: qForgetWhat.open("forget gap")},
	{looks: stated(solver.Span), way: regexp.MustCompile(`\bbetween\b.*\b(?:comes?|goes?|stands?|sits?|is|are|stays?|posts) (?:one|two|three|1|2|3|another) more\b`), ask: qMeant.open("one more added post")},
	{looks: valued, way: regexp.MustCompile(`\bneither (?:the |my |our )?[a-z ]+ nor (?:the |my |our )?[a-z ]+ (?:is|are|equals?|measures?) `), not: regexp.MustCompile(`\b(?:under|over|below|above|more|less) `), ask: qMeant.open("gap at most 3, bottom gap at most 3")},
	{looks: stated(solver.Rails, solver.Opening, solver.AddedPosts, solver.Gap, solver.Stiffeners), way: regexp.MustCompile(`\b(?:rails?|boards?|slats?|planks?|posts?|stiffeners?|[0-9/]+|` + countWord + `) (?:gone|missing|stolen)(?: now| already| again)?(?: [.!])*$`), ask: qMeant.open("one rail fewer")},
	{looks: stated(solver.Bay), way: regexp.MustCompile(`\bbay ` + countWord + ` [^,]*, (?:and )?(?:the )?next (?:one )?(?:is |at )?` + countWord), ask: qWhichBayIs.open("bay 2 is 50")},
	{looks: stated(solver.Gap, solver.BottomGap, solver.WallHeight), way: regexp.MustCompile(`^(?:and |but |so )*no more (?:rails|boards|slats|planks|posts|bays|stiffeners|brackets)\b`), ask: qMeant.open("rails at most 6")},
	{looks: kindOf(Check), way: regexp.MustCompile(`\b(?:top|bottom|lowest|highest) (?:one|rail|board|slat|plank)s?\b.*\b(?:longer|shorter)\b`), ask: qMeant.open("cut list")},
	{looks: stated(solver.BottomGap), way: regexp.MustCompile(`\bhow (?:high|far|low|tall)(?: up)? ?(?:is|'s|does|do) (?:the|that) (?:bottom|lowest|first|low) one\b`), ask: qMeant.open("how high is the bottom rail")},
	{looks: triesLength, way: regexp.MustCompile(`\b(?:get|fit|put|squeeze|have|cram) ` + countWord + ` in (?:there|here|it|each|every|all|under)\b`), ask: qMeant.open("what if six rails")},
	{looks: triesItsGoal, way: regexp.MustCompile(`\bwith\b`), ask: qMeant.open("what if five rails")},
}

// triesLength reports whether a length is tried.
func triesLength(a Act) bool {
	return a.Kind == WhatIf && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Length
}

// triesItsGoal reports whether the best of a quantity is tried together with a value of it: "the biggest gap with five".
func triesItsGoal(a Act) bool {
	if a.Kind != WhatIf {
		return false
	}
	for _, goal := range a.Statements {
		for _, st := range a.Statements {
			if goal.Name.Quantity == solver.Goal && st.Name.Quantity != solver.Goal && strings.HasSuffix(goal.Value.Word, " "+string(st.Name.Quantity)) {
				return true
			}
		}
	}
	return false
}

// endOfTalk is where a line ends but for the sounds that people make while they think: "between two and, uh".
func endOfTalk(atoms []atom) int {
	n := len(atoms)
	for n > 1 && soundsOnly[atoms[n-1].text] {
		n--
		for n > 1 && n < len(atoms) && (atoms[n-1].text == "," || atoms[n-1].text == "-" || atoms[n-1].text == "...") {
			n--
		}
	}
	return atoms[n-1].end
}

// soundsOnly are sounds that people make while they think.
var soundsOnly = wordSet("uh um er erm hmm hm uhm")
