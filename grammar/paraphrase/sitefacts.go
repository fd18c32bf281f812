package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// Who tells what was found at the site tells it in any order, and tells how it was come by: "he called out seventy from bay two at the
// fourth board". Where a line names the places and the figures of one fact, and all else in it is the talk of measuring, it is set to
// the plain order. Any word that is not of that talk leaves the line as it is.

// siteWord is one piece of a fact that was found: what it is, its number or its word, and the atoms that tell it.
type siteWord struct {
	kind     siteKind
	n        int
	text     string
	inches   measure.Amount
	from, to int
}

// siteKind tells what a piece of a fact is.
type siteKind uint8

// The kinds of piece.
const (
	siteBay siteKind = iota
	siteRail
	siteSpot   // top or bottom
	siteLength // a figure
	siteUp     // a board hangs already
	siteLean   // a post leans
	sitePost   // the left or the right post
	siteSide   // left or right by itself
	siteFloor
	siteFall // lower or higher
	siteThan // what the floor is held against
	siteTape // a verb of measuring
	siteMove // what a board does not do that hangs already
	siteRoom // what is measured in a bay
	siteWant
	siteNot
	siteFoot // the run that a fall is told for
)

var (
	siteUps   = scan.WordSet("up hung hangs hanging mounted installed fixed fastened screwed bolted nailed attached already stay stays staying")
	siteMoves = scan.WordSet("budge move moved moving shift")
	siteLeans = scan.WordSet(`leans lean leaning leaned leant tilts tilted tilting tips tipped tipping wanders wandered drifts drifted strays cocked kicked kicks racked
		heaved heeled rakes cants canted lists plumb`)
	siteFloors = scan.WordSet("floor slab concrete deck patio paving pad terrace")
	siteFalls  = map[string]string{"lower": "lower", "low": "lower", "down": "lower", "below": "lower", "drops": "lower", "dropped": "lower", "dips": "lower", "falls": "lower", "sinks": "lower", "sunk": "lower", "downhill": "lower", "lose": "lower", "loses": "lower", "fall": "lower", "slopes": "lower", "pitches": "lower", "higher": "higher", "above": "higher", "rises": "higher"}
	siteTapes  = scan.WordSet(`measured measure measures measuring measurement measurements reads reading tape tapes taped got get called laser lasered shot clocked pulled stopped
		numbers figures number figure readings found ran`)
	siteRooms = scan.WordSet("height space room width clear wide slot between opened widens widened narrows pinches spreads bulges")
	siteWants = scan.WordSet("make want wants need needs like must important would prefer set keep ought should put")
	siteNots  = scan.WordSet("not no never nor")
	// siteTools are what may say a figure at a site: nobody's view is told by them.
	siteTools = scan.WordSet("tape line level bob laser rule ruler stick string transit notes pad notebook square")
	siteSays  = scan.WordSet("says say said shows show showed gives gave puts claims")
	// siteTalk changes nothing in what was found.
	siteTalk = scan.WordSet(`i am we you he she they it its this that those these there here is are was were be been being has have had 's 've 'd of at on for in from off out to by with across along over as
		and so then now again just only about exactly please sorry ok okay well oh right but read comes came will can me us you run runs when heads
		what where how goes went go gone back come coming sits sit stands stand made note write wrote written record enter log jot took taken
		my our the a an his her their both each all other one ones
		end dumb held hold holding steel line string level bob water spirit laser's transit rule ruler stick square
		morning today yesterday tonight afternoon noon week while earlier lately last night before
		knees knee ladder knelt kneeling standing lying stood bent after lunch
		posts follows following below list notes notebook pad site field job
		edge upper hits hit landed lands land because cap way cause since frost wind truck car winter pushed bumped settling
		ahead far thing work around owner brackets bracket leave alone ought
		daughter son wife husband kid helper brother law course ends winds ended`)
)

