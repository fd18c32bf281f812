package hear

import (
	"regexp"
	"strings"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/grammar/ways"
	"saywright/solver"
	"saywright/solver/exact"
)

// OpenWay is one kind of line that truly leaves open what is meant: which act it looks like, how it is said, and what is asked back.
type OpenWay struct {
	Looks func(act.Act) bool
	Way   *regexp.Regexp
	Not   *regexp.Regexp
	Ask   func(a act.Act, all []act.Act) solver.Question
}

var (
	toils = `(?:trouble|bother|work|fuss|hassle|effort|labor|labour|toil|sweat|grief|pain|headache|nuisance|aggravation|bending|lifting|digging|drilling|sawing|mess|skill|patience|sense|good|harm|damage to)`
	// BoardsOf is an expression for pieces of lumber.
	BoardsOf = `(?:boards?|planks?|rails?|slats?|posts?|stiffeners?|sticks?|uprights?|two by (?:fours?|sixes|eights?)|2x[468]s?|lumber)`
	// WorkedOn is an expression for what was done to boards.
	WorkedOn = `sanded|stained|painted|primed|oiled|sealed|carried|hauled|unloaded|stacked|planed|jointed|sorted|scraped|washed|flipped|dropped|broke|broken|split|ruined|dented|scratched|drilled|ripped|straightened|lugged|dragged`
	// HowMany is an expression for a count.
	HowMany    = `(?:[0-9]+|a|an|another|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|sixteen|twenty|a dozen|half a dozen|a couple of|a couple)`
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
func wideGap(a act.Act) bool {
	if a.Kind != act.State || len(a.Statements) != 1 || a.Statements[0].Name.Quantity != solver.Gap || a.Statements[0].Value.Unit != solver.Inch {
		return false
	}
	return !a.Statements[0].Value.Num.Less(exact.Int(12))
}

// OpenWays are the kinds of lines that are asked back whatever they look like; common practice of speech, no source.
var OpenWays = []OpenWay{
	{Looks: func(a act.Act) bool { return a.Kind == act.Take }, Way: regexp.MustCompile(`\b(?:take|pick|use|choose|do|with) (?:any |either |just )*one of (?:them|those|these)\b`),
		Ask: OpenQuestion("Which of them?", "take 2")},
	{Looks: AsksTopic("cost"), Way: regexp.MustCompile(`\bhow much (?:of )?(?:a |an )?(?:more |extra )?` + toils + `\b`),
		Ask: OpenQuestion("Shall I tell what to watch out for, or the steps?", "what should I watch out for", "ask cautions", "ask steps")},
	{Looks: Stated(solver.Goal), Way: regexp.MustCompile(`^(?:(?:so|ok|and|then|well|now) )*(?:which|what)(?: one| way| count| layout| option| of (?:them|these|those|the two)| would| will)* (?:is|'s|are|be|comes out|works out|gives|has|would be)(?: the)? ` + bestOfAll + `(?: [a-z]+)?(?: [.?!])*$`),
		Ask: OpenQuestion("Shall I look for that, or list what works?", "the cheapest wall", "ask options")},
	{Looks: Stated(solver.Rails, solver.AddedPosts, solver.Stiffeners, solver.Gap), Way: regexp.MustCompile(`(?:^| )(?:bought|purchased|picked up|got hold of|brought home|hauled home|was given|were given|scored|ordered|got me|got us|brought me|brought us|delivered|salvaged|scrounged|found|borrowed)(?: me| us| myself| ourselves| him| her| them| about| only| just| another| up)* ` + HowMany + ` (?:more |extra |good |new |old |nice |long |of the |of those )*` + BoardsOf + `(?: |$)`),
		Not: regexp.MustCompile(`\b(?:if|suppose|what about|make it|stack|high)\b`),
		Ask: OpenQuestion("Which size are they, and how long?", "I have six 2x6s, 12 ft long")},
	{Looks: Stated(solver.Rails, solver.AddedPosts, solver.Stiffeners), Way: regexp.MustCompile(`\b(?:have|has|had|just|already|i|we) (?:been |all |now )*(?:` + WorkedOn + `)(?: up| down| off| out)? ` + HowMany + ` (?:more |good |new |old |of the |of those )*` + BoardsOf + `(?: |$)`),
		Not: regexp.MustCompile(`\b(?:if|suppose|what about|make it|stack|high)\b`),
		Ask: AskedWhether("Is that how many there shall be?", "six rails")},
	{Looks: func(a act.Act) bool { return Alters[a.Kind] && a.Kind != act.State }, Way: regexp.MustCompile(`\b(?:tells?|telling|told|nags?|nagging|begs?|begging|asks?|asking|says?|saying|said)(?: me| us)(?: to| that i should| that we should)?(?: just)? (?:forget|drop|scrap|undo|redo|start|save|open|quit|stop|clear|wipe|cancel)\b`),
		Not: regexp.MustCompile(`\byou (?:tell|told|say|said)|\b(?:so|and so|fine|ok|okay|right|agreed) (?:do|i do|let us|please)\b`),
		Ask: OpenQuestion("Shall I do that?", "forget the gap")},
	{Looks: AsksQuantity, Way: regexp.MustCompile(`\b(?:i|we) (?:would|should) (?:like|love|prefer|want|rather have) (?:the|my|our|all the) [a-z]+ (?:to be |to have |to stand )?(?:a|an|at a|of a|some) `),
		Not: regexp.MustCompile(`\b(?:what|how|which|tell|show|know|see)\b`),
		Ask: askback.HowMuchIs.Open("wall 48 high", "that")},
	{Looks: tried, Way: regexp.MustCompile(`\b(?:can ?not|could not|do not|did not|have not|has not|unable to|hard to|trying to|struggling to|have to|need to|yet to|trouble|try to) (?:really |quite |seem to |yet )*(?:decide|decided|deciding|choose|choosing|settle|pick|picking|make up (?:my|our) mind) (?:between|on|among)\b`),
		Ask: OpenQuestion("Which of them shall I try?", "what if six rails")},
	{Looks: wideGap, Way: regexp.MustCompile(`\bspacings?\b`), Not: regexp.MustCompile(`\b(?:rails?|boards?|slats?|planks?|gaps?|between)\b`),
		Ask: OpenQuestion("Of the stiffeners, or between the rails?", "stiffener spacing 24", "stiffener spacing = 24 in", "gap = 24 in")},
	{Looks: Stated(solver.Openings), Way: regexp.MustCompile(`\b(?:bought|purchased|ordered|picked up|brought home|got hold of|found|salvaged)\b`), Ask: AskedWhether("Is that how many openings there shall be?", "two openings")},
	{Looks: Stated(solver.AddedPosts), Way: regexp.MustCompile(`\bposts? (?:in all|altogether|all told|in total|total|overall)\b`),
		Not: regexp.MustCompile(`\b(?:added|new|extra|more|another|additional|between|middle|intermediate)\b`),
		Ask: OpenQuestion("Are the two end posts counted in that?", "two added posts")},
	{Looks: Stated(solver.AddedPosts), Way: regexp.MustCompile(`\b(?:counting|including|with|and) (?:both |the |those |two )*(?:at the ends?|ends?|end posts?|end ones|existing ones|existing posts|old ones)\b(?:[ .!?]|counted|included)*$|\b(?:only|just) (?:two|2|three|3|four|4) posts\b`),
		Not: regexp.MustCompile(`\b(?:added|new|extra|more|another|additional|between|middle|intermediate|not counting|add|put|set|plant)\b`),
		Ask: OpenQuestion("How many besides the end posts?", "two added posts")},
	{Looks: AsksTopic("cost"), Way: regexp.MustCompile(`\bhow much (?:the )?(?:wider|bigger|larger|taller|higher|lower|shorter|narrower|smaller|tighter|broader|deeper|longer)\b`),
		Ask: askback.HowMuchIs.Open("what if I add a rail, how high is the wall", "what")},
	{Looks: setsRange, Way: regexp.MustCompile(`(?:^|, |\. |and |but )(?:i|we) (?:am|are|was|were)(?: still| somewhere| stuck| caught| torn| wavering| in)* between `),
		Ask: OpenQuestion("Which of them shall I try?", "what if six rails")},
	{Looks: Stated(solver.Goal), Way: regexp.MustCompile(`\bmost ` + somePeople + `\b`),
		Not: regexp.MustCompile(`\b(?:cheapest|widest|largest|biggest|tightest|smallest|narrowest|as (?:wide|big|large|tight|small|narrow|low|cheap|little|few) as|fewest|least)\b`),
		Ask: OpenQuestion("How wide is that?", "opening at least 36")},
	{Looks: Stated(solver.OpeningSide), Way: regexp.MustCompile(`\b(?:just |about )?right for (?:most|all|any|many|a|an|the|my|our|us|me|him|her|them|every|everyone|everybody|people|two|one|kids|wheelchairs|strollers)\b`),
		Not: regexp.MustCompile(`\b(?:on|to|at|from|off|hard|side|far) (?:the )?right\b|\bright (?:side|hand|post|end)\b`),
		Ask: OpenQuestion("How wide is that?", "opening at least 36")},
	{Looks: Stated(solver.Measured), Way: regexp.MustCompile(wishedAs),
		Not: regexp.MustCompile(`\b(?:measured|measures|measure|measuring|measurement|measurements|tape|taped|tapes|reads|read|note|noted|record|enter|write|got|found|use|used|put down|now|actually|came|comes)\b`),
		Ask: measuredOrWished},
	{Looks: AsksQuantity, Way: regexp.MustCompile(undecidedYet), Not: regexp.MustCompile(asksForIt),
		Ask: OpenQuestion("Shall I work it out, or list what would do?", "ask options", "ask options")},
	{Looks: AsksQuantity, Way: regexp.MustCompile(leftToOthers), Not: regexp.MustCompile(`[?]|\byou will\b|\bso (?:what|how|tell)\b`),
		Ask: OpenQuestion("Shall I work it out, or list what would do?", "ask options", "ask options")},
	{Looks: ValuedAny, Way: regexp.MustCompile(`\b(?:may|might|could)\b[^.;]*[,.;-] (?:but |and |so )?(?:i|we) (?:will|shall|'ll) (?:let you know|get back to you)\b`),
		Ask: OpenQuestion("Shall I try it out?", "what if six rails")},
	{Looks: AsksTopic("steps"), Way: regexp.MustCompile(`\bdo with (?:the |my |all |those |these |any )*(?:offcuts?|scraps?|leftovers?|waste|rest|sawdust|ends|extras?|old|spares?)\b`),
		Ask: OpenQuestion("What would you like to know of the wall?", "ask steps", "ask steps")},
	{Looks: asksReason, Way: regexp.MustCompile(`(?:^|[,.;] |\band )(?:that|this|it|which|here|there) (?:is|was) (?:the|my|our|a|one|no|not a|not any) (?:[a-z]+ )?reason\b`), Not: regexp.MustCompile(`[?]`),
		Ask: OpenQuestion("Shall I tell why?", "why the gap")},
	{Looks: AsksQuantity, Way: regexp.MustCompile(`\b(?:i|we) (?:will|shall) (?:give|tell|send|text|get|let|email|bring) you\b`), Not: regexp.MustCompile(`[?]|\b(?:what|how|which|where) (?:is|are|does|do|would|wide|high|tall|much|many|big|will)\b|\b(?:show|tell|give) me\b`),
		Ask: OpenQuestion("Shall I work it out, or will you tell me?", "gap 2-1/2")},
	{Looks: AsksQuantity, Way: regexp.MustCompile(`^(?:(?:please|and|so) )*(?:boards?|rails?|slats?|planks?|gaps?|spaces|bays?|posts?|stiffeners?|wall|opening|doorway|the (?:boards?|rails?|slats?|planks?|gaps?|spaces|bays?|posts?|stiffeners?|wall|opening|doorway)) (?:should|must|ought to|has to|have to|need to|needs to|shall)(?: all)? (?:be|look|come out|get|stay)\b`), Not: regexp.MustCompile(`[?]|\b(?:what|how|which|where|show|tell|know|see)\b`),
		Ask: askback.HowMuchIs.Open("gap 2 inches", "that")},
	{Looks: AsksOrTeaches, Way: regexp.MustCompile(`\b(?:ask|tell|remind|come back to|get back to|pester) (?:me|us|him|her|you)(?: [a-z]+){0,6}? (?:tomorrow|later|next week|some other time|another time|another day|tonight|in the morning)\b`), Not: regexp.MustCompile(`\b(?:what|how|which|where)\b`),
		Ask: OpenQuestion("What would you like to know now?", "what is the gap")},
	{Looks: Sets, Way: regexp.MustCompile(notDecided + `(?: yet| really| quite| just| for sure)* between `),
		Ask: OpenQuestion("Which of them shall I try?", "what if six rails")},
	{Looks: AsksQuantity, Way: regexp.MustCompile(`\b(?:give|get|grant|allow|leave|build|make|offer) [a-z ]*\b(?:a|some|an) (?:bit |little |touch |much |slightly |lot )*` + moreOfSome + ` `),
		Not: regexp.MustCompile(`\b(?:what|how|which|than|tell|show|if)\b`),
		Ask: OpenQuestion("By how much?", "make the opening 2 inches wider")},
	{Looks: tried, Way: regexp.MustCompile(`(?:(?:^|, |then )(?:would|will|does|do|did)|(?:would|will|does) (?:the|my|our|this|that|each)) (?:the |my |our |this |that |each |all )*[a-z]+(?: [a-z]+)? (?:be|stand|get|go|come out|come|end up|grow|shrink|rise|drop|become|turn out|sit|widen|gain|lose)(?: up| down| out| by| about| roughly)* (?:a |an |one |two |three |half |quarter |[0-9])`),
		Not: regexp.MustCompile(`\b(?:ok|okay|fine|allowed|legal|possible|enough|too)\b`),
		Ask: tryTheRest},
	{Looks: statedBareSize, Way: regexp.MustCompile(`^(?:[3-9]|three|four|five|six|seven|eight|nine|1[0-2]|ten|twelve) ?(?:x|by) ?(?:[12]|one|two)(?: .)*$`),
		Ask: sizeOrRows},
	{Looks: ChangesLength, Way: regexp.MustCompile(`\b(?:same as|as [a-z]+ as|equal to|equals|matching|match) [^,.;]*[,.;] (?:[a-z]+ )?(?:, )?(?:no|nope|wait|sorry|rather|actually|or)\b`),
		Ask: OpenQuestion("More or less than what?", "bottom gap an inch more than the gap")},
	{Looks: setsLength, Way: regexp.MustCompile(`\b(?:raise|lift|lower|drop|move|bring|hold|widen|push|jack|bump|hoist) [a-z ]*\b(?:another|a further|an extra) (?:[0-9]|half|quarter|inch|foot|two|three|four|five|six|eight|ten)`),
		Ask: OpenQuestion("That much more, or so much in all?", "raise the bottom gap by 1/2 in")},
	{Looks: changesOpening, Way: regexp.MustCompile(`\btake (?:the |my |our )?[a-z]+ in\b|\b(?:shift|move|slide|scoot|nudge|push|bump|bring) (?:the |my |our )?(?:opening|doorway|walkthrough|walk - through|entry|entrance|gateway|passage)\b.* (?:left|right|over)\b`),
		Ask: OpenQuestion("Is it to be wider, narrower, or somewhere else?", "opening 6 in from the left")},
	{Looks: KindOf(act.WhatIf, act.Compare), Way: regexp.MustCompile(`\b(?:i|we) (?:could|can|might) (?:see|picture|imagine) (?:it|that|this|us|myself|ourselves) .*\b(?:and|or) (?:then )?(?:i|we) (?:could|can|might) (?:also |just as well |equally )?(?:see|picture|imagine)\b`),
		Ask: OpenQuestion("Which of them shall I try?", "what if six rails")},
	{Looks: AsksQuantity, Way: regexp.MustCompile(`(?:^|[,.;] )(?:(?:and|but|so|ok|well) )?(?:i|we) (?:will|can|shall|am going to|are going to) (?:soon |then |later )?(?:give|tell|send|get|let|bring) you `), Not: regexp.MustCompile(`[?]|\b(?:what|how|which|where|if|whether)\b`),
		Ask: OpenQuestion("How much will that be?", "gap 2-1/2")},
	{Looks: func(a act.Act) bool { return a.Kind == act.Check }, Way: regexp.MustCompile(`\blet (?:me|us) check with\b|[,.;] (?:how|what|which) [a-z ]*did (?:he|she|they) (?:say|tell|give|mention|claim)(?: (?:me|us|you))?(?: [.?!])*$`),
		Ask: OpenQuestion("Is that wanted, or what somebody says?", "he says gap 2")},
	{Looks: squareRails, Way: regexp.MustCompile(`.`), Not: regexp.MustCompile(`\b(?:rails?|boards?|slats?|planks?|size|lumber|stock)\b[^,.;]* (?:[4-8]|four|five|six|eight) ?(?:x|by) ?(?:[4-8]|four|five|six|eight)|(?:x|by) ?(?:[4-8]s?|fours?|fives?|sixe?s?|eights?) (?:[a-z]+ )?(?:rails?|boards?|slats?|planks?|lumber)`),
		Ask: OpenQuestion("Is that the size of the posts, or of the rails?", "posts are 4x4")},
	{Looks: Sets, Way: regexp.MustCompile(`(?:^|[.,;] |and |but )(?:now )?(?:is|are) (?:it|that|this|they|those)(?: really| now| still| actually| just| only)* (?:[0-9]|[a-z]+ (?:now|today|instead)\b)`),
		Not: regexp.MustCompile(`\b(?:if|check|right|true|correct|says|said)\b`),
		Ask: OpenQuestion("Which of them is it?", "the span is 147")},
	{Looks: Sets, Way: regexp.MustCompile(`\band (?:, )?(?:(?:uh|um|er|oh|well|then) (?:, )?)*(?:the |my |some )?(?:pencil|ink|chalk|marker|writing|rest|remainder|end|page|paper|note|mark|last part|fraction)(?: of it| of the number)? (?:is |was |has |got |went )*(?:smear|smudg|rub|wash|fad|tor[en]|broke|ran|blur|gone|illegible|unreadable|missing|wet|off|out)`),
		Ask: OpenQuestion("And how much?", "bay 2 top measured 71 3/8")},
	{Looks: AsksQuantity, Way: regexp.MustCompile(`\b(?:a|some|an) (?:[a-z]+ )?(?:tasteful|decent|pleasant|pleasing|nice|sensible|reasonable|good|fair|proper|comfortable|generous|handsome|modest|respectable|suitable|fitting) (?:distance|space|gap|width|height|way|amount)\b`),
		Not: regexp.MustCompile(`\b(?:what|how|which|is|are|does|tell|show)\b`),
		Ask: askback.HowMuchIs.Open("gap 2 inches", "that")},
	{Looks: AsksTopic("layout"), Way: regexp.MustCompile(`\bthe (?:same )?way (?:the |that |my |his |her |their |our |some )?[a-z]+(?: [a-z]+)? (?:does|do|did|has|had|always|builds?|built|makes?|made)\b`),
		Not: regexp.MustCompile(`\b(?:what|how|which|show|see|tell)\b`),
		Ask: askback.Meant.Open("5 rails")},
	{Looks: Stated(solver.Bay), Way: regexp.MustCompile(`^(?:i |we )?(?:just )?(?:got|get|read|find|found) .* (?:on|at|in|for|across) (?:that|this|the other) (?:one )?(?:bay|section|panel)\b`),
		Ask: OpenQuestion("Which bay, and where in it was that measured?", "bay 2 top measured 71 3/8")},
	{Looks: Sets, Way: regexp.MustCompile(`\b(?:of|at|is|are) [a-z0-9 /-]+ (?:that|which) (?:is|are) (?:under|below|over|above|less than|more than|at least|at most|smaller than|bigger than|narrower than|wider than) (?:[0-9]|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thir|fif|twen|for|six|seven|eigh|nine)`),
		Not: regexp.MustCompile(`\b(?:or|if|bay|bays)\b`),
		Ask: OpenQuestion("Which of them is it?", "opening at least 30")},
}

// OpenQuestion is a question that needs nothing of the act.
func OpenQuestion(text, example string, choices ...string) func(act.Act, []act.Act) solver.Question {
	return func(act.Act, []act.Act) solver.Question {
		return solver.Question{Text: text, Choices: choices, Example: example}
	}
}

// AsksTopic tells acts that ask after a topic.
func AsksTopic(topic string) func(act.Act) bool {
	return func(a act.Act) bool { return a.Kind == act.Ask && a.Topic == topic }
}

// AsksQuantity reports whether an act asks after a quantity.
func AsksQuantity(a act.Act) bool { return a.Kind == act.Ask && a.Topic == "" && a.Name != nil }

// AsksOrTeaches reports whether an act asks, teaches, or asks for a reason.
func AsksOrTeaches(a act.Act) bool {
	return a.Kind == act.Ask || a.Kind == act.Teach || a.Kind == act.Why
}

func asksReason(a act.Act) bool { return a.Kind == act.Why || a.Kind == act.WhyNot }

func tried(a act.Act) bool { return a.Kind == act.WhatIf }

// Sets reports whether an act states something.
func Sets(a act.Act) bool { return a.Kind == act.State }

// ChangesLength reports whether an act changes one quantity by an amount.
func ChangesLength(a act.Act) bool {
	return a.Kind == act.State && len(a.Statements) == 1 && parse.Changes(a.Statements[0].Op)
}

func changesOpening(a act.Act) bool {
	return ChangesLength(a) && a.Statements[0].Name.Quantity == solver.Opening || a.Kind == act.State && len(a.Statements) == 2 && a.Statements[0].Name.Quantity == solver.Opening && parse.Changes(a.Statements[0].Op)
}

func setsLength(a act.Act) bool {
	return a.Kind == act.State && len(a.Statements) == 1 && a.Statements[0].Op == solver.Eq && solver.KindOf(a.Statements[0].Name.Quantity) == solver.Length
}

func setsRange(a act.Act) bool {
	return a.Kind == act.State && len(a.Statements) == 1 && a.Statements[0].Op == solver.In
}

// Stated tells acts that set one of some quantities.
func Stated(of ...solver.Quantity) func(act.Act) bool {
	return func(a act.Act) bool {
		if a.Kind != act.State && a.Kind != act.Check {
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

func squareRails(a act.Act) bool {
	return statedBareSize(a) && parse.SquareSize(a.Statements[0].Value.Word)
}

func statedBareSize(a act.Act) bool {
	return a.Kind == act.State && len(a.Statements) == 1 && a.Statements[0].Name.Quantity == solver.RailSize
}

// WaysOf are the expressions of a table.
func WaysOf(table []OpenWay) (ways []*regexp.Regexp) {
	for _, w := range table {
		ways = append(ways, w.Way)
	}
	return ways
}

var openIndex = sync.OnceValue(func() *ways.WayIndex { return ways.IndexWays(WaysOf(OpenWays)) })

// trulyOpen returns the question that a line leaves open, nil where it leaves none.
func trulyOpen(acts []act.Act, atoms []scan.Atom) *solver.Question {
	if len(acts) == 0 {
		return nil
	}
	said, index := scan.Text(atoms), openIndex()
	may := index.In(said)
	for i := range OpenWays {
		if !may.Has(int32(i)) {
			continue
		}
		w := &OpenWays[i]
		for _, a := range acts {
			if !w.Looks(a) {
				continue
			}
			if !index.Matches(i, said) || w.Not != nil && w.Not.MatchString(said) {
				break
			}
			if q := w.Ask(a, acts); q.Text != "" {
				at := a.At
				q.At = &at
				return &q
			}
		}
	}
	return nil
}

// measuredOrWished asks whether a bay measures so at its top or bottom, or shall be so wide.
func measuredOrWished(a act.Act, _ []act.Act) solver.Question {
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
func tryTheRest(_ act.Act, all []act.Act) solver.Question {
	var done, told []solver.Statement
	for _, a := range all {
		if a.Kind == act.WhatIf || a.Kind == act.Check {
			told = append(told, a.Statements...)
		}
	}
	asked := ""
	for _, st := range told {
		if asked == "" && parse.Changes(st.Op) {
			asked = st.Name.String()
			continue
		}
		done = append(done, st)
	}
	if asked == "" || len(done) == 0 {
		return solver.Question{}
	}
	trial := parse.Normal([]act.Act{{Kind: act.WhatIf, Statements: done}})
	return solver.Question{Text: "Shall I try that, and tell what the " + asked + " comes to?", Choices: []string{trial}, Example: trial}
}

// sizeOrRows asks whether "6 x 2" is lumber, or six rails with gaps of two inches.
func sizeOrRows(a act.Act, _ []act.Act) solver.Question {
	size := a.Statements[0].String()
	return solver.Question{Text: "Is that the size of the rails, or so many rails?", Choices: []string{size}, Example: size}
}
