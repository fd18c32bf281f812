package grammar

import (
	"slices"

	"saywright/solver"
)

// Some ways to ask are set to the plain one before a line is read.

// asksPlain are the steps, each of which knows one of them.
var asksPlain = []func([]atom) []atom{theirSpacing, helpBehind, whyWouldItBeWrong, goThroughWith, keptFromBeing, tellWhom, bracketsAllow, inThatOrder, comesOutHow, thatIsALot, tellSomeoneWhy, ifSoWhy}

// askedPlainly sets ways to ask to the plain ones.
func askedPlainly(atoms []atom) []atom {
	for _, step := range asksPlain {
		atoms = step(atoms)
	}
	return atoms
}

// theirSpacing sets "stiffeners per bay and their spacing" to "stiffeners per bay and stiffener spacing".
func theirSpacing(atoms []atom) []atom {
	for i := 1; i+1 < len(atoms); i++ {
		if atoms[i].text != "their" || atoms[i-1].text != "and" && atoms[i-1].text != "," {
			continue
		}
		for j := i - 2; j >= 0 && j > i-7; j-- {
			if key, next := partKey(atoms, j); key == "stiffener" && next < i {
				return slices.Concat(atoms[:i:i], atoms[j:next], atoms[i+1:])
			}
		}
	}
	return atoms
}

// helpBehind sets "gap help" to "help with the gap".
func helpBehind(atoms []atom) []atom {
	end := len(atoms)
	for end > 0 && (atoms[end-1].kind == aSign || atoms[end-1].text == "please") {
		end--
	}
	if end < 2 || end > 4 || atoms[end-1].text != "help" {
		return atoms
	}
	i := skipArticle(atoms, 0)
	key, next := partKey(atoms, i)
	if key == "" || next != end-1 {
		return atoms
	}
	help, with := atoms[end-1], atoms[end-1]
	help.at, with.at, with.text = atoms[0].at, atoms[0].at, "with"
	return slices.Concat([]atom{help, with}, atoms[i:next], atoms[end:])
}

// faults are what is wrong with a thing, at the end of a question for the reason; would are the verbs before it.
var (
	faults     = wordSet("wrong bad impossible forbidden unsafe trouble refused rejected unworkable unsuitable unacceptable")
	noFaults   = wordSet("good use go ok okay allowed possible fine right acceptable suitable")
	wouldWords = wordSet("would is are was were should will")
)

// whyWouldItBeWrong sets "why would a bay of 8 ft be wrong", "why are seven rails no good" to "why not a bay of 8 ft".
func whyWouldItBeWrong(atoms []atom) []atom {
	led, _ := pastLead(atoms)
	i := len(atoms) - len(led)
	end := len(atoms)
	for end > i && atoms[end-1].kind == aSign {
		end--
	}
	if i+5 > end || atoms[i].text != "why" || !wouldWords[atoms[i+1].text] {
		return atoms
	}
	stop := end - 1
	switch {
	case faults[atoms[end-1].text]:
	case noFaults[atoms[end-1].text] && (atoms[end-2].text == "no" || atoms[end-2].text == "not"):
		stop--
	case standAt(atoms, end-2, "a", "problem"), standAt(atoms, end-2, "a", "mistake"), standAt(atoms, end-2, "no", "good"):
		stop--
	case standAt(atoms, end-4, "out", "of", "the", "question"):
		stop -= 3
	default:
		return atoms
	}
	for stop > i+2 && (atoms[stop-1].text == "be" || atoms[stop-1].text == "not" || atoms[stop-1].text == "been") {
		stop--
	}
	figure := false
	for _, a := range atoms[i+2 : stop] {
		switch {
		case a.text == "not" || a.text == "no" || a.text == "that" || a.text == "so":
			return atoms
		case a.kind == aDigits, a.kind == aVulgar, spelledNumber(a.text):
			figure = true
		}
	}
	if !figure {
		return atoms
	}
	not := atoms[i+1]
	not.text = "not"
	return slices.Concat(atoms[:i+1:i+1], []atom{not}, atoms[i+2:stop], atoms[end:])
}

// goers are verbs of going through a thing with somebody.
var goers = wordSet("go run work talk walk step")

// goThroughWith sets "go through the gap with the kids" to "walk me through the gap".
func goThroughWith(atoms []atom) []atom {
	for i := 0; i < 3 && i+4 < len(atoms); i++ {
		if !goers[atoms[i].text] || atoms[i+1].text != "through" && atoms[i+1].text != "over" {
			continue
		}
		key, next := partKey(atoms, skipArticle(atoms, i+2))
		if key == "" || !standAt(atoms, next, "with") && !standAt(atoms, next, "for") {
			continue
		}
		who := skipArticle(atoms, next+1)
		if who >= len(atoms) || !isPerson(atoms[who].text) && !hearers[atoms[who].text] {
			continue
		}
		walk, me := atoms[i], atoms[i]
		walk.text, me.text = "walk", "me"
		through := atoms[i+1]
		through.text = "through"
		return slices.Concat(atoms[:i:i], []atom{walk, me, through}, atoms[i+2:next], atoms[who+1:])
	}
	return atoms
}

