package askback

import (
	"slices"
	"strings"

	"saywright/grammar/act"
	"saywright/solver"
)

// QuestionKind tells which question is asked back; it is the question's key. Only what is told apart somewhere has a kind: because a word may answer it
// (pending.go), because something was not understood (unheard), or because a line is read once more for it (kindred.go). Any other question is worded
// where it is asked, and has none.
type QuestionKind string

// The kinds of question, by what is wanted.
const (
	// Something was not understood.
	UnknownWord  QuestionKind = "unknown word"
	ComesTo      QuestionKind = "comes to"
	ComesToInAll QuestionKind = "comes to in all"
	WhatItSays   QuestionKind = "what it says"
	Meant        QuestionKind = "meant"
	BothOrWhole  QuestionKind = "both or whole"
	WhatAbout    QuestionKind = "what about"
	DidYouMean   QuestionKind = "did you mean"
	OnlyTheWall  QuestionKind = "only the wall"
	WhatToKnow   QuestionKind = "what to know"

	// A figure is wanted.
	HowMuchFor   QuestionKind = "how much for"
	HowMuchOrFar QuestionKind = "how much, or how far"
	Vague        QuestionKind = "vague word"
	HowMuchIs    QuestionKind = "how much is"
	WordWhat     QuestionKind = "word what"
	HowManyRails QuestionKind = "how many rails"
	RailsStack   QuestionKind = "rails stack"

	// A figure cannot be taken as it stands.
	WhichNumber  QuestionKind = "which number"
	WhichLength  QuestionKind = "which length"
	SaidShorter  QuestionKind = "said shorter"
	TwoNumbers   QuestionKind = "two numbers"
	TimeOrLength QuestionKind = "time or length"
	DateOrLength QuestionKind = "date or length"
	ReallyMeant  QuestionKind = "really meant"
	WhatSize     QuestionKind = "what size"
	LengthCosts  QuestionKind = "length costs"

	// What it is of.
	FigureOf    QuestionKind = "figure of"
	HowManyOf   QuestionKind = "how many of"
	HowMuchOf   QuestionKind = "how much of"
	OtherSide   QuestionKind = "other side"
	CenterOf    QuestionKind = "center of"
	HowWide     QuestionKind = "how wide"
	HowTall     QuestionKind = "how tall"
	HowLong     QuestionKind = "how long"
	WhereGoes   QuestionKind = "where it goes"
	ForgetWhat  QuestionKind = "forget what"
	NeverMind   QuestionKind = "never mind what"
	WhichBayIs  QuestionKind = "which bay is it"
	InWhichBay  QuestionKind = "in which bay"
	WhichHolds  QuestionKind = "which holds"
	WhichOfTwo  QuestionKind = "which of the two"
	WhichWasSo  QuestionKind = "which was measured"
	HelpWith    QuestionKind = "help with"
	WhyWhat     QuestionKind = "why what"
	WhichFile   QuestionKind = "which file"
	WhichName   QuestionKind = "which name"
	WhichPlan   QuestionKind = "which plan"
	OpenWhich   QuestionKind = "open which"
	CompareTwo  QuestionKind = "compare which"
	HowItFalls  QuestionKind = "how it falls"
	ToWhichSide QuestionKind = "to which side"
	HowItLeans  QuestionKind = "how it leans"
	OverHeight  QuestionKind = "over what height"
)

// These are asked by explain, where there is nothing that a line could do.
const (
	NotSaved        QuestionKind = "not saved"
	CannotSave      QuestionKind = "cannot save"
	CannotOpen      QuestionKind = "cannot open"
	FileInTheWay    QuestionKind = "file in the way"
	CannotWrite     QuestionKind = "cannot write"
	NothingToChange QuestionKind = "nothing to change"
)

