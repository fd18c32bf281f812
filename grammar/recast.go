package grammar

import "strings"

// Some turns of a sentence say the same as a plainer one; they are set plain before the line is read.

// compares are words of comparison, each with a "than" at or near its right.
var compares = wordSet("more less fewer greater bigger larger smaller wider narrower longer shorter taller lower higher closer nearer further farther tighter looser thicker thinner")

// besideThan are words that may stand between a comparison and its "than".
var besideThan = wordSet("together apart up down open high wide tall long")

// closeDenials puts a "not" beside the comparison that it denies: "may not sit closer together than" becomes "not closer together than".
func closeDenials(in []atom) []atom {
	for i := range in {
		if in[i].text == "why" || in[i].text == "come" && i > 0 && in[i-1].text == "how" {
			return in
		}
	}
	for i := 0; i+2 < len(in); i++ {
		if in[i].text != "not" && in[i].text != "never" || namesBracket(in) {
			continue
		}
		j := i + 1
		for j < len(in) && j < i+5 && underNot[in[j].text] {
			j++
		}
		if j > i+1 && j+1 < len(in) && bounds[in[j].text] && (in[j+1].kind == aDigits || units[in[j+1].text] > 0 || tens[in[j+1].text] > 0) {
			from := i
			if from > 0 && in[from-1].text == "do" {
				from--
			}
			no := in[i]
			no.text = "not"
			in = append(append(append([]atom{}, in[:from]...), no), in[j:]...) // "don't go above 50"
			continue
		}
		if j == i+1 && (j+1 >= len(in) || in[j+1].text == "than" || !besideThan[in[j+1].text]) || j >= len(in) || !compares[in[j].text] {
			continue
		}
		end := j + 1
		if end < len(in) && besideThan[in[end].text] {
			end++
		}
		if end >= len(in) || in[end].text != "than" {
			continue
		}
		out := append(append([]atom{}, in[:i+1]...), in[j])
		in = append(out, in[end:]...)
	}
	return in
}

// noTwo reads "no two rails are more than 3 apart" as "rails are no more than 3 apart".
func noTwo(in []atom) []atom {
	for i := 0; i+4 < len(in); i++ {
		if in[i].text != "no" || in[i+1].text != "two" && in[i+1].text != "2" && in[i+1].text != "pair" {
			continue
		}
		j := i + 2
		for j < len(in) && (in[j].text == "of" || in[j].text == "neighboring" || in[j].text == "neighbouring" || in[j].text == "adjacent") {
			j++
		}
		if j >= len(in) || !namesPart(in, j) {
			continue
		}
		from := i
		if i > 1 && in[i-1].text == "that" && in[i-2].text == "see" {
			from -= 2
		}
		for k := j + 1; k < len(in) && k < j+7 && in[k].kind == aWord; k++ {
			if !compares[in[k].text] && in[k].text != "over" {
				continue
			}
			no := in[i]
			no.at, no.end = in[k].at, in[k].at
			out := append(append(append([]atom{}, in[:from]...), in[j:k]...), no)
			return append(out, in[k:]...)
		}
	}
	return in
}

// setDown are verbs by which the lowest rail comes to lie on the floor, and flatOn what may stand between one and the floor.
var (
	setDown = wordSet("touch touches touching goes go sits sit rests rest lies lie is sitting resting lying lands stands stand set starts start right put laid be")
	flatOn  = wordSet("right flat flush directly straight tight down hard plumb on onto upon to against the at with be")
	lowest  = wordSet("bottom lowest lowermost bottommost btm first")
)

// onTheFloor reads "the bottom rail goes right down on the floor with no space under it" as "no bottom gap".
func onTheFloor(in []atom) []atom {
	for i := 0; i+4 < len(in); i++ {
		if !lowest[in[i].text] || !namesPart(in, i) {
			continue
		}
		j := i + 2
		for j < len(in) && underNot[in[j].text] || j < len(in) && (in[j].text == "should" || in[j].text == "will" || in[j].text == "can" || in[j].text == "must" || in[j].text == "to") {
			j++
		}
		if j >= len(in) || !setDown[in[j].text] && !setDown[in[j-1].text] {
			continue
		}
		flat, on := false, false
		if in[j].text == "touching" || in[j].text == "touches" || in[j].text == "touch" || in[j-1].text == "touch" {
			flat, on = true, true
		}
		for ; j < len(in) && (setDown[in[j].text] || flatOn[in[j].text]); j++ {
			flat = flat || in[j].text != "on" && in[j].text != "the" && flatOn[in[j].text] && in[j].text != "to" && in[j].text != "at" && in[j].text != "be"
			on = on || in[j].text == "on" || in[j].text == "onto" || in[j].text == "upon" || in[j].text == "against" || in[j].text == "to"
		}
		if !flat || !on || j >= len(in) || !isFloor(in[j].text) {
			continue
		}
		rest := in[j+1:]
		if n := noSpaceUnder(rest); n > 0 {
			rest = rest[n:]
		}
		if len(rest) > 0 && rest[0].kind != aSign && !joints[rest[0].text] && !causes[rest[0].text] {
			continue
		}
		one, two, three := in[i], in[i], in[j]
		one.text, two.text, three.text = "no", "bottom", "gap"
		one.kind, two.kind, three.kind = aWord, aWord, aWord
		from := i
		if from > 0 && vocab().articles[in[from-1].text] {
			from--
		}
		return append(append(append([]atom{}, in[:from]...), one, two, three), rest...)
	}
	return in
}

