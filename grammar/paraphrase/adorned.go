package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// What a part is like to look at, to work with or to live with says nothing of its size or number: "make the stupid gap two", "six cedar rails". Such a
// word is left out right before the name of the part, but not where it judges ("two inches is a silly gap"). What tells which one is meant, how large it
// is, where it stands, whose it is or that it is no good is not among them. Plain English, no source.

// adornments are such words.
var adornments = scan.WordSet(`
	beautiful sweet fine grand splendid gorgeous charming elegant humble modest decent honest trusty faithful sturdy stout robust rugged rustic crisp sleek smart classy fancy ordinary boring dull
	stupid silly dumb daft ridiculous wretched blasted infernal cursed damn damned darn darned dratted blooming bloody flaming flipping freaking frigging goddamn stinking lousy miserable pathetic pesky annoying tricky
	stubborn awkward fiddly troublesome confounded godforsaken ruddy blessed precious sacred holy famous legendary glorious magnificent mighty noble proud dear beloved cherished favorite favourite longed-for awaited
	creaky squeaky weathered painted unpainted stained varnished oiled polished sanded planed cedar pine oak spruce fir larch redwood hemlock ash maple teak cypress chestnut wooden timber
	galvanized shiny mossy dusty sunny shady imaginary dreamy fabled promised mysterious elusive
`)

// unadorned leaves such words out.
func unadorned(atoms []scan.Atom) []scan.Atom {
	if slices.ContainsFunc(atoms, func(a scan.Atom) bool { return a.Text == "only" || a.Text == "nothing" }) {
		return atoms // "cedar posts only" wants them so
	}
	for i := len(atoms) - 2; i >= 0; i-- {
		if adornments[atoms[i].Text] && adornedPart(atoms[i+1].Text) && !judgedThere(atoms, i) {
			atoms = scan.CutOut(atoms, i, i+1)
		}
	}
	return atoms
}

// adornedPart reports whether a word names a part of the wall that may be adorned; prices tell brackets and boards apart by what they are like.
func adornedPart(w string) bool {
	return slices.ContainsFunc(adornedClasses, func(class string) bool { return chunk.IsClass(w, class) })
}

var adornedClasses = []string{"RAIL", "STIFF", "POST", "GAP", "OPENING", "BAY", "WALL"}

// judgedThere reports whether the word at an atom is what a figure or a thing is said to be, or is denied.
func judgedThere(atoms []scan.Atom, i int) bool {
	if i == 0 {
		return false
	}
	before := atoms[i-1].Text
	if chunk.SpelledNumber(before) || atoms[i-1].Kind == scan.Digits || before != "a" && before != "an" && lexicon.Vocab().Articles[before] || before == "new" || before == "added" || before == "how" || before == "many" || before == "these" || before == "those" || before == "this" || before == "that" {
		return false
	}
	if before != "a" && before != "an" {
		return !wantsPart[before]
	}
	return slices.ContainsFunc(atoms[:i], func(a scan.Atom) bool { return judges[a.Text] })
}

var (
	wantsPart = scan.WordSet("want need like add put make use with and of between the , in set have")
	judges    = scan.WordSet("is are 's 're be was were looks look makes make would seems sounds gives leaves not no")
)
