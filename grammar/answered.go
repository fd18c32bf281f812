package grammar

import "saywright/solver"

// Somebody may ask himself, and answer in the same breath: "how many rails? six", "what size are the posts? four by four". The answer is
// what is told, and nothing is asked.

// answerWords are the words that may stand in such a question, and in its answer.
var (
	ownQuestion = wordSet("how many what which size number count are is the my our your do i we want of should be wide high tall big long large much for a")
	ownAnswer   = wordSet("well uh um er so the answer is it that would be i we say want will of them please and then 's 'll a let call us")
)

// answeredAtOnce leaves out a question that is answered behind its mark with a bare figure.
func answeredAtOnce(acts []Act, atoms []atom) []Act {
	for i := 0; i+1 < len(acts); i++ {
		a, b := acts[i], acts[i+1]
		if a.Kind != Ask || a.Name == nil || b.Kind != State || len(b.Statements) != 1 || b.Statements[0].Name != *a.Name || !(b.Statements[0].Op == solver.Eq && asksHimself(atoms, a.At)) && !namesOnly(atoms, a.At) {
			continue
		}
		return append(append([]Act{}, acts[:i]...), acts[i+1:]...)
	}
	return acts
}

// asksHimself reports whether a question that stands at a place is short, ends in its mark, and is followed by a bare figure.
func asksHimself(atoms []atom, at int) bool {
	i := max(atomAt(atoms, at), 0)
	for i > 0 && !breaksClause(atoms, i-1) {
		i--
	}
	mark := i
	for mark < len(atoms) && atoms[mark].text != "?" {
		mark++
	}
	if mark == len(atoms) || mark-i > 7 {
		return false
	}
	unknown := 0
	for _, a := range atoms[i:mark] {
		if !ownQuestion[a.text] && a.text != "," {
			unknown++ // what is asked for
		}
	}
	figure := false
	for k := mark + 1; k < len(atoms) && !(figure && endsSentence(atoms, k)); k++ {
		switch a := atoms[k]; {
		case a.kind != aWord && a.text != "?" || spelledNumber(a.text) || tens[a.text] > 0 || inchWords[a.text] || footWords[a.text]:
			figure = figure || a.kind == aDigits || a.kind == aVulgar || a.kind == aWord
		case !ownAnswer[a.text] && a.text != "by" && a.text != "x" && a.text != "half" && a.text != "quarter" && a.text != "quarters" && a.text != "eighth" && a.text != "eighths":
			return false
		}
	}
	return figure && unknown <= 3
}

// namesOnly reports whether nothing but a name stands before the mark of a question that opens a line: "the gap? not a hair under two".
func namesOnly(atoms []atom, at int) bool {
	for i, a := range atoms {
		switch {
		case a.text == "?":
			return i > 0 && i < 4 && atomAt(atoms, at) <= i && i+1 < len(atoms) && atoms[len(atoms)-1].text != "?"
		case a.kind != aWord || questionOpeners[a.text] || mayAsk[a.text] || bids[a.text] || a.text == "many" || a.text == "much":
			return false
		}
	}
	return false
}

// measuredTwice asks which holds where one line tells two measurements of the same place, and corrects neither.
func measuredTwice(acts []Act) *solver.Question {
	told := map[string]solver.Statement{}
	wide := map[int]solver.Statement{}
	for _, a := range acts {
		if a.Kind != State {
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
				return backAt(a.At, qWhichWasSo.offering(st.String(), was.String(), st.String())).Ask
			}
			told[name] = st
		}
	}
	return nil
}
