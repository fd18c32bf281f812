package lumberlist

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// countedPieces are boards of one length as they are counted: how many, of what size, how long.
type countedPieces struct {
	count  int
	size   []int
	length []scan.Atom
}

// PiecesTogether gives each entry of a list of boards its size and its unit, wherever the list has told them: "three eight and two ten foot
// two by sixes", "six 2x6 tens and four twelves", "2x6: 6 tens, 4 twelves", "four each of 8 and 10 foot 2x6s". Who tells that he has them says
// so plainly then, as "we have" may tell what is sold.
func PiecesTogether(atoms []scan.Atom) []scan.Atom {
	if !slices.ContainsFunc(atoms, func(a scan.Atom) bool {
		return sharedUnits[a.Text] != "" || measure.LumberFeet[a.Text] > 0 || a.Text == "s" || a.Text == "x"
	}) {
		return atoms
	}
	for i := range atoms {
		if i > 0 && (chunk.Numeric(atoms[i-1]) || atoms[i-1].Text == "x" || atoms[i-1].Text == "by" || atoms[i-1].Text == "$") {
			continue
		}
		told, end := piecesFrom(atoms, i)
		if len(told) < 2 {
			continue
		}
		from, have := ownsFrom(atoms, i)
		if told[0].size == nil && !have {
			continue
		}
		if from == i && (i == 0 || chunk.EndsPart(atoms, i-1)) && ownedBehind(atoms, end) {
			have = true
		}
		out := append(make([]scan.Atom, 0, len(atoms)+12), atoms[:from]...)
		if have {
			out = append(out, chunk.Worded(atoms[i], "i"), chunk.Worded(atoms[i], "have"))
		}
		at := atoms[i]
		for k, p := range told {
			if k > 0 {
				out = append(out, chunk.Worded(at, "and"))
			}
			out = append(out, scan.Atom{Text: measure.Itoa(p.count), Kind: scan.Digits, At: at.At, End: at.End})
			if p.size != nil {
				out = append(out, atoms[p.size[0]:p.size[1]]...)
			}
			out = append(out, p.length...)
		}
		return append(out, atoms[end:]...)
	}
	return atoms
}

// piecesFrom reads counted boards from an atom on and returns the atom behind them; none where one of them lacks a size or a length.
func piecesFrom(atoms []scan.Atom, from int) (told []countedPieces, end int) {
	l := pieceList{atoms: atoms}
	i := from
	if next, ok := l.sizeAt(i); ok { // "2x6: 6 tens, 4 twelves", "2x6 tens x 6, twelves x 4"
		after := next
		if after < len(atoms) && (atoms[after].Text == ":" || atoms[after].Text == "-" || atoms[after].Text == ",") {
			after++
		}
		if n, _ := countTold(atoms, min(after, len(atoms)-1)); n > 0 && after > next {
			l.size, i = []int{i, next}, after
		}
	}
	for i < len(atoms) {
		next := l.entry(i)
		if next == i {
			break
		}
		i, end = next, next
		for i < len(atoms) && pieceJoints[atoms[i].Text] {
			i++
		}
		if i == end {
			break
		}
	}
	if len(l.told) == 0 {
		return nil, 0
	}
	end = l.sizedBehind(end)
	for k := range l.told {
		p := &l.told[k]
		if p.length == nil || p.count == 0 { // "three eight and two ten foot"
			return nil, 0
		}
		if p.size == nil && k > 0 && l.told[k-1].size != nil {
			p.size = l.told[k-1].size
		}
	}
	last := l.told[len(l.told)-1].size
	for k := range l.told {
		if p := &l.told[k]; p.size == nil {
			if slices.ContainsFunc(l.told[:len(l.told)-1], func(q countedPieces) bool { return q.size != nil }) {
				return nil, 0
			}
			p.size = last
		}
	}
	return l.told, end
}

// timesSaid stand between boards and how many they are.
var timesSaid = scan.WordSet("x : times")

// pieceJoints stand between two entries.
var pieceJoints = scan.WordSet(", and & plus ;")

