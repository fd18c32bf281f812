package grammar

import (
	"strings"
	"sync"
)

// swaps are fixed turns of phrase, and words misspelled or misheard, that are set plain before anything else is.
var swaps = []placedPhrase{
	{"&", "and", nil},
	{"try not to", "do not", triesNot},
	{"^ ?well|so|but|and|ok|okay ?, ?all ?of his|her|their|theirs|(the architect 's)|(the neighbor 's)|(the customer 's) drawing|drawings|plan|plans|sketch|sketches|sheet|sheets|blueprint|blueprints|print|prints|numbers|figures|notes is|are|was|were ?all ?done|drawn|written|dimensioned ?in metric|millimeters|millimetres|mm :|,", "use metric , the drawing shows", figuresShown},
	{"^ ?well|so|but|and|ok|okay ?, ?all ?of his|her|their|theirs|(the architect 's)|(the neighbor 's)|(the customer 's) drawing|drawings|plan|plans|sketch|sketches|sheet|sheets|blueprint|blueprints|print|prints|numbers|figures|notes is|are|was|were ?all ?done|drawn|written|dimensioned ?in inches|feet|imperial|customary :|,", "use inches , the drawing shows", figuresShown},
	{"grandad", "granddad", nil},
	{"lenth", "length", nil},
	{"lenght", "length", nil},
	{"wil be", "will be", nil},
	{"wil it", "will it", nil},
	{"legnth", "length", nil},
	{"can you show me what", "show me what", nil},
	{"could you show me what", "show me what", nil},
	{"would you show me what", "show me what", nil},
	{"will you show me what", "show me what", nil},
	{"walk threw", "walk through", nil},
	{"fit threw", "fit through", nil},
	{"get threw", "get through", nil},
	{"go threw", "go through", nil},
	{"pass threw", "pass through", nil},
	{"squeeze threw", "squeeze through", nil},
	{"due to", "do to", askedWhatWould},
	{"take of", "take off", countedNext},
	{"a further", "another", spelledNext},
	{"the hundred", "a hundred", behindFigure},
	{"the piece", "a piece", behindFigure},
	{"the box", "a box", behindFigure},
	{"and left", "and leave", spelledNext},
	{"slops", "slopes", floorBefore},
	{"too", "to", cutTo},
	{"to by", "two by", sizedBy},
	{"for by", "four by", sizedBy},
	{"what number of", "how many", nil},
	{"cap", "post cap", pricedParts},
	{"caps", "post caps", pricedParts},
	{"shop list", "shopping list", nil},
	{"+", "and", plusAsked},
	{`\$ total`, "total cost", nil},
	{`total \$`, "total cost", yardClauseEnds},
	{"budget 's", "budget is", yardFigureAheadOr},
	{"the stick", "each", yardBoth(pricedBehind, yardClauseEnds)},
	{"the board", "each", yardBoth(pricedBehind, yardClauseEnds)},
	{"how come so", "why so", nil},
	{"how come that many", "why that many", nil},
	{"how come that much", "why that much", nil},
	{"/", "per", moneyPerHundred},
	{"in a file call it", "in a file called", nil},
	{"to a file call it", "to a file called", nil},
	{"never you mind", "never mind", nil},
	{"scuse me", "excuse me", nil},
	{"exc", "except", nil},
	{"units mm", "work in mm", nil},
	{"units cm", "work in cm", nil},
	{"units metric", "work in metric", nil},
	{"units inches", "work in inches", nil},
	{"units imperial", "work in inches", nil},
	{"units in", "work in inches", unitsOnly},
	{"u / s", "underside", nil},
	{"you / s", "underside", nil},
	{"t / o", "top of", nil},
	{"t . o .", "top of", nil},
	{"a . f . f .", "aff", nil},
	{"n wall", "north wall", wallByLetter},
	{"s wall", "south wall", wallByLetter},
	{"e wall", "east wall", wallByLetter},
	{"w wall", "west wall", wallByLetter},
	{"end uprights", "end posts", nil},
	{"corner uprights", "end posts", nil},
	{"in between", "between", figureNext},
	{"in", "inch", anotherInch},
	{"in", "of", railInBay},
	{"this", "the", onlyOneOfIt},
	{"my", "the", timesMine},
	{"drop the", "forget the", limitNext},
	{"drop that", "forget that", limitNext},
	{"drop my", "forget my", limitNext},
	{"never mind", "forget", limitSoon},
	{"bays", "bay", widened},
	{"and call it", "and save it as", nameToEnd},
	{"then call it", "then save it as", nameToEnd},
}

// turn is a turn of phrase word by word.
func turn(text string) []string { return strings.Fields(text) }

var swapBook = sync.OnceValue(func() *phrasebook {
	b := phrasebookOf(swaps, notedSwaps, purseSwaps, phrasalTurns)
	b.fixed = true
	return b
})

// swapped sets the turns of phrase of a line to the plain ones.
func swapped(atoms []atom) []atom { return swapBook().setIn(atoms) }

// lastOf is the text of the k-th atom from the end of what stands before, nothing where there is none.
func lastOf(before []atom, k int) string {
	if len(before) < k {
		return ""
	}
	return before[len(before)-k].text
}

// figureNext: "in between 2 and 3".
func figureNext(_, after []atom) bool {
	return len(after) > 1 && (after[0].kind == aDigits || after[0].kind == aVulgar || spelledNumber(after[0].text)) && after[1].text != "posts"
}

