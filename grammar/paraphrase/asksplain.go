package paraphrase

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
)

// Some ways to ask are set to the plain one before a line is read.

// asksPlain are the steps, each of which knows one of them.
var asksPlain = []func([]scan.Atom) []scan.Atom{theirSpacing, helpBehind, whyWouldItBeWrong, goThroughWith, keptFromBeing, tellWhom, bracketsAllow, inThatOrder, comesOutHow, thatIsALot, tellSomeoneWhy, ifSoWhy}

// askedPlainly sets ways to ask to the plain ones.
func askedPlainly(atoms []scan.Atom) []scan.Atom {
	for _, step := range asksPlain {
		atoms = step(atoms)
	}
	return atoms
}

// theirSpacing sets "stiffeners per bay and their spacing" to "stiffeners per bay and stiffener spacing".
func theirSpacing(atoms []scan.Atom) []scan.Atom {
	for i := 1; i+1 < len(atoms); i++ {
		if atoms[i].Text != "their" || atoms[i-1].Text != "and" && atoms[i-1].Text != "," {
			continue
		}
		for j := i - 2; j >= 0 && j > i-7; j-- {
			if key, next := chunk.PartKey(atoms, j); key == "stiffener" && next < i {
				return slices.Concat(atoms[:i:i], atoms[j:next], atoms[i+1:])
			}
		}
	}
	return atoms
}

// helpBehind sets "gap help" to "help with the gap".
func helpBehind(atoms []scan.Atom) []scan.Atom {
	end := len(atoms)
	for end > 0 && (atoms[end-1].Kind == scan.Sign || atoms[end-1].Text == "please") {
		end--
	}
	if end < 2 || end > 4 || atoms[end-1].Text != "help" {
		return atoms
	}
	i := chunk.SkipArticle(atoms, 0)
	key, next := chunk.PartKey(atoms, i)
	if key == "" || next != end-1 {
		return atoms
	}
	help, with := atoms[end-1], atoms[end-1]
	help.At, with.At, with.Text = atoms[0].At, atoms[0].At, "with"
	return slices.Concat([]scan.Atom{help, with}, atoms[i:next], atoms[end:])
}

// faults are what is wrong with a thing, at the end of a question for the reason; would are the verbs before it.
var (
	faults     = scan.WordSet("wrong bad impossible forbidden unsafe trouble refused rejected unworkable unsuitable unacceptable")
	noFaults   = scan.WordSet("good use go ok okay allowed possible fine right acceptable suitable")
	wouldWords = scan.WordSet("would is are was were should will")
)

// whyWouldItBeWrong sets "why would a bay of 8 ft be wrong", "why are seven rails no good" to "why not a bay of 8 ft".
func whyWouldItBeWrong(atoms []scan.Atom) []scan.Atom {
	led, _ := idiom.PastLead(atoms)
	i := len(atoms) - len(led)
	end := len(atoms)
	for end > i && atoms[end-1].Kind == scan.Sign {
		end--
	}
	if i+5 > end || atoms[i].Text != "why" || !wouldWords[atoms[i+1].Text] {
		return atoms
	}
	stop := end - 1
	switch {
	case faults[atoms[end-1].Text]:
	case noFaults[atoms[end-1].Text] && (atoms[end-2].Text == "no" || atoms[end-2].Text == "not"):
		stop--
	case scan.StandAt(atoms, end-2, "a", "problem"), scan.StandAt(atoms, end-2, "a", "mistake"), scan.StandAt(atoms, end-2, "no", "good"):
		stop--
	case scan.StandAt(atoms, end-4, "out", "of", "the", "question"):
		stop -= 3
	default:
		return atoms
	}
	for stop > i+2 && (atoms[stop-1].Text == "be" || atoms[stop-1].Text == "not" || atoms[stop-1].Text == "been") {
		stop--
	}
	figure := false
	for _, a := range atoms[i+2 : stop] {
		switch {
		case a.Text == "not" || a.Text == "no" || a.Text == "that" || a.Text == "so":
			return atoms
		case a.Kind == scan.Digits, a.Kind == scan.Vulgar, chunk.SpelledNumber(a.Text):
			figure = true
		}
	}
	if !figure {
		return atoms
	}
	not := atoms[i+1]
	not.Text = "not"
	return slices.Concat(atoms[:i+1:i+1], []scan.Atom{not}, atoms[i+2:stop], atoms[end:])
}

// goers are verbs of going through a thing with somebody.
var goers = scan.WordSet("go run work talk walk step")

