package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// That the rule about guards is to be set aside is said in many ways, often in several breaths: "the guard thing's
// settled with the inspector, so quit holding us up on it". What is said of it is heard as a whole: every word of it must be
// one that can be said of that matter, and one of them must settle it or wave it off.

// setAsideGuard is the command that it comes to.
var setAsideGuard = &lexicon.Entry{Kind: lexicon.Cmd, Key: "set aside guard"}

// guardWords are the words that can be said of the guard, by what they do.
var guardWords = func() map[string]guardWord {
	m := map[string]guardWord{}
	for role, list := range map[guardWord]string{
		guardIdle: `the a an my our his her their that this it its we i you me us they he she them inspector inspectors county city town council village township state building
			department office official officials authorities permit permits code rule rules limit limits thing things stuff business question issue matter matters requirement requirements
			check height part bit warning warnings caution cautions point topic architect engineer boss people fellow guy man folks lady woman neighbor contractor board committee
			now already all with by on off about over of for from and so but too well please just kindly go ahead can could may would yes yeah yep yup ok okay right sure alright
			know knew aware heard said says told so realize realise understand realized understood appreciate gather see saw am are is was were has had have got been both long ago last week month year today yesterday once then there separate separately different own other
			school hoa association landlord landlady client customer zoning church county homeowners him her his hers
			railing railings rail rails handrail handrails up side one put set lay laid leave left hear hey look listen 's what here w / dept me myself ourselves being as in person writing do does
			through hashed thrashed worked figured talked spoke spoken gone went conversation chat word
			under variance exemption waiver since because anyway anyhow mind let any more longer anymore
			carry proceed continue move along further
			item items finding findings comment comments clause section provision provisions owner owners contractor file paper writing letter
			again ever either further anytime
			proper real solid already there offices bureau inspection commission agency folks behind outside exists stands stand beyond standing`,
		guardHeld:  "design layout plan wall job project order work progress build",
		guardNamed: "guard guards guardrail guardrails",
		guardDone: `settled sorted handled cleared approved signed resolved agreed okayed waived addressed dealt taken squared ironed seen
			resolved closed satisfied
			done finished covered excused exempted exempt granted accepted fine happy aside arranged straightened discussed`,
		guardWaved: "skip ignore forget drop waive disregard overrule override bypass dismiss scratch pass",
		guardFuss: `worry worrying fuss fussing nag nagging hold holding block blocking bother bothering warn warning remind reminding bug bugging stopping complain complaining
			ask asking talk talking yell yelling shout shouting holler hollering fussin naggin botherin harp harping fret fretting flag flagging refuse refusing balk balking pester pestering hassle hassling whine whining bring bringing mention mentioning
			problem problems trouble obstacle hurdle nuisance hinder hindering spoil ruin
			apply applies matter needed required necessary concern concerns keep keeping going need needs`,
		guardNo: "not never no quit stop without cease",
	} {
		for _, w := range strings.Fields(list) {
			if _, twice := m[w]; !twice || role == guardFuss {
				m[w] = role
			}
		}
	}
	delete(m, "matter") // "the guard matter", and "does not matter"
	m["matter"], m["warning"] = guardIdle, guardFuss
	return m
}()

// guardWord is what a word does where the guard is spoken of.
type guardWord uint8

const (
	guardIdle  guardWord = iota + 1
	guardHeld            // what is held up over it
	guardNamed           // the guard itself
	guardDone            // it is settled
	guardWaved           // it is waved off
	guardFuss            // what is done about it, and shall not be
	guardNo
)

// guarded reads all that is said of the guard from atom i on, where it is to be set aside. It returns the atom after it, and i
// where anything else may be meant.
func (l *lexing) guarded(i int) int {
	if t := l.last(); l.before != "" || t != nil && !l.breaks(*t) && t.Kind != lexicon.Comma {
		return i
	}
	if l.asksOfGuard(i) {
		return i
	}
	named, settled, end := false, false, i
	for j := i; j < len(l.Atoms); {
		next := l.guardPart(j)
		here, does, ok := l.saidOfGuard(j, next)
		if !ok || next < len(l.Atoms) && l.Word(next) == "?" {
			break
		}
		named, settled = named || here, settled || does
		end = next
		for j = next; j < len(l.Atoms) && guardBreak(l.Word(j)); j++ {
		}
		if j == next && j < len(l.Atoms) && l.Word(j) == "?" {
			break
		}
	}
	if !named || !settled {
		return i
	}
	t := l.add(lexicon.Cmd, i, end)
	t.Found = []lexicon.Found{{Entry: setAsideGuard}}
	return end
}

