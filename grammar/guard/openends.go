package guard

import (
	"regexp"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/solver"
)

// Words at the end of a line that leave open what was said before them: "six boards plus", "wall 48 high no wait", "six boards, yeah
// right", "not quite six boards". They are looked for as they were said; what was read before them is asked back. Common ways of
// speech, no source.

var openEnds = []hear.OpenWay{
	{Looks: changesByItself, Way: regexp.MustCompile(`[a-z0-9"] ,? ?(?:plus|minus|and down)(?: [.!])*$`), Ask: hear.OpenQuestion("How much more, or how much less?", "half an inch more")},
	{Looks: changesLengthByItself, Way: regexp.MustCompile(`^(?:(?:ok|okay|so|and|now|then|well) ,? ?)*(?:(?:make|take|give|let us make|have) (?:it |that |this )?)?(?:one|1|two|2) (?:less|more|fewer)(?: please)?(?: [.!])*$`), Ask: inchesOrRails},
	{Looks: atLeastOne, Way: regexp.MustCompile(`\b(?:one|another|1|two|2|three|3|couple|a few) more (?:would|will|might) (?:be|look|do|help|suit)\b`), Ask: hear.OpenQuestion("How many shall it be, with those?", "seven rails")},
	{Looks: changesByItself, Way: regexp.MustCompile(`\b` + moreOfIt + ` (?:bottom )?` + partsOrWall + ` (?:is|are|was|were|'s|at)\b`), Ask: hear.OpenQuestion("Is that how much more, or how much it is?", "gap 3 inches")},
	{Looks: countsParts, Way: regexp.MustCompile(`\b` + hear.HowMany + ` ` + moreOfIt + ` ` + hear.BoardsOf + `\b`), Not: regexp.MustCompile(`\bfewer\b`), Ask: hear.OpenQuestion("How many rails, and how wide?", "six rails, 2x6")},
	{Looks: valued, Way: regexp.MustCompile(`\b(?:total|combined) (?:gaps?|spaces?|spacing)\b`), Ask: hear.OpenQuestion("Is that one gap, or all of them?", "gap 2 inches")},
	{Looks: valued, Way: regexp.MustCompile(`[a-z0-9"] ,? ?no ,? ?(?:wait|hold on|hang on)(?: [,.!-])*$`), Ask: whatThen},
	{Looks: valued, Way: regexp.MustCompile(`\bnot quite (?:a |an )?` + anyFigure + `\b`), Not: regexp.MustCompile(`\b(?:but|make|say|says)\b`), Ask: hear.OpenQuestion("A little less: how much is it?", "gap 2-7/8")},
	{Looks: valued, Way: regexp.MustCompile(`[a-z0-9"] ,? ?yeah ,? ?(?:right|sure)(?: [.!])*$`), Ask: wantedHere},
	{Looks: hear.KindOf(act.Quit), Way: regexp.MustCompile(`\b(?:lunch|dinner|supper|breakfast|brunch|coffees?|tea|beers?|snack|smoke|bite|nap|drink|break|breather|bathroom|restroom|potty|minutes?|mins?|moment|second|sec|while|bit|hour|half hour|errands?|quick)\b|\boff to (?:get|fetch|buy|pick up|grab|find|look|see|check|measure|cut|ask|call|eat|the [a-z]+)\b`),
		Not: regexp.MustCompile(`\b(?:done|finished|through|quit|bye|goodbye|good night|goodnight|tomorrow|for (?:the day|today|tonight|good)|that is (?:it|all|everything)|will do|enough|been (?:a )?[a-z]+|home)\b`), Ask: hear.OpenQuestion("Are you done for today?", "bye", "quit")},
	{Looks: hear.KindOf(act.Quit), Way: regexp.MustCompile(`\b(?:for|after) (?:lunch|dinner|supper|breakfast|coffee|a (?:bit|minute|moment|second|while|break|smoke|coffee|bite))\b`), Not: regexp.MustCompile(`\b(?:quit|bye|goodbye|tomorrow|today)\b`), Ask: hear.OpenQuestion("Are you done for today?", "bye", "quit")},
	{Looks: hear.KindOf(act.Quit), Way: regexp.MustCompile(`[a-z0-9"] (?:until|till) (?:tomorrow|monday|next week|then|later)(?: [.!])*$`), Not: regexp.MustCompile(`\b(?:done|finished|quit|bye|see you|leave it|that is it|enough)\b`), Ask: wantedHere},
	{Looks: hear.KindOf(act.State), Way: regexp.MustCompile(`[a-z0-9"] last (?:year|summer|winter|fall|spring|month|week|time)(?: [.!])*$`), Not: regexp.MustCompile(`\b(?:like|as|than|not|from|but|same|since|now|more|less|before|bought|ordered|sold|got|have)\b`), Ask: wantedHere},
	{Looks: hear.KindOf(act.State), Way: regexp.MustCompile(`^[^?]*[a-z0-9"] ,? ?do you think(?: [.!?])*$`), Not: regexp.MustCompile(`^(?:[a-z]+ , )?(?:what|how|which|why|is|are|can|could|will|would|should|do|does|where|when)\b`), Ask: hear.OpenQuestion("Shall I set that, or only try it?", "what if five rails")},
	{Looks: hear.KindOf(act.Check), Way: regexp.MustCompile(`^(?:(?:and|but|so|well) )*(?:he|she|they|(?:my|the|our) [a-z]+) (?:once |first |always |just )?wanted [^?]*$`), Not: regexp.MustCompile(`\b(?:is|can|will|would|does|do) (?:he|she|it|that|they|this)\b|\b(?:right|possible|check|ok|okay|work|fit)\b`), Ask: wantedHere},
	{Looks: setsOrTries, Way: regexp.MustCompile(`^(?:(?:and|so|well|oh) ,? ?)*if it (?:was|were) (?:all |only |just )?(?:left )?(?:up|down) to (?:me|us|him|her|them)\b`), Not: regexp.MustCompile(`[?]|\b(?:but|though|yet|what|how)\b`), Ask: wantedHere},
	{Looks: hear.Stated(solver.WallHeight), Way: regexp.MustCompile(`^(?:the|my|our) (?:roof|stack|pile|slope|deck|porch|slab|patio|ditch) (?:is|stands|sits) (?:about )?[0-9a-z -]+ (?:high|tall)(?: [.!])*$`), Ask: hear.AskedWhether("Is that the height of the wall?", "wall 48 high")},
}

