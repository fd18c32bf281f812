package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// particleTurns are verbs that mean something of their own with "up", "down", "in", "out", "off", "over" and "away": the little word is no
// direction of a change there. What no row here reads is asked back by particles.go.
var particleTurns = []phrase.Placed{
	// What is laid down is there, what is kicked off is gone.
	{"^^ ?ok|okay|so|now|then ?, ?please|just ?(let us|i|we) ?will|would lay|put|set|nail|screw|bolt|tack down !(## RAIL|POST) ?please $$", "i want $1", nil},
	{"^^ ?ok|okay|so|well ?, i|we am|are down with !(## RAIL|POST) $$", "i want $1", nil},
	{"^ i|we|he|she|they ?have|has ?finally came|come|comes down on the side of", "i want", figureFollows},
	{"i|we ?have|had ?finally|now|just ?all came|come ?back around|round to", "i want", figureFollows},
	{"kick|knock|leave|lop|chop|rip|tear|yank|boot|strip|toss|throw|chuck|pitch|strike|scratch off|out|away !(## RAIL|POST|stiffener|stiffeners|bay|bays)", "remove $1", bidsHereOrWished},
	{"take|pull|knock|cut|kick|leave|lop|chop|rip|tear|yank|boot|strip|toss|throw|chuck|pitch|drop off|out|away another|(one more) ?of ?the RAIL", "remove 1 rail", bidsHereOrWished},
	{"take|pull|knock|cut|kick|leave|lop|chop|rip|tear|yank|boot|strip|toss|throw|chuck|pitch|drop off|out|away ## more !RAIL|POST|stiffener|stiffeners|bay|bays", "remove $1 $2", bidsHereOrWished},
	{"kick|knock|lop|chop|rip|tear|yank|boot|strip|toss|throw|chuck|pitch !(## RAIL|POST|stiffener|stiffeners|bay|bays) off|out|away", "remove $1", bidsHereOrWished},
	// By how much.
	{"^ ?please|just|now|ok|okay ?, ?let ?us tick|notch|crank|wind|dial|click|jack|bump|nudge|ease !THEQ ?right ?back up ?by # ?please $", "increase $1 by $2", nil},
	{"^ ?please|just|now|ok|okay ?, ?let ?us tick|notch|crank|wind|dial|click|bump|nudge|ease !THEQ ?right ?back down ?by # ?please $", "reduce $1 by $2", nil},
	{"^ ?please|just|now|ok|okay ?, ?let ?us take in !THEQ ?by # ?please $", "reduce $1 by $2", nil},
	{"^ ?please|just|now|ok|okay ?, ?let ?us take|bring|move|push|pull|crank|stretch|run !THEQ ?right ?back out|over|up|down|in to # ?please $", "set $1 to $2", nil},
	{"^ ?please|just|now|ok|okay ?, ?let ?us lower !THEQ ?right ?all ?the ?way ?back down to # ?please $", "set $1 to $2", nil},
	// Limits.
	{"stay|steer|keep|shy|veer ?well|right (away [from])|(clear [of|from])|from|of ?any|all|the !GAP over|above|past|beyond|(wider than)|(bigger than)|(larger than)|(more than) #", "$1 no more than $2", nil},
	{"^ !GAP ?of over|above|past|beyond|(wider than)|(bigger than)|(larger than)|(more than) # is|are ?just|simply|completely|a|an ?big|total (no - no)|nono|(off the table)|(out of the question)|(not on)|(deal breaker)|dealbreaker|nonstarter|taboo|forbidden|(right out)", "$1 no more than $2", nil},
	{"^ anything|everything|nothing over|above|past|beyond|(wider than)|(bigger than)|(larger than)|(more than) # !GAP is|are ?just|simply|completely|a|an ?big|total (no - no)|nono|(off the table)|(out of the question)|(not on)|(deal breaker)|dealbreaker|nonstarter|taboo|forbidden|(right out)", "$2 no more than $1", nil},
	{"can|could|may|might go|come|get|run|drop|shrink|narrow|squeeze|tighten ?right|all ?the ?way ?back|in down to #", "is at least $1", phrase.BothHold(limitTold, ofNoPerson)},
	{"can|could|may|might go|come|get|run|climb|grow|stretch|widen|open|reach ?right|all ?the ?way ?back|out up to #", "is at most $1", phrase.BothHold(limitTold, ofNoPerson)},
	{"can|could|may|might run|get|come|stretch|reach|grow|open ?up|out as wide|high|tall|big|large|long as #", "is at most $1", limitTold},
	{"can|could|may|might go|run|get|come|drop|shrink ?down|in as narrow|low|small|short|tight|little as #", "is at least $1", limitTold},
	{"^ ?please|just|now|ok|okay ?, let|allow !THEQ go|run|get|come|stretch|reach|grow|be|stand ?up|out as wide|high|tall|big|large|long as # ?please $", "$1 at most $2", nil},
	// Money.
	{"cap it|things|this|that|everything|us|me off|out at", "cap it at", nil},
	// What is called up is looked at.
	{"^ ?please|just|now|ok|okay ?, ?let ?us pull|bring|call|put|punch|get|dig up|out ?the !cuts|marks|drawing|layout|steps|(shopping list)|(cut list)|cautions|options ?please|again|now $", "show me the $1", nil},
	{"^^ ?and last but not least", "", valueFollows},
	{"is|are|'s ?still holding out for", "wants", nil},
}

// limitTold: what may be so is told of something, not asked and not only thought of.
func limitTold(before, after []scan.Atom) bool {
	return len(before) > 0 && !asksAtEnd(after) && !HoldsWord(before, "if", "what", "how", "whether", "why", "says", "said", "say", "not", "never", "hoping", "hope", "hoped", "wish", "wanted", "want")
}

// ofNoPerson: it is no person that goes there: "i might drop down to four boards" only thinks of it.
func ofNoPerson(before, _ []scan.Atom) bool {
	w := chunk.LastOf(before, 1)
	return !lex.Speakers[w] && !lex.OtherOnes[w] && !chunk.IsClass(w, "PERSON") && !anyPerson[w]
}

// anyPerson are words for whoever it may be.
var anyPerson = scan.WordSet("someone somebody anyone anybody everyone everybody one people folks guys all whoever nobody")

// valueFollows: what comes behind holds a figure.
func valueFollows(before, after []scan.Atom) bool { return len(after) > 2 && !asksAtEnd(after) }
