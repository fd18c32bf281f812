package paraphrase

import (
	"strings"

	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// A plea tells why something is wished of those who are to live with the wall: "my hand has to fit", "the cat gets out",
// "snow melts there". Its words come from closed lists, so that nothing in it can set, deny or doubt what stands beside it.

// timber are nouns of wood at whose growing and drying a plea may point: "otherwise the boards cup".
var timber = scan.WordSet("tape ruler board boards rail rails slat slats plank planks lumber wood timber stock ends end stick sticks pieces they it them those these")

// PleaActs are what outsiders do.
var PleaActs = scan.WordSet(`
	see sees seeing reach reaches reaching get gets getting fit fits fitting squeeze squeezes squeezing crawl crawls crawling climb climbs climbing slip slips slipping step steps stepping sneak sneaks
	wriggle wriggles jump jumps jumping fall falls roll rolls rolling pass passes passing come comes walk walks run runs running ride rides drive drives drain drains draining blow blows sweep sweeps
	clean cleans mow mows look looks lean leans leaning sit sits sitting stand stands stuck caught hurt trip trips bump bumps bumping scratch chew chews chewing escape escapes poke pokes push pushes hang
	melt melts melting collect collects collecting pool pools pooling pile piles piling splash splashes drip drips freeze freezes freezing block blocks blocking shine shines let lets
	go goes going read reads sleep sleeps play plays playing eat eats cook cooks visit visits live lives use uses breathe peek peeks peer peers wander wanders bark barks nap yell yells yelling wait waiting
`)

// PleaStates are what outsiders, and those who speak, are like.
var PleaStates = scan.WordSet(`
	picky fussy choosy particular fancy rich wealthy broke poor stubborn handy strong weak tiny little small big large old young short tall wide heavy loud noisy hungry sleepy curious clumsy shy nervous scared private privacy
	cozy lonely wet muddy slippery windy rainy hot cold sunny dark bright chilly tight scarce miserable awful murder hell dear made money gold patient impatient blind deaf lame forgetful messy tired exhausted
	new green inexperienced careless learning
	bad sore stiff aching seated watched exposed cramped crowded hemmed fenced boxed unsafe safe allergic retired pregnant standing seating
	busy late outside inside out here there everywhere room space
`)

// woodStates are what wood does and is like.
var woodStates = scan.WordSet(`
	cup cups cupping cupped warp warps warping warped bow bows bowing bowed sag sags sagging sagged twist twists twisting twisted split splits splitting rot rots rotting rotted crack cracks cracking cracked
	swell swells swelled swollen shrink shrinks shrunk shrank rough wet damp green knotty crooked bent wavy gnarly weathered square checked dull slipped slack kinked stretched flex flexes flexing wobble wobbles wobbling droop droops rattle dry dries
	wiggle wiggles banana bananas heavy hefty costly expensive pricey brittle ugly
`)

// PleaLinks are the words that hold a plea together.
var PleaLinks = scan.WordSet(`
	my our the a an his her some their its these those this that its
	he she i we you them him us me it
	is are was were be been being am 's 're 've 'll has have had do does did will would can could cannot must may might should need needs to going gonna keeps keep stay stays gets got get
	not never always still too so just otherwise because since as or else and
	in into out of on off over under underneath beneath below through thru past by up down across around behind at from with for there here back
	feel feels felt feeling somewhere someplace drainage everything looking like
	very really pretty awfully terribly kind sort bit lot all both sometimes easily properly well anymore again one ones other side corner corners mill yard shop today millimeters millimetres inches fractions metric garden lake river sea ocean woods hills valley field street sunset sunrise mountains mountain trees tree harbor
`)

// onlyWood reports whether a clause says no more than what wood is like: "sopping wet".
func onlyWood(w []string) bool {
	wood := false
	for _, v := range w {
		if !woodStates[v] && !veryMuch[v] {
			return false
		}
		wood = wood || woodStates[v]
	}
	return wood
}

var veryMuch = scan.WordSet("sopping soaking dripping bone still pretty very quite real really all a bit kind of and kiln freshly")

// plea is what the words of a clause come to.
type plea struct{ acts, states, wood, denied, wants, placed bool }

// Pleads reports whether the words of a clause are a plea.
func Pleads(w []string) bool {
	if len(w) > 4 && w[0] == "any" && strings.HasSuffix(w[1], "er") && w[2] == "and" {
		return Pleads(append([]string{"they"}, w[4:]...)) || Pleads(append([]string{"somebody"}, w[4:]...)) // "any taller and it blocks the view"
	}
	if onlyWood(w) {
		return true
	}
	w = asOnce(w)
	at := 0
	for at < len(w) && (lex.Owned[w[at]] || chunk.Noun[w[at]] && w[at] != "one" || w[at] == "no" || PleaStates[w[at]] && at > 0) {
		at++
	}
	if at == len(w) || len(w) < 2 {
		return false
	}
	p := plea{states: at > 1 && PleaStates[w[at-1]]}
	for i := at; i < len(w); i++ {
		if !p.takes(w, i, at) {
			return false
		}
	}
	switch head := w[at]; {
	case timber[head]:
		return p.wood && !p.acts && !p.wants
	case p.wants:
		return !p.denied && (p.states && !p.acts || p.acts && lex.Speakers[head] && reachesOut(w[at:]))
	case lex.Speakers[head]:
		return p.states && !p.acts || p.acts && reachesOut(w[at:])
	}
	return p.acts || p.states || p.wood || p.placed && !p.denied
}

// asOnce puts "weak" in the place of words that tell that something is not what it was: "my eyes aren't what they were".
func asOnce(w []string) []string {
	said := strings.Join(w, " ")
	for _, was := range []string{"what they were", "what they used to be", "what it was", "what it used to be", "as good as they were", "as good as they used to be", "as sharp as they were", "as sharp as they used to be", "so good anymore", "so good any more"} {
		if left, ok := strings.CutSuffix(said, " not "+was); ok {
			return append(strings.Fields(left), "weak")
		}
	}
	return w
}

// takes counts word i of a clause, whose subject stands at the word at. It reports false where the word is none of a plea.
func (p *plea) takes(w []string, i, at int) bool {
	v := w[i]
	switch {
	case i == at:
		return lex.Outsiders[v] || timber[v] || lex.Speakers[v] || at > 0 && chunk.IsPerson(v) || v == "he" || v == "she" || (v == "one" || v == "ones") && at > 0 && PleaStates[w[at-1]]
	case timber[w[at]] && (settles[v] || i+1 < len(w) && w[i+1] == "enough"), v == "enough":
		p.wood = p.wood || v == "enough"
	case woodStates[v], timber[w[at]] && catching[v]:
		p.wood = true
	case PleaActs[v]:
		p.acts = true
	case PleaStates[v]:
		p.states = true
	case v == "want" || v == "wants" || v == "like" || v == "likes" || v == "love" || v == "loves":
		p.wants = true
	case i == at+1 && timber[v] && timber[w[at]]: // "the board ends"
	case lex.Outsiders[v], v == "wood" || v == "boards" || v == "lumber":
	case v == "not" || v == "never":
		p.denied = true
	case v == "on" || v == "by" || v == "at":
		p.placed = true
	default:
		return PleaLinks[v]
	}
	return true
}

// catching are what pieces of wood and iron do to those who pass.
var catching = scan.WordSet("show shows catch catches snag snags stick sticks")

// settles are verbs that say nothing of wood by themselves.
var settles = scan.WordSet("come comes get gets run runs look looks sit sits stay stays lean leans fall falls hang")

// reachesOut reports whether a clause of those who speak tells of their body or their view: "so I can see the lake".
func reachesOut(w []string) bool {
	for i, v := range w {
		switch v {
		case "see", "read", "reach", "fit", "squeeze", "climb", "step", "sweep", "mow", "sit", "lean", "walk", "trip":
			return i+1 == len(w) || w[i+1] != "it" && w[i+1] != "them" && w[i+1] != "that"
		}
	}
	return false
}

// TellsSize reports whether a clause tells how big an outsider is: "the wheelbarrow is 29 inches wide".
func TellsSize(part []scan.Atom) bool {
	i := 0
	for i < len(part) && (lex.Owned[part[i].Text] || chunk.Noun[part[i].Text] || chunk.Joints[part[i].Text] || Causes[part[i].Text]) {
		i++
	}
	for n := 0; n < 2 && i+1 < len(part) && part[i].Kind == scan.Word && !lex.Outsiders[part[i].Text] && (LeadingWords[part[i].Text] || lex.ForeignWord(part[i].Text)); n++ {
		i++ // "his riding mower"
	}
	subject := i
	for i < len(part) && lex.Outsiders[part[i].Text] {
		i++
	}
	if i == subject || i == len(part) {
		return false
	}
	verb, figure, dim := false, false, false
	for ; i < len(part); i++ {
		switch w := part[i].Text; {
		case w == "is", w == "are", w == "'s", w == "measures", w == "stands":
			verb = true
		case part[i].Kind == scan.Digits, part[i].Kind == scan.Vulgar, lex.Words().Numberish(w) || chunk.Numerals()[w]:
			figure = true
		case w == "inch", w == "inches", w == "in", w == "feet", w == "foot", w == "ft", w == "cm", w == "mm", w == `"`, w == "'":
			dim = true
		case w == "wide", w == "tall", w == "high", w == "long", w == "across", w == "deep", w == "around":
			dim = true
		case part[i].Kind == scan.Sign && w != "?", w == "and", w == "a", w == "about", w == "at", w == "the", w == "handles", w == "wheels", w == "shoulder", w == "shoulders", w == "of", w == "half":
		default:
			return false
		}
	}
	return verb && figure && dim
}

// LeadingWords are what may stand before the thing whose size is told.
var LeadingWords = scan.WordSet("new old big little small large double garden push riding lawn electric two wheeled")

// ThroughWhat finds the wall's opening, or its gap, at the end of a plea: "the mower has to get through the opening". What
// is told of it next must not be lost with the plea.
func ThroughWhat(part []scan.Atom) []scan.Atom {
	n := len(part)
	for n > 0 && part[n-1].Kind == scan.Sign {
		n--
	}
	f := n - 1
	if f < 3 || !lexicon.Vocab().Articles[part[f-1].Text] || !passing[part[f-2].Text] {
		return nil
	}
	if m := lexicon.Vocab().Match(part[:n], f); len(m) == 0 || m[0].Entry.Kind != lexicon.Part || m[0].Entry.Key != "opening" && m[0].Entry.Key != "gap" {
		return nil
	}
	var w []string
	for _, a := range part[:f-1] {
		w = append(w, a.Text)
	}
	for len(w) > 0 && (chunk.Joints[w[0]] || Causes[w[0]]) {
		w = w[1:]
	}
	if !Pleads(w) {
		return nil
	}
	return part[f-1:]
}

var passing = scan.WordSet("through thru past by into")

// Aims reports whether a clause tells what for in an infinitive: "to keep the boards from bowing", "to let water out".
func Aims(w []string) bool {
	if len(w) < 3 || w[0] != "to" || !aimVerbs[w[1]] {
		return false
	}
	var p plea
	whom := false
	for i := 2; i < len(w); i++ {
		whom = whom || lex.Outsiders[w[i]] || timber[w[i]]
		if !lex.Outsiders[w[i]] && !timber[w[i]] && !p.takes(w, i, 0) {
			return false
		}
	}
	return whom && !p.wants && !p.denied
}

var aimVerbs = scan.WordSet("keep stop prevent let allow help give save protect shed catch block get")

// ThanThatOne reports whether words measure something against what was spoken of before: "make the wall 6 inches higher than that".
func ThanThatOne(atoms []scan.Atom) bool {
	for i := range atoms {
		if atoms[i].Text == "than" && spokenOfBefore[chunk.TextAt(atoms, i+1)] && chunk.TextAt(atoms, i+2) != "is" && chunk.TextAt(atoms, i+2) != "was" {
			return true
		}
	}
	return false
}

var spokenOfBefore = scan.WordSet("that this it him her them he she they those these")
