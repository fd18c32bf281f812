package idiom

import (
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// learnerPhrases are ways in which somebody who learns asks: why it is so, what is in the way, what comes first. They are set plain early, as
// their words mean other things elsewhere.
var learnerPhrases = []phrase.Placed{
	// One thing and not another: why it is that.
	{"what makes|made it|them|you|that|this ?be ## !RAIL|STIFF|BAY ?, and|but|(rather than)|(instead of) ?not ## or|nor ## ?RAIL|STIFF|BAY $$", "why so many $2", nil},
	// Who chose it, and where it comes from.
	{"^ who|whoever ?on ?earth picked|chose|decided|settled|(came up)|set|landed|fixed|wanted|ordered ?on|with|upon ?(a gap of) # ?-|for|as|of|in ?(the [number|width|height|size] [of|for]) !RAIL|GAP|OPENING|BAY|STIFF|(bottom gap)|(wall height) ?,|.|-|; ?(i mean) ?and ?((where|how) (does|did|is|do) (that|the|this) (number|figure|one) ?(come|coming|get) ?(from|about|there))|why $$", "why $2", nil},
	{", ?(i mean) ?and ?(where (does|did|is) (that|the|this) (number|figure|one) ?(come|coming) from) $$", "", phrase.SaidBeforeOf(scan.WordSet("why"))},
	// One more is put in, which makes it the seventh.
	{"throw|threw|put|add|added|stuck|squeeze|squeezed|hung|hang|screwed ?in|on|up fourth !RAIL", "have 4 $1", triedAhead},
	{"throw|threw|put|add|added|stuck|squeeze|squeezed|hung|hang|screwed ?in|on|up fifth !RAIL", "have 5 $1", triedAhead},
	{"throw|threw|put|add|added|stuck|squeeze|squeezed|hung|hang|screwed ?in|on|up sixth !RAIL", "have 6 $1", triedAhead},
	{"throw|threw|put|add|added|stuck|squeeze|squeezed|hung|hang|screwed ?in|on|up seventh !RAIL", "have 7 $1", triedAhead},
	{"throw|threw|put|add|added|stuck|squeeze|squeezed|hung|hang|screwed ?in|on|up eighth !RAIL", "have 8 $1", triedAhead},
	{"throw|threw|put|add|added|stuck|squeeze|squeezed|hung|hang|screwed ?in|on|up ninth !RAIL", "have 9 $1", triedAhead},
	{"throw|threw|put|add|added|stuck|squeeze|squeezed|hung|hang|screwed ?in|on|up tenth !RAIL", "have 10 $1", triedAhead},
	// Opening something up to a width makes it that wide, and limits nothing.
	{"open|opening my|our|this|that|the !OPENING|(walk - through) ?up ?out to ?full|whole|even #", "setting the $1 to $2", stopsBefore},
	{"had|should we|i|you # more|extra|additional !GAP|OPENING|HEIGHT|RAIL|BAY", "if $2 were $1 more", phrase.StartsClause},
	// What stands in the way of somebody's version.
	{"why ?is|are|can|could|will|would|does|do|did not his|her|their|the|my|our ## - !RAIL version|plan|idea|setup|layout|scheme|design|way ?work|fly|go|hold|fit ?out", "why can we not have $1 $2", nil},
	{"why ?is|are|can|could|will|would|does|do|did not his|her|their|the|my|our ## !RAIL version|plan|idea|setup|layout|scheme|design|way ?work|fly|go|hold|fit ?out", "why can we not have $1 $2", nil},
	{"(how come)|why it|they|you|we|i|that cannot|(can not)|(could not) go|be|get|reach|run ?any over|past|((more|farther|further) than) # between|(from|to) ?(one|each|a) !STIFF|RAIL ?to|and ?(next|next one|another|other|one another)", "why can the $2 spacing not be more than $1", nil},
	{"what|(how come) made|makes|make|did|had ?that you|him|her|them|it settle|decide|land|arrive|choose|pick|picks|choosing ?on|at|with|upon (that many)|(so many) RAIL", "why so many rails", nil},
	{"what|(is there [anything]) ?is|speaks|stands against ?having|using ## !RAIL|STIFF ?then $$", "why not $1 $2", nil},
	{"why is|are !POST|(added POST)|(POST [height]) # HIGH|HEIGHT ?, ?and|but why cannot|(can not)|(could not)|(should not) it|they|that ?just be", "why is the $1 $2 tall and why can the $1 not be", nil},
	{"where did # in|for|of|at|under !(bottom gap)|gap|OPENING|BAY|span|(wall height) ?(ever) come|spring from", "why the $2", nil},
	{"what is with # !GAP|OPENING|(bottom gap)", "why the $2", phrase.StartsClause},
	{"why though|tho !is|are|does|do|did|can|must|has|have|should|would|will", "why $1", nil},
	// The order of things.
	{"do|should|must i|we mark|cut|drill|dig|hang|screw|measure|stain|paint ?it|them first or mark|cut|drill|dig|hang|screw|measure|stain|paint ?it|them ?first $$", "what are the steps", nil},
	{"(i do not know)|idk|dunno|(no idea)|(no clue) what|which|where|how ?thing|part|step to|i|we|do do|go|start|begin ?at|with first|1st|(1 st) ?anyhow|anyway", "what is the first step ?", nil},
	{"(which way)|(what way) round|around ?do|should|must i|we do|tackle|go ?about things|this|it|that|these", "what are the steps", nil},
	{"^ what|(which thing|step|part) is|comes|goes first ?here|then|now $", "", phrase.SaidBeforeOf(scan.WordSet("steps"))},
	// What goes together.
	{"which|what numbers|counts|combinations|arrangements|amounts|heights|gaps|widths of|and|or !_ ?and|or ?GAP|SPACE are|stand|remain|lie open|available|left to|for us|me", "what are the options", nil},
	{"which|what arrangements|combinations|choices|possibilities|variations ?are|stand|remain|lie open|available|left to|for us|me", "what are the options", nil},
	{"which|what numbers|counts of RAIL|STIFF come|comes|work|works ?out ?okay|ok|right|well|fine|even|evenly", "what are the options", nil},
	{"where stands|stand|sits|sit|goes POST|((added|new|old|right|left|end) POST) ,|and ?and why there|that $$", "where are the posts ? why are the posts there ?", nil},
	{"where do|does|will|would|should|is|are POST|((added|new|old|right|left|end) POST) ?stand|sit|go|be ,|and ?and why there|that|so $$", "where are the posts ? why are the posts there ?", nil},
	{"explain ?to me ?please ?,", "tell me", whereAhead},
	{"from today|tonight|(this moment)|(this minute)|(this day)|(this point) ?on|onward|onwards|forward", "from now on", goesStraightOn},
	{"go|(going to go)|(gotta go)|run get|fetch !and", "buy $1", buyAsked},
	{"gotta|(have to)|(has to)|(need to)|must go|run|drive ?and|out get|fetch", "have to buy", nil},
	{"what|(how much) is|does|will|would that|it|this|(all [of] (that|it|this)) ?all set|run|put|push ME|you|us back", "what does it cost", nil},
	{"!OPENING|(walk - through) ,|. ?and ?then ?(tell me)|(show me) how far ?is it|they|that ?is from|off", "$1 . how far is the opening from", nil},
	// By phone.
	{"under|below|beneath ?the lowest|bottom 1 ?please|then|thanks $", "under the bottom one", phrase.SaidBeforeOf(scan.WordSet("same"))},
	{"though|tho $", "", phrase.SaidBeforeOf(scan.WordSet("why how what y"))},
	{"dumb|silly|stupid|quick|odd|daft|basic|newbie question ?maybe|perhaps|probably|here ?, ?but", "", phrase.StartsClause},
	// What leads up to a question, and what is only added to it.
	{"i|we can|could follow ?it|you|this|that ?fine|(all right) ?up|as|until ?far ?to|as ?!_ !_ , so|but|now", "", phrase.StartsClause},
	{";|,|.|- ?so could|can|would|will you ?please tell|show|enlighten|educate ?ME|us $$", "", phrase.SaidBeforeOf(scan.WordSet("why how what where which when"))},
	{"who|what ?on ?earth needs|need|wants this|that|so much|many wood|lumber|timber|RAIL ,|?", "", phrase.StartsClause},
	{"i|we am|are ?all done|through|finished with it|this|plan|design|one|drawing|((this|that) (plan|design|one|wall|drawing)) ?now ,|. ?so ?and", "", forgetAhead},
	{", mate|pal|chief|squire|guv|bud|bro|dude|fella $$", "", nil},
	// Why his is not so, and yours is.
	{"why is|are his|her|their ## ?- RAIL version|plan|idea|setup|layout|scheme|design|way no|not ?any good|use|right|allowed|possible|ok|okay", "why can we not have $1 rails", nil},
	{"what is|was ?the wrong|matter|trouble|problem with his|her|their ?## ?- ?RAIL version|plan|idea|setup|layout|scheme|design ?with|of|using ## !RAIL|STIFF", "why can we not have $2 $3", nil},
	{"(how come)|why ?is your !GAP|BAY|OPENING|span|(wall height)|(bottom gap) ?width|height|size ?is ?so ?not different|off|(the (one|same)) ?from|than|as ?his|hers|theirs|mine|(what (he|she|they) .. )|((he|she|they) ((came up with)|has|have|got)) ,|.|- ?and ?so how|where did you get|(come by)|(arrive at)|(work out) ?(to) yours|it|that $$", "why the $1", nil},
	{", he|she|they came up with|got|has|have another|(a different)|(something different)|different ?one|number|figure|width|height ?though $$", "", phrase.SaidBeforeOf(scan.WordSet("why how"))},
	{"(how is it) ?that !my|our|GAP|OPENING|BAY|span|(wall height)|(bottom gap) ?is|comes|come|works|ends|turns|lands ?out|up ?at|to|as #", "why is the $1 $2", nil},
	// What the saw takes.
	{"how much ?wood|lumber|material does|will|do saw|blade ?of ?yours eat|eats|take|waste|chew|lose|remove|cost ?up ?away ?out ?with|in|on|at|per|for ?each|every|one cut ?in|by ?your|our|these ?figures|numbers|calculations|sums|reckoning", "what is the kerf", nil},
	{"!tasteful|pleasing|nice|decent|sensible|reasonable|comfortable|fair|proper|suitable|certain|becoming|handsome distance apart", "$1 apart", nil},
	{"do|build|make it|this ?in ?the|(just like) ?same way ?that !((his|her|their|other) (crew|guys|people|contractor|neighbors|builders|team|class) (does|do|did|has|have)) ?it", "do it $1", nil},
	// What was a slip.
	{"^ ?(my bad|fault)|oops|sorry|whoops ?,|. i|we ?had said|told|gave|typed|wrote|entered|put|punched ?in ?down ?you|it ?for # !RAIL|STIFF ?(by mistake)|(in error)|wrongly ,|;|.|- ?but ?and|i|we|it meant|(was meant)|(should have been)|(is really)|should|(wanted) ?(to say|be|put|type|write|enter) ##", "i want $3 $2", nil},
	{"^ ?(my bad|fault)|oops|sorry|whoops ?,|. i|we ?had said|told|gave|typed|wrote|entered|put|punched ?in ?down ?you|it ?for # !RAIL|STIFF ?(by mistake)|(in error)|wrongly ,|;|.|- ?but # is what i|we ?had meant|wanted|intended ?(to say|be|put|type|write|enter)", "i want $3 $2", nil},
	{"^ ?(my bad|fault)|oops|sorry|whoops ?,|. i|we ?had said|told|gave|typed|wrote|entered|put|punched ?in ?down ?you # for !((wall [height])|([height of] wall)|gap|OPENING|(bottom gap)|span) ?(by mistake)|(in error)|wrongly ,|;|.|- ?but ?and|i|we|it meant|(was meant)|(should have been) ?(to say|be|put|type|write|enter) #", "$2 is $3", nil},
	{"^ ?(my bad|fault)|oops|sorry|whoops ?,|. i|we ?had said|told|gave|typed|wrote|entered|put|punched ?in ?down ?you # for !((wall [height])|([height of] wall)|gap|OPENING|(bottom gap)|span) ?(by mistake)|(in error)|wrongly ,|;|.|- ?but # is what i|we ?had meant|wanted|intended ?(to say|be|put|type|write|enter)", "$2 is $3", nil},
}

// triedAhead: what goes before is a trial, not an order.
var triedAhead = phrase.SaidBeforeOf(scan.WordSet("if suppose supposing would could say imagine pretend"))

// stopsBefore: something is asked to be in the way.
var stopsBefore = phrase.SaidBeforeOf(scan.WordSet("stop stops stopping keep keeps keeping prevent prevents hinder hinders against why"))

// buyAsked: how much of it is asked before.
var buyAsked = phrase.SaidBeforeOf(scan.WordSet("wood lumber boards material timber"))

// whereAhead: a place is asked for.
func whereAhead(_, after []scan.Atom) bool { return len(after) > 0 && after[0].Text == "where" }

// forgetAhead: what is there is to be wiped out.
func forgetAhead(_, after []scan.Atom) bool {
	return len(after) > 1 && wipesOut[after[0].Text]
}

var wipesOut = scan.WordSet("wipe scrap start erase clear throw begin toss bin dump")
