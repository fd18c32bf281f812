package guard

import (
	"regexp"
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/ways"
	"saywright/solver"
)

// What is said aside of a wall: in jest, of what came to nothing, of boards that are damaged or go to another work, of what others build
// and what somebody thinks of it. It holds a part and a figure, and wishes nothing. Common ways of speech, no source.

// toldAside are the lines that only say something aside.
var toldAside = []hear.OpenWay{
	// Boards that go to another work, and boards that are spoiled.
	{Looks: hear.Stated(solver.Rails, solver.AddedPosts, solver.Stiffeners, solver.Spare, solver.Have),
		Way: asWay(`\b{PutBy} {me|us|him|her|about|at least|only|just|back }*{Many} {more|of the|of my|of those|of these|good|long|extra|short|old|best|other }*{Board}{ aside|back|over|out}? {for|on|to build|to make|in} {the|a|my|our|his|her|that|some|another} {[a-z]+ }?{OtherWork}\b`), Ask: notForThis},
	{Looks: hear.Stated(solver.Rails, solver.AddedPosts, solver.Stiffeners),
		Way: asWay(`\b{Many|half|some|most|all|a few} of {the|my|our|these|those|his|her|your|them|mine} ?{[a-z0-9]+ }?{Board }?{[a-z0-9 ]+ }?{is|are|was|were|got|looks?|came|come|went|have|has} {Very }*{Damaged}`), Ask: hear.OpenQuestion("Are there fewer rails for it, or what is to be done?", "five rails")},
	// What is off, and by how much, is a fault and no change.
	{Looks: func(a act.Act) bool { return hear.ChangesLength(a) },
		Way: asWay(` {is|are|'s|was|were|looks|seems|came out|comes out}{ still|just|only|about|maybe|already|a good}* ({Figure}{ [a-z0-9/]+}{0,4} {off|out|shy}{ here|there|now|again|at (one|the|this) [a-z ]+}?{ Stop}*$|{off|out} by )`), Ask: hear.OpenQuestion("Too much, or too little?", "wall 47 high")},
	// What came to nothing.
	{Looks: hear.ValuedAny, Way: asWay(`\b{would|could|should|might} {not }?have been {Very }*{nice|nicer|better|good|great|fine|lovely|perfect|ideal|enough|plenty|easier|cheaper|prettier|wiser|smarter|best|fun|Figure}\b`), Not: anyWordOf(`Turned|so (let|make|go)|said|says|typed|wrote|meant|i mean`), Ask: wantedHere},
	{Looks: hear.ValuedAny, Way: asWay(`{Opens}{Person|it|that|there|Whose [a-z]+} {would|could|might} {Ever }*have {wanted|liked|asked|needed|preferred|had|been|used|gone|made|built|said}\b`), Not: anyWordOf(`Turned|says|if i|if we`), Ask: wantedHere},
	{Looks: hear.ValuedAny, Way: asWay(`{Opens}(were it {up to|left to|only|just}|if it {was|were} {only }?{up to|left to|just} {me|him|her|them}|if {i|we} ({won|hit|had won|ruled}|{were|was} {rich|king|young|taller|younger})|in {a perfect world|an ideal world|my dreams|another life})\b`), Not: anyWordOf(`but|so make|make it|says`), Ask: wantedHere},
	{Looks: hear.ValuedAny, Way: asWay(`\b{if|imagine|suppose|imagine if|what if} {the|my|our|we|i|it|there|Others}{ [a-z]+}{0,3} had {been|gone|used|built|put|had|made}\b`), Not: anyWordOf(`what would|how|which|would it|would that|then what`), Ask: wantedHere},
	{Looks: valued, Way: asWay(`{Opens}{up }?{until|till} {last (week|month|year|night|summer|spring|fall|winter|time)|yesterday|recently|this morning|lately|then|that day|now} {, }?{we|i|Others|it|there|the} `), Not: asWay(`[,.;-] {and|but|so }?{now|today|make|from now}|\bbut\b`), Ask: wantedHere},
	// The biggest that somebody ever built is none of this wall.
	{Looks: hear.ValuedAny, Way: asWay(`\b{Person|anybody|anyone|my [a-z]+} {have|has|had|'ve }?ever {built|made|saw|seen|had|did|done|put up|put in|worked on|owned|hung|set|cut|framed|came across|used|bought}\b`), Not: asWay(`\b{but|so} {make|i want|we want|this one|let us}\b|\bif {i|you|we} {have }?ever\b`), Ask: thisWallToo},
	// In jest, and in anger.
	{Looks: hear.ValuedAny, Way: asWay(`[,.;!-] ({oh|well|now }?{that is|that 's|is not that|that would be} {rich|a good one|a laugh|hilarious|funny|very funny|so funny|a riot|a joke|priceless|precious|cute|the day|a hoot}|{very|real|so|oh so} {funny|clever|amusing}|{as if|my foot|my eye|my behind|fat chance|dream on|you wish|like hell|hah|haha|ha ha|ha|lol|not}){ Stop}*$`), Ask: wantedHere},
	{Looks: hear.ValuedAny, Way: asWay(`^{oh }?{yeah right|yeah , right|as if|like hell|ha|hah|haha|ha ha|what next|whatever next|dream on|big deal|fat chance|give me a break|oh joy|joy|nice try|good one|tell me another|sure thing , boss|come off it|pull the other one|you wish|for crying out loud|says you} `), Not: anyWordOf(`but|seriously|no really|make it|honestly`), Ask: wantedHere},
	{Looks: hear.ValuedAny, Way: asWay(`\b{why do not (you|we)|while (you|we|i) (are|am) at it}{ just|also|all}*{ Stop}*$`), Not: asWay(`^{why|and|please|also}\b|\bplease\b`), Ask: wantedHere},
	{Looks: hear.ValuedAny, Way: asWay(`^(oh {sure|great|wonderful|terrific|lovely|brilliant|perfect|yeah}|sure|yeah|great|wonderful|terrific|brilliant|lovely|fantastic|splendid) {, }?{and }?(while {you|we} {are|am} at it\b|now {the|it|we|they|my|our}\b|another\b.*\bjust what\b|let us just\b|{so }?i {am|was} {supposed|meant|to}\b)`), Ask: wantedHere},
	{Looks: hear.ValuedAny, Way: asWay(`\b{i|we} {am|are|was|were} {just }?{supposed|expected|meant} to {squeeze|crawl|climb|believe|swallow|live|fit|walk|get|duck|jump|swim|fly}\b`), Ask: wantedHere},
	{Looks: hear.ValuedAny, Way: asWay(`\b{do not|never} {you }?{ask|blame|look at|quote} {me|us}\b`), Not: anyWordOf(`but|just|make|keep`), Ask: hear.OpenQuestion("What would you like to know, or change?", "why six rails")},
	{Looks: hear.KindOf(act.Why, act.WhyNot, act.WhatIf, act.Check, act.State), Way: asWay(`^{Lead|ah|oh|yes|yeah|sure }*{, }?{i|we} {do|can|now|finally|already|quite|fully }*{see|understand|know|get|get it|realize|appreciate|agree} {perfectly|very|quite }?{well }?{why|how come|that}\b[^,;?]*{ Stop}*$`), Not: anyWordOf(`but|what|which|how (do|does|can|much|many)|so`), Ask: hear.OpenQuestion("What would you like to change, then?", "gap 2-1/4")},
	{Looks: hear.KindOf(act.Why, act.WhyNot), Way: asWay(`^{Lead }*who {said|asked for|wanted|ordered|wants|needs} {anything about|something about }?{a|an|the }?{Figure}\b`), Ask: wantedHere},
	{Looks: hear.KindOf(act.WhatIf, act.Check, act.State), Way: asWay(`^{Lead }*({you|one|anybody|anyone} {would|might|could} {have }?{think|thought|expect|expected|imagine|imagined|hope|hoped|suppose|swear|sworn}|who {would|could} have {thought|guessed|known})\b`), Not: asWay(`\?|\b{so|will|does} {it|that|they}\b`), Ask: wantedHere},
	{Looks: hear.ValuedAny, Way: asWay(`\b{i am the (king|queen|pope|president|easter bunny|tooth fairy)|out of (your|his|my) (mind|tree|head)|have (you|they) lost (your|their) mind|coming (right )?up( Stop)*$}`), Ask: wantedHere},
	{Looks: hear.Sets, Way: asWay(`^[a-z]+ , {[a-z]+ }?{Figure} {more }?{rails|boards|posts|planks|slats|brackets} {over|right|down|up|out} {here|there}{ please}?{ Stop}*$`), Ask: whatElse},
	// What was so for long, or was begun with, and what would have been liked better.
	{Looks: hear.Sets, Way: asWay(`\b{for (years|ages|decades|a long time|(all )?my (whole )?life|generations|as long as i)|all my life|all these years}\b`), Not: anyWordOf(`Turned|want|last|stand|so`), Ask: wantedHere},
	{Looks: hear.Sets, Way: asWay(`{Opens}{i|we|Others|it|(the|my) [a-z]+} ({had|have }?{started|began|begun|set} {out|off }?with|came with|{would|had} {always|usually|never|often|mostly}|ended up with)\b`), Not: anyWordOf(`Turned|want|so`), Ask: wantedHere},
	{Looks: hear.ValuedAny, Way: asWay(`\b{would|had} {rather|sooner} have {had|used|gone|built|put|made|seen}\b|^{oh|ah }?if only\b|\bwhen {my|our|his|her|their|the old} [a-z]+ {built|put|made|poured|lived|bought|set|had|was|were}\b|\bin the {twenties|thirties|forties|fifties|sixties|seventies|eighties|nineties|olden days}\b`), Not: anyWordOf(`Turned|want|so|how|what`), Ask: wantedHere},
	{Looks: hear.Sets, Way: asWay(`\b{do|does|did} not {need|want|have|like} no {Figure}\b`), Ask: wantedHere},
	{Looks: hear.ValuedAny, Way: asWay(`^{Lead }*{are|is} {you|he|she|your [a-z]+|everybody|everyone} {Ever }*{happy|pleased|satisfied|content|glad|thrilled|comfortable} {with|about}\b`), Ask: wantedHere},
	// What others have in theirs.
	{Looks: hear.Sets, Way: asWay(`\b{see|seen|look at|looked at} {theirs|his|hers|the neighbors?}\b`), Not: theirsToo, Ask: thisWallToo},
	{Looks: hear.Sets, Way: asWay(`{Opens}{(every|some|any)(body|one)|most (folks|people)|((lots|a lot) of )?(folks|people)} {else }?{(round|around|down|up|out) here|in town|in the neighborhood|on (our|my|the|this) (street|road|block)} `), Not: theirsToo, Ask: thisWallToo},
	{Looks: hear.Sets, Way: asWay(`{Opens}({the ([a-z]+ )?House|[a-z]+} {Nearby}|{that|this|the} {other }?one {Yonder}|{the|that|our|my} {wall|fence|railing|one|screen} {over|up|down|out }?{at|by|in front of|around|behind|outside|in} {the|my|our|his|her} {Public}) {Has}\b`), Not: theirsToo, Ask: thisWallToo},
	{Looks: hear.Sets, Way: asWay(`{Opens}{the|that|his|their|our} {Earlier} {Crew} {had|have }?{Has|always|only}\b`), Not: theirsToo, Ask: thisWallToo},
	{Looks: hear.Sets, Way: asWay(`{Opens}{Whose} {Kin}{ 's}?{ 's [a-z]+}? {Ever }*{swears? by|swore by|loves?|loved|likes?|liked|built|had|went with|hates?|hated|put up|put in|put|ran|did|made}\b`),
		Not: orWay(theirsToo, `\b{so|and} {keep|make|let|set|leave|give|put|we|i|hold|the}\b|, so\b|\b{this|our} {wall|slab|floor|porch|deck}\b|\bwants?\b|\bfoot down\b|\bso ([a-z0-9/-]+ ){1,4}it {is|'s}\b`), Ask: thisWallToo},
	{Looks: hear.Sets, Way: asWay(`{Opens}{the|my|our|a|that|those|these} {OtherPost posts?|OtherBoard (boards?|planks?|slats?|rails?)} {Are}\b`), Not: oursToo, Ask: thisWallToo},
	// What somebody thinks of it.
	{Looks: hear.ValuedAny, Way: asWay(`\b{would|do|did|could|will} {you|your Asked}{ [a-z]+}{0,2} {put|build|have|use|go with|choose|pick|want|like|buy|live with}\b[^,.]*\b{your own|yourself|at home|at your place|if it was yours|if it were yours}|^{would|does|do|will|did} your {Asked} {Ever }*{want|like|prefer|have|go for|choose}\b`), Ask: wantedHere},
	{Looks: hear.Sets, Way: asWay(`{Opens}{Others|Whose Kin} {Ever }*{wanted|asked for|hoped for|liked|preferred|voted for|had in mind}\b`), Not: anyWordOf(`Turned|so|we|settled|says?|today|ok|fine|agreed|do (that|it|so)`), Ask: wantedHere},
	{Looks: hear.KindOf(act.ForgetAllBut, act.Forget), Way: asWay(`\b{leave|keep|let} {everything|all|the rest|it all}{ else}? {but|except|apart from|other than|save} .* {alone|as (it )?is|as it was|the same|unchanged|be|where it is}{ Stop}*$`), Ask: hear.OpenQuestion("And what shall become of it?", "gap 2-1/2")},
	// So much and something is not told.
	{Looks: func(a act.Act) bool { return hear.NearBy(a.Statements) }, Way: asWay(`\band {something|somethin|summat|change|then some}\b`), Not: asWay(`\band something {like|around|about|close to|near|in the}\b`), Ask: hear.OpenQuestion("And how much more?", "wall 41 1/2 high")},
	{Looks: hear.AsksTopic("drawing"), Way: asWay(`\b{the|that|my|your} lists?\b`), Not: anyWordOf(`drawing|sketch|picture|draw|diagram|elevation|look`), Ask: hear.OpenQuestion("Which list is that?", "the cut list", "ask cuts", "ask shopping")},
	{Looks: hear.ValuedAny, Way: asWay(`\b{is|are} not {a|an|the|Figure} [a-z0-9 /-]*\b{just|simply|so|really|rather|a bit|kind of|pretty|awfully} {lovely|ugly|nice|pretty|beautiful|awful|silly|grand|handsome|hideous|gorgeous|cute|sweet|much|odd|strange|plain|something}{ [?.!]}*$`), Ask: wantedHere},
	// Money paid, coats that went on, and screws that somebody hands over.
	{Looks: hear.Stated(solver.Rails, solver.AddedPosts, solver.Stiffeners), Way: asWay(`\b{charged|charges|paid|pays|cost|costs|gave|gives|give|owes?|billed|spent} {me|us|him|her|them|about|around|only|just }*{Figure}{ [a-z0-9-]+}{0,3} {for|on} `), Ask: hear.OpenQuestion("Is that a price, and of which lumber?", "2x6s 12 ft long are 14.50")},
	{Looks: hear.Stated(solver.Coats), Way: asWay(`\b{took|taken|got|had|put on|gave it|given it|slapped on|brushed on}\b.*\bcoats?\b`), Not: anyWordOf(`want|need|will|figure|plan|make it`), Ask: hear.OpenQuestion("Is it to be so many coats here, too?", "two coats of stain")},
	{Looks: hear.KindOf(act.Forget, act.State, act.Check), Way: asWay(`\b` + oneHands + ` {me|him|us|her|them|dad|over}{ over|up|down}? {[a-z0-9/-]+ }{1,5}{screws?|nails?|bits?|drill|level|hammer|clamps?|saw|square|pencil|tape|chisel|glue|ladder}\b`), Not: asWay(`[,.;] .*[0-9a-z]`), Ask: whatElse},
}

var notForThis = hear.AskedWhether("Is that for this wall?", "six rails")

// yardAtOnce joins lengths that come to a yard in one breath: "they have 3.9 and 4.2 meter lengths as well".
func yardAtOnce(acts []act.Act) []act.Act {
	for i := 0; i+1 < len(acts); i++ {
		a, b := acts[i], acts[i+1]
		if a.Kind != act.State || b.Kind != act.State || len(a.Statements) != 1 || len(b.Statements) != 1 {
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
func triedTogether(acts []act.Act, text string) []act.Act {
	if len(acts) < 2 || acts[0].Kind != act.State || acts[1].Kind != act.WhatIf || !ways.MatchesWay(givenAhead, text) {
		return acts
	}
	both := acts[1]
	both.At = acts[0].At
	both.Statements = slices.Concat(acts[0].Statements, acts[1].Statements)
	return append([]act.Act{both}, acts[2:]...)
}

func lengthsOf(v solver.Value) []solver.Value {
	if len(v.List) > 0 {
		return v.List
	}
	return []solver.Value{v}
}
