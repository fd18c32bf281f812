package guard

import (
	"regexp"
	"slices"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/grammar/ways"
	"saywright/solver"
)

// What a line says of other things, other times and other people's walls is no wish for this one, though it holds a part and a figure:
// "the barn door is 42 wide", "my brother's wall has six rails", "six rails is too many". It is asked back, however the line was read;
// it is looked for in the words as they were said, before any step set them plain. Common ways of speech, no source.

const (
	kinOrOthers = `(?:(?:other|next|old|last|first|best|big|little|older|younger|next door|good|former|previous) )*(?:neighbors?|neighbours?|dads?|daddys?|moms?|mums?|mothers?|fathers?|grandpas?|grandmas?|grandfathers?|grandmothers?|sons?|daughters?|brothers?|sisters?|cousins?|uncles?|aunts?|friends?|buddys?|buddies|pals?|(?:mother|father|brother|sister|son|daughter|in) - in - laws?|in - laws?|colleagues?|landlords?|competitors?|rivals?|classmates?|teachers?|guys?|fellows?|folks|people|family|crews?|builders?|owners?|school|church|library|park|city|town|farm|barn|shed|garage|cottage|cabin|house|store|hotel|school|office) ?(?:next door|down the (?:street|road)|across the (?:street|road|way)|over there)?`
	otherWorks  = `(?:walls?|fences?|railings?|porch(?:es)?|decks?|gates?|doors?|doorways?|openings?|posts?|rails?|boards?|slats?|gaps?|bays?|stiffeners?|floors?|slabs?|sheds?|walk - throughs?|walkthroughs?)`
	notOurs     = `(?:sheds?|garages?|barns?|closets?|kitchens?|pantry|bathrooms?|bedrooms?|cellars?|basements?|attics?|houses?|churchs?|church|chickens?|coops?|chicken coops?|kennels?|stables?|patios?|cars?|trucks?|dogs?|cats?|cat|pet|screens?|storms?|front|back|cupboards?|cabinets?|fences?|old|ovens?|fridges?)`
	saysOf      = `(?:is|are|was|were|has|have|had|'s|measures?|measured|stands?|stood|comes? to|runs?|ran|starts?|begins?|sits?|uses?|used)`
	opensClause = `(?:^|[.,;:?!] |-- )(?:(?:and|but|so|well|see|look|hey|oh|because|since|now|ok|okay|you know|fyi|by the way) (?:, )?)*`
	whoseEver   = `(?:the|my|our|his|her|their|your|that|this|a|some|one of my|one of our)`
)

// partsAsked are the parts that one asks about.
const partsAsked = `(?:rails?|boards?|slats?|planks?|gaps?|posts?|stiffeners?|bays?|brackets?)`

// elsewhereSaid are the lines that speak of something else, each with what is read of it wrongly, and what is asked.
var elsewhereSaid = slices.Concat(othersThings, otherMinds, otherTrades, toldBesides, toldAside, openEnds, notYetSaid, thatOne, particleWays, phrasalOpen, countsOther, heardAmiss, besideIt, spokenFor, bystanders, misplaced, otherMeasure, otherPurse, othersHeard, notNeeded, limitAmid, besideFigures, asFarAs, saidOfSome, rightOrNot, heldBeside)

