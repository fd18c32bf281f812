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
		rest := scan.CutOut(atoms, cut.from, cut.to)
		if len(rest) == 0 || slices.ContainsFunc(rest, func(a scan.Atom) bool { return offersNothing[a.Text] }) {
			continue
		}
		told := readSpoken("", rest, c)
		if told.Ask == nil && len(told.Acts) > 0 && cut.suits(told.Acts) {
			return told
		}
	}
	return r
}

// place is where in a line a place or a time is named, and what the rest of it must tell for it to be one.
type place struct {
	from, to int
	suits    func([]act.Act) bool
}

func anyTold([]act.Act) bool { return true }

// liesThere reports whether all that is told lies somewhere, or is sold there; so does money that may be spent.
func liesThere(acts []act.Act) bool {
	return !slices.ContainsFunc(acts, func(a act.Act) bool { return !hear.Stated(solver.Have, solver.Price, solver.Budget)(a) })
}

// onlyStates reports whether all that is told is set.
func onlyStates(acts []act.Act) bool {
	return !slices.ContainsFunc(acts, func(a act.Act) bool { return a.Kind != act.State })
}

// atHand reports whether all that is told is at hand.
func atHand(acts []act.Act) bool {
	return !slices.ContainsFunc(acts, func(a act.Act) bool { return !hear.Stated(solver.Have)(a) })
}

// fallsAway reports whether it is told how far the ground lies below.
func fallsAway(acts []act.Act) bool { return slices.ContainsFunc(acts, hear.Stated(solver.Drop)) }

// unknownPlaces are places that something lies in or at whose name is not known, or is asked about: "down in the cellar", "out in the machine shed",
// "from the old bed"; a side that the ground falls away on ("on the water side"); and the end of a line that tells until when: "til payday".
func unknownPlaces(atoms []scan.Atom, asked int) (all []place) {
	named := func(from, to int) bool {
		return !slices.ContainsFunc(atoms[from:to], placeNever) && (slices.ContainsFunc(atoms[from:to], unknownWord) || asked >= from && asked < to)
	}
	all = append(all, ledByPurpose(atoms, named)...)
	for i := 0; i+1 < len(atoms); i++ {
		if atoms[i].Text == "from" && i > 0 && (timeWord[atoms[i+1].Text] || atoms[i+1].Text == "when") && len(atoms)-i < longestOrigin && !slices.ContainsFunc(atoms[i+2:], originNever) {
			all = append(all, place{i, len(atoms), atHand}) // "from when we did the stairs"
		}
		if rest := atoms[i+1:]; i > 0 && timeWord[atoms[i].Text] && len(rest) < 3 && !slices.ContainsFunc(rest, placeNever) {
			all = append(all, place{i, len(atoms), anyTold})
		}
		if i+2 >= len(atoms) || !determiner[atoms[i+1].Text] {
			continue
		}
		if (atoms[i].Text == "on" || atoms[i].Text == "at") && i+3 < len(atoms) && atoms[i+3].Text == "side" && named(i+2, i+3) {
			all = append(all, place{i, i + 4, fallsAway})
		}
		if placeWord[atoms[i].Text] || atoms[i].Text == "from" {
			all = append(all, placesAt(atoms, i, named)...)
		}
	}
	return all
}

// longestOrigin is more words than tell from when something is.
const longestOrigin = 10

// ledByPurpose are what a line begins with to tell whom or what something is for, or why it is so: "for the sightlines the wall has to be …", "thanks to our puppy …".
func ledByPurpose(atoms []scan.Atom, named func(from, to int) bool) (all []place) {
	i := 0
	for _, lead := range purposeLeads {
		if n := len(lead); n < len(atoms) && slices.EqualFunc(atoms[:n], lead, func(a scan.Atom, w string) bool { return a.Text == w }) {
			i = n
			break
		}
	}
	if i == 0 || i+2 >= len(atoms) || !determiner[atoms[i].Text] {
		return nil
	}
	for n := 2; n >= 1; n-- {
		to := i + 1 + n
		if to >= len(atoms) || !named(i+1, to) || slices.ContainsFunc(atoms[i+1:to], func(a scan.Atom) bool { return otherBuilt[a.Text] }) {
			continue
		}
		next := to
		if atoms[to].Text == "," {
			next++
		}
		// A bare figure behind it is of what it names: "for the handrail, 42 high".
		if next < len(atoms) && (purposeNext[atoms[next].Text] || chunk.NamesPart(atoms, next) || next+1 < len(atoms) && determiner[atoms[next].Text] && chunk.NamesPart(atoms, next+1)) {
			all = append(all, place{0, next, onlyStates})
		}
	}
	return all
}

