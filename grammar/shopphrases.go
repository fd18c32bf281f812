package grammar

// What the patterns of the table below are made of, beside those of phraseTurns.
const (
	turnSize   = `(?:(?:[0-9]+|two|four|one|six) ?(?:x|by) ?(?:[0-9]+|three|four|six|eight|ten|twelve|sixes|fours|eights|tens)(?: ?s)?)`
	turnMoney  = `(?:\$ )?[0-9]+\.[0-9][0-9]`
	turnClient = `(?:he|she|they|i|we|(?:the |my |our |this )?(?:customer|client|fella|fellow|lady|gentleman|couple|guy|homeowner))`
)

// shopPhrases are turns of those who shop for the wall, and of whoever serves them.
var shopPhrases = []phraseTurn{
	// How far somebody can go.
	{" can", `(widest|biggest|largest|roomiest|broadest|smallest|tightest|narrowest|closest|fewest|most|least|lowest)((?: [a-z-]+){1,3}) (?:that )?(?:he|she|they) (?:can|could)(?: possibly| ever)? (?:have|get away with|get|make|build|manage|fit|do|afford|put in)`, "$1 $2 possible"},
	{" can", `(as (?:few|many|wide|little|much|small|tight|narrow|big|large|cheap|low)(?: [a-z-]+){0,4}?) as (?:he|she|they) (?:can|could)(?: possibly)?(?: have| get away with| get| make| manage| fit| build)?`, "$1 as possible"},
	// What a yard has.
	{" in ", `(?:all|everything|whatever|what|only ones|only lengths|lengths|only things?) (?:that )?(they|we|you|the yard|the store|the shop|this place|yard|store|shop) (?:have got|have|has|stock|stocks|carry|carries|sell|sells|keep|keeps|got)(?: left)?(?: here| out back| on the racks?| in stock| at this place| today| right now)* in (?:the )?(SIZE)(?: here| today| right now)? (?:is|are)`, "in $2 they only have"},
	{"back", `(?:round|around|out|in|over) (?:the )?back((?: too| also| as well)?)TAIL`, "$1"},
	{"come", `(?:boards|lumber|rails|planks|sticks|they) (?:come|comes|are sold|is sold)(?: in)? ([0-9].*?)(?: long|lengths)? (?:at|in) (?:this|the) (?:yard|store|shop|place|lumberyard)`, "they sell $1 long"},
	{"this ", `((?:footers?|eights|tens|twelves|fourteens|sixteens|long|feet|foot)(?: lengths)?) (?:at|in|from) this (?:yard|store|shop|place|lumberyard)TAIL`, "$1"},
	{" feet", `(SIZE) (?:at|of) ([0-9a-z]+) (?:foot|feet|ft) (are|is|cost|costs|run|runs|went|were|go|goes)`, "$2 foot $1 $3"},
	{"down to", `(are|is) (?:marked|knocked|priced|reduced|cut|dropped|lowered) down to (MONEY)`, "$1 now $2"},
	{"up to", `went up to (MONEY)`, "are now $1"},
	{"dropped|lowered|raised|bumped|marked|reduced|cut|knocked|slashed|upped|moved|brought|took|put", `^(?:CLIENT|the yard|the store|the boss|boss) (?:have |has )?(?:just |now )?(?:dropped|lowered|raised|bumped|marked|reduced|cut|knocked|slashed|upped|moved|brought|took|put)(?: up| down)?(?: the)?(?: price (?:of|on|for))?(?: the| our| all| all the)? (.*(?:SIZE|footers?|sixteens|twelves|tens|brackets?|anchors?|bases?|caps?).*?) (?:up |down )?to (MONEY)(?: each| apiece)?( ,| and)? ([^,]*(?:SIZE|footers?|sixteens|twelves|tens|brackets?|anchors?|bases?|caps?).*?) (?:up |down )?to (MONEY.*)`, "$1 are $2 $3 $4 are $5"},
	{"dropped|lowered|raised|bumped|marked|reduced|cut|knocked|slashed|upped|moved|brought|took|put", `^(?:CLIENT|the yard|the store|the boss|boss) (?:have |has )?(?:just |now )?(?:dropped|lowered|raised|bumped|marked|reduced|cut|knocked|slashed|upped|moved|brought|took|put)(?: up| down)?(?: the)?(?: price (?:of|on|for))?(?: the| our| all| all the)? ([^,]*(?:SIZE|footers?|sixteens|twelves|tens|brackets?|anchors?|bases?|caps?).*?) (?:up |down )?to (MONEY)`, "$1 are $2"},
	// What is measured at the yard, what hangs there already, and what is held up.
	{"tape", `(?:(?:i|we) )?(?:have )?(?:just )?(?:put|ran|laid|held|took|pulled|stretched) (?:a|the|my|our) (?:tape measure|tape|ruler|rule|calipers|caliper) (?:on|to|across|over|against|along) (?:one of |some of |a few of )?(?:the |their |these |those |his |a )?(?:[a-z]+ )?(?:boards?|rails?|planks?|them|(?:2|two) ?(?:x|by) ?(?:6|8|10|six|sixes|eight|eights|tens)(?: ?s)?)(?: ,)?(?: and)? (?:they are|it is|they come to|it comes to|they measure|it measures|they read|it reads|they came to|it came to|they were|it was)`, "the rails are"},
	{"measured", `(?:i|we) (?:have )?(?:just )?measured (?:one of |some of |a few of )?(?:the |their |these |those |his )?(?:boards?|rails?|(?:2|two) ?(?:x|by) ?(?:6|8|10|six|sixes|eight|eights|tens)(?: ?s)?)(?: ,)?(?: and)? (?:they are|it is|they come to|it comes to|they measure|it measures|they came to|it came to|they were|it was)`, "the rails are"},
	{" up", `CLIENT (?:already )?(?:is|has|have)(?: already)?(?: got)?(?: already)? ((?:the )?(?:[a-z0-9]+ )?(?:rail|board|slat|plank)(?: [0-9]+)?) (?:up|mounted|hung|fastened|installed|in place)(?: already| now)?( ,| and| \.| ;)`, "$1 is up already $2"},
	{" up ", `(base|bases|standoff|standoffs) (holds|lifts|raises|keeps|carries|puts|sets|hold|lift|raise|keep) (?:his|her|their|my|our) ((?:new |added )?posts?) up`, "$1 $2 the $3 up"},
	// Things that somebody has picked.
	{"picked|chose|bought|buying|getting|ordered|using|uses|selected|like|found|grabbed|brought|went with|settled|decided", `(brackets?|bases?|posts?|boards|rails|anchors|caps|stiffeners|hangers?) (?:that |which )?(?:he|she|they|the customer)(?: is| are| has| have)?(?: just| already)? (?:picked|chose|chosen|bought|buying|getting|ordered|using|uses|selected|likes|liked|found|grabbed|brought|went with|settled on|decided on)(?: out| up| in)? (stick|sticks|stand|stands|are|is|measure|need|needs|reach|reaches|hold|holds|cost|costs|run|runs|take|takes|go|goes|have|has|come|rise|rises)`, "$1 $2"},
	{"nything ", `^(?:with (?:the|these|those|his|her|their) brackets?(?: (?:that )?(?:he|she|they|i|we)(?: is| are| has| have)?(?: [a-z]+){1,2})? ,? ?)?anything (?:under|below|less than|tighter than|smaller than|closer than|narrower than) (.{1,40}?)(?: of gap| gap| between (?:boards|rails|them)| apart)? (?:and|,|then) (?:they|the brackets|brackets) (?:will |would |start to )?(?:run into|hit|touch|collide|clash|foul|bump|overlap|bang into|meet|interfere)(?: with)?(?: into)?(?: each other| one another)?TAIL`, "bracket clearance is $1"},
	// Papers, and who gave them.
	{"quote|estimate|bid|bill|slip|ticket|invoice|receipt|drawing|sketch|offer+handed|given|gave|quoted|sent|printed|emailed|texted|faxed|got|received", `(quote|estimate|bid|bill|slip|ticket|invoice|receipt|drawing|sketch|offer) (?:that |which )?(?:he|she|they|i|we|the [a-z]+)(?: have| has| had| was| am)?(?: only)?(?: just)?(?: got| been| was)? (?:handed|given|gave|quoted|sent|printed|emailed|texted|faxed|got|received)(?: me| us| him| her)?(?: out| in| over)?(?: today| yesterday| this morning| just now| at the counter)? (comes to|is|says|adds|shows|has|calls|runs|totals|lists|reads|came to|was|claims)`, "$1 $2"},
	// What is tried.
	{" if ", `if (i|we|he|she|they) (?:got|bought|took|chose|picked|ordered|grabbed|purchased|went for|went with) (SIZE)`, "if $1 used $2"},
	{"suppos|say|imagine|pretend", `^(suppose|supposing|say|imagine|pretend|let us say) (i|we|he|she|they) (?:got|bought|took|chose|picked|ordered|grabbed|purchased|went for|went with) (SIZE)`, "$1 $2 used $3"},
	// Whatever does it.
	{"whatever|whichever", `(?:^|(?:just )?(?:do|go with|pick|choose|use|give me) )(?:whatever|whichever)(?: one| way| plan| layout| option| version)? (?:keeps|holds|gets|makes|brings|leaves) (?:the |my |our |his |her )?(?:bill|costs?|price|total|spending|outlay)(?: down)?(?: at)?(?: the)? (?:lowest|smallest|least|down|cheapest|low|minimum)TAIL`, "cheapest"},
	{"whatever|whichever", `(?:^|(?:just )?(?:do|go with|pick|choose|use|give me) )(?:whatever|whichever)(?: one| way| plan| layout| option| version)? (?:leaves|makes|wastes|gives|throws away|throws out|has|produces)(?: me| us)? (?:the )?(?:least|fewest) (?:scraps?|waste|offcuts|leftovers|wood|lumber)TAIL`, "least waste"},
	{"nything ", `anything (?:that )?(?:i|we|he|she|they) (?:will|would|might|may|could|am going to|are going to|is going to) (?:later )?(?:kick|be kicking|hate|regret|be sorry|curse|rue|wish|be kicked)(?: [a-z]+)*?(?: before .*)?TAIL`, "anything to watch out for ?"},
	{" before ", `(anything (?:else )?(?:i|we|he|she|they) (?:should|need to|ought to|must|had better) know) before (?:i|we|he|she|they) (?:pay|buy|check out|order|load up|leave|go|head out|pay up)TAIL`, "$1 ?"},
	// What is asked for somebody else.
	{" you to ", `CLIENT (?:wants|want|would like|needs|asked) you to (walk|take|talk|run|guide|lead|show|tell|explain|teach|give|list|draw|print|save|read)`, "please $1"},
	{"through", `CLIENT (?:wants|want|would like|needs) to be (?:walked|taken|talked|run|guided|led) through`, "walk me through"},
	{" through", `(walk|take|talk|lead|run|guide|step|bring) (?:him|her|them|the customer|the lady|the gentleman|the fella|this customer) through`, "$1 me through"},
	{"first", `what (?:should|do|can|shall) (?:i|we) (?:tell|have|get) (?:him|her|them|the customer|this customer) (?:to )?(?:do|start with) firstTAIL`, "what do i do first ?"},
	{" can ", `(?:which|what) (?:set - ups|set ups|setups|combinations|arrangements|layouts|versions|configurations|designs|options|choices) (?:can|could|should|may|do) (?:i|we) (?:offer|give|show|suggest|sell|propose|quote|have for)(?: to)? (?:him|her|them|the customer|this customer|this couple|the lady|the gentleman)TAIL`, "what would work ?"},
	{"changed ", `CLIENT (?:has |have |is )?(?:just |since )?changed (?:his|her|their|my|our) minds? (?:about|on|over) (the [a-z -]+?) ,? ?(?:so |and |please |just )?(?:drop|forget|scrap|lose|scratch|ditch|remove|skip|kill|cancel)(?: it| that| them)(?: please| then)?TAIL`, "forget $1"},
	{" than ", `CLIENT (?:can|could) not (?:mark|measure|work|cut|read|see)(?: anything)?(?: any)? (?:finer|closer|smaller|tighter) than (?:an? |the )?(?:nearest )?(eighth|sixteenth|quarter|half|thirty - second|millimeter|1/8|1/16|1/4|1/2|1/32)(?: of an inch| inch)?TAIL`, "work to the nearest $1"},
	{"mis", `,(?: sorry| oops| no| wait)?(?: ,)? i (?:misheard|misread|misspoke|mistyped)(?: him| her| them| that| it)? ,`, ", sorry ,"},
	// What something is for.
	{" so ", `^((?:put|stick|save|make|draw|print|export|send|write|give|cut|keep|drop|dump) .*) so (?:that )?(?:i|we|he|she|they|the [a-z]+|my [a-z]+) (?:can|could) (?:show|see|look at|bring|hand|take|read|open|send|saw|cut|rip|chop|run|do|load)(?: it| them| this| that| all of them| everything)?(?: all)?(?: to)?(?: (?:the|my|his|her|their|our) [a-z]+)?(?: in one go| at once| in one pass| for me| in a batch| on (?:the|their) (?:saw|phone|computer|screen))*TAIL`, "$1"},
	// More of what is on the racks, in the cart and at the register.
	{" left ", `(?:all|what) (?:that )?(?:is|they have|we have|they have got|we have got) left (?:is|are)`, "they only have"},
	{" but ", `(they|we) (?:do|does) not (?:have|carry|stock|sell|keep) anything in (SIZE) (?:but|except|besides|other than)`, "in $2 $1 only have"},
	{"how many", `how many (?:boards|sticks|pieces|SIZE|sixteens|twelves|tens|eights|fourteens) (?:am i|should i|do i|must i|are we|should we|do we) (?:throw|throwing|load|loading|grab|grabbing|haul|hauling|stick|sticking|toss|pile|put|putting)(?: (?:on|in|into|onto) (?:the|my|our) (?:cart|truck|trailer|van|car))?TAIL`, "what do i have to buy ?"},
	{"list", `(?:a |the )?list (?:that )?(?:i|we|he|she|they) can (?:take|bring|carry|use|show|hand)(?: [a-z]+){0,4}TAIL`, "the shopping list"},
	{" half ", `(a|the) half (dozen)`, "half $1 $2"},
	{" for ", `(extra|spare|more) (boards?|sticks?|pieces?|one|lumber) for (?:the )?(?:knots|splits|mistakes|screwups|culls|bad ones|cracks|warped ones|mess - ups|goofs)TAIL`, "$1 $2"},
	{"hate", `^(?:i|we|he|she|they|customer) (?:really |just )?(?:hate|hates) (?:paying|to pay) for (?:scraps?|waste|offcuts|leftovers)TAIL`, "least waste"},
	// What somebody else says is to be done, or has not made up their mind about.
	{"back and forth", `^CLIENT (?:has|have|is|are) (?:gone|been going|going|been) back and forth(?: on (?:it|this|that))? ,? ?(?:but|and) (?:it is|he wants|she wants|they want)`, "he wants"},
	{" not ", `((?:forget|scratch|drop|scrap|ditch|lose) .*) , (?:he|she|they) (?:has|have|is|are) not (?:decided|sure|settled|made up (?:his|her|their) minds?)(?: on (?:it|that|one))?(?: yet)?TAIL`, "$1"},
	{" for ", `(fit|work|do|be ok|be okay|be enough|be possible) for (?:him|her|them|this customer)TAIL`, "$1"},
	{"ers ", `(?:could you |can you |please )?(print|save|draw|compare|export) hers (to|as|in|with|against)`, "$1 this $2"},
	{"his ", `^(?:could you |can you |please )?(print|save|draw|compare|export) his (to|as|in|with|against)`, "$1 this $2"},
	{"hers ", `(do|build|make) hers (the same as|just like|exactly like|like) ([a-z]+ wall)`, "same as $3"},
	{" along", `(warnings?|cautions?|anything|something) (?:that )?(?:i|we) (?:should|need to|ought to|can) (?:pass along|pass on|mention)(?: to (?:him|her|them|the customer))?TAIL`, "anything to watch out for ?"},
	{" take ", `^(?:he|she|they|the customer|customer) will (?:take|go with|have) (?:the )?((?:first|second|third|fourth|last) (?:one|option|choice|way)|option [a-z0-9]+)(?: you (?:gave|offered|had))?TAIL`, "take the $1"},
	{" one", `^(?:the )?(first|second|third|fourth) (?:one|option|choice) (?:is|'s) (?:the one|what) (?:he|she|they|i|we) (?:want|wants|like|likes|prefers?|picked|chose)TAIL`, "take the $1 one"},
	{"picked", `^(?:he|she|they|the customer|customer) (?:has |have |is )?picked (?:the )?((?:first|second|third|fourth|last) (?:one|option|choice|way)|option [a-z0-9]+)TAIL`, "take the $1"},
	{" all ", `^(?:thanks ,? )?(?:he|she|they|the customer|this customer) (?:is|are) all (?:set|done|taken care of)TAIL`, "i am all set"},
	{"changed ", `(?:he|she|the customer|this customer|customer) (?:has |have |is )?(?:just )?changed (?:his|her|their) minds? (?:about|on) (the [a-z]+(?: [a-z]+)?) ,? ?(?:and |so |please )?(?:make it|now it is|it is|it should be|he wants|she wants|she wants it|he wants it)`, "make $1"},
	{"no longer", `^(?:he|she|they|the customer|customer) no longer (?:wants?|needs?|cares? (?:about|for))`, "i no longer want"},
	{" says ", `^(he|she|customer|the customer|the lady|the gentleman|the fella) says (?:to )?(make|keep|leave|put|set|use|hold|give|go)`, "$2"},
	{" said ", `^(he|she|customer|the customer|the lady|the gentleman|the fella) said (?:to )?(make|keep|leave|put|set|use|hold|give|go)`, "$2"},
	{" up to ", `^((?:i|we|let us|he wants to|she wants to) )?(?:put|push|take|move|bump|crank) (the (?:gap|wall|opening|spacing|height|spare)s?) up to`, "$1 raise $2 to"},
	{" like", `(?:this one|this|it|this wall) (?:done|built|made) (?:just |exactly )?like (the [a-z]+ wall|[a-z]+ wall)`, "this one like $1"},
	{" on ", `(?:i|we|he|she|they) (?:have|has)(?: only)?(?: got)?(?: only)? (?:\$ )?([0-9.]+|NUM hundred(?: and [a-z]+)?)(?: dollars| bucks)? on (?:me|us|him|her|them)(?: today| right now)?TAIL`, "budget $1 dollars"},
	{"grab|pull|pick out|throw in|cart", `(?:what|which|how many)(?: ones| boards| of these| lumber| stuff| all)? (?:should|do|must|shall) (?:i|we) (?:need to )?(?:grab|pull|pick out|throw in|put in (?:my|the|our) cart)TAIL`, "what do i have to buy ?"},
	// Who lives there, what came in, and what a customer would be better with.
	{"toddler|bab|kid|child|dog|puppy|cat|grandk|grandc|twins|wheelchair|stroller|mower|wheelbarrow|walker|scooter", `^CLIENT (?:have|has)(?: got)?(?: a| an| two| three| some)?(?: [a-z]+)? (?:toddlers?|baby|babies|kids?|child|children|dogs?|puppy|cats?|grandkids|grandchildren|twins|wheelchair|stroller|mower|wheelbarrow|walker|scooter)(?: at home)?(?: , so| so| ,)`, ""},
	{"better off", `better off (with|without)`, "better $1"},
	{"number of ", `(?:least|lowest|smallest|minimum) number of (posts|rails|boards)`, "fewest $1"},
	{" in ", `^(?:the |a |our |new )?(?:truck|delivery|shipment|load|order)(?: just| finally| has)? (?:came|come|arrived|got|rolled)(?: in)?(?: today| this morning| yesterday)?(?: ,)?(?: and| so)?(?: now)? (we|they|the yard) (?:have got|have|has|got)(?: some)? ([a-z0-9]+(?: footers?)?)(?: now| in)?TAIL`, "$1 also have $2"},
	{" on ", `(is|are) on (?:special|sale|clearance|offer)(?: today| this week| now)? (?:at|for)`, "$1"},
	{" for ", `(print|save|draw|put) (this|that|it|the drawing|the sheet|the cuts) for (?:him|her|them|(?:the|this) (?:customer|gentleman|lady|fella|couple|guy)) (as|to|in)`, "$1 $2 $3"},
	{" up", `^what (?:do|should) i ring (?:him|her|them|it|this customer)? ?up (?:for|at)TAIL`, "what does it cost ?"},
	{" owe", `^(?:so )?(?:what|how much) (?:does|do|will|would) (?:he|she|they|this customer|the customer) oweTAIL`, "what does it cost ?"},
	{"what all ", `^what all (?:does|do) (?:he|she|they|this customer|the customer|i|we) need(?: to (?:buy|get|pick up))?TAIL`, "what do i have to buy ?"},
	{"they want ", `^they want (NUM (?:rails?|boards?|slats?|bays?|openings?|stiffeners?))`, "he wants $1"},
}
