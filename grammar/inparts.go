package grammar

import (
	"slices"
	"strings"

	"saywright/solver"
)

// What people say in one breath is often two or three things that have nothing to do with each other: "teach me the bay, open up the
// gap to 3", "what comes first, and bring the wall down to 44". Read together, the words of one clause may be taken for the other's, and
// the line is not understood. Where each clause is understood for itself, leans on nothing that another one says, and turns nothing that
// another one says, the line says what they say one after the other.

// notGrasped reports whether a question tells that the clauses were not told apart, rather than that what was understood is doubted.
func notGrasped(q *solver.Question) bool {
	switch questionKind(q.Key) {
	case qWhichHolds, qWhichOfTwo, qTwoNumbers, qDidYouMean, qOnlyTheWall, qWhatToKnow:
		return true
	}
	return unheard(q) || len(q.Choices) > 0
}

// mostParted is how many places a line is cut at, one after the other.
const mostParted = 6

// readInParts reads a line that was not understood clause by clause.
func readInParts(line string, atoms []atom, c Context, r Reading) Reading {
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
func readOnward(line string, atoms []atom, c Context) (Reading, bool) {
	if !mayBeParted(atoms, c) {
		return Reading{}, false
	}
	var cuts []partedAt
	for _, cut := range partings(atoms) {
		if right := atoms[cut.next:]; cut.onward || opensOrder(right) && asksWhole(atoms[:cut.end], right[0].text) {
			cuts = append(cuts, cut)
		}
	}
	if len(cuts) == 0 {
		return Reading{}, false
	}
	if told, ok := heardInParts(line, atoms, cuts, ofAPart(c, atoms)); ok {
		return told, true
	}
	return howMuchBehind(line, atoms, cuts, ofAPart(c, atoms))
}

// howMuchBehind asks how much where an order that follows names no figure: in "wall up two and then narrow the gap" the two is the wall's.
func howMuchBehind(line string, atoms []atom, cuts []partedAt, c Context) (Reading, bool) {
	for _, cut := range cuts {
		left, right := atoms[:cut.end], atoms[cut.next:]
		if !opensOrder(right) || slices.ContainsFunc(right, figureAt) || !ofItself(right, true) {
			continue
		}
		if then := readSpoken(line, right, c); then.Ask == nil || !asksOne(then.Ask, qHowMuchFor, qHowMuchOrFar, qVague) {
			continue
		} else if saysAlone(readSpoken(line, left, c)) {
			return then, true
		}
	}
	return Reading{}, false
}

// mayBeParted reports whether a line may hold clauses that have nothing to do with each other.
func mayBeParted(atoms []atom, c Context) bool {
	return !c.part && !c.deep && len(atoms) >= 5 && len(atoms) <= 60 && !triesFrom(atoms) && !turnsOver(atoms)
}

// triesFrom reports whether a line tries or claims from its beginning on; "let me know" does not.
func triesFrom(atoms []atom) bool {
	return triesOn[atoms[0].text] && !(atoms[0].text == "let" && len(atoms) > 2 && atoms[1].text == "me" && (atoms[2].text == "know" || atoms[2].text == "have" || atoms[2].text == "see"))
}

// triesOn are words by which a line that they open tries or claims, on to its end.
var triesOn = wordSet("with say try let imagine picture pretend assume assuming given according per on in")

// ofAPart is the context of a clause of a line: it leans on nothing said before.
func ofAPart(c Context, atoms []atom) Context {
	c.mixed = saidInMetric(lex(atoms, c))
	c.Subject, c.Lately, c.Asked, c.Claims, c.Choices, c.Pending, c.part = nil, nil, nil, nil, nil, nil, true
	return c
}

// partedAt is a place where a line may fall into two: the clause before it ends at one atom, the one behind it begins at another.
type partedAt struct {
	end, next int
	stop      bool // a stop, or "and then": what stands behind it is a sentence of its own
	onward    bool // a word tells that something else follows
}

// heardInParts reads the clauses between some of the places where a line may be cut; the first way in which all are heard is taken.
func heardInParts(line string, atoms []atom, cuts []partedAt, c Context) (Reading, bool) {
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
		return Reading{Acts: append(slices.Clone(first.Acts), then.Acts...)}, true
	}
	return Reading{}, false
}

