package guard

import (
	"regexp"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/solver"
)

// What is told of another day, of somebody else's work, or to somebody who stands beside, and what is not wanted though it is named:
// all of it holds the words of a wish or a question, and is none. Common ways of speech, no source.

const (
	kinToo   = `(?:` + kinOrOthers + `|(?:step)?(?:father|mother|dad|mom|mum|brother|sister|son|daughter|uncle|aunt|grandpa|granddad|grandfather|grandma|grandmother)(?: in law| - in - law)?|wife|husband|boss|partner|carpenter|contractor|framer|mason|previous owners?|last guy|inspector|architect|grandson|nephew|niece)`
	onceWas  = `(?:yesterday|last (?:week|month|year|night|summer|spring|fall|autumn|winter|season|time|monday|tuesday|wednesday|thursday|friday|saturday|sunday)|(?:that|yesterday) (?:morning|noon|afternoon)|(?:a|one|two|three|four|five|six|ten|some|[0-9]+|many|a few|a couple of)? ?(?:days?|weeks?|months?|years?|while) (?:ago|back)|years ago|long ago|back (?:then|when|in) ?[a-z]*|in the (?:spring|summer|fall|autumn|winter|old days|eighties|nineties|beginning)|in (?:january|february|march|april|may|june|july|august|september|october|november|december)|(?:before|until|till) (?:the |my |our |we |i |he |she |they |you |it )?[a-z]+|once|at one time|in those days|when (?:i|we|he|she|they) (?:[a-z]+))`
	wasIt    = `(?:was|were|ran (?:me |us |about |around |at )?[0-9.]+|cost|went for|did (?:have|carry|sell|stock|cost)|used to (?:have|carry|sell|stock|cost))`
	pageOf   = `(?:drawings?|sketch(?:es)?|pictures?|diagrams?|(?:cut |cutting |shopping |buying |price )?lists?|prices?|marks?|steps?|cuts|layouts?|options?|costs?|instructions?|directions)`
	oneHands = `(?:hand|pass|toss|throw|fetch|grab|chuck|reach|slide|slip|bring)`
)

// nowSaid is said where a line goes on to what holds, or asks for something all the same.
var nowSaid = regexp.MustCompile(`\b(?:now|today|but|so|make|instead|out of|sold out|these days|still|since|want|wants|should|use|what|how|show|give)\b|\?`)

