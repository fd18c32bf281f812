package grammar

// Some words are set plain before a line is read: whose wall it is changes nothing, and the two end posts are no count.

// theirOwn are words before a number of posts that are there.
var theirOwn = wordSet("the my our these those both his her their your")

// plainly sets "our gap" to "the gap", "the 2 end posts" to "the two end posts" and "we mean" to "i mean".
func plainly(atoms []atom) []atom {
	atoms = leftOut(slipTold(atoms))
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
		case w == "x" && i > 0 && atoms[i-1].kind == aDigits && (next == "gap" || next == "gaps") && !(i+2 < len(atoms) && atoms[i+2].kind == aDigits):
			set(i, "times") // "op >= 2x gap"
		case w == "we" && (next == "mean" || next == "meant"):
			set(i, "i")
		}
	}
	return out
}

// namesPart reports whether a part of the wall is named at an atom.
func namesPart(atoms []atom, i int) bool {
	f := vocab().match(atoms, i)
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

// leaves are forms of leaving out, and leavers the words before "left" where it is one of them and no side.
var (
	leaves  = wordSet("leave leaves leaving left")
	leavers = wordSet("i we you they just if about and to")
)

// leftOut sets "leave the stiffeners out" to "without the stiffeners".
func leftOut(atoms []atom) []atom {
	for i := range atoms {
		if !leaves[atoms[i].text] || atoms[i].text == "left" && (i == 0 || !leavers[atoms[i-1].text]) {
			continue
		}
		if i+2 < len(atoms) && atoms[i+1].text == "out" && atoms[i+2].text != "of" && (namesPart(atoms, i+2) || i+3 < len(atoms) && vocab().articles[atoms[i+2].text] && namesPart(atoms, i+3)) {
			out := append([]atom{}, atoms[:i+1]...)
			out[i].text = "without"
			return append(out, atoms[i+2:]...)
		}
		j := i + 1
		for j < len(atoms) && j < i+4 && atoms[j].kind == aWord && atoms[j].text != "out" && units[atoms[j].text] == 0 {
			j++
		}
		if j == i+1 || j >= len(atoms) || atoms[j].text != "out" || !namesPart(atoms, j-1) || j+1 < len(atoms) && atoms[j+1].text == "of" {
			continue
		}
		out := append([]atom{}, atoms[:j]...)
		out[i].text = "without"
		rest := atoms[j+1:]
		if len(rest) > 0 && (rest[0].text == "altogether" || rest[0].text == "entirely" || rest[0].text == "completely") {
			rest = rest[1:]
		}
		return append(out, rest...)
	}
	return atoms
}
