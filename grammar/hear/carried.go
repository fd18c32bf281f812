package hear

import (
	"slices"
	"strings"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/solver/exact"
)

// A verb that adds or takes away is of all that is named behind it: "drop a rail and two stiffeners" takes two stiffeners away, "raise the wall
// two inches and the gap a quarter" adds to the gap. It was of the first alone, and the second was set to its figure.

// carried says the verb of a change once more before each further thing that is told in the same way, with no verb of its own.
func carried(in []lex.Token) []lex.Token {
	for i := 0; i+3 < len(in); i++ {
		if !changesAll(in, i) {
			continue
		}
		verb, counts := in[i], true
		n := counted(in, i+1)
		if n == 0 {
			counts, n = false, measured(in, i+1)
		}
		for j := i + 1 + n; n > 0; j++ {
			for ofEach(in, j) {
				j++
			}
			if j+1 >= len(in) || in[j].Kind != lexicon.And {
				break
			}
			if n = measured(in, j+1); counts {
				n = counted(in, j+1)
			} else if n > 0 && !byHowMuch(in[j+1:]) {
				n = 0
			}
			if n == 0 || !ofEach(in, j+1+n) && !endsThing(in, j+1+n) {
				break
			}
			again := verb
			again.At, again.Before = in[j+1].At, ""
			in = slices.Insert(slices.Clip(in), j+1, again)
			j += 1 + n
		}
	}
	return in
}

// changesAll reports whether token i is a verb that begins what is said and adds or takes away.
func changesAll(in []lex.Token, i int) bool {
	t := &in[i]
	if t.Kind == lexicon.Cmd {
		return t.Key() == "forget" && losesPart[t.Text]
	}
	return t.Kind == lexicon.Change && (t.Key() == "+=" || t.Key() == "-=") && !named(in, i)
}

// losesPart are the verbs of forgetting that take parts away where those are counted.
var losesPart = map[string]bool{"lose": true, "drop": true, "remove": true, "ditch": true, "take out": true, "take off": true, "take away": true, "leave out": true, "lose out": true}

// named reports whether what changes is named before token i: "rails up by two and stiffeners by one".
func named(in []lex.Token, i int) bool {
	return i > 0 && (in[i-1].Kind == lexicon.Part || in[i-1].Kind == lexicon.Num)
}

// counted is how many tokens at i tell how many of a part: "two rails", "a stiffener"; 0 where they do not.
func counted(in []lex.Token, i int) int {
	switch {
	case kindAt(in, i) == lexicon.Num && in[i].Amt.Unit == measure.Bare && i+1 < len(in) && partCounted(&in[i+1]):
		return 2
	case i < len(in) && partCounted(&in[i]) && oneOf[in[i].Before]:
		return 1
	}
	return 0
}

func partCounted(t *lex.Token) bool {
	return t.Kind == lexicon.Part && (countedParts[t.Key()] || t.Key() == "post" || t.Key() == "added post") || t.Kind == lexicon.Quest && t.Key() == "posts"
}

// oneOf are words that count one of a part.
var oneOf = scan.WordSet("a an another")

// measured is how many tokens at i tell what changes by how much: "the wall two inches"; 0 where they do not.
func measured(in []lex.Token, i int) int {
	if kindAt(in, i) == lexicon.Part && kindAt(in, i+1) == lexicon.Num {
		return 2
	}
	return 0
}

// ofEach reports whether token i tells where a part is counted: "per bay".
func ofEach(in []lex.Token, i int) bool {
	return kindAt(in, i) == lexicon.Bound || kindAt(in, i) == lexicon.Loc && (in[i].Text == "per bay" || strings.HasPrefix(in[i].Text, "in each") || strings.HasPrefix(in[i].Text, "in every"))
}

// byHowMuch reports whether a name and a figure tell by how much it changes rather than what it shall be: "the gap by two", "the gap a quarter".
func byHowMuch(in []lex.Token) bool {
	return in[1].Before == "by" || in[0].Before == "the" && in[1].Amt.Val.Less(exact.Int(1))
}

// endsThing reports whether what a verb is of ends before token i.
func endsThing(in []lex.Token, i int) bool {
	switch kindAt(in, i) {
	case 0, lexicon.Comma, lexicon.Stop, lexicon.And, lexicon.QMark:
		return true
	}
	return false
}
