package grammar

import (
	"regexp"
	"slices"

	"saywright/solver"
)

// What is said aside of a wall: in jest, of what came to nothing, of boards that are damaged or go to another work, of what others build
// and what somebody thinks of it. It holds a part and a figure, and wishes nothing. Common ways of speech, no source.

const (
	otherWork  = `(?:bench|benches|table|sheds?|gates?|fences?|stairs?|steps?|stoop|ramp|planters?|trellis|arbor|pergola|coop|kennel|crib|bed|beds|bookcase|shelf|shelves|garage|barn|roof|swing|sandbox|mailbox|treehouse|tree house|workbench|sawhorses?|hutch|birdhouse|playhouse|porch swing|ladder|scaffold|scaffolding|forms?|bonfire|fire|firewood|kindling|campfire|neighbors?|next job|other job|other wall)`
	damaged    = `(?:split|cracked|warped|twisted|cupped|bowed|crooked|rotten|rotted|bad|chewed|chewed up|checked|punky|soft|wet|dry|scratched|dented|gouged|stained|painted|primed|ruined|broken|broke|damaged|loose|missing|gone|knotty|green|dirty|muddy|straight|fine|beauties|stuck|in the truck|on the truck|in the way|still here|upside down|backwards|crowned|junk|useless|trash|no good|scrap|shot|garbage|worthless|bent|out of square|out of true)`
	thatIsFun  = `(?:rich|a good one|a laugh|hilarious|funny|very funny|so funny|a riot|a joke|priceless|precious|cute|the day|a hoot)`
	builtOnce  = `(?:built|made|saw|seen|had|did|done|put up|put in|worked on|owned|hung|set|cut|framed|came across|used|bought)`
	byOthers   = `(?:everybody|everyone|somebody|someone|anybody|most folks|most people|lots of folks|lots of people|a lot of people|a lot of folks|folks|people) (?:else )?(?:(?:a)?round here|around here|in town|down here|up here|on (?:our|my|the|this) (?:street|road|block)|in the neighborhood|out here)`
	askedOfYou = `(?:would|do|did|could|will) (?:you|your (?:wife|husband|mother|dad|kids|mom|boss|folks|friends|customers?))(?: [a-z]+){0,2} (?:put|build|have|use|go with|choose|pick|want|like|buy|live with)\b[^,.]*\b(?:your own|yourself|at home|at your place|if it was yours|if it were yours)`
)

// valuedAny are acts that set a value, try it, hold it against the rest, or ask why it is or is not so.
var valuedAny = kindOf(State, Check, WhatIf, Why, WhyNot)

