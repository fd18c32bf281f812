package grammar

// Somebody behind a counter passes on what a customer wants: "got a young couple here who'd like the gap under three". Whoever the
// customer is and wherever they stand says nothing of the wall, and what they would like is what is wanted.

var (
	// clientNouns name those who are served; each may have its place and what they have with them behind it.
	clientNouns = wordSet(`customer customers client clients fella fellow fellas lady ladies gentleman gentlemen gent gents couple buyer shopper guy gal gals chap bloke man woman family folks homeowner
		homeowners owner gal dude pair kid lad girl son daughter grandpa contractor builder framer dad mom mother father grandmother grandfather neighbor landlord handyman retiree newlyweds`)
	clientKinds  = wordSet("retired picky sweet busy grumpy pleasant young old older elderly nice regular new next first other little polite fussy friendly retired middle-aged newlywed married local same good lovely different second walk-in")
	clientPlaces = [][]string{turn("on the phone"), turn("on the line"), turn("on hold"), turn("on line one"), turn("on line two"), turn("on line 1"), turn("on line 2"), turn("at the counter"), turn("at the desk"), turn("at the window"), turn("at the register"), turn("at the till"), turn("at the door"),
		turn("at my counter"), turn("at the front"), turn("in front of me"), turn("in front of us"), turn("over here"), turn("over there"), turn("in here"), turn("out here"), turn("up here"), turn("down here"), turn("right here"), turn("standing here"),
		turn("in the shop"), turn("in the store"), turn("in the yard"), turn("in the aisle"), turn("in the back"), turn("in line"), turn("in the office"), turn("by the door"), turn("by the counter"), turn("up front"), turn("out front"), turn("out back"),
		turn("in today"), turn("in now"), turn("this morning"), turn("down the road"), turn("from down the road"), turn("from up the road"), turn("from town"), turn("from out of town"), turn("next door"), turn("waiting"), turn("here"), turn("of mine"), turn("of ours")}
	clientVerbs = wordSet("wants want need like wanted would needs need likes like prefers prefer asks ask asked is are does do can could has have says said thinks reckons insists swears figures")
)

// clientele sets whoever is served, and what they would like, to the plain "he wants".
func clientele(in []atom) []atom {
	for i := 0; i+2 < len(in); i++ {
		if i > 0 && !breaksClause(in, i-1) && !joints[in[i-1].text] && !besideWish[in[i-1].text] {
			continue
		}
		if in[i+1].text == "'s" && clientIs[in[i+2].text] && (clientNouns[in[i].text] || isPerson(in[i].text)) {
			in[i+1].text = "is" // "customer's decided on three inches"
		}
		if i+3 < len(in) && in[i+2].text == "'s" && clientIs[in[i+3].text] && (clientNouns[in[i+1].text] || isPerson(in[i+1].text)) {
			in[i+2].text = "is"
		}
		if end := clientAt(in, i); end > i {
			who := "he"
			switch {
			case in[end].text == "want":
				end, who = end+1, "he wants" // "they want" tells a price
			case clientMany[in[end].text]:
				who = "they"
			}
			in = reworded(in, i, end, turn(who)...)
		}
		if verb := clientNamed(in, i); verb > i {
			in = clientWish(clientBids(in, i, verb), verb)
		}
	}
	return in
}

// clientMany are the verbs of several.
var clientMany = wordSet("need like prefer ask are have do say")

// clientIs are words before which 's stands for "is" or "has", whoever it is of.
var clientIs = wordSet("decided settled picked changed chosen hoping set keen happy sure ready wondering wanting shooting aiming figuring")

// besideWish are words before which a clause has told where or what about, and after which somebody wishes: "on the patio wall he'd like …".
var besideWish = wordSet("wall porch patio deck side opening bay bays because since if when and")

