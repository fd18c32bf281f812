package grammar

import (
	"regexp"
	"strings"
	"sync"

	"saywright/solver"
	"saywright/solver/exact"
)

// openWay is one kind of line that truly leaves open what is meant: which act it looks like, how it is said, and what is asked back.
type openWay struct {
	looks func(Act) bool
	way   *regexp.Regexp
	not   *regexp.Regexp
	ask   func(a Act, all []Act) solver.Question
}

var (
	toils = `(?:trouble|bother|work|fuss|hassle|effort|labor|labour|toil|sweat|grief|pain|headache|nuisance|aggravation|bending|lifting|digging|drilling|sawing|mess|skill|patience|sense|good|harm|damage to)`
	// boardsOf is an expression for pieces of lumber.
	boardsOf = `(?:boards?|planks?|rails?|slats?|posts?|stiffeners?|sticks?|uprights?|two by (?:fours?|sixes|eights?)|2x[468]s?|lumber)`
	// workedOn is an expression for what was done to boards.
	workedOn = `sanded|stained|painted|primed|oiled|sealed|carried|hauled|unloaded|stacked|planed|jointed|sorted|scraped|washed|flipped|dropped|broke|broken|split|ruined|dented|scratched|drilled|ripped|straightened|lugged|dragged`
	// howMany is an expression for a count.
	howMany    = `(?:[0-9]+|a|an|another|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|sixteen|twenty|a dozen|half a dozen|a couple of|a couple)`
	bestOfAll  = `(?:the )?(?:absolute |very )?(?:cheapest|least expensive|least waste|fewest (?:posts|rails|boards)|most rails|smallest gap|tightest gap|biggest opening|largest opening|widest opening)`
	somePeople = `(?:people|folks|folk|kids|children|men|women|adults|grownups|dogs|cats|pets|wheelchairs|strollers|mowers|carts|of us|of them|doors|doorways|gates|entries|entryways|porches|decks|patios|everyone|everybody|anyone|anybody|homes|houses|families|purposes|jobs|walls|days|customers|neighbors)`
	wishedAs   = `\b(?:want|wants|wanted|would like|would love|need|needs|make|let|should be|must be|has to be|have to be|ought to be|shall be|wish|prefer)\b`
	moreOfSome = `(?:wider|bigger|larger|taller|higher|lower|shorter|narrower|smaller|tighter|broader|roomier|deeper|longer|better|nicer|more|less)`
)

// What somebody does not know yet, or has not settled, is not asked for: "we have not made up our minds how many boards".
var (
	notDecided   = `\b(?:(?:i|we|he|she|they) (?:(?:have|has|had|am|are|is|did|do|does) )?(?:not|never|yet to|still to|have yet to|has yet to|are yet to) (?:yet |really |quite |even |actually |fully |all )*(?:decided?|settled?|determined?|chosen|choose|picked|pick|agreed?|worked out|made up (?:my|our|his|her|their) minds?|make up (?:my|our|his|her|their) minds?|fixed|concluded|figured out)|(?:undecided|of two minds|in two minds|on the fence|unsettled))\b`
	undecidedYet = notDecided + `|\b(?:i|we|he|she|they) (?:do|does|did) not (?:really |quite |even |actually )*know (?:(?:just )?yet|[a-z ]*\b(?:should be|should (?:use|have|go with|make|set|pick|choose|leave|want)|will be|ought to be|is to be|are to be|shall be|to make|to have|to go|to get|to use|to set|to build|to choose|to pick|would want|wants?|would like|yet)\b)|\b(?:no|not (?:have )?(?:any|a|the faintest|the slightest)) (?:idea|notion|clue|inkling|thoughts?) (?:yet|[a-z ]*\b(?:should|ought|want|wants|would like|will be|ought to be|is to be|yet)\b)|\b(?:not|un) ?(?:yet )?(?:sure|certain|decided) (?:yet|[a-z ]*\b(?:should be|will be|ought to be|is to be|yet)\b)|\b(?:still|yet) (?:have )?to (?:decide|settle|choose|work out|be decided|be settled|agree)\b|\bstill (?:deciding|debating|mulling|arguing|thinking about|pondering|wondering about) |\bup in the air\b`
	leftToOthers = `\b(?:i|we) (?:will|shall|would|had) (?:have to |need to |better |first )*(?:get back to you|ask (?:my|the|our|him|her|them|around)|check with|find out from)\b|^(?:well , )?who knows (?:how|what|which)\b|\bthe question is (?:what|how|which) [a-z ]*\b(?:want|should)\b|\bwill (?:tell|let|show) (?:me|us)(?: know)? (?:how|what|which)\b`
	asksForIt    = `[?]|\b(?:tell|give|show|remind|work it out|figure it out|you|let me know|help|so what|so how|what (?:is|are|would|do)|what's|how (?:much|wide|high|tall|many|big) (?:is|are|do|would))\b`
)

