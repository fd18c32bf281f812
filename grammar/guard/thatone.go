package guard

import (
	"regexp"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/lex"
	"saywright/grammar/measure"
	"saywright/solver"
	"saywright/solver/exact"
)

// thatOne are words that point at a thing at hand, or at somebody's way, and say nothing of the plan: "drop that board before you hurt
// yourself", "scrap wood is fine for the stiffeners", "do it his way", "the fence behind it is six foot". Common ways of speech, no source.
var thatOne = []hear.OpenWay{
	{Looks: setsMark, Way: asWay(`\bround{s|ed|ing}?\b`), Ask: markOrGap},
	// Boards and scraps at hand, somebody's way, and what else is dropped, taken and saved.
	{Looks: hear.Stated(solver.Drop), Way: asWay(`\bbehind\b`), Not: anyWordOf(`drops?|down|lower|low|below|ground|earth|dirt|soil|banks?|beneath|under|underneath|deep|depth|slopes?|falls?|fell|grade|lawn|yard|garden|grass|field|street|path|sidewalk|road|ditch|creek|river|shore|beach|sand|gravel|fall - off|dropoff|steps?|height`), Ask: thisWallToo},
	{Looks: hear.Stated(solver.Drop), Way: asWay(`\b{drop|drops|dropped|dropping} {[a-z]+ }{1,3}off\b`), Ask: notOurTrade},
	{Looks: hear.KindOf(act.Forget), Way: asWay(`\b{use|using|with|from|of|some|any|a|the|my|our|for} scraps?\b|\bscrap {Scraps|piles?|bins?|heap|is|will|would|makes?|does}\b`), Ask: wantedHere},
	{Looks: hear.KindOf(act.State), Way: asWay(`\bscrap {Scraps} {is|are|will|would|makes?|does|do|should|can|could|might}\b`), Ask: wantedHere},
	{Looks: hear.KindOf(act.Forget), Way: asWay(`\b{that|this} {[a-z]+ }?{board|rail|plank|slat|bracket|stick|piece}\b`), Not: anyWordOf(`forget|rail size|rail face`), Ask: wantedHere},
	{Looks: hear.KindOf(act.TakeThat, act.Take, act.Ask, act.State), Way: asWay(`\b{do|did|does|doing|done|build|built|building|make|made|set} {it|this|that|them|everything|things}{ all}? ({his|her|their|my|your|our|the} {own|usual|same }?{old|other|hard|easy|right|wrong }?way\b|{just }?{the way|like|as} {my|his|her|our|the|your|their }?{[a-z]+ }?{Others|dad|mom|father|mother|husband|wife|uncle|aunt|brother|sister|boss|neighbor|grandfather|grandpa|grandma|grandmother|ancestors|others?|old timers?|people}\b)`), Not: asWay(`{Number}`), Ask: wantedHere},
	{Looks: hear.KindOf(act.TakeThat, act.Take), Way: asWay(`\btake that [,!]? ?you\b`), Ask: notOurTrade},
	{Looks: hear.KindOf(act.Save), Way: asWay(`\bsave {your|my|our|his|her} {breath|strength|energy|time|money|receipts?|appetite|back|knees}\b|\bsave {the|those|these|some|all|any}{ [a-z]+}? {pieces?|scraps?|ends?|offcuts?|boards?|lumber|wood|screws?|nails?|receipts?|brackets?|nuts|bolts|bits|cutoffs?|sawdust}\b`), Ask: notOurTrade},
	{Looks: valued, Way: asWay(`\bdo {i|we} look like\b`), Ask: wantedHere},
	{Looks: valued, Way: asWay(`\b{his|her|their} own {[a-z]+ }?{Works} {Says} `), Ask: thisWallToo},
	// Judgments of a figure, and what was wished for.
	{Looks: setsFigure, Way: judgedAs(`overkill|silly|excessive|pushing it|wasteful|ridiculous|insane|crazy|nuts|mad|foolish|stupid|dumb|(a|an|such a) (waste|mistake|stretch|pity|shame|joke|problem|nuisance|pain|nightmare|headache)|absurd|nonsense|madness|unwise|wrong|ugly|allowed|permitted|legal|illegal|forbidden|unsafe|dangerous|risky|impossible|unheard of|out of the question`), Not: noJudgment, Ask: whatThen},
	{Looks: ofSpare, Way: asWay(`\b{is|are} {such|just|only }*a waste\b`), Ask: whatThen},
	{Looks: hear.Sets, Way: asWay(`\b{my|our|his|her|their|the}{ [a-z]+}? {Aim} {was|had been|used to be}\b|\bwas {my|our|his|her|their|the}{ [a-z]+}? {Aim}\b`), Not: anyWordOf(`but|now|so make|instead|today`), Ask: wantedHere},
	{Looks: hear.Stated(solver.WallHeight), Way: asWay(`^{well|but|and|so }?it was [^,;]* before{ Stop}*$`), Ask: wantedHere},
	{Looks: hear.Stated(solver.WallHeight), Way: asWay(`\b{i|he|she} {am|is|'m|'s} {about|only|just|almost|nearly }*{Figure} {foot|feet|ft|inches|inch|'|cm|m}{ [a-z0-9/]+}* tall\b`), Ask: hear.OpenQuestion("How high is the wall to be for that?", "wall 44 high")},
	// Prices that go up, notes that are compared, and rails that are left out.
	{Looks: hear.Stated(solver.Budget), Way: asWay(`\b{lumber|wood|timber|prices?|everything|materials?|costs?}{ prices?}?{ 's|is|are|has|have|keeps?}? {all }?{going|gone|went|goes?|jumped|jumping|shot|shooting|creeping} up\b`), Not: anyWordOf(`budget`), Ask: wantedHere},
	{Looks: hear.KindOf(act.Compare), Way: asWay(`\bcompare notes\b`), Ask: notOurTrade},
	{Looks: hear.KindOf(act.ShowAll), Way: asWay(`\bwhere {they|those|these} all\b`), Ask: hear.OpenQuestion("Where what goes?", "where do the posts go")},
	{Looks: forgetsOf(solver.WallHeight), Way: asWay(`\b{top|highest|uppermost} {rails?|boards?|slats?|planks?|ones?}\b`), Ask: hear.OpenQuestion("One rail fewer, or the height open again?", "one rail less", "rails -= 1", "forget wall height")},
	{Looks: func(a act.Act) bool { return hear.Stated(solver.BottomGap)(a) || forgetsOf(solver.BottomGap)(a) }, Way: asWay(`\b{skip|drop|lose|omit|ditch|remove|leave out|take off|bother with|bother about|fuss with|worry about} {the|that }?{lowest|bottom|first} {rail|board|slat|plank}\b`), Not: asWay(`\b{gap|space|clearance|height|to|by|down|another|inch|inches|foot|half|quarter|eighth|hair|bit|touch|Number}\b|[0-9]`), Ask: hear.OpenQuestion("One rail fewer?", "one rail less", "rails -= 1")},
	{Looks: hear.KindOf(act.TakeThat, act.Next), Way: regexp.MustCompile(`\b(?:(?:keep|keeping|stay|staying|stick|sticking|go|going|take|taking) (?:at|on|by|for|after)|take to) (?:it|this|them)\b`), Ask: wantedHere},
	{Looks: hear.KindOf(act.Next), Way: regexp.MustCompile(`^(?:(?:and|so|ok|okay|well|oh) ,? ?)*(?:forget|skip|never mind|no time for|there is no|no|hang|stuff) (?:about )?(?:the |my |our |any |a )?(?:lunch|dinner|supper|breakfast|coffee|tea|beer|weather|rain|snow|heat|break|breaks|rest|football|game|ballgame|radio|news|noise|mess|time|clock|dark|kids|dog|cat|neighbors|phone) [,;.-].*\b(?:keep (?:going|at it|on)|carry on|go on|continue|proceed|move on|onward)\b`), Ask: wantedHere},
	{Looks: smallBudget, Way: regexp.MustCompile(`\bcaps?\b`), Not: regexp.MustCompile(`[$£€]|\b(?:budget|money|dollars?|bucks|spend|spending|cost|costs|price|pay|cash|limit|euros?|pounds?|quid)\b`), Ask: hear.OpenQuestion("Money, or the board on top?", "budget at most 350")},
	{Looks: hear.Stated(solver.Gap), Way: regexp.MustCompile(`^[a-z0-9 /"'.-]+ (?:of )?clearance(?: [.!])*$`), Not: regexp.MustCompile(`\b(?:gaps?|between|rails?|boards?|slats?|spac(?:e|es|ing)|apart)\b`), Ask: hear.OpenQuestion("Between the rails, or under the bottom one?", "gap 3")},
	// What is passed to somebody at work is the thing itself, whatever figure goes by the same name.
	{Looks: asksAny, Way: asWay(`\b{hand|pass|toss|throw|chuck|slide|fetch|grab|lend|bring|get|give}{ over| up| back}? {me|us|him|her}{ over| up| back}? {the|that|your|my|our|a}{ [a-z]+}? {tape|ruler|rule|square|yardstick|saw|blade|level|chalk line|pencil|drill|hammer}{ measure}?{ over| up| back| here| there| please| now| will you| would you| again| for a second| for a minute| ,}*{ Stop}*$`), Ask: notOurTrade},
	{Looks: asksAny, Way: asWay(`\b{hand|pass|toss|throw|chuck|slide|fetch|grab|lend|bring}{ over| up| back}? {me|us|him|her}{ over| up| back}? {the|that|those|these|some|your|my|our|a|another|one of the|one of those}{ [a-z]+}? {brackets?|screws?|anchors?|bolts?|bases?|boards?|rails?|posts?|stiffeners?}{ over| up| back| here| there| please| now| will you| would you| again| for a second| for a minute| ,}*{ Stop}*$`), Ask: notOurTrade},
	{Looks: asksAny, Way: asWay(`\bhow {do|does|did|would|should} {the|my|your|our|this|that|a|these|those}{ [a-z]+}? {saw|blade|drill|level|tape|ruler|square|brackets?|hangers?|anchors?|screws?} {work|run|operate|function}{ then| here| now| anyway| exactly}*{ Stop}*$`), Ask: notOurTrade},
	{Looks: forgetsOf(solver.Rails), Way: asWay(`\b{Number} {of the |more |top |bottom |of those }*{Board} {must|can|should|has to|have to|needs? to|will|may} {all |both }?go\b`), Ask: hear.OpenQuestion("So many fewer, or is their number open again?", "two rails fewer")},
	// What is kept is counted, and what others said is to go.
	{Looks: hear.KindOf(act.ForgetAllBut), Way: asWay(`\b{everything|all|lot|rest} {but|except|except for|bar|save} {just |only |the |those |these }*{Figure} {[a-z]+ }?{Part}\b`), Ask: hear.OpenQuestion("So many of them, or is all of it to go?", "rails = 6")},
	{Looks: hear.KindOf(act.StartOver), Way: asWay(`\b{everything|all|anything|whatever|what|all that|everything that} (he|she|they|(my|our|the|his|her) [a-z]+){ has| have| had| just| ever}* {said|told|says|gave|drew|wrote|wanted|wants|suggested|claimed|proposed|mentioned|asked}\b`), Ask: hear.OpenQuestion("Is all that you told me to go?", "start over", "start over")},
	{Looks: asksAny, Way: regexp.MustCompile(`\bwhere (?:you|i|he|she|we|they) (?:put|left|laid|set|stuck|hid|dropped|lost) (?:the|my|our|your|his|her) (?:pencil|tape|saw|hammer|square|level|glasses|drill|phone|gloves|keys|coffee|ladder|screws|chalk|nails)\b`), Ask: notOurTrade},
}

