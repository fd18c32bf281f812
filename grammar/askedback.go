package grammar

import (
	"slices"
	"strings"

	"saywright/solver"
)

// questionKind tells which question is asked back; it is the question's key. Only what is told apart somewhere has a kind: because a word may answer it
// (pending.go), because something was not understood (unheard), or because a line is read once more for it (kindred.go). Any other question is worded
// where it is asked, and has none.
type questionKind string

// The kinds of question, by what is wanted.
const (
	// Something was not understood.
	qUnknownWord  questionKind = "unknown word"
	qComesTo      questionKind = "comes to"
	qComesToInAll questionKind = "comes to in all"
	qWhatItSays   questionKind = "what it says"
	qMeant        questionKind = "meant"
	qBothOrWhole  questionKind = "both or whole"
	qWhatAbout    questionKind = "what about"
	qDidYouMean   questionKind = "did you mean"
	qOnlyTheWall  questionKind = "only the wall"
	qWhatToKnow   questionKind = "what to know"

	// A figure is wanted.
	qHowMuchFor   questionKind = "how much for"
	qHowMuchOrFar questionKind = "how much, or how far"
	qVague        questionKind = "vague word"
	qHowMuchIs    questionKind = "how much is"
	qWordWhat     questionKind = "word what"
	qHowManyRails questionKind = "how many rails"
	qRailsStack   questionKind = "rails stack"

	// A figure cannot be taken as it stands.
	qWhichNumber  questionKind = "which number"
	qWhichLength  questionKind = "which length"
	qSaidShorter  questionKind = "said shorter"
	qTwoNumbers   questionKind = "two numbers"
	qTimeOrLength questionKind = "time or length"
	qDateOrLength questionKind = "date or length"
	qReallyMeant  questionKind = "really meant"
	qWhatSize     questionKind = "what size"
	qLengthCosts  questionKind = "length costs"

	// What it is of.
	qFigureOf    questionKind = "figure of"
	qHowManyOf   questionKind = "how many of"
	qHowMuchOf   questionKind = "how much of"
	qOtherSide   questionKind = "other side"
	qCenterOf    questionKind = "center of"
	qHowWide     questionKind = "how wide"
	qHowTall     questionKind = "how tall"
	qHowLong     questionKind = "how long"
	qWhereGoes   questionKind = "where it goes"
	qForgetWhat  questionKind = "forget what"
	qNeverMind   questionKind = "never mind what"
	qWhichBayIs  questionKind = "which bay is it"
	qInWhichBay  questionKind = "in which bay"
	qWhichHolds  questionKind = "which holds"
	qWhichOfTwo  questionKind = "which of the two"
	qWhichWasSo  questionKind = "which was measured"
	qHelpWith    questionKind = "help with"
	qWhyWhat     questionKind = "why what"
	qWhichFile   questionKind = "which file"
	qWhichName   questionKind = "which name"
	qWhichPlan   questionKind = "which plan"
	qOpenWhich   questionKind = "open which"
	qCompareTwo  questionKind = "compare which"
	qHowItFalls  questionKind = "how it falls"
	qToWhichSide questionKind = "to which side"
	qHowItLeans  questionKind = "how it leans"
	qOverHeight  questionKind = "over what height"
)

// These are asked by explain, where there is nothing that a line could do.
const (
	qNotSaved        questionKind = "not saved"
	qCannotSave      questionKind = "cannot save"
	qCannotOpen      questionKind = "cannot open"
	qFileInTheWay    questionKind = "file in the way"
	qCannotWrite     questionKind = "cannot write"
	qNothingToChange questionKind = "nothing to change"
)

