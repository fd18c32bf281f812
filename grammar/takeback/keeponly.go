package takeback

import (
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/lexicon"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
)

// All that was said is to be forgotten but for what is named: "everything except the gap can go", "nothing but the wall height should be
// kept", "I want to start fresh but leave the rail size in", "the gap stays, the rest can go".

// keepVerbs tell that something stays.
var keepVerbs = []lexicon.Entry{
	{Kind: lexicon.Cmd, Key: "verb", Ways: `
		(keep|leave|hold|hold on to|hang on to|hold onto|hang onto|save|spare|preserve|retain|stick with|stay with|do keep|not touch|do not touch|not forget|do not forget|leave in|leave alone)`},
}

var stayEnds = []lexicon.Entry{
	{Kind: lexicon.ForgetTail, Key: "end", Ways: `
		[(can|may|should|must|has to|have to|is to|are to|needs to|ought to|will|shall)] (stay|stays|remain|remains|stand|stands|hold|holds|survive|survives|be kept|be left|be saved|be retained|keep|count|counts) [(in|put|on|as it is|as is|the way it is|alone|there)]
		(is|are) (staying|to stay|to be kept|fine|right|good|ok|the only thing [that] (stays|counts|(is|was) right|(i|we) (want|need|care about) [kept] [to keep]|to keep|worth keeping)|all [that] (stays|counts|(i|we) (want|need|care about|am keeping|are keeping) [kept] [to keep]))
		(is|are) the only (thing|figure|number|one|part|bit|value|thing here|ones|things|figures|numbers) [(that|which)] (i|we) (am|are|feel|have|was|were|had) [(really|quite|absolutely|all|dead)] (sure|certain|happy|settled|confident|settled on|decided|decided on|agreed|agreed on|measured) [(of|about|on|with|in)]
		(is|are) the only (thing|figure|number|one|part|bit|value|thing here|ones|things|figures|numbers) [(that|which)] (i|we) (trust|believe|know|believe in|like)
		(is|are) all [that] (i|we) (am|are) (sure|certain) (of|about)
		(in|as it is|as is|the way it is|alone|there|please|only)`},
}

// restWords are all that is not named.
var restWords = []lexicon.Entry{
	{Kind: lexicon.Cmd, Key: "rest", Ways: `
		[all] [(of)] (the rest|the others|the other (ones|things|numbers|figures|stuff)|everything else|all else|anything else|all (other|the other) (things|numbers|figures|stuff)|whatever else [there is]|the remainder|the remaining (ones|things|numbers|figures)) [(of it|of them|(i|we) SAID [you]|that (i|we) SAID [you])]`},
}

// allWords are all that was said.
var allWords = []lexicon.Entry{
	{Kind: lexicon.Cmd, Key: "all", Ways: `
		(everything|it all|all|all of it|all of that|all of this|all this|all that|the lot|the whole lot|the whole thing|anything|whatever|the rest|all the rest|the whole works|every (thing|figure|number|bit)|all the (numbers|figures|things|stuff)|what) [(that)] [(i|we)] [(have|had)] [SAID] [you] [(so far|up to now|until now|earlier|before|today)] [(out|away|off|go|down)]`},
}

var butFor = []lexicon.Entry{
	{Kind: lexicon.But, Key: "but", Ways: `
		(except|excepting|but|bar|barring|save|besides|excluding|minus|other than|apart from|aside from|except for|save for|but for|but not|not|and not|and keep|but keep|only keep|and only keep|but only keep|and only leave|and just leave|with the exception of|and just keep|but leave|leaving|and leave|short of|outside of)`},
}

// allGoes tell that all is forgotten.
var allGoes = []lexicon.Entry{{Kind: lexicon.ForgetTail, Key: "goes", Ways: `
	[(now|just)] (goes|go|can go|may go|is going|has to go|must go|should go|can all go|will go|is out|is off|is to go|ought to go|needs to go|can be TAKEN|should be TAKEN|must be TAKEN|is to be TAKEN|has to be TAKEN) [(out|away|off)]`}}

type keepTables struct{ going, settled, keeping, stays, rest, all, but *lexicon.Vocabulary }

var keepVocab = sync.OnceValue(func() keepTables {
	of := func(t []lexicon.Entry) *lexicon.Vocabulary { return lexicon.Compile(paraphrase.TakingClasses, t) }
	return keepTables{of(allGoes), of(settledOnly), of(keepVerbs), of(stayEnds), of(restWords), of(allWords), of(butFor)}
})