// wideGap: the gap is set to more than a hand's breadth could close.
func wideGap(a Act) bool {
	if a.Kind != State || len(a.Statements) != 1 || a.Statements[0].Name.Quantity != solver.Gap || a.Statements[0].Value.Unit != solver.Inch {
		return false
	}
	return !a.Statements[0].Value.Num.Less(exact.Int(12))
}

// openWays are the kinds of lines that are asked back whatever they look like; common practice of speech, no source.
var openWays = []openWay{
	{looks: func(a Act) bool { return a.Kind == Take }, way: regexp.MustCompile(`\b(?:take|pick|use|choose|do|with) (?:any |either |just )*one of (?:them|those|these)\b`),
		ask: openQuestion("Which of them?", "take 2")},
	{looks: asksTopic("cost"), way: regexp.MustCompile(`\bhow much (?:of )?(?:a |an )?(?:more |extra )?` + toils + `\b`),
		ask: openQuestion("Shall I tell what to watch out for, or the steps?", "what should I watch out for", "ask cautions", "ask steps")},
	{looks: stated(solver.Goal), way: regexp.MustCompile(`^(?:(?:so|ok|and|then|well|now) )*(?:which|what)(?: one| way| count| layout| option| of (?:them|these|those|the two)| would| will)* (?:is|'s|are|be|comes out|works out|gives|has|would be)(?: the)? ` + bestOfAll + `(?: [a-z]+)?(?: [.?!])*$`),
		ask: openQuestion("Shall I look for that, or list what works?", "the cheapest wall", "ask options")},
	{looks: stated(solver.Rails, solver.AddedPosts, solver.Stiffeners, solver.Gap), way: regexp.MustCompile(`(?:^| )(?:bought|purchased|picked up|got hold of|brought home|hauled home|was given|were given|scored|ordered|got me|got us|brought me|brought us|delivered|salvaged|scrounged|found|borrowed)(?: me| us| myself| ourselves| him| her| them| about| only| just| another| up)* ` + howMany + ` (?:more |extra |good |new |old |nice |long |of the |of those )*` + boardsOf + `(?: |$)`),
		not: regexp.MustCompile(`\b(?:if|suppose|what about|make it|stack|high)\b`),
		ask: openQuestion("Which size are they, and how long?", "I have six 2x6s, 12 ft long")},
	{looks: stated(solver.Rails, solver.AddedPosts, solver.Stiffeners), way: regexp.MustCompile(`\b(?:have|has|had|just|already|i|we) (?:been |all |now )*(?:` + workedOn + `)(?: up| down| off| out)? ` + howMany + ` (?:more |good |new |old |of the |of those )*` + boardsOf + `(?: |$)`),
		not: regexp.MustCompile(`\b(?:if|suppose|what about|make it|stack|high)\b`),
		ask: askedWhether("Is that how many there shall be?", "six rails")},
	{looks: func(a Act) bool { return alters[a.Kind] && a.Kind != State }, way: regexp.MustCompile(`\b(?:tells?|telling|told|nags?|nagging|begs?|begging|asks?|asking|says?|saying|said)(?: me| us)(?: to| that i should| that we should)?(?: just)? (?:forget|drop|scrap|undo|redo|start|save|open|quit|stop|clear|wipe|cancel)\b`),
		not: regexp.MustCompile(`\byou (?:tell|told|say|said)|\b(?:so|and so|fine|ok|okay|right|agreed) (?:do|i do|let us|please)\b`),
		ask: openQuestion("Shall I do that?", "forget the gap")},
	{looks: asksQuantity, way: regexp.MustCompile(`\b(?:i|we) (?:would|should) (?:like|love|prefer|want|rather have) (?:the|my|our|all the) [a-z]+ (?:to be |to have |to stand )?(?:a|an|at a|of a|some) `),
		not: regexp.MustCompile(`\b(?:what|how|which|tell|show|know|see)\b`),
		ask: qHowMuchIs.open("wall 48 high", "that")},
	{looks: tried, way: regexp.MustCompile(`\b(?:can ?not|could not|do not|did not|have not|has not|unable to|hard to|trying to|struggling to|have to|need to|yet to|trouble|try to) (?:really |quite |seem to |yet )*(?:decide|decided|deciding|choose|choosing|settle|pick|picking|make up (?:my|our) mind) (?:between|on|among)\b`),
		ask: openQuestion("Which of them shall I try?", "what if six rails")},
	{looks: wideGap, way: regexp.MustCompile(`\bspacings?\b`), not: regexp.MustCompile(`\b(?:rails?|boards?|slats?|planks?|gaps?|between)\b`),
		ask: openQuestion("Of the stiffeners, or between the rails?", "stiffener spacing 24", "stiffener spacing = 24 in", "gap = 24 in")},
	{looks: stated(solver.Openings), way: regexp.MustCompile(`\b(?:bought|purchased|ordered|picked up|brought home|got hold of|found|salvaged)\b`), ask: askedWhether("Is that how many openings there shall be?", "two openings")},
	{looks: stated(solver.AddedPosts), way: regexp.MustCompile(`\bposts? (?:in all|altogether|all told|in total|total|overall)\b`),
		not: regexp.MustCompile(`\b(?:added|new|extra|more|another|additional|between|middle|intermediate)\b`),
		ask: openQuestion("Are the two end posts counted in that?", "two added posts")},
	{looks: asksTopic("cost"), way: regexp.MustCompile(`\bhow much (?:the )?(?:wider|bigger|larger|taller|higher|lower|shorter|narrower|smaller|tighter|broader|deeper|longer)\b`),
		ask: qHowMuchIs.open("what if I add a rail, how high is the wall", "what")},
	{looks: setsRange, way: regexp.MustCompile(`(?:^|, |\. |and |but )(?:i|we) (?:am|are|was|were)(?: still| somewhere| stuck| caught| torn| wavering| in)* between `),
		ask: openQuestion("Which of them shall I try?", "what if six rails")},
	{looks: stated(solver.Goal), way: regexp.MustCompile(`\bmost ` + somePeople + `\b`),
		not: regexp.MustCompile(`\b(?:cheapest|widest|largest|biggest|tightest|smallest|narrowest|as (?:wide|big|large|tight|small|narrow|low|cheap|little|few) as|fewest|least)\b`),
		ask: openQuestion("How wide is that?", "opening at least 36")},
	{looks: stated(solver.OpeningSide), way: regexp.MustCompile(`\b(?:just |about )?right for (?:most|all|any|many|a|an|the|my|our|us|me|him|her|them|every|everyone|everybody|people|two|one|kids|wheelchairs|strollers)\b`),
		not: regexp.MustCompile(`\b(?:on|to|at|from|off|hard|side|far) (?:the )?right\b|\bright (?:side|hand|post|end)\b`),
		ask: openQuestion("How wide is that?", "opening at least 36")},
	{looks: stated(solver.Measured), way: regexp.MustCompile(wishedAs),
		not: regexp.MustCompile(`\b(?:measured|measures|measure|measuring|measurement|measurements|tape|taped|tapes|reads|read|note|noted|record|enter|write|got|found|use|used|put down|now|actually|came|comes)\b`),
		ask: measuredOrWished},
	{looks: asksQuantity, way: regexp.MustCompile(undecidedYet), not: regexp.MustCompile(asksForIt),
		ask: openQuestion("Shall I work it out, or list what would do?", "ask options", "ask options")},
	{looks: asksQuantity, way: regexp.MustCompile(leftToOthers), not: regexp.MustCompile(`[?]|\byou will\b|\bso (?:what|how|tell)\b`),
		ask: openQuestion("Shall I work it out, or list what would do?", "ask options", "ask options")},
	{looks: valuedAny, way: regexp.MustCompile(`\b(?:may|might|could)\b[^.;]*[,.;-] (?:but |and |so )?(?:i|we) (?:will|shall|'ll) (?:let you know|get back to you)\b`),
		ask: openQuestion("Shall I try it out?", "what if six rails")},
	{looks: asksTopic("steps"), way: regexp.MustCompile(`\bdo with (?:the |my |all |those |these |any )*(?:offcuts?|scraps?|leftovers?|waste|rest|sawdust|ends|extras?|old|spares?)\b`),
		ask: openQuestion("What would you like to know of the wall?", "ask steps", "ask steps")},
	{looks: asksReason, way: regexp.MustCompile(`(?:^|[,.;] |\band )(?:that|this|it|which|here|there) (?:is|was) (?:the|my|our|a|one|no|not a|not any) (?:[a-z]+ )?reason\b`), not: regexp.MustCompile(`[?]`),
		ask: openQuestion("Shall I tell why?", "why the gap")},
	{looks: asksQuantity, way: regexp.MustCompile(`\b(?:i|we) (?:will|shall) (?:give|tell|send|text|get|let|email|bring) you\b`), not: regexp.MustCompile(`[?]|\b(?:what|how|which|where) (?:is|are|does|do|would|wide|high|tall|much|many|big|will)\b|\b(?:show|tell|give) me\b`),
		ask: openQuestion("Shall I work it out, or will you tell me?", "gap 2-1/2")},
	{looks: asksQuantity, way: regexp.MustCompile(`^(?:(?:please|and|so) )*(?:boards?|rails?|slats?|planks?|gaps?|spaces|bays?|posts?|stiffeners?|wall|opening|doorway|the (?:boards?|rails?|slats?|planks?|gaps?|spaces|bays?|posts?|stiffeners?|wall|opening|doorway)) (?:should|must|ought to|has to|have to|need to|needs to|shall)(?: all)? (?:be|look|come out|get|stay)\b`), not: regexp.MustCompile(`[?]|\b(?:what|how|which|where|show|tell|know|see)\b`),
		ask: qHowMuchIs.open("gap 2 inches", "that")},
	{looks: asksOrTeaches, way: regexp.MustCompile(`\b(?:ask|tell|remind|come back to|get back to|pester) (?:me|us|him|her|you)(?: [a-z]+){0,6}? (?:tomorrow|later|next week|some other time|another time|another day|tonight|in the morning)\b`), not: regexp.MustCompile(`\b(?:what|how|which|where)\b`),
		ask: openQuestion("What would you like to know now?", "what is the gap")},
	{looks: sets, way: regexp.MustCompile(notDecided + `(?: yet| really| quite| just| for sure)* between `),
		ask: openQuestion("Which of them shall I try?", "what if six rails")},
	{looks: asksQuantity, way: regexp.MustCompile(`\b(?:give|get|grant|allow|leave|build|make|offer) [a-z ]*\b(?:a|some|an) (?:bit |little |touch |much |slightly |lot )*` + moreOfSome + ` `),
		not: regexp.MustCompile(`\b(?:what|how|which|than|tell|show|if)\b`),
		ask: openQuestion("By how much?", "make the opening 2 inches wider")},
	{looks: tried, way: regexp.MustCompile(`(?:(?:^|, |then )(?:would|will|does|do|did)|(?:would|will|does) (?:the|my|our|this|that|each)) (?:the |my |our |this |that |each |all )*[a-z]+(?: [a-z]+)? (?:be|stand|get|go|come out|come|end up|grow|shrink|rise|drop|become|turn out|sit|widen|gain|lose)(?: up| down| out| by| about| roughly)* (?:a |an |one |two |three |half |quarter |[0-9])`),
		not: regexp.MustCompile(`\b(?:ok|okay|fine|allowed|legal|possible|enough|too)\b`),
		ask: tryTheRest},
	{looks: statedBareSize, way: regexp.MustCompile(`^(?:[3-9]|three|four|five|six|seven|eight|nine|1[0-2]|ten|twelve) ?(?:x|by) ?(?:[12]|one|two)(?: .)*$`),
		ask: sizeOrRows},
	{looks: changesLength, way: regexp.MustCompile(`\b(?:same as|as [a-z]+ as|equal to|equals|matching|match) [^,.;]*[,.;] (?:[a-z]+ )?(?:, )?(?:no|nope|wait|sorry|rather|actually|or)\b`),
		ask: openQuestion("More or less than what?", "bottom gap an inch more than the gap")},
	{looks: setsLength, way: regexp.MustCompile(`\b(?:raise|lift|lower|drop|move|bring|hold|widen|push|jack|bump|hoist) [a-z ]*\b(?:another|a further|an extra) (?:[0-9]|half|quarter|inch|foot|two|three|four|five|six|eight|ten)`),
		ask: openQuestion("That much more, or so much in all?", "raise the bottom gap by 1/2 in")},
	{looks: changesOpening, way: regexp.MustCompile(`\btake (?:the |my |our )?[a-z]+ in\b|\b(?:shift|move|slide|scoot|nudge|push|bump|bring) (?:the |my |our )?(?:opening|doorway|walkthrough|walk - through|entry|entrance|gateway|passage)\b.* (?:left|right|over)\b`),
		ask: openQuestion("Is it to be wider, narrower, or somewhere else?", "opening 6 in from the left")},
	{looks: kindOf(WhatIf, Compare), way: regexp.MustCompile(`\b(?:i|we) (?:could|can|might) (?:see|picture|imagine) (?:it|that|this|us|myself|ourselves) .*\b(?:and|or) (?:then )?(?:i|we) (?:could|can|might) (?:also |just as well |equally )?(?:see|picture|imagine)\b`),
		ask: openQuestion("Which of them shall I try?", "what if six rails")},
	{looks: asksQuantity, way: regexp.MustCompile(`(?:^|[,.;] )(?:(?:and|but|so|ok|well) )?(?:i|we) (?:will|can|shall|am going to|are going to) (?:soon |then |later )?(?:give|tell|send|get|let|bring) you `), not: regexp.MustCompile(`[?]|\b(?:what|how|which|where|if|whether)\b`),
		ask: openQuestion("How much will that be?", "gap 2-1/2")},
	{looks: func(a Act) bool { return a.Kind == Check }, way: regexp.MustCompile(`\blet (?:me|us) check with\b|[,.;] (?:how|what|which) [a-z ]*did (?:he|she|they) (?:say|tell|give|mention|claim)(?: (?:me|us|you))?(?: [.?!])*$`),
		ask: openQuestion("Is that wanted, or what somebody says?", "he says gap 2")},
	{looks: squareRails, way: regexp.MustCompile(`.`), not: regexp.MustCompile(`\b(?:rails?|boards?|slats?|planks?|size|lumber|stock)\b[^,.;]* (?:[4-8]|four|five|six|eight) ?(?:x|by) ?(?:[4-8]|four|five|six|eight)|(?:x|by) ?(?:[4-8]s?|fours?|fives?|sixe?s?|eights?) (?:[a-z]+ )?(?:rails?|boards?|slats?|planks?|lumber)`),
		ask: openQuestion("Is that the size of the posts, or of the rails?", "posts are 4x4")},
	{looks: sets, way: regexp.MustCompile(`(?:^|[.,;] |and |but )(?:now )?(?:is|are) (?:it|that|this|they|those)(?: really| now| still| actually| just| only)* (?:[0-9]|[a-z]+ (?:now|today|instead)\b)`),
		not: regexp.MustCompile(`\b(?:if|check|right|true|correct|says|said)\b`),
		ask: openQuestion("Which of them is it?", "the span is 147")},
	{looks: sets, way: regexp.MustCompile(`\band (?:, )?(?:(?:uh|um|er|oh|well|then) (?:, )?)*(?:the |my |some )?(?:pencil|ink|chalk|marker|writing|rest|remainder|end|page|paper|note|mark|last part|fraction)(?: of it| of the number)? (?:is |was |has |got |went )*(?:smear|smudg|rub|wash|fad|tor[en]|broke|ran|blur|gone|illegible|unreadable|missing|wet|off|out)`),
		ask: openQuestion("And how much?", "bay 2 top measured 71 3/8")},
	{looks: asksQuantity, way: regexp.MustCompile(`\b(?:a|some|an) (?:[a-z]+ )?(?:tasteful|decent|pleasant|pleasing|nice|sensible|reasonable|good|fair|proper|comfortable|generous|handsome|modest|respectable|suitable|fitting) (?:distance|space|gap|width|height|way|amount)\b`),
		not: regexp.MustCompile(`\b(?:what|how|which|is|are|does|tell|show)\b`),
		ask: qHowMuchIs.open("gap 2 inches", "that")},
	{looks: asksTopic("layout"), way: regexp.MustCompile(`\bthe (?:same )?way (?:the |that |my |his |her |their |our |some )?[a-z]+(?: [a-z]+)? (?:does|do|did|has|had|always|builds?|built|makes?|made)\b`),
		not: regexp.MustCompile(`\b(?:what|how|which|show|see|tell)\b`),
		ask: qMeant.open("5 rails")},
	{looks: stated(solver.Bay), way: regexp.MustCompile(`^(?:i |we )?(?:just )?(?:got|get|read|find|found) .* (?:on|at|in|for|across) (?:that|this|the other) (?:one )?(?:bay|section|panel)\b`),
		ask: openQuestion("Which bay, and where in it was that measured?", "bay 2 top measured 71 3/8")},
	{looks: sets, way: regexp.MustCompile(`\b(?:of|at|is|are) [a-z0-9 /-]+ (?:that|which) (?:is|are) (?:under|below|over|above|less than|more than|at least|at most|smaller than|bigger than|narrower than|wider than) (?:[0-9]|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thir|fif|twen|for|six|seven|eigh|nine)`),
		not: regexp.MustCompile(`\b(?:or|if|bay|bays)\b`),
		ask: openQuestion("Which of them is it?", "opening at least 30")},
}

