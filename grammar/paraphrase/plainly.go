package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// Some words are set plain before a line is read: whose wall it is changes nothing, and the two end posts are no count.

// theirOwn are words before a number of posts that are there.
var theirOwn = scan.WordSet("the my our these those both his her their your")

// plainly sets "our gap" to "the gap", "the 2 end posts" to "the two end posts" and "we mean" to "i mean".
func plainly(atoms []scan.Atom) []scan.Atom {
	atoms = leftOut(slipTold(atoms))
	out := atoms
	set := func(i int, w string) {
		if &out[0] == &atoms[0] {
			out = append([]scan.Atom{}, atoms...)
		}
		out[i].Text, out[i].Kind = w, scan.Word
	}
	for i := range atoms {
		if i+1 >= len(atoms) {
			break
		}
		next := atoms[i+1].Text
		switch w := atoms[i].Text; {
		case w == "our" && chunk.NamesPart(atoms, i+1):
			set(i, "the")
		case w == "2" && atoms[i].Kind == scan.Digits && i > 0 && theirOwn[atoms[i-1].Text] && (next == "posts" || next == "end" || next == "corner" || next == "existing"):
			set(i, "two")
		case w == "x" && i > 0 && atoms[i-1].Kind == scan.Digits && (next == "gap" || next == "gaps") && !(i+2 < len(atoms) && atoms[i+2].Kind == scan.Digits):
			set(i, "times") // "op >= 2x gap"
		case w == "we" && (next == "mean" || next == "meant"):
			set(i, "i")
		}
	}
	return out
}

// slipTold sets "did I say six rails? I meant seven" to "six rails, I meant seven": nothing is asked.
func slipTold(atoms []scan.Atom) []scan.Atom {
	led, _ := idiom.PastLead(atoms)
	i := len(atoms) - len(led)
	if i+4 >= len(atoms) || atoms[i].Text != "did" || atoms[i+1].Text != "i" && atoms[i+1].Text != "we" || atoms[i+2].Text != "say" && atoms[i+2].Text != "write" && atoms[i+2].Text != "type" {
		return atoms
	}
	for j := i + 3; j+2 < len(atoms); j++ {
		if atoms[j].Text == "?" && (atoms[j+1].Text == "i" || atoms[j+1].Text == "we") && (atoms[j+2].Text == "meant" || atoms[j+2].Text == "mean") {
			out := append([]scan.Atom{}, atoms[i+3:]...)
			out[j-i-3].Text = ","
			return out
		}
	}
	return atoms
}

// leaves are forms of leaving out, and leavers the words before "left" where it is one of them and no side.
var (
	leaves  = scan.WordSet("leave leaves leaving left")
	leavers = scan.WordSet("i we you they just if about and to")
)

// leftOut sets "leave the stiffeners out" to "without the stiffeners".
func leftOut(atoms []scan.Atom) []scan.Atom {
	for i := range atoms {
		if !leaves[atoms[i].Text] || atoms[i].Text == "left" && (i == 0 || !leavers[atoms[i-1].Text]) {
			continue
		}
		if i+2 < len(atoms) && atoms[i+1].Text == "out" && atoms[i+2].Text != "of" && (chunk.NamesPart(atoms, i+2) || i+3 < len(atoms) && lexicon.Vocab().Articles[atoms[i+2].Text] && chunk.NamesPart(atoms, i+3)) {
			out := append([]scan.Atom{}, atoms[:i+1]...)
			out[i].Text = "without"
			return append(out, atoms[i+2:]...)
		}
		j := i + 1
		for j < len(atoms) && j < i+4 && atoms[j].Kind == scan.Word && atoms[j].Text != "out" && scan.Ones[atoms[j].Text] == 0 {
			j++
		}
		if j == i+1 || j >= len(atoms) || atoms[j].Text != "out" || !chunk.NamesPart(atoms, j-1) || j+1 < len(atoms) && atoms[j+1].Text == "of" {
			continue
		}
		out := append([]scan.Atom{}, atoms[:j]...)
		out[i].Text = "without"
		rest := atoms[j+1:]
		if len(rest) > 0 && (rest[0].Text == "altogether" || rest[0].Text == "entirely" || rest[0].Text == "completely") {
			rest = rest[1:]
		}
		return append(out, rest...)
	}
	return atoms
}
