package paraphrase

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// wasAndNow takes "the opening was 32 when we started but now it has to be 36" for what it is now: the old figure or side gives way to
// the new one.
func wasAndNow(atoms []scan.Atom) []scan.Atom {
	for w := 1; w+4 < len(atoms); w++ {
		if t := atoms[w].Text; t != "was" && t != "were" || !namedBeforeWas(atoms, w) {
			continue
		}
		old, oldEnd, side := figureOrSide(atoms, w+1, min(w+6, len(atoms)))
		if old < 0 {
			continue
		}
		for j := oldEnd; j+2 < len(atoms); j++ {
			if s := atoms[j].Text; s != "but" && s != "so" && s != "and" && s != "," && s != ";" && s != "." {
				continue
			}
			fresh, freshEnd, ok := nowToldBy(atoms, j+1, side)
			if !ok {
				continue
			}
			out := append([]scan.Atom{}, atoms[:old]...)
			out[w].Text = "is"
			if p := old - 1; side && atoms[old].Text != atoms[fresh].Text && p > 0 && atoms[p].Text == "the" && atoms[p-1].Text == "on" && (atoms[fresh].Text == "middle" || strings.HasPrefix(atoms[fresh].Text, "cent")) {
				out[p-1].Text = "in"
			}
			out = append(out, atoms[fresh:freshEnd]...)
			out = append(out, atoms[oldEnd:j]...)
			if freshEnd < len(atoms) && atoms[freshEnd].Text == "now" {
				freshEnd++
			}
			return append(out, atoms[freshEnd:]...)
		}
	}
	return atoms
}

// namedBeforeWas reports whether a part is named before "was", and nothing asks or supposes.
func namedBeforeWas(atoms []scan.Atom, w int) bool {
	named := false
	for i, a := range atoms {
		switch a.Text {
		case "?", "if", "why", "what", "how", "says", "said", "not", "never":
			return false
		}
		if i < w {
			key, _ := chunk.PartKey(atoms, i)
			named = named || key != ""
		}
	}
	return named
}

// figureOrSide finds the first length or side of the opening among atoms.
func figureOrSide(atoms []scan.Atom, from, to int) (at, end int, side bool) {
	for i := from; i < to; i++ {
		if SideWords[atoms[i].Text] {
			return i, i + 1, true
		}
		if _, next, ok := (measure.Reader{Atoms: atoms}).Length(i); ok {
			return i, next, false
		}
	}
	return -1, 0, false
}

var (
	// SideWords are the sides of a wall, in both spellings.
	SideWords = scan.WordSet("left right middle center centre")
	nowWords  = scan.WordSet("now it they that this is are has have to be needs need wants must should will gets the on in at goes going moved moving go a an")
)

// nowToldBy finds the figure or the side that a clause tells for now.
func nowToldBy(atoms []scan.Atom, from int, side bool) (at, end int, ok bool) {
	now := false
	for i := from; i < len(atoms); i++ {
		if side && SideWords[atoms[i].Text] {
			at, end, ok = i, i+1, true
		} else if _, next, is := (measure.Reader{Atoms: atoms}).Length(i); !side && is && atoms[i].Text != "a" && atoms[i].Text != "an" {
			at, end, ok = i, next, true
		}
		if ok {
			now = now || end < len(atoms) && atoms[end].Text == "now"
			return at, end, now
		}
		now = now || atoms[i].Text == "now"
		if asksBack(atoms[i:]) {
			return 0, 0, false
		}
		if !nowWords[atoms[i].Text] {
			return 0, 0, false
		}
	}
	return 0, 0, false
}

// asksBack reports whether a clause asks after what was named: "the span was 150, is it 147 now".
func asksBack(atoms []scan.Atom) bool {
	if len(atoms) < 2 || atoms[0].Text != "is" && atoms[0].Text != "are" {
		return false
	}
	switch atoms[1].Text {
	case "it", "they", "that", "this", "those", "these":
		return true
	}
	return false
}

