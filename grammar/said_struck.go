package grammar

// struckOut are the ways to strike out a figure and tell another at once: "six rails. Hmm, scratch that, five". Alone they are orders to take back.
var struckOut = []placedPhrase{
	{"^ ?hmm|hm|um|uh|er|oh|no|nah|nope|wait|well|ah|oops|whoops|sorry|actually ?, ?no|wait|sorry|actually ?, scratch|strike|scrap|forget|cancel|nix|undo|erase|disregard|ignore|drop|reverse|retract|withdraw that|it|this ?.|,|;|:|- ?and", "no ,", struckForAnother},
	{"^ ?hmm|hm|um|uh|er|oh|no|nah|nope|wait|well|ah|oops|whoops|sorry|actually ?, ?no|wait|sorry|actually ?, ?i|i'll|let|lemme ?me ?will take that|it|this back ?.|,|;|:|- ?and", "no ,", struckForAnother},
}

// struckForAnother: a figure or a side stands in what is said before, and nothing but another one comes next.
func struckForAnother(before, after []atom) bool {
	if !saidFigureAhead(before, nil) && !saidBeforeOf(sideNames)(before, nil) {
		return false
	}
	for len(after) > 1 && leadsToAnother[after[0].text] {
		after = after[1:]
	}
	if len(after) == 0 {
		return false
	}
	if _, next, ok := (reader{after}).length(0); ok && next > 0 {
		return endsPart(after, next)
	}
	if !sideNames[after[0].text] {
		return false
	}
	end := 1
	for end < len(after) && endsASide[after[end].text] {
		end++
	}
	return endsPart(after, end)
}

var (
	sideNames      = wordSet("left right middle center")
	leadsToAnother = wordSet("make call say put set it that the on at in against up to over by")
	endsASide      = wordSet("hand side end post instead please")
)
