package paraphrase

import (
	"slices"

	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/grammar/ways"
)

// A figure may be told by the two sides that it is not to be on: "not under 2 or over 3", "no gap smaller than 2 or bigger than 3".

// lowSides and highSides are words that put a figure under or over a bound; those that compare stand before a "than".
var (
	lowSides  = scan.WordSet("under below beneath less lower smaller narrower shorter tighter closer fewer thinner nearer")
	highSides = scan.WordSet("over above past beyond exceeding exceed more higher greater bigger larger wider longer taller looser farther further thicker")
)

// sideAt reads a bound at i: whether it is one from below, and where its figure begins and ends.
func sideAt(in []scan.Atom, i int) (low bool, figure, end int, ok bool) {
	if i >= len(in) || !lowSides[in[i].Text] && !highSides[in[i].Text] {
		return false, 0, 0, false
	}
	low, figure = lowSides[in[i].Text], i+1
	if figure < len(in) && lex.Compares[in[i].Text] {
		if besideThan[in[figure].Text] {
			figure++
		}
		if figure >= len(in) || in[figure].Text != "than" {
			return false, 0, 0, false
		}
		figure++
	}
	r := measure.Reader{Atoms: in}
	_, end, ok = r.Length(figure)
	return low, figure, end, ok
}

// neitherSide reads "not under 2 or over 3" as "at least 2 and at most 3": what is denied of either is denied of both.
func neitherSide(in []scan.Atom) []scan.Atom {
	if !idiom.HoldsWord(in, "or", "nor") {
		return in
	}
	no := -1
	for i := range in {
		switch t := in[i].Text; {
		case chunk.EndsSentence(in, i):
			no = -1
		case t == "why" || t == "what" || t == "how" || t == "whether":
			return in
		case t == "not" || t == "never" || t == "no" || t == "neither" || t == "nor" && no < 0:
			no = i
		case no < 0 || !lowSides[t] && !highSides[t]:
		default:
			low, figure, end, ok := sideAt(in, i)
			if !ok || i-no > 11 || slices.ContainsFunc(in[no+1:i], func(a scan.Atom) bool { return saysNoSide[a.Text] }) {
				continue
			}
			next := end
			if next < len(in) && in[next].Text == "," {
				next++
			}
			if next >= len(in) || in[next].Text != "or" && in[next].Text != "nor" {
				continue
			}
			for next++; next < len(in) && ways.SideVerbs[in[next].Text]; next++ {
			}
			high, figure2, end2, ok := sideAt(in, next)
			if !ok || high == low || saidInFeet(in[figure:end]) && !saidInFeet(in[figure2:end2]) {
				continue // "never more than six feet nor less than five" is of feet, too
			}
			return neitherSide(eitherSide(in, no, i, low, [4]int{figure, end, figure2, end2})) // each of several denials
		}
	}
	return in
}

// eitherSide puts the two bounds of a range in the place of what was denied at no, and from the first side on.
func eitherSide(in []scan.Atom, no, from int, low bool, at [4]int) []scan.Atom {
	word := func(like scan.Atom, text string) scan.Atom {
		like.Text, like.Kind = text, scan.Word
		return like
	}
	sides := [2]string{"least", "most"}
	if !low {
		sides = [2]string{"most", "least"}
	}
	start := no
	if in[no].Text == "not" && no > 0 && helps[in[no-1].Text] {
		start--
	}
	out := append([]scan.Atom{}, in[:start]...)
	for _, a := range in[no+1 : from] {
		if !ways.SideVerbs[a.Text] && a.Text != "let" && a.Text != "a" && a.Text != "any" {
			out = append(out, a)
		}
	}
	out = append(out, word(in[from], "at"), word(in[from], sides[0]))
	out = append(out, in[at[0]:at[1]]...)
	out = append(out, word(in[at[2]-1], "and"), word(in[at[2]-1], "at"), word(in[at[2]-1], sides[1]))
	out = append(out, in[at[2]:at[3]]...)
	return append(out, in[at[3]:]...)
}

// helps are the verbs that stand before a "not".
var helps = scan.WordSet("do does did should must can could may might shall will would ought is are")

func saidInFeet(in []scan.Atom) bool {
	for _, a := range in {
		if measure.FootWords[a.Text] {
			return true
		}
	}
	return false
}

// neitherOf reads "neither the gap nor the bottom gap over three inches": what is denied of either bounds both.
func neitherOf(in []scan.Atom) []scan.Atom {
	if len(in) < 6 || in[0].Text != "neither" {
		return in
	}
	nor := slices.IndexFunc(in, func(a scan.Atom) bool { return a.Text == "nor" })
	for i := nor + 1; nor > 1 && i < len(in); i++ {
		low, figure, end, ok := sideAt(in, i)
		if !ok {
			continue
		}
		rest := in[end:]
		to := i
		for to > nor+1 && ways.SideVerbs[in[to-1].Text] {
			to--
		}
		if len(rest) > 1 && rest[0].Text != "," && rest[0].Text != "and" || to == nor+1 || slices.ContainsFunc(in[1:to], func(a scan.Atom) bool { return a.Kind != scan.Word || saysNoSide[a.Text] }) {
			return in
		}
		side := "most"
		if low {
			side = "least"
		}
		bound := append([]scan.Atom{chunk.Worded(in[i], "at"), chunk.Worded(in[i], side)}, in[figure:end]...)
		out := append(append([]scan.Atom{}, in[1:nor]...), bound...)
		out = append(append(out, chunk.Worded(in[nor], "and")), in[nor+1:to]...)
		return append(append(out, bound...), rest...)
	}
	return in
}

// saysNoSide are words between a denial and a side by which something else is denied: "I can't say the gap is under 2 or over 3".
var saysNoSide = scan.WordSet("that sure say said matter know think certain mind care remember believe claim mean tell told worry about if whether because it")
