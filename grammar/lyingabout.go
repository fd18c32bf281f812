package grammar

import "slices"

// lyingAbout leaves out where boards lie that somebody has, whatever the place is called: "there's nine ten foot two by sixes lying behind
// the forge already", "I've six 2x6 tens by the chicken coop". A part of the wall, a yard that sells, a paper and a time are no such place.
func lyingAbout(atoms []atom) []atom {
	if !slices.ContainsFunc(atoms, func(a atom) bool { return placeWords[a.text] || lieWords[a.text] }) {
		return atoms
	}
	for i := range atoms {
		if i > 0 && (numeric(atoms[i-1]) || atoms[i-1].text == "x" || atoms[i-1].text == "by") {
			continue
		}
		l := pieceList{atoms: atoms}
		end := l.entry(i)
		if end == i || l.told[0].size == nil {
			continue
		}
		for end+1 < len(atoms) && pieceJoints[atoms[end].text] {
			next := l.entry(end + 1)
			if next == end+1 {
				break
			}
			end = next
		}
		lies, placed := liesUntil(atoms, end)
		from, owns := ownsFrom(atoms, i)
		if placed == end || !owns && (!lies || from > 0 && !endsPart(atoms, from-1)) {
			return atoms
		}
		out := append(make([]atom, 0, len(atoms)+2), atoms[:from]...)
		out = append(out, worded(atoms[i], "i"), worded(atoms[i], "have"))
		return lyingAbout(append(append(out, atoms[i:end]...), atoms[placed:]...))
	}
	return atoms
}

// liesUntil is the atom behind the words, right behind boards, that tell where they lie; the atom itself where it is not told. It reports
// whether a verb of lying tells it.
func liesUntil(atoms []atom, i int) (lies bool, end int) {
	k := i
	for k < len(atoms) && (lieWords[atoms[k].text] || lieLight[atoms[k].text]) {
		lies = lies || lieWords[atoms[k].text]
		k++
	}
	if k >= len(atoms) || !placeWords[atoms[k].text] {
		return lies, i
	}
	strict := !lies && (atoms[k].text == "in" || atoms[k].text == "on" || atoms[k].text == "by" || atoms[k].text == "near")
	for k++; k < len(atoms) && (atoms[k].text == "to" || atoms[k].text == "of"); k++ {
	}
	if k >= len(atoms) || !noun[atoms[k].text] && !owned[atoms[k].text] {
		return lies, i
	}
	from := k + 1
	for k = from; k < len(atoms) && atoms[k].kind == aWord && k < from+4 && !lieEnds[atoms[k].text]; k++ {
		w := atoms[k].text
		if key, _ := partKey(atoms, k); key != "" || spelledNumber(w) || isClass(w, "SELLER") || noPlaces[w] || knownPlaces[w] || strict && seasons[w] {
			return lies, i
		}
	}
	if k == from || k < len(atoms) && !endsPart(atoms, k) && !joints[atoms[k].text] && !lieEnds[atoms[k].text] {
		return lies, i
	}
	return lies, k
}

var (
	// lieWords are verbs of lying, lieLight may stand beside them.
	lieWords = wordSet("lying laying sitting leaning stacked piled stashed stored standing propped resting waiting kept tucked lie sit lean stand")
	lieLight = wordSet("that which are is already still out back over up there just right down and of left")
	// placeWords begin a place.
	placeWords = wordSet("behind beside under underneath beneath against in inside on by near next alongside along atop outside at")
	// lieEnds may come behind a place.
	lieEnds = wordSet("already now still and but so that which they are is from")
	// noPlaces are names that no boards lie at: papers, ways to buy, what is said of time and manner.
	noPlaces = wordSet(`list order orders quote bid bill plan plans drawing sketch estimate cart basket flyer catalog catalogue aisle invoice receipt ad offer price sale way mail end works day dozen
		market hour foot piece time budget limit phone line least most neighbor neighbors neighbour neighbours customer client someone somebody other others stock`)
	// knownPlaces are read as they stand, with all that may be said of boards there.
	knownPlaces = wordSet("garage shed barn basement cellar loft attic workshop carport driveway backyard truck shop house porch")
	// seasons are times, which "in" and "by" tell as well as places.
	seasons = wordSet("morning afternoon evening night week month year spring summer fall autumn winter meantime future past weekend")
)
