package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// meaningPhrases are ways to ask what a word means, whether something still stands, and what a wall would come to.
var meaningPhrases = []phrase.Placed{
	// What a word means.
	{"^ ?well|so|but|and|sorry|honestly ?i|we|am|are ?have|has|got|had ?absolutely|really|honestly|just no|not|(not the) ?the ?faintest|foggiest|slightest|earthly|good idea|clue|notion|inkling ?of|as ?to what !(..) means|meant|mean $$", "what does $1 mean ?", nil},
	{"^ ?well|so|but|and|sorry|honestly ?i|we|am|are ?have|has|got|had ?absolutely|really|honestly|just no idea|clue|notion|inkling ?of|as ?to what ?a|an|are !(stiffener|stiffeners|kerf|(bracket ear)|(bracket reach)|(added post)) is|are $$", "what does $1 mean ?", nil},
	{"^ ?well|so|but|and|sorry|honestly i|we do not|never ?really ?quite know|understand|get|follow|see what !(..) means|meant|mean $$", "what does $1 mean ?", nil},
	{"^ ?well|so|but|and|sorry|honestly i|we do not|never ?really ?quite understand|get|follow what !(stiffeners|kerf|trim|fit|drop|spare|(bracket (ear|reach|clearance|thickness))|(bottom gap)) is|are $$", "what does $1 mean ?", nil},
	{"^ ?i|we ?am|are not ?really|quite|too sure|certain|clear ?on|about what !(..) means|meant|mean $$", "what does $1 mean ?", nil},
	{"^ ?and|so|but|ok|okay ?, what|(what the heck)|(what exactly) is a|an !(stiffener|kerf|bay|bracket|rail|(bracket ear)|(bracket reach)|(added post)|(end post)|(bottom gap)|(walk - through)) ?(supposed to be)|anyway|exactly|then $$", "what does $1 mean ?", indefinite},
	{"^ ?and|so|but|ok|okay ?, what|(what the heck)|(what exactly) are !stiffeners ?(supposed to be)|anyway|exactly $$", "what does $1 mean ?", nil},
	// Whether what was told still stands.
	{", is|are it|that|this|they|those|them ?all still ?in|on there|in|on|good|set|active|standing|stands|stand|(in force)|(in effect)|(on the books)|valid|counted $$", ", does it still stand ?", nil},
	{"^ ?so|and|but|ok|okay do|does !(..) still hold|stand|apply|count|(hold good)|(hold true)|(go for us) $$", "$1 , does it still stand ?", nil},
	{"^ ?so|and|but|ok|okay am i still|now ?down at|on|for|with", "are we still at", numbersNext},
	{"^ ?so|and|but|ok|okay can|could|might you ?just do|build|manage it|this|that in|with|out|on ?of # !rails|boards|slats|courses|rows|planks|posts ?, please", "make it $1 $2", nil},
	{"^ ?so|and|but|ok|okay please can|could|might you ?just do|build|manage it|this|that in|with|out|on ?of # !rails|boards|slats|courses|rows|planks|posts", "make it $1 $2", nil},
	{"^ ?so|and|but|ok|okay can|could|might you ?just please|kindly ?just do|build|manage it|this|that in|with|out|on ?of # !rails|boards|slats|courses|rows|planks|posts", "make it $1 $2", nil},
	// What it would come to.
	{"what is it|this|that|everything|(the lot)|(the wall) come|add|amount|work ?out|up to !if|with|for|using", "what does it cost $1", nil},
	{"^ ?please ?can|could|would|will ?you ?please ?just ?now quote|price ?up|out me|us ?on|for|up|out ?(wall with)|(job with) # !rails|slats|courses|rows ?!(..) $$", "what does it cost with $1 $2 $3 ?", nil},
	{"^ ?please ?i|we ?would ?like|love|want|need|get|give|work ?me|us|have ?up quote|price|estimate|bid on|for ?(wall with)|(job with) # !rails|slats|courses|rows ?!(..) $$", "what does it cost with $1 $2 $3 ?", nil},
	{"^ ?so ?and what is|'s cheapest|least|lowest ?price|figure|sum|money|amount ?that i|we|you|it|this|he|she|they can|could|might|will|would|may ?possibly|ever do|build|get|make|have|(be (done|built|made|had))|manage|(get away with)|(put up) ?it|this|wall|(the wall)|that|them ?done|built|up ?for $$", "what if cheapest , what does it cost ?", nil},
	{"^ ?so ?and how cheap|cheaply|(little money) can|could|might|will|would|may i|we|you|it|this|he|she|they ?possibly|ever do|build|get|make|have|(be (done|built|made|had)) ?it|this|wall|(the wall)|that|them ?done|built|up ?for $$", "what if cheapest , what does it cost ?", nil},
	// How a figure comes out, and whose size is told.
	{"!gap|gaps|opening|doorway|bay|bays|span finishes|finish up|out|off ?at|as #", "$1 ends up at $2", nil},
	{"^ ?just one ?new|added|extra|more|middle post ?added ?(in (the|) middle) ,|and ?and they|them ?is|are all ?is|are @", "one added post , all posts $1", nil},
	{"^ ?just one ?new|extra|middle post ?added ?(in (the|) middle) , all @", "one added post , all posts $1", nil},
	{"on this|(this here) ticket|order|docket|(work order)|(job ticket)", "on this job", orderedHere},
}

// numbersNext: a number stands right behind it.
func numbersNext(_, after []scan.Atom) bool {
	return phrase.StartsLength(measure.Reader{Atoms: after}, 0) || len(after) > 0 && numberAhead(after[:1])
}

// indefinite reports whether what is asked for has no definite article before it.
func indefinite(before, _ []scan.Atom) bool {
	return len(before) == 0 || chunk.BreaksClause(before, len(before)-1)
}

// orderedHere: "gap 2 on this ticket", where no verb tells what the ticket says.
func orderedHere(before, after []scan.Atom) bool {
	if !phrase.AmountBefore(before, after) && !(len(before) > 1 && phrase.AmountBefore(before[:len(before)-1], after)) || !phrase.EndsClause(before, after) {
		return false
	}
	for _, a := range before {
		if tellsOfPaper[a.Text] {
			return false
		}
	}
	return true
}

var tellsOfPaper = scan.WordSet("is are was were be has have had got says shows reads lists calls says what how which why does do did can could would will if they he she")

// figuresShown reports whether what follows is what a drawing shows: a part or a number, with a figure before the line ends.
func figuresShown(_, after []scan.Atom) bool {
	if len(after) < 2 || !HasFigures(after) && !numberAhead(after) {
		return false
	}
	switch after[0].Text {
	case "i", "we", "you", "so", "but", "and", "make", "use", "set", "put", "give", "what", "how", "which", "where", "can", "could", "would", "should", "mine", "ours", "my", "our":
		return false
	}
	return true
}