// noSpaceUnder returns of how many words "with no space under it" is, that begins a stretch: 0 where it does not.
func noSpaceUnder(rest []atom) int {
	w := wordsAhead(rest)
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
var whateverIs = wordSet("is are comes come out at to be turns ends up works you get we for as ends it gets")

// goesToo are words that hand it on: "that's what goes under the lowest board too".
var goesToo = wordSet("that is what goes the same go with use put it also i want we need should be , and then do")

// whateverItIs reads "whatever the gap comes out at that's what goes under the lowest board too" as "same gap under the lowest board".
func whateverItIs(in []atom) []atom {
	led, _ := pastLead(in)
	i := len(in) - len(led)
	if i+4 >= len(in) || in[i].text != "whatever" {
		return in
	}
	j := i + 1
	for j < len(in) && vocab().articles[in[j].text] {
		j++
	}
	name := j
	if name >= len(in) || !namesPart(in, name) {
		return in
	}
	f := vocab().match(in, name)
	j = f[0].next
	told := j
	for j < len(in) && whateverIs[in[j].text] {
		j++
	}
	handed := j
	for j < len(in) && goesToo[in[j].text] {
		j++
	}
	if told == handed || handed == j || j >= len(in) {
		return in
	}
	end := len(in)
	for end > j && (in[end-1].kind == aSign || in[end-1].text == "too" || in[end-1].text == "also" || in[end-1].text == "as" || in[end-1].text == "well") {
		end--
	}
	if end == j {
		return in
	}
	for k := j; k < end; k++ {
		if in[k].kind == aDigits || units[in[k].text] > 0 {
			return in
		}
	}
	same := in[i]
	same.text = "same"
	out := append(append([]atom{}, in[:i]...), same)
	out = append(out, in[name:told]...)
	return append(out, in[j:end]...)
}

// soDoI reads "my old teacher always had the gap at three, and so do I" as "the gap at three".
func soDoI(in []atom) []atom {
	end := len(in)
	for end > 0 && in[end-1].kind == aSign {
		end--
	}
	if end < 6 || !speakers[in[end-1].text] || in[end-2].text != "do" && in[end-2].text != "will" && in[end-2].text != "shall" || in[end-3].text != "so" {
		return in
	}
	stop := end - 3
	for stop > 0 && (in[stop-1].text == "and" || in[stop-1].text == ",") {
		stop--
	}
	for at := 0; at < 3 && at < stop; at++ {
		if at > 0 && !owned[in[at-1].text] && !noun[in[at-1].text] {
			break
		}
		f := bygoneVocab().match(in, at)
		if len(f) == 0 {
			continue
		}
		from := f[0].next
		for from < stop && pastVerbs[in[from].text] {
			from++
		}
		return append([]atom{}, in[from:stop]...)
	}
	return in
}

var pastVerbs = wordSet("had have made make put kept keep left leave used use set built build wanted")

// weHave reads "can we have the rails in two by six" and "can we set the gap at three" as the wishes that they are. "Can we have six
// rails" asks whether they go in, and a question mark at the end leaves it a question.
func weHave(in []atom) []atom {
	led, _ := pastLead(in)
	i := len(in) - len(led)
	if i+4 >= len(in) || in[i].text != "can" && in[i].text != "could" || in[i+1].text != "we" {
		return in
	}
	j := i + 2
	for j < len(in) && (in[j].text == "please" || in[j].text == "just" || in[j].text == "also" || in[j].text == "maybe") {
		j++
	}
	polite := saysPlease(in)
	if j+2 >= len(in) || !havers[in[j].text] || !(polite && (in[j+1].text == "as" || in[j+1].text == "a" || in[j+1].text == "an") || in[j+1].text == "the" || in[j+1].text == "our" || in[j+1].text == "all" || in[j+1].text == "each" || in[j+1].text == "every") {
		return in
	}
	figure := false
	for k := j; k < len(in); k++ {
		switch w := in[k].text; {
		case w == "?" && !polite || w == "still" || w == "or" || w == "if" || w == "same":
			return in
		case in[k].kind == aDigits, in[k].kind == aVulgar, units[w] > 0, tens[w] > 0:
			figure = true
		}
	}
	if !figure && !polite {
		return in
	}
	out := append([]atom{}, in[:i+1]...)
	out[i].text = "please"
	return unasked(append(out, in[j:]...))
}

var havers = wordSet("have make set put keep leave hold get")

// becameBefore reports whether a change at token i only tells what came of a thing before what it is now is told: "my rails have shrunk,
// they're only five and a quarter wide now".
func (l *lexing) becameBefore(i int) bool {
	t := &l.tokens[i]
	if t.kind != kChange || !became[t.text] || i+2 >= len(l.tokens) || i == 0 {
		return false
	}
	if h := l.tokens[i-1]; h.kind != kHave && !strings.HasSuffix(t.before, "have") && !strings.HasSuffix(t.before, "has") && h.kind != kPart {
		return false
	}
	switch l.tokens[i+1].kind {
	case kComma, kStop, kAnd, kBut:
	default:
		return false
	}
	for j := i + 1; j < len(l.tokens) && j < i+6; j++ {
		n := &l.tokens[j]
		for _, w := range strings.Fields(n.before) {
			if w == "are" || w == "is" || w == "measure" || w == "measures" || w == "now" {
				return true
			}
		}
		if n.kind == kMeasured {
			return true
		}
		if n.kind == kNum {
			return false
		}
	}
	return false
}

var became = wordSet("shrunk shrank swelled swollen grown dropped widened narrowed shortened")

// namesBracket reports whether brackets are spoken of: how close they may come is their clearance, and no gap.
func namesBracket(in []atom) bool {
	id := vocab().ids["BRACKET"]
	for i := range in {
		for _, c := range vocab().classes[in[i].text] {
			if c == id {
				return true
			}
		}
	}
	return false
}
