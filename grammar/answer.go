package grammar

import (
	"regexp"
	"strconv"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/solver"
	"saywright/solver/exact"
)

// answer reads the reply to an open question: "1", "the second", "feet", "4 ft"; and to ways out that were offered.
func answer(line string, c act.Context) ([]act.Act, bool) {
	if len(c.Choices) == 0 && c.Ways == 0 {
		return nil, false
	}
	letters, _ := scan.Fold(line)
	tokens := lex.Tokens(scan.Split(letters), c)
	n, ok := choiceNumber(tokens)
	if i := choiceBySide(line, c.Choices); i >= 0 {
		return parsed(c.Choices[i], line)
	}
	if i := choiceByFaces(line, c.Choices); i >= 0 {
		return parsed(c.Choices[i], line)
	}
	if i := choiceByChange(line, c.Choices); i >= 0 {
		return parsed(c.Choices[i], line)
	}
	if i, number := choiceByFigure(tokens, c); i >= 0 {
		return parsed(c.Choices[i], line)
	} else if number > 0 {
		return nil, false
	}
	switch {
	case len(c.Choices) == 0:
		if ok && n <= c.Ways && n > 0 {
			return []act.Act{{Kind: act.Take, N: n, End: len([]rune(line))}}, true
		}
		return nil, false
	case ok && n >= 1 && n <= len(c.Choices):
		return parsed(c.Choices[n-1], line)
	case ok && n == -1:
		return parsed(c.Choices[len(c.Choices)-1], line)
	}
	if len(c.Choices) == 1 && Agrees(line) {
		return parsed(c.Choices[0], line)
	}
	for _, ch := range c.Choices {
		if strings.TrimSpace(strings.ToLower(line)) == ch {
			return parsed(ch, line)
		}
	}
	if i := choiceByUnit(tokens, c.Choices); i >= 0 {
		return parsed(c.Choices[i], line)
	}
	return nil, false
}

func parsed(normal, line string) ([]act.Act, bool) {
	acts, err := parse.Parse(normal)
	for i := range acts {
		acts[i].End = len([]rune(line))
	}
	return acts, err == nil
}

// choiceNumber reads "1", "the second one", "number two", "the last", "yes" to a single choice.
func choiceNumber(tokens []lex.Token) (int, bool) {
	n := 0
	for i := range tokens {
		t := &tokens[i]
		switch {
		case t.Kind == lexicon.Num && n == 0 && t.Amt.Unit == measure.Bare && t.Amt.Val.IsInt() && t.Amt.Bad == "":
			v, _ := t.Amt.Val.Int64()
			n = int(v)
		case t.Kind == lexicon.Num && n > 0 && t.Text == "one":
		case t.Kind == lexicon.Ordinal && n == 0:
			n = t.Index
		case t.Kind == lexicon.WayOut || t.Is(lexicon.Knowing) || t.Kind == lexicon.Fill || t.Kind == lexicon.Stop || t.Kind == lexicon.Comma || t.Kind == lexicon.Cmd && t.Key() == "take" || t.Kind == lexicon.Head && t.Key() == "state":
		default:
			return 0, false
		}
	}
	return n, n != 0
}

// choiceBySide finds the one choice that a side names: "the left one".
func choiceBySide(line string, choices []string) int {
	said := sideSaid.FindStringSubmatch(bareAnswer(line))
	if said == nil || len(choices) < 2 {
		return -1
	}
	found := -1
	for i, ch := range choices {
		if !strings.Contains(ch, said[1]) {
			continue
		}
		if found >= 0 {
			return -1
		}
		found = i
	}
	return found
}

var (
	byThat = regexp.MustCompile(`^(?:by |the change$|it changes|changes|change it by|.* (?:less|more|narrower|wider|smaller|bigger|taller|shorter|higher|lower)$)`)
	toThat = regexp.MustCompile(`^(?:to that|to be|shall be|should be|it (?:shall|should) be|what it (?:shall|should) be|how much it (?:shall|should) be|in all)`)
)

// choiceByChange finds the choice that is a change, or the one that is none, where there is one of each.
func choiceByChange(line string, choices []string) int {
	if len(choices) != 2 {
		return -1
	}
	said := bareAnswer(line)
	by, to := -1, -1
	for i, ch := range choices {
		if strings.Contains(ch, " += ") || strings.Contains(ch, " -= ") || strings.Contains(ch, " *= ") {
			by = i
		} else {
			to = i
		}
	}
	switch {
	case by < 0 || to < 0:
		return -1
	case byThat.MatchString(said) && (!strings.ContainsAny(said, "0123456789") || sameFigure(said, choices[by])):
		return by
	case toThat.MatchString(said):
		return to
	}
	return -1
}

