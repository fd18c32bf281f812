package lex

import (
	"strings"

	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// theirTurn takes "are they" at the end of a question after a dimension for what was spoken of last: "two added posts, how tall
// are they".
func (l *lexing) theirTurn(next int) int {
	if _, ok := Dims[strings.TrimPrefix(l.Word(next-1), "how ")]; !ok || next < 2 || l.Word(next-2) != "how" || Helping[l.Word(next)] == "" {
		return next
	}
	switch l.Word(next + 1) {
	case "they", "those", "these":
	default:
		return next
	}
	end := next + 2
	for verbsOfStanding[l.Word(end)] {
		end++
	}
	if end < len(l.Atoms) && l.Kind(end) != scan.Sign && l.Word(end) != "and" {
		return next
	}
	l.add(lexicon.It, next, end)
	return end
}

var verbsOfStanding = scan.WordSet("be stand come end up get going to need have out")

// orderHas takes "why does the order have sixteens in it" for a question after the order: what is in it need not be read.
func orderHas(in []scan.Atom) []scan.Atom {
	r := measure.Reader{Atoms: in}
	for i := range in {
		if w := r.Word(i); w != "order" && w != "list" && w != "cart" && w != "takeoff" || !listsWhat[r.Word(i+1)] {
			continue
		}
		from := i
		for from > 0 && in[from-1].Text != "why" && in[from-1].Text != "come" {
			if !orderLeads[in[from-1].Text] {
				return in
			}
			from--
		}
		if from == 0 || in[from-1].Text == "come" && r.Word(from-2) != "how" {
			continue
		}
		end := i + 1
		for end < len(in) && in[end].Kind != scan.Sign {
			end++
		}
		out := append([]scan.Atom{}, in[:i+1]...)
		out[i].Text = "takeoff"
		return append(out, in[end:]...)
	}
	return in
}

var (
	listsWhat  = scan.WordSet("has have had include includes contain contains show shows say says list lists call calls")
	orderLeads = scan.WordSet("does did do would is the my our this that your lumber shopping material materials buying wood")
)

// amidBays takes a stiffener in the middle of each bay for one.
func (l *lexing) amidBays() {
	for i := 0; i+1 < len(l.tokens); i++ {
		t, next := &l.tokens[i], &l.tokens[i+1]
		if t.Kind != lexicon.Part || t.Key() != "stiffener" || t.Plural() || next.Kind != lexicon.Loc || next.Key() != "per bay" || !amid(next.Text) {
			continue
		}
		if i > 0 && !l.breaks(l.tokens[i-1]) && l.tokens[i-1].Kind != lexicon.And {
			continue
		}
		one := Token{Kind: lexicon.Num, Text: "one", Amt: &measure.Amount{Number: measure.WordInt(1)}, At: t.At, End: t.At, Before: t.Before}
		t.Before = ""
		l.tokens = append(l.tokens[:i:i], append([]Token{one}, l.tokens[i:]...)...)
		i++
	}
}

// amid reports whether words tell of a middle.
func amid(text string) bool {
	for _, w := range strings.Fields(text) {
		switch w {
		case "middle", "center", "centre", "halfway", "mid", "midway":
			return true
		}
	}
	return false
}