// othersThings are walls, doors and floors that are not this one's, and what is measured that is no wall.
var othersThings = []hear.OpenWay{
	{Looks: valued, Way: regexp.MustCompile(opensClause + whoseEver + ` ` + kinOrOthers + ` ?'s? (?:(?:old|new|other|own|north|south|east|west|back|front|last) )*` + otherWorks + ` ` + saysOf + ` `),
		Not: oursToo, Ask: thisWallToo},
	{Looks: valued, Way: regexp.MustCompile(opensClause + `(?:the |my |our |that |this |a )?` + notOurs + `(?: 's)? (?:doors?|gates?|openings?|doorways?|walls?|floors?|posts?|rails?|gaps?)(?: openings?)? ` + saysOf + ` `),
		Not: regexp.MustCompile(`\b(?:front|back) (?:gate|posts?|rails?|wall)\b|` + oursToo.String()), Ask: thisWallToo},
	{Looks: valued, Way: regexp.MustCompile(opensClause + `(?:the |my |our |that )(?:garden|driveway|yard|pasture|farm|pool|baby|dog|alley|field) (?:doors?|gates?) ` + saysOf + ` `), Not: regexp.MustCompile(`\b(?:opening|doorway|walk - through|walkthrough)\b|` + oursToo.String()), Ask: thisWallToo},
	{Looks: valued, Way: regexp.MustCompile(opensClause + `(?:the |our |my )(?:last|previous|other|first) (?:guy|fellow|man|crew|builder|owner|contractor|outfit|bunch)s?(?: [a-z]+){0,3} (?:cut|left|used|set|put|hung|built|made)\b`), Not: regexp.MustCompile(`\?|\b(?:paper|drawing|plan|note|saying|says|said|claims?|check|right|is he|are they)\b|` + oursToo.String()), Ask: thisWallToo},
	{Looks: valued, Way: regexp.MustCompile(opensClause + `last (?:year|month|summer|spring|fall|autumn|winter|week|job|time) 's (?:[a-z]+ )?` + saysOf + ` `), Not: oursToo, Ask: thisWallToo},
	{Looks: valued, Way: regexp.MustCompile(opensClause + whoseEver + ` (?:old|previous|former|last|original) (?:deck|fence|porch|railing|rail|one|job|house|patio|gate) (?:had|was|were|has) `), Not: oursToo, Ask: thisWallToo},
	{Looks: valued, Way: regexp.MustCompile(`\b(?:(?:at|by|on|in|over at) ` + whoseEver + ` ` + kinOrOthers + ` ?'s?|(?:at|on|in|of) ` + whoseEver + ` (?:old|previous|other|last|neighbor 's|neighbors) (?:fence|wall|deck|porch|house|place|job|railing)) (?:is|are|was|were|has|have|had|starts?|started|begins?|measures?) `), Not: oursToo, Ask: thisWallToo},
	{Looks: valued, Way: regexp.MustCompile(`\b(?:as|like|than) ` + whoseEver + ` (?:[a-z]+ )?(?:neighbors?|neighbours?|brother|cousin|friend|buddy|pal|uncle|(?:one|place|house|guy|folks|people|fellow|wall) next door|other (?:crew|fellow|guy|man|builder))(?: 's?| has| have| had| did| does| do| got| made| built)?(?: (?:one|wall|fence))?(?: [.!?])*$`), Ask: thisWallToo},
	{Looks: anyWord, Way: regexp.MustCompile(`\b(?:the way|just like|same way|like) the other (?:crew|fellow|guy|man|builder|outfit|folks|people|lot|bunch)s? (?:does|do|did|has|have|had|go|goes|builds?|makes?)\b`), Ask: thisWallToo},
	{Looks: valued, Way: regexp.MustCompile(opensClause + whoseEver + ` (?:sheds?|garage|barn|house|truck|car|table|couch|sofa|bench|chair|desk|dog|cat|kid|son|daughter|wife|husband|boy|girl|child|grandson|granddaughter|baby|toddler|horse|goat|pony|piano|bed|tree|bush|hedge)(?: behind it| there| here| next door)? ?(?:is|'s|are|stands)(?: about| only| just| now| almost| nearly| over| already| all of)* ` + aFigure + `(?: [a-z0-9/-]+){0,5} (?:deep|wide|high|tall|long|old)(?: now| already| these days| by now)?(?: [.!?])*$`), Ask: thisWallToo},
	{Looks: valued, Way: regexp.MustCompile(opensClause + `(?:behind|beyond|beside|next to|across from|past) the (?:wall|slab|porch|patio),? (?:there is )?(?:the|a|my|our) [a-z]+ (?:is|that is) `), Not: regexp.MustCompile(`\b(?:ground|grade|lawn|yard|drop|dirt|soil|earth|land|grass|garden|floor|patio|level|lower|below|down)\b`), Ask: thisWallToo},
	{Looks: valued, Way: regexp.MustCompile(`^(?:there (?:was|were|used to be)|(?:i|we|they|he|she) had) .*\b(?:but (?:they|it|that|those) (?:all )?(?:rotted|broke|fell|rusted|burned|got|went|is gone|are gone|came down|blew|was|were)|before the (?:storm|flood|fire|wind|move|remodel|hurricane|kids|war|accident|old)|back then|in the old (?:house|place|days|one)|(?:at|on|in) (?:our|the|my) (?:old|last|other|previous|first) (?:place|house|one|job|wall|porch|deck))\b`), Ask: wantedHere},
}