// openQuestion is a question that needs nothing of the act.
func openQuestion(text, example string, choices ...string) func(Act, []Act) solver.Question {
	return func(Act, []Act) solver.Question {
		return solver.Question{Text: text, Choices: choices, Example: example}
	}
}

// asksTopic tells acts that ask after a topic.
func asksTopic(topic string) func(Act) bool {
	return func(a Act) bool { return a.Kind == Ask && a.Topic == topic }
}

// asksQuantity reports whether an act asks after a quantity.
func asksQuantity(a Act) bool { return a.Kind == Ask && a.Topic == "" && a.Name != nil }

// asksOrTeaches reports whether an act asks, teaches, or asks for a reason.
func asksOrTeaches(a Act) bool { return a.Kind == Ask || a.Kind == Teach || a.Kind == Why }

func asksReason(a Act) bool { return a.Kind == Why || a.Kind == WhyNot }

func tried(a Act) bool { return a.Kind == WhatIf }

// sets reports whether an act states something.
func sets(a Act) bool { return a.Kind == State }

// changesLength reports whether an act changes one quantity by an amount.
func changesLength(a Act) bool {
	return a.Kind == State && len(a.Statements) == 1 && changes(a.Statements[0].Op)
}

func changesOpening(a Act) bool {
	return changesLength(a) && a.Statements[0].Name.Quantity == solver.Opening || a.Kind == State && len(a.Statements) == 2 && a.Statements[0].Name.Quantity == solver.Opening && changes(a.Statements[0].Op)
}

