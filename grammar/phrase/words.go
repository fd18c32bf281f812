package phrase

import (
	"slices"
	"strings"
	"sync"

	"saywright/grammar/lexicon"
)

// WordList is words one of which a place of a pattern wants. Thousands of places want the same: they share it.
type WordList struct {
	words []string
	set   map[string]bool // the words again, where they are too many to go through
	marks marks           // the marks of all the words
}

// fewWords is up to how many words are gone through one by one.
const fewWords = 6

func newWordList(words []string) *WordList {
	l := &WordList{words: words}
	for _, w := range words {
		l.marks = l.marks.with(markOf(w))
	}
	if len(words) > fewWords {
		l.set = make(map[string]bool, len(words))
		for _, w := range words {
			l.set[w] = true
		}
	}
	return l
}

// Holds reports whether a word is on the list.
func (l *WordList) Holds(word string) bool {
	if l.set != nil {
		return l.set[word]
	}
	return slices.Contains(l.words, word)
}

// listOfWord are the lists of one word.
var listOfWord sync.Map // string → *WordList

// ListOfClass are the lists of the classes of words.
var ListOfClass = sync.OnceValue(func() map[string]*WordList {
	of := map[string]*WordList{MadeBesides.Name: newWordList(eachOnce(strings.Fields(MadeBesides.Words)))}
	for _, c := range lexicon.Classes {
		of[c.Name] = newWordList(eachOnce(strings.Fields(c.Words)))
	}
	return of
})

// wordsNamed is what a word of a written pattern stands for: the words of its class, or itself.
func wordsNamed(w string) *WordList {
	if l, ok := ListOfClass()[w]; ok {
		return l
	}
	w = strings.TrimPrefix(w, `\`)
	l, ok := listOfWord.Load(w)
	if !ok {
		l, _ = listOfWord.LoadOrStore(w, newWordList([]string{w}))
	}
	return l.(*WordList)
}

// eachOnce sorts words and leaves out what stands twice.
func eachOnce(words []string) []string {
	slices.Sort(words)
	return slices.Clip(slices.Compact(words))
}
