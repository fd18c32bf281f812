package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/lumberlist"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// jobNotes are the steps that set what such notes hold plain.
var jobNotes = []func([]scan.Atom) []scan.Atom{equalsWhat, voidBehind, lumberlist.FeetThenPrice, topOfPost, openingsByNumber, aboveAndBelow, clearOfBays, calledMate}

// notedPlainly sets the notes of a job plain.
func notedPlainly(atoms []scan.Atom) []scan.Atom {
	for _, step := range jobNotes {
		atoms = step(atoms)
	}
	return atoms
}

// equalsWhat sets "gap = ?", at the end of a line, to "what is the gap".
func equalsWhat(atoms []scan.Atom) []scan.Atom {
	n := len(atoms)
	if n < 3 || atoms[n-1].Text != "?" || atoms[n-2].Text != "=" {
		return atoms
	}
	from := n - 2
	for from > 0 && atoms[from-1].Kind == scan.Word && atoms[from-1].Text != "and" && n-from < 6 {
		from--
	}
	if from == n-2 || !chunk.NamesPart(atoms, from) {
		return atoms
	}
	out := scan.Reworded(atoms[:n-2:n-2], from, from+1, "what", "is", atoms[from].Text)
	return append(out, atoms[n-1])
}

// voided are words behind a limit that take it back.
var voided = scan.WordSet("void voided cancel cancelled canceled scratch scratched deleted delete scrapped struck dead")

// voidBehind sets `old 3" gap max - void` to "forget old 3" gap max".
func voidBehind(atoms []scan.Atom) []scan.Atom {
	n := len(atoms)
	for n > 0 && atoms[n-1].Text == "." {
		n--
	}
	if n < 4 || !voided[atoms[n-1].Text] || atoms[n-2].Kind != scan.Sign || atoms[n-2].Glued {
		return atoms
	}
	limited := slices.ContainsFunc(atoms[:n-2], func(a scan.Atom) bool { return idiom.Limits[a.Text] })
	figure := slices.ContainsFunc(atoms[:n-2], func(a scan.Atom) bool { return a.Kind == scan.Digits || chunk.SpelledNumber(a.Text) })
	parted := slices.ContainsFunc(atoms[:n-2], func(a scan.Atom) bool {
		return a.Kind == scan.Sign && (a.Text == "," || a.Text == "." || a.Text == ";" || a.Text == "?")
	})
	if !limited || !figure || parted {
		return atoms
	}
	out := atoms[: n-2 : n-2]
	if words := out[0].Text; out[0].Kind == scan.Word {
		return scan.Reworded(out, 0, 1, "forget", words)
	}
	forget := out[0]
	forget.Text, forget.Kind, forget.Glued = "forget", scan.Word, false
	return append([]scan.Atom{forget}, out...)
}

// sidesByLetter are the sides of a wall by the letters that notes have for them.
var sidesByLetter = map[string]string{"l": "left", "r": "right", "are": "right", "lh": "left", "rh": "right", "left": "left", "right": "right", "lft": "left", "rt": "right", "mid": "middle", "middle": "middle", "m": "middle", "ctr": "middle", "center": "middle"}

// openingsByNumber sets "2 opngs: #1 L, #2 R" to "2 openings: opening 1 left, opening 2 right".
func openingsByNumber(atoms []scan.Atom) []scan.Atom {
	if !slices.ContainsFunc(atoms, func(a scan.Atom) bool { return a.Text == "#" }) {
		return atoms
	}
	opening := false
	for i := 0; i < len(atoms); i++ {
		if key, next := chunk.PartKey(atoms, i); key != "" && next > i {
			opening = key == "opening"
		}
		if !opening || atoms[i].Text != "#" || i+2 >= len(atoms) || atoms[i+1].Kind != scan.Digits || !chunk.EndsPart(atoms, i+3) {
			continue
		}
		side := sidesByLetter[atoms[i+2].Text]
		if side == "" {
			continue
		}
		atoms = scan.Reworded(scan.Reworded(atoms, i+2, i+3, side), i, i+1, "opening")
		opening = true
	}
	return atoms
}

// aboveAndBelow sets "five eighths above the board and five eighths below it" to "five eighths past the board": an ear stands as far out on both sides.
func aboveAndBelow(atoms []scan.Atom) []scan.Atom {
	if !slices.ContainsFunc(atoms, func(a scan.Atom) bool { return a.Text == "above" || a.Text == "over" }) || !slices.ContainsFunc(atoms, func(a scan.Atom) bool { return a.Text == "below" || a.Text == "under" || a.Text == "beneath" }) {
		return atoms
	}
	bracket := false
	for i := range atoms {
		bracket = bracket || measure.PartOf(measure.Reader{Atoms: atoms}, i, "BRACKET") || atoms[i].Text == "ears" || atoms[i].Text == "ear"
		_, next, ok := measure.Reader{Atoms: atoms}.Length(i)
		if !bracket || !ok || next <= i || next >= len(atoms) || atoms[next].Text != "above" && atoms[next].Text != "over" {
			continue
		}
		and := pastRailOrIt(atoms, next+1)
		if and >= len(atoms) || atoms[and].Text != "and" && atoms[and].Text != "," {
			continue
		}
		again := and + 1
		end := again + next - i
		if end >= len(atoms) || !sameWords(atoms[i:next], atoms[again:end]) || atoms[end].Text != "below" && atoms[end].Text != "under" && atoms[end].Text != "beneath" {
			continue
		}
		return scan.Reworded(atoms, next, pastRailOrIt(atoms, end+1), "past", "the", "board", "above", "and", "below")
	}
	return atoms
}

