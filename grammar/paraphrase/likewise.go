package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// joinedNumbers takes the dashes out of numbers that are written as one word, and gives an inch its article: "two-and-a-half-inch
// gaps", "inch-and-a-half gaps".
func joinedNumbers(in []scan.Atom) []scan.Atom {
	var out []scan.Atom
	for i, a := range in {
		if a.Text == "-" && a.Kind == scan.Sign && a.Glued && i > 0 && i+1 < len(in) && (in[i-1].Text == "and" || in[i+1].Text == "and" || in[i-1].Text == "a" && i > 1 && in[i-2].Text == "and" || out != nil && i > 1 && in[i-2].Text == "-" && in[i-1].Kind == scan.Word && in[i+1].Kind == scan.Word) {
			if out == nil {
				out = append(make([]scan.Atom, 0, len(in)), in[:i]...)
			}
			continue
		}
		if out != nil {
			if in[i-1].Text == "-" {
				a.Glued = false
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
		one.Text, one.Kind = "an", scan.Word
		return append(append(append([]scan.Atom{}, out[:i]...), one), out[i:]...)
	}
	return out
}

// oneOfUnit reports whether a unit and a share of it begin at an atom without a number: "inch and a half".
func oneOfUnit(in []scan.Atom, i int) bool {
	if in[i].Text != "inch" && in[i].Text != "foot" || i+3 >= len(in) || in[i+1].Text != "and" || in[i+2].Text != "a" {
		return false
	}
	switch in[i+3].Text {
	case "half", "quarter", "third":
	default:
		return false
	}
	return i == 0 || in[i-1].Text == "and" || in[i-1].Kind == scan.Word && !lexicon.Vocab().Articles[in[i-1].Text] && scan.Ones[in[i-1].Text] == 0 && !lex.Words().Numberish(in[i-1].Text) && in[i-1].Text != "per"
}

// likeTheBoards takes "as the boards are from each other" for "as the gap", and what is as far off the floor for its gap.
func likeTheBoards(in []scan.Atom) []scan.Atom {
	for i := 2; i+3 < len(in); i++ {
		if in[i].Text != "as" || !lexicon.Vocab().Articles[in[i+1].Text] || !chunk.IsRail(in[i+2].Text) || in[i+3].Text != "are" && in[i+3].Text != "is" && in[i+3].Text != "sit" && in[i+3].Text != "stand" {
			continue
		}
		n := apartWords(in[i+4:])
		far := farOffFloor(in[:i])
		if n == 0 || far < 0 {
			continue
		}
		out := append([]scan.Atom{}, in[:far]...)
		for _, w := range []string{"gap", "the", "same", "as", "the", "gap"} {
			a := in[i]
			a.Text, a.Kind = w, scan.Word
			out = append(out, a)
		}
		return append(out, in[i+4+n:]...)
	}
	return in
}

// farOffFloor finds where "sat as far off the floor" stands at the end of a stretch: -1 where it does not.
func farOffFloor(in []scan.Atom) int {
	n := len(in)
	if n < 4 || !chunk.IsFloor(in[n-1].Text) {
		return -1
	}
	j := n - 2
	if lexicon.Vocab().Articles[in[j].Text] {
		j--
	}
	switch in[j].Text {
	case "off", "from", "above", "over":
	default:
		return -1
	}
	if j < 2 || in[j-1].Text != "far" && in[j-1].Text != "high" || in[j-2].Text != "as" {
		return -1
	}
	j -= 2
	for j > 1 && in[j-1].Kind == scan.Word && (restsThere[in[j-1].Text] || in[j-1].Text == "just" || in[j-1].Text == "exactly") {
		j--
	}
	return j
}

var restsThere = scan.WordSet("sat sits sit is be was were stands stood stand comes came hangs hung starts started ends landed lands")

// apartWords reports how many words at the beginning of a stretch say "apart": 0 where they do not.
func apartWords(in []scan.Atom) int {
	for _, t := range [][]string{{"from", "each", "other"}, {"from", "one", "another"}, {"apart"}, {"spaced"}, {"from", "the", "next"}} {
		same := len(in) >= len(t)
		for k := 0; same && k < len(t); k++ {
			same = in[k].Text == t[k]
		}
		if same {
			return len(t)
		}
	}
	return 0
}

// nearFloor takes boards that come no closer than a length to the floor for a limit of the gap under them: "what if no board came
// closer than two inches to the concrete".
func nearFloor(in []scan.Atom) []scan.Atom {
	for i := 2; i+3 < len(in); i++ {
		if in[i].Text != "closer" && in[i].Text != "nearer" && in[i].Text != "lower" || in[i+1].Text != "than" {
			continue
		}
		floor := i + 2
		for floor < len(in) && !chunk.IsFloor(in[floor].Text) && !chunk.BreaksClause(in, floor) {
			floor++
		}
		if floor >= len(in) || !chunk.IsFloor(in[floor].Text) {
			continue
		}
		to := floor - 1
		if lexicon.Vocab().Articles[in[to].Text] {
			to--
		}
		from := deniedRail(in[:i])
		if from < 0 || to <= i+2 || in[to].Text != "to" && in[to].Text != "off" && in[to].Text != "from" {
			continue
		}
		out := append([]scan.Atom{}, in[:from]...)
		for _, w := range []string{"bottom", "gap", "at", "least"} {
			a := in[i]
			a.Text, a.Kind = w, scan.Word
			out = append(out, a)
		}
		return append(append(out, in[i+2:to]...), in[floor+1:]...)
	}
	return in
}

// deniedRail finds where "no board came", or "the bottom board no", begins at the end of a stretch: -1 where neither does.
func deniedRail(in []scan.Atom) int {
	j, no := len(in)-1, false
	for ; j >= 0 && j > len(in)-8 && in[j].Kind == scan.Word; j-- {
		switch w := in[j].Text; {
		case w == "no" || w == "none":
			no = true
		case chunk.IsRail(w):
			for j > 0 && (lexicon.Vocab().Articles[in[j-1].Text] || in[j-1].Text == "bottom" || in[j-1].Text == "lowest" || in[j-1].Text == "any" || in[j-1].Text == "single") {
				j--
			}
			if j > 0 && in[j-1].Text == "no" {
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
