package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// struckOut are the ways to strike out a figure and tell another at once: "six rails. Hmm, scratch that, five". Alone they are orders to take back.
var struckOut = []phrase.Placed{
	{"^ ?hmm|hm|um|uh|er|oh|no|nah|nope|wait|well|ah|oops|whoops|sorry|actually ?, ?no|wait|sorry|actually ?, scratch|strike|scrap|forget|cancel|nix|undo|erase|disregard|ignore|drop|reverse|retract|withdraw that|it|this ?.|,|;|:|- ?and", "no ,", struckForAnother},
	{"^ ?hmm|hm|um|uh|er|oh|no|nah|nope|wait|well|ah|oops|whoops|sorry|actually ?, ?no|wait|sorry|actually ?, ?i|i'll|let|lemme ?me ?will take that|it|this back ?.|,|;|:|- ?and", "no ,", struckForAnother},
}

// struckForAnother: a figure or a side stands in what is said before, and nothing but another one comes next.
func struckForAnother(before, after []scan.Atom) bool {
	if !saidFigureAhead(before, nil) && !phrase.SaidBeforeOf(sideNames)(before, nil) {
		return false
	}
	for len(after) > 1 && leadsToAnother[after[0].Text] {
		after = after[1:]
	}
	if len(after) == 0 {
		return false
	}
	if _, next, ok := (measure.Reader{Atoms: after}).Length(0); ok && next > 0 {
		return chunk.EndsPart(after, next)
	}
	if !sideNames[after[0].Text] {
		return false
	}
	end := 1
	for end < len(after) && endsASide[after[end].Text] {
		end++
	}
	return chunk.EndsPart(after, end)
}

var (
	sideNames      = scan.WordSet("left right middle center")
	leadsToAnother = scan.WordSet("make call say put set it that the on at in against up to over by")
	endsASide      = scan.WordSet("hand side end post instead please")
)
