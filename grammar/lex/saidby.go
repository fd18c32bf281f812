package lex

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// Whoever says something claims it, and nobody can list all who do: "the homeowners' association claims …", "this napkin
// sketch's got …", "old hand tells me …". Verbs that only a speaker or a paper can have tell of a claim by themselves; what a
// paper has or shows, and whom no table knows, tells of one where its last word names a paper.

// Saying are verbs that only somebody, or something written, can have.
var Saying = scan.WordSet("says said claims claimed insists insisted reckons reckoned swears swore maintains maintained asserts asserted believes believed states stated argues argued contends alleges alleged thinks bets bet wagers vows guesses")

// SayAll are the same of several.
var SayAll = scan.WordSet("say claim insist reckon swear maintain assert believe state argue think")

// Tellings are verbs of saying that need somebody who is told.
var Tellings = scan.WordSet("tells told assures assured promises promised informs informed advises advised")

// speechless are nouns and pronouns whose saying is no claim: tools that measure, oneself, nobody, and words that ask.
var speechless = scan.WordSet(`
	i we you he she they it that this which what who whoever whatever if when where why how as like than because since so and but or not no never nobody nothing none neither anyone anybody
	tape tapes rule ruler level laser yardstick caliper calipers gauge square measure measurement measurements reading gut heart head brain instinct experience memory conscience
	would could should will can may might must do does did have is are was were be been let make keep set put take give want wants need needs
`)

// saidBySomeone reads whoever says something at the beginning of a part of the line, with the verb. It returns the atom after
// them, and i where nobody does.
func (l *lexing) saidBySomeone(i int) int {
	if t := l.last(); l.before != "" && !chunk.Joints[l.before] || t != nil && t.Kind != lexicon.Comma && t.Kind != lexicon.Stop && t.Kind != lexicon.QMark && t.Kind != lexicon.And && t.Kind != lexicon.But {
		return i
	}
	j := i
	if w := l.Word(j); lexicon.Vocab().Articles[w] || Owned[w] || w == "this" || w == "that" || w == "one" || w == "another" || w == "some" {
		j++
	}
	from := j
	for ; j < len(l.Atoms) && j < from+7; j++ {
		w := l.Word(j)
		if j > from && l.verbOfSaying(from, j) {
			break
		}
		if w == "'s" || w == "'" || inPlace[w] && j > from || w == "-" && l.Glued(j) && l.Glued(j+1) {
			continue
		}
		if lexicon.Vocab().Articles[w] || Owned[w] {
			if j == from || !inPlace[l.Word(j-1)] {
				return i // "on the gap my dad says 2"
			}
			continue
		}
		if w == "i" || l.Kind(j) != scan.Word || l.ofClass(j, "BRACKET") || speechless[w] || Words().Numberish(w) || chunk.Joints[w] {
			return i
		}
	}
	if j == from || j >= len(l.Atoms) || j >= from+7 || inPlace[l.Word(from)] || l.partIn(from) {
		return i
	}
	end := l.pastVerb(j)
	if end >= len(l.Atoms) || l.headReaches(i, from, end) {
		return i
	}
	l.add(lexicon.Head, i, end).Found = []lexicon.Found{{Entry: claimHead}}
	return end
}

// inPlace are words by which a speaker, or a paper, is told from others: "the label on the brackets says".
var inPlace = scan.WordSet("of on from at by in with behind for to under over about off near")

// partIn reports whether a part of the wall, told by where it is, begins at an atom: "the opening on the plan says 36".
func (l *lexing) partIn(i int) bool {
	f := lexicon.Vocab().Match(l.Reader.Atoms, i)
	return len(f) > 0 && (f[0].Entry.Kind == lexicon.Part || f[0].Entry.Kind == lexicon.Loc) && inPlace[l.Word(f[0].Next)]
}

