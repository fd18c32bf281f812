package grammar

import (
	"slices"
	"strings"
)

// withoutBackdrop leaves out the clauses of a line that only tell what is round the work: "we bought the lumber yesterday,
// and …", "…, so that it lines up with our steps". It reports whether there was one. It is asked only where the line as
// a whole could not be read. What is left must be read by itself, without a guess.
//
// A clause is backdrop where it has a subject of its own, names no figure, no part of the wall, no relation and no change, asks
// and orders nothing, tells nobody's view, and says something that no table knows. A reason, and what a "so" or a "but" leads
// on from, may name parts; the latter also the figure of a thing that no table knows: "the wheelbarrow is 29 wide, so …".
func withoutBackdrop(atoms []atom, c Context) ([]atom, bool) {
	var left []atom
	dropped, things, sized := false, false, false
	cuts := clauseStarts(atoms)
	for k, from := range cuts {
		to := len(atoms)
		if k+1 < len(cuts) {
			to = cuts[k+1]
		}
		part := atoms[from:to]
		next := ""
		if to < len(atoms) {
			next = atoms[to].text
		}
		if kept := throughWhat(part); kept != nil && next == "so" {
			left, dropped = append(left, kept...), true
			continue
		}
		idle := isBackdrop(part, c, next)
		if idle || toldBesideWall(part) && readAtoms(slices.Clone(withoutJoint(part)), c).Ask != nil {
			dropped, things, sized = true, things || !idle, sized || slices.ContainsFunc(part, numeric)
			if stop := part[len(part)-1]; len(left) > 0 && stop.kind == aSign {
				if left[len(left)-1].kind != aSign {
					left = append(left, stop)
				} else if stop.text == "." || stop.text == "?" || stop.text == "!" {
					left[len(left)-1] = stop // the sentence ends there
				}
			}
			continue
		}
		if len(left) == 0 || dropped && left[len(left)-1].kind == aSign {
			part = withoutJoint(part)
		}
		if dropped && pointsBack[part[0].text] {
			return nil, false // it may speak of what was dropped
		}
		left = append(left, part...)
	}
	return left, dropped && len(left) > 0 && !(things && leansBack(left)) && !(sized && leansOnFigure(left))
}

// joints begin a clause that goes on from the one before it.
var joints = map[string]bool{"and": true, "but": true, "so": true, "then": true}

// meantimes begin a clause that tells what else goes on at the time: "before the boys unload the truck".
var meantimes = wordSet("before while whilst once after")

// causes begin a clause that tells why.
var causes = map[string]bool{"because": true, "since": true, "as": true, "cause": true, "cos": true, "cuz": true, "so": true, "or": true, "otherwise": true, "lest": true}

// withoutJoint leaves out the joints and signs that a clause begins with.
func withoutJoint(part []atom) []atom {
	for len(part) > 1 && (joints[part[0].text] || part[0].kind == aSign) {
		part = part[1:]
	}
	return part
}

// clauseStarts cuts a line behind each sign that breaks it, and before each word that joins a clause with its own subject.
func clauseStarts(atoms []atom) []int {
	starts := []int{0}
	for i := 1; i < len(atoms); i++ {
		switch {
		case breaksClause(atoms, i-1):
		case atoms[i].text == "so" && throughWhat(atoms[starts[len(starts)-1]:i]) != nil: // "the mower has to get through the opening so 44 at least"
		case atoms[i].text == "so" && (pleads(plainWords(atoms[starts[len(starts)-1]:i])) || tellsSize(atoms[starts[len(starts)-1]:i]) || looksLike(plainWords(atoms[starts[len(starts)-1]:i])) || heldOut(atoms[starts[len(starts)-1]:i])): // "digging is hard so as few posts as possible"
		case runsOn(atoms, i):
		case atoms[i].text == "to" && i > 1 && aims(wordsAhead(atoms[i:])):
		case atoms[i].text == "as" && i > 1 && (atoms[i-2].text == "as" || atoms[i-2].text == "so") && atoms[i-1].kind == aWord || atoms[i].text == "as" && wallAfter(atoms, i):
			continue // "as low as it will go", "built just as the south wall is"
		case atoms[i].text == "and" && i-starts[len(starts)-1] == 2 && atoms[i-2].text == "any":
			continue // "any taller and it blocks the view"
		case atoms[i].text == "and" && speakers[reader{atoms}.word(i+1)] && isPerson(atoms[i-1].text):
			continue // "my son and I are starting Saturday"
		case atoms[i].text == "before" && atoms[i-1].text == "to":
			continue // "go back to before it"
		case meantimes[atoms[i].text] && subjectAt(atoms, i+1):
		case atoms[i].text == "so" && i+1 < len(atoms) && atoms[i+1].text == "that" && isFloor(atoms[i-1].text):
			continue // "he sloped our patio so that it falls a quarter a foot"
		case atoms[i].text == "so" && i+1 < len(atoms) && plansFor[atoms[i+1].text]: // "the lad miscuts things so figure ten percent spare"
		case atoms[i].kind == aWord && (joints[atoms[i].text] || causes[atoms[i].text]) && !joints[atoms[i-1].text] && subjectAt(atoms, i+1):
		default:
			continue
		}
		if starts[len(starts)-1] != i {
			starts = append(starts, i)
		}
	}
	return starts
}

