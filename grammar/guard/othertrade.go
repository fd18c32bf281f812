package guard

import (
	"slices"
	"strings"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/contrast"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/parse"
	"saywright/grammar/phrase"
	"saywright/grammar/reread"
	"saywright/grammar/scan"
)

// Verbs that no table knows may be left out where they only say that something is to be so: "can I whack in a 32 inch opening". A verb
// of other work is no such word: "can I paint the two by sixes", "what if we burned one rail", "how do I clean the rails" set nothing,
// try nothing and ask for no number. Such a verb is told by where it stands: at the beginning of a clause or behind who does it, with a
// part of the wall or a figure behind it. Plain English, no source.

// otherTrade are such verbs; the past of those that double a letter, or have one of their own, stands in otherTradePast.
const otherTrade = `
	admire bake bathe blame bleach boil borrow brush bury carve caulk chase chew clean coat complain confuse crush curse damage dance debate deliver
	deny describe deserve destroy dig discuss drink drive dry earn empty excuse fear fight fold free fry gather glue grind guard haul heat help hide hug hunt hurt improve
	inspect insure invent iron judge jump kiss laugh lend lick marry melt mend mow oil owe park patch peel photograph plant plow polish praise prime protect punch
	race recycle refinish regret reinforce rent repaint repair rescue return risk rob rot rub ruin sand scrape scrub seal search sharpen slam slice
	smash smell soak solve splice spoil spray stab stain staple steal steam study sweep taste tear tease thank treat twist unload unscrew varnish warn wash watch wear
	weld whittle win worry wrap wreck paint`

const otherTradePast = `
	caught dove drank drove dug fought hid hurt lent stole swept tore won wore ripped robbed rubbed scrubbed slammed stabbed hugged`

// alsoOfTheWall are those of them that tell of the wall where one of some words stands behind: "ripped down to five inches wide", "treat the
// bottom gap like the others".
var alsoOfTheWall = map[string]map[string]bool{
	"ripped": scan.WordSet("wide width"),
	"treat":  scan.WordSet("like as same"),
}

// otherVerbs are all forms of those verbs.
var otherVerbs = sync.OnceValue(func() map[string]bool {
	m := scan.WordSet(otherTradePast)
	for _, v := range strings.Fields(otherTrade) {
		stem := strings.TrimSuffix(v, "e")
		if n := len(v); v[n-1] == 'y' && !strings.ContainsRune("aeiou", rune(v[n-2])) {
			m[v[:n-1]+"ied"] = true
		}
		m[v], m[v+"s"], m[stem+"ed"] = true, true, true
	}
	return m
})

// OfOtherTrade asks back where what was read stands behind a verb of other work.
func OfOtherTrade(r act.Reading, atoms []scan.Atom) act.Reading {
	if r.Ask != nil || !slices.ContainsFunc(r.Acts, comesToValue) {
		return r
	}
	for i, a := range atoms {
		if a.Kind != scan.Word || !otherVerbs()[a.Text] && !otherVerbs()[strings.TrimPrefix(a.Text, "re")] || i+1 == len(atoms) || !verbHere(atoms, i) || !objectAt(atoms, i+1) {
			continue
		}
		end := i + 1
		for end < len(atoms) && !chunk.BreaksClause(atoms, end) {
			end++
		}
		if saidOf := alsoOfTheWall[a.Text]; saidOf != nil && phrase.SaidBeforeOf(saidOf)(atoms[i+1:end], nil) {
			continue
		}
		for _, act := range r.Acts {
			if comesToValue(act) && act.At >= clauseFrom(atoms, i) && act.At < atoms[end-1].End && (contrast.PartNamed(atoms[i+1:end]) || chunk.Figured(atoms[i+1:end])) {
				return askback.UnknownWord.AskAt(a.At, parse.Quoted(a.Text))
			}
		}
	}
	return r
}

// comesToValue are the acts that set, try or hold against the rest, and those that ask for a number.
func comesToValue(a act.Act) bool {
	return valued(a) || a.Kind == act.Ask && a.Name != nil && a.Topic == ""
}

// verbHere reports whether the word at an atom stands where a verb does.
func verbHere(atoms []scan.Atom, i int) bool {
	if i == 0 || chunk.BreaksClause(atoms, i-1) {
		return true
	}
	before := atoms[i-1].Text
	return reread.Doers[before] || reread.Tellers[before] || chunk.IsPerson(before) || before == "just" || before == "then" || before == "also"
}

// objectAt reports whether at an atom begins what something is done to.
func objectAt(atoms []scan.Atom, i int) bool {
	w := atoms[i].Text
	if lexicon.Vocab().Articles[w] || lex.Owned[w] || w == "all" || w == "those" || w == "these" || w == "each" || w == "every" {
		return true
	}
	if _, ok := idiom.FigureEnd(atoms, i); ok {
		return true
	}
	key, _ := chunk.PartKey(atoms, i)
	return key != ""
}

// clauseFrom is where in the line the clause of an atom begins.
func clauseFrom(atoms []scan.Atom, i int) int {
	for i > 0 && !chunk.BreaksClause(atoms, i-1) {
		i--
	}
	return atoms[i].At
}
