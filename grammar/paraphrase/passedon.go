package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/idiom"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/scan"
)

// What somebody else needs is asked for by the one who speaks: "my saw guy needs the cuts as a csv".

// needing are verbs by which somebody's need is told.
var needing = [][]string{{"needs"}, {"need"}, {"wants"}, {"want"}, {"would", "like"}, {"would", "love"}, {"has", "to", "have"}, {"have", "to", "have"}, {"must", "have"}, {"is", "asking", "for"}, {"are", "asking", "for"},
	{"asked", "for"}, {"asks", "for"}, {"could", "use"}, {"can", "use"}, {"is", "after"}, {"is", "waiting", "for"}, {"is", "waiting", "on"}}

// passedOn takes the need of somebody for a table or a list, at the beginning of a clause, for a wish of the one who speaks.
func passedOn(in []scan.Atom) []scan.Atom {
	id := lexicon.Vocab().Ids["PERSON"]
	for i := range in {
		if i > 0 && in[i-1].Kind != scan.Sign && !chunk.Joints[in[i-1].Text] {
			continue
		}
		at := i
		for at < len(in) && at < i+2 && (lex.Owned[in[at].Text] || in[at].Text == "the" || in[at].Text == "a") {
			at++
		}
		for at+1 < len(in) && at < i+4 && idiom.IsOf(in[at+1].Text, id) {
			at++ // "the lumber yard clerk"
		}
		if at+2 >= len(in) || !idiom.IsOf(in[at].Text, id) {
			continue
		}
		for _, verb := range needing {
			to := at + 1 + len(verb)
			if !scan.StandAt(in, at+1, verb...) || !asksTable(in, to) {
				continue
			}
			one, need := in[i], in[at+1]
			one.Text, need.Text = "i", "need"
			return append(append(append([]scan.Atom{}, in[:i]...), one, need), in[to:]...)
		}
	}
	return in
}

// asksTable reports whether a table or a list is named behind its article at an atom.
func asksTable(in []scan.Atom, i int) bool {
	for i < len(in) && (lexicon.Vocab().Articles[in[i].Text] || in[i].Text == "to" || in[i].Text == "see" || in[i].Text == "have") {
		i++
	}
	f := lexicon.Vocab().Match(in, i)
	return len(f) > 0 && f[0].Entry.Kind == lexicon.Quest
}
