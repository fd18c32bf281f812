package grammar

// What the patterns of checkers and of those who measure are made of.
const (
	turnClaims = `(?:says?|said|claims?|claimed|shows?|showed|reads?|insists?|insisted|swears?|swore|states?|stated|reckons?|thinks?|writes?|wrote|lists?|quotes?|quoted|wants?|requires?|has|draws?|drew)`
	turnMetric = `(?:millimet(?:er|re)s?|centimet(?:er|re)s?|mm|cm|metric)`
	turnInches = `(?:inch|inches|feet|feet and inches|imperial)`
	turnRecord = `(?:inspections?|inspecting|measurements?|reports?|notes|measuring|figuring|work|checks|checking|drawings?|layouts?|sums|math|building|woodwork|woodworking|carpentry|records|sketches|surveys|surveying|planning|calculations)`
	turnVisit  = `(?:inspection|visit|review|check|checking|report|session|questions|business|work|day|lesson|class|survey|audit|round|shift|appointment|site visit|checks)`
	turnAll    = `(?:it|this|that|mine|ours|them|all|everything|lot|thing|whole|me|us|my|our|the|a|an|these|those|of|up|out|down|please|wall|layout|plan|job|findings|results|result|report|notes|summary|numbers|figures|answers?|work|sheet|steps|what|we|have|got|there|one|copy|full)`
	turnPage   = `(?:a|an|the|my|our|one) (?:new )?(?:web )?(?:page|file|sheet|document|webpage|html file|html page|handout)(?: (?:called|named|titled|by the name of))?`
	turnSketch = `(?:it|this|that|mine|ours|all|everything|thing|whole|me|us|my|our|the|a|an|of|up|out|please|wall|layout|plan|picture|drawing|sketch|elevation|diagram|view|image|one|job|what|we|have|got|copy)`
	turnSvg    = `(?:a|an|the|my|our|one) (?:new )?(?:picture |drawing |image |svg |vector )?(?:file|picture|drawing|image|sheet)(?: (?:called|named|titled|by the name of))?`
)