// sameFigure reports whether words name no other figure than a choice does.
func sameFigure(said, choice string) bool {
	acts, err := parse.Parse(choice)
	letters, bad := scan.Fold(said)
	if err != nil || bad >= 0 || len(acts) != 1 || len(acts[0].Statements) != 1 {
		return false
	}
	for _, t := range lex.Tokens(scan.Split(letters), act.Context{}) {
		if t.Kind == lexicon.Num && !t.Amt.Val.Eq(acts[0].Statements[0].Value.Num) {
			return false
		}
	}
	return true
}

// whichNumber asks whether a number picks the choice of that number or the one of that figure: "2", where the second is 3 in and the first 2 in.
func whichNumber(line string, c act.Context) *solver.Question {
	letters, bad := scan.Fold(line)
	if bad >= 0 || len(c.Choices) == 0 {
		return nil
	}
	i, n := choiceByFigure(lex.Tokens(scan.Split(letters), c), c)
	if i >= 0 || n == 0 {
		return nil
	}
	byFigure := 0
	for k, ch := range c.Choices {
		if acts, err := parse.Parse(ch); err == nil && acts[0].Statements[0].Value.Num.Eq(exact.Int(n)) {
			byFigure = k
		}
	}
	q := solver.Question{Text: "The one that is number " + strconv.Itoa(n) + ", or that figure?", Choices: []string{c.Choices[n-1], c.Choices[byFigure]}}
	q.Example = "the first"
	return &q
}

// choiceByFigure finds the one choice of several figures of one thing that a bare number names: "3", where 2 in or 3 in may hold. Where the number picks another
// choice than the figure, neither is found, and number is what was said.
func choiceByFigure(tokens []lex.Token, c act.Context) (found, number int) {
	found = -1
	if c.Pending == nil || !askback.AsksOne(&c.Pending.Question, askback.WhichHolds) {
		return -1, 0 // of 2 in or 2 ft a 2 picks the second
	}
	var v *measure.Amount
	for i := range tokens {
		switch t := &tokens[i]; t.Kind {
		case lexicon.Num:
			if v != nil || t.Amt.Unit != measure.Bare || t.Amt.Bad != "" {
				return -1, 0
			}
			v = t.Amt
		case lexicon.It, lexicon.Stop, lexicon.Comma, lexicon.Fill:
		default:
			return -1, 0
		}
	}
	var of string
	for i, ch := range c.Choices {
		acts, err := parse.Parse(ch)
		if v == nil || err != nil || len(acts) != 1 || len(acts[0].Statements) != 1 {
			return -1, 0
		}
		st := acts[0].Statements[0]
		if of != "" && of != st.Name.String() {
			return -1, 0
		}
		of = st.Name.String()
		if st.Value.Of != nil || !st.Value.Num.Eq(v.Val) {
			continue
		}
		if found >= 0 {
			return -1, 0
		}
		found = i
	}
	if found < 0 {
		return -1, 0
	}
	if n, ok := v.Val.Int64(); ok && n >= 1 && int(n) <= len(c.Choices) && int(n) != found+1 {
		return -1, int(n)
	}
	return found, 0
}

// choiceByUnit finds the one choice that a unit or a value names: "feet", "4 ft".
func choiceByUnit(tokens []lex.Token, choices []string) int {
	var unit string
	var v *measure.Amount
	for i := range tokens {
		switch t := &tokens[i]; t.Kind {
		case lexicon.Unit:
			unit = t.Text
		case lexicon.Num:
			v = t.Amt
		case lexicon.Units:
			unit = t.Key()
		case lexicon.It, lexicon.Stop, lexicon.Comma, lexicon.Fill:
		default:
			return -1
		}
	}
	found := -1
	for i, ch := range choices {
		acts, err := parse.Parse(ch)
		if err != nil || len(acts) != 1 || len(acts[0].Statements) != 1 {
			continue
		}
		if !chosen(acts[0].Statements[0], choices, unit, v) {
			continue
		}
		if found >= 0 {
			return -1
		}
		found = i
	}
	return found
}