// pastRailOrIt steps over "the board" or "it".
func pastRailOrIt(atoms []scan.Atom, i int) int {
	j := chunk.SkipArticle(atoms, i)
	if j < len(atoms) && (atoms[j].Text == "it" || measure.PartOf(measure.Reader{Atoms: atoms}, j, "RAIL")) {
		return j + 1
	}
	return i
}

// sameWords reports whether two stretches are the same word by word.
func sameWords(a, b []scan.Atom) bool {
	return slices.EqualFunc(a, b, func(x, y scan.Atom) bool { return x.Text == y.Text })
}

// clearOfBays sets "bay one is 63 in the clear" to "bay one is 63 clear".
func clearOfBays(atoms []scan.Atom) []scan.Atom {
	for i := 1; i+2 < len(atoms); i++ {
		if atoms[i].Text != "in" || atoms[i+1].Text != "the" || atoms[i+2].Text != "clear" || !chunk.EndsPart(atoms, i+3) && atoms[i+3].Text != "and" {
			continue
		}
		for j := i - 1; j >= 0 && !(atoms[j].Kind == scan.Sign && (atoms[j].Text == "," || atoms[j].Text == ".")); j-- {
			if key, _ := chunk.PartKey(atoms, j); key == "opening" || key == "bay" {
				return scan.CutOut(atoms, i, i+2)
			}
		}
	}
	return atoms
}

// mates are words by which somebody is spoken to; nameLeads have a name behind them instead.
var (
	mates     = scan.WordSet("mate mates pal bud dude bro chief fella man boss partner pardner buddy friend amigo sonny kiddo")
	nameLeads = scan.WordSet("save call called name named open load compare same like as under store keep file said says say than with to and of for by or not no is are was")
	mateNext  = scan.WordSet("what how where why which can could would will do does is are i we you let give show make put set tell it that there my our")
)

// calledMate leaves out the "mate" to whom a line is said: "we're in metric on this job mate gap's 65".
func calledMate(atoms []scan.Atom) []scan.Atom {
	for i := range atoms {
		if !mates[atoms[i].Text] || len(atoms) < 3 {
			continue
		}
		if i > 0 && (lexicon.Vocab().Articles[atoms[i-1].Text] || atoms[i-1].Text == "saw" || lex.Owned[atoms[i-1].Text] || nameLeads[atoms[i-1].Text]) || slices.ContainsFunc(atoms[:i], func(a scan.Atom) bool { return nameLeads[a.Text] && len(a.Text) > 3 }) {
			continue
		}
		next := atoms[i+1:]
		switch {
		case i == 0 && len(next) > 1 && (next[0].Text == "," || lexicon.Vocab().Articles[next[0].Text] || mateNext[next[0].Text] && next[0].Text != "is" && next[0].Text != "are" || chunk.NamesPart(next, 0)):
			if next[0].Text == "," {
				return scan.CutOut(atoms, 0, 2)
			}
			return scan.CutOut(atoms, 0, 1)
		case i > 0 && mateNext[textOfFirst(next)] && !slices.ContainsFunc(atoms[:i], func(a scan.Atom) bool { return !idiom.LeadWords[a.Text] }):
			return scan.CutOut(atoms, i, i+1) // "alright partner I want …"
		case i > 1 && chunk.EndsPart(atoms, i+1):
			if atoms[i-1].Text == "," {
				return scan.CutOut(atoms, i-1, i+1)
			}
			return scan.CutOut(atoms, i, i+1)
		case i > 1 && chunk.NamesPart(next, 0):
			out := append([]scan.Atom{}, atoms...)
			out[i].Text, out[i].Kind = ",", scan.Sign
			return out
		}
	}
	return atoms
}

// textOfFirst is the text of the first of some atoms, nothing where there is none.
func textOfFirst(atoms []scan.Atom) string {
	if len(atoms) == 0 {
		return ""
	}
	return atoms[0].Text
}

// topOfPost sets "the top of it", behind the added post and nothing else that has a top, to the height of that post.
func topOfPost(atoms []scan.Atom) []scan.Atom {
	for i := 2; i+3 < len(atoms); i++ {
		if !scan.StandAt(atoms, i, "top", "of", "it") {
			continue
		}
		last := ""
		for j := 0; j < i; j++ {
			switch key, next := chunk.PartKey(atoms, j); key {
			case "added post", "rail", "wall", "end post", "post", "bay", "opening", "stiffener":
				last, j = key, next-1
			}
		}
		if last == "added post" {
			return scan.Reworded(atoms, i, i+3, "top", "of", "added", "post")
		}
	}
	return atoms
}
