package reread

import (
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/hear"
	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/parse"
	"saywright/grammar/scan"
	"saywright/grammar/spelling"
	"saywright/solver"
)

const (
	mostMended = 6  // misspelled words in a line
	mostTried  = 48 // readings tried for them
)

// Mend reads a line again with its misspelled words set right. A word is set right only where every way to do so that can
// be read says the same; otherwise the question offers them. Numbers and units are never corrected.
func Mend(atoms []scan.Atom, c act.Context, r act.Reading) act.Reading {
	atoms, heard := plainlyMeant(atoms)
	places, options := Misspelled(atoms, c)
	if len(places) == 0 || len(places) > mostMended || len(atoms) > 200 {
		return r
	}
	got := tryMended(atoms, c, r, places, options)
	if got.Ask == nil {
		got.Taken = append(heard, got.Taken...)
	}
	return got
}

// Misspelled are the places of the words of a line that may be misspelled, with what each may be.
func Misspelled(atoms []scan.Atom, c act.Context) (places []int, options [][]string) {
	d := lex.Words()
	for i, a := range atoms {
		if a.Kind != scan.Word || d.Known[a.Text] || a.Glued && i > 0 && atoms[i-1].Kind == scan.Digits || namesWall(atoms, i, c) || possessor(atoms, i) {
			continue
		}
		if opts := d.Near(a.Text); len(opts) > 0 { // else what is said around it may account for it: a reason, a name
			places, options = append(places, i), append(options, opts)
		}
	}
	return places, options
}

// possessor reports whether the word at i, which no table knows, is somebody's name: whose group, sheet or word it is stands behind it, as
// in "Tim's group".
func possessor(atoms []scan.Atom, i int) bool {
	if i+2 >= len(atoms) || atoms[i+1].Text != "'s" || atoms[i+2].Kind != scan.Word {
		return false
	}
	for _, c := range lexicon.Vocab().Classes[atoms[i+2].Text] {
		for _, class := range []string{"PERSON", "PAPER", "DESIGN"} {
			if c == lexicon.Vocab().Ids[class] {
				return true
			}
		}
	}
	return gathered[atoms[i+2].Text]
}

// gathered are what people work in together.
var gathered = scan.WordSet("group team table bench crew pair class bunch gang squad partner row desk station lot side half corner turn idea answer guess version figures numbers sums work")

func namesWall(atoms []scan.Atom, i int, c act.Context) bool {
	for _, n := range c.Walls {
		if strings.Contains(n, atoms[i].Text) {
			return true
		}
	}
	return false
}

// tryMended reads the line with each choice of words.
func tryMended(atoms []scan.Atom, c act.Context, r act.Reading, places []int, options [][]string) act.Reading {
	c.Deep = true
	pick := make([]int, len(places))
	var best act.Reading
	found := map[string]act.Reading{}
	var order []string
	for tries := 0; tries < mostTried; tries++ {
		fixed := append([]scan.Atom{}, atoms...)
		var taken []act.Taken
		for k, i := range places {
			fixed[i].Text = options[k][pick[k]]
			taken = append(taken, act.Taken{Was: atoms[i].Text, Now: fixed[i].Text, At: atoms[i].At})
		}
		if got := namesAsSaid(hear.Atoms(scan.Contractions(fixed), c), taken); got.Ask == nil {
			key := parse.Normal(got.Acts)
			if _, seen := found[key]; !seen {
				got.Taken = taken
				found[key], best = got, got
				order = append(order, key)
			}
		}
		if !advance(pick, options) {
			break
		}
	}
	if len(found) == 0 {
		if got, ok := aroundMended(atoms, c, places, options); ok {
			return got
		}
	}
	switch len(found) {
	case 0:
		return didYouMean(atoms, r, places, options)
	case 1:
		return best
	}
	if len(order) > 4 {
		order = order[:4]
	}
	word := atoms[places[0]]
	return askback.BackAt(word.At, solver.Question{Text: parse.Quoted(parse.Short(word.Text)) + ": which is meant?", Choices: order, Example: r.Ask.Example})
}

// namesAsSaid leaves the names of plans and files as they were said, whatever words they look like.
func namesAsSaid(r act.Reading, taken []act.Taken) act.Reading {
	for i, a := range r.Acts {
		for k, name := range a.Words {
			f := strings.Fields(name)
			for j, w := range f {
				for _, t := range taken {
					if t.Now == w {
						f[j] = t.Was
					}
				}
			}
			if said := strings.Join(f, " "); said != name && !strings.Contains(name, ".") {
				r.Acts[i].Words = append([]string{}, r.Acts[i].Words...)
				r.Acts[i].Words[k] = said
			}
		}
	}
	return r
}

func advance(pick []int, options [][]string) bool {
	for k := range pick {
		if pick[k]++; pick[k] < len(options[k]) {
			return true
		}
		pick[k] = 0
	}
	return false
}

func didYouMean(atoms []scan.Atom, r act.Reading, places []int, options [][]string) act.Reading {
	if r.Ask == nil || !askback.AsksWhatItMeans(r.Ask) {
		return r
	}
	q := *r.Ask
	for k, i := range places {
		if q.At != nil && atoms[i].At == *q.At {
			list := options[k][:min(2, len(options[k]))]
			q = askback.DidYouMean.Ask(parse.Quoted(parse.Short(atoms[i].Text)), parse.Quoted(strings.Join(list, `" or "`)))
			q.At, q.Choices, q.Example = r.Ask.At, r.Ask.Choices, r.Ask.Example
		}
	}
	return act.Reading{Ask: &q}
}

// plainlyMeant sets right the words of a line that are no English words and can only be the sound of one word: "inchs", "dolars".
// What else is misspelled in the line is mended after them.
func plainlyMeant(atoms []scan.Atom) (fixed []scan.Atom, taken []act.Taken) {
	fixed = append([]scan.Atom{}, atoms...)
	for i, a := range atoms {
		meant := alikes()[a.Text]
		if a.Kind != scan.Word || len(meant) != 1 || spelling.English()[a.Text] || lex.Words().Known[a.Text] || lexicon.Vocab().Known[a.Text] || !mayMean(atoms, i) {
			continue
		}
		fixed[i].Text = meant[0]
		taken = append(taken, act.Taken{Was: a.Text, Now: meant[0], At: a.At})
	}
	return fixed, taken
}
