package grammar

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/measure"
	"saywright/grammar/paraphrase"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/solver"
)

// What people say in one breath is often two or three things that have nothing to do with each other: "teach me the bay, open up the
// gap to 3", "what comes first, and bring the wall down to 44". Read together, the words of one clause may be taken for the other's, and
// the line is not understood. Where each clause is understood for itself, leans on nothing that another one says, and turns nothing that
// another one says, the line says what they say one after the other.

// notGrasped reports whether a question tells that the clauses were not told apart, rather than that what was understood is doubted.
func notGrasped(q *solver.Question) bool {
	switch askback.QuestionKind(q.Key) {
	case askback.WhichHolds, askback.WhichOfTwo, askback.TwoNumbers, askback.DidYouMean, askback.OnlyTheWall, askback.WhatToKnow:
		return true
	}
	return askback.Unheard(q) || len(q.Choices) > 0
}

// mostParted is how many places a line is cut at, one after the other.
const mostParted = 6

// readInParts reads a line that was not understood clause by clause.
func readInParts(line string, atoms []scan.Atom, c act.Context, r act.Reading) act.Reading {
	if r.Ask == nil || !notGrasped(r.Ask) || !mayBeParted(atoms, c) {
		return r
	}
	if told, ok := heardInParts(line, atoms, partings(atoms), ofAPart(c, atoms)); ok {
		return told
	}
	return r
}

// readOnward reads a line clause by clause before it is read as a whole, where a word tells that something else follows ("and then", "also",
// "plus"), or an order follows a whole question: read as a whole, such a word adds to what stood before, and what follows a question is tried.
func readOnward(line string, atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	if !mayBeParted(atoms, c) {
		return act.Reading{}, false
	}
	var cuts []partedAt
	for _, cut := range partings(atoms) {
		if right := atoms[cut.next:]; cut.onward || opensOrder(right) && paraphrase.AsksWhole(atoms[:cut.end], right[0].Text) {
			cuts = append(cuts, cut)
		}
	}
	if len(cuts) == 0 {
		return act.Reading{}, false
	}
	if told, ok := heardInParts(line, atoms, cuts, ofAPart(c, atoms)); ok {
		return told, true
	}
	return howMuchBehind(line, atoms, cuts, ofAPart(c, atoms))
}

// howMuchBehind asks how much where an order that follows names no figure: in "wall up two and then narrow the gap" the two is the wall's.
func howMuchBehind(line string, atoms []scan.Atom, cuts []partedAt, c act.Context) (act.Reading, bool) {
	for _, cut := range cuts {
		left, right := atoms[:cut.end], atoms[cut.next:]
		if !opensOrder(right) || slices.ContainsFunc(right, figureAt) || !ofItself(right, true) {
			continue
		}
		if then := readSpoken(line, right, c); then.Ask == nil || !askback.AsksOne(then.Ask, askback.HowMuchFor, askback.HowMuchOrFar, askback.Vague) {
			continue
		} else if saysAlone(readSpoken(line, left, c)) {
			return then, true
		}
	}
	return act.Reading{}, false
}

// mayBeParted reports whether a line may hold clauses that have nothing to do with each other.
func mayBeParted(atoms []scan.Atom, c act.Context) bool {
	return !c.Part && !c.Deep && len(atoms) >= 5 && len(atoms) <= 60 && !triesFrom(atoms) && !turnsOver(atoms)
}

// triesFrom reports whether a line tries or claims from its beginning on; "let me know" does not.
func triesFrom(atoms []scan.Atom) bool {
	return triesOn[atoms[0].Text] && !(atoms[0].Text == "let" && len(atoms) > 2 && atoms[1].Text == "me" && (atoms[2].Text == "know" || atoms[2].Text == "have" || atoms[2].Text == "see"))
}

// triesOn are words by which a line that they open tries or claims, on to its end.
var triesOn = scan.WordSet("with say try let imagine picture pretend assume assuming given according per on in")

// ofAPart is the context of a clause of a line: it leans on nothing said before.
func ofAPart(c act.Context, atoms []scan.Atom) act.Context {
	c.Mixed = parse.SaidInMetric(lex.Tokens(atoms, c))
	c.Subject, c.Lately, c.Asked, c.Claims, c.Choices, c.Pending, c.Part = nil, nil, nil, nil, nil, nil, true
	return c
}

// partedAt is a place where a line may fall into two: the clause before it ends at one atom, the one behind it begins at another.
type partedAt struct {
	end, next int
	stop      bool // a stop, or "and then": what stands behind it is a sentence of its own
	onward    bool // a word tells that something else follows
}

