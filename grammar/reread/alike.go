package reread

import (
	"strings"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/hear"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/paraphrase"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
)

// soundsLike are words that a phone writes for words of the vocabulary that sound like them, as far as they are words at all: on each
// line what may be meant, and what is written for it. A word is taken for another only where the line cannot be read as it
// stands, and only where every choice of words that can be read says the same.
const soundsLike = `
	one: won wun
	two: too tu to
	three: threa
	four: fore for
	fours: force fores
	eights: aids
	six: sicks sics
	eight: ate ait
	five: fife
	sorry: sory sorrry
	oops: opps ooops
	inches: inchs
	feet: feat feats fete
	dollars: dolars dollers dollors dolers
	cents: sense scents sents
	eighth: eight
	sixteenth: sixteen
	by: bye buy
	buy: bye by
	be: bee
	than: then
	would: wood
	not: knot knots
	no: know
	new: knew gnu
	need: knead kneed
	right: write rite wright
	wear: ware
	where: wear ware
	which: witch wich
	here: hear
	high: hi
	higher: hire
	height: hite hight
	way: weigh whey
	wait: weight
	all: awl
	read: reed
	reads: reeds
	eights: ates aights
	our: hour
	do: due dew
	least: leased leest
	allowed: aloud
	there: their
	their: there
	steel: steal
	floor: flower
	clear: klear
	half: haf
	kids: kidz
	wider: whiter
	wide: whyd
	some: sum
	so: sew sow
	seems: seams
	see: sea
	sure: shore
	through: threw
	made: maid
	you: ewe
	your: yore
	i: eye
	might: mite
	must: mussed
	please: pleas
	none: nun
	more: moor
	whether: weather
	told: tolled
	very: vary
	floor: flore
	boards: bored boreds bords boreds
	board: bored bord
	rails: rales rayls raels wrails reels
	rail: rale rayl reel
	post: poast poste
	posts: poasts postes
	marks: marx marques
	mark: marc marque
	pieces: peaces
	piece: peace
	sell: cell
	sells: cells
	selling: celling
	sale: sail
	build: bild billed
	cheap: cheep
	waste: waist
	kerf: curf kirf kerve curve
	plumb: plum
	leans: leens liens
	lean: lien
	lumber: lumbar
	timber: timbre
	gap: gab
	cost: caust
	saw: sore
	steps: stepps
	step: stepp
	stiffeners: stiffners
	measured: measurd
	saved: safed
	draw: drawer
	shown: shone
	cut: kut
	already: allready
	length: linkth
	plane: plain
	stock: stalk
	brackets: brakets
	price: prize
	prices: prizes
	stairs: stares
	side: sighed
	raise: rays raze
	tight: tite
	level: levil
`

// soundsLikePairs are two words that a phone writes for one.
var soundsLikePairs = map[string]string{
	"all ready": "already", "half to": "have to", "cheep est": "cheapest", "cheap est": "cheapest", "why dest": "widest", "wide est": "widest", "stiffen er": "stiffener", "stiffen ers": "stiffeners",
	"stiff ners": "stiffeners", "stiff eners": "stiffeners", "brack it": "bracket", "brack its": "brackets", "have wall": "half wall", "in chess": "inches", "bore d": "board",
	"six teen": "sixteen", "may be": "maybe", "for get": "forget", "for gets": "forgets", "stiffen her": "stiffener", "stiffen hers": "stiffeners", "over all": "overall", "al ready": "already", "be cause": "because", "all so": "also", "a weigh": "away", "any wear": "anywhere", "any where": "anywhere", "every wear": "everywhere", "a cross": "across", "a part": "apart", "a round": "around", "a long": "along", "a bove": "above", "be tween": "between", "be low": "below",
	"an other": "another", "some thing": "something", "with out": "without", "in stead": "instead", "sun deck": "sundeck",
	"hole wall": "whole wall", "hole thing": "whole thing", "hole lot": "whole lot", "hole job": "whole job", "hole plan": "whole plan", "hole list": "whole list", "hole i": "opening i", "hole we": "opening we", // else a hole is one of a bracket
}

var alikes = sync.OnceValue(func() map[string][]string {
	m := map[string][]string{}
	for _, line := range strings.Split(strings.TrimSpace(soundsLike), "\n") {
		meant, heard, _ := strings.Cut(strings.TrimSpace(line), ": ")
		for _, w := range strings.Fields(heard) {
			m[w] = append(m[w], meant)
		}
	}
	return m
})

const (
	mostAlike  = 7   // words in a line that may stand for another
	mostHeard  = 160 // readings tried for them
	leastHeard = 3   // words that a line must have to be read by its sound
)

