package contrast

import (
	"slices"

	"saywright/grammar/aside"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
)

// What is told beside a wish is of another time, of others, or of what somebody nearly did: this file tells it by its words.

// toldWhen is how many words at an atom tell that something is of another time or of others.
func toldWhen(part []scan.Atom, i int) int { return rowAt(part, i, onceTold) }

// rowAt is how many words of one of several rows stand at an atom, 0 where none does.
func rowAt(part []scan.Atom, i int, rows [][]string) int {
	for _, w := range rows {
		if scan.StandAt(part, i, w...) {
			return len(w)
		}
	}
	return 0
}

// holdsRow reports whether one of several rows of words stands in a clause.
func holdsRow(part []scan.Atom, rows [][]string) bool {
	for i := range part {
		if rowAt(part, i, rows) > 0 {
			return true
		}
	}
	return false
}

var (
	ofUs    = scan.WordSet("i we ours mine our my this here")
	ofToday = scan.WordSet("now today tonight instead nowadays")
	ourWord = scan.WordSet("ours mine it they these this")
	pastIs  = scan.WordSet("was were had did wanted used went made asked put left liked ran kept built got preferred stood settled measured came took needed ate sat ran stood read")
	// neverApart are words of whoever claims, measures, buys or builds, of who denies and who supposes.
	neverApart = scan.WordSet(`says say said claims claim told tells thinks swears reckons insists bought buy ordered picked cut screwed fixed installed poured set dug hung if unless than
		as same like twice either maybe perhaps wants want needs whether not never no how why which too also`)
	// claimedOf are what somebody claims.
	claimedOf = scan.WordSet("figure figures number numbers guess total count reckoning")
	// usedTo is what people and yards used to do that needs no figure to be told apart.
	usedTo = scan.WordSet("have carry sell stock work think")
	// FillersBefore are words that may stand before a clause and say nothing.
	FillersBefore = scan.WordSet("uh um er well so ok okay right and but see look hey oh")
	// leaning are words by which what is wanted speaks of what was told.
	leaning  = scan.WordSet("more less fewer wider narrower higher lower taller shorter tighter another same too also either still both those that than as said says never why if what how like did so")
	unitSaid = scan.WordSet("inch inches ft foot feet mm millimeter millimeters cm centimeter centimeters m meter meters")
	// strongNow begin a clause that is of this wall and no other.
	strongNow = scan.WordSet("ours mine here now today nowadays")
	// otherThings are what else people build or own.
	otherThings = scan.WordSet("fence fences deck shed barn garage house garden gate balcony porch carport stairs landing kitchen street school church park kennel coop")
	tellsNow    = scan.WordSet("i we ours mine this here now today tonight instead nowadays these us")
	nowOnly     = scan.WordSet("now today tonight this time it is are 's they ours mine i we am want wants wanted need would like will have has having take go going with for be to at one ones here just only make let us should shall must my me do use using but so and then instead rather the new there leave leaving giving settled decided mean said meant on down back get gets getting picked chose chosen planning")
	whoseElse   = scan.WordSet("neighbor neighbors neighbour neighbours everybody everyone people folks others grandfather grandad grandpa their his her")
	intended    = [][]string{{"nearly"}, {"almost"}, {"was", "going", "to"}, {"were", "going", "to"}, {"was", "about", "to"}, {"were", "about", "to"}, {"was", "all", "set", "to"}, {"had", "planned"}, {"planned", "on"}, {"planned", "to"}, {"thought", "about"}, {"thought", "of"}, {"considered"}, {"toyed", "with"}, {"was", "tempted"},
		{"was", "thinking"}, {"were", "thinking"}, {"was", "planning"}, {"were", "planning"}, {"had", "meant"}, {"first", "thought"}, {"first", "wanted"}, {"first", "planned"}, {"came", "close", "to"}, {"came", "this", "close", "to"}, {"went", "back", "and", "forth"}, {"had", "figured"}, {"had", "hoped"}, {"expected"}, {"figured", "on"}, {"had", "expected"}, {"had", "in", "mind"}, {"thought"}, {"had", "put", "aside"}, {"had", "set", "aside"}, {"keep", "saying"}, {"kept", "saying"}, {"would", "thought"}, {"said", "at", "first"}, {"wish"}, {"wished"}, {"would", "have", "liked"}, {"would", "have", "loved"}, {"would", "have", "preferred"}, {"would", "love"}, {"dreamed", "of"}, {"hoped", "for"}, {"was", "set", "on"}, {"were", "set", "on"}}
	onceTold = hear.WordRows(`last time
		last job
		my last job
		last week
		last month
		last year
		last summer
		last spring
		last fall
		last autumn
		last winter
		last night
		on the last job
		on the last one
		on the last wall
		the last wall i built
		my first try
		our first try
		the first try
		my last try
		my first go
		the first version
		my first version
		yesterday
		on monday
		on tuesday
		on wednesday
		on thursday
		on friday
		on saturday
		on sunday
		originally
		at first
		first time around
		the first time
		in my day
		in my time
		in those days
		in the old days
		in the spring
		in the fall
		in the summer
		back then
		back home
		years ago
		a while ago
		weeks ago
		a minute ago
		earlier
		before
		until
		when i began
		when i started
		when we started
		when we began
		over there
		over the road
		once
		to begin with
		to start with
		next door
		down the road
		up the road
		across the street
		across the road
		on the deck
		at my old place
		in the shed`)
)

