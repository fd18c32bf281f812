package explain

import (
	"strconv"
	"strings"

	"saywright/solver"
)

func (v *voice) fillQuestion(q *solver.Question) {
	if q.Text == "" {
		q.Text = "What was meant?"
	}
}

// question asks back: the question, the place in the line, the choices by number, and a line that works.
func (v *voice) question() {
	q := v.a.Ask
	v.p.say(q.Text, bold)
	if q.At != nil && strings.TrimSpace(v.a.Said) != "" {
		v.p.add(place{said: quoted(v.a.Said), at: *q.At})
	}
	for i, c := range q.Choices {
		v.p.add(para{lead: "  " + strconv.Itoa(i+1) + ". ", text: quoted(c)})
	}
	if q.Example != "" {
		v.p.add(para{text: "For example: " + quoted(q.Example)})
	}
}

// place is the line as it was said, with a caret under the place that the question is about.
type place struct {
	said string
	at   int // in runes
}

// lines shows as much of the line around the place as the width holds.
func (p place) lines(o Options) []string {
	runes := []rune(p.said)
	at := min(max(p.at, 0), len(runes))
	room := o.width() - 2
	from, to := 0, len(runes)
	for cells(string(runes[from:to])) > room && from < to {
		if at-from > (to-from)/2 || to <= at+1 {
			from++
		} else {
			to--
		}
	}
	text := string(runes[from:to])
	if o.ASCII {
		text = ascii(text)
	}
	caret := strings.Repeat(" ", cells(string(runes[from:at]))) + "^"
	return []string{"  " + text, "  " + inked(caret, bad, o)}
}