// placesAt are the places that are named behind a word at i, the longest name first: one word or two behind the article.
func placesAt(atoms []scan.Atom, i int, named func(from, to int) bool) (all []place) {
	suits, from := liesThere, i
	if atoms[i].Text == "from" {
		suits = atHand
	}
	if i > 0 && wayThere[atoms[i-1].Text] && atoms[i].Text != "from" {
		from--
	}
	if from > 0 && leadsToPlace[atoms[from-1].Text] {
		return nil
	}
	for n := 4; n >= 3; n-- {
		if i+n > len(atoms) || !named(i+2, i+n) {
			continue
		}
		if from > 0 || i+n < len(atoms) && whoHas[atoms[i+n].Text] {
			all = append(all, place{from, i + n, suits})
		}
	}
	return all
}

func unknownWord(a scan.Atom) bool {
	return a.Kind == scan.Word && len(a.Text) > 1 && !lexicon.Vocab().Known[a.Text]
}

// originNever reports whether an atom is no part of what tells from when boards at hand are.
func originNever(a scan.Atom) bool {
	return a.Kind != scan.Word && a.Text != "." || chunk.SpelledNumber(a.Text) || gaveAway[a.Text] || slices.ContainsFunc(wallClasses, func(class string) bool { return chunk.IsClass(a.Text, class) })
}

// placeNever reports whether an atom is no part of the name of a place: a figure, a unit, a part of the wall, a sign, or what turns the sense.
func placeNever(a scan.Atom) bool {
	return a.Kind != scan.Word || chunk.SpelledNumber(a.Text) || measure.FootWords[a.Text] || measure.InchWords[a.Text] || measure.LumberFeet[a.Text] > 0 || noPlace[a.Text] || turnsOffer(a) ||
		slices.ContainsFunc(wallClasses, func(class string) bool { return chunk.IsClass(a.Text, class) })
}

// purposeLeads begin what tells whom or what something is for, or why it is so.
var purposeLeads = [][]string{{"for"}, {"to", "suit"}, {"to", "please"}, {"to", "match"}, {"to", "fit"}, {"thanks", "to"}, {"owing", "to"}, {"due", "to"}, {"on", "account", "of"}, {"because", "of"}, {"given"}, {"considering"}, {"with"}, {"in", "view", "of"}, {"in", "light", "of"}, {"out", "of", "respect", "for"}, {"for", "the", "sake", "of"}, {"as", "a", "favor", "to"}}

var (
	wallClasses  = strings.Fields("RAIL STIFF POST GAP OPENING WALL BAY METRIC HEIGHT LUMBER SLAB")
	noPlace      = scan.WordSet("what how which where why who when if unless or but and then top bottom side left right middle end other others rest budget plan drawing sketch quote dreams")
	timeWord     = scan.WordSet("until till since before after")
	gaveAway     = scan.WordSet("used sold gave threw lent burned burnt lost had not never")
	otherBuilt   = scan.WordSet("neighbor neighbors neighbour neighbours sample samples prototype mockup model practice trial test other others old drawing plan last next")
	purposeNext  = scan.WordSet("make set put keep leave give use have i we there let")
	placeWord    = scan.WordSet("in at behind inside")
	whoHas       = scan.WordSet("i we there he she , -")
	wayThere     = scan.WordSet("down out over back up")
	determiner   = scan.WordSet("the my our this that his her their a")
	leadsToPlace = scan.WordSet("opening doorway starts start begins ends stops height high level goes is it stands sits from to measured")
)
