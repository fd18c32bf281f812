package lex

import (
	"regexp"
	"slices"
	"strings"
	"sync"

	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
	"saywright/grammar/ways"
)

// Plans that are opened or copied by what they are called, wherever the name stands in the sentence: "may I see the plan called
// cottage again", "pull up the patio one", "use the north wall's numbers here too".

// planWay is one such sentence: the name is what its first group matches.
type planWay struct {
	key  string
	way  *regexp.Regexp
	verb map[string]bool // words one of which is in it: without any, it is not looked at
	bare bool            // the name must be a word that means nothing else
}

var planWays = sync.OnceValue(func() []planWay {
	const (
		noun  = `(?:plan|one|version|design|layout|wall|sketch|job|file|setup|project|thing)`
		kinds = `(?:plan|one|version|design|layout|sketch|job|file|setup|project)`
		name  = `([a-z][a-z0-9]*(?: [a-z0-9]+){0,3}?)`
		as    = `(?:(?:that|which) )?(?:(?:i|we|you) )?(?:have )?(?:saved|called|named|stored|filed|kept|labeled|labelled|titled|stashed)(?: it| away)?(?: (?:as|under|by))?(?: the name)?(?: of)?`
		fetch = `(?:open|open up|load|load up|reopen|pull up|pull out|pull back up|bring up|bring back|bring out|call up|call back up|fetch|dig up|dig out|get back|get back to|get out|go back to|recall|restore|retrieve|switch to|switch back to|switch over to|return to|take me back to)`
		show  = `(?:show|see|have|get|give|look at|have a look at|take a look at|find|view|put up|work on|continue with|continue)`
		again = `(?: (?:again|back|up|out|back up|back out|here|now|once more|one more time|a second time|on screen))*`
		mine  = `(?:(?:the|that|my|our|this) )?`
		end   = `(?: for (?:me|us))?(?: ,)?(?: (?:please|thanks|thank you))*($| (?:and|then|but|so) | , )`
		lead  = `^(?:(?:please|now|ok|so|then|well|yeah|hey|can|could|may|might|would|will|you|i|we|let|me|us|want|to|love|like|just|,) )*?`
		same  = ` (?:numbers|measurements|dimensions|setup|figures|settings|sizes|values)(?: (?:here|too|again|as well|also|over here|for this (?:one|wall)|on this (?:one|wall)))*`
	)
	way := func(key, verbs, re string, bare bool) planWay {
		return planWay{key: key, verb: scan.WordSet(verbs), bare: bare, way: regexp.MustCompile(lead + re + end)}
	}
	const kindWords = "plan one version design layout sketch job file setup project"
	return []planWay{
		way("open", "saved called named stored filed kept labeled labelled titled stashed", `(?:`+fetch+`|`+show+`)(?: me| us)?(?: up| back| out)? (?:the|that|my|our) (?:saved )?`+noun+` `+as+` `+name+again, false),
		way("open", kindWords, fetch+` (?:the|that|my|our) (?:saved )?`+name+` `+kinds+again, false),
		way("open", kindWords, `(?:bring|get|pull|call|have|fetch)(?: me| us)? (?:the|that|my|our) `+name+` `+kinds+` (?:back|up|back up|back out)`+again, false),
		way("open", "bring get pull call", `(?:bring|get|pull|call)(?: me| us)? `+mine+name+` (?:back up|back out|back|up again|up)`+again, true),
		way("open", "again", `(?:`+fetch+`|`+show+`)(?: me| us)? `+mine+`(?:saved )?`+name+`(?: `+kinds+`)? again`, true),
		way("same as", "numbers measurements dimensions setup figures settings sizes values", `(?:use|copy|take|reuse|apply|borrow|repeat|carry over|bring over)(?: all)? (?:the )?((?:[a-z]+ )?wall|[a-z]+) 's(?: same)?`+same, false),
	}
})

// planWords are the words one of which is in any of those sentences.
var planWords = sync.OnceValue(func() map[string]bool {
	all := map[string]bool{}
	for _, w := range planWays() {
		for verb := range w.verb {
			all[verb] = true
		}
	}
	return all
})

// planSaid reads a plan that is opened at the beginning of a sentence, or a wall that is copied. It returns the atom after it,
// and i where there is none.
func (l *lexing) planSaid(i int) int {
	if t := l.last(); l.before != "" || t != nil && t.Kind != lexicon.Stop && t.Kind != lexicon.QMark && t.Kind != lexicon.And && t.Kind != lexicon.Comma {
		return i
	}
	end := l.sentenceEnd(i)
	if !l.holdsWord(i, end, planWords()) {
		return i
	}
	said, at := l.sentence(i)
	for _, w := range planWays() {
		if !l.holdsWord(i, end, w.verb) {
			continue
		}
		if !ways.MayMatch(w.way, said) {
			continue
		}
		m := w.way.FindStringSubmatchIndex(said)
		if m == nil {
			continue
		}
		name := strings.TrimSuffix(strings.TrimPrefix(said[m[2]:m[3]], "the "), " 's")
		if !l.mayName(name, w) {
			continue
		}
		n, _ := slices.BinarySearch(at, m[4])
		end = i + n
		t := l.add(lexicon.Cmd, i, end)
		t.Found, t.Text = []lexicon.Found{{Entry: &lexicon.Entry{Kind: lexicon.Cmd, Key: w.key}}}, w.key
		l.add(lexicon.Name, end-1, end).Text = name
		return end
	}
	return i
}

// sentence is what is said from atom i up to the end of its sentence, and where in it each atom begins.
func (l *lexing) sentence(i int) (said string, at []int) {
	end := l.sentenceEnd(i)
	for k := i; k < end; k++ {
		at = append(at, len(l.spaced(i, k))+min(k-i, 1))
	}
	return l.spaced(i, end), at
}

// SentenceEnd is where the sentence at atom i ends, as far as plans are looked for in it.
func (l *lexing) sentenceEnd(i int) int {
	end := i
	for end < len(l.Atoms) && end < i+40 && l.Word(end) != "." && l.Word(end) != "?" && l.Word(end) != "!" {
		end++
	}
	return end
}

// HoldsWord reports whether one of some words stands among the atoms from i to end.
func (l *lexing) holdsWord(i, end int, words map[string]bool) bool {
	for ; i < end; i++ {
		if words[l.Word(i)] {
			return true
		}
	}
	return false
}

// mayName reports whether a plan can be called so, or a wall. A bare name is no word of any table, and no misspelling of one.
func (l *lexing) mayName(name string, w planWay) bool {
	if slices.ContainsFunc(append(append([]string{}, l.c.Saved...), l.c.Walls...), func(s string) bool { return strings.EqualFold(s, name) }) {
		return true
	}
	if w.key == "same as" {
		return strings.HasSuffix(name, " wall")
	}
	if name == "" || Nameless(name) || name != "mine" && name != "ours" && l.namesPart(name) {
		return false
	}
	for _, word := range strings.Fields(name) {
		if word == "and" || word == "with" || w.bare && !ForeignWord(word) {
			return false
		}
	}
	return true
}
