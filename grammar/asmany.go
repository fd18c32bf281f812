package grammar

import "slices"

// "As many bays as added posts" is held together around the noun: it is set to "bays as many as added posts" before it is read.

// shares are words before "as many" that tell how many times as many there are.
var shares = wordSet("twice double thrice triple half")

// asManyAs sets "twice as many added posts as walk-throughs", "the same number of bays as there are posts" in the order of what is
// said of whom.
func asManyAs(in []atom) []atom {
	for i := 0; i+4 < len(in); i++ {
		noun := pastMany(in, i)
		if noun == 0 {
			continue
		}
		from := i
		switch {
		case i > 0 && (in[i-1].text == "the" || shares[in[i-1].text]):
			from = i - 1
		case i > 1 && in[i-1].text == "times":
			from = i - 2
		}
		as := noun
		for as < len(in) && as < noun+5 && in[as].kind == aWord && in[as].text != "as" {
			as++
		}
		if as == noun || as >= len(in) || in[as].text != "as" || !countable(in, noun) {
			continue
		}
		next := as + 1
		if next+1 < len(in) && (in[next].text == "there" || in[next].text == "we" || in[next].text == "i" || in[next].text == "you") && (in[next+1].text == "are" || in[next+1].text == "have" || in[next+1].text == "is") {
			next += 2
		}
		object := next
		for object < len(in) && vocab().articles[in[object].text] {
			object++
		}
		if object >= len(in) || !countable(in, object) {
			continue
		}
		many := slices.Clone(in[from:i])
		if len(many) > 0 && many[0].text == "the" {
			many = nil
		}
		for _, w := range []string{"as", "many"} {
			a := in[i]
			a.text = w
			many = append(many, a)
		}
		return slices.Concat(in[:from], in[noun:as], many, in[as:as+1], in[next:])
	}
	return in
}

// countable reports whether what is counted is named at an atom: posts, bays, boards, walk-throughs, stiffeners.
func countable(in []atom, i int) bool {
	rest := fold(in[i:])
	for _, f := range vocab().match(rest, 0) {
		if f.entry.kind != kPart {
			continue
		}
		switch f.entry.key {
		case "post", "added post", "end post", "bay", "rail", "opening", "stiffener":
			return true
		}
	}
	return false
}

// pastMany returns the atom after "as many" or "same number of" at an atom, 0 where neither stands there.
func pastMany(in []atom, i int) int {
	switch {
	case in[i].text == "as" && in[i+1].text == "many":
		return i + 2
	case in[i].text == "same" && (in[i+1].text == "number" || in[i+1].text == "count" || in[i+1].text == "amount") && in[i+2].text == "of":
		return i + 3
	}
	return 0
}

// ofMany reports whether a word of likeness counts: "as many as", "twice as many as".
func (k *clause) ofMany() bool {
	return slices.ContainsFunc(k.words, func(i int) bool {
		t := k.items[i]
		return (t.kind == kSame || t.kind == kFactor || t.kind == kTimes) && (endsIn(t.text, "many") || endsIn(t.text, "many as"))
	})
}
