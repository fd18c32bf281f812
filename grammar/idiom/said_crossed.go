package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// crossedTurns are ways to ask, to try, to hold a figure against one's own and to leave something open that hold for whatever quantity they
// are said of. Found by crossing each with all names of quantities; common ways of speech, no source.
var crossedTurns = []phrase.Placed{
	// A name with a word that could be of something else.
	{"STIFF count", "number of stiffeners", nil},
	// Whether a figure holds.
	{"^ is|was !VALUE correct|accurate|(spot on)|(the (right|correct|proper) (number|figure|size|count|value|length|height|width|answer|one)) for !.. $", "is it right that $2 is $1", nil},
	{"^ is|was the|his|her|their|my|our|your !PAPER 's !VALUE for|on !.. correct|right|accurate|true|ok|good $", "the $1 says $3 is $2 , is that right", nil},
	{"^ does|do|would !.. at|of|being !(#|##|@|£) square|agree|tally|match|jibe|fit|line ?up with yours|(your (figure|number|numbers|figures|sums|math|layout|answer))|(what you (have|got|get)) $", "is it right that $1 is $2", nil},
	{"^ does|do|would !VALUE for|on !.. square|agree|tally|match|jibe|line ?up with yours|(your (figure|number|numbers|figures|sums|math|layout|answer))|(what you (have|got|get)) $", "is it right that $2 is $1", nil},
	{"^ does|do|would !VALUE square|agree|tally|match|jibe|line ?up with what you have|got|get for|on !.. $", "is it right that $2 is $1", nil},
	{"^ do you ?also get|have|make|find !VALUE for|on !.. too|also|(as well) $", "is it right that $2 is $1", nil},
	{"^ i get|got|have|had|make|made !VALUE for|on !.. , do|did|have|would you ?get|got|agree ?that|it ?too $$", "is it right that $2 is $1", nil},
	{"^ is|are !QUANT !VALUE or not $$", "is it right that $1 is $2", nil},
	{"^ did|have|has they|he|she|we|i ?really get|got|gotten !QUANT right at|with !VALUE $", "is it right that $1 is $2", nil},
	{"^ they|he|she have|has|had|'s|got ?got ?put !VALUE ?written ?down for|on !QUANT $", "they say $2 is $1", nil},
	{"(is it) ?really right|true|correct that !(..) is|are what this|that|it|(the (wall|job|design|plan|layout)) needs|takes|wants|(calls for)|requires", "is it right that it needs $1", allSaid},
	{"^ is !VALUE right for|on !QUANT $", "is it right that $2 is $1", nil},
	{"^ the|his|her|their|our|my !PAPER gives|shows|has|lists|says|reads !VALUE for|on !QUANT $", "the $1 says $3 is $2", nil},
	// What is only tried.
	{"^ what would|will|does|might !QUANT at|of|being !VALUE do|change|mean|bring ?us|me|here $", "what if $1 is $2", nil},
	{"^ does|would|will it|this|that|everything ?still ?all work|fit|do|go|(work out) with|at !QUANT at|of|being !VALUE $", "what if $1 is $2", nil},
	{"^ ?(let us) try !QUANT at|as !VALUE $", "what if $1 is $2", nil},
	{"^ ?(let us) try !VALUE for|as !QUANT $", "what if $2 is $1", nil},
	{"^ would|could|will|are|'ll you ?be able to do|manage|make|have !QUANT at !VALUE $", "what if $1 is $2", nil},
	{"^ is|are|would ?be !VALUE possible|doable|feasible|workable|realistic|practical|(an option)|(in the cards) for|on|with !.. $", "what if $2 is $1", nil},
	{"^ (let us)|(let me) ?just see what !VALUE does|do|(would do)|(will do) for|to|with !.. $", "what if $2 is $1", nil},
	{"^ what would|does|will it mean|take|involve|(be like) to|if have|make|set|put|run !.. at|to|of !VALUE $", "what if $1 is $2", nil},
	{"^ what effect|impact|difference|consequences|consequence|influence would|does|will|might !.. of|at|being !VALUE have|make $", "what if $1 is $2", nil},
	{"^ would|will|could|can|might|does|(how would) !left|right ?side do|work|suit|be ?ok|fine|good|alright ?for|as ?the (opening side)|(side of [the] opening) $", "what if the opening is on the $1", nil},
	// What is asked.
	{"^ where|how are|do we|i|things ?stand|standing|at|are on|with|for !QUANT ?now|(right now)|today|(at the moment) $", "what is $1", nil},
	{"^ where|how are|do we|i|things ?stand|standing|at|are on|with|for !TABLED ?now|(right now)|today|(at the moment) $", "show me $1", nil},
	{"^ ?please pull|bring|call|put up !TABLED ?again|please|(for me) $", "show me $1", nil},
	{"^ where do|does|did !QUANT stand|(come out)|(end up) ?now|(right now)|today|(at the moment) $", "what is $1", nil},
	{"^ what|which ?kind|sort ?of number|figure|value do|did|are you have|get|got|using|use for|on !ANYQUANT $", "what is $1", nil},
	{"^ what is ?the ?your number|figure|value for|on !ANYQUANT $", "what is $1", nil},
	{"^ what|which kind|sort of number|figure|value is !ANYQUANT $", "what is $1", nil},
	{"^ how did|does|do !QUANT turn|pan|come|work|shake out ?(in the end) $", "what is $1", nil},
	{"^ what do|did|have you|we ?get|got|have|figured|calculated|(come up with)|(came up with) for|on|at !QUANT ?now $", "what is $1", nil},
	{"^ what do|did|have you have|got|get|put|make !QUANT ?down at|as|to $", "what is $1", nil},
	{"^ what is|will|does|did|would|should !QUANT ?be (going to be)|((come|work|turn|end) [(out|up)] [(to|at|as)] [be])|(end up being)|measure|now|currently|be|again|(need to be)|(have to be) $", "what is $1", nil},
	{"^ i forget|forgot|(do not (know|remember|recall)) what !QUANT is|are|was|were $", "what is $1", nil},
	{"^ ?(do you have) ?any idea|clue|notion ?of|on what !QUANT is|are|was|were ?(going to be) $", "what is $1", nil},
	{"^ (let me|us) see|have !QUANT ?again ?please $", "what is $1", nil},
	{"^ say|repeat !QUANT ?again|(one more time)|(once more) ?please $", "what is $1", nil},
	{"any|what|which hazards|hazard|dangers|danger|risks|risk|pitfalls|cautions|warnings|precautions|traps ?that|which|there ?(is there) i|we should|ought|need|must|have ?to ?be|get warned|told|aware|informed|alerted|mindful|wary|notified of|about|to $", "what are the cautions", nil},
	{"^ what happens|changes when|whenever|once", "what if", notCutWrong},
	{"if !i|we|you|they went|dropped|came|moved|got ?back|right|all down|up to a|an !(GAP|(bottom gap)|(wall height)|OPENING|(stiffener spacing)|span) of !#", "if $1 have a $2 of $3", nil},
	{"go|drop|come|move|get ?back|right|all down|up to a|an !(GAP|(bottom gap)|(wall height)|OPENING|(stiffener spacing)|span) of !#", "have a $1 of $2", nil},
	{"^^ no|num|nr|nbr ?. of !RAIL|STIFF|posts|(added posts)|bays|brackets|screws|anchors|boards|openings ?needed|total ?\\? $$", "how many $1", nil},
	{"^^ ?total|whole|overall feet|footage|length|amount|quantity|(board|linear|lineal|running|total feet|footage) of ?the|all lumber|wood|timber|boards ?needed ?\\? $$", "what do we need to buy", nil},
	{"^^ ?the ?(cut|cutting) length|lengths of ?each|every|the|my RAIL|STIFF|(rail ##)|(each piece) ?\\? $$", "how long do i cut them", nil},
	{"^^ ?the rail|board|slat|stiffener length|lengths ?\\? $$", "how long do i cut them", nil},
	{"^^ ?(where is) ?the center|middle|centre|centerline ?(where is) of rail ## ?\\? $$", "where do the marks go", nil},
	{"^^ ?the|all rail|board|slat|bracket positions|position|locations|location|placement|heights|elevations ?\\? $$", "where do the marks go", nil},
	{"^ where is|are|does|do the top|topmost|bottom|lowest|highest RAIL ?go|sit ?at ?on ?the ?POST $", "where do the marks go", nil},
	// What only names what it is for: how wide that is, is asked back.
	{"i|we would|'d ?really ?just like|love|prefer !.. wide|big|large|roomy enough", "i want $1 wide enough", nil},
	// Why it is as it is.
	{"^ what makes|made !QUANT come|turn|end|work|be ?out|up ?at|like|as|the ?way ?that|this|it ?does|is|did $", "why $1", nil},
	{"^ how was|were|is|are|did !QUANT ?get worked|figured|found|computed|calculated|derived|determined|reckoned ?out $", "why $1", nil},
	{"^ how was|were|is|are|did !TABLED ?get worked|figured|computed|calculated|derived|determined|reckoned ?out $", "why $1", nil},
	{"^ where does|did|do !QUANT come from $", "why $1", nil},
	{"^ where did|do|have you get|got|take|find !QUANT ?from $", "why $1", nil},
	{"^ show ?me|us how you got|get|figured|computed|(worked out)|(came up with)|(arrived at) !ANYQUANT $", "why $1", nil},
	{"^ give|tell|show|explain ?me|us ?to ?me|us the|your reason|reasons|reasoning|logic|thinking|grounds for|behind|of !ANYQUANT $", "why $1", nil},
	// How it is worked out.
	{"^ ?please go|run through !QUANT with me|us ?(step by step)|slowly $", "teach me $1", nil},
	{"what is ?the|a|your formula|equation for|of|behind !QUANT $", "teach me how to work out $1", nil},
	// What is left open.
	{"^ ?you ?can ?just leave !QUANT open|undecided|unset|blank|free|floating|(to be (determined|decided|seen)) ?(for now)|(for the moment)|(for the time being) $", "forget $1", allSaid},
	{"^ ?just let !ANYQUANT float|(be (whatever|anything|free|open) [(it (is|likes|wants|will be|comes out|needs [to be]))])|(be what it will [be])|(come out (however|as|where|wherever) [it] [(likes|will|wants|may|does)])|(fall (where|wherever) it (may|will|falls|likes)) $", "forget $1", nil},
	{"^ !ANYQUANT can|may|could|might be anything|whatever|(whatever (it|you) (likes|wants|like|want|is|needs [to be]))|(anything (it|you) (likes|wants|like|want)) $", "forget $1", nil},
	{"^ !ANYQUANT is|are no longer fixed|set|given|settled|decided $", "forget $1", nil},
	{"^ whatever|anything|(anything at all) for !ANYQUANT $", "forget $1", nil},
	{"^ you can|may|should|could|'ll|will ?just|please pick|choose|decide|settle ?on !ANYQUANT $", "forget $1", nil},
	{"^ you ?just|please pick|choose|decide|settle ?on !ANYQUANT $", "forget $1", nil},
	{"^ ?i ?will|'ll ?just leave !ANYQUANT ?entirely|all up to you $", "forget $1", nil},
	{"^ !ANYQUANT is|are ?entirely|all up to you $", "forget $1", nil},
	{"^ i|we no longer care|mind what|(how (big|wide|high|tall|long|many|much)) !ANYQUANT is|are|(comes out (at|to))|(turns out [to be]) $", "forget $1", nil},
	{"^ i|we do not|never care|mind what|(how (big|wide|high|tall|long)) !QUANT is|are|(comes out (at|to))|(turns out [to be]) ?any|anymore ?more|longer $", "forget $1", nil},
}

// allSaid: nothing else is said with it.
func allSaid(before, after []scan.Atom) bool { return len(before) == 0 && chunk.EndsPart(after, 0) }

// notCutWrong: a figure follows, and it is not told what somebody gets wrong at the saw.
func notCutWrong(_, after []scan.Atom) bool {
	return chunk.Figured(after) && !(len(after) > 1 && lex.Speakers[after[0].Text] && sawn(after, nil))
}

// sawn reports whether something is cut.
var sawn = phrase.SaidBeforeOf(scan.WordSet("cut cuts cutting saw sawed trim trimmed chop"))
