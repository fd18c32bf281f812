package idiom

import (
	"slices"
	"sync"

	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// SetPhrases are the phrases that set a line plain when nearly all other steps have.
var SetPhrases = sync.OnceValue(func() *phrase.Book {
	b := phrase.BookOf(wallPhrases, claimPhrases, askedPhrases, orderPhrases, shopTalk, talkTurns, wallBegun, everydayTurns, workdayTurns, purseTurns, notedTurns, overBudget, roomFor, struckOut, lessonPhrases, meaningPhrases, lessonTurns, stackPhrases, framedLeads, framedTails, framedSets, framedRanges, siteWays, sitesTold, sitesHeard, saidLengths, lengthTalk, queryTurns, uprightTurns, stackedTurns, eitherNext, breathTurns, listTurns, siteShop, taggedTurns, comesOfIt, rackTurns, onlyThose, meansTurns)
	for _, list := range [][]phrase.Set{
		heightPhrases, countPhrases, sizePhrases, gapPhrases, floorPhrases, talkPhrases,
		oldHandPhrases, counterPhrases,
		homePhrases, householdPhrases,
		familyPhrases,
		checkedPhrases,
		notePhrases,
		oldShopPhrases,
		tapePhrases,
		crewPhrases,
		mindPhrases,
		regionPhrases,
	} {
		for _, s := range list {
			b.Add(phrase.Placed{s.Said, s.Plain, nil})
		}
	}
	for _, s := range slices.Concat(mendedPhrases, turnedPhrases, tradePhrases, elsewherePhrases, meantSo, misreadOnce, particleTurns, boughtTurns, pricedTurns, countedIn()) {
		b.Add(s)
	}
	return b
})

// talkedOf are the phrases about openings, bays, ironwork and the saw, and those of new owners and polite people.
var talkedOf = sync.OnceValue(func() *phrase.Book {
	p := phrase.BookOf(openingPhrasings, bayPhrasings, ironPhrasings, sawPhrasings, newOwnerPhrasings, houseTalk, politelyPut, courtesyPhrases, householdTold, leastWasted)
	p.Begs = true
	return p
})

// Phrased sets the phrases of a line to the plain ones.
func Phrased(atoms []scan.Atom) []scan.Atom { return talkedOf().SetIn(atoms) }
