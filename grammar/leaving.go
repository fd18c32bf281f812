package grammar

import "strings"

// Whoever goes says why: "that'll do, I got cows to milk", "I'm done, supper's ready". The reason tells a farewell from a
// wish to keep what was tried, and says nothing else.

// quits is the command that a farewell comes to.
var quits = &entry{kind: kCmd, key: "quit"}

// takesLeave reads "that'll do" with a reason to go, or for how long it does. It returns the atom after it, and i where
// anything else may be meant.
func (l *lexing) takesLeave(i int) int {
	if t := l.last(); l.before != "" || t != nil && !l.breaks(*t) {
		return i
	}
	if w := l.word(i); w != "that" && w != "this" && w != "it" || l.word(i+1) != "will" || l.word(i+2) != "do" {
		return i
	}
	end := i + 3
	for enoughTail[l.word(end)] {
		end++
	}
	switch {
	case l.word(end) == "for" && (l.word(end+1) == "the" && l.word(end+2) == "day" || forToday[l.word(end+1)]):
		for end++; l.word(end) == "the" || l.word(end) == "this" || forToday[l.word(end)] || l.word(end) == "day"; end++ {
		}
	case l.reasonToGo(end) > end:
		end = l.reasonToGo(end)
	default:
		return i
	}
	t := l.add(kCmd, i, end)
	t.found, t.text = []found{{entry: quits}}, "that is all"
	return end
}

var (
	enoughTail = wordSet("me us it just fine nicely thanks thank you very much then")
	forToday   = wordSet("now today tonight this morning afternoon evening week")
)

// reasonToGo returns the atom after a reason to go that begins at a break at atom i, and i where there is none.
func (l *lexing) reasonToGo(i int) int {
	from := i
	for l.word(from) == "," || l.word(from) == "." || l.word(from) == "and" || l.word(from) == "!" || l.word(from) == ";" || l.word(from) == "-" || l.word(from) == "because" || l.word(from) == "as" {
		from++
	}
	end := from
	for l.kind(end) == aWord && !joints[l.word(end)] {
		end++
	}
	if from == i || end-from < 2 || !l.goes(from, end) {
		return i
	}
	list := lex(l.atoms[from:end:end], l.c)
	for k := range list {
		switch list[k].kind {
		case kNum, kSize, kRel, kGoal, kBest, kUnits, kSide, kWhere, kDim:
			return i
		}
	}
	return end
}

// goes reports whether the words between two atoms tell that somebody has to go, or has what was wanted.
func (l *lexing) goes(from, end int) bool {
	owns, off := false, false
	for j := from; j < end; j++ {
		w, next := l.word(j), l.word(j+1)
		switch {
		case w == "have" || w == "got" || w == "gotta" || w == "has" || w == "must" || w == "better" || w == "need" || w == "needs":
			owns = true
		case owns && (w == "what" || w == "everything" || w == "all") && (next == "i" || next == "we") && (strings.HasPrefix(l.word(j+2), "need") || strings.HasPrefix(l.word(j+2), "want") || l.word(j+2) == "came"):
			return true
		case owns && w == "to" && j+1 < end, awayWords[w]:
			off = true
		}
	}
	return off
}

// awayWords are words of what calls somebody away.
var awayWords = wordSet(`
	supper dinner lunch lunchtime breakfast bed bedtime late dark calling calls waiting waits hungry starving tired beat bushed exhausted pooped raining rain storm home leaving heading
	leave run bus train ferry battery closing closes quitting sleep shift ride sunset sundown daylight
`)

// stepAway reads a reason to go after a farewell: nothing else is said by it.
func (l *lexing) stepAway(i int) int {
	t := l.last()
	if t == nil {
		return i
	}
	n := len(l.tokens) - 1
	for n > 0 && (l.tokens[n].kind == kComma || l.tokens[n].kind == kStop || l.tokens[n].kind == kAnd) {
		n--
	}
	if t := &l.tokens[n]; t.kind != kCmd || t.key() != "quit" || l.before != "" {
		return i
	}
	return max(i, l.reasonToGo(i-1))
}

// looksAt reads "let's see seven rails", "let's look at five boards" as a trial where a number follows at once. It returns the atom
// after the verb, and i where anything else is meant.
func (l *lexing) looksAt(i int) int {
	if l.word(i) != "let" || l.word(i+1) != "us" && l.word(i+1) != "me" {
		return i
	}
	end := i + 3
	switch {
	case l.word(i+2) == "see":
	case l.word(i+2) == "look" && l.word(i+3) == "at":
		end++
	default:
		return i
	}
	_, next, ok := l.length(end)
	if !ok {
		_, next, ok = l.size(end)
	}
	if !ok || !l.partAfter(next) {
		return i
	}
	t := l.add(kHead, i, end)
	t.found = []found{{entry: trying}}
	return end
}

// trying is the force of what is looked at.
var trying = &entry{kind: kHead, key: string(WhatIf)}

// calledNothing steps over "don't bother with" where a value follows its part at once: "don't bother with the kerf, call it
// zero".
func (l *lexing) calledNothing(i int) int {
	if l.word(i) != "do" || l.word(i+1) != "not" || l.word(i+2) != "bother" && l.word(i+2) != "worry" || l.word(i+3) != "with" && l.word(i+3) != "about" {
		return i
	}
	for j := i + 4; j < i+9; j++ {
		if w := l.word(j); w == "," || w == ";" || w == "." || w == "-" {
			for next := j + 1; next < j+3; next++ {
				if w := l.word(next); (w == "call" || w == "make" || w == "take" || w == "say" || w == "set" || w == "leave") && l.word(next+1) == "it" {
					l.empty("do")
					return i + 4
				}
			}
			return i
		}
		if l.kind(j) != aWord || units[l.word(j)] > 0 {
			return i
		}
	}
	return i
}
