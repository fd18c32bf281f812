package grammar

import (
	"regexp"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// thatOne are words that point at a thing at hand, or at somebody's way, and say nothing of the plan: "drop that board before you hurt
// yourself", "scrap wood is fine for the stiffeners", "do it his way", "the fence behind it is six foot". Common ways of speech, no source.
var thatOne = []openWay{
	{looks: setsMark, way: asWay(`\bround{s|ed|ing}?\b`), ask: markOrGap},
	// Boards and scraps at hand, somebody's way, and what else is dropped, taken and saved.
	{looks: stated(solver.Drop), way: asWay(`\bbehind\b`), not: anyWordOf(`drops?|down|lower|low|below|ground|earth|dirt|soil|banks?|beneath|under|underneath|deep|depth|slopes?|falls?|fell|grade|lawn|yard|garden|grass|field|street|path|sidewalk|road|ditch|creek|river|shore|beach|sand|gravel|fall - off|dropoff|steps?|height`), ask: thisWallToo},
	{looks: stated(solver.Drop), way: asWay(`\b{drop|drops|dropped|dropping} {[a-z]+ }{1,3}off\b`), ask: notOurTrade},
	{looks: kindOf(Forget), way: asWay(`\b{use|using|with|from|of|some|any|a|the|my|our|for} scraps?\b|\bscrap {Scraps|piles?|bins?|heap|is|will|would|makes?|does}\b`), ask: wantedHere},
	{looks: kindOf(State), way: asWay(`\bscrap {Scraps} {is|are|will|would|makes?|does|do|should|can|could|might}\b`), ask: wantedHere},
	{looks: kindOf(Forget), way: asWay(`\b{that|this} {[a-z]+ }?{board|rail|plank|slat|bracket|stick|piece}\b`), not: anyWordOf(`forget|rail size|rail face`), ask: wantedHere},
	{looks: kindOf(TakeThat, Take, Ask, State), way: asWay(`\b{do|did|does|doing|done|build|built|building|make|made|set} {it|this|that|them|everything|things}{ all}? ({his|her|their|my|your|our|the} {own|usual|same }?{old|other|hard|easy|right|wrong }?way\b|{just }?{the way|like|as} {my|his|her|our|the|your|their }?{[a-z]+ }?{Others|dad|mom|father|mother|husband|wife|uncle|aunt|brother|sister|boss|neighbor|grandfather|grandpa|grandma|grandmother|ancestors|others?|old timers?|people}\b)`), not: asWay(`{Number}`), ask: wantedHere},
	{looks: kindOf(TakeThat, Take), way: asWay(`\btake that [,!]? ?you\b`), ask: notOurTrade},
	{looks: kindOf(Save), way: asWay(`\bsave {your|my|our|his|her} {breath|strength|energy|time|money|receipts?|appetite|back|knees}\b|\bsave {the|those|these|some|all|any}{ [a-z]+}? {pieces?|scraps?|ends?|offcuts?|boards?|lumber|wood|screws?|nails?|receipts?|brackets?|nuts|bolts|bits|cutoffs?|sawdust}\b`), ask: notOurTrade},
	{looks: valued, way: asWay(`\bdo {i|we} look like\b`), ask: wantedHere},
	{looks: valued, way: asWay(`\b{his|her|their} own {[a-z]+ }?{Works} {Says} `), ask: thisWallToo},
	// Judgments of a figure, and what was wished for.
	{looks: setsFigure, way: judgedAs(`overkill|silly|excessive|pushing it|wasteful|ridiculous|insane|crazy|nuts|mad|foolish|stupid|dumb|(a|an|such a) (waste|mistake|stretch|pity|shame|joke|problem|nuisance|pain|nightmare|headache)|absurd|nonsense|madness|unwise|wrong|ugly|allowed|permitted|legal|illegal|forbidden|unsafe|dangerous|risky|impossible|unheard of|out of the question`), not: noJudgment, ask: whatThen},
	{looks: ofSpare, way: asWay(`\b{is|are} {such|just|only }*a waste\b`), ask: whatThen},
	{looks: sets, way: asWay(`\b{my|our|his|her|their|the}{ [a-z]+}? {Aim} {was|had been|used to be}\b|\bwas {my|our|his|her|their|the}{ [a-z]+}? {Aim}\b`), not: anyWordOf(`but|now|so make|instead|today`), ask: wantedHere},
	{looks: stated(solver.WallHeight), way: asWay(`^{well|but|and|so }?it was [^,;]* before{ Stop}*$`), ask: wantedHere},
	{looks: stated(solver.WallHeight), way: asWay(`\b{i|he|she} {am|is|'m|'s} {about|only|just|almost|nearly }*{Figure} {foot|feet|ft|inches|inch|'|cm|m}{ [a-z0-9/]+}* tall\b`), ask: openQuestion("How high is the wall to be for that?", "wall 44 high")},
	// Prices that go up, notes that are compared, and rails that are left out.
	{looks: stated(solver.Budget), way: asWay(`\b{lumber|wood|timber|prices?|everything|materials?|costs?}{ prices?}?{ 's|is|are|has|have|keeps?}? {all }?{going|gone|went|goes?|jumped|jumping|shot|shooting|creeping} up\b`), not: anyWordOf(`budget`), ask: wantedHere},
	{looks: kindOf(Compare), way: asWay(`\bcompare notes\b`), ask: notOurTrade},
	{looks: kindOf(ShowAll), way: asWay(`\bwhere {they|those|these} all\b`), ask: openQuestion("Where what goes?", "where do the posts go")},
	{looks: forgetsOf(solver.WallHeight), way: asWay(`\b{top|highest|uppermost} {rails?|boards?|slats?|planks?|ones?}\b`), ask: openQuestion("One rail fewer, or the height open again?", "one rail less", "rails -= 1", "forget wall height")},
	{looks: func(a Act) bool { return stated(solver.BottomGap)(a) || forgetsOf(solver.BottomGap)(a) }, way: asWay(`\b{skip|drop|lose|omit|ditch|remove|leave out|take off|bother with|bother about|fuss with|worry about} {the|that }?{lowest|bottom|first} {rail|board|slat|plank}\b`), not: asWay(`\b{gap|space|clearance|height|to|by|down|another|inch|inches|foot|half|quarter|eighth|hair|bit|touch|Number}\b|[0-9]`), ask: openQuestion("One rail fewer?", "one rail less", "rails -= 1")},
	{looks: kindOf(TakeThat, Next), way: regexp.MustCompile(`\b(?:(?:keep|keeping|stay|staying|stick|sticking|go|going|take|taking) (?:at|on|by|for|after)|take to) (?:it|this|them)\b`), ask: wantedHere},
	{looks: kindOf(Next), way: regexp.MustCompile(`^(?:(?:and|so|ok|okay|well|oh) ,? ?)*(?:forget|skip|never mind|no time for|there is no|no|hang|stuff) (?:about )?(?:the |my |our |any |a )?(?:lunch|dinner|supper|breakfast|coffee|tea|beer|weather|rain|snow|heat|break|breaks|rest|football|game|ballgame|radio|news|noise|mess|time|clock|dark|kids|dog|cat|neighbors|phone) [,;.-].*\b(?:keep (?:going|at it|on)|carry on|go on|continue|proceed|move on|onward)\b`), ask: wantedHere},
	{looks: smallBudget, way: regexp.MustCompile(`\bcaps?\b`), not: regexp.MustCompile(`[$£€]|\b(?:budget|money|dollars?|bucks|spend|spending|cost|costs|price|pay|cash|limit|euros?|pounds?|quid)\b`), ask: openQuestion("Money, or the board on top?", "budget at most 350")},
	{looks: stated(solver.Gap), way: regexp.MustCompile(`^[a-z0-9 /"'.-]+ (?:of )?clearance(?: [.!])*$`), not: regexp.MustCompile(`\b(?:gaps?|between|rails?|boards?|slats?|spac(?:e|es|ing)|apart)\b`), ask: openQuestion("Between the rails, or under the bottom one?", "gap 3")},
	{looks: asksAny, way: regexp.MustCompile(`\bwhere (?:you|i|he|she|we|they) (?:put|left|laid|set|stuck|hid|dropped|lost) (?:the|my|our|your|his|her) (?:pencil|tape|saw|hammer|square|level|glasses|drill|phone|gloves|keys|coffee|ladder|screws|chalk|nails)\b`), ask: notOurTrade},
}

// smallBudget reports whether an act allows so little money that a board may be meant: "the cap is 1-1/2".
func smallBudget(a Act) bool {
	return stated(solver.Budget)(a) && a.Statements[0].Value.Num.Less(exact.Int(100))
}

// ofSpare reports whether an act is of spare boards: told, tried or checked.
func ofSpare(a Act) bool { return valued(a) && a.Statements[0].Name.Quantity == solver.Spare }

// setsFigure reports whether an act tells, tries or checks one figure, and changes none.
func setsFigure(a Act) bool {
	return valued(a) && (a.Statements[0].Op == solver.Eq || a.Statements[0].Op == solver.Near)
}

// judgedAs matches a line that ends in a judgment of its figure: "seven rails would be overkill".
func judgedAs(words string) *regexp.Regexp {
	return asWay(`\b{is|are|was|were|be|seems?|sounds?|looks?|feels?}{ a bit|a little|kind of|sort of|rather|pretty|quite|just|really|way|totally|simply|plain|such}* {` + words + `}{ here|there|for (us|me|that)|anyway|really|though|by code|in this town}?{ Stop}*$`)
}

// noJudgment are lines that ask for one, tell whose it is, or judge what lies beyond a figure.
var noJudgment = regexp.MustCompile(`\?|^(?:(?:and|so|but|or|ok|well) )?(?:is|are|was|were|would|will|do|does|did|can|could|what|why|how|which|who|if|whether|tell|say)\b|\b(?:says?|said|thinks?|claims?|if|whether|why|so make|instead|more|less|over|under|above|below|higher|lower|wider|any|anything|nothing|no)\b`)

// forgetsOf reports whether an act forgets a quantity.
func forgetsOf(q solver.Quantity) func(Act) bool {
	return func(a Act) bool { return a.Kind == Forget && a.Name != nil && a.Name.Quantity == q }
}

// askedWhether asks whether what was heard is meant; a yes states it.
func askedWhether(text, example string) func(Act, []Act) solver.Question {
	return func(_ Act, acts []Act) solver.Question {
		q := solver.Question{Text: text, Example: example}
		var forms []string
		for _, a := range acts {
			if a.Kind != State && a.Kind != Check && a.Kind != WhatIf || len(a.Statements) == 0 {
				return q
			}
			for _, s := range a.Statements {
				if s.Op == solver.Plus || s.Op == solver.Minus || s.Op == solver.Times || s.Op == solver.Set {
					return q // nothing that is told as it is
				}
				forms = append(forms, s.String())
			}
		}
		if len(forms) > 0 {
			q.Choices = []string{strings.Join(forms, "; ")}
		}
		return q
	}
}

// setsMark are acts that set a gap to no more than a mark on the tape.
func setsMark(a Act) bool {
	return setsOneLength(a) && a.Kind == State && strings.HasSuffix(string(a.Statements[0].Name.Quantity), "gap") && a.Statements[0].Value.Of == nil && !oneRat.Less(a.Statements[0].Value.Num.Mul(wordInt(2).val))
}

// markOrGap asks whether "round the gaps to an eighth" names the smallest mark that is worked to, or the gap.
func markOrGap(a Act, _ []Act) solver.Question {
	gap := a.Statements[0]
	mark := gap
	mark.Name = solver.Name{Quantity: solver.Tape}
	return solver.Question{Text: "Is that the smallest mark to work to, or the gap itself?", Choices: []string{mark.String(), gap.String()}, Example: mark.String()}
}
