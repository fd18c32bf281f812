package grammar

// joinedNumbers takes the dashes out of numbers that are written as one word, and gives an inch its article: "two-and-a-half-inch
// gaps", "inch-and-a-half gaps".
func joinedNumbers(in []atom) []atom {
	var out []atom
	for i, a := range in {
		if a.text == "-" && a.kind == aSign && a.glued && i > 0 && i+1 < len(in) && (in[i-1].text == "and" || in[i+1].text == "and" || in[i-1].text == "a" && i > 1 && in[i-2].text == "and" || out != nil && i > 1 && in[i-2].text == "-" && in[i-1].kind == aWord && in[i+1].kind == aWord) {
			if out == nil {
				out = append(make([]atom, 0, len(in)), in[:i]...)
			}
			continue
		}
		if out != nil {
			if in[i-1].text == "-" {
				a.glued = false
			}
			out = append(out, a)
		}
	}
	if out == nil {
		out = in
	}
	for i := range out {
		if !oneOfUnit(out, i) {
			continue
		}
		one := out[i]
		one.text, one.kind = "an", aWord
		return append(append(append([]atom{}, out[:i]...), one), out[i:]...)
	}
	return out
}

// oneOfUnit reports whether a unit and a share of it begin at an atom without a number: "inch and a half".
func oneOfUnit(in []atom, i int) bool {
	if in[i].text != "inch" && in[i].text != "foot" || i+3 >= len(in) || in[i+1].text != "and" || in[i+2].text != "a" {
		return false
	}
	switch in[i+3].text {
	case "half", "quarter", "third":
	default:
		return false
	}
	return i == 0 || in[i-1].text == "and" || in[i-1].kind == aWord && !vocab().articles[in[i-1].text] && units[in[i-1].text] == 0 && !words().numberish(in[i-1].text) && in[i-1].text != "per"
}

// likeTheBoards takes "as the boards are from each other" for "as the gap", and what is as far off the floor for its gap.
func likeTheBoards(in []atom) []atom {
	for i := 2; i+3 < len(in); i++ {
		if in[i].text != "as" || !vocab().articles[in[i+1].text] || !isRail(in[i+2].text) || in[i+3].text != "are" && in[i+3].text != "is" && in[i+3].text != "sit" && in[i+3].text != "stand" {
			continue
		}
		n := apartWords(in[i+4:])
		far := farOffFloor(in[:i])
		if n == 0 || far < 0 {
			continue
		}
		out := append([]atom{}, in[:far]...)
		for _, w := range []string{"gap", "the", "same", "as", "the", "gap"} {
			a := in[i]
			a.text, a.kind = w, aWord
			out = append(out, a)
		}
		return append(out, in[i+4+n:]...)
	}
	return in
}

// farOffFloor finds where "sat as far off the floor" stands at the end of a stretch: -1 where it does not.
func farOffFloor(in []atom) int {
	n := len(in)
	if n < 4 || !isFloor(in[n-1].text) {
		return -1
	}
	j := n - 2
	if vocab().articles[in[j].text] {
		j--
	}
	switch in[j].text {
	case "off", "from", "above", "over":
	default:
		return -1
	}
	if j < 2 || in[j-1].text != "far" && in[j-1].text != "high" || in[j-2].text != "as" {
		return -1
	}
	j -= 2
	for j > 1 && in[j-1].kind == aWord && (restsThere[in[j-1].text] || in[j-1].text == "just" || in[j-1].text == "exactly") {
		j--
	}
	return j
}

var restsThere = wordSet("sat sits sit is be was were stands stood stand comes came hangs hung starts started ends landed lands")

// apartWords reports how many words at the beginning of a stretch say "apart": 0 where they do not.
func apartWords(in []atom) int {
	for _, t := range [][]string{{"from", "each", "other"}, {"from", "one", "another"}, {"apart"}, {"spaced"}, {"from", "the", "next"}} {
		same := len(in) >= len(t)
		for k := 0; same && k < len(t); k++ {
			same = in[k].text == t[k]
		}
		if same {
			return len(t)
		}
	}
	return 0
}

// nearFloor takes boards that come no closer than a length to the floor for a limit of the gap under them: "what if no board came
// closer than two inches to the concrete".
func nearFloor(in []atom) []atom {
	for i := 2; i+3 < len(in); i++ {
		if in[i].text != "closer" && in[i].text != "nearer" && in[i].text != "lower" || in[i+1].text != "than" {
			continue
		}
		floor := i + 2
		for floor < len(in) && !isFloor(in[floor].text) && !breaksClause(in, floor) {
			floor++
		}
		if floor >= len(in) || !isFloor(in[floor].text) {
			continue
		}
		to := floor - 1
		if vocab().articles[in[to].text] {
			to--
		}
		from := deniedRail(in[:i])
		if from < 0 || to <= i+2 || in[to].text != "to" && in[to].text != "off" && in[to].text != "from" {
			continue
		}
		out := append([]atom{}, in[:from]...)
		for _, w := range []string{"bottom", "gap", "at", "least"} {
			a := in[i]
			a.text, a.kind = w, aWord
			out = append(out, a)
		}
		return append(append(out, in[i+2:to]...), in[floor+1:]...)
	}
	return in
}

// deniedRail finds where "no board came", or "the bottom board no", begins at the end of a stretch: -1 where neither does.
func deniedRail(in []atom) int {
	j, no := len(in)-1, false
	for ; j >= 0 && j > len(in)-8 && in[j].kind == aWord; j-- {
		switch w := in[j].text; {
		case w == "no" || w == "none":
			no = true
		case isRail(w):
			for j > 0 && (vocab().articles[in[j-1].text] || in[j-1].text == "bottom" || in[j-1].text == "lowest" || in[j-1].text == "any" || in[j-1].text == "single") {
				j--
			}
			if j > 0 && in[j-1].text == "no" {
				return j - 1
			}
			if no {
				return j
			}
			return -1
		}
	}
	return -1
}
