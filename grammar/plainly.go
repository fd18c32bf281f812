package grammar

// Some words are set plain before a line is read: whose wall it is changes nothing, and the two end posts are no count.

// theirOwn are words before a number of posts that are there.
var theirOwn = wordSet("the my our these those both his her their your")

// plainly sets "our gap" to "the gap", "the 2 end posts" to "the two end posts" and "we mean" to "i mean".
func plainly(atoms []atom) []atom {
	atoms = slipTold(atoms)
	out := atoms
	set := func(i int, w string) {
		if &out[0] == &atoms[0] {
			out = append([]atom{}, atoms...)
		}
		out[i].text, out[i].kind = w, aWord
	}
	for i := range atoms {
		if i+1 >= len(atoms) {
			break
		}
		next := atoms[i+1].text
		switch w := atoms[i].text; {
		case w == "our" && namesPart(atoms, i+1):
			set(i, "the")
		case w == "2" && atoms[i].kind == aDigits && i > 0 && theirOwn[atoms[i-1].text] && (next == "posts" || next == "end" || next == "corner" || next == "existing"):
			set(i, "two")
		case w == "we" && (next == "mean" || next == "meant"):
			set(i, "i")
		}
	}
	return out
}

// namesPart reports whether a part of the wall is named at an atom.
func namesPart(atoms []atom, i int) bool {
	f := vocab().match(reader{atoms}, i)
	if len(f) == 0 {
		return false
	}
	switch f[0].entry.kind {
	case kPart, kLoc:
		return true
	}
	return false
}

// slipTold sets "did I say six rails? I meant seven" to "six rails, I meant seven": nothing is asked.
func slipTold(atoms []atom) []atom {
	led, _ := pastLead(atoms)
	i := len(atoms) - len(led)
	if i+4 >= len(atoms) || atoms[i].text != "did" || atoms[i+1].text != "i" && atoms[i+1].text != "we" || atoms[i+2].text != "say" && atoms[i+2].text != "write" && atoms[i+2].text != "type" {
		return atoms
	}
	for j := i + 3; j+2 < len(atoms); j++ {
		if atoms[j].text == "?" && (atoms[j+1].text == "i" || atoms[j+1].text == "we") && (atoms[j+2].text == "meant" || atoms[j+2].text == "mean") {
			out := append([]atom{}, atoms[i+3:]...)
			out[j-i-3].text = ","
			return out
		}
	}
	return atoms
}