const (
	moreOfIt    = `(?:wider|bigger|larger|smaller|narrower|tighter|looser|shorter|taller|higher|lower|thicker|thinner)`
	partsOrWall = `(?:rails?|boards?|slats?|planks?|gaps?|spaces?|posts?|stiffeners?|bays?|wall|opening|doorway|gate|walk - through|walkthrough)`
)

// anyFigure is a figure as it is written or said, its first word.
const anyFigure = `(?:[0-9]+|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|[a-z]+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)`

// changesLengthByItself are acts that change a length by an amount.
func changesLengthByItself(a act.Act) bool {
	return changesByItself(a) && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Length
}

// inchesOrRails asks whether "one less" is of the length that was spoken of last, or of the rails.
func inchesOrRails(a act.Act, _ []act.Act) solver.Question {
	st := a.Statements[0]
	st.Name, st.Value = solver.Name{Quantity: solver.Rails}, solver.Value{Num: st.Value.Num}
	rails := act.Act{Kind: a.Kind, Statements: []solver.Statement{st}}.String()
	return solver.Question{Text: "Rails, or inches?", Choices: []string{rails, a.String()}, Example: rails}
}

// atLeastOne are limits of a count that "one more would be nice" makes, which is one more than there are.
func atLeastOne(a act.Act) bool {
	return valued(a) && a.Statements[0].Op == solver.GE && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Count
}

// changesByItself are acts that change a value by an amount.
func changesByItself(a act.Act) bool {
	return valued(a) && (a.Statements[0].Op == solver.Plus || a.Statements[0].Op == solver.Minus)
}

// laterThan are words for a time to come.
const laterThan = `(?:once|when|after|as soon as|tomorrow|tonight|later|next week|in the morning|soon|by (?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|tonight|tomorrow))`

