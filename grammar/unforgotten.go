package grammar

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
var beforeReminder = wordSet("i we you please and oh also but just")

// neverTold are words behind a reminder that ask or look back.
var neverTold = wordSet("when how what why who which where if whether was were about me us him her it them forgot forgetting")

// unforgotten leaves out the reminder before what is told with a figure: without one, "don't forget the gap" tells nothing.
func unforgotten(in []atom) []atom {
	for i := 0; i+2 < len(in); i++ {
		if !reminderStarts[in[i].text] {
			continue
		}
		for _, lead := range reminders {
			if !wordsAt(in, i, lead) {
				continue
			}
			from, to := i, i+len(lead)
			for from > 0 && beforeReminder[in[from-1].text] {
				if w := in[from-1].text; lead[0] == "remember" && (w == "i" || w == "we" || w == "you") {
					return in // it is told, and reminds of nothing
				}
				from--
			}
			if whatever := textOf(in[:from]); whatever == "whatever you do" || whatever == "whatever you do ," || whatever == "whatever happens ," {
				from = 0
			}
			if !clauseBeginsAt(in, from) {
				return in
			}
			for to < len(in) && (in[to].text == "," || in[to].text == ":" || in[to].text == "that" || in[to].text == "to") {
				to++
			}
			if to >= len(in) || neverTold[in[to].text] || !remindsOfFigure(in[to:]) {
				return in
			}
			rest := in[to:]
			if k, ok := topicThenIt(rest); ok {
				rest = append(append([]atom{}, rest[:k]...), rest[k+2:]...)
			}
			return append(append([]atom{}, in[:from]...), rest...)
		}
	}
	return in
}

// remindsOfFigure reports whether a sentence that begins here tells a figure, and asks nothing.
func remindsOfFigure(in []atom) bool {
	figure := false
	for i := 0; i < len(in) && !(endsSentence(in, i) && in[i].text != "?"); i++ {
		if in[i].text == "?" {
			return false
		}
		figure = figure || numeric(in[i]) || units[in[i].text] > 0 || tens[in[i].text] > 0 || denominators[in[i].text] > 0
	}
	return figure
}

// topicThenIt finds a comma behind a topic that an "it" takes up: "the kerf, it's an eighth".
func topicThenIt(in []atom) (int, bool) {
	for k := 1; k+2 < len(in) && k < 5; k++ {
		if in[k].text == "," && (in[k+1].text == "it" || in[k+1].text == "they" || in[k+1].text == "that") && (in[k+2].text == "is" || in[k+2].text == "'s" || in[k+2].text == "are") {
			return k, true
		}
	}
	return 0, false
}
