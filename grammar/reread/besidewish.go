package reread

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/paraphrase"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
	"saywright/grammar/spelling"
	"saywright/grammar/takeback"
)

// An aside is a whole clause beside a wish that tells nothing of it: of the speaker, of people, animals, tools, wood and weather ("the dog's run
// off with my pencil again", "I worked it out over breakfast", "it'll look grand from the road"), or a saying ("touch wood"). It has a
// subject of its own, and neither figures, quantities nor words by which somebody denies, doubts, claims, supposes or tells of another
// time or another thing. It is looked for first of all, as its words may be taken for a claim, a trial or an order: "the neighbor lent me his
// drill, gap 2".

// ReadWithoutAsides reads a line without the asides in it; what is left must be a wish or a question that says all by itself.
func ReadWithoutAsides(atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	cuts := append(takeback.ClauseStarts(atoms), len(atoms))
	if len(cuts) < 3 {
		return act.Reading{}, false
	}
	var left []scan.Atom
	dropped := false
	for k := range cuts[:len(cuts)-1] {
		part := atoms[cuts[k]:cuts[k+1]]
		if part[0].Text != "but" && isAside(part, c) {
			dropped = true
			if n := len(left); n > 0 && left[n-1].Kind == scan.Sign && strings.Contains(".!;", part[len(part)-1].Text) {
				left[n-1] = part[len(part)-1]
			}
			continue
		}
		if len(left) == 0 {
			part = aside.WithoutJoint(part)
		}
		if dropped && (idiom.PointsBack[part[0].Text] || paraphrase.Causes[part[0].Text] && part[0].Text != "so") {
			return act.Reading{}, false // it may speak of what was left out
		}
		left = append(left, part...)
	}
	for len(left) > 0 && left[len(left)-1].Kind == scan.Sign && (left[len(left)-1].Text == "," || left[len(left)-1].Text == "-") {
		left = left[:len(left)-1]
	}
	if !dropped || len(left) == 0 {
		return act.Reading{}, false
	}
	return ReadAlone(left, c)
}

// isAside reports whether a clause is an aside.
func isAside(part []scan.Atom, c act.Context) bool {
	if part[len(part)-1].Text == "?" || chunk.Figured(part) {
		return false
	}
	w := paraphrase.PlainWords(part)
	for len(w) > 1 && (aside.StepBefore[w[0]] && !lex.Pointing[w[0]] && w[0] != "you") {
		w = w[1:]
	}
	if len(w) == 0 || len(w) > longestAside {
		return false
	}
	if sayings[strings.Join(w, " ")] {
		return true
	}
	if surprises(w) || finishes(w) {
		return true
	}
	return len(w) > 2 && asideSubject(w) && nothingTurns(w) && !actsOnWish(w) && tellsNoWall(part, c)
}

const longestAside = 12 // words; whoever goes on longer may come to the point

// sayings are clauses that people put beside whatever they say.
var sayings = lex.PhraseSet(
	"touch wood", "knock on wood", "god willing", "fingers crossed", "cross my heart", "hand on heart", "honest to god", "on my honor", "scout 's honor", "mark my words", "believe me", "believe you me", "trust me",
	"no word of a lie", "no doubt about it", "no two ways about it", "sure as eggs", "as sure as eggs is eggs", "simple as that", "easy as pie", "easy does it", "easy peasy", "piece of cake", "sweet as",
	"happy days", "job done", "job 's a good one", "bob 's your uncle", "and away we go", "away we go", "here we go", "off we go", "on we go", "onwards", "happy with that", "no complaints here",
	"long story short", "to cut a long story short", "cutting to the chase", "without further ado", "between you and me", "between ourselves", "for my sins", "if it please you",
	"i will tell you what", "tell you what", "i will give it to you straight", "let me tell you", "mind you", "if you must know", "for the record", "for your information", "truth be told", "to be honest", "to be fair",
	"first things first", "last but not least", "before i forget", "nearly forgot", "almost forgot", "i nearly forgot", "i almost forgot", "clean forgot", "while i think of it", "while i am at it", "while we are at it", "while i have got you", "while i remember", "before it slips my mind",
	"jot this down", "jot that down", "write this down", "write that down", "note this down", "note that down", "get this down", "take this down", "put this down", "got a pencil", "have you got a pencil", "ready",
	"whenever you are ready", "when you are ready", "when you get a minute", "when you get a chance", "when you have a minute", "in your own time", "no rush", "no rush at all", "no hurry", "pronto", "chop chop", "look lively", "look sharp", "make it snappy",
	"quick as you like", "quick as you can", "do not spare the horses", "and step on it", "step on it", "bless you", "bless your heart", "god love you", "god bless", "good lad", "good man", "good girl", "good stuff", "you little beauty", "you beauty", "you star",
	"much obliged", "much obliged to you", "ta", "ta very much", "thanks ever so much", "thanks a bunch", "thanks a million", "cheers mate", "cheers", "that would be grand", "that would be lovely", "that would be great", "there is a good lad", "there is a good man",
	"g'day", "g'day again", "me again", "it is only me", "it is me again", "only me", "sorry about the racket", "sorry about the noise", "sorry about that noise", "excuse the mess", "excuse the noise", "excuse my voice", "pardon the noise", "pardon the hammering", "pardon my mumbling",
	"never mind the noise", "never mind the racket", "do not mind the dog", "do not mind me", "listen up", "now listen", "listen here", "now pay attention", "pay attention", "bear with me", "hold your horses", "here is the thing", "here is the deal", "so here is the deal",
	"just so we are clear", "just so you know", "so you know", "in case you were wondering", "as you can hear", "as you can see", "as the saying goes", "as they say", "all being well", "weather permitting", "god help us", "lord help us", "heaven help us",
	"for the love of god", "for goodness sake", "for pete 's sake", "good lord", "good grief", "good gracious", "holy smokes", "holy moly", "holy cow", "heavens above", "crikey", "blimey", "strewth", "jeepers", "fair dinkum", "by golly", "by jove", "my word", "well i never", "sure look",
	"all righty then", "let us get this show on the road", "no time like the present", "better safe than sorry", "better late than never", "sorry to bother you again", "i can not wait to get started", "i can not wait", "down to business",
	"looks like rain", "looks like rain again", "then i can start cutting", "then i can get going", "then we can get going", "just like i planned", "i am no carpenter", "that will look sharp", "that will look tidy", "that will look nice", "that will look grand", "that will look lovely", "that will look smart",
	"do me a favor", "where was i", "don 't mind me", "do not mind the noise", "do not mind the barking", "excuse my cough", "excuse me a second", "worn out already", "that way everybody is happy",
	"fair play", "happy out", "grand so", "no bother", "no bother at all", "no worries at all", "no drama", "no dramas", "too easy", "she will be right", "she 'll be right", "she is apples",
)