// pieceList is a list of counted boards as far as it has been read.
type pieceList struct {
	atoms []scan.Atom
	told  []countedPieces
	size  []int // told before all
}

func (l *pieceList) sizeAt(i int) (next int, ok bool) {
	if i >= len(l.atoms) {
		return i, false
	}
	next, ok = (&phrase.Match{Atoms: l.atoms}).FigureAt(i, phrase.OpSize)
	if ok && next < len(l.atoms) && l.atoms[next].Text == "s" {
		next++
	}
	return next, ok
}

// entry reads boards of one length, or "four each of 8 foot and 10 foot 2x6s", and returns the atom behind them; i where there are none.
func (l *pieceList) entry(i int) int {
	atoms, r, p := l.atoms, measure.Reader{Atoms: l.atoms}, countedPieces{size: l.size}
	start := i
	sizedAt := -1
	if next, ok := l.sizeAt(i); ok {
		p.size, sizedAt, i = []int{i, next}, i, next
	} else if _, _, next := lumberTold(r, i, ""); next > i && (len(l.told) > 0 || l.size != nil) && timesSaid[r.Word(next)] {
		// "2x6 tens x 6, twelves x 4"
	} else if n, next := countTold(atoms, i); n > 0 && n < 100 && next < len(atoms) && atoms[next].Text != "-" {
		p.count, i = n, next
	} else if w := r.Word(i + 1); r.Word(i) == "a" && (w == "couple" || w == "pair") {
		p.count, i = 2, i+2
	} else if r.Word(i) == "a" || r.Word(i) == "an" {
		p.count, i = 1, i+1
	} else {
		return start
	}
	each := false
	for w := r.Word(i); w == "of" || w == "each" || w == "ea" || w == "pieces" || w == "lengths" || idiom.BoardWords[w] && w != "rails" && w != "rail"; w = r.Word(i) {
		each, i = each || w == "each", i+1
	}
	for p.count > 0 && sizedAt < 0 && pieceLight[r.Word(i)] {
		i++
	}
	if next, ok := l.sizeAt(i); ok && sizedAt < 0 {
		p.size, i = []int{i, next}, next
	}
	if w := r.Word(i); p.size != nil && p.count > 0 && (w == "at" || w == "of" || w == ",") {
		if _, _, next := lumberTold(r, i+1, ""); next > i+1 && (w != "," || r.Word(next) == "each" || r.Word(next) == "long" || r.Word(next) == "apiece") {
			i++ // "four two by sixes at twelve feet", "six 2x6s, ten foot each"
		}
	}
	if p.size != nil && (r.Word(i) == "x" || r.Word(i) == "by") {
		i++ // "2x6x10"
		p.length, _, i = lumberTold(r, i, "footers")
	} else {
		unit := ""
		if p.count > 0 && (l.bareLength(i) || p.count == 1 && len(l.told) > 0 && l.singleLength(i)) {
			unit = "footers"
		}
		length, _, next := lumberTold(r, i, unit)
		p.length, i = length, next
	}
	if p.length == nil {
		return start
	}
	others := []countedPieces{}
	for each && (r.Word(i) == "and" || r.Word(i) == ",") {
		length, _, next := lumberTold(r, i+1, "")
		if next == i+1 {
			break
		}
		others, i = append(others, countedPieces{count: p.count, length: length}), next
	}
	for idiom.BoardWords[r.Word(i)] && r.Word(i) != "rails" && r.Word(i) != "rail" || p.size != nil && p.count > 0 && (r.Word(i) == "long" || r.Word(i) == "each" || r.Word(i) == "apiece") {
		i++
	}
	if next, ok := l.sizeAt(i); ok && (p.size == nil || l.size != nil) {
		p.size, i = []int{i, next}, next
	}
	if w := r.Word(i); p.count == 0 && timesSaid[w] {
		n, next := countTold(atoms, min(i+1, len(atoms)-1))
		if n == 0 || next == i+1 || n > 99 {
			return start
		}
		p.count, i = n, next
	}
	if p.count == 0 {
		return start
	}
	l.told = append(l.told, p)
	for _, o := range others {
		o.size = p.size
		l.told = append(l.told, o)
	}
	return i
}

