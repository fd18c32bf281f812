package explain

import (
	"slices"
	"strconv"
	"strings"

	"saywright/solver"
)

// fillQuestion words a question by its key; one that was worded where it was asked stays as it is.
func (v *voice) fillQuestion(q *solver.Question) {
	if s := v.askedBack(*q); s != "" {
		q.Text = written(s, v.Style)
	}
	if q.Text == "" {
		q.Text = "What was meant?"
	}
	if q.Key == "want bays" {
		q.Example = "opening 36"
	}
	if m, ok := metricExamples[q.Example]; ok && v.Metric {
		q.Example = m
	}
}

// question asks back: the question, the place in the line, the choices by number, and a line that works.
func (v *voice) question() {
	q := v.a.Ask
	text := v.askedBack(*q)
	if text == "" {
		text = quoted(q.Text)
	}
	v.p.add(para{text: upper(text), ink: bold, own: true})
	if q.At != nil && strings.TrimSpace(v.a.Said) != "" {
		v.p.add(place{said: v.a.Said, at: *q.At})
	}
	for i, c := range q.Choices {
		text := quoted(c)
		if q.Key == "at hand" { // many forms at once: in words they are read at a glance
			text = upper(strings.ReplaceAll(v.offeredAloud(partsOf(c)), " at hand", ""))
		}
		v.p.add(para{lead: "  " + strconv.Itoa(i+1) + ". ", text: text})
	}
	switch {
	case q.Key == "offered" && len(q.Choices) == 1:
		v.p.hear(sentence(v.offeredAloud(q.Choices[0])))
		v.p.hear("Say yes, or say it another way.")
	case q.Key == "at hand" && len(q.Choices) > 0:
		v.p.hear(sentence(v.atHandAloud(q.Choices)))
	case len(q.Choices) > 1:
		v.p.hear(sentence("say " + v.choicesAloud(q.Choices)))
	}
	if q.Example != "" {
		v.p.add(para{lead: "For example: ", text: quoted(q.Example)})
	}
}

// offeredAloud says what a line may mean that was not understood: "six rails and a wall of forty inches".
func (v *voice) offeredAloud(forms string) string {
	var list []string
	for _, form := range strings.Split(forms, "; ") {
		verb := ""
		for _, lead := range []string{"check ", "what if ", "why not "} {
			if rest, ok := strings.CutPrefix(form, lead); ok {
				verb, form = lead, rest
			}
		}
		if read(form).op == "" {
			list = append(list, verb+quoted(form))
			continue
		}
		var told []string
		for _, s := range strings.Split(form, ", ") {
			told = append(told, v.phrase(s))
		}
		list = append(list, verb+and(told))
	}
	return and(list)
}

// choicesAloud says the choices by number: "one for four inches, or two for forty eight inches".
func (v *voice) choicesAloud(choices []string) string {
	var list []string
	for i, c := range choices[:min(3, len(choices))] {
		if form, ok := strings.CutPrefix(c, "forget "); ok {
			list = append(list, count(i+1)+" to drop "+v.the(read(form).name))
			continue
		}
		list = append(list, count(i+1)+" for "+v.offeredAloud(c))
	}
	return strings.Join(list, "; or ")
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
	room := o.width() - 3
	before := endingOf([]rune(quoted(string(runes[max(0, at-window):at]))), room*2/3)
	after := beginningOf([]rune(quoted(string(runes[at:min(len(runes), at+window)]))), room-cells(string(before)))
	text := string(before) + string(after)
	if o.ASCII {
		text = strings.Map(inASCII, text)
	}
	caret := strings.Repeat(" ", cells(string(before))) + "^"
	if o.ASCII {
		caret = strings.Repeat(" ", len(before)) + "^"
	}
	return []string{"  " + text, "  " + inked(caret, bad, o)}
}

// window is how much of a long line is looked at on either side of the place, in runes: more than any width shows.
const window = 400

// endingOf keeps the last whole words of a text that fit into a width, behind dots where some are left out.
func endingOf(text []rune, width int) []rune {
	kept := ending(text, width)
	if len(kept) == len(text) {
		return text
	}
	kept = ending(text, width-2)
	if i := slices.Index(kept, ' '); i >= 0 && i+1 < len(kept) {
		kept = kept[i+1:]
	}
	return append([]rune("… "), kept...)
}

// beginningOf keeps the first whole words of a text that fit into a width, before dots where some are left out.
func beginningOf(text []rune, width int) []rune {
	kept := beginning(text, width)
	if len(kept) == len(text) {
		return text
	}
	kept = beginning(text, width-2)
	for i := len(kept) - 1; i > 0; i-- {
		if kept[i] == ' ' {
			kept = kept[:i]
			break
		}
	}
	return append(slices.Clone(kept), []rune(" …")...)
}

// ending keeps as much of the end of a text as fits into a width.
func ending(text []rune, width int) []rune {
	i := len(text)
	for n := 0; i > 0 && n+cellsOf(text[i-1]) <= width; i-- {
		n += cellsOf(text[i-1])
	}
	return text[i:]
}

// beginning keeps as much of the beginning of a text as fits into a width.
func beginning(text []rune, width int) []rune {
	i := 0
	for n := 0; i < len(text) && n+cellsOf(text[i]) <= width; i++ {
		n += cellsOf(text[i])
	}
	return text[:i]
}

// inASCII keeps one sign for one, so that a caret below still points at its place.
func inASCII(r rune) rune {
	switch {
	case r == '×':
		return 'x'
	case r == '…':
		return '.'
	case r == '−' || r == '–' || r == '—':
		return '-'
	case r == '″' || r == '“' || r == '”':
		return '"'
	case r == '′' || r == '‘' || r == '’':
		return '\''
	case r > 0x7e:
		return '?'
	}
	return r
}
