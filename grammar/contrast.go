package grammar

import (
	"slices"
	"strings"
)

// Who tells what is wanted often tells beside it what was, what others have or what was nearly done: "last time it was six boards, now it's
// five", "next door they have three inch gaps, ours are two and a quarter", "I was going to say two, but make the gap 2-3/8". Only what
// is wanted stands. A clause is left out so where its own words tell that it is of another time or of others, and the clause beside it
// that it is of now and of us. What somebody claims, what was measured, bought or built is never left out. What is wanted may lean on what
// was told for the part, the unit and the words behind the figure. Common ways of speech, no source.

// contrast is what is told beside what is wanted.
type contrast struct {
	told, wanted []atom
	line         string
	c            Context
}

// readContrasted reads a line in which something else stands beside what is wanted.
func readContrasted(line string, atoms []atom, c Context) (Reading, bool) {
	parts := contrastParts(atoms)
	if len(parts) < 2 {
		return Reading{}, false
	}
	x := contrast{line: line, c: c}
	for i, part := range parts {
		if len(x.told) == 0 && (setApart(part) || i+1 < len(parts) && beganNow(parts[i+1]) && ofSomethingElse(part)) {
			x.told = part
			continue
		}
		x.wanted = append(x.wanted, part...)
	}
	for len(x.wanted) > 0 && x.wanted[len(x.wanted)-1].kind == aSign {
		if x.wanted[len(x.wanted)-1].text == "?" {
			return Reading{}, false
		}
		x.wanted = x.wanted[:len(x.wanted)-1]
	}
	if len(x.told) == 0 || len(x.wanted) == 0 || leansOnTold(x.wanted) || othersClaim(x.told) || misspeltIn(x.told) {
		return Reading{}, false
	}
	if w := wordsOnly(withoutJoint(x.told)); len(w) > 1 && speakers[w[0]] && w[1] == "thought" && x.wanted[0].text != "but" && x.wanted[0].text != "turns" {
		return Reading{}, false
	}
	last := x.told[len(x.told)-1].end > x.wanted[len(x.wanted)-1].end
	if !saysNow(x.wanted) && !complains(x.told) && !(last && plainlyOnce(x.told)) && !insteadOf(withoutJoint(x.told), wordsOnly(withoutJoint(x.told))) && !turnedOut(x.told, x.wanted) {
		return Reading{}, false
	}
	for _, said := range x.ways() {
		if r := readPlainly(line, said, c); r.Ask == nil && len(r.Acts) > 0 && !slices.ContainsFunc(r.Acts, notWanted) {
			return r, true
		}
	}
	if w := wordsOnly(withoutJoint(x.told)); intends(w) > 0 || othersHave(w) && slices.ContainsFunc(x.wanted, func(a atom) bool { return a.text == "ours" || a.text == "mine" }) {
		q := wantedHere(Act{}, nil)
		return Reading{Ask: &q}, true // what was told is not wanted, and what is cannot be read
	}
	return Reading{}, false
}

// notWanted are acts that no clause of what is wanted comes to.
func notWanted(a Act) bool {
	return a.Kind != State && a.Kind != Ask && a.Kind != WhatIf && a.Kind != WhyNot || len(a.Statements) > 0 && a.Statements[0].Name.Wall != ""
}

// plainlyOnce reports whether a clause behind what is wanted can only tell what was: "…, the old one was only 26".
func plainlyOnce(told []atom) bool {
	w := wordsOnly(told)
	return othersHave(w) || slices.Contains(w, "old") || slices.Contains(w, "until") || slices.Contains(w, "before") || intends(w) > 0
}

// misspeltIn reports whether a word of what is told may be a misspelled one, so that it cannot be known whose word it is.
func misspeltIn(told []atom) bool {
	return slices.ContainsFunc(told, func(a atom) bool {
		return a.kind == aWord && len(a.text) > 3 && !daysOfWeek[a.text] && !english()[a.text] && len(vocab().classes[a.text]) == 0 && !words().known[a.text]
	})
}

// othersClaim reports whether a drawing is told of, which is to be checked whatever it had before.
func othersClaim(told []atom) bool {
	return slices.ContainsFunc(told, func(a atom) bool { return isClass(a.text, "PAPER") || claimedOf[a.text] })
}

// turnedOut reports whether something was expected, and turned out: "I expected 71, it measures 70-3/4".
func turnedOut(told, wanted []atom) bool {
	w := wordsOnly(withoutJoint(wanted))
	return intends(wordsOnly(told)) > 0 && len(w) > 1 && w[0] == "it" && (w[1] == "measures" || w[1] == "measured" || w[1] == "came" || w[1] == "comes" || w[1] == "is")
}

