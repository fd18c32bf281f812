package hear

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/lex"
	"saywright/grammar/parse"
	"saywright/solver"
)

// AskedWhether asks whether what was heard is meant; a yes states it.
func AskedWhether(text, example string) func(act.Act, []act.Act) solver.Question {
	return func(_ act.Act, acts []act.Act) solver.Question {
		q := solver.Question{Text: text, Example: example}
		var forms []string
		for _, a := range acts {
			if a.Kind != act.State && a.Kind != act.Check && a.Kind != act.WhatIf || len(a.Statements) == 0 {
				return q
			}
			for _, s := range a.Statements {
				if s.Op == solver.Plus || s.Op == solver.Minus || s.Op == solver.Times || s.Op == solver.Set {
					return q // nothing that is told as it is
				}
				forms = append(forms, s.String())
			}
		}
		if len(forms) > 0 {
			q.Choices = []string{strings.Join(forms, "; ")}
		}
		return q
	}
}

// notKnown asks about a word that no table knows.
func notKnown(t *lex.Token) solver.Question {
	q := askback.UnknownWord.Ask(parse.Quoted(parse.Short(t.Text)))
	q.At = new(t.At)
	return q
}