// surprises reports whether something that is no part of the wall is told to be bigger or smaller than was thought: "the cart is wider than I
// thought", which is why a value is set anew.
func surprises(w []string) bool {
	if len(w) < 6 || !lex.Owned[w[0]] && w[0] != "the" && w[0] != "that" {
		return false
	}
	n := len(w)
	if !thoughtOf[w[n-1]] || !lex.Speakers[w[n-2]] || w[n-3] != "than" || !strings.HasSuffix(w[n-4], "er") {
		return false
	}
	is := slices.IndexFunc(w, func(v string) bool { return v == "is" || v == "are" || v == "was" || v == "were" || v == "'s" })
	if is < 2 || is > 4 {
		return false
	}
	for _, v := range w[1:is] {
		if idiom.Weighs(v) && !asideHarmless[v] || len(lexicon.Vocab().Classes[v]) > 0 && !chunk.IsPerson(v) && !lex.Outsiders[v] && !chunk.IsClass(v, "RAIL") && !chunk.IsClass(v, "POST") && !chunk.IsClass(v, "PASSING") {
			return false
		}
	}
	return true
}

// finishes reports whether somebody is to paint what is built: "my granddaughter wants to paint it".
func finishes(w []string) bool {
	n := len(w)
	return n > 3 && n < 8 && finishing[w[n-2]] && (w[n-1] == "it" || w[n-1] == "them") && w[n-3] == "to" && !slices.ContainsFunc(w, func(v string) bool { return phrase.Turning[v] || idiom.Withheld[v] || idiom.Viewed[v] })
}

var finishing = scan.WordSet("paint stain oil varnish sand prime whitewash limewash seal")

var thoughtOf = scan.WordSet("thought expected figured reckoned remembered guessed imagined believed")

// asideSubject reports whether words begin with who or what an aside tells of, and what it does.
func asideSubject(w []string) bool {
	switch first := w[0]; {
	case lex.Speakers[first], first == "they" || first == "everybody" || first == "everyone":
		return !asideModal[w[1]]
	case first == "it":
		return !slices.Contains(w, "gone") && (w[1] == "is" || w[1] == "has" || w[1] == "'s" || w[1] == "will" || itTells[w[1]])
	case asideOpeners[first]:
		return true
	case first == "what":
		return w[1] == "a" || w[1] == "an"
	case lex.Auxiliary[w[1]] && !lex.Auxiliary[first] || w[1] == "'s":
		return len(first) > 3 && aside.ForeignSubject(first) && !lexicon.Vocab().Articles[first] && !asideTurns[first] && !idiom.Weighs(first)
	case lex.Owned[first] && first != "that" || first == "the" || first == "these":
		return asideTold(w[1:])
	case len(first) > 3 && (lex.Outsiders[first] || chunk.IsPerson(first)) && w[1] != "and":
		return asideTold(w)
	}
	return false
}

// asideTold reports whether words are a name and what is told of it.
func asideTold(w []string) bool {
	for i, v := range w {
		if i == 0 || i > 3 {
			continue
		}
		if v == "'s" && i+2 < len(w)+1 || v == "is" || v == "are" || v == "has" || v == "have" || v == "will" || i > 0 && len(v) > 3 && (strings.HasSuffix(v, "s") && !strings.HasSuffix(v, "ss") || strings.HasSuffix(v, "ed")) || asidePast[v] {
			return i+1 < len(w) && !idiom.PointsBack[w[0]]
		}
	}
	return false
}