// goThroughWith sets "go through the gap with the kids" to "walk me through the gap".
func goThroughWith(atoms []scan.Atom) []scan.Atom {
	for i := 0; i < 3 && i+4 < len(atoms); i++ {
		if !goers[atoms[i].Text] || atoms[i+1].Text != "through" && atoms[i+1].Text != "over" {
			continue
		}
		key, next := chunk.PartKey(atoms, chunk.SkipArticle(atoms, i+2))
		if key == "" || !scan.StandAt(atoms, next, "with") && !scan.StandAt(atoms, next, "for") {
			continue
		}
		who := chunk.SkipArticle(atoms, next+1)
		if who >= len(atoms) || !chunk.IsPerson(atoms[who].Text) && !hearers[atoms[who].Text] {
			continue
		}
		walk, me := atoms[i], atoms[i]
		walk.Text, me.Text = "walk", "me"
		through := atoms[i+1]
		through.Text = "through"
		return slices.Concat(atoms[:i:i], []scan.Atom{walk, me, through}, atoms[i+2:next], atoms[who+1:])
	}
	return atoms
}

// hearers are those who are taught.
var hearers = scan.WordSet("me us them him her class students everybody everyone kids group crew lads")

// thatIsALot sets "that's a lot of lumber to buy, how come" to "why so much lumber to buy".
func thatIsALot(atoms []scan.Atom) []scan.Atom {
	led, _ := idiom.PastLead(atoms)
	i := len(atoms) - len(led)
	if !scan.StandAt(atoms, i+1, "is", "a", "lot", "of") && !scan.StandAt(atoms, i+1, "are", "a", "lot", "of") && !scan.StandAt(atoms, i+1, "'s", "a", "lot", "of") || i >= len(atoms) || !lex.Pointing[atoms[i].Text] && atoms[i].Text != "those" && atoms[i].Text != "these" {
		return atoms
	}
	stop := i + 5
	for stop < len(atoms) && atoms[stop].Kind == scan.Word {
		stop++
	}
	rest := stop + 1
	for rest < len(atoms) && chunk.Joints[atoms[rest].Text] {
		rest++
	}
	if stop == i+5 || stop >= len(atoms) || len(WordsAhead(atoms[rest:])) > 3 || !scan.StandAt(atoms, rest, "how", "come") && !scan.StandAt(atoms, rest, "why") {
		return atoms
	}
	return slices.Concat(scan.Reworded(atoms, i, i+5, "why", "so", "much")[:i+3:i+3], atoms[i+5:stop])
}

// tellSomeoneWhy sets "tell the class, please, why there are six boards" to "tell me why there are six boards".
func tellSomeoneWhy(atoms []scan.Atom) []scan.Atom {
	for i := 0; i < 3 && i+4 < len(atoms); i++ {
		switch atoms[i].Text {
		case "tell", "show", "explain":
		default:
			continue
		}
		j := i + 1
		for j < len(atoms) && j < i+7 && (atoms[j].Text == "to" || atoms[j].Text == "," || atoms[j].Text == "please" || lexicon.Vocab().Articles[atoms[j].Text] || chunk.IsPerson(atoms[j].Text) || hearers[atoms[j].Text]) {
			j++
		}
		if j > i+1 && j+1 < len(atoms) && (atoms[j].Text == "why" || scan.StandAt(atoms, j, "how", "come")) {
			return atoms[j:]
		}
	}
	return atoms
}

// ifSoWhy sets "and if so, why" to "and why".
func ifSoWhy(atoms []scan.Atom) []scan.Atom {
	for i := 1; i+2 < len(atoms); i++ {
		if !scan.StandAt(atoms, i, "if", "so") {
			continue
		}
		j := i + 2
		if atoms[j].Text == "," {
			j++
		}
		if j < len(atoms) && parse.QuestionOpeners[atoms[j].Text] {
			return slices.Concat(atoms[:i:i], atoms[j:])
		}
	}
	return atoms
}

// listsNames reports whether tokens do nothing but name several things of the wall, so that those are asked after: "rails, gap and
// opening, in that order".
func listsNames(in []lex.Token) bool {
	parts := 0
	for i := range in {
		switch t := &in[i]; {
		case t.Kind == lexicon.Part && t.Key() != "wall" && t.Key() != "size":
			if i > 0 && in[i-1].Kind != lexicon.And && in[i-1].Kind != lexicon.Comma && in[i-1].Kind != lexicon.Dim {
				return false
			}
			parts++
		case t.Kind == lexicon.Part:
			return false
		}
	}
	return parts > 1
}

// ComesToIn reports whether a question is after what something comes to.
func ComesToIn(a act.Act, atoms []scan.Atom) bool {
	for _, b := range atoms {
		if b.At >= a.At && b.At < a.End && (b.Text == "come" || b.Text == "comes" || b.Text == "amount" || b.Text == "add" || b.Text == "run") {
			return true
		}
	}
	return false
}

// leastWords and letWords are what is asked of brackets: "the least gap the brackets allow".
var (
	leastWords = scan.WordSet("least smallest tightest minimum narrowest closest")
	gapWords   = scan.WordSet("gap gaps space spacing distance clearance")
	letWords   = scan.WordSet("allow allows permit permits need needs require requires take stand tolerate accept want handle")
)