// clientAt returns the atom behind whoever is served where more than a bare noun tells of them, up to their verb, and 0 where none is.
func clientAt(in []atom, i int) int {
	r := reader{in}
	j, more := i, false
	for _, lead := range clientLeads {
		if standAt(in, j, lead...) {
			j, more = j+len(lead), true
			break
		}
	}
	if w := r.word(j); vocab().articles[w] || owned[w] || w == "this" || w == "that" || w == "another" || w == "one" || w == "some" {
		j++
	} else if more && r.word(j) != "customer" {
		return 0
	}
	for clientKinds[r.word(j)] {
		j, more = j+1, true
	}
	if !clientNouns[r.word(j)] {
		return 0
	}
	j++
	for next := clientPlace(in, j); next > j; next = clientPlace(in, j) {
		j, more = next, true
	}
	if r.word(j) == "," && clientPronouns[r.word(j+1)] {
		j, more = j+2, true
	} else if clientPronouns[r.word(j)] {
		j, more = j+1, true
	}
	if !more || !clientVerbs[r.word(j)] {
		return 0
	}
	return j
}

var clientPronouns = wordSet("who he she they that and")

// clientPlace returns the atom behind where somebody stands, or what they have with them, and i where neither is told.
func clientPlace(in []atom, i int) int {
	for _, p := range clientPlaces {
		if standAt(in, i, p...) {
			return i + len(p)
		}
	}
	if !standAt(in, i, "with") {
		return i
	}
	for j := i + 1; j < len(in) && j < i+5; j++ {
		if in[j].kind != aWord {
			return i
		}
		if clientWith[in[j].text] {
			return j + 1
		}
	}
	return i
}

// clientWith is who, or what, somebody comes with.
var clientWith = wordSet("baby babies toddler toddlers kid kids child children twins dog dogs puppy puppies cat cats grandkids grandchildren truck trailer van hat list cart wife husband son daughter stroller wheelchair beard clipboard")

// clientNamed returns the atom behind a "he", or behind a noun of somebody with its article, at an atom.
func clientNamed(in []atom, i int) int {
	r := reader{in}
	if w := r.word(i); w == "he" || w == "she" || w == "they" {
		return i + 1
	}
	if w := r.word(i); vocab().articles[w] || owned[w] || w == "this" {
		i++
	}
	if isPerson(r.word(i)) || clientNouns[r.word(i)] {
		return i + 1
	}
	return 0
}

// clientLeads may stand before somebody who is there.
var clientLeads = [][]string{turn("i have got"), turn("i have"), turn("we have got"), turn("we have"), turn("have got"), turn("got"), turn("have"), turn("there is"), turn("this is")}

// clientWishes are verbs by which somebody wishes for a thing.
var clientWishes = [][]string{turn("would like to have"), turn("would love to have"), turn("would prefer to have"), turn("would rather have"), turn("would sooner have"), turn("would rather go with"), turn("would sooner go with"), turn("would rather get"), turn("would rather see"), turn("would like"), turn("would love"), turn("would prefer"), turn("would want"), turn("would fancy"),
	turn("has asked for"), turn("have asked for"), turn("is keen on"), turn("are keen on"), turn("is set on"), turn("are set on"), turn("is wanting"), turn("are wanting"), turn("is after having"), turn("has his heart set on"), turn("has her heart set on"), turn("fancies"),
	turn("is hoping for"), turn("are hoping for"), turn("is asking for"), turn("are asking for"), turn("is hoping to have"), turn("are hoping to have"), turn("is hoping to get"), turn("are hoping to get"), turn("is looking to have"), turn("is looking for"), turn("are looking for"),
	turn("is after"), turn("are after"), turn("has in mind"), turn("have in mind")}

