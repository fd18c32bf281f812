package grammar

import "strings"

// Several things are taken back in one breath: "undo the last two things I said", "undo that twice", "take back my last three changes".
// How many must be said; "go back a few" is asked back.

// mostUndone is how many steps may be taken back in one breath.
const mostUndone = 5

// readSeveralUndone reads an order to take back several things, with what is said behind it.
func readSeveralUndone(line string, atoms []atom, c Context) (Reading, bool) {
	led, _ := pastLead(atoms)
	for len(led) > 0 && led[0].text == "please" {
		led = led[1:]
	}
	n, to := severalUndone(led)
	if n < 2 || n > mostUndone {
		return Reading{}, false
	}
	at, end := led[0].at, led[to-1].end
	var r Reading
	for range n {
		r.Acts = append(r.Acts, Act{Kind: Undo, At: at, End: end})
	}
	rest := pastTail(led[to:])
	for len(rest) > 0 && (rest[0].kind == aSign || joints[rest[0].text] || rest[0].text == "please") {
		rest = rest[1:]
	}
	if len(rest) == 0 {
		return r, true
	}
	if !breaksClause(led, to) && !joints[led[to].text] {
		return Reading{}, false
	}
	more := readHeld(line, rest, c)
	if more.Ask != nil {
		return Reading{}, false
	}
	r.Acts, r.Taken = append(r.Acts, more.Acts...), more.Taken
	return r, true
}

// severalUndone is how many things an order takes back, and the atom behind it; 0 where it is none.
func severalUndone(led []atom) (n, to int) {
	w := reader{led}
	i := 0
	switch {
	case w.word(0) == "undo" || w.word(0) == "reverse":
		i = 1
	case undoes[w.word(0)] && (w.word(1) == "the" || w.word(1) == "my" || w.word(1) == "those"):
		i = 1
	case w.word(0) == "take" && w.word(1) == "back":
		i = 2
	default:
		return 0, 0
	}
	if p := w.word(i); (p == "that" || p == "it" || p == "") && i+1 < len(led) || p == "twice" {
		if p != "twice" {
			i++
		}
		if w.word(i) == "twice" {
			return 2, i + 1
		}
		if k := fewOf[w.word(i)]; k > 0 && w.word(i+1) == "times" {
			return k, i + 2
		}
		return 0, 0
	}
	for strings.Contains(" the my our those these ", " "+w.word(i)+" ") && w.word(i) != "" {
		i++
	}
	if w.word(i) != "last" && w.word(i) != "latest" {
		return 0, 0
	}
	if n = fewOf[w.word(i+1)]; n == 0 {
		return 0, 0
	}
	i += 2
	if undoneThings[w.word(i)] {
		i++
	} else if undoes[w.word(0)] {
		return 0, 0 // "drop the last two": two of what?
	}
	if w.word(i) == "that" {
		i++
	}
	if speakers[w.word(i)] {
		i++
		for undoneSaid[w.word(i)] && i < len(led) {
			i++
		}
	}
	if i < len(led) && led[i].kind != aSign && !joints[led[i].text] && led[i].text != "please" {
		return 0, 0
	}
	return n, i
}

var (
	fewOf        = map[string]int{"two": 2, "2": 2, "three": 3, "3": 3, "four": 4, "4": 4, "five": 5, "5": 5}
	undoes       = wordSet("scratch drop forget scrap cancel erase delete")
	undoneThings = wordSet("things changes entries lines steps ones bits edits statements numbers figures orders")
	undoneSaid   = wordSet("have just said told you made did gave entered typed changed wrote")
)
