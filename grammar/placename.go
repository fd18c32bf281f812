package grammar

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver"
)

// Where boards lie and things are sold is told by names that no table knows: "nine twelve foot 2x6s down in the cellar", "brackets are 4.25 at the emporium",
// and so is until when something holds. The rest is read without such a name. Whole clauses are not left out: beside a wish they often turn it ("six rails,
// just pulling your leg"), and no list of them is ever whole. Common ways of speech, no source.

// readPlaced reads a line that was asked back for a word that is not known without the place or the time that holds it.
func readPlaced(atoms []scan.Atom, c act.Context, r act.Reading) act.Reading {
	if r.Ask == nil || c.Part || c.Deep || len(atoms) > 60 || !askback.AsksOne(r.Ask, askback.UnknownWord, askback.Meant) {
		return r
	}
	asked := -1
	if r.Ask.At != nil && askback.AsksOne(r.Ask, askback.UnknownWord) {
		asked = hear.AtomAt(atoms, *r.Ask.At)
	}
	for _, cut := range unknownPlaces(atoms, asked) {
		rest := scan.CutOut(atoms, cut[0], cut[1])
		if len(rest) == 0 || slices.ContainsFunc(rest, func(a scan.Atom) bool { return offersNothing[a.Text] }) {
			continue
		}
		told := readSpoken("", rest, c)
		if told.Ask == nil && len(told.Acts) > 0 && (timeWord[atoms[cut[0]].Text] || !slices.ContainsFunc(told.Acts, liesNowhere)) {
			return told
		}
	}
	return r
}

// liesNowhere are acts that tell of nothing that lies somewhere or is sold there.
func liesNowhere(a act.Act) bool { return !hear.Stated(solver.Have, solver.Price)(a) }

// unknownPlaces are places that something lies in or at whose name is not known, or is asked about: "down in the cellar", "out in the machine shed"; and
// the end of a line that tells until when: "til payday".
func unknownPlaces(atoms []scan.Atom, asked int) (cuts [][2]int) {
	for i := 1; i+1 < len(atoms); i++ {
		if rest := atoms[i+1:]; timeWord[atoms[i].Text] && len(rest) < 3 && !slices.ContainsFunc(rest, placeNever) {
			cuts = append(cuts, [2]int{i, len(atoms)})
		}
		if i+2 == len(atoms) || !placeWord[atoms[i].Text] || !determiner[atoms[i+1].Text] {
			continue
		}
		for n := 4; n >= 3; n-- {
			if i+n > len(atoms) {
				continue
			}
			place := atoms[i+2 : i+n]
			if slices.ContainsFunc(place, placeNever) || !slices.ContainsFunc(place, unknownWord) && !(asked >= i+2 && asked < i+n) {
				continue
			}
			from := i
			if wayThere[atoms[i-1].Text] {
				from--
			}
			if from > 0 && !leadsToPlace[atoms[from-1].Text] {
				cuts = append(cuts, [2]int{from, i + n})
			}
		}
	}
	return cuts
}

func unknownWord(a scan.Atom) bool {
	return a.Kind == scan.Word && len(a.Text) > 1 && !lexicon.Vocab().Known[a.Text]
}

// placeNever reports whether an atom is no part of the name of a place: a figure, a unit, a part of the wall, a sign, or what turns the sense.
func placeNever(a scan.Atom) bool {
	return a.Kind != scan.Word || chunk.SpelledNumber(a.Text) || measure.FootWords[a.Text] || measure.InchWords[a.Text] || measure.LumberFeet[a.Text] > 0 || noPlace[a.Text] || turnsOffer(a) ||
		slices.ContainsFunc(wallClasses, func(class string) bool { return chunk.IsClass(a.Text, class) })
}

var (
	wallClasses  = strings.Fields("RAIL STIFF POST GAP OPENING WALL BAY METRIC HEIGHT LUMBER SLAB")
	noPlace      = scan.WordSet("what how which where why who when if unless or but and then top bottom side left right middle end other others rest budget plan drawing sketch quote dreams")
	timeWord     = scan.WordSet("until till since before after")
	placeWord    = scan.WordSet("in at behind inside")
	wayThere     = scan.WordSet("down out over back up")
	determiner   = scan.WordSet("the my our this that his her their a")
	leadsToPlace = scan.WordSet("opening doorway starts start begins ends stops height high level goes is it stands sits from to measured")
)
