package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// What something would change is asked in many words: "would two added posts change the bays", "if I use 2x4s, does the gap change".
// They are set to "what would two added posts do to the bays" and "what is the gap".

// changing are verbs of what one thing does to another.
var changing = scan.WordSet("change changes affect affects alter alters move moves shift shifts influence influences")

// helpers are helping verbs that open such a question.
var helpers = scan.WordSet("would will does do could might")

// wouldChange sets such questions plain.
func wouldChange(in []scan.Atom) []scan.Atom {
	for i := range in {
		if !helpers[in[i].Text] || in[i].Kind != scan.Word || i > 0 && in[i-1].Kind != scan.Sign && in[i-1].Text != "how" && in[i-1].Text != "and" && !chunk.SizedWord(in[i-1].Text) {
			continue
		}
		verb := i + 1
		for verb < len(in) && !chunk.BreaksClause(in, verb) && !(changing[in[verb].Text] && in[verb].Kind == scan.Word) {
			verb++
		}
		if verb >= len(in) || !changing[in[verb].Text] || verb == i+1 {
			continue
		}
		end := verb + 1
		for end < len(in) && vainly[in[end].Text] {
			end++
		}
		if end == len(in) || in[end].Kind == scan.Sign && chunk.BreaksClause(in, end) {
			if i > 1 && !chunk.Figured(in[i+1:verb]) && asksName(in, i+1, verb) {
				out := append([]scan.Atom{}, in[:i]...)
				if out[len(out)-1].Text == "how" {
					out = out[:len(out)-1]
				}
				out = append(out, chunk.Worded(in[i], "what"), chunk.Worded(in[i], "is"))
				return append(append(out, in[i+1:verb]...), in[end:]...)
			}
			continue
		}
		if !chunk.Figured(in[i+1:verb]) || !chunk.NamesPart(in, verb+1) && !(lexicon.Vocab().Articles[in[verb+1].Text] && verb+2 < len(in) && chunk.NamesPart(in, verb+2)) {
			continue
		}
		last := verb + 1
		for last < len(in) && !chunk.BreaksClause(in, last) {
			last++
		}
		if chunk.Figured(in[verb+1 : last]) {
			continue
		}
		from := i
		if i > 0 && in[i-1].Text == "how" {
			from--
		}
		out := append(append([]scan.Atom{}, in[:from]...), chunk.Worded(in[i], "what"), chunk.Worded(in[i], "would"))
		out = append(append(out, in[i+1:verb]...), chunk.Worded(in[verb], "do"), chunk.Worded(in[verb], "to"))
		return append(out, in[verb+1:]...)
	}
	return in
}

// vainly are words after a verb of change that change nothing in the question.
var vainly = scan.WordSet("much at all any then too a lot greatly")

// asksName reports whether atoms name one part of the wall, or a table, and nothing else.
func asksName(in []scan.Atom, from, to int) bool {
	if lexicon.Vocab().Articles[in[from].Text] {
		from++
	}
	if from >= to {
		return false
	}
	f := lexicon.Vocab().Match(in[:to], from)
	return len(f) > 0 && f[0].Next == to && (f[0].Entry.Kind == lexicon.Part || f[0].Entry.Kind == lexicon.Quest)
}

// takeFrom takes "take the opening from 30 up to 36" for the move that it is.
func takeFrom(in []scan.Atom) []scan.Atom {
	for i := 0; i+4 < len(in); i++ {
		if in[i].Text != "take" && in[i].Text != "took" && in[i].Text != "taking" || in[i].Kind != scan.Word {
			continue
		}
		j := i + 1
		if lexicon.Vocab().Articles[in[j].Text] || lex.Owned[in[j].Text] {
			j++
		}
		if f := lexicon.Vocab().Match(in, j); len(f) > 0 && f[0].Entry.Kind == lexicon.Part && f[0].Next+1 < len(in) && in[f[0].Next].Text == "from" && chunk.Figured(in[f[0].Next+1:f[0].Next+2]) {
			out := append([]scan.Atom{}, in...)
			out[i].Text = "move"
			return out
		}
	}
	return in
}

// wereTo drops "were to" where something is supposed: "what if I were to push the opening over to the right post".
func wereTo(in []scan.Atom) []scan.Atom {
	for i := 2; i+2 < len(in); i++ {
		if (in[i].Text == "were" || in[i].Text == "was") && in[i+1].Text == "to" && speaksSelf[in[i-1].Text] && (in[i-2].Text == "if" || in[i-2].Text == "suppose" || in[i-2].Text == "say" || in[i-2].Text == "supposing" || in[i-2].Text == "imagine") && in[i+2].Kind == scan.Word {
			return append(append([]scan.Atom{}, in[:i]...), in[i+2:]...)
		}
	}
	return in
}

var speaksSelf = scan.WordSet("i we you they he she somebody someone")
