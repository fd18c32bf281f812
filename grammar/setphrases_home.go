package grammar

// homePhrases are ways in which people at home tell what they want, where they stood as they measured it, and what is nobody's business.
var homePhrases = []setPhrase{
	// What they think of, and what they would be glad of.
	{"i|we am|are ?all|both ?just|currently|still|now thinking ?of ?maybe|perhaps #", "we want $1"},
	{"it would be ?such ?quite blessing|relief|godsend|mercy|treat|dream|kindness|comfort|pleasure|joy|delight|weight ?off ?my ?mind|shoulders if", "it would be nice if"},
	{"it would be ?such ?quite big|huge|great|real|enormous|tremendous help|relief|comfort|load|weight ?off ?my ?mind|shoulders if", "it would be nice if"},
	{"^ what|thing|things|something ?that i|we care|cares|worry|mind ?about ?the most|mostly ?of|above ?all ?about ?now is|are|would ?be ?having|getting|keeping|making ?sure ?that", "i want"},
	{"^ what matters|counts ?the most|mostly ?to|for ?ME is|are|would ?be ?having|getting|keeping", "i want"},
	{"suppose|supposing|imagine|pretend i|we|you|they ?all ?just tried|try ?out ?with", "suppose"},
	{"what if i|we|you|they ?all ?just tried|try ?out ?with", "what if"},
	// What they saw and measured.
	{"between ?two ?both ?porch|deck|patio|front|back|outer|end|outside|corner POST ?, ?as measured|measuring|taken|going|reading|measure ?from ?inside ?face to ?inside ?face", "between the posts"},
	{"# of ?open|clear|empty|free|usable|plain air|room|space between", "$1 between"},
	{"slopes|sloped|pitched|pitches|slants|tilts|graded for|to ?let ?allow ?shed ?help ?good ?the drainage|runoff|rain|rainwater|water|drain ?runs|run ?off|away", "slopes"},
	{"i|we|PERSON ?just held|hold|set|laid|lay|placed|stuck|leaned|pressed|ran ?my|the|our ?little ?big ?# ?long ?spirit|torpedo level|levels|plumb ?bob|line ?up against|on|to|onto|alongside|beside ?of", "i put a level on"},
	{"# RAIL|upright|uprights ?in|per|to|for ?each|every ?BAY to stiffen|strengthen|reinforce|steady|firm|stabilize|brace ?up ?it|things|them|everything|that|WALL|RAIL|whole ?thing|WALL ?up ?bit|little ,", "$1 stiffeners per bay ,"},
	{"# RAIL|upright|uprights ?in|per|to|for ?each|every ?BAY to stiffen|strengthen|reinforce|steady|firm|stabilize|brace ?up ?it|things|them|everything|that|WALL|RAIL|whole ?thing|WALL ?up ?bit|little $", "$1 stiffeners per bay"},
	{"# BAY to|that ?need ?we|i ?will ?must fill|board|cover|close|infill|filling|boarding ?in|up ?with|using ?RAIL ?, ?all|in ?told|all|total|together $", "$1 bays"},
	{"kitchen|school|wooden|desk|sewing|plastic|folding|cloth|tailor|cheap|children ruler|yardstick|tape ?measure", "ruler"},
	{"two|both|any|pair|neighboring ?two ?of ?these|those|them|my BRACKET ?will|would|can|could|do|may !bump|bumps|touch|hit|clash|collide|meet|rub|foul|bang|knock", "the brackets $1"},
	{"higher|further|farther ?up than ?its ?the top|upper ?edge of RAIL", "above the top edge of the board"},
	{"higher|further|farther ?up than RAIL 's top|upper ?edge", "above the top edge of the board"},
	{"marks|lines|divisions|graduations|markings|ticks on ?my|the ?old ?measuring tape|ruler|rule ?measure", "tape"},
	{"!sixteenths|eighths|quarters|thirtyseconds|sixteenth|eighth|quarter ?, ?and|but ?it|they ?go|goes|does|is no|not|nothing|never ?any ?go ?is finer|smaller|closer|further|less ?than ?that $", "$1"},
	{"BAY ?in ?between ?two POST ?should|must|to ?all come|comes|coming|turn|turns|end|work|works out|up ?to|at|with|be ?be ?exactly|precisely same|equal|identical", "bay the same"},
	{"!first|second|third|fourth - !BAY", "$1 $2"},
	{"!RAIL ?from|on|up|at ?bottom|top has|have|gets # to fit|go|slot|sit ?in|into|between ?it|there $", "$1 measures $2"},
	{"from bottom|top|floor has|have|gets # to fit|go|slot|sit ?in|into|between ?it|there $", "from the bottom measures $1"},
	// One rail is there already.
	{"there|we|i is|are|have|got ?already ?just one RAIL ?already up|on|mounted|installed|in|there ?place ?, ?the ?very bottom|lowest|first ?one|board|rail ?, ?and ?with its top ?edge ?is|at|sits|sitting|being ?at #", "the bottom board is already up , its top is at $1"},
	// What is written on a paper.
	{"PAPER says|tells|wants|calls|asks|said|told|wanted ?us|me|you ?for to ?put ?my MARK ?up ?on ?the POST ?at", "the plan has marks at"},
	// What they have, where it came from, and what the store did.
	{"^ from|out|over|of ?of ?left ?my|our ?PERSON 's ?old|back|little shed|garage|barn|attic|basement|workshop|shop|pile|loft|project|job|house|deck|fence|yard|place ?pile ?, i|we", "i"},
	{"^ from ?left ?over ?my|our ?old|back|little|last|previous|other shed|garage|barn|attic|basement|workshop|shop|pile|loft|project|job|house|deck|fence|yard|place ?pile ?, i|we", "i"},
	{"SELLER ?has|have ?just ?now ?apparently stopped|quit|ceased carrying|selling|stocking|having|offering", "they stopped carrying"},
	{"SELLER|they ?has|have ?just ?now ?apparently discontinued|discontinuing", "they stopped carrying"},
	{"at|by checkout|register|cashier ?counter|desk|line $", ""},
	// Keeping, calling and taking.
	{"hang|hold on to|onto it|this|that|them ?, ?please", "keep it"},
	{"hang|hold onto it|this|that|them ?, ?please", "keep it"},
	{"i|we liked|preferred|wanted|loved it|that ?better|more ?the ?way ?it ?was before i|we took it|that ?back ?, so|and", ""},
	{"^ out|from|among|between ?all ?of those|these|them|all|your ?options|choices|ways|suggestions|possibilities ,", ""},
	{"^ of those|these|all ?options|choices|ways|suggestions|possibilities ,", ""},
	{"that|this trial|test|tryout|experimental|tried one is|was|'s", "that trial is"},
	{"little|tiny|cute|shiny|fancy|silly|wee !BRACKET|screws|boards|POST|STIFF", "$1"},
	{"shorter|smaller ?in|overall ?all|total than space|gap|room|spot|place|opening ?that|which it|they|each ?one goes|go|sits|sit|fits|fit|belongs|belong ?in|into ?to", "shorter than the space"},
	{"shorter|smaller in|overall ?all|total than its space|gap|room|spot|place|opening", "shorter than the space"},
	// What is said of feelings.
	{"^ do not spare ?the ?my|me|us|our ?feelings|details|detail|any ?details|detail ,", ""},
	{"^ ?the|all|those|these METRIC|CUSTOMARY|fractions|units make|makes|made|making|give|gives|gave ?my|our|PERSON|me|us ?'s head|eyes|brain|me|us ?a spin|hurt|ache|swim|cross|dizzy|crazy|nuts|headache|headaches $", ""},
}
