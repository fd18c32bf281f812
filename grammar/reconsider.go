package grammar

import (
	"slices"
	"strings"
)

// heardWhole are readers of what is heard as a whole, before any word of it is looked up.
var heardWhole []func(*lexing, int) int

func init() {
	heardWhole = []func(*lexing, int) int{
		(*lexing).guarded, (*lexing).takesLeave, (*lexing).stepAway, (*lexing).calledNothing, (*lexing).looksAt, (*lexing).planSaid, (*lexing).pair, (*lexing).chosenWay, (*lexing).anyAdded, (*lexing).comesAndGoes, (*lexing).namedClaim,
		(*lexing).wherePosts, (*lexing).theRight, (*lexing).topComesAt, (*lexing).seemsSo,
		(*lexing).asCloseTo, (*lexing).countBox,
		(*lexing).bidsMind, (*lexing).checksAll,
		(*lexing).backTo,
		(*lexing).saidBySomeone, (*lexing).nextOpening,
		(*lexing).wantsNone,
	}
}

// passedOver steps over what the tables found at atom i where it says nothing beside what stands around it. It returns the
// atom after it, and i where it counts.
func (l *lexing) passedOver(i int, f []found) int {
	switch w := l.word(i); {
	case w == "right" && i == 0 && l.word(1) == "," && agreeing[l.word(2)]:
		return 2 // "right, that's me done"
	case w == "right" && l.rightFor(i), w == "over" && l.word(i+1) == "to" && l.moving():
		l.empty(w) // "is 400 right for the material", "switch the rails over to 2x4s"
		return i + 1
	case len(f) == 0:
		return i
	}
	if f[0].entry.kind == kFill && l.word(i) == "to" && f[0].next == i+2 {
		if g := vocab().match(l.reader.atoms, i+1); len(g) > 0 && g[0].entry.kind == kCmd && g[0].content > 1 && g[0].entry.key == "take that" {
			l.empty("to") // "I have decided to keep the version you just tried"
			return i + 1
		}
	}
	switch k := f[0].entry.kind; {
	case k == kSame && l.word(i) == "as" && l.word(f[0].next-1) == "as" && l.numberAt(f[0].next) && !l.denies(), // "as tight as two inches"
		k == kSell && l.word(i) == "we" && l.keepsPart(f[0].next),                    // "if we keep the gap between 2 and 3"
		k == kOffTail && l.said("kerf"),                                              // "the saw eats 3/32 on each cut"
		k == kBestTail && l.word(i) == "you" && f[0].next == i+2 && l.commandAt(i+2): // "you can throw out my span"
		l.empty(l.text(i, f[0].next))
		return f[0].next
	}
	return i
}

// numberAt reports whether a value begins at atom i that no part follows at once.
func (l *lexing) numberAt(i int) bool {
	_, next, ok := l.length(i)
	return ok && !l.partAfter(next)
}

// unlike takes what else the tables have at atom i where what stands around it rules out the likeliest.
func (l *lexing) unlike(i int, f []found) []found {
	if len(f) == 0 {
		return f
	}
	switch k, w := f[0].entry.kind, l.word(i); {
	case k == kHead && f[0].entry.key == string(State) && len(l.tokens) == 0 && l.endsAt(f[0].next):
		for _, g := range f {
			if g.entry.key == "take that" {
				return []found{g} // "I'll take that", and nothing more
			}
		}
	case k == kPart && w == "overall" && f[0].next > i+2 && vocab().articles[l.word(i+1)]:
		return vocab().match(l.atoms[:i+1], i) // "scratch the overall the span is 161"
	case k == kPer && (w == "every" || w == "each") && f[0].next == i+1 && l.everyOne(i+1), // "is every opening at least 30"
		k == kCmd && f[0].entry.key == "undo" && l.word(f[0].next-1) == "back" && (l.word(f[0].next) == "into" || l.word(f[0].next) == "in"), // "put it back into inches"
		k == kCmd && f[0].entry.key == "take that" && strings.Contains(l.text(i, f[0].next), " mm "),                                         // "we're using mm on this job"
		k == kCmd && f[0].entry.key == "recap" && l.word(f[0].next-1) == "forget" && !subjectsAlone[l.word(i-1)],
		k == kPart && f[0].entry.key == "kerf" && l.word(f[0].next-1) == "cut" && l.missesBy(f[0].next),            // "if every cut is 2 mm out"
		k == kHead && w != "why" && l.wantsNot(i, f[0].next),                                                       // "I don't want to see any bay over six feet"
		k == kTail && f[0].entry.key == "verify" && (l.word(f[0].next-1) == "with" || l.word(f[0].next-1) == "if"): // "would it look right with"
		return vocab().matchBut(l.reader.atoms, i, k)
	case k == kWh && w == "figure" && f[0].next == i+1 && (i == 0 || l.word(i-1) == "uh" || l.word(i-1) == "just") && l.startsNumber(i+1):
		return vocab().matchBut(l.reader.atoms, i, k) // "figure three spare boards"
	case k == kQuest && f[0].entry.key == "shrinkage" && (l.word(f[0].next) == "down" || l.word(f[0].next) == "to"), // "what if the boards dry down to 5-3/8"
		k == kCutWord && f[0].next == i+3 && (l.word(i+1) == "down" || l.word(i+1) == "back") && l.word(i+2) == "to" && l.cutsNoBoard(): // "what if bay one was cut down to five feet"
		return vocab().matchBut(l.reader.atoms, i, k)
	case k == kQuest && f[0].entry.key == "hardware" && w == "get" && l.word(f[0].next) == "for":
		return vocab().matchBut(l.reader.atoms, i, k) // "I can get brackets for three dollars each"
	case k == kTail && w == ",":
		if g := vocab().match(l.reader.atoms, i+1); len(g) > 0 && g[0].next > f[0].next && slices.ContainsFunc(g, func(h found) bool { return h.entry.kind == kTail }) {
			return nil // ", do those check out", ", check his arithmetic"
		}
	case k == kCmd && f[0].entry.key == "take that" && l.doesIt(i, f[0].next), // "would one post do it"
		k == kCmd && w == "drop" && (l.word(i-1) == "what" || l.word(i-1) == "which") && (l.word(i+1) == "have" || l.word(i+1) == "do" || l.word(i+1) == "did" || l.word(i+1) == "is"), // "what drop have you got"
		k == kGoal && l.word(f[0].next-1) == "match" && f[0].next < len(l.atoms) && l.kind(f[0].next) == aWord:                                                                         // "make the second bay match the first"
		return vocab().matchBut(l.atoms[:i+1], i, kCmd)
	case k == kCmd && f[0].entry.key == "why that" && l.word(f[0].next-1) == "number" && l.word(f[0].next) == "of": // "why that number of bays"
		return vocab().matchBut(l.atoms[:i+1], i, kCmd)
	case k == kCmd && f[0].entry.key == "forget":
		return l.countForgotten(i, f)
	case k == kHead && f[0].entry.key == string(Check):
		return l.markedPost(i, f)
	case k == kForgetTail && w == "drop" && vocab().articles[l.word(i-1)]:
		return vocab().match(l.atoms[:i+1], i) // "when I measured the drop it was 29"
	case k == kWh && l.becomes(i, f[0].next) && !l.partAfter(f[0].next), // "what happens to it if"
		k == kEach && w == "a" && (!l.numbered() || l.sizeAt(i+1)), // "if I drop a board"
		k == kCmd && w == "do" && l.word(i+1) == "to",              // "what would a gap of 3 do to it"
		k == kQuest && w == "take" && f[0].next < len(l.atoms):     // "take off the max of 48"
		return vocab().matchBut(l.reader.atoms, i, k)
	}
	return f
}

