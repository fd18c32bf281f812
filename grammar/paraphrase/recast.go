package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
	"saywright/grammar/ways"
)

// Some turns of a sentence say the same as a plainer one; they are set plain before the line is read.

// besideThan are words that may stand between a comparison and its "than".
var besideThan = scan.WordSet("together apart up down open high wide tall long")

// closeDenials puts a "not" beside the comparison that it denies: "may not sit closer together than" becomes "not closer together than".
func closeDenials(in []scan.Atom) []scan.Atom {
	for i := range in {
		if in[i].Text == "why" || in[i].Text == "come" && i > 0 && in[i-1].Text == "how" {
			return in
		}
	}
	for i := 0; i+2 < len(in); i++ {
		if in[i].Text != "not" && in[i].Text != "never" || namesBracket(in) {
			continue
		}
		j := i + 1
		for j < len(in) && j < i+5 && ways.UnderNot[in[j].Text] {
			j++
		}
		if j > i+1 && j+1 < len(in) && bounds[in[j].Text] && (in[j+1].Kind == scan.Digits || scan.Ones[in[j+1].Text] > 0 || measure.Tens[in[j+1].Text] > 0) {
			from := i
			if from > 0 && in[from-1].Text == "do" {
				from--
			}
			no := in[i]
			no.Text = "not"
			in = append(append(append([]scan.Atom{}, in[:from]...), no), in[j:]...) // "don't go above 50"
			continue
		}
		if j == i+1 && (j+1 >= len(in) || in[j+1].Text == "than" || !besideThan[in[j+1].Text]) || j >= len(in) || !lex.Compares[in[j].Text] {
			continue
		}
		end := j + 1
		if end < len(in) && besideThan[in[end].Text] {
			end++
		}
		if end >= len(in) || in[end].Text != "than" {
			continue
		}
		out := append(append([]scan.Atom{}, in[:i+1]...), in[j])
		in = append(out, in[end:]...)
	}
	return in
}

// noTwo reads "no two rails are more than 3 apart" as "rails are no more than 3 apart".
func noTwo(in []scan.Atom) []scan.Atom {
	for i := 0; i+4 < len(in); i++ {
		if in[i].Text != "no" || in[i+1].Text != "two" && in[i+1].Text != "2" && in[i+1].Text != "pair" {
			continue
		}
		j := i + 2
		for j < len(in) && (in[j].Text == "of" || in[j].Text == "neighboring" || in[j].Text == "neighbouring" || in[j].Text == "adjacent") {
			j++
		}
		if j >= len(in) || !chunk.NamesPart(in, j) {
			continue
		}
		from := i
		if i > 1 && in[i-1].Text == "that" && in[i-2].Text == "see" {
			from -= 2
		}
		for k := j + 1; k < len(in) && k < j+7 && in[k].Kind == scan.Word; k++ {
			if !lex.Compares[in[k].Text] && in[k].Text != "over" {
				continue
			}
			no := in[i]
			no.At, no.End = in[k].At, in[k].At
			out := append(append(append([]scan.Atom{}, in[:from]...), in[j:k]...), no)
			return append(out, in[k:]...)
		}
	}
	return in
}

// setDown are verbs by which the lowest rail comes to lie on the floor, and flatOn what may stand between one and the floor.
var (
	setDown = scan.WordSet("touch touches touching goes go sits sit rests rest lies lie is sitting resting lying lands stands stand set starts start right put laid be")
	flatOn  = scan.WordSet("right flat flush directly straight tight down hard plumb on onto upon to against the at with be")
	lowest  = scan.WordSet("bottom lowest lowermost bottommost btm first")
)

// onTheFloor reads "the bottom rail goes right down on the floor with no space under it" as "no bottom gap".
func onTheFloor(in []scan.Atom) []scan.Atom {
	for i := 0; i+4 < len(in); i++ {
		if !lowest[in[i].Text] || !chunk.NamesPart(in, i) {
			continue
		}
		j := i + 2
		for j < len(in) && ways.UnderNot[in[j].Text] || j < len(in) && (in[j].Text == "should" || in[j].Text == "will" || in[j].Text == "can" || in[j].Text == "must" || in[j].Text == "to") {
			j++
		}
		if j >= len(in) || !setDown[in[j].Text] && !setDown[in[j-1].Text] {
			continue
		}
		flat, on := false, false
		if in[j].Text == "touching" || in[j].Text == "touches" || in[j].Text == "touch" || in[j-1].Text == "touch" {
			flat, on = true, true
		}
		for ; j < len(in) && (setDown[in[j].Text] || flatOn[in[j].Text]); j++ {
			flat = flat || in[j].Text != "on" && in[j].Text != "the" && flatOn[in[j].Text] && in[j].Text != "to" && in[j].Text != "at" && in[j].Text != "be"
			on = on || in[j].Text == "on" || in[j].Text == "onto" || in[j].Text == "upon" || in[j].Text == "against" || in[j].Text == "to"
		}
		if !flat || !on || j >= len(in) || !chunk.IsFloor(in[j].Text) {
			continue
		}
		rest := in[j+1:]
		if n := noSpaceUnder(rest); n > 0 {
			rest = rest[n:]
		}
		if len(rest) > 0 && rest[0].Kind != scan.Sign && !chunk.Joints[rest[0].Text] && !Causes[rest[0].Text] {
			continue
		}
		one, two, three := in[i], in[i], in[j]
		one.Text, two.Text, three.Text = "no", "bottom", "gap"
		one.Kind, two.Kind, three.Kind = scan.Word, scan.Word, scan.Word
		from := i
		if from > 0 && lexicon.Vocab().Articles[in[from-1].Text] {
			from--
		}
		return append(append(append([]scan.Atom{}, in[:from]...), one, two, three), rest...)
	}
	return in
}