// plansFor are verbs that bid somebody plan for something, behind a "so".
var plansFor = wordSet("figure add buy order allow plan include count throw")

// breaksClause reports whether a sign parts clauses: no decimal point, no dash between figures.
func breaksClause(atoms []atom, i int) bool {
	switch atoms[i].text {
	case ",", ";", "!", "?", ":", "--", "(", ")":
		return atoms[i].kind == aSign
	case ".":
		return atoms[i].kind == aSign && (i+1 == len(atoms) || !atoms[i+1].glued)
	}
	return false
}

var (
	// speakers are the words for who speaks.
	speakers = map[string]bool{"i": true, "we": true}
	// otherOnes are words for others than who speaks, and for nobody in particular.
	otherOnes = map[string]bool{"he": true, "she": true, "they": true, "there": true, "everybody": true, "everyone": true, "somebody": true, "someone": true, "nobody": true, "people": true, "folks": true, "you": true}
	// pointing are words that point at a thing.
	pointing = map[string]bool{"it": true, "that": true, "this": true}
	// owned are words that tell whose something is.
	owned = map[string]bool{"my": true, "our": true, "his": true, "her": true, "their": true, "your": true}
	// noun are words behind which a noun stands.
	noun = map[string]bool{"the": true, "a": true, "an": true, "some": true, "these": true, "those": true, "one": true, "most": true}
	// auxiliary are verbs that help another, and their forms.
	auxiliary = map[string]bool{"is": true, "are": true, "was": true, "were": true, "has": true, "have": true, "had": true, "will": true, "would": true, "can": true, "could": true, "do": true, "does": true, "did": true, "might": true, "may": true, "should": true, "must": true, "needs": true, "wants": true, "likes": true, "loves": true, "gets": true, "got": true, "goes": true, "came": true, "comes": true, "keeps": true, "kept": true}
	// pointsBack are words that point back at what was spoken of.
	pointsBack = wordSet("it its they their he his she her him them that this those these")
	// stepBefore are words that may stand before what a clause begins with.
	stepBefore = map[string]bool{"before": true, "while": true, "that": true, "then": true, "also": true, "now": true, "well": true, "look": true, "see": true, "oh": true, "ok": true, "okay": true, "uh": true, "um": true, "honestly": true, "please": true, "just": true, "you": true}
)

// subjectAt reports whether a subject may begin at i.
func subjectAt(atoms []atom, i int) bool {
	for i < len(atoms) && atoms[i].text == "that" && i+1 < len(atoms) && !auxiliary[atoms[i+1].text] {
		i++ // "so that they …"
	}
	if i >= len(atoms) || atoms[i].kind != aWord {
		return false
	}
	w := atoms[i].text
	return speakers[w] || otherOnes[w] || pointing[w] || owned[w] || noun[w] || outsiders[w] && pleads(plainWords(atoms[i:]))
}

// isFloor reports whether a word is one for the floor.
func isFloor(w string) bool {
	for _, c := range vocab().classes[w] {
		if c == vocab().ids["FLOOR"] {
			return true
		}
	}
	return false
}

// plainWords are the words of a clause, up to the first sign.
func plainWords(part []atom) (w []string) {
	for len(part) > 1 && (joints[part[0].text] || causes[part[0].text]) {
		part = part[1:]
	}
	return wordsAhead(part)
}

