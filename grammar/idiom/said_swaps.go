package idiom

import (
	"strings"
	"sync"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/parse"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// swaps are fixed turns of phrase, and words misspelled or misheard, that are set plain before anything else is.
var swaps = []phrase.Placed{
	{"&", "and", nil},
	{"saw|blade|(saw blade) kerf", "kerf", nil},
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
	{"n wall", "north wall", parse.WallByLetter},
	{"s wall", "south wall", parse.WallByLetter},
	{"e wall", "east wall", parse.WallByLetter},
	{"w wall", "west wall", parse.WallByLetter},
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

var swapBook = sync.OnceValue(func() *phrase.Book {
	b := phrase.BookOf(rackSwaps, swaps, smallTalk, ownTurns, ofOneBay, siteSlips, notedSwaps, purseSwaps, boughtSwaps, phrasalTurns, workTurns, figureBeside, movedOrMade)
	b.Fixed = true
	return b
})

// Swapped sets the turns of phrase of a line to the plain ones.
func Swapped(atoms []scan.Atom) []scan.Atom { return swapBook().SetIn(atoms) }

// figureNext: "in between 2 and 3".
func figureNext(_, after []scan.Atom) bool {
	return len(after) > 1 && (after[0].Kind == scan.Digits || after[0].Kind == scan.Vulgar || chunk.SpelledNumber(after[0].Text)) && after[1].Text != "posts"
}

// anotherInch: "another in and three quarters".
func anotherInch(before, after []scan.Atom) bool {
	switch chunk.LastOf(before, 1) {
	case "another", "extra", "full", "an":
		return len(after) > 1 && after[0].Text == "and" && (after[1].Text == "a" || after[1].Kind == scan.Digits || after[1].Kind == scan.Vulgar || chunk.SpelledNumber(after[1].Text))
	}
	return false
}

// railWords name a rail before its number.
var (
	railWords = scan.WordSet("rail rails board boards slat slats plank planks rl no number course")
	BayWords  = scan.WordSet("bay panel section stretch")
)

// railInBay: "rail 3 in panel 1".
func railInBay(before, after []scan.Atom) bool {
	if len(before) < 2 || len(after) < 2 || before[len(before)-1].Kind != scan.Digits || !railWords[chunk.LastOf(before, 2)] {
		return false
	}
	return BayWords[after[0].Text]
}

// onlyOnes are what a wall has one of in talk, so that "this gap" is the gap.
var onlyOnes = scan.WordSet("gap gaps spacing opening doorway walkthrough concrete slab floor patio ground lumber")

// onlyOneOfIt: "close up this gap".
func onlyOneOfIt(_, after []scan.Atom) bool { return len(after) > 0 && onlyOnes[after[0].Text] }

// timesMine: "half my gap".
func timesMine(before, after []scan.Atom) bool {
	switch chunk.LastOf(before, 1) {
	case "half", "twice", "double", "thrice", "triple", "times", "than", "as":
		return chunk.NamesPart(after, 0)
	}
	return false
}

// Limits are words for a limit, and what may stand between it and its article.
var (
	Limits      = scan.WordSet("rule requirement condition limit limits cap max maximum min minimum ceiling restriction bound")
	limitsKinds = scan.WordSet("upper lower top bottom old whole outer hard inch in foot ft")
)

// limitNext: "drop the upper limit of 3 on the gap".
func limitNext(_, after []scan.Atom) bool {
	for _, a := range after {
		if Limits[a.Text] {
			return true
		}
		if !limitsKinds[a.Text] && a.Kind != scan.Digits && !chunk.SpelledNumber(a.Text) {
			return false
		}
	}
	return false
}

// duties are words by which a rule is told.
var duties = scan.WordSet("must should cannot least most more less over under")

// limitSoon: "never mind that three inch max on the gap".
func limitSoon(_, after []scan.Atom) bool {
	for i, a := range after {
		if a.Kind == scan.Sign && a.Text != "-" && a.Text != "/" && a.Text != `"` && a.Text != "'" {
			return false
		}
		if i > 0 && (Limits[a.Text] || duties[a.Text] && chunk.NamesPart(after, 1)) || a.Text == "has" && i+1 < len(after) && after[i+1].Text == "to" && chunk.NamesPart(after, 1) {
			return true
		}
	}
	return false
}

// widened: "widen the bays two".
func widened(before, _ []scan.Atom) bool {
	switch chunk.LastOf(before, 2) {
	case "widen", "narrow", "lengthen", "stretch", "shorten":
		return chunk.LastOf(before, 1) == "the" || chunk.LastOf(before, 1) == "my"
	}
	return false
}

// OncePart leaves out a part that only names again what its figure was given to: "the saw takes 3 mm per cut, and ...".
func OncePart(in []lex.Token) []lex.Token {
	for i := 2; i+1 < len(in); i++ {
		if t := &in[i]; t.Kind == lexicon.Part && t.Key() == "kerf" && in[i-1].Kind == lexicon.Num && in[i-2].Kind == lexicon.Part && in[i-2].Key() == "kerf" && (in[i+1].Kind == lexicon.And || in[i+1].Kind == lexicon.Comma) {
			return append(in[:i:i], in[i+1:]...)
		}
	}
	return in
}

// noNames are words behind a "call it" that name no plan.
var noNames = scan.WordSet("a an about around roughly good done even quits off day night that it so what whatever enough settled square plumb level fair fine ok okay say like more less or at not no nothing metric inches")

// keepsPlan are verbs of saving, by which a plan is saved already.
var keepsPlan = scan.WordSet("keep save store file stash")

// nameToEnd: "gap 3, and call it porch". What follows is a name, up to the end of the line.
func nameToEnd(before, after []scan.Atom) bool {
	for len(after) > 0 && after[len(after)-1].Kind == scan.Sign {
		after = after[:len(after)-1]
	}
	if len(before) == 0 || len(after) == 0 || len(after) > 3 {
		return false
	}
	for _, a := range before[max(0, len(before)-3):] {
		if keepsPlan[a.Text] {
			return false // "keep this one and call it river bench"
		}
	}
	for i, a := range after {
		if a.Kind != scan.Word || noNames[a.Text] || chunk.SpelledNumber(a.Text) && i == 0 || chunk.NamesPart(after, i) && i == 0 {
			return false
		}
	}
	return true
}

// unitsOnly: "units in, span 144".
func unitsOnly(_, after []scan.Atom) bool {
	return len(after) == 0 || after[0].Kind == scan.Sign && after[0].Text != "/"
}

// moneyPerHundred: "screws 8.50/100".
func moneyPerHundred(before, after []scan.Atom) bool {
	if len(before) == 0 || len(after) == 0 {
		return false
	}
	_, cents, ok := strings.Cut(chunk.LastOf(before, 1), ".")
	switch after[0].Text {
	case "50", "100", "200", "250", "500", "1000":
		return ok && len(cents) == 2
	}
	return false
}
