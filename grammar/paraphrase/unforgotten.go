package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// What is not to be forgotten is told: "don't forget the gap is two and a quarter", "whatever you do, don't forget the doorway's 32",
// "remember to add two stiffeners".

// reminders are words that lead to what is told, longest first.
var reminders = [][]string{
	{"do", "not", "you", "forget"}, {"do", "not", "forget"}, {"must", "not", "forget"}, {"should", "not", "forget"}, {"can", "not", "forget"}, {"cannot", "forget"}, {"never", "forget"}, {"not", "forget"}, {"do", "not", "overlook"},
	{"do", "not", "let", "me", "forget"}, {"let", "us", "not", "forget"}, {"bear", "in", "mind"}, {"keep", "in", "mind"}, {"remember"},
}

// reminderStarts are their first words.
var reminderStarts = func() map[string]bool {
	out := map[string]bool{}
	for _, lead := range reminders {
		out[lead[0]] = true
	}
	return out
}()

// beforeReminder may open a clause before a reminder.
var beforeReminder = scan.WordSet("i we you please and oh also but just")

// neverTold are words behind a reminder that ask or look back.
var neverTold = scan.WordSet("when how what why who which where if whether was were about me us him her it them forgot forgetting")

// unforgotten leaves out the reminder before what is told with a figure: without one, "don't forget the gap" tells nothing.
func unforgotten(in []scan.Atom) []scan.Atom {
	for i := 0; i+2 < len(in); i++ {
		if !reminderStarts[in[i].Text] {
			continue
		}
		for _, lead := range reminders {
			if !WordsAt(in, i, lead) {
				continue
			}
			from, to := i, i+len(lead)
			for from > 0 && beforeReminder[in[from-1].Text] {
				if w := in[from-1].Text; lead[0] == "remember" && (w == "i" || w == "we" || w == "you") {
					return in // it is told, and reminds of nothing
				}
				from--
			}
			if whatever := scan.Text(in[:from]); whatever == "whatever you do" || whatever == "whatever you do ," || whatever == "whatever happens ," {
				from = 0
			}
			if !chunk.ClauseBeginsAt(in, from) {
				return in
			}
			for to < len(in) && (in[to].Text == "," || in[to].Text == ":" || in[to].Text == "that" || in[to].Text == "to") {
				to++
			}
			if to >= len(in) || neverTold[in[to].Text] || !remindsOfFigure(in[to:]) {
				return in
			}
			rest := in[to:]
			if k, ok := topicThenIt(rest); ok {
				rest = append(append([]scan.Atom{}, rest[:k]...), rest[k+2:]...)
			}
			return append(append([]scan.Atom{}, in[:from]...), rest...)
		}
	}
	return in
}

// remindsOfFigure reports whether a sentence that begins here tells a figure, and asks nothing.
func remindsOfFigure(in []scan.Atom) bool {
	figure := false
	for i := 0; i < len(in) && !(chunk.EndsSentence(in, i) && in[i].Text != "?"); i++ {
		if in[i].Text == "?" {
			return false
		}
		figure = figure || chunk.Numeric(in[i]) || scan.Ones[in[i].Text] > 0 || measure.Tens[in[i].Text] > 0 || measure.Denominators[in[i].Text] > 0
	}
	return figure
}

// topicThenIt finds a comma behind a topic that an "it" takes up: "the kerf, it's an eighth".
func topicThenIt(in []scan.Atom) (int, bool) {
	for k := 1; k+2 < len(in) && k < 5; k++ {
		if in[k].Text == "," && (in[k+1].Text == "it" || in[k+1].Text == "they" || in[k+1].Text == "that") && (in[k+2].Text == "is" || in[k+2].Text == "'s" || in[k+2].Text == "are") {
			return k, true
		}
	}
	return 0, false
}
