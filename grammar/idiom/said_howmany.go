package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// howManyPhrases are further ways to say how many there are to be, of what size, how few and how many at most, and several of these in one
// breath.
var howManyPhrases = []phrase.Placed{
	// How many.
	{"# for|on|as !(rail|board|slat|stiffener|plank|batten|brace) (count|number|total|tally|quantity)", "$1 $2", noDoubtBefore},
	{"# !COUNTQ is|are|'s [our|my|the|your] [right|final|magic|agreed|lucky|own] (number|figure|count|total|tally|quantity)", "$1 $2", noDoubtBefore},
	{"(what|all) [this|that|my|our] (WALL|it|(this one)|(the job)) [really|just] [(will|is|should|must|shall|has|(is going))] [to] (get|gets|need|needs|want|wants|have|has|take|takes) is|are|'s", "i want", phrase.AmountNext},
	{"!COUNTQ (will|shall|should|must|(are to)|(are going to)|(ought to)|(need to)|(have to)) (total|number|(come to)|(amount to)|(add up to)) #", "$1 : $2", noDoubtBefore},
	{"## in number", "$1", nil},
	{"(it|that|mine|ours|(this (one|WALL))) (is|'s|(will be)|(has to be)|(should be)|(is going to be)|(is to be)) ## !(rail|board|slat|plank) (WALL|job|affair)", "use $1 $2", noDoubtBefore},
	{"^^ (she|he|they|((my|our|the) _)) (says|said|reckons|thinks|figures|feels) [that] (she|he|they|we|i) [(would like)] [want|wants|need|needs|fancies|prefers|(should have)|(should go for)] # !COUNTQ [,] and (i|we) [quite|fully|totally|do|both|would] (agree|concur|(go along with (that|it|her|him|them))) $$", "i want $1 $2", nil},
	{"(write|pencil|sign|chalk|count) (me|us) (in|down|up) (for|as|with)", "i want", phrase.BothHold(phrase.StartsClause, phrase.AmountNext)},
	{"(you|(you all)) (would|had|'d) (best|better) [just] !make|have|use|put|set|keep|take", "please $1", phrase.BothHold(phrase.StartsClause, figureFollows)},
	{"# !COUNTQ (will|would|should|shall) [just|all] (see|suit|serve|do) (me|us|(the job)) [(right|fine|nicely|rightly|grand|well|through|proud|perfectly)]", "$1 $2", noDoubtBefore},
	{"do not [you] [ever] (give|use|put|make|have|bring|build|draw) [me|us] [any|some] other (number|count|amount|quantity) of !COUNTQ (than|but|except) #", "i want $2 $1", phrase.StartsClause},
	{"do not [you] [ever] (give|use|put|make|have|bring|build|draw) [me|us] (any|anything) other than # !COUNTQ", "i want $1 $2", phrase.StartsClause},
	{"^^ (since|because|seeing|as) * !(let us (have|go|make|use|put|do|say|take|keep))", "$1", figureFollows},
	{"^^ (my|our|the|his|her) _ [_] [_] [_] (had|has|have|got) # !COUNTQ , (and|so) (mine|ours|this one|WALL) (will|shall|should|must|(is going to)|(is to)) [have] [(them|that|it|(that many)|(as many)|(the same))] [(too|also|likewise|(as well))] $$", "i want $1 $2", nil},
	{"^^ (my|our|the|his|her) _ [_] [_] [_] (had|has|have|got) # !COUNTQ and (mine|ours|this one|WALL) (will|shall|should|must|(is going to)|(is to)) [have] [(them|that|it|(that many)|(as many)|(the same))] [(too|also|likewise|(as well))] $$", "i want $1 $2", nil},
	{"^^ (my|our|the|his|her) _ [_] [_] [_] (had|has|have|got) # !COUNTQ [,] and so (will|shall|should|must) (mine|ours|this one|WALL) $$", "i want $1 $2", nil},
	{"(all|right|clear|(the whole way)|(the full length)) [the way] (along|across) [the wall|it]", "", behindSomething},
	{"(,|and) [with] [there (is|will be)] no (messing|nonsense|arguing|arguments|mucking|faffing|shenanigans|quibbles|bother|backchat) [about|around] $$", "", figureStands},
	{", (says (i|me)|(i (say|says))) $$", "", figureStands},
	{"set (us|me) up with # !COUNTQ", "use $1 $2", phrase.StartsClause},
	{"there , (boss|chief|friend|mate|pal|captain|squire) $$", "", figureStands},
	{", boss $$", "", figureStands},

	// Of what size.
	{"(framing|cutting|making|sawing|ripping|milling|building|doing|frame) !(COUNTQ|POST) (with|from|(out of)|of|in) @", "$1 are $2", phrase.BothHold(phrase.StartsClause, noDoubtBefore)},
	{"(i|we) (am|are|will) [(going to|be|have been)] (framing|cutting|making|sawing|ripping|milling|building|doing|frame) !(COUNTQ|POST) (with|from|(out of)|of|in) @", "$1 are $2", phrase.BothHold(phrase.StartsClause, noDoubtBefore)},
	{"!(COUNTQ|POST) [will|shall] [all|both] come|comes|coming (in|as) @", "$1 are $2", noDoubtBefore},
	{"!(COUNTQ|POST) (go|goes|stay|stays|remain) [to|at|as] @", "$1 are $2", noDoubtBefore},
	{"(i|we) have [got|bought] (a|some|the|my|our) (stack|pile|load|bunch|lot|heap|few|bundle|lift) [of] @ [that|which] (i|we) (want|mean|plan|intend|(am going)|(are going)|(would like)|like) to (use|have|cut|put|saw) [up|in] (for|as|into) !(COUNTQ|POST)", "use $1 for $2", nil},
	{", (that|which|those) (is|are) what (the|my|our|his|her) _ [_] [just] (delivered|(dropped off)|brought|sent|gave|(turned up with)|left|had|(sent over)|(sent us)|(sold me)|(sold us)|(had in)|(came with)) [me|us] [(today|yesterday|already|(this morning)|(last week)|(on _)|(in stock))] $$", "", figureStands},
	{"[,] [just|the] same as|what|like (my|our|his|her|the) _ [_] (always|ever|usually) (used|had|did|built|made|took|swore by|has|does|uses|makes) [(with|from|it|them|for his|for hers)] $$", "", figureStands},
	{"^^ (the|my|our) _ [_] (only|just) (had|has|have|stocks|stocked|carries|carried|sells|sold) [(me|us)] @ [(left|in|in stock)] , so (that|it|this|those) (is|are|'s) what !(COUNTQ|POST) (will|shall|are|must|(have to)|(are going to)|(will have to)) [be] [(made|cut) (of|from|out of|in)]", "$2 are $1", nil},
	{"what (i|we) have [both|all|now] (picked|chosen|bought|got|ordered|taken|(gone with)|(gone for)|(settled on)|(decided on)) (for|on|as) !(COUNTQ|POST) (is|are|'s) @ [lumber|stock|timber|material|ones]", "$1 are $2", nil},
	{"(could|can) !(COUNTQ|POST) [all|both] (be|(be made)|((go|change) to)) [of|from|in] @ , please", "please make $1 $2", phrase.BothHold(phrase.StartsClause, noDoubtBefore)},

	// No fewer, and no more.
	{"(do not|never) [you] [ever] (drop|dip|fall|sink|slip|come) [down] (below|under|beneath|(less than)|(fewer than)) # !COUNTQ", "at least $1 $2", phrase.StartsClause},
	{"[anything] (less|fewer|under|below|(short of)) [than] # !COUNTQ REFUSED", "at least $1 $2", phrase.BothHold(phrase.StartsClause, notAsked)},
	{"[anything] (less|fewer|under|below|(short of)) [than] # !COUNTQ (is|are|would be|will be) [just|really|far|way] (too (few|little)|(not enough))", "at least $1 $2", phrase.BothHold(phrase.StartsClause, notAsked)},
	{"[anything] (over|above|more|beyond) [than] # !COUNTQ REFUSED", "at most $1 $2", phrase.BothHold(phrase.StartsClause, notAsked)},
	{"[anything] (over|above|more|beyond) [than] # !COUNTQ (is|are|would be|will be) [just|really|far|way] (too (many|much)|overkill)", "at most $1 $2", phrase.BothHold(phrase.StartsClause, notAsked)},
	{"[(i|we)] (will|would|'d) (refuse|reject|(turn down)|(throw out)|(send back)|(say no to)|(not (accept|take|have|hear of|stand for|put up with|tolerate))) (anything|any) (over|above|(more than)) # !COUNTQ", "at most $1 $2", noDoubtBefore},
	{"[(i|we)] (will|would|'d) (refuse|reject|(turn down)|(throw out)|(send back)|(say no to)|(not (accept|take|have|hear of|stand for|put up with|tolerate))) (anything|any) (under|below|(less than)|(fewer than)|(short of)) # !COUNTQ", "at least $1 $2", noDoubtBefore},
	{"anything (less|fewer|under|below|(short of)) [than] # !COUNTQ , (and|or) (i|we|he|she|they|there|((my|our|the) _)) (will|would|shall|am|is|are) [not|never|be] * $$", "at least $1 $2", phrase.StartsClause},
	{"anything (less|fewer|under|below|(short of)) [than] # !COUNTQ (and|or) (i|we|he|she|they|there|((my|our|the) _)) (will|would|shall|am|is|are) [not|never|be] * $$", "at least $1 $2", phrase.StartsClause},
	{"anything (over|above|more) [than] # !COUNTQ [,] (and|or) (i|we|he|she|they|there|((my|our|the) _)) (will|would|shall|am|is|are) [not|never|be] * $$", "at most $1 $2", phrase.StartsClause},
	{"(start|begin) (from|at|with) # !COUNTQ and [do not] [never] (go|come|drop) (no (lower|fewer|less)|lower|below (that|it))", "at least $1 $2", phrase.StartsClause},
	{"(i|we) (would|could|can|will) (not|never) [ever|possibly|really] (live|cope|manage|sleep|rest|(make do)|(be happy)|(be doing)) (with|on) (fewer|less|under) [than] #", "at least $1", nil},
	{"(i|we) (would|could|can|will) (not|never) [ever|possibly|really] (live|cope|manage|(be happy)|(be doing)|deal) with (more|over) [than] #", "at most $1", nil},
	{"# is|'s [about] (least|fewest|smallest|lowest|minimum) [number|count|amount] [of] !COUNTQ [that] (i|we) [will|would|can|could|shall|am willing to|are willing to] [ever] (have|take|accept|allow|want|need|stand|tolerate|go with|settle for|live with|put up with)", "at least $1 $2", noDoubtBefore},
	{"# is|'s [about] (most|highest|largest|greatest|maximum) [number|count|amount] [of] !COUNTQ [that] (i|we) [will|would|can|could|shall|am willing to|are willing to] [ever] (have|take|accept|allow|want|need|stand|tolerate|go with|settle for|live with|put up with)", "at most $1 $2", noDoubtBefore},
	{"# !COUNTQ as (a|an|the|my|our) [bare|absolute|very|strict] (minimum|least|floor)", "at least $1 $2", noDoubtBefore},
	{"# !COUNTQ as (a|an|the|my|our) [bare|absolute|very|strict|upper] (maximum|most|ceiling|limit)", "at most $1 $2", noDoubtBefore},
	{"make (sure|certain) [that] (i|we|it|WALL|there) (get|gets|have|has|(end up with)|(ends up with)|(is|are)) # !COUNTQ at [the] [very] least", "at least $1 $2", phrase.StartsClause},
	{"make (sure|certain) [that] (i|we|it|WALL|there) (get|gets|have|has|(end up with)|(ends up with)|(is|are)) # !COUNTQ at [the] [very] most", "at most $1 $2", phrase.StartsClause},
	{"[,] [as|because|since] there is (no|not) [any] (room|space|place|call|money|use) [left] [(in|on|at) the _] for [any] (more|others|another) $$", "", figureStands},

	// More, and fewer.
	{"## extra !COUNTQ (in|on|into) (there|here|it|WALL|place)", "$1 more $2", noDoubtBefore},
	{"(could|can) (i|we) (do|live|manage) without ## of (the|those|these|my|our) !COUNTQ", "what if we took out $1 $2", phrase.StartsClause},
	{"(pop|bung|chuck|whack|slap|sling|plonk|stick|throw|lob|toss|fling) [in] another ## !COUNTQ [in|on] [there|here|it|WALL|them]", "add $1 more $2", bidsHereOrWished},
	{"on top of !COUNTQ [that|which] (i|we) have [got] [now|already] , (i|we) [will|would|'d] (want|need|like|have|add) another ##", "add $2 more $1", nil},
	{"(i|we) (can|could|may|might) [well|easily|just] (do|live|manage|get by|get along) without ## of (the|those|these|my|our) !COUNTQ", "take out $1 $2", noDoubtBefore},
	{"(it|there|that|WALL|we|i) (has|is|are|have|got) ## !COUNTQ more than (i|we|it) (need|needs|want|wants|like|likes|asked for) [,|.|;] [so|and] [please] (lose|drop|take|pull|leave|cut|remove|ditch|(get rid of)|axe) (them|those) [out|off|away]", "take out $1 $2", phrase.StartsClause},
	{"(it|there|that|WALL|we|i) (has|is|are|have|got) ## more !COUNTQ than (i|we|it) (need|needs|want|wants|like|likes|asked for) [,|.|;] [so|and] [please] (lose|drop|take|pull|leave|cut|remove|ditch|(get rid of)|axe) (them|those) [out|off|away]", "take out $1 $2", phrase.StartsClause},
	{"gain ## !COUNTQ", "add $1 $2", phrase.StartsClause},
	{"gain [a|one|another] !(rail|board|slat|stiffener|plank|batten|brace)", "add one $1", phrase.StartsClause},
	{"(lost|shed|binned|ditched|scrapped|axed) [a|one] !(rail|board|slat|stiffener|plank|batten|brace)", "took out one $1", behindIf},
	{"(lost|shed|binned|ditched|scrapped|axed) ## !COUNTQ", "took out $1 $2", behindIf},
	{"(take|took|taking|pull|pulled|yank|yanked|left) (out|away) a !(rail|board|slat|stiffener|plank|batten|brace)", "took out one $1", behindIf},
	{"(took|pulled|yanked|left) a !(rail|board|slat|stiffener|plank|batten|brace) (out|away)", "took out one $1", behindIf},
	{"(added|(stuck in)|(popped in)|(threw in)) [a|one|another] !(rail|board|slat|stiffener|plank|batten|brace)", "put in one more $1", behindIf},
	{"(cut|trimmed) !LENQ [back|down] to #", "set $1 to $2", behindIf},
	{"this time (round|around|about)", "this time", nil},
	{", (it|that|this|WALL) (is looking|looks|(is (starting|beginning) to look)) [(a bit|just|more|too much)] like (a|an|the|some|my) _ [_] $$", "", figureStands},
	{", (PERSON|((my|our|the) _)) (likes|prefers|loves|wants|fancies) (it|them|things|hers|his) [(nice and|good and|really|very|a bit)] (solid|sturdy|stout|strong|tidy|neat|airy|close|plain|private|beefy|chunky|heavy|light|simple) $$", "", figureStands},

	// What is chosen, and what is taken back.
	{"(i|we) [all|both] (liked|like|preferred|prefer|fancied|fancy) [the] option !(one|two|three|four|1|2|3|4) [the] (best|most|better) [,|;|.] [so] [please] (go with|use|do|take|pick|have|(let us (have|go with|do|take))) (that|it) [one]", "take option $1", phrase.StartsClause},
	{"option !(one|two|three|four|1|2|3|4) (has it|gets it|wins|(gets (my|our) (vote|nod)))", "take option $1", noDoubtBefore},
	{"let us (have|put|get) (it|that|everything|things) back [to] (the way|how|as|like) (it|that|they|things|everything) (was|were) [before|just now|(a moment ago)|(a minute ago)] $$", "undo that", phrase.StartsClause},

	// Several in one breath.
	{"neither !LENQ nor !LENQ (may|can|could|should|must|(is to)|(are to)|will|shall|(is allowed to)|is|are) [ever] [be|go|get|come|run|measure] (over|above|past|beyond|((more|bigger|higher|wider|larger) than)) #", "$1 at most $3 and $2 at most $3", nil},
	{"neither !LENQ nor !LENQ (may|can|could|should|must|(is to)|(are to)|will|shall|(is allowed to)|is|are) [ever] [be|go|get|come|drop|fall|measure] (under|below|((less|smaller|lower|narrower) than)) #", "$1 at least $3 and $2 at least $3", nil},
	{"^ !LENQ and !LENQ [(are|is|at|should be|must be|will be|to be|shall be|want to be)] (both|each) [be|at] #", "$1 $3 and $2 $3", notAsked},
	{"both !LENQ and !LENQ (are|is|at|(should be)|(must be)|(will be)|(to be)|(shall be)|(want to be)|to) #", "$1 $3 and $2 $3", notAsked},
	{"make !LENQ and !LENQ [both] [the] (same|alike|equal) [,|:|at|--|-] #", "$1 $3 and $2 $3", notAsked},
	{"do not want !LENQ (over|above|past|((more|bigger|higher|wider) than)) # (or|nor|and) !LENQ (over|above|past|((more|bigger|higher|wider) than)) #", "want $1 at most $2 and $3 at most $4", notAsked},
	{"do not want !LENQ (under|below|((less|smaller|lower|narrower) than)) # (or|nor|and) !LENQ (under|below|((less|smaller|lower|narrower) than)) #", "want $1 at least $2 and $3 at least $4", notAsked},
	{"(make|have|get|keep|do) (them|they|those) [all|both] [be] [the] (one|same|equal) (width|size)", "keep bays equal", phrase.SaidBeforeOf(scan.WordSet("bay bays"))},
	{"(add|(put in)|(stick in)|(throw in)) [one|another|a] !(rail|board|slat|stiffener|plank|batten|brace) (and|plus|(as well as)) [one|another|a] !(rail|board|slat|stiffener|plank|batten|brace)", "add one $1 and add one $2", phrase.BothHold(bidsHereOrWished, closesClause)},
	{"(take|pull|leave) !(one|a|two|three|four|2|3|4) !RAIL|STIFF (and|plus) !(one|a|two|three|four|1|2|3|4) !RAIL|STIFF out|off|away", "take out $1 $2 and take out $3 $4", bidsHereOrWished},
	{"(drop|lose|remove|ditch|(take (away|out|off))|(leave out)) [one|a] !(rail|board|slat|stiffener|plank|batten|brace) (and|plus|(as well as)) [one|a] !(rail|board|slat|stiffener|plank|batten|brace)", "take out one $1 and take out one $2", phrase.BothHold(bidsHereOrWished, closesClause)},
	{"take # (off|from|(out of)|(off of)) !LENQ and (give|put|add|move|shift|stick) (it|that|them) (to|on|onto|into|in) !LENQ", "reduce $2 by $1 and raise $3 by $1", phrase.StartsClause},
	{"(pull|yank|skip|nix|axe|ditch|bin|scrap) [a|one] !(rail|board|slat|stiffener|plank|batten|brace) and", "take out one $1 and", bidsHereOrWished},
	{"and !(COUNTQ|LENQ) (up|down) to #", "and $1 at $2", phrase.SaidBeforeOf(scan.WordSet("bump raise bring take push move bumped raised brought"))},
	{"^^ (besides|(along with)|(as well as)|(together with)) # !COUNTQ [,] !(i (want|need|(would like)|will)|we (want|need|(would like)|will)|(give (me|us))|(let us)|please)", "$1 $2 and $3", notAsked},
	{"^^ not (only|just) # !COUNTQ [,] but [also] # !COUNTQ", "$1 $2 and $3 $4", notAsked},
	{"^^ (besides|(along with)|(as well as)|(on top of)|(in addition to)) (that|this|those) [,] !(i|we|give|let|make|put|set|please)", "$1", figureFollows},
	{"^^ first # !COUNTQ", "$1 $2", notAsked},
	{"both !(COUNTQ|POST) and !(COUNTQ|POST) (are|in|from|(out of)|(should be)|(to be)|(will be)) @", "$1 are $3 and $2 are $3", noDoubtBefore},
	{"^ !(COUNTQ|POST) and !(COUNTQ|POST) [are|(should be)|(will be)] both [are|in|from|(to be)|(out of)] @", "$1 are $3 and $2 are $3", noDoubtBefore},
	{"use @ for both !(COUNTQ|POST) and !(COUNTQ|POST)", "$2 are $1 and $3 are $1", phrase.StartsClause},
	{"# !COUNTQ (plus|(as well as)|(along with)|(together with)) # !COUNTQ", "$1 $2 and $3 $4", noDoubtBefore},
	{"(stack|pile) (ME|it|them|WALL) !(three|four|five|six|seven|eight|nine) high", "use $1 rails", phrase.StartsClause},
	{"!COUNTQ [,] and (drop|go|come|cut|step|get) [back] [down|up] (to|with) # [of] (them|those)", "$1 and $2 $1", noDoubtBefore},
	{"# !COUNTQ with # (under|beneath|below) (them|(it all)|(the lot)|((bottom|lowest) (one|RAIL)))", "$1 $2 and bottom gap $3", noDoubtBefore},
	{"(start|begin) # (off|above|(up from)|from) FLOOR (and|then) (go|run|come|stack|build) [on] [up] # !COUNTQ", "bottom gap $1 and $2 $3", phrase.StartsClause},
	{"# with !LENQ at #", "$1 and $2 at $3", phrase.SaidBeforeOf(scan.WordSet("gap gaps height wall opening width spacing"))},
	{"^^ [(i|we)] [(need|want|have|got|make)] [just] (two|three|four|(a couple of)|(a few)) [more|small|quick|little] (things|changes|tweaks|points|requests) [for you|please|then|here] (:|,|.|;|-|--)", "", figureFollows},
	{"^^ (first|firstly) [off|up|thing|of all] ,", "", figureFollows},
	{"^^ first (off|(of all)|up) !((#|@) COUNTQ)", "$1", nil},
	{", [and] (second|secondly) [off|up|thing] [,]", ", and", nowSubject},
	{", [and] (second|secondly|third|thirdly) [off|up|thing] ,", ", and", figureFollows},
}

// behindIf: something is tried before it.
var behindIf = phrase.SaidBeforeOf(scan.WordSet("if suppose supposing"))

// closesClause: a clause ends with it, or goes on with another order.
func closesClause(_, after []scan.Atom) bool {
	return chunk.EndsPart(after, 0) || after[0].Text == "so" || after[0].Text == "and" || after[0].Text == "but"
}

// notAsked: no question mark closes it.
func notAsked(_, after []scan.Atom) bool { return !asksAtEnd(after) }

// nowSubject: the subject of another sentence follows, with its article.
func nowSubject(_, after []scan.Atom) bool {
	return len(after) > 2 && (after[0].Text == "the" || lex.Owned[after[0].Text] || lex.Speakers[after[0].Text]) && figureFollows(nil, after)
}