// heardInParts reads the clauses between some of the places where a line may be cut; the first way in which all are heard is taken.
func heardInParts(line string, atoms []scan.Atom, cuts []partedAt, c act.Context) (act.Reading, bool) {
	for i, cut := range cuts {
		left, right := atoms[:cut.end], atoms[cut.next:]
		if !ofItself(right, cut.onward) {
			continue
		}
		first := readSpoken(line, left, c)
		if !saysAlone(first) {
			continue
		}
		var rest []partedAt
		for _, x := range cuts[i+1:] {
			rest = append(rest, partedAt{x.end - cut.next, x.next - cut.next, x.stop, x.onward})
		}
		then := readSpoken(line, right, c)
		if !saysAlone(then) {
			var ok bool
			if then, ok = heardInParts(line, right, rest, c); !ok {
				continue
			}
		}
		if !goTogether(first, then, cut, right) {
			continue
		}
		return act.Reading{Acts: append(slices.Clone(first.Acts), then.Acts...)}, true
	}
	return act.Reading{}, false
}

// partings finds where a line may be cut: at a stop, a comma, an "and", "plus" or "also", with what leads on behind it.
func partings(atoms []scan.Atom) (cuts []partedAt) {
	for i := 1; i < len(atoms)-1 && len(cuts) < mostParted; i++ {
		w := atoms[i].Text
		switch {
		case w == "(" || w == ")" || w == ":" || w == "?" && i+2 >= len(atoms):
			continue
		case w == "and" && figureAt(atoms[i-1]) && figureAt(atoms[i+1]):
			continue // "eights and tens", "two and a half"
		case w == "and" && figureAt(atoms[i-1]) && partOfFigure(atoms[i+1:]):
			continue // "two and a quarter shy"
		case w == "then" && opensShowing[atoms[i+1].Text]:
		case !chunk.BreaksClause(atoms, i) && w != "and" && w != "plus" && w != "also":
			continue
		}
		cut := partedAt{end: i, next: i + 1, stop: w == "." || w == ";" || w == "!" || w == "?", onward: w == "plus" || w == "then"}
		for cut.next < len(atoms) && (chunk.BreaksClause(atoms, cut.next) || leadsPart[atoms[cut.next].Text]) {
			cut.stop = cut.stop || atoms[cut.next].Text == "then"
			cut.onward = cut.onward || leadsPart[atoms[cut.next].Text] && atoms[cut.next].Text != "and"
			cut.next++
		}
		if w == "?" {
			cut.end++
		}
		if cut.end > 1 && cut.next < len(atoms)-1 {
			cuts = append(cuts, cut)
		}
		i = cut.next - 1
	}
	return cuts
}

// opensShowing are words behind a "then" that ask to be told or shown something.
var opensShowing = scan.WordSet("tell show give how what where list draw print read")

// leadsPart are words that lead on from one clause to the next.
var leadsPart = scan.WordSet("and then also plus finally lastly next afterwards")

// partOfFigure reports whether what stands behind an "and" is the fraction of the figure before it, and not a length of its own.
func partOfFigure(behind []scan.Atom) bool {
	return len(behind) > 1 && (behind[0].Text == "a" || behind[0].Text == "an") && measure.Denominators[behind[1].Text] > 0 && !(len(behind) > 2 && (measure.InchWords[behind[2].Text] || behind[2].Text == "of"))
}

// figureAt reports whether an atom is of a figure.
func figureAt(a scan.Atom) bool {
	return chunk.Numeric(a) || chunk.SpelledNumber(a.Text) || idiom.SoldLengths[a.Text] || idiom.OfFigure(a)
}

// turnsOver reports whether a word of a line may turn what another of its clauses says.
func turnsOver(atoms []scan.Atom) bool {
	for i, a := range atoms {
		if overTurns[a.Text] && !(a.Text == "but" && i > 0 && atoms[i-1].Text == "nothing") {
			return true
		}
	}
	return false
}

// overTurns are words by which one clause may turn another: conditions, claims, what is doubted, corrected, compared or taken up.
var overTurns = scan.WordSet(`without if unless suppose supposing or but though although instead rather except maybe perhaps he she they says said claims thinks reckons told
	cannot none nobody until till because whether while wait sorry scratch actually mean meant correction oops undo
	know knew care mind matter insist insists swear swears hold holds according gave between`)

// ofItself reports whether a clause leans on nothing before it.
func ofItself(part []scan.Atom, onward bool) bool {
	for i, a := range part {
		if ofBefore[a.Text] && !(lex.Compares[a.Text] && i+1 < len(part) && part[i+1].Text == "than") && !ofItsNoun(part, i) {
			return false // "two more than the job takes" leans on nothing
		}
	}
	return len(part) > 1 && !opensNone[part[0].Text] && (onward || !relates[part[0].Text])
}

