package idiom

import (
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// Questions, trials and orders whose words would say something else by themselves: "from the beginning, how is it worked out" begins nothing anew,
// "never you mind why" takes nothing back, "open up the sums" opens no plan. And more of what is asked, tried, claimed and taken up. Everyday
// speech, no source.

var otherWords = []phrase.Placed{
	// What only leads up to it.
	{Plain: "teach me $1", Where: asksEnd, Said: `
		^^ LEDON [right] from (the [very] (beginning|start|top|bottom)|scratch|the ground up|square one) [,|up] [now|please] [,] how (is|are|does|do) [the|my|our|a] !(ASKED|((rail|board|post|stiffener|bay) count)|(number of (RAIL|posts|bays|STIFF))) [get|gets] [(worked out|figured|figured out|reckoned|found|calculated|arrived at|computed|come about)]
		^^ LEDON [right] from (the [very] (beginning|start|top|bottom)|scratch|the ground up|square one) [,|up] [now|please] [,] how (do|does|would) (you|one|we|i) (get|find|work out|figure|figure out|reckon|calculate|arrive at) [the|my|our|a] !(ASKED|((rail|board|post|stiffener|bay) count)|(number of (RAIL|posts|bays|STIFF))) [out]`},
	{Where: phrase.BothHold(moreFollows, figureFollows), Said: `
		^^ LEDON never [you] mind (why|the why|the reason|the reasons|the whys and wherefores|how come|what for|who|whose idea it (is|was)) [,|:|;|-|--] [just]
		^^ LEDON do not ask [ME] (why|how|what for|how come) [,|:|;|-|--] [just|but]
		^^ LEDON (if you (must|really want to|have to|need to|would) know|since you (ask|asked|are asking|want to know|insist)|(for|as) (your|the) (information|record)|not that it matters) [,|:] [but]`},
	{Where: asksAfterwards, Said: "^^ LEDON (if push (comes|came) to shove|if worst (comes|came) to worst|if the worst (comes|came) to the worst|at a pinch|in a pinch|if it (comes|came) to (it|that)) [,]"},
	// What is asked.
	{Where: asksEnd, Plain: "what is the gap", Said: `
		^ LEDON how far [apart] (do|does|are|will|would|should|must) [the|my|our] RAIL (sit|stand|lie|hang|go|land|end up|come|be|set|spaced|spread) [apart] [from] (one another|each other|the next|the next one|one from the next|one from another|apart)
		^ LEDON how (far|much) [space|room|air|daylight] (is|lies|stands|comes) [there] (between|from) one RAIL (and|to) the next`},
	{Where: asksEnd, Plain: "how far is the opening from the left post", Said: "^ LEDON how (much|far|long) [wall|of the wall] (is|runs|stands|lies|comes) [there|left] [left] (between|from) (the|my|our) (OPENING) (and|to) [the] left [end] POST"},
	{Where: asksEnd, Plain: "how far is the opening from the right post", Said: "^ LEDON how (much|far|long) [wall|of the wall] (is|runs|stands|lies|comes) [there|left] [left] (between|from) (the|my|our) (OPENING) (and|to) [the] right [end] POST"},
	{Where: asksEnd, Plain: "how long do i cut them", Said: `
		^^ [the|my] (saw|blade) ('s|is) (spinning|running|warm|on|hot|set up|plugged in|waiting|humming|ready) [now] (,|.|;|-|--|:|and|so) [so|and] [PLEAD] [(give|read|call|tell) ME] [the|my] (lengths|cuts|cut lengths|numbers|measurements) [please|out|now]
		^^ (lengths|cut lengths|cuts) , KINDLY $$`},
	{Where: asksEnd, Plain: "what do i need to buy", Said: `
		^ LEDON (if|when|once) (i|we) (drive|go|run|head|ride|get|walk|pop|nip|stop|swing) [down|over|out|by|up|in|off] [to|at|by] [the|my|our] (yard|lumberyard|store|shop|mill|town|hardware store|lumber yard) [now|later|today|tomorrow|tonight|in the morning] , what (should|do|must|shall|would|will|am|are) (i|we) [(have|need|to|going to)] [to] (load|buy|get|bring|fetch|pick up|take|ask for|order|haul|load up|bring back|bring home|come back with|put on the truck)`},
	{Where: asksEnd, Plain: "what does it cost", Said: `
		^ LEDON (money|price|cost|dollar|budget) [-] wise , (where|what|how) (do|does|are|is|will|would) (i|we|it|that|this|things) [end up|stand|come out|land|looking at|come to|look|be]
		^ LEDON where do (i|we) (end up|stand|land|come out) [,] (money|price|cost|dollar) [-] wise`},
	{Where: asksEnd, Plain: "what do i do first", Said: `
		^ LEDON [PLEAD] (lay|set|line|put|spell|write|list) [out|down|up] [the|my|our|all the] (jobs|tasks|chores|steps|work) (in (their|the|the right|the proper) (order|sequence)|one after the other|in order|step by step) [for ME]
		^ LEDON what (is|would be) (job|task|step|item) (number one|one|the first)`},
	{Where: asksEnd, Plain: "draw it", Said: "^ LEDON [a|an|one] [little|small|quick|rough] (sketch|picture|drawing) (would be|is|would not be|would not go|would go|would come in) (welcome|nice|grand|lovely|handy|a help|helpful|useful|good|great|appreciated|amiss|down well|fine)"},
	{Where: asksEnd, Plain: "what should i watch out for", Said: `
		^ LEDON where (might|could|would|will|may|can|do) (i|we|one|it|this) (come to grief|get into trouble|get burned|come a cropper|trip|stumble|run into trouble|go astray|get caught out|get stuck)
		^ LEDON [PLEAD] (tell|give|show|read|name|list) ME [of|about] [the|any|all the] (dangers|hazards|risks|cautions|warnings|pitfalls|traps|snags|worries) [,] (if (any|there are any|you see any|you have any|there be any)|such as they are)`},
	{Where: asksEnd, Plain: "show me the layout", Said: `
		^^ LEDON [what is|and|give me|tell me] [the|your] (verdict|upshot|outcome|long and short of it|final picture|bottom line of it all) [then|now|please]
		^ LEDON (what|how) (does|will|would|is|do) it all (look|add up|come out|work out|stand|amount|come) [like|to] in (numbers|figures|inches|plain numbers)`},
	{Where: asksEnd, Plain: "what have i told you", Said: `
		^ LEDON what (did|have|had) (i|we) (feed|fed|hand|handed|supply|supplied|call out|called out to|load into|put into|rattle off to|rattled off to) [to] [you] [so far|up to now|until now|already|by now|today]
		^ LEDON which (of (my|our|the)|my|our) (numbers|figures|sizes|measurements|things) (do|have|are) you [still] (remember|remembered|hold|holding|keep|kept|have|got|going by|got down|have down|know)
		^ LEDON what (is|have you got|do you have|stands) [there] (on|in) (your|the) (slate|books|book|head|memory|notes|notebook|pad|file) [from|of|for] [me|us|mine] [so far|now]`},
	{Where: asksEnd, Plain: "what are the options", Said: `
		^ LEDON (is|are) there [some|any|a|no] [other] (way|ways) (out|around|round|past|forward|through) [of|from] (this|that|it|the|my|our) [bind|mess|fix|jam|pickle|corner|spot|trouble|knot|tangle]
		^ LEDON (what|which) (RAIL|rail|board) (counts|numbers) (are|is|would be|stay|remain) (in the running|on the table|still open|in play|left|left to me|left over|within reach|up for grabs|in the cards)`},
	{Where: asksEnd, Plain: "why that many boards on the shopping list", Said: "^ LEDON (why|how come) (such|so big|so great|so large) [a] (heap|pile|load|stack|mountain|lot|quantity|amount|truckload|raft|fortune) of (lumber|wood|timber|boards)"},
	{Where: asksEnd, Plain: "why $1 $2", Said: "^ LEDON [PLEAD] explain (yourself|yourselves|it|this|that) [to ME] (,|:|;|-|--) (why|how come) [the|these|those|so many|exactly] ## !STIFF|RAIL|posts|bays"},
	// What is tried.
	{Where: figureAhead, Plain: "what if we had", Said: `
		^ LEDON (would|will|could|might|does|do) [a|the] (change|switch|move|jump|shift|drop|step) [up|down|over] (to|from the plan to) [only|just]
		^ LEDON [PLEAD] (run|put|walk|take) it (past|by|before) ME [again|once more] with
		^ LEDON what (say|do you say) (i|we) (go|went|switch|move|change|step) [up|down|over] (to|with|for)
		^ LEDON if it (came|comes|should come|were to come|came down|comes down) to [being|having] [only|just]`},
	{Where: asksEnd, Plain: "what if we had $1", Said: `
		^ LEDON how (would|do|does) !(## COUNTED) (strike|suit|grab|sit with|sound to|look to|seem to) (you|ME)
		^ LEDON how (would|do|does) a !(# (GAP|OPENING)) (strike|suit|grab|sit with|sound to|look to|seem to) (you|ME)`},
	{Where: asksEnd, Plain: "what if we had no $1", Said: `
		^ LEDON (were|should|suppose|say|if) there (be|to be|were to be|were|should be) no !(STIFF|posts|(added posts)) [at all] , [what|how] [then|happens|happens then|would happen|of it|about it|would that be]`},
	{Where: asksEnd, Plain: "what if we had no $1 , what does it cost", Said: `
		^ LEDON what (does|do|'s|will|would|is) it (do|doing|make|mean) (to|for) [the|my|our] (price|cost|bill|total|budget) (if|when) (i|we) (leave|left|take|took|drop|dropped|skip|skipped|do without|did without|leave out|left out) [the|my|our|all the] !(STIFF|posts|(added posts)) [off|out|away]`},
	// What others say, and what is made of it.
	{Where: phrase.BothHold(figureStood, phrase.EndsLine), Plain: ", is that right ?", Said: `
		(,|.|;|-|--) [and|so] is there [any|some|a grain of|much] (truth|sense) (in|to) (that|it|this) [\?]
		(,|.|;|-|--) [and|so] (is|was) [the|my|our] (boy|girl|lad|man|woman|fellow|kid|guy|old man|good man|PERSON) (right|wrong|correct|mistaken|on the mark|talking sense|making sense) [\?]
		(,|.|;|-|--) [and|so] (fair|right|true) or (foul|wrong|false|not|unfair) [\?]`},
	{Where: phrase.BothHold(theirsTaken, notNextDoor), Plain: ", so use that", Said: `
		(,|.|;|-|--) [and|so] what (he|she|they) (says|say|wants|want) (goes|is law|counts|is what we do|is good enough for ME|is done|happens)
		(,|.|;|-|--) [and|so] [please|just] (carry|bring|take|copy|bear) (that|it|this|them|those) (over|across|along)
		(,|.|;|-|--) [and|so] [please|just] make a note [of (that|it)]
		(,|.|;|-|--) [and|so] (his|her|their) word (goes|is law|is good|is good enough|counts)`},
	// How it is learned, and all of it shown.
	{Where: asksEnd, Plain: "teach me $1", Said: `
		^ LEDON what is the (way|trick|method|recipe) (to|of|for) (work|working|figure|figuring|find|finding|get|getting|reckon|reckoning|calculate|calculating) [out] [the|my|our|a] !(ASKED|((rail|board|post|stiffener|bay) count)) [out] [,] MANNER
		^ LEDON [PLEAD] (sit|come|stay) [down|here] [beside|with] [ME] [here] and (go|run|walk|work) (through|over) [the|my|our] !(ASKED|((rail|board|post|stiffener|bay) count)) [with ME]
		^ LEDON [PLEAD] (make|give|write|do) [ME] [a|the] (teacher|teacher 's|schoolroom|classroom|schoolteacher 's|school|blackboard) (explanation|lesson|account) of [the|my|our] !(ASKED|((rail|board|post|stiffener|bay) count))
		^ LEDON [the|my|our] (KIN|kids|kid|boy|girl|lad|granddaughter|grandson|apprentice|helper|children|boys|girls|class) (wants|want|needs|would like|is dying|is keen|has) to (know|learn|see|understand|find out) how (you|one|we|to) (get|find|work out|figure|figure out|reckon|calculate) [the|my|our|a] !(ASKED|((rail|board|post|stiffener|bay) count)) , [so|please|can you|could you] [please] (teach|show|tell) (him|her|them) [how]`},
	{Where: asksEnd, Plain: "show me the whole sum", Said: "^ LEDON [PLEAD] (open up|lay open|unfold|uncover|unroll|bare|spread out) [all] [the|your] (sum|sums|arithmetic|math|maths|working|workings|calculation|calculations|reckoning|figuring) [for ME]"},
	{Where: asksEnd, Plain: "what can i say about $1", Said: "^ LEDON (i|we) (forget|forgot|do not know|do not remember|am not sure|have forgotten) how (to|i|we|you) [do|can] (tell|say|put|word|phrase|enter|give|describe|let know) [you] [to you] [of|about] [the|my|our|a] !(KEPTNAME|STIFF|POST|RAIL|bays) [to you]"},
	// The end of it.
	{Where: asksEnd, Plain: "quit", Said: `
		^^ LEDON (enough|plenty) (for|is enough for) (one day|today|now|tonight|one evening|one night) [, [good] (bye|goodbye|night|cheers|thanks)]
		^^ (good night|goodnight|bye|goodbye|so long|farewell|cheerio) , [(god bless|bless you|sleep well|take care|all the best)] [,] (i am|we are|i 'm) (through|done|finished|off|all done|all through)`},
	{Where: asksEnd, Plain: "undo", Said: "^^ (whoops|oops|oh no|oh dear|darn|drat) , (wrong|that is wrong|not that|my mistake|no) , (undo|undo it|undo that|take it back|take that back) [please] [, _]"},
}

// notNextDoor: it is not told of the neighbors' wall.
func notNextDoor(before, _ []scan.Atom) bool {
	return !HoldsWord(before, "neighbor", "neighbors", "neighbour", "neighbours")
}
