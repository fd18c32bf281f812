package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What people say in one breath: a correction of what is asked, ordered or named, a change that leans on what stands, an order with a
// wish behind it, and one claim that goes on about the same piece. Common ways of speech, no source.

// Pieces of the phrases below. oneFix is how somebody takes back the word just said; oneThing is anything that has a size.
const (
	oneFix   = `(,|;|.|-|--) [oh|er|uh|um|hm|hmm|ah|oops|whoops|well|actually] [,] (no|nope|nah|wait|sorry|actually|rather|er|uh|um|oops|whoops|(no [,] (wait|sorry|actually|rather|((i|we) (mean|meant))))|(sorry [,] (no|((i|we) (mean|meant))))|(wait [,] no)|((i|we) (mean|meant))|(scratch (that|it))|(strike that)|(make that)|(or rather)|correction) [,|:]`
	oneThing = `(LENQ|[the|my] (budget|kerf|spare|drop|trim|fit|tape|(bracket (clearance|ear|reach|thickness))|(base height)|(rail face)|(overall [width|length])))`
	oneTable = `([the|my|a] (((cut|cutting|shopping|material|materials) list)|cuts|marks|drawing|sketch|steps|cost|price|layout|options|cautions|total))`
	oneLower = `lower|drop|reduce|decrease|shrink|narrow|tighten|shorten`
	oneRaise = `raise|lift|increase|widen|enlarge|lengthen|heighten`
	onePlace = `north|south|east|west|front|back|left|right|side|garden|street|upper|lower`
	lenNames = `(LENQ|(bottom gap)|(space (at|below|under) [the] (bottom|(lowest|bottom) RAIL))|(gap (at|below|under) [the] (bottom|(lowest|bottom) RAIL)))`
	oneNth   = `first|second|third|fourth|fifth|sixth|seventh|eighth`
	oneThan  = `[than (i|we|it) (said|told|gave|had|mentioned|have|put|wrote) [you|it|down] [before|earlier|first|at first]]`
)