// leansOnTold reports whether what is wanted may speak of what was told: "yesterday it was six, that stands".
func leansOnTold(part []atom) bool {
	for i, a := range part {
		if a.text == "that" && i > 0 && (part[i-1].text == "than" || part[i-1].text == "under" || part[i-1].text == "over") {
			continue
		}
		if i+1 < len(part) && (a.text == "than" || moreOrLess[a.text]) && slices.ContainsFunc(part[i+1:], func(b atom) bool { return b.text == "that" || b.text == "theirs" }) {
			continue // "wider than that" leans on the figure alone
		}
		if !leaning[a.text] || i == 0 && (a.text == "what" || a.text == "why") || i == 1 && a.text == "if" && part[0].text == "what" || i > 1 && (a.text == "than" && part[i-2].text == "no" || part[i-1].text == "is" && a.text == "what") {
			continue
		}
		if i > 0 && (part[i-1].text == "no" || a.text == "like" && part[i-1].text == "would") || i > 0 && slices.ContainsFunc(part[max(i-3, 0):i], func(b atom) bool { return b.text == "not" }) {
			continue // "no more than", "not a cent more"
		}
		return true
	}
	return false
}

// toldWhen is how many words at an atom tell that something is of another time or of others.
func toldWhen(part []atom, i int) int {
	for _, w := range onceTold {
		if standAt(part, i, w...) {
			return len(w)
		}
	}
	return 0
}

var (
	// contrastKeys are words without one of which nothing stands apart.
	contrastKeys = wordSet(`last yesterday monday tuesday wednesday thursday friday saturday sunday originally once used first ago day days earlier neighbor neighbors neighbour neighbours door next everybody everyone people folks others most
		nearly almost going about planned meant considered tempted toyed spent cost grandfather grandad grandpa who times before always normally usually old was were had their his other thought expected figured close`)
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
	usedTo        = wordSet("have carry sell stock work think")
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
		{"was", "thinking"}, {"were", "thinking"}, {"was", "planning"}, {"were", "planning"}, {"had", "meant"}, {"first", "thought"}, {"first", "wanted"}, {"first", "planned"}, {"came", "close", "to"}, {"came", "this", "close", "to"}, {"went", "back", "and", "forth"}, {"had", "figured"}, {"had", "hoped"}, {"expected"}, {"figured", "on"}, {"had", "expected"}, {"had", "in", "mind"}, {"thought"}, {"had", "put", "aside"}, {"had", "set", "aside"}, {"keep", "saying"}, {"kept", "saying"}, {"would", "thought"}, {"said", "at", "first"}}
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

func wordRows(rows string) (out [][]string) {
	for _, row := range strings.Split(rows, "\n") {
		out = append(out, strings.Fields(row))
	}
	return out
}

// contrastParts cuts a line at the signs that break it, and before the words that set a clause against the one before.
func contrastParts(atoms []atom) (parts [][]atom) {
	from := 0
	for i := 1; i < len(atoms); i++ {
		w := atoms[i].text
		next := reader{atoms}.word(i + 1)
		switch {
		case breaksClause(atoms, i-1):
		case w == "but" || w == "yet" || w == "whereas" || w == "while" || w == "unlike":
		case w == "instead" && next == "of", w == "rather" && next == "than", w == "compared" && (next == "with" || next == "to"), w == "as" && next == "opposed":
		case (w == "so" || w == "and") && (ofUs[next] || ofToday[next] || next == "make" || next == "let" || w == "so" && (next == "the" || next == "my")):
		default:
			continue
		}
		if (w == "who" || w == "which") && atoms[from].text == "unlike" {
			continue // "unlike our neighbors, who used 4x4 posts"
		}
		if from < i {
			parts = append(parts, atoms[from:i])
		}
		from = i
	}
	return append(parts, atoms[from:])
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
	return ofAnotherTime(part, w) || othersHave(w)
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
		return pastIs[v] || v == "chose" || v == "last" || v == "neighbors" || v == "neighbor" || kinOf(v)
	})
	return was && (at >= 0 || w[0] == "unlike")
}

func kinOf(w string) bool { return isPerson(w) }

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
	if !speakers[w[0]] || w[1] != "said" {
		return false
	}
	for i := range part {
		if toldWhen(part, i) > 0 {
			return true
		}
	}
	return false
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
	for i := range part {
		if toldWhen(part, i) > 0 {
			return true
		}
	}
	if slices.Contains(w[:min(4, len(w))], "had") && slices.Contains(w, "when") {
		return true
	}
	old := slices.Index(w, "old")
	return w[0] == "was" || old == 1 || slices.Contains(w[:min(3, len(w))], "last") && w[0] != "at" || w[0] == "it" && w[1] == "was"
}

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
	if whoseElse[w[0]] || whoseElse[w[at]] {
		return !slices.ContainsFunc(w[:min(3, len(w))], func(v string) bool { return isClass(v, "PAPER") })
	}
	if owned[w[0]] && isPerson(w[at]) || w[0] == "dad" || w[0] == "mom" || w[0] == "grandma" {
		return true
	}
	return at == 1 && len(w) > 4 && (slices.Contains(w[2:5], "next") || slices.Contains(w[2:5], "across") || slices.Contains(w[2:5], "downhill") || slices.Contains(w[2:5], "uphill") || w[2] == "at" && owned[w[3]])
}

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
