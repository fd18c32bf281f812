package lexicon

// stacks are turns of phrase about how high rails are stacked, how many of them there are, and how far apart they lie.
var stacks = []Entry{
	{Kind: Part, Key: "stack", Sense: Meaning("| wall height, rails, gap"), Ways: "[(whole|entire|full|finished|complete)] (stack|pile) of (rails|boards|slats|planks)"},
	{Kind: Loc, Key: "per bay", Sense: Meaning("bay | stiffeners, rails, gap, rail size, bays"), Ways: `
		BETWEEN (each|every|any) (pair|set) of [(neighboring|neighbouring|adjacent|END)] POST
		BETWEEN (each|every) (two|2|couple of) [(neighboring|neighbouring|adjacent)] POST
		BETWEEN [(each|every)] POST and (next|neighbor|neighbour)`},
	{Kind: Loc, Key: "between rails", Sense: Meaning("gap | bracket clearance"), Ways: `
		BETWEEN (one|each|any|a|every) RAIL and [(next)] (neighbor|neighbour|follower|fellow|mate|sibling) [RAIL]
		BETWEEN (one|each|any|a|every) RAIL and (one|RAIL) [(right|just|directly)] (above|below|over|under|beneath) [it]
		from (one|each|any|every) RAIL to [(next)] (neighbor|neighbour|fellow|one above|one below)
		BETWEEN RAIL and RAIL`},
	{Kind: Goal, Key: "fewest rails", Loose: true, Ways: "(fewest|least|lowest|smallest|minimum|min|minimal) [possible] RAIL (count|number|total|tally)\n(fewest|least|lowest|smallest|minimum|min|minimal) (count|number|total) of RAIL [possible]"},
	{Kind: Goal, Key: "most rails", Loose: true, Ways: "(most|highest|largest|greatest|maximum|max|maximal|biggest) [possible] RAIL (count|number|total|tally)"},
	{Kind: Best, Key: "fewest", Ways: "(smallest|lowest|least|minimum|min|minimal) possible (number|count|amount|quantity) of\n(smallest|lowest|least|minimum|min) (number|count) possible of"},
	{Kind: Best, Key: "most", Ways: "(greatest|largest|biggest|highest|maximum|max|maximal) possible (number|count|amount|quantity) of"},
	{Kind: Best, Key: "smallest", Ways: `
		as (SMALL|low) as (BRACKET|hardware|job|WALL|space|layout|rules|code|span|room|they|RAIL|POST|lumber|parts|inspector|law) [(themselves|themself|actually|possibly)] [(will|can|could|would)] (permit|permits|allow|allows|let|lets|tolerate|tolerates|take|stand|give|bear)
		as little`},
	{Kind: Best, Key: "largest", Ways: "as (BIG|high|tall) as (BRACKET|hardware|job|WALL|space|layout|rules|code|span|room|they|RAIL|POST|lumber|parts|inspector|law) [(themselves|actually|possibly)] [(will|can|could|would)] (permit|permits|allow|allows|let|lets|tolerate|tolerates|take|stand|give|bear)"},
	{Kind: BestTail, Key: "tail", Ways: `
		that (does|do|will do|gets|get|will get) [the] (job|trick|job done)
		as (brackets|bracket|hardware|rules|law|inspector|parts|lumber|posts) [(will|can|could)] (permit|permits|allow|allows|tolerate|let|lets)
		[(that)] (will|would|can) go in [there]`},
	{Kind: Quest, Key: "cuts", Loose: true, Ways: "(list|name|print|tell ME|give ME|show ME) [(out|off|me|us)] [all] (cuts|CUT lengths)"},
	{Kind: Fill, Key: "fill", Ways: "[(my|the|our|his|her)] (broom|brush|hose|mop|rake|shovel|leaf blower|blower|vacuum|paintbrush|paint roller|roller|screwdriver|drill|driver|impact driver|clamp|clamps|boot|boots|toe|hand|hands|arm) (needs|need|takes|wants|requires|calls for|must have|has to have|have to have)"},
	{Kind: Change, Key: "+=", Ways: "loosen\nloosens\nloosened\nloosening"},
	{Kind: Enter, Key: "enter", Ways: `
		[please] (calculate|compute|reckon|work|figure|go|run|plan) (with|from|by|off|on) (that|those|these|this)
		[please] (set|do|record|note) (that|it|so)
		(make|have) it so`},
	{Kind: Fill, Key: "fill", Ways: `
		(is|was) what (i|we|he|she|they|PERSON) [(am|are|is|have|had|has)] [(always|really|all|just)] (hoping for|after|aiming for|shooting for|looking for|going for|picture|pictured|picturing|imagine|imagined|imagining|envision|envisioned|visualize|ordered|want|wants|wanted|asked for|ask for|need|needs|needed|like|likes|liked|decided on|settled on|chose|picked|picked out|agreed on|prefer|prefers|fancy|fancies|hope for|hoped for|dreamed of|signed up for|paid for)
		(was|were|is|are|has been|have been|got|get|had been|being) [(all|finally|already|now|then)] (agreed|approved|settled|decided|determined|fixed|specified|ordered|requested|confirmed|chosen|laid down|nailed down) [(on|upon)] [(at|to be|as)]
		(i|we) [(all|both|finally|have)] agreed (on|to|upon)
		(get|gets|got|are|is|be|being|will be|are being|is being|getting) [(all|each|always)] (made|cut|built|ripped|milled|sawn|sawed) [up] (out of|from|of)
		(get|gets|got|are|is|be|being|will be|were|was) [(all|each)] (filled|filled in|filled up|closed in|boarded up|boarded|clad|fitted|fitted out|furnished|made up|closed off) (with|by|using|of)
		(consist|consists|consisting|comprise|comprises|comprising|composed|made up) [(of|out of)]
		(ought to|should|would|will|might|could|is going to|must) (look|be looking|come out looking) (right|good|nice|best|better|great|fine|about right|just right|balanced|proper|lovely|neat|handsome)
		(i|we) [(can|could|will be able to)] [(only|just|barely)] (afford|manage|budget for|spring for)
		(i|we) (am|are) (picturing|imagining|envisioning|visualizing|envisaging|seeing|proposing|requesting|specifying|choosing|picking|electing)
		(i|we) (propose|request|specify|elect|choose|pick)
		(is|are|would be|will be|seems|seem|sounds|sound) (acceptable|tolerable|agreeable|okay|ok|fine|good|all right|alright|allowed|satisfactory|bearable|permissible|livable|welcome) [(to|with|by|for) (me|us|him|her|them|everyone|everybody|PERSON)]
		after (planing|sanding|drying|milling|jointing|ripping|dressing|it dried|they dried|drying out|cleaning up|cutting|a pass through the planer|i planed them|we planed them|i planed it|being planed|being sanded|being milled)
		once (planed|sanded|dried|milled|jointed|dressed|dry)
		(ought to|would|must|might|could) be (plenty|enough|sufficient|ample)
		nothing (exact|precise|fancy|critical|special|strict|fussy|hard and fast|set in stone)
		not [(too|so|that|very|terribly|overly)] (critical|crucial|exact|set in stone|hard and fast|fussy|fussed|picky|particular|bothered) [(about (it|that|this|the exact figure)|to the (inch|millimeter|mm))] [exactly]
		nothing hangs on it
		back when (i|we) (sketched|planned|drew|started|talked about|discussed|laid out|designed|priced|began) [(it|this|that|things|the wall|up)]
		(here|there|on this one|this time|on this wall|on the new one) (too|also|as well)`},
	{Kind: Fill, Key: "fill", Ways: "[(because|since|as)] (i|we|they) (am|are) [(a bit|a little|kind of|really|pretty|running)] (short|low|tight|strapped) (on|of|for) (lumber|wood|boards|timber|stock|money|cash|time|material|materials|brackets|funds)"},
}