var onebreathTurns = []phrase.Placed{
	// One value for two: "the gap is 3 and so is the bottom gap", "gap 3, bottom gap as well".
	{"!" + lenNames + " is|are|be|stays|measures|at # ?, and so is|are|does|should|must|will ?be ?the|my !" + lenNames, "$1 is $2 and $3 is $2", breathEnds},
	{"!" + lenNames + " ?is|are|be|at|= # ?, ?and the|my !" + lenNames + " ?is|be as well|also|likewise|(the same)|(just the same)", "$1 is $2 and $3 is $2", breathEnds},
	{"!" + lenNames + " ?is|are|be|at|= # ?, ?and !" + lenNames + " ?is|be as well|also|likewise|(the same)|(just the same)", "$1 is $2 and $3 is $2", breathEnds},
	// What is asked for is corrected.
	{"what is|'s " + oneThing + " " + oneFix + " [what is|'s] !" + oneThing, "what is $1", breathEnds},
	{"how (big|wide|high|tall|much|long) is " + oneThing + " " + oneFix + " [(how (big|wide|high|tall|much|long) is)] !" + oneThing, "what is $1", breathEnds},
	{"why is " + oneThing + " [(what|the way) it is] " + oneFix + " [why is] !" + oneThing + " [,] [(what|the way) it is]", "why is $1 what it is", breathEnds},
	{"show|give|tell|read|print me|us " + oneTable + " " + oneFix + " [show|give] [me|us] !" + oneTable, "show me $1", breathEnds},
	{"forget|scratch|drop|clear|erase " + oneThing + " " + oneFix + " [forget|scratch|drop|clear|erase] !" + oneThing, "forget $1", breathEnds},
	// One order in the place of another.
	{"^ undo [that|it|(the last (one|thing|bit|change))] " + oneFix + " [no] [actually] [,] [let us] [just] !((start (over|again|fresh|afresh|anew))|(scrap the lot)|(redo [it|that])|(bring it back))", "$1", breathEnds},
	{"^ !save|file|store|keep|open [it|this] [as] _ [_] " + oneFix + " as !(_ [_])", "$1 it as $2", phrase.EndsLine},
	{"^ save|file|store|keep ?it|this as|under _ [_] " + oneFix + " save|file|store|keep ?it|this as|under", "save it as", nil},
	// A change goes the other way after all.
	{"^ [please] (bring|move|take|put|nudge|let|push|pull|shift|bump|raise|drop|lower|lift|make|set) !" + oneThing + " [up|down] [by] # [higher|lower|taller|shorter|bigger|smaller|wider|narrower] " + oneFix + " [(bring|move|take|push|pull|nudge|bump) [it|that]] up [by] #", "raise $1 by $3", nil},
	{"^ [please] (bring|move|take|put|nudge|let|push|pull|shift|bump|raise|drop|lower|lift|make|set) !" + oneThing + " [up|down] [by] # [higher|lower|taller|shorter|bigger|smaller|wider|narrower] " + oneFix + " [(bring|move|take|push|pull|nudge|bump) [it|that]] down [by] #", "reduce $1 by $3", nil},
	{"^ [please] (bring|move|take|put|nudge|let|push|pull|shift|bump) !" + oneThing + " down [by] # " + oneFix + " up", "raise $1 by $2", breathEnds},
	{"^ [please] (bring|move|take|put|nudge|let|push|pull|shift|bump) !" + oneThing + " up [by] # " + oneFix + " down", "reduce $1 by $2", breathEnds},
	{"^ [please] (" + oneLower + ") !" + oneThing + " [by] # " + oneFix + " (" + oneRaise + ") (it|that) [by] #", "raise $1 by $3", nil},
	{"^ [please] (" + oneRaise + ") !" + oneThing + " [by] # " + oneFix + " (" + oneLower + ") (it|that) [by] #", "reduce $1 by $3", nil},
	{"^ [please] lower the GAP [by] #", "reduce the gap by $1", breathEnds},
	{"^ [please] (add|put [in|on]) a|one|another RAIL " + oneFix + " (take|pull|leave|lose|drop) [out] a|one [RAIL] [out|off|away]", "take out one rail", breathEnds},
	{"^ [please] (take|pull|leave|lose|drop) [out] a|one RAIL [out|off|away] " + oneFix + " (add|put [in|on]) a|one|another [RAIL] [in|on]", "add one rail", breathEnds},
	{"# over|above|past|(higher than)|(taller than) [top of] WALL " + oneFix + " # under|below|beneath|(shorter than)|(lower than) [top of] [WALL|it]", "$2 lower than the wall", postBefore},
	{"# under|below|beneath|(shorter than)|(lower than) [top of] WALL " + oneFix + " # over|above|past|(higher than)|(taller than) [top of] [WALL|it]", "$2 higher than the wall", postBefore},
	{"# over|above|past|(higher than)|(taller than) [top of] WALL " + oneFix + " under|below|beneath [top of] [WALL|it]", "$1 lower than the wall", postBefore},
	{"!((added|new|extra) post) is|'s # under|below|beneath [top of] wall", "$1 is $2 lower than the wall", breathEnds},
	// Between which points something was measured.
	{"# (face to face)|(center|centre to center|centre)|(outside to outside)|(out to out) " + oneFix + " !((face to face)|(center|centre to center|centre)|(outside to outside)|(out to out))", "$1 $2", nil},
	{"# , no that|it is|'s !((face to face)|(center|centre to center|centre)|(outside to outside))", "$1 $2", nil},
	// Which bay, which board, which edge, which wall.
	{"^ [and|so] !top|bottom of bay ## " + oneFix + " [(top|bottom) of] bay ## [,]", "$1 of bay $3", figureToCome},
	{"^^ @ " + oneFix + " @ !are|is", "$2 $3", figureToCome},
	{"^ [and|so] bay ## " + oneFix + " bay ## [,]", "bay $2", figureToCome},
	{"^ [and|so] rail|board ## (in|of) bay ## " + oneFix + " rail|board ## [,]", "rail $3 in bay $2", figureToCome},
	{"^ [and|so] rail|board ## " + oneFix + " rail|board ## [,]", "rail $2", figureToCome},
	{"^ [and|so] (" + oneNth + ") rail|board (in|of) bay ## " + oneFix + " !(" + oneNth + ") rail|board|one [,]", "$2 rail in bay $1", figureToCome},
	{"^ [and|so] (" + oneNth + ") rail|board " + oneFix + " !(" + oneNth + ") rail|board|one [,]", "$1 rail", figureToCome},
	{"^ [and|so] bay ## (top|bottom) " + oneFix + " !top|bottom [,]", "bay $1 $2", figureToCome},
	{"^ [and|so] [on] (" + onePlace + ") !wall|side " + oneFix + " [on] !(" + onePlace + ") wall|side [,]", "on the $2 $1 ,", nil},
	{"^ " + oneThing + " " + oneFix + " !" + oneThing + " , !is|are|should|must|has|needs|'s", "$1 $2", nil},
	{"## -|to ## !COUNTQ " + oneFix + " ## -|to ## [COUNTQ]", "$4 to $5 $3", nil},
	// What stands is changed.
	{"!half|twice|double|triple [of|as (much|big|wide) as] what|that is|'s between RAIL", "$1 the gap", nil},
	{"!half|twice|double|triple [of|as (much|big|wide) as] (space|room|distance|daylight|air) between [the] RAIL", "$1 the gap", nil},
	{"!half|twice|double|triple [of|as (much|big|wide) as] what it is at|by|(down (at|by)) FLOOR|bottom", "$1 the bottom gap", nil},
	{"(space|room|daylight|air) [down|left|right|open] (at|by|near|(next to)) FLOOR", "the bottom gap", nil},
	{"EARTH (beyond|past|behind|outside|(on the other side of)|(out there)|(over there)|(on the far side)|(on the other side)|beyond) [WALL] is|'s # lower|deeper|(further down)|(farther down) than i|we|it said|told|gave|had|mentioned ?you ?it", "raise the drop by $1", nil},
	{"EARTH (beyond|past|behind|outside|(on the other side of)|(out there)|(over there)|(on the far side)|(on the other side)) [WALL] is|'s # higher than i|we|it said|told|gave|had|mentioned ?you ?it", "reduce the drop by $1", nil},
	{"(raise|lift|bring|jack|set|put|move) !([the] base [of [the] [added|new|extra] post]) [up] (another|(a further)|(an extra)) # [higher|up] [off|from|above] [FLOOR]", "raise the base height by $2", nil},
	{"(raise|lift|bring|jack|set|put|move) !([the] base [of [the] [added|new|extra] post]) [up] # (more|further|higher|farther) [up] [off|from|above] [FLOOR]", "raise the base height by $2", nil},
	{"post base|bases should|must|has|needs|ought|could ?to be|sit|stand # (more|further|higher|farther) [up] [off|from|above] [FLOOR]", "raise the base height by $1", nil},
	{"?start|begin|put|set|place OPENING ?should|must|will ?start|starts|begin|begins|sit|sits|be|is twice as far from !left|right ?end ?post as ?it ?is from ?the !left|right ?end ?post", "opening from $1 is twice opening from $2", nil},
	{"add|put # to|on|onto !" + oneThing + " ,|and ?then take|knock|trim|cut|shave # off|from|(out of)|(off of) !" + oneThing, "raise $2 by $1 . reduce $4 by $3", nil},
	{"add|put # to|on|onto !" + oneThing + " ,|and ?then take|knock|trim|cut|shave # off|from|(out of)|(off of) bay ##", "raise $2 by $1 . make bay $4 narrower by $3", nil},
	{"take|knock|trim|cut|shave # off|from|(out of)|(off of) !" + oneThing + " ,|and ?then add|put # to|on|onto !" + oneThing, "reduce $2 by $1 . raise $4 by $3", nil},
	{"take|knock|trim|cut|shave # off|from|(out of)|(off of) !" + oneThing + " ,|and ?then add|put it|them|that to|on|onto|into !" + oneThing, "reduce $2 by $1 . raise $3 by $1", nil},
	{"add|put # to|on|onto !" + oneThing + " ,|and # to|on|onto !" + oneThing, "raise $2 by $1 . raise $4 by $3", nil},
	{"take|knock|trim|cut|shave # off|from !" + oneThing + " ,|and # off|from !" + oneThing, "reduce $2 by $1 . reduce $4 by $3", nil},
	{"^ [please] (take|pull|drop|lose|remove) [out] [one] stiffener|brace|batten|strut [out|off|away] (of|from|in|off) bay ##", "one less stiffener in bay $1", nil},
	{"^ [please] (take|pull|drop|lose|remove) [out] !two|three STIFF [out|off|away] (of|from|in|off) bay ##", "$1 less stiffeners in bay $2", nil},
	{"^ [please] (take|pull|drop|lose|remove) [out] [one] stiffener|brace|batten|strut [out|off|away] (of|from|in|off) each|every bay", "one less stiffener", nil},
	{"^ [please] (add|put|stick|set) another STIFF ?in to|in|into|on bay ##", "one more stiffener in bay $1", nil},
	{"^ [please] (add|put|stick|set) !one|two|three ?more|extra STIFF ?in to|into bay ##", "$1 more stiffeners in bay $2", nil},
	{"^ [please] (stick|put|set|add|stand) (one more)|another post ?in ?in between ?end posts", "one more added post", nil},
	{"give BRACKET # more clearance|room", "raise the bracket clearance by $1", nil},
	{"give BRACKET # less clearance|room", "reduce the bracket clearance by $1", nil},
	{"they|brackets are ?a ?all ?actually # thicker " + oneThan, "raise the bracket thickness by $1", bracketsTold},
	{"they|brackets are ?a ?all ?actually # thinner " + oneThan, "reduce the bracket thickness by $1", bracketsTold},
	{"brackets are ?all ?actually !twice|(three times)|half as thick as i|we said|told|gave|had|mentioned ?you", "make the bracket thickness $1 as much", nil},
	{"boards|rails|slats|planks are|were ?all ?actually ?really # wider than i|we said|told|gave|had|mentioned ?you", "raise the rail face by $1", nil},
	{"boards|rails|slats|planks are|were ?all ?actually ?really # narrower than i|we said|told|gave|had|mentioned ?you", "reduce the rail face by $1", nil},
	{"bring|move|put|pull|set|push ?all STIFF # farther|further|wider ?apart", "space the stiffeners $1 farther apart", nil},
	{"bring|move|put|pull|set|push ?all STIFF # closer|nearer ?together", "space the stiffeners $1 closer together", nil},
	{"take|trim|knock|shave|cut another !sixteenth|eighth|quarter|half ?inch off|from", "take a $1 inch more off", nil},
	// Undone, and begun again with something kept.
	{"^ ?please start|begin again|over|fresh|anew|afresh ,|;|-|but|and|only ?but|and ?just|only keep|leave|hold !(" + oneThing + "|[the|my] (posts|boards|rails|stiffeners|brackets|opening|prices|measurements))", "forget everything but $1", phrase.EndsLine},
	{"pull|bring|get|fetch|call|load the one|plan|wall|job ?that i|we called|named|saved|(saved as)|(filed as) !_ ?back up|in|out", "open $1", nil},
	{"pull|bring|get|fetch|call|load the one|plan|wall|job ?that i|we called|named|saved|(saved as)|(filed as) !(_ _) back ?up", "open the plan called $1", nil},
	{"tell me everything you have ?got", "recap", breathEnds},
	{"sum up|over what you have ?got|heard|noted ?so ?far from me|us ?so ?far", "recap", nil},
	{"what you have got|heard|noted from me|us", "what you have got", nil},
	{"draw the thing|lot|whole", "draw it", nil},
	{"more|bigger|wider|larger than ?(what|that) ?is between RAIL", "more than the gap", figuresBefore},
	{"less|smaller|narrower than ?(what|that) ?is between RAIL", "less than the gap", figuresBefore},
	{"read ?me numbers|figures|everything back", "recap", nil},
	{"read me back what|everything i|we ?have said|told ?you", "recap", nil},
	{"is there something|anything ?else i|we need|have|ought|should|must ?to watch|look for|(out for)", ". what should i be careful of ?", nil},
	{"what|who are you ?anyway|exactly|even ?\\? !what|how|where", "help . $1", nil},
	{"though $$", "", phrase.SaidBeforeOf(scan.WordSet("want need like"))},
	// Words that lean on the piece just spoken of.
	{"?and|, make it|them a|an @", ", stiffener size $1", ofStiffeners},
	{"?and|, call|calls|called|makes it|them ?a|an @", ", stiffener size $1", ofStiffeners},
	{"?and|, keep|put|puts|has|hold|space them|those !(no more than)|(at most)|(not over)|(under)|(at least) # apart", ", stiffener spacing $1 $2", ofStiffeners},
	{"?and|, calls|called|makes|has it|them|those ?a|an @", ", rail size $1", ofBoards},
	{"?and|, puts|sets|spaces|has|sets|holds them|those # apart", ", gap $1", ofBoards},
	{"two|2 OPENING|(walk throughs)|(walk - throughs) ?: ?, one on|at|to !left|right ?, ?and ?the one|other ?one on|at|to !left|right ?, ?and ?both # ?wide each|apiece|both", "two openings , opening one on the $1 , opening two on the $2 , each opening $3 wide", nil},
	{"# off|from|above FLOOR to|for|till|until !LOWEST|first RAIL", ", bottom gap $1 ,", figureAlone},
	{"lose|shed|drop|ditch a|one !board|rail|slat|plank", "take out one $1", bidsHereOrWished},
	{"lose|shed|drop|ditch a|one !board|rail|slat|plank", ", take out one $1", behindAmount},
	{"take|leave out|off|away a !board|rail|slat|plank", "take out one $1", bidsHereOrWished},
	{"add|(put in)|(put on)|(throw in) a !board|rail|slat|plank", "add one $1", bidsHereOrWished},
	{"add|(put in)|(put on)|(throw in) a|one|another !board|rail|slat|plank|post|stiffener", ", add one $1", behindAmount},
	{"how tall|high is|does it|that ?come ?out", "how high is the wall", ofWholeWall},
	{"lose|drop|pull|shed !a|one|two RAIL !what|how|where|who|show|draw|give", "take out $1 rail , $2", nil},
	{"add|allow|figure|throw ?in !(# percent)|(# %)|(## percent)|(ten percent)|(five percent)|(fifteen percent)|(eight percent)|(twenty percent) ?extra|more", "spare $1 ,", sawTalk},
	{"scratch|forget|drop|scrap|lose !GAP|OPENING|BAY|(WALL HEIGHT) ,|and|; ?and let us say # on|for !LENQ", "forget the $1 , make $3 $2", nil},
	{"what|(how much) do|does|did|will|would ?my|these|all bays come ?out to|at", "how wide are the bays", nil},
	{"and|, ?then what|(how much) do|does|will|would it|that|this|everything ?all come ?out to", ". what does it cost", boughtBefore},
	{"!LENQ i|we do not care ?, ?about ?just whatever it comes ?out ?to|at|(ends up)", "", nil},
	// Claims in a breath.
	{", ?and is|are that|those|they|this ?really where they|those|it belong|go|goes|belongs|(should go)|(ought to go)|(need to go)", ", is that right ?", figuresBefore},
	{"!brackets|hangers hit|touch|meet|clash|bump ?into ?each ?other|(one another) below|under|(at less than)|(closer than) #", "$1 need a bracket clearance of $2", claimedSo},
	{"has|have|had ?got ?the|that bay !one|two|three|four|five|1|2|3|4|5 ?('s) rails|boards ?down|noted ?as cut|sawn ?down ?at|to", "has bay $1 cut at", nil},
	{", i|we ?only ?just ?have taped|measured|get|got|find|found ?it ?at #", ", my tape says $1", claimedSpan},
	{"# ctr to ctr", "$1 center to center", nil},
	{"^ ?so he|she|they has|have|had|puts|gets # center to center ,", "he says center to center is $1 ,", nil},
	{"note|tag|label|sign|paper|card stuck|pinned|taped|nailed|left|hanging|hung on|to|at|by ?the post|wall|fence|door", "note", figureToCome},
	{"^ ?the|a note|tag|label|card ?('s) on|at ?the post reads|says|gives", "the note says", figureToCome},
	{"^^ his|her|their|PERSON ?('s) ?own numbers|figures|sizes|measurements ,|:|;|- ?please verify|check ?them|those|these ?please :|,|-|;", "verify :", figureToCome},
	{"^^ ?please verify|check his|her|their ?own numbers|figures|sizes|measurements ?please :|,|-|;", "verify :", figureToCome},
	{", ?so ?and which ?one ?(of (them|these|those|(the (two|pair)))) has|got|have|is|'s it|right|correct ?right|correct ?then", ", who is right ?", figuresBefore},
	{"previous|former|last owner|owners 's|' plan|drawing|sketch|sheet", "old plan", nil},
	{"whatsoever|(of any kind)|(of any sort)|(at all)", "", noneBefore},
	// Words of the trade as they are typed.
	{"at rn", "right now", nil},
	{"rite", "right", nil},
	{"!inch|inches and a half wall", "$1 and a half , wall", figureToCome},
	{"## and a half wall", "$1 and a half , wall", figureToCome},
	{"!(## inches) high|tall posts @", "the wall is $1 high , posts are $3", nil},
	{"how many ?will|would|do|can|could fit|(go in) ?in ?there", "how many rails", phrase.BothHold(ofRails, breathEnds)},
	{"and then !draw|sketch|show|give|print|save", "and $1", nil},
	{"some|a|this !PERSON !told|tells me|us", "the $1 $2 me", nil},
	{"open ?up the one ?that|which ?i|we|is ?have called|named|saved ?as !(_ [gate|side|wall|porch|deck|yard]) , !what|how|draw|show|give|where", "open the plan called $1 . $2", nil},
	{"open ?up ?the ?one|plan ?called !(_ gate|side|wall|porch|deck|yard) !what|how|draw|show|give|where", "open the plan called $1 . $2", nil},
	{"idc ?which|what|(how many)|(which one)", "", breathEnds},
	{"floors # !lower|higher|down|up|low|high", "floor is $1 $2", nil},
	{"?the ## ?nd|rd|th|st option|choice|suggestion ?please", "take option $1", alone},
	{"?the 1st option|choice|suggestion ?please", "take option 1", alone},
	{"?the 2nd option|choice|suggestion ?please", "take option 2", alone},
	{"?the 3rd option|choice|suggestion ?please", "take option 3", alone},
	{"dorway|doorwy|dorwy|dooorway", "doorway", nil},
	{"waht|wat", "what", nil},
}