// hearers are those who are taught.
var hearers = wordSet("me us them him her class students everybody everyone kids group crew lads")

// thatIsALot sets "that's a lot of lumber to buy, how come" to "why so much lumber to buy".
func thatIsALot(atoms []atom) []atom {
	led, _ := pastLead(atoms)
	i := len(atoms) - len(led)
	if !standAt(atoms, i+1, "is", "a", "lot", "of") && !standAt(atoms, i+1, "are", "a", "lot", "of") && !standAt(atoms, i+1, "'s", "a", "lot", "of") || i >= len(atoms) || !pointing[atoms[i].text] && atoms[i].text != "those" && atoms[i].text != "these" {
		return atoms
	}
	stop := i + 5
	for stop < len(atoms) && atoms[stop].kind == aWord {
		stop++
	}
	rest := stop + 1
	for rest < len(atoms) && joints[atoms[rest].text] {
		rest++
	}
	if stop == i+5 || stop >= len(atoms) || len(wordsAhead(atoms[rest:])) > 3 || !standAt(atoms, rest, "how", "come") && !standAt(atoms, rest, "why") {
		return atoms
	}
	return slices.Concat(reworded(atoms, i, i+5, "why", "so", "much")[:i+3:i+3], atoms[i+5:stop])
}

// tellSomeoneWhy sets "tell the class, please, why there are six boards" to "tell me why there are six boards".
func tellSomeoneWhy(atoms []atom) []atom {
	for i := 0; i < 3 && i+4 < len(atoms); i++ {
		switch atoms[i].text {
		case "tell", "show", "explain":
		default:
			continue
		}
		j := i + 1
		for j < len(atoms) && j < i+7 && (atoms[j].text == "to" || atoms[j].text == "," || atoms[j].text == "please" || vocab().articles[atoms[j].text] || isPerson(atoms[j].text) || hearers[atoms[j].text]) {
			j++
		}
		if j > i+1 && j+1 < len(atoms) && (atoms[j].text == "why" || standAt(atoms, j, "how", "come")) {
			return atoms[j:]
		}
	}
	return atoms
}

// ifSoWhy sets "and if so, why" to "and why".
func ifSoWhy(atoms []atom) []atom {
	for i := 1; i+2 < len(atoms); i++ {
		if !standAt(atoms, i, "if", "so") {
			continue
		}
		j := i + 2
		if atoms[j].text == "," {
			j++
		}
		if j < len(atoms) && questionOpeners[atoms[j].text] {
			return slices.Concat(atoms[:i:i], atoms[j:])
		}
	}
	return atoms
}

// listsNames reports whether tokens do nothing but name several things of the wall, so that those are asked after: "rails, gap and
// opening, in that order".
func listsNames(in []token) bool {
	parts := 0
	for i := range in {
		switch t := &in[i]; {
		case t.kind == kPart && t.key() != "wall" && t.key() != "size":
			if i > 0 && in[i-1].kind != kAnd && in[i-1].kind != kComma && in[i-1].kind != kDim {
				return false
			}
			parts++
		case t.kind == kPart:
			return false
		}
	}
	return parts > 1
}

// withoutFollowUp leaves out a question for the layout that only asks what comes of the error just tried, and words of having lost the
// thread before what is asked; what the cheapest layout comes to is its cost.
func withoutFollowUp(acts []Act, atoms []atom) []Act {
	n := len(acts)
	if n < 2 {
		return acts
	}
	last := acts[n-1]
	if last.Kind == Ask && last.Topic == "layout" {
		switch prior := acts[n-2]; {
		case prior.Kind == Tolerance:
			return acts[:n-1] // "if each board's out by an eighth, where does that leave me"
		case prior.Kind == State && prior.Statements[0].Name.Quantity == solver.Goal && prior.Statements[0].String() == "cheapest" && comesToIn(last, atoms):
			last.Topic = "cost"
			return append(acts[:n-1:n-1], last)
		}
	}
	if acts[0].Kind == Recap && acts[1].Kind == Ask {
		if i := atomAt(atoms, acts[0].At); i >= 0 && slices.ContainsFunc(atoms[i:], func(a atom) bool { return a.text == "lost" && a.at < acts[0].End }) {
			return acts[1:] // "I've lost track, how many boards is it"
		}
	}
	return acts
}

// comesToIn reports whether a question is after what something comes to.
func comesToIn(a Act, atoms []atom) bool {
	for _, b := range atoms {
		if b.at >= a.At && b.at < a.End && (b.text == "come" || b.text == "comes" || b.text == "amount" || b.text == "add" || b.text == "run") {
			return true
		}
	}
	return false
}

// leastWords and letWords are what is asked of brackets: "the least gap the brackets allow".
var (
	leastWords = wordSet("least smallest tightest minimum narrowest closest")
	gapWords   = wordSet("gap gaps space spacing distance clearance")
	letWords   = wordSet("allow allows permit permits need needs require requires take stand tolerate accept want handle")
)

