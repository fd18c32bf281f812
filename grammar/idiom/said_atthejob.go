package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What is said at the job: with the tape between the posts, of what the post stands on, how fine the tape is read, how the boards are cut and carried home,
// and what was said before and is taken back. Everyday speech, no source.

// atTheJob are such turns.
var atTheJob = []phrase.Placed{
	// The tape between the posts.
	{"^ i|we ?have ?just ran|run|stretched|pulled|hooked|put|laid the|my|our|a tape inside|between|across ?the|my|our|both two|end|outer posts ?, ?and ?it|that ?is|'s|says|reads|shows|gave|gives|got|(came to)|(comes to) ?me #", "the span is $1", nil},
	{"^ between ?the inner|inside|inward faces|sides|edges of ?the|my|our|both ?two end|outer posts ?, ?i|we|it|there ?have|get|got|measure|measured|is # ?(to (fill|work with|close|bridge|cover))", "the span is $1", nil},
	{"no stretch|run|distance|section|length between ?any ?two|adjacent|neighboring|the posts may|can|shall|must|should exceed|top|pass|(be (over|more than|longer than|wider than))|(go over) #", "bays at most $1", nil},
	{"POST sat|stood|sits|stands|rests|rested|is on a base # ?up ?off|above|over|from the FLOOR", "base height is $1", nil},
	{"the smallest|finest mark|line|division|graduation|tick ?that ?i|we|(my tape) can|could ?ever|still read|see|hit|make|mark|work|hold|show|(set out) ?to is|'s #", "my tape reads to $1", nil},
	{"!twice|(three times)|(four times)|half as much space|room|daylight|clearance under|below|beneath ?the bottom|lowest RAIL as ?(there is) between ?the|my|two ?other RAIL", "bottom gap is $1 the gap", nil},
	{"put|leave !twice|(three times)|half the space|room|gap under|below|beneath ?the bottom|lowest RAIL that|as ?you|we|i|it ?have|has|got|left|put|leave between ?the RAIL", "bottom gap is $1 the gap", nil},
	{"^ bad|wrong|false|faulty reading|measurement on|of|for|at !(bay ## [top|bottom]) ?, ?(so|please) throw|toss|drop|scrap|scratch it ?out|away", "forget the measurement of $1", nil},
	// How it is cut, carried and told.
	{"cut it|them|everything|(all of it)|(the boards)|(the lot) so ?that the least|(as little) wood|lumber|timber|stuff ?(as possible) ?is|gets|goes wasted|lost|thrown|scrap|(to waste) ?(away)", "least waste", nil},
	{"cuts|(cut list)|(cutting list) as|in ?a csv ?file ?(format) for ?the|my|our _ ?_ $", "cuts as csv", nil},
	{"how many boards|sticks|lengths|planks go|goes|(do i put)|(do we put)|(will go) in|on|into|onto ?the|my|our cart|truck|trolley|basket|trailer|van", "what do i need to buy", nil},
	{"^ in @ i|we ?have|'ve got|have|carry|stock|keep !eights|tens|twelves|fourteens|sixteens|eighteens|twenties", "the store has $1 in $2", nil},
	{"revert|return|(change back)|(turn back) to (feet and inches)|inches|imperial|customary", "use inches", nil},
	{"metric only from here ?on ?out ?, ?(no (inches|feet))", "use metric", nil},
	{"^ let us|(can we)|(i want to)|(we can) ?just pick up|(carry on)|(start again)|resume where we|i|you ?(had) left|stopped|quit ?off ,|-|:", "", figureOrWish},
	{"and let us|me hear|see what you get|got|(come up with)|(come to)", "", phrase.EndsClause},
	{"sixes ,|and|or|& ?the !eights|tens|twelves", "6 footers , $1", notBehindBy},
	{"!eights|tens|twelves|fourteens|sixteens ,|and|or|& ?the sixes", "$1 , 6 footers", notBehindBy},
	{"what|which wood !work|fit|be", "what would $1", nil},
	{"what|which lumber|timber|wood works|fits|(would work)|(would fit)|(will work)|(will fit) ?here|there", "what are the options", asksEnd},
	// What was said, and is taken back.
	{". ?actually|no|wait|hm|hmm ?, back|(go back) to #", ", no , $1", nil},
	{"^ i|we ?had said|wanted|asked|chose @ !RAIL|POST|STIFF ?, but ?let ?us|i|we ?will|want|would ?rather have|use|take|want|(go with)|(make it) @ ?RAIL|POST|STIFF ?(after all)|instead", "$2 are $3", nil},
}

// notBehindBy: a length stands there, and no width: "two by sixes and eights" has one of each.
func notBehindBy(before, _ []scan.Atom) bool {
	w := chunk.LastOf(before, 1)
	return w != "by" && w != "x" && w != "-"
}