// breathEnds: what was said is over here, or goes on with something else.
func breathEnds(_, after []scan.Atom) bool {
	return chunk.EndsPart(after, 0) || after[0].Text == "and" || after[0].Text == "but" || after[0].Text == "so" || after[0].Text == "then"
}

// ofRails: a figure was told, and none of other pieces that may be counted.
func ofRails(before, _ []scan.Atom) bool {
	return chunk.Figured(before) && !phrase.SaidBeforeOf(scan.WordSet("opening openings doorway doorways post posts stiffener stiffeners bay bays bracket brackets"))(before, nil)
}

// figureAlone: the figure is no end of a range.
func figureAlone(before, _ []scan.Atom) bool {
	w := chunk.LastOf(before, 1)
	return w != "and" && w != "to" && w != "or" && w != "-" && w != "than" && !phrase.SaidBeforeOf(scan.WordSet("between"))(before, nil)
}

// postBefore: an added post was spoken of before.
var postBefore = phrase.SaidBeforeOf(scan.WordSet("post posts"))

// ofWholeWall: the gap or the rails were spoken of last, and neither of them is high.
func ofWholeWall(before, _ []scan.Atom) bool {
	return !phrase.SaidBeforeOf(scan.WordSet("post posts bottom lowest under drop floor slab ground"))(before, nil) && (lastPiece(before) == 'r' || phrase.SaidBeforeOf(scan.WordSet("gap gaps"))(before, nil)) && !phrase.SaidBeforeOf(scan.WordSet("opening doorway"))(before, nil)
}