// SetApart reports whether a clause tells of another time, of others or of what was nearly done.
func SetApart(part []scan.Atom) bool {
	if part[len(part)-1].Text == "?" {
		return Complains(part)
	}
	part = aside.WithoutJoint(part)
	if Complains(part) {
		return true
	}
	w := WordsOnly(part)
	if len(w) > 2 && (w[0] == "unlike" || w[0] == "instead" || w[0] == "rather" || w[0] == "compared" || w[0] == "as") {
		return InsteadOf(part, w)
	}
	if at, _ := idiom.LastFigure(part); len(w) < 2 || at < 0 && !sideTold(part) && !(slices.Contains(w, "used") && slices.ContainsFunc(w, func(v string) bool { return usedTo[v] })) {
		return false
	}
	for len(w) > 3 && (FillersBefore[w[0]] || w[0] == "originally") {
		w = w[1:]
	}
	long := false
	for i := range part {
		long = long || toldWhen(part, i) > 0 && (part[i].Text == "last" || part[min(i+2, len(part)-1)].Text == "last" || part[min(i+1, len(part)-1)].Text == "last")
	}
	if n := toldWhen(part, 0); n > 0 && len(w) > n+1 && len(part) > n && (w[n] == "i" || w[n] == "we") {
		w = w[n:]
	}
	if n := Intends(w); n > 0 {
		return !slices.ContainsFunc(w[n:], func(v string) bool { return v == "if" || v == "unless" || v == "not" })
	}
	if (w[0] == "i" || w[0] == "we") && w[1] == "spent" {
		return moneySpent(w)
	}
	if long && (w[0] == "i" || w[0] == "we") && (w[1] == "cut" || w[1] == "bought" || w[1] == "set") {
		return true
	}
	if saidFirst(part, w) {
		return true
	}
	if len(w) > 4 && lex.Speakers[w[0]] && w[1] == "used" && w[2] == "to" {
		return true
	}
	if slices.ContainsFunc(w, func(v string) bool { return neverApart[v] }) {
		return false
	}
	return ofAnotherTime(part, w) || OthersHave(w) || saidOfElsewhere(part, w)
}

// BeganNow reports whether a clause begins by telling that it is of this wall: "this one gets 2x6", "here it is two".
func BeganNow(part []scan.Atom) bool {
	w := WordsOnly(aside.WithoutJoint(part))
	return len(w) > 1 && (strongNow[w[0]] || slices.Contains(w[1:len(w)-1], "here") || slices.Contains(w[1:], "ours") || w[0] == "this" && (w[1] == "one" || w[1] == "tape" || w[1] == "blade" || w[1] == "saw" || w[1] == "time" || w[1] == "wall" || w[1] == "job") || (w[0] == "on" || w[0] == "for" || w[0] == "behind") && (strongNow[w[1]] || w[1] == "this") || w[0] == "these")
}