// startsNumber reports whether a number begins at an atom.
func (l *lexing) startsNumber(i int) bool {
	return l.kind(i) == aDigits || l.kind(i) == aVulgar || units[l.word(i)] > 0 || words().numberish(l.word(i)) || l.word(i) == "a" || l.word(i) == "an"
}

// sold reports whether lumber on sale was spoken of in this part of the line.
func (l *lexing) sold() bool {
	for i := len(l.tokens) - 1; i >= 0; i-- {
		switch t := &l.tokens[i]; {
		case t.kind == kStop || t.kind == kQMark:
			return false
		case t.kind == kNum && t.amt.footer, t.kind == kSell, t.kind == kStockWord, t.kind == kDim && t.text == "lengths":
			return true
		}
	}
	return false
}

// trimmed gives an empty word at the end of a phrase back to a phrase of some meaning that begins with it: "at least".
func (l *lexing) trimmed(f found, i int) int {
	last := f.next - 1
	for j := i + 1; j < f.next; j++ {
		if l.word(j) != "as" {
			continue
		}
		if g := vocab().match(l.reader.atoms, j); len(g) > 0 && g[0].entry.kind == kBest && g[0].next > f.next {
			return j // "come out | as wide as it will go"
		}
	}
	switch f.entry.kind {
	case kFill:
		if l.word(last) != "as" {
			return f.next
		}
	case kTeachHead:
		if _, ok := dims[l.word(f.next)]; l.word(last) == "how" && (ok || l.word(f.next) == "many" || l.word(f.next) == "far" || l.word(f.next) == "big") {
			return last // "teach the class | how many rails fit"
		}
		return f.next
	case kCmd, kForgetTail, kHead, kWh, kQuest, kPriceVerb, kMeasured:
	default:
		return f.next
	}
	if f.entry.kind == kWh && l.word(last) == "of" {
		return f.next // "number of bays"
	}
	if last <= i || !vocab().neutral[l.word(last)] && l.word(last) != "as" {
		return f.next
	}
	if g := vocab().match(l.reader.atoms, last); len(g) > 0 && (g[0].content > 0 || g[0].entry.kind == kReason) && g[0].next > f.next {
		return last
	}
	return f.next
}

// everyOne reports whether a part is named at atom i of which every one is meant, where no length comes before it.
func (l *lexing) everyOne(i int) bool {
	if t := l.last(); t != nil && t.kind == kNum {
		return false
	}
	f := vocab().match(l.reader.atoms, i)
	return len(f) > 0 && f[0].entry.kind == kPart && (f[0].entry.key == "opening" || f[0].entry.key == "rail" && l.word(f[0].next) == "in" || f[0].entry.key == "gap")
}

// endsAt reports whether nothing but signs and thanks follow atom i.
func (l *lexing) endsAt(i int) bool {
	for ; i < len(l.atoms); i++ {
		switch w := l.word(i); {
		case l.kind(i) == aSign, w == "please", w == "thanks", w == "then":
		default:
			return false
		}
	}
	return true
}

// subjectsAlone are what stands before "I forget" where no wish is told: nothing, or a sign.
var subjectsAlone = map[string]bool{"": true, ",": true, ".": true, "sorry": true, "and": true, "so": true, "because": true}

// missesBy reports whether a length and "out" or "off" follow atom i: cuts are said to miss.
func (l *lexing) missesBy(i int) bool {
	for l.word(i) == "is" || l.word(i) == "was" || l.word(i) == "comes" || l.word(i) == "are" {
		i++
	}
	_, next, ok := l.length(i)
	return ok && (l.word(next) == "out" || l.word(next) == "off")
}