// otherMinds are what somebody doubted, denied, gave up, wanted once, or says in jest.
var otherMinds = []hear.OpenWay{
	{Looks: valued, Way: regexp.MustCompile(`\btoo (?:many|much|few|little)(?: for (?:me|us|him|her|them|my taste|that|this|the wall))?(?: [.!])*$`), Not: regexp.MustCompile(`\b(?:says|said|claims|is (?:it|that)|are (?:they|those|there))\b|^(?:[a-z]+ )?(?:is|are|was|were|would|will) |^(?:anything|any) `), Ask: whatThen},
	{Looks: valued, Way: regexp.MustCompile(`\b(?:is|are|was|were|it is|they are|seems?|looks?|would be|that is) (?:a bit |a little |way |much |far |just )*too (?:long|high|tall|wide|big|large|short|low|narrow|small|tight|deep|loose) (?:at|with) ` + aFigure + `(?: [a-z/0-9-]+){0,4}(?: [.!])*$`), Ask: whatThen},
	{Looks: hear.Sets, Way: regexp.MustCompile(`\bused to (?:want|have|like|be|use|say|ask|insist|make|build|run|set|think)\b`), Not: regexp.MustCompile(`\b(?:now|but|today|instead|these days|anymore)\b|[,;.] (?:they|it|that|those) (?:all )?used to be\b`), Ask: wantedHere},
	{Looks: hear.KindOf(act.Check), Way: regexp.MustCompile(`\bused to (?:want|have|like|be|use|say|ask|insist|make|build|run|set|think)\b`), Not: regexp.MustCompile(`\b(?:now|but|today|instead|these days|anymore)\b|[,;.] (?:they|it|that|those) (?:all )?used to be\b`), Ask: wantedHere},
	{Looks: valued, Way: regexp.MustCompile(opensClause + `(?:originally|at first|initially|in the beginning|back then|once|first) (?:, )?(?:i|we|he|she|they) (?:was|were|had been) (?:all |just )?(?:going|planning|thinking|set|meaning|about|hoping)\b`), Not: regexp.MustCompile(`\b(?:but|now|make|then|instead|changed|decided)\b`), Ask: wantedHere},
	{Looks: hear.Sets, Way: regexp.MustCompile(opensClause + `(?:(?:i|we|he|she|they) (?:might|may|could)(?: also| just| still| well| very well| possibly| even)* (?:want|need|like)\b|it (?:could|might|may)(?: well| very well| just)* be that\b)`), Not: regexp.MustCompile(`\bmay (?:want|need|like) to\b`), Ask: wantedHere},
	{Looks: valued, Way: regexp.MustCompile(`\b(?:nobody|no one|noone|not everybody|not everyone)(?: ever| here| really| actually)* (?:says|said|thinks|thought|told|wants|wanted|asked|claims|claimed|needs|likes|mentioned)\b`),
		Not: regexp.MustCompile(`\bso (?:please |just |then )?(?:make|let|keep|put|set|give|use|go|have|i|we)\b`), Ask: wantedHere},
	{Looks: valued, Way: regexp.MustCompile(opensClause + `(?:[a-z]+ )?(?:[a-z]+) (?:doubts?|doubted|denies|denied|questions|questioned)(?: that| if| whether)? `), Not: regexp.MustCompile(`\b(?:no|without|i|we) doubts?\b`), Ask: wantedHere},
	{Looks: valued, Way: regexp.MustCompile(`\bwho knows (?:if|whether|what|how|why)\b`), Ask: wantedHere},
	{Looks: hear.KindOf(act.Why, act.WhyNot), Way: regexp.MustCompile(`\bwhy (?:on earth |in the world |the heck )?(?:would|should|do|does) (?:i|we|anybody|anyone|somebody|someone|people|they|he|she)(?: ever| even| possibly)* (?:want|like|choose|care|wish|prefer|bother)\b`), Ask: wantedHere},
	{Looks: hear.KindOf(act.Why, act.WhyNot), Way: regexp.MustCompile(`\bwho (?:said|says|told) (?:to )?(?:you|me|us|him|them)\b|^(?:just |exactly |so |and )*who (?:says|said) (?:no|not|that there)\b|\bwhy (?:did|has|does) (?:nobody|no one|noone|anybody|anyone|somebody|someone|everybody|everyone) (?:tell|say|mention|told|said|warn|ask|think)`), Ask: wantedHere},
	{Looks: hear.Sets, Way: regexp.MustCompile(opensClause + `(?:i|we|he|she|they|you) (?:did not|do not|never|does not)(?: ever| really| once| actually)? (?:say|said|mean|meant|tell|told|claim|suggest|ask|asked)\b`), Not: regexp.MustCompile(`[,.;:-] .*[a-z0-9]|\b(?:but|i said|instead)\b`), Ask: wantedHere},
	{Looks: valued, Way: regexp.MustCompile(`^(?:but |and |so |hey )*do (?:we|i|you) (?:really|actually|truly|even|seriously) want [^?.]*(?: \?)?$`), Not: regexp.MustCompile(`\b(?:how|what|which|why|if)\b`), Ask: wantedHere},
	{Looks: hear.KindOf(act.State, act.Check, act.WhatIf, act.WhyNot), Way: regexp.MustCompile(`^(?:oh|yeah|yes|great|wonderful|brilliant|terrific|right|sure)(?: sure| yeah| great| right| fine)* , .*\b(?:why do not we|while we are at it|why not)(?: [.!?])*$|\bin your dreams\b|\bwhen (?:pigs|hell)\b|\bover my dead body\b`), Ask: wantedHere},
	{Looks: valued, Way: regexp.MustCompile(` \? (?:no way|never|not a chance|no chance|nonsense|ridiculous|absurd|as if|not likely|not on your life|yeah right|hardly|you are kidding|you must be kidding|are you kidding|you are joking)\b`), Ask: wantedHere},
	{Looks: valued, Way: regexp.MustCompile(`\b(?:dogs?|cats?|horses?|goats?|pets?|parrot|goldfish|hamster) (?:would|will|wants?|wanted|likes?|liked|votes?|voted|says?|said|prefers?|thinks?)\b`),
		Not: regexp.MustCompile(`, (?:the|my|our) [a-z]+ (?:would|will) not (?:really |even |much )?(?:mind|care|complain|notice|object|fuss)\b|\b(?:likes?|wants?|will|would) (?:to )?(?:squeeze|climb|jump|slip|crawl|escape|sit|sleep|hop|sneak|bolt|get (?:out|through|under|in))\b`), Ask: wantedHere},
	{Looks: valuedButTape, Way: regexp.MustCompile(`\b(?:smeared|smudged|illegible|unreadable|blurred|rubbed out|washed out|faded|scribbled over)\b|\b(?:can not|cannot|could not) (?:quite |really )?(?:read|make out)\b`), Ask: askback.WhatItSays.Open("bay 1 top measures 68 3/8")},
}

