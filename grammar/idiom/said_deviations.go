package idiom

import (
	"strings"
	"sync"

	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// By how much something is off from what is wanted asks to change it by so much the other way: "the gap's a quarter inch more than I wanted", "you've got one
// rail too many". That holds of the plan. What a piece measures ("rail 4 came up a quarter short") is a fact of the piece, what a site measures ("the span is an
// inch too long") may be one, and what others wanted is not what is wanted here: they are asked back. Plain English, no source.

// deviating are the parts of which it is told, with the words for too much and too little of each: as degrees ("too wide") and compared ("wider than").
var deviating = []struct{ part, over, under, more, less, lessen, raise string }{
	{"(GAP|spacing|((bottom|lower|lowest|floor) GAP)|(GAP UNDER (bottom|lowest) RAIL)|((space|distance|spacing|room|GAP) between [the|my|our] RAIL))",
		"wide|big|large|much|loose|generous|high|tall|great", "small|narrow|tight|little|snug|short|low|close|skimpy|stingy",
		"more|bigger|wider|larger|greater|looser|higher|taller|roomier", "less|smaller|narrower|tighter|lower|closer|shorter", "reduce $1 by $2", "raise $1 by $2"},
	{"(WALL|(WALL HEIGHT)|(HEIGHT of WALL)|(top of WALL)|HEIGHT|(POST HEIGHT)|(HEIGHT of [new|added|extra] POST))",
		"high|tall|much", "low|short|little|squat", "more|higher|taller", "less|lower|shorter", "reduce $1 by $2", "raise $1 by $2"},
	{"((" + walkThrough + " [WIDTH])|(WIDTH of " + walkThrough + "))",
		"wide|big|large|much|generous|roomy|broad", "small|narrow|tight|little|snug|skimpy|stingy|cramped",
		"more|bigger|wider|larger|greater|roomier|broader", "less|smaller|narrower|tighter", "reduce $1 by $2", "raise $1 by $2"},
	{"(STIFF (spacing|spacings))|(spacing of STIFF)", "wide|big|large|much|far|great", "small|narrow|tight|little|close", "more|bigger|wider|larger|greater", "less|smaller|narrower|tighter|closer",
		"reduce $1 by $2", "raise $1 by $2"},
	{"(bays|sections|panels|stretches|((each|every) (bay|section|panel|stretch)))", "wide|long|big|large|much", "narrow|short|small|tight|little", "more|bigger|wider|larger|longer", "less|smaller|narrower|tighter|shorter", "reduce $1 by $2", "raise $1 by $2"},
	{"(RAIL|(RAIL [that] are))", "(far apart)", "(close together)|(tight together)|(near together)|close", "(farther apart)|(further apart)", "(closer together)|(nearer together)|(tighter together)",
		"reduce the gap by $2", "raise the gap by $2"},
	{"STIFF", "(far apart)", "(close together)|(tight together)|close", "(farther apart)|(further apart)", "(closer together)|(nearer together)", "reduce the stiffener spacing by $2", "raise the stiffener spacing by $2"},
	{"(top|uppermost|highest) RAIL", "high", "low", "higher", "lower", "lower the top rail by $2", "raise the top rail by $2"},
	{"(bottom|lowest|lowermost) RAIL", "high", "low|(close to FLOOR)|(near FLOOR)", "higher", "lower|(closer to FLOOR)", "lower the bottom rail by $2", "raise the bottom rail by $2"},
	{walkThrough, "(far [over|off] [to] right)|(close to right (post|end post|end))|(far from left (post|end post|end))", "(far [over|off] [to] left)|(close to left (post|end post|end))|(far from right (post|end post|end))", "(farther right)|(further right)|(farther to the right)|(further to the right)", "(farther left)|(further left)|(farther to the left)|(further to the left)",
		"move the opening $2 to the left", "move the opening $2 to the right"},
}

// deviatingCounts are the parts that one counts, with what they are called in the plain phrase.
var deviatingCounts = [][2]string{{"RAIL", "rails"}, {"STIFF", "stiffeners"}, {"[added|new|extra] POST", "added posts"}, {"bay|bays|section|sections|panel|panels", "bays"}, {"opening|openings|doorway|doorways|walkthrough|walkthroughs", "openings"}}

const (
	// walkThrough are names of the opening that no gate or door has: how wide one of those is, may be told of itself.
	walkThrough = "(opening|openings|doorway|doorways|gateway|entry|entryway|entrance|walkthrough|walkway|passage|passageway|(walk through)|(walk - through))"
	// cameOut is how the plan is told to have come out.
	cameOut = "(is|are|'s|looks|look|seems|seem|sits|sit|stands|stand|(comes out)|(come out)|(came out)|(turns out)|(turned out)|(ends up)|(ended up)|(works out)|(worked out)|((is|are|has|have|'s) (come out|coming out|ended up|turned out|worked out))) [to be|being] [still|just|actually|really|fully|exactly|now]"
	// asWanted is what it was to be.
	asWanted = "((i|we) [had|have|really|actually|originally|ever|would|'d|am|are|was|were] [really|actually|originally|been] (want|wanted|asked|asked for|ask for|asked you for|wished for|hoped for|hoped|like|planned|planned on|planned for|specified|after|meant|intended|(going|shooting|aiming|looking|hoping) for|bargained for|requested|had in mind|have in mind|in mind) [it|them] [to be|to have])"
	// asItShould is the same, told as what must be.
	asItShould = "((it|that|they|this|there) ((should|must) [be|have been]|ought to [be|have been]|(needs|need) to be|((is|are|was|were|'s) (supposed|meant) to [be|have been])))"
	// ofThePlan tells that it is the plan's.
	ofThePlan = "[[that|which] you (have|have got|got|drew|made|show|gave me|gave us|put|set|left|worked out|came up with)|(in|on) (the|your|this|that) (layout|plan|drawing|sketch|picture)] "
	// orderedRight is an order to set it right.
	orderedRight = "[for me|for us|for my taste|for our taste|for my liking|for our liking] [,|.|;|-|--] [so|and|then] [please|kindly|just|(can|could|would|will) (you|we)|let us] [please|just|kindly] "
)

// deviations are the phrases for all of them, with what each is set to.
var deviations = sync.OnceValue(func() *phrase.Book {
	b := phrase.BookOf()
	row := func(said, plain string) { b.Add(phrase.Placed{said, plain, nil}) }
	than := "than [what] (" + asWanted + "|" + asItShould + "|wanted|planned|intended)"
	thanWhat := "what (" + asWanted + "|" + asItShould + ")"
	for _, d := range deviating {
		part := "[this|that|these|those|all|both] !([the|my|our|your|every|each] (" + d.part + ")) " + ofThePlan
		for _, way := range []struct{ degree, compared, beyond, plain string }{
			{d.over, d.more, "over|above|past|beyond|(in excess of)", d.lessen},
			{d.under, d.less, "under|below|(short of)|(shy of)|beneath", d.raise},
		} {
			row(part+"["+cameOut+"] # too ("+way.degree+")", way.plain)
			row(part+cameOut+" too ("+way.degree+") by # ", way.plain)
			row(part+"["+cameOut+"] # ("+way.compared+") "+than, way.plain)
			row(part+cameOut+" ("+way.compared+") "+than+" by #", way.plain)
			if strings.Contains(way.plain, "$1") {
				row(part+"["+cameOut+"] # ("+way.beyond+") "+thanWhat, way.plain)
			}
			row("(you have|you have got|you have (made|put|drawn|set|left)|you got|you made|you put|you drew|you set|you left|it has|we have got|we have|we got) "+part+" # too ("+way.degree+")", way.plain)
		}
	}
	const gap, there = "!((GAP|OPENING) [(between [the|my|our] RAIL)|(under [the] (bottom|lowest) RAIL)])", "[there is|there are|you have|you have got|you left|you have left|you got|it has|that is|we have|we have got|it is] "
	for _, w := range [][2]string{{"too much", "reduce $2 by $1"}, {"too little", "raise $2 by $1"}} {
		row(there+"# "+w[0]+" "+gap, w[1])
	}
	for _, w := range [][2]string{{"more|extra", "reduce $2 by $1"}, {"less", "raise $2 by $1"}} {
		row(there+"# "+w[0]+" "+gap+" "+than, w[1])
	}
	const counted = "[there is|there are|there 's|you have|you have got|you got|you gave me|you gave us|you drew|you put|you put in|you put me|that is|those are|it is|it has|it has got|they are|you are|you [have] ended up with|(the|this|that|my|our|your) (wall|plan|layout|drawing) has] "
	// Of boards "we are two over" may be told of the lumber.
	const ours = "(we are|(i|we) [have] ended up with) "
	const inThere = "[in there|there|in it|in the (plan|layout|drawing|wall)|on the (plan|layout|drawing)|(in each|per|in every|in a) BAY]"
	for _, p := range deviatingCounts {
		for _, w := range [][3]string{{"many", "more", "fewer"}, {"few", "fewer|less", "more"}} {
			over := map[string]string{"many": "over|above|past|beyond", "few": "under|below|(short of)|(shy of)"}[w[0]]
			for _, n := range [][2]string{{"##", "$1"}, {"a|an", "1"}} {
				plain := n[1] + " " + w[2] + " " + p[1]
				for _, who := range [][2]string{{counted, p[0]}, {ours, strings.Replace(p[0], "RAIL", "rail|rails|slat|slats", 1)}} {
					row(who[0]+n[0]+" "+who[1]+" too "+w[0]+" "+inThere, plain)
					row(who[0]+n[0]+" too "+w[0]+" "+who[1]+" "+inThere, plain)
					row(who[0]+n[0]+" "+who[1]+" "+w[1]+" "+than+" "+inThere, plain)
					row(who[0]+n[0]+" "+strings.TrimSuffix(w[1], "|less")+" "+who[1]+" "+than+" "+inThere, plain)
					row(who[0]+n[0]+" "+who[1]+" "+over+" "+thanWhat+" "+inThere, plain)
				}
			}
		}
	}
	return b
})

// mendedTail are orders to set right what was told. Each has the side that it may be said of: "widen it" only of what is too narrow.
var mendedTail = sync.OnceValue(func() *phrase.Book {
	const it, end, thatMuch = " (it|that|this|them) ", " [for me|for us|please|again] $", "[(by that [much])|(that much) [bigger|wider|higher|taller|larger|more|smaller|narrower|lower|shorter|tighter|less]|a bit|a little|some]"
	return phrase.BookOf([]phrase.Placed{
		{Said: orderedRight + "(fix|correct|adjust|mend|remedy|change|put right|sort out|straighten out)" + it + "[up|out]" + end, Plain: "either"},
		{Said: orderedRight + "make" + it + "(that much (smaller|narrower|lower|shorter|tighter|less))" + end, Plain: "less"},
		{Said: orderedRight + "make" + it + "(that much (bigger|wider|higher|taller|larger|more))" + end, Plain: "more"},
		{Said: orderedRight + "(tighten|narrow|shrink|reduce|lower|drop|trim|shorten|lessen|cut|close)" + it + "[up|down|in|back] " + thatMuch + end, Plain: "less"},
		{Said: orderedRight + "(bring|take|pull|come)" + it + "[back] (down|in) " + thatMuch + end, Plain: "less"},
		{Said: orderedRight + "(pull|lose|drop|remove|get rid of) [it|that|them|those] [out|away|off]" + end, Plain: "less"},
		{Said: orderedRight + "(take|leave) [it|that|them|those] (out|away|off)" + end, Plain: "less"}, // "leave it" leaves it as it is
		{Said: orderedRight + "(widen|raise|open|loosen|lift|increase|enlarge|stretch)" + it + "[up|out] " + thatMuch + end, Plain: "more"},
		{Said: orderedRight + "(bring|take|push|let)" + it + "[back] (up|out) " + thatMuch + end, Plain: "more"},
		{Said: "for me|us|((my|our) (taste|liking)) $", Plain: "either"},
	})
})

// tailSide is the side to which a deviation is mended: "less" or "more".
func tailSide(plain []string) string {
	switch {
	case plain[0] == "reduce" || plain[0] == "lower" || plain[1] == "fewer":
		return "less"
	case plain[0] == "raise" || plain[1] == "more":
		return "more"
	}
	return "either"
}

// noticing are words before a deviation that only tell how it was seen.
var noticing = sync.OnceValue(func() *phrase.Book {
	return phrase.BookOf([]phrase.Placed{{Said: `
		(it looks|looks) like
		(i|we) (see|notice|noticed|saw|find|found) [that]
		(i|we) (am|are) afraid [that]
		(it turns|turns) out [that|,]
		(the|my) [only] (problem|trouble|thing|snag|catch|complaint|only thing|hitch) is [that|,]
		sorry [,] [but]`, Plain: "so"}})
})

// Deviates sets what a line tells of deviations to the changes that are asked by them, where it tells nothing else.
func Deviates(atoms []scan.Atom) []scan.Atom {
	if !mayDeviate(atoms) {
		return atoms
	}
	led, _ := PastLead(atoms) // what else stands before it may claim or try it
	b, first := deviations(), len(atoms)-len(led)
	if p, end := noticing().Best(&phrase.Match{Atoms: atoms, Awake: noticing().Awakened(noticing().LookUp(atoms))}, first, nil); p != nil {
		first = end
	}
	out := atoms[:first:first]
	for i := first; ; {
		m := phrase.Match{Atoms: atoms, Awake: b.Awakened(b.LookUp(atoms))}
		p, end := b.Best(&m, i, nil)
		if p == nil {
			return atoms
		}
		of, n := m.Caught[0], len(atoms)
		set := m.Put(p, i, end)
		out = append(out, set[i:len(set)-(n-end)]...)
		if t := mendedTail(); end < n {
			s := phrase.Match{Atoms: atoms, Awake: t.Awakened(t.LookUp(atoms))}
			if q, past := t.Best(&s, end, nil); q != nil && (q.Plain[0] == "either" || q.Plain[0] == tailSide(p.Plain)) {
				end = past
				if end < n && atoms[end].Text == "?" {
					end++ // "can you fix that?"
				}
			}
		}
		i = end
		for i < n && (atoms[i].Kind == scan.Sign && atoms[i].Text != "?" || chunk.Joints[atoms[i].Text]) {
			i++
		}
		if i >= n {
			return out
		}
		if i == end {
			return atoms
		}
		if setsItRight[atoms[i].Text] || atoms[i].Text == "so" {
			return judgedOnly(atoms, of, i, first)
		}
		out = append(out, atoms[end:i]...)
	}
}

// setsItRight are verbs of an order that tells what is to be instead.
var setsItRight = scan.WordSet("make set take bring cut drop open close tighten widen narrow give shave knock add put trim lower raise reduce go let move shift remove pull lose")

// judgedOnly sets the deviation before an order to a judgment, as the order tells itself what is to be: "the opening's two inches too narrow, make it 34".
func judgedOnly(atoms []scan.Atom, of [2]int, i, first int) []scan.Atom {
	if of[1] <= of[0] || !chunk.NamesPart(atoms, of[1]-1) && !chunk.NamesPart(atoms, of[0]) {
		return atoms
	}
	for _, a := range atoms[i:] {
		if a.Text == "that" || a.Text == "as" || a.Text == "?" {
			return atoms // "make it that much wider"
		}
	}
	at, end := atoms[of[0]].At, atoms[i-1].End
	out := append(atoms[:first:first], atoms[of[0]:of[1]]...)
	for _, w := range []string{"is", "too", "big", ","} {
		out = append(out, scan.Atom{Text: w, Kind: phrase.KindOfPlain(w), At: at, End: end})
	}
	return append(out, atoms[i:]...)
}

// mayDeviate reports whether a line holds a word without which none deviates, and not half or a third of who knows what.
func mayDeviate(atoms []scan.Atom) (may bool) {
	for i, a := range atoms {
		switch a.Text {
		case "too", "than", "what":
			may = true
		case "half", "third":
			r := measure.Reader{Atoms: atoms}
			if w := r.Word(i + 1); (w == "too" || w == "" || w == ".") && (i < 2 || r.Word(i-2) != "and") {
				return false // "a half too wide", "too wide by half"; not "two and a half too wide"
			}
		}
	}
	return may
}