// pointedBack are words that point at what was said, after which a "too" is no number either.
var pointedBack = scan.WordSet("that this it them those these one ones me us him her you mine ours yours his hers theirs")

// makesNoun are words behind which a "need" or a "use" is a noun, and a "for" no four: "is there a need for stiffeners".
var makesNoun = scan.WordSet("a any no some much little the this that real great further more")

// mayMean reports whether a small word stands where a number can be meant: "an eight of an inch", "we have for boards".
func mayMean(atoms []scan.Atom, i int) bool {
	next := ""
	if i+1 < len(atoms) {
		next = atoms[i+1].Text
	}
	switch atoms[i].Text {
	case "buy":
		return i == 0 || !paraphrase.Buyers[atoms[i-1].Text] // "where can I buy the brackets"
	case "eight", "sixteen":
		return next == "of"
	case "weigh":
		return next == "" // "give me the cheep est weigh", but "do six rails weigh more"
	case "by":
		return i > 1 && atoms[i-1].Text == "to" && paraphrase.CountsNext[atoms[i-2].Text]
	case "too":
		return !degrees[next] && (!(next == "" || i+1 < len(atoms) && atoms[i+1].Kind == scan.Sign) || i < 1 || !paraphrase.Be[atoms[i-1].Text] && !pointedBack[atoms[i-1].Text]) // "the gap should be too", "could we do that too"
	case "to", "for":
		plural := measure.CountNouns[next] && strings.HasSuffix(next, "s") || scan.Ones[next] > 0 && i+2 < len(atoms) && (atoms[i+2].Text == "by" || atoms[i+2].Text == "buy")
		return plural && i > 0 && paraphrase.CountsNext[atoms[i-1].Text] && (i < 2 || !makesNoun[atoms[i-2].Text])
	}
	return true
}

// ByEar reads a line again with words in the place of those that sound like them. It reports whether every choice that can be
// read says the same; the one with the fewest words changed is taken.
func ByEar(atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	atoms, pairs := pairsJoined(atoms)
	var places []int
	var options [][]string
	for i, a := range atoms {
		if a.Kind != scan.Word || namesWall(atoms, i, c) {
			continue
		}
		meant := alikes()[a.Text]
		if len(meant) == 0 || !mayMean(atoms, i) {
			continue
		}
		opts := meant
		if lex.Words().Known[a.Text] || lexicon.Vocab().Known[a.Text] {
			opts = append([]string{a.Text}, meant...)
		}
		places, options = append(places, i), append(options, opts)
	}
	if len(places)+len(pairs) == 0 || len(places) > mostAlike || len(atoms) < leastHeard || len(atoms) > 100 {
		return act.Reading{}, false
	}
	c.Deep = true
	pick := make([]int, len(places))
	found, least := map[string]bool{}, len(places)+len(pairs)+1
	var best act.Reading
	for tries := 0; tries < mostHeard; tries++ {
		fixed := append([]scan.Atom{}, atoms...)
		taken := append([]act.Taken{}, pairs...)
		for k, i := range places {
			if now := options[k][pick[k]]; now != atoms[i].Text {
				fixed[i].Text = now
				taken = append(taken, act.Taken{Was: atoms[i].Text, Now: now, At: atoms[i].At})
			}
		}
		if len(taken) > 0 {
			if got := hear.Atoms(scan.Contractions(fixed), c); got.Ask == nil {
				if len(taken) < least {
					best, least = got, len(taken)
					best.Taken = taken
				}
				if found[parse.Normal(got.Acts)] = true; len(found) > 1 {
					return act.Reading{}, false
				}
			}
		}
		if !advance(pick, options) {
			return best, len(found) == 1
		}
	}
	return act.Reading{}, false
}

// halfBefore stand before the half of something: "an inch and a half to the right" has nothing to do.
var halfBefore = scan.WordSet("a an one and the")

// pairsJoined joins two words that a phone writes for one, and tells which.
func pairsJoined(atoms []scan.Atom) (out []scan.Atom, taken []act.Taken) {
	for i := 0; i < len(atoms); i++ {
		a := atoms[i]
		if i+1 < len(atoms) {
			pair := a.Text + " " + atoms[i+1].Text
			if w, ok := soundsLikePairs[pair]; ok && !(a.Text == "half" && i > 0 && halfBefore[atoms[i-1].Text]) {
				taken = append(taken, act.Taken{Was: pair, Now: w, At: a.At})
				if first, _, two := strings.Cut(w, " "); two {
					a.Text = first
				} else {
					a.Text, a.End = w, atoms[i+1].End
					i++
				}
			}
		}
		out = append(out, a)
	}
	return out, taken
}