// otherTrades are questions of work, time, weight and money that nothing here answers, and words of the wall that mean something else.
var otherTrades = []hear.OpenWay{
	{Looks: hear.AsksTopic("cost"), Way: regexp.MustCompile(`\b(?:deliver(?:y|ed|ing)?|shipping|freight|hauling|rental|renting|rent|hire|hiring|permits?|insurance|labor|labour|parking|gas|lunch|dinner|coffee|dumpster|a saw|a drill|advice|weighs?|heavy)\b|\bcharge(?: me| us)? for (?:a|an|the|your|that|this) `), Not: regexp.MustCompile(`\b(?:with|without|before|plus|except|excluding|including|leaving|forget|not counting|besides|beside|apart|materials?|lumber|wood|wall|whole|all) [a-z ]*(?:delivery|shipping|labor|labour|freight|permit)|(?:delivery|labor|labour|shipping) (?:aside|excluded|or no)`), Ask: notOurTrade},
	{Looks: asksAny, Way: regexp.MustCompile(`\bhow (?:many (?:hours|days|weeks|minutes|months|evenings|weekends|men|people|guys|hands)|long) (?:does|do|will|would|is|did|should|might|can|has|have|until|till|before|it|the)\b.*\b(?:take|takes|taking|last|lasts|job|wait|drive|dry|cure|hold up|been|till|until|open|warranty|work on)\b`), Ask: notOurTrade},
	{Looks: asksAny, Way: regexp.MustCompile(`\bhow (?:much|many pounds|heavy)\b.*\bweighs?\b|\bhow heavy\b|\bwhat (?:does|do|will|would)\b.*\bweigh\b|\bweight of\b`), Ask: notOurTrade},
	{Looks: asksAny, Way: regexp.MustCompile(`\bhow to (?:hold|use|sharpen|clean|oil|start|run|carry|set up|handle|fix|repair|plug in) (?:the|a|my|our|this|that) (?:saw|drill|level|ladder|truck|tape|sander|planer)\b`), Ask: notOurTrade},
	{Looks: hear.KindOf(act.Why), Way: regexp.MustCompile(`\bwhy (?:is|are|does|has|have) (?:all )?(?:the )?(?:wood|lumber|timber|everything|life|stuff)(?: prices?)? (?:get |got |gotten |become |cost )?(?:so|that|this|up|going)\b`), Ask: notOurTrade},
	{Looks: valued, Way: regexp.MustCompile(`\b(?:have|has|had|got|is|are) (?:a|an) (?:gap|opening|slot|bay|post|spot) .*\b(?:this (?:morning|afternoon|evening|week)|tonight|tomorrow|on (?:monday|tuesday|wednesday|thursday|friday|saturday|sunday)|o ' ?clock|an hour|per hour|in (?:my|our|his|her) (?:schedule|calendar|diary))\b`), Ask: notOurTrade},
	{Looks: hear.KindOf(act.TakeThat, act.Take), Way: regexp.MustCompile(`\btake (?:that|this) (?:end|side|saw|hammer|tape|ladder|box|bag|bucket|load|truck)\b`), Ask: notOurTrade},
	{Looks: asksAny, Way: regexp.MustCompile(`\bno need to (?:redo|show|draw|print|tell|give|list|explain|repeat|work|go over|read)\b`), Not: regexp.MustCompile(`[,.;:-] .*[a-z]`), Ask: hear.OpenQuestion("What would you like instead?", "show me the cuts")},
	{Looks: hear.ValuedAny, Way: regexp.MustCompile(`\b(?:here|home|back|there|over) (?:by|at|around|before|until|till) ` + anyFigure + `\b(?: (?:o ' clock|sharp|tonight|tomorrow))?(?: with (?:the|my|our|his|her|some) [a-z]+)?(?: [.!])*$`), Not: regexp.MustCompile(`\b(?:post|opening|doorway|gap|height|wall|bay|span)s?\b`), Ask: notOurTrade},
	{Looks: func(a act.Act) bool {
		return a.Kind == act.Check && len(a.Statements) > 0 && a.Statements[0].Name.Quantity == solver.CostOf
	}, Way: regexp.MustCompile(`\b(?:has|have|lists?|shows?|gives?|says?|wants?|calls for) ` + anyFigure + ` [a-z0-9]+(?: - | -|- | )(?:footers?|foot)\b`), Not: regexp.MustCompile(`\b(?:dollars?|bucks|cost|price|total|comes? to)\b|[$]`), Ask: askback.WhatSize.Open("they say ten 2x6 twelve-footers")},
	{Looks: hear.Stated(solver.Budget), Way: regexp.MustCompile(`\bmost (?:that )?(?:i|we) (?:would|will|can|could|'d) (?:ever )?(?:pay|give|spend) for (?:a|an|each|one)\b`), Ask: hear.OpenQuestion("Is that the price of one, or the budget?", "budget 300")},
	{Looks: hear.KindOf(act.Check), Way: regexp.MustCompile(`^(?:(?:and|so|ok) )?(?:what if|suppose|supposing|say|if|imagine) (?:we|i) `), Not: regexp.MustCompile(`\b(?:says?|said|claims?|thinks|drawing|plan|sketch|paper|quote|believe|trust|go by|went by|heard|remember|understood|recall|his|her|their|he|she|they|right|true|is that|is it)\b`), Ask: hear.OpenQuestion("Shall I try both together?", "what if six rails, wall 46 high")},
	{Looks: countsParts, Way: regexp.MustCompile(`\b` + hear.BoardsOf + ` (?:(?:a|an|per) (?:day|week|minute|hour|customer|person|trip|bundle|month|year|head|man)|(?:go|goes|are going|went) up (?:today|tomorrow|tonight|next|on|this)|by (?:noon|tonight|tomorrow|dark|monday|tuesday|wednesday|thursday|friday|saturday|sunday)|at a time|at the (?:yard|shop|store)|over (?:there|here|easy)|to burn|(?:out of|off|from) (?:the|my|our|that) (?:pile|truck|cart|rack|load|bundle))\b(?: [.!])*$`), Ask: hear.OpenQuestion("How many rails is the wall to have?", "six rails")},
	{Looks: countsParts, Way: regexp.MustCompile(`\b` + hear.BoardsOf + ` (?:(?:is|are) )?for (?:the |a |my |our |his |her |their )?(?:(?:` + wayClasses["OtherWork"] + `)|kids|children|practice|fun|show|someone else|somebody else|another (?:job|day|time))(?: [.!])*$`), Ask: notForThis},
	{Looks: saidOf(solver.Openings, act.WhatIf), Way: regexp.MustCompile(`\b(?:opening|doorway|gate|entrance|walk - through|walkthrough) (?:does|will|would|can) not (?:fit|work|go)(?: in)?(?: [.!])*$`), Ask: hear.OpenQuestion("How wide is it to be?", "opening 30")},
	{Looks: hear.KindOf(act.Forget), Way: regexp.MustCompile(`\b(?:is|are|'s) off(?: [.!])*$`), Ask: hear.OpenQuestion("By how much, and which way?", "gap 1/8 wider")},
	{Looks: valued, Way: regexp.MustCompile(`\b(?:is|are|was|'s) (?:over|under) by ` + anyFigure + `\b`), Ask: hear.OpenQuestion("Over what?", "gap 2-1/2")},
	{Looks: hear.KindOf(act.Forget), Way: regexp.MustCompile(`^(?:(?:so|and|but) )?(?:will|would|does|do|did|is|are) (?:the|my|our|that|this|it|each|every) `), Ask: hear.OpenQuestion("What would you like to know?", "what is the gap")},
	{Looks: hear.AsksQuantity, Way: regexp.MustCompile(`^(?:(?:so|and|but) )?how (?:do|does|will|would|did) (?:the |my |our |these |those )?` + partsAsked + ` (?:hold|split|weigh|need|take|stay|move|matter|stand|shift|shrink|swell|pass inspection|work|look)(?: up)?(?: [.?])*$`), Ask: notOurTrade},
	{Looks: hear.KindOf(act.Why), Way: regexp.MustCompile(`^(?:(?:so|and|but) )?(?:why (?:do|does|will|would|did)|what makes) (?:the |my |our |these |those )?` + partsAsked + ` (?:split|crack|warp|sag|rot|creak|squeak|swell|shrink|fade|bow|twist|settle|weigh|need (?:paint|sanding)|get wet|lean|wobble)\b`), Ask: notOurTrade},
	{Looks: hear.KindOf(act.Save), Way: regexp.MustCompile(`\band (?:call|ring|tell|text|get|go|come|fetch) (?:my|the|our|him|her|them|home|back|up)\b`), Ask: hear.OpenQuestion("Under what name shall I save it?", "save this as porch")},
	{Looks: hear.KindOf(act.Save), Way: regexp.MustCompile(`\bsave (?:the|those|these|any|all|all the) [a-z]+ for\b`), Ask: notOurTrade},
	{Looks: asksAny, Way: regexp.MustCompile(`\bwhere (?:did|have|has|is|are) (?:i |we |he |she |my |the |our |your )+(?:[a-z]+ ){0,2}(?:pencil|tape|saw|hammer|square|level|glasses|drill|phone|gloves)\b|\bhow long (?:till|until|before) (?:the|my|our|he|she|they|lunch|dinner|dark)\b`), Ask: notOurTrade},
	{Looks: hear.AsksTopic("cuts"), Way: regexp.MustCompile(`\b(?:i|we|he|she|they) (?:have |'ve )?(?:already |just |all )+(?:made|did|done|finished|started|cut)\b`), Not: regexp.MustCompile(`\?|[,;.:] .*[a-z]`), Ask: hear.OpenQuestion("Shall I show the cuts?", "show me the cuts")},
	{Looks: valued, Way: regexp.MustCompile(`\b(?:and|an|an') (?:(?:uh|um|er) )*(?:something|somethin|somethings|somethin')(?: [.!?])*$`), Ask: askback.HowMuchIs.Open("gap 2-1/8", "that, to the eighth")},
	{Looks: hear.Stated(solver.Budget), Way: regexp.MustCompile(`\bfor (?:the |my |our )?(?:lunch|dinner|supper|breakfast|coffee|coffees|beer|beers|gas|petrol|fuel|diesel|parking|tips|pizza|groceries|raffle|babysitter|cab|bus|train|ferry|ticket|tickets)\b`), Ask: notOurTrade},
	{Looks: hear.KindOf(act.Take), Way: regexp.MustCompile(`\btake (?:five|5|ten|10)(?: [,.!;])*(?: [a-z]+)? (?:everybody|everyone|lads|boys|guys|folks|people|men|girls|fellas|mate|mates|team|all)\b`), Ask: notOurTrade},
	{Looks: hear.KindOf(act.Take), Way: regexp.MustCompile(`\btake (?:two|2|one|1|three|3|four|4)(?: of (?:these|those|them))? (?:for (?:the|a|my|your)|aspirins?|pills?|sugars?|steps|days?|weeks?|minutes?|hours?|at a time|with (?:food|water)|and call)\b`), Ask: notOurTrade},
	{Looks: topMeasured, Way: regexp.MustCompile(`\b(?:2 nd|3 rd|second|third|fourth|fifth|next) (?:board|rail|slat|plank|one)?(?: down)? ?(?:from|to|below|under) the top\b|\b(?:board|rail|slat|plank) (?:[2-9]|two|three|four|five) (?:down )?from the top\b`), Ask: hear.OpenQuestion("Which rail is that, counted from the bottom?", "measured bay 1 rail 3 = 68-3/8")},
}

