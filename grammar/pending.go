package grammar

import (
	"regexp"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
	"saywright/solver"
)

// A question that was asked back is answered in a word: "How much for the gap?" by "2 inches", "2 in of what?" by "the gap", "Which bay is that?" by
// "the second". Such an answer is put where the line that was asked about lacks it, and that line is read as a whole. A line that says more than the question
// asked for is read by itself, as ever.

// openAnswer is how one question is answered: what may be said, and the whole lines that the answer may make, the likeliest first.
type openAnswer struct {
	asks  []askback.QuestionKind
	takes func(said string, c act.Context) bool
	lines func(p *act.Pending, said string, c act.Context) []string
	ask   func(p *act.Pending, said string, c act.Context) *solver.Question // asks which, where the answer may mean two things
}

// openAnswers are the questions that a word may answer. What a question offers by number is picked by answer.go.
var openAnswers []openAnswer

func init() { // by init, because the functions lead back to the table
	openAnswers = []openAnswer{
		{asks: kinds(askback.HowMuchOrFar), takes: aMove, lines: putBehind("")},
		{asks: kinds(askback.HowMuchFor, askback.HowMuchOrFar), takes: aValue, lines: figureLines, ask: toOrByPending},
		{asks: askback.OfWhat, takes: aPart, lines: beforeFigure},
		{asks: askback.OfWhat, takes: aPlacing, lines: putBehind("")},
		{asks: kinds(askback.WhichBayIs), takes: aPlace, lines: inPlaceOf(bayWord, "bay ")},
		{asks: kinds(askback.InWhichBay), takes: aPlace, lines: putBehind("in bay ")},
		{asks: kinds(askback.HowItFalls), takes: aFall, lines: floorLines},
		{asks: kinds(askback.ToWhichSide), takes: aSide, lines: toSide},
		{asks: kinds(askback.HowItLeans), takes: aFall, lines: putBehind("")},
		{asks: kinds(askback.OverHeight), takes: aValue, lines: putBehind("in ")},
		{asks: kinds(askback.WhichFile, askback.WhichName, askback.WhichPlan, askback.OpenWhich, askback.CompareTwo, askback.HelpWith, askback.WhyWhat), takes: aName, lines: likeExample},
		{asks: kinds(askback.ForgetWhat, askback.NeverMind), takes: aPart, lines: inItsPlace("forget ")},
		{asks: kinds(askback.HowManyOf), takes: aPart, lines: inItsPlace("how many ")},
		{asks: kinds(askback.HowWide), takes: aPart, lines: inItsPlace("how wide is ")},
		{asks: kinds(askback.HowTall), takes: aPart, lines: inItsPlace("how tall is ")},
		{asks: kinds(askback.HowLong), takes: aPart, lines: inItsPlace("how long is ")},
		{asks: kinds(askback.WhereGoes), takes: aPart, lines: inItsPlace("where does it go: ")},
		{asks: kinds(askback.WhichOfTwo, askback.WhichWasSo), takes: aChoice, lines: oneOfTwo},
		{asks: kinds(askback.Vague), takes: aValue, lines: vagueWord},
		{asks: kinds(askback.WhichNumber, askback.WhichLength, askback.SaidShorter, askback.TwoNumbers, askback.TimeOrLength, askback.DateOrLength), takes: aValue, lines: wordAsked},
		{asks: kinds(askback.WordWhat), takes: aValue, lines: putBehind("")},
		{asks: kinds(askback.ReallyMeant), takes: aUnit, lines: unitBehind},
		{asks: kinds(askback.NotSaved, askback.CannotSave, askback.CannotOpen, askback.FileInTheWay, askback.CannotWrite), takes: aName, lines: underOther},
		{asks: kinds(askback.NothingToChange), takes: aValue, lines: givenFigure},
		{asks: kinds(askback.WhatAbout), takes: aWish, lines: putBehind("")},
		{asks: kinds(askback.WhatSize), takes: aSize, lines: sized},
		{asks: kinds(askback.LengthCosts), takes: aFooter, lines: priced},
		{asks: kinds(askback.HowManyRails, askback.RailsStack), takes: aValue, lines: func(_ *act.Pending, said string, _ act.Context) []string { return []string{said + " rails"} }},
	}
}