// guardBreak reports whether a word or a sign parts what is said of the guard.
func guardBreak(w string) bool {
	switch w {
	case ",", ".", ";", "!", "-", "--", ":", "and", "so", "but", "then", "(", ")":
		return true
	}
	return false
}

// guardPart returns the atom at which the part that begins at i ends.
func (l *lexing) guardPart(i int) int {
	from := i
	for i < len(l.Atoms) && !guardBreak(l.Word(i)) && l.Word(i) != "?" {
		if w := l.Word(i); i > from && (w == "i" || w == "we" || w == "that" || w == "it") && (l.Word(i-1) == "more" || l.Word(i-1) == "anymore" || l.Word(i-1) == "longer") {
			break // "no more I already settled that"
		}
		i++
	}
	return i
}

// asksOfGuard reports whether a question begins at atom i: "is the guard settled", "do I need a guard".
func (l *lexing) asksOfGuard(i int) bool {
	next := l.Word(i + 1)
	switch l.Word(i) {
	case "is", "are", "was", "were", "did", "does", "should", "must", "will", "what", "why", "how", "when", "who", "where", "which":
		return true
	case "has", "have", "had":
		return scan.Subjects[next] || next == "you"
	case "do":
		return next != "not"
	case "can", "could", "would", "may":
		return next != "you" && !((next == "we" || next == "i") && guardWords[l.Word(i+2)] == guardWaved)
	}
	return false
}

// saidOfGuard reports whether the part between two atoms can be said of the guard: whether it names it, and whether it settles
// it or waves it off.
func (l *lexing) saidOfGuard(i, end int) (named, settled, ok bool) {
	no, fuss, does, held := false, false, false, false
	for j := i; j < end; j++ {
		w, before, after := l.Word(j), l.Word(j-1), l.Word(j+1)
		role := guardWords[w]
		switch {
		case w == "to" && (before == "seen" || before == "talked" || before == "spoken" || before == "spoke" || after == "one" || guardWords[after] == guardFuss || after == "me" || after == "us"), w == "care" && before == "taken", w == "away" && before == "squared":
			role = guardIdle
		case w == "stop" && no && l.letsNot(i, j):
			role = guardFuss // "please don't let it stop the plan"
		case w == "matter" && before == "not":
			role = guardFuss
		case w == "never" && after == "mind":
			role = guardWaved
		case w == "would" && (before == "ok" || before == "okay"), w == "out" && l.leavesOut(i, j), w == "alone" && l.leavesOut(i, j), w == "slide" && l.leavesOut(i, j), (w == "ok" || w == "okay") && (before == "is" || before == "are" || after == "on" || after == "with"):
			role = guardDone // "ok'd"
		case w == "out" && guardWords[before] == guardDone, w == "on" && before == "going", w == "out" && (before == "it" || before == "that" || before == "talked"):
			role = guardIdle
		case w == "ruled" && (after == "on" || after == "about"), w == "out" && l.hashesOut(i, j):
			role = guardDone
		case w == "be" && (before == "it" || before == "that") && l.Word(j-2) == "leave", (w == "it" || w == "that") && after == "be" && before == "let", w == "be" && before == "guard" && l.leavesOut(i, j):
			role = guardDone // "leave it be"
		case w == "side" && before == "one" && l.Word(j-2) == "to":
			role = guardDone
		case w == "be" && role == 0:
			role = guardIdle
		}
		switch role {
		case 0:
			return false, false, false
		case guardHeld:
			held = true
		case guardNamed:
			named = true
		case guardNo:
			no = true
		case guardFuss:
			fuss = true
		case guardDone, guardWaved:
			does = true
		}
	}
	if no != fuss || no && does || held && !fuss {
		return named, false, false // "don't skip the guard", "I worry about the guard"
	}
	return named, no || does, end > i
}

// hashesOut reports whether the word at atom j ends "hashed the guard out".
func (l *lexing) hashesOut(i, j int) bool {
	for ; i < j; i++ {
		switch l.Word(i) {
		case "hashed", "thrashed", "worked", "sorted", "ironed", "straightened", "figured", "talked":
			return true
		}
	}
	return false
}

// leavesOut reports whether the word at atom j ends a wish to leave something out: "leave the guard out of it".
func (l *lexing) leavesOut(i, j int) bool {
	for ; i < j; i++ {
		switch l.Word(i) {
		case "leave", "let", "left":
			return true
		}
	}
	return false
}

// letsNot reports whether a "let" stands before atom j in its part, by which a "stop" is no denial.
func (l *lexing) letsNot(i, j int) bool {
	for ; i < j; i++ {
		if l.Word(i) == "let" || l.Word(i) == "have" {
			return true
		}
	}
	return false
}
