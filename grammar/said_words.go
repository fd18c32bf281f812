package grammar

import (
	"slices"
	"strings"
	"sync"
)

// wordList is words one of which a place of a pattern wants. Thousands of places want the same: they share it.
type wordList struct {
	words []string
	set   map[string]bool // the words again, where they are too many to go through
	marks uint64          // the marks of all the words
}

// fewWords is up to how many words are gone through one by one.
const fewWords = 6

func newWordList(words []string) *wordList {
	l := &wordList{words: words}
	for _, w := range words {
		l.marks |= markOf(w)
	}
	if len(words) > fewWords {
		l.set = make(map[string]bool, len(words))
		for _, w := range words {
			l.set[w] = true
		}
	}
	return l
}

// holds reports whether a word is on the list.
func (l *wordList) holds(word string) bool {
	if l.set != nil {
		return l.set[word]
	}
	return slices.Contains(l.words, word)
}

// listOfWord are the lists of one word.
var listOfWord sync.Map // string → *wordList

// listOfClass are the lists of the classes of words.
var listOfClass = sync.OnceValue(func() map[string]*wordList {
	of := map[string]*wordList{madeBesides.name: newWordList(eachOnce(strings.Fields(madeBesides.words)))}
	for _, c := range classes {
		of[c.name] = newWordList(eachOnce(strings.Fields(c.words)))
	}
	return of
})

// wordsNamed is what a word of a written pattern stands for: the words of its class, or itself.
func wordsNamed(w string) *wordList {
	if l, ok := listOfClass()[w]; ok {
		return l
	}
	w = strings.TrimPrefix(w, `\`)
	l, ok := listOfWord.Load(w)
	if !ok {
		l, _ = listOfWord.LoadOrStore(w, newWordList([]string{w}))
	}
	return l.(*wordList)
}

// eachOnce sorts words and leaves out what stands twice.
func eachOnce(words []string) []string {
	slices.Sort(words)
	return slices.Clip(slices.Compact(words))
}
