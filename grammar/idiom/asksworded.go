package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// askWorded are more frames that ask for one thing or one table, in the words of more people: whether anybody has an idea of it, what it
// came out at, that it is not remembered; that a list would come in handy, that it is to be gone over. And why something is as it is,
// or cannot be.
var askWorded = []phrase.Placed{
	// A quantity.
	{Where: asksEnd, Plain: "what is $1", Said: `
		^ [so|and|hey] what (am|are|is) (i|we|you) [now|currently|actually] (looking|left|working|dealing|ending up|standing|sitting|stuck|landing) [at|up] (on|for|with) !ASKED [ASKNOW]
		^ [(have you)|(do you have)|(has anyone)|so] [got] (any|some|an|no) (idea|clue|notion|inkling|word|news|guess) [of|about|on|as to] (what|(how much)) !ASKED (has|have|is|was|did|ended|came|landed|works|comes|stands|ends|turned|finished|got|wound|settled) [been|now] [(ended|come|landed|worked|wound|finished|settled|got|turned|end|land|finish|settle|wind)] [up|out|in|down] [at|to|on|as|with|being] [ASKNOW]
		^ [so] (any|some) (idea|clue|notion|inkling|word|news|guess) where !ASKEDAT (has|have|did|ended|came|landed|comes|ends|turned|finished|got|wound|settled) [been|now] [(ended|come|landed|worked|wound|finished|settled|got|turned|end|land|finish|settle|wind)] [up|out|in|down] [at|to|on|as|with|being] [ASKNOW]
		^ [PLEAD] (would you|do you|you) mind [(if i ask)] [just] (telling|giving|sharing|saying|reading|reminding) [ME] [what|out|of|with|(how much)] !ASKED [(is|was|comes|came|works|worked|ended|ends|turned|stands|sits)] [up|out] [to|at|as] [ASKNOW]
		^ mind [just] (telling|giving|sharing|saying|reading|reminding) [ME] [what|out|of|with|(how much)] !ASKED [(is|was|comes|came|works|worked|ended|ends|turned|stands|sits)] [up|out] [to|at|as] [ASKNOW]
		^ how much (is|are|was|were) !ASKED (coming|working|turning|ending|running|going|adding) [out|up|to] [at|to|(to be)] [ASKNOW]
		^ how much (did|do|have|would) (you|we) [now] (make|made|get|got|reckon|figure|think|say|have|call|guess|put|set) !ASKED [is|was|at|down|as|(to be)] [as] [ASKNOW]
		^ what (did|do|have) (you|we|they) [(end up)] (work|figure|reckon|worked|figured|reckoned|working|figuring) !ASKED out [as|at|to|(to be)] [ASKNOW]
		^ (got|(have you got)) !ASKED (handy|(to hand)|(at hand)) [ASKNOW]
		^ (which|what) (value|number|figure|measurement|setting|size) (is|'s) (down|set|in|entered|written|noted|recorded|showing|up|put) [down|in|there] (for|on|against|beside|under) !ASKED [ASKNOW]
		^ (ye|y'all|yous|youse|anyone|anybody|d'you|d'ye|any of you) (know|ken|recall|remember) what !ASKED (is|was|(comes to)|(came to)) [ASKNOW]
		^ [just|only] [a|another] [quick|little|wee] (reminder|readout) (of|on|about) !ASKED [ASKNOW]
		^ [PLEAD] (have|get) [a|another] [quick|little|wee] (reminder|readout) (of|on|about) !ASKED [ASKNOW]
		^ what (would|do|did) (you|we) (say|reckon|think|guess|figure) !ASKED (is|was|(comes to)|(came to)|(comes out at)|(came out at)|(works out at)) [ASKNOW]
		^ what [(sort|kind) of] (number|figure|measurement|size|value) (are|is) (we|you|i) talking [about|of] (for|on|with) !ASKED [ASKNOW]
		^ how much (have|did|do|are|would) (we|you|i) [now] (got|get|have|doing|talking|(end up with)|(ended up with)) (for|on|at|as) !ASKED [ASKNOW]
		^ [and|so] [the|our|my] !ASKED (is|are|was|comes|came) [out] [to|at] (how much) [ASKNOW]
		^ (has|have) !ASKED been ((worked out)|(figured out)|figured|calculated|computed|settled|decided) [on] [(yet|already)] [ASKNOW]
		^ where (did|have) (we|you|i) [(end up)] (leave|left|put) [(things|it)] [(on|with)] !ASKEDAT [ASKNOW]
		^ (any|what) (word|news|update|progress) [yet] (on|about|with|of) !ASKED [ASKNOW]
		^ what (number|figure|value) (goes|comes|belongs) (with|to|on|beside|against) !ASKED [ASKNOW]
		^ how much (is|are|was|were) !ASKED (supposed|meant|due) (to be) [ASKNOW]
		^ at what (have|do|did|are) (you|we) [now] [got|get|have|set|put|setting|putting|holding|keeping] !ASKED [ASKNOW]
		^ (i|we) never (got|caught|heard|had|saw) !ASKED (off|from|(out of)) you [ASKNOW]`},
	{Where: askedToEnd, Plain: "what is $1", Said: `
		^ how (did|does) !ASKED (turn|come|pan|work|shake|end) (out|up)
		^ how (has|have) !ASKED (turned|come|panned|worked|shaken|ended) (out|up)
		^ (i|we) (am|are|have|'ve|'m) [clean|totally|quite|completely|just|now|(gone and)] ((blanking on)|(drawing a blank on)|(gone blank on)|(drawn a blank on)|forgotten|(hazy on)|(fuzzy on)) !ASKED [ASKNOW]
		^ (i|we) (can|do|could|did) not [quite|for the life of me|rightly] (recall|recollect|remember) !ASKED [ASKNOW]`},
	// Why it is as it is.
	{Where: asksEnd, Plain: "why is $1", Said: `
		^ (i|we) do not (understand|get|follow|see) !ASKED (,|.|;|-|--) [and|so|but] ((where (does|did) (it|that) come from)|((how|where) (did|do) you (get|(come up with)|(arrive at)|(come by)) (it|that) [from])|((how come) (it|that) (is|was) [so|that])|(why (is|was) (it|that) [so|that]))
		^ how (was|were) !ASKED ((worked out)|(figured out)|figured|calculated|computed|(arrived at)|(come by)|derived|reached|decided|chosen|picked)`},
	{Where: asksEnd, Plain: "why the number of $1", Said: `
		^ [that|it|this] (seems|looks|sounds|is|'s) [like] [(to (be|me))] (((an awful|a) lot)|plenty|loads|(a load)|heaps|(a heap)|(a whole lot)) of !COUNTED [to me] (,|.|;|-|--) [and|so] (why|(how come)|(why is that)|(how so)|(what for))`},
	{Where: asksEnd, Plain: "how many $1", Said: `
		^ ((is it known)|(do we know)|(does (anyone|anybody) know)|(have we any idea)) how many !COUNTED ((there (are|is|will be|would be))|((we|you) (have|need|end up with))|(that|it) (is|makes)|(are there)) [INPLAN] [ASKNOW]`},
	{Where: askedToEnd, Plain: "how many $1", Said: "^^ [the|our|my] (total|overall) [(number of)] !COUNTED"},
	// A table, a list or a picture.
	{Where: asksEnd, Plain: "show me $1", Said: `
		^ [PLEAD] (go|run|page|leaf|flick|flip|scan) (over|through|down) !TOPIC [again|now] [with|for|by] [ME] [ASKNOW]
		^ [PLEAD] run !TOPIC (past|by) ME [ASKNOW]
		^ [PLEAD] open up !TOPIC [for ME] [ASKNOW]
		^ what (i|we) [now|really|just] (need|want|require|(could use)|((am|are) (wanting|needing|after))|((would|will) (like|need|want))) next is !TOPIC [ASKNOW]
		^ [PLEAD] [((would|do) you)|you] mind [just] (showing|giving|bringing|pulling|putting|sending|getting|handing|passing|reading) [up|out|over] [ME] !TOPIC [up|out|over] [ASKNOW]
		^ [PLEAD] [((would|do) you)|you] mind if (i|we) (see|view|have|get|((look|peek) at)|(look over)|((have|take|get) a [quick] (look|peek|gander|squint) at)) [up] !TOPIC [ASKNOW]
		^ (i|we) (am|are|'m|'re) [just|also|now|really] (after|((looking|hunting) for)|needing|wanting) !TOPIC [ASKNOW]
		^ (i|we) (have|had) [still] not [even] (seen|looked at|had|checked|read) !TOPIC [yet]
		^ (i|we) (want|need|'d like|((would|should) like)) to (check|inspect|review|study|((check|look|go|read) (over|through))|(double check)) !TOPIC [over|through] [ASKNOW]
		^ [PLEAD] read !TOPIC out [(to ME)|loud|aloud] [ASKNOW]
		^ [now|and|so] [the|my|our] !TOPIC (would|might|could|'d) (be|come in) [very|real|really|so|mighty|quite|right|a great|a] (handy|useful|grand|great|lovely|helpful|brilliant|welcome|help) [(to (have|see)|about|right|just)] [(now|next|then)]
		^ [now|and|so] [the|my|our] !TOPIC (would|might|could|'d) [really|greatly] (help|suit) [ME] [(out|(a lot)|greatly|(no end))] [(about|right|just)] [(now|next|then)]`},
	{Where: asksNextAfter, Said: `
		^^ (i|we) have (no|lost|left|mislaid|misplaced|forgot|forgotten|dropped|broken|not [got]) [my|the|any|a] [reading] (glasses|specs|spectacles|readers|notes|phone|pencil|paper|tape|notebook) [(on ME)|(with ME)|here|handy|(at home)|(in the (truck|house|car|van|kitchen))|on] (,|.|;|-|--|so)`},
	{Where: isNext, Plain: "what", Said: "^ wot|whit|whut"},
	// One thing as well as another.
	{Where: askedBefore, Plain: "and", Said: "[,] (as well as)|(along with)|(together with)"},
	// Orders in more words.
	{Where: asksEnd, Plain: "recap", Said: `
		^ [PLEAD] (run|go|read|look|talk) [back] (over|through) what (we|i) [have] [already|all] (settled|decided|agreed|fixed|chosen|picked|entered|(told you)|(given you)) [on] [(so far|(up to now)|already|(till now)|(until now))]`},
	{Where: asksEnd, Plain: "start over", Said: `
		^^ [it is|this is] [a] (new|fresh|different) (wall|job|project) (,|.|;|-|--|so) [please|so] (forget|scrap|drop|wipe|clear|bin|ditch) (all|everything) [of] [that|this|it]`},
	{Where: phrase.EndsLine, Plain: "undo that", Said: `
		^^ [oops|whoops|sorry|oh|ah|damn|dang] [,] ((wrong (button|key|one))|((i|we) (hit|pressed|pushed|tapped) the wrong (button|key|one))|(fat fingers)) [,|.|;|-|--] [please] ((go back [one])|(undo [it|that])|(take (it|that) back)|(back [it|that] out))`},
}

