package grammar

import (
	"slices"
	"strings"
	"unicode/utf8"

	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/askback"
	"saywright/grammar/guard"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/paraphrase"
	"saywright/grammar/parse"
	"saywright/grammar/reread"
	"saywright/grammar/scan"
	"saywright/grammar/takeback"
)

// Read reads a line as a person says it.
func Read(line string, c act.Context) act.Reading {
	r := readLine(line, c)
	for i, a := range r.Acts {
		if slices.ContainsFunc(a.Words, partedName) {
			r.Acts[i].Words = slices.Clone(a.Words)
			for k, w := range a.Words {
				r.Acts[i].Words[k] = strings.ReplaceAll(w, " 's", "'s")
			}
		}
	}
	return r
}

// partedName reports whether a name fell into its words: "uncle 's fence".
func partedName(w string) bool { return strings.Contains(w, " 's") }

func readLine(line string, c act.Context) act.Reading {
	if utf8.RuneCountInString(line[:min(len(line), 4*hear.LongestLine+4)]) > hear.LongestLine {
		return askback.AskedBack(hear.LongestLine, "Please say it in shorter pieces.", "gap 2-1/2")
	}
	letters, bad := scan.Fold(line)
	if bad >= 0 {
		return askback.AskedBack(bad, "Some of that is not text. Can you type it again?", "gap 2-1/2")
	}
	if told, ok := answersPending(line, c); ok {
		return told
	}
	if acts, ok := answer(line, c); ok {
		return act.Reading{Acts: acts}
	}
	if q := whichNumber(line, c); q != nil {
		return act.Reading{Ask: q, Own: true}
	}
	if acts, ok := parse.ReadNormal(line, c); ok {
		return act.Reading{Acts: acts}
	}
	if told, ok := guard.OtherSide(line, c); ok {
		return told
	}
	if told, ok := leanToward(line, c); ok {
		return told
	}
	if told, ok := leanAtTop(line, c); ok {
		return told
	}
	if told, ok := countAgain(line, c); ok {
		return told
	}
	if told, ok := fromTheTop(line, c); ok {
		return told
	}
	if told, ok := triesStockOn(line, c); ok {
		return told
	}
	if told, ok := plainerWhole(line, c); ok {
		return told
	}
	if q := answersNothing(line, c); q != nil {
		return unlessSettled(act.Reading{Ask: q}, line, c)
	}
	atoms := idiom.FigureIs(idiom.HaltsAtName(scan.Split(letters)))
	if r, ok := cutShort(atoms); ok {
		return r
	}
	said := scan.Text(atoms)
	if r, ok := thereAlready(line, said, atoms, c); ok {
		return r
	}
	if r, ok := openingInBay(line, said, atoms, c); ok {
		return r
	}
	told := guard.WhichBay(reread.ReckonedFromThing(readPlaced(atoms, c, readSpoken(line, atoms, c)), atoms), said, c)
	return typedAnew(line, atoms, c, figureLeft(withLostQuestions(line, atoms, c, unlessSettled(guard.JoinedAmiss(triedWhole(told, atoms), said, c), line, c)), line, said, atoms, c))
}

// readSpoken reads a line that is no normal form and answers no question.
func readSpoken(line string, atoms []scan.Atom, c act.Context) act.Reading {
	if r, ok := readOnward(line, atoms, c); ok {
		return r
	}
	if r, ok := readContrasted(line, atoms, c); ok {
		return r
	}
	if r, ok := readNotAsked(line, atoms, c); ok {
		return r
	}
	if r, ok := readSeveralUndone(line, atoms, c); ok {
		return r
	}
	if r, ok := readShownIn(line, atoms, c); ok {
		return r
	}
	return readTwice(line, atoms, c, readInParts(line, atoms, c, readKindred(line, atoms, c, readHeld(line, atoms, c))))
}

// readHeld reads a line, or what is left of it, and asks back where the rest of what it says turns what was read.
func readHeld(line string, atoms []scan.Atom, c act.Context) act.Reading {
	atoms = idiom.Deviates(atoms)
	said, as := scan.Text(atoms), slices.Clone(atoms)
	r := readPlainly(line, atoms, c)
	r.Acts = guard.WallBehind(guard.OnlyTopic(r.Acts, as), as)
	r = guard.OfElsewhere(guard.AskedOfIt(r, said), said)
	for _, guard := range []func(act.Reading, []scan.Atom) act.Reading{guard.AdoptsClaims, guard.TurnedBeside, guard.OfOtherTrade, guard.OtherThingAdded, guard.HeDoes, aside.ToldWhatIsKnown, guard.OffWanted, guard.BothNamed, guard.TriesOneOfSeveral} {
		r = guard(r, as)
	}
	r = guard.CountFar(r, as, c)
	return unlessSettled(guard.AsWellOrTwo(guard.NewSize(shownIn(r, as), said, c), said), line, c)
}

// unlessSettled takes the choice of a question that was answered when this very line was asked back about.
func unlessSettled(r act.Reading, line string, c act.Context) act.Reading {
	if r.Ask == nil {
		return r
	}
	for _, form := range r.Ask.Choices {
		if acts, ok := parsed(form, line); ok && slices.Contains(c.Settled, form) {
			return act.Reading{Acts: acts}
		}
	}
	return r
}

// readPlainly reads a line that has been cut into atoms, and is no normal form.
func readPlainly(line string, atoms []scan.Atom, c act.Context) act.Reading {
	atoms = guard.OwnWall(atoms, c)
	atoms = paraphrase.SetPlain(atoms)
	if len(atoms) == 0 {
		return askback.AskedBack(0, "What would you like to build?", "wall 48 high, gap 2-1/2")
	}
	if told, ok := reread.ReadWithoutAsides(atoms, c); ok && !c.Deep {
		return told
	}
	if told, ok := readJudged(atoms, c); ok {
		return told
	}
	if short, ok := reread.Shortly(atoms, c, true); ok && !c.Deep {
		return short
	}
	whole := atoms
	led, _ := idiom.PastLead(atoms)
	left, ok := takeback.WithoutSizes(led)
	if ok && len(left) == len(led) {
		left = atoms
	}
	if !ok {
		return askback.ComesTo.AskAt(0)
	}
	atoms = left
	plain, _ := idiom.PastLead(atoms)
	if back, ok := takeback.Read(paraphrase.PastTail(plain), c, true); ok {
		return back
	}
	r, atoms := takeback.ReadLed(atoms, c)
	if r.Ask == nil || c.Deep {
		return r
	}
	if back, ok := takeback.Read(atoms, c, false); ok {
		return back
	}
	asked := r
	if r = readAgain(atoms, c, r); r.Ask == nil && !losesClause(atoms, c, r) {
		return reread.AsIfTyped(whole, c, r)
	} else if r.Ask == nil {
		return asked
	}
	if told, ok := readRunOn(line, whole, c); ok {
		return told
	}
	if short, ok := reread.Shortly(atoms, c, false); ok {
		return short
	}
	if onward, ok := wentOn(line, c, r); ok {
		return onward
	}
	r, _ = replied(line, c, r)
	return r
}
