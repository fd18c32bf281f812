package grammar

// checkedPhrases are ways of those who check what somebody else has drawn: inspectors, reviewers, neighbors with a plan in their hand.
var checkedPhrases = []setPhrase{
	// What is to be shown, and what is to be justified.
	{"lay|set|spell out ?for ?me|us !which|what|how|where|why", "tell me $1"},
	{"lay|set|spell out ?for ?me|us ?all ?of !cuts|cutting|lengths|posts|shopping|costs|steps|numbers ?list|lengths|locations|positions|order ?for ?me|us $", "show me $1"},
	{"give|read|say|play|show|tell ?it me|us ?it back whatever|what|all|everything|anything ?that|of ?what", "tell me what"},
	{"give|read|say|play ?it back to me|us whatever|what|all|everything|anything ?that|of ?what", "tell me what"},
	// Papers and who made them.
	{"!PAPER ?number a|s|d|c|l|p|b - #", "$1"},
	{"!PERSON on|at|during|after ?his|her|their|our ?the last|first|previous|second|recent|latest|final visit|inspection|walkthrough|walk|trip|call|stop|meeting", "$1"},
	{"it is @ ?RAIL|planking PERSON ?'s ?is|are ?has|have propose|proposes|proposing|proposed|showing|calling|drawn|specifying|specified|specifies|suggesting|suggests|planning ?for ?on", "they propose $1 rails"},
	{"PAPER|PERSON runs|goes|ranges|run|go|range ?anywhere from # to|through # RAIL", "they say $1 to $2 rails"},
	{"PAPER|PERSON runs|goes|ranges|run|go|range ?anywhere from # RAIL to|through|up ?to #", "they say $1 to $2 rails"},
	{", whatever|whichever|regardless|notwithstanding|despite|never|no ?mind|matter ?of ?what ?it ?is PAPER|PERSON ?'s ?has|have|is|are ?got says|shows|drew|drawn|states|calls|wrote|written|shown|said|put ?for ?down $", ""},
	{"!out|same|alike|equal|even ?size|width ?, whatever|regardless|no|never ?mind|matter ?of ?what PAPER|PERSON ?'s ?has|have|is|are ?got says|shows|drew|drawn|states|calls|wrote|written|shown|said|put ?for ?down", "$1"},
	{"PERSON is|are looking|after|asking for a WALL", "they want a wall"},
	{"post to post , center|centre on|to center|centre ,", "the centers"},
	{"center|centre on|to center|centre , post to post ,", "the centers"},
	{"!screws|screw ?are|is|run|runs|cost|costs|go ?for ?at # a|the|each|every hundred", "$1 are $2 per hundred"},
	{"# a|per|the|for hundred on|in|per|from the|his|her|their|that PAPER", "$1 per hundred"},
	{"on|in|per|from the|his|her|their|that PAPER ?, !screws|brackets|anchors|bases|caps", "$1"},
	{"PERSON squares|trims|nips|saws|cleans|cuts ?off|away # off|from|of each|every RAIL|length|stick|stock ?to ?square ?it $", "trim $1"},
	{"i|we square|trim|nip|saw|clean|cut ?off|away # off|from|of|per ?each|every RAIL|length|stick|stock ?to ?square ?it $", "trim $1"},
	{"i|we ?have tried|tested|handled|checked|mocked|held|fitted ?out|up the|his|her|their|those BRACKET , ?and they|BRACKET", "the brackets"},
	// What happens if it is not so.
	{", ?or ?else i|we|PERSON will|can|would|could|am|is|do|does|shall not ?be ?able ?going ?to pass|passing|sign|signing|approve|approving|accept|accepting|allow|allowing|okay ?off ?on it|this|that|them|anything|off otherwise|unless|else", ""},
	{", ?or|otherwise|else i|we|PERSON ?am|is|are ?would|will ?going ?have|has ?to fail|fails|failing|flag|flags|reject|rejects|rejecting|bounce|bounces|write|refuse|refuses ?to ?pass|sign ?off ?on it|this|that|them|me|us ?up ?down ?otherwise $", ""},
	{", ?or ?else it|that|this ?job|wall ?will|would|does ?not fail|fails|flunk|flunks|pass ?inspection|review $", ""},
	// Entered here.
	{", ?so ?and ?please enter|take|use|put|record|treat|hold|set|log that|it|this|them ?down ?in as ?an rule|limit|requirement|standard|cap|restriction|bound ?for ?this ?here ?job|wall $", ", enter that"},
	{", ?so ?and ?please ?let ?us hold|keep|stick|work|build|limit ?it|this|everything|them|us to that|it|this ?figure|number ?please $", ", enter that"},
	{", ?so ?and ?please ?let ?us stick|abide|hold by|with that|it|this ?figure|number ?please $", ", enter that"},
	{"!millimetres|millimeters|mm|metric|inches|imperial ?, ?so ?please switch|change|convert|flip|turn ?it|everything|things|units over|accordingly|please ?to ?it|that ?please $", "$1"},
	// How it was measured.
	{", ?as|because|since|and i|we ?have ?just put|used|laid|set|held|ran|took|checked|tried calipers|caliper|tape|ruler|rule|gauge|micrometer|square ?on|to|against|across|with it|one|them|each|several|two|few|couple ?of ?them ?myself $", ""},
	{"!posts ?, clear $", "$1"},
	{"# , clear ?inside|width|opening $", "$1 clear"},
	{"FLOOR ?surface ?there right|just where|wherever WALL ?itself ?will ?is goes|stands|sits|stand|go|sit|standing|going|built", "floor"},
	{"FLOOR where|wherever WALL ?itself ?will ?is goes|stands|sits|stand|go|sit|standing|going|built", "floor"},
	// Commands of a desk.
	{"?that ?my last|latest|previous|most ?recent entry|input|line|one ?i|we ?made|entered was|is a|my|wrong ?own mistake|error|slip|fault|goof|mine|one ?, ?so ?please reverse|undo|void|strike|cancel it|that", "undo"},
	{"reverse|void ?out ?that|the|my last|latest|previous|most ?recent entry|change|input|line|one|thing|edit", "undo"},
	{"hold|stack|put|lay|set|match|check|compare what i|we ?have ?got ?here|now|so|there ?far ?up|down against|with|beside|to|alongside", "compare this with"},
	{"that|this trial|try|tryout|experiment|version|test|scenario ?run ?is|was|looks|seems good|fine|okay|ok|acceptable|right|best|better ?, ?so ?and ?please keep|take|use|adopt|accept it|that", "take that"},
	{"close it|this|that|everything ?all out|down|up $", "quit"},
	{"tie|match|peg|set|make|equate !GAP UNDER ?the LOWEST ?RAIL to|with|at|be ?the ?same ?width|size ?as rest|others|other ?GAP", "bottom gap same as the gap"},
}
