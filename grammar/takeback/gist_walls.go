package takeback

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/gist"
	"saywright/grammar/hear"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// A wall may be named by where it stands as well as by its name: "the wall on the north side" is the north wall. The place is put before
// the word for the wall; what the grammar can't read so is read by its gist, without the wall, which then stands before each statement.

// placedWall finds the wall that a line speaks of, if it speaks of one: the line with the wall's name before the word for it, and the
// line without the wall.
func placedWall(atoms []scan.Atom) (name string, named, rest []scan.Atom, ok bool) {
	r := measure.Reader{Atoms: atoms}
	for i := 0; i < len(atoms); i++ {
		from, place, to, found := wallPlaced(r, i)
		if !found {
			continue
		}
		if ok || from > 0 && theirs(r.Word(from-1)) {
			return "", nil, nil, false // which of the two is meant, and whose?
		}
		ok, name = true, place+" wall"
		at := atoms[i]
		named = append(append(append([]scan.Atom{}, atoms[:from]...), gist.WordAtoms([]string{"the", place, "wall"}, at)...), atoms[to:]...)
		// what leads to the wall goes with it, and so does the sign behind it: "for the north wall, …"
		lead := from
		for lead > 0 && (lex.WallLead[r.Word(lead-1)] || r.Word(lead-1) == "over" || r.Word(lead-1) == "as") {
			lead--
		}
		rest = append([]scan.Atom{}, atoms[:lead]...)
		if lead == from {
			rest = append(rest, gist.WordAtoms([]string{"the", "wall"}, at)...)
		} else if to < len(atoms) && (r.Word(to) == "," || r.Word(to) == ":") {
			to++
		}
		rest = append(rest, atoms[to:]...)
		i = to - 1
	}
	return name, named, rest, ok && len(rest) > 0
}

// wallPlaced reads a wall with the place that tells it from another, at an atom: "the wall on the north side", "on the north side the
// wall", "the north wall".
func wallPlaced(r measure.Reader, i int) (from int, place string, to int, ok bool) {
	article := func(j int) int {
		for r.Word(j) != "" && lexicon.Vocab().Articles[r.Word(j)] && r.Word(j) != "'s" {
			j++
		}
		return j
	}
	tells := func(w string) bool {
		return lex.WallSites[w] && measure.Ordinals[w] == 0 && w != "other" && w != "inner" && w != "outer"
	}
	side := func(j int) int {
		switch r.Word(j) {
		case "side", "end", "edge":
			return j + 1
		}
		return j
	}
	j := article(i)
	switch {
	case r.Word(j) == "wall" && WallSet[r.Word(j+1)]:
		k := article(j + 2)
		if r.Word(j+1) == "in" && k > j+2 { // "the wall in the back"
			k = article(k)
		}
		if end := side(k + 1); tells(r.Word(k)) && !partlyOf(r, end) {
			return i, r.Word(k), end, true
		}
	case r.Word(j) == "wall" && tells(r.Word(j+1)) && (r.Word(j+2) == "side" || r.Word(j+2) == ",") && j > i:
		return i, r.Word(j + 1), side(j + 2), true
	case tells(r.Word(j)) && r.Word(j+1) == "wall":
		return i, r.Word(j), j + 2, true
	case WallSet[r.Word(i)]:
		k := article(i + 1)
		if end := side(k + 1); k > i+1 && tells(r.Word(k)) && end > k+1 {
			if r.Word(end) == "," {
				end++
			}
			if w := article(end); w > end && r.Word(w) == "wall" {
				return i, r.Word(k), w + 1, true
			}
		}
	}
	return 0, "", 0, false
}

// WallSet are words that lead from a wall to where it stands.
var WallSet = scan.WordSet("on at along by facing to toward towards in beside near over")

// theirs reports whether a word says that something is another's: "the neighbor's", "his".
func theirs(w string) bool {
	return w != "my" && w != "our" && w != "your" && (chunk.IsClass(w, "WHOSE") || strings.HasSuffix(w, "'s"))
}

// partlyOf reports whether what stands at an atom goes on to tell where in the wall something is: "to the left of the opening".
func partlyOf(r measure.Reader, i int) bool {
	return r.Word(i) == "of" || chunk.IsClass(r.Word(i), "POST") || chunk.IsClass(r.Word(i), "BAY") || chunk.IsClass(r.Word(i), "OPENING") || r.Word(i) == "and" || r.Word(i) == "or"
}

// ReadOnWall reads a line about a wall that is named by its place.
func ReadOnWall(atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	atoms = chunk.Fold(atoms)
	name, named, rest, ok := placedWall(atoms)
	if !ok {
		return act.Reading{}, false
	}
	if r := hear.Atoms(named, c); r.Ask == nil {
		return r, true
	}
	r, ok := gist.Read(rest, c, nil)
	if !ok {
		if r = hear.Atoms(rest, c); r.Ask != nil {
			return act.Reading{}, false
		}
	}
	for i := range r.Acts {
		a := &r.Acts[i]
		if a.Kind != act.State && a.Kind != act.WhatIf && a.Kind != act.Check && a.Kind != act.WhyNot {
			return act.Reading{}, false
		}
		for k := range a.Statements {
			st := &a.Statements[k]
			if st.Name.Wall != "" {
				return act.Reading{}, false
			}
			st.Name.Wall = name
			if st.Value.Of != nil {
				of := *st.Value.Of
				of.Wall = name
				st.Value.Of = &of
			}
		}
	}
	return r, true
}
