package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// A way out is chosen by its number in many words: "I'll go with your second option", "number two please", "the first one
// sounds best to me". What is said is heard as a whole: every word of it must be one that can be said of a choice.

// takeWay is the command that it comes to.
var takeWay = &lexicon.Entry{Kind: lexicon.Cmd, Key: "take"}

// chooseWord is what a word does where a way out is chosen.
type chooseWord uint8

const (
	chooseIdle  chooseWord = iota + 1
	chooseNoun             // what is chosen from: "option"
	chooseVerb             // that it is chosen
	choosePoint            // "number", "#": a number follows
)

var chooseWords = func() map[string]chooseWord {
	m := map[string]chooseWord{}
	for role, list := range map[chooseWord]string{
		chooseIdle: `happy pleased content satisfied glad delighted inspector boss i we you me us will would let please just then ok okay yes yeah yep well so now the your that those these of out it is to for with can could may kindly alright fine
			think believe guess am are going gonna be as on in all one way / w give gave listed offered showed shown suggested proposed mentioned had came up by said told named from
			a an my go love rather our here there sir maam thanks really do from off yours his hers theirs mine ours hands down any day nicely well much very most quite just pretty really
			make makes making`,
		chooseNoun: "option options choice choices fix fixes remedy remedies suggestion suggestions solution solutions proposal proposals idea ideas alternative alternatives offer offers way ways list lists menu",
		chooseVerb: `take pick choose want prefer use have like try adopt select accept opt settle vote run apply keep pick picking taking choosing sounds looks seems suits best nicest better good great fine perfect
			nice works appeals do does beats wins picked chose chosen took wants likes prefers selected went going sensible reasonable sense wise smart wiser smartest handiest easiest
			fits win winner favorite favourite loves love`,
		choosePoint: "number # nr num",
	} {
		for _, w := range strings.Fields(list) {
			if old, twice := m[w]; !twice || role > old {
				m[w] = role
			}
		}
	}
	return m
}()

// chosenWay reads the choice of a way out at the beginning of a part of the line. It returns the atom after it, and i where
// anything else may be meant.
func (l *lexing) chosenWay(i int) int {
	if t := l.last(); l.before != "" || t != nil && !l.breaks(*t) {
		return i
	}
	switch l.Word(i) {
	case "is", "are", "does", "do":
		if next := l.Word(i + 1); (scan.Subjects[next] || next == "you") && !(l.Word(i) == "do" && (next == "the" || next == "it" && l.Word(i+2) == "the")) {
			return i
		}
	}
	end, n, noun, verb, point, among := l.pastHousehold(i), 0, false, false, false, false
	for ; end < len(l.Atoms) && !choiceEnds(l, end); end++ {
		w := l.Word(end)
		role := chooseWords[w]
		switch {
		case w == "way":
			role = chooseNoun
		case (w == "list" || w == "lists" || w == "menu") && !onList[l.Word(end-2)]:
			role = 0 // "the specs list two by sixes"
		}
		k, ordinal := l.choiceNumber(end)
		switch {
		case k > 0 && (ordinal || role == 0 || w == "one" && (l.Word(end-1) == "number" || l.Word(end-1) == "#" || chooseWords[l.Word(end-1)] == chooseNoun && l.Word(end-1) != "way")):
			if n > 0 || !ordinal && k > 1 && ManyChoices[l.Word(end+1)] {
				return i // "let's hear the three ways out again"
			}
			n = k
			point = point || end > i && !ordinal && (chooseWords[l.Word(end-1)] == choosePoint || chooseWords[l.Word(end-1)] == chooseNoun)
			if !ordinal && !point {
				return i // a bare number may be anything
			}
			continue
		case role == 0, w == "fix" && lexicon.Vocab().Articles[l.Word(end+1)]:
			return i // "fix the second one"
		}
		noun = noun || role == chooseNoun
		verb = verb || role == chooseVerb || w == "go" && (l.Word(end+1) == "with" || l.Word(end+1) == "for")
		among = among || (w == "take" || w == "choose" || w == "pick") && l.endsWithOrdinal(end+1)
		among = among || w == "of" && (l.Word(end+1) == "those" || l.Word(end+1) == "these" || l.Word(end+1) == "your")
		among = among || w == "one" && end > i && measure.Ordinals[l.Word(end-1)] > 0
	}
	if n == 0 || !noun && !point && !(verb && among) {
		return i
	}
	if noun && !verb && !point && !l.politeChoice(i, end) {
		return i // "the second way" alone is none
	}
	if next := l.notOthers(end); next > end {
		end = next
	}
	end = l.choiceMeant(end)
	t := l.add(lexicon.Cmd, i, end)
	t.Found, t.Text = []lexicon.Found{{Entry: takeWay}}, "take"
	a := measure.Amount{Number: measure.Number{Val: exact.Int(n)}}
	l.add(lexicon.Num, end-1, end).Amt = &a
	return end
}

