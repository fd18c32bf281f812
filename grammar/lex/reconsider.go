package lex

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
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
func (l *lexing) passedOver(i int, f []lexicon.Found) int {
	switch w := l.Word(i); {
	case w == "right" && i == 0 && l.Word(1) == "," && agreeing[l.Word(2)]:
		return 2 // "right, that's me done"
	case w == "right" && l.rightFor(i), w == "over" && l.Word(i+1) == "to" && l.moving():
		l.empty(w) // "is 400 right for the material", "switch the rails over to 2x4s"
		return i + 1
	case len(f) == 0:
		return i
	}
	if f[0].Entry.Kind == lexicon.Fill && l.Word(i) == "to" && f[0].Next == i+2 {
		if g := lexicon.Vocab().Match(l.Reader.Atoms, i+1); len(g) > 0 && g[0].Entry.Kind == lexicon.Cmd && g[0].Content > 1 && g[0].Entry.Key == "take that" {
			l.empty("to") // "I have decided to keep the version you just tried"
			return i + 1
		}
	}
	switch k := f[0].Entry.Kind; {
	case k == lexicon.Same && l.Word(i) == "as" && l.Word(f[0].Next-1) == "as" && l.numberAt(f[0].Next) && !l.denies(), // "as tight as two inches"
		k == lexicon.Sell && l.Word(i) == "we" && l.keepsPart(f[0].Next),                    // "if we keep the gap between 2 and 3"
		k == lexicon.OffTail && l.said("kerf"),                                              // "the saw eats 3/32 on each cut"
		k == lexicon.BestTail && l.Word(i) == "you" && f[0].Next == i+2 && l.commandAt(i+2): // "you can throw out my span"
		l.empty(l.Text(i, f[0].Next))
		return f[0].Next
	}
	return i
}

// numberAt reports whether a value begins at atom i that no part follows at once.
func (l *lexing) numberAt(i int) bool {
	_, next, ok := l.Length(i)
	return ok && !l.partAfter(next)
}