// sizeAgain lets a lumber size give way to the one that corrects it: "use 2x3s, no, 2x4s as stiffeners".
func sizeAgain(atoms []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(atoms); i++ {
		_, j, ok := (measure.Reader{Atoms: atoms}).Size(i)
		if !ok {
			continue
		}
		k, fixed := j, false
		for k < len(atoms) && (atoms[k].Text == "," || sizeFixes[atoms[k].Text]) {
			fixed = fixed || sizeFixes[atoms[k].Text]
			k++
		}
		if !fixed || k >= len(atoms) {
			continue
		}
		if _, _, ok := (measure.Reader{Atoms: atoms}).Size(k); ok && i > 0 {
			return scan.CutOut(atoms, i, k)
		}
	}
	return atoms
}

var sizeFixes = scan.WordSet("no nope nah wait sorry rather oops")

// sinceTheLongOne sets "since the second bay is the long one, we're giving it a pair" to "the second bay gets a pair".
func sinceTheLongOne(atoms []scan.Atom) []scan.Atom {
	if len(atoms) < 10 {
		return atoms
	}
	switch atoms[0].Text {
	case "since", "because", "as":
	default:
		return atoms
	}
	for i := 2; i+6 < len(atoms); i++ {
		if atoms[i].Text != "is" || atoms[i+1].Text != "the" || !toldApart[atoms[i+2].Text] || atoms[i+3].Text != "one" {
			continue
		}
		j := i + 4
		for j < len(atoms) && (atoms[j].Text == "," || givingIt[atoms[j].Text]) {
			j++
		}
		if atoms[j-1].Text == "it" {
			return scan.Reworded(atoms, i, j, "gets")[1:]
		}
	}
	return atoms
}

var givingIt = scan.WordSet("i we am are will want to give giving let us it shall would like put putting have")

// whereItLies leaves out what lies where something goes: "against the left end post, where the path arrives".
func whereItLies(atoms []scan.Atom) []scan.Atom {
	for i := 2; i+2 < len(atoms); i++ {
		if atoms[i].Text != "," || atoms[i+1].Text != "where" && atoms[i+1].Text != "because" || !idiom.OpeningNamed(atoms[:i]) {
			continue
		}
		j := i + 2
		for j < len(atoms) && atoms[j].Kind == scan.Word && !pointsOrAsks[atoms[j].Text] {
			if key, _ := chunk.PartKey(atoms, j); key != "" || chunk.SpelledNumber(atoms[j].Text) {
				break
			}
			j++
		}
		if j < i+4 || !chunk.EndsPart(atoms, j) || j < len(atoms) && atoms[j].Text == "?" {
			continue
		}
		return scan.CutOut(atoms, i, j)
	}
	return atoms
}

var pointsOrAsks = scan.WordSet("it that they do does did should would to not never no i you can could must left right middle")

// anotherFraction sets "another sixteenth of play" to "another 1/16 of play".
func anotherFraction(atoms []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(atoms); i++ {
		if atoms[i].Text != "another" {
			continue
		}
		d, next, ok := (measure.Reader{Atoms: atoms}).Denominator(i + 1)
		if !ok || next >= len(atoms) || atoms[next].Text != "of" || d < 2 {
			continue
		}
		out := append([]scan.Atom{}, atoms[:i+1]...)
		out = append(out, scan.Atom{Text: "1/" + measure.Itoa(d), Kind: scan.Vulgar, At: atoms[i+1].At, End: atoms[next-1].End})
		return append(out, atoms[next:]...)
	}
	return atoms
}

// foldedThrough joins "walk through" and "ways through", so that phrases find the opening.
func foldedThrough(atoms []scan.Atom) []scan.Atom {
	for _, a := range atoms {
		if strings.HasPrefix(a.Text, "thr") {
			return chunk.Fold(atoms)
		}
	}
	return atoms
}