// ManyChoices are what is chosen among, several of them.
var ManyChoices = scan.WordSet("ways options choices fixes suggestions solutions alternatives possibilities remedies changes ideas proposals ones")

// pastHousehold steps over whose choice it is: "ok boss picked", "my wife likes".
func (l *lexing) pastHousehold(i int) int {
	j := i
	for w := l.Word(j); w == "ok" || w == "okay" || w == "well" || w == "so" || w == "my" || w == "the" || w == "our"; w = l.Word(j) {
		j++
	}
	if Household[l.Word(j)] && chooseWords[l.Word(j+1)] == chooseVerb {
		return j + 1
	}
	return i
}

// onList stand before the list that something is chosen from: "the third one on your list".
var onList = scan.WordSet("on from of off in")

// choiceEnds reports whether what is said of a choice ends before atom i.
func choiceEnds(l *lexing, i int) bool {
	switch w := l.Word(i); w {
	case ",", ".", ";", "!", "-", "--", ":":
		return true
	case "and", "but", "so", "then":
		return l.commandAt(i+1) || l.Word(i+1) == "not" || w == "so"
	}
	return false
}

// notOthers steps over "and not his" after what is chosen.
func (l *lexing) notOthers(i int) int {
	for l.Word(i) == "," || l.Word(i) == "and" {
		i++
	}
	if l.Word(i) != "not" {
		return 0
	}
	switch l.Word(i + 1) {
	case "his", "hers", "theirs", "mine", "that":
		if w := l.Word(i + 2); w == "" || w == "." || w == "," {
			return i + 2
		}
	}
	return 0
}

// endsWithOrdinal reports whether nothing but a place stands from atom i on: "we'll take the second".
func (l *lexing) endsWithOrdinal(i int) bool {
	if l.Word(i) == "the" || l.Word(i) == "your" {
		i++
	}
	_, ordinal := l.choiceNumber(i)
	return ordinal && (i+1 == len(l.Atoms) || l.Kind(i+1) == scan.Sign || l.Word(i+1) == "please" || l.Word(i+1) == "then")
}

// choiceMeant steps over what only says once more that something is chosen: "…, can we use that".
func (l *lexing) choiceMeant(end int) int {
	i := end
	for l.Word(i) == "," || l.Word(i) == "." || l.Word(i) == "and" || l.Word(i) == "so" || l.Word(i) == ";" || l.Word(i) == "-" {
		i++
	}
	for chooseWords[l.Word(i)] == chooseIdle && l.Word(i) != "that" && l.Word(i) != "it" && l.Word(i) != "one" && l.Word(i) != "go" {
		i++
	}
	if chooseWords[l.Word(i)] != chooseVerb && l.Word(i) != "go" {
		return end
	}
	i++
	if l.Word(i) == "with" || l.Word(i) == "for" || l.Word(i) == "on" {
		i++
	}
	if w := l.Word(i); w != "that" && w != "it" && w != "this" {
		return end
	}
	if i++; l.Word(i) == "one" {
		i++
	}
	if w := l.Word(i); w == "please" || w == "then" || w == "instead" {
		i++
	}
	if w := l.Word(i); w != "" && w != "." && w != "?" && w != "!" {
		return end
	}
	return i
}

// choiceNumber returns the number of a way out at atom i, and whether it is told as a place.
func (l *lexing) choiceNumber(i int) (n int, ordinal bool) {
	if n := measure.Ordinals[l.Word(i)]; n > 0 {
		return n, true
	}
	if l.Kind(i) == scan.Digits {
		if n, ok := measure.Atoi(l.Word(i)); ok && n < 20 && n > 0 && !(i+1 < len(l.Atoms) && l.Glued(i+1) && l.Word(i+1) != "." && l.Word(i+1) != ",") {
			return n, false
		}
		return 0, false
	}
	if n := scan.Ones[l.Word(i)]; n > 0 && n < 13 && l.Word(i) != "to" && l.Word(i) != "for" {
		return n, false
	}
	return 0, false
}

// politeChoice reports whether a word between two atoms wishes, where no verb does: "your first idea please".
func (l *lexing) politeChoice(i, end int) bool {
	for ; i < end; i++ {
		switch l.Word(i) {
		case "please", "it", "go", "let", "give":
			return true
		}
	}
	return false
}