// unlike takes what else the tables have at atom i where what stands around it rules out the likeliest.
func (l *lexing) unlike(i int, f []lexicon.Found) []lexicon.Found {
	if len(f) == 0 {
		return f
	}
	switch k, w := f[0].Entry.Kind, l.Word(i); {
	case k == lexicon.Head && f[0].Entry.Key == string(act.State) && len(l.tokens) == 0 && l.endsAt(f[0].Next):
		for _, g := range f {
			if g.Entry.Key == "take that" {
				return []lexicon.Found{g} // "I'll take that", and nothing more
			}
		}
	case k == lexicon.Part && w == "overall" && f[0].Next > i+2 && lexicon.Vocab().Articles[l.Word(i+1)]:
		return lexicon.Vocab().Match(l.Atoms[:i+1], i) // "scratch the overall the span is 161"
	case k == lexicon.Per && (w == "every" || w == "each") && f[0].Next == i+1 && l.everyOne(i+1), // "is every opening at least 30"
		k == lexicon.Cmd && f[0].Entry.Key == "undo" && l.Word(f[0].Next-1) == "back" && (l.Word(f[0].Next) == "into" || l.Word(f[0].Next) == "in"), // "put it back into inches"
		k == lexicon.Cmd && f[0].Entry.Key == "take that" && strings.Contains(l.Text(i, f[0].Next), " mm "),                                         // "we're using mm on this job"
		k == lexicon.Cmd && f[0].Entry.Key == "recap" && l.Word(f[0].Next-1) == "forget" && !subjectsAlone[l.Word(i-1)],
		k == lexicon.Part && f[0].Entry.Key == "kerf" && l.Word(f[0].Next-1) == "cut" && l.missesBy(f[0].Next),            // "if every cut is 2 mm out"
		k == lexicon.Head && w != "why" && l.wantsNot(i, f[0].Next),                                                       // "I don't want to see any bay over six feet"
		k == lexicon.Tail && f[0].Entry.Key == "verify" && (l.Word(f[0].Next-1) == "with" || l.Word(f[0].Next-1) == "if"): // "would it look right with"
		return lexicon.Vocab().MatchBut(l.Reader.Atoms, i, k)
	case k == lexicon.Wh && w == "figure" && f[0].Next == i+1 && (i == 0 || l.Word(i-1) == "uh" || l.Word(i-1) == "just") && l.startsNumber(i+1):
		return lexicon.Vocab().MatchBut(l.Reader.Atoms, i, k) // "figure three spare boards"
	case k == lexicon.Quest && f[0].Entry.Key == "shrinkage" && (l.Word(f[0].Next) == "down" || l.Word(f[0].Next) == "to"), // "what if the boards dry down to 5-3/8"
		k == lexicon.CutWord && f[0].Next == i+3 && (l.Word(i+1) == "down" || l.Word(i+1) == "back") && l.Word(i+2) == "to" && l.cutsNoBoard(): // "what if bay one was cut down to five feet"
		return lexicon.Vocab().MatchBut(l.Reader.Atoms, i, k)
	case k == lexicon.Quest && f[0].Entry.Key == "hardware" && w == "get" && l.Word(f[0].Next) == "for":
		return lexicon.Vocab().MatchBut(l.Reader.Atoms, i, k) // "I can get brackets for three dollars each"
	case k == lexicon.Tail && w == ",":
		if g := lexicon.Vocab().Match(l.Reader.Atoms, i+1); len(g) > 0 && g[0].Next > f[0].Next && slices.ContainsFunc(g, func(h lexicon.Found) bool { return h.Entry.Kind == lexicon.Tail }) {
			return nil // ", do those check out", ", check his arithmetic"
		}
	case k == lexicon.Cmd && f[0].Entry.Key == "take that" && l.doesIt(i, f[0].Next), // "would one post do it"
		k == lexicon.Cmd && w == "drop" && (l.Word(i-1) == "what" || l.Word(i-1) == "which") && (l.Word(i+1) == "have" || l.Word(i+1) == "do" || l.Word(i+1) == "did" || l.Word(i+1) == "is"), // "what drop have you got"
		k == lexicon.Goal && l.Word(f[0].Next-1) == "match" && f[0].Next < len(l.Atoms) && l.Kind(f[0].Next) == scan.Word:                                                                     // "make the second bay match the first"
		return lexicon.Vocab().MatchBut(l.Atoms[:i+1], i, lexicon.Cmd)
	case k == lexicon.Cmd && f[0].Entry.Key == "why that" && l.Word(f[0].Next-1) == "number" && l.Word(f[0].Next) == "of": // "why that number of bays"
		return lexicon.Vocab().MatchBut(l.Atoms[:i+1], i, lexicon.Cmd)
	case k == lexicon.Cmd && f[0].Entry.Key == "forget":
		return l.countForgotten(i, f)
	case k == lexicon.Head && f[0].Entry.Key == string(act.Check):
		return l.markedPost(i, f)
	case k == lexicon.ForgetTail && w == "drop" && lexicon.Vocab().Articles[l.Word(i-1)]:
		return lexicon.Vocab().Match(l.Atoms[:i+1], i) // "when I measured the drop it was 29"
	case k == lexicon.Wh && l.becomes(i, f[0].Next) && !l.partAfter(f[0].Next), // "what happens to it if"
		k == lexicon.Each && w == "a" && (!l.numbered() || l.sizeAt(i+1) || addsOrDrops[l.Word(i-1)]), // "if I drop a board", "an inch less and I add a board"
		k == lexicon.Cmd && w == "do" && l.Word(i+1) == "to",                                          // "what would a gap of 3 do to it"
		k == lexicon.Quest && w == "take" && f[0].Next < len(l.Atoms):                                 // "take off the max of 48"
		return lexicon.Vocab().MatchBut(l.Reader.Atoms, i, k)
	}
	return f
}

