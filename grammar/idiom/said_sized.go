package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// How sizes are made larger and smaller, held and bounded, and how a figure is taken back in the breath that told it. Everyday speech, no source.

// Pieces of the phrases below: how a slip is owned up to, by words that say nothing else, and by words that may; what can be opened and closed; and of what.
const (
	slipOwned = `((hold up)|((my|our) (bad|error|fault|goof|blunder|slip|apologies|oops|boo - boo|booboo|screwup|screw - up|screw up|flub))|apologies|whoa|(hold (your|my) horses)|([no|oh|ah|whoa] (hang|hold) (on|up) (a|one|just a) (sec|second|minute|moment|bit|tick|mo))|(hold the (phone|line|fort))|(hold everything)|` +
		`(i|we) stand corrected|(slip of the (tongue|pen|finger|thumb))|([a|just a] typo)|duh|doh|(d ' oh)|d'oh|(dang it)|dangit|(darn it)|(fat fingers)|(fat - fingered (it|that))|(fat fingered (it|that))|(brain (fart|freeze|cramp))|(senior moment)|` +
		`((i|we) [(have|had)] (misheard|mistyped|miswrote|misjudged|mismeasured|flubbed|botched|fumbled|bungled|muffed) (it|that))|((misheard|mistyped|miswrote|misjudged|mismeasured|flubbed|botched|fumbled|bungled|muffed) (it|that))|` +
		`((i|we) had (it|that) wrong)|(bad read)|((i|we) should have said)|((amend|correct|revise) (it|that) [to]))`
	slipCalled = `((back up)|(let (me|us) back up)|((nix|cancel|erase|check|belay|delete|void|undo|drop|lose) that)|wrong|(wrong (one|number|figure))|(that is (wrong|off))|shoot|rats|nuts|drat|darn|dang|crud|(one (sec|second|moment|minute|tick))|` +
		`((just|wait) a (sec|second|tick|minute|moment))|(let us say)|((i|we) should say)|(should say)|(look again)|(check again)|pardon|rewind|((or|and) better [say|make it])|oopsie|oopsies|oopsy|ack|argh|ugh|gah|yikes)`
	gapLike  = `!([the|my|our|your|this|that|every|each|all|all the|each of the] (OPENING|(walk - through)|(walk through)|GAP|spacing|(bottom gap)|(STIFF spacing)|(bay 1)|(bay 2)|(bay 3)|(bay one)|(bay two)|(bay three)|((first|second|third|left|right|middle) bay)))`
	someSpan = `!([the|my|our|your|this|that|every|each|all|all the] (bay|bays|span|(bay 1)|(bay 2)|(bay 3)|(bay one)|(bay two)|(bay three)|((first|second|third|left|right|middle) bay)))`
	byMuch   = `[by] [(a further)|(an extra)|(an additional)] !(#|((another|a|an) (inch|foot|half|quarter|eighth|sixteenth)))`
)

