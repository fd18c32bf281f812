package idiom

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// triedWithTurns are turns by which something is only tried: what would come of it, whether it could be had instead of what there is, and
// what it would cost or look like. Common ways of speech, no source.
var triedWithTurns = []phrase.Placed{
	// Whether there could be as many instead, asked behind why there are as many as there are.
	{"!RAIL|STIFF|BAY !.. ?,|? ?and|or|so ?then would|could|might|will|can|may|should ?(i|we|you|they|it|there) ?just|also|not|at ?least have|use|do|be|work|fit|go|get|put|look|suit|serve|run|make|try|show ## ?(of (them|those)) ?instead|then|there|too|up|at|all|just|any ?instead $$", "$1 $2 , what if there were $3 $1", askedWhy},
	{"!OPENING !.. ?,|? ?and|or|so ?then would|could|might|will|can|may|should ?(i|we|you|they|it|there) ?just|also|not|at ?least have|use|do|be|work|fit|go|get|put|look|suit|serve|run|make|try|show ## ?(of (them|those)) ?instead|then|there|too|up|at|all|just|any ?instead $$", "$1 $2 , what if there were $3 openings", askedWhy},
	{"!RAIL|STIFF|BAY !.. ?,|? ?and|or|so ?then would|could|might|will|can|may|should ## ?(of (them|those)) ?just|also|not|at|least|still ?be|do|work|fit|go|look|suit|serve|hold|help|hurt|make|get ?any|just|as|also|too ?good|ok|okay|fine|better|worse|enough|alright|(all right)|allowed|possible|plenty|overkill|well|sense|by|in ?instead|then|there|too $$", "$1 $2 , what if there were $3 $1", askedWhy},
	{"!OPENING !.. ?,|? ?and|or|so ?then would|could|might|will|can|may|should ## ?(of (them|those)) ?just|also|not|at|least|still ?be|do|work|fit|go|look|suit|serve|hold|help|hurt|make|get ?any|just|as|also|too ?good|ok|okay|fine|better|worse|enough|alright|(all right)|allowed|possible|plenty|overkill|well|sense|by|in ?instead|then|there|too $$", "$1 $2 , what if there were $3 openings", askedWhy},
	{"why ?is|are !LENQ !.. ?,|? ?and|or|so ?then would|could|might|will|can|may|should # ?just|also|not|at|least|still ?be|do|work|fit|go|look|suit|serve|hold|help|hurt|make|get ?any|just|as|also|too ?good|ok|okay|fine|better|worse|enough|alright|(all right)|allowed|possible|plenty|overkill|well|sense|by|in ?instead|then|there|too $$", "why is $1 $2 , what if $1 is $3", nil},
	{"why ?is|are !LENQ !.. ?,|? ?and|or|so ?then would|could|might|can|may|should|(can not)|(could not) it ?just|also|not ?be # ?instead|then|there|too $$", "why is $1 $2 , what if $1 is $3", nil},
	{"why ?is|are !RAIL|POST|STIFF|LUMBER|(end posts)|(added posts) !.. ,|?|;|and|or ?and|or|so ?then would|could|might|can|may|should ?(they|it|i|we|you) ?just|also|not ?be|have|use|get ?made|of|in|be ?of @ ?s ?be|do|work|fit|go|look|serve|hold|help ?just|as|also|too ?good|ok|okay|fine|better|worse|enough|well|alright ?instead|then|there|too $$", "why are $1 $2 , what if the $1 were $3", nil},
	{"why is !OPENING !.. ,|?|;|and|or ?and|or|so ?then would|could|might|can|may|should it|that ?just|also|not ?be|go|sit|stand|look ?better|moved ?on|at|to ?the !left|right ?instead|then|there|too $$", "why is the $1 $2 , what if the $1 is on the $3", nil},
	// How the post came to its place, and what is told by asking whether it was.
	{"how did ?new|added|extra|middle POST wind|end|finish|land ?up in|at|on that|this ?very|exact spot|place|position|location", "why does the post go there", nil},
	{"^ did i ?already|ever|not mention ?to ?you ?that", "", partMentioned},
	// Whether another figure would be better, and whether to go to it.
	{"^ is|are ?not !(## [RAIL|STIFF|BAY|POST|(added posts)]) ?(any|much|maybe|perhaps|then) better|nicer|wiser|smarter|stronger|prettier|safer|neater|tidier ?looking ?(then|instead|overall|anyway|though|for it) $", "what if $1", figureBefore},
	{"^ is|are ?not !(# [GAP|OPENING]) ?(any|much|maybe|perhaps|then) better|nicer|wiser|smarter|stronger|prettier|safer|neater|tidier ?looking ?(then|instead|overall|anyway|though|for it) $", "what if $1", figureBefore},
	{"^ shall|should|could|may|might|do i|we ?(have|need|got|rather) ?to ?(just|rather|maybe|perhaps) make|have it|that|them !#|##", "what if it were $1", figureBefore},
	{"^ shall|should|could|may|might|do i|we ?(have|need|got|rather) ?to ?(just|rather|maybe|perhaps) take|bring|raise|lower|widen|narrow|open|cut|drop|push|move|get|tighten it|that|them ?up|down|out|in to !#|##", "what if it were $1", figureBefore},
	// Whether what somebody claims would come out so.
	{"^^ ?and|so|but ?, would|will|do|does !.. ?, ?just like|as|(the way) he|she|they|((the|my|our|his|her) PERSON) ?(all|just|always) claims|claimed|says|said|thinks|reckons|swears|insists|promises|promised|figures|told|tells|believes ?me|us ?it|they ?would|will|does|do $$", "is it true that $1 ?", statedInside},
	{"^ would|will|could|can|might ?we|i ?(get by with) only|just|(nothing but)|(none but)|(no more than) !(eights|tens|twelves|fourteens|sixteens|eighteens|twenties|(## footers)) do|work|suffice|serve|(be enough) ?it|this|that|(the job)|(the trick)|(for the job)|(for this) ?too|(as well)", "what if they only had $1", nil},
	// Whether there is a way.
	{"^ is there ?any|a|some|no way|chance|hope|possibility|how ?at ?all ?that", "what if", couldNext},
	{"^ is there ?any|a|some|no way|chance|hope|possibility ?at ?all (to make)|(of making)|(to keep)|(of keeping)|(to get)|(of getting)|(to have)|(of having)|(to set)|(for us to have) !BAY|RAIL|GAP ?all equal|even|alike|(the same)|identical ?(size|width|length)", "what if we had equal $1", nil},
	// What it costs, looks and comes out like.
	{"^ ?so|and how much would|will|does|might ?it|that|this|everything|(the (wall|job|lot)) be|come|run|cost|total ?to ?me|us with|using @ posts|uprights", "what would it cost if we used $1 posts", nil},
	{"^ ?so|and ?please ?can|could|would|will ?you ?please draw|show|picture|sketch|imagine ?ME ?it ?to ?me ?with OPENING on|at|against|to|(over (to|on|at)) !left|right ?hand ?side|end|half ?\\? $$", "what if the opening is on the $1 , draw it", nil},
	{"^ ?please let ME see !OPENING on|at|against|(over (to|on|at)) !left|right ?hand ?side|end|half ?\\? $$", "what if the $1 is on the $2 , draw it", nil},
	{"^ how would|will|does|might ?the OPENING look|do|be on|at|against|(over (to|on|at)) !left|right ?hand ?side|end|half ?\\? $$", "what if the opening is on the $1 , draw it", nil},
	{"^ ?please give|show|print|read|get|make ?ME ?the|a list|(shopping list)|(buying list) if", "what do we need to buy if", soldNext},
	{"with|using @ posts|uprights $$", "if we used $1 posts", askedOfPosts},
	{"what do|must|should|would|will|have|am i|we ?now ?(have|need|got|going|supposed) ?to buy|get|take|order|(pick up) if|when", "what do we need to buy if", soldNext},
	{"^ how is|'s it|that|this|everything|things come|work|turn|look|lay|add|fall|stack|shape|pan|shake|go !if|with|at|when|using", "how does it look $1", nil},
	{"^ how is|'s it|that|this|everything|things come|work|turn|look|lay|add|fall|stack|shape|pan|shake|go out|up|together|off|down !if|with|at|when|using", "how does it look $1", nil},
	{"^ how would|will|does|might|is|'s ?it|that|this|things|everything look with !OPENING on|at|against|to|in !left|right ?hand ?side|end|half ?\\? $$", "what if the $1 is on the $2 , draw it", nil},
	{"^ how would|will|does|might|is|'s ?it|that|this|things|everything look with !OPENING in|at middle|center ?\\? $$", "what if the $1 is in the middle , draw it", nil},
}