// toldBesides are the lines that tell of another time or of others' work, call to somebody else, or name what is not wanted.
var toldBesides = []hear.OpenWay{
	// What was so: "gap 2 was yesterday", "twelve footers were 11.50 before Christmas", "they did carry fourteens once".
	{Looks: wishedButPrice, Way: regexp.MustCompile(`\b` + wasIt + `\b(?:[^,.;?!]|[0-9]\.[0-9])*\b` + `(?:this (?:morning|noon|afternoon)|` + onceWas + `)\b`), Not: nowSaid, Ask: wantedHere},
	{Looks: hear.Stated(solver.Price), Way: regexp.MustCompile(`\b` + wasIt + `\b(?:[^,.;?!]|[0-9]\.[0-9])*\b` + onceWas + `\b`), Not: nowSaid, Ask: wantedHere},
	{Looks: hear.Stated(solver.Price), Way: regexp.MustCompile(`\b(?:come|comes|coming|arrive|arrives|arriving) (?:in |back )?(?:at|by) (?:[0-9.]+|[a-z]+ [a-z]+) (?:tomorrow|tonight|sharp|(?:on |this |next )?(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday)|in the (?:morning|afternoon|evening)|o ' clock|am|pm)\b`), Ask: hear.OpenQuestion("What do they cost?", "twelve foot 2x6s are 11.48")},
	// Whose wall it is stands behind: "the wall's 44 high, my neighbor's I mean".
	{Looks: valued, Way: regexp.MustCompile(`[,.;(-] (?:(?:on|in|at|for|over at) )?(?:` + whoseEver + ` ` + kinOrOthers + `(?: 's?)?|(?:the|that|our|my) (?:old|other|last|previous|former|neighboring) (?:one|` + otherWorks + `|place|house|job)|the one (?:next door|across the (?:street|road|way)|down the (?:street|road)|over there)|the ` + notOurs + `|his|hers|theirs|yours)(?: ` + otherWorks + `| one)? (?:i mean|i meant|that is|i am talking about|is what i mean|is what i meant|not (?:ours|mine|this one|this wall))(?: [.!)])*$`), Ask: thisWallToo},
	// Somebody goes to look before it is settled: "gap two, no wait, let me look".
	{Looks: valued, Way: regexp.MustCompile(`[,.;-] (?:(?:oh|well|uh|um|hm|hmm|er|but|and) (?:, )?)*(?:no|nope|nah|wait|no wait|hang on|hold on|sorry|actually|hmm?|on second thought)(?: ,| \.)? (?:(?:no|wait|hang on|hold on|sorry|a (?:minute|second|sec|moment)) (?:, )?)*(?:i (?:would |had )?(?:better|should|must|have to|need to|want to|got to|gotta|ought to)|let (?:me|us)|i will|we (?:would |had )?(?:better|should|have to|need to))(?: just| first| quickly| really| better| go)* (?:ask|check|measure|remeasure|look|see|think|find|call|phone|verify|double - check|sleep|get back)(?: [a-z]+){0,5}(?: [.!])*$`),
		Not: regexp.MustCompile(`\b(?:measure|check|look|see|find|think)(?: at| out)? (?:the|a|my|what|how|which|where) (?:drawing|sketch|picture|list|cut|cuts|shopping|marks|steps|options|layout|price|prices|plan)|\b(?:see|look|check|find)[a-z ]* (?:what|how)\b`), Ask: wantedHere},
	{Looks: hear.Stated(solver.BottomGap), Way: regexp.MustCompile(`[,.;] (?:and |but )?(?:for |as for |under |below )?(?:the )?(?:bottom|lowest)[^.;?]*[, ](?:i|we) (?:will|would have to|have to|need to|must|am going to|can) (?:measure|check|look up|find out|ask about|tell you|work out|decide|settle|think about) (?:that|it|this|about it|about that)?(?: one)? ?(?:later|tomorrow|tonight|on site|monday|afterwards?|some other time|another time|when i get (?:there|home|back))(?: [.!])*$`), Ask: wantedHere},
	// A page that is not wanted, or was seen.
	{Looks: asksPage, Way: regexp.MustCompile(`(?:^|[,.;] )(?:(?:ok|okay|thanks|well|oh|please) (?:, )?)*no(?: need (?:for|of|to see)| use for)?(?: (?:the|a|an|any|that|more|new|other|your|further))* ` + pageOf + `(?: (?:today|now|yet|here|this time|needed|necessary|required|please|thanks|thank you|for (?:me|us)))*(?: [,.!]|$)`),
		Not: regexp.MustCompile(`\b(?:just|only|but|what|how|where|which|why|show|give|tell|i want|we want|can you|could you)\b|\?`), Ask: whatElse},
	{Looks: asksPage, Way: regexp.MustCompile(`^(?:(?:ok|okay|thanks|no|well|oh|but|and) (?:, )?)*(?:(?:i|we|she|he|they|everybody|my [a-z]+) )?(?:have |has |had |just |all |'s |is )*(?:already (?:have |has |just |all )*(?:seen|saw|have|had|has|got|read|printed|checked|looked at|know|knew)|(?:seen|saw|have|had|has|got|read|printed|checked|looked at) (?:[a-z]+ ){1,4}already)\b`),
		Not: regexp.MustCompile(`^(?:have|has|had|did|do) (?:you|i|we)\b|\b(?:what|how|where|which|why|show|give|again|but|need|want|can you|could you)\b|\?`), Ask: whatElse},
	// Somebody's order, and somebody's no to it.
	{Looks: func(a act.Act) bool { return hear.Alters[a.Kind] || a.Kind == act.TakeThat }, Way: regexp.MustCompile(`(?:[,;.] |\b)(?:and |but )?(?:i|we|she|he|they|my [a-z]+|the [a-z]+) (?:say|says|said) (?:no|nope|never|no way|not|nonsense|forget it)(?: [a-z]+){0,2}(?: [.!])*$`), Ask: hear.OpenQuestion("Shall I do that?", "take that")},
	{Looks: func(a act.Act) bool { return hear.Alters[a.Kind] && a.Kind != act.State || a.Kind == act.TakeThat }, Way: regexp.MustCompile(`^[^.;]* \? (?:(?:oh|well|hell|heck|god|lord) )?(?:no|nope|nah|never)(?: [,.;!]|$)`),
		Not: regexp.MustCompile(`\? (?:[a-z]+ )?(?:no|nope|nah|never)[ ,.;!]+(?:just |please |you can )*(?:forget|drop|scrap|lose|undo|start|save|open|clear|wipe|cancel|take|go)\b`), Ask: hear.OpenQuestion("Shall it stay as it is?", "forget the gap")},
	// Questions for loads, work done, debts and tools.
	{Looks: asksAny, Way: regexp.MustCompile(`\b(?:(?:can|could|will|would|does|do) (?:your|the|my|our|his|her|a|that|this) (?:[a-z]+ )?(?:truck|trailer|van|car|pickup|wagon|rack|cart|forklift|crew|guys?|boys?|helpers?|shelf|shelves|garage|ute|bed) (?:carry|hold|haul|take|fit|handle|load|move|lift|store)|how many [a-z ]+ (?:fit|fits) (?:in|on|into|onto) (?:your|the|my|our|his|her|a|that) (?:[a-z]+ )?(?:truck|trailer|van|car|pickup|wagon|rack|cart|garage|bed))\b`), Ask: notOurTrade},
	{Looks: asksAny, Way: regexp.MustCompile(`\bhow (?:many|much)\b.*\b(?:did|have|has) (?:you|he|she|they|we|i|the [a-z]+|your [a-z]+)(?: get| got| gotten| all| already| manage to| have)* (?:` + hear.WorkedOn + `|paint|stain|sand|prime|oil|seal|load|loaded|hung|hang|nailed|screwed|installed|done|finish|finished|carry|unload|haul)\b`), Ask: notOurTrade},
	{Looks: asksAny, Way: regexp.MustCompile(`\bowe (?:you|him|her|them|the (?:yard|shop|store|guys?)|my|your|each other)\b`),
		Not: regexp.MustCompile(`\b(?:lumber|boards?|wood|materials?|wall|rails?|all (?:this|that|of)|everything|it all|the lot|brackets|posts?)\b`), Ask: notOurTrade},
	{Looks: asksAny, Way: regexp.MustCompile(`\b(?:did (?:you|he|she|they|we|i) (?:give|pay|spend|fork over|shell out)|(?:you|he|she|they|we) (?:gave|paid|spent))\b.*\b(?:for|on) (?:a|an|the|that|your|this|his|her|my|new)(?: (?:table|miter|circular|chop|band|hand|jig|track|new|used|old|good|cordless|laser|good))* (?:saw|drill|truck|ladder|sander|planer|level|tools?|blade|nailer|driver|router|trailer)(?: [a-z]+){0,2}(?: [.?!])*$|^(?:what|how much) (?:does|do|did|would|is|was)(?: [a-z]+){1,4} (?:saw|drill|truck|ladder|sander|planer|nailer|router|trailer) (?:cost|go for|run|set you back|worth)(?: (?:new|used|these days|now|you|me|us|him))*(?: [.?!])*$`),
		Not: regexp.MustCompile(`\b(?:cut|kerf|eats?|takes?|lose|loses|remove|removes|wide|thick|thickness|width|waste|wastes)\b`), Ask: notOurTrade},
	// Orders to whoever stands beside.
	{Looks: anyWord, Way: regexp.MustCompile(`\b(?:drop|lift|raise|lower|bring|hold|move|swing|push|pull|shift|tilt|slide|keep|scoot|nudge|hoist|ease|let)(?: up| down)? your (?:[a-z]+ )?(?:end|side|corner|hands?|foot|feet|elbow|arm)\b`), Ask: whatElse},
	{Looks: handedOver, Way: regexp.MustCompile(`\b` + oneHands + `(?: over| up| down)? (?:me|him|us|her|them|dad|your [a-z]+)(?: up| over| down)? (?:` + hear.HowMany + `|the|that|those|these|this|them|some)(?: (?:more|other|of|the|those|these|good|long|short|next|last|new))* (?:` + hear.BoardsOf + `|brackets?|screws|anchors?|post)(?: (?:will|would|can|could) you| please| now| from [a-z ]+| over there| there| and [a-z ]+)?(?: [,.?!])*$`), Ask: whatElse},
	// What others have in theirs, and would have done.
	{Looks: valued, Way: regexp.MustCompile(opensClause + `(?:` + whoseEver + ` ` + kinToo + `|` + whoseEver + ` (?:lady|woman|man|couple|family|people|folks|guys?|fellow) (?:next door|across the (?:street|road|way)|down the (?:street|road)|over there)|(?:grand)?(?:pa|ma|dad|mom|mum|pop))(?: [a-z]+)? (?:put|has|have|had|got|used|uses|built|made|did|does|set|went|goes|ran|runs|chose|hung|installed|keeps?|kept|left)\b[^,;?]* (?:his|hers|theirs)\b`), Not: theirsToo, Ask: thisWallToo},
	{Looks: valued, Way: regexp.MustCompile(opensClause + `(?:` + whoseEver + ` ` + kinToo + `(?: next door)?|(?:his|her|their|` + whoseEver + ` ` + kinOrOthers + ` 's) [a-z]+|(?:grand)?(?:pa|ma|dad|mom|mum|pop)|he|she|they|the [a-z]+|somebody|anybody|everybody|most people) would(?: probably| surely| never| just| always| also)* have(?: probably| just)* (?:been|made|put|gone|used|done|built|set|had|chosen|picked|bought|taken|left|run|hung|added|cut)\b`), Not: theirsToo, Ask: wantedHere},
	// Money for something else.
	{Looks: valued, Way: regexp.MustCompile(opensClause + `(?:` + whoseEver + ` )?(?:bill|quote|bid|estimate|invoice|offer|receipt)\b[^,;?]* (?:was|is) for (?:the|my|our|a|his|her|their) (?:[a-z]+ )?(?:shed|fence|garage|barn|gate|house|kitchen|roof|driveway|siding|windows?|doors?)(?: [.!])*$`), Ask: hear.OpenQuestion("And what is that for this wall?", "the quote comes to 450")},
	{Looks: ofMoney, Way: regexp.MustCompile(`\b(?:was|is|were|are|that is)(?: only| just| all| really)* (?:for|of|on) (?:the|my|our|a|his|her|their|your|that) (?:[a-z]+ )?(?:shed|fence|garage|barn|deck|gate|house|kitchen|roof|driveway|siding|windows?|joist hangers?|pergola|patio furniture|furniture|saw|drill|truck|tools?|paint|stain|labor|other (?:wall|job|one)|last (?:wall|job|one)|old (?:wall|job|one)|neighbor 's)(?: (?:not|though|alone|only)[a-z ]*)?(?: [.!])*$`),
		Not: regexp.MustCompile(`\?|\b(?:but|this wall|ours)\b`), Ask: hear.OpenQuestion("And what is that for this wall?", "the quote comes to 450")},
}

