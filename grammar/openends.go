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
	{looks: changesLengthByItself, way: regexp.MustCompile(`^(?:(?:ok|okay|so|and|now|then|well) ,? ?)*(?:(?:make|take|give|let us make|have) (?:it |that |this )?)?(?:one|1|two|2) (?:less|more|fewer)(?: please)?(?: [.!])*$`), ask: inchesOrRails},
	{looks: atLeastOne, way: regexp.MustCompile(`\b(?:one|another|1|two|2|three|3|couple|a few) more (?:would|will|might) (?:be|look|do|help|suit)\b`), ask: openQuestion("How many shall it be, with those?", "seven rails")},
	{looks: changesByItself, way: regexp.MustCompile(`\b` + moreOfIt + ` (?:bottom )?` + partsOrWall + ` (?:is|are|was|were|'s|at)\b`), ask: openQuestion("Is that how much more, or how much it is?", "gap 3 inches")},
	{looks: countsParts, way: regexp.MustCompile(`\b` + howMany + ` ` + moreOfIt + ` ` + boardsOf + `\b`), not: regexp.MustCompile(`\bfewer\b`), ask: openQuestion("How many rails, and how wide?", "six rails, 2x6")},
	{looks: valued, way: regexp.MustCompile(`\b(?:total|combined) (?:gaps?|spaces?|spacing)\b`), ask: openQuestion("Is that one gap, or all of them?", "gap 2 inches")},
	{looks: valued, way: regexp.MustCompile(`[a-z0-9"] ,? ?no ,? ?(?:wait|hold on|hang on)(?: [,.!-])*$`), ask: whatThen},
	{looks: valued, way: regexp.MustCompile(`\bnot quite (?:a |an )?` + anyFigure + `\b`), not: regexp.MustCompile(`\b(?:but|make|say|says)\b`), ask: openQuestion("A little less: how much is it?", "gap 2-7/8")},
	{looks: valued, way: regexp.MustCompile(`[a-z0-9"] ,? ?yeah ,? ?(?:right|sure)(?: [.!])*$`), ask: wantedHere},
	{looks: kindOf(Quit), way: regexp.MustCompile(`\b(?:lunch|dinner|supper|breakfast|brunch|coffees?|tea|beers?|snack|smoke|bite|nap|drink|break|breather|bathroom|restroom|potty|minutes?|mins?|moment|second|sec|while|bit|hour|half hour|errands?|quick)\b|\boff to (?:get|fetch|buy|pick up|grab|find|look|see|check|measure|cut|ask|call|eat|the [a-z]+)\b`),
		not: regexp.MustCompile(`\b(?:done|finished|through|quit|bye|goodbye|good night|goodnight|tomorrow|for (?:the day|today|tonight|good)|that is (?:it|all|everything)|will do|enough|been (?:a )?[a-z]+|home)\b`), ask: openQuestion("Are you done for today?", "bye", "quit")},
	{looks: kindOf(Quit), way: regexp.MustCompile(`\b(?:for|after) (?:lunch|dinner|supper|breakfast|coffee|a (?:bit|minute|moment|second|while|break|smoke|coffee|bite))\b`), not: regexp.MustCompile(`\b(?:quit|bye|goodbye|tomorrow|today)\b`), ask: openQuestion("Are you done for today?", "bye", "quit")},
	{looks: kindOf(Quit), way: regexp.MustCompile(`[a-z0-9"] (?:until|till) (?:tomorrow|monday|next week|then|later)(?: [.!])*$`), not: regexp.MustCompile(`\b(?:done|finished|quit|bye|see you|leave it|that is it|enough)\b`), ask: wantedHere},
	{looks: kindOf(State), way: regexp.MustCompile(`[a-z0-9"] last (?:year|summer|winter|fall|spring|month|week|time)(?: [.!])*$`), not: regexp.MustCompile(`\b(?:like|as|than|not|from|but|same|since|now|more|less|before|bought|ordered|sold|got|have)\b`), ask: wantedHere},
	{looks: kindOf(State), way: regexp.MustCompile(`^[^?]*[a-z0-9"] ,? ?do you think(?: [.!?])*$`), not: regexp.MustCompile(`^(?:[a-z]+ , )?(?:what|how|which|why|is|are|can|could|will|would|should|do|does|where|when)\b`), ask: openQuestion("Shall I set that, or only try it?", "what if five rails")},
	{looks: kindOf(Check), way: regexp.MustCompile(`^(?:(?:and|but|so|well) )*(?:he|she|they|(?:my|the|our) [a-z]+) (?:once |first |always |just )?wanted [^?]*$`), not: regexp.MustCompile(`\b(?:is|can|will|would|does|do) (?:he|she|it|that|they|this)\b|\b(?:right|possible|check|ok|okay|work|fit)\b`), ask: wantedHere},
	{looks: setsOrTries, way: regexp.MustCompile(`^(?:(?:and|so|well|oh) ,? ?)*if it (?:was|were) (?:all |only |just )?(?:left )?(?:up|down) to (?:me|us|him|her|them)\b`), not: regexp.MustCompile(`[?]|\b(?:but|though|yet|what|how)\b`), ask: wantedHere},
	{looks: stated(solver.WallHeight), way: regexp.MustCompile(`^(?:the|my|our) (?:roof|stack|pile|slope|deck|porch|slab|patio|ditch) (?:is|stands|sits) (?:about )?[0-9a-z -]+ (?:high|tall)(?: [.!])*$`), ask: askedWhether("Is that the height of the wall?", "wall 48 high")},
}

