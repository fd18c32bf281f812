package idiom

import (
	"sync"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// disputedPhrases are ways to bring in what somebody else has said, drawn or wanted, to ask whether it holds, and to leave it aside. Set plain
// early, as a claim must not be taken for what is wanted.
var disputedPhrases = []phrase.Placed{
	// How a claim is brought in.
	{"by|(going by) !his|her|their ?own account|reckoning|telling|lights|count|math|maths|arithmetic|word|book|estimate|calculation|calculations|figuring|say-so ?,", "according to $1 drawing ,", phrase.BothHold(phrase.StartsClause, goesStraightOn)},
	{"(to hear) !him|her|them tell it ?,", "according to $1 ,", phrase.StartsClause},
	{"!he|she|they|kid|kids|neighbor|contractor|builder|boss|guy|foreman|carpenter|inspector|architect|brother|uncle|husband|wife ?is|are|keeps|keep|was|were|has|have ?been ?(going (around|round|about)) telling|(letting on to) ME|people|folks|anybody|anyone|(anyone who will listen)|(the whole (crew|town|street|family)) ?that", "$1 says", toldAhead},
	{"!he|she|they ?is|are|keeps|keep ?goes|go|going around|round|about ?and saying|telling|claiming ?that", "$1 says", toldAhead},
	{"acc|accdg|accg ?. to", "according to", nil},
	{"according to his|her|their|the|our !PAPER ?, we|you|i|it need|needs|have|has|use|uses|want|take|takes", "the $1 says there are", nil},
	{"no !GAP|BAY|OPENING reaches|reach|hits|hit|attains|(gets|get|comes|come|goes|go ?up to) #", "every $1 is less than $2", nil},
	{"no !GAP|BAY|OPENING goes|runs|gets|comes|stretches ?out ?any past|over|beyond|above|((more|wider|longer|farther|further) than) #", "no $1 is over $2", nil},
	{"?, hang|hold|wait ?on|up , ?i|we ?had|have|was read|reading|held|had it|that|tape|them upside|backwards|wrong|(wrong way) ?- ?down|round|around|up ,|.|;", ", no ,", nil},
	{"?, uh|um|er|ah ?, no ?, sorry|wait|rather ?,", ", no ,", phrase.AmountNext},
	{", i|we ?have taped|measured|checked it|that ?myself|ourselves|twice ;|.", ".", nil},
	{", do|does|did|will|would|is|are|can|should we|i|you|he|she ?really $$", ", is that right ?", phrase.SaidBeforeOf(scan.WordSet("says according claims plan drawing sketch sheet"))},
	{"!he|she|they gets|get|got|has # for !GAP|BAY|OPENING|span|(wall height)|(bottom gap) ,|.|; ?and ?but what|(how much) do|did you ?get|have|say|make ?it", "$1 says the $3 is $2 , what is the $3", nil},
	{"!he|she|they gets|get|got|has # for !GAP|BAY|OPENING|span|(wall height)|(bottom gap) ,|.|; ?and ?but ?what ?is|(what about) ?you|yours $$", "$1 says the $3 is $2 , what is the $3", nil},
	{"!((his|her|their) (figure|number) is #) for !GAP|BAY|OPENING|span|(wall height)|(bottom gap) ,|.|; ?and ?but ?what ?is|(what about) ?your|the own|yours|mine|ours $$", "he says the $3 is $2 , what is the $3", nil},
	{"!((he|she|they) (has|have|'s|had|did)) put|set|jotted|noted|written ?down ?in", "$1 written", nil},
	{"^^ quoted|billed|bid|quote ?at ?us|me ?: £ ?(all in)|(in all)|(all told)|total|altogether|(for (everything|all of it|it all|the lot|the whole lot|the material|the materials|the job)) ?,|.|;|- ?does|will ?it|that ?this holds|hold|ok|okay|right|true|correct|(check out)|(checks out)|fair|(hold up)|(holds up) $$", "is the cost $1 ?", nil},
	{"^^ reckons|claims|thinks|figures|says|swears|insists", "he says", nil},
	{"^^ item|line|entry|point|no. ##|#|(_) on|in|of|from !PAPER :|,|-", "the $2 says", nil},
	{"^^ item|line|entry|point ## on|in|of|from !(his|her|their|the|our|my PAPER) :|,|-", "$2 says", nil},
	{"full|whole foot", "1 foot", behindArticle},
	{"slap|smack|bang|plumb|plunk|spang|slapbang|square|squarely|right|dead ?bang|dab|smack|dead|plumb|right in|at|on middle|center ?(of it)", "in the middle", nil},
	// Whether it holds.
	{"can|could it ?really be ?so ?true that", "is it true that", phrase.StartsClause},
	{", is|was that|it|this a fair|good|reasonable|decent|proper|honest price|deal|figure|total|number|sum $$", ", is that right ?", putForward},
	{", is|are he|she|they dreaming|crazy|nuts|mad|kidding|joking|(on the money)|(out of (his|her|their) mind) $$", ", is that right ?", putForward},
	{"^ his|her|their PAPER is|was ?way ?all off|wrong|out|mistaken ,|;|.", "", wantedAhead},
	{".|,|;|-|? ?and ?is|(is there)|(would there be) any|some|much ?real truth|substance|sense|fact in|to|behind it|that|this|them|those|these $$", ", is that right ?", nil},
	{".|,|;|- ?which|that|it seems|sounds|looks|strikes|feels|is ?ME ?me|like|as ?quite|rather|awful|awfully|pretty ?like ?too|a|an ?bit|(very much)|lot|(awful lot)|much|many|steep|high|heap|stretch ?much|many|high ?(to me)|(to my (mind|eye))|(if you ask me) $$", ", is that right ?", putForward},
	{"?,|-|. is|are that|it|this|those|they what you|(you all) ?also come|came|get|got|have|figure|find|say|see|calculate|make|make ?up ?with|it ?too|(as well) $$", ", is that right ?", claimedOrPlanned},
	{"?,|-|. (see|tell me|say|let me know) if|whether you agree|concur ?with ?that|him|her|them|it $$", ", is that right ?", claimedOrPlanned},
	{"!he|she|they|kid|kids is|are|(was) fixing|gonna|going|planning|about|looking|aiming|set ?on|to make|set|have|put|use|build !.. , is|are that|it|this|those|they what you|(you all) ?also come|came|get|got|have|figure|find|say|see|calculate|make ?up ?with|it ?too|(as well) $$", "$1 says $2 , is that right ?", nil},
	// What somebody wanted, and why it will not do.
	{"^ ?the !he|she|they|i|we|kid|kids|boss|neighbor|contractor|builder|foreman|(my (husband|wife|brother|boss|neighbor|dad|mother|father|son|daughter)) ?had wanted|meant|hoped|planned|intended|proposed|tried|liked|(was|were (going|about|hoping|planning|meaning)) to !set|make|have|put|use|build|cut|give|hang|open|leave|run|space|do !(..) ?,|.|-|; what|(is there (anything|something)) ?is|was|would|the ?matter|wrong|trouble|problem|harm|issue|be|so|speaks|catch ?with|about|in|wrong|against that|it|this $$", "why can we not $2 $3 ?", nil},
	{"^ ?the !he|she|they|i|we|kid|kids|boss|neighbor|contractor|builder|foreman ?had wanted|proposed ## !RAIL|STIFF ?,|.|-|; ?and what|why ?is|was|will|would|does|did|can|could ?the ?not ?matter|wrong|trouble|problem|not ?with|that|it ?not|that|it|go|work|do|fit|fly $$", "why can we not have $2 $3 ?", nil},
	{"^ ?the he|she|they|kid|kids|boss|neighbor|contractor|builder|foreman would have ?(liked|loved|wanted to) ?have !set|made|make|put|used|use|built|cut|hung|left !(..) ?,|.|-|; what|(is there (anything|something)) ?is|was|would|the ?matter|wrong|trouble|problem|harm|issue|be|so|speaks|catch ?with|about|in|wrong|against that|it|this $$", "why can we not $1 $2 ?", nil},
	{"^ ?the !he|she|they|kid|kids|boss want|wants !(..) , (see|tell me|say|let me know) if|whether you agree|concur ?with ?that|him|her|them|it $$", "$1 says $2 , is that right ?", nil},
	{"^ ?so would|will|do|does|can !(## RAIL .. #) ?really|actually|truly land|come|end|work|finish|top|get|reach|make ?out|up|off ?at|to|with # ?HIGH ?, like|as he|she|they|((his|her|their|the) PAPER|PERSON) says|claims|say|claim|said ?it|they ?would|does $$", "he says $1 , wall height $4", nil},
	{"^ ?so would|will|do|does|can !(## RAIL .. #) !GAP ?really|actually|truly land|come|end|work|finish|top|get|reach|make ?out|up|off ?at|to|with # ?HIGH ?, like|as he|she|they|((his|her|their|the) PAPER|PERSON) says|claims|say|claim|said ?it|they ?would|does $$", "he says $1 $4 , wall height $5", nil},
	{"^ ?so would|will|do|does|can !(## RAIL .. #) !GAP ?really|actually|truly land|come|end|work|finish|top|get|reach|make ?out|up|off ?at|to|with roughly|about|around # ?HIGH ?, like|as he|she|they|((his|her|their|the) PAPER|PERSON) says|claims|say|claim|said ?it|they ?would|does $$", "he says $1 $4 , wall height about $5", nil},
	{"!RAIL # apart make|makes|reach|reaches|give|gives|come|comes|stand|stands|get ?out|up ?at|to ?(height of) # ?HIGH", "$1 $2 apart , wall height $3", claimedOrPlanned},
	// What he says is left aside.
	{"leave|leaving|keep|keeping his|her|their PAPER|numbers|figures out of it|this ?, ?and ?now", "", phrase.StartsClause},
	{"whatever|(no matter what)|(never mind what)|(regardless of what)|(i do not care what) he|she|they|PERSON|((his|her|their|the|that) PAPER) ?may|might|can|will|could says|say|shows|show|has|have|claims|claim|thinks|think|wants|want|wrote|(has|have said|claimed) ?,", "", phrase.BothHold(phrase.StartsClause, wantedAhead)},
	{", whatever|(no matter what)|(never mind what)|(regardless of what)|(i do not care what) he|she|they|PERSON|((his|her|their|the|that) PAPER) ?may|might|can|will|could says|say|shows|show|has|have|claims|claim|thinks|think|wants|want|wrote|(has|have said|claimed) $$", "", nil},
	{"?alright|(all right)|ok|okay|so ?, skip|forget|ignore|disregard|(never mind)|(leave aside)|(set aside)|(throw out)|toss kid's|(kid 's)|his|her|their|boss's|neighbor's|contractor's|(contractor 's)|(neighbor 's) numbers|figures|sizes|measurements|drawing|plan|sheet|sketch ?,|;|.|-", "", wantedAhead},
	{"nobody|(no one)|none looked|checked|noticed|measured|bothered|minded|leveled ?at|with|about|over !FLOOR and|but ?that it", "the $1", nil},
	{"!suppose|supposing|if|say|assume|imagine|pretend he|she|they|((his|her|their|the) PAPER) is|are|was|were off|wrong|mistaken|right|out|correct and|,|; ?and ?that", "$1", nil},
	{"!suppose|supposing|if|assume|imagine|pretend his|her|their ## !RAIL|STIFF are|were right|correct|true", "$1 there are $2 $3", nil},
	{"?his|her|their|my|our !((PAPER) (is|was) (wrong|off|mistaken|out) (about|on|with|as to)) !((wall height)|(height of wall)|gap|(bottom gap)|drop|(drop to [the] ground [outside|behind])|OPENING|span) ;|,|. ?please ?now enter|make|put|write|take|use|((it|that) (is|should be|must be))|(should be) ?down|it ?at #", "$2 is $3", nil},
	{"forget|ignore|(never mind)|drop|scrap his|her|their !STIFF ;|,|.|- ((i|we) (am|are|will)) ?going ?with|to using|use|(going with) ## per|a|in|(to [a]) ?each|every BAY", "forget the $1 . i want $2 stiffeners per bay", nil},
	// One's own figure beside the claimed one.
	{"what is|are|(do you (get|have) for)|(would be) ?your|the ?own ?figure|number|value|answer ?for|of|on !GAP|(bottom gap)|OPENING|span|BAY|(wall height) ?, ?as against|opposed|versus|vs|(compared)|(rather than)|(not) ?to|with # ?that|which he|she|they|((his|her|the|their) PAPER) claims|says|gives|has|claimed|said|shows|wrote|claim|say $$", "what is the $1 ? he says the $1 is $2", nil},
	{"what is|are|(do you (get|have) for)|(would be) ?your|the ?own ?figure|number|value|answer ?for|of|on !GAP|(bottom gap)|OPENING|span|BAY|(wall height) ?, ?as against|opposed|versus|vs|(compared)|(rather than)|(not) ?to|with his|her|their # $$", "what is the $1 ? he says the $1 is $2", nil},
	{"i|we ?have get|got|measured|measure|taped|tape|make|made|read ?it # between !POST ?faces , where|while|whereas|when|but his|her|their|the PAPER says|has|shows|gives|claims|lists|puts ?it ?at # $$", "the span is $1 . he says the span is $3", nil},
	{"i|we ?have get|got|measured|measure|taped|tape|make|made|read ?it # between !POST ?faces where|while|whereas|when|but his|her|their|the PAPER says|has|shows|gives|claims|lists|puts ?it ?at # $$", "the span is $1 . he says the span is $3", nil},
	{"i|we ?have get|got|measured|measure|taped|tape|make|made|read ?it # for|at|on !(wall height)|span|drop|OPENING|gap|(bottom gap) ?, where|while|whereas|when|but his|her|their|the PAPER says|has|shows|gives|claims|lists|puts ?it ?at # $$", "the $2 is $1 . he says the $2 is $3", nil},
}

// goesStraightOn: what is told follows, and nobody else's word beside his.
func goesStraightOn(_, after []scan.Atom) bool {
	return len(after) > 0 && after[0].Text != "or" && after[0].Text != "and" && after[0].Text != "'s"
}

// toldAhead: what is told follows: "he keeps telling us the gap is 2", not "telling us forget the gap".
func toldAhead(_, after []scan.Atom) bool {
	return len(after) > 0 && (lexicon.Vocab().Articles[after[0].Text] || tellsAhead[after[0].Text] || phrase.StartsLength(measure.Reader{Atoms: after}, 0))
}

var tellsAhead = scan.WordSet("there it his her their every each all no that my our your this")

// behindArticle: "a full foot".
func behindArticle(before, _ []scan.Atom) bool { return chunk.LastOf(before, 1) == "a" }

// putForward: something was claimed, written or asked for before.
func putForward(before, after []scan.Atom) bool {
	return ClaimBefore(before, after) || phrase.SaidBeforeOf(scan.WordSet("written put asks asking charges charging wrote wants billed bid has"))(before, after)
}

// claimedOrPlanned: somebody else says or is about to do what goes before.
var claimedOrPlanned = phrase.SaidBeforeOf(scan.WordSet("he she they his her their says plan drawing sketch sheet kid kids neighbor contractor"))

// wantedAhead: a figure of one's own follows.
func wantedAhead(_, after []scan.Atom) bool {
	for i := range after {
		if phrase.StartsLength(measure.Reader{Atoms: after}, i) {
			return len(after) > 2
		}
	}
	return false
}

// AskedAndDisputed are the phrases of those who learn and of those who check, and what leans on what is there.
var AskedAndDisputed = sync.OnceValue(func() *phrase.Book {
	return phrase.BookOf(crossedTurns, everydayEarly, workdayEarly, trialTurns, queryEarly, onebreathTurns, notedEarly, haltingPhrases, changedMinds, atTheJob, hedgePhrases, learnerPhrases, disputedPhrases, countedOn, amountPhrases, howManyPhrases, slipPhrases, besidePhrases, vouchedPhrases, triedOutPhrases, overseasPhrases, whyNotWorded, truthPhrases, trialPhrases, dialectWords, wonderedTurns, puzzledTurns, weighedClaims, adoptedTurns, otherStock, triedWithTurns, boughtAndKept, measuredAbout, readingsTold, pricesTold, limitsTold, lengthwiseTurns, measuredUp(), hearsayPhrases, tapeTold, bayEnds, movedTurns, givesWayTurns, bothTurns, afterwards, piecesAsked, alongWall, alongOpening, sumsTold, sizedTurns, boundsTurns, rightSo)
})
