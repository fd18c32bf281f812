package grammar

import "strings"

// wasAndNow takes "the opening was 32 when we started but now it has to be 36" for what it is now: the old figure or side gives way to
// the new one.
func wasAndNow(atoms []atom) []atom {
	for w := 1; w+4 < len(atoms); w++ {
		if t := atoms[w].text; t != "was" && t != "were" || !namedBeforeWas(atoms, w) {
			continue
		}
		old, oldEnd, side := figureOrSide(atoms, w+1, min(w+6, len(atoms)))
		if old < 0 {
			continue
		}
		for j := oldEnd; j+2 < len(atoms); j++ {
			if s := atoms[j].text; s != "but" && s != "so" && s != "and" && s != "," && s != ";" && s != "." {
				continue
			}
			fresh, freshEnd, ok := nowToldBy(atoms, j+1, side)
			if !ok {
				continue
			}
			out := append([]atom{}, atoms[:old]...)
			out[w].text = "is"
			if p := old - 1; side && atoms[old].text != atoms[fresh].text && p > 0 && atoms[p].text == "the" && atoms[p-1].text == "on" && (atoms[fresh].text == "middle" || strings.HasPrefix(atoms[fresh].text, "cent")) {
				out[p-1].text = "in"
			}
			out = append(out, atoms[fresh:freshEnd]...)
			out = append(out, atoms[oldEnd:j]...)
			if freshEnd < len(atoms) && atoms[freshEnd].text == "now" {
				freshEnd++
			}
			return append(out, atoms[freshEnd:]...)
		}
	}
	return atoms
}

// namedBeforeWas reports whether a part is named before "was", and nothing asks or supposes.
func namedBeforeWas(atoms []atom, w int) bool {
	named := false
	for i, a := range atoms {
		switch a.text {
		case "?", "if", "why", "what", "how", "says", "said", "not", "never":
			return false
		}
		if i < w {
			key, _ := partKey(atoms, i)
			named = named || key != ""
		}
	}
	return named
}

// figureOrSide finds the first length or side of the opening among atoms.
func figureOrSide(atoms []atom, from, to int) (at, end int, side bool) {
	for i := from; i < to; i++ {
		if sideWords[atoms[i].text] {
			return i, i + 1, true
		}
		if _, next, ok := (reader{atoms}).length(i); ok {
			return i, next, false
		}
	}
	return -1, 0, false
}

var (
	// sideWords are the sides of a wall, in both spellings.
	sideWords = wordSet("left right middle center centre")
	nowWords  = wordSet("now it they that this is are has have to be needs need wants must should will gets the on in at goes going moved moving go a an")
)

// nowToldBy finds the figure or the side that a clause tells for now.
func nowToldBy(atoms []atom, from int, side bool) (at, end int, ok bool) {
	now := false
	for i := from; i < len(atoms); i++ {
		if side && sideWords[atoms[i].text] {
			at, end, ok = i, i+1, true
		} else if _, next, is := (reader{atoms}).length(i); !side && is && atoms[i].text != "a" && atoms[i].text != "an" {
			at, end, ok = i, next, true
		}
		if ok {
			now = now || end < len(atoms) && atoms[end].text == "now"
			return at, end, now
		}
		now = now || atoms[i].text == "now"
		if asksBack(atoms[i:]) {
			return 0, 0, false
		}
		if !nowWords[atoms[i].text] {
			return 0, 0, false
		}
	}
	return 0, 0, false
}

// asksBack reports whether a clause asks after what was named: "the span was 150, is it 147 now".
func asksBack(atoms []atom) bool {
	if len(atoms) < 2 || atoms[0].text != "is" && atoms[0].text != "are" {
		return false
	}
	switch atoms[1].text {
	case "it", "they", "that", "this", "those", "these":
		return true
	}
	return false
}

// sizeAgain lets a lumber size give way to the one that corrects it: "use 2x3s, no, 2x4s as stiffeners".
func sizeAgain(atoms []atom) []atom {
	for i := 0; i+3 < len(atoms); i++ {
		_, j, ok := (reader{atoms}).size(i)
		if !ok {
			continue
		}
		k, fixed := j, false
		for k < len(atoms) && (atoms[k].text == "," || sizeFixes[atoms[k].text]) {
			fixed = fixed || sizeFixes[atoms[k].text]
			k++
		}
		if !fixed || k >= len(atoms) {
			continue
		}
		if _, _, ok := (reader{atoms}).size(k); ok && i > 0 {
			return cutOut(atoms, i, k)
		}
	}
	return atoms
}

var sizeFixes = wordSet("no nope nah wait sorry rather oops")

// sinceTheLongOne sets "since the second bay is the long one, we're giving it a pair" to "the second bay gets a pair".
func sinceTheLongOne(atoms []atom) []atom {
	if len(atoms) < 10 {
		return atoms
	}
	switch atoms[0].text {
	case "since", "because", "as":
	default:
		return atoms
	}
	for i := 2; i+6 < len(atoms); i++ {
		if atoms[i].text != "is" || atoms[i+1].text != "the" || !toldApart[atoms[i+2].text] || atoms[i+3].text != "one" {
			continue
		}
		j := i + 4
		for j < len(atoms) && (atoms[j].text == "," || givingIt[atoms[j].text]) {
			j++
		}
		if atoms[j-1].text == "it" {
			return reworded(atoms, i, j, "gets")[1:]
		}
	}
	return atoms
}

var givingIt = wordSet("i we am are will want to give giving let us it shall would like put putting have")

// whereItLies leaves out what lies where something goes: "against the left end post, where the path arrives".
func whereItLies(atoms []atom) []atom {
	for i := 2; i+2 < len(atoms); i++ {
		if atoms[i].text != "," || atoms[i+1].text != "where" && atoms[i+1].text != "because" || !openingNamed(atoms[:i]) {
			continue
		}
		j := i + 2
		for j < len(atoms) && atoms[j].kind == aWord && !pointsOrAsks[atoms[j].text] {
			if key, _ := partKey(atoms, j); key != "" || spelledNumber(atoms[j].text) {
				break
			}
			j++
		}
		if j < i+4 || !endsPart(atoms, j) || j < len(atoms) && atoms[j].text == "?" {
			continue
		}
		return cutOut(atoms, i, j)
	}
	return atoms
}

var pointsOrAsks = wordSet("it that they do does did should would to not never no i you can could must left right middle")

// anotherFraction sets "another sixteenth of play" to "another 1/16 of play".
func anotherFraction(atoms []atom) []atom {
	for i := 0; i+3 < len(atoms); i++ {
		if atoms[i].text != "another" {
			continue
		}
		d, next, ok := (reader{atoms}).denominator(i + 1)
		if !ok || next >= len(atoms) || atoms[next].text != "of" || d < 2 {
			continue
		}
		out := append([]atom{}, atoms[:i+1]...)
		out = append(out, atom{text: "1/" + itoa(d), kind: aVulgar, at: atoms[i+1].at, end: atoms[next-1].end})
		return append(out, atoms[next:]...)
	}
	return atoms
}

// foldedThrough joins "walk through" and "ways through", so that phrases find the opening.
func foldedThrough(atoms []atom) []atom {
	for _, a := range atoms {
		if strings.HasPrefix(a.text, "thr") {
			return fold(atoms)
		}
	}
	return atoms
}
