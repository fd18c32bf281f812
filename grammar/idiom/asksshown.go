package idiom

import (
	"sync"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What is asked for and what is to be shown may be put in many words round its name: "what number do you have for the gap", "the gap now
// stands at what", "pull up the cut list", "I could use a look at the marks". The words round it are frames with an open place for any
// quantity, any count or any table; where one holds a whole clause it is set to "what is the gap", "how many rails", "show me the cut list".

// askFrames are the frames, for quantities, for counts and for tables.
var askFrames = []phrase.Placed{
	// A quantity.
	{Where: asksEnd, Plain: "what is $1", Said: `
		^ (what|which) (number|figure|measurement|dimension|value|reading|amount|size|result) (do|did|have|are|were|am|was|is|would) (you|we|i|it) [just|now|currently] [(got|have|get|had|see|seeing|show|showing|use|using|run|running|give|(end up)|(ended up)|(come up)|(come out)|(work out)|(arrive)|(land)|(settle)|looking|working)] [with|at|on|to|down] (for|on|with) !ASKED [ASKNOW]
		^ what (number|figure|measurement|dimension|value|reading) (is|are) (you|we|i|that|it|there) [(got|have|looking|working|running|down)] [at|with] (for|on|with) !ASKED [ASKNOW]
		^ what (have|do|did|are|were) (you|we|i) [just|now|currently] (got|have|get|show|showing|figure|figuring|reckon|calculate|using|running|calling|making|putting|see|seeing|(come up with)|(work out)|(end up with)) [down|out] (for|on) !ASKED [ASKNOW]
		^ what (have|has|did|do|are) (you|we|i) [just|now|currently] (got|have|get|put|set|make|made|making|call|called|calling|holding|running|setting|putting|keeping) !ASKED (at|down as|down at|to|to be|set at|set to) [ASKNOW]
		^ where (is|does|did|do|has|will) !ASKEDAT [now|currently] (at|stand|standing|land|landed|sit|sitting|(end up)|(wind up)|(come out)|(settle)|(stand at)|(sit at)) [at|to] [ASKNOW]
		^ where (are|do|did|have|am) (we|i|you|things) [now|currently] (at|with|on|(at with)|(at on)|(at for)|(stand on)|(stand with)|(sit with)|(sit on)|(land on)|(landed on)|(ended up on)|(ended up with)|(ended up at on)|(end up on)|(end up with)|(come out on)|(left with)) !ASKED [ASKNOW]
		^ where (are|is) (we|i|you|things) [now|currently] (standing|sitting|landing) (on|with) !ASKEDAT [ASKNOW]
		^ [the|our|my|your|and] [the] !ASKED [,] (what|(how much)) (is|was|are|would|will|does|did|might|could) (it|that|this) [again|now|then] [(be|(come to)|(come out to)|(come out at)|(work out to)|(work out at)|(end up at)|(end up being)|(stand at)|measure|(run to))] [(again|now|then)] [ASKNOW]
		^ [the|our|my|your|and] [the] !ASKED [,] what (did|do|have|are) (you|we|i) (get|got|have|show|showing|figure|(come up with)|(work out)|(end up with)) (for|on|out for) (that|it|that one|this|that then) [ASKNOW]
		^ [the|our|my|your|and] [the] !ASKED [,] what (number|figure) (is|was|did|do|have) (that|it|it at|that at|you get|we get|you have|you got|we have) [for (it|that)] [ASKNOW]
		^ [the|our|my|your|and] [the] !ASKED [now|currently] (is|are|was|stands|sits|comes|works|ends|lands|runs) [now|currently|up|out|in] [at|to|on|being] what [,] [(exactly|again|now|precisely|right now|then)]
		^ (just|only) [the|my|our] !ASKED [,] [please] [, ] [((nothing else)|(nothing more)|(that is all)|(no more)|(only that))] (.|,|;|-|--|:) what (is|was) (it|that) [again] [ASKNOW]
		^ it is [only|just] !ASKED [that|which] (i am|we are|i|we) (after|(asking about)|(asking after)|(wondering about)|(curious about)|(looking for)|want|need|(in need of)|(want to know)|(would like to know)|(would like)|(wanting to know)) [(.|,|;|-|:|--) (what|(how much)) (is|was) (it|that) [(at|again|now)] [ASKNOW]]
		^ [(please|kindly|so|could you|can you|would you|will you|would you mind)] (say|tell (me|us)|telling (me|us)|give (me|us)) [(offhand|off hand|quickly|roughly|real quick|straight off|in a word|off the top of your head|by any chance|again)] [,] what !ASKED (is|was|(comes to)|(came to)|(works out to)|(works out at)|(comes out at)|(comes out to)|(ended up at)|(ends up at)|(stands at)|(is at)|(is now)|(is set at)|(is set to)) [ASKNOW]
		^ (i would|we would|i should) (like|love|care) to (hear|know|learn|see|be told) is what !ASKED (comes|works|turns|ends) (out|up|to|at) [at|to] [ASKNOW]
		^ (what|all|the thing) (i|we) (would|should) (like|love) to (hear|know|learn|be told) is what !ASKED (is|(comes to)|(comes out at)|(comes out to)|(works out at)|(works out to)|(ends up at)|(stands at)) [ASKNOW]
		^ [my|our|the] (PERSON|inspector|helper) [_] will (want|need|like|ask) to (know|hear|see) !ASKED [,] [so] what is it [ASKNOW]
		^ [my|our|the] (PERSON|inspector|helper) [_] (is|are) [(at|by|on|over by|over at|out at) [my|our] _] (wondering|asking|(wanting to know)|(dying to know)|(waiting to hear)|(waiting to know)|(itching to know)) what !ASKED (is|was|(comes to)|(will be)|(works out to)) [ASKNOW]`},
	{Where: asksEnd, Plain: "what is $1", Said: `
		^ [PLEAD] (hit|quote|shoot|throw|slip|toss|read|tell|give|feed|hand|text|call|whisper|spell|recite|fill|run|remind|pass|spare|get) ME [in|back|off|out|over] [with|on|of|about] [what] !ASKED [is|was] [back|off] [ASKNOW]
		^ [PLEAD] (read|recite|quote|state|name|say|repeat|run|call) [back|off|out] !ASKED [back|off|out] [(to|by|for|past) ME] [again|first] [ASKNOW]
		^ [PLEAD] (look up|work out|figure out|find out|dig up|calculate|figure|reckon) !ASKED for ME [, what (is|was) it] [ASKNOW]
		^ [PLEAD] (check|look up|look at|see|find|work out|figure out|get) !ASKED [for ME] (,|.|;|:|-|--) what (is|was) it [at|now] [ASKNOW]
		^ [PLEAD] (jog|refresh|prod|nudge|help|freshen) (my|our|the) memory (on|about|of|for|with|,|:|;|-) [what] [is] !ASKED [is|was] [ASKNOW]
		^ (refresh|jog|nudge|prod) (my|our) memory , (what (is|was)|(tell|give) ME) !ASKED [ASKNOW]
		^ (have|did|do|are|has) (you|we|it|anybody) [already|ever|now|got|get|work|worked|figure|figured|have|settle|settled] [out|up] !ASKED (worked out|figured out|figured|calculated|down|yet|handy|ready|nailed down|there|written down|set|settled|in there) [yet|already] [ASKNOW]
		^ (did|have) (you|we) (work|worked|figure|figured|get|gotten|found|find|settle|settled|arrive|calculate|calculated) [out|at|on] !ASKED yet [ASKNOW]
		^ what (is|are) [the] (latest|newest|news|word|story|verdict|status|state|reading|score|situation) (on|of|for|about|with) !ASKED [ASKNOW]
		^ what is [the|our|my] (current|present|latest|actual|resulting|final|computed|calculated) !ASKED [ASKNOW]
		^ what (is|have) (you all|y'all|y all|y ' all|everybody|you guys|you lot) got (for|on) !ASKED [ASKNOW]
		^ what (do|does) (you all|y'all|y all|you) got (for|on) !ASKED [ASKNOW]
		^ [PLEAD] (give ME|put|name|quote|have ME|state) (a|the|your) (number|figure|value|measurement) (for|on|to) !ASKED [ASKNOW]
		^ (i|we|my|our) * (about|of|on|down|for|regarding) !ASKED , [so] what (is|was) (it|that) [again] [ASKNOW]
		^ ooh|oh|ah|hey|say and|also !ASKED $$
		^ [the|our|my] !ASKED , KINDLY $$
		^ (could|can|may|might) (i|we) (trouble|bother|ask|beg|press|pester) you for !ASKED [ASKNOW]
		^ what is !ASKED (working|coming|turning|ending|shaking|panning|shaping|adding) (out|up|in) [to|at|as|like] [ASKNOW]
		^ (i|we) (did|could|do|can) not (catch|hear|get|write down|find|read|remember|recall|see) !ASKED , [so|please|could you|can you] (say|tell|give|read|repeat) [ME] (it|that|it back|it over|it out) [(to|for) ME] [again] [ASKNOW]
		^ (i|we|they|he|she|my|the) [*] (for|about|of|wants|needs|want|need) !ASKED [(on|in|for) [the|my|their|this] _ [_]] , [so] what (do|should|shall|can) (i|we) (put|say|write|answer|enter|tell (him|her|them)|fill in|give (him|her|them)|put down|put in) [there|down|in] [ASKNOW]`},
	// A count.
	{Where: asksEnd, Plain: "how many $1", Said: `
		^ [(please|kindly|could you|can you|would you|will you)] (say|(tell (me|us))|(let (me|us) know)|(any (idea|clue|notion))|(do you know)|(can you say)|(give (me|us))|(remind (me|us))|(i wonder)|(i would like to know)|(we would like to know)|(i need to know)|(i want to know)) [just|quickly|again|offhand] how many !COUNTED (there (are|is|will be|would be)|(we|you|i) (have got|have now|end up with|ended up with|are at|are running|are looking at|came up with|come up with)|(that|it) (is|makes|leaves|comes to|works out to|gives (me|us)|leaves (me|us) with)|(are|is) there) [INPLAN] [ASKNOW]
		^ how many !COUNTED (are|is|was|were) [there] INPLAN [ASKNOW]
		^ how many !COUNTED (did|do|are|were|was|is|have|would|will) (we|you|i|it|that|they) [(at|be|again|running|using|(end up with)|(come to)|(come up with)|(wind up with)|(come out to)|(work out to)|(add up to)|(amount to)|make|now|showing|show|(looking at)|(left with)|(settle on)|(settled on)|(planning on)|figuring|figure)] [ASKNOW]
		^ [the|our|my|your|and] [the] !COUNTED [,] how many (of (them|those|these)) [(are|is|do|did|were|have) (we|you|i|there|it) [got|get|have|at|running|using|in all]] [ASKNOW]
		^ what (is|was) the (count|number|total|tally) (of|for|on) !COUNTED [(at|come to|up to|sitting at|standing at)] [INPLAN] [ASKNOW]
		^ what (count|number|tally|total) (of|for) !COUNTED (do|did|have|are|is|was|does) (we|you|i|that|it) [(get|got|have|at|end up with|ended up with|come up with|looking at|running|make|give (me|us)|leave (me|us) with|come to)] [ASKNOW]
		^ what (count|number|tally|total|figure) (do|did|have|are) (we|you|i) [(get|got|have|at|end up with|come up with|looking at|running|show|showing)] [down] (for|on) (the (number|count) of) !COUNTED [ASKNOW]`},
	{Where: asksEnd, Plain: "how many $1", Said: `
		^ how many !COUNTED (have|has|had|did|do|are) (you|we|i|it) [got|have|put|had|get] [ME] [down] (for|in for|in|at) [INPLAN] [ASKNOW]
		^ (is|was) there [already] [a|the|any] (count|number|total|tally) (of|for|on) [the] !COUNTED [yet|already] [INPLAN] [ASKNOW]
		^ [PLEAD] (count|count up|tally|tally up|tot up|add up|number) !COUNTED [up] (for ME|,) [ASKNOW]
		^ [the|our|my] !COUNTED , how many , KINDLY $$
		^ how many !COUNTED (are|is) (we|you|i|they) (talking|speaking|thinking) [about|of] [here] [ASKNOW]
		^ (any|the) !COUNTED (count|tally|total) [yet|already|now] [ASKNOW]
		^ (could|can|may|might) (i|we) (trouble|bother|ask|beg) you for (the|a) (number|count|total) of !COUNTED [ASKNOW]
		^ (have|did|do) (you|we) (got|get|have) (a|the) (count|number|total|tally) (of|for|on) !COUNTED [yet|now|already|handy] [ASKNOW]`},
	// A table, a list or a picture.
	{Where: asksEnd, Plain: "show me $1", Said: `
		^ [PLEAD] (pull|bring|call|put|get|pop|flash|punch|dig|haul|drag|fire|rustle) [up|out|over|forth|forward|back] [ME] !TOPIC [up|over] [there|here] [(on|onto|to) [my|the|this|your|that] (screen|phone|tablet|display|monitor|laptop|page|board)] [SHOWNTO] [SOISEE] [ASKNOW]
		^ [PLEAD] throw up [there|here] !TOPIC [there|here] [(on|onto|to) [my|the|this|your|that] (screen|phone|tablet|display|monitor|laptop|page|board)] [SHOWNTO] [SOISEE] [ASKNOW]
		^ [PLEAD] throw !TOPIC up [there|here] [(on|onto|to) [my|the|this|your|that] (screen|phone|tablet|display|monitor|laptop|page|board)] [SHOWNTO] [SOISEE] [ASKNOW]
		^ [PLEAD] (toss|throw|chuck|send|slide|bring|get|kick|shoot|pass|hand) !TOPIC (over here|over to ME|this way|my way|to ME|over|here) [SHOWNTO] [SOISEE] [ASKNOW]
		^ [PLEAD] (go|get|come|turn|flip|switch|head|move|jump|skip|scroll) [back|ahead|over|on] to !TOPIC [SHOWNTO] [SOISEE] [ASKNOW]
		^ (i|we) would not (mind|object to|say no to) (seeing|viewing|having|(a [quick|good] (look|peek|gander|squint) at)|getting) [a look at] !TOPIC [SHOWNTO] [SOISEE] [ASKNOW]
		^ [PLEAD] (put|lay|set|stick|slap|slide|plunk|hold|place) !TOPIC (up|out|(in front of ME)|(before ME)|(where (i|we) can (see|read) (it|them))|(under my nose)|(over here)) [there|here] [(on|onto|to) [my|the|this|your|that] (screen|phone|tablet|display|monitor|laptop|page|board)] [SHOWNTO] [SOISEE] [ASKNOW]
		^ [PLEAD] (grab|fetch|show|hand|pass|get|give|send|slide|shoot|toss|throw|bring|lend|spare|read|find|furnish|hit) [over|along|up|out] (ME|him|her|them|(my|our|the) PERSON) [over|up|with] !TOPIC [over|here|there|up] [SHOWNTO] [SOISEE] [ASKNOW]
		^ [PLEAD] (view|display|see|show|inspect|review|examine|study|peruse|(look (at|over))|(have (a|another|one more) [quick|last|good] (look|peek|gander|squint|glance) (at|over))|(take (a|another|one more) [quick|last|good] (look|peek|gander|squint|glance) (at|over))|(peek at)) !TOPIC [there|here|now] [SHOWNTO] [SOISEE] [ASKNOW]
		^ [ok|okay|right|alright|well] [the|my|our] !TOPIC (next|(is next)|(comes next)|(would be next)|(is up next)|(up next)) [please|then|thanks]
		^ (next up|up next|next|next on the list|first up|last) [is|,|:|would be] !TOPIC [please|then|thanks]
		^ (i|we) (could|can|would|might) [really|just|sure|also] (do with|use|stand|go for|enjoy|like) (seeing|viewing|((a|another|one) [quick|good|last] (look|peek|gander|squint|glance|view) (at|of|over))|having) !TOPIC [SHOWNTO] [SOISEE] [ASKNOW]
		^ why (do not|not) [you|we] [just|go ahead and] (show|showing|give|get|bring|pull|let|hand) [up] [ME] [(see|look at|have)] !TOPIC [up] [SHOWNTO] [ASKNOW]
		^ (my|our|the) (PERSON|KIN|inspector|helper|crew|boss|foreman|neighbor|boys|guys|customer) [_] (wants|want|needs|need|(would like)|(is|are|'s) (wanting|itching|hoping|dying|asking|waiting|ready|eager|here)) to (see|(look at)|(have (a look|a peek|a squint) at)|(look over)|view|(take a look at)) !TOPIC [, [so] (show|give|let|tell) (me|us|him|her|them) [(it|see)]] [ASKNOW]
		^ (my|our|the) (PERSON|KIN|inspector|helper|crew|boss|foreman|neighbor|boys|guys|customer) [_] (is|are|'s) [all|still|just|already] ((waiting (on|for))|(asking (for|after|about))|(ready for)|after|hollering for|(looking for)) !TOPIC [, [so|now] (show|give|let|tell) (me|us|him|her|them) [(it|see)]] [ASKNOW]
		^ [(it is|guess it is|i guess it is|high)] time (to|for (a|another) (look|peek|squint) at|(for (me|us) to)) [(look (at|over)|see|view|(have (a look|a peek|a squint) at)|(check out)|(go over)|(pull up)|(bring up))] !TOPIC [[,] (i|we) (reckon|think|guess|suppose|figure|believe)] [ASKNOW]
		^ [PLEAD] (show|give|get) ME !TOPIC , [(i|we)] (reckon|guess|suppose)`},
	{Where: showsBefore, Plain: "the drawing", Said: `
		(what|how) [finished|completed|whole|entire|done|built|final] (halfwall|wall|thing|job|product|result|it|structure|project) (will|would|should|might|does|(is going to)|(is gonna)|(is supposed to)|(is meant to)|(ought to)) [end up] (look|looking) [like] [(once|when) (it is|it 's|we are|i am|all) (done|finished|built|up|through|complete)]`},
	{Where: asksEnd, Plain: "show me $1", Said: `
		^ [ok|okay|now|the|my] [the|my|our] !TOPIC , KINDLY $$
		^ (could|can|may|might) (i|we) (trouble|bother|ask|beg|press) you for !TOPIC [SOISEE] [ASKNOW]
		^ (i am|we are|i 'm) [just|all|so] (itching|dying|keen|eager|anxious|burning|ready|longing|aching|waiting|hoping|raring|curious) to (see|view|have|get|(look at|over)|(have|take|get) a (look|peek) at) !TOPIC [ASKNOW]
		^ where (can|could|do|might|would) (i|we) (find|see|get|look at|view) !TOPIC [ASKNOW]
		^ (i|we) (can|could|do|did) not (find|see|read|open|locate|have|get) !TOPIC [anywhere|here|now] (,|.|;|-|--|:) [so|and] [please|can you|could you|would you] (show|bring|pull|give|put|let) (ME [see|have]|it|them) [it|them] [up|out|back] [to ME] [again] [ASKNOW]
		^ _ [*] !TOPIC [*] (,|.|;|-|--|:) [so|and] [please|can you|could you|would you] (show|bring|pull|give|put|let) (ME [see|have]|it|them) [it|them] [up|out|back] [to ME] [again] [ASKNOW]
		^ what (have|did|do) (you|we) [got|get|have] (for|on|as) !TOPIC [ASKNOW]
		^ (any|some|no) chance (of|for|(i|we) (could|can|might|may) (see|have|get|look at)|you could (show|give) ME|at) !TOPIC [ASKNOW]
		^ how (does|do|is|are) !TOPIC (look|looking|coming along|coming|doing|shaping up|turn out|come out) ASKNOW
		^ how (is|are) !TOPIC (looking|coming along|coming|doing|shaping up|coming out) [ASKNOW]
		^ (do|have|did) you (have|got|get) !TOPIC [ready|handy|there|up|yet] [(for|to show) ME] [ASKNOW]
		^ [have you|you] got !TOPIC (ready|handy|there|yet) [(for ME)] [ASKNOW]`},
	// How many there are, behind what is set.
	{Where: figureThenEnd, Plain: "how many $1", Said: "^ [the] (number|count|tally|total) of !COUNTED [ASKNOW]"},
	{Where: phrase.AmountNext, Plain: "set $1 at", Said: "^ (pin|nail|lock|peg) !ASKED [down|in] (at|to)"},
	// Done is what was just said.
	{Where: doneAsSaid, Said: "(,|.|;|-|--) [and|so|please|ok|just] do (that|it|so) [please|then]"},
	// Where somebody is off to, who asks for something else.
	{Where: asksNextAfter, Said: `
		^^ (i|we) (am|are|'m|'re) [just|all|now|about] (off|headed|heading|going|driving|running|leaving|(on (my|our) way)) [out|over|down|back|off] (to|for) [the|my] (yard|lumberyard|store|shop|hardware store|home center|site|truck|garage|saw) [soon|now|shortly|today|(in (a|##) (minute|minutes|hour))] (,|.|;|-|--|so|and)
		^ let (me|us) [just] (double|circle|back|step|go|roll) (back|up) [(for [a])] [a] [(second|minute|moment|bit|sec|tick)] (,|.|:|-|--)`},
	// How a list came to be what it is.
	{Where: asksEnd, Plain: "why is $1 $2 $3", Said: `
		^ [PLEAD] (talk|walk|take|run|(tell|show) ME|explain) [ME|to] [through|about] (how|why) !TOPIC (got|became|ended up|turned out|came out|grew|is|gets|has got|has gotten) [to be] !(so|that|this|as) !(long|big|short|full|high|large|small|heavy)`},
	// When there is time for it, and the light.
	{Where: phrase.EndsLine, Said: `
		[,] (when|whenever|once|if|as soon as) you [ever] (get|have|find|(have got)) [spare|free] (second|minute|moment|chance|sec|breather)
		[,] (while|whilst|as long as|before) (i|we|there) (have|is|lose|run out of) [still|the|some|all|my|our] [got] [some|any|enough|a bit of|a little|the] (daylight|light|sun) [left] [to (work|see|read|cut|build) [by|with]]`},
	{Where: phrase.BothHold(phrase.StartsClause, moreFollows), Said: "(when|whenever|once|if|as soon as) you [ever] (get|have|find|(have got)) [spare|free] (second|minute|moment|chance|sec|breather) [,]"},
	{Where: moreFollows, Said: "^^ [hey|sorry|ok|okay|thanks|right|please|well|so|cheers|alright] mate|pal|buddy|bud|chief|love|hon|honey|dear|darling|friend|sport|man|dude|lad|lass ,"},
	// A word that goes along with a reason asked for.
	{Where: asksFromStart, Plain: "work", Said: "(go|sit|square|jibe|fit in|fit|get along) with (this|that|it|these|(everything else)|(the rest)|(what (we|i) have [got])) $"},
}

// asksPhrases is the book of the frames.
var asksPhrases = sync.OnceValue(func() *phrase.Book { return phrase.BookOf(askFrames, askWorded) })

// AsksAndShows sets frames that ask for one thing, and for one table, to the plain question.
func AsksAndShows(atoms []scan.Atom) []scan.Atom { return asksPhrases().SetIn(atoms) }

// behindAsked are words that begin what only tells why or when something is asked.
var behindAsked = scan.WordSet("before while whilst since because cause cos so as for when whenever and then please thanks thank just now")

// asksEnd: the clause ends behind it, or why and when it is asked follows.
func asksEnd(_, after []scan.Atom) bool {
	return chunk.EndsPart(after, 0) || behindAsked[after[0].Text] && (len(after) > 2 || after[0].Text == "please" || after[0].Text == "now" || after[0].Text == "then" || after[0].Text == "thanks")
}

// showsBefore: somebody is to show it.
func showsBefore(before, _ []scan.Atom) bool {
	n := len(before)
	for k := max(0, n-5); k < n; k++ {
		switch before[k].Text {
		case "show", "see", "showing", "picture", "seeing":
			return true
		}
	}
	return false
}

// figureThenEnd: a figure stands before it, and nothing behind.
func figureThenEnd(before, after []scan.Atom) bool {
	return numberAhead(before) && asksEnd(before, after)
}

// doneAsSaid: a figure is set before it, nothing is tried, and more follows.
func doneAsSaid(before, after []scan.Atom) bool {
	return numberAhead(before) && chunk.EndsPart(after, 0) && asksNextAfter(before, after) && !phrase.SaidBeforeOf(scan.WordSet("if would could suppose what how"))(before, after)
}

// asksNextAfter: a question, or a wish to be shown something, stands behind it.
func asksNextAfter(_, after []scan.Atom) bool {
	for len(after) > 0 && (chunk.Joints[after[0].Text] || after[0].Kind == scan.Sign) {
		after = after[1:]
	}
	return len(after) > 1 && (AskOpeners[after[0].Text] || after[0].Text == "can" || after[0].Text == "could" || after[0].Text == "please" || lexicon.Vocab().Articles[after[0].Text])
}
