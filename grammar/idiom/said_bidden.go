package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What is asked for by an order or a wish of everyday: what goes into the bag, what comes first, how it would look, what has been noted. And
// what is tried, held against one's own, and taken up, in as many ways. Everyday speech, no source.

var bidden = []phrase.Placed{
	{Where: asksEnd, Plain: "how tall is the added post", Said: `
		^ LEDON [(how far is it)] from [the] FLOOR [up] to [the] top of [the] (new|added|extra) POST [, how (far|high|tall|much) [is (it|that)]]
		^ LEDON how (high|tall|long|far up) (must|do|should|shall|will|would|am|are) (i|we) [(to|have to|need to)] (saw|cut|trim|chop|lop|top|leave|make|stand|keep) [the|my|our] (new|added|extra|middle) POST [off]`},
	{Where: asksEnd, Plain: "how many brackets do we need", Said: `
		^ LEDON how many (BRACKET) (should|do|must|will|would|am|are|shall) (i|we) [(to|have to|need to|going to)] (throw|toss|put|drop|bring|carry|pack|count out|grab|fetch|pull|set aside|lay out|need|use|go through|use up) [in [the|my|a] (bag|cart|basket|box|bucket|truck)|along|home]`},
	{Where: asksEnd, Plain: "where do the posts go", Said: `
		^ LEDON (on|at|in) (which|what) (spots|spot|places|place|points|point|positions) (do|does|should|must|will|are|is) [the|my|our] [added|new|extra|middle] POST (stand|go|sit|land|belong|end up|to stand|to go|set)
		^ LEDON [PLEAD] (point|direct|steer|guide|show|lead|send) ME to (where|(the (spot|place) where)) [the|my|our] [added|new|extra|middle] POST (belongs|belong|goes|go|stands|stand|sits|lands|should (go|stand|sit)|is to (go|stand))`},
	{Where: asksEnd, Plain: "where do my marks go", Said: `
		^ LEDON [PLEAD] (call|read|sing|shout|rattle|reel|count|name|say|fire|spell|list|give|holler) [away] [(off|out|over|up|with)] [the|my|all the] marks [off|out] [to me|for me|for us|to us|at me] [, [the] (bottom|lowest|top|highest|first) [one|mark] first|from the (bottom|top) [up|down]|, one (by one|at a time|after the other)|in order|from bottom to top|from top to bottom]
		^ LEDON at (what|which) (height|heights|spot|spots|level|levels|points) (does|do|should|will|must) (each|every|the|my|all the|those) (line|lines|mark|marks|tick|ticks|bracket|brackets) (go|fall|land|come|sit|belong) [on [the|each|every] POST]`},
	{Where: asksEnd, Plain: "what do i need to buy", Said: `
		^ LEDON [PLEAD] (write|list|jot|note|put|spell|set|lay) [out|down|up] [for ME] (what|whatever|everything|all) [that] (i am|we are|i 'm|i have|we have|i need|we need|i must|we must|i should|we should) [to] (order|buy|get|fetch|pick up|bring home|purchase) [for ME]
		^ LEDON what [all|else|things|stuff] (goes|go|should go|belongs|gets loaded|has to go|must go) (on|onto|in|into) [the|my|our] (trailer|van|truck|cart|wagon|trolley|pickup|basket)`},
	{Where: asksEnd, Plain: "what does it cost", Said: `
		^ LEDON what (am i|are we|would i be|would we be|will i be|will we be) in for
		^ LEDON how (many|much) (dollars|bucks|money|cash) (am|are|will|would|do|must|should) (i|we) [be|have to|need to|going to] (parting with|part with|laying out|lay out|shelling out|shell out|handing over|hand over|counting out|count out|coughing up|out of pocket|set aside|setting aside|scrape together|put by|dropping|drop|bring)
		^ LEDON [PLEAD] (give|tell|show|get|read) (ME|(my|our|the) (KIN|PERSON)) [the|a] (price|cost|total|bill|damage) [, (she|he|they|somebody) (is|are|keeps|keep) (asking|wondering|waiting|curious|pestering ME)]`},
	{Where: asksEnd, Plain: "what do i do first", Said: `
		^ LEDON [PLEAD] (take|walk|lead|bring|guide|talk|carry|get) ME [(all the way)] from [the|a] (bare|empty|start|beginning|nothing|first|scratch|zero|clear) [floor|slab|patio|ground|porch|cut|post|line|mark] to [the|a] (finished|done|standing|end|finish|last|complete) [wall|halfwall|thing|job|screw|board]
		^ LEDON how (would|does|might|should) (an|the|a) (old hand|old timer|pro|professional|carpenter|joiner|builder|expert|master|craftsman|sensible person|careful builder|handy person) (proceed|start|begin|go about it|tackle it|tackle this|go about this|do it|do this|approach it|set about it)
		^ LEDON [the] (step one|step number one|first step|very first step|opening move|first move) (is|would be) what
		^ LEDON first things first , (what|where) [do|should|must] (i|we) (do|start|begin)`},
	{Where: asksEnd, Plain: "draw it", Said: `
		^ LEDON [PLEAD] (put|bring|set|lay|hold|conjure) (it|this|that|the (wall|thing|layout)) [up] (before|in front of) (my|our) [very] (eyes|nose)
		^ LEDON (i|we) (can|could|do) not [quite|really] (picture|imagine|see|visualize|envision) (it|this|that) [at all|yet|in my head|in my mind] (,|;|.|-|--) [so] [PLEAD] (draw|sketch|show) (it|that|me|one) [up|out] [for ME]`},
	{Where: asksEnd, Plain: "what have i told you", Said: `
		^ LEDON [PLEAD] (list|read|rattle|reel|tick|count|tell|run|call|say|name|give) [off|back|over|out|me|through] [all] [the|my] (numbers|figures|facts|sizes|dimensions|measurements|things|values) [that] (you (have|got|hold|keep|took|have got|have taken|have noted|noted|know)|(i|we) (gave|told|have given|have told|handed) [you]) [from|of|off|down] [me|us] [so far|already|up to now|by now]
		^ LEDON what (have|had) (we|i|you) (pinned|nailed|fixed|settled|got|written|put|noted|taken|laid|locked|set) [down|in] (by this point|by now|so far|up to now|up to here|until now|at this point|thus far|to date|already)`},
	{Where: asksEnd, Plain: "why $1 $2", Said: `
		^ LEDON (what|who) (tells|told|says|said|makes|made) (you|it|the thing|the program) [that] (it|there|we|i) [(is|'s|has|have|had|need|needs|must|got|ought)] [got] [to] [be|use|have|take] ## !RAIL|STIFF|posts|bays`},
	{Where: asksEnd, Plain: "why $1", Said: `
		^ LEDON (i|we) (do|did|can) not [quite|really] (follow|get|understand|see|grasp) [the|that|your] !ASKED [at all] (,|;|.|-|--) (where|how|what) (is|'s|does|do|did) (it|that|you) [come|get it|get that] [from|come about|about|come out]
		^ LEDON [PLEAD] (justify|defend|account for|explain away|answer for|back up) [the|that|your] !ASKED [to ME|for ME|if you can]`},
	{Where: asksEnd, Plain: "why that many boards on the shopping list", Said: `
		^ LEDON what (do|would|does|am|are) (i|we|it|the wall) [going to] (need|want|require|buy|buying|have to buy|take) (so|that|this|all that|all this|such) [a lot of|much|many] (lumber|wood|timber|boards|stuff) for
		^ LEDON (why|how come) (do|does|am|are|would) (i|we|it|the wall) (need|want|require|buy|buying|have to buy|take) (so|that|this|all that|all this|such) [a lot of|much|many] (lumber|wood|timber)`},
	{Where: asksEnd, Plain: "why not $1 $2", Said: `
		^ LEDON ## !COUNTED , what (speaks|counts|stands|argues|says|is (there|the case|the argument|wrong)) [against|with|about] (it|that|them|those)
		^ LEDON what (speaks|counts|argues|is the argument|is the case|have you got|have you|stands) against ## !COUNTED
		^ LEDON (is|are) there [some|a|any] (law|rule|reason|objection|commandment|ordinance) (against|not to have|we can not have|i can not have) ## !COUNTED
		^ LEDON [and] ## !COUNTED , why can (that|it|they|those) not be [done|so|built|had]
		^ LEDON (you|it) (will|would|do|does) not (give|let|allow|grant) ME [have] ## !COUNTED , (why|how come) [is that|not]`},
	{Where: asksEnd, Plain: "why not no $1", Said: "^ LEDON [and] no [added|new|extra] !COUNTED , (why can (that|it|they) not be|why not|why (is|are) (that|they) (out|not allowed|impossible|ruled out)) [done|so|had]"},
	{Where: asksEnd, Plain: "why not a $1 $2", Said: `
		^ LEDON what (speaks|counts|argues|is the argument|is the case|have you got|have you|stands) against [a|an] # !(GAP|OPENING)
		^ LEDON [a|an] # !(GAP|OPENING) , what (speaks|counts|stands|argues|says|is wrong) [against|with|about] (it|that)
		^ LEDON (is|are) there [some|a|any] (law|rule|reason|objection|commandment|ordinance) (against|not to have|we can not have|i can not have) [a|an] # !(GAP|OPENING)`},
	// What is tried.
	{Where: figureAhead, Plain: "what if we had", Said: `
		^ LEDON [PLEAD] (entertain|consider|weigh|explore|play with|toy with) [the] (thought|idea|notion|possibility|case|prospect) of [a second|having]
		^ LEDON (do|would|could|will|can) (we|i|you) [still|just] (manage|scrape by|come through|survive|make out|do all right|cope) with
		^ LEDON how did (i|we) fare with
		^ LEDON how (would|will|do|might) (i|we|you|it|things) (fare|do|manage|make out|get on|come off|stand) (with|if we had|on)
		^ LEDON what (would|will|might|could) [ever] come [out] of`},
	{Where: figureAhead, Plain: "what if", Said: `
		^ LEDON what (would|will|might|could) [ever] come [out] of it if`},
	{Where: triedPlainly, Plain: "what if", Said: "^^ LEDON (on paper only|only on paper|purely on paper|just on paper|only in (my|our) head|in thought only|as a dry run|dry run) (,|:|-|--) [and] [(what if)|just]"},
	{Where: asksEnd, Plain: "what if we had $1", Said: `
		^ LEDON [PLEAD] (see|show ME|tell ME|work out|find out) what (a|an|) !(@ (RAIL|STIFF|posts|post)) (would|will|do|does|might|could) (do|bring|give|mean|change|look like|come to)
		^ LEDON [PLEAD] (see|show ME|tell ME|work out|find out) what !(## COUNTED) (would|will|do|does|might|could) (do|bring|give|mean|change|look like|come to)`},
	{Where: figureAhead, Plain: "what does it cost if we had", Said: "^ LEDON how much (cheaper|less|less expensive|more|dearer|more expensive) (is it|would it be|does it get|will it be|does it come|would it come|) (with|using|going with|for)"},
	// What is held against one's own.
	{Where: phrase.BothHold(figureStood, phrase.EndsLine), Plain: ", is that right ?", Said: `
		(,|.|;|-|--) [and|so] (did|do|does) (he|she|they) (do|have|get) (right|wrong|well) [by (it|that)] [\?]
		(,|.|;|-|--) [and|so] (good|right|fine|any good) or (no good|not|wrong|no) [\?]
		(,|.|;|-|--) [and|so] is that what (ours|mine|yours) (is|are|says|comes to|has) [\?]
		(,|.|;|-|--) [and|so] (who|which of them|which one) (is|'s|has it) [right|wrong] [then] [\?]
		(,|.|;|-|--) [and|so] is that on the (level|mark|up and up|square) [\?]`},
	// What is taken up.
	{Plain: "the inspector says", Where: figureFollows, Said: "^ inspector 's|inspectors (orders|order|word|wish|ruling|rule|decree|instructions) (,|:|is|are|-|--)"},
	{Plain: "the boss says", Where: figureFollows, Said: "^ boss 's|foreman 's|wife 's|missus 's|client 's|owner 's (orders|order|word|wish|ruling|decree|instructions) (,|:|is|are|-|--)"},
	// How it is learned.
	{Where: asksEnd, Plain: "teach me $1", Said: `
		^ LEDON [PLEAD] [(give|have|read|start|do|i want|i need|we need)] [ME] [a|the|another|one|one more] [little|short|quick|proper] !(ASKED|RAIL) (lesson|tutorial|primer|class)
		^ LEDON [PLEAD] [(give|have|read|start|do|i want|i need|we need)] [ME] [a|the|another|one|one more] [little|short|quick|proper] (lesson|tutorial|primer|class|crash course|course) (on|in|about) [finding|working out|figuring] [the|my|our] !(ASKED|((rail|board|post|stiffener|bay) count)) [out]
		^ LEDON (could|can|would|might|may) ((THEPUPIL)|i|we) (be|get) (taught|shown|told|led through|walked through) how [the|my|our] !(ASKED|((rail|board|post|stiffener|bay) count)) (is|gets) (found|worked out|figured|figured out|calculated|reckoned|arrived at|computed)
		^ LEDON [(i|we) (have|had|'ve)] [never] (i|we) (never|did not ever) (learned|learnt|was taught|were taught|had) (this|it|that|such things|this sort of thing) [in school|at school] (,|;|.|-|--) [so] [PLEAD] (teach|show|explain) [to] [ME] [the|my|our] !(ASKED|((rail|board|post|stiffener|bay) count)) [, MANNER|MANNER]
		^ LEDON [PLEAD] (teach|explain|show) [to] [ME] [the|my|our] !(ASKED|((rail|board|post|stiffener|bay) count)) [,] MANNER
		^ LEDON (pretend|imagine|act like|act as if|assume|make believe|say) (i am|i 'm|we are) [only|just] (a|an|##|a ##) [child|kid|beginner|schoolboy|schoolgirl|idiot|dunce|novice|year old|year - old|years old] [at this] (,|and|and then|;) [so] [PLEAD] (explain|teach|show|tell) [to] [ME] [how (you|we|one) (get|find|work out)] [the|my|our] !(ASKED|((rail|board|post|stiffener|bay) count))
		^ LEDON [(let us|can we|could we|shall we|(i|we) (want|would like) to)] (learn|study|practice|practise|review) [the|my|our] !(ASKED|((rail|board|post|stiffener|bay) count)) [together] [,] MANNER
		^ LEDON (let us|can we|could we|shall we) (learn|study) [the|my|our] !(ASKED|((rail|board|post|stiffener|bay) count)) [together]
		^ LEDON (take|go) (it|this) [nice and|real] (slow|slowly|easy|gently) (and|,) (show|teach|tell|explain to) ME how [the|my|our] !(ASKED|((rail|board|post|stiffener|bay) count)|(number of (RAIL|posts|bays|STIFF))) (is|gets|are|comes) (found|worked out|figured|figured out|calculated|reckoned|arrived at|computed|about)
		^ LEDON what (goes|enters|all goes) into [the|my|our] !(ASKED|((rail|board|post|stiffener|bay) count)) [,] MANNER`},
	{Where: asksEnd, Plain: "show me the whole sum", Said: `
		^ LEDON [PLEAD] (do not|without|never) (leave|leaving|skip|skipping|miss|missing|drop|dropping|hide|hiding|omit) [out] (a|any|one|a single|even one|the least) [line|step|bit|part] of [the|your] (sum|sums|working|math|maths|arithmetic|calculation|workings|figuring) [out]
		^ LEDON [the|your] (full|whole|entire|complete) (working|workings|sum|math|maths|arithmetic|calculation|derivation) , [please ,|please] [with] (nothing|no step|no line|not a line) (skipped|left out|missing|hidden|omitted|dropped)`},
	{Where: asksEnd, Plain: "what can i say about $1", Said: `
		^ LEDON what (do|should|can|would|must) (i|we) (say|type|tell you|ask|enter) (if|when|to) [i|we] [want|wanted|wish|need|would like|like] [to] (change|alter|set|move|make|have|get|fix) [the|my|our|an|a] !(KEPTNAME|STIFF|POST|RAIL|bays) [different|otherwise|bigger|smaller|wider]`},
	// What is taken back, kept, and brought to an end.
	{Where: asksEnd, Plain: "undo", Said: `
		^ LEDON (that|the|my) last (bit|thing|one|change|part|remark|line|entry) was (a (mistake|slip|blunder|goof|error)|wrong|no good|a bad idea) (,|;|.|-|--) [so] [please|can you|could you] (make (it|that) (go away|disappear|vanish)|get rid of (it|that)|take (it|that) (out|back|away)|lose (it|that)|(wipe|strike|scratch|erase|drop|cancel) (it|that) [out])`},
	{Where: asksEnd, Plain: "redo", Said: "^ LEDON (let (us|me)|(i|we) (will|would like to)|can (i|we)|could (i|we)) have (it|that) back [again] (after all|the way it was with it|in)"},
	{Where: asksEnd, Plain: "take that", Said: "^ LEDON (leave|keep|have|make|build|do|set) it (like|as in|as on|the way of|as) [in|it was in] [the|that|your] (trial|test|what - if|what if|experiment|tryout|last trial) [then|please]"},
}

// triedPlainly: a part and its figure follow, and nothing that asks, denies or holds them against anything.
func triedPlainly(_, after []scan.Atom) bool {
	return chunk.Figured(after) && len(after) < 12 && !phrase.SaidBeforeOf(Withheld)(after, nil) && !phrase.SaidBeforeOf(Viewed)(after, nil) && !phrase.SaidBeforeOf(AskOpeners)(after, nil)
}