// kinds lists the kinds of question that a row answers.
func kinds(list ...askback.QuestionKind) []askback.QuestionKind { return list }

// answersPending reads a line as the answer to the question that was asked last. Where the answer leaves the line open in another way, Whole is the line that is
// asked about then.
func answersPending(line string, c act.Context) (act.Reading, bool) {
	p := c.Pending
	if p == nil || c.Deep || len(line) > 120 || len(p.Line) > hear.LongestLine {
		return act.Reading{}, false
	}
	said := bareAnswer(line)
	c.Pending, c.Choices, c.Ways = nil, nil, 0
	for _, w := range openAnswers {
		if said == "" || !askback.AsksOne(&p.Question, w.asks...) || !w.takes(said, c) {
			continue
		}
		if lines := w.lines(p, said, c); len(lines) > 0 || w.ask == nil {
			return pendingHeard(lines, line, p, c)
		}
		q := w.ask(p, said, c)
		return act.Reading{Ask: q, Own: true}, q != nil
	}
	return act.Reading{}, false
}

// pendingHeard reads the lines that an answer may make, up to the first that is understood.
func pendingHeard(lines []string, line string, p *act.Pending, c act.Context) (act.Reading, bool) {
	var open *act.Reading
	for _, whole := range lines {
		if q := sideLeftOpen(whole, p, c); q != nil {
			return act.Reading{Ask: q, Whole: whole}, true
		}
		got := Read(whole, c)
		if got.Ask == nil && len(got.Acts) > 0 {
			for i := range got.Acts {
				got.Acts[i].At, got.Acts[i].End = 0, len([]rune(line))
			}
			return got, true
		}
		if got.Ask != nil && open == nil && got.Ask.Text != p.Question.Text && (len(got.Ask.Choices) > 0 || waitsForWord(got.Ask)) {
			q := *got.Ask
			q.At = nil // its place is in a line that nobody said so
			open = &act.Reading{Ask: &q, Whole: whole}
		}
	}
	if open != nil {
		return *open, true
	}
	return act.Reading{}, false
}

// waitsForWord reports whether a question is one that a word may answer.
func waitsForWord(q *solver.Question) bool {
	for _, w := range openAnswers {
		if askback.AsksOne(q, w.asks...) {
			return true
		}
	}
	return false
}

var (
	answerLead = regexp.MustCompile(`^(?:(?:um|uh|er|oh|ok|okay|well|so|sorry|and|hm|hmm|ah|yeah|yes)[ ,]+|no,+ ?|(?:(?:i|we) (?:mean|meant|want)|i'd say|let's say|let's do|say|make (?:it|that|them)|call it|it's|it is|its|that's|that is|that would be|they're|they are)[ ,]+)*`)
	answerTail = regexp.MustCompile(`(?:[ ,]+(?:please|thanks|thank you|then|i guess|i think|i mean|i suppose))*[ .!]*$`)
	bayWord    = regexp.MustCompile(`(?i)\b(?:(?:the|that|this|a|my|our) )?bay\b`)
)

// bareAnswer leaves out what people say round an answer: "oh, I meant the gap, please". A question is no answer.
func bareAnswer(line string) string {
	said := strings.ToLower(strings.Join(strings.Fields(line), " "))
	if strings.Contains(said, "?") {
		return ""
	}
	return answerTail.ReplaceAllString(answerLead.ReplaceAllString(said, ""), "")
}

// placeOf is the number of a place: "the second one" is 2.
func placeOf(said string) string {
	n := placeSaid.FindStringSubmatch(said)[1]
	if k, ok := map[string]string{"first": "1", "second": "2", "third": "3", "fourth": "4", "fifth": "5", "sixth": "6", "1st": "1", "2nd": "2", "3rd": "3", "4th": "4"}[n]; ok {
		return k
	}
	return n
}

func toSide(p *act.Pending, said string, _ act.Context) []string {
	side := sideSaid.FindStringSubmatch(said)[1]
	return []string{bareEnd(p.Line) + " " + side, bareEnd(p.Line) + " to the " + side}
}

