package grammar

import "strings"

// dropPrefaces drops what only tells why something is wished: "my mother uses a walker, so the opening must be 38", "38 for
// my wheelbarrow". Nothing is dropped that holds a number, a part of the wall or a command, or a word that may be a
// misspelled one.
func dropPrefaces(in []token) []token {
	start := 0
	for i := 0; i < len(in); i++ {
		switch t := &in[i]; {
		case t.kind == kStop || t.kind == kQMark:
			start = i + 1
		case t.kind == kComma && i+1 < len(in) && concludes(&in[i+1]) && onlyWhy(in[start:i]):
			in = append(in[:start:start], in[i+1:]...)
			i = start
		case i > start && concludes(t) && onlyWhy(in[start:i]):
			in = append(in[:start:start], in[i:]...)
			i = start
		case t.kind == kUnknown && (purpose(t.before, owned) || purpose(t.before, noun) && beside(in[start:i])):
			end := i
			for end < len(in) && in[end].kind == kUnknown && foreign(&in[end]) {
				end++
			}
			if end > i && i > 0 && (end == len(in) || in[end].kind == kComma || in[end].kind == kStop) {
				in = append(in[:i:i], in[end:]...)
				i--
			}
		}
	}
	return in
}

// concludes reports whether a token begins what follows from what stands before it: "so …".
func concludes(t *token) bool {
	w, _, _ := strings.Cut(strings.TrimSpace(t.before+" "+t.text), " ")
	return w == "so"
}

// purpose reports whether the empty words before a token end in "for" and one of these: "for my".
func purpose(before string, then map[string]bool) bool {
	f := strings.Fields(before)
	return len(f) > 1 && f[len(f)-2] == "for" && then[f[len(f)-1]]
}

// beside reports whether lumber that is there, or wanted beside the wall, is spoken of: what for is not asked then.
func beside(list []token) bool {
	for i := range list {
		if k := list[i].kind; k == kExtra || k == kHave {
			return true
		}
	}
	return false
}

// onlyWhy reports whether a stretch holds nothing that could be set, asked or commanded.
func onlyWhy(list []token) bool {
	for i := range list {
		switch t := &list[i]; t.kind {
		case kNum, kSize, kPart, kLoc, kDim, kGoal, kUnits, kCmd, kQuest, kWh, kWhere, kBest, kSide, kFromSide, kMore, kChange, kName, kItem, kIt:
			return false
		case kHead:
			if t.key() != string(State) {
				return false
			}
		case kUnknown:
			if !foreign(t) {
				return false
			}
		}
	}
	return len(list) > 0
}

// foreign reports whether an unknown word is far from every word of the vocabulary.
func foreign(t *token) bool {
	if words().known[t.text] || daysOfWeek[t.text] {
		return true // a word of some phrase, which means nothing here
	}
	return strings.Trim(t.text, "abcdefghijklmnopqrstuvwxyz") == "" && len(t.text) > 2 && len(words().near(t.text)) == 0
}