// siteScan finds the pieces of a fact; ok is false where any other word stands in the line.
func siteScan(in []scan.Atom) (out []siteWord, ok bool) {
	r := measure.Reader{Atoms: in}
	add := func(k siteKind, n int, text string, from, to int) int {
		out = append(out, siteWord{kind: k, n: n, text: text, from: from, to: to})
		return to
	}
	for i := 0; i < len(in); {
		w := r.Word(i)
		if in[i].Kind == scan.Sign {
			switch w {
			case ",", ";", ":", ".", "-", "--", "@", "'", "=":
				i++
				continue
			case "(", ")":
				i++
				continue
			}
			return nil, false
		}
		if next := siteAside(r, i); next > i {
			i = next
			continue
		}
		if siteEach[w] && measure.FootWords[r.Word(i+1)] {
			i = add(siteFoot, 0, w, i, i+2)
			continue
		}
		if n, next := siteNumbered(r, i, partOfBay); n > 0 {
			i = add(siteBay, n, "", i, next)
			continue
		}
		if n, next := siteNumbered(r, i, partOfRail); n > 0 {
			i = add(siteRail, n, "", i, next)
			continue
		}
		if w == "one" && i > 0 && !startsUnitOrFraction(r, i+1) {
			i++
			continue
		}
		if a, next, is := r.Length(i); is && next > i && !(w == "a" && next == i+1) {
			if a.Bad != "" || a.Unit == measure.Money || a.Unit == measure.Percent || a.Size != "" || a.Footer && r.Word(next) == "" {
				return nil, false
			}
			out = append(out, siteWord{kind: siteLength, inches: a, from: i, to: next})
			i = next
			continue
		}
		switch {
		case w == "upper" && (r.Word(i+1) == "edge" || r.Word(i+1) == "side"):
			i = add(siteSpot, 0, "top", i, i+2)
		case (w == "top" || w == "upper") && (measure.PartOf(r, i+1, "RAIL") || r.Word(i+1) == "one"):
			return nil, false // the number of the top board is not told
		case w == "bottom" || w == "top" || w == "foot" || w == "head":
			text := w
			if w == "foot" {
				text = "bottom"
			} else if w == "head" {
				text = "top"
			}
			i = add(siteSpot, 0, text, i, i+1)
		case w == "tops" || w == "bottoms":
			i = add(siteSpot, 0, w[:len(w)-1], i, i+1)
		case w == "left" || w == "right":
			next := i + 1
			if r.Word(next) == "end" || r.Word(next) == "side" || r.Word(next) == "hand" {
				next++
			}
			if measure.PartOf(r, next, "POST") {
				i = add(sitePost, 0, w, i, next+1)
			} else {
				i = add(siteSide, 0, w, i, next)
			}
		case siteFalls[w] != "":
			i = add(siteFall, 0, siteFalls[w], i, i+1)
		case siteLeans[w]:
			i = add(siteLean, 0, w, i, i+1)
		case siteFloors[w]:
			i = add(siteFloor, 0, w, i, i+1)
		case w == "than" || w == "compared" || w == "against":
			i = add(siteThan, 0, w, i, i+1)
		case siteSays[w]:
			if !siteToolBefore(in[:i]) {
				return nil, false // whoever says it claims it
			}
			i++
		case siteUps[w] && r.Word(i+1) == "up" && w != "already":
			i = add(siteUp, 0, w, i, i+2)
		case w == "up" && (siteEndsUp[r.Word(i-1)] || r.Word(i+1) == "top"):
			i++
		case w == "up" && !siteIsUp(in, i, out):
			return nil, false
		case siteUps[w], w == "place" && r.Word(i-1) == "in", w == "put" && siteUps[r.Word(i-1)]:
			i = add(siteUp, 0, w, i, i+1)
		case siteMoves[w]:
			i = add(siteMove, 0, w, i, i+1)
		case siteWants[w]:
			i = add(siteWant, 0, w, i, i+1)
		case siteNots[w]:
			i = add(siteNot, 0, w, i, i+1)
		case siteTapes[w] || w == "m" && r.Word(i+1) == ":":
			i = add(siteTape, 0, w, i, i+1)
		case siteRooms[w]:
			i = add(siteRoom, 0, w, i, i+1)
		case w == "off" && !siteTools[r.Word(i+1)] && !siteTools[r.Word(i+2)]:
			return nil, false // "take an inch off rail 3"
		case siteTalk[w] || chunk.IsPerson(w):
			i++
		case measure.PartOf(r, i, "BAY") || measure.PartOf(r, i, "RAIL") || measure.PartOf(r, i, "POST"):
			i++
		default:
			return nil, false
		}
	}
	return out, true
}

var siteEndsUp = scan.WordSet("ends end ended winds wind comes came sits")

// siteIsUp reports whether "up" tells that a board hangs: "rail 3 is up", "r2 up".
func siteIsUp(in []scan.Atom, i int, so []siteWord) bool {
	switch chunk.LastOf(in[:i], 1) {
	case "is", "'s", "are", "was", "one", "already", "it":
		return true
	}
	return len(so) > 0 && so[len(so)-1].kind == siteRail && so[len(so)-1].to == i || i > 0 && measure.PartOf(measure.Reader{Atoms: in}, i-1, "RAIL")
}

