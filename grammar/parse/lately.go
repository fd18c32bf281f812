package parse

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/solver"
)

// ofGaps are verbs that are said of gaps alone.
var ofGaps = map[string]bool{"tighten": true, "tightens": true, "tightened": true, "tightening": true, "tighter": true, "tight": true,
	"snug": true, "loosen": true, "loosens": true, "loosened": true, "loosening": true, "looser": true}

// SpokenOf returns what "it" can only mean: the one thing that was spoken of last, or of several the one that the verb is
// said of ("wall forty, gap two and a half": "tighten it to two").
func SpokenOf(c act.Context, tokens []lex.Token) *solver.Name {
	if c.Subject != nil && solver.KindOf(c.Subject.Quantity) == solver.Size && c.Subject.Quantity != solver.RailSize && usesSize(tokens) {
		return nil // "use 2x4s" after the posts speaks of the rails, as it does by itself
	}
	if c.Subject != nil {
		return c.Subject
	}
	for i := range tokens {
		for word := range strings.FieldsSeq(tokens[i].Text) {
			if ofGaps[word] {
				return lately(c, solver.Gap)
			}
		}
	}
	return onlyFor(c, tokens)
}

// onlyFor returns the one thing of those spoken of last that the one value of a line can be said of: "make it 34" after
// "opening 30 on the left".
func onlyFor(c act.Context, tokens []lex.Token) *solver.Name {
	var value *lex.Token
	for i := range tokens {
		switch t := &tokens[i]; t.Kind {
		case lexicon.Num, lexicon.Size:
			if value != nil {
				return nil
			}
			value = t
		case lexicon.Part, lexicon.Loc, lexicon.Side, lexicon.FromSide:
			return nil
		}
	}
	if value == nil || value.Amt.Unit == measure.Percent || value.Amt.Unit == measure.Money {
		return nil
	}
	var one *solver.Name
	for i := range c.Lately {
		n := &c.Lately[i]
		fits := false
		switch solver.KindOf(n.Quantity) {
		case solver.Length:
			fits = value.Kind == lexicon.Num
		case solver.Count:
			fits = value.Kind == lexicon.Num && value.Amt.Unit == measure.Bare
		case solver.Size:
			fits = value.Kind == lexicon.Size
		}
		if !fits || one != nil && *one == *n {
			continue
		}
		if one != nil {
			return nil
		}
		one = n
	}
	return one
}

// lately returns the name of a quantity that the last line spoke of, where it spoke of one such only.
func lately(c act.Context, q solver.Quantity) *solver.Name {
	var one *solver.Name
	for i := range c.Lately {
		if n := &c.Lately[i]; n.Quantity == q {
			if one != nil && one.String() != n.String() {
				return nil
			}
			one = n
		}
	}
	return one
}

// usesSize reports whether a line begins with the use of lumber of some size, and leans on nothing before it.
func usesSize(tokens []lex.Token) bool {
	return len(tokens) > 1 && strings.HasPrefix(tokens[0].Text, "use") && tokens[1].Kind == lexicon.Size
}
