package reread

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/paraphrase"
	"saywright/grammar/parse"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
	"saywright/solver"
)

// What leads up to a question is told, and sets nothing: "the customer called about the doorway, what width are we giving her". Where
// the line as a whole cannot be read, the question is read by itself, if what leads up to it names no figure, wishes and orders
// nothing. A thing that it names may be what the question means by "it".

// upToQuestion finds where the question of a line begins, behind what leads up to it: 0 where there is none.
func upToQuestion(atoms []scan.Atom) int {
	for i := 1; i+1 < len(atoms); i++ {
		if !chunk.BreaksClause(atoms, i-1) {
			continue
		}
		j := i
		for j+1 < len(atoms) && chunk.Joints[atoms[j].Text] {
			j++
		}
		if parse.QuestionOpeners[atoms[j].Text] || idiom.MayAsk[atoms[j].Text] || (atoms[j].Text == "he" || atoms[j].Text == "she" || atoms[j].Text == "they") && j+2 < len(atoms) && paraphrase.AsksFor[atoms[j+1].Text] {
			return j
		}
	}
	return 0
}

// onlyTells reports whether what leads up to a question only tells something. A reason may be asked for of what was judged.
func onlyTells(part []scan.Atom, c act.Context, reason bool) bool {
	words := 0
	for i, a := range part {
		switch {
		case a.Kind == scan.Sign && a.Text != "?" && a.Text != `"`:
		case i+1 < len(part) && clockWords[part[i+1].Text], clockWords[a.Text]:
		case a.Kind != scan.Word:
			return false
		case phrase.Turning[a.Text]:
			return false
		case reason && !bidding[a.Text]:
			words++
		case a.Text == "have" && i > 0 && lex.Speakers[part[i-1].Text] && i+1 < len(part) && part[i+1].Text != "to":
			words++ // "I've got the pencil in my hand"
		case paraphrase.WishesOrBids[a.Text] || idiom.Withheld[a.Text]:
			return false
		default:
			words++
		}
	}
	return words > 2 && tellsOnly(lex.Tokens(part, c), reason) && (reason || ofOthers(part))
}

// ofOthers reports whether a clause tells of somebody who does something, or of nothing of the wall: what the wall itself does, and what
// we do to it, may be meant to be set ("the doorway swaps sides", "we skip the stiffeners").
func ofOthers(part []scan.Atom) bool {
	led, _ := idiom.PastLead(part)
	i := len(part) - len(led)
	for i < len(part) && (chunk.Joints[part[i].Text] || lexicon.Vocab().Articles[part[i].Text]) {
		i++
	}
	if i+1 >= len(part) {
		return false
	}
	if lex.Speakers[part[i].Text] {
		return lex.Auxiliary[part[i+1].Text] || part[i+1].Text == "am" || part[i+1].Text[0] == '\'' || !slices.ContainsFunc(part, func(a scan.Atom) bool { return chunk.NamesPart([]scan.Atom{a}, 0) })
	}
	key, _ := chunk.PartKey(part, i)
	return key == "" || key == "kerf" || key == "tape" || key == "through"
}

// clockWords measure time: "in ten minutes".
var clockWords = scan.WordSet("minute minutes min hour hours oclock week weeks day days am pm")

// bidding are words that bid something even where a reason is asked for after them.
var bidding = scan.WordSet("want wants wanted need needs prefer prefers should must shall let please make set put use add change swap drop remove forget cancel undo scratch no none never without")

// tellsOnly reports whether tokens hold nothing that could be set, ordered or tried.
func tellsOnly(list []lex.Token, reason bool) bool {
	unknown, wall := false, false
	for i := range list {
		switch t := &list[i]; t.Kind {
		case lexicon.Part, lexicon.Loc, lexicon.Dim, lexicon.Side, lexicon.Item, lexicon.Quest:
			wall = wall || t.Key() != "kerf" && t.Key() != "tape" && t.Key() != "through" && t.Key() != "beyond"
		case lexicon.Num:
			if i+1 == len(list) || !clockWords[list[i+1].Text] {
				return false
			}
		case lexicon.Fixed, lexicon.Size, lexicon.Goal, lexicon.Best, lexicon.Cmd, lexicon.Units, lexicon.Change, lexicon.Lim, lexicon.More, lexicon.Factor, lexicon.Name, lexicon.Fix, lexicon.Same, lexicon.Theirs:
			if t.Kind == lexicon.Theirs || t.Kind == lexicon.Cmd && i == 0 && reason {
				break
			}
			return false
		case lexicon.Rel:
			if t.Key() != "=" {
				return false
			}
		case lexicon.Head:
			if !reason && t.Key() != string(act.State) && t.Key() != string(act.Check) {
				return false
			}
		case lexicon.Unknown:
			if clockWords[t.Text] {
				break
			}
			if lex.Words().Numberish(t.Text) || !chunk.IsPerson(t.Text) && !hear.Foreign(t) && !handy[t.Text] {
				return false
			}
			unknown = true
		}
	}
	return unknown || reason || !wall
}