var whatElse = hear.OpenQuestion("What would you like to know, or change?", "how many rails are there")

// theirsToo is said where a line goes on from others to this wall, or asks.
var theirsToo = regexp.MustCompile(oursToo.String() + `|\?|\b(?:ours?|mine|this one|me too|same here|will it|would (?:that|it|six|five|seven|four)|what if|can we|could we|should we|if|says?|said|like that|(?:was|is|were|are) (?:that|it|they|he|she) (?:right|wrong|correct|ok|okay|true|off)|did (?:he|she|they) get)\b`)

// wishedValue are values that somebody wishes for, or a yard asks for: not what was measured, what is held already, and what stands.
func wishedValue(a act.Act) bool {
	return a.Kind == act.State && len(a.Statements) > 0 && !hear.Stated(solver.Measured, solver.Span, solver.Have)(a)
}

// wishedButPrice are wishes that are no prices: what was paid this morning is what it costs.
func wishedButPrice(a act.Act) bool { return wishedValue(a) && !hear.Stated(solver.Price)(a) }

// asksPage is a question for a page or table of the wall.
func asksPage(a act.Act) bool { return a.Kind == act.Ask && a.Topic != "" }

// handedOver are counts and parts as they come of "hand me two boards".
func handedOver(a act.Act) bool {
	return valued(a) || hear.AsksQuantity(a) || a.Kind == act.Ask && a.Topic == "posts"
}

// ofMoney are claims of the cost, prices and budgets.
func ofMoney(a act.Act) bool {
	return valued(a) && (hear.CostOnly(a.Statements) || hear.Stated(solver.Price, solver.Budget)(a))
}