// notYetSaid are lines that set or ask nothing yet, though a value or a part is named in them.
var notYetSaid = []hear.OpenWay{
	{Looks: asksAny, Way: regexp.MustCompile(`^(?:(?:ok|okay|well|so|oh|sorry|look) (?:, )?)*(?:i|we) (?:will|shall|am going to|are going to|'ll) (?:have to )?(?:give|tell|get|bring|send|text|let|read) you(?: know)? [^?]*\b` + laterThan + `\b`), Not: regexp.MustCompile(`[?]|[,.;] (?:what|how|show|tell)\b`),
		Ask: hear.OpenQuestion("What would you like to know now?", "what is the gap")},
	{Looks: hear.Stated(solver.Rails, solver.Stiffeners, solver.AddedPosts, solver.RailSize, solver.PostSize), Way: regexp.MustCompile(`\b(?:is|are|was|were|go|goes) (?:all |just |only |meant |really |actually )*(?:for|to) (?:(?:his|her|their|another|a different|the other|somebody's|someone's) [a-z]+|(?:my|our|the) [a-z]+ (?:'s|' s) [a-z]+)(?: [a-z]+)?(?: [.!])*$`), Not: regexp.MustCompile(`\b(?:wall|halfwall|this one)\b`),
		Ask: thisWallToo},
	{Looks: func(a act.Act) bool { return a.Kind == act.HelpMe || hear.AsksQuantity(a) }, Way: regexp.MustCompile(`^(?:i (?:have |really have )?)?no (?:idea|clue) (?:what|how [a-z]+|where) (?:he|she|they|it|the plan|the drawing)\b|^(?:so |and )?(?:what|how [a-z]+) did (?:he|she|they) (?:say|tell|give|mention|claim|draw|put)\b`), Not: regexp.MustCompile(`[0-9,.;] `),
		Ask: hear.OpenQuestion("What would you like to know now?", "what is the gap")},
	{Looks: ofHeight, Way: regexp.MustCompile(`(?:^(?:(?:well|and|so|but|oh) )*|\b(?:says|said|swears|claims) (?:that )?)(?:he|she|my [a-z]+|the [a-z]+) (?:is|'s|was|stands|stood) [^,.;]*\b(?:feet|foot|ft|') [^,.;]*\btall\b`), Not: regexp.MustCompile(`\b(?:wall|halfwall|top|post|posts|fence|partition|screen|barrier)\b`),
		Ask: thisWallToo},
	{Looks: func(a act.Act) bool { return a.Kind == act.State || a.Kind == act.WhatIf }, Way: regexp.MustCompile(`^(?:(?:well|and|so|but|oh) )*(?:i|we) (?:just |already |once )?told (?:him|her|them|my [a-z]+|the [a-z]+|our [a-z]+) (?:that |it |about )?`), Not: regexp.MustCompile(`[,.;] (?:so|make|put|set|now|please|but|and so)\b|\b(?:and|so) (?:make|put|set|let|use)\b`),
		Ask: wantedHere},
	{Looks: hear.Stated(solver.Rails, solver.RailSize, solver.PostSize, solver.AddedPosts, solver.Stiffeners, solver.StiffenerSize), Way: regexp.MustCompile(`\b(?:borrow|borrowed|borrowing|borrows|lend|lent|lending|loaned|steal|stole|returned|swapped)\b`),
		Ask: thisWallToo},
	{Looks: func(a act.Act) bool { return a.Kind == act.Check }, Way: regexp.MustCompile(`\b(?:drew|drawn|wrote|written|scribbled|sketched|jotted) (?:it|that|this|them|everything|the [a-z]+)(?: down| out| up| all)? on (?:a|an|some|the back of a) (?:[a-z]+ )*(?:[1-8] ?x ?[2-8]|two by|one by|four by)`),
		Ask: wantedHere},
	{Looks: hear.AsksOrTeaches, Way: regexp.MustCompile(`^(?:please |just |go )*ask (?:him|her|them|my [a-z]+|the [a-z]+) (?:how|what|which|where|whether|if)\b`),
		Ask: hear.OpenQuestion("What would you like to know now?", "what is the gap")},
	{Looks: hear.KindOf(act.Compare), Way: regexp.MustCompile(`\bcompare [^,.;]*\b(?:boards|rails|gap|gaps|inches|stiffeners|posts)\b`),
		Ask: hear.OpenQuestion("Which of them shall I try?", "what if six rails")},
	{Looks: asksAny, Way: regexp.MustCompile(`^(?:he|she|they|my [a-z]+|the [a-z]+) (?:will|'ll|would|'d) (?:want|need|like|have) to see\b`), Not: regexp.MustCompile(`[?]|\b(?:so|please|print|show)\b`),
		Ask: hear.OpenQuestion("Shall I show it?", "show me the drawing", "ask drawing")},
	{Looks: hear.AsksTopic("drawing"), Way: regexp.MustCompile(`\b(?:lost|misplaced|forgot|forgotten|tore|dropped|burned|left|ruined|ate|eaten|dropped|soaked|can not find) (?:the|my|our|his|her|their|that) (?:drawing|plan|sketch|picture)\b`), Not: regexp.MustCompile(`\b(?:print|again|show|draw|another|new|give|see)\b`),
		Ask: hear.OpenQuestion("Shall I draw it?", "show me the drawing", "ask drawing")},
	{Looks: func(a act.Act) bool { return a.Kind == act.Check || a.Kind == act.State }, Way: regexp.MustCompile(`\b(?:his|her|their) own (?:[a-z]+ )?(?:wall|fence|place|house|porch|deck|railing)\b`), Not: regexp.MustCompile(`\b(?:ours|mine|this one|here)\b`),
		Ask: thisWallToo},
	{Looks: hear.AsksQuantity, Way: regexp.MustCompile(`\b(?:should|must|ought to|want|need|like|please|have to|has to|put|set|keep) [^?]*\b(?:spaced|spaces|set|placed|arranged|apart)(?: out)? (?:nicely|well|neatly|properly|prettily|handsomely|sensibly|decently|generously|comfortably|pleasantly|tastefully|attractively)\b`), Not: regexp.MustCompile(`\b(?:what|how|which)\b`),
		Ask: askback.HowMuchIs.Open("gap 2 inches", "that")},
}
