package contrast

import (
	"slices"

	"saywright/grammar/act"
	"saywright/grammar/aside"
	"saywright/grammar/chunk"
	"saywright/grammar/hear"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
	"saywright/grammar/spelling"
)

// Who tells what is wanted often tells beside it what was, what others have or what was nearly done: "last time it was six boards, now it's
// five", "next door they have three inch gaps, ours are two and a quarter", "I was going to say two, but make the gap 2-3/8". Only what
// is wanted stands. A clause is left out so where its own words tell that it is of another time or of others, and the clause beside it
// that it is of now and of us. What somebody claims, what was measured, bought or built is never left out. What is wanted may lean on what
// was told for the part, the unit and the words behind the figure. Common ways of speech, no source.

// Contrast is what is told beside what is wanted.
type Contrast struct {
	Told, Wanted []scan.Atom
}

// OnThisWall asks what is wanted of this wall, where only another is told of.
var OnThisWall = hear.OpenQuestion("How is it to be on this wall?", "bottom gap 2")

// ByTheHundred reports whether a price is told for a hundred.
func ByTheHundred(part []scan.Atom) bool {
	for i := 1; i < len(part); i++ {
		if part[i].Text == "hundred" && (part[i-1].Text == "a" || part[i-1].Text == "per") {
			return true
		}
	}
	return false
}

// NotWanted are acts that no clause of what is wanted comes to.
func NotWanted(a act.Act) bool {
	return a.Kind != act.State && a.Kind != act.Ask && a.Kind != act.WhatIf && a.Kind != act.WhyNot || len(a.Statements) > 0 && a.Statements[0].Name.Wall != ""
}

// PlainlyOnce reports whether a clause behind what is wanted can only tell what was: "…, the old one was only 26".
func PlainlyOnce(told []scan.Atom) bool {
	w := WordsOnly(told)
	return OthersHave(w) || slices.Contains(w, "old") || slices.Contains(w, "until") || slices.Contains(w, "before") || Intends(w) > 0
}

// MisspeltIn reports whether a word of what is told may be a misspelled one, so that it cannot be known whose word it is.
func MisspeltIn(told []scan.Atom) bool {
	return slices.ContainsFunc(told, func(a scan.Atom) bool {
		return a.Kind == scan.Word && len(a.Text) > 3 && !hear.DaysOfWeek[a.Text] && !spelling.English()[a.Text] && len(lexicon.Vocab().Classes[a.Text]) == 0 && !lex.Words().Known[a.Text]
	})
}

// OthersClaim reports whether a drawing is told of, which is to be checked whatever it had before.
func OthersClaim(told []scan.Atom) bool {
	return slices.ContainsFunc(told, func(a scan.Atom) bool { return chunk.IsClass(a.Text, "PAPER") || claimedOf[a.Text] })
}

// TurnedOut reports whether something was expected, and turned out: "I expected 71, it measures 70-3/4".
func TurnedOut(told, wanted []scan.Atom) bool {
	w := WordsOnly(aside.WithoutJoint(wanted))
	return Intends(WordsOnly(told)) > 0 && len(w) > 1 && w[0] == "it" && (w[1] == "measures" || w[1] == "measured" || w[1] == "came" || w[1] == "comes" || w[1] == "is")
}

// LeansOnTold reports whether what is wanted may speak of what was told: "yesterday it was six, that stands".
func LeansOnTold(part []scan.Atom) bool {
	for i, a := range part {
		if a.Text == "that" && i > 0 && (part[i-1].Text == "than" || part[i-1].Text == "under" || part[i-1].Text == "over") {
			continue
		}
		if i+1 < len(part) && (a.Text == "than" || idiom.MoreOrLess[a.Text]) && slices.ContainsFunc(part[i+1:], func(b scan.Atom) bool { return b.Text == "that" || b.Text == "theirs" }) {
			continue // "wider than that" leans on the figure alone
		}
		if !leaning[a.Text] || i == 0 && (a.Text == "what" || a.Text == "why") || i == 1 && a.Text == "if" && part[0].Text == "what" || i > 1 && (a.Text == "than" && part[i-2].Text == "no" || part[i-1].Text == "is" && a.Text == "what") {
			continue
		}
		if i > 0 && (part[i-1].Text == "no" || a.Text == "like" && part[i-1].Text == "would") || i > 0 && slices.ContainsFunc(part[max(i-3, 0):i], func(b scan.Atom) bool { return b.Text == "not" }) {
			continue // "no more than", "not a cent more"
		}
		return true
	}
	return false
}

// ContrastParts cuts a line at the signs that break it, and before the words that set a clause against the one before.
func ContrastParts(atoms []scan.Atom) (parts [][]scan.Atom) {
	from := 0
	for i := 1; i < len(atoms); i++ {
		w := atoms[i].Text
		next := measure.Reader{Atoms: atoms}.Word(i + 1)
		switch {
		case chunk.BreaksClause(atoms, i-1):
		case w == "but" || w == "yet" || w == "whereas" || w == "while" || w == "unlike":
		case w == "instead" && next == "of", w == "rather" && next == "than", w == "compared" && (next == "with" || next == "to"), w == "as" && next == "opposed":
		case (w == "so" || w == "and") && (ofUs[next] || ofToday[next] || next == "make" || next == "let" || w == "so" && (next == "the" || next == "my")):
		default:
			continue
		}
		if (w == "who" || w == "which") && atoms[from].Text == "unlike" {
			continue // "unlike our neighbors, who used 4x4 posts"
		}
		if from < i {
			parts = append(parts, atoms[from:i])
		}
		from = i
	}
	return append(parts, atoms[from:])
}