// sizedTurns are such turns.
var sizedTurns = []phrase.Placed{
	// A figure or a side is taken back, and another told.
	{slipOwned, ", no ,", takenBack},
	{", " + slipOwned, ", no", takenBack},
	{",|;|.|- ?(ah|oh|aw|well|er|uh|um|hm|no|gah) ?, " + slipCalled, ", no", takenBackBetween},
	{"\\? no|nope|wait|sorry|actually|rather ?, ?(make (it|that))", ", no ,", phrase.BothHold(takenBack, shortSaid)},
	{"(i|we) [have] [just] (said|told you|gave you|quoted you|called out|put down|wrote|wrote down|typed|typed in|entered|had down) # (for|as|on) !LENQ (,|;|.|-|--|and|but|when) [and|but] (it|that) [really|actually|truly] (is|'s|should be|(should have been)|(ought to be)|(was meant to be)) [really|actually|in fact] #", "$2 is $3", noDoubtBefore},
	{"(i|we) [have] [just] (said|told you|gave you|quoted you|called out|put down|wrote|wrote down|typed|typed in|entered|had down) !LENQ (as|at|is|was|of|to be|being) # (,|;|.|-|--|and|but|when) [and|but] (it|that) [really|actually|truly] (is|'s|should be|(should have been)|(ought to be)|(was meant to be)) [really|actually|in fact] #", "$1 is $3", noDoubtBefore},

	// Near a figure, and then the figure.
	{"(come|comes|coming|finish|finishes|land|lands|end up|ends up|stand|stands) [in|out] [at] a (hair|smidge|smidgen|touch|tad|bit|whisker|shade|skosh|little|fraction|trifle) (shy of|under|short of|over|past|above|below|beyond|less than|more than|north of|south of|better than) _ [_] [_] (,|;|-|--) (call it|say|let us say|make it|so|that is|to be exact|exactly) #", "be at $1", noDoubtBefore},
	{"a (hair|smidge|smidgen|touch|tad|bit|whisker|shade|skosh|little|fraction|trifle) (shy of|under|short of|over|past|above|below|beyond|less than|more than|north of|south of|better than) _ [_] [_] (,|;|-|--) (call it|say|let us say|make it|so|that is|to be exact|exactly) #", "$1", noDoubtBefore},
	{"a (hair|smidge|smidgen|touch|tad|bit|whisker|shade|skosh|little|fraction|trifle) (shy of|under|short of|over|past|above|below|beyond|less than|more than|north of|south of|better than) _ [_] [_] (,|;|-|--) # (let us say|say|to be (exact|precise)|call it|exactly|that is)", "$1", noDoubtBefore},
	{"(roughly|broadly|loosely|generally) speaking [,]", "roughly", figureNext},
	{"!LENQ # (through|thru) #", "$1 $2 to $3", phrase.BothHold(noDoubtBefore, atClauseEnd)},
	{"!COUNTQ [:|=] ## (through|thru) ##", "$2 to $3 $1", phrase.BothHold(noDoubtBefore, atClauseEnd)},
	{"## (through|thru) ## !COUNTQ", "$1 to $2 $3", phrase.BothHold(noDoubtBefore, phrase.StartsClause)},

	{"# !tall|high|wide|apart|long [,] plus or minus $", "roughly $1 $2", noDoubtBefore},
	{"[,] (inclusive|(both included)|(ends included)|(inclusive of both)|(both inclusive)) $", "", phrase.SaidBeforeOf(scan.WordSet("between to from through"))},
	{"(a (couple|pair)|(a few)) of !_ , ## to be exact|precise|specific", "$2 $1", noDoubtBefore},

	// What is to come of it, said as what it is to end as; what is set and left so; and what is owned up to at the end.
	{"(see|(see to it)|(make (sure|certain))|(be (sure|certain))|ensure|(take care)|mind) [that] !LENQ (ends up|winds up|finishes up|comes out|finishes|lands|end up|wind up|come out|finish) [at]", "i want $1", phrase.StartsClause},
	{"(settle|peg|pin|park|freeze|fix|lock|nail|plant) !LENQ [down] at #", "set $1 at $2", bidsHereOrWished},
	{"[,] and (leave|keep|hold|let) it (there|(at that)|(like that)|(that way)) $$", "", toldSo},
	{", ((sorry (about|for) (that|the (mix - up|mixup|mix up|confusion|slip|trouble)))|(my apologies)|apologies|(forgive me)|(excuse me)|(my bad)|(my (mistake|error|fault|slip|goof))) $$", "", toldSo},
	{"!LENQ (got|was|were|has been|is|are) [just] (entered|typed|written|put|taken|read|noted|keyed|set|marked|jotted) [in|down] (wrong|wrongly|incorrectly|backwards|badly) (,|;|-|--|and|so|.) [and|so] [it|that|they] should (be|read|say|have been) #", "$1 should be $2", noDoubtBefore},
	{"!LENQ (should|ought to) have (been|read|said|come to) # (,|-) not #", "$1 is $2", noDoubtBefore},
	{"!LENQ (should|is to|need|does|must|shall|can) no longer be (counted|considered|reckoned with|in force|kept|used|heeded|taken into account|followed|applied)", "forget $1", phrase.StartsClause},
	{"!LENQ no longer (counts|applies|matters|holds|stands)", "forget $1", phrase.StartsClause},

	// Opened and closed.
	{"(bring|take|drop|lower|pull|let|set) [the] top down [by] # [more|further|lower]", "lower the wall by $1", phrase.BothHold(bidsHereOrWished, atClauseEnd)},
	{"(bring|take|raise|lift|push|run|set|jack) [the] top up [by] # [more|further|higher]", "raise the wall by $1", phrase.BothHold(bidsHereOrWished, atClauseEnd)},
	{"^ !RAIL spread # apart", "$1 spaced $2 apart", nil},
	{"(cinch|squeeze|snug|pinch|suck|draw|pull|bring|choke|crowd) " + gapLike + " (down|up) " + byMuch, "tighten $1 by $2", phrase.BothHold(bidsHereOrWished, atClauseEnd)},
	{"(ease|nudge|work|crack|spread|push|pull|draw|slide|inch|pry|force|set|bring|move|let|stretch|wedge|part|space) " + gapLike + " (open|apart|out|(further|farther) apart) " + byMuch, "raise $1 by $2", bidsHereOrWished},
	{"(let|ease|pull|push|bring|take|draw|set) out " + gapLike + " " + byMuch, "raise $1 by $2", bidsHereOrWished},
	{"(ease|nudge|work|push|pull|draw|slide|inch|force|set|bring|move|squeeze|pinch|take|suck|tuck|snug) " + gapLike + " (shut|closed|together|in|tighter) " + byMuch, "reduce $1 by $2", phrase.BothHold(bidsHereOrWished, notFromThere)},
	{"(draw|pull|take|bring|tuck|suck|squeeze) in " + gapLike + " " + byMuch, "reduce $1 by $2", phrase.BothHold(bidsHereOrWished, notFromThere)},
	{"(slash|hack|chop|dock|skim|crop|clip|nip|whittle|crush|crowd|curtail) !LENQ [down|back] by #", "reduce $1 by $2", bidsHereOrWished},
	{"pinch|pinches|pinched !(each|every|all|all the) !gap|gaps|opening|space|spaces", "narrow $1 $2", nil},
	{"(stretch|extend|build|run|take|carry|push|grow|jack|bump) [the|our|this|my] WALL [up] " + byMuch + " (taller|higher|more in height)", "raise the wall by $1", bidsHereOrWished},
	{"(take|lose|cut|trim|have|get|pull|shave|drop) # (away|out|back) (from|of) " + someSpan, "reduce $2 by $1", bidsHereOrWished},

	// One of what is counted goes.
	{"!(lose|drop|remove|pull|ditch|cut|scrap|skip|omit|(take (out|away))|(get rid of)|(do away with)|(leave out)|(pull out)|(do without)|add|lost|dropped|removed|(took out)) !(one|two|1|2) of (the|those|these|my|our) (bays|panels|sections|stretches)", "$1 $2 bays", nil},
	{"!(lose|drop|remove|pull|ditch|cut|scrap|skip|omit|(take (out|away))|(get rid of)|(do away with)|(leave out)|(pull out)|(do without)|add|lost|dropped|removed|(took out)) !(one|two|1|2) of (the|those|these|my|our) (walk - throughs|walkthroughs|doorways|openings)", "$1 $2 openings", nil},
	{"(toss|throw|put|stick|slap|add|pop|set|stack|lay) [in|on|up] (another|(one more)|(an extra)) !RAIL (at|(up at)|(down at)) [the] (top|bottom) [of (it|the wall|the stack)]", "add another $1", bidsHereOrWished},
	{"(make|build|do|call|have|keep|let us make|let us have) (it|this|that|her|ours|WALL) a ## [-] !RAIL [-] [high] WALL|one|job|affair|build", "$1 $2", noDoubtBefore},
	{"(make|build|do|have|want|need|like|go (with|for)) a ## [-] !RAIL [-] [high] WALL", "want $1 $2", noDoubtBefore},
	{"(it|this|that) (is|'s|will be|shall be|should be|(is to be)|(has to be)) a ## [-] !RAIL [-] [high] WALL|one|job|affair|build", "$1 $2", noDoubtBefore},
	{"(stiffen|brace|stay|reinforce|back|support|steady|shore|beef|strengthen|firm) [up] (each|every|all) !bay|bays (with|by|using) !(one|two|three|four|five|1|2|3|4|5) STIFF|UPRIGHT|verticals [each|apiece]", "$2 stiffeners in each bay", bidsHereOrWished},

	// Bounds.
	{"anything (over|above|past|beyond|(more than)|(bigger than)|(higher than)|(taller than)|(wider than)|(larger than)|(longer than)|(looser than)) # (in|for|on|with|at|as) !LENQ REFUSED", "$2 at most $1", noDoubtBefore},
	{"anything (over|above|past|beyond|(more than)|(bigger than)|(higher than)|(taller than)|(wider than)|(larger than)|(longer than)|(looser than)) # (in|for|on|with|at|as) !LENQ (is|'s) out $", "$2 at most $1", noDoubtBefore},
	{"anything (under|below|(less than)|(smaller than)|(lower than)|(shorter than)|(narrower than)|(tighter than)|(closer than)|(skinnier than)) # (in|for|on|with|at|as) !LENQ REFUSED", "$2 at least $1", noDoubtBefore},
	{"anything (under|below|(less than)|(smaller than)|(lower than)|(shorter than)|(narrower than)|(tighter than)|(closer than)|(skinnier than)) # (in|for|on|with|at|as) !LENQ (is|'s) out $", "$2 at least $1", noDoubtBefore},
	{"!(twice|double|half|triple|(three times)|(one and a half times)) !LENQ (is|'s) [just] (the [very|absolute|bare]|what) (least|minimum|smallest|lowest|narrowest|tightest) [(that|for)] !LENQ (can|may|could|should|must|will|needs to|has to|(is allowed to)) [ever] (be|get|go|come)", "$3 at least $1 $2", noDoubtBefore},
	{"!(twice|double|half|triple|(three times)|(one and a half times)) !LENQ (is|'s) [just] (the [very|absolute|bare]|what) (most|maximum|largest|highest|widest|biggest) [(that|for)] !LENQ (can|may|could|should|must|will|needs to|has to|(is allowed to)) [ever] (be|get|go|come)", "$3 at most $1 $2", noDoubtBefore},
	{"!(twice|double|half|triple|(three times)) !LENQ (is|'s) what !LENQ (needs|wants|must have|has to have|should have|requires|gets) !((at minimum)|(at least)|(as a minimum)|(at a minimum))", "$3 at least $1 $2", noDoubtBefore},

	{", [with] (none|(not one)|(no one)|(not any)) of (them|those|these) (to be|being|is|are|to run|running|to go|going|may be|can be|should be|over|) !longer|wider|bigger|larger|shorter|narrower|smaller than #", ", no bay $1 than $2", lastOfBays},

	{"(is|are|was|were) !(twice|double|half|triple|(three times)) !LENQ [really|truly] (the [very|absolute|bare]|what) (least|minimum|smallest|lowest|narrowest|tightest) [(that|for)] !LENQ (can|may|could|should|must|will|needs to|has to) [ever] (be|get|go|come)", "is $3 at least $1 $2", noDoubtBefore},
	{"!(twice|double|half|triple|(three times)) !LENQ was [just] (the [very|absolute|bare]|what) (least|minimum|smallest|lowest|narrowest|tightest) [(that|for)] !LENQ (could|might|would|should) [ever] (be|get|go|come)", "$3 used to be at least $1 $2", noDoubtBefore},

	{"(at least|(no less than)|(not less than)) # to (get|push|wheel|roll|fit|drive|bring|take|pull|run|haul) (it|that|them|her|this) (through|thru|by|past)", "at least $1 for the opening", noDoubtBefore},
	{"[the] (distance|length|run|room|space|measure|stretch) (from|between) [end] post (face|inside) (to|and) [end] post (face|inside)", "the span", nil},

	// The floor, the posts, the brackets, all pieces.
	{"(at|by|near|beside) the right [end] post [,] [the] FLOOR (is|'s|sits|has come|comes) up [by] #", "the floor is $1 higher at the right", noDoubtBefore},
	{"[the] FLOOR (is|'s|sits|has come|comes) up [by] # (at|by|near|beside) the right [end] post", "the floor is $1 higher at the right", noDoubtBefore},
	{"FLOOR !rises|falls|drops|climbs|slopes|tilts|(goes up)|(goes down)|(runs up)|(runs down)|(slopes up)|(slopes down) to the !left|right , # (all told|in all|total|in total|overall|altogether|in the end|from end to end|end to end)", "the floor $1 $3 to the $2", noDoubtBefore},
	{"FLOOR (runs|goes|climbs|slopes|is going) uphill to the !left|right , # (all told|in all|total|in total|overall|altogether|in the end|from end to end|end to end)", "the floor rises $2 to the $1", noDoubtBefore},
	{"FLOOR (runs|goes|drops|slopes|is going) downhill to the !left|right , # (all told|in all|total|in total|overall|altogether|in the end|from end to end|end to end)", "the floor falls $2 to the $1", noDoubtBefore},
	{"(it|FLOOR) (is|'s) # out of level [,] [and|with] [the] !left|right [end|side] [is|being|sitting] (low|lower|down)", "the floor is $1 lower at the $2", noDoubtBefore},
	{"(it|FLOOR) (is|'s) # out of level [,] [and|with] [the] !left|right [end|side] [is|being|sitting] (high|higher|up)", "the floor is $1 higher at the $2", noDoubtBefore},
	{"(ADDED|new|extra) POST (goes|runs|comes|reaches|stands|rises|extends) up to # $", "post height $1", noDoubtBefore},
	{"(run|goes|runs|go|climbs|rises|going|running|slopes) uphill", "rises", phrase.SaidBeforeOf(floorNames)},
	{"(run|goes|runs|go|drops|falls|going|running|slopes) downhill", "falls", phrase.SaidBeforeOf(floorNames)},
	{"# (higher|taller) than [the] RAIL", "$1 higher than the wall", postBefore},
	{"# lower than [the] RAIL", "$1 lower than the wall", postBefore},
	{"[the] [top] hole (is|'s|sits|lands|ends up|comes) # (above|over|past|(up from)|higher than) [the] RAIL ['s] [top] edge", "bracket reach $1", phrase.BothHold(noDoubtBefore, phrase.StartsClause)},
	{"BRACKET [are|is|were] (stamped|made|cut|bent|formed|pressed|punched|folded) (from|(out of)|of) # [-] [thick] (steel|plate|stock|metal|iron|aluminum|strap|sheet)", "brackets are $1 thick", noDoubtBefore},
	{"[(figure|assume|count on|allow for|reckon with|say|plan on)] [that] (everything|(every (cut|piece|board|mark|part))|all of it|(it all)) (is|'s|may be|might be|could be|being|can be|will be) (off|out) [by] [(up to)|about|maybe|(as much as)] #", "tolerance $1", offStated},
}

