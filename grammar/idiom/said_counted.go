package idiom

import "saywright/grammar/phrase"

// countedOn are ways to tell what is wanted that lean on what is there, in the words of yards, shops and old hands: one more than it takes, as
// wide as it will go, that much more than the others. They are set plain early.
var countedOn = []phrase.Placed{
	{"hang|hanging|running|mounting|screwing @ off|on|onto|to ?of em|them|these|those|it", "rail size $1", nil},
	{"i|we am|are hanging|running|mounting|screwing @ off|on|onto|to ?of em|them|these|those|it", "the rails are $1", nil},
	{"GAP UNDER bottom RAIL ?to ?should ?must ?is|be # larger|bigger|wider|more|greater than|as any|(the [other|rest|rest of the]) ?of ?the gap|gaps|spaces|others|rest", "the bottom gap is the gap plus $1", nil},
	{"GAP UNDER bottom RAIL ?to ?should ?must ?is|be # smaller|less|narrower|tighter than|as any|(the [other|rest|rest of the]) ?of ?the gap|gaps|spaces|others|rest", "the bottom gap is the gap minus $1", nil},
	{"top of her|him !stands|comes|sits|rises|gets|goes|is", "top of the wall $1", nil},
	{"spread|push|move|shove|space|set|pull ?them|those|these RAIL another|(a further)|(one more) !half|quarter|eighth|sixteenth ?inch|(of an inch) ?farther|further ?apart", "raise the gap by an $1 of an inch", nil},
	{"spread|push|move|shove|space|set|pull ?them|those|these RAIL another|(a further)|(one more) # ?farther|further ?apart", "raise the gap by $1", nil},
	{"cannot|(can not)|(must not)|(should not)|(will not) pinch|neck|squeeze|close|narrow ?down|in|up ?any tighter|narrower|smaller|closer|lower than|below #", "at least $1", nil},
	{"how high|tall she|it|this ?thing ?will tops|top|comes|come|ends|end|finishes|finish out|up", "how high is the wall", nil},
	{"never|not|no ?be ?any wider|bigger|larger|more|greater than # ,|? nor|or|and ?never|not ?any ?be narrower|smaller|tighter|less than #", "at most $1 and at least $2", nil},
	{"never|not|no ?be ?any wider|bigger|larger|more|greater than # nor|or|and ?never|not ?any ?be narrower|smaller|tighter|less than #", "at most $1 and at least $2", nil},
	{"see to it that", "make sure that", nil},
	{"as !wide|big|large|high|tall|tight|small|narrow as she|it|they ?will|'ll go|get|stretch|be|come", "as $1 as possible", nil},
	{"buy|get|throw|put|order|take|grab|load ## more|extra RAIL|footer than (it takes)|needed|necessary|required|(called for)|((we|i|you) need) ?(on|in|onto ?the cart|truck|order|list)", "buy $1 spare boards", nil},
	{"buy|get|throw|put|order|take|grab|load ## RAIL more|extra than (it takes)|needed|necessary|required|(called for)|((we|i|you) need) ?on|in|onto ?cart|truck|order|list", "buy $1 spare boards", nil},
	{"our|my circumstances|situation|fortunes|finances|luck have|has ?just ?much improved|changed|turned|recovered ?(for the better) ,|. ?and|so", "", phrase.StartsClause},
	{"can|could now|just|finally afford", "can afford", nil},
	{"not a|one|single|(a single)|(one single) !(## ?- (foot|footer|ft)) ?board left at|in yard|store|shop|lumberyard|(lumber yard)", "no more $1 at the yard", nil},
}
