package takeback

import (
	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/measure"
	"saywright/grammar/paraphrase"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// ClauseStarts cuts a line behind each sign that breaks it, and before each word that joins a clause with its own subject.
func ClauseStarts(atoms []scan.Atom) []int {
	starts := []int{0}
	for i := 1; i < len(atoms); i++ {
		switch {
		case chunk.BreaksClause(atoms, i-1):
		case atoms[i].Text == "so" && paraphrase.ThroughWhat(atoms[starts[len(starts)-1]:i]) != nil: // "the mower has to get through the opening so 44 at least"
		case atoms[i].Text == "so" && (paraphrase.Pleads(paraphrase.PlainWords(atoms[starts[len(starts)-1]:i])) || paraphrase.TellsSize(atoms[starts[len(starts)-1]:i]) || aside.LooksLike(paraphrase.PlainWords(atoms[starts[len(starts)-1]:i])) || paraphrase.HeldOut(atoms[starts[len(starts)-1]:i])): // "digging is hard so as few posts as possible"
		case aside.RunsOn(atoms, i):
		case atoms[i].Text == "to" && i > 1 && paraphrase.Aims(paraphrase.WordsAhead(atoms[i:])):
		case atoms[i].Text == "as" && i > 1 && (atoms[i-2].Text == "as" || atoms[i-2].Text == "so") && atoms[i-1].Kind == scan.Word || atoms[i].Text == "as" && wallAfter(atoms, i):
			continue // "as low as it will go", "built just as the south wall is"
		case atoms[i].Text == "and" && i-starts[len(starts)-1] == 2 && atoms[i-2].Text == "any":
			continue // "any taller and it blocks the view"
		case atoms[i].Text == "and" && lex.Speakers[measure.Reader{Atoms: atoms}.Word(i+1)] && chunk.IsPerson(atoms[i-1].Text):
			continue // "my son and I are starting Saturday"
		case atoms[i].Text == "before" && atoms[i-1].Text == "to":
			continue // "go back to before it"
		case aside.Meantimes[atoms[i].Text] && paraphrase.SubjectAt(atoms, i+1):
		case atoms[i].Text == "so" && i+1 < len(atoms) && atoms[i+1].Text == "that" && chunk.IsFloor(atoms[i-1].Text):
			continue // "he sloped our patio so that it falls a quarter a foot"
		case atoms[i].Text == "so" && i+1 < len(atoms) && aside.PlansFor[atoms[i+1].Text]: // "the lad miscuts things so figure ten percent spare"
		case atoms[i].Kind == scan.Word && (chunk.Joints[atoms[i].Text] || paraphrase.Causes[atoms[i].Text]) && !chunk.Joints[atoms[i-1].Text] && paraphrase.SubjectAt(atoms, i+1):
		default:
			continue
		}
		if starts[len(starts)-1] != i {
			starts = append(starts, i)
		}
	}
	return starts
}

// IsBackdrop reports whether a clause says nothing of the wall.
func IsBackdrop(part []scan.Atom, c act.Context, next string) bool {
	if idleTalks(part) || paraphrase.TellsSize(part) || aside.TellsAge(part) || next == "so" && paraphrase.HeldOut(part) {
		return true
	}
	var w []string
	for _, a := range part {
		switch a.Kind {
		case scan.Word:
			w = append(w, a.Text)
		case scan.Sign:
			if a.Text == "?" || a.Text == `"` {
				return false
			}
		case scan.Digits:
			if next != "so" {
				return false
			}
		default:
			return false
		}
	}
	reason := false
	for len(w) > 0 && (chunk.Joints[w[0]] || paraphrase.Causes[w[0]] || aside.Meantimes[w[0]] || aside.StepBefore[w[0]] && !(w[0] == "you" && len(w) > 1 && w[1] != "see" && w[1] != "know") && w[0] != "that" || reason && w[0] == "that") {
		reason = reason || aside.Meantimes[w[0]] || paraphrase.Causes[w[0]] && (w[0] != "so" || len(w) > 1 && (w[1] == "that" || lex.Pointing[w[1]]))
		w = w[1:]
	}
	if paraphrase.Pleads(w) || paraphrase.Aims(w) || aside.LooksLike(w) || aside.KeepsThem(w) {
		return true
	}
	if len(w) < 3 && !(len(w) == 2 && aside.Meantimes[part[0].Text]) || !aside.Narrates(w, reason) {
		return false
	}
	looked := lex.Speakers[w[0]] && len(w) > 1 && paraphrase.Looks[w[1]]
	led := next == "so" || next == "but" || aside.Scheduled(w) && idiom.AsksNext[next] // what follows is what is wanted, and goes before what this says
	for _, word := range w {
		if phrase.Turning[word] || !led && !reason && (idiom.Withheld[word] || idiom.Viewed[word] || lex.Pointing[word] && next != "and" && !looked) {
			return false
		}
	}
	wished := false
	for _, word := range w {
		wished = wished || hear.Wishing[word]
	}
	return aside.NothingOfTheWall(lex.Tokens(part, c), reason, led, wished)
}
