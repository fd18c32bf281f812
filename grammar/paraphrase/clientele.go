package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/parse"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// Somebody behind a counter passes on what a customer wants: "got a young couple here who'd like the gap under three". Whoever the
// customer is and wherever they stand says nothing of the wall, and what they would like is what is wanted.

var clientKinds = scan.WordSet("retired picky sweet busy grumpy pleasant young old older elderly nice regular new next first other little polite fussy friendly retired middle-aged newlywed married local same good lovely different second walk-in")

var clientPlaces = [][]string{phrase.Turn("on the phone"), phrase.Turn("on the line"), phrase.Turn("on hold"), phrase.Turn("on line one"), phrase.Turn("on line two"), phrase.Turn("on line 1"), phrase.Turn("on line 2"), phrase.Turn("at the counter"), phrase.Turn("at the desk"), phrase.Turn("at the window"), phrase.Turn("at the register"), phrase.Turn("at the till"), phrase.Turn("at the door"),
	phrase.Turn("at my counter"), phrase.Turn("at the front"), phrase.Turn("in front of me"), phrase.Turn("in front of us"), phrase.Turn("over here"), phrase.Turn("over there"), phrase.Turn("in here"), phrase.Turn("out here"), phrase.Turn("up here"), phrase.Turn("down here"), phrase.Turn("right here"), phrase.Turn("standing here"),
	phrase.Turn("in the shop"), phrase.Turn("in the store"), phrase.Turn("in the yard"), phrase.Turn("in the aisle"), phrase.Turn("in the back"), phrase.Turn("in line"), phrase.Turn("in the office"), phrase.Turn("by the door"), phrase.Turn("by the counter"), phrase.Turn("up front"), phrase.Turn("out front"), phrase.Turn("out back"),
	phrase.Turn("in today"), phrase.Turn("in now"), phrase.Turn("this morning"), phrase.Turn("down the road"), phrase.Turn("from down the road"), phrase.Turn("from up the road"), phrase.Turn("from town"), phrase.Turn("from out of town"), phrase.Turn("next door"), phrase.Turn("waiting"), phrase.Turn("here"), phrase.Turn("of mine"), phrase.Turn("of ours")}

var clientVerbs = scan.WordSet("wants want need like wanted would needs need likes like prefers prefer asks ask asked is are does do can could has have says said thinks reckons insists swears figures")

// clientele sets whoever is served, and what they would like, to the plain "he wants".
func clientele(in []scan.Atom) []scan.Atom {
	for i := 0; i+2 < len(in); i++ {
		if i > 0 && !chunk.BreaksClause(in, i-1) && !chunk.Joints[in[i-1].Text] && !besideWish[in[i-1].Text] {
			continue
		}
		if in[i+1].Text == "'s" && clientIs[in[i+2].Text] && (parse.ClientNouns[in[i].Text] || chunk.IsPerson(in[i].Text)) {
			in[i+1].Text = "is" // "customer's decided on three inches"
		}
		if i+3 < len(in) && in[i+2].Text == "'s" && clientIs[in[i+3].Text] && (parse.ClientNouns[in[i+1].Text] || chunk.IsPerson(in[i+1].Text)) {
			in[i+2].Text = "is"
		}
		if end := clientAt(in, i); end > i {
			who := "he"
			switch {
			case in[end].Text == "want":
				end, who = end+1, "he wants" // "they want" tells a price
			case clientMany[in[end].Text]:
				who = "they"
			}
			in = scan.Reworded(in, i, end, phrase.Turn(who)...)
		}
		if verb := clientNamed(in, i); verb > i {
			in = clientWish(clientBids(in, i, verb), verb)
		}
	}
	return in
}

// clientMany are the verbs of several.
var clientMany = scan.WordSet("need like prefer ask are have do say")

// clientIs are words before which 's stands for "is" or "has", whoever it is of.
var clientIs = scan.WordSet("decided settled picked changed chosen hoping set keen happy sure ready wondering wanting shooting aiming figuring")

// besideWish are words before which a clause has told where or what about, and after which somebody wishes: "on the patio wall he'd like …".
var besideWish = scan.WordSet("wall porch patio deck side opening bay bays because since if when and")

