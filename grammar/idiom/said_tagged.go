package idiom

import (
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// What is said first and asked about behind a pause is held against the rest: "I need stiffeners, don't I", "there's no bottom gap, is there",
// "I need a 30 inch opening, right". Whether there is a need for something is asked, too. Everyday speech, no source.

// taggedTurns are such turns.
var taggedTurns = []phrase.Placed{
	// What is told and asked about in one breath.
	{", (do|does|did|have|has|had|will|would|should|can|could|is|are|am|was|were) not (i|we|they|he|she|it|there) [really|now|though|then] [\\?] $$", ", is that right ?", tagged},
	{", (do|did|have|had|will|would|should|can|could|am|are|is|was) (i|we|there) [really|now|though|then] [\\?] $$", ", is that right ?", deniedTagged},
	{", (has|have|had) (it|they|he|she) [really|now|though|then] [\\?] $$", ", is that right ?", deniedTagged},
	{", (do|have|had|are) you [really|now|though|then] [\\?] $$", ", is that right ?", phrase.BothHold(deniedTagged, toldOfYou)},
	{", right [\\?] $$", ", is that right ?", toldInFull},
	// Whether there is a need for it.
	{"^ [so|and|but] [(is there)|(do (i|we) have)|(have (i|we))] (a|any|some|much|[a] real) (need|use|call|cause|reason) [at all] for [the|any|a|an|more|these|those] !(RAIL|STIFF|bracket|brackets|posts|((added|extra|new) posts)|bays|openings) [at all] [here] [\\?] $$", "do i need $1 ?", nil},
	{"^ [so|and|but] [(there is)|(i have)|(we have)|(i see)] no (need|use|call|reason) [at all] for [the|any|a|an|these|those] !(STIFF|opening|openings|((added|extra|new) (post|posts))) [at all] [here] $$", "no $1", nil},
}

// tagged reports whether what stands before is told of the wall, and nothing in it is denied, asked or only tried.
func tagged(before, _ []scan.Atom) bool { return toldPlainly(before) && !holdsAny(before, denies) }

// deniedTagged reports whether what stands before is told of the wall, and denied.
func deniedTagged(before, _ []scan.Atom) bool { return toldPlainly(before) && holdsAny(before, denies) }

// toldOfYou reports whether a line tells of the hearer: "you don't need stiffeners, do you".
func toldOfYou(before, _ []scan.Atom) bool { return before[0].Text == "you" }

// toldInFull reports whether what stands before is told in a whole sentence, so that a "right" behind it names no side.
func toldInFull(before, _ []scan.Atom) bool {
	return toldPlainly(before) && !holdsAny(before, denies) && !holdsAny(before, sideOrPlace) && (before[0].Text == "so" || holdsAny(before, tellsAll))
}

// toldPlainly reports whether a line is told, by what stands before its end: it does not ask or try, and nobody else says it.
func toldPlainly(before []scan.Atom) bool { return len(before) > 1 && !holdsAny(before, asksOrTries) }

// holdsAny reports whether one of some words stands in a line.
func holdsAny(atoms []scan.Atom, words map[string]bool) bool {
	for _, a := range atoms {
		if words[a.Text] {
			return true
		}
	}
	return false
}

var (
	denies      = scan.WordSet("not no never none nothing neither without cannot")
	asksOrTries = scan.WordSet("what which how why where when who if whether suppose supposing let says say said claims claim according plan drawing sketch sheet quote ?")
	sideOrPlace = scan.WordSet("left right side middle center end corner")
	tellsAll    = scan.WordSet("is are needs need want wants would will stays stay has have gets goes comes takes 's")
)
