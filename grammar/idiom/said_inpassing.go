package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What is asked in passing: with the question word at the end ("the gap comes to what"), by what is about to be done ("saw's plugged in, what
// am I setting the stop to"), by what it does to the purse, and little by little. Everyday speech, no source.

// inPassing are such questions.
var inPassing = []phrase.Placed{
	// The question word stands at the end.
	{Where: asksEnd, Plain: "how many $1", Said: `
		^ LEDON [(that|this|it|which)] (makes|leaves|gives|means|(works|comes|figures|turns|shakes|adds) [out|up]|amounts|boils|(is|was)) [ME|us with|down] [with] [(at|to|as|for)] [a total of] how many !COUNTED [ASKNOW|(all told)|(in all)|altogether]
		^ LEDON (you|we|i) (said|say|have|had|got|ended up with|came up with|are at|are left with|are looking at|need) how many !COUNTED [ASKNOW|(all told)|(in all)|altogether]
		^ LEDON [(the|my|our)] !COUNTED [,] (come|comes|came|add|adds|work|works|number|run|tot) [out|up] [to|at] (what|(how many)) [ASKNOW|(all told)|(in all)|altogether]
		^ LEDON [the] (number|count|tally) of !COUNTED [,] [(MANNER|what) ,] (what|how many|which) (is|was) [that|it] [ASKNOW]
		^ LEDON (what|which) (number|count|quantity) of !COUNTED (am|are|do|will|would|must|should|did) (i|we|you) [(going to|gonna|have to|need to)] (stacking|stack|hanging|hang|putting up|put up|mounting|mount|screwing on|fixing|fix|running|run|setting|set|using|use|needing|need|handling|looking at|counting on) [up|on] [ASKNOW]`},
	{Where: asksEnd, Plain: "what is $1", Said: `
		^ LEDON [(that|this|it|which)] (makes|leaves|gives|puts|means) [ME|us with] [the|a|my|our] !ASKED [(at|of|as|to)] (what|(how (much|big|wide|high|long|tall))) [ASKNOW]
		^ LEDON (you|we|i) (said|say|have|had|got|ended up with|came up with|are at|are left with|are looking at) [the|a|my|our] !ASKED [(of|is|was|at|as|to be)] (what|(how (much|big|wide|high|long|tall))) [ASKNOW]
		^ LEDON [the|my|our] !ASKED , [MANNER|(in a word)|then|please|exactly|again] , (is|was|comes to|came to) (what|(how (much|big|wide|high|long|tall))) [ASKNOW]
		^ LEDON [the|my|our] !ASKED [now|then] (is|was|comes to|came to|(works|comes|came|turns|turned|ends|ended|wound|winds) (out|up) [at|to|as]|lands at|sits at|stands at|measures|(would be)|(will be)|(is going to be)) (what|(how (much|big|wide|high|long|tall))) [ASKNOW]
		^ LEDON where (does|did|do|will|would|might) (that|this|it|all that|they) (land|put|leave|bring|drop|take|set|park|push|move) [ME with] [the|my|our] !ASKED [at|to|then] [ASKNOW]
		^ LEDON what (does|did|do|will|would|might) (that|this|it|all that|they) (make|leave|do to|do for|do with|turn|bring|give ME for|leave ME for|leave ME as) [of] [the|my|our] !ASKED [into|to|at|then] [ASKNOW]
		^ LEDON what (became|becomes|is to become|will become) of [the|my|our] !ASKED [then|now|there]
		^ LEDON [(i|we) (have|had|'ve)] (lost|forgotten|mislaid|(no record of)) [track of] what [the|my|our] !ASKED (is|was|came to|comes to|ended up [at|as]) [ASKNOW]`},
	// Heights, lines and lengths.
	{Where: asksEnd, Plain: "where do my marks go", Said: `
		^ LEDON (what|which|at what|at which) (heights|height|figures|numbers|measurements|spots|places|points|levels) (do|am|are|should|shall|must|will|would|does) (i|we|one|he|she) [(going to|have to|need to)] (tick|ticking|mark|marking|pencil|penciling|pencilling|scribe|scribing|strike|striking|draw|drawing|score|scoring|notch|line) [(off|up|out|down|in|at)] [(on|along|up|down|onto) [each|both|the|my|every] (POST|posts|uprights)]
		^ LEDON where (do|does|should|shall|must|will|would|did) [all] [the|my|our|these] (bracket|brackets ' s|bracket 's|brackets|brackets '|layout|pencil|rail|screw) (lines|ticks|marks|spots|holes|line|tick|mark) [all] (go|fall|land|come|sit|belong|end up|get made|hit) [(on|along|up) [each|the|both] POST] [, ..]
		^ LEDON where (do|does|should|shall|must|will|would) (i|we) (drill|prick|dot|tick|scribe|pencil|bore) [for] [the|my] [brackets|bracket|screws|holes|pilot holes] [on|in|along] [the|my|each] [POST|posts|uprights]`},
	{Where: asksEnd, Plain: "how long do i cut them", Said: `
		^ LEDON [(what is|give ME|tell ME|read ME)] [the] (length|lengths) of (each|every|all) [of] [the|my|single|last] (stick|sticks|piece|pieces|cut|cuts|one|of them)
		^ LEDON how long (is|was|'s|are) (every|each) [single|last] (stick|piece|cut|one|of them) [going to be|to be|supposed to be]
		^ LEDON (what|where) (do|should|shall|must|will|would|am|are) (i|we) (set|setting|put|clamp|clamping|fix|have|putting|lock|locking) [my|the|our] [saw] (stop|stops|(stop block)|fence) [block] [(at|to|on)] [for the RAIL]
		^ LEDON what (length|lengths) (am|are|do|should|shall|must) (i|we) (cutting|sawing|chopping|feeding the saw|cut|saw|chop|telling the saw|call out to the sawyer)`},
	// What is bought.
	{Where: asksEnd, Plain: "what do i need to buy", Said: `
		^ LEDON what (should|must|ought to|has to|is to|needs to|will|does|do) [all] [i|we] (come home|come back|leave|ride home|come|go home|go on the truck|be on the truck|go in the truck|go in the cart|end up in the cart|load up|haul home|carry home|bring home|take home|drive home with|come home with|go home with|leave with|load on the truck|load in the van|put in the truck|put in the cart) [with (me|us)] [from|at|out of] [the|our|my] [lumberyard|yard|store|shop|mill|lumber yard]
		^ LEDON how many (eights|tens|twelves|fourteens|sixteens|eighteens|twenties) (is|are|am|do|does|did) (that|it|this|i|we|they|there) [(going to|have to|need to)] [to|be] [load|buy|get|order|haul|pick up|ask for|take|purchase|loading|buying|getting|need|put on the truck] [up] [(all told)|(in all)|altogether]
		^ LEDON [what is|what 's|give ME|read ME] [the|my|our] whole (haul|pick list|pull list|lumberyard list|yard list|truckload) [please|then|now]
		^ LEDON (what|which things) (am|are) (i|we) [still] (short of|lacking|missing|out of) [for this|for the wall|to buy|to start]`},
	// What it costs.
	{Where: asksEnd, Plain: "what does it cost", Said: `
		^ LEDON (in|talk|talking|tell ME in|give it to ME in|in plain) (dollars and cents|dollars|cold cash|cash|hard cash|money|round dollars) [please|now|then|to ME]
		^ LEDON dollars and cents [, [if you] please|please|now]
		^ LEDON how (badly|much|hard|deep|deeply|bad) (is|does|will|would|do|am|are) (it|this|that|all this|all that|all of this|the whole thing|the lot|i|we) [going to|gonna|likely to|have to] (hurt|dent|hit|sting|bite|dig|cut|reach|eat|drain|bleed|lighten|empty|set back) [into|in] [the|my|our] (wallet|purse|pocket|pockets|bank|bank account|pocketbook|checkbook|budget|savings|piggy bank|kitty) [for .. ]
		^ LEDON what will (my|our|the) (wallet|purse|pocket|bank account|pocketbook|checkbook|wife|husband) [have to] (feel|say about it|say to it|pay|stand|bear|suffer)
		^ LEDON (how|what) (many|) (greenbacks|bucks|smackers|simoleons|dollars) (is|are|does|will|would|do|am) (it|this|that|all this|all that|the whole thing|the lot|i|we|the wall) [going to|gonna] [(come|run|add up|amount|set)] [(to|in for|out|ME back|talking|looking at|talking about)]`},
	// What comes first.
	{Where: asksEnd, Plain: "what do i do first", Said: `
		^ LEDON (in|by|at) (what|which) (order|sequence) (would|do|should|shall|will|might) (you|i|we|one|a person) [best] (go about|tackle|attack|build|do|set about|take|approach|handle|go at|proceed with) (it|this|that|the job|the wall|the whole thing|things|these)
		^ LEDON [PLEAD] (run|go|talk|walk|take|lead|step) [ME] (down|through|over) [the] (order of (work|things|business|operations|march|doing things)|work order|sequence [of work]|jobs in order|run of work) [for ME]
		^ LEDON (what|which) (comes|goes|happens|is done|gets done|is) first , [and] (what|which) [comes|goes|happens] [after|next|then] [after|that|after that]
		^ LEDON what is (the first (job|order of business|thing to do|move|task)|[my|our] first (job|move|task))
		^ LEDON (where|how) (would|should|do|can|might) (one|you|a person|i|we) (make a start|begin|start off|kick off|get cracking|dig in|get rolling|get the ball rolling)`},
	// What to watch for.
	{Where: asksEnd, Plain: "what should i watch out for", Said: `
		^ LEDON (is|are) there [any|a|some] (trap|traps|pitfall|pitfalls|snag|snags|landmine|landmines|banana peel|hole|holes|trouble|danger|catch) [that|which] [(i am|we are|i 'm|i could|i might|we might|we could|i will|we will)] [about to|going to|bound to|likely to] (walk|walking|step|stepping|fall|falling|blunder|run|running|stumble|stumbling|trip) (into|over|in|on)
		^ LEDON what (would|should|ought) (you|i|we|a careful person|a careful builder) [to] (worry|fret|fuss|lose sleep|be uneasy|be nervous|be wary) (about|over|of) [if (this|it) (were|was) (yours|your wall|your job|you)|in my place|in my shoes|here|most]
		^ LEDON what (would|could|might|will|is going to|is likely to) (keep ME up at night|give ME (trouble|grief|a headache|headaches)|cause (trouble|grief)|trip ME up|catch ME out|come back on ME|bite ME|sink ME|fail first)
		^ LEDON where (could|might|would|can|do) (this|it|i|we) (go wrong|bite ME|fail|come unstuck|trip up|get hurt|slip up|go astray)
		^ LEDON (what about|how about|tell ME about|and|now|give ME|on to) [the] (stuff|things|bits|points|items) (to|i should|we should|i need to|i must) (watch|look out|watch out|mind|beware|be careful|be wary|worry) [for|of|about|out for] [, [tell ME] (that|those|them) [next|now]]`},
	// What stands.
	{Where: asksEnd, Plain: "what have i told you", Said: `
		^ LEDON [PLEAD] (remind|tell|show|read|give|refresh|repeat|recount|list) [(ME|to ME|back to ME|out)] [of] (what|whatever|all|everything) ['s|is|has|that|that has|that is|we have|i have] [been] [already] (entered|recorded|taken down|noted down|written down|noted|put in|put down|typed in|laid down|agreed|pinned down|nailed down|fixed so far|logged|keyed in) [(so far|up to now|until now|to date|by now|already|thus far|as of now|today|up to this point)]
		^ LEDON what (is|has been|stands) (entered|recorded|taken down|noted down|written down|pinned down|nailed down|on record|on the books|in the book|on the slate|in your notes|in there|down on paper) [by now|so far|up to now|as of now|at the moment|at present|already|to date]
		^ LEDON where (did|had) (we|i) (leave (off|it|things)|get to|stop|break off) [last time|yesterday|before lunch|earlier]`},
	// What would work.
	{Where: asksEnd, Plain: "what are the options", Said: `
		^ LEDON (what|which) (RAIL|board|rail) (counts|numbers|totals) (would|will|could|might|do|can) (come out|divide|work out|space out|land|split|lay out|stack up|fall out) [out] [even|evenly|right|clean|cleanly|neatly|exactly|nicely|true]
		^ LEDON (what|which) numbers of (RAIL) (would|will|could|might|do|can) (come out|divide|work out|space out|land|split|lay out|stack up) [out] [even|evenly|right|clean|cleanly|neatly|exactly|nicely|true]
		^ LEDON (what|which|what all) (are|were|would be) [the|my|our] (ways|way) (out|around|round|past|forward|through) [of (it|this|that|here|this mess|this fix|this jam|this pickle|the bind|this bind|this corner)] [then|now|here]
		^ LEDON [PLEAD] (show|give|tell|list|read) ME [all] [the|my|our] (ways|way) (out|around|round|past|forward) [of (it|this|that|here|this mess|this fix|this jam|this pickle|the bind|this bind|this corner)] [then|now]
		^ LEDON how (do|can|could|might|would) (i|we|you|one) (wriggle|wiggle|get|climb|dig ourselves|dig myself|work|squirm) out of (this|it|that|this mess|this fix|this jam|this pickle|this bind|this corner) [then|now]`},
	// The whole of it.
	{Where: asksEnd, Plain: "show me the whole sum", Said: `
		^ LEDON [PLEAD] let ME in on [all] [of] [the|your] (arithmetic|math|maths|sums|sum|working|workings|figuring|calculation|calculations|reckoning) [, (all|every bit|every line) [of it]]
		^ LEDON [PLEAD] (lay|set|spread|write|spell|put|roll) (out|down) [all] [the|your] (full|whole|entire|complete|) (sum|sums|arithmetic|math|maths|working|workings|calculation|calculations|reckoning) [for ME|in full|from start to finish|from top to bottom|, all of it|, every line|, every line of it]`},
	// How it came to be so.
	{Where: asksEnd, Plain: "why is $1 so big", Said: `
		^ LEDON (what|whatever) [on earth|in the world|in heaven 's name] (possessed|made|led|drove|brought|moved|caused|induced|got|persuaded|inclined|had) (you|it|the thing|the program|us) [to] (make|have|leave|set|put|choose|pick|give ME|come up with|making|leaving|setting) [the|such a|a|my|our] !(ASKED|OPENING) [(so|that|this|quite so) ADJ|so much]`},
	{Where: asksEnd, Plain: "why that many $1", Said: `
		^ LEDON (what|whatever) [on earth|in the world] (possessed|made|led|drove|brought|moved|caused|induced|persuaded|inclined|had) (you|it|the thing|the program|us) [to] (settle on|use|have|put in|choose|pick|give ME|come up with|want|land on|go for|decide on) (so|that|this) many !(RAIL|STIFF|posts|bays)`},
	{Where: asksEnd, Plain: "why do i need an added $1", Said: `
		^ LEDON how (is it|comes it|does it come) [that] there (must|has to|have to|needs to|need to|should|ought to|is to|got to) be [a|one|so many|that many|any] [added|new|extra] !(POST|STIFF) [(in|at) the middle|in between|between them|in there] [at all|in the first place|anyway]
		^ LEDON (how is it|how comes it|how come|why is it) [that] (i|we|you|it) (must|has to|have to|needs to|need to|should|ought to) (have|put in|set|add|use|buy) [a|one|so many|that many|any] [added|new|extra] !(POST|STIFF) [(in|at) the middle|in between|between them|in there] [at all|in the first place|anyway]`},
	{Where: asksEnd, Plain: "why that many boards on the shopping list", Said: `
		^ LEDON [PLEAD] (explain|tell|say|show) [to] [ME] (why|how come) [the|my|our] [shopping|lumber|buying|material] list (is|'s|has|gets|got|runs|comes out|came out|turned out) [so|that|this|as] (long|short|big|huge|full)
		^ LEDON (why|how come|how is it that) [is|has] [the|my|our] [shopping|lumber|buying|material] list (is|'s|gets|got|run|runs|come out|came out|turned out) (so|that|this) (long|short|big|huge|full)`},
	// What is refused, and why.
	{Where: asksEnd, Plain: "why not $1 $2", Said: `
		^ LEDON [and] ## !COUNTED , (why|how come) (is|are|was|were) (that|those|they|it) (out|(ruled|shut|left) out|refused|rejected|forbidden|impossible|not (allowed|possible|on|an option|ok|okay|good|any good|permitted)|no (good|go)|off the table|off limits|out of the question)
		^ LEDON [and] (why|how come) (is|are|was|were) ## !COUNTED (out|(ruled|shut|left) out|refused|rejected|forbidden|impossible|not (allowed|possible|on|an option|ok|okay|good|any good|permitted)|no (good|go)|off the table|off limits|out of the question)
		^ LEDON [and] ## !COUNTED , (why|how come) not
		^ LEDON what (rules|ruled|shuts|shut|knocks|knocked) (out) ## !COUNTED`},
	{Where: asksEnd, Plain: "why not $2 $1", Said: `
		^ LEDON [and] [a] # !(GAP|OPENING) , (why|how come) (is|are|was|were) (that|those|they|it) (out|(ruled|shut|left) out|refused|rejected|forbidden|impossible|not (allowed|possible|on|an option|ok|okay|good|any good|permitted)|no (good|go)|off the table|off limits|out of the question)
		^ LEDON [and] (why|how come) (is|are|was|were) [a] # !(GAP|OPENING) (out|(ruled|shut|left) out|refused|rejected|forbidden|impossible|not (allowed|possible|on|an option|ok|okay|good|any good|permitted)|no (good|go)|off the table|off limits|out of the question)
		^ LEDON what (rules|ruled|shuts|shut|knocks|knocked) out [a] # !(GAP|OPENING)`},
	{Where: figureAhead, Plain: "why can i not", Said: `
		^ LEDON (nobody|no one) (has|have|'s|ever) [ever] [yet] (told|explained|said|shown) [to] [ME] (why|how come) (i|we) (may|can|could|must|should|ought|am allowed|are allowed) not [to] [ever]
		^ LEDON (i|we) [have|had] [still|yet] (never|not) [yet|been] [really] (understood|grasped|been told|learned|told|figured out|known|gathered) (why|how come) (i|we) (may|can|could|must|should|ought) not [to] [ever]`},
	// What is tried.
	{Where: asksEnd, Plain: "what if we add one more $1", Said: `
		^ LEDON (could|would|can|will|might|does) (it|that|this|the wall|there|she) [still|even|just] (stand|bear|take|hold|carry|swallow|tolerate|put up with|handle|accept|be room for|manage) (a|an|one|another|just one|yet another) [extra|more|further|additional|other] !(rail|board|slat|plank|stiffener|brace|batten|post)
		^ LEDON [is there|have we|do we have|has it got|any] room for (a|an|one|another|just one|yet another) (extra|more|further|additional|other|) !(rail|board|slat|plank|stiffener|brace|batten|post)`},
	{Plain: "what if we drop $1", Where: asksEnd, Said: `
		^ LEDON (say|suppose|supposing|(what if)|imagine|assuming|(let us say)|picture) (i|we|you|they) (took|take|pulled|pull|knocked|knock|left|leave|yanked|yank) !((a|one|two|three) (RAIL|STIFF|posts|post)) (away|out|off|down)
		^ LEDON (say|suppose|supposing|(what if)|imagine|assuming|(let us say)|picture) (i|we|you|they) (took|take|pulled|pull|knocked|knock|left|leave|yanked|yank) (away|out|off|down) !((a|one|two|three) (RAIL|STIFF|posts|post))`},
	{Where: figureAhead, Plain: "what if we had", Said: `
		^ LEDON (would|will|does|do|might|could) (anything|something|much|things|a thing|any of it|all that much|it|the rest|the whole thing) (change|alter|shift|differ|move|be different|be any different|look different|come out different|come out differently|break|suffer) [much|at all|any] with
		^ LEDON (would|will|does|do|might|could) (anything|something|much|it|things) go wrong with
		^ LEDON (could|would|can|will|might) (it|that|this|the wall|she) [still|even|just] (stand|bear|take|hold|carry|swallow|tolerate|put up with|handle|accept)
		^ LEDON (would|will|does|do|might|could) (it|that) [even|really] (make|be) (any|much|a|the least|the slightest) (odds|difference|bit of difference|dent|sense) [to (me|us|it)] with`},
	{Where: figureAhead, Plain: "what if", Said: `
		^ LEDON (would|will|does|do|might|could) (anything|something|much|things|a thing|any of it|all that much|the rest|the whole thing) (change|alter|shift|differ|move|be different|be any different|look different|come out different|come out differently|break|suffer|go wrong) [much|at all|any] (if|were)
		^ LEDON [PLEAD] (test|see|try|check|find out|try out|work out) (whether|if|what (happens|comes of it|it does)) (if|when|were)`},
	{Where: asksEnd, Plain: "what if we had $1", Said: `
		^ LEDON [PLEAD] (test|see|try|check|find out) (whether|if) !.. (does|do|did|would do|will do|causes|cause|would cause|will cause|makes|make|brings|bring) [any|some|much] (harm|trouble|damage|a problem|problems|good|mischief|grief|difficulty)
		^ LEDON what (difference|odds|change|differences|changes) (would|will|does|do|might|could) !.. (make|bring|mean) [to (it|things|ME|the wall|the rest)]
		^ LEDON what (harm|good|trouble|damage|mischief) (would|will|does|do|might|could) !.. (do|cause|make|bring) [to (it|things|ME|the wall|the rest)]`},
	{Where: figureAhead, Plain: "what does it cost if we had", Said: `
		^ LEDON (would|will|do|could|might|does) (i|we|it|that) (save|gain|get off|come out cheaper|come off|come out|be) [ME] [anything|money|a bit|much|some money|any money|a dollar|a buck|cheaper|less expensive|better off|any cheaper] [on it] (with|using|by using|going with|by going with|by going for)
		^ LEDON what (would|will|do|could|might|does) (i|we|it|that) save [ME] (with|using|by using|going with|by going with|by going for)`},
	{Where: bareFigureNext, Plain: "what if", Said: `
		^^ [PLEAD] [just|purely|only|simply] (out of [idle|pure|sheer] (curiosity|interest)|for (fun|argument 's sake|kicks|interest|interest 's sake|curiosity 's sake|comparison|the sake of argument|the sake of comparison|the sake of it)|hypothetically [speaking]|theoretically [speaking]|in theory|as (a|an) [thought] (experiment|test|trial)|by way of (experiment|trial|test)|on a whim|as a what if|as a try) (,|:|;|-|--)`},
	{Plain: "with $1 at", Where: triedEarlier, Said: `
		with [the] (wider|bigger|narrower|tighter|smaller|larger|closer|roomier|broader) !(GAP|OPENING|bays) , [(say|maybe|perhaps|of|like|about)]`},
	// What it would come to with something a little otherwise.
	{Where: asksAfterwards, Plain: "if $1 were $2 $3 ,", Said: `
		^^ [and|so|ok|okay|now] with !((the|my|our) (wall|gap|gaps|opening|doorway|bays|bay|post|span|bottom gap)) [(made|set|at|coming|being)] [just] # !(lower|higher|taller|shorter|wider|narrower|bigger|smaller|tighter|longer) ,`},
}

// bareFigureNext: only a part and its figure follow, and nothing is asked, ordered or told of them.
func bareFigureNext(_, after []scan.Atom) bool {
	return chunk.Figured(after) && len(after) < 9 && !slices.ContainsFunc(after, func(a scan.Atom) bool {
		return AskOpeners[a.Text] || Bids[a.Text] || AskingWords[a.Text] || Withheld[a.Text] || Viewed[a.Text] || a.Text == "why" || a.Text == "if" || a.Text == "i" || a.Text == "we"
	})
}

// triedEarlier: something is tried or asked before it.
func triedEarlier(before, after []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("what how if would could suppose imagine wonder draw show"))(before, nil) && chunk.Figured(after)
}