// toldSo: a figure was told, and nothing is doubted.
func toldSo(before, after []scan.Atom) bool {
	return noDoubtBefore(before, after) && chunk.Figured(before)
}

// lastOfBays: bays were counted before it, and nothing else since.
func lastOfBays(before, after []scan.Atom) bool {
	return noDoubtBefore(before, after) && len(before) > 1 && (BayWords[chunk.LastOf(before, 1)] || chunk.LastOf(before, 1) == "bays" || chunk.LastOf(before, 1) == "sections" || chunk.LastOf(before, 1) == "panels")
}

// floorNames are words for the floor.
var floorNames = scan.WordSet("floor slab deck patio ground concrete terrace porch it")

// takenBack: a figure or a side stands before it, nobody's claim, and another comes next.
func takenBack(before, after []scan.Atom) bool {
	return noDoubtBefore(before, after) && (chunk.Figured(before) || phrase.SaidBeforeOf(SidesNamed)(before, after)) && figureOrSideNext(after)
}

// takenBackBetween: the same, and what stands before it ends in the figure or the side, or close behind it.
func takenBackBetween(before, after []scan.Atom) bool {
	n := len(before)
	return takenBack(before, after) && (chunk.Numeric(before[n-1]) || SidesNamed[before[n-1].Text] || n > 1 && (chunk.Numeric(before[n-2]) || SidesNamed[before[n-2].Text]))
}

