package lumberlist

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/scan"
)

// LyingAbout leaves out where boards lie that somebody has, whatever the place is called: "there's nine ten foot two by sixes lying behind
// the forge already", "I've six 2x6 tens by the chicken coop". A part of the wall, a yard that sells, a paper and a time are no such place.
func LyingAbout(atoms []scan.Atom) []scan.Atom {
	if !slices.ContainsFunc(atoms, func(a scan.Atom) bool {
		return placeWords[a.Text] || lieWords[a.Text] || whenceWords[a.Text] || a.Text == "of"
	}) {
		return atoms
	}
	atoms = placedInFront(atoms)
	for i := range atoms {
		if i > 0 && (chunk.Numeric(atoms[i-1]) || atoms[i-1].Text == "x" || atoms[i-1].Text == "by") {
			continue
		}
		l := pieceList{atoms: atoms}
		end := l.entry(i)
		if end == i || l.told[0].size == nil {
			continue
		}
		for end+1 < len(atoms) && pieceJoints[atoms[end].Text] {
			next := l.entry(end + 1)
			if next == end+1 {
				break
			}
			end = next
		}
		lies, placed := liesUntil(atoms, end)
		from, owns := ownsFrom(atoms, i)
		for !owns && from > 0 && countsIn[atoms[from-1].Text] {
			from-- // "count in the eight 2x6 tens stacked by the furnace"
		}
		if from < i && reckons[atoms[from].Text] && !owns {
			owns = from == 0 || chunk.EndsPart(atoms, from-1) || chunk.Joints[atoms[from-1].Text]
		}
		if placed == end || !owns && (!lies || from > 0 && !chunk.EndsPart(atoms, from-1)) {
			return atoms
		}
		out := append(make([]scan.Atom, 0, len(atoms)+2), atoms[:from]...)
		out = append(out, chunk.Worded(atoms[i], "i"), chunk.Worded(atoms[i], "have"))
		for k := i; k < end; k++ {
			if !pieceLight[atoms[k].Text] || atoms[k].Text == "full" {
				out = append(out, atoms[k])
			}
		}
		return LyingAbout(append(out, atoms[placed:]...))
	}
	return atoms
}

// liesUntil is the atom behind the words, right behind boards, that tell where they lie; the atom itself where it is not told. It reports
// whether a verb of lying tells it.
func liesUntil(atoms []scan.Atom, i int) (lies bool, end int) {
	k := i
	for k < len(atoms) && (lieWords[atoms[k].Text] || lieLight[atoms[k].Text]) {
		lies = lies || lieWords[atoms[k].Text]
		k++
	}
	if k > i && k < len(atoms) && chunk.Noun[atoms[k].Text] && atoms[k-1].Text == "of" {
		k-- // "out of the old fence"
	} else if k >= len(atoms) || !placeWords[atoms[k].Text] && !whenceWords[atoms[k].Text] && !(lies && atoms[k].Text == "to") {
		return lies, i
	}
	if whenceWords[atoms[k].Text] && k > i && (atoms[k-1].Text == "left" || atoms[k-1].Text == "over") {
		lies = true // "nine 2x6 tens are left from the ramp"
	}
	strict := !lies && (atoms[k].Text == "in" || atoms[k].Text == "on" || atoms[k].Text == "by" || atoms[k].Text == "near" || whenceWords[atoms[k].Text])
	for k++; k < len(atoms) && (atoms[k].Text == "to" || atoms[k].Text == "of"); k++ {
	}
	if k >= len(atoms) || !chunk.Noun[atoms[k].Text] && !lex.Owned[atoms[k].Text] {
		return lies, i
	}
	from := k + 1
	for k = from; k < len(atoms) && atoms[k].Kind == scan.Word && k < from+4 && !lieEnds[atoms[k].Text]; k++ {
		w := atoms[k].Text
		if key, _ := chunk.PartKey(atoms, k); key != "" || chunk.SpelledNumber(w) || chunk.IsClass(w, "SELLER") || noPlaces[w] || knownPlaces[w] || strict && seasons[w] {
			return lies, i
		}
	}
	if k == from || k < len(atoms) && !chunk.EndsPart(atoms, k) && !chunk.Joints[atoms[k].Text] && !lieEnds[atoms[k].Text] {
		return lies, i
	}
	return lies, k
}

var (
	// lieWords are verbs of lying, lieLight may stand beside them.
	lieWords = scan.WordSet("lying laying sitting leaning stacked piled stashed stored standing propped resting waiting drying seasoning gathering rusting hanging rolling kicking buried heaped parked stowed turned strapped tied lashed loaded wrapped covered locked set kept tucked lie sit lean stand")
	lieLight = scan.WordSet("around about that which are is already still out back over up there just right down and of left")
	// countsIn are words that bid to reckon with boards that lie somewhere.
	countsIn = scan.WordSet("count counting use using include including note reckon with in up on the those these my our please and also can may we i should")
	// reckons are those of them that begin it.
	reckons = scan.WordSet("count use include note reckon please")
	// placeWords begin a place.
	placeWords = scan.WordSet("behind beside under underneath beneath against in inside on by near next alongside along atop outside at above over around behind")
	// lieEnds may come behind a place.
	lieEnds = scan.WordSet("and first already now still and but so that which they are is from")
	// noPlaces are names that no boards lie at: papers, ways to buy, what is said of time and manner.
	noPlaces = scan.WordSet(`list order orders quote bid bill plan plans drawing sketch estimate cart basket flyer catalog catalogue aisle invoice receipt ad offer price sale way mail end works day dozen
		market hour foot piece time budget limit phone line least most neighbor neighbors neighbour neighbours customer client someone somebody other others stock`)
	// knownPlaces are read as they stand, with all that may be said of boards there.
	knownPlaces = scan.WordSet("garage shed barn basement cellar loft attic workshop carport driveway backyard truck shop house porch")
	// seasons are times, which "in" and "by" tell as well as places.
	seasons = scan.WordSet("morning afternoon evening night week month year spring summer fall autumn winter meantime future past weekend")
)

// HandWords are words that tell that something is there, and where.
var HandWords = scan.WordSet(`what all ones that which they it those these i we he she you they have has had got 've left over is are was were in on at from the my our his their dad 's shed garage shop barn truck basement yard store
	rack here there around hand lying already can could get find afford bought sell sells sold carry carries stock leftover last job pile attic workshop stuff only mill mills saws sawmill merchant delivers makes`)