const aFigure = `(?:[0-9]+|an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[ -]+[a-z]+)?|[a-z]+teen|half)`

// oursToo is said where a line goes on to this wall.
var oursToo = regexp.MustCompile(`[,;] (?:i|we) would (?:keep|like|want|have|make)\b|\b(?:but|so|and|now)(?: ,)? (?:we|i|ours?|mine|make|let us|this one|that is)\b|\b(?:new|our) ones?\b|[,;] (?:(?:and|but|so) )?(?:the|our|my) (?:half ?-? ?wall|new wall)\b`)

var (
	thisWallToo = hear.AskedWhether("Is that how this wall is to be, too?", "wall 48 high, gap 2-1/2")
	wantedHere  = hear.AskedWhether("Is that wanted now?", "six rails")
	whatThen    = hear.OpenQuestion("What is it to be instead?", "five rails")
	notOurTrade = hear.OpenQuestion("That is beyond me. What would you like to know of the wall?", "what do I need to buy")
)

// countsParts are acts that set or check how many of a part there are.
var countsParts = hear.Stated(solver.Rails, solver.AddedPosts, solver.Stiffeners, solver.Spare)

// saidOf are acts of a kind that speak of a quantity.
func saidOf(of solver.Quantity, kind act.Kind) func(act.Act) bool {
	return func(a act.Act) bool {
		return a.Kind == kind && len(a.Statements) > 0 && a.Statements[0].Name.Quantity == of
	}
}

