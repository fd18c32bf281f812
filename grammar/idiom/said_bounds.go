package idiom

import (
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// How high, how wide and how many, told by what it comes up to, by what it may not pass, and by what it gained and lost. Everyday speech, no source.

// Pieces of the phrases below: what of a body a wall comes up to, by how much something changes, and words by which a figure is no good.
const (
	ofBody   = `(belt|waist|chest|hip|hips|elbow|elbows|navel|ribs|shoulder|shoulders|chin|knee|knees|thigh|thighs|belly button|bellybutton|breastbone|armpit|nose|collarbone)`
	byChange = `[about] !(#|((another|a|an|one more) (inch|foot|half|quarter|eighth|sixteenth|half inch|quarter inch))|((an|another) inch and a (half|quarter)))`
	noGood   = `(out|off|bad|no good|bunk|garbage|junk|wrong|rubbish|dead wrong|all wrong|way off)`
	tossIt   = `(toss|chuck|forget|drop|scrap|ditch|bin|lose|dump|trash|delete|erase|nix|strike|pitch|junk|kill|discard) (it|that) [out|away]`
	smallerW = `tighter|narrower|smaller|shorter|lower|skinnier|slimmer|closer|less|thinner|fewer`
	largerW  = `wider|bigger|larger|taller|higher|looser|more|longer|broader|roomier|greater`
	growsV   = `(open|widen|grow|spread|swell|loosen|enlarge|expand|increase|gape|creep up|work open)`
	shrinksV = `(narrow|shrink|close|tighten|squeeze|pinch|contract|decrease|neck)`
	fellBy   = `(lost|loses|(has lost)|shed|sheds|(has shed)|(gave up)|(gives up))`
	roseBy   = `(gained|gains|(has gained)|(picked up)|(picks up)|(put on)|(has put on))`
)

// boundsTurns are such turns.
var boundsTurns = []phrase.Placed{
	// What it comes up to.
	{"(come|comes|coming|reach|reaches|hit|hits|rise|rises) [right|about] [up] to (my|his|her|their|our|your|the) " + ofBody + " (,|;|-|--|at|(that is)|so|(, so)|(, which is)|(, that is)|or) #", "be $1 high", noDoubtBefore},
	{ofBody + " [-] high [(plus a bit)|(or so)|(and a bit)|(or thereabouts)|(give or take)] (,|-|--|:|;) [(that is)|say|so|about|call it] #", "$1 high", noDoubtBefore},
	{"for how (tall|high) [(it is)|(we go)|(the wall is)|(it should be)|(it goes)|(to go)|(to build it)] $", "for the wall height", nil},
	{"for how wide !OPENING (is|goes|should be)", "for $1", nil},
	{"(one|two|three|1|2|3) [-] finger [-] !gap|gaps|spacing|space , [(that is)|about|so|say|call it] # [(that is)|or so]", "$1 $2", noDoubtBefore},
	{"^ [the|my|our|his|her] _ [_] (needs|takes|wants|is|'s|measures) # [wide|across|through|clear] [,|;] [and] so [(give ME)|(make it)|(i want)|(let us have)|(i need)|(we need)] !((at least)|(no less than)|(not less than)|(no narrower than)|(nothing under)|(a minimum of)) # (on|for|in|at) !OPENING", "$4 $2 $3", noDoubtBefore},
	{"(" + smallerW + ") than [the|my|our|his|her] _ [_] [,|;] so [it is|that is|keep it] !(under|below|(at most)|(less than)|(no more than)|(not over)) #", "$1 $2", phrase.BothHold(noDoubtBefore, ofItsOwn)},
	{"(" + largerW + ") than [the|my|our|his|her] _ [_] [,|;] so [it is|that is|keep it] !(over|above|(at least)|(more than)|(no less than)|(not under)) #", "$1 $2", phrase.BothHold(noDoubtBefore, ofItsOwn)},

	// What is insisted on before it is told.
	{"^^ ((whatever (else|(you do)|happens|else happens|else you do))|(first and foremost)|(come what may)|(if nothing else)|(all else aside)|(most importantly)|(most of all)|(the main thing [is])|(one thing for (sure|certain))) (,|:|;|-|--)", "", notBygone},

	{"(it|her|everything|(the whole (thing|lot))) (top|tops|topping|(to top)|(should top)|(will top)) out at", "the wall tops out at", nil},
	{"(bring|take|raise|lower|drop|build|run|carry|make) (it|her|WALL) [up|down] so [that] [the] top (is|'s|sits|lands|(ends up)|comes|stands) [at|to] #", "the top of the wall is at $1", bidsHereOrWished},
	{"# [,] (and (that is (final|that|it)|no (arguing|argument)|not a hair (more|less))|period|(full stop)|(end of (story|discussion))) for !LENQ", "$1 for $2", noDoubtBefore},
	{"apart [,] ((one from (next|(the next)|another))|(each from (next|(the next)))|(from (one another|each other))|(board to board)|(rail to rail)|(from one to (next|(the next))))", "apart", nil},
	{"[,] (whichever|((whichever|whatever|whatever one) (fits|works|suits))|(you (pick|choose))|(your (pick|choice|call))|((i|we) do not care which)|(it (does not matter|makes no odds))) $$", "", phrase.SaidBeforeOf(scan.WordSet("to between through from"))},

	{"(make|set|have|let|keep|want) !LENQ (equal|equals|(be equal)|(to equal)) [to] #", "set $1 at $2", bidsHereOrWished},

	// What was told wrong, and what it is now.
	{"what (i|we) [have|had] (put|gave|said|had|told you|gave you|entered|wrote|typed) [down|in] (for|as|on) !LENQ (is|was) (off|wrong|out|not right|incorrect|no good) [by # [inch|inches]] (,|;|-|--|.) [so] [please] (make (it|that)|(it|that) (is|'s)|(it|that) should be|change (it|that) to|set (it|that) to|use) #", "$1 is $3", noDoubtBefore},
	{"(i|we) [have] [just] (changed|redone|remeasured|rechecked|updated|revised|adjusted|retaped|reset) !LENQ (,|;|-|--|.|and|so) [and] [now] (it|that) (is|'s) [now] #", "$1 is $2", noDoubtBefore},
	{"!LENQ (is|'s|are) (too|(a (hair|bit|touch|tad|smidge|little|shade|skosh) [too])|(kind of)|rather|(still too)) (tight|small|narrow|snug|low|short|stingy|mean|skimpy|cramped) (,|;|.|-|--|so) [so] [please] [just] (open|let|widen|raise|stretch|bring|lift|bump|spread) (it|them|that) [up|out] " + byChange + " $", "raise $1 by $2", noDoubtBefore},
	{"!LENQ (is|'s|are) (too|(a (hair|bit|touch|tad|smidge|little|shade|skosh) [too])|(kind of)|rather|(still too)) (loose|big|wide|tall|high|large|roomy|generous|long) (,|;|.|-|--|so) [so] [please] [just] (close|take|bring|lower|tighten|pull|drop|narrow|shrink|snug|draw) (it|them|that) [up|in|down|back] " + byChange + " $", "reduce $1 by $2", noDoubtBefore},
	{"!LENQ [is|'s|are] (too|(a (hair|bit|touch|tad|smidge|little|shade|skosh) [too])) (tight|small|narrow|snug|low|short|stingy|mean|skimpy|cramped) (,|;|.|-|--|so) [so] [please] [just] (add|(give (it|them)) [me]|put on) " + byChange + " [more|to (it|them)] $", "raise $1 by $2", noDoubtBefore},
	{"!LENQ (to go|goes|go|(is to go)|(should go)|(must go)|(can go)|(to come)|comes) from # (up|down) to #", "$1 is $3", noDoubtBefore},
	{"!LENQ (is|'s|are) no longer (fixed|set|firm|decided|settled|(set in stone)|(a given)|binding|needed|wanted|final)", "forget $1", phrase.StartsClause},

	// What it may not pass.
	{"!LENQ (must not|can not|may not|should not|shall not|will not|is not to|are not to|not to) [ever] " + growsV + " [up|out] (past|beyond|over|above|(to more than)|(more than)|(wider than))", "$1 must not go over", nil},
	{"!LENQ (must not|can not|may not|should not|shall not|will not|is not to|are not to|not to) [ever] " + shrinksV + " [down|in|up] (below|under|beneath|(to less than)|(to under)|(less than)|(narrower than))", "$1 must not go under", nil},
	{"(do not|never) [you] [ever] let !LENQ [ever] " + growsV + " [up|out] (past|beyond|over|above|(to more than)|(more than)|(wider than))", "do not let $1 be over", nil},
	{"(do not|never) [you] [ever] let !LENQ [ever] " + shrinksV + " [down|in|up] (below|under|beneath|(to less than)|(to under)|(less than)|(narrower than))", "do not let $1 be under", nil},
	{"!LENQ (stay|stays|remain|remains|keep|keeps) (" + smallerW + ") than #", "$1 must be under $2", noDoubtBefore},
	{"!LENQ (stay|stays|remain|remains|keep|keeps) (" + largerW + ") than #", "$1 must be over $2", noDoubtBefore},
	{"!((no more than)|(at most)|(not over)|(less than)|under|over|(more than)|(at least)|(no less than)|(not under)|(not more than)) # (from|between) FLOOR (to|and|up to) (LOWEST|first|bottom) RAIL", "bottom gap $1 $2", nil},
	{"(closer|tighter|nearer) [together] than # for STIFF", "stiffener spacing less than $1", noDoubtBefore},
	{"(farther|further) apart than # for STIFF", "stiffener spacing more than $1", noDoubtBefore},

	// What it gained and lost.
	{"!LENQ " + fellBy + " " + byChange + " $", "reduce $1 by $2", noDoubtBefore},
	{"!LENQ " + roseBy + " " + byChange + " $", "raise $1 by $2", noDoubtBefore},
	{"FLOOR (gains|(picks up)|(puts on)) # (to|toward|towards|going|heading|(by the time you get to)|(running to)) [the|to the] !right|left", "the floor rises $1 to the $2", noDoubtBefore},
	{"(give|add|allow|grant) (it|WALL|her) " + byChange + " [more|extra] (of|in) height", "raise the wall by $1", bidsHereOrWished},
	{"^ !((another (inch|foot|(half inch)|(quarter inch)|half|quarter|eighth))|(# more)|(# extra)|(an extra #)) (of|in) height", "raise the wall by $1", noDoubtBefore},
	{"(give|allow|grant) " + gapLike + " " + byChange + " [more|extra] (of|in) (width|room|space|clearance|breathing room|leeway)", "raise $1 by $2", bidsHereOrWished},
	{"(crowd|squeeze|push|bring|move|draw|pull|snug|nudge|jam|bunch|pack|shove|close) RAIL [closer|up|in] together [by] " + byChange, "tighten the gap by $1", phrase.BothHold(bidsHereOrWished, atClauseEnd)},
	{"(spread|move|push|pull|open|nudge|bring|shove|ease|let) RAIL [further|farther|wider] (apart|out) [by] " + byChange, "raise the gap by $1", phrase.BothHold(bidsHereOrWished, atClauseEnd)},
	{"(stretch|widen|lengthen|extend|enlarge|grow|increase) [out] [the] bay ## [out|up] by ##", "make bay $1 wider by $2", bidsHereOrWished},
	{"(shrink|narrow|shorten|reduce|tighten|squeeze) [down|in] [the] bay ## [down|in|up] by ##", "make bay $1 narrower by $2", bidsHereOrWished},

	{"(lose|shed|drop|ditch|take|lop|nip|trim|shave|cut|knock|whittle|subtract|deduct|get|have) # (off|from|(out of)|(off of)) [the] !((bay 1)|(bay 2)|(bay 3)|(bay 4)|(bay one)|(bay two)|(bay three)|(bay four))", "make $2 narrower by $1", bidsHereOrWished},
	{"(nudge|move|slide|shift|scoot|bump|push|pull|inch|jog|shove|bring|ease|walk|kick) [the] [added] post ## [over] [to the] !left|right [by] # $", "move post $1 $3 to the $2", bidsHereOrWished},
	{"bay ## (without|(with no)|(has no)|(gets no)|(needs no)|(takes no)|(to have no)) STIFF", "no stiffeners in bay $1", noDoubtBefore},
	{"(cut|saw|trim|lop|chop|slice|nip|run) [the|my|our] (ADDED|new|extra) POST [off] ((at|(flush with)|(level with)|(even with)|(right at)|to)) (((the|our) wall 's top)|((the|our) top of (the|our) wall)|(the wall top))", "post height same as wall height", bidsHereOrWished},
	{"[the] [bracket] ears (stick|stand|poke|jut|project|extend|run|stick) (up|out|past|proud|over) [(the|their|each) RAIL] [by] " + byChange + " $", "bracket ear $1", phrase.StartsClause},
	{"[the] nearest !(sixteenth|eighth|quarter|(thirty second)|(thirty - second)|32nd|16th|8th|(1 / 16)|(1 / 8)|(1 / 32)) is ((as (good|close|fine|near|exact) as (i|we|it|(my tape)) (get|gets|(can get)|(can do)|(can read)|goes|can))|((the best|all|the closest) (i|we) can (do|read|get)))", "my tape reads to the nearest $1", noDoubtBefore},
	{"STIFF (ripped|milled|sawn|(cut down)|planed|sawed|made|taken) (to|(down to)|into) @", "stiffeners are $1", noDoubtBefore},
	{"no (slope|fall|pitch|tilt|drop|slant|grade) (to|in|on|across|over|along) FLOOR", "the floor is level", noDoubtBefore},
	{"FLOOR (has|(has got)|(is without)) (no|(not any)|zero) (slope|fall|pitch|tilt|slant|grade) [to it|in it|at all]", "the floor is level", noDoubtBefore},
	{"(it|FLOOR) (is|'s) (off|out) by # [,] [and|with] [the] (down|low|lower) (at|on|to|by|toward) the !left|right [end|side|post]", "the floor is $1 lower at the $2", noDoubtBefore},
	{"(it|FLOOR) (is|'s) (off|out) by # [,] [and|with] [the] (up|high|higher) (at|on|to|by|toward) the !left|right [end|side|post]", "the floor is $1 higher at the $2", noDoubtBefore},

	// How many, where, and of what; and what is no good.
	{"^ !(one|two|three|four|five|six|1|2|3|4|5|6) bays (across|wide|long|(side by side)|(in a row)|(end to end)|along) $", "$1 bays", nil},
	{"[the] (opening|doorway|walkway|entry|entrance|walkthrough|(walk - through)|(walk through)|(way (in|through))) opens on the !left|right [side|end|hand side] $", "the opening is on the $1", phrase.BothHold(noDoubtBefore, phrase.StartsClause)},
	{"@ POST (throughout|everywhere|(all (around|over))|(all the way (round|around)))", "posts $1", nil},
	{"(level|flat|straight) as ((can be)|(a (pancake|table|board|plate|lake|mirror|billiard table|pool table|tabletop)))", "dead level", phrase.SaidBeforeOf(floorNames)},
	{"as (level|flat) as ((can be)|(a (pancake|table|board|plate|lake|mirror|billiard table|pool table|tabletop)))", "dead level", phrase.SaidBeforeOf(floorNames)},
	{"(pretend|(act (as if|like))|(make believe)|imagine|(let us pretend)) [that] (i|we) (never|did not) [ever] (gave|give|told|tell|said|say|mentioned|mention) [you] [a|an|any|the|my|our] !LENQ", "forget $1", phrase.EndsLine},
	{"!LENQ [figure|number|measurement] (is|'s) " + noGood + " (,|;|-|--|and|so) [so|and] [please] [just] " + tossIt, "forget $1", phrase.BothHold(phrase.StartsClause, atClauseEnd)},
	{"(this|one|the (left|first)) [end] post 's [inside] face to (that|the other|the (right|second)) [end] post 's [inside] face", "the span", nil},
	{"[end] (post|posts) to [end] (post|posts) [,] [on the] (outside|outer)", "outside to outside", nil},
}

// ofItsOwn: what is to be so is named before it.
var ofItsOwn = phrase.SaidBeforeOf(scan.WordSet("wall height gap gaps spacing opening doorway walkthrough bay bays post posts top"))

// notBygone: nothing of what was is told behind it.
func notBygone(_, after []scan.Atom) bool {
	for i := range after {
		if w := after[i].Text; w == "was" || w == "were" || w == "had" || w == "used" {
			return false
		}
	}
	return true
}