// clientChoices are verbs by which somebody chooses, where what is chosen is told by its figure.
var clientChoices = [][]string{turn("has decided on"), turn("have decided on"), turn("is decided on"), turn("decided on"), turn("is chosen"), turn("is picked"), turn("are thinking"), turn("is thinking"), turn("has settled on"), turn("have settled on"), turn("is settled on"), turn("settled on"), turn("is going for"), turn("are going for"), turn("is going with"), turn("are going with"),
	turn("has gone with"), turn("went with"), turn("is shooting for"), turn("is aiming for"), turn("are aiming for"), turn("has picked"), turn("have picked"), turn("picked out"), turn("picked"), turn("chose"), turn("has chosen"), turn("is planning on"), turn("are planning on"), turn("plans on"),
	turn("is figuring on"), turn("figures on"), turn("likes"), turn("prefers"), turn("opted for"), turn("has opted for"), turn("is picturing")}

// clientWish sets the verb by which somebody wishes for a thing, at an atom, to "wants".
func clientWish(in []atom, i int) []atom {
	at := i
	for i < len(in) && (in[i].text == "would" || in[i].text == "is" || in[i].text == "are") && i+1 < len(in) && clientHow[in[i+1].text] {
		in = cutOut(in, i+1, i+2) // "would really like"
	}
	if at < len(in) && clientHow[in[at].text] {
		at++
	}
	for _, w := range clientWishes {
		if !standAt(in, at, w...) {
			continue
		}
		if next := at + len(w); next >= len(in) || clientNoWish[in[next].text] && !(in[next].text == "it" && startsLength(reader{in}, next+1)) && !(in[next].text == "this" && next+1 < len(in) && (in[next+1].text == "one" || in[next+1].text == "wall")) {
			return in
		}
		return reworded(in, at, at+len(w), "wants")
	}
	for _, w := range clientChoices {
		if !standAt(in, at, w...) {
			continue
		}
		r, next := reader{in}, skipArticle(in, at+len(w))
		if in[next-1].text == "the" && (w[0] == "likes" || w[0] == "prefers") {
			return in // "he likes the six rails better"
		}
		if _, _, long := r.length(next); long || r.sizeAt(next) || startsLength(r, at+len(w)) {
			return reworded(in, at, at+len(w), "wants")
		}
		return in
	}
	return in
}

// clientBids takes what somebody would like to do with the plan for what the one who speaks would like: "she'd like to save this as porch".
func clientBids(in []atom, i, verb int) []atom {
	if standAt(in, verb, "would", "like", "to") && verb+3 < len(in) && clientDoes[in[verb+3].text] {
		return reworded(in, i, verb, "i")
	}
	if standAt(in, verb, "is", "thinking", "of") || standAt(in, verb, "are", "thinking", "of") || standAt(in, verb, "is", "thinking", "about") || standAt(in, verb, "are", "thinking", "about") {
		return reworded(in, i, verb+3, "i", "am", "thinking", "of")
	}
	if (standAt(in, verb, "wants", "to") || standAt(in, verb, "want", "to")) && verb+2 < len(in) && clientDoes[in[verb+2].text] {
		return reworded(in, i, verb+1, "i", "want")
	}
	return in
}

// clientDoes are verbs of what is done with the plan itself.
var clientDoes = wordSet("undo redo start begin save store keep open load forget drop scrap scratch cancel compare print export draw go take try take see change make add remove use move raise lower")

var (
	clientHow    = wordSet("really just also still very much now actually probably definitely ideally simply")
	clientNoWish = wordSet("to it if that you us me this him her them something anything ? . !")
)

// wallMust takes what somebody's wall has to be for what it has to be: "her opening needs to clear a walker" is wished, and not claimed.
func wallMust(in []atom) []atom {
	for i := 0; i+3 < len(in); i++ {
		if w := in[i].text; w != "his" && w != "her" && w != "their" {
			continue
		}
		key, next := partKey(in, i+1)
		if isClass(in[i+1].text, "POST") {
			key, next = "post", i+2
		}
		if key != "" && next+1 < len(in) && (in[next].text == "must" || wishedOf[in[next].text] && in[next+1].text == "to") {
			in = reworded(in, i, i+1, "the")
		}
	}
	return in
}

// wishedOf are verbs, before a "to", by which something is wished of a part of the wall.
var wishedOf = wordSet("has have needs need ought")