func setsLength(a Act) bool {
	return a.Kind == State && len(a.Statements) == 1 && a.Statements[0].Op == solver.Eq && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Length
}

func setsRange(a Act) bool {
	return a.Kind == State && len(a.Statements) == 1 && a.Statements[0].Op == solver.In
}

// stated tells acts that set one of some quantities.
func stated(of ...solver.Quantity) func(Act) bool {
	return func(a Act) bool {
		if a.Kind != State && a.Kind != Check {
			return false
		}
		for _, st := range a.Statements {
			for _, q := range of {
				if st.Name.Quantity == q {
					return true
				}
			}
		}
		return false
	}
}

func squareRails(a Act) bool {
	return statedBareSize(a) && squareSize(a.Statements[0].Value.Word)
}

func statedBareSize(a Act) bool {
	return a.Kind == State && len(a.Statements) == 1 && a.Statements[0].Name.Quantity == solver.RailSize
}

// waysOf are the expressions of a table.
func waysOf(table []openWay) (ways []*regexp.Regexp) {
	for _, w := range table {
		ways = append(ways, w.way)
	}
	return ways
}

var openIndex = sync.OnceValue(func() *wayIndex { return indexWays(waysOf(openWays)) })

// trulyOpen returns the question that a line leaves open, nil where it leaves none.
func trulyOpen(acts []Act, atoms []atom) *solver.Question {
	if len(acts) == 0 {
		return nil
	}
	said, index := textOf(atoms), openIndex()
	may := index.in(said)
	for i := range openWays {
		if !may.has(int32(i)) {
			continue
		}
		w := &openWays[i]
		for _, a := range acts {
			if !w.looks(a) {
				continue
			}
			if !index.matches(i, said) || w.not != nil && w.not.MatchString(said) {
				break
			}
			if q := w.ask(a, acts); q.Text != "" {
				at := a.At
				q.At = &at
				return &q
			}
		}
	}
	return nil
}