func anyWord(act.Act) bool { return true }

func asksAny(a act.Act) bool { return a.Kind == act.Ask }

func topMeasured(a act.Act) bool {
	return valued(a) && a.Statements[0].Name.Quantity == solver.Measured && a.Statements[0].Name.At == "top"
}

// wishLost is a wish behind what is forgotten, of which nothing may have come.
var wishLost = regexp.MustCompile(`[,;.] (?:and |then |but )?(?:just |only |please |simply )*(?:make|keep|set|build|cut|space|size) (?:them|these|those|each|every|everything|all)\b`)

// answersClaim is a question behind a claim that asks for no more than whether it holds.
var answersClaim = regexp.MustCompile(`\bis (?:that|this|it) (?:really |also |about |still )?what you(?: folks| guys| people)? (?:come up with|came up with|get|got|have|make it|arrive at|find|figure|see)(?: too| as well| also)?(?: [.?!])*$`)

// helpless is what somebody says who does not know what to do, and asks something in the same breath.
var helpless = regexp.MustCompile(`\b(?:do not know|not sure|no idea|no clue|dunno|unsure|clueless)(?: about)? (?:what|where|how) (?:to|i should|we should|i am to|do i) (?:do|start|begin|go|turn)\b`)

// saidOnce leaves out what a line only seems to ask besides: help, where something else is asked, and the layout behind a claim.
func saidOnce(acts []act.Act, text string) []act.Act {
	if len(acts) < 2 {
		return acts
	}
	asks := slices.ContainsFunc(acts, asksAny)
	if asks && ways.MatchesWay(helpless, text) {
		acts = slices.DeleteFunc(acts, func(a act.Act) bool { return a.Kind == act.HelpMe && a.Topic == "" })
	}
	last := acts[len(acts)-1]
	if len(acts) > 1 && last.Kind == act.Ask && last.Topic == "layout" && last.As == "" && ways.MatchesWay(answersClaim, text) {
		before := acts[:len(acts)-1]
		if !slices.ContainsFunc(before, func(a act.Act) bool { return a.Kind != act.Check }) {
			return before
		}
	}
	return acts
}