// questionTexts are the words of each kind, with what it is about in the place of each %, and a line that works.
var questionTexts = map[questionKind]struct{ text, example string }{
	qUnknownWord:  {"What does % mean here?", "gap 2-1/2, 6 rails"},
	qComesTo:      {"What does that come to for the wall?", "opening at least 32"},
	qComesToInAll: {"What does that come to in all?", "the quote comes to 450"},
	qWhatItSays:   {"What does it say, as far as you can tell?", "bay 1 top measures 68 3/8"},
	qMeant:        {"What is meant here?", "gap 2-1/2"},
	qBothOrWhole:  {"Which of these do you mean?", "gap 2-1/2"},
	qWhatAbout:    {"What about?", "what if gap 2-1/2"},
	qDidYouMean:   {"%: did you mean %?", "gap 2-1/2, 6 rails"},
	qOnlyTheWall:  {"I know only the wall: its sizes, pieces and prices. Which of them?", "how many rails"},
	qWhatToKnow:   {"What would you like to know, or to set?", "gap 2-1/2"},

	qHowMuchFor:   {"How much for the %?", "gap 2-1/2"},
	qHowMuchOrFar: {"How much for the %?", "gap 2-1/2"},
	qVague:        {"How much is %?", "gap 2-1/2"},
	qHowMuchIs:    {"How much is %?", "gap 2-1/2"},
	qWordWhat:     {"% what?", "gap two and a half"},
	qHowManyRails: {"How many rails shall there be?", "6 rails"},
	qRailsStack:   {"How many rails stack up?", "rails 6"},

	qWhichNumber:  {"%: which number?", "gap 2-1/2"},
	qWhichLength:  {"%: which length?", "gap 2-1/2"},
	qSaidShorter:  {"Can that number be said shorter?", "gap 2-1/2"},
	qTwoNumbers:   {"Two numbers in a row: % and %. How long is it?", "gap 2-1/2, or span 12 ft 6"},
	qTimeOrLength: {"A time, or a length?", "span 12 ft 6"},
	qDateOrLength: {"A date, or a length?", "gap 2-1/2"},
	qReallyMeant:  {"Is % really meant for the %?", ""},
	qWhatSize:     {"Of what size are they?", "I have 4 ten foot 2x6"},
	qLengthCosts:  {"Which length costs that?", "8 ft 2x6 are 9.50"},

	qFigureOf:    {"% of what?", "gap 2-1/2"},
	qHowManyOf:   {"How many of what?", "how many rails"},
	qHowMuchOf:   {"How much of what?", "how much does it cost"},
	qOtherSide:   {"The other side of what?", "opening on the right"},
	qCenterOf:    {"From center to center of what?", ""},
	qHowWide:     {"How wide is what?", "how wide is the gap"},
	qHowTall:     {"How tall is what?", "how tall is the wall"},
	qHowLong:     {"How long is what?", "how long do I cut the rails"},
	qWhereGoes:   {"Where does what go?", "where does the post go"},
	qForgetWhat:  {"Forget what?", "forget gap"},
	qNeverMind:   {"Never mind what?", "forget gap"},
	qWhichBayIs:  {"Which bay is that?", "bay 1 bottom measures 68-3/8"},
	qInWhichBay:  {"In which bay?", "rail 2 in bay 1 came out 3/8 short"},
	qWhichHolds:  {"Which holds, % or %?", ""},
	qWhichOfTwo:  {"Which of the two?", "6 rails"},
	qWhichWasSo:  {"Which of the two was measured?", ""},
	qHelpWith:    {"Help with what?", "help gap"},
	qWhyWhat:     {"Why what? There is no answer yet.", "why rails"},
	qWhichFile:   {"Into which file?", "print to porch.html"},
	qWhichName:   {"Under which name?", "save porch"},
	qWhichPlan:   {"Which plan?", "open porch"},
	qOpenWhich:   {"Which plan shall I open?", "open porch"},
	qCompareTwo:  {"Compare which two?", "compare porch, shed"},
	qHowItFalls:  {"How far does it fall, and to which side?", "the floor drops 1 in to the right"},
	qToWhichSide: {"To which side?", "to the right"},
	qHowItLeans:  {"How far, to which side, over what height?", "left post leans 3/8 in right in 48 in"},
	qOverHeight:  {"Over what height does it lean so?", "left post leans 3/8 in right in 48 in"},
}

// ask makes the question of a kind. What it is about stands in its text and its facts.
func (k questionKind) ask(about ...string) solver.Question {
	row := questionTexts[k]
	q := solver.Question{Key: string(k), Example: row.example}
	if len(about) > 0 {
		q.Facts = []solver.Fact{{Names: about}}
	}
	for i, part := range strings.Split(row.text, "%") { // not one after the other: "20 %" may stand in it
		if i > 0 {
			q.Text += about[i-1]
		}
		q.Text += part
	}
	return q
}

// offering is the question with another line that works, and with choices.
func (k questionKind) offering(example string, choices ...string) solver.Question {
	q := k.ask()
	q.Choices, q.Example = choices, example
	return q
}

// open is the question of a guard that needs nothing of the act.
func (k questionKind) open(example string, about ...string) func(Act, []Act) solver.Question {
	q := k.ask(about...)
	q.Example = example
	return func(Act, []Act) solver.Question { return q }
}

// askAt asks back about a place of the line, in runes.
func (k questionKind) askAt(at int, about ...string) Reading {
	return backAt(at, k.ask(about...))
}

// askedBack asks a question that has no kind.
func askedBack(at int, text, example string) Reading {
	return backAt(at, solver.Question{Text: text, Example: example})
}

// backAt asks a question back about a place in the line.
func backAt(at int, q solver.Question) Reading {
	q.At = &at
	return Reading{Ask: &q}
}

// asksOne reports whether a question is of one of several kinds.
func asksOne(q *solver.Question, kinds ...questionKind) bool {
	return slices.Contains(kinds, questionKind(q.Key))
}

// asksWhatItMeans reports whether a question is what a word, or what was said, means or comes to.
func asksWhatItMeans(q *solver.Question) bool {
	return asksOne(q, qUnknownWord, qComesTo, qComesToInAll, qWhatItSays)
}

// unheard reports whether a question asks for what was not understood; any other asks about what was.
func unheard(q *solver.Question) bool {
	return asksWhatItMeans(q) || asksOne(q, qHowMuchFor, qHowMuchOrFar, qMeant, qForgetWhat, qWhatAbout) || asksWhatItIsOf(q)
}

// asksWhatItIsOf reports whether a question is what a figure, a count or a side is of.
func asksWhatItIsOf(q *solver.Question) bool {
	return asksOne(q, ofWhat...)
}

// ofWhat are the kinds of question that ask what a figure is of.
var ofWhat = []questionKind{qFigureOf, qHowManyOf, qHowMuchOf, qOtherSide, qCenterOf}

// howMuchFor asks for the figure of a part that was named; an opening and a post may also be moved by it.
func howMuchFor(thing *token) solver.Question {
	k := qHowMuchFor
	if part := thing.key(); strings.HasPrefix(part, "opening") || strings.HasPrefix(part, "post") {
		k = qHowMuchOrFar
	}
	q := k.ask(thing.key())
	q.Example = exampleOf(thing)
	return q
}