// verbOfSaying reports whether atom j is a verb of saying whose subject stands from atom from on.
func (l *lexing) verbOfSaying(from, j int) bool {
	w := l.Word(j)
	switch {
	case Saying[w]:
		return true
	case SayAll[w] && j > from && strings.HasSuffix(l.Word(j-1), "s") && !strings.HasSuffix(l.Word(j-1), "'s") && (lexicon.Vocab().Articles[l.Word(from-1)] || Owned[l.Word(from-1)] || l.Word(from-1) == "some"):
		return true // "the old timers claim"
	case Tellings[w]:
		return l.Word(j+1) == "me" || l.Word(j+1) == "us"
	case !l.ofClass(j-1, "PAPER"):
		return false
	case w == "'s":
		return l.Word(j+1) == "got" || l.Word(j+1) == "saying" || l.Word(j+1) == "showing"
	}
	return w == "calls" && l.Word(j+1) == "for" || (l.ofClass(j, "SHOWS") || l.ofClass(j, "DRAWS")) && (strings.HasSuffix(w, "s") || w == "had" || w == "got") && !l.ofClass(j, "PAPER")
}

// pastVerb steps over a verb of saying and what goes with it: "tells me that".
func (l *lexing) pastVerb(j int) int {
	j++
	switch l.Word(j) {
	case "me", "us", "got", "saying", "showing", "for":
		j++
	}
	if l.Word(j) == "that" && l.Word(j+1) != "is" {
		j++
	}
	if l.Word(j) == "to" && CutWord(l.Word(j+1)) {
		j += 2 // "an old hand tells me to cut them a quarter short"
	}
	return j
}

// ofClass reports whether the word at an atom is one of a class.
func (l *lexing) ofClass(i int, name string) bool {
	id := lexicon.Vocab().Ids[name]
	for _, c := range lexicon.Vocab().Classes[l.Word(i)] {
		if c == id {
			return true
		}
	}
	return false
}

// headReaches reports whether the tables read the same words as the beginning of something by themselves.
func (l *lexing) headReaches(i, from, end int) bool {
	for j := i; j <= from; j++ {
		if j > i && !lexicon.Vocab().Neutral[l.Word(i)] {
			return false // "some website says"
		}
		f := lexicon.Vocab().Match(l.Reader.Atoms, j)
		if len(f) > 0 && f[0].Next >= end-1 && f[0].Next > from+1 {
			return true
		}
	}
	return false
}

// WantsForAll takes what somebody wants for the lot for what they quote: "the yard wants 298.40 for the lot".
func WantsForAll(in []scan.Atom) []scan.Atom {
	for i := 1; i+2 < len(in); i++ {
		who := i - 1
		if w := in[who].Text; (w == "is" || w == "are" || w == "was" || w == "'s" || w == "were") && who > 0 {
			who--
		}
		if !asksPrice[in[i].Text] || !chunk.IsPerson(in[who].Text) && in[who].Text != "he" && in[who].Text != "she" && in[who].Text != "they" {
			continue
		}
		next := i + 1
		if in[next].Text == "me" || in[next].Text == "us" {
			next++
		}
		if in[next].Text == "$" {
			next++
		}
		if in[next].Kind != scan.Digits && scan.Ones[in[next].Text] == 0 && !Words().Numberish(in[next].Text) {
			continue
		}
		for j := next + 1; j+1 < len(in) && !chunk.BreaksClause(in, j); j++ {
			if in[j].Text != "for" {
				continue
			}
			if n := forAll(in[j+1:]); n > 0 {
				out := append([]scan.Atom{}, in[:j]...)
				out[i].Text = "quotes"
				return append(out, in[j+1+n:]...)
			}
		}
	}
	return in
}

var asksPrice = scan.WordSet("wants want wanted asks asked asking charging charges charged charge")

// forAll reports how many words at the beginning of a stretch name all there is to buy: 0 where they do not.
func forAll(in []scan.Atom) int {
	for _, t := range [][]string{{"the", "whole", "lot"}, {"the", "lot"}, {"everything"}, {"it", "all"}, {"the", "whole", "thing"}, {"the", "whole", "order"}, {"all", "of", "it"}, {"the", "whole", "job"}, {"the", "whole", "works"}} {
		same := len(in) >= len(t)
		for k := 0; same && k < len(t); k++ {
			same = in[k].Text == t[k]
		}
		if same {
			return len(t)
		}
	}
	return 0
}
