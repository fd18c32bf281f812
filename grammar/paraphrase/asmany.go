package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// "As many bays as added posts" is held together around the noun: it is set to "bays as many as added posts" before it is read.

// shares are words before "as many" that tell how many times as many there are.
var shares = scan.WordSet("twice double thrice triple half")

// asManyAs sets "twice as many added posts as walk-throughs", "the same number of bays as there are posts" in the order of what is
// said of whom.
func asManyAs(in []scan.Atom) []scan.Atom {
	for i := 0; i+4 < len(in); i++ {
		noun := pastMany(in, i)
		if noun == 0 {
			continue
		}
		from := i
		switch {
		case i > 0 && (in[i-1].Text == "the" || shares[in[i-1].Text]):
			from = i - 1
		case i > 1 && in[i-1].Text == "times":
			from = i - 2
		}
		as := noun
		for as < len(in) && as < noun+5 && in[as].Kind == scan.Word && in[as].Text != "as" {
			as++
		}
		if as == noun || as >= len(in) || in[as].Text != "as" || !countable(in, noun) {
			continue
		}
		next := as + 1
		if next+1 < len(in) && (in[next].Text == "there" || in[next].Text == "we" || in[next].Text == "i" || in[next].Text == "you") && (in[next+1].Text == "are" || in[next+1].Text == "have" || in[next+1].Text == "is") {
			next += 2
		}
		object := next
		for object < len(in) && lexicon.Vocab().Articles[in[object].Text] {
			object++
		}
		if object >= len(in) || !countable(in, object) {
			continue
		}
		many := slices.Clone(in[from:i])
		if len(many) > 0 && many[0].Text == "the" {
			many = nil
		}
		for _, w := range []string{"as", "many"} {
			a := in[i]
			a.Text = w
			many = append(many, a)
		}
		return slices.Concat(in[:from], in[noun:as], many, in[as:as+1], in[next:])
	}
	return in
}

// countable reports whether what is counted is named at an atom: posts, bays, boards, walk-throughs, stiffeners.
func countable(in []scan.Atom, i int) bool {
	rest := chunk.Fold(in[i:])
	for _, f := range lexicon.Vocab().Match(rest, 0) {
		if f.Entry.Kind != lexicon.Part {
			continue
		}
		switch f.Entry.Key {
		case "post", "added post", "end post", "bay", "rail", "opening", "stiffener":
			return true
		}
	}
	return false
}

// pastMany returns the atom after "as many" or "same number of" at an atom, 0 where neither stands there.
func pastMany(in []scan.Atom, i int) int {
	switch {
	case in[i].Text == "as" && in[i+1].Text == "many":
		return i + 2
	case in[i].Text == "same" && (in[i+1].Text == "number" || in[i+1].Text == "count" || in[i+1].Text == "amount") && in[i+2].Text == "of":
		return i + 3
	}
	return 0
}
