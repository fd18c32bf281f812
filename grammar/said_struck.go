package grammar

// struckOut are the ways to strike out a figure and tell another at once: "six rails. Hmm, scratch that, five". Alone they are orders to take back.
var struckOut = []placedPhrase{
	{"^ ?hmm|hm|um|uh|er|oh|no|nah|nope|wait|well|ah|oops|whoops|sorry|actually ?, ?no|wait|sorry|actually ?, scratch|strike|scrap|forget|cancel|nix|undo|erase|disregard|ignore|drop|reverse|retract|withdraw that|it|this ?.|,|;|:|- ?and", "no ,", struckForAnother},
	{"^ ?hmm|hm|um|uh|er|oh|no|nah|nope|wait|well|ah|oops|whoops|sorry|actually ?, ?no|wait|sorry|actually ?, ?i|i'll|let|lemme ?me ?will take that|it|this back ?.|,|;|:|- ?and", "no ,", struckForAnother},
}

// struckForAnother: a figure or a side stands in what is said before, and nothing but another one comes next.
func struckForAnother(before, after []atom) bool {
	told := false
	for i := len(before) - 1; i >= 0 && !told; i-- {
		told = startsLength(reader{before}, i) || sidesByLetter[before[i].text] != ""
	}
	for told && len(after) > 1 && (after[0].text == "make" || after[0].text == "call" || after[0].text == "say" || after[0].text == "it" || after[0].text == "that" || after[0].text == "the" || after[0].text == "on") {
		after = after[1:]
	}
	if !told || len(after) == 0 {
		return false
	}
	if _, next, ok := (reader{after}).length(0); ok && next > 0 {
		return endsPart(after, next)
	}
	return sidesByLetter[after[0].text] != "" && endsPart(after, 1)
}