func chosen(st solver.Statement, choices []string, unit string, v *measure.Amount) bool {
	val := st.Value
	if v != nil {
		if v.Unit == measure.Bare {
			return false
		}
		return v.Size != "" && v.Size == val.Word || v.Size == "" && v.Val.Eq(val.Num)
	}
	first, err := parse.Parse(choices[0])
	if err != nil || len(first) != 1 || len(first[0].Statements) != 1 {
		return false
	}
	base := first[0].Statements[0].Value
	switch {
	case measure.FootWords[unit]:
		return val.Num.Eq(base.Num.Mul(measure.Twelve))
	case measure.InchWords[unit] || unit == "customary":
		return val.Unit == solver.Inch && val.Num.Eq(base.Num)
	case unit == "metric":
		return val.Unit == solver.Millimeter
	}
	size, ok := measure.MetricWords[unit]
	return ok && val.Unit == solver.Millimeter && val.Num.Eq(base.Num.Mul(size))
}

// agreedWords are words of an answer that takes the one thing that is offered, agreedFirmly those of which one must be there; declinedWords those of one that takes
// nothing of it.
var (
	agreedWords    = scan.WordSet("yes yeah yep yup yea aye sure correct exactly right ok okay please that this s is it one thanks thank you of course")
	agreedFirmly   = scan.WordSet("yes yeah yep yup yea aye sure correct exactly right ok okay")
	declinedWords  = scan.WordSet("no nope nah neither none nothing of them those either one that not thanks thank you")
	declinedFlatly = scan.WordSet("no nope nah neither none")
)

// saysOnly reports whether a line says nothing but words of a set, one at least of those that must be there, and asks nothing.
func saysOnly(line string, set, must map[string]bool) bool {
	line = strings.ToLower(line)
	if strings.ContainsAny(line, "?0123456789") {
		return false
	}
	words := strings.FieldsFunc(line, func(r rune) bool { return r == ' ' || r == ',' || r == '.' || r == '!' || r == '\'' || r == '\u2019' })
	found := false
	for _, w := range words {
		if !set[w] {
			return false
		}
		found = found || must[w]
	}
	return found && len(words) < 6 && words[0] != "is"
}

// Declines reports whether a line takes nothing of what a question offers: "no", "neither of them".
func Declines(line string) bool { return saysOnly(line, declinedWords, declinedFlatly) }

var droppedSaid = regexp.MustCompile(`^(?:(?:oh|ok|okay|well|no|nah|um|uh|actually)[, ]+)*(?:never ?mind|forget (?:it|that|about it|i asked|i said anything)|skip (?:it|that)|drop (?:it|that)|leave it|let it be|don't worry about it|doesn't matter|scratch that|cancel)(?: then)?[ .!]*$`)

// Drops reports whether a line lets a question go that was just asked: then it takes nothing back, as nothing was done.
func Drops(line string) bool {
	return droppedSaid.MatchString(strings.ToLower(strings.Join(strings.Fields(line), " ")))
}

// Agrees reports whether a line says nothing but yes.
func Agrees(line string) bool { return saysOnly(line, agreedWords, agreedFirmly) }

// thanksOnly is a line that only thanks.
var thanksOnly = regexp.MustCompile(`^\s*(?:(?:ok|okay|great|perfect|good|super|lovely|nice|wonderful|ah|oh|right)[ ,.!]+)*(?:many thanks|thank you|thanks|thank ya|thanx)(?: (?:so |very )much| a (?:lot|bunch|million|ton)| again| kindly)?[ .!]*$`)

// answersNothing asks what a yes or a no is to where nothing was asked: a yes may keep what was tried, a no take back what was changed last.
func answersNothing(line string, c act.Context) *solver.Question {
	at := 0
	switch {
	case len(c.Choices) > 0:
	case len(line) < 60 && !Agrees(line) && thanksOnly.MatchString(strings.ToLower(line)):
		return &solver.Question{Key: string(askback.WhatToKnow), Text: "You're welcome. What else would you like to know, or to set?", Example: "show me the cuts"}
	case c.Ways == 1 && Agrees(line):
		return &solver.Question{At: &at, Text: "Shall I take that way out?", Choices: []string{"take 1"}, Example: "take 1"}
	case c.Ways > 1 && Agrees(line):
		return &solver.Question{Text: "Which way out? Say its number, 1 to " + measure.Itoa(c.Ways) + ".", Example: "take 1"}
	case c.Ways > 0:
	case c.Tried && Agrees(line):
		return &solver.Question{At: &at, Text: "Shall I keep what was tried?", Choices: []string{"take that"}, Example: "take that"}
	case c.Answered && Declines(line):
		return &solver.Question{At: &at, Text: "Shall I take back the last change?", Choices: []string{"undo"}, Example: "undo"}
	}
	return nil
}