const (
	moreOfIt    = `(?:wider|bigger|larger|smaller|narrower|tighter|looser|shorter|taller|higher|lower|thicker|thinner)`
	partsOrWall = `(?:rails?|boards?|slats?|planks?|gaps?|spaces?|posts?|stiffeners?|bays?|wall|opening|doorway|gate|walk - through|walkthrough)`
)

// anyFigure is a figure as it is written or said, its first word.
const anyFigure = `(?:[0-9]+|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|[a-z]+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)`

// changesLengthByItself are acts that change a length by an amount.
func changesLengthByItself(a Act) bool {
	return changesByItself(a) && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Length
}

// inchesOrRails asks whether "one less" is of the length that was spoken of last, or of the rails.
func inchesOrRails(a Act, _ []Act) solver.Question {
	st := a.Statements[0]
	st.Name, st.Value = solver.Name{Quantity: solver.Rails}, solver.Value{Num: st.Value.Num}
	rails := Act{Kind: a.Kind, Statements: []solver.Statement{st}}.String()
	return solver.Question{Text: "Rails, or inches?", Choices: []string{rails, a.String()}, Example: rails}
}

// atLeastOne are limits of a count that "one more would be nice" makes, which is one more than there are.
func atLeastOne(a Act) bool {
	return valued(a) && a.Statements[0].Op == solver.GE && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Count
}

// changesByItself are acts that change a value by an amount.
func changesByItself(a Act) bool {
	return valued(a) && (a.Statements[0].Op == solver.Plus || a.Statements[0].Op == solver.Minus)
}

// laterThan are words for a time to come.
const laterThan = `(?:once|when|after|as soon as|tomorrow|tonight|later|next week|in the morning|soon|by (?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|tonight|tomorrow))`

