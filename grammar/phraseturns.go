package grammar

// What the patterns of the table below are made of.
const (
	turnNumber = `(?:[0-9][0-9./]*|a|an|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirty|forty|fifty|sixty)`
	turnWho    = `(?:(?:the|my|our|his|her|their|a|some|an) )?[a-z]+`
	turnPlank  = `(?:rails?|boards?|slats?|planks?|courses?)`
	turnTail   = `(?: [.!?])?$`
)

// phraseTurns are turns of phrase and what is said by them plainly.
var phraseTurns = []phraseTurn{
	// What is tried, and what is asked of it.
	{"and if", `(,? ?and) if (?:it|that|they|this|those) (?:does|do|will|would|works?|fits?|is|can|could) (,? ?(?:what|how|where|which|show|tell|when)\b)`, "$1 $2"},
	{"turn", `(?:turned|turn|turns|came|come) out to be`, "were"},
	{"come out", `(PLANK) (?:come|came|end|ended) (?:out|up) ((?:[a-z0-9/.]+ ){1,6}(?:apart|high|wide|tall))`, "$1 are $2"},
	{"picture", `(^|^.*[.,;]) ?picture ((?:the|a|an|it|that|this|us|NUM)\b.*(?:[0-9]|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve|thirty|forty|fifty|sixty)\b).*)`, "$1 imagine $2"},
	{"every", `(to|off|from|of|in|into|onto) (?:every|each) (gap|space|opening|slot)`, "$1 the $2"},
	{"anything", `(?:WHO (?:will|would|do|does|did|can|could) not (?:stand for|allow|accept|put up with|hear of|go for|permit|tolerate|like|want|take|have|approve|approve of|let me have|let us have|let me build|let us build)) anything (taller|higher|wider|bigger|larger|longer|lower|shorter|narrower|smaller|over|under|above|below|more|less)`, "nothing $1"},
	{"in all", `(?:a third|another|one more|an extra|a second|a fourth|a new) ([a-z]+)((?: (?:per|in each|in every|to each|to every) [a-z]+)?) (?:,? ?(?:so|making|for|that makes|which makes|giving|to make)) (NUM)(?: of them)?(?: (?:in all|altogether|all told|total|in total)(?: in each| per bay| in every bay| in each bay)?)`, "$3 $1 $2"},
	{"inch - |inches - ", `(inch(?:es)?) - (thick|wide|high|tall|long|deep)`, "$1 $2"},
	{" went ", `if (i|we|you|they) went (up|down)`, "if $1 go $2"},
	{"leave", `leave (them|them all|the boards|the rails|everything|all of them|each one|each) ((?:[a-z0-9/.-]+ ){1,5}short)`, "cut them $2"},
	{"pinch", `pinch(?:es|ed)? (the|my|our|that) (opening|walkthrough|doorway|gap|gaps|entrance|gate|gateway)`, "narrow $1 $2"},
	{"top at", `([:,.]) ?top at`, "$1 the top is at"},
	{"with no ", `(get by|manage|get away|make do|do|be fine|live|go) with no ([a-z]+)`, "$1 without $2"},
	{"why", `(why .*[a-z]) ?, ?and (?:would|could|can|will|might) (NUM)(?: (?:go|do|work|fit|be ok|be okay|be possible))?`, "$1 , and how about $2"},
	{"already", `(.*[.?!]) WHO (?:has|have|had|'ve) already (?:painted|stained|sanded|primed|varnished|oiled|decorated|carved) (?:all )?NUMTAIL`, "$1"},
	{"? ", `^((?:what if|how about|what about|suppose|would|could|can|will) .*[a-z0-9/]) \? (?:oh ,? ?)?(?:no|nope|wait|sorry|or rather)(?: no| wait)? ,?(?: make (?:it|that)| say)? ?(NUM(?: (?:inches|inch|feet|foot|mm|posts|rails|boards|stiffeners))?)TAIL`, "$1 , no , $2 ?"},
	{"how far", `(^.*(?:opening|walkthrough|walk - through|walk through|doorway|gateway|entrance|gate) ?,? ?(?:and )?)how far (?:is|will|does|would) it (?:be |sit |start |begin |come |stand |set |up |out |in |away |back |over )*(?:from|off) the (left|right)((?: hand)?(?: end)? post)?`, "$1 how far is the opening from the $2 post"},
	// How far something goes.
	{"as it", `(as (?:wide|big|high|tall|small|tight|narrow|low|close|far)) as (?:it|they) (?:will|can|could|would|may) (?:go|get|be|come|possibly be|possibly go|possibly get)`, "$1 as possible"},
	{"as it", `(as (?:wide|big|high|tall|small|tight|narrow|low|close|far)) as (?:it|they) (?:goes|gets|comes|go|get)`, "$1 as possible"},
	{"as possible", `(opening|walkthrough|walk - through|walk through|doorway|entrance|gateway|gate|entry)( .*)? ,(?: and| but| otherwise)? as (?:wide|big|large) as possibleTAIL`, "$1 $2 , largest opening"},
	{"as possible", `(gaps?)( .*)? ,(?: and| but| otherwise)? as (?:small|tight|narrow) as possibleTAIL`, "$1 $2 , smallest gap"},
	{" more ", `go (up|down) ([0-9a-z/.-]+) more`, "go $1 $2"},
	{"going to", `^(is|are) (a .*|[0-9].*|the .*) going to (work|fit|do|go|be ok|be okay|be possible|be enough)TAIL`, "will $2 $3"},
	{"room for", `^(.*\bif .*[a-z0-9]) would (?:i|we|you|there) (?:still |even )?(?:have|be) (?:still )?(?:room|space|enough room|enough space) for`, "$1 , with"},
	{" to the ", `(floor|slab|deck|patio|ground|concrete|terrace) (?:drops|falls|slopes|runs|slants|tilts|dips|pitches|drop|fall|slope)(?: away| off| down)? ((?:[a-z0-9/.-]+ ){1,4}?)(?:per|in every|every|in each|each|in a|to the|for every) (metre|meter|foot|yard)(?: (?:going|as you go|heading|running|toward|towards|over))* to the (right|left)`, "$1 falls $2 per $3 to the $4"},
	{"so ", `^(so WHO (?:stays?(?: in| home| inside| put)?|(?:can|does|will|could) not (?:get|slip|squeeze|climb|fall|wriggle|crawl)(?: (?:out|through|in|over|under))?)) (nothing|no|keep|make|i want|we want)`, "$1 , $2"},
	{"bay", `(?:the )?(?:left|right|first|second|last|near|far) (?:bay|panel|section) , ((?:bay|panel|section) (?:one|two|three|[0-9])) ,`, "$1"},
	// What somebody claims.
	{"- ", `- (?:correct|right|true|ok|okay|yes) \?`, ", is that right ?"},
	{"and list", `((?:reads|says|shows|has|is) .*) and (?:lists|list|itemizes)`, "$1 and shows"},
	{"of ", `^WHO (?:was|were|is|has been|have been) (?:assured|guaranteed|informed|told) of`, "he says"},
	{"that ", `^WHO (?:was|were|is|has been|have been) (?:assured|guaranteed|promised) that`, "he says that"},
	{"swear", `(swears|swore|swear) (?:up and down|blind|high and low|by all that is holy|to high heaven|on a stack of bibles)`, "$1"},
	{"compare", `((?:.* )?(?:says|say|said|shows|show|has|have|claims|thinks|figures|reads|lists|quoted|quotes) .*?[,;.:]?(?: please)?) compare(?: (?:that|it|them|those|the two))?(?: (?:with|to|against) (?:ours|mine|yours|the layout|our layout|what we have|what you have|what you get))?(?: please)?TAIL`, "$1 , is that right ?"},
	{", is it|, are it|, was it|, were it|, is they|, are they|, was they|, were they", `(^(?:[^ ]+ ){4,}), (?:is|are|was|were) (?:it|they)(?: [?.])?$`, "$1 , is that right ?"},
	{"scri", `((?:scribbled|scribbles) (?:[a-z0-9/.-]+ ){1,8})on (?:the|a|my|our|that) (?:post|wall|slab|board|floor|stud|beam|lid|door|window|doorframe) (for|as)`, "$1 $2"},
	{"wrote", `((?:wrote|written|chalked|scrawled|jotted|penciled|pencilled) (?:[a-z0-9/.-]+ ){1,8})on (?:the|a|my|our|that) (?:post|wall|slab|board|floor|stud|beam|lid|door|window|doorframe) (for|as)`, "$1 $2"},
	{"effect", `^(.*(?:\+/-|\boff\b|out by).*?)(?: [,-])? (?:what |what is |what is the |the )?(?:effect|impact|upshot)(?: \?)?$`, "$1"},
	{" @ ", `([0-9]+|six|five|seven|eight|four|nine|ten) (PLANK|bds|bd|rls|brds|slats) @ ([0-9](?: - [0-9]+ / [0-9]+)?|[0-9]+ / [0-9]+)( [,-].*| gaps?| apart| (?:ok|right|correct) .*)?TAIL`, "$1 $2 at $3 $4"},
	{"total", `^(?:grand )?total (?:: )?(\$ )?([0-9][0-9.,]*) \?$`, "quote $1 $2 ?"},
	{" ?", `^([0-9]+ [a-z]+|[a-z]+ [0-9][0-9/ -]*(?: [a-z]+)?) (?:possible|doable|feasible|workable|an option) \?$`, "what if $1 ?"},
	{"hand", `(on hand|in stock)(?: :)? ([0-9][0-9x .'-]*?) (?:- |, |: )?([0-9]+) (?:pcs|pc|pieces|ea|each|boards|bds)TAIL`, "$1 $2 x $3"},
	// What is taken back and set.
	{"back up", `(?:whoa|hold on|wait|hang on|hey|no) ,? ?back up ,? ?(i|we|it|that|the|my|make|there)\b`, "wait , $1"},
	{"budget", `(budget) (?:has |have |had |was |is |got |been |just )*(?:come|came|gone|went|go|dropped|down|up|shrunk|shrank|grown|grew|cut|slashed|trimmed|raised|upped|bumped|lowered|reduced|increased|risen|fallen|fell|rose)(?: down| up| back)* to`, "$1 is"},
	{"limit", `(under|over|below|above) ((?:[a-z0-9/.-]+ ){1,5}?(?:inch|inches|feet|foot|mm|cm|in|ft)) (?:limit|rule|cap|max|restriction) (on|for)`, "$1 $2 $3"},
	{"every", `in (?:every|each) (metre|meter|foot|yard|ten feet|10 feet)`, "per $1"},
	{"otherwise", `, otherwise (as|the)`, ", $1"},
	{"tops", `to spend ,? ?tops`, "to spend"},
	{"s put", `(stays|stay|stayed|staying) put`, "$1"},
	{"bits of", `bits of ([0-9][^ ]*)`, "pieces of $1"},
	{"in case", `in case (?:one|some|any|a board|a few|one of them|some of them|any of them|a couple|one or two)(?: of them)? (?:is|are|turns out|turn out|comes|come|gets|get|'s|be) (?:twisted|warped|cracked|split|crooked|bad|bowed|cupped|checked|knotty|damaged|broken|ruined|no good|rotten|dinged|junk)`, ""},
	{"we get", `we get (NUM (?:spare|extra))`, "we have $1"},
	{" cut ", `((?:bay|section|panel) (?:one|two|three|[0-9])) PLANK (?:are |were |is |was )?cut(?: to| at)?`, "$1 cut at"},
	{"per board", `(?:do|does|will|would) (?:we|i|you|they) (?:lose|waste) (?:per|on each|on every|off each|for each) (?:board|stick|length) (?:to|for|in|by|with) (?:trim|trimming|squaring|squaring up|square it|square the ends?)`, "is the trim"},
	{"second one", `(how many bays .*how (?:wide|big|long|broad) (?:is|are) the (?:first|second|third)) one`, "$1 bay"},
	{"third one", `(how many bays .*how (?:wide|big|long|broad) (?:is|are) the (?:first|second|third)) one`, "$1 bay"},
	{"could", `.*?((?:[0-9]+ ?(?:x|by) ?[0-9]+ ?|(?:one|two) by (?:four|six|eight|ten|twelve))s?) ,? ?(?:could|can|would|might) (?:i use )?(?:those|they|these|them|it|that) (?:be|do for|do as|serve as|serve for|work as|work for|make|pass for|become|go for|for|as|be used for|be used as) (?:the|my|our) (rails?|boards?|posts?|slats?|stiffeners?)TAIL`, "what if the $2 were $1"},
	// How something looks and feels, and what is not trusted.
	{"look", `,? ?(?:since|because|as|for) (?:i|we|WHO) (?:just |really |do |rather |both |all )*(?:like|love|prefer|adore|enjoy|want|fancy)s? (?:the|a|that|this|their|its|an) (?:[a-z]+ ){1,3}looks?( [.,;!?].*)?$`, "$1"},
	{"style", `,? ?(?:since|because|as|for) (?:i|we|WHO) (?:just |really |do |rather |both |all )*(?:like|love|prefer|adore|enjoy|want|fancy)s? (?:the|a|that|this|their|its|an) (?:[a-z]+ ){1,3}style( [.,;!?].*)?$`, "$1"},
	{"feels", `(it|that|this) feels (?:just )?(?:a little|a bit|a touch|a tad|rather|somewhat|slightly|kind of|pretty|too|much too|way too) (?:too )?(tall|high|low|wide|narrow|tight|big|small|long|short|deep|large|close)(?: (?:to|for) (?:me|us))?( (?:[.,;!?]|so).*)?$`, "$1 is too $2 $3"},
	{"trust", `(?:i|we) (?:do not|no longer|cannot|can not)(?: really| quite| fully| entirely)? trust ((?:my|our|the|that|this) .*?) ?,? (?:so|and)(?: please| just| let us| could you| can you| you can)*(?: please)? (?:drop|forget|discard|scrap|remove|ignore|delete|erase|toss) (?:it|that)(?: please)?TAIL`, "forget $1"},
	{"not sure", `(?:i am|we are) not (?:so |really |quite |entirely |too )*(?:sure|certain|confident) (?:about|of|in) ((?:my|our|the|that) (?:[a-z]+ )*(?:measurement|reading|measure)(?: .*?)?) ?,? (?:so|and)(?: please| just| let us| could you| can you| you can)*(?: please)? (?:drop|forget|discard|scrap|remove|ignore|delete|erase|toss) (?:it|that)(?: please)?TAIL`, "forget $1"},
	{"times", `(measured .*?) (?:twice|two times|three times|a few times|several times|again and again) ?,? (?:and )?(?:both|each|every|all three|all) times? (?:it (?:came to|was|read|came out at|came out to|came out|measured|is)|(?:i|we) (?:got|came up with|had|read|get))`, "$1 , it is"},
	{"twice", `(measured .*?) twice ,? ?and (got|it came to|it was|it is|both|each)`, "$1 and $2"},
	{" time", `(measured .*) (?:each|both|every) times?( [.,;!?].*)?$`, "$1 $2"},
	{"which", `(?:level|even|flush|in line|lined up) with (?:(?:the|our|my|a|his|her) )?(?:[a-z]+ ){1,3}?,? ?which (?:is|sits|stands|comes) (?:at |up to )?([0-9]+)`, "at $1"},
	{"top", `(?:has|is|was) (?:already )?(?:been )?(?:already )?(?:put up|up|in place|fastened|screwed in|screwed on|installed|attached)(?: already)? ,? ?(?:and )?with (?:its|the) top (edge )?(?:being |sitting )?(at|being|is)`, "is up already , its top is at"},
	{"measured", `(?:when|after|once) (?:i|we) (?:had |have |finally |actually )?measured (?:one of |some of |a couple of |two of )?(?:the |our |my |these |those )?(?:[0-9]+ x [0-9]+ (?:s )?)?(?:boards?|rails?|ones?|planks?) ,? ?(?:it|they|that) (?:turned out to be|came out at|came out to|came to|was|were|measured|is|are|proved to be)( (?:really |only |actually |just )?[0-9])`, "the boards are $1"},
	{" bit", `(?:a )?(?:little bit|bit|tiny bit) (bigger|smaller|wider|narrower|taller|shorter|higher|lower|longer|tighter|larger) ,? ?(?:by|say|maybe by|about|perhaps by) (NUM)`, "$1 by $2"},
}