// checkersTurns are turns of those who hold a builder's word against the wall, of those who write it down, and of those who measure.
var checkersTurns = []phraseTurn{
	// Whether what was claimed holds, and what is to be done about it.
	{"right ", `, (?:the |a )?(?:right|correct|proper) (?:number|count|amount|quantity|total|figure|size|price|width|height|length|spacing)(?: of them| do you think)? \?$`, ", is that right ?"},
	{"it ?", `^(.*\b` + turnClaims + `\b.*[a-z0-9"]) [.,;] (?:and )?(?:is|was|does|did|will|would|can|could|has|had|really , is) it(?: really| now| though)? \?$`, "$1 , is that right ?"},
	{"they ?", `^(.*\b` + turnClaims + `\b.*[a-z0-9"]) [.,;] (?:and )?(?:are|were|do|did|will|would|can|could|have|had) they(?: really| now| though)? \?$`, "$1 , is that right ?"},
	{"to ", `^(.*\b` + turnClaims + `\b.*[,.;])(?: (?:so|and|then|please|just|let us|we will|i will|we should|you should))* (?:hold|stick|keep|hew|adhere|work|build|design|conform) to (?:that|it|those|them|this)( [,.;]|$)`, "$1 use that $2"},
	{"let us ", `^(.*\b` + turnClaims + `\b.*[,.;])(?: (?:so|and|then|but|well|ok|okay))* let us (use|take|enter|go with) (that|those|them|it|these)`, "$1 $2 $3"},
	{"quoted", `(?:have|has|had) (?:just |already |also )?quoted`, "quoted"},
	{"all in ", `all in (?:for|on|with) (?:all )?(?:the |his |their )?(?:materials?|lumber|wood|timber|everything|lot|job|wall|hardware)`, "all in"},
	{" against ", `(?:hold|put|set|check|test|try|measure) (?:the following|these|this|those|that|what follows) (?:up )?against (?:my|our|your|the) (?:own )?(?:numbers|figures|layout|plan|wall|rest|sums|rules) :`, "check :"},
	{"look at ", `(?:have|take|give me) a (?:good |quick |close |hard |proper )?look at (his|her|their) (?:numbers|figures|dimensions|claims|measurements) [:,]`, "check $1 numbers :"},
	{"will|would|should|ought+footer|eights|tens|twelves|fourteens|sixteens", `^((?:.* )?(?:says?|said|claims?|claimed|reckons?|insists?|swears?|thinks?) .*(?:footers?|eights|tens|twelves|fourteens|sixteens)) (?:will|would|should|ought to) (?:do it|cover it|see me through it|be enough for it)( \?)?$`, "$1 , is that right ?"},
	{"those ", `([,.;])(?: (?:so|and|then|please|now|just))* (?:put|enter|key|punch|add|write|use|note|set|record|go with|plug|log|type) (?:those|these) (?:prices|numbers|figures|quotes|costs|rates|values)(?: in| down| on)?`, "$1 use those"},
	{"that ", `([,.;])(?: (?:so|and|then|please|now|just))* (?:put|enter|key|punch|write|use|note|record|go with|plug|log|type) (?:that|this) (?:price|number|figure|quote|rate|value)(?: in| down| on)?`, "$1 use that"},
	{":", `^(?:(?:i|we) (?:was|were|have been|had been|got|am|are) (?:just |now )?)?(?:handed|given|passed|sent|shown|submitted|presented|emailed|texted|faxed)(?: (?:to|in|over|by))?(?: (?:me|us|him|them|the (?:office|county|city|desk)))?(?: (?:today|this morning|yesterday|just now|this afternoon|earlier|for review|for checking|for approval|by the (?:builder|bidder|contractor)))? :`, "he says"},
	{"count", `^(.*\b(rails|boards|posts|bays|stiffeners|brackets|openings|slats|planks)) ([;,.]) (?:but )?(?:my|our)(?: own)? (?:count|tally) (?:is|was|says|gives|comes to|came to) (NUM) ,? ?(?:so|and|hence|therefore) (?:NUM|that|that one|mine|ours) (?:is|'s) what (?:you|we|i)(?: will| should| are to| shall)? (?:use|go with|go by|work with|take|enter|put in)`, "$1 $3 i want $4 $2"},
	{"brought|led|got|drove|pushed|moved|brings|leads|gets|took", `(?:what|how) (?:brought|led|got|drove|pushed|moved|brings|leads|gets|took) (?:you|us|it) to (?:that|so|this) (many|few|much)`, "why so $1"},
	{"too ", `^(.*\b(?:` + turnClaims + `|(?:estimate|quote|bid|bill|invoice|total|quotation) (?:is|was|came|comes|runs|came in|comes in)(?: back)?(?: to| at)?)\b.*[a-z0-9"]) [.,;] (?:(?:is|was|are) (?:it|that|they|those) )?(?:way |a bit |a little |much |far |not |rather )?too (?:high|much|many|few|little|low|steep|dear|expensive|rich|cheap|big|small|wide|tight|long|short)(?: do you think| you think)? \?$`, "$1 , is that right ?"},
	// What is asked for.
	{"legal", turnLegal, "$1 allowed $2"},
	{"lawful", turnLegal, "$1 allowed $2"},
	{"permissible", turnLegal, "$1 allowed $2"},
	{" code", turnLegal, "$1 allowed $2"},
	{"numbers", turnOnMine, "$1"},
	{"figures", turnOnMine, "$1"},
	{"measurements", turnOnMine, "$1"},
	{"have ", `what (?:all )?have (?:we|i) (?:agreed|agreed on|agreed to|settled|settled on|decided|decided on|established|pinned down|nailed down|got down|fixed)(?: so far| up to now| until now| to date| thus far| by now| now)?( \?| \.)?$`, "what have i told you so far"},
	{"what ", `what (?:would|do|did|will) you (?:say|think|reckon|figure|guess|suppose|believe|estimate|expect|calculate) (it|they|the [a-z]+(?: [a-z]+)?) (is|are|costs?|comes? to|should be|ought to be|runs?)`, "tell me what $1 $2"},
	{"state ", `^((?:please|ok|now|and|then|kindly) )?state (?:for (?:me|us|the record) )?((?:the|how|what|which|where) [a-z ,]+?)(?: [.!?])?$`, "$1 tell me $2"},
	{"report ", `^((?:please|ok|now|and|then|kindly) )?report (?:to me |back )?((?:the|how|what|which|where) [a-z ,]+?)(?: [.!?])?$`, "$1 tell me $2"},
	{"picture of", `(a|the|another|any|your) picture of`, "$1 drawing of"},
	{" i+entered|typed|keyed|punched|put|fed|inputted", `(everything|all|what|whatever|anything|things|all the things|all the numbers|the numbers)(?: that)? (?:i|we) (?:have |had )?(?:already )?(?:entered|typed|typed in|keyed in|punched in|put in|fed you|fed in|inputted|put down) ?(so far|to this point|up to this point|up to now|until now|to date|thus far|as of now|till now|already)?`, "$1 i have told you so far"},
	{"have the ", `^((?:please|and|then|now|also|just) )*have the (bays|gaps|sections|panels|rails|boards|posts|spaces) ((?:all |both )?(?:come|be|turn|end|work|look) .*[a-z])$`, "make the $2 $3"},
	{" have ", `^(?:i|we) have (?:already |now |got |seen |printed |had )*(?:the|my|our|your) (?:cut list|cuts|drawing|marks|shopping list|layout|steps|list|picture|cost)(?: already| now| printed| done| fine| here)* [,.;](?: (?:and|but|so|now))* (what about|how about|what are|where do|where are|where|show|give|how)`, "$1"},
	// What is written down, and where to.
	{"on file ", `on file (?:as|under)`, "saved as"},
	{". html", `^((?:please|now|then|and|ok|can you|could you|would you|will you) )*(?:put|write|print|save|send|publish|render|export|output|dump|make|get|lay|set)(?: ` + turnAll + `)*? (?:in|into|to|onto|on|as)(?: ` + turnPage + `)? ([a-z0-9-]+(?: [a-z0-9-]+)? \. html?)`, "print it to $2"},
	{". svg", `^((?:please|now|then|and|ok|can you|could you|would you|will you) )*(?:put|draw|sketch|save|send|render|export|output|make|get|print)(?: ` + turnSketch + `)*? (?:in|into|to|onto|on|as)(?: ` + turnSvg + `)? ([a-z0-9-]+(?: [a-z0-9-]+)? \. svg)`, "draw to $2"},
	{"saved", `^the (?:file|one|plan|wall|layout|job|design|version|project|sketch) (?:that |which )?(?:(?:i|we) )?(?:have )?saved(?: it)?(?: as| under| by the name of) ([a-z0-9]+(?: [a-z0-9]+){0,2}) , (?:please )?(?:open|load|pull up|bring up|bring back|get|fetch|call up|reopen)(?: (?:that|it|that one|me that))?(?: up| back| again)?`, "open $1"},
	// What begins a talk, what ends it, and what begins the next one.
	{"ing ", turnAbout, ""},
	{"here to ", turnAbout, ""},
	{"next ", `(^|[,.;-])(?: ?(?:so|and|because|since|as|now))?(?: ?(?:i|we) (?:am|are|will be|have to|need to|must|have got to|want to|should|will|can))?(?: ?(?:moving|going|heading|off|getting|starting|driving|move|go|head|drive|get))? ?(?:on to|onto|over to|off to|to|on|with) (?:the|a|my|our) next (?:site|job|house|place|property|address|customer|client|project|inspection|call|visit|lot)( [,.;!]|$)`, "$1 $2"},
	{"new ", `, (?:it is )?(?:a )?new (?:site|house|property|address|customer|client|day)( [.!]|$)`, ""},
	{"concludes|completes|finishes|ends|closes|wraps|winds|rounds", `(?:that|this|which) (?:concludes|completes|finishes|ends|closes|wraps up|winds up|rounds off|finishes up|finishes off) (?:my|the|our|this|today 's|your)(?: (?:site|little|final|whole|first))? ` + turnVisit, "that is it"},
	{" is | 's +done|over|finish|complete|wrapped", `(?:that|there) (?:is|'s) (?:my|the|our) ` + turnVisit + ` (?:done|over|finished|complete|completed|wrapped up|over with|over and done)`, "that is it"},
	// Units.
	{" in ", `(?:i|we) (?:always |usually )?(?:do|make|write|run|take|keep|record|carry out|file|conduct|write up) (?:all )?(?:of )?(?:my|our) ` + turnRecord + ` in ` + turnMetric, "use metric"},
	{" in ", `(?:i|we) (?:always |usually )?(?:do|make|write|run|take|keep|record|carry out|file|conduct|write up) (?:all )?(?:of )?(?:my|our) ` + turnRecord + ` in ` + turnInches, "use inches"},
	{" in ", `(?:my|our) ` + turnRecord + ` (?:are|is) (?:all |always |done |kept |written |made |taken )*in ` + turnMetric, "use metric"},
	{" as ", `(?:treat|take|read|consider|regard|understand|count|interpret|hear) ` + turnFigures + ` (?:as|to be|as being|as if it were|as if they were) (?:in )?` + turnMetric, "use metric"},
	{" as ", `(?:treat|take|read|consider|regard|understand|count|interpret|hear) ` + turnFigures + ` (?:as|to be|as being|as if it were|as if they were) (?:in )?` + turnInches, "use inches"},
	{"enough", `^(?:(?:i|we) have had )?enough (?:of |with |is enough with )?(?:the |these |all the |all these |this |your )?(?:` + turnMetric + `|` + turnInches + `)(?: (?:talk|stuff|nonsense|business))? ,`, ""},
	// What is measured, and with what.
	{" and +gets|takes|receives|wants", `((?:bay|section|panel) (?:NUM|[0-9]) (?:is|measures|comes to|will be|should be) .*) and (?:gets|takes|receives|wants)`, "$1 and has"},
	{"stuff", `([0-9]+ ?x ?[0-9]+s?|NUM by (?:[0-9]+|NUM)s?) stuff`, "$1"},
	{" from the ", `(rails|boards|slats|planks|lumber|posts|stock|two by (?:four|six)s|[0-9]x[0-9]s) from the (?:yard|mill|sawmill|store|shop|lumberyard|supplier|merchant|truck|barn|shed|pile) ((?:actually|really|all|in fact) )*(measure|come|are|is|run|mike|measured)`, "$1 $2 $3"},
	{"level|laser|transit|string line", `(?:(?:the|my|our|a|his) )?(?:(?:water|spirit|laser|line|hose|long|bubble|four foot|two foot|builder 's|torpedo) level|laser|level|string line|transit)(?: 's| is| has)? (?:telling|tells|told|saying|says|said|showing|shows|reading|reads|showed)(?: me| us)?(?: that)? the (floor|slab|deck|patio|ground|concrete|terrace|porch)`, "the $1"},
	{"either ", `^(.*\bbrackets?\b.*) (?:on |to |at |out )?(?:either side|either edge|both sides|each side|both edges) of (?:the|each|its|every|a) (?:rails?|boards?)`, "$1 above and below the rail"},
	{"undone", `(?:(?:i|we) )?(?:should not have|ought not to have|had not meant to have|wish i had not) undone (?:that|it|this)`, "i did not mean to undo that"},
	{"undid", `(?:i |we )?undid (?:too much|one too many|too many|the wrong thing|that by (?:mistake|accident))`, "i did not mean to undo that"},
	{"front", `(dirt|ground|grass|lawn|soil|yard|gravel|earth|grade) out front`, "$1 outside"},
	{"ed ", `(is|are|was|were|'s) (?:tagged|ticketed|stickered|price tagged)( at| for)? (NUM)`, "$1 marked $3"},
	{"left ", `^(?:[a-z]+ ){1,7}left (?:me|us) (?:with )?([a-z0-9]+ (?:[0-9]+ ?x ?[0-9]+|NUM by NUM|[a-z0-9]+ - foot|[a-z0-9]+ foot).*)`, "i have $1"},
	{"on hand", `([,.;])(?: (?:so|and|then|please|just))* (?:count|put|take|list|enter|treat|mark|note|book) (?:those|them|these|that) (?:down )?(?:as|for|to be) (?:on hand|in hand|had|there|already there|mine|ours|in stock)`, ""},
}