// clientAt returns the atom behind whoever is served where more than a bare noun tells of them, up to their verb, and 0 where none is.
func clientAt(in []scan.Atom, i int) int {
	r := measure.Reader{Atoms: in}
	j, more := i, false
	for _, lead := range clientLeads {
		if scan.StandAt(in, j, lead...) {
			j, more = j+len(lead), true
			break
		}
	}
	if w := r.Word(j); lexicon.Vocab().Articles[w] || lex.Owned[w] || w == "this" || w == "that" || w == "another" || w == "one" || w == "some" {
		j++
	} else if more && r.Word(j) != "customer" {
		return 0
	}
	for clientKinds[r.Word(j)] {
		j, more = j+1, true
	}
	if !parse.ClientNouns[r.Word(j)] {
		return 0
	}
	j++
	for next := clientPlace(in, j); next > j; next = clientPlace(in, j) {
		j, more = next, true
	}
	if r.Word(j) == "," && clientPronouns[r.Word(j+1)] {
		j, more = j+2, true
	} else if clientPronouns[r.Word(j)] {
		j, more = j+1, true
	}
	if !more || !clientVerbs[r.Word(j)] {
		return 0
	}
	return j
}

var clientPronouns = scan.WordSet("who he she they that and")

// clientPlace returns the atom behind where somebody stands, or what they have with them, and i where neither is told.
func clientPlace(in []scan.Atom, i int) int {
	for _, p := range clientPlaces {
		if scan.StandAt(in, i, p...) {
			return i + len(p)
		}
	}
	if !scan.StandAt(in, i, "with") {
		return i
	}
	for j := i + 1; j < len(in) && j < i+5; j++ {
		if in[j].Kind != scan.Word {
			return i
		}
		if clientWith[in[j].Text] {
			return j + 1
		}
	}
	return i
}

// clientWith is who, or what, somebody comes with.
var clientWith = scan.WordSet("baby babies toddler toddlers kid kids child children twins dog dogs puppy puppies cat cats grandkids grandchildren truck trailer van hat list cart wife husband son daughter stroller wheelchair beard clipboard")

// clientNamed returns the atom behind a "he", or behind a noun of somebody with its article, at an atom.
func clientNamed(in []scan.Atom, i int) int {
	r := measure.Reader{Atoms: in}
	if w := r.Word(i); w == "he" || w == "she" || w == "they" {
		return i + 1
	}
	if w := r.Word(i); lexicon.Vocab().Articles[w] || lex.Owned[w] || w == "this" {
		i++
	}
	if chunk.IsPerson(r.Word(i)) || parse.ClientNouns[r.Word(i)] {
		return i + 1
	}
	return 0
}

// clientLeads may stand before somebody who is there.
var clientLeads = [][]string{phrase.Turn("i have got"), phrase.Turn("i have"), phrase.Turn("we have got"), phrase.Turn("we have"), phrase.Turn("have got"), phrase.Turn("got"), phrase.Turn("have"), phrase.Turn("there is"), phrase.Turn("this is")}

// clientWishes are verbs by which somebody wishes for a thing.
var clientWishes = [][]string{phrase.Turn("would like to have"), phrase.Turn("would love to have"), phrase.Turn("would prefer to have"), phrase.Turn("would rather have"), phrase.Turn("would sooner have"), phrase.Turn("would rather go with"), phrase.Turn("would sooner go with"), phrase.Turn("would rather get"), phrase.Turn("would rather see"), phrase.Turn("would like"), phrase.Turn("would love"), phrase.Turn("would prefer"), phrase.Turn("would want"), phrase.Turn("would fancy"),
	phrase.Turn("has asked for"), phrase.Turn("have asked for"), phrase.Turn("is keen on"), phrase.Turn("are keen on"), phrase.Turn("is set on"), phrase.Turn("are set on"), phrase.Turn("is wanting"), phrase.Turn("are wanting"), phrase.Turn("is after having"), phrase.Turn("has his heart set on"), phrase.Turn("has her heart set on"), phrase.Turn("fancies"),
	phrase.Turn("is hoping for"), phrase.Turn("are hoping for"), phrase.Turn("is asking for"), phrase.Turn("are asking for"), phrase.Turn("is hoping to have"), phrase.Turn("are hoping to have"), phrase.Turn("is hoping to get"), phrase.Turn("are hoping to get"), phrase.Turn("is looking to have"), phrase.Turn("is looking for"), phrase.Turn("are looking for"),
	phrase.Turn("is after"), phrase.Turn("are after"), phrase.Turn("has in mind"), phrase.Turn("have in mind")}