// behindAmount: so much of something was told right before it.
func behindAmount(before, _ []scan.Atom) bool {
	return len(before) > 0 && (before[len(before)-1].Kind == scan.Digits || figureEnds[chunk.LastOf(before, 1)])
}

// figureEnds are words that a change of a size ends in.
var figureEnds = scan.WordSet("inch inches half quarter eighth sixteenth feet foot wider taller higher lower narrower bigger smaller")

// bracketsTold: the brackets are spoken of.
func bracketsTold(before, after []scan.Atom) bool {
	return len(before) == 0 || phrase.SaidBeforeOf(scan.WordSet("bracket brackets hanger hangers"))(before, after)
}

// ofStiffeners: stiffeners were spoken of last.
func ofStiffeners(before, _ []scan.Atom) bool { return lastPiece(before) == 's' }

// ofBoards: rails were spoken of last.
func ofBoards(before, _ []scan.Atom) bool { return lastPiece(before) == 'r' }

// lastPiece is the kind of piece that was spoken of last: stiffeners, rails, or another.
func lastPiece(before []scan.Atom) byte {
	for i := len(before) - 1; i >= 0; i-- {
		switch w := before[i].Text; {
		case chunk.IsClass(w, "STIFF"):
			return 's'
		case chunk.IsClass(w, "RAIL"):
			return 'r'
		case chunk.IsClass(w, "POST"), chunk.IsClass(w, "BRACKET"), chunk.IsClass(w, "OPENING"), chunk.IsClass(w, "WALL"):
			return 'o'
		}
	}
	return 0
}

// sawTalk: the saw or what is bought was spoken of before.
var sawTalk = phrase.SaidBeforeOf(scan.WordSet("blade kerf saw waste shopping lumber buy"))

// boughtBefore: it is asked before what to buy.
var boughtBefore = phrase.SaidBeforeOf(scan.WordSet("buy shopping purchase"))

// claimedSo: somebody says so.
func claimedSo(before, _ []scan.Atom) bool {
	for i := range before {
		if IsOf(before[i].Text, lexicon.Vocab().Ids["SAYS"]) {
			return true
		}
	}
	return false
}

// claimedSpan: somebody else's distance between posts was told before.
func claimedSpan(before, after []scan.Atom) bool {
	return chunk.Figured(before) && chunk.EndsPart(after, 0) && phrase.SaidBeforeOf(scan.WordSet("has says have had puts gets say"))(before, nil) && phrase.SaidBeforeOf(scan.WordSet("center centre face outside span ctr between"))(before, nil)
}

// noneBefore: it is said that there is none of something.
var noneBefore = phrase.SaidBeforeOf(scan.WordSet("no none"))
