package grammar

import (
	"regexp"
	"slices"

	"saywright/solver"
)

// What is said aside of a wall: in jest, of what came to nothing, of boards that are damaged or go to another work, of what others build
// and what somebody thinks of it. It holds a part and a figure, and wishes nothing. Common ways of speech, no source.

// valuedAny are acts that set a value, try it, hold it against the rest, or ask why it is or is not so.
var valuedAny = kindOf(State, Check, WhatIf, Why, WhyNot)

// toldAside are the lines that only say something aside.
var toldAside = []openWay{
	// Boards that go to another work, and boards that are spoiled.
	{looks: stated(solver.Rails, solver.AddedPosts, solver.Stiffeners, solver.Spare, solver.Have),
		way: asWay(`\b{PutBy} {me|us|him|her|about|at least|only|just|back }*{Many} {more|of the|of my|of those|of these|good|long|extra|short|old|best|other }*{Board}{ aside|back|over|out}? {for|on|to build|to make|in} {the|a|my|our|his|her|that|some|another} {[a-z]+ }?{OtherWork}\b`), ask: notForThis},
	{looks: stated(solver.Rails, solver.AddedPosts, solver.Stiffeners),
		way: asWay(`\b{Many|half|some|most|all|a few} of {the|my|our|these|those|his|her|your|them|mine} ?{[a-z0-9]+ }?{Board }?{[a-z0-9 ]+ }?{is|are|was|were|got|looks?|came|come|went|have|has} {Very }*{Damaged}`), ask: openQuestion("Are there fewer rails for it, or what is to be done?", "five rails")},
	// What is off, and by how much, is a fault and no change.
	{looks: func(a Act) bool { return changesLength(a) },
		way: asWay(` {is|are|'s|was|were|looks|seems|came out|comes out}{ still|just|only|about|maybe|already|a good}* ({Figure}{ [a-z0-9/]+}{0,4} {off|out|shy}{ here|there|now|again|at (one|the|this) [a-z ]+}?{ Stop}*$|{off|out} by )`), ask: openQuestion("Too much, or too little?", "wall 47 high")},
	// What came to nothing.
	{looks: valuedAny, way: asWay(`\b{would|could|should|might} {not }?have been {Very }*{nice|nicer|better|good|great|fine|lovely|perfect|ideal|enough|plenty|easier|cheaper|prettier|wiser|smarter|best|fun|Figure}\b`), not: anyWordOf(`Turned|so (let|make|go)|said|says|typed|wrote|meant|i mean`), ask: wantedHere},
	{looks: valuedAny, way: asWay(`{Opens}{Person|it|that|there|Whose [a-z]+} {would|could|might} {Ever }*have {wanted|liked|asked|needed|preferred|had|been|used|gone|made|built|said}\b`), not: anyWordOf(`Turned|says|if i|if we`), ask: wantedHere},
	{looks: valuedAny, way: asWay(`{Opens}(were it {up to|left to|only|just}|if it {was|were} {only }?{up to|left to|just} {me|him|her|them}|if {i|we} ({won|hit|had won|ruled}|{were|was} {rich|king|young|taller|younger})|in {a perfect world|an ideal world|my dreams|another life})\b`), not: anyWordOf(`but|so make|make it|says`), ask: wantedHere},
	{looks: valuedAny, way: asWay(`\b{if|imagine|suppose|imagine if|what if} {the|my|our|we|i|it|there|Others}{ [a-z]+}{0,3} had {been|gone|used|built|put|had|made}\b`), not: anyWordOf(`what would|how|which|would it|would that|then what`), ask: wantedHere},
	{looks: valued, way: asWay(`{Opens}{up }?{until|till} {last (week|month|year|night|summer|spring|fall|winter|time)|yesterday|recently|this morning|lately|then|that day|now} {, }?{we|i|Others|it|there|the} `), not: asWay(`[,.;-] {and|but|so }?{now|today|make|from now}|\bbut\b`), ask: wantedHere},
	// The biggest that somebody ever built is none of this wall.
	{looks: valuedAny, way: asWay(`\b{Person|anybody|anyone|my [a-z]+} {have|has|had|'ve }?ever {built|made|saw|seen|had|did|done|put up|put in|worked on|owned|hung|set|cut|framed|came across|used|bought}\b`), not: asWay(`\b{but|so} {make|i want|we want|this one|let us}\b|\bif {i|you|we} {have }?ever\b`), ask: thisWallToo},
	// In jest, and in anger.
	{looks: valuedAny, way: asWay(`[,.;!-] ({oh|well|now }?{that is|that 's|is not that|that would be} {rich|a good one|a laugh|hilarious|funny|very funny|so funny|a riot|a joke|priceless|precious|cute|the day|a hoot}|{very|real|so|oh so} {funny|clever|amusing}|{as if|my foot|my eye|my behind|fat chance|dream on|you wish|like hell|hah|haha|ha ha|ha|lol|not}){ Stop}*$`), ask: wantedHere},
	{looks: valuedAny, way: asWay(`^{oh }?{yeah right|yeah , right|as if|like hell|ha|hah|haha|ha ha|what next|whatever next|dream on|big deal|fat chance|give me a break|oh joy|joy|nice try|good one|tell me another|sure thing , boss|come off it|pull the other one|you wish|for crying out loud|says you} `), not: anyWordOf(`but|seriously|no really|make it|honestly`), ask: wantedHere},
	{looks: valuedAny, way: asWay(`\b{why do not (you|we)|while (you|we|i) (are|am) at it}{ just|also|all}*{ Stop}*$`), not: asWay(`^{why|and|please|also}\b|\bplease\b`), ask: wantedHere},
	{looks: valuedAny, way: asWay(`^(oh {sure|great|wonderful|terrific|lovely|brilliant|perfect|yeah}|sure|yeah|great|wonderful|terrific|brilliant|lovely|fantastic|splendid) {, }?{and }?(while {you|we} {are|am} at it\b|now {the|it|we|they|my|our}\b|another\b.*\bjust what\b|let us just\b|{so }?i {am|was} {supposed|meant|to}\b)`), ask: wantedHere},
	{looks: valuedAny, way: asWay(`\b{i|we} {am|are|was|were} {just }?{supposed|expected|meant} to {squeeze|crawl|climb|believe|swallow|live|fit|walk|get|duck|jump|swim|fly}\b`), ask: wantedHere},
	{looks: valuedAny, way: asWay(`\b{do not|never} {you }?{ask|blame|look at|quote} {me|us}\b`), not: anyWordOf(`but|just|make|keep`), ask: openQuestion("What would you like to know, or change?", "why six rails")},
	{looks: kindOf(Why, WhyNot, WhatIf, Check, State), way: asWay(`^{Lead|ah|oh|yes|yeah|sure }*{, }?{i|we} {do|can|now|finally|already|quite|fully }*{see|understand|know|get|get it|realize|appreciate|agree} {perfectly|very|quite }?{well }?{why|how come|that}\b[^,;?]*{ Stop}*$`), not: anyWordOf(`but|what|which|how (do|does|can|much|many)|so`), ask: openQuestion("What would you like to change, then?", "gap 2-1/4")},
	{looks: kindOf(Why, WhyNot), way: asWay(`^{Lead }*who {said|asked for|wanted|ordered|wants|needs} {anything about|something about }?{a|an|the }?{Figure}\b`), ask: wantedHere},
	{looks: kindOf(WhatIf, Check, State), way: asWay(`^{Lead }*({you|one|anybody|anyone} {would|might|could} {have }?{think|thought|expect|expected|imagine|imagined|hope|hoped|suppose|swear|sworn}|who {would|could} have {thought|guessed|known})\b`), not: asWay(`\?|\b{so|will|does} {it|that|they}\b`), ask: wantedHere},
	{looks: valuedAny, way: asWay(`\b{i am the (king|queen|pope|president|easter bunny|tooth fairy)|out of (your|his|my) (mind|tree|head)|have (you|they) lost (your|their) mind|coming (right )?up( Stop)*$}`), ask: wantedHere},
	{looks: sets, way: asWay(`^[a-z]+ , {[a-z]+ }?{Figure} {more }?{rails|boards|posts|planks|slats|brackets} {over|right|down|up|out} {here|there}{ please}?{ Stop}*$`), ask: whatElse},
	// What was so for long, or was begun with, and what would have been liked better.
	{looks: sets, way: asWay(`\b{for (years|ages|decades|a long time|(all )?my (whole )?life|generations|as long as i)|all my life|all these years}\b`), not: anyWordOf(`Turned|want|last|stand|so`), ask: wantedHere},
	{looks: sets, way: asWay(`{Opens}{i|we|Others|it|(the|my) [a-z]+} ({had|have }?{started|began|begun|set} {out|off }?with|came with|{would|had} {always|usually|never|often|mostly}|ended up with)\b`), not: anyWordOf(`Turned|want|so`), ask: wantedHere},
	{looks: valuedAny, way: asWay(`\b{would|had} {rather|sooner} have {had|used|gone|built|put|made|seen}\b|^{oh|ah }?if only\b|\bwhen {my|our|his|her|their|the old} [a-z]+ {built|put|made|poured|lived|bought|set|had|was|were}\b|\bin the {twenties|thirties|forties|fifties|sixties|seventies|eighties|nineties|olden days}\b`), not: anyWordOf(`Turned|want|so|how|what`), ask: wantedHere},
	{looks: sets, way: asWay(`\b{do|does|did} not {need|want|have|like} no {Figure}\b`), ask: wantedHere},
	{looks: valuedAny, way: asWay(`^{Lead }*{are|is} {you|he|she|your [a-z]+|everybody|everyone} {Ever }*{happy|pleased|satisfied|content|glad|thrilled|comfortable} {with|about}\b`), ask: wantedHere},
	// What others have in theirs.
	{looks: sets, way: asWay(`\b{see|seen|look at|looked at} {theirs|his|hers|the neighbors?}\b`), not: theirsToo, ask: thisWallToo},
	{looks: sets, way: asWay(`{Opens}{(every|some|any)(body|one)|most (folks|people)|((lots|a lot) of )?(folks|people)} {else }?{(round|around|down|up|out) here|in town|in the neighborhood|on (our|my|the|this) (street|road|block)} `), not: theirsToo, ask: thisWallToo},
	{looks: sets, way: asWay(`{Opens}({the ([a-z]+ )?House|[a-z]+} {Nearby}|{that|this|the} {other }?one {Yonder}|{the|that|our|my} {wall|fence|railing|one|screen} {over|up|down|out }?{at|by|in front of|around|behind|outside|in} {the|my|our|his|her} {Public}) {Has}\b`), not: theirsToo, ask: thisWallToo},
	{looks: sets, way: asWay(`{Opens}{the|that|his|their|our} {Earlier} {Crew} {had|have }?{Has|always|only}\b`), not: theirsToo, ask: thisWallToo},
	{looks: sets, way: asWay(`{Opens}{Whose} {Kin}{ 's}?{ 's [a-z]+}? {Ever }*{swears? by|swore by|loves?|loved|likes?|liked|built|had|went with|hates?|hated|put up|put in|put|ran|did|made}\b`),
		not: orWay(theirsToo, `\b{so|and} {keep|make|let|set|leave|give|put|we|i|hold|the}\b|, so\b|\b{this|our} {wall|slab|floor|porch|deck}\b|\bwants?\b|\bfoot down\b`), ask: thisWallToo},
	{looks: sets, way: asWay(`{Opens}{the|my|our|a|that|those|these} {OtherPost posts?|OtherBoard (boards?|planks?|slats?|rails?)} {Are}\b`), not: oursToo, ask: thisWallToo},
	// What somebody thinks of it.
	{looks: valuedAny, way: asWay(`\b{would|do|did|could|will} {you|your Asked}{ [a-z]+}{0,2} {put|build|have|use|go with|choose|pick|want|like|buy|live with}\b[^,.]*\b{your own|yourself|at home|at your place|if it was yours|if it were yours}|^{would|does|do|will|did} your {Asked} {Ever }*{want|like|prefer|have|go for|choose}\b`), ask: wantedHere},
	{looks: sets, way: asWay(`{Opens}{Others|Whose Kin} {Ever }*{wanted|asked for|hoped for|liked|preferred|voted for|had in mind}\b`), not: anyWordOf(`Turned|so|we|settled|says?|today|ok|fine|agreed|do (that|it|so)`), ask: wantedHere},
	{looks: kindOf(ForgetAllBut, Forget), way: asWay(`\b{leave|keep|let} {everything|all|the rest|it all}{ else}? {but|except|apart from|other than|save} .* {alone|as (it )?is|as it was|the same|unchanged|be|where it is}{ Stop}*$`), ask: openQuestion("And what shall become of it?", "gap 2-1/2")},
	// So much and something is not told.
	{looks: func(a Act) bool { return nearBy(a.Statements) }, way: asWay(`\band {something|somethin|summat|change|then some}\b`), not: asWay(`\band something {like|around|about|close to|near|in the}\b`), ask: openQuestion("And how much more?", "wall 41 1/2 high")},
	{looks: asksTopic("drawing"), way: asWay(`\b{the|that|my|your} lists?\b`), not: anyWordOf(`drawing|sketch|picture|draw|diagram|elevation|look`), ask: openQuestion("Which list is that?", "the cut list", "ask cuts", "ask shopping")},
	{looks: valuedAny, way: asWay(`\b{is|are} not {a|an|the|Figure} [a-z0-9 /-]*\b{just|simply|so|really|rather|a bit|kind of|pretty|awfully} {lovely|ugly|nice|pretty|beautiful|awful|silly|grand|handsome|hideous|gorgeous|cute|sweet|much|odd|strange|plain|something}{ [?.!]}*$`), ask: wantedHere},
	// Money paid, coats that went on, and screws that somebody hands over.
	{looks: stated(solver.Rails, solver.AddedPosts, solver.Stiffeners), way: asWay(`\b{charged|charges|paid|pays|cost|costs|gave|gives|give|owes?|billed|spent} {me|us|him|her|them|about|around|only|just }*{Figure}{ [a-z0-9-]+}{0,3} {for|on} `), ask: openQuestion("Is that a price, and of which lumber?", "2x6s 12 ft long are 14.50")},
	{looks: stated(solver.Coats), way: asWay(`\b{took|taken|got|had|put on|gave it|given it|slapped on|brushed on}\b.*\bcoats?\b`), not: anyWordOf(`want|need|will|figure|plan|make it`), ask: openQuestion("Is it to be so many coats here, too?", "two coats of stain")},
	{looks: kindOf(Forget, State, Check), way: asWay(`\b` + oneHands + ` {me|him|us|her|them|dad|over}{ over|up|down}? {[a-z0-9/-]+ }{1,5}{screws?|nails?|bits?|drill|level|hammer|clamps?|saw|square|pencil|tape|chisel|glue|ladder}\b`), not: asWay(`[,.;] .*[0-9a-z]`), ask: whatElse},
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