var (
	// ChangesWorded are words of a change that need no figure.
	ChangesWorded = scan.WordSet("no without out off less fewer more another extra double halve one drop remove skip")
	// AsksOrDoubts are words that ask or doubt.
	AsksOrDoubts = scan.WordSet(askingOrDoubting)
)

// askingOrDoubting are words and signs by which a clause asks, supposes or denies.
const askingOrDoubting = "? if what why how whether would could not never nobody unless"

// ThatOrIt are words for what was just spoken of.
var ThatOrIt = scan.WordSet("that it this those they")

// TrialWorded reports whether what is to be tried is told by its figures alone, or as an order.
func TrialWorded(before []scan.Atom) bool { return !phrase.SaidBeforeOf(claimVerbs)(before, nil) }

// askedOfPosts: something is asked before it.
func askedOfPosts(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("what how which where show"))(before, nil) && !chunk.Figured(before)
}

// soldNext: what is sold is told behind it.
func soldNext(_, after []scan.Atom) bool { return LengthsIn(after) }

// askedWhy: why something is as it is was asked before.
func askedWhy(before, _ []scan.Atom) bool {
	return phrase.SaidBeforeOf(scan.WordSet("why where come"))(before, nil)
}

// couldNext: what could be is told behind it, with a figure.
func couldNext(_, after []scan.Atom) bool {
	return chunk.Figured(after) && phrase.SaidBeforeOf(scan.WordSet("could can might would"))(after[:min(len(after), 6)], nil) && !phrase.SaidBeforeOf(scan.WordSet("right wrong mistaken off correct"))(after, nil)
}

// partMentioned: a part is told behind it, with its figure.
func partMentioned(_, after []scan.Atom) bool {
	return slices.ContainsFunc(after, func(a scan.Atom) bool { return OfFigure(a) || measure.Denominators[a.Text] > 0 }) && phrase.SaidBeforeOf(scan.WordSet("is are 's"))(after, nil) && !phrase.SaidBeforeOf(scan.WordSet("what how why if or"))(after, nil)
}