// clientChoices are verbs by which somebody chooses, where what is chosen is told by its figure.
var clientChoices = [][]string{phrase.Turn("has decided on"), phrase.Turn("have decided on"), phrase.Turn("is decided on"), phrase.Turn("decided on"), phrase.Turn("is chosen"), phrase.Turn("is picked"), phrase.Turn("are thinking"), phrase.Turn("is thinking"), phrase.Turn("has settled on"), phrase.Turn("have settled on"), phrase.Turn("is settled on"), phrase.Turn("settled on"), phrase.Turn("is going for"), phrase.Turn("are going for"), phrase.Turn("is going with"), phrase.Turn("are going with"),
	phrase.Turn("has gone with"), phrase.Turn("went with"), phrase.Turn("is shooting for"), phrase.Turn("is aiming for"), phrase.Turn("are aiming for"), phrase.Turn("has picked"), phrase.Turn("have picked"), phrase.Turn("picked out"), phrase.Turn("picked"), phrase.Turn("chose"), phrase.Turn("has chosen"), phrase.Turn("is planning on"), phrase.Turn("are planning on"), phrase.Turn("plans on"),
	phrase.Turn("is figuring on"), phrase.Turn("figures on"), phrase.Turn("likes"), phrase.Turn("prefers"), phrase.Turn("opted for"), phrase.Turn("has opted for"), phrase.Turn("is picturing")}

// clientWish sets the verb by which somebody wishes for a thing, at an atom, to "wants".
func clientWish(in []scan.Atom, i int) []scan.Atom {
	at := i
	for i < len(in) && (in[i].Text == "would" || in[i].Text == "is" || in[i].Text == "are") && i+1 < len(in) && clientHow[in[i+1].Text] {
		in = scan.CutOut(in, i+1, i+2) // "would really like"
	}
	if at < len(in) && clientHow[in[at].Text] {
		at++
	}
	for _, w := range clientWishes {
		if !scan.StandAt(in, at, w...) {
			continue
		}
		if next := at + len(w); next >= len(in) || clientNoWish[in[next].Text] && !(in[next].Text == "it" && phrase.StartsLength(measure.Reader{Atoms: in}, next+1)) && !(in[next].Text == "this" && next+1 < len(in) && (in[next+1].Text == "one" || in[next+1].Text == "wall")) {
			return in
		}
		return scan.Reworded(in, at, at+len(w), "wants")
	}
	for _, w := range clientChoices {
		if !scan.StandAt(in, at, w...) {
			continue
		}
		r, next := measure.Reader{Atoms: in}, chunk.SkipArticle(in, at+len(w))
		if in[next-1].Text == "the" && (w[0] == "likes" || w[0] == "prefers") {
			return in // "he likes the six rails better"
		}
		if _, _, long := r.Length(next); long || r.SizeAt(next) || phrase.StartsLength(r, at+len(w)) {
			return scan.Reworded(in, at, at+len(w), "wants")
		}
		return in
	}
	return in
}

// clientBids takes what somebody would like to do with the plan for what the one who speaks would like: "she'd like to save this as porch".
func clientBids(in []scan.Atom, i, verb int) []scan.Atom {
	if scan.StandAt(in, verb, "would", "like", "to") && verb+3 < len(in) && clientDoes[in[verb+3].Text] {
		return scan.Reworded(in, i, verb, "i")
	}
	if scan.StandAt(in, verb, "is", "thinking", "of") || scan.StandAt(in, verb, "are", "thinking", "of") || scan.StandAt(in, verb, "is", "thinking", "about") || scan.StandAt(in, verb, "are", "thinking", "about") {
		return scan.Reworded(in, i, verb+3, "i", "am", "thinking", "of")
	}
	if (scan.StandAt(in, verb, "wants", "to") || scan.StandAt(in, verb, "want", "to")) && verb+2 < len(in) && clientDoes[in[verb+2].Text] {
		return scan.Reworded(in, i, verb+1, "i", "want")
	}
	return in
}

// clientDoes are verbs of what is done with the plan itself.
var clientDoes = scan.WordSet("undo redo start begin save store keep open load forget drop scrap scratch cancel compare print export draw go take try take see change make add remove use move raise lower")

var (
	clientHow    = scan.WordSet("really just also still very much now actually probably definitely ideally simply")
	clientNoWish = scan.WordSet("to it if that you us me this him her them something anything ? . !")
)

// wallMust takes what somebody's wall has to be for what it has to be: "her opening needs to clear a walker" is wished, and not claimed.
func wallMust(in []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(in); i++ {
		if w := in[i].Text; w != "his" && w != "her" && w != "their" {
			continue
		}
		key, next := chunk.PartKey(in, i+1)
		if chunk.IsClass(in[i+1].Text, "POST") {
			key, next = "post", i+2
		}
		if key != "" && next+1 < len(in) && (in[next].Text == "must" || wishedOf[in[next].Text] && in[next+1].Text == "to") {
			in = scan.Reworded(in, i, i+1, "the")
		}
	}
	return in
}

// wishedOf are verbs, before a "to", by which something is wished of a part of the wall.
var wishedOf = scan.WordSet("has have needs need ought")
