package grammar

import (
	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
	"saywright/grammar/takeback"
)

// readSeveralUndone reads an order to take back several things, with what is said behind it.
func readSeveralUndone(line string, atoms []scan.Atom, c act.Context) (act.Reading, bool) {
	led, _ := idiom.PastLead(atoms)
	for len(led) > 0 && led[0].Text == "please" {
		led = led[1:]
	}
	n, to := takeback.SeveralUndone(led)
	if n < 2 || n > takeback.MostUndone {
		return act.Reading{}, false
	}
	at, end := led[0].At, led[to-1].End
	var r act.Reading
	for range n {
		r.Acts = append(r.Acts, act.Act{Kind: act.Undo, At: at, End: end})
	}
	rest := paraphrase.PastTail(led[to:])
	for len(rest) > 0 && (rest[0].Kind == scan.Sign || chunk.Joints[rest[0].Text] || rest[0].Text == "please") {
		rest = rest[1:]
	}
	if len(rest) == 0 {
		return r, true
	}
	if !chunk.BreaksClause(led, to) && !chunk.Joints[led[to].Text] {
		return act.Reading{}, false
	}
	more := readHeld(line, rest, c)
	if more.Ask != nil {
		return act.Reading{}, false
	}
	r.Acts, r.Taken = append(r.Acts, more.Acts...), more.Taken
	return r, true
}