// toldAside are the lines that only say something aside.
var toldAside = []openWay{
	// Boards that go to another work, and boards that are spoiled.
	{looks: stated(solver.Rails, solver.AddedPosts, solver.Stiffeners, solver.Spare, solver.Have), way: regexp.MustCompile(`\b(?:set aside|set (?:[a-z]+ )?[a-z]+ [a-z]+ aside|put aside|put by|lay aside|hold back|keep back|reserve|save|saved|saving|stashed|borrowed|borrow|need|used|use|using|took|take|left|leave|keep|keeping) (?:me |us |him |her |about |at least |only |just |back )*` + howMany + ` (?:more |of the |of my |of those |of these |good |long |extra |short |old |best |other )*` + boardsOf + `(?: aside| back| over| out)? (?:for|on|to build|to make|in) (?:the|a|my|our|his|her|that|some|another) (?:[a-z]+ )?` + otherWork + `\b`), ask: notForThis},
	{looks: stated(solver.Rails, solver.AddedPosts, solver.Stiffeners), way: regexp.MustCompile(`\b(?:[0-9]+|one|two|three|four|five|six|seven|eight|half|some|most|all|a couple|a few) of (?:the|my|our|these|those|his|her|your|them|mine) ?(?:[a-z0-9]+ )?(?:` + boardsOf + ` )?(?:[a-z0-9 ]+ )?(?:is|are|was|were|got|look|looks|came|come|went|have|has) (?:all |both |already |really |pretty |badly |a bit |a little |too |so |kind of )*` + damaged + `\b`), ask: openQuestion("Are there fewer rails for it, or what is to be done?", "five rails")},
	// What is off, and by how much, is a fault and no change.
	{looks: func(a Act) bool { return changesLength(a) }, way: regexp.MustCompile(` (?:is|are|'s|was|were|looks|seems|came out|comes out)(?: still| just| only| about| maybe| already| a good)* (?:` + aFigure + `(?: [a-z0-9/]+){0,4} (?:off|out|shy)(?: here| there| now| again| at (?:one|the|this) [a-z ]+)?(?: [.!])*$|(?:off|out) by )`), ask: openQuestion("Too much, or too little?", "wall 47 high")},
	// What came to nothing.
	{looks: valuedAny, way: regexp.MustCompile(`\b(?:would|could|should|might) (?:not )?have been (?:a |so |much |really |quite |very |more |far |even |just )*(?:nice|nicer|better|good|great|fine|lovely|perfect|ideal|enough|plenty|easier|cheaper|prettier|wiser|smarter|best|fun|` + aFigure + `)\b`), not: regexp.MustCompile(`\b(?:but|now|make|so (?:let|make|go)|instead|said|says|typed|wrote|meant|i mean)\b`), ask: wantedHere},
	{looks: valuedAny, way: regexp.MustCompile(opensClause + `(?:he|she|they|i|we|you|it|that|there|` + whoseEver + ` [a-z]+) (?:would|could|might) (?:not )?(?:ever |probably |surely |never |always |also |just |really )*have (?:wanted|liked|asked|needed|preferred|had|been|used|gone|made|built|said)\b`), not: regexp.MustCompile(`\b(?:but|now|make|instead|says|if i|if we)\b`), ask: wantedHere},
	{looks: valuedAny, way: regexp.MustCompile(opensClause + `(?:were it (?:up to|left to|only|just)|if it (?:was|were) (?:only )?(?:up to|left to|just) (?:me|him|her|them)|if (?:i|we) (?:won|hit|had won|ruled|were (?:rich|king|young|taller|younger)|was (?:rich|king|young|taller|younger))|in (?:a perfect world|an ideal world|my dreams|another life))\b`), not: regexp.MustCompile(`\b(?:but|so make|make it|says)\b`), ask: wantedHere},
	{looks: valuedAny, way: regexp.MustCompile(`\b(?:if|imagine|suppose|imagine if|what if) (?:the|my|our|we|i|it|there|he|she|they)(?: [a-z]+){0,3} (?:had been|had gone|had used|had built|had put|had had|had made)\b`), not: regexp.MustCompile(`\b(?:what would|how|which|would it|would that|then what)\b`), ask: wantedHere},
	{looks: valued, way: regexp.MustCompile(opensClause + `(?:up )?(?:until|till) (?:last (?:week|month|year|night|summer|spring|fall|winter|time)|yesterday|recently|this morning|lately|then|that day|now) (?:, )?(?:we|i|he|she|they|it|there|the) `), not: regexp.MustCompile(`[,.;-] (?:and |but |so )?(?:now|today|make|from now)|\bbut\b`), ask: wantedHere},
	// The biggest that somebody ever built is none of this wall.
	{looks: valuedAny, way: regexp.MustCompile(`\b(?:that |which )?(?:i|we|he|she|they|you|anybody|anyone|my [a-z]+) (?:have |has |had |'ve )?ever ` + builtOnce + `\b`), not: regexp.MustCompile(`\b(?:but|so) (?:make|i want|we want|this one|let us)\b|\bif (?:i|you|we) (?:have )?ever\b`), ask: thisWallToo},
	// In jest, and in anger.
	{looks: valuedAny, way: regexp.MustCompile(`[,.;!-] (?:oh |well |now )?(?:that is|that 's|is not that|that would be) ` + thatIsFun + `(?: [.!])*$|[,.;!-] (?:very|real|so|oh so) (?:funny|clever|amusing)(?: [.!])*$|[,.;!-] (?:as if|my foot|my eye|my behind|fat chance|dream on|you wish|like hell|hah|haha|ha ha|ha|lol|not)(?: [.!])*$`), ask: wantedHere},
	{looks: valuedAny, way: regexp.MustCompile(`^(?:oh )?(?:yeah right|yeah , right|as if|like hell|ha|hah|haha|ha ha|what next|whatever next|dream on|big deal|fat chance|give me a break|oh joy|joy|nice try|good one|tell me another|sure thing , boss|come off it|pull the other one|you wish|for crying out loud|says you)(?: [,.!?-]| )`), not: regexp.MustCompile(`\b(?:but|seriously|no really|make it|honestly)\b`), ask: wantedHere},
	{looks: valuedAny, way: regexp.MustCompile(`\b(?:why do not (?:you|we)|while (?:you|we|i) (?:are|am) at it)(?: just| also| all)*(?: [.!])*$`), not: regexp.MustCompile(`^(?:why|and|please|also)\b|\bplease\b`), ask: wantedHere},
	{looks: valuedAny, way: regexp.MustCompile(`^(?:oh sure|sure|yeah|oh yeah|oh great|oh wonderful|oh terrific|oh lovely|oh brilliant|oh perfect|great|wonderful|terrific|brilliant|lovely|fantastic|splendid) (?:, )?(?:and )?(?:while (?:you|we) (?:are|am) at it\b|now (?:the|it|we|they|my|our)\b|another\b.*\bjust what\b|let us just\b|(?:so )?i (?:am|was) (?:supposed|meant|to)\b)`), ask: wantedHere},
	{looks: valuedAny, way: regexp.MustCompile(`\b(?:i|we) (?:am|are|was|were) (?:just )?(?:supposed|expected|meant) to (?:squeeze|crawl|climb|believe|swallow|live|fit|walk|get|duck|jump|swim|fly)\b`), ask: wantedHere},
	{looks: valuedAny, way: regexp.MustCompile(`\b(?:do not|never) (?:you )?(?:ask|blame|look at|quote) (?:me|us)(?: why| how| what| where)?\b`), not: regexp.MustCompile(`\b(?:but|just|make|keep)\b`), ask: openQuestion("What would you like to know, or change?", "why six rails")},
	{looks: kindOf(Why, WhyNot, WhatIf, Check, State), way: regexp.MustCompile(`^(?:ok |okay |ah |oh |yes |yeah |now |well |sure )*(?:, )?(?:i|we) (?:do |can |now |finally |already |quite |fully )*(?:see|understand|know|get|get it|realize|appreciate|agree) (?:perfectly |very |quite )?(?:well )?(?:why|how come|that)\b[^,;?]*(?: [.!])*$`), not: regexp.MustCompile(`\b(?:but|what|which|how (?:do|does|can|much|many)|so)\b`), ask: openQuestion("What would you like to change, then?", "gap 2-1/4")},
	{looks: kindOf(Why, WhyNot), way: regexp.MustCompile(`^(?:and |so |but |well |now )*who (?:said|asked for|wanted|ordered|wants|needs) (?:anything about |something about )?(?:a |an |the )?` + aFigure + `\b`), ask: wantedHere},
	{looks: kindOf(WhatIf, Check, State), way: regexp.MustCompile(`^(?:well |now |and |but |honestly )*(?:(?:you|one|anybody|anyone) (?:would|might|could) (?:have )?(?:think|thought|expect|expected|imagine|imagined|hope|hoped|suppose|swear|sworn)|who (?:would|could) have (?:thought|guessed|known))\b`), not: regexp.MustCompile(`\?|\b(?:so|will|does) (?:it|that|they)\b`), ask: wantedHere},
	// What was so for long, or was begun with, and what would have been liked better.
	{looks: valuedAny, way: regexp.MustCompile(`\b(?:i am the (?:king|queen|pope|president|easter bunny|tooth fairy)|out of (?:your|his|my) (?:mind|tree|head)|have (?:you|they) lost (?:your|their) mind|coming (?:right )?up(?: [.!])*$)`), ask: wantedHere},
	{looks: sets, way: regexp.MustCompile(`^[a-z]+ , (?:[a-z]+ )?` + aFigure + ` (?:more )?(?:rails|boards|posts|planks|slats|brackets) (?:over|right|down|up|out) (?:here|there)(?: please)?(?: [.!])*$`), ask: whatElse},
	{looks: sets, way: regexp.MustCompile(`\b(?:for (?:years|ages|decades|a long time|(?:all )?my (?:whole )?life|generations|as long as i)|all my life|all these years)\b`), not: regexp.MustCompile(`\b(?:but|now|make|want|instead|last|stand|so)\b`), ask: wantedHere},
	{looks: sets, way: regexp.MustCompile(opensClause + `(?:he|she|they|we|i|it|the [a-z]+|my [a-z]+) (?:(?:had |have )?(?:started|began|begun|set) (?:out |off )?with|came with|(?:would|had) (?:always|usually|never|often|mostly)|ended up with)\b`), not: regexp.MustCompile(`\b(?:but|now|make|want|instead|so)\b`), ask: wantedHere},
	{looks: valuedAny, way: regexp.MustCompile(`\b(?:would|had) (?:rather|sooner) have (?:had|used|gone|built|put|made|seen)\b|^(?:oh |ah )?if only\b|\bwhen (?:my|our|his|her|their|the old) [a-z]+ (?:built|put|made|poured|lived|bought|set|had|was|were)\b|\bin the (?:twenties|thirties|forties|fifties|sixties|seventies|eighties|nineties|olden days)\b`), not: regexp.MustCompile(`\b(?:but|now|make|want|instead|so|how|what)\b`), ask: wantedHere},
	{looks: sets, way: regexp.MustCompile(`\b(?:do|does|did) not (?:need|want|have|like) no ` + aFigure + `\b`), ask: wantedHere},
	{looks: sets, way: regexp.MustCompile(opensClause + `(?:that|this|the) (?:other )?one (?:over there|down there|up there|back there|over yonder|yonder) (?:has|had|is|was|got|uses)\b|\b(?:see|seen|look at|looked at) (?:theirs|his|hers|the neighbors?)\b`), not: theirsToo, ask: thisWallToo},
	{looks: valuedAny, way: regexp.MustCompile(`^(?:so |and |well |now )*(?:are|is) (?:you|he|she|your [a-z]+|everybody|everyone) (?:not |really |still |all )*(?:happy|pleased|satisfied|content|glad|thrilled|comfortable) (?:with|about)\b`), ask: wantedHere},
	// What others have in theirs.
	{looks: sets, way: regexp.MustCompile(opensClause + byOthers + ` `), not: theirsToo, ask: thisWallToo},
	{looks: sets, way: regexp.MustCompile(opensClause + `(?:the (?:[a-z]+ )?(?:place|people|folks|guy|house|family|couple|fellow|wall|one|fence)|[a-z]+) (?:next door|down the (?:street|road|block|lane)|across the (?:street|road|way)|up the (?:street|road)|round the corner|around the corner|up north|down south|on the corner) (?:has|have|had|got|used|uses|went|goes|did|does|built|put|made|is|was|ran|runs|chose)\b`), not: theirsToo, ask: thisWallToo},
	{looks: sets, way: regexp.MustCompile(opensClause + `(?:the|that|our|my) (?:wall|fence|railing|one|screen) (?:(?:over |up |down |out )?(?:at|by|in front of|around|behind|outside|in)) (?:the|my|our|his|her) (?:church|school|library|park|courthouse|post office|store|shop|bank|station|clubhouse|town hall|firehouse|cemetery|neighbors?|hotel|inn|cafe|diner|magazine|book|catalog|picture|photo|movie|video) (?:is|was|has|had|stands|stood|'s)\b`), not: theirsToo, ask: thisWallToo},
	{looks: sets, way: regexp.MustCompile(opensClause + `(?:` + whoseEver + ` ` + kinToo + `(?: 's)?|` + whoseEver + ` ` + kinToo + ` 's [a-z]+) (?:always |only |never |just |still |really )*(?:swears? by|swore by|loves?|loved|likes?|liked|built|had|went with|hates?|hated|put up|put in|put|ran|did|made)\b`),
		not: regexp.MustCompile(theirsToo.String() + `|\b(?:so|and) (?:keep|make|let|set|leave|give|put|we|i|hold|the)\b|, so\b|\b(?:this|our) (?:wall|slab|floor|porch|deck)\b|\bwants?\b|\bfoot down\b`), ask: thisWallToo},
	{looks: sets, way: regexp.MustCompile(opensClause + `(?:the|that|his|their|our) (?:previous|last|old|other|first|former|earlier) (?:crew|carpenter|builder|guy|guys|owner|owners|fellow|contractor|people|folks|framer|outfit|tenants?|family) (?:had |have )?(?:ran|put|set|used|made|built|went|did|cut|spaced|hung|left|gave|kept|had|chose|wanted|always|only)\b`), not: theirsToo, ask: thisWallToo},
	{looks: sets, way: regexp.MustCompile(opensClause + `(?:the|my|our|a|that) (?:mailbox|clothesline|lamp|light|bird ?feeder|flag|fence|gate|basketball|tether|hitching|bed|porch swing|sign) posts? (?:is|are|was|were|stands?|goes|go|needs?|has)\b`), not: oursToo, ask: thisWallToo},
	{looks: sets, way: regexp.MustCompile(opensClause + `(?:the|my|our|those|these) (?:deck|floor|porch|siding|ceiling|fence|roof|stair|dock|crib|bed|chair|bench|table|gate|swing|blind|trellis|pallet|ladder) (?:boards?|planks?|slats?|rails?) (?:have|has|are|were|is|was|had|run|need|take|measure|came|come)\b`), not: oursToo, ask: thisWallToo},
	// What somebody thinks of it.
	{looks: valuedAny, way: regexp.MustCompile(askedOfYou + `|^(?:would|does|do|will|did) your (?:wife|husband|mother|mom|dad|father|kids|neighbors?|boss|friends) (?:even |really |ever )?(?:want|like|prefer|have|go for|choose)\b`), ask: wantedHere},
	{looks: sets, way: regexp.MustCompile(opensClause + `(?:he|she|they|` + whoseEver + ` ` + kinToo + `) (?:really |only |always |first |just )*(?:wanted|asked for|hoped for|liked|preferred|voted for|had in mind)\b`), not: regexp.MustCompile(`\b(?:now|so|but|we|settled|make|instead|says?|today|ok|fine|agreed|do (?:that|it|so))\b`), ask: wantedHere},
	{looks: kindOf(ForgetAllBut, Forget), way: regexp.MustCompile(`\b(?:leave|keep|let) (?:everything|all|the rest|it all)(?: else)? (?:but|except|apart from|other than|save) .* (?:alone|as (?:it )?is|as it was|the same|unchanged|be|where it is)(?: [.!])*$`), ask: openQuestion("And what shall become of it?", "gap 2-1/2")},
	// So much and something is not told.
	{looks: func(a Act) bool { return nearBy(a.Statements) }, way: regexp.MustCompile(`\band (?:something|somethin|summat|change|then some)\b`), not: regexp.MustCompile(`\band something (?:like|around|about|close to|near|in the)\b`), ask: openQuestion("And how much more?", "wall 41 1/2 high")},
	{looks: asksTopic("drawing"), way: regexp.MustCompile(`\b(?:the|that|my|your) lists?\b`), not: regexp.MustCompile(`\b(?:drawing|sketch|picture|draw|diagram|elevation|look)\b`), ask: openQuestion("Which list is that?", "the cut list", "ask cuts", "ask shopping")},
	{looks: valuedAny, way: regexp.MustCompile(`\b(?:is|are) not (?:a|an|the|` + aFigure + `) [a-z0-9 /-]*\b(?:just|simply|so|really|rather|a bit|kind of|pretty|awfully) (?:lovely|ugly|nice|pretty|beautiful|awful|silly|grand|handsome|hideous|gorgeous|cute|sweet|much|odd|strange|plain|something)(?: [?.!])*$`), ask: wantedHere},
	// Money paid, coats that went on, and screws that somebody hands over.
	{looks: stated(solver.Rails, solver.AddedPosts, solver.Stiffeners), way: regexp.MustCompile(`\b(?:charged|charges|paid|pays|cost|costs|gave|gives|give|owe|owes|billed|spent) (?:me |us |him |her |them |about |around |only |just )*` + aFigure + `(?: [a-z0-9-]+){0,3} (?:for|on) `), ask: openQuestion("Is that a price, and of which lumber?", "2x6s 12 ft long are 14.50")},
	{looks: stated(solver.Coats), way: regexp.MustCompile(`\b(?:took|taken|got|had|put on|gave it|given it|slapped on|brushed on)\b.*\bcoats?\b`), not: regexp.MustCompile(`\b(?:want|need|will|figure|plan|make it)\b`), ask: openQuestion("Is it to be so many coats here, too?", "two coats of stain")},
	{looks: kindOf(Forget, State, Check), way: regexp.MustCompile(`\b` + oneHands + ` (?:me|him|us|her|them|dad|over)(?: over| up| down)? (?:[a-z0-9/-]+ ){1,5}(?:screws?|nails?|bits?|drill|level|hammer|clamps?|saw|square|pencil|tape|chisel|glue|ladder)\b`), not: regexp.MustCompile(`[,.;] .*[0-9a-z]`), ask: whatElse},
}

