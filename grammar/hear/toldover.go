package hear

import (
	"slices"
	"strings"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// Between the words that a table knows, fillers may be passed over. A run of fillers can be a clause of its own all the same: "my neighbor
// was after the fewest boards" tells what he was after, "I haven't made up my mind between 2x4 and 2x6" decides nothing. What such a
// clause tells cannot be left out unheard, so a line that passes over one is not read so; only formulas of asking and wishing are.
// Common ways of speech, no source.

// tellsOver finds the first token before which a clause was passed over that tells what was, or what is not so.
func tellsOver(tokens []lex.Token) *lex.Token {
	supposed := false
	for i := range tokens {
		t := &tokens[i]
		if t.Before != "" && overMay(t.Before) {
			w := strings.Fields(t.Before)
			if deniesOver(w) || !supposed && toldOver(w) {
				return t
			}
		}
		supposed = supposed || supposesBehind(t.Text)
	}
	return nil
}

// overMay reports whether words passed over may tell of anything: two at least are needed for it.
func overMay(before string) bool { return strings.IndexByte(before, ' ') > 0 }

// supposesBehind reports whether a token begins what is only supposed, so that "was" and "had" behind it tell of no past.
func supposesBehind(text string) bool {
	return text == "if" || strings.HasSuffix(text, " if") || strings.HasPrefix(text, "if ") || strings.HasPrefix(text, "suppos") || strings.HasPrefix(text, "what if") || strings.HasPrefix(text, "say") || strings.HasPrefix(text, "imagine") || text == "had"
}

var (
	overDenials = scan.WordSet("not never cannot nor")
	overPast    = scan.WordSet("was were had asked wanted said told tried kept ordered bought")
	// overFormulas are runs of fillers that tell nothing though they look like it.
	overFormulas = WordRows(`if you do not mind
		if it is not
		never mind
		not level
		i do not know is
		i was thinking
		i was wondering
		was hoping
		were hoping
		were thinking
		were picturing
		were aiming
		was aiming
		were wondering
		i was picturing
		i was looking
		i was worried
		i was all set on
		i know i said
		told me to
		told us to
		asked me to
		asked us to
		if you used
		if you told
		had gone with`)
)

// deniesOver reports whether words passed over deny something.
func deniesOver(w []string) bool {
	return slices.ContainsFunc(w, func(v string) bool { return overDenials[v] }) && !saysFormula(w)
}

// toldOver reports whether words passed over tell what somebody did or had.
func toldOver(w []string) bool {
	for i := 1; i < len(w); i++ {
		if !overPast[w[i]] || w[i] == "asked" && (i+1 == len(w) || w[i+1] == "for" || w[i+1] == "to") || w[i] == "were" && w[i-1] == "there" {
			continue
		}
		owner := i > 1 && (lex.Owned[w[i-2]] || lexicon.Vocab().Articles[w[i-2]])
		if lex.Speakers[w[i-1]] || OtherSpeakers[w[i-1]] || owner {
			return !saysFormula(w) && !(i+1 == len(w) && w[i] == "was")
		}
	}
	return false
}

// saysFormula reports whether a formula stands among the words.
func saysFormula(w []string) bool {
	for i := range w {
		for _, f := range overFormulas {
			if len(w) >= i+len(f) && slices.Equal(w[i:i+len(f)], f) {
				return true
			}
		}
	}
	return false
}

// OtherSpeakers are whom else something is told of.
var OtherSpeakers = scan.WordSet("he she they who")