// figureOrSideNext reports whether a figure or a side comes next, past a pause and the words that lead to it.
func figureOrSideNext(after []scan.Atom) bool {
	for i := range after {
		switch a := after[i]; {
		case a.Kind == scan.Digits, a.Kind == scan.Vulgar, chunk.SpelledNumber(a.Text), SidesNamed[a.Text]:
			return true
		case !leadsToValue[a.Text] || i > 4:
			return false
		}
	}
	return false
}

// leadsToValue are words that may stand before the figure that takes the place of another.
var leadsToValue = scan.WordSet(", : - -- it is 's that should be make call say a an the on to at i mean meant more like actually really only just want")

// notFromThere: no place is told behind it that something moves from.
func notFromThere(_, after []scan.Atom) bool {
	return chunk.EndsPart(after, 0) || after[0].Text == "and" || after[0].Text == "so" || after[0].Text == "please"
}

// offStated: it is told, not asked or denied.
func offStated(before, after []scan.Atom) bool {
	return noDoubtBefore(before, after) && phrase.StartsClause(before, after) && phrase.EndsLine(before, after)
}

// shortSaid: little is said in all, and nothing is asked in it but what the figure is.
func shortSaid(before, after []scan.Atom) bool {
	return len(before) < 6 && len(after) < 5 && !AskingWords[before[0].Text] && !AskOpeners[before[0].Text]
}
