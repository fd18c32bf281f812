package grammar

// soThatIs reads "my spacer block is two and a quarter thick so that's the gap" as "the gap two and a quarter": the figure of a thing that
// is no part of the wall is handed on to one that is.
func soThatIs(in []atom) []atom {
	for s := 2; s+3 < len(in); s++ {
		if in[s].text != "so" && in[s].text != "," || in[s+1].text != "that" || in[s+2].text != "is" && in[s+2].text != "'s" {
			continue
		}
		name := s + 3
		if in[s].text == "," && in[name].text != "what" {
			continue
		}
		if standAt(in, name, "what", "goes") || standAt(in, name, "what", "belongs") || standAt(in, name, "what", "fits") {
			name += 2 // "that's what goes between the rails"
		}
		for name < len(in) && (vocab().articles[in[name].text] || in[name].text == "what" || in[name].text == "i" || in[name].text == "we" || in[name].text == "want" || in[name].text == "for") {
			name++
		}
		if name >= len(in) || !namesPart(in, name) {
			return in
		}
		end := sentenceEnd(in, name)
		from, to := handedFigure(in[:s])
		if from == to {
			return in
		}
		start := sentenceStart(in, s)
		out := append([]atom{}, in[:start]...)
		last := end
		for last > name && in[last-1].kind == aSign {
			last--
		}
		out = append(append(out, in[name:last]...), in[from:to]...)
		return append(out, in[last:]...)
	}
	return in
}

// sentenceStart returns the atom at which the sentence begins that holds an atom.
func sentenceStart(in []atom, at int) int {
	for at > 0 {
		if w := in[at-1].text; breaksClause(in, at-1) && (w == "." || w == ";" || w == "?" || w == "!") {
			return at
		}
		at--
	}
	return 0
}

// handedFigure finds the only figure of the sentence that ends a stretch, where its subject is no part of the wall.
func handedFigure(in []atom) (from, to int) {
	start := sentenceStart(in, len(in))
	r := reader{in}
	for i := start; i < len(in); i++ {
		if _, next, ok := r.length(i); ok && next > i && in[i].text != "a" {
			if to > 0 {
				return 0, 0
			}
			from, to = i, next
			i = next - 1
			continue
		}
		if viewed[in[i].text] || turning[in[i].text] && to == 0 {
			return 0, 0 // "he says three inches, so that's the gap"
		}
		if to == 0 && (namesPart(in, i) || in[i].text == "not" || in[i].text == "if") {
			return 0, 0
		}
		if to > 0 && in[i].kind == aWord && !besideFigure[in[i].text] {
			return 0, 0
		}
	}
	return from, to
}

var besideFigure = wordSet("thick wide high tall long deep across and exactly even now")

// heldOut reports whether a clause tells what must not pass: "a four inch ball must not pass".
func heldOut(part []atom) bool {
	w := wordsOf(part)
	at := -1
	for i, v := range w {
		if v == "ball" || v == "sphere" || v == "cylinder" || v == "globe" {
			at = i
		}
	}
	if at < 1 || at+2 >= len(w) {
		return false
	}
	denied := false
	for _, v := range w[at+1:] {
		switch v {
		case "not", "never":
			denied = true
		case "must", "can", "may", "should", "shall", "could", "is", "to", "be", "able", "allowed", "pass", "fit", "go", "get", "slip", "squeeze", "roll", "through", "thru", "between", "in", "them", "it", "rails", "boards":
		default:
			return false
		}
	}
	for _, v := range w[:at] {
		if namesPart([]atom{{text: v, kind: aWord}}, 0) {
			return false
		}
	}
	return denied
}

// mustClear reads "the wall must clear 40 inches" as a bound: at least.
func mustClear(in []atom) []atom {
	for i := 1; i+1 < len(in); i++ {
		if in[i].text != "clear" || !(in[i+1].kind == aDigits || in[i+1].kind == aVulgar || units[in[i+1].text] > 0 || tens[in[i+1].text] > 0) || i+1 < len(in) && in[i+1].text == "one" {
			continue
		}
		w := in[i-1].text
		if w != "must" && w != "should" && w != "shall" && w != "to" {
			continue
		}
		at, least := in[i], in[i]
		at.text, least.text = "at", "least"
		return append(append(append([]atom{}, in[:i]...), at, least), in[i+1:]...)
	}
	return in
}

// bounds are words that a figure is not to pass.
var bounds = wordSet("above over past beyond below under")

// onBlocks reads "the lowest rail sits on two inch blocks" and "start the first rail two inches up" as so far "off the floor".
func onBlocks(in []atom) []atom {
	for i := 0; i+3 < len(in); i++ {
		if !lowest[in[i].text] || !namesPart(in, i) && !namesPart(in, i+1) {
			continue
		}
		starts := i > 1 && (in[i-2].text == "start" || in[i-2].text == "begin" || in[i-2].text == "hang")
		on := -1
		for j := i + 1; j < len(in) && j < i+9 && in[j].kind == aWord && on < 0; j++ {
			starts = starts || in[j].text == "starts" || in[j].text == "begins" || in[j].text == "hangs"
			if in[j].text == "on" || in[j].text == "upon" {
				on = j
			}
			if units[in[j].text] > 0 {
				break
			}
		}
		r := reader{in}
		for j := i + 2; j < len(in) && j < i+9; j++ {
			_, next, ok := r.length(j)
			if !ok || next <= j {
				continue
			}
			ends := next+1 >= len(in) || in[next+1].kind == aSign || joints[in[next+1].text] || causes[in[next+1].text]
			if next >= len(in) || !ends || !(on >= 0 && on < j && blocks[in[next].text] || starts && in[next].text == "up") {
				break
			}
			off, floor := in[next], in[next]
			off.text, floor.text = "off", "floor"
			out := append([]atom{}, in[:j]...)
			if on >= 0 && on < j {
				out = append(append([]atom{}, in[:on]...), in[on+1:j]...)
			}
			out = append(append(out, in[j:next]...), off, floor)
			return append(out, in[next+1:]...)
		}
	}
	return in
}

var blocks = wordSet("blocks block blocking shims shim bricks brick spacers spacer offcuts pads feet pieces")

// inTheRange reads "somewhere in the forty to forty-four range" as "from forty to forty-four".
func inTheRange(in []atom) []atom {
	for i := 0; i+4 < len(in); i++ {
		if in[i].text != "in" || in[i+1].text != "the" {
			continue
		}
		r := reader{in}
		_, to, ok := r.length(i + 2)
		if !ok || to+1 >= len(in) || in[to].text != "to" && in[to].text != "-" {
			continue
		}
		_, end, ok := r.length(to + 1)
		if !ok || end >= len(in) || in[end].text != "range" {
			continue
		}
		from := i
		if from > 0 && (in[from-1].text == "somewhere" || in[from-1].text == "someplace" || in[from-1].text == "anywhere" || in[from-1].text == "something") {
			from--
		}
		lead := in[i]
		lead.text = "from"
		out := append(append([]atom{}, in[:from]...), lead)
		return append(append(out, in[i+2:end]...), in[end+1:]...)
	}
	return in
}