// wordsAhead are the words up to the first sign.
func wordsAhead(part []atom) (w []string) {
	for _, a := range part {
		if a.kind != aWord {
			break
		}
		w = append(w, a.text)
	}
	return w
}

// isBackdrop reports whether a clause says nothing of the wall.
func isBackdrop(part []atom, c Context, next string) bool {
	if idleTalks(part) || tellsSize(part) || tellsAge(part) || next == "so" && heldOut(part) {
		return true
	}
	var w []string
	for _, a := range part {
		switch a.kind {
		case aWord:
			w = append(w, a.text)
		case aSign:
			if a.text == "?" || a.text == `"` {
				return false
			}
		case aDigits:
			if next != "so" {
				return false
			}
		default:
			return false
		}
	}
	reason := false
	for len(w) > 0 && (joints[w[0]] || causes[w[0]] || meantimes[w[0]] || stepBefore[w[0]] && !(w[0] == "you" && len(w) > 1 && w[1] != "see" && w[1] != "know") && w[0] != "that" || reason && w[0] == "that") {
		reason = reason || meantimes[w[0]] || causes[w[0]] && (w[0] != "so" || len(w) > 1 && (w[1] == "that" || pointing[w[1]]))
		w = w[1:]
	}
	if pleads(w) || aims(w) || looksLike(w) || keepsThem(w) {
		return true
	}
	if len(w) < 3 && !(len(w) == 2 && meantimes[part[0].text]) || !narrates(w, reason) {
		return false
	}
	looked := speakers[w[0]] && len(w) > 1 && looks[w[1]]
	led := next == "so" || next == "but" || scheduled(w) && asksNext[next] // what follows is what is wanted, and goes before what this says
	for _, word := range w {
		if turning[word] || !led && !reason && (withheld[word] || viewed[word] || pointing[word] && next != "and" && !looked) {
			return false
		}
	}
	wished := false
	for _, word := range w {
		wished = wished || wishing[word]
	}
	return nothingOfTheWall(lex(part, c), reason, led, wished)
}

// scheduled reports whether words tell when something is done: "the bases get anchored today".
func scheduled(w []string) bool {
	switch w[len(w)-1] {
	case "today", "tonight", "tomorrow", "morning", "afternoon", "evening", "already", "soon", "week", "now":
		return !slices.ContainsFunc(w, func(v string) bool { return wishing[v] })
	}
	return false
}

// asksNext are words that open a question or ask for a table.
var asksNext = wordSet("what where how which when tell show give read")

// narrates reports whether words begin with a subject that has a verb.
func narrates(w []string, reason bool) bool {
	switch {
	case speakers[w[0]] || otherOnes[w[0]]:
		return true
	case pointing[w[0]]:
		return reason
	case len(w) > 4 && owned[w[0]] && isPerson(w[1]) && w[2] == "and" && speakers[w[3]]:
		return true // "my daughter and I start on Saturday"
	case reason && isPerson(w[0]), (owned[w[0]] || noun[w[0]]) && isPerson(w[1]) && reason:
		return true // "before the boys unload the truck"
	case auxiliary[w[1]] && !auxiliary[w[0]] && foreignSubject(w[0]):
		return true // "kids are yelling"
	case owned[w[0]] || noun[w[0]] || reason:
		for i, v := range w[1:] {
			if auxiliary[v] || v == "'s" || i > 0 && len(v) > 3 && (strings.HasSuffix(v, "ed") || strings.HasSuffix(v, "s") && !strings.HasSuffix(v, "ss")) {
				return true
			}
		}
	}
	return false
}

// foreignSubject reports whether a word may name who or what a clause tells of without an article: "kids", "supper".
func foreignSubject(w string) bool {
	switch w {
	case "what", "which", "who", "how", "where", "when", "why", "not", "no", "none", "nothing", "nobody", "if", "to", "please", "let":
		return false
	}
	return !pointing[w] && !turning[w] && !withheld[w] && !viewed[w]
}

// turning are words by which a clause takes back, doubts or bounds what is said beside it, whatever joins the two.
var turning = wordSet(`
	if unless whether suppose supposing imagine pretend maybe perhaps instead either cancel ignore forget scratch undo scrap disregard
	unsure undecided doubt doubts guessing testing joking kidding toying debating contemplating hesitating
	inch inches foot feet yard yards cm mm meter meters metre metres millimeters centimeters percent maximum minimum max min limit limits limited equal equals
`)