// addsOrDrops are verbs behind which a board is one more or less, and no measure of each.
var addsOrDrops = scan.WordSet("add adds added adding drop drops dropped dropping remove removed removing lose loses losing skip omit")

// startsNumber reports whether a number begins at an atom.
func (l *lexing) startsNumber(i int) bool {
	return l.Kind(i) == scan.Digits || l.Kind(i) == scan.Vulgar || scan.Ones[l.Word(i)] > 0 || Words().Numberish(l.Word(i)) || l.Word(i) == "a" || l.Word(i) == "an"
}

// sold reports whether lumber on sale was spoken of in this part of the line.
func (l *lexing) sold() bool {
	for i := len(l.tokens) - 1; i >= 0; i-- {
		switch t := &l.tokens[i]; {
		case t.Kind == lexicon.Stop || t.Kind == lexicon.QMark:
			return false
		case t.Kind == lexicon.Num && t.Amt.Footer, t.Kind == lexicon.Sell, t.Kind == lexicon.StockWord, t.Kind == lexicon.Dim && t.Text == "lengths":
			return true
		}
	}
	return false
}

// trimmed gives an empty word at the end of a phrase back to a phrase of some meaning that begins with it: "at least".
func (l *lexing) trimmed(f lexicon.Found, i int) int {
	last := f.Next - 1
	for j := i + 1; j < f.Next; j++ {
		if l.Word(j) != "as" {
			continue
		}
		if g := lexicon.Vocab().Match(l.Reader.Atoms, j); len(g) > 0 && g[0].Entry.Kind == lexicon.Best && g[0].Next > f.Next {
			return j // "come out | as wide as it will go"
		}
	}
	switch f.Entry.Kind {
	case lexicon.Fill:
		if l.Word(last) != "as" {
			return f.Next
		}
	case lexicon.TeachHead:
		if _, ok := Dims[l.Word(f.Next)]; l.Word(last) == "how" && (ok || l.Word(f.Next) == "many" || l.Word(f.Next) == "far" || l.Word(f.Next) == "big") {
			return last // "teach the class | how many rails fit"
		}
		return f.Next
	case lexicon.Cmd, lexicon.ForgetTail, lexicon.Head, lexicon.Wh, lexicon.Quest, lexicon.PriceVerb, lexicon.Measured:
	default:
		return f.Next
	}
	if f.Entry.Kind == lexicon.Wh && l.Word(last) == "of" {
		return f.Next // "number of bays"
	}
	if last <= i || !lexicon.Vocab().Neutral[l.Word(last)] && l.Word(last) != "as" {
		return f.Next
	}
	if g := lexicon.Vocab().Match(l.Reader.Atoms, last); len(g) > 0 && (g[0].Content > 0 || g[0].Entry.Kind == lexicon.Reason) && g[0].Next > f.Next {
		return last
	}
	return f.Next
}

// everyOne reports whether a part is named at atom i of which every one is meant, where no length comes before it.
func (l *lexing) everyOne(i int) bool {
	if t := l.last(); t != nil && t.Kind == lexicon.Num {
		return false
	}
	f := lexicon.Vocab().Match(l.Reader.Atoms, i)
	return len(f) > 0 && f[0].Entry.Kind == lexicon.Part && (f[0].Entry.Key == "opening" || f[0].Entry.Key == "rail" && l.Word(f[0].Next) == "in" || f[0].Entry.Key == "gap")
}

// endsAt reports whether nothing but signs and thanks follow atom i.
func (l *lexing) endsAt(i int) bool {
	for ; i < len(l.Atoms); i++ {
		switch w := l.Word(i); {
		case l.Kind(i) == scan.Sign, w == "please", w == "thanks", w == "then":
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
	for l.Word(i) == "is" || l.Word(i) == "was" || l.Word(i) == "comes" || l.Word(i) == "are" {
		i++
	}
	_, next, ok := l.Length(i)
	return ok && (l.Word(next) == "out" || l.Word(next) == "off")
}