// keepsOnly reads a clause that has all forgotten but for what it names. It returns the words of that.
func keepsOnly(w []scan.Atom) ([]scan.Atom, bool) {
	if n := startOf(w, paraphrase.TakingVocab().Leads); n > 0 && n < len(w) {
		w = hear.BareClause(w[n:])
	}
	if len(w) > 2 && (w[0].Text == "nothing" || w[0].Text == "none") || len(w) > 2 && w[0].Text == "only" {
		n := 1
		if w[0].Text != "only" {
			n = startOf(w[1:], keepVocab().but) + 1
		}
		if what, ok := beforeEnd(w[n:], keepVocab().stays); ok && (n > 1 || w[0].Text == "only") {
			return what, true // "nothing but the wall height should be kept"
		}
	}
	for i := 1; i+1 < len(w); i++ {
		n := startOf(w[i:], keepVocab().but)
		if n == 0 || i+n >= len(w) {
			continue
		}
		before, behind := w[:i], w[i+n:]
		if filled(before, orderVocab().full) == string(act.StartOver) || startsAgain(before) {
			if k := startOf(behind, keepVocab().keeping); k > 0 && k < len(behind) {
				behind = behind[k:]
			} else if w[i].Text == "but" && n == 1 && !onlyPronoun(behind) {
				continue
			}
			return withoutStay(behind), true
		}
		what := before
		if v := startOf(before, paraphrase.TakingVocab().Verbs); v > 0 && v < len(before) {
			what = before[v:]
			if all, ok := behindVerb(before); ok && wholeKey(keepVocab().all, all) != "" || wholeKey(keepVocab().all, what) != "" {
				return withoutStay(behind), true // "throw it all out bar the wall height"
			}
			continue
		}
		if all, ok := beforeEnd(what, keepVocab().going); ok && wholeKey(keepVocab().all, all) != "" {
			return withoutStay(behind), true // "all of it goes except the post size"
		}
		if wholeKey(keepVocab().all, what) != "" {
			if kept, ok := beforeEnd(behind, paraphrase.TakingVocab().Ends); ok {
				return kept, true // "everything except the gap can go"
			}
		}
	}
	return nil, false
}

func withoutStay(w []scan.Atom) []scan.Atom {
	if kept, ok := beforeEnd(w, keepVocab().stays); ok {
		return kept
	}
	return w
}

// startsAgain reports whether a clause is a plain order to start over.
func startsAgain(w []scan.Atom) bool {
	for _, from := range []int{0, startOf(w, paraphrase.TakingVocab().Leads), startOf(w, paraphrase.TakingVocab().Wishing)} {
		if from >= len(w) {
			continue
		}
		if f := lexicon.Vocab().Match(hear.BareClause(w[from:]), 0); len(f) > 0 && f[0].Entry.Key == string(act.StartOver) && f[0].Next == len(hear.BareClause(w[from:])) {
			return true
		}
	}
	return false
}

// namesRest reports whether words name all that is not named elsewhere.
func namesRest(w []scan.Atom) bool { return wholeKey(keepVocab().rest, w) != "" }

// stayer returns what a clause says is to stay: "the gap stays", "keep the gap".
func stayer(part []scan.Atom) ([]scan.Atom, bool) {
	w := hear.BareClause(part)
	if len(w) == 0 {
		return nil, false
	}
	if n := startOf(w, paraphrase.TakingVocab().Leads); n > 0 && n < len(w) {
		w = hear.BareClause(w[n:])
	}
	if n := startOf(w, keepVocab().keeping); n > 0 && n < len(w) {
		return withoutStay(w[n:]), true
	}
	return beforeEnd(w, keepVocab().stays)
}

// keepOnly takes what is to stay where all else is forgotten.
func (t *takingBack) keepOnly(what []scan.Atom) bool {
	if len(what) == 0 || len(what) > longestObject {
		return false
	}
	lead := paraphrase.WrittenAt("forget everything except", what[0])
	r := hear.Atoms(append(lead, what...), t.c)
	if r.Ask != nil || len(r.Acts) != 1 || r.Acts[0].Kind != act.ForgetAllBut {
		return false
	}
	t.acts, t.found, t.owed = append(t.acts, r.Acts[0]), true, false
	return true
}

// restGoes reports whether a line says what becomes of the rest: "the gap stays, the rest can go".
func restGoes(atoms []scan.Atom) bool {
	for i := 1; i+1 < len(atoms); i++ {
		if w := atoms[i].Text; w == "rest" || w == "others" || w == "else" && atoms[i-1].Text == "everything" || w == "else" && atoms[i-1].Text == "all" {
			if n := startOf(atoms[i+1:], paraphrase.TakingVocab().Ends); n > 0 {
				return true
			}
		}
	}
	return false
}

// settledOnly lead to the one thing that is sure.
var settledOnly = []lexicon.Entry{{Kind: lexicon.Cmd, Key: "settled", Ways: `
	(i|we) [have] only [really] (settled|decided|decided on|fixed|agreed on|agreed|settled on|measured|know|trust|made up my mind about|am sure of|are sure of|picked|chosen|nailed down|got)
	(i|we) (am|are) only [really] (sure|certain|happy) (of|about|with)
	(i|we) have not (settled|decided|decided on|fixed|agreed|agreed on|settled on|measured|picked|chosen) anything (but|except|except for|other than|besides|apart from)
	[the] only (thing|figure|number|one|part) [that] (i|we) (have settled|have decided|have fixed|know|trust|am sure of|are sure of|agreed on|have agreed on) is`}}

// onlySettled returns the one thing of which a clause says that it is settled.
func onlySettled(w []scan.Atom) ([]scan.Atom, bool) {
	n := startOf(w, keepVocab().settled)
	return w[n:], n > 0 && n < len(w)
}

// liftedNow reports whether a clause tells that something has been lifted.
func liftedNow(w []scan.Atom) bool {
	for i := 0; i+2 < len(w); i++ {
		if (w[i].Text == "has" || w[i].Text == "have") && (w[i+1].Text == "been" || w[i+2].Text == "been") {
			return true
		}
	}
	return false
}

// atEnd reads "the measurement of bay 2 at the bottom" as that of bay 2 bottom.
func atEnd(what []scan.Atom) []scan.Atom {
	n := len(what)
	if n < 5 || what[n-3].Text != "at" || what[n-2].Text != "the" || what[n-1].Text != "bottom" && what[n-1].Text != "top" {
		return what
	}
	return append(append([]scan.Atom{}, what[:n-3]...), what[n-1])
}
