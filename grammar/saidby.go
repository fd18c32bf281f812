package grammar

import "strings"

// Whoever says something claims it, and nobody can list all who do: "the homeowners' association claims …", "this napkin
// sketch's got …", "old hand tells me …". Verbs that only a speaker or a paper can have tell of a claim by themselves; what a
// paper has or shows, and whom no table knows, tells of one where its last word names a paper.

// saying are verbs that only somebody, or something written, can have.
var saying = wordSet("says said claims claimed insists insisted reckons reckoned swears swore maintains maintained asserts asserted believes believed states stated argues argued contends alleges alleged thinks bets bet wagers vows guesses")

// sayAll are the same of several.
var sayAll = wordSet("say claim insist reckon swear maintain assert believe state argue think")

// tellings are verbs of saying that need somebody who is told.
var tellings = wordSet("tells told assures assured promises promised informs informed advises advised")

// speechless are nouns and pronouns whose saying is no claim: tools that measure, oneself, nobody, and words that ask.
var speechless = wordSet(`
	i we you he she they it that this which what who whoever whatever if when where why how as like than because since so and but or not no never nobody nothing none neither anyone anybody
	tape tapes rule ruler level laser yardstick caliper calipers gauge square measure measurement measurements reading gut heart head brain instinct experience memory conscience
	would could should will can may might must do does did have is are was were be been let make keep set put take give want wants need needs
`)

// saidBySomeone reads whoever says something at the beginning of a part of the line, with the verb. It returns the atom after
// them, and i where nobody does.
func (l *lexing) saidBySomeone(i int) int {
	if t := l.last(); l.before != "" && !joints[l.before] || t != nil && t.kind != kComma && t.kind != kStop && t.kind != kQMark && t.kind != kAnd && t.kind != kBut {
		return i
	}
	j := i
	if w := l.word(j); vocab().articles[w] || owned[w] || w == "this" || w == "that" || w == "one" || w == "another" || w == "some" {
		j++
	}
	from := j
	for ; j < len(l.atoms) && j < from+7; j++ {
		w := l.word(j)
		if j > from && l.verbOfSaying(from, j) {
			break
		}
		if w == "'s" || w == "'" || inPlace[w] && j > from || w == "-" && l.glued(j) && l.glued(j+1) {
			continue
		}
		if vocab().articles[w] || owned[w] {
			if j == from || !inPlace[l.word(j-1)] {
				return i // "on the gap my dad says 2"
			}
			continue
		}
		if w == "i" || l.kind(j) != aWord || l.ofClass(j, "BRACKET") || speechless[w] || words().numberish(w) || joints[w] {
			return i
		}
	}
	if j == from || j >= len(l.atoms) || j >= from+7 || inPlace[l.word(from)] || l.partIn(from) {
		return i
	}
	end := l.pastVerb(j)
	if end >= len(l.atoms) || l.headReaches(i, from, end) {
		return i
	}
	l.add(kHead, i, end).found = []found{{entry: claimHead}}
	return end
}

// inPlace are words by which a speaker, or a paper, is told from others: "the label on the brackets says".
var inPlace = wordSet("of on from at by in with behind for to under over about off near")

// partIn reports whether a part of the wall, told by where it is, begins at an atom: "the opening on the plan says 36".
func (l *lexing) partIn(i int) bool {
	f := vocab().match(l.reader.atoms, i)
	return len(f) > 0 && (f[0].entry.kind == kPart || f[0].entry.kind == kLoc) && inPlace[l.word(f[0].next)]
}

// verbOfSaying reports whether atom j is a verb of saying whose subject stands from atom from on.
func (l *lexing) verbOfSaying(from, j int) bool {
	w := l.word(j)
	switch {
	case saying[w]:
		return true
	case sayAll[w] && j > from && strings.HasSuffix(l.word(j-1), "s") && !strings.HasSuffix(l.word(j-1), "'s") && (vocab().articles[l.word(from-1)] || owned[l.word(from-1)] || l.word(from-1) == "some"):
		return true // "the old timers claim"
	case tellings[w]:
		return l.word(j+1) == "me" || l.word(j+1) == "us"
	case !l.ofClass(j-1, "PAPER"):
		return false
	case w == "'s":
		return l.word(j+1) == "got" || l.word(j+1) == "saying" || l.word(j+1) == "showing"
	}
	return w == "calls" && l.word(j+1) == "for" || (l.ofClass(j, "SHOWS") || l.ofClass(j, "DRAWS")) && (strings.HasSuffix(w, "s") || w == "had" || w == "got") && !l.ofClass(j, "PAPER")
}

// pastVerb steps over a verb of saying and what goes with it: "tells me that".
func (l *lexing) pastVerb(j int) int {
	j++
	switch l.word(j) {
	case "me", "us", "got", "saying", "showing", "for":
		j++
	}
	if l.word(j) == "that" && l.word(j+1) != "is" {
		j++
	}
	if l.word(j) == "to" && cutWord(l.word(j+1)) {
		j += 2 // "an old hand tells me to cut them a quarter short"
	}
	return j
}

// ofClass reports whether the word at an atom is one of a class.
func (l *lexing) ofClass(i int, name string) bool {
	id := vocab().ids[name]
	for _, c := range vocab().classes[l.word(i)] {
		if c == id {
			return true
		}
	}
	return false
}

// headReaches reports whether the tables read the same words as the beginning of something by themselves.
func (l *lexing) headReaches(i, from, end int) bool {
	for j := i; j <= from; j++ {
		if j > i && !vocab().neutral[l.word(i)] {
			return false // "some website says"
		}
		f := vocab().match(l.reader.atoms, j)
		if len(f) > 0 && f[0].next >= end-1 && f[0].next > from+1 {
			return true
		}
	}
	return false
}

// wantsForAll takes what somebody wants for the lot for what they quote: "the yard wants 298.40 for the lot".
func wantsForAll(in []atom) []atom {
	for i := 1; i+2 < len(in); i++ {
		who := i - 1
		if w := in[who].text; (w == "is" || w == "are" || w == "was" || w == "'s" || w == "were") && who > 0 {
			who--
		}
		if !asksPrice[in[i].text] || !isPerson(in[who].text) && in[who].text != "he" && in[who].text != "she" && in[who].text != "they" {
			continue
		}
		next := i + 1
		if in[next].text == "me" || in[next].text == "us" {
			next++
		}
		if in[next].text == "$" {
			next++
		}
		if in[next].kind != aDigits && units[in[next].text] == 0 && !words().numberish(in[next].text) {
			continue
		}
		for j := next + 1; j+1 < len(in) && !breaksClause(in, j); j++ {
			if in[j].text != "for" {
				continue
			}
			if n := forAll(in[j+1:]); n > 0 {
				out := append([]atom{}, in[:j]...)
				out[i].text = "quotes"
				return append(out, in[j+1+n:]...)
			}
		}
	}
	return in
}

var asksPrice = wordSet("wants want wanted asks asked asking charging charges charged charge")

// forAll reports how many words at the beginning of a stretch name all there is to buy: 0 where they do not.
func forAll(in []atom) int {
	for _, t := range [][]string{{"the", "whole", "lot"}, {"the", "lot"}, {"everything"}, {"it", "all"}, {"the", "whole", "thing"}, {"the", "whole", "order"}, {"all", "of", "it"}, {"the", "whole", "job"}, {"the", "whole", "works"}} {
		same := len(in) >= len(t)
		for k := 0; same && k < len(t); k++ {
			same = in[k].text == t[k]
		}
		if same {
			return len(t)
		}
	}
	return 0
}
