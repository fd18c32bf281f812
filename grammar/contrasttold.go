package grammar

import (
	"slices"
	"strings"
)

// What is told beside a wish is of another time, of others, or of what somebody nearly did: this file tells it by its words.

// toldWhen is how many words at an atom tell that something is of another time or of others.
func toldWhen(part []atom, i int) int { return rowAt(part, i, onceTold) }

// rowAt is how many words of one of several rows stand at an atom, 0 where none does.
func rowAt(part []atom, i int, rows [][]string) int {
	for _, w := range rows {
		if standAt(part, i, w...) {
			return len(w)
		}
	}
	return 0
}

// holdsRow reports whether one of several rows of words stands in a clause.
func holdsRow(part []atom, rows [][]string) bool {
	for i := range part {
		if rowAt(part, i, rows) > 0 {
			return true
		}
	}
	return false
}

var (
	ofUs    = wordSet("i we ours mine our my this here")
	ofToday = wordSet("now today tonight instead nowadays")
	ourWord = wordSet("ours mine it they these this")
	pastIs  = wordSet("was were had did wanted used went made asked put left liked ran kept built got preferred stood settled measured came took needed ate sat ran stood read")
	// neverApart are words of whoever claims, measures, buys or builds, of who denies and who supposes.
	neverApart = wordSet(`says say said claims claim told tells thinks swears reckons insists bought buy ordered picked cut screwed fixed installed poured set dug hung if unless than
		as same like twice either maybe perhaps wants want needs whether not never no how why which too also`)
	// claimedOf are what somebody claims.
	claimedOf = wordSet("figure figures number numbers guess total count reckoning")
	// usedTo is what people and yards used to do that needs no figure to be told apart.
	usedTo = wordSet("have carry sell stock work think")
	// fillersBefore are words that may stand before a clause and say nothing.
	fillersBefore = wordSet("uh um er well so ok okay right and but see look hey oh")
	// leaning are words by which what is wanted speaks of what was told.
	leaning  = wordSet("more less fewer wider narrower higher lower taller shorter tighter another same too also either still both those that than as said says never why if what how like did so")
	unitSaid = wordSet("inch inches ft foot feet mm millimeter millimeters cm centimeter centimeters m meter meters")
	// strongNow begin a clause that is of this wall and no other.
	strongNow = wordSet("ours mine here now today nowadays")
	// otherThings are what else people build or own.
	otherThings = wordSet("fence fences deck shed barn garage house garden gate balcony porch carport stairs landing kitchen street school church park kennel coop")
	tellsNow    = wordSet("i we ours mine this here now today tonight instead nowadays these us")
	nowOnly     = wordSet("now today tonight this time it is are 's they ours mine i we am want wants wanted need would like will have has having take go going with for be to at one ones here just only make let us should shall must my me do use using but so and then instead rather the new there leave leaving giving settled decided mean said meant on down back get gets getting picked chose chosen planning")
	whoseElse   = wordSet("neighbor neighbors neighbour neighbours everybody everyone people folks others grandfather grandad grandpa their his her")
	intended    = [][]string{{"nearly"}, {"almost"}, {"was", "going", "to"}, {"were", "going", "to"}, {"was", "about", "to"}, {"were", "about", "to"}, {"was", "all", "set", "to"}, {"had", "planned"}, {"planned", "on"}, {"planned", "to"}, {"thought", "about"}, {"thought", "of"}, {"considered"}, {"toyed", "with"}, {"was", "tempted"},
		{"was", "thinking"}, {"were", "thinking"}, {"was", "planning"}, {"were", "planning"}, {"had", "meant"}, {"first", "thought"}, {"first", "wanted"}, {"first", "planned"}, {"came", "close", "to"}, {"came", "this", "close", "to"}, {"went", "back", "and", "forth"}, {"had", "figured"}, {"had", "hoped"}, {"expected"}, {"figured", "on"}, {"had", "expected"}, {"had", "in", "mind"}, {"thought"}, {"had", "put", "aside"}, {"had", "set", "aside"}, {"keep", "saying"}, {"kept", "saying"}, {"would", "thought"}, {"said", "at", "first"}, {"wish"}, {"wished"}, {"would", "have", "liked"}, {"would", "have", "loved"}, {"would", "have", "preferred"}, {"would", "love"}, {"dreamed", "of"}, {"hoped", "for"}, {"was", "set", "on"}, {"were", "set", "on"}}
	onceTold = wordRows(`last time
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

// wordRows parts rows, a line each, into their words.
func wordRows(rows string) (out [][]string) {
	for _, row := range strings.Split(rows, "\n") {
		out = append(out, strings.Fields(row))
	}
	return out
}

// setApart reports whether a clause tells of another time, of others or of what was nearly done.
func setApart(part []atom) bool {
	if part[len(part)-1].text == "?" {
		return complains(part)
	}
	part = withoutJoint(part)
	if complains(part) {
		return true
	}
	w := wordsOnly(part)
	if len(w) > 2 && (w[0] == "unlike" || w[0] == "instead" || w[0] == "rather" || w[0] == "compared" || w[0] == "as") {
		return insteadOf(part, w)
	}
	if at, _ := lastFigure(part); len(w) < 2 || at < 0 && !sideTold(part) && !(slices.Contains(w, "used") && slices.ContainsFunc(w, func(v string) bool { return usedTo[v] })) {
		return false
	}
	for len(w) > 3 && (fillersBefore[w[0]] || w[0] == "originally") {
		w = w[1:]
	}
	long := false
	for i := range part {
		long = long || toldWhen(part, i) > 0 && (part[i].text == "last" || part[min(i+2, len(part)-1)].text == "last" || part[min(i+1, len(part)-1)].text == "last")
	}
	if n := toldWhen(part, 0); n > 0 && len(w) > n+1 && len(part) > n && (w[n] == "i" || w[n] == "we") {
		w = w[n:]
	}
	if n := intends(w); n > 0 {
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
	if len(w) > 4 && speakers[w[0]] && w[1] == "used" && w[2] == "to" {
		return true
	}
	if slices.ContainsFunc(w, func(v string) bool { return neverApart[v] }) {
		return false
	}
	return ofAnotherTime(part, w) || othersHave(w) || saidOfElsewhere(part, w)
}

// beganNow reports whether a clause begins by telling that it is of this wall: "this one gets 2x6", "here it is two".
func beganNow(part []atom) bool {
	w := wordsOnly(withoutJoint(part))
	return len(w) > 1 && (strongNow[w[0]] || slices.Contains(w[1:len(w)-1], "here") || slices.Contains(w[1:], "ours") || w[0] == "this" && (w[1] == "one" || w[1] == "tape" || w[1] == "blade" || w[1] == "saw" || w[1] == "time" || w[1] == "wall" || w[1] == "job") || (w[0] == "on" || w[0] == "for" || w[0] == "behind") && (strongNow[w[1]] || w[1] == "this") || w[0] == "these")
}

// ofSomethingElse reports whether a clause tells of something else that is built, or of what was.
func ofSomethingElse(part []atom) bool {
	part = withoutJoint(part)
	w := wordsOnly(part)
	if at, _ := lastFigure(part); at < 0 || len(w) < 3 || w[0] == "they" && w[1] == "have" || speakers[w[0]] && !pastIs[w[1]] || isClass(w[0], "PAPER") || isClass(w[1], "PAPER") || slices.ContainsFunc(w, func(v string) bool { return neverApart[v] && v != "cut" && v != "bought" }) {
		return false
	}
	first := w[0]
	if vocab().articles[first] || owned[first] || first == "a" || first == "an" {
		first = w[1]
	}
	return otherThings[first] || otherThings[w[2]] && w[1] != "of" || slices.ContainsFunc(w, func(v string) bool { return whoseElse[v] }) || w[0] == "was" || w[0] == "last" || w[1] == "last" || w[1] == "old" || w[1] == "other" || slices.ContainsFunc(w, func(v string) bool { return pastIs[v] || v == "cut" || v == "bought" })
}

// insteadOf reports whether a clause tells what is not taken: "instead of the two by sixes I used last summer", "unlike the neighbors".
func insteadOf(part []atom, w []string) bool {
	if len(w) < 3 || w[1] != "of" && w[1] != "than" && w[1] != "with" && w[1] != "to" && w[1] != "opposed" && w[0] != "unlike" {
		return false
	}
	at, _ := lastFigure(part)
	was := slices.ContainsFunc(w, func(v string) bool {
		return pastIs[v] || v == "chose" || v == "last" || v == "neighbors" || v == "neighbor" || isPerson(v)
	})
	return was && (at >= 0 || w[0] == "unlike")
}

// intends is how many words of a clause tell what somebody nearly did, 0 where it tells no such thing.
func intends(w []string) int {
	if len(w) < 3 || !speakers[w[0]] && w[1] != "had" {
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
func saidFirst(part []atom, w []string) bool {
	return speakers[w[0]] && w[1] == "said" && holdsRow(part, onceTold)
}

// sideTold reports whether a clause names an end of the wall.
func sideTold(part []atom) bool {
	return slices.ContainsFunc(part, func(a atom) bool { return sideWords[a.text] })
}

// moneySpent reports whether money went for something that is no part of the wall: "I spent 400 on the saw".
func moneySpent(w []string) bool {
	on := slices.Index(w, "on")
	return on > 0 && on+1 < len(w) && !isClass(w[len(w)-1], "RAIL") && !isClass(w[len(w)-1], "LUMBER") && !weighs(w[len(w)-1])
}

// complains reports whether somebody asks who would want it, or complains that he has said it: "how many times do I have to say it".
func complains(part []atom) bool {
	w := wordsOnly(part)
	if len(w) > 2 && w[0] == "who" && (w[1] == "wants" || w[1] == "needs" || w[1] == "would") {
		return true
	}
	if len(w) > 3 && w[0] == "what" && w[1] == "do" && w[2] == "you" && w[3] == "mean" {
		return true
	}
	return len(w) > 5 && w[0] == "how" && (w[1] == "many" && w[2] == "times" || w[1] == "often") && (slices.Contains(w, "say") || slices.Contains(w, "tell") || slices.Contains(w, "repeat"))
}

// ofAnotherTime reports whether a clause says that something was so at another time.
func ofAnotherTime(part []atom, w []string) bool {
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
func saidOfElsewhere(part []atom, w []string) bool {
	if !slices.ContainsFunc(w, func(v string) bool {
		return v == "have" || v == "has" || v == "use" || v == "is" || v == "are" || v == "it"
	}) || speakers[w[0]] {
		return false
	}
	return holdsRow(part, placesElsewhere)
}

var placesElsewhere = wordRows(`next door
	over there
	over the road
	down the road
	up the road
	across the street
	across the road`)

// othersHave reports whether a clause tells how others have it or make it.
func othersHave(w []string) bool {
	if len(w) > 3 && w[0] == "next" && w[1] == "door" {
		return true
	}
	at := 0
	if w[0] == "most" && len(w) > 1 && w[1] == "of" {
		return false
	}
	if owned[w[0]] || w[0] == "the" || w[0] == "most" || w[0] == "some" || w[0] == "other" {
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
		return !slices.ContainsFunc(w[:min(3, len(w))], func(v string) bool { return isClass(v, "PAPER") })
	}
	if owned[w[0]] && isPerson(w[at]) || w[0] == "dad" || w[0] == "mom" || w[0] == "grandma" {
		return true
	}
	if whatOthersHave(w) {
		return true
	}
	return at == 1 && len(w) > 4 && (slices.Contains(w[2:5], "next") || slices.Contains(w[2:5], "across") || slices.Contains(w[2:5], "downhill") || slices.Contains(w[2:5], "uphill") || w[2] == "at" && owned[w[3]])
}

// whatOthersHave reports whether a clause ends by telling whose its figure is: "eight foot bays are what my cousin has".
func whatOthersHave(w []string) bool {
	i := slices.Index(w, "what") + 1
	if i < 2 || i+1 >= len(w) || !othersKeep[w[len(w)-1]] {
		return false
	}
	return otherSpeakers[w[i]] || (owned[w[i]] || w[i] == "the") && (isPerson(w[i+1]) || whoseElse[w[i+1]])
}

// ofParts are what parts of the wall have themselves.
var ofParts = wordSet("spacing thickness height width size length gap gaps tops top bottoms bottom ends faces face centers edges edge")

// othersKeep end a clause that tells what others have: "are what my cousin has".
var othersKeep = wordSet("has have had got uses used built wanted")

// saysNow reports whether words say that they are of now, and of this wall.
func saysNow(part []atom) bool {
	for i, a := range part {
		if tellsNow[a.text] || i < 2 && (a.text == "but" || a.text == "make" || a.text == "let" || a.text == "give" || a.text == "new") {
			return true
		}
	}
	return false
}

// wordsOnly are the words of a part without its signs and figures.
func wordsOnly(part []atom) (w []string) {
	for _, a := range part {
		if a.kind == aWord {
			w = append(w, a.text)
		}
	}
	return w
}
