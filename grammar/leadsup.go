package grammar

import (
	"slices"

	"saywright/solver"
)

// What leads up to a question is told, and sets nothing: "the customer called about the doorway, what width are we giving her". Where
// the line as a whole cannot be read, the question is read by itself, if what leads up to it names no figure, wishes and orders
// nothing. A thing that it names may be what the question means by "it".

// questionOpeners are words that open a question behind a sign.
var (
	questionOpeners = wordSet("what which where whereabouts how why")
	mayAsk          = wordSet("any anything is are can could do does will would show give tell read let")
)

// wishesOrBids are words by which what leads up to a question wishes, orders or bounds something.
var wishesOrBids = wordSet(`
	want wants wanted need needs prefer prefers like likes would should must shall let please make keep set put use add have has no not never without nor neither none nothing nobody only just
	more less fewer bigger smaller tighter wider narrower taller shorter higher lower longer closer twice half double same equal even most least instead either or than
	lost losing gained moving moved moves adding added skip skips skipping skipped switch switches switched switching widening widened narrowing narrowed raising raised lowering lowered cutting shifting shifted
	change changed swap swapped drop dropped lose remove forget cancel undo scratch
`)

// asksFor are verbs by which somebody else asks for something: "he wants the layout".
var asksFor = wordSet("wants want needs need asks asked wonders")

// upToQuestion finds where the question of a line begins, behind what leads up to it: 0 where there is none.
func upToQuestion(atoms []atom) int {
	for i := 1; i+1 < len(atoms); i++ {
		if !breaksClause(atoms, i-1) {
			continue
		}
		j := i
		for j+1 < len(atoms) && joints[atoms[j].text] {
			j++
		}
		if questionOpeners[atoms[j].text] || mayAsk[atoms[j].text] || (atoms[j].text == "he" || atoms[j].text == "she" || atoms[j].text == "they") && j+2 < len(atoms) && asksFor[atoms[j+1].text] {
			return j
		}
	}
	return 0
}

// onlyTells reports whether what leads up to a question only tells something. A reason may be asked for of what was judged.
func onlyTells(part []atom, c Context, reason bool) bool {
	words := 0
	for i, a := range part {
		switch {
		case a.kind == aSign && a.text != "?" && a.text != `"`:
		case i+1 < len(part) && clockWords[part[i+1].text], clockWords[a.text]:
		case a.kind != aWord:
			return false
		case turning[a.text]:
			return false
		case reason && !bidding[a.text]:
			words++
		case a.text == "have" && i > 0 && speakers[part[i-1].text] && i+1 < len(part) && part[i+1].text != "to":
			words++ // "I've got the pencil in my hand"
		case wishesOrBids[a.text] || withheld[a.text]:
			return false
		default:
			words++
		}
	}
	return words > 2 && tellsOnly(lex(part, c), reason) && (reason || ofOthers(part))
}

// ofOthers reports whether a clause tells of somebody who does something, or of nothing of the wall: what the wall itself does, and what
// we do to it, may be meant to be set ("the doorway swaps sides", "we skip the stiffeners").
func ofOthers(part []atom) bool {
	led, _ := pastLead(part)
	i := len(part) - len(led)
	for i < len(part) && (joints[part[i].text] || vocab().articles[part[i].text]) {
		i++
	}
	if i+1 >= len(part) {
		return false
	}
	if speakers[part[i].text] {
		return auxiliary[part[i+1].text] || part[i+1].text == "am" || part[i+1].text[0] == '\'' || !slices.ContainsFunc(part, func(a atom) bool { return namesPart([]atom{a}, 0) })
	}
	key, _ := partKey(part, i)
	return key == "" || key == "kerf" || key == "tape" || key == "through"
}

// clockWords measure time: "in ten minutes".
var clockWords = wordSet("minute minutes min hour hours oclock week weeks day days am pm")

// bidding are words that bid something even where a reason is asked for after them.
var bidding = wordSet("want wants wanted need needs prefer prefers should must shall let please make set put use add change swap drop remove forget cancel undo scratch no none never without")

// tellsOnly reports whether tokens hold nothing that could be set, ordered or tried.
func tellsOnly(list []token, reason bool) bool {
	unknown, wall := false, false
	for i := range list {
		switch t := &list[i]; t.kind {
		case kPart, kLoc, kDim, kSide, kItem, kQuest:
			wall = wall || t.key() != "kerf" && t.key() != "tape" && t.key() != "through" && t.key() != "beyond"
		case kNum:
			if i+1 == len(list) || !clockWords[list[i+1].text] {
				return false
			}
		case kFixed, kSize, kGoal, kBest, kCmd, kUnits, kChange, kLim, kMore, kFactor, kName, kFix, kSame, kTheirs:
			if t.kind == kTheirs || t.kind == kCmd && i == 0 && reason {
				break
			}
			return false
		case kRel:
			if t.key() != "=" {
				return false
			}
		case kHead:
			if !reason && t.key() != string(State) && t.key() != string(Check) {
				return false
			}
		case kUnknown:
			if clockWords[t.text] {
				break
			}
			if words().numberish(t.text) || !isPerson(t.text) && !foreign(t) && !handy[t.text] {
				return false
			}
			unknown = true
		}
	}
	return unknown || reason || !wall
}

