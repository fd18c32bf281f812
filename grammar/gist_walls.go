package grammar

import "strings"

// A wall may be named by where it stands as well as by its name: "the wall on the north side" is the north wall. The place is put before
// the word for the wall; what the grammar can't read so is read by its gist, without the wall, which then stands before each statement.

// placedWall finds the wall that a line speaks of, if it speaks of one: the line with the wall's name before the word for it, and the
// line without the wall.
func placedWall(atoms []atom) (name string, named, rest []atom, ok bool) {
	r := reader{atoms}
	for i := 0; i < len(atoms); i++ {
		from, place, to, found := wallPlaced(r, i)
		if !found {
			continue
		}
		if ok || from > 0 && theirs(r.word(from-1)) {
			return "", nil, nil, false // which of the two is meant, and whose?
		}
		ok, name = true, place+" wall"
		at := atoms[i]
		named = append(append(append([]atom{}, atoms[:from]...), wordAtoms([]string{"the", place, "wall"}, at)...), atoms[to:]...)
		// what leads to the wall goes with it, and so does the sign behind it: "for the north wall, …"
		lead := from
		for lead > 0 && (wallLead[r.word(lead-1)] || r.word(lead-1) == "over" || r.word(lead-1) == "as") {
			lead--
		}
		rest = append([]atom{}, atoms[:lead]...)
		if lead == from {
			rest = append(rest, wordAtoms([]string{"the", "wall"}, at)...)
		} else if to < len(atoms) && (r.word(to) == "," || r.word(to) == ":") {
			to++
		}
		rest = append(rest, atoms[to:]...)
		i = to - 1
	}
	return name, named, rest, ok && len(rest) > 0
}

// wallPlaced reads a wall with the place that tells it from another, at an atom: "the wall on the north side", "on the north side the
// wall", "the north wall".
func wallPlaced(r reader, i int) (from int, place string, to int, ok bool) {
	article := func(j int) int {
		for r.word(j) != "" && vocab().articles[r.word(j)] && r.word(j) != "'s" {
			j++
		}
		return j
	}
	tells := func(w string) bool {
		return wallNames[w] && ordinals[w] == 0 && w != "other" && w != "inner" && w != "outer"
	}
	side := func(j int) int {
		switch r.word(j) {
		case "side", "end", "edge":
			return j + 1
		}
		return j
	}
	j := article(i)
	switch {
	case r.word(j) == "wall" && wallSet[r.word(j+1)]:
		k := article(j + 2)
		if r.word(j+1) == "in" && k > j+2 { // "the wall in the back"
			k = article(k)
		}
		if end := side(k + 1); tells(r.word(k)) && !partlyOf(r, end) {
			return i, r.word(k), end, true
		}
	case r.word(j) == "wall" && tells(r.word(j+1)) && (r.word(j+2) == "side" || r.word(j+2) == ",") && j > i:
		return i, r.word(j + 1), side(j + 2), true
	case tells(r.word(j)) && r.word(j+1) == "wall":
		return i, r.word(j), j + 2, true
	case wallSet[r.word(i)]:
		k := article(i + 1)
		if end := side(k + 1); k > i+1 && tells(r.word(k)) && end > k+1 {
			if r.word(end) == "," {
				end++
			}
			if w := article(end); w > end && r.word(w) == "wall" {
				return i, r.word(k), w + 1, true
			}
		}
	}
	return 0, "", 0, false
}

// wallSet are words that lead from a wall to where it stands.
var wallSet = wordSet("on at along by facing to toward towards in beside near over")

// theirs reports whether a word says that something is another's: "the neighbor's", "his".
func theirs(w string) bool {
	return w != "my" && w != "our" && w != "your" && (isClass(w, "WHOSE") || strings.HasSuffix(w, "'s"))
}

// partlyOf reports whether what stands at an atom goes on to tell where in the wall something is: "to the left of the opening".
func partlyOf(r reader, i int) bool {
	return r.word(i) == "of" || isClass(r.word(i), "POST") || isClass(r.word(i), "BAY") || isClass(r.word(i), "OPENING") || r.word(i) == "and" || r.word(i) == "or"
}

// readOnWall reads a line about a wall that is named by its place.
func readOnWall(atoms []atom, c Context) (Reading, bool) {
	atoms = fold(atoms)
	name, named, rest, ok := placedWall(atoms)
	if !ok {
		return Reading{}, false
	}
	if r := readAtoms(named, c); r.Ask == nil {
		return r, true
	}
	r, ok := readGist(rest, c, nil)
	if !ok {
		if r = readAtoms(rest, c); r.Ask != nil {
			return Reading{}, false
		}
	}
	for i := range r.Acts {
		a := &r.Acts[i]
		if a.Kind != State && a.Kind != WhatIf && a.Kind != Check && a.Kind != WhyNot {
			return Reading{}, false
		}
		for k := range a.Statements {
			st := &a.Statements[k]
			if st.Name.Wall != "" {
				return Reading{}, false
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
