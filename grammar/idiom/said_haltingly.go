package idiom

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// Whoever thinks aloud halts, says a name twice, and sets right in a sentence of its own what he began with: "the gap, what, two and a half", "posts, posts...
// four by fours", "not six rails. Five". Everyday speech, no source.

// haltingPhrases are such turns.
var haltingPhrases = []phrase.Placed{
	{", what ,|?", ",", phrase.BothHold(partBefore, phrase.AmountNext)},
	{"!RAIL|POST|STIFF ... @", "$1 , $2", nil},
	{"^^ not [a|the] # !RAIL|POST|STIFF|GAP|bays|openings . ?(make it)|(it is)|(i want)|just # $$", "not $1 $2 , $3", nil},
	{"draw|sketch|show|make|give|print ?ME ?up|out a|the little|small|tiny|neat picture|drawing|sketch|diagram ?of (it|this|that|(the WALL)|everything)", "show me the drawing", phrase.EndsLine},
}

// partBefore: a part is named right before it, and nothing is asked.
func partBefore(before, _ []scan.Atom) bool {
	return len(before) > 0 && chunk.NamesPart(before, len(before)-1) && !lex.AsksFirst[before[0].Text]
}

// HaltsAtName leaves out the first of two of the same name, behind which somebody halts once more: "posts, posts... four by fours".
func HaltsAtName(atoms []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(atoms); i++ {
		if halts(atoms[i+1]) && halts(atoms[i+3]) && atoms[i].Text == atoms[i+2].Text && atoms[i].Kind == scan.Word && chunk.OfPart(atoms[i].Text) && (i == 0 || chunk.BreaksClause(atoms, i-1)) {
			return scan.CutOut(atoms, i, i+2)
		}
	}
	return atoms
}

func halts(a scan.Atom) bool { return a.Kind == scan.Sign && (a.Text == "," || a.Text == "...") }
