package reread

import (
	"embed"
	"slices"
	"strings"
	"sync"

	"saywright/grammar/act"
	"saywright/grammar/chunk"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/paraphrase"
	"saywright/grammar/scan"
	"saywright/grammar/ways"
)

// kindredFiles list words and turns that the tables do not have, each with plainer ones that say the same of a wall. A line reads
//
//	v authorize, sanction: allow
//
// where v stands for verbs (all their forms are meant), n for nouns (with their plural) and w for words as they stand. Where several plain
// words may be meant, they stand behind one another, with commas between; a dash stands for none: the word only adds.
//
//go:embed kindred/*.txt
var kindredFiles embed.FS

// kindredLines returns the lines of all files, in the order of their names.
func kindredLines() (lines []string) {
	files, err := kindredFiles.ReadDir("kindred")
	if err != nil {
		panic(err) // they are part of the program
	}
	for _, f := range files {
		text, err := kindredFiles.ReadFile("kindred/" + f.Name())
		if err != nil {
			panic(err)
		}
		lines = append(lines, strings.Split(strings.TrimSpace(string(text)), "\n")...)
	}
	return lines
}

// kin is a word or a turn, and what may be put in its place.
type kin struct {
	words []string
	means [][]string
}

// kindred are the words that have plainer ones, by their first.
var kindred = sync.OnceValue(func() map[string][]kin {
	out := map[string][]kin{}
	for _, line := range kindredLines() {
		kind, rest, ok := strings.Cut(line, " ")
		if !ok || strings.HasPrefix(line, "#") {
			continue
		}
		from, to, _ := strings.Cut(rest, ":")
		means := strings.Split(to, ",")
		for _, w := range strings.Split(from, ",") {
			forms := formsOf(kind, strings.Fields(w))
			for k, form := range forms {
				row := kin{words: form}
				for _, m := range means {
					f := formsOf(kind, strings.Fields(m))[k]
					if allOfTables(f) && !slices.ContainsFunc(row.means, func(have []string) bool { return slices.Equal(have, f) }) {
						row.means = append(row.means, f)
					}
				}
				if row.means != nil {
					out[form[0]] = withRow(out[form[0]], row)
				}
			}
		}
	}
	for _, rows := range out {
		slices.SortStableFunc(rows, func(a, b kin) int { return len(b.words) - len(a.words) })
	}
	return out
})

// allOfTables reports whether the tables know all words: a form of a plainer word that they do not know helps nobody.
func allOfTables(list []string) bool {
	return !slices.ContainsFunc(list, func(w string) bool {
		return !lex.Words().Known[w] && !lexicon.Vocab().Neutral[w] && !lexicon.Vocab().Articles[w]
	})
}

// withRow adds a row; where the same words stand in one already, what may be put in their place is that of both: all that is heard of it must agree.
func withRow(rows []kin, row kin) []kin {
	for i, have := range rows {
		if slices.Equal(have.words, row.words) {
			for _, m := range row.means {
				if !slices.ContainsFunc(have.means, func(w []string) bool { return slices.Equal(w, m) }) {
					rows[i].means = append(rows[i].means, m)
				}
			}
			return rows
		}
	}
	return append(rows, row)
}

// formsOf inflects the first word of a verb, or the last of a noun, as its kind tells: the same number of forms for each of a kind.
func formsOf(kind string, words []string) [][]string {
	if len(words) == 1 && words[0] == "-" {
		return make([][]string, map[string]int{"v": 5, "n": 2, "w": 1}[kind])
	}
	with := func(at int, w string) []string {
		out := slices.Clone(words)
		out[at] = w
		return out
	}
	switch kind {
	case "v":
		var out [][]string
		for _, w := range ways.VerbForms(words[0]) {
			out = append(out, with(0, w))
		}
		return out
	case "n":
		last := len(words) - 1
		return [][]string{words, with(last, ways.PluralOf(words[last]))}
	}
	return [][]string{words}
}

const (
	mostKin   = 4  // words of a line that are looked up
	KinReread = 10 // readings tried with them
)

// KinAt is a place of a line where plainer words may stand.
type KinAt struct {
	at, N int
	Means [][]string
}

// KinPlaces finds the words of a line that have plainer ones; the first of them first.
func KinPlaces(atoms []scan.Atom) (out []KinAt) {
	for i := 0; i < len(atoms) && len(out) < mostKin; i++ {
		if atoms[i].Kind != scan.Word {
			continue
		}
		for _, row := range kindred()[atoms[i].Text] {
			if paraphrase.WordsAt(atoms, i, row.words) {
				out = append(out, KinAt{i, len(row.words), row.means})
				i += len(row.words) - 1
				break
			}
		}
	}
	return out
}

// PlainerKin puts the plainer words that were picked, counted from one, into their places.
func PlainerKin(atoms []scan.Atom, places []KinAt, pick []int) (out []scan.Atom, taken []act.Taken) {
	from := 0
	for i, p := range places {
		if pick[i] == 0 {
			continue
		}
		out = append(out, atoms[from:p.at]...)
		words := p.Means[pick[i]-1]
		for _, w := range words {
			a := chunk.Worded(atoms[p.at], w)
			a.End, a.Glued = atoms[p.at+p.N-1].End, a.Glued && w == words[0]
			out = append(out, a)
		}
		taken = append(taken, act.Taken{Was: scan.Text(atoms[p.at : p.at+p.N]), Now: strings.Join(words, " "), At: atoms[p.at].At})
		from = p.at + p.N
	}
	return append(out, atoms[from:]...), taken
}
