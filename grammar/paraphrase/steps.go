package paraphrase

import (
	"slices"
	"sync"

	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lumberlist"
	"saywright/grammar/scan"
)

// SetPlain sets a line plain, before any of it is read. The atoms may be changed.
func SetPlain(atoms []scan.Atom) []scan.Atom {
	if plain, ok := plainLately(atoms); ok {
		return plain
	}
	was := slices.Clone(atoms)
	for _, set := range Steps {
		atoms = set(atoms)
	}
	keepPlain(was, atoms)
	return atoms
}

// lastPlain is the line that was set plain last, and what it came to: the last look at a line begins as its reading does.
var lastPlain struct {
	sync.Mutex
	said, plain []scan.Atom
}

func plainLately(atoms []scan.Atom) ([]scan.Atom, bool) {
	if !lastPlain.TryLock() {
		return nil, false
	}
	defer lastPlain.Unlock()
	if len(atoms) == 0 || !slices.Equal(atoms, lastPlain.said) {
		return nil, false
	}
	return slices.Clone(lastPlain.plain), true
}

func keepPlain(said, plain []scan.Atom) {
	if lastPlain.TryLock() {
		lastPlain.said, lastPlain.plain = said, append(lastPlain.plain[:0], plain...)
		lastPlain.Unlock()
	}
}

// Steps are the steps that set a line plain, in their order: each knows one turn of phrase.
var Steps = []func([]scan.Atom) []scan.Atom{
	withoutSpokenTo,
	unadorned,
	idiom.ToldTogether,
	gaugesAndGrades,
	plusParts,
	introduced,
	postsApart,
	shortAtEnds,
	whoCannot,
	withoutDeniedReason,
	staysWithin,
	clientele,
	wallMust,
	plainly,
	unforgotten,
	pointlessMore,
	neitherOf,
	neitherSide,
	idiom.TriedWithin,
	idiom.AskedStraight,
	questionsParted,
	dictated,
	shortNotes,
	railFigures,
	idiom.ThingsMeasured,
	lumberlist.UnitForAll,
	lumberlist.LyingAbout,
	lumberlist.PiecesTogether,
	lumberlist.LyingAbout, // once more: what stood beside the place is an entry now
	lumberlist.SpokenTotals,
	lumberlist.SpokenPrices,
	lumberlist.SharedPrice,
	lumberlist.WithoutBadOnes,
	lumberlist.RailsInTurn,
	lumberlist.PricedTogether,
	inPlainOrder,
	idiom.Swapped,
	idiom.ToldWhole,
	learnedAndChecked,
	furtherPieces,
	figuresByEar,
	feetDashed,
	lookedAgain,
	fixBehind,
	intoSheet,
	plainOnes,
	ofPosts,
	nowInstead,
	sumSaid,
	admits,
	notedPlainly,
	askedMeanwhile,
	idiom.AsksAndShows,
	PhrasedPlain,
	toBuy,
	rowsMeant,
	asPeoplePutIt,
	endsBehind,
	exceptFirst,
	idiom.YardPlain,
	roundabout,
	begged,
	asManyAs,
	weHave,
	closeDenials,
	noTwo,
	onTheFloor,
	whateverItIs,
	beforeTheyDo,
	askedPlainly,
	soDoI,
	soThatIs,
	onBlocks,
	inTheRange,
	mustClear,
	joinedNumbers,
	likeTheBoards,
	nearFloor,
	lex.WantsForAll,
	wouldChange,
	wereTo,
	takeFrom,
	passedOn,
	siteWords,
	siteTold,
}
