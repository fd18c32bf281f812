package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// amountPhrases are ways to tell how many, how much, and how much more or less of something there is to be, whatever it is. They are set
// plain early, before words that only surround them are looked at.
var amountPhrases = []phrase.Placed{
	// How many, and of what size.
	{Where: nil, Plain: "$1 : $2", Said: `
		^ ((when it comes to)|(as for)|regarding|concerning|(with regard to)|(speaking of)|(as far as)) ?(number of) !COUNTQ|LENQ [goes|(is concerned)|go|(are concerned)] , # (is|'s) (the|my|our) [right|magic|lucky|agreed|final] (number|figure|count|answer|value|one)
		the ?(number|count|total) of !COUNTQ ?should|must|will|shall|would|does (has to|have to|needs to|ought to|is to|wants to|must|should|will|shall|can|) come|add|amount|total|work ?up|out ?to #
		(number|count|total) of !COUNTQ (came|comes|adds|added|works|worked) [up|out] (to|at|as) #
		?(number|count) of !COUNTQ should|must|will|shall|((has|needs|ought|is|wants) to) come|add|amount|work ?up|out to #`},
	{"## (is|'s|s|(' s)) ?just [the] right|correct|proper|perfect|magic|best (number|count|amount|quantity) of|for !COUNTQ", "$1 $2", noDoubtBefore},
	{"# is|are how many !COUNTQ ?that ?all|both (i|we) [(will|would|do|am|are)] [just] [(like|going|ready)] [to] (want|need|like|have|use|choose|chose|fancy|picked|after|settled on|put in|go with)", "$1 $2", noDoubtBefore},
	{"how about you ?just|please|simply|kindly !(write|put|jot|note|set|mark|enter|pencil|log|record|ink)", "please $1", phrase.StartsClause},
	{"(,|and) [and|but] (no|nothing|(not [a|one] [hair|bit|whisker|fraction|smidgen|sixteenth|single] [one])) (more|bigger|wider|over|higher|larger|longer|fewer|less|under|smaller|tighter) [,] [and|or|nor] (no|nor|nothing|or|(not [a|one] [hair|bit|whisker|fraction|smidgen|sixteenth|single] [one])) (more|bigger|wider|over|higher|larger|longer|fewer|less|under|smaller|tighter)", "", phrase.EndsClause},
	{", neither more|fewer|less nor more|less|fewer", "", phrase.EndsClause},
	{"@ (is|are|'s) what (i|we) [(am|are|will|have)] [all|both|just|always] [be] [decided on|chosen|picked] (making|building|cutting|framing|getting|having|using|going with|want|need|chose|picked|having) [for] !(COUNTQ|(POST)|(BRACKET)) [from|out of|of|with|to be|in]", "$2 are $1", noDoubtBefore},
	{"@ (is|are|'s) what !(COUNTQ|POST) (are|will|should|must|shall|have|ought) [all|both] [going] [to] [be|come] [made|cut|sawn|ripped|built] [from|out of|of|in]", "$2 are $1", noDoubtBefore},
	{"what (i|we) [would|really|do|both|all|just] (want|need|like|have chosen|settled on|have in mind|picked|chose|am after|are after) for|on|in !(COUNTQ|POST) is|are|'s @", "$1 are $2", nil},
	{"(base|build|figure|work|plan|run|calculate|reckon|lay) (it|this|that|things|everything|the job|the sums|your sums) [all] [out] (on|around|off|upon) # !COUNTQ", "use $1 $2", phrase.StartsClause},
	{"(lock|pencil|ink|nail|pen|chalk|sharpie|bolt) (in|down|me in for|us in for) # !COUNTQ|LENQ|wide|high|tall", "use $1 $2", phrase.StartsClause},
	{"(lock|pencil|ink|nail|pen|chalk|bolt) !LENQ (in|down) at #", "$1 : $2", phrase.StartsClause},
	{"(lock|pencil|ink|nail|pen|chalk|bolt) (in|down) !LENQ at|to #", "$1 : $2", phrase.StartsClause},
	{"(you|(the (program|computer|screen))) (asked|ask|keep asking|kept asking|are asking|were asking|wanted to know|want to know|wondered) [me|us|about|just now] !((how many|how wide|how high|how tall|how big|what|which)) ", "$1", phrase.StartsClause},
	{"? [well] [,] [so] [the] (answer|answers) (is|'s|are|would be) [simple|easy|simply|just] [:|,]", "?", phrase.AmountNext},
	{", well , the answer (is|'s|would be) [simple|easy|simply|just] [:|,]", "?", phrase.BothHold(asksAhead, phrase.AmountNext)},
	{", [well] [,] [so] [the] (answer|answers) (is|'s|are|would be) [simple|easy|simply|just] [:|,]", "?", phrase.BothHold(asksAhead, phrase.AmountNext)},

	{"what (are|is) !(COUNTQ|POST) [(going to be)|to] [be] [made|cut] [of|from|out of] ? @", "$1 are $2", nil},
	{"@ [stock|lumber|material] (is|are|'s) what !(COUNTQ|POST) (get|take|want|need|((are|will be) getting))", "$2 are $1", noDoubtBefore},
	{"(cut|make|saw|rip|mill|build) !(COUNTQ|POST) (out of|from) @", "$1 are $2", noDoubtBefore},
	{"@ (is|'s) what (i|we) [would|will|'d] (want|like|need) !(COUNTQ|POST) to be [made|cut] [of|from|out of]", "$2 are $1", noDoubtBefore},
	{"^ !(RAIL|STIFF|POST) , go with @", "$1 are $2", nil},
	{"(i|we) (had|would|'d) best !(have|use|make|(go with))", "let us $1", phrase.StartsClause},
	{"(my|our) (vote|pick|choice|preference|call|decision) (is|'s|goes to|would be|(' s))", "i want", phrase.BothHold(phrase.StartsClause, phrase.AmountNext)},
	{"(what|all) (i|we) [really|just] (need|want|require|are after) (here|on this one|for this (wall|one|job)|on this (wall|job)) is", "i want", phrase.AmountNext},
	{"(knock|throw|put|slap|cobble|bang|bolt|nail|hammer) (it|this|her|thing|WALL) together (with|from|out of) # !COUNTQ", "use $1 $2", phrase.StartsClause},
	{"(pop|bung|chuck|whack|slap|sling|plonk|stick) ## !COUNTQ (in|on) [there|here|it|WALL|(this one)|(each bay)]", "use $1 $2", phrase.StartsClause},
	{"(ended|wound) up (deciding|settling|agreeing) on", "settled on", nil},
	{"(mark|put|sign|note|jot) (me|us) down (as|for) (wanting|having|needing|(going with))", "i want", phrase.StartsClause},

	// Limits.
	{"(floor|(lower limit)|(lower bound)) (for|on|of) !LENQ|COUNTQ (is|'s|stands at|will be) #", "$1 at least $2", nil},
	{"(ceiling|(upper limit)|(upper bound)) (for|on|of) !COUNTQ (is|'s|stands at|will be) #", "at most $2 $1", nil},
	{"anything from # up|upward|upwards|(on up)", "at least $1", phrase.BothHold(noDoubtBefore, noFurther)},
	{"# ?, but not a|an|one ?single hair|whisker|inch|smidge|touch|bit|fraction|shade more|over|wider|bigger|higher|longer", "at most $1", noDoubtBefore},
	{"anything (under|below|(less than)|(smaller than)|(lower than)|(shorter than)|(narrower than)|(tighter than)) # (will|would|does) not (do|work|cut it|be enough|fly|suffice|suit (me|us)|pass|do at all) (for|on|in) !LENQ", "$2 at least $1", noDoubtBefore},
	{"anything (over|above|(more than)|(bigger than)|(higher than)|(taller than)|(wider than)|(larger than)) # (will|would|does) not (do|work|cut it|fly|suit (me|us)|pass|do at all) (for|on|in) !LENQ", "$2 at most $1", noDoubtBefore},
	{"anything (under|below|(less than)|(fewer than)) # !COUNTQ (will|would|does) not (do|work|cut it|be enough|fly|suffice|suit (me|us)|pass)", "at least $1 $2", noDoubtBefore},
	{"anything (over|above|(more than)) # !COUNTQ (will|would|does) not (do|work|cut it|fly|suit (me|us)|pass)", "at most $1 $2", noDoubtBefore},
	{"(bigger|greater|more|larger|wider|higher|taller|longer|over) [than] or equal to #", "at least $1", nil},
	{"(smaller|less|lower|narrower|shorter|tighter|under) [than] or equal to #", "at most $1", nil},
	{"# (is|'s) (my|our|the) [upper|absolute|outside] (limit|max|maximum|ceiling|cap) (on|for) !LENQ", "$2 at most $1", noDoubtBefore},
	{"# !COUNTQ (,|;|.) (that|it|this) (is|'s) (my|our) [upper|absolute|outside] (limit|max|maximum|ceiling|cap)", "at most $1 $2", noDoubtBefore},
	{"(i|we) [would|will] draw the line at # !COUNTQ", "at most $1 $2", nil},
	{"(i|we) (would|could|will) (not|never) [ever] [even] (dream of|think of|consider|hear of|countenance) [going|having|using] (fewer|less|under|below) [than] #", "at least $1", nil},
	{"(i|we) (would|could|will) (not|never) [ever] [even] (dream of|think of|consider|hear of|countenance) [going|having|using] (more|over|above) [than] #", "at most $1", nil},
	{"at no (point|time|place) (should|may|must|can|shall) !LENQ [ever] (be|get|go|come) (less|lower|smaller|under|below|narrower|shorter) [than] #", "$1 at least $2", nil},
	{"at no (point|time|place) (should|may|must|can|shall) !LENQ [ever] (be|get|go|come) (more|higher|bigger|over|above|wider|taller) [than] #", "$1 at most $2", nil},
	{"(under|below) or (at|(equal to)|(right at)|(exactly at)) #", "at most $1", nil},
	{"(over|above) or (at|(equal to)|(right at)|(exactly at)) #", "at least $1", nil},
	{"(no|(not any)) more !COUNTQ than ##", "at most $2 $1", nil},
	{"(no|(not any)) (fewer|less) !COUNTQ than ##", "at least $2 $1", nil},
	{"# (is|'s) (as|about as) (small|low|narrow|short|tight|little) as !LENQ (can|may|could|should|must|will) [ever] (be|get|go|come)", "$2 at least $1", noDoubtBefore},
	{"# (is|'s) (as|about as) (big|wide|high|tall|large|long) as !LENQ (can|may|could|should|must|will) [ever] (be|get|go|come)", "$2 at most $1", noDoubtBefore},
	{"(fewest|least|smallest|lowest) [number|count|amount] [of] !COUNTQ [that] (i|we) [will|'ll|would|can|could|shall|am willing to|are willing to|am prepared to|are prepared to] [ever] (put up with|accept|stand for|live with|take|tolerate|allow|settle for|abide|agree to|go with|go for|have|make do with|stand) (is|are|'s|would be) #", "at least $2 $1", noDoubtBefore},
	{"(most|largest|highest|greatest) [number|count|amount] [of] !COUNTQ [that] (i|we) [will|'ll|would|can|could|shall|am willing to|are willing to|am prepared to|are prepared to] [ever] (put up with|accept|stand for|live with|take|tolerate|allow|settle for|abide|agree to|go with|go for|have|stand) (is|are|'s|would be) #", "at most $2 $1", noDoubtBefore},
	{"(do not|never) [you] [ever] let !LENQ [ever] (drop|fall|dip|sink|slip|shrink|creep|slide|get|go|come|end up|wind up) [down|in|out] [to] (below|under|beneath|(less than))", "do not let $1 be under", nil},
	{"(do not|never) [you] [ever] let !LENQ [ever] (rise|climb|creep|grow|slip|go|get|come|stretch|end up|wind up) [up|out] [to] (above|over|past|beyond|(more than))", "do not let $1 be over", nil},
	{"(max|maximum|mx) !(rail|board|slat|stiffener|plank|batten|brace) (count|number|total|tally|qty|quantity) [is|of|:|=] #", "at most $2 $1", nil},
	{"(min|minimum|mn) !(rail|board|slat|stiffener|plank|batten|brace) (count|number|total|tally|qty|quantity) [is|of|:|=] #", "at least $2 $1", nil},
	{"(cap|limit|max) (it|this|that|things|us|everything) [all] [out] (at|to) # !COUNTQ", "at most $1 $2", phrase.StartsClause},
	{"see to it", "make sure", nil},
	{"# at the [very] (outside|most|utmost|widest|highest) (for|on|in) !LENQ", "$2 at most $1", nil},
	{"# at the [very] (least|minimum) (for|on|in) !LENQ", "$2 at least $1", nil},
	{"^ (max|maximum) [allowable|allowed] OPENING [is|:|=] # $", "opening at most $1", nil},
	{"^ (min|minimum) [allowable|allowed] OPENING [is|:|=] # $", "opening at least $1", nil},

	// More and less.
	{"up !LENQ [by] # [more]", "raise $1 by $2", phrase.StartsClause},
	{"plus # (on|onto|to|for) !LENQ [(that) (i|we) (have|have got|got|had)] [now|already|there|right now]", "raise $2 by $1", phrase.StartsClause},
	{"(cheat|nudge|sneak|fudge|ease|inch|kick|jog|tweak) !LENQ (up|out|over) [by|another] #", "raise $1 by $2", nil},
	{"(cheat|nudge|sneak|fudge|ease|inch|kick|jog|tweak) !LENQ (down|in|back) [by|another] #", "reduce $1 by $2", nil},
	{"(took|pulled|yanked) !((one|two|three|another) (RAIL|STIFF)) (out|away)", "took out $1", phrase.SaidBeforeOf(scan.WordSet("if suppose supposing"))},
	{"(cut|trim|scale|dial|pull|knock|bring) !LENQ (back|in) [by] #", "reduce $1 by $2", bidsHereOrWished},
	{"(i|we) (am|are) ## !COUNTQ short , [so] [and] [please] (add|put) (them|those) [in|on]", "add $1 more $2", phrase.StartsClause},
	{"## !COUNTQ too many [there] , [so] [and] [please] (take|pull|drop|lose|leave) (them|those) [out|away|off]", "$1 fewer $2", noDoubtBefore},
	{"^ # more of !LENQ $", "raise $2 by $1", nil},
	{"(slip|squeeze|sneak|tuck|wedge) in ## (more|extra|additional) !COUNTQ", "add $1 more $2", bidsHereOrWished},
	{"(add|put) ## !COUNTQ (to|on top of) (what|those|ones) [that] (is|are|'s|(we have)) [already] [there|here|in|now]", "add $1 more $2", bidsHereOrWished},
	{"((do away with)|(get rid of)|(dispense with)) ## [of] !COUNTQ", "take out $1 $2", bidsHereOrWished},
	{"(want|like) [to] [be] [get] rid of ## [of] !COUNTQ", "want to take out $1 $2", nil},
	{"(i|we) (would|'d) (take|knock|trim|cut|shave) # (off|from) [of] !LENQ , so [please] [let us] (do it|do that|go ahead)", "reduce $2 by $1", phrase.StartsClause},
	{"(i|we) (would|'d) (add|put) # (to|onto|on) !LENQ , so [please] [let us] (do it|do that|go ahead)", "raise $2 by $1", phrase.StartsClause},
	{"(opened|spread|stretched|bumped|widened) !LENQ (up|out) [by|another] #", "raised $1 by $2", nil},
	{"(closed|shut|pulled|squeezed|tightened) !LENQ (up|in|down) [by|another] #", "reduced $1 by $2", nil},
	{"[still|(that is)|(it is)] [just|still] [a] (bit|touch|tad|little|shade|smidgen|too) (mean|tight|small|low|narrow|short|stingy|cramped|snug|skimpy) [,] [that|this|it|still] (.|!|;|,) [so] [please] put [another] # [more] on !LENQ", "raise $2 by $1", nil},
	{"(tack|stick|whack|slap|bung|chuck|pop|lash|throw) # [more|extra] [on] (onto|on to|on|to) !LENQ", "raise $2 by $1", phrase.StartsClause},
	{"(lose|shed|drop|ditch|take|lop|nip|trim|shave|cut|knock|whittle|plane|subtract|deduct) # (from|off|out of|off of) !LENQ", "reduce $2 by $1", bidsHereOrWished},
	{"(go|come|step|move) (up|higher) [by] ## (on|in|with|for) !(rail|board|slat|stiffener|plank|batten|brace) (count|number|total|tally)", "$1 more $2", nil},
	{"(go|come|step|move) (down|lower) [by] ## (on|in|with|for) !(rail|board|slat|stiffener|plank|batten|brace) (count|number|total|tally)", "$1 fewer $2", nil},
	{"(knock|take|shave|pull|drop|cut|lop|strike) ## (off|from|out of|off of) !(rail|board|slat|stiffener|plank|batten|brace) (count|number|total|tally)", "$1 fewer $2", nil},
	{"(add|put|tack|stick) ## (to|onto|on) !(rail|board|slat|stiffener|plank|batten|brace) (count|number|total|tally)", "$1 more $2", nil},
	{"^ !COUNTQ [:|,] (up|raise|increase) [it|them|that] by #", "$2 more $1", nil},
	{"^ !COUNTQ [:|,] (down|lower|reduce|cut|drop) [it|them|that] by #", "$2 fewer $1", nil},
	{"(ditch|bin|lose|axe|scrap|chuck|pull|yank|remove|nix|drop|skip) ## of (the|those|these|them|my|our) !COUNTQ [out|away|again]", "take out $1 $2", nil},
	{"take ## of (the|those|these|them|my|our) !COUNTQ [back] (out|away|off)", "take out $1 $2", nil},
	{"(i|we) (can|could|may|might) [well|easily|just] (spare|lose|do without|live without|manage without) ## of (the|those|these|my|our) !COUNTQ , [so|and] [please] [let us] (get rid of|take out|drop|lose|remove|pull|ditch|take away|leave out) [those|these|them|the] [two|three|one|four|##] [out|away|ones]", "take out $1 $2", nil},
	{"than (what|(the ones)|those|(what you)|(the number)|(however many)) [that] (is|are|'s|there is|there are|we have|i have|you have|we have got|you have got) [got] [in|up|on|down] [there|here|place|it|the plan|the drawing] [right] [now|already|today|currently|at present|at the moment]", "", changeSaid},
	{"from (where|what|how|(the way)) (it|that|they|things|we|she) (is|are|'s|stands|stand|sits|has|have|was) [at] [right] [now|today|currently|already|(at present)|(at the moment)]", "", phrase.BothHold(behindSomething, atClauseEnd)},
	{"!LENQ (is|are|'s) [too] (short|shy|under|small|low|narrow|tight) by # [,|.|;] [so] [and] [please] [just] (make|give|have|get|take) (it|that|them) (that|(by that)|so) [much] (bigger|wider|taller|more|higher|larger|longer|greater|broader|up)", "raise $1 by $2", nil},
	{"!LENQ (is|are|'s) # too (big|wide|tall|high|large|long|much|generous|broad|loose) [,|.|;] [so] [and] [please] [just] (trim|cut|reduce|lower|shrink|drop|take|bring|make|shorten|narrow) (it|that|them) [down|in] (by|(that)) [that|(that much)|(exactly that)|much] [smaller|lower|less|narrower|shorter|tighter|down]", "reduce $1 by $2", nil},
	{"!LENQ (is|are|'s) # too (small|narrow|short|low|tight|little|mean|stingy) [,|.|;] [so] [and] [please] [just] (increase|raise|widen|grow|stretch|lift|bring|make|open) (it|that|them) [up|out] (by|(that)) [that|(that much)|(exactly that)|much] [bigger|higher|more|wider|taller|larger]", "raise $1 by $2", nil},
	{"you know !LENQ (?|,) [well] [,] [please] (make|have|get|set) (that|it) # (greater|bigger|larger|more|wider|taller|higher|longer)", "raise $1 by $2", phrase.StartsClause},
	{"you know !LENQ (?|,) [well] [,] [please] (make|have|get|set) (that|it) # (smaller|less|narrower|shorter|lower|tighter)", "reduce $1 by $2", phrase.StartsClause},
	{"(however|(no matter how)) (big|wide|high|tall|long|large|small|low|tight|much) !LENQ (is|'s|stands|may be|comes out) [right] [now|(at present)|today|(at the moment)] [,] (it|i|we|make|let|have) [will|would|'s] [is|want|us|make|like|have] [it] [to|should|has|needs] [be|to] [be] # (greater|bigger|larger|more|wider|taller|higher|longer)", "raise $1 by $2", nil},
	{"(however|(no matter how)) (big|wide|high|tall|long|large|small|low|tight|much) !LENQ (is|'s|stands|may be|comes out) [right] [now|(at present)|today|(at the moment)] [,] (it|i|we|make|let|have) [will|would|'s] [is|want|us|make|like|have] [it] [to|should|has|needs] [be|to] [be] # (smaller|less|narrower|shorter|lower|tighter)", "reduce $1 by $2", nil},
	{"(whatever|(no matter what)) !LENQ (is|'s|stands at|may be|comes out at|comes to) [right] [now|(at present)|today|(at the moment)] [,] (it|i|we|make|let|have) [will|would|'s] [is|want|us|make|like|have] [it] [to|should|has|needs] [be|to] [be] # (smaller|less|narrower|shorter|lower|tighter)", "reduce $1 by $2", nil},
	{"(whatever|(no matter what)) !LENQ (is|'s|stands at|may be|comes out at|comes to) [right] [now|(at present)|today|(at the moment)] [,] (it|i|we|make|let|have) [will|would|'s] [is|want|us|make|like|have] [it] [to|should|has|needs] [be|to] [be] # (greater|bigger|larger|more|wider|taller|higher|longer)", "raise $1 by $2", nil},
	{"# is what (i|we) [will|would|'d|am|are|want|wish|like] [going] [to] (add|adding|put on|tack on|have added) (to|onto|on) !LENQ [, so [please] (add|do|put|tack) (it|that|so) [on]]", "raise $2 by $1", noDoubtBefore},
	{"# is what (i|we) [will|would|'d|am|are|want|wish|like] [going] [to] (take|taking|have taken|cut|trim|lose|knock|shave) [off] (off|from|of) !LENQ [, so [please] (take|do|knock|cut) (it|that|so) [off]]", "reduce $2 by $1", noDoubtBefore},
	{"it is # that (has|needs|wants|ought|'s got|must) [got] [to] (come|go|be taken|be cut|be trimmed) (off|from|out of|off of) !LENQ", "reduce $2 by $1", nobodySaysSo},
	{"it is # that (has|needs|wants|ought|'s got|must) [got] [to] (go|be added|be put) (on|onto|to) !LENQ", "raise $2 by $1", nobodySaysSo},
	{"(i|we|PERSON) [would] (fancy|fancies|want|wants|like|likes|need|needs) [a] [little|tiny] (bit|touch|smidgen|tad|shade|little) [more|extra] (on|in|of|for) !LENQ , # to be (exact|precise|specific) [, so [please] (go ahead|do it|do that|let us do it|let us do that|make it so)]", "raise $1 by $2", nil},
	{"!LENQ (upped|increased|bumped|boosted|widened|raised|enlarged) [up] by", "$1 raised by", nil},
	{"!LENQ (can|could|may|should|must|will) come (in|out) # (smaller|less|narrower|lower|shorter|tighter)", "reduce $1 by $2", nil},
	{"!LENQ (can|could|may|should|must|will) come (in|out) # (bigger|more|wider|higher|taller|larger)", "raise $1 by $2", nil},
	{"on top of !COUNTQ [that|which] [we|i|you] [are|have|is] [got] (already|there|in|now) [there|here|have|now|in place|got|in] , [i|we] [will|would|'d] [want|need|like|have|add|put in|give] [me|us] # more", "add $2 more $1", nil},
	{"# is|are how many !COUNTQ [that] (i|we) (want|need|would like) (added|to add|put in) [, on top of [the|those|what is|the ones] [that] [are|is] [there|already|already there|we have]]", "add $1 more $2", noDoubtBefore},
}

// changeSaid: something is to be more or less than it is.
var changeSaid = phrase.SaidBeforeOf(scan.WordSet("more less fewer extra bigger smaller wider narrower taller higher lower shorter tighter looser larger"))

// asksAhead: something is asked before it.
var asksAhead = phrase.SaidBeforeOf(scan.WordSet("how what which"))

// bidsHereOrWished: an order begins with it, or a wish: "let us lose", "I want to take".
func bidsHereOrWished(before, after []scan.Atom) bool {
	w := chunk.LastOf(before, 1)
	return phrase.StartsClause(before, after) || w == "us" || w == "please" || w == "to" && chunk.LastOf(before, 2) != "used"
}

// nobodySaysSo: no one else is told to say so behind it.
func nobodySaysSo(_, after []scan.Atom) bool {
	for i := range after {
		if IsOf(after[i].Text, lexicon.Vocab().Ids["SAYS"]) || after[i].Text == "insists" || after[i].Text == "demands" || after[i].Text == "?" {
			return false
		}
	}
	return true
}