// bracketsAllow sets "the least gap the brackets allow" to "the bracket clearance".
func bracketsAllow(atoms []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(atoms); i++ {
		if !leastWords[atoms[i].Text] || !gapWords[atoms[i+1].Text] {
			continue
		}
		j := i + 2
		for j < len(atoms) && (atoms[j].Text == "that" || atoms[j].Text == "which" || lexicon.Vocab().Articles[atoms[j].Text]) {
			j++
		}
		if j >= len(atoms) || !namesBracket(atoms[j:j+1]) {
			continue
		}
		for j++; j < len(atoms) && (lex.Helping[atoms[j].Text] != "" || atoms[j].Text == "for"); j++ {
		}
		if j < len(atoms) && letWords[atoms[j].Text] {
			return scan.Reworded(atoms, i, j+1, "bracket", "clearance")
		}
	}
	return atoms
}

// inThatOrder leaves out "in that order" from the end of a list.
func inThatOrder(atoms []scan.Atom) []scan.Atom {
	end := len(atoms)
	for end > 0 && (atoms[end-1].Kind == scan.Sign || atoms[end-1].Text == "please") {
		end--
	}
	if end < 5 || !scan.StandAt(atoms, end-3, "in", "that", "order") && !scan.StandAt(atoms, end-3, "in", "this", "order") {
		return atoms
	}
	from := end - 3
	if atoms[from-1].Text == "," {
		from--
	}
	return slices.Concat(atoms[:from:from], atoms[end:])
}

// comesOutHow sets a whole line that asks how it all comes out to a question for the layout: behind figures the same words ask whether
// those fit.
func comesOutHow(atoms []scan.Atom) []scan.Atom {
	led, _ := idiom.PastLead(atoms)
	led = PastTail(led)
	end := len(led)
	for end > 0 && led[end-1].Kind == scan.Sign {
		end--
	}
	if end < 4 || led[0].Text != "how" && led[0].Text != "what" {
		return atoms
	}
	f := lexicon.Vocab().Match(led[:end], 0)
	if len(f) == 0 || f[0].Next != end || f[0].Entry.Kind != lexicon.Tail || f[0].Entry.Key != "fit" || !slices.ContainsFunc(led[:end], func(a scan.Atom) bool { return a.Text == "out" || a.Text == "together" || a.Text == "up" }) {
		return atoms
	}
	return scan.Reworded(led, 0, end, "work", "it", "out")
}

// keepers are verbs of keeping a thing from being so.
var keepers = scan.WordSet("keeping keeps stopping stops preventing prevents holding barring")

// keptFromBeing sets "what's keeping the opening from being 40" to "why not the opening 40".
func keptFromBeing(atoms []scan.Atom) []scan.Atom {
	led, _ := idiom.PastLead(atoms)
	i := len(atoms) - len(led)
	if i+6 >= len(atoms) || atoms[i].Text != "what" {
		return atoms
	}
	j := i + 1
	for j < len(atoms) && (atoms[j].Text == "is" || atoms[j].Text == "'s" || atoms[j].Text == "would" || atoms[j].Text == "be") {
		j++
	}
	if !keepers[atoms[j].Text] {
		return atoms
	}
	part := chunk.SkipArticle(atoms, j+1)
	key, next := chunk.PartKey(atoms, part)
	if key == "" || !scan.StandAt(atoms, next, "from") || next+2 >= len(atoms) || !beings[atoms[next+1].Text] {
		return atoms
	}
	return slices.Concat(scan.Reworded(atoms, i, j+1, "why", "not")[:i+2:i+2], atoms[part:next], atoms[next+2:])
}

var beings = scan.WordSet("being going getting reaching coming running measuring")

// tellVerbs are verbs of telling and showing somebody something.
var tellVerbs = scan.WordSet("show tell give read send hand let")

// tellWhom sets "let the missus see a picture", "give my brother the cut list" to "let me see", "give me": who is told does not matter.
func tellWhom(atoms []scan.Atom) []scan.Atom {
	led, _ := idiom.PastLead(atoms)
	i := len(atoms) - len(led)
	if i < len(atoms) && atoms[i].Text == "please" {
		i++
	}
	if i+3 >= len(atoms) || !tellVerbs[atoms[i].Text] || !lex.Owned[atoms[i+1].Text] && atoms[i+1].Text != "the" || !chunk.IsPerson(atoms[i+2].Text) || atoms[i+3].Kind != scan.Word {
		return atoms
	}
	if atoms[i].Text == "let" && atoms[i+3].Text != "see" && atoms[i+3].Text != "have" && atoms[i+3].Text != "know" && atoms[i+3].Text != "hear" {
		return atoms
	}
	if atoms[i].Text == "give" && (atoms[i+3].Text == "a" || atoms[i+3].Text == "an" || atoms[i+3].Text == "some") {
		return atoms // "give my neighbor a wider opening"
	}
	for _, a := range atoms[i+3:] {
		if idiom.Withheld[a.Text] || a.Text == "room" || a.Text == "space" {
			return atoms
		}
		if a.Kind == scan.Digits || a.Kind == scan.Vulgar || chunk.SpelledNumber(a.Text) || a.Text == "to" || a.Text == "that" || a.Text == "'s" {
			return atoms
		}
	}
	return scan.Reworded(atoms, i+1, i+3, "me")
}
