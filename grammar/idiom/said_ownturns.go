package idiom

import (
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What people with ways of their own say beside a wish, and how they turn it round: "I'm sorry to be fussy, but …", "the post I'm adding, run it …",
// "that last thing I said, take it back". Everyday speech, no source.

// ownTurns are such turns.
var ownTurns = []phrase.Placed{
	// What only leads up to it, or follows it.
	{"^ [(i am|i 'm|we are)] [ever so|so|terribly|very|really] sorry to be [so|such] [a|an] _ ,|but ?but", "", nil},
	{"^ not to be [a|an|so] _ , but", "", nil},
	{", before (i|we|you|he|she) (ruin|spoil|waste|wreck|hurt|lose) [any|more|good|some|all] (wood|lumber|timber|boards|board|finger|fingers|thumb|myself|himself|ourselves|it) $$", "", nil},
	{", and (we|i) (will|can|shall) (go on|carry on|start|take it|work|see) [on] from there $$", "", nil},
	{"[, and|,|and] there is no [great] (hurry|rush) [at all] [about|for|on|over] [it|that|this|me|(the rest)] $$", "", nil},
	{"(who|that) (came|was|stopped|dropped|called|stood) (by|round|around|out|over|here|in) [(the other day)|today|yesterday|earlier|(this|last) week|this morning]", "", phrase.SaidBeforeOf(scan.WordSet("gentleman man fellow woman lady guy builder carpenter inspector salesman chap contractor person"))},
	{"on|for everything|(the lot)|(the whole lot)|(every bit of it)", "", phrase.SaidBeforeOf(scan.WordSet("spare extra waste"))},
	// The thing first, and then what it shall be.
	{"the POST (i am|i 'm|we are|we 're) (adding|putting in|setting|pouring|planting) [,]", "the added post", nil},
	{"^ [that|the] last (thing|one|bit|change|figure) [that] (i|we) (said|told you|asked for|did|gave you|made) , (take|undo|scrap|scratch|strike|forget) (it back|it|that|that back)", "undo", nil},
	{"^ [bad|wrong|my|false] (cue|mistake|call|start) , (take|undo|scrap|scratch) (that back|that|it back|it)", "undo", nil},
	{"(read|say|give|tell) (me back|it back|back|me) [to me] what (is left|stands|still stands|we have left)", "recap", nil},
	{"^ (i|we) (would like|'d like|want) !(_) compared (with|to) !(_)", "compare $1 with $2", nil},
	{"^ (i|we) (would like|'d like|want) !(_ _) compared (with|to) !(_ _)", "compare $1 with $2", nil},
	// Of sums, shares and cuts.
	{"^ (i|we) (can|could) (spare|put up|lay out|go to|stretch to|find) !(..) !dollars|bucks|pounds|euros ?for|on it|this|(the wall)|(the job)|material|materials|lumber|wood", "budget $1 $2", nil},
	{"^ (i|we) (can|could) (spare|put up|lay out|go to|stretch to|find) \\$ # ?for|on it|this|(the wall)|(the job)|material|materials|lumber|wood", "budget $1", nil},
	{", bless (him|her|them|(his|her) heart) $$", "", nil},
	{"^ [please|just] (give me|let me have|i want|i would like|we want) # more !(OPENING|GAP|(bottom gap)|HEIGHT)", "raise the $2 by $1", nowhereBehind},
	{"blade|saw|kerf is|'s chewing|eating|taking|biting|burning|wasting ?out|up|away|off #", "kerf is $1", nil},
	{"^ half [-] [inch] !(trim|kerf)", "$1 half an inch", nil},
	{"^ quarter [-] [inch] !(trim|kerf)", "$1 a quarter inch", nil},
	{"^ eighth [-] [inch] !(trim|kerf)", "$1 an eighth inch", nil},
	{"would|will|could|do ## openings fit|work|go ?in at|of # ?each|apiece|wide ?each", "what if there are $1 openings , opening $2", nil},
	{"^ (can|could|may|shall) (i|we) take the !(first|second|third) (way|way out|option|one|fix) you (offered|gave [me|us]|said|named|showed [me|us])", "take the $1", nil},
	{"the !(left|right) one !(leans|tips|tilts|(has leaned)|(has tipped)|(has tilted)|(is leaning)|(is out))", "the $1 post $2", phrase.SaidBeforeOf(scan.WordSet("post posts"))},
	{"ok|okay ,", ",", phrase.SaidBeforeOf(scan.WordSet("save"))},
	{"^^ !(..) , (could|can) (we|i|you) [do|try] [that|it] $$", "what if $1", nil},
	{"?, ?the timber|wood|lumber|stuff being|is @", ", stiffener size $1", phrase.SaidBeforeOf(scan.WordSet("stiffener stiffeners"))},
	{"!(first|second|third|fourth|fifth|sixth|seventh) rail|board|slat up , top of it ?is at", "top of the $1 rail is at", nil},
	{"^ [oh|whoops|oops|sorry|no] [,] i (should not|should never|ought not to) have (said|done|asked for|changed|made) (that|it) [last] [one|thing|bit|change] , (take|put|undo) (it back|that back|it|that)", "undo", nil},
	{"^ i (misspoke|misspoke myself|got it wrong|was wrong) (about|on) the !(OPENING|GAP|WALL|span|(bottom gap)) ;|,|.|- # it is , not #", "the $1 is $2", nil},
	{"and|but|, do not let it run|go|get|come over #", "and the opening is no more than $1", phrase.SaidBeforeOf(scan.WordSet("opening doorway walkthrough"))},
	{"and|but|, it is|'s # clear", "and the opening is $1", phrase.SaidBeforeOf(scan.WordSet("opening doorway walkthrough"))},
	{"^ # a|per bay , tops|max $", "bay at most $1", nil},
	{"closed|tightened ?up|down ?the|our !(GAP) to", "set the $1 to", inSupposition},
	{"RAIL are|were|get|got|be ripped|planed|sawn ?down to ?a|an # ?face|wide", "rail face is $1", nil},
	{"^ rip|plane ?the|all|my RAIL ?down to # ?face|wide", "rail face is $1", nil},
	{"trimming takes|loses|costs|wastes # ?(per|a|each|every|on|off|from (board|piece|stick|length|each board|every board))", "trim $1", nil},
	{"the|that|a nice|kind|friendly|helpful|polite|young (nice|young|old) !(man|woman|guy|fellow|lad|lady|clerk) at", "the $1 at", nil},
	{"the|that|a nice|kind|friendly|helpful|polite !(man|woman|guy|fellow|lad|lady|clerk) at", "the $1 at", nil},
	{"take the ## st|nd|rd|th (one|way|option|way out|fix)", "take $1", nil},
	{"^ the whole (thing|wall|works|run) is|runs|measures # ?from end to end", "overall is $1", nil},
	{"^ [so|and] what is the cheapest (way|one|option|layout) [to (do|build|make) (this|it)|of doing (this|it)|there is|i can have|i can get] $$", "what if cheapest", nil},
	// Tags, and what is said while one thinks.
	{", [does|do] (that|those|it) (wash|fly|hold water|track|(square with you)) $$", ", is that right ?", nil},
	{", let me (count|think|look|check) ,", "", nil},
	{"thus far", "so far", nil},
	// The ground.
	{"?the|our|my EARTH is|'s|lies|sits|runs # below|lower|under|down ?than|from ?the FLOOR", "the drop is $1", nil},
	{"^ ?the|our|my EARTH is|'s|lies|sits|runs # lower|down $", "the drop is $1", nil},
	{"bay ## gets|has|takes|needs|wants ?only|just ##", "bay $1 has $2 stiffeners", phrase.SaidBeforeOf(scan.WordSet("stiffener stiffeners"))},
}

// nowhereBehind reports whether it is not told behind a word where it is: "more room in the walk-through".
func nowhereBehind(_, after []scan.Atom) bool {
	return len(after) == 0 || !beginsPlace[after[0].Text]
}

var beginsPlace = scan.WordSet("in at for under between")
