package grammar

import "strings"

// What something would change is asked in many words: "would two added posts change the bays", "if I use 2x4s, does the gap change".
// They are set to "what would two added posts do to the bays" and "what is the gap".

// changing are verbs of what one thing does to another.
var changing = wordSet("change changes affect affects alter alters move moves shift shifts influence influences")

// helpers are helping verbs that open such a question.
var helpers = wordSet("would will does do could might")

// wouldChange sets such questions plain.
func wouldChange(in []atom) []atom {
	for i := range in {
		if !helpers[in[i].text] || in[i].kind != aWord || i > 0 && in[i-1].kind != aSign && in[i-1].text != "how" && in[i-1].text != "and" && !sizedWord(in[i-1].text) {
			continue
		}
		verb := i + 1
		for verb < len(in) && !breaksClause(in, verb) && !(changing[in[verb].text] && in[verb].kind == aWord) {
			verb++
		}
		if verb >= len(in) || !changing[in[verb].text] || verb == i+1 {
			continue
		}
		end := verb + 1
		for end < len(in) && vainly[in[end].text] {
			end++
		}
		if end == len(in) || in[end].kind == aSign && breaksClause(in, end) {
			if i > 1 && !figured(in[i+1:verb]) && asksName(in, i+1, verb) {
				out := append([]atom{}, in[:i]...)
				if out[len(out)-1].text == "how" {
					out = out[:len(out)-1]
				}
				out = append(out, worded(in[i], "what"), worded(in[i], "is"))
				return append(append(out, in[i+1:verb]...), in[end:]...)
			}
			continue
		}
		if !figured(in[i+1:verb]) || !namesPart(in, verb+1) && !(vocab().articles[in[verb+1].text] && verb+2 < len(in) && namesPart(in, verb+2)) {
			continue
		}
		last := verb + 1
		for last < len(in) && !breaksClause(in, last) {
			last++
		}
		if figured(in[verb+1 : last]) {
			continue
		}
		from := i
		if i > 0 && in[i-1].text == "how" {
			from--
		}
		out := append(append([]atom{}, in[:from]...), worded(in[i], "what"), worded(in[i], "would"))
		out = append(append(out, in[i+1:verb]...), worded(in[verb], "do"), worded(in[verb], "to"))
		return append(out, in[verb+1:]...)
	}
	return in
}

// vainly are words after a verb of change that change nothing in the question.
var vainly = wordSet("much at all any then too a lot greatly")

// sizedWord reports whether a word is a lumber size: "if I use 2x4s does the gap change".
func sizedWord(w string) bool { return isSize(strings.TrimSuffix(w, "s")) }

// asksName reports whether atoms name one part of the wall, or a table, and nothing else.
func asksName(in []atom, from, to int) bool {
	if vocab().articles[in[from].text] {
		from++
	}
	if from >= to {
		return false
	}
	f := vocab().match(in[:to], from)
	return len(f) > 0 && f[0].next == to && (f[0].entry.kind == kPart || f[0].entry.kind == kQuest)
}

// figured reports whether a figure stands in a stretch.
func figured(in []atom) bool {
	for i, a := range in {
		if a.kind == aDigits || a.kind == aVulgar || units[a.text] > 0 || sizedWord(a.text) || i == 0 && (a.text == "a" || a.text == "an") && len(in) > 2 && units[in[1].text] > 0 {
			return true
		}
	}
	return false
}

// worded is an atom with another word in its place.
func worded(a atom, w string) atom {
	a.text, a.kind, a.glued = w, aWord, false
	return a
}

// takeFrom takes "take the opening from 30 up to 36" for the move that it is.
func takeFrom(in []atom) []atom {
	for i := 0; i+4 < len(in); i++ {
		if in[i].text != "take" && in[i].text != "took" && in[i].text != "taking" || in[i].kind != aWord {
			continue
		}
		j := i + 1
		if vocab().articles[in[j].text] || owned[in[j].text] {
			j++
		}
		if f := vocab().match(in, j); len(f) > 0 && f[0].entry.kind == kPart && f[0].next+1 < len(in) && in[f[0].next].text == "from" && figured(in[f[0].next+1:f[0].next+2]) {
			out := append([]atom{}, in...)
			out[i].text = "move"
			return out
		}
	}
	return in
}

// wereTo drops "were to" where something is supposed: "what if I were to push the opening over to the right post".
func wereTo(in []atom) []atom {
	for i := 2; i+2 < len(in); i++ {
		if (in[i].text == "were" || in[i].text == "was") && in[i+1].text == "to" && speaksSelf[in[i-1].text] && (in[i-2].text == "if" || in[i-2].text == "suppose" || in[i-2].text == "say" || in[i-2].text == "supposing" || in[i-2].text == "imagine") && in[i+2].kind == aWord {
			return append(append([]atom{}, in[:i]...), in[i+2:]...)
		}
	}
	return in
}

var speaksSelf = wordSet("i we you they he she somebody someone")

// doneTo reports whether a question is what becomes of something.
func doneTo(head string) bool {
	return strings.Contains(head, "do to") || strings.Contains(head, "happen") || strings.Contains(head, "affect") || strings.Contains(head, "becomes of")
}