// sideLeftOpen asks to which side, where an answer told only how far.
func sideLeftOpen(whole string, p *act.Pending, c act.Context) *solver.Question {
	if !askback.AsksOne(&p.Question, askback.HowItFalls, askback.HowItLeans) || strings.Contains(whole, "right") || strings.Contains(whole, "left ") && strings.Count(whole, "left") > 1 || Read(whole, c).Ask == nil {
		return nil
	}
	if onlyWithSide := Read(toSide(&act.Pending{Line: whole}, "right", c)[0], c); onlyWithSide.Ask != nil && !waitsForWord(onlyWithSide.Ask) {
		return nil
	}
	return new(askback.ToWhichSide.Ask())
}

// unitBehind tells the unit of the figure that was asked about: so many inches of a count are how far apart.
func unitBehind(p *act.Pending, said string, _ act.Context) []string {
	said = withoutFirst(withoutFirst(said, "so"), "far")
	return []string{bareEnd(p.Line) + " " + said, bareEnd(p.Line) + " " + said + " apart"}
}

// underOther does the same under another name.
func underOther(p *act.Pending, said string, _ act.Context) []string {
	i := strings.LastIndex(p.Line, " ")
	return []string{p.Line[:i+1] + strings.TrimPrefix(withoutFirst(said, "to", "as", "in", "into"), "the ")}
}

// givenFigure gives a figure to what nothing was said of.
func givenFigure(p *act.Pending, said string, _ act.Context) []string {
	if len(p.Question.Facts) == 0 || len(p.Question.Facts[0].Names) == 0 {
		return nil
	}
	return []string{p.Question.Facts[0].Names[0] + " " + withoutFirst(said, "to", "at")}
}

func putBehind(word string) func(*act.Pending, string, act.Context) []string {
	return func(p *act.Pending, said string, _ act.Context) []string {
		if word == "in " { // over so high; "over 3" of a gap is a limit
			said = withoutFirst(said, "in", "over")
		}
		if placeSaid.MatchString(said) && strings.HasSuffix(word, "bay ") {
			said = placeOf(said)
		}
		return []string{bareEnd(p.Line) + " " + word + said, bareEnd(p.Line) + " " + said}
	}
}

func inItsPlace(lead string) func(*act.Pending, string, act.Context) []string {
	return func(_ *act.Pending, said string, _ act.Context) []string { return []string{lead + said} }
}

func inPlaceOf(word *regexp.Regexp, lead string) func(*act.Pending, string, act.Context) []string {
	return func(p *act.Pending, said string, _ act.Context) []string {
		at := word.FindStringIndex(p.Line)
		if at == nil {
			return nil
		}
		return []string{p.Line[:at[0]] + lead + placeOf(said) + p.Line[at[1]:]}
	}
}

func bareEnd(line string) string { return strings.TrimRight(line, " .!?,") }

// likeExample sets a name in the place of the one in the question's example: "save this as porch".
func likeExample(p *act.Pending, said string, _ act.Context) []string {
	said = strings.TrimPrefix(withoutFirst(said, "to", "as", "in", "into"), "the ")
	lead, _, _ := strings.Cut(p.Question.Example, "porch")
	switch askback.QuestionKind(p.Question.Key) {
	case askback.HelpWith:
		lead = "help "
	case askback.CompareTwo:
		lead = "compare "
	case askback.WhyWhat:
		lead = "why "
	}
	if strings.HasPrefix(lead, "print to") && !strings.Contains(said, ".") {
		said += ".html"
	}
	return []string{lead + said}
}

// floorLines tell a fall of the floor.
func floorLines(_ *act.Pending, said string, _ act.Context) []string {
	return []string{"the floor drops " + withoutFirst(said, "to")}
}

// aroundQuestion returns the runes of a line before, of and behind the tokens that a question is about.
func aroundQuestion(p *act.Pending, n int, c act.Context) (before, of, behind string) {
	letters, bad := scan.Fold(p.Line)
	if bad >= 0 || p.Question.At == nil {
		return "", "", ""
	}
	runes := []rune(p.Line)
	tokens := lex.Tokens(scan.Split(letters), c)
	for i := range tokens {
		if tokens[i].At <= *p.Question.At && *p.Question.At < max(tokens[i].End, tokens[i].At+1) && i+n <= len(tokens) {
			return string(runes[:tokens[i].At]), string(runes[tokens[i].At:tokens[i+n-1].End]), string(runes[tokens[i+n-1].End:])
		}
	}
	return "", "", ""
}