// bracketsAllow sets "the least gap the brackets allow" to "the bracket clearance".
func bracketsAllow(atoms []atom) []atom {
	for i := 0; i+3 < len(atoms); i++ {
		if !leastWords[atoms[i].text] || !gapWords[atoms[i+1].text] {
			continue
		}
		j := i + 2
		for j < len(atoms) && (atoms[j].text == "that" || atoms[j].text == "which" || vocab().articles[atoms[j].text]) {
			j++
		}
		if j >= len(atoms) || !namesBracket(atoms[j:j+1]) {
			continue
		}
		for j++; j < len(atoms) && (helping[atoms[j].text] != "" || atoms[j].text == "for"); j++ {
		}
		if j < len(atoms) && letWords[atoms[j].text] {
			return reworded(atoms, i, j+1, "bracket", "clearance")
		}
	}
	return atoms
}

// inThatOrder leaves out "in that order" from the end of a list.
func inThatOrder(atoms []atom) []atom {
	end := len(atoms)
	for end > 0 && (atoms[end-1].kind == aSign || atoms[end-1].text == "please") {
		end--
	}
	if end < 5 || !standAt(atoms, end-3, "in", "that", "order") && !standAt(atoms, end-3, "in", "this", "order") {
		return atoms
	}
	from := end - 3
	if atoms[from-1].text == "," {
		from--
	}
	return slices.Concat(atoms[:from:from], atoms[end:])
}

// comesOutHow sets a whole line that asks how it all comes out to a question for the layout: behind figures the same words ask whether
// those fit.
func comesOutHow(atoms []atom) []atom {
	led, _ := pastLead(atoms)
	led = pastTail(led)
	end := len(led)
	for end > 0 && led[end-1].kind == aSign {
		end--
	}
	if end < 4 || led[0].text != "how" && led[0].text != "what" {
		return atoms
	}
	f := vocab().match(led[:end], 0)
	if len(f) == 0 || f[0].next != end || f[0].entry.kind != kTail || f[0].entry.key != "fit" || !slices.ContainsFunc(led[:end], func(a atom) bool { return a.text == "out" || a.text == "together" || a.text == "up" }) {
		return atoms
	}
	return reworded(led, 0, end, "work", "it", "out")
}

// allOfThem reports whether words before a part take in all of it: "all my pieces".
func allOfThem(before string) bool {
	return slices.ContainsFunc(turn(before), func(w string) bool { return w == "all" || w == "every" || w == "each" || w == "both" })
}

// keepers are verbs of keeping a thing from being so.
var keepers = wordSet("keeping keeps stopping stops preventing prevents holding barring")

// keptFromBeing sets "what's keeping the opening from being 40" to "why not the opening 40".
func keptFromBeing(atoms []atom) []atom {
	led, _ := pastLead(atoms)
	i := len(atoms) - len(led)
	if i+6 >= len(atoms) || atoms[i].text != "what" {
		return atoms
	}
	j := i + 1
	for j < len(atoms) && (atoms[j].text == "is" || atoms[j].text == "'s" || atoms[j].text == "would" || atoms[j].text == "be") {
		j++
	}
	if !keepers[atoms[j].text] {
		return atoms
	}
	part := skipArticle(atoms, j+1)
	key, next := partKey(atoms, part)
	if key == "" || !standAt(atoms, next, "from") || next+2 >= len(atoms) || !beings[atoms[next+1].text] {
		return atoms
	}
	return slices.Concat(reworded(atoms, i, j+1, "why", "not")[:i+2:i+2], atoms[part:next], atoms[next+2:])
}

var beings = wordSet("being going getting reaching coming running measuring")

// tellVerbs are verbs of telling and showing somebody something.
var tellVerbs = wordSet("show tell give read send hand let")

// tellWhom sets "let the missus see a picture", "give my brother the cut list" to "let me see", "give me": who is told does not matter.
func tellWhom(atoms []atom) []atom {
	led, _ := pastLead(atoms)
	i := len(atoms) - len(led)
	if i < len(atoms) && atoms[i].text == "please" {
		i++
	}
	if i+3 >= len(atoms) || !tellVerbs[atoms[i].text] || !owned[atoms[i+1].text] && atoms[i+1].text != "the" || !isPerson(atoms[i+2].text) || atoms[i+3].kind != aWord {
		return atoms
	}
	if atoms[i].text == "let" && atoms[i+3].text != "see" && atoms[i+3].text != "have" && atoms[i+3].text != "know" && atoms[i+3].text != "hear" {
		return atoms
	}
	if atoms[i].text == "give" && (atoms[i+3].text == "a" || atoms[i+3].text == "an" || atoms[i+3].text == "some") {
		return atoms // "give my neighbor a wider opening"
	}
	for _, a := range atoms[i+3:] {
		if withheld[a.text] || a.text == "room" || a.text == "space" {
			return atoms
		}
		if a.kind == aDigits || a.kind == aVulgar || spelledNumber(a.text) || a.text == "to" || a.text == "that" || a.text == "'s" {
			return atoms
		}
	}
	return reworded(atoms, i+1, i+3, "me")
}