// torn returns the first act that cannot be true beside another of the same line: "an opening of 36 that's under 30", "gap at least 3,
// gap under 2".
func torn(acts []act.Act) *act.Act {
	for i := range acts {
		for j := range acts {
			if acts[i].Kind != act.State || acts[j].Kind != act.State || len(acts[i].Statements) != 1 || len(acts[j].Statements) != 1 {
				continue
			}
			a, b := acts[i].Statements[0], acts[j].Statements[0]
			if a.Name != b.Name || a.Value.Unit != b.Value.Unit || a.Value.Word != "" || a.Value.Of != nil || b.Value.Of != nil || len(a.Value.List)+len(b.Value.List) > 0 {
				continue
			}
			d := a.Value.Num.Sub(b.Value.Num).Sign()
			under, over := b.Op == solver.LT || b.Op == solver.LE, b.Op == solver.GT || b.Op == solver.GE
			strict := b.Op == solver.LT || b.Op == solver.GT
			switch a.Op {
			case solver.Eq:
			case solver.GE, solver.GT:
				over, strict = false, strict || a.Op == solver.GT
			default:
				continue
			}
			if under && (d > 0 || strict && d == 0) || over && (d < 0 || strict && d == 0) {
				return &acts[i]
			}
		}
	}
	return nil
}