// handy are words of what one has at hand, which are near to words of the tables.
var handy = scan.WordSet("writing handwriting scribbles scrawl hand hands drill drunk coffee pencil tools truck waiting waits calls square saw")

// partsTold are the parts of the wall that are named in what leads up to a question, by the atoms that name them.
func partsTold(part []scan.Atom, c act.Context) (named [][]scan.Atom) {
	seen := map[string]bool{}
	for i := 0; i < len(part); {
		key, next := chunk.PartKey(part, i)
		if scan.StandAt(part, i, "post", "base") {
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

// ReadQuestionAlone reads the question of a line without what leads up to it.
func ReadQuestionAlone(atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	at := upToQuestion(atoms)
	if at == 0 {
		return act.Reading{}, false
	}
	told, question := atoms[:at], atoms[at:]
	reason := question[0].Text == "why" || scan.StandAt(question, 0, "how", "come") || scan.StandAt(question, 0, "how", "did")
	if !onlyTells(told, c, reason) {
		return act.Reading{}, false
	}
	back := slices.ContainsFunc(question, func(a scan.Atom) bool {
		return idiom.PointsBack[a.Text] && a.Text != "her" && a.Text != "him" && a.Text != "his"
	}) || len(question) < 4
	parts := partsTold(told, c)
	switch {
	case len(parts) == 1:
		for _, q := range [][]scan.Atom{aboutThePart(question, parts[0]), question} {
			if q == nil {
				continue
			}
			d := c
			if d.Subject = subjectOf(parts[0], c); d.Subject == nil && len(q) == len(question) && back {
				continue
			}
			if r := hear.Atoms(q, d); onlyAsks(r) {
				return r, true
			}
		}
	case !back || len(parts) == 0:
		r := hear.Atoms(question, c)
		if !onlyAsks(r) || back && slices.ContainsFunc(r.Acts, func(a act.Act) bool { return a.Name != nil }) {
			return r, false
		}
		return r, true
	}
	return act.Reading{}, false
}

// aboutThePart puts a part in the place of the pronoun of a question, nil where it has none.
func aboutThePart(question, part []scan.Atom) []scan.Atom {
	for i, a := range question {
		switch a.Text {
		case "it", "they", "them", "that", "this", "those":
			if i+1 < len(question) && (a.Text == "that" || a.Text == "this" || a.Text == "those") && question[i+1].Kind == scan.Word {
				continue
			}
			return slices.Concat(question[:i:i], part, question[i+1:])
		}
	}
	if end := len(paraphrase.WordsAhead(question)); end < 3 && end > 0 {
		return slices.Concat(question[:end:end], part, question[end:])
	}
	return nil
}

// subjectOf is the quantity that a part by itself is asked after with, nil where that is a table.
func subjectOf(part []scan.Atom, c act.Context) *solver.Name {
	what := part[0]
	what.Text = "what"
	r := hear.Atoms(append([]scan.Atom{what}, part...), act.Context{Metric: c.Metric})
	if r.Ask != nil || len(r.Acts) != 1 || r.Acts[0].Kind != act.Ask {
		return nil
	}
	return r.Acts[0].Name
}

// onlyAsks reports whether a reading does nothing but ask.
func onlyAsks(r act.Reading) bool {
	for _, a := range r.Acts {
		if a.Kind != act.Ask && a.Kind != act.Why && a.Kind != act.Teach && a.Kind != act.HelpMe || a.Topic == "that" {
			return false
		}
	}
	return r.Ask == nil && len(r.Acts) > 0
}
