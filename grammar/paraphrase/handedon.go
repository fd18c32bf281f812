package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// soThatIs reads "my spacer block is two and a quarter thick so that's the gap" as "the gap two and a quarter": the figure of a thing that
// is no part of the wall is handed on to one that is.
func soThatIs(in []scan.Atom) []scan.Atom {
	for s := 2; s+3 < len(in); s++ {
		if in[s].Text != "so" && in[s].Text != "," || in[s+1].Text != "that" || in[s+2].Text != "is" && in[s+2].Text != "'s" {
			continue
		}
		name := s + 3
		if in[s].Text == "," && in[name].Text != "what" {
			continue
		}
		if scan.StandAt(in, name, "what", "goes") || scan.StandAt(in, name, "what", "belongs") || scan.StandAt(in, name, "what", "fits") {
			name += 2 // "that's what goes between the rails"
		}
		for name < len(in) && (lexicon.Vocab().Articles[in[name].Text] || in[name].Text == "what" || in[name].Text == "i" || in[name].Text == "we" || in[name].Text == "want" || in[name].Text == "for") {
			name++
		}
		if name >= len(in) || !chunk.NamesPart(in, name) {
			return in
		}
		end := SentenceEnd(in, name)
		from, to := handedFigure(in[:s])
		if from == to {
			return in
		}
		start := sentenceStart(in, s)
		out := append([]scan.Atom{}, in[:start]...)
		last := end
		for last > name && in[last-1].Kind == scan.Sign {
			last--
		}
		out = append(append(out, in[name:last]...), in[from:to]...)
		return append(out, in[last:]...)
	}
	return in
}

// sentenceStart returns the atom at which the sentence begins that holds an atom.
func sentenceStart(in []scan.Atom, at int) int {
	for at > 0 {
		if w := in[at-1].Text; chunk.BreaksClause(in, at-1) && (w == "." || w == ";" || w == "?" || w == "!") {
			return at
		}
		at--
	}
	return 0
}

// handedFigure finds the only figure of the sentence that ends a stretch, where its subject is no part of the wall.
func handedFigure(in []scan.Atom) (from, to int) {
	start := sentenceStart(in, len(in))
	r := measure.Reader{Atoms: in}
	for i := start; i < len(in); i++ {
		if _, next, ok := r.Length(i); ok && next > i && in[i].Text != "a" {
			if to > 0 {
				return 0, 0
			}
			from, to = i, next
			i = next - 1
			continue
		}
		if idiom.Viewed[in[i].Text] || phrase.Turning[in[i].Text] && to == 0 {
			return 0, 0 // "he says three inches, so that's the gap"
		}
		if to == 0 && (chunk.NamesPart(in, i) || in[i].Text == "not" || in[i].Text == "if") {
			return 0, 0
		}
		if to > 0 && in[i].Kind == scan.Word && !besideFigure[in[i].Text] {
			return 0, 0
		}
	}
	return from, to
}

var besideFigure = scan.WordSet("thick wide high tall long deep across and exactly even now")

// HeldOut reports whether a clause tells what must not pass: "a four inch ball must not pass".
func HeldOut(part []scan.Atom) bool {
	w := lex.WordsOf(part)
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
		if chunk.NamesPart([]scan.Atom{{Text: v, Kind: scan.Word}}, 0) {
			return false
		}
	}
	return denied
}

// mustClear reads "the wall must clear 40 inches" as a bound: at least.
func mustClear(in []scan.Atom) []scan.Atom {
	for i := 1; i+1 < len(in); i++ {
		if in[i].Text != "clear" || !(in[i+1].Kind == scan.Digits || in[i+1].Kind == scan.Vulgar || scan.Ones[in[i+1].Text] > 0 || measure.Tens[in[i+1].Text] > 0) || i+1 < len(in) && in[i+1].Text == "one" {
			continue
		}
		w := in[i-1].Text
		if w != "must" && w != "should" && w != "shall" && w != "to" {
			continue
		}
		at, least := in[i], in[i]
		at.Text, least.Text = "at", "least"
		return append(append(append([]scan.Atom{}, in[:i]...), at, least), in[i+1:]...)
	}
	return in
}

// bounds are words that a figure is not to pass.
var bounds = scan.WordSet("above over past beyond below under")

// onBlocks reads "the lowest rail sits on two inch blocks" and "start the first rail two inches up" as so far "off the floor".
func onBlocks(in []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(in); i++ {
		if !lowest[in[i].Text] || !chunk.NamesPart(in, i) && !chunk.NamesPart(in, i+1) {
			continue
		}
		starts := i > 1 && (in[i-2].Text == "start" || in[i-2].Text == "begin" || in[i-2].Text == "hang")
		on := -1
		for j := i + 1; j < len(in) && j < i+9 && in[j].Kind == scan.Word && on < 0; j++ {
			starts = starts || in[j].Text == "starts" || in[j].Text == "begins" || in[j].Text == "hangs"
			if in[j].Text == "on" || in[j].Text == "upon" {
				on = j
			}
			if scan.Ones[in[j].Text] > 0 {
				break
			}
		}
		r := measure.Reader{Atoms: in}
		for j := i + 2; j < len(in) && j < i+9; j++ {
			_, next, ok := r.Length(j)
			if !ok || next <= j {
				continue
			}
			ends := next+1 >= len(in) || in[next+1].Kind == scan.Sign || chunk.Joints[in[next+1].Text] || Causes[in[next+1].Text]
			if next >= len(in) || !ends || !(on >= 0 && on < j && blocks[in[next].Text] || starts && in[next].Text == "up") {
				break
			}
			off, floor := in[next], in[next]
			off.Text, floor.Text = "off", "floor"
			out := append([]scan.Atom{}, in[:j]...)
			if on >= 0 && on < j {
				out = append(append([]scan.Atom{}, in[:on]...), in[on+1:j]...)
			}
			out = append(append(out, in[j:next]...), off, floor)
			return append(out, in[next+1:]...)
		}
	}
	return in
}

var blocks = scan.WordSet("blocks block blocking shims shim bricks brick spacers spacer offcuts pads feet pieces")

// inTheRange reads "somewhere in the forty to forty-four range" as "from forty to forty-four".
func inTheRange(in []scan.Atom) []scan.Atom {
	for i := 0; i+4 < len(in); i++ {
		if in[i].Text != "in" || in[i+1].Text != "the" {
			continue
		}
		r := measure.Reader{Atoms: in}
		_, to, ok := r.Length(i + 2)
		if !ok || to+1 >= len(in) || in[to].Text != "to" && in[to].Text != "-" {
			continue
		}
		_, end, ok := r.Length(to + 1)
		if !ok || end >= len(in) || in[end].Text != "range" {
			continue
		}
		from := i
		if from > 0 && (in[from-1].Text == "somewhere" || in[from-1].Text == "someplace" || in[from-1].Text == "anywhere" || in[from-1].Text == "something") {
			from--
		}
		lead := in[i]
		lead.Text = "from"
		out := append(append([]scan.Atom{}, in[:from]...), lead)
		return append(append(out, in[i+2:end]...), in[end+1:]...)
	}
	return in
}