// spelledNumber reports whether a word is a number of its own: "two", "twelve".
func spelledNumber(w string) bool {
	_, one := units[w]
	return one || tens[w] > 0 || w == "half"
}

// anotherInch: "another in and three quarters".
func anotherInch(before, after []atom) bool {
	switch lastOf(before, 1) {
	case "another", "extra", "full", "an":
		return len(after) > 1 && after[0].text == "and" && (after[1].text == "a" || after[1].kind == aDigits || after[1].kind == aVulgar || spelledNumber(after[1].text))
	}
	return false
}

// railWords name a rail before its number.
var (
	railWords = wordSet("rail rails board boards slat slats plank planks rl no number course")
	bayWords  = wordSet("bay panel section stretch")
)

// railInBay: "rail 3 in panel 1".
func railInBay(before, after []atom) bool {
	if len(before) < 2 || len(after) < 2 || before[len(before)-1].kind != aDigits || !railWords[lastOf(before, 2)] {
		return false
	}
	return bayWords[after[0].text]
}

// onlyOnes are what a wall has one of in talk, so that "this gap" is the gap.
var onlyOnes = wordSet("gap gaps spacing opening doorway walkthrough concrete slab floor patio ground lumber")

// onlyOneOfIt: "close up this gap".
func onlyOneOfIt(_, after []atom) bool { return len(after) > 0 && onlyOnes[after[0].text] }

// timesMine: "half my gap".
func timesMine(before, after []atom) bool {
	switch lastOf(before, 1) {
	case "half", "twice", "double", "thrice", "triple", "times", "than", "as":
		return namesPart(after, 0)
	}
	return false
}

// limits are words for a limit, and what may stand between it and its article.
var (
	limits      = wordSet("rule requirement condition limit limits cap max maximum min minimum ceiling restriction bound")
	limitsKinds = wordSet("upper lower top bottom old whole outer hard inch in foot ft")
)

// limitNext: "drop the upper limit of 3 on the gap".
func limitNext(_, after []atom) bool {
	for _, a := range after {
		if limits[a.text] {
			return true
		}
		if !limitsKinds[a.text] && a.kind != aDigits && !spelledNumber(a.text) {
			return false
		}
	}
	return false
}

// duties are words by which a rule is told.
var duties = wordSet("must should cannot least most more less over under")

// limitSoon: "never mind that three inch max on the gap".
func limitSoon(_, after []atom) bool {
	for i, a := range after {
		if a.kind == aSign && a.text != "-" && a.text != "/" && a.text != `"` && a.text != "'" {
			return false
		}
		if i > 0 && (limits[a.text] || duties[a.text] && namesPart(after, 1)) || a.text == "has" && i+1 < len(after) && after[i+1].text == "to" && namesPart(after, 1) {
			return true
		}
	}
	return false
}

// widened: "widen the bays two".
func widened(before, _ []atom) bool {
	switch lastOf(before, 2) {
	case "widen", "narrow", "lengthen", "stretch", "shorten":
		return lastOf(before, 1) == "the" || lastOf(before, 1) == "my"
	}
	return false
}

// oncePart leaves out a part that only names again what its figure was given to: "the saw takes 3 mm per cut, and ...".
func oncePart(in []token) []token {
	for i := 2; i+1 < len(in); i++ {
		if t := &in[i]; t.kind == kPart && t.key() == "kerf" && in[i-1].kind == kNum && in[i-2].kind == kPart && in[i-2].key() == "kerf" && (in[i+1].kind == kAnd || in[i+1].kind == kComma) {
			return append(in[:i:i], in[i+1:]...)
		}
	}
	return in
}

// noNames are words behind a "call it" that name no plan.
var noNames = wordSet("a an about around roughly good done even quits off day night that it so what whatever enough settled square plumb level fair fine ok okay say like more less or at not no nothing metric inches")

// keepsPlan are verbs of saving, by which a plan is saved already.
var keepsPlan = wordSet("keep save store file stash")

// nameToEnd: "gap 3, and call it porch". What follows is a name, up to the end of the line.
func nameToEnd(before, after []atom) bool {
	for len(after) > 0 && after[len(after)-1].kind == aSign {
		after = after[:len(after)-1]
	}
	if len(before) == 0 || len(after) == 0 || len(after) > 3 {
		return false
	}
	for _, a := range before[max(0, len(before)-3):] {
		if keepsPlan[a.text] {
			return false // "keep this one and call it river bench"
		}
	}
	for i, a := range after {
		if a.kind != aWord || noNames[a.text] || spelledNumber(a.text) && i == 0 || namesPart(after, i) && i == 0 {
			return false
		}
	}
	return true
}

// unitsOnly: "units in, span 144".
func unitsOnly(_, after []atom) bool {
	return len(after) == 0 || after[0].kind == aSign && after[0].text != "/"
}

// moneyPerHundred: "screws 8.50/100".
func moneyPerHundred(before, after []atom) bool {
	if len(before) == 0 || len(after) == 0 {
		return false
	}
	_, cents, ok := strings.Cut(lastOf(before, 1), ".")
	switch after[0].text {
	case "50", "100", "200", "250", "500", "1000":
		return ok && len(cents) == 2
	}
	return false
}