var (
	// asideModal are words by which somebody supposes, wishes or bids, so that it may be said of the wish.
	asideModal = scan.WordSet("would could might may should must can ought need needs want wants wish hope think thought mean meant said say guess bet doubt wonder reckon forgot 'd let")
	// itTells are verbs of what "it" does for whoever looks at the wall or uses it.
	itTells = scan.WordSet("goes suits matches looks keeps lets gives makes saves helps feels came")
	// asideOpeners begin what is told of the wall without a subject: "handy for the barbecue", "makes it easier to paint".
	asideOpeners = scan.WordSet("handy good great perfect nice easier makes suits saves keeps helps lovely ideal")
	asidePast    = scan.WordSet("went came took lent gave taught got made did ran left sat stood built bought broke brought found kept rang sent")
)

// asideHarmless are words that are never left out elsewhere, but say nothing of a wish in a clause of its own.
var asideHarmless = scan.WordSet(`up off out over back only just about like all whole both plenty early through again big little poor very much right under above while tight hard enough so
	as window windows kitchen neighbor neighbors neighbour neighbours kids missus ladder roof feet yard outside closing long killing rough worked dreaming liked taught trade written late cold hot wet new old down
	rest matches leaning resting floor bike bikes table chairs garden mind`)

// nothingTurns reports whether no word of a clause may turn a wish beside it.
func nothingTurns(w []string) bool {
	for i, v := range w {
		if i == 0 && v == "what" {
			continue
		}
		if asideModal[v] && v != "can" && !(v == "need" && i == 1) || asideTurns[v] || lexicon.Vocab().Articles[v] && i+1 == len(w) {
			return false
		}
		if idiom.Weighs(v) && !asideHarmless[v] {
			return false
		}
	}
	return true
}

// asideTurns are further words by which a clause may turn what it stands beside: it is shouted by others, was so once, is for
// another thing, or is held to be a folly.
var asideTurns = scan.WordSet(`shouting shouts yelling yells hollering screaming singing muttering mutters whispering talked talking calling calls whistling whistles idea ideas notion daft foolish mad bonkers crackers barmy potty loopy cuckoo
	naff ropey dodgy ugly plain hideous grim silly pointless pants rubbish crap crappy lousy shoddy cheap nasty backwards backward upside wonky crooked lying lies lied drunk asleep
	was were had used before until yesterday till when once if as-if though madness folly earth queen king pope moon pigs kidding codding teasing messing laughing
	truck lorry delivery shipment thinking thought thoughts changed changing decided deciding undecided torn unsure certain swearing brother-in-law doghouse crib hutch pigpen pen coop kennel stable barn trough hall church`)

// actsOnWish reports whether something is done to what was said: "the flood took it", "we binned that".
func actsOnWish(w []string) bool {
	for len(w) > 2 && (w[len(w)-1] == "now" || w[len(w)-1] == "again" || w[len(w)-1] == "already" || w[len(w)-1] == "anyway") {
		w = w[:len(w)-1]
	}
	last := w[len(w)-1]
	if !lex.Pointing[last] && last != "them" && last != "those" && last != "these" && last != "one" {
		return false
	}
	switch w[len(w)-2] {
	case "about", "at", "on", "under", "of", "with", "paint", "see", "love", "loves", "like", "likes", "built", "painted", "admire", "enjoy", "for":
		return false
	}
	return true
}

// tellsNoWall reports whether a clause names no quantity of the wall and no place in it, asks and orders nothing.
func tellsNoWall(part []scan.Atom, c act.Context) bool {
	part = part[:len(part):len(part)]
	exclaims := paraphrase.PlainWords(part)[0] == "what"
	things, moves := false, false
	for _, t := range lex.Tokens(part, c) {
		switch t.Kind {
		case lexicon.Unknown:
			if !hear.DaysOfWeek[t.Text] && (!hear.Foreign(&t) || !spelling.English()[t.Text]) || lex.Words().Numberish(t.Text) && !lexicon.Vocab().Neutral[t.Text] {
				return false // a word misspelled
			}
		case lexicon.Num, lexicon.Size, lexicon.Goal, lexicon.Fix, lexicon.Lim, lexicon.Side, lexicon.Best, lexicon.Units, lexicon.WayOut, lexicon.Factor, lexicon.Another, lexicon.Where, lexicon.Level:
			return false
		case lexicon.Same:
			if t.Key() != "=" {
				return false
			}
		case lexicon.Loc:
			if t.Key() != "of wall" {
				return false
			}
		case lexicon.Cmd:
			if t.Text != "drill" && t.Text != "help" {
				return false
			}
		case lexicon.Wh:
			if !exclaims {
				return false
			}
		case lexicon.Change:
			moves = true
		case lexicon.Part:
			if !thingsAbout[t.Key()] {
				return false
			}
			things = things || t.Key() != "tape" && t.Key() != "kerf"
		}
	}
	return !things || !moves
}

// thingsAbout are parts that people tell of beside a wish; all other parts are quantities, which are never passed over.
var thingsAbout = scan.WordSet("rail size tape wall post bracket floor kerf screw screws")