// ledTo are words behind which a "one" is of what stood before: "two to the wall and one to the opening".
var ledTo = scan.WordSet("at under to for in on of by from over above below beside between")

// ofItsNoun reports whether a word leans on nothing where it stands: "each rail", "one rail", "3.49 each".
func ofItsNoun(part []scan.Atom, i int) bool {
	switch part[i].Text {
	case "each":
		return i+1 < len(part) && chunk.NamesPart(part, i+1) || i > 2 && figureAt(part[i-1]) && chunk.NamesPart(part, 0)
	case "one", "all", "both":
		return i+1 < len(part) && !ledTo[part[i+1].Text] && chunk.NamesPart(part, i+1)
	}
	return false
}

var (
	// ofBefore are words that speak of what was said before.
	ofBefore = scan.WordSet("it its it's that those them they this these same one ones there both another other others either neither each more less so too again back")
	// opensNone are words that no clause of its own begins with.
	opensNone = scan.WordSet("of than to for with at in on by above below under over through not no yes nor or but because since so as step")
	// relates are words that may go on with what stands before a comma; behind a word that leads on they ask.
	relates = scan.WordSet("which who whose where")
)

// saysAlone reports whether what a clause says stands by itself, and no word of it was taken for another.
func saysAlone(r act.Reading) bool {
	return r.Ask == nil && len(r.Acts) > 0 && len(r.Taken) == 0 && !slices.ContainsFunc(r.Acts, func(a act.Act) bool { return !clauseOfItsOwn(a) })
}

func clauseOfItsOwn(a act.Act) bool {
	switch a.Kind {
	case act.State:
		return a.Wall == "" && !slices.ContainsFunc(a.Statements, func(st solver.Statement) bool { return st.Name.Wall != "" })
	case act.Ask, act.Teach, act.Recap, act.ShowAll, act.Tolerance:
		return true
	}
	return false
}

// goTogether reports whether what two clauses say may stand side by side: nothing is said twice, and the later one takes nothing from the
// earlier, as a place in a bay that is measured or the size of what is priced.
func goTogether(first, then act.Reading, cut partedAt, right []scan.Atom) bool {
	for _, a := range first.Acts {
		for _, b := range then.Acts {
			if a.String() == b.String() || a.Kind == act.State && b.Kind == act.State && !mayFollow(a.Statements[0].Name, b.Statements[0].Name) {
				return false
			}
		}
	}
	if cut.onward && (countOnly(right, then) || len(right) < 3 && then.Acts[0].Kind == act.Ask) {
		return false // "spare 10% plus 2 boards", "overall 12 feet plus the posts"
	}
	if asked := slices.IndexFunc(then.Acts, func(a act.Act) bool { return a.Kind == act.State }) < 0; asked && first.Acts[0].Kind == act.Ask && len(then.Acts) <= joinedIn(right) {
		return false // "cuts, marks, list": something of the list is not heard
	}
	if first.Acts[len(first.Acts)-1].Kind != act.State && then.Acts[0].Kind == act.State && !cut.stop {
		return opensOrder(right) // "how many rails, and a gap of three" may try the gap
	}
	return true
}

// countOnly reports whether a clause begins with a figure that counts: what is counted may be of the clause before.
func countOnly(right []scan.Atom, r act.Reading) bool {
	return (chunk.Numeric(right[0]) || chunk.SpelledNumber(right[0].Text)) && r.Acts[0].Kind == act.State && solver.KindOf(r.Acts[0].Statements[0].Name.Quantity) == solver.Count
}

// joinedIn counts the commas and the "and"s inside a clause.
func joinedIn(part []scan.Atom) (n int) {
	for i := 1; i+1 < len(part); i++ {
		if part[i].Text == "," || part[i].Text == "and" {
			n++
		}
	}
	return n
}

// mayFollow reports whether what is told of one thing may stand behind what is told of another without being of it.
func mayFollow(a, b solver.Name) bool {
	switch {
	case a.Quantity == solver.Units:
		return false // its figures are of that unit
	case a.Quantity == b.Quantity:
		return a != b && a.Quantity != solver.Price && a.Quantity != solver.Stock
	case a.Quantity == solver.Measured || a.Quantity == solver.Bay:
		return b.Quantity != solver.WallHeight && b.Quantity != solver.BottomGap && b.Quantity != solver.Stiffeners
	}
	return true
}