// OfSomethingElse reports whether a clause tells of something else that is built, or of what was.
func OfSomethingElse(part []scan.Atom) bool {
	part = aside.WithoutJoint(part)
	w := WordsOnly(part)
	if at, _ := idiom.LastFigure(part); at < 0 || len(w) < 3 || w[0] == "they" && w[1] == "have" || lex.Speakers[w[0]] && !pastIs[w[1]] || chunk.IsClass(w[0], "PAPER") || chunk.IsClass(w[1], "PAPER") || slices.ContainsFunc(w, func(v string) bool { return neverApart[v] && v != "cut" && v != "bought" }) {
		return false
	}
	first := w[0]
	if lexicon.Vocab().Articles[first] || lex.Owned[first] || first == "a" || first == "an" {
		first = w[1]
	}
	return otherThings[first] || otherThings[w[2]] && w[1] != "of" || slices.ContainsFunc(w, func(v string) bool { return whoseElse[v] }) || w[0] == "was" || w[0] == "last" || w[1] == "last" || w[1] == "old" || w[1] == "other" || slices.ContainsFunc(w, func(v string) bool { return pastIs[v] || v == "cut" || v == "bought" })
}

// InsteadOf reports whether a clause tells what is not taken: "instead of the two by sixes I used last summer", "unlike the neighbors".
func InsteadOf(part []scan.Atom, w []string) bool {
	if len(w) < 3 || w[1] != "of" && w[1] != "than" && w[1] != "with" && w[1] != "to" && w[1] != "opposed" && w[0] != "unlike" {
		return false
	}
	at, _ := idiom.LastFigure(part)
	was := slices.ContainsFunc(w, func(v string) bool {
		return pastIs[v] || v == "chose" || v == "last" || v == "neighbors" || v == "neighbor" || chunk.IsPerson(v)
	})
	return was && (at >= 0 || w[0] == "unlike")
}

// Intends is how many words of a clause tell what somebody nearly did, 0 where it tells no such thing.
func Intends(w []string) int {
	if len(w) < 3 || !lex.Speakers[w[0]] && w[1] != "had" {
		return 0
	}
	for _, way := range intended {
		if n := len(way) + 1; len(w) >= n && slices.Equal(w[1:n], way) {
			return n
		}
	}
	return 0
}

// saidFirst reports whether somebody tells what he said at first.
func saidFirst(part []scan.Atom, w []string) bool {
	return lex.Speakers[w[0]] && w[1] == "said" && holdsRow(part, onceTold)
}

// sideTold reports whether a clause names an end of the wall.
func sideTold(part []scan.Atom) bool {
	return slices.ContainsFunc(part, func(a scan.Atom) bool { return paraphrase.SideWords[a.Text] })
}

// moneySpent reports whether money went for something that is no part of the wall: "I spent 400 on the saw".
func moneySpent(w []string) bool {
	on := slices.Index(w, "on")
	return on > 0 && on+1 < len(w) && !chunk.IsClass(w[len(w)-1], "RAIL") && !chunk.IsClass(w[len(w)-1], "LUMBER") && !idiom.Weighs(w[len(w)-1])
}

// Complains reports whether somebody asks who would want it, or complains that he has said it: "how many times do I have to say it".
func Complains(part []scan.Atom) bool {
	w := WordsOnly(part)
	if len(w) > 2 && w[0] == "who" && (w[1] == "wants" || w[1] == "needs" || w[1] == "would") {
		return true
	}
	if len(w) > 3 && w[0] == "what" && w[1] == "do" && w[2] == "you" && w[3] == "mean" {
		return true
	}
	return len(w) > 5 && w[0] == "how" && (w[1] == "many" && w[2] == "times" || w[1] == "often") && (slices.Contains(w, "say") || slices.Contains(w, "tell") || slices.Contains(w, "repeat"))
}