// handy are words of what one has at hand, which are near to words of the tables.
var handy = wordSet("writing handwriting scribbles scrawl hand hands drill drunk coffee pencil tools truck waiting waits calls square saw")

// partsTold are the parts of the wall that are named in what leads up to a question, by the atoms that name them.
func partsTold(part []atom, c Context) (named [][]atom) {
	seen := map[string]bool{}
	for i := 0; i < len(part); {
		key, next := partKey(part, i)
		if standAt(part, i, "post", "base") {
			key, next = "post", i+1 // a base is asked after as the post that it holds
		}
		if key == "" || key == "size" || key == "wall" || key == "kerf" || key == "tape" || key == "through" {
			i++
			continue
		}
		if !seen[key] {
			seen[key] = true
			named = append(named, part[i:next])
		}
		i = next
	}
	return named
}

// readQuestionAlone reads the question of a line without what leads up to it.
func readQuestionAlone(atoms []atom, c Context) (Reading, bool) {
	at := upToQuestion(atoms)
	if at == 0 {
		return Reading{}, false
	}
	told, question := atoms[:at], atoms[at:]
	reason := question[0].text == "why" || standAt(question, 0, "how", "come") || standAt(question, 0, "how", "did")
	if !onlyTells(told, c, reason) {
		return Reading{}, false
	}
	back := slices.ContainsFunc(question, func(a atom) bool { return pointsBack[a.text] && a.text != "her" && a.text != "him" && a.text != "his" }) || len(question) < 4
	parts := partsTold(told, c)
	switch {
	case len(parts) == 1:
		for _, q := range [][]atom{aboutThePart(question, parts[0]), question} {
			if q == nil {
				continue
			}
			d := c
			if d.Subject = subjectOf(parts[0], c); d.Subject == nil && len(q) == len(question) && back {
				continue
			}
			if r := readAtoms(q, d); onlyAsks(r) {
				return r, true
			}
		}
	case !back || len(parts) == 0:
		r := readAtoms(question, c)
		if !onlyAsks(r) || back && slices.ContainsFunc(r.Acts, func(a Act) bool { return a.Name != nil }) {
			return r, false
		}
		return r, true
	}
	return Reading{}, false
}

// aboutThePart puts a part in the place of the pronoun of a question, nil where it has none.
func aboutThePart(question, part []atom) []atom {
	for i, a := range question {
		switch a.text {
		case "it", "they", "them", "that", "this", "those":
			if i+1 < len(question) && (a.text == "that" || a.text == "this" || a.text == "those") && question[i+1].kind == aWord {
				continue
			}
			return slices.Concat(question[:i:i], part, question[i+1:])
		}
	}
	if end := len(wordsAhead(question)); end < 3 && end > 0 {
		return slices.Concat(question[:end:end], part, question[end:])
	}
	return nil
}

// subjectOf is the quantity that a part by itself is asked after with, nil where that is a table.
func subjectOf(part []atom, c Context) *solver.Name {
	what := part[0]
	what.text = "what"
	r := readAtoms(append([]atom{what}, part...), Context{Metric: c.Metric})
	if r.Ask != nil || len(r.Acts) != 1 || r.Acts[0].Kind != Ask {
		return nil
	}
	return r.Acts[0].Name
}

// onlyAsks reports whether a reading does nothing but ask.
func onlyAsks(r Reading) bool {
	for _, a := range r.Acts {
		if a.Kind != Ask && a.Kind != Why && a.Kind != Teach && a.Kind != HelpMe || a.Topic == "that" {
			return false
		}
	}
	return r.Ask == nil && len(r.Acts) > 0
}

// beforeTheyDo leaves out from the end of a line what it is to be done before: "before she says yes", "before he signs off".
func beforeTheyDo(in []atom) []atom {
	for i := len(in) - 3; i > 2; i-- {
		if in[i].text != "before" || !otherOnes[in[i+1].text] && !isPerson(in[i+1].text) && !(owned[in[i+1].text] && i+3 < len(in) && isPerson(in[i+2].text)) {
			continue
		}
		rest := wordsAhead(in[i+1:])
		if i+1+len(rest) < len(in)-1 || len(rest) > 8 || !slices.ContainsFunc(rest, func(w string) bool { return consents[w] }) {
			return in
		}
		from := i
		if breaksClause(in, i-1) {
			from--
		}
		return slices.Concat(in[:from:from], in[i+1+len(rest):])
	}
	return in
}

// consents are what somebody does once he has seen what he wants to see.
var consents = wordSet("signs sign agrees agree approves approve says yes decides decide pays pay commits commit writes oks okays buys nod nods believes")
