package hear

import (
	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/measure"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/solver"
)

// Somebody may ask himself, and answer in the same breath: "how many rails? six", "what size are the posts? four by four". The answer is
// what is told, and nothing is asked.

// answerWords are the words that may stand in such a question, and in its answer.
var (
	ownQuestion = scan.WordSet("how many what which size number count are is the my our your do i we want of should be wide high tall big long large much for a")
	ownAnswer   = scan.WordSet("well uh um er so the answer is it that would be i we say want will of them please and then 's 'll a let call us")
)

// answeredAtOnce leaves out a question that is answered behind its mark with a bare figure.
func answeredAtOnce(acts []act.Act, atoms []scan.Atom) []act.Act {
	for i := 0; i+1 < len(acts); i++ {
		a, b := acts[i], acts[i+1]
		if a.Kind != act.Ask || a.Name == nil || b.Kind != act.State || len(b.Statements) != 1 || b.Statements[0].Name != *a.Name || !(b.Statements[0].Op == solver.Eq && asksHimself(atoms, a.At)) && !namesOnly(atoms, a.At) {
			continue
		}
		return append(append([]act.Act{}, acts[:i]...), acts[i+1:]...)
	}
	return acts
}

// asksHimself reports whether a question that stands at a place is short, ends in its mark, and is followed by a bare figure.
func asksHimself(atoms []scan.Atom, at int) bool {
	i := max(AtomAt(atoms, at), 0)
	for i > 0 && !chunk.BreaksClause(atoms, i-1) {
		i--
	}
	mark := i
	for mark < len(atoms) && atoms[mark].Text != "?" {
		mark++
	}
	if mark == len(atoms) || mark-i > 7 {
		return false
	}
	unknown := 0
	for _, a := range atoms[i:mark] {
		if !ownQuestion[a.Text] && a.Text != "," {
			unknown++ // what is asked for
		}
	}
	figure := false
	for k := mark + 1; k < len(atoms) && !(figure && chunk.EndsSentence(atoms, k)); k++ {
		switch a := atoms[k]; {
		case a.Kind != scan.Word && a.Text != "?" || chunk.SpelledNumber(a.Text) || measure.Tens[a.Text] > 0 || measure.InchWords[a.Text] || measure.FootWords[a.Text]:
			figure = figure || a.Kind == scan.Digits || a.Kind == scan.Vulgar || a.Kind == scan.Word
		case !ownAnswer[a.Text] && a.Text != "by" && a.Text != "x" && a.Text != "half" && a.Text != "quarter" && a.Text != "quarters" && a.Text != "eighth" && a.Text != "eighths":
			return false
		}
	}
	return figure && unknown <= 3
}

// namesOnly reports whether nothing but a name stands before the mark of a question that opens a line: "the gap? not a hair under two".
func namesOnly(atoms []scan.Atom, at int) bool {
	for i, a := range atoms {
		switch {
		case a.Text == "?":
			return i > 0 && i < 4 && AtomAt(atoms, at) <= i && i+1 < len(atoms) && atoms[len(atoms)-1].Text != "?"
		case a.Kind != scan.Word || parse.QuestionOpeners[a.Text] || idiom.MayAsk[a.Text] || idiom.Bids[a.Text] || a.Text == "many" || a.Text == "much":
			return false
		}
	}
	return false
}

// measuredTwice asks which holds where one line tells two measurements of the same place, and corrects neither.
func measuredTwice(acts []act.Act) *solver.Question {
	told := map[string]solver.Statement{}
	wide := map[int]solver.Statement{}
	for _, a := range acts {
		if a.Kind != act.State {
			continue
		}
		for _, st := range a.Statements {
			if q := noOneWidth(st, wide); q != nil {
				q.At = &a.At
				return q
			}
			if st.Name.Quantity != solver.Measured || st.Op != solver.Eq {
				continue
			}
			name := st.Name.String()
			if was, ok := told[name]; ok && was.String() != st.String() {
				return askback.BackAt(a.At, askback.WhichWasSo.Offering(st.String(), was.String(), st.String())).Ask
			}
			told[name] = st
		}
	}
	return nil
}
