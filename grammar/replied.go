package grammar

import (
	"strings"
	"unicode/utf8"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/solver"
)

// A value alone, after the program has asked for one thing: "How far apart do the end posts stand?" — "12 feet". A bare number
// answers only where one thing was asked for; with its unit, it answers what it can be meant for.

// replied reads a line that is no more than a value as the answer to what was asked for last. ok is false where it is no such
// line, or may answer two things; then the question has those to choose from.
func replied(line string, c act.Context, r act.Reading) (act.Reading, bool) {
	one, unit := onlyValue(line, c)
	if len(c.Asked) == 0 || c.Deep || !one {
		return r, false
	}
	c.Deep = true
	var found []act.Reading
	var choices []string
	for _, n := range c.Asked {
		if got, ok := toldOf(n, line, c); ok {
			found = append(found, got)
			choices = append(choices, parse.Normal(got.Acts))
		}
	}
	if len(found) == 1 && (len(c.Asked) == 1 || unit) {
		return found[0], true
	}
	if len(found) > 1 && r.Ask != nil {
		q := *r.Ask
		q.Choices = choices
		return act.Reading{Ask: &q}, false
	}
	return r, false
}

// toldOf reads a value as said of a quantity.
func toldOf(n solver.Name, line string, c act.Context) (act.Reading, bool) {
	for _, lead := range []string{n.String() + " ", n.String() + ", "} {
		got := Read(lead+line, c)
		if got.Ask != nil || len(got.Acts) != 1 || got.Acts[0].Kind != act.State || len(got.Acts[0].Statements) != 1 || got.Acts[0].Statements[0].Name != n {
			continue
		}
		shift := utf8.RuneCountInString(lead)
		got.Acts[0].At, got.Acts[0].End = max(0, got.Acts[0].At-shift), got.Acts[0].End-shift
		return got, true
	}
	return act.Reading{}, false
}

// onlyValue reports whether a line is one value, with words of bounds and empty ones, and whether the value has a unit.
func onlyValue(line string, c act.Context) (ok, unit bool) {
	letters, bad := scan.Fold(line)
	if bad >= 0 {
		return false, false
	}
	values := 0
	for _, t := range lex.Tokens(scan.Split(letters), c) {
		switch t.Kind {
		case lexicon.Num, lexicon.Size:
			values++
			unit = t.Amt.Unit != measure.Bare
		case lexicon.About, lexicon.Rel, lexicon.Bound, lexicon.Fill, lexicon.TailFill, lexicon.Comma, lexicon.Stop, lexicon.It, lexicon.Only:
		default:
			return false, false
		}
	}
	return values == 1, unit
}

// nouns are what a line may go on about that names nothing, by the quantity that was spoken of last.
var nouns = []struct{ begins, noun string }{
	{"opening", "opening"}, {"wall height", "wall"}, {"bay", "bay"}, {"rail", "rails"}, {"stiffener", "stiffeners"},
}

// wentOn reads a line that has a value with its dimension, or a side, and no name, as said of what was spoken of last: "28 wide" and
// "at the right end" right after the opening.
func wentOn(line string, c act.Context, r act.Reading) (act.Reading, bool) {
	if c.Subject == nil || c.Deep || !saysNoName(line, c) {
		return r, false
	}
	c.Deep = true
	for _, n := range nouns {
		if !strings.HasPrefix(string(c.Subject.Quantity), n.begins) {
			continue
		}
		lead := n.noun + " "
		got := Read(lead+line, c)
		if got.Ask != nil || len(got.Acts) != 1 || got.Acts[0].Kind != act.State || len(got.Acts[0].Statements) != 1 {
			return r, false
		}
		if st := got.Acts[0].Statements[0]; !strings.HasPrefix(string(st.Name.Quantity), n.begins) || st.Name.Quantity == solver.Openings || st.Name.Quantity == solver.Bays || st.Op == solver.Plus || st.Op == solver.Minus {
			return r, false
		}
		shift := utf8.RuneCountInString(lead)
		got.Acts[0].At, got.Acts[0].End = max(0, got.Acts[0].At-shift), got.Acts[0].End-shift
		return got, true
	}
	return r, false
}

// saysNoName reports whether a line has a value with its dimension, or a side, and names nothing.
func saysNoName(line string, c act.Context) bool {
	letters, bad := scan.Fold(line)
	if bad >= 0 {
		return false
	}
	values, dims, sides := 0, 0, 0
	for _, t := range lex.Tokens(scan.Split(letters), c) {
		switch t.Kind {
		case lexicon.Num:
			values++
		case lexicon.Dim:
			dims++
		case lexicon.Side, lexicon.FromSide:
			sides++
		case lexicon.About, lexicon.Rel, lexicon.Bound, lexicon.Fill, lexicon.TailFill, lexicon.Comma, lexicon.Stop, lexicon.It, lexicon.Only:
		default:
			return false
		}
	}
	return values == 1 && dims == 1 && sides == 0 || sides == 1 && dims == 0 && values <= 1
}
