package hear

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
)

// dropPrefaces drops what only tells why something is wished: "my mother uses a walker, so the opening must be 38", "38 for
// my wheelbarrow". Nothing is dropped that holds a number, a part of the wall or a command, or a word that may be a
// misspelled one.
func dropPrefaces(in []lex.Token) []lex.Token {
	start := 0
	for i := 0; i < len(in); i++ {
		switch t := &in[i]; {
		case t.Kind == lexicon.Stop || t.Kind == lexicon.QMark:
			start = i + 1
		case t.Kind == lexicon.Comma && i+1 < len(in) && concludes(&in[i+1]) && onlyWhy(in[start:i]):
			in = append(in[:start:start], in[i+1:]...)
			i = start
		case i > start && concludes(t) && onlyWhy(in[start:i]):
			in = append(in[:start:start], in[i:]...)
			i = start
		case t.Kind == lexicon.Unknown && (purpose(t.Before, lex.Owned) || purpose(t.Before, chunk.Noun) && beside(in[start:i])):
			end := i
			for end < len(in) && in[end].Kind == lexicon.Unknown && Foreign(&in[end]) {
				end++
			}
			if end > i && i > 0 && (end == len(in) || in[end].Kind == lexicon.Comma || in[end].Kind == lexicon.Stop) {
				in = append(in[:i:i], in[end:]...)
				i--
			}
		}
	}
	return in
}

// concludes reports whether a token begins what follows from what stands before it: "so …".
func concludes(t *lex.Token) bool {
	w, _, _ := strings.Cut(strings.TrimSpace(t.Before+" "+t.Text), " ")
	return w == "so"
}

// purpose reports whether the empty words before a token end in "for" and one of these: "for my".
func purpose(before string, then map[string]bool) bool {
	f := strings.Fields(before)
	return len(f) > 1 && f[len(f)-2] == "for" && then[f[len(f)-1]]
}

// beside reports whether lumber that is there, or wanted beside the wall, is spoken of: what for is not asked then.
func beside(list []lex.Token) bool {
	for i := range list {
		if k := list[i].Kind; k == lexicon.Extra || k == lexicon.Have {
			return true
		}
	}
	return false
}

// onlyWhy reports whether a stretch holds nothing that could be set, asked or commanded.
func onlyWhy(list []lex.Token) bool {
	for i := range list {
		switch t := &list[i]; t.Kind {
		case lexicon.Num, lexicon.Size, lexicon.Part, lexicon.Loc, lexicon.Dim, lexicon.Goal, lexicon.Units, lexicon.Cmd, lexicon.Quest, lexicon.Wh, lexicon.Where, lexicon.Best, lexicon.Side, lexicon.FromSide, lexicon.More, lexicon.Change, lexicon.Name, lexicon.Item, lexicon.It:
			return false
		case lexicon.Head:
			if t.Key() != string(act.State) {
				return false
			}
		case lexicon.Unknown:
			if !Foreign(t) {
				return false
			}
		}
	}
	return len(list) > 0
}

// Foreign reports whether an unknown word is far from every word of the vocabulary.
func Foreign(t *lex.Token) bool {
	if lex.Words().Known[t.Text] || DaysOfWeek[t.Text] {
		return true // a word of some phrase, which means nothing here
	}
	return strings.Trim(t.Text, "abcdefghijklmnopqrstuvwxyz") == "" && len(t.Text) > 2 && len(lex.Words().Near(t.Text)) == 0
}
