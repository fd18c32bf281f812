package lumberlist

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/scan"
)

// placedInFront leaves out where boards lie that is told before them: "in the rafters there's a ten foot four by four", "left over from the
// dock I've three twelve foot 2x6s", "on the sawhorses right now are three". It returns the line as it is where the place may be a yard that
// sells, a part of the wall, a paper or a time.
func placedInFront(atoms []scan.Atom) []scan.Atom {
	for i := 3; i+3 < len(atoms); i++ {
		entry := pieceList{atoms: atoms}
		end := entry.entry(i)
		if end == i || entry.told[0].size == nil {
			continue
		}
		from := i
		lies := false
		if from > 3 && atoms[from-1].Text == ":" {
			from, lies = from-1, true // "under a tarp by the silo: twelve 2x6 tens"
		}
		for from > 0 && (frontVerbs[atoms[from-1].Text] || frontLight[atoms[from-1].Text]) {
			from--
			lies = lies || frontVerbs[atoms[from].Text]
		}
		if !lies {
			return atoms
		}
		begin := from
		for begin > 0 && !chunk.EndsPart(atoms, begin-1) && from-begin < 8 {
			begin--
		}
		for begin < from && (chunk.Joints[atoms[begin].Text] || atoms[begin].Text == "so") {
			begin++
		}
		if !frontPlace(atoms[begin:from]) {
			return atoms
		}
		out := append(make([]scan.Atom, 0, len(atoms)+2), atoms[:begin]...)
		out = append(out, chunk.Worded(atoms[i], "i"), chunk.Worded(atoms[i], "have"))
		return append(out, atoms[i:]...)
	}
	return atoms
}

// frontPlace reports whether atoms tell a place, and nothing else.
func frontPlace(atoms []scan.Atom) bool {
	i := 0
	for i < len(atoms) && (lieLight[atoms[i].Text] || atoms[i].Text == "over" || atoms[i].Text == "salvaged" || atoms[i].Text == "saved") {
		i++
	}
	if i >= len(atoms) || !placeWords[atoms[i].Text] && !whenceWords[atoms[i].Text] && (i == 0 || atoms[i-1].Text != "of") {
		return false
	}
	if placeWords[atoms[i].Text] || whenceWords[atoms[i].Text] {
		i++
	}
	for i < len(atoms) && (atoms[i].Text == "to" || atoms[i].Text == "of" || placeTops[atoms[i].Text]) {
		i++ // "on top of the lockers"
	}
	if i >= len(atoms) || !chunk.Noun[atoms[i].Text] && !lex.Owned[atoms[i].Text] {
		return false
	}
	from := i + 1
	for k := from; k < len(atoms); k++ {
		w := atoms[k].Text
		if key, _ := chunk.PartKey(atoms, k); atoms[k].Kind != scan.Word || key != "" || chunk.SpelledNumber(w) || chunk.IsClass(w, "SELLER") || noPlaces[w] || seasons[w] || k > from+4 {
			return false
		}
	}
	return from < len(atoms)
}

var (
	// frontVerbs tell that something is there, or that somebody has it; frontLight may stand beside them.
	frontVerbs = scan.WordSet("is are lie lies sit sits stand stands lean leans wait waits rest rests have got own 've")
	frontLight = scan.WordSet("there i we also still already right now just about 's")
	// placeTops tell on which side of a thing a place is.
	placeTops = scan.WordSet("top back front")
	// whenceWords begin what boards are left over from.
	whenceWords = scan.WordSet("from off")
)
