package grammar

import (
	"embed"
	"slices"
	"strings"
	"sync"
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
	return !slices.ContainsFunc(list, func(w string) bool { return !words().known[w] && !vocab().neutral[w] && !vocab().articles[w] })
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
		for _, w := range verbForms(words[0]) {
			out = append(out, with(0, w))
		}
		return out
	case "n":
		last := len(words) - 1
		return [][]string{words, with(last, pluralOf(words[last]))}
	}
	return [][]string{words}
}

// irregular are the past and the participle of verbs that do not end in -ed.
var irregular = func() map[string][2]string {
	out := map[string][2]string{}
	for _, row := range strings.Split(`arise arose arisen|cling clung clung|dig dug dug|eat ate eaten|be was been|become became become|begin began begun|bid bid bid|break broke broken|bring brought brought|build built built|buy bought bought|
		catch caught caught|choose chose chosen|come came come|cost cost cost|cut cut cut|deal dealt dealt|do did done|draw drew drawn|drive drove driven|fall fell fallen|feel felt felt|
		find found found|forget forgot forgotten|get got got|give gave given|go went gone|grow grew grown|hang hung hung|have had had|hear heard heard|hold held held|keep kept kept|
		know knew known|lay laid laid|lead led led|lean leant leant|leave left left|lend lent lent|let let let|light lit lit|lose lost lost|make made made|mean meant meant|meet met met|
		overrun overran overrun|pay paid paid|put put put|quit quit quit|read read read|rise rose risen|run ran run|say said said|see saw seen|sell sold sold|send sent sent|set set set|
		shake shook shaken|show showed shown|shrink shrank shrunk|shut shut shut|sit sat sat|speak spoke spoken|spend spent spent|split split split|spread spread spread|stand stood stood|
		stick stuck stuck|strike struck struck|swing swung swung|take took taken|teach taught taught|tell told told|think thought thought|throw threw thrown|undo undid undone|
		understand understood understood|wear wore worn|wind wound wound|write wrote written|redo redid redone|rebuild rebuilt rebuilt|foresee foresaw foreseen|grind ground ground|hit hit hit|
		rid rid rid|sink sank sunk|slide slid slid|spit spat spat|spring sprang sprung|steal stole stolen|sweep swept swept|tear tore torn|withdraw withdrew withdrawn|outdo outdid outdone|
		overshoot overshot overshot|shoot shot shot|cast cast cast|fit fit fit|bind bound bound|bend bent bent|seek sought sought|weave wove woven|
		sling slung slung|fling flung flung|freeze froze frozen|forgo forwent forgone|forego forewent foregone|input input input`, "|") {
		f := strings.Fields(row)
		out[f[0]] = [2]string{f[1], f[2]}
	}
	return out
}()

// verbForms returns the base, the -s, the -ing, the past and the participle of a verb.
func verbForms(w string) [5]string {
	n := len(w)
	es, ing, ed := w+"s", w+"ing", w+"ed"
	switch {
	case n > 1 && w[n-1] == 'y' && !vowel(w[n-2]):
		es, ed = w[:n-1]+"ies", w[:n-1]+"ied"
	case strings.HasSuffix(w, "s") || strings.HasSuffix(w, "x") || strings.HasSuffix(w, "z") || strings.HasSuffix(w, "sh") || strings.HasSuffix(w, "ch") || w == "do" || w == "go" || w == "undo" || w == "redo" ||
		w == "forgo" || w == "forego":
		es = w + "es"
	case strings.HasSuffix(w, "ie"):
		ing, ed = w[:n-2]+"ying", w+"d"
	case strings.HasSuffix(w, "ee"):
		ed = w + "d"
	case n > 2 && w[n-1] == 'e':
		ing, ed = w[:n-1]+"ing", w+"d"
	case doubles(w):
		ing, ed = w+w[n-1:]+"ing", w+w[n-1:]+"ed"
	}
	past := [2]string{ed, ed}
	if p, ok := irregular[w]; ok {
		past = p
	}
	if w == "have" {
		es = "has"
	}
	if w == "be" {
		es, ing = "is", "being"
	}
	return [5]string{w, es, ing, past[0], past[1]}
}

// doubling are verbs of several syllables that double their last letter, as the stress is on it.
var doubling = wordSet("permit admit commit begin forget allot refit reset omit rejig prefer infer occur incur input")