// whyNotWorded are ways to ask what is against a value.
var whyNotWorded = []phrase.Placed{
	{"what (is|'s|are) [the|your|his|her|their] [big|main] (objection|objections|obstacle|snag|hitch|drawback|downside|hurdle|difficulty|argument) (to|with|against|about|in) [having|using|making|putting|fitting] [in] !(## COUNTQ)", "why not $1", notTwisted},
	{"what (is|'s|are) [the|your|his|her|their] [big|main] (objection|objections|obstacle|snag|hitch|drawback|downside|hurdle|difficulty|argument) (to|with|against|about) [having|using|making] # for|on|as|at !LENQ", "why not $2 $1", notTwisted},
	{"what (is|'s|are) [the|your|his|her|their] [big|main] (objection|objections|obstacle|snag|hitch|drawback|downside|hurdle|difficulty|argument) (to|with|against|about) [having|making|setting|putting] !LENQ [at|being|of|to|as] [be] #", "why not $1 $2", notTwisted},
	{"what is|'s (stopping|blocking|barring|hindering|preventing|holding back) !LENQ [from] (being|going|(getting to)|reaching|(to be)|(coming to)) [to] #", "why not $1 $2", notTwisted},
	{"^^ (can|could|will|would) not !LENQ [just] (be|go|come|get|reach) [up|down] [to|at] # ,|?|.|-|; [and|so|but] ((why (is that|ever not|not))|(how (come|so))|why) $$", "why not $1 $2", nil},
	{"^ (why|(how come)) (was|is|were|got|did) # [been|get] ((turned (down|away))|rejected|refused|((ruled|thrown|knocked) (out|back|down))|denied|disallowed|(shot down)|(not allowed)) for|on|as !LENQ", "why not $2 $1", nil},
	{"^ (why|(how come)) (did|do|have|would) (you|it|he|they) (refuse|refused|reject|rejected|deny|denied|((turn|turned) down)|((rule|ruled) out)) # for|on|as !LENQ", "why not $2 $1", nil},
	{"^^ (i|we) ((asked for)|wanted|tried|requested) # (for|on|as|at) !LENQ [,|.|;] [and|but] (you|it|he|they) ((said no)|((refused|rejected) [(it|me)])|(turned (it|me|us) down)|(would not (have it|let me|take it|do it))) [,|.|;|-] [so|and|but] (why|(how come)|(why is that)|(why not)|(how so)) $$", "why not $2 $1", nil},
	{"^^ (i|we) ((asked for)|wanted|tried|requested) !(## COUNTQ) [,|.|;] [and|but] (you|it|he|they) ((said no)|((refused|rejected) [(it|me|them)])|(turned (it|me|us|them) down)|(would not (have it|let me|take it|do it))) [,|.|;|-] [so|and|but] (why|(how come)|(why is that)|(why not)|(how so)) $$", "why not $1", nil},
	{"^ what is|'s [up] (with|behind) all (these|those|them) !rails|slats|posts|bays|stiffeners|braces", "why so many $1", nil},
	{"^ what is|'s [up] (with|behind) all the !rails|slats|posts|bays|stiffeners|braces", "why so many $1", nil},
	{"^^ [so|but|and] !LENQ (will|can|could|would|does) not [just] (go|be|come|get|reach|stretch|run|be set|be made) [up|down] [to|at|as] # ,|?|.|-|; [and|so|but] ((why (is that|ever not|not))|(how (come|so)|why)|(what (for|is stopping it|is the matter))) $$", "why not $1 $2", nil},
	{"^^ [so|but|and|you say|you said] (i|we) (can|could|may) not [just] (have|use|fit|get|put|make|do) !(## COUNTQ) [in] ,|?|.|-|; [and|so|but] ((why (is that|ever not|not))|(how (come|so))|why|(what (for|is stopping us))) $$", "why not $1", nil},
}

// askedToEnd: the clause ends behind it.
func askedToEnd(_, after []scan.Atom) bool { return chunk.EndsPart(after, 0) }

// isNext: "is" stands behind it.
func isNext(_, after []scan.Atom) bool {
	return len(after) > 1 && (after[0].Text == "is" || after[0].Text == "'s" || after[0].Text == "s" || after[0].Text == "'")
}

// askedBefore: a question or a wish to be shown something stands before it, and no figure in the line.
func askedBefore(before, after []scan.Atom) bool {
	return len(before) > 1 && (AskOpeners[before[0].Text] || before[0].Text == "can" || before[0].Text == "could") && !numberInSentence(before) && !numberInSentence(after) && len(after) > 0
}

// notTwisted: nothing that denies or doubts stands before it.
func notTwisted(before, _ []scan.Atom) bool {
	for _, a := range before {
		if phrase.Turning[a.Text] || a.Text == "not" || a.Text == "if" {
			return false
		}
	}
	return true
}
