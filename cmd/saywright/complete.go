package main

import (
	"io"
	"strings"
	"unicode/utf8"

	"saywright/grammar"
)

// completer completes the last word. It hands readline one candidate at most, and lists several itself: readline's
// own list divides by zero columns on a narrow terminal.
type completer struct{ list io.Writer }

// Do is called at Tab.
func (c *completer) Do(line []rune, pos int) ([][]rune, int) {
	before := string(line[:pos])
	word := before[strings.LastIndexAny(before, " \t,;")+1:]
	found := endings(word, grammar.Complete(before))
	if len(found) == 0 {
		return nil, 0
	}
	shared := sharedStart(found)
	switch {
	case len(found) == 1:
		return [][]rune{[]rune(shared + " ")}, utf8.RuneCountInString(word)
	case shared != "":
		return [][]rune{[]rune(shared)}, utf8.RuneCountInString(word)
	}
	if c.list != nil {
		io.WriteString(c.list, inColumns(word, found, columns()))
	}
	return nil, 0
}

// endings returns what each candidate adds to word.
func endings(word string, candidates []string) []string {
	var found []string
	for _, c := range candidates {
		if len(c) >= len(word) && strings.EqualFold(c[:len(word)], word) {
			found = append(found, c[len(word):])
		}
	}
	return found
}

func sharedStart(words []string) string {
	shared := words[0]
	for _, w := range words[1:] {
		for !strings.HasPrefix(w, shared) {
			_, size := utf8.DecodeLastRuneInString(shared)
			shared = shared[:len(shared)-size]
		}
	}
	return shared
}

// inColumns lays out candidates in rows no wider than width.
func inColumns(word string, ends []string, width int) string {
	wide := 0
	for _, e := range ends {
		wide = max(wide, utf8.RuneCountInString(word+e)+2)
	}
	perRow := max((width-1)/wide, 1)
	var b strings.Builder
	for i, e := range ends {
		b.WriteString(word + e)
		if (i+1)%perRow == 0 || i == len(ends)-1 {
			b.WriteByte('\n')
		} else {
			b.WriteString(strings.Repeat(" ", wide-utf8.RuneCountInString(word+e)))
		}
	}
	return b.String()
}
