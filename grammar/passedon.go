package grammar

// What somebody else needs is asked for by the one who speaks: "my saw guy needs the cuts as a csv".

// needing are verbs by which somebody's need is told.
var needing = [][]string{{"needs"}, {"need"}, {"wants"}, {"want"}, {"would", "like"}, {"would", "love"}, {"has", "to", "have"}, {"have", "to", "have"}, {"must", "have"}, {"is", "asking", "for"}, {"are", "asking", "for"},
	{"asked", "for"}, {"asks", "for"}, {"could", "use"}, {"can", "use"}, {"is", "after"}, {"is", "waiting", "for"}, {"is", "waiting", "on"}}

// passedOn takes the need of somebody for a table or a list, at the beginning of a clause, for a wish of the one who speaks.
func passedOn(in []atom) []atom {
	id := vocab().ids["PERSON"]
	for i := range in {
		if i > 0 && in[i-1].kind != aSign && !joints[in[i-1].text] {
			continue
		}
		at := i
		for at < len(in) && at < i+2 && (owned[in[at].text] || in[at].text == "the" || in[at].text == "a") {
			at++
		}
		for at+1 < len(in) && at < i+4 && isOf(in[at+1].text, id) {
			at++ // "the lumber yard clerk"
		}
		if at+2 >= len(in) || !isOf(in[at].text, id) {
			continue
		}
		for _, verb := range needing {
			to := at + 1 + len(verb)
			if !standAt(in, at+1, verb...) || !asksTable(in, to) {
				continue
			}
			one, need := in[i], in[at+1]
			one.text, need.text = "i", "need"
			return append(append(append([]atom{}, in[:i]...), one, need), in[to:]...)
		}
	}
	return in
}

// isOf reports whether a word is of a class, told by its number.
func isOf(word string, class int) bool {
	for _, c := range vocab().classes[word] {
		if c == class {
			return true
		}
	}
	return false
}

// asksTable reports whether a table or a list is named behind its article at an atom.
func asksTable(in []atom, i int) bool {
	for i < len(in) && (vocab().articles[in[i].text] || in[i].text == "to" || in[i].text == "see" || in[i].text == "have") {
		i++
	}
	f := vocab().match(in, i)
	return len(f) > 0 && f[0].entry.kind == kQuest
}