// notYetSaid are lines that set or ask nothing yet, though a value or a part is named in them.
var notYetSaid = []openWay{
	{looks: asksAny, way: regexp.MustCompile(`^(?:(?:ok|okay|well|so|oh|sorry|look) (?:, )?)*(?:i|we) (?:will|shall|am going to|are going to|'ll) (?:have to )?(?:give|tell|get|bring|send|text|let|read) you(?: know)? [^?]*\b` + laterThan + `\b`), not: regexp.MustCompile(`[?]|[,.;] (?:what|how|show|tell)\b`),
		ask: openQuestion("What would you like to know now?", "what is the gap")},
	{looks: stated(solver.Rails, solver.Stiffeners, solver.AddedPosts, solver.RailSize, solver.PostSize), way: regexp.MustCompile(`\b(?:is|are|was|were|go|goes) (?:all |just |only |meant |really |actually )*(?:for|to) (?:(?:his|her|their|another|a different|the other|somebody's|someone's) [a-z]+|(?:my|our|the) [a-z]+ (?:'s|' s) [a-z]+)(?: [a-z]+)?(?: [.!])*$`), not: regexp.MustCompile(`\b(?:wall|halfwall|this one)\b`),
		ask: thisWallToo},
	{looks: func(a Act) bool { return a.Kind == HelpMe || asksQuantity(a) }, way: regexp.MustCompile(`^(?:i (?:have |really have )?)?no (?:idea|clue) (?:what|how [a-z]+|where) (?:he|she|they|it|the plan|the drawing)\b|^(?:so |and )?(?:what|how [a-z]+) did (?:he|she|they) (?:say|tell|give|mention|claim|draw|put)\b`), not: regexp.MustCompile(`[0-9,.;] `),
		ask: openQuestion("What would you like to know now?", "what is the gap")},
	{looks: ofHeight, way: regexp.MustCompile(`(?:^(?:(?:well|and|so|but|oh) )*|\b(?:says|said|swears|claims) (?:that )?)(?:he|she|my [a-z]+|the [a-z]+) (?:is|'s|was|stands|stood) [^,.;]*\b(?:feet|foot|ft|') [^,.;]*\btall\b`), not: regexp.MustCompile(`\b(?:wall|halfwall|top|post|posts|fence|partition|screen|barrier)\b`),
		ask: thisWallToo},
	{looks: func(a Act) bool { return a.Kind == State || a.Kind == WhatIf }, way: regexp.MustCompile(`^(?:(?:well|and|so|but|oh) )*(?:i|we) (?:just |already |once )?told (?:him|her|them|my [a-z]+|the [a-z]+|our [a-z]+) (?:that |it |about )?`), not: regexp.MustCompile(`[,.;] (?:so|make|put|set|now|please|but|and so)\b|\b(?:and|so) (?:make|put|set|let|use)\b`),
		ask: wantedHere},
	{looks: stated(solver.Rails, solver.RailSize, solver.PostSize, solver.AddedPosts, solver.Stiffeners, solver.StiffenerSize), way: regexp.MustCompile(`\b(?:borrow|borrowed|borrowing|borrows|lend|lent|lending|loaned|steal|stole|returned|swapped)\b`),
		ask: thisWallToo},
	{looks: func(a Act) bool { return a.Kind == Check }, way: regexp.MustCompile(`\b(?:drew|drawn|wrote|written|scribbled|sketched|jotted) (?:it|that|this|them|everything|the [a-z]+)(?: down| out| up| all)? on (?:a|an|some|the back of a) (?:[a-z]+ )*(?:[1-8] ?x ?[2-8]|two by|one by|four by)`),
		ask: wantedHere},
	{looks: asksOrTeaches, way: regexp.MustCompile(`^(?:please |just |go )*ask (?:him|her|them|my [a-z]+|the [a-z]+) (?:how|what|which|where|whether|if)\b`),
		ask: openQuestion("What would you like to know now?", "what is the gap")},
	{looks: kindOf(Compare), way: regexp.MustCompile(`\bcompare [^,.;]*\b(?:boards|rails|gap|gaps|inches|stiffeners|posts)\b`),
		ask: openQuestion("Which of them shall I try?", "what if six rails")},
	{looks: asksAny, way: regexp.MustCompile(`^(?:he|she|they|my [a-z]+|the [a-z]+) (?:will|'ll|would|'d) (?:want|need|like|have) to see\b`), not: regexp.MustCompile(`[?]|\b(?:so|please|print|show)\b`),
		ask: openQuestion("Shall I show it?", "show me the drawing", "ask drawing")},
	{looks: asksTopic("drawing"), way: regexp.MustCompile(`\b(?:lost|misplaced|forgot|forgotten|tore|dropped|burned|left|ruined|ate|eaten|dropped|soaked|can not find) (?:the|my|our|his|her|their|that) (?:drawing|plan|sketch|picture)\b`), not: regexp.MustCompile(`\b(?:print|again|show|draw|another|new|give|see)\b`),
		ask: openQuestion("Shall I draw it?", "show me the drawing", "ask drawing")},
	{looks: func(a Act) bool { return a.Kind == Check || a.Kind == State }, way: regexp.MustCompile(`\b(?:his|her|their) own (?:[a-z]+ )?(?:wall|fence|place|house|porch|deck|railing)\b`), not: regexp.MustCompile(`\b(?:ours|mine|this one|here)\b`),
		ask: thisWallToo},
	{looks: asksQuantity, way: regexp.MustCompile(`\b(?:should|must|ought to|want|need|like|please|have to|has to|put|set|keep) [^?]*\b(?:spaced|spaces|set|placed|arranged|apart)(?: out)? (?:nicely|well|neatly|properly|prettily|handsomely|sensibly|decently|generously|comfortably|pleasantly|tastefully|attractively)\b`), not: regexp.MustCompile(`\b(?:what|how|which)\b`),
		ask: qHowMuchIs.open("gap 2 inches", "that")},
}