// doubles reports whether a verb doubles its last letter: of one syllable, a vowel before one consonant.
func doubles(w string) bool {
	n := len(w)
	if n < 3 || vowel(w[n-1]) || !vowel(w[n-2]) || vowel(w[n-3]) && w[n-3] != 'u' || strings.ContainsRune("wxy", rune(w[n-1])) {
		return false
	}
	for i := 0; i < n-3; i++ {
		if vowel(w[i]) {
			return doubling[w]
		}
	}
	return true
}

func vowel(c byte) bool { return strings.IndexByte("aeiou", c) >= 0 }

// pluralOf returns the plural of a noun.
func pluralOf(w string) string {
	for _, p := range [][2]string{{"child", "children"}, {"man", "men"}, {"wife", "wives"}, {"foot", "feet"}} {
		if stem, ok := strings.CutSuffix(w, p[0]); ok && w != "human" {
			return stem + p[1]
		}
	}
	return verbForms(w)[1]
}

const (
	mostKin   = 4  // words of a line that are looked up
	kinReread = 10 // readings tried with them
)

// kinAt is a place of a line where plainer words may stand.
type kinAt struct {
	at, n int
	means [][]string
}

// readKindred reads a line that was not understood once more with plainer words in the place of one of those that have some, and
// at last in that of all of them. All that is heard so must say the same; after kinReread tries no more are made.
func readKindred(line string, atoms []atom, c Context, r Reading) Reading {
	if r.Ask == nil || len(atoms) > 40 {
		return r
	}
	places := kinPlaces(atoms)
	if asksOne(r.Ask, qVague, qHowMuchIs) { // "throw some options at me": a turn of several words
		places = slices.DeleteFunc(places, func(p kinAt) bool { return p.n < 2 })
	} else if !unheard(r.Ask) && !asksOne(r.Ask, qOnlyTheWall, qWhatToKnow, qDidYouMean) {
		return r
	}
	if len(places) == 0 {
		return r
	}
	tries := 0
	var found *Reading
	try := func(pick []int) (agree bool) {
		if tries++; tries > kinReread {
			return true
		}
		put, taken := plainerKin(atoms, places, pick)
		got := readHeld(line, put, c)
		if got.Ask != nil {
			return true
		}
		got.Taken = append(taken, got.Taken...)
		if found != nil && Normal(found.Acts) != Normal(got.Acts) {
			return false
		}
		if found == nil {
			found = &got
		}
		return true
	}
	pick := make([]int, len(places))
	for i, p := range places {
		for k := range p.means {
			pick[i] = k + 1
			if !try(pick) {
				return r
			}
		}
		pick[i] = 0
	}
	if found == nil && len(places) > 1 {
		for i := range places {
			pick[i] = 1
		}
		if !try(pick) {
			return r
		}
	}
	if found == nil {
		return r
	}
	return *found
}

// kinPlaces finds the words of a line that have plainer ones; the first of them first.
func kinPlaces(atoms []atom) (out []kinAt) {
	for i := 0; i < len(atoms) && len(out) < mostKin; i++ {
		if atoms[i].kind != aWord {
			continue
		}
		for _, row := range kindred()[atoms[i].text] {
			if wordsAt(atoms, i, row.words) {
				out = append(out, kinAt{i, len(row.words), row.means})
				i += len(row.words) - 1
				break
			}
		}
	}
	return out
}

// wordsAt reports whether words stand at an atom.
func wordsAt(atoms []atom, i int, words []string) bool {
	if i+len(words) > len(atoms) {
		return false
	}
	for k, w := range words {
		if atoms[i+k].text != w {
			return false
		}
	}
	return true
}

// plainerKin puts the plainer words that were picked, counted from one, into their places.
func plainerKin(atoms []atom, places []kinAt, pick []int) (out []atom, taken []Taken) {
	from := 0
	for i, p := range places {
		if pick[i] == 0 {
			continue
		}
		out = append(out, atoms[from:p.at]...)
		words := p.means[pick[i]-1]
		for _, w := range words {
			a := worded(atoms[p.at], w)
			a.end, a.glued = atoms[p.at+p.n-1].end, a.glued && w == words[0]
			out = append(out, a)
		}
		taken = append(taken, Taken{Was: textOf(atoms[p.at : p.at+p.n]), Now: strings.Join(words, " "), At: atoms[p.at].at})
		from = p.at + p.n
	}
	return append(out, atoms[from:]...), taken
}
