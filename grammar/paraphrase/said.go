package paraphrase

import (
	"saywright/grammar/idiom"
	"saywright/grammar/scan"
)

// putPlain are the steps by which phrases and what goes with them are set plain.
var putPlain = []func([]scan.Atom) []scan.Atom{idiom.HangingHyphens, foldedThrough, withoutHearsay, idiom.Phrased, wasAndNow, sizeAgain, sinceTheLongOne, whereItLies, anotherFraction, finestMark, judgedLast}

// asPeoplePutIt sets phrases, what was and is now, and the smallest mark to the plain words.
func asPeoplePutIt(atoms []scan.Atom) []scan.Atom {
	for _, set := range putPlain {
		atoms = set(atoms)
	}
	return atoms
}

// learnedAndChecked sets what those who learn and those who check say to plain words.
func learnedAndChecked(atoms []scan.Atom) []scan.Atom {
	return idiom.AskedAndDisputed().SetIn(idiom.CostBound().SetIn(triesWhatStands(soItIs(idiom.SaidTwice(atoms)))))
}

// PhrasedPlain sets the set phrases of a line to plainer ones.
func PhrasedPlain(atoms []scan.Atom) []scan.Atom {
	return idiom.SetPhrases().SetIn(thatWide(finallyIs(footersHigh(alikeSoThat(atoms)))))
}