// measuredOrWished asks whether a bay measures so at its top or bottom, or shall be so wide.
func measuredOrWished(a Act, _ []Act) solver.Question {
	for _, st := range a.Statements {
		if st.Name.Quantity != solver.Measured || !strings.Contains(st.String(), "bay") {
			continue
		}
		wished := st
		wished.Name.Quantity, wished.Name.At = solver.Bay, ""
		return solver.Question{Text: "Was that measured, or shall the bay be so wide?", Choices: []string{st.String(), wished.String()}, Example: st.String()}
	}
	return solver.Question{}
}

// tryTheRest asks to try only what was done, of a trial that also holds what may come of it: "would the wall stand an inch taller if I
// went to two by sixes".
func tryTheRest(_ Act, all []Act) solver.Question {
	var done, told []solver.Statement
	for _, a := range all {
		if a.Kind == WhatIf || a.Kind == Check {
			told = append(told, a.Statements...)
		}
	}
	asked := ""
	for _, st := range told {
		if asked == "" && changes(st.Op) {
			asked = st.Name.String()
			continue
		}
		done = append(done, st)
	}
	if asked == "" || len(done) == 0 {
		return solver.Question{}
	}
	trial := Normal([]Act{{Kind: WhatIf, Statements: done}})
	return solver.Question{Text: "Shall I try that, and tell what the " + asked + " comes to?", Choices: []string{trial}, Example: trial}
}

// sizeOrRows asks whether "6 x 2" is lumber, or six rails with gaps of two inches.
func sizeOrRows(a Act, _ []Act) solver.Question {
	size := a.Statements[0].String()
	return solver.Question{Text: "Is that the size of the rails, or so many rails?", Choices: []string{size}, Example: size}
}