// pieceLight are words of how boards are that may stand before their size.
var pieceLight = scan.WordSet("more other good old nice new used full whole leftover salvaged straight dry weathered gray grey sound solid decent clean fresh perfectly unused reclaimed")

// bareLength reports whether a figure without a unit is how long boards are, as the next boards are told in feet: "three eight and two ten
// foot two by sixes".
func (l *pieceList) bareLength(i int) bool {
	atoms := l.atoms
	n, next := countTold(atoms, min(i, len(atoms)-1))
	if n < 6 || n%2 > 0 || n > 24 || next+2 >= len(atoms) || !pieceJoints[atoms[next].Text] {
		return false
	}
	for pieceJoints[atoms[next].Text] && next+1 < len(atoms) {
		next++
	}
	count, after := countTold(atoms, next)
	if count == 0 || after >= len(atoms) {
		return false
	}
	if l.bareLength(after) {
		return true
	}
	_, _, end := lumberTold(measure.Reader{Atoms: atoms}, after, "")
	return end > after
}

// singleLength reports whether a figure without a unit is how long one board is: "… and a sixteen".
func (l *pieceList) singleLength(i int) bool {
	n, next := countTold(l.atoms, min(i, len(l.atoms)-1))
	return n >= 6 && n <= 24 && n%2 == 0 && (next == len(l.atoms) || chunk.EndsPart(l.atoms, next) || pieceJoints[l.atoms[next].Text])
}

// sizedBehind takes a size that is told behind all: "six tens and four twelves, all 2x6", "… in 2x6".
func (l *pieceList) sizedBehind(end int) int {
	if slices.ContainsFunc(l.told, func(p countedPieces) bool { return p.size != nil }) {
		return end
	}
	i, r := end, measure.Reader{Atoms: l.atoms}
	for w := r.Word(i); w == "," || w == "all" || w == "both" || w == "of" || w == "in" || w == "them"; w = r.Word(i) {
		i++
	}
	next, ok := l.sizeAt(i)
	if i == end || !ok {
		return end
	}
	l.told[len(l.told)-1].size = []int{i, next}
	return next
}

// ownsFrom is where the words begin before an atom that tell that somebody has what follows; the atom itself where there are none.
func ownsFrom(atoms []scan.Atom, i int) (from int, owns bool) {
	from = i
	for from > 0 && pieceOwners[atoms[from-1].Text] {
		from--
		owns = owns || ownsBoards[atoms[from].Text] || atoms[from].Text == "there"
	}
	if from > 2 && atoms[from-1].Text == "had" && atoms[from-3].Text == "if" {
		return from - 2, true // "what if I had six 2x6 tens and four twelves"
	}
	if !owns || from > 0 && !chunk.EndsPart(atoms, from-1) && !chunk.Joints[atoms[from-1].Text] && atoms[from-1].Text != "if" {
		return i, false
	}
	return from, true
}

var pieceOwners = scan.WordSet(`i we have got own 've there is are 's still also already here just now only
	kept saved pulled salvaged scrounged rescued reclaimed stripped pried dug dragged hauled inherited out up off down back away home`)

// ownedBehind reports whether it is told right behind boards that they are at hand: "… on hand", "… are mine", "… in the garage".
func ownedBehind(atoms []scan.Atom, i int) bool {
	owned := false
	for ; i < len(atoms) && !chunk.EndsPart(atoms, i); i++ {
		if !HandWords[atoms[i].Text] && !piecesAtHand[atoms[i].Text] {
			return false
		}
		owned = owned || piecesAtHand[atoms[i].Text]
	}
	return owned
}

// piecesAtHand are words that tell that boards are there.
var piecesAtHand = scan.WordSet("hand mine ours garage shed barn truck basement shop already over leftover paid own pile stack")