// withheld are words by which a clause may deny, judge or compare what is said beside it.
var withheld = wordSet(`
	not no never none nobody nothing nor neither without hardly cannot rather wrong mistake misread mistaken incorrect error off
	guess wonder wondering torn curious playing thinking considering mulling entertaining
	more less fewer bigger smaller tighter wider narrower taller shorter higher lower longer closer farther further half twice double same most least exactly
	ridiculous nuts crazy nonsense silly stupid awful terrible horrible bad worse refuse reject object disagree complain complains
	hate hates dislike dislikes impossible overkill
`)

// viewed are words by which somebody's view is told, so that what stands beside it may be a claim.
var viewed = wordSet(`
	say says said saying claim claims claimed tell tells told think thinks thought reckon reckons reckoned suggest suggests suggested recommend recommends recommended
	propose proposes proposed insist insists insisted advise advises advised drew draw draws drawing drawn sketch sketched plan plans planned blueprint design designed
	quote quoted quotes bid estimate estimated invoice according sheet spec specs list lists listed asks asked asking show shows showed shown figure figures figured calculated
	wrote written text texted mark marks marked proposal swears swore believes believed worked note notes noted paper
	argue argues argued believe expert chart table book code rule rules
`)

// daysOfWeek are no misspellings of anything.
var daysOfWeek = wordSet("monday tuesday wednesday thursday friday saturday sunday")

// wishing are verbs that wish: what they wish of the wall is never left out.
var wishing = wordSet("want wants need needs prefer use put set make keep have")

// looks are verbs of making sure: "I shot it with a laser".
var looks = wordSet("shot checked measured counted verified confirmed sighted taped eyeballed leveled levelled laid held put pulled")

// wordSet makes a set of the words of a text.
func wordSet(text string) map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(text) {
		m[w] = true
	}
	return m
}

// nothingOfTheWall reports whether the tokens of a clause hold nothing that could be set, asked or ordered, and a word that no
// table knows. A reason, and what leads up to a wish, may speak of parts.
func nothingOfTheWall(list []token, reason, led, wished bool) bool {
	unknown, figures, parts, wall := 0, false, false, false
	for i := range list {
		switch t := &list[i]; t.kind {
		case kComma, kStop, kAnd, kBut, kOr, kIt, kFill, kOnly, kOut, kOver, kUnder, kUp, kDown, kOff, kAt, kFrom, kTo, kReason, kTheirs, kMove, kTop, kX, kMeasured, kAbout, kBetween:
		case kStockWord, kCutWord, kLevel, kGoesIn:
		case kBound: // "the boss is fussy about it looking even, so …"
			if !led || t.key() != "=" {
				return false
			}
		case kWhere, kWh: // "because that's where the steps start"
			if !reason {
				return false
			}
		case kHave:
			if t.as(kSell) != nil {
				unknown++ // "we bought the lumber"
			}
		case kSell, kPriceVerb:
			unknown++ // "we bought the lumber"
		case kQuest:
			if !led && !reason {
				return false
			}
		case kNum: // "the wheelbarrow is 29 wide, so …"
			if !led || list[0].kind != kUnknown {
				return false
			}
			figures = true
		case kHead:
			if t.key() != string(State) {
				return false
			}
			wished = true
		case kVague:
			if t.text != "some" {
				return false // "a bit": of what?
			}
		case kPart, kLoc, kDim, kSide, kItem, kNot, kNo, kMore, kFixed, kTail:
			parts = parts || t.kind != kDim
			wall = wall || t.kind == kPart && t.key() != "kerf" && t.key() != "tape" && t.key() != "through"
			if !reason && !led {
				if t.kind != kPart || t.key() != "rail" && t.key() != "size" && t.key() != "tape" && t.key() != "beyond" && t.key() != "through" {
					return false
				}
			}
		case kUnknown:
			if !isPerson(t.text) && (!foreign(t) || words().numberish(t.text)) {
				return false
			}
			unknown++
		default:
			return false
		}
	}
	return (unknown > 0 || led || reason) && !(figures && parts) && !(wished && wall && !led)
}