// noSpaceUnder returns of how many words "with no space under it" is, that begins a stretch: 0 where it does not.
func noSpaceUnder(rest []scan.Atom) int {
	w := WordsAhead(rest)
	if len(w) < 3 || w[0] != "with" && w[0] != "and" && w[0] != "without" || w[0] != "without" && w[1] != "no" && w[1] != "zero" {
		return 0
	}
	for i := 1; i < len(w); i++ {
		switch w[i] {
		case "no", "zero", "space", "gap", "clearance", "air", "daylight", "room", "under", "below", "beneath", "underneath", "it", "at", "all", "a", "any":
		default:
			return 0
		}
	}
	return len(w)
}

// whateverIs are words that tell what a quantity comes to, behind "whatever": "whatever the gap comes out at".
var whateverIs = scan.WordSet("is are comes come out at to be turns ends up works you get we for as ends it gets")

// goesToo are words that hand it on: "that's what goes under the lowest board too".
var goesToo = scan.WordSet("that is what goes the same go with use put it also i want we need should be , and then do")

// whateverItIs reads "whatever the gap comes out at that's what goes under the lowest board too" as "same gap under the lowest board".
func whateverItIs(in []scan.Atom) []scan.Atom {
	led, _ := idiom.PastLead(in)
	i := len(in) - len(led)
	if i+4 >= len(in) || in[i].Text != "whatever" {
		return in
	}
	j := i + 1
	for j < len(in) && lexicon.Vocab().Articles[in[j].Text] {
		j++
	}
	name := j
	if name >= len(in) || !chunk.NamesPart(in, name) {
		return in
	}
	f := lexicon.Vocab().Match(in, name)
	j = f[0].Next
	told := j
	for j < len(in) && whateverIs[in[j].Text] {
		j++
	}
	handed := j
	for j < len(in) && goesToo[in[j].Text] {
		j++
	}
	if told == handed || handed == j || j >= len(in) {
		return in
	}
	end := len(in)
	for end > j && (in[end-1].Kind == scan.Sign || in[end-1].Text == "too" || in[end-1].Text == "also" || in[end-1].Text == "as" || in[end-1].Text == "well") {
		end--
	}
	if end == j {
		return in
	}
	for k := j; k < end; k++ {
		if in[k].Kind == scan.Digits || scan.Ones[in[k].Text] > 0 {
			return in
		}
	}
	same := in[i]
	same.Text = "same"
	out := append(append([]scan.Atom{}, in[:i]...), same)
	out = append(out, in[name:told]...)
	return append(out, in[j:end]...)
}

// soDoI reads "my old teacher always had the gap at three, and so do I" as "the gap at three".
func soDoI(in []scan.Atom) []scan.Atom {
	end := len(in)
	for end > 0 && in[end-1].Kind == scan.Sign {
		end--
	}
	if end < 6 || !lex.Speakers[in[end-1].Text] || in[end-2].Text != "do" && in[end-2].Text != "will" && in[end-2].Text != "shall" || in[end-3].Text != "so" {
		return in
	}
	stop := end - 3
	for stop > 0 && (in[stop-1].Text == "and" || in[stop-1].Text == ",") {
		stop--
	}
	for at := 0; at < 3 && at < stop; at++ {
		if at > 0 && !lex.Owned[in[at-1].Text] && !chunk.Noun[in[at-1].Text] {
			break
		}
		f := BygoneVocab().Match(in, at)
		if len(f) == 0 {
			continue
		}
		from := f[0].Next
		for from < stop && pastVerbs[in[from].Text] {
			from++
		}
		return append([]scan.Atom{}, in[from:stop]...)
	}
	return in
}

var pastVerbs = scan.WordSet("had have made make put kept keep left leave used use set built build wanted")

// weHave reads "can we have the rails in two by six" and "can we set the gap at three" as the wishes that they are. "Can we have six
// rails" asks whether they go in, and a question mark at the end leaves it a question.
func weHave(in []scan.Atom) []scan.Atom {
	led, _ := idiom.PastLead(in)
	i := len(in) - len(led)
	if i+4 >= len(in) || in[i].Text != "can" && in[i].Text != "could" || in[i+1].Text != "we" {
		return in
	}
	j := i + 2
	for j < len(in) && (in[j].Text == "please" || in[j].Text == "just" || in[j].Text == "also" || in[j].Text == "maybe") {
		j++
	}
	polite := saysPlease(in)
	if j+2 >= len(in) || !havers[in[j].Text] || !(polite && (in[j+1].Text == "as" || in[j+1].Text == "a" || in[j+1].Text == "an") || in[j+1].Text == "the" || in[j+1].Text == "our" || in[j+1].Text == "all" || in[j+1].Text == "each" || in[j+1].Text == "every") {
		return in
	}
	figure := false
	for k := j; k < len(in); k++ {
		switch w := in[k].Text; {
		case w == "?" && !polite || w == "still" || w == "or" || w == "if" || w == "same":
			return in
		case in[k].Kind == scan.Digits, in[k].Kind == scan.Vulgar, scan.Ones[w] > 0, measure.Tens[w] > 0:
			figure = true
		}
	}
	if !figure && !polite {
		return in
	}
	out := append([]scan.Atom{}, in[:i+1]...)
	out[i].Text = "please"
	return phrase.Unasked(append(out, in[j:]...))
}

var havers = scan.WordSet("have make set put keep leave hold get")

// namesBracket reports whether brackets are spoken of: how close they may come is their clearance, and no gap.
func namesBracket(in []scan.Atom) bool {
	id := lexicon.Vocab().Ids["BRACKET"]
	for i := range in {
		for _, c := range lexicon.Vocab().Classes[in[i].Text] {
			if c == id {
				return true
			}
		}
	}
	return false
}