// beforeFigure names what a figure is of.
func beforeFigure(p *act.Pending, said string, c act.Context) []string {
	said = withoutFirst(said, "of", "for", "in", "about", "on")
	before, of, behind := aroundQuestion(p, 1, c)
	if of == "" {
		return nil
	}
	if ok, _ := onlyValue(p.Line, c); ok {
		return []string{strings.TrimPrefix(said, "the ") + " " + bareEnd(p.Line), bareEnd(p.Line) + " " + strings.TrimPrefix(said, "the ")}
	}
	return []string{before + said + " " + of + behind, before + of + " " + said + behind}
}

// wordAsked sets a figure in the place of the one that was asked about.
func wordAsked(p *act.Pending, said string, c act.Context) []string {
	n := 1
	if askback.AsksOne(&p.Question, askback.TwoNumbers) {
		n = 2
	}
	before, of, behind := aroundQuestion(p, n, c)
	if of == "" {
		return nil
	}
	return []string{before + said + behind}
}

var vagueArticle = regexp.MustCompile(`(?i)\b(?:just )?(?:a|an|some)(?: tiny| little| wee)? $`)

// smallSaid is a figure of less than two inches, or of a part of one.
var smallSaid = regexp.MustCompile(`^(?:an? |1 |one |half|(?:a |one |three |five |seven )?(?:quarter|eighth|sixteenth)|[0-9]+/[0-9]+|[1-9] ?(?:mm|cm)\b|[1-5][0-9] ?mm\b)`)

// vagueWord sets a figure in the place of a vague word: "a bit more gap", "half an inch".
func vagueWord(p *act.Pending, said string, c act.Context) []string {
	before, of, behind := aroundQuestion(p, 1, c)
	if of == "" {
		return nil
	}
	if !strings.HasPrefix(said, "by ") && !smallSaid.MatchString(said) {
		return nil // "a bit taller wall", "44": that is no bit
	}
	said = withoutFirst(said, "by")
	return []string{vagueArticle.ReplaceAllString(before, "") + said + strings.TrimPrefix(behind, " bit")}
}

// oneOfTwo sets one figure in the place of two that stand to choose from: "five or six rails", "six".
func oneOfTwo(p *act.Pending, said string, c act.Context) []string {
	letters, bad := scan.Fold(p.Line)
	if bad >= 0 {
		return nil
	}
	runes := []rune(p.Line)
	tokens := lex.Tokens(scan.Split(letters), c)
	for i := 1; i+1 < len(tokens); i++ {
		a, b := &tokens[i-1], &tokens[i+1]
		if tokens[i].Kind != lexicon.Or || a.Kind != lexicon.Num && a.Kind != lexicon.Size || b.Kind != lexicon.Num && b.Kind != lexicon.Size {
			continue
		}
		switch {
		case strings.Contains(said, "first") || strings.Contains(said, "former"):
			said = string(runes[a.At:a.End])
		case oneSaid.MatchString(said):
			said = string(runes[b.At:b.End])
		}
		if said == "half" || said == "one" {
			return nil // of one of them, or one of them
		}
		if onlyKinds(said, c, lexicon.Num, 1) || onlyKinds(said, c, lexicon.Size, 1) {
			return []string{string(runes[:a.At]) + said + string(runes[b.End:])}
		}
		return []string{said} // "six rails" names what it is of
	}
	return nil
}

func sized(p *act.Pending, said string, _ act.Context) []string {
	said = strings.TrimSuffix(strings.TrimPrefix(said, "the "), "s")
	return []string{bareEnd(p.Line) + " " + said, bareEnd(p.Line) + " of " + said}
}

func priced(p *act.Pending, said string, _ act.Context) []string {
	said = strings.TrimPrefix(withoutFirst(said, "for"), "the ")
	return []string{said + " " + p.Line, "the " + said + " " + p.Line}
}
