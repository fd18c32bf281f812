package grammar

import "strings"

// Some turns of phrase are set to the plain ones before a line is read, where they can mean nothing else.

// swap is a turn of phrase: what is said, what it is set to, and where it can mean nothing else (nil: everywhere).
type swap struct {
	said, plain []string
	where       func(before, after []atom) bool
}

var swaps = []swap{
	{said: turn("&"), plain: turn("and")},
	{said: turn("try not to"), plain: turn("do not"), where: triesNot},
	{said: turn("lenth"), plain: turn("length")},
	{said: turn("lenght"), plain: turn("length")},
	{said: turn("legnth"), plain: turn("length")},
	{said: turn("can you show me what"), plain: turn("show me what")},
	{said: turn("could you show me what"), plain: turn("show me what")},
	{said: turn("would you show me what"), plain: turn("show me what")},
	{said: turn("will you show me what"), plain: turn("show me what")},
	{said: turn("walk threw"), plain: turn("walk through")},
	{said: turn("fit threw"), plain: turn("fit through")},
	{said: turn("get threw"), plain: turn("get through")},
	{said: turn("go threw"), plain: turn("go through")},
	{said: turn("pass threw"), plain: turn("pass through")},
	{said: turn("squeeze threw"), plain: turn("squeeze through")},
	{said: turn("due to"), plain: turn("do to"), where: askedWhatWould},
	{said: turn("take of"), plain: turn("take off"), where: countedNext},
	{said: turn("a further"), plain: turn("another"), where: spelledNext},
	{said: turn("the hundred"), plain: turn("a hundred"), where: behindFigure},
	{said: turn("the piece"), plain: turn("a piece"), where: behindFigure},
	{said: turn("the box"), plain: turn("a box"), where: behindFigure},
	{said: turn("and left"), plain: turn("and leave"), where: spelledNext},
	{said: turn("slops"), plain: turn("slopes"), where: floorBefore},
	{said: turn("too"), plain: turn("to"), where: cutTo},
	{said: turn("to by"), plain: turn("two by"), where: sizedBy},
	{said: turn("for by"), plain: turn("four by"), where: sizedBy},
	{said: turn("what number of"), plain: turn("how many")},
	{said: turn("cap"), plain: turn("post cap"), where: pricedParts},
	{said: turn("caps"), plain: turn("post caps"), where: pricedParts},
	{said: turn("shop list"), plain: turn("shopping list")},
	{said: turn("+"), plain: turn("and"), where: plusAsked},
	{said: turn("$ total"), plain: turn("total cost")},
	{said: turn("total $"), plain: turn("total cost"), where: yardClauseEnds},
	{said: turn("budget 's"), plain: turn("budget is"), where: yardFigureAheadOr},
	{said: turn("the stick"), plain: turn("each"), where: yardBoth(pricedBehind, yardClauseEnds)},
	{said: turn("the board"), plain: turn("each"), where: yardBoth(pricedBehind, yardClauseEnds)},
	{said: turn("how come so"), plain: turn("why so")},
	{said: turn("how come that many"), plain: turn("why that many")},
	{said: turn("how come that much"), plain: turn("why that much")},
	{said: turn("/"), plain: turn("per"), where: moneyPerHundred},
	{said: turn("in a file call it"), plain: turn("in a file called")},
	{said: turn("to a file call it"), plain: turn("to a file called")},
	{said: turn("never you mind"), plain: turn("never mind")},
	{said: turn("scuse me"), plain: turn("excuse me")},
	{said: turn("exc"), plain: turn("except")},
	{said: turn("units mm"), plain: turn("work in mm")},
	{said: turn("units cm"), plain: turn("work in cm")},
	{said: turn("units metric"), plain: turn("work in metric")},
	{said: turn("units inches"), plain: turn("work in inches")},
	{said: turn("units imperial"), plain: turn("work in inches")},
	{said: turn("units in"), plain: turn("work in inches"), where: unitsOnly},
	{said: turn("u / s"), plain: turn("underside")},
	{said: turn("you / s"), plain: turn("underside")},
	{said: turn("t / o"), plain: turn("top of")},
	{said: turn("t . o ."), plain: turn("top of")},
	{said: turn("a . f . f ."), plain: turn("aff")},
	{said: turn("n wall"), plain: turn("north wall"), where: wallByLetter},
	{said: turn("s wall"), plain: turn("south wall"), where: wallByLetter},
	{said: turn("e wall"), plain: turn("east wall"), where: wallByLetter},
	{said: turn("w wall"), plain: turn("west wall"), where: wallByLetter},
	{said: turn("end uprights"), plain: turn("end posts")},
	{said: turn("corner uprights"), plain: turn("end posts")},
	{said: turn("in between"), plain: turn("between"), where: figureNext},
	{said: turn("in"), plain: turn("inch"), where: anotherInch},
	{said: turn("in"), plain: turn("of"), where: railInBay},
	{said: turn("this"), plain: turn("the"), where: onlyOneOfIt},
	{said: turn("my"), plain: turn("the"), where: timesMine},
	{said: turn("drop the"), plain: turn("forget the"), where: limitNext},
	{said: turn("drop that"), plain: turn("forget that"), where: limitNext},
	{said: turn("drop my"), plain: turn("forget my"), where: limitNext},
	{said: turn("never mind"), plain: turn("forget"), where: limitSoon},
	{said: turn("bays"), plain: turn("bay"), where: widened},
	{said: turn("and call it"), plain: turn("and save it as"), where: nameToEnd},
	{said: turn("then call it"), plain: turn("then save it as"), where: nameToEnd},
}

// turn is a turn of phrase word by word.
func turn(text string) []string { return strings.Fields(text) }

// swapped sets the turns of phrase of a line to the plain ones.
func swapped(atoms []atom) []atom {
	out := atoms
	for i := 0; i < len(out); i++ {
		for _, s := range swaps {
			if !standAt(out, i, s.said...) || s.where != nil && !s.where(out[:i], out[i+len(s.said):]) {
				continue
			}
			made := append([]atom{}, out[:i]...)
			for k, w := range s.plain {
				a := out[i+min(k, len(s.said)-1)]
				a.text, a.kind = w, aWord
				a.glued = a.glued && k < len(s.said)
				made = append(made, a)
			}
			made[len(made)-1].end = out[i+len(s.said)-1].end
			out = append(made, out[i+len(s.said):]...)
			break
		}
	}
	return out
}

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