// questionTexts are the words of each kind, with what it is about in the place of each %, and a line that works.
var questionTexts = map[QuestionKind]struct{ text, example string }{
	UnknownWord:  {"What does % mean here?", "gap 2-1/2, 6 rails"},
	ComesTo:      {"What does that come to for the wall?", "opening at least 32"},
	ComesToInAll: {"What does that come to in all?", "the quote comes to 450"},
	WhatItSays:   {"What does it say, as far as you can tell?", "bay 1 top measures 68 3/8"},
	Meant:        {"What is meant here?", "gap 2-1/2"},
	BothOrWhole:  {"Which of these do you mean?", "gap 2-1/2"},
	WhatAbout:    {"What about?", "what if gap 2-1/2"},
	DidYouMean:   {"%: did you mean %?", "gap 2-1/2, 6 rails"},
	OnlyTheWall:  {"I know only the wall: its sizes, pieces and prices. Which of them?", "how many rails"},
	WhatToKnow:   {"What would you like to know, or to set?", "gap 2-1/2"},

	HowMuchFor:   {"How much for the %?", "gap 2-1/2"},
	HowMuchOrFar: {"How much for the %?", "gap 2-1/2"},
	Vague:        {"How much is %?", "gap 2-1/2"},
	HowMuchIs:    {"How much is %?", "gap 2-1/2"},
	WordWhat:     {"% what?", "gap two and a half"},
	HowManyRails: {"How many rails shall there be?", "6 rails"},
	RailsStack:   {"How many rails stack up?", "rails 6"},

	WhichNumber:  {"%: which number?", "gap 2-1/2"},
	WhichLength:  {"%: which length?", "gap 2-1/2"},
	SaidShorter:  {"Can that number be said shorter?", "gap 2-1/2"},
	TwoNumbers:   {"Two numbers in a row: % and %. How long is it?", "gap 2-1/2, or span 12 ft 6"},
	TimeOrLength: {"A time, or a length?", "span 12 ft 6"},
	DateOrLength: {"A date, or a length?", "gap 2-1/2"},
	ReallyMeant:  {"Is % really meant for the %?", ""},
	WhatSize:     {"Of what size are they?", "I have 4 ten foot 2x6"},
	LengthCosts:  {"Which length costs that?", "8 ft 2x6 are 9.50"},

	FigureOf:    {"% of what?", "gap 2-1/2"},
	HowManyOf:   {"How many of what?", "how many rails"},
	HowMuchOf:   {"How much of what?", "how much does it cost"},
	OtherSide:   {"The other side of what?", "opening on the right"},
	CenterOf:    {"From center to center of what?", ""},
	HowWide:     {"How wide is what?", "how wide is the gap"},
	HowTall:     {"How tall is what?", "how tall is the wall"},
	HowLong:     {"How long is what?", "how long do I cut the rails"},
	WhereGoes:   {"Where does what go?", "where does the post go"},
	ForgetWhat:  {"Forget what?", "forget gap"},
	NeverMind:   {"Never mind what?", "forget gap"},
	WhichBayIs:  {"Which bay is that?", "bay 1 bottom measures 68-3/8"},
	InWhichBay:  {"In which bay?", "rail 2 in bay 1 came out 3/8 short"},
	WhichHolds:  {"Which holds, % or %?", ""},
	WhichOfTwo:  {"Which of the two?", "6 rails"},
	WhichWasSo:  {"Which of the two was measured?", ""},
	HelpWith:    {"Help with what?", "help gap"},
	WhyWhat:     {"Why what? There is no answer yet.", "why rails"},
	WhichFile:   {"Into which file?", "print to porch.html"},
	WhichName:   {"Under which name?", "save porch"},
	WhichPlan:   {"Which plan?", "open porch"},
	OpenWhich:   {"Which plan shall I open?", "open porch"},
	CompareTwo:  {"Compare which two?", "compare porch, shed"},
	HowItFalls:  {"How far does it fall, and to which side?", "the floor drops 1 in to the right"},
	ToWhichSide: {"To which side?", "to the right"},
	HowItLeans:  {"How far, to which side, over what height?", "left post leans 3/8 in right in 48 in"},
	OverHeight:  {"Over what height does it lean so?", "left post leans 3/8 in right in 48 in"},
}

// Ask makes the question of a kind. What it is about stands in its text and its facts.
func (k QuestionKind) Ask(about ...string) solver.Question {
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

// Offering is the question with another line that works, and with choices.
func (k QuestionKind) Offering(example string, choices ...string) solver.Question {
	q := k.Ask()
	q.Choices, q.Example = choices, example
	return q
}

// Open is the question of a guard that needs nothing of the act.
func (k QuestionKind) Open(example string, about ...string) func(act.Act, []act.Act) solver.Question {
	q := k.Ask(about...)
	q.Example = example
	return func(act.Act, []act.Act) solver.Question { return q }
}

// AskAt asks back about a place of the line, in runes.
func (k QuestionKind) AskAt(at int, about ...string) act.Reading {
	return BackAt(at, k.Ask(about...))
}

// AskedBack asks a question that has no kind.
func AskedBack(at int, text, example string) act.Reading {
	return BackAt(at, solver.Question{Text: text, Example: example})
}

// BackAt asks a question back about a place in the line.
func BackAt(at int, q solver.Question) act.Reading {
	q.At = &at
	return act.Reading{Ask: &q}
}

// AsksOne reports whether a question is of one of several kinds.
func AsksOne(q *solver.Question, kinds ...QuestionKind) bool {
	return slices.Contains(kinds, QuestionKind(q.Key))
}

// AsksWhatItMeans reports whether a question is what a word, or what was said, means or comes to.
func AsksWhatItMeans(q *solver.Question) bool {
	return AsksOne(q, UnknownWord, ComesTo, ComesToInAll, WhatItSays)
}

// Unheard reports whether a question asks for what was not understood; any other asks about what was.
func Unheard(q *solver.Question) bool {
	return AsksWhatItMeans(q) || AsksOne(q, HowMuchFor, HowMuchOrFar, Meant, ForgetWhat, WhatAbout) || asksWhatItIsOf(q)
}

// asksWhatItIsOf reports whether a question is what a figure, a count or a side is of.
func asksWhatItIsOf(q *solver.Question) bool {
	return AsksOne(q, OfWhat...)
}

// OfWhat are the kinds of question that ask what a figure is of.
var OfWhat = []QuestionKind{FigureOf, HowManyOf, HowMuchOf, OtherSide, CenterOf}
