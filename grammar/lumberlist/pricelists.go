package lumberlist

import (
	"slices"
	"strconv"
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/measure"
	"saywright/grammar/parse"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// A price list tells what lumber costs length by length: "paying 8.60 for a ten foot 2x6 and 13.95 for a fourteen", "2x6 8' 6.10, 10' 8.20",
// "2x6x10 is 11.40, 16 is 19.75". Its grammar is its own: entries with joints between them, each of a size, a length and a price in any
// order, and words of the tables below beside them. What one entry leaves out, a size or a unit, is that of the entry before. A whole
// number without a word or sign of money is a price only where the list leaves nothing else that it could be.

// priceWord tells what a word does in a price list.
type priceWord uint8

const (
	lightWord priceWord = iota + 1 // may stand anywhere in an entry
	linkWord                       // joins a length to what it costs
	linkSign                       // joins it, too, but may as well tell a count
	jointWord                      // stands between two entries
	eachWord                       // tells that a price is for one
)

// priceWords are the words of a price list.
var priceWords = rolesOf(map[priceWord]string{
	lightWord: "a an the of in to it they me us now today length lengths long board boards plank planks stick sticks pieces post posts timber got 's",
	linkWord:  "is are be cost costs costing run runs running comes come go goes going went sell sells selling priced for at @",
	linkSign:  ": = -",
	jointWord: ", ; and but while plus",
	eachWord:  "each apiece ea per every piece",
})

func rolesOf(rows map[priceWord]string) map[string]priceWord {
	out := map[string]priceWord{}
	for role, row := range rows {
		for w := range scan.WordSet(row) {
			out[w] = role
		}
	}
	return out
}

// priceLeads may stand before the first price.
var priceLeads = scan.WordSet("he she says said told quoted quotes us that clerk man lady guy fellow counter desk i we they am is the yard store shop merchant lumberyard place want wants charge charges charging ask asks asking pay paying paid timber lumber wood price prices list : 's")

// pricingWords are words of lengths, of sizes and of prices; without one no line is looked at.
var pricingWords = scan.WordSet("for is are cost costs run runs comes come goes go each apiece ea : paying paid pay charge charges $ dollars bucks at @ = in footer footers eights tens twelves fourteens sixteens eighteens twenties foot ft feet ' s m mm cm meter meters metre metres x by")

// pricedLength is a length of lumber and what it costs: the place of its size, its length in plain words, and its price in cents.
type pricedLength struct {
	size    []int
	length  []scan.Atom
	long    float64
	cents   int
	priceAt int
	paidFor bool           // the price was told first
	bare    bool           // the price is a whole number without a word or sign of money
	others  []pricedLength // lengths that cost the same: "tens and twelves are 8.95"
}

func (p pricedLength) whole() bool { return p.length != nil && p.cents > 0 }

// tells reports whether a length is among those that cost the same: "they sell twelves and sixteens, twelves at 11.20" begins anew with it.
func (p pricedLength) tells(long float64) bool {
	return p.long == long || slices.ContainsFunc(p.others, func(o pricedLength) bool { return o.long == long })
}

// PricedTogether sets price lists to one plain price after the other. Every word of the clauses must be one of a price, of a length, or
// of the lead of such a clause, so that what is denied, tried or claimed is left as it is.
func PricedTogether(atoms []scan.Atom) []scan.Atom {
	if !slices.ContainsFunc(atoms, func(a scan.Atom) bool { return pricingWords[a.Text] }) || slices.ContainsFunc(atoms, func(a scan.Atom) bool { return a.Text == "?" }) {
		return atoms
	}
	anew := 0
	for i := range atoms {
		if i > 0 && !chunk.EndsPart(atoms, i-1) && !chunk.Joints[atoms[i-1].Text] && !opensList[atoms[i-1].Text] {
			continue
		}
		if i < anew {
			continue
		}
		told, end, again := pricesFrom(atoms, i)
		if anew = again; len(told) == 0 || len(told) == 1 && told[0].size == nil && !told[0].paidFor && !phrase.SaidBeforeOf(colonSaid)(atoms[i:end], nil) {
			continue
		}
		if len(told) == 1 && slices.ContainsFunc(atoms[end:], func(a scan.Atom) bool { return parse.ThemWords[a.Text] }) {
			continue // "and I've got four of those"
		}
		return plainPrices(atoms, told, i, end)
	}
	return atoms
}

// opensList may stand before a price list inside a clause.
var opensList = scan.WordSet("if suppose supposing that says said")

// plainPrices puts plain prices in the place of the list that was told from an atom to another.
func plainPrices(atoms []scan.Atom, told []pricedLength, from, end int) []scan.Atom {
	out := append(make([]scan.Atom, 0, len(atoms)+8), atoms[:from]...)
	for k, p := range told {
		at := atoms[p.priceAt]
		if k > 0 {
			out = append(out, scan.Atom{Text: ",", Kind: scan.Sign, At: at.At, End: at.End})
		}
		if p.size != nil {
			out = append(out, atoms[p.size[0]:p.size[1]]...)
		}
		out = append(out, p.length...)
		if p.size == nil {
			out = append(out, chunk.Worded(at, "boards"))
		}
		out = append(out, chunk.Worded(at, "cost"))
		if end := moneyEnd(atoms, p.priceAt); end > p.priceAt && !p.bare && (atoms[p.priceAt].Kind != scan.Word || slices.ContainsFunc(atoms[p.priceAt:end], func(a scan.Atom) bool { return idiom.CoinNames[a.Text] })) {
			out = append(out, atoms[p.priceAt:end]...) // as it was said, for what is corrected behind it
			continue
		}
		price := strconv.Itoa(p.cents/100) + "." + strconv.Itoa(p.cents/10%10) + strconv.Itoa(p.cents%10)
		out = append(out, scan.Atom{Text: price, Kind: scan.Digits, At: at.At, End: at.End})
	}
	return append(out, atoms[end:]...)
}

// priceList is a price list as far as it has been read.
type priceList struct {
	atoms   []scan.Atom
	told    []pricedLength
	now     pricedLength
	end     int // the atom behind the last entry
	size    []int
	unit    string
	begun   bool
	anew    int    // the atom at which a length comes again that stands in the entry already
	dollars bool   // a price in whole dollars was told
	sure    bool   // a price was told that is nothing but money
	link    string // the last word that joins a length to its price
	came    bool
	role    priceWord // what the last word was, 0 for a figure
}

// pricesFrom reads prices from an atom on, up to the last that is whole, and returns the atom behind it. Where a length comes again before
// the first was priced ("they sell twelves and sixteens, twelves at 11.20"), the prices begin there.
func pricesFrom(atoms []scan.Atom, from int) (told []pricedLength, end, anew int) {
	l := priceList{atoms: atoms}
	i := from
	for i < len(atoms) && (!chunk.EndsSentence(atoms, i) || l.goesOn(i)) {
		next, fits := l.step(i)
		if !fits {
			break
		}
		i = next
	}
	if l.now.whole() {
		l.keep(i)
	}
	l.sizedBehind()
	if end = l.tailEnd(l.end); !l.holds(end) {
		return nil, 0, l.anew
	}
	return l.told, end, l.anew
}

// goesOn reports whether the sign that ends a sentence at an atom stands between two entries.
func (l *priceList) goesOn(i int) bool {
	if l.atoms[i].Text == "?" || l.atoms[i].Text == "!" || !l.now.whole() || i+1 >= len(l.atoms) {
		return false
	}
	for i++; i+1 < len(l.atoms) && nextEntry[l.atoms[i].Text]; i++ {
	}
	_, _, next := lumberTold(measure.Reader{Atoms: l.atoms}, i, "")
	_, sized := (&phrase.Match{Atoms: l.atoms}).FigureAt(i, phrase.OpSize)
	_, counted := countTold(l.atoms, i)
	return next > i || sized || moneyEnd(l.atoms, i) > i || counted > i && chunk.TextAt(l.atoms, counted) == "for"
}

// nextEntry may begin an entry behind the end of a sentence.
var nextEntry = scan.WordSet("the a an in for and")

// sizedBehind takes the size that is told behind a list: "eight footers 7.89 and twelve footers 11.49, both 2x6".
func (l *priceList) sizedBehind() {
	i, r := l.end, measure.Reader{Atoms: l.atoms}
	if len(l.told) == 0 || l.told[0].size != nil || r.Word(i) == "" {
		return
	}
	if l.atoms[i].Text == "," {
		i++
	}
	if w := r.Word(i); w != "both" && w != "all" || w == "both" && len(l.told) != 2 {
		return
	}
	i++
	for w := r.Word(i); w == "of" || w == "them" || w == "in" || w == "are" || w == "for"; w = r.Word(i) {
		i++
	}
	if i >= len(l.atoms) {
		return
	}
	if next, ok := (&phrase.Match{Atoms: l.atoms}).FigureAt(i, phrase.OpSize); ok && (next == len(l.atoms) || chunk.EndsPart(l.atoms, next)) {
		for k := range l.told {
			l.told[k].size = []int{i, next}
		}
		l.size, l.end = nil, next
	}
}

// keep puts the entry that was read up to an atom to the others.
func (l *priceList) keep(end int) {
	if l.now.size == nil {
		l.now.size = l.size
	}
	for end > 0 && loosePriceEnd[l.atoms[end-1].Text] {
		end-- // "… 17.60 at the yard"
	}
	l.told, l.size, l.end = append(l.told, l.now), l.now.size, end
	for _, other := range l.now.others {
		p := l.now
		p.length, p.long = other.length, other.long
		l.told = append(l.told, p)
	}
	l.now = pricedLength{}
}

// loosePriceEnd are words that no entry ends in.
var loosePriceEnd = scan.WordSet("at in for of the a an to - :")

// step reads what stands at an atom and returns the atom behind it; the atom itself where an entry was whole before it.
func (l *priceList) step(i int) (next int, fits bool) {
	w := l.atoms[i].Text
	was := l.role
	role := priceWords[w]
	if l.joint(i) {
		role = jointWord
	}
	if next := l.figure(i, was); next > i {
		l.role, l.begun = 0, true
		return next, true
	} else if next == i-1 {
		l.keep(i)
		return i, true
	}
	switch {
	case role == jointWord:
		if l.now.whole() {
			l.keep(i)
		}
	case !l.begun && (priceLeads[w] || role == lightWord || w == "for"):
		return i + 1, true
	case l.begun && was != jointWord && (w == "one" || w == "ones"):
		return i + 1, true
	case role == 0 || l.now.whole() && (role == linkWord || role == linkSign) && w != "at" && w != "in" && w != "for":
		return i, false
	case role == linkWord || role == linkSign:
		l.link, l.came = w, l.came || w == "come" || w == "comes"
	}
	if role != lightWord || was == jointWord {
		l.role = role
	}
	return i + 1, true
}

// joint reports whether an atom may stand between two entries.
func (l *priceList) joint(i int) bool {
	a := l.atoms[i]
	return priceWords[a.Text] == jointWord || a.Text == "." || a.Text == "/" && !a.Glued
}

// figure reads a size, a length or a price at an atom and returns the atom behind it; i where none stands there or it has no place, i-1
// where it begins a new entry.
func (l *priceList) figure(i int, was priceWord) int {
	atoms, now := l.atoms, &l.now
	if next, ok := (&phrase.Match{Atoms: atoms}).FigureAt(i, phrase.OpSize); ok {
		if now.whole() && !(now.size == nil && was != jointWord && (now.paidFor || l.size == nil)) {
			return i - 1
		}
		if now.size != nil {
			return i
		}
		now.size = []int{i, next}
		if next < len(atoms) && atoms[next].Text == "s" {
			next++
		}
		if next+1 < len(atoms) && (atoms[next].Text == "x" || atoms[next].Text == "by") && now.length == nil {
			if length, long, u, end := lumberLong(measure.Reader{Atoms: atoms}, next+1, "footers"); end > next+1 { // "2x6x10"
				now.length, now.long, l.unit, next = length, long, u, end
			}
		}
		return next
	}
	if cents, next := centsTold(atoms, i); next > i {
		if now.whole() {
			return i - 1
		}
		if now.cents > 0 {
			return i
		}
		l.sure, l.dollars = true, l.dollars || cents%100 == 0
		now.cents, now.priceAt = cents, i
		return next
	}
	if now.length != nil && now.cents == 0 {
		if cents, next := l.barePrice(i, was); next > i {
			l.dollars = l.dollars || cents%100 == 0
			now.cents, now.priceAt, now.bare = cents, i, true
			return next
		}
	}
	if now.length == nil && now.cents == 0 && !now.whole() {
		if n, next := countTold(atoms, i); next > i && next < len(atoms) && atoms[next].Text == "for" && n > 1 && n < 60 && (was == jointWord || !l.begun) {
			now.cents, now.priceAt, now.bare = 100*n, i, true // "six for a ten foot 2x6"
			return next + 1
		}
	}
	length, long, u, next := lumberLong(measure.Reader{Atoms: atoms}, i, l.unit)
	if next == i {
		return i
	}
	if now.whole() {
		return i - 1
	}
	if now.length != nil {
		if was != jointWord || now.cents > 0 || u != l.unit {
			return i
		}
		if now.tells(long) {
			l.anew = i
			return i
		}
		now.others = append(now.others, pricedLength{length: length, long: long})
		return next
	}
	now.length, now.long, now.paidFor, l.unit = length, long, now.cents > 0, u
	return next
}

// barePrice reads a price that is told without a word or sign of money, behind its length: "2x6 eights are 6", "8' 6 dollars, 10' 9", "tens
// are 8 95".
func (l *priceList) barePrice(i int, was priceWord) (cents, next int) {
	atoms := l.atoms
	linked := was == linkWord || was == linkSign
	if !linked && !l.dollars {
		return moneyAndHalf(atoms, i, len(l.told) > 0)
	}
	if cents, next := moneyAndHalf(atoms, i, true); next > i {
		return cents, next
	}
	n, next := countTold(atoms, i)
	if n < 2 || n > 60 {
		return 0, i
	}
	cents = 100 * n
	if linked && next < len(atoms) && atoms[next].Kind == scan.Digits && len(atoms[next].Text) == 2 && !strings.ContainsAny(atoms[next].Text, ".,") && atoms[next].Text > "24" {
		small, _ := strconv.Atoi(atoms[next].Text)
		cents, next = cents+small, next+1
	}
	if next < len(atoms) && !l.joint(next) && priceWords[atoms[next].Text] != eachWord && measure.LumberFeet[atoms[next].Text] == 0 && !chunk.EndsPart(atoms, next) && l.tailEnd(next) == next {
		return 0, i
	}
	return cents, next
}

// holds reports whether what was read up to an atom is a price list and nothing else. Whole numbers without a word of money must be
// several prices, the longer the board the dearer, and nothing may stand behind them.
func (l *priceList) holds(end int) bool {
	if len(l.told) == 0 || len(l.told) > 1 && l.told[0].size == nil && l.size != nil {
		return false // of what size the first is has not been told
	}
	bare := false
	for _, p := range l.told {
		bare = bare || p.bare
	}
	if bare && (l.came || slices.ContainsFunc(l.told, func(p pricedLength) bool { return p.others != nil })) {
		return false // "the tens come at 8" may be when they come
	}
	if !bare {
		return true
	}
	if len(l.told) < 2 || end < len(l.atoms) && !chunk.EndsPart(l.atoms, end) && !chunk.Joints[l.atoms[end].Text] {
		return false
	}
	if !l.sure && (priceWords[l.link] == linkSign || l.told[0].size == nil && len(l.told) < 3) {
		return false // "8s: 6, 10s: 8" may be how many there are
	}
	for k := 1; k < len(l.told); k++ {
		a, b := l.told[k-1], l.told[k]
		if a.bare != b.bare && !l.sure || a.paidFor != b.paidFor || (a.long < b.long) != (a.cents < b.cents) && slices.Equal(a.size, b.size) {
			return false
		}
	}
	return true
}
