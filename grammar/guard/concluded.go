package guard

import (
	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/grammar/parse"
	"saywright/solver"
)

// What somebody concludes, finds or reads is not what shall be: "so that means the gap is 3", "seven rails would make the gap 2", "by my count it's six", "the
// inspector measured 41". Where it was set, it is asked whether to check it or to set it. What is of another wall, or asked of one, is none of this one's.
// Common ways of speech, no source.

// concluded are such lines, each with what is heard of it.
var concluded = []hear.OpenWay{
	{Looks: hear.Sets, Way: asWay(`^{Lead|oh|ah|hm|, }*{that|this|which|it} {means|leaves|puts|makes|brings|gives|gets|would mean|would leave|would put|would make|would give|must mean|will leave|will make} {it|us|me|you }*`), Not: asWay(`\b{please|that 'll do|make that|fine|no sense|sense}\b|^{Lead, }*{that|this|it} makes {it }?{too|a bit|more}\b`), Ask: checkOrSet},
	{Looks: hear.Sets, Way: asWay(`\b{rails|boards|slats|gaps?|bays?|opening|wall|stiffeners} ({would|will|'d|'ll|must} {make|give|mean|leave|put}|{makes|gives|means|leaves|puts}) {the|it|us|a|an|me} .*\b{gaps?|wall|high|wide|tall|apart|between|rails|boards|opening|bays?|[0-9]+|two|three|four|five|six|seven}\b`), Not: asWay(`\b{please|want|need|make sure|lets? us|should}\b|\b{so|to} {make|give|leave}\b`), Ask: checkOrSet},
	{Looks: hear.Sets, Way: asWay(`^{Lead|, }*{i|we} {need|will need|would need|want|'d have|would have|have to have|get|end up with} [^,;?]*\?{ Stop}*$`), Not: asWay(`\b{please|can|could|how|what|which|where|why|when|is|are|do|does} `), Ask: checkOrSet},
	{Looks: hear.Sets, Way: asWay(`^{Lead|, }*you {mean|meant|had|have|end up with|ended up with|got|get|said|are left with|came up with|come out at} `), Not: asWay(`\byou {have|had|get|got} to\b|\b{make|now|but|let us|want|please|too many|too few|too much|too little|lengths|room|than i}\b`), Ask: checkOrSet},
	{Looks: setsOfWall, Way: asWay(`\b{inspector|surveyor|checker|building department|engineer|architect|foreman|boss|teacher|neighbor|contractor|builder|he|she|they} {just|also|had|has|then }*{measured|checked|found|counted|taped|read|clocked|got}{ and| that}? {the|it|a|an|this|our|my|[0-9]+|Number}\b`), Not: asWay(`\b{make|but|so|want|wants|instead|span|between|outside|bay [0-9]|drop|floor|slab|footers|stock|lengths|sells?}\b`), Ask: checkOrSet},
	{Looks: setsOfWall, Way: asWay(`\b{what|how much|how many} {do|did|does|have|would} you {get|got|have|make it|come up with|find|say|come to}\b|\bbut i {get|got|make it|come to|came to|come out}\b`), Not: asWay(`\b{want|make the|set|let us|please|now}\b`), Ask: checkOrSet},
	{Looks: setsOfWall, Way: asWay(`\b{by my {count|reckoning|figuring|math|sums|eye}|if {i am|i 'm|i've|i have} {reading|read|got|understood|seeing|counting}[^,]* {right|correctly|straight}|unless {i am|i 'm} {wrong|mistaken|missing something}|if i am not mistaken|i see {that|the|it is }+|i notice|looks to me like}`), Not: asWay(`\b{make|but|so|want|instead|span|between|outside|measures?|drop|floor|slab}\b`), Ask: checkOrSet},
	{Looks: hear.Sets, Way: asWay(`{,|;|:|-|\.} {is|are|would|will|am|does|do} {that|it|this|those|they|i|we} {be|going to be|still|even|all|have to be }*{legal|allowed|to code|up to code|within code|safe|ok|okay|fine|too [a-z]+|in trouble|right|strong enough|good enough|a problem|have to be|have to|wrong|sensible|normal|usual|overkill}\b`), Not: anyWordOf(`thought`), Ask: checkOrSet},
	{Looks: setsFar, Way: asWay(`\b{gaps?|opening|wall|rails?|posts?|it|i|we|you} {can|could|may|might} {be|go|get} {as {small|low|little|narrow|short|few|tight} as|down to}\b`), Ask: hear.OpenQuestion("Is that the least it may be?", "gap at least 2")},
	{Looks: setsFar, Way: asWay(`\byou {are|'re} allowed {a|an|to}\b|\b{they|the code|it|he|she|inspector} {lets?|allows?} {you|us|me} {go|have|use|build|do|a|an}\b`), Ask: hear.OpenQuestion("Is that the most it may be?", "gap at most 4")},
	{Looks: triesLimit, Way: asWay(`\b{round|bring|take|get|push|go|bump|move|open} {the|it|them|that|this }*{gaps?|opening|wall|height|rails }?{up|down} to\b|\bget up to\b`), Not: asWay(`\b{most|least|limit|max|min|under|over|no more|no less}\b`), Ask: hear.OpenQuestion("Just that, or at most that?", "what if gap 3")},
	// Of another wall.
	{Looks: valuedOrAsked, Way: asWay(`\b{neighbors?|neighbours?|brother|sister|uncle|aunt|dad|father|cousin|friend|boss|guy} ?'s? {wall|gate|gap|fence|rails?|opening|posts?|height|boards|spacing|doorway}\b|\bdoes {the|my|our|his|her} {neighbor|brother|sister|uncle|aunt|cousin|friend|guy next door}{ [a-z]+}? {have|use|has}\b|\bdid {he|she|they} {use|do|have|build|choose|pick|leave|make|go with|put in|cut|set}{ Stop|\?}*$`), Not: asWay(`\b{mine|ours|this one|same as|like|as in|copy|than|lets? us|but|compared?|open|my wall|i want|we want|make|says?|said|drew|thinks?|wants?|check}\b`), Ask: thisWallToo},
	{Looks: valuedOrAsked, Way: asWay(`^{Lead|, }*{the old|the other|the last|the previous|the existing|that old} {one|wall|fence|gate}( is|'s| was| had| has| ran) |^{Lead|, }*{in|on} {the|that|this|his|their} {example|video|movie|film|tutorial|article|magazine|picture|photo|show|blog|clip} `), Not: asWay(`\b{mine|ours|this one|here|same|make|but|so|want|let us|new}\b`), Ask: thisWallToo},
	// What is asked at its limit, or of another measure.
	{Looks: func(a act.Act) bool {
		return asksOf(solver.BottomGap)(a) || asksOf(solver.RailSize)(a) || asksOf(solver.Span)(a)
	}, Way: asWay(`\bhow {low|high|close|far|small|large|big|wide|narrow|tight|short|tall|few|many} {can|could|may|might|do} {i|we|it|you|they|the} {go|get|be|have|gap|bay|rails?|boards?|opening|wall|post|posts|space|spacing}\b.*\b{on|with|for|gap|rails?|boards?|bay|bays|opening|together|go|be}\b`), Not: asWay(`\bhave to\b|\bneed to\b|\bsupposed to\b`), Ask: hear.OpenQuestion("The least and the most that fits, or what it is?", "what can the gap be")},
	{Looks: asksOf(solver.Span), Way: asWay(`\b{above|over|past|beyond} the {wall|top|rails?|boards?}\b`), Ask: askback.HowTall.Open("how tall is the post")},
	{Looks: hear.AsksTopic("anchors"), Way: asWay(`\bhow deep {is|are|do|does} the {rails?|boards?|drop|slats?|posts?|wall|brackets?|gap}\b`), Ask: askback.HowWide.Open("how wide are the rails")},
	{Looks: func(a act.Act) bool { return a.Kind == act.Why && a.Topic != "shopping" }, Way: asWay(`\bwhy {are|is} the posts? {at|so }?{[0-9]+|Number}{ Stop|\?}*$|\bwhy {do|did|would} i {cut|saw|need|buy|have to buy|order} {them|it|ten|eleven|twelve|nine|eight|[0-9]+|so many}\b|\bwhy so much {waste|scrap|spare}\b|\bhow is that with\b`), Ask: hear.OpenQuestion("Why what, of those?", "why rails, or why gap")},
	{Looks: asksAny, Way: asWay(`\bwhich {post|rail|board|bracket|piece} {goes|comes|gets|should|is put|to} {in|up|on|put|set|hang|cut|first|start }*{first|last|next|with}\b`), Ask: hear.OpenQuestion("The steps of the work?", "what do I do first")},
	{Looks: valued, Way: asWay(`\b{he|she|they|client|customer|owner|wife|husband|boss} {wants?|would like|'d like} to see {it|that }?{with|at }?{a|an }?{Number|[0-9]}`), Ask: checkOrSet},
	{Looks: valued, Way: asWay(`\bhow many {boards|planks|lengths|pieces|sticks}{ for| would| will| do| does| to make| to build| of lumber for}* {Number|[0-9]+} {rails|slats|boards}\b`), Ask: hear.OpenQuestion("What to buy for so many rails?", "what if six rails, then what do I buy")},
	{Looks: hear.KindOf(act.WhatIf), Way: asWay(`\bdo without {one|a|1|two|2} {rails?|boards?|slats?|stiffeners?|posts?}\b`), Ask: hear.OpenQuestion("So many fewer, or so many in all?", "what if one rail fewer")},
	{Looks: hear.KindOf(act.HelpMe), Way: asWay(`\b{Number|[0-9]+} {stiffeners?|rails?|posts?} {a|per|each} bay \?`), Ask: unlessAlone},
	{Looks: aimsFor, Way: asWay(`\bwhat {is|'s|would be} the {cheapest|least|lowest} {it|that|this|i|we} {can|could}\b`), Ask: hear.OpenQuestion("The cheapest that fits: shall I try it?", "what if cheapest")},
	{Looks: hear.Stated(solver.StiffenerSize), Way: asWay(`\b{need|want|have} {any|the }?stiffeners? {with|for|on|at}\b`), Ask: hear.OpenQuestion("With rails of that size?", "what if rail size 2x8")},
}