// valued are the acts that set a value, try it, or hold it against the rest.
func valued(a act.Act) bool {
	return (a.Kind == act.State || a.Kind == act.Check || a.Kind == act.WhatIf) && len(a.Statements) > 0
}

var elsewhereIndex = sync.OnceValue(func() *ways.WayIndex { return ways.IndexWays(hear.WaysOf(elsewhereSaid)) })

// OfElsewhere asks back where a line speaks of something else.
func OfElsewhere(r act.Reading, text string) act.Reading {
	if r.Ask != nil || len(r.Acts) == 0 {
		return r
	}
	r.Acts = saidOnce(r.Acts, text)
	r.Acts = triedTogether(yardAtOnce(r.Acts), text)
	if a := torn(r.Acts); a != nil {
		at := a.At
		return act.Reading{Ask: &solver.Question{At: &at, Text: "Which of them holds?", Example: a.String()}}
	}
	if ways.MatchesWay(wishLost, text) && !slices.ContainsFunc(r.Acts, func(a act.Act) bool { return a.Kind != act.Forget }) {
		at := r.Acts[0].At
		return act.Reading{Ask: &solver.Question{At: &at, Text: "And what shall be so?", Example: parse.Normal(r.Acts) + ", equal bays"}}
	}
	if q, ok := ledByParticle(r, text); ok {
		at := r.Acts[0].At
		q.At = &at
		return act.Reading{Ask: &q}
	}
	index := elsewhereIndex()
	may := index.In(text)
	for i := range elsewhereSaid {
		if !may.Has(int32(i)) {
			continue
		}
		w := &elsewhereSaid[i]
		for _, a := range r.Acts {
			if !w.Looks(a) {
				continue
			}
			if !index.Matches(i, text) || w.Not != nil && w.Not.MatchString(text) {
				break
			}
			q := w.Ask(a, r.Acts)
			if q.Text == "" {
				continue
			}
			at := a.At
			q.At = &at
			return act.Reading{Ask: &q}
		}
	}
	return r
}

// valuedButTape: "I can't read my tape any finer than a sixteenth" tells what can be read.
func valuedButTape(a act.Act) bool {
	return valued(a) && !slices.ContainsFunc(a.Statements, func(s solver.Statement) bool { return s.Name.Quantity == solver.Tape })
}