// startsUnitOrFraction reports whether "one" goes on as a figure: "one and a half", "one inch".
func startsUnitOrFraction(r measure.Reader, i int) bool {
	if r.Word(i) == "and" {
		_, _, ok := r.Fraction(i + 1)
		return ok
	}
	_, _, _, ok := r.Unit(i)
	return ok
}

func partOfBay(r measure.Reader, i int) bool { return measure.PartOf(r, i, "BAY") }

func partOfRail(r measure.Reader, i int) bool { return measure.PartOf(r, i, "RAIL") }

// siteNumbered reads a bay or a rail by its number at an atom: "bay two", "the second bay", "rail number 3", "r3", "number five".
func siteNumbered(r measure.Reader, i int, part func(measure.Reader, int) bool) (n, next int) {
	rail := measure.PartOf(measure.Reader{Atoms: []scan.Atom{{Text: "rail"}}}, 0, "RAIL") && part(measure.Reader{Atoms: []scan.Atom{{Text: "rail"}}}, 0)
	w := r.Word(i)
	if k := measure.Ordinals[w]; k > 0 && part(r, i+1) {
		return k, i + 2
	}
	if k := measure.Ordinals[w]; rail && k > 0 && r.Word(i+1) == "one" && !siteHasBay(r) {
		return k, i + 2
	}
	if rail && (w == "bottom" || w == "lowest") && (part(r, i+1) || r.Word(i+1) == "one") {
		return 1, i + 2
	}
	j := i + 1
	switch {
	case part(r, i):
		if r.Word(j) == "number" || r.Word(j) == "no" || r.Word(j) == "#" {
			j++
		}
	case r.LetterAt(i) && rail == (w == "r"):
	case rail && w == "number":
	default:
		return 0, i
	}
	a, next, ok := r.Whole(j)
	if !ok || a.Frac || a.Bad != "" || !a.Val.IsInt() {
		return 0, i
	}
	v, small := a.Val.Int64()
	if !small || v < 1 || v > 12 {
		return 0, i
	}
	if end := r.Word(next); end == "/" {
		return 0, i
	}
	return int(v), next
}

var siteEach = scan.WordSet("each every per")

// siteHasBay reports whether a bay is spoken of in the line.
func siteHasBay(r measure.Reader) bool {
	for i := range r.Atoms {
		if partOfBay(r, i) || r.LetterAt(i) {
			return true
		}
	}
	return false
}

// siteToolBefore reports whether a tool is what says something, a few words before: "the plumb bob on the right post says".
func siteToolBefore(before []scan.Atom) bool {
	for k := 1; k <= 6; k++ {
		if siteTools[chunk.LastOf(before, k)] {
			return true
		}
	}
	return false
}

// siteAside returns the atom behind what only goes along with a fact at an atom: "level with the planter", "8 off the slab", "over the
// level's length", "put down", "opening up toward the top"; it returns the atom itself where none stands there.
func siteAside(r measure.Reader, i int) int {
	w := r.Word(i)
	switch {
	case w == "put" && r.Word(i+1) == "down", w == "opening" && r.Word(i+1) == "up":
		return i + 2
	case w == "put" && lexicon.Vocab().Articles[r.Word(i+1)] && siteToolBefore(r.Atoms[min(i+2, len(r.Atoms)):min(i+6, len(r.Atoms))]):
		return i + 1
	case w == "length" && r.Word(i-1) == "'s":
		return i + 1
	case (w == "toward" || w == "towards") && lexicon.Vocab().Articles[r.Word(i+1)] && edges[r.Word(i+2)]:
		return i + 3
	case (w == "off" || w == "above" || w == "from") && lexicon.Vocab().Articles[r.Word(i+1)] && siteFloors[r.Word(i+2)]:
		return i + 3
	case w == "out" && r.Word(i+1) == "of" && r.Word(i+2) == "level":
		return i + 3
	}
	if w != "level" && w != "flush" && w != "even" && w != "line" && w != "lined" || r.Word(i+1) != "with" && r.Word(i+2) != "with" {
		return i
	}
	j := i + 2
	if r.Word(i+1) != "with" {
		j++
	}
	if k := chunk.SkipArticle(r.Atoms, j); k > j || lex.Owned[r.Word(j)] {
		j = max(k, j+1)
	} else {
		return i
	}
	for n := 0; n < 3 && j < len(r.Atoms) && r.Kind(j) == scan.Word && !siteTalk[r.Word(j)]; n++ {
		if key, _ := chunk.PartKey(r.Atoms, j); key != "" || phrase.StartsLength(r, j) {
			return i
		}
		j++
	}
	return j
}