// ofAnotherTime reports whether a clause says that something was so at another time.
func ofAnotherTime(part []scan.Atom, w []string) bool {
	for i, v := range w {
		if v == "used" && i+1 < len(w) && w[i+1] == "to" || (v == "was" || v == "were") && i > 0 && i+2 < len(w) && (w[i+1] == "going" || w[i+1] == "supposed" || w[i+1] == "meant") && w[i+2] == "to" {
			return true
		}
	}
	was := w[0] == "was" || slices.ContainsFunc(w, func(v string) bool { return pastIs[v] })
	if !was {
		return false
	}
	if holdsRow(part, onceTold) {
		return true
	}
	if slices.Contains(w[:min(4, len(w))], "had") && slices.Contains(w, "when") {
		return true
	}
	old := slices.Index(w, "old")
	return w[0] == "was" || old == 1 || slices.Contains(w[:min(3, len(w))], "last") && w[0] != "at" || w[0] == "it" && w[1] == "was"
}

// saidOfElsewhere reports whether a clause tells how it is in another place: "they have 2x6 next door".
func saidOfElsewhere(part []scan.Atom, w []string) bool {
	if !slices.ContainsFunc(w, func(v string) bool {
		return v == "have" || v == "has" || v == "use" || v == "is" || v == "are" || v == "it"
	}) || lex.Speakers[w[0]] {
		return false
	}
	return holdsRow(part, placesElsewhere)
}

var placesElsewhere = hear.WordRows(`next door
	over there
	over the road
	down the road
	up the road
	across the street
	across the road`)

// OthersHave reports whether a clause tells how others have it or make it.
func OthersHave(w []string) bool {
	if len(w) > 3 && w[0] == "next" && w[1] == "door" {
		return true
	}
	at := 0
	if w[0] == "most" && len(w) > 1 && w[1] == "of" {
		return false
	}
	if lex.Owned[w[0]] || w[0] == "the" || w[0] == "most" || w[0] == "some" || w[0] == "other" {
		at = 1
	}
	if at+1 >= len(w) {
		return false
	}
	if w[0] == "the" && w[1] == "others" {
		return false // the other bays, or rails
	}
	if w[0] == "their" && ofParts[w[1]] {
		return false // "two stiffeners, their spacing 450 mm or less"
	}
	if whoseElse[w[0]] || whoseElse[w[at]] {
		return !slices.ContainsFunc(w[:min(3, len(w))], func(v string) bool { return chunk.IsClass(v, "PAPER") })
	}
	if lex.Owned[w[0]] && chunk.IsPerson(w[at]) || w[0] == "dad" || w[0] == "mom" || w[0] == "grandma" {
		return true
	}
	if whatOthersHave(w) {
		return true
	}
	return at == 1 && len(w) > 4 && (slices.Contains(w[2:5], "next") || slices.Contains(w[2:5], "across") || slices.Contains(w[2:5], "downhill") || slices.Contains(w[2:5], "uphill") || w[2] == "at" && lex.Owned[w[3]])
}

// whatOthersHave reports whether a clause ends by telling whose its figure is: "eight foot bays are what my cousin has".
func whatOthersHave(w []string) bool {
	i := slices.Index(w, "what") + 1
	if i < 2 || i+1 >= len(w) || !othersKeep[w[len(w)-1]] {
		return false
	}
	return hear.OtherSpeakers[w[i]] || (lex.Owned[w[i]] || w[i] == "the") && (chunk.IsPerson(w[i+1]) || whoseElse[w[i+1]])
}

// ofParts are what parts of the wall have themselves.
var ofParts = scan.WordSet("spacing thickness height width size length gap gaps tops top bottoms bottom ends faces face centers edges edge")

// othersKeep end a clause that tells what others have: "are what my cousin has".
var othersKeep = scan.WordSet("has have had got uses used built wanted")

// SaysNow reports whether words say that they are of now, and of this wall.
func SaysNow(part []scan.Atom) bool {
	for i, a := range part {
		if tellsNow[a.Text] || i < 2 && (a.Text == "but" || a.Text == "make" || a.Text == "let" || a.Text == "give" || a.Text == "new") {
			return true
		}
	}
	return false
}

// WordsOnly are the words of a part without its signs and figures.
func WordsOnly(part []scan.Atom) (w []string) {
	for _, a := range part {
		if a.Kind == scan.Word {
			w = append(w, a.Text)
		}
	}
	return w
}
