package lex

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// Whoever goes says why: "that'll do, I got cows to milk", "I'm done, supper's ready". The reason tells a farewell from a
// wish to keep what was tried, and says nothing else.

// quits is the command that a farewell comes to.
var quits = &lexicon.Entry{Kind: lexicon.Cmd, Key: "quit"}

// takesLeave reads "that'll do" with a reason to go, or for how long it does. It returns the atom after it, and i where
// anything else may be meant.
func (l *lexing) takesLeave(i int) int {
	if t := l.last(); l.before != "" || t != nil && !l.breaks(*t) {
		return i
	}
	if w := l.Word(i); w != "that" && w != "this" && w != "it" || l.Word(i+1) != "will" || l.Word(i+2) != "do" {
		return i
	}
	end := i + 3
	for enoughTail[l.Word(end)] {
		end++
	}
	switch {
	case l.Word(end) == "for" && (l.Word(end+1) == "the" && l.Word(end+2) == "day" || forToday[l.Word(end+1)]):
		for end++; l.Word(end) == "the" || l.Word(end) == "this" || forToday[l.Word(end)] || l.Word(end) == "day"; end++ {
		}
	case l.reasonToGo(end) > end:
		end = l.reasonToGo(end)
	default:
		return i
	}
	t := l.add(lexicon.Cmd, i, end)
	t.Found, t.Text = []lexicon.Found{{Entry: quits}}, "that is all"
	return end
}

var (
	enoughTail = scan.WordSet("me us it just fine nicely thanks thank you very much then")
	forToday   = scan.WordSet("now today tonight this morning afternoon evening week")
)

// reasonToGo returns the atom after a reason to go that begins at a break at atom i, and i where there is none.
func (l *lexing) reasonToGo(i int) int {
	from := i
	for l.Word(from) == "," || l.Word(from) == "." || l.Word(from) == "and" || l.Word(from) == "!" || l.Word(from) == ";" || l.Word(from) == "-" || l.Word(from) == "because" || l.Word(from) == "as" {
		from++
	}
	end := from
	for l.Kind(end) == scan.Word && !chunk.Joints[l.Word(end)] {
		end++
	}
	if from == i || end-from < 2 || !l.goes(from, end) {
		return i
	}
	list := Tokens(l.Atoms[from:end:end], l.c)
	for k := range list {
		switch list[k].Kind {
		case lexicon.Num, lexicon.Size, lexicon.Rel, lexicon.Goal, lexicon.Best, lexicon.Units, lexicon.Side, lexicon.Where, lexicon.Dim:
			return i
		}
	}
	return end
}

// goes reports whether the words between two atoms tell that somebody has to go, or has what was wanted.
func (l *lexing) goes(from, end int) bool {
	owns, off := false, false
	for j := from; j < end; j++ {
		w, next := l.Word(j), l.Word(j+1)
		switch {
		case w == "have" || w == "got" || w == "gotta" || w == "has" || w == "must" || w == "better" || w == "need" || w == "needs":
			owns = true
		case owns && (w == "what" || w == "everything" || w == "all") && (next == "i" || next == "we") && (strings.HasPrefix(l.Word(j+2), "need") || strings.HasPrefix(l.Word(j+2), "want") || l.Word(j+2) == "came"):
			return true
		case owns && w == "to" && j+1 < end, awayWords[w]:
			off = true
		}
	}
	return off
}

// awayWords are words of what calls somebody away.
var awayWords = scan.WordSet(`
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
	for n > 0 && (l.tokens[n].Kind == lexicon.Comma || l.tokens[n].Kind == lexicon.Stop || l.tokens[n].Kind == lexicon.And) {
		n--
	}
	if t := &l.tokens[n]; t.Kind != lexicon.Cmd || t.Key() != "quit" || l.before != "" {
		return i
	}
	return max(i, l.reasonToGo(i-1))
}

// looksAt reads "let's see seven rails", "let's look at five boards" as a trial where a number follows at once. It returns the atom
// after the verb, and i where anything else is meant.
func (l *lexing) looksAt(i int) int {
	if l.Word(i) != "let" || l.Word(i+1) != "us" && l.Word(i+1) != "me" {
		return i
	}
	end := i + 3
	switch {
	case l.Word(i+2) == "see":
	case l.Word(i+2) == "look" && l.Word(i+3) == "at":
		end++
	default:
		return i
	}
	_, next, ok := l.Length(end)
	if !ok {
		_, next, ok = l.Size(end)
	}
	if !ok || !l.partAfter(next) {
		return i
	}
	t := l.add(lexicon.Head, i, end)
	t.Found = []lexicon.Found{{Entry: trying}}
	return end
}

// trying is the force of what is looked at.
var trying = &lexicon.Entry{Kind: lexicon.Head, Key: string(act.WhatIf)}

// calledNothing steps over "don't bother with" where a value follows its part at once: "don't bother with the kerf, call it
// zero".
func (l *lexing) calledNothing(i int) int {
	if l.Word(i) != "do" || l.Word(i+1) != "not" || l.Word(i+2) != "bother" && l.Word(i+2) != "worry" || l.Word(i+3) != "with" && l.Word(i+3) != "about" {
		return i
	}
	for j := i + 4; j < i+9; j++ {
		if w := l.Word(j); w == "," || w == ";" || w == "." || w == "-" {
			for next := j + 1; next < j+3; next++ {
				if w := l.Word(next); (w == "call" || w == "make" || w == "take" || w == "say" || w == "set" || w == "leave") && l.Word(next+1) == "it" {
					l.empty("do")
					return i + 4
				}
			}
			return i
		}
		if l.Kind(j) != scan.Word || scan.Ones[l.Word(j)] > 0 {
			return i
		}
	}
	return i
}