const turnFigures = `(?:every|each|all|any|my|the|these|those|everything|whatever|anything)(?: (?:of|my|the|these|number|numbers|figure|figures|length|lengths|measurement|measurements|dimension|dimensions|value|values|size|sizes|single|mine|that|i|we|give|say|type|tell|you|from|me|us|enter|put|in|write))*`

const turnOnMine = `^(.*\b(?:what|how much|how many)\b.*[a-z]) (?:on|by|with|from|using|going by|going from|off|based on|for) (?:my|our|these|those|your) (?:numbers|figures|measurements|dimensions)`

const turnLegal = `^((?:(?:and|so|ok|well|but) )*(?:is|are|would|will|can|could) .*[a-z0-9"]) (?:be )?(?:legal|lawful|permissible|up to code|to code|within code|(?:ok|okay|fine|good|allowed|alright) (?:by|under|with|per) (?:the )?code)(?: here| around here| in this county| in this town| here in town)?( \?)?$`

const turnAbout = `^((?:(?:good|morning|afternoon|evening|hello|hi|hey|there|,|\.) )*)(?:i|we) (?:am|are|have been|was|were) (?:here )?(?:to )?(?:checking|inspecting|reviewing|looking at|looking over|building|planning|designing|working on|putting up|laying out|check|inspect|review|look at|look over|going over|figuring out|pricing) (?:a|the|this|my|our|some|another) (?:[a-z]+ )?(?:half|halfwall|half wall|wall|screen|job|project|bid|quote|plan|drawing|submittal|submission)(?: wall)?(?: (?:for|at|on|by|with|of|over|down|in) [a-z ]+?)? [.!;] ?`