// checkOrSet asks whether a conclusion is to be checked or to be set.
func checkOrSet(a act.Act, all []act.Act) solver.Question {
	q := solver.Question{Text: "Is that to be checked, or shall it be so?", Example: "check gap 3"}
	if !valued(a) {
		return q
	}
	claim, wish := a, a
	claim.Kind, wish.Kind = act.Check, act.State
	if len(all) == 1 && len(a.Statements) == 1 {
		q.Choices = []string{parse.Normal([]act.Act{claim}), parse.Normal([]act.Act{wish})}
		q.Example = q.Choices[0]
	}
	return q
}

// unlessAlone asks what is meant where more than one thing was heard.
func unlessAlone(a act.Act, all []act.Act) solver.Question {
	if len(all) < 2 {
		return solver.Question{}
	}
	return askback.Meant.Open("two stiffeners a bay")(a, all)
}

// setsOfWall reports whether a value of the wall is set, not of the site.
func setsOfWall(a act.Act) bool {
	return a.Kind == act.State && valuedButSite(a) && !hear.Stated(solver.Stock, solver.Price, solver.Extra, solver.Budget)(a)
}

// valuedOrAsked reports whether a value is told, tried or checked, or something is asked after.
func valuedOrAsked(a act.Act) bool { return valued(a) || a.Kind == act.Ask }

// setsFar reports whether a length or a count is set to a value.
func setsFar(a act.Act) bool {
	return a.Kind == act.State && len(a.Statements) == 1 && a.Statements[0].Op == solver.Eq
}

// triesLimit reports whether an upper limit is tried.
func triesLimit(a act.Act) bool {
	return a.Kind == act.WhatIf && len(a.Statements) == 1 && (a.Statements[0].Op == solver.LE || a.Statements[0].Op == solver.GE)
}
