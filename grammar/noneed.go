package grammar

import (
	"regexp"

	"saywright/solver"
)

// What is not asked for ("no need to tell me why the gap is what it is"), what is asked of the hearer's own work, and help with a lift.

// notNeeded are lines of which something is heard though nothing of the wall is asked or taken back.
var notNeeded = []openWay{
	{looks: kindOf(Ask, Why, Teach, ShowAll), way: regexp.MustCompile(`\b(?:no need|do not bother|no point|no use) (?:to|in|for you to) (?:tell|telling|show|showing|explain|explaining|say|give|list|draw|read|go)\b`), ask: qWhatToKnow.open("gap 2-1/2")},
	{looks: asksAny, way: regexp.MustCompile(`\byour own (?:fence|wall|deck|porch|house|place|gate|garden|yard)\b`), ask: qOnlyTheWall.open("how many rails")},
	{looks: stated(solver.Span), way: regexp.MustCompile(`\bbetween\b.*\b(?:comes?|goes?|stands?|sits?|is|are|stays?) (?:one|two|three|1|2|3|another) more\b`), ask: qMeant.open("one more added post")},
	{looks: valued, way: regexp.MustCompile(`\bneither (?:the |my |our )?[a-z ]+ nor (?:the |my |our )?[a-z ]+ (?:is|are|equals?|measures?) `), not: regexp.MustCompile(`\b(?:under|over|below|above|more|less) `), ask: qMeant.open("gap at most 3, bottom gap at most 3")},
	{looks: kindOf(Forget), way: regexp.MustCompile(`\b(?:lift|hold|move|carry|grab|raise) (?:this|that|these|those) (?:[a-z]+|[0-9]+) (?:by|x) (?:[a-z]+|[0-9]+)`), ask: qForgetWhat.open("forget gap")},
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
