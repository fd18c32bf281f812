package paraphrase

import (
	"saywright/grammar/chunk"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// Words of correction that stand where others do not expect them are put where they do: "forty four, forty five sorry, inches high".

// fixWords are words of correction that may stand behind the value that they put right.
var fixWords = scan.WordSet("sorry oops whoops pardon rather")

// fixBehind puts a word of correction that stands behind its value before it.
func fixBehind(in []scan.Atom) []scan.Atom {
	for i := 2; i+1 < len(in); i++ {
		if !fixWords[in[i].Text] || !chunk.Numeric(in[i-1]) || in[i+1].Text != "," {
			continue
		}
		from := i - 1
		for from > 0 && chunk.Numeric(in[from-1]) {
			from--
		}
		if from < 2 || in[from-1].Text != "," || !chunk.Numeric(in[from-2]) {
			continue
		}
		out := append([]scan.Atom{}, in[:from]...)
		fix := in[i]
		fix.At, fix.End = in[from].At, in[from].At
		comma := in[from-1]
		comma.At, comma.End = in[from].At, in[from].At
		out = append(out, fix, comma)
		out = append(out, in[from:i]...)
		rest := in[i+1:]
		if len(rest) > 1 {
			if _, metric := measure.MetricWords[rest[1].Text]; metric || measure.InchWords[rest[1].Text] || measure.FootWords[rest[1].Text] {
				rest = rest[1:] // "forty five sorry, inches high"
			}
		}
		return append(out, rest...)
	}
	return in
}

// lookAgain are clauses by which one looks again before one puts a value right.
var lookAgain = []lexicon.Entry{{Kind: lexicon.Fill, Key: "look", Ways: `
	(let me|let us|i will|i will just|lemme|allow me to|need to|i need to|let me just|i had better) (check|look|measure|see|think|count|verify|have a look|take a look) [(that|it|again|here|once more|that again|it again|my notes|the tape|my tape|a second|a moment)] [(again|first)]
	(hang|hold) on (while|till|until) i (check|look|measure|see|think|count) [(that|it|again)]
	(checking|looking|thinking|measuring) [(again|here)]
	where is my (tape|note|notes|pencil)`}}

// lookedAgain leaves out such a clause between a value and a word of correction: "a hundred and thirty, let me check, no, a hundred and
// thirty two".
func lookedAgain(in []scan.Atom) []scan.Atom {
	for i := 2; i+2 < len(in); i++ {
		if !chunk.BreaksClause(in, i-1) || in[i].Kind != scan.Word || !lookStarts[in[i].Text] {
			continue
		}
		for _, f := range ClauseTables().look.Match(in, i) {
			n := f.Next
			if n+1 < len(in) && chunk.BreaksClause(in, n) && in[n].Text != "?" && (in[n+1].Text == "no" || in[n+1].Text == "sorry" || in[n+1].Text == "nope" || in[n+1].Text == "actually" || in[n+1].Text == "oops" || in[n+1].Text == "ah" || in[n+1].Text == "oh" || in[n+1].Text == "hmm" || in[n+1].Text == "make" || in[n+1].Text == "correction") {
				return append(append([]scan.Atom{}, in[:i]...), in[n+1:]...)
			}
		}
	}
	return in
}

var lookStarts = scan.WordSet("let i lemme allow need hang hold checking looking thinking measuring where")

// furtherPieces reads "another nine two-by-sixes" as "nine more two-by-sixes".
func furtherPieces(in []scan.Atom) []scan.Atom {
	for i := 0; i+3 < len(in); i++ {
		if w := in[i].Text; w != "another" && w != "additional" && w != "extra" || in[i].Kind != scan.Word {
			continue
		}
		if in[i+1].Kind != scan.Digits && !chunk.SpelledNumber(in[i+1].Text) || in[i+2].Kind != scan.Digits && !chunk.SpelledNumber(in[i+2].Text) {
			continue
		}
		if s := in[i+3].Text; s != "x" && s != "by" && s != "-" {
			continue
		}
		out := append([]scan.Atom{}, in...)
		out[i], out[i+1] = in[i+1], in[i+1]
		out[i].At = in[i].At
		out[i+1].Text, out[i+1].Kind, out[i+1].At = "more", scan.Word, in[i+1].End
		return out
	}
	return in
}
