package reread

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/measure"
	"saywright/grammar/paraphrase"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
	"saywright/grammar/takeback"
	"saywright/solver"
)

// toldBesideWall reports whether a clause tells only of a thing that is none of the wall.
func toldBesideWall(part []scan.Atom) bool {
	if slices.ContainsFunc(part, func(a scan.Atom) bool { return a.Text == "?" || a.Text == `"` }) {
		return false
	}
	for len(part) > 1 && (chunk.Joints[part[0].Text] || part[0].Kind == scan.Sign || part[0].Text == "because" || part[0].Text == "since") {
		part = part[1:]
	}
	for len(part) > 1 && part[len(part)-1].Kind == scan.Sign {
		part = part[:len(part)-1]
	}
	if len(part) < 3 {
		return false
	}
	figure, wall := false, false
	_, thing := aside.ThingAt(part, 0)
	for i, a := range part {
		switch w := a.Text; {
		case a.Kind == scan.Digits || a.Kind == scan.Vulgar || a.Kind == scan.Word && (lex.Words().Numberish(w) || chunk.Numerals()[w] || scan.Ones[w] > 0 || measure.Tens[w] > 0):
			figure = true
		case phrase.Turning[w] && !aside.SizeUnits[w] || idiom.Withheld[w] || idiom.Viewed[w] || aside.AsksByWord[w] && !aside.ThingVerbs[w] || hear.Wishing[w] && w != "have":
			return false
		case a.Kind == scan.Word && i >= thing && chunk.PartAt(part, i) && !aside.BesideWall[w]:
			wall = true
		}
	}
	if figure && wall {
		return false
	}
	switch first := part[0].Text; {
	case thing > 0:
		for thing < len(part) && (SlotDegrees[part[thing].Text] || aside.ThingAdverbs[part[thing].Text]) {
			thing++ // "the grill already cost us 450"
		}
		return thing < len(part) && (aside.ThingVerbs[part[thing].Text] || figure && !wall && startsAmount(part, thing))
	case aside.CommandsToHand[first] && !figure:
		i := 1
		for i < len(part) && (part[i].Text == "me" || part[i].Text == "us" || part[i].Text == "up" || part[i].Text == "over") {
			i++
		}
		_, end := aside.ThingAt(part, i)
		return end > i
	case lex.Speakers[first] && aside.GotFor[part[1].Text]:
		for i := 2; i < len(part); i++ {
			if _, end := aside.ThingAt(part, i); end > i {
				return true
			}
		}
	case (first == "it" || first == "its") && figure && !wall:
		last := part[len(part)-1].Text
		return strings.HasPrefix(last, "degree") || slices.ContainsFunc(part, func(a scan.Atom) bool { return a.Text == "degrees" })
	}
	return false
}

// ReckonedFromThing asks back where a change is reckoned from the figure of a thing that is none of the wall: "the table is 30 high and the
// wall is six higher".
func ReckonedFromThing(r act.Reading, atoms []scan.Atom) act.Reading {
	if r.Ask != nil || !slices.ContainsFunc(r.Acts, func(a act.Act) bool {
		return slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
			return s.Op == solver.Plus || s.Op == solver.Minus || s.Op == solver.Times
		})
	}) || !aside.LeansOnFigure(atoms) {
		return r
	}
	cuts := append(takeback.ClauseStarts(atoms), len(atoms))
	for k := 0; k+1 < len(cuts); k++ {
		part := atoms[cuts[k]:cuts[k+1]]
		if slices.ContainsFunc(part, chunk.Numeric) && (paraphrase.TellsSize(part) || toldBesideWall(part)) {
			return askback.AskedBack(part[0].At, "How high, wide or many is it to be, then?", "wall 40 high")
		}
	}
	return r
}