var notForThis = askedWhether("Is that for this wall?", "six rails")

// yardAtOnce joins lengths that come to a yard in one breath: "they have 3.9 and 4.2 meter lengths as well".
func yardAtOnce(acts []Act) []Act {
	for i := 0; i+1 < len(acts); i++ {
		a, b := acts[i], acts[i+1]
		if a.Kind != State || b.Kind != State || len(a.Statements) != 1 || len(b.Statements) != 1 {
			continue
		}
		x, y := a.Statements[0], b.Statements[0]
		if x.Op != solver.Plus || y.Op != solver.Plus || x.Name != y.Name || x.Name.Quantity != solver.Stock {
			continue
		}
		x.Value = solver.Value{List: append(slices.Clone(lengthsOf(x.Value)), lengthsOf(y.Value)...)}
		a.Statements, a.End = []solver.Statement{x}, b.End
		acts = append(append(slices.Clone(acts[:i]), a), acts[i+2:]...)
		i--
	}
	return acts
}

// givenAhead begins a question with what it is asked under: "with gaps of two, would six rails fit".
var givenAhead = regexp.MustCompile(`^(?:(?:so|and|but|well|ok|okay|now) )?(?:with|given|having|using|assuming) [^.;?!]*, (?:would|could|will|can|do|does|is|are|might) `)

// triedTogether tries what stands ahead of a trial with it.
func triedTogether(acts []Act, text string) []Act {
	if len(acts) < 2 || acts[0].Kind != State || acts[1].Kind != WhatIf || !matchesWay(givenAhead, text) {
		return acts
	}
	both := acts[1]
	both.At = acts[0].At
	both.Statements = slices.Concat(acts[0].Statements, acts[1].Statements)
	return append([]Act{both}, acts[2:]...)
}

func lengthsOf(v solver.Value) []solver.Value {
	if len(v.List) > 0 {
		return v.List
	}
	return []solver.Value{v}
}
