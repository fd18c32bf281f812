// Package explain says an answer in words: the text that a person reads, the few sentences that are said aloud, the
// tables, the questions asked back, and the same tables as CSV.
//
// It computes nothing. Every figure that it shows stands in the solver.Answer: in its layout, its lines of work, its
// facts; here they are only rounded to the tape for reading (explain/figure). It knows the words of the trade and how
// wide a terminal is. It knows no rule of a wall, reads no words, and draws no pictures (explain/draw).
package explain

import (
	"slices"
	"strings"

	"saywright/explain/figure"
	"saywright/solver"
)

// Options is how a text is laid out. Lengths are in millimeters where the answer says so.
type Options struct {
	Width int  // columns, 40 to 200; 0 is 80, narrower is laid out as 40, wider as 200
	Color bool // ANSI color on verdicts and headings; never the only carrier of anything
	// Before holds what the conversation was told already: defaults and cautions, as they were worded. They are not said
	// again in the text, unless they are asked for; what is said is added. nil: everything is said.
	Before map[string]bool
	ASCII  bool // for terminals that are not UTF-8: × is x, − is -
}

func (o Options) width() int {
	switch {
	case o.Width <= 0:
		return 80
	case o.Width < 40:
		return 40
	case o.Width > 200:
		return 200
	}
	return o.Width
}

// Say fills in the words of an answer: Text, Spoken, every line of work, the question asked back, the cautions and the
// steps. Text is laid out by o. What was filled in before is written anew.
func Say(a *solver.Answer, o Options) {
	own(a)
	v := voiceOf(a)
	v.before, v.narrow = o.Before, o.width() < narrowUnder
	v.fill()
	if a.To.As == "csv" {
		a.Text = CSV(a, a.To.Topic)
		if a.Text != "" {
			a.Spoken = "The table is ready to copy."
			return
		}
	}
	p := v.compose()
	a.Text = p.text(o)
	a.Spoken = p.spoken()
}

// Text renders an answer for a terminal. It leaves the answer as it is.
func Text(a *solver.Answer, o Options) string {
	copied := *a
	own(&copied)
	v := voiceOf(&copied)
	v.narrow = o.width() < narrowUnder
	v.fill()
	return v.compose().text(o)
}

// own gives an answer lists of its own where words are written into them: answers are kept and shared.
func own(a *solver.Answer) {
	a.Work = slices.Clone(a.Work)
	a.Cautions = slices.Clone(a.Cautions)
	a.Conflicts = slices.Clone(a.Conflicts)
	for i := range a.Conflicts {
		a.Conflicts[i].Work = slices.Clone(a.Conflicts[i].Work)
	}
	a.Check = slices.Clone(a.Check)
	for i := range a.Check {
		a.Check[i].Work = slices.Clone(a.Check[i].Work)
	}
	a.Marks = slices.Clone(a.Marks)
	a.Steps = slices.Clone(a.Steps)
	for i := range a.Steps {
		a.Steps[i].Work = slices.Clone(a.Steps[i].Work)
	}
	if a.Ask != nil {
		q := *a.Ask
		a.Ask = &q
	}
}

// voice words one answer.
type voice struct {
	a *solver.Answer
	figure.Style
	p      page
	before map[string]bool // see Options.Before
	narrow bool            // the terminal is narrow: cautions come up in brief, and are told in full when asked for
}

// narrowUnder is how many columns a text wants to be told in full width, a phone's or a split terminal's are fewer.
const narrowUnder = 60

// first reports whether something is to be said: not if the conversation was told it already.
func (v *voice) first(s string) bool {
	if v.before == nil || v.a.To.Full {
		return true
	}
	said := v.before[s]
	v.before[s] = true
	return !said
}

func voiceOf(a *solver.Answer) *voice { return &voice{a: a, Style: figure.Of(a)} }

// fill writes the words that stand inside the answer's own parts.
func (v *voice) fill() {
	v.saySums(v.a.Work)
	for i := range v.a.Conflicts {
		v.saySums(v.a.Conflicts[i].Work)
		v.sayClashes(v.a.Conflicts[i])
	}
	for i := range v.a.Check {
		v.saySums(v.a.Check[i].Work)
	}
	for i := range v.a.Cautions {
		v.fillCaution(&v.a.Cautions[i])
	}
	for i := range v.a.Steps {
		v.saySums(v.a.Steps[i].Work)
		v.fillStep(&v.a.Steps[i])
	}
	for i, p := range v.a.Marks {
		v.a.Marks[i].Spoken = aloud(heard(upper(quoted(p.Post))+": "+v.marksAloud(p), v.Style), 1)
	}
	if v.a.Ask != nil {
		v.fillQuestion(v.a.Ask)
	}
}

func (v *voice) saySums(list []solver.Work) {
	for i := range list {
		list[i].Says = v.says(list[i])
	}
}

// sayClashes words the last line of each way in which a conflict fails: which side is the whole, only the rules tell.
// The same line stands in the answer's own work.
func (v *voice) sayClashes(c solver.Conflict) {
	for _, t := range v.dispute(c).stories {
		if t.last.Note != "clash" {
			continue
		}
		says := v.dispute(c).crossing(t.last)
		if t.side >= 0 {
			says = written(v.bare(t.parts)+v.dispute(c).tail(t), v.Style)
		}
		for _, list := range [][]solver.Work{c.Work, v.a.Work} {
			for i := range list {
				if list[i].Note == t.last.Note && list[i].Of == t.last.Of && list[i].Expr.String() == t.last.Expr.String() {
					list[i].Says = says
				}
			}
		}
	}
}

// fact finds the first fact of a key.
func (v *voice) fact(key string) (solver.Fact, bool) {
	for _, f := range v.a.Facts {
		if f.Key == key {
			return f, true
		}
	}
	return solver.Fact{}, false
}

// facts lists all facts of a key.
func (v *voice) facts(key string) (list []solver.Fact) {
	for _, f := range v.a.Facts {
		if f.Key == key {
			list = append(list, f)
		}
	}
	return list
}

// sentence starts s with a capital letter and ends it with a period.
func sentence(s string) string {
	s = strings.TrimSpace(s)
	if s == "" {
		return ""
	}
	if last := s[len(s)-1]; strings.IndexByte(".?:", last) < 0 {
		s += "."
	}
	return upper(s)
}