// partings finds where a line may be cut: at a stop, a comma, an "and", "plus" or "also", with what leads on behind it.
func partings(atoms []atom) (cuts []partedAt) {
	for i := 1; i < len(atoms)-1 && len(cuts) < mostParted; i++ {
		w := atoms[i].text
		switch {
		case w == "(" || w == ")" || w == ":" || w == "?" && i+2 >= len(atoms):
			continue
		case w == "and" && figureAt(atoms[i-1]) && figureAt(atoms[i+1]):
			continue // "eights and tens", "two and a half"
		case !breaksClause(atoms, i) && w != "and" && w != "plus" && w != "also":
			continue
		}
		cut := partedAt{end: i, next: i + 1, stop: w == "." || w == ";" || w == "!" || w == "?", onward: w == "plus"}
		for cut.next < len(atoms) && (breaksClause(atoms, cut.next) || leadsPart[atoms[cut.next].text]) {
			cut.stop = cut.stop || atoms[cut.next].text == "then"
			cut.onward = cut.onward || leadsPart[atoms[cut.next].text] && atoms[cut.next].text != "and"
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

// leadsPart are words that lead on from one clause to the next.
var leadsPart = wordSet("and then also plus finally lastly next afterwards")

// figureAt reports whether an atom is of a figure.
func figureAt(a atom) bool {
	return numeric(a) || spelledNumber(a.text) || soldLengths[a.text] || ofFigure(a)
}

// turnsOver reports whether a word of a line may turn what another of its clauses says.
func turnsOver(atoms []atom) bool {
	for i, a := range atoms {
		if overTurns[a.text] && !(a.text == "but" && i > 0 && atoms[i-1].text == "nothing") {
			return true
		}
	}
	return false
}

// overTurns are words by which one clause may turn another: conditions, claims, what is doubted, corrected, compared or taken up.
var overTurns = wordSet(`without if unless suppose supposing or but though although instead rather except maybe perhaps he she they says said claims thinks reckons told
	cannot none nobody until till because whether while wait sorry scratch actually mean meant correction oops undo
	know knew care mind matter insist insists swear swears hold holds according gave between`)

// ofItself reports whether a clause leans on nothing before it.
func ofItself(part []atom, onward bool) bool {
	for i, a := range part {
		if ofBefore[a.text] && !(compares[a.text] && i+1 < len(part) && part[i+1].text == "than") && !(a.text == "each" && i+1 < len(part) && namesPart(part, i+1)) {
			return false // "two more than the job takes" leans on nothing
		}
	}
	return len(part) > 1 && !opensNone[part[0].text] && (onward || !relates[part[0].text])
}

var (
	// ofBefore are words that speak of what was said before.
	ofBefore = wordSet("it its it's that those them they this these same one ones there both another other others either neither each more less so too again back")
	// opensNone are words that no clause of its own begins with.
	opensNone = wordSet("of than to for with at in on by above below under over through not no yes nor or but because since so as step")
	// relates are words that may go on with what stands before a comma; behind a word that leads on they ask.
	relates = wordSet("which who whose where")
)

// saysAlone reports whether what a clause says stands by itself, and no word of it was taken for another.
func saysAlone(r Reading) bool {
	return r.Ask == nil && len(r.Acts) > 0 && len(r.Taken) == 0 && !slices.ContainsFunc(r.Acts, func(a Act) bool { return !clauseOfItsOwn(a) })
}

func clauseOfItsOwn(a Act) bool {
	switch a.Kind {
	case State:
		return a.Wall == "" && !slices.ContainsFunc(a.Statements, func(st solver.Statement) bool { return st.Name.Wall != "" })
	case Ask, Teach, Recap, ShowAll, Tolerance:
		return true
	}
	return false
}

// goTogether reports whether what two clauses say may stand side by side: nothing is said twice, and the later one takes nothing from the
// earlier, as a place in a bay that is measured or the size of what is priced.
func goTogether(first, then Reading, cut partedAt, right []atom) bool {
	for _, a := range first.Acts {
		for _, b := range then.Acts {
			if a.String() == b.String() || a.Kind == State && b.Kind == State && !mayFollow(a.Statements[0].Name, b.Statements[0].Name) {
				return false
			}
		}
	}
	if cut.onward && (countOnly(right, then) || len(right) < 3 && then.Acts[0].Kind == Ask) {
		return false // "spare 10% plus 2 boards", "overall 12 feet plus the posts"
	}
	if asked := slices.IndexFunc(then.Acts, func(a Act) bool { return a.Kind == State }) < 0; asked && first.Acts[0].Kind == Ask && len(then.Acts) <= joinedIn(right) {
		return false // "cuts, marks, list": something of the list is not heard
	}
	if first.Acts[len(first.Acts)-1].Kind != State && then.Acts[0].Kind == State && !cut.stop {
		return opensOrder(right) // "how many rails, and a gap of three" may try the gap
	}
	return true
}

// countOnly reports whether a clause begins with a figure that counts: what is counted may be of the clause before.
func countOnly(right []atom, r Reading) bool {
	return (numeric(right[0]) || spelledNumber(right[0].text)) && r.Acts[0].Kind == State && solver.KindOf(r.Acts[0].Statements[0].Name.Quantity) == solver.Count
}

// joinedIn counts the commas and the "and"s inside a clause.
func joinedIn(part []atom) (n int) {
	for i := 1; i+1 < len(part); i++ {
		if part[i].text == "," || part[i].text == "and" {
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

// plusParts turns a "plus" before what plainly begins a clause into a comma: "the wall is a metre tall plus tape reads 157-5/8 from post to post".
func plusParts(in []atom) []atom {
	out := in
	for i := 2; i+2 < len(in); i++ {
		if in[i].text != "plus" || !beginsClause[in[i+1].text] && !(in[i+1].text == "bay" && (numeric(in[i+2]) || spelledNumber(in[i+2].text))) {
			continue
		}
		if &out[0] == &in[0] {
			out = slices.Clone(in)
		}
		out[i].text, out[i].kind = ",", aSign
	}
	return out
}

// beginsClause are words that a clause of its own begins with, and no part or figure that could be added.
var beginsClause = wordSet("how what what's which where when why who may can could will would shall should is are do does tape i we they make keep set show give tell draw print leave put let please don't never")

// plusJoins turns a "plus" or an "also" that only joins two clauses into a comma: "gap two inches plus bay max six feet" adds nothing to the gap. It adds
// where a value follows it ("gap plus a quarter"), and between names that nothing was told of ("the wall plus the cap is 44").
func plusJoins(in []token) []token {
	told := false // before in the sentence stands more than names
	for i := range in {
		switch t := &in[i]; {
		case t.kind == kStop || t.kind == kQMark:
			told = false
		case i > 0 && i+1 < len(in) && (t.kind == kChange && t.text == "plus" && (joinsClauses(in[i+1:], told) || countsAnew(in, i)) ||
			t.kind == kSellMore && t.text == "also" && !mayBeSold[in[i+1].kind]):
			t.kind, t.found, t.text = kComma, nil, ","
			told = false
		case t.kind != kPart && t.kind != kLoc && t.kind != kComma:
			told = true
		}
	}
	return in
}

// mayBeSold are the classes of what follows where an "also" adds to the lengths on sale.
var mayBeSold = map[tokenKind]bool{kNum: true, kSize: true, kSell: true, kSellMore: true, kStockWord: true, kHave: true, kHead: true, kOnly: true, kComma: true, kStop: true, kQMark: true}

// countsAnew reports whether behind the "plus" at token i something is counted that was not spoken of: "stiffener spacing 32 plus 5 rails".
func countsAnew(in []token, i int) bool {
	if i+2 >= len(in) || in[i+1].kind != kNum || in[i+1].amt.unit != bare || in[i+2].kind != kPart || !countedParts[in[i+2].key()] || strings.HasPrefix(in[i+2].text, "board") || strings.HasPrefix(in[i+2].text, "plank") {
		return false
	}
	key := in[i+2].key()
	return !slices.ContainsFunc(in[:i], func(t token) bool { return t.kind == kPart && t.key() == key })
}

// countedParts are parts that are set by how many there are.
var countedParts = wordSet("rail stiffener bay")

// kindAt is the class of token i, 0 past the end.
func kindAt(in []token, i int) tokenKind {
	if i >= len(in) {
		return 0
	}
	return in[i].kind
}

// joinsClauses reports whether what stands behind a "plus" is a clause of its own.
func joinsClauses(behind []token, told bool) bool {
	switch behind[0].kind {
	case kPart, kLoc:
		for i := 1; told && i < len(behind); i++ {
			switch behind[i].kind {
			case kNum, kSize:
				return true
			case kStop, kQMark:
				return false
			}
		}
		return false
	case kNum:
		if k := kindAt(behind, 1); k == kSize || k == kStockWord || k == kPart || k == kLoc {
			return told && (behind[0].amt.unit == feet || behind[0].amt.unit == metric) // "gap 2 plus 14 foot 2x6s are 13.20"
		}
		return false
	case kFactor, kIt:
		return false
	case kQuest:
		return told && behind[0].key() != "posts" // "overall 12 feet plus the posts"
	}
	return told
}