// smallBudget reports whether an act allows so little money that a board may be meant: "the cap is 1-1/2".
func smallBudget(a act.Act) bool {
	return hear.Stated(solver.Budget)(a) && a.Statements[0].Value.Num.Less(exact.Int(100))
}

// ofSpare reports whether an act is of spare boards: told, tried or checked.
func ofSpare(a act.Act) bool { return valued(a) && a.Statements[0].Name.Quantity == solver.Spare }

// setsFigure reports whether an act tells, tries or checks one figure, and changes none.
func setsFigure(a act.Act) bool {
	return valued(a) && (a.Statements[0].Op == solver.Eq || a.Statements[0].Op == solver.Near)
}

// judgedAs matches a line that ends in a judgment of its figure: "seven rails would be overkill".
func judgedAs(words string) *regexp.Regexp {
	return asWay(`\b{is|are|was|were|be|seems?|sounds?|looks?|feels?}{ a bit|a little|kind of|sort of|rather|pretty|quite|just|really|way|totally|simply|plain|such}* {` + words + `}{ here|there|for (us|me|that)|anyway|really|though|by code|in this town}?{ Stop}*$`)
}

// noJudgment are lines that ask for one, tell whose it is, or judge what lies beyond a figure.
var noJudgment = regexp.MustCompile(`\?|^(?:(?:and|so|but|or|ok|well) )?(?:is|are|was|were|would|will|do|does|did|can|could|what|why|how|which|who|if|whether|tell|say)\b|\b(?:says?|said|thinks?|claims?|if|whether|why|so make|instead|more|less|over|under|above|below|higher|lower|wider|any|anything|nothing|no)\b`)

// forgetsOf reports whether an act forgets a quantity.
func forgetsOf(q solver.Quantity) func(act.Act) bool {
	return func(a act.Act) bool { return a.Kind == act.Forget && a.Name != nil && a.Name.Quantity == q }
}

// setsMark are acts that set a gap to no more than a mark on the tape.
func setsMark(a act.Act) bool {
	return setsOneLength(a) && a.Kind == act.State && strings.HasSuffix(string(a.Statements[0].Name.Quantity), "gap") && a.Statements[0].Value.Of == nil && !lex.OneRat.Less(a.Statements[0].Value.Num.Mul(measure.WordInt(2).Val))
}

// markOrGap asks whether "round the gaps to an eighth" names the smallest mark that is worked to, or the gap.
func markOrGap(a act.Act, _ []act.Act) solver.Question {
	gap := a.Statements[0]
	mark := gap
	mark.Name = solver.Name{Quantity: solver.Tape}
	return solver.Question{Text: "Is that the smallest mark to work to, or the gap itself?", Choices: []string{mark.String(), gap.String()}, Example: mark.String()}
}
