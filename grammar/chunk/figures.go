package chunk

import (
	"strconv"
	"strings"
	"sync"

	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// NumberWords are words of numbers and units, which are never corrected and never corrected to.
func NumberWords() map[string]bool {
	m := map[string]bool{}
	for _, table := range []map[string]int{scan.Ones, measure.Tens, measure.Denominators, measure.SizeWords, measure.LumberFeet} {
		for w := range table {
			m[w] = true
		}
	}
	for _, table := range []map[string]bool{measure.InchWords, measure.FootWords, measure.YardWords, measure.FooterWords, measure.MoneyWords} {
		for w := range table {
			m[w] = true
		}
	}
	for w := range measure.MetricWords {
		m[w] = true
	}
	for _, w := range []string{"hundred", "thousand", "dozen", "point", "percent", "times", "seconds", "thirds", "half", "none"} {
		m[w] = true
	}
	for _, w := range []string{"to", "for", "tos", "fors", "ate", "ates"} {
		delete(m, w) // words in their own right
	}
	return m
}

// SizedWord reports whether a word is a lumber size: "if I use 2x4s does the gap change".
func SizedWord(w string) bool { return IsSize(strings.TrimSuffix(w, "s")) }

// Figured reports whether a figure stands in a stretch.
func Figured(in []scan.Atom) bool {
	for i, a := range in {
		if a.Kind == scan.Digits || a.Kind == scan.Vulgar || scan.Ones[a.Text] > 0 || SizedWord(a.Text) || i == 0 && (a.Text == "a" || a.Text == "an") && len(in) > 2 && scan.Ones[in[1].Text] > 0 {
			return true
		}
	}
	return false
}

// Worded is an atom with another word in its place.
func Worded(a scan.Atom, w string) scan.Atom {
	a.Text, a.Kind, a.Glued = w, scan.Word, false
	return a
}

// IsSize reports whether s is written as a lumber size: two whole numbers with an x.
func IsSize(s string) bool {
	if s == "5/4x4" || s == "5/4x6" {
		return true
	}
	a, b, ok := strings.Cut(s, "x")
	if !ok || a == "" || a[0] > '9' {
		return false
	}
	x, err1 := strconv.Atoi(a)
	y, err2 := strconv.Atoi(b)
	return err1 == nil && err2 == nil && x > 0 && y > 0 && strconv.Itoa(x)+"x"+strconv.Itoa(y) == s
}

// LastOf is the text of the k-th atom from the end of what stands before, nothing where there is none.
func LastOf(before []scan.Atom, k int) string {
	if len(before) < k {
		return ""
	}
	return before[len(before)-k].Text
}

// SpelledNumber reports whether a word is a number of its own: "two", "twelve".
func SpelledNumber(w string) bool {
	_, one := scan.Ones[w]
	return one || measure.Tens[w] > 0 || w == "half"
}

// Numeric reports whether an atom is part of a number.
func Numeric(a scan.Atom) bool {
	return a.Kind == scan.Digits || a.Kind == scan.Vulgar || a.Kind == scan.Word && (SpelledNumber(a.Text) || a.Text == "hundred") || a.Text == "/" || measure.InchWords[a.Text] || measure.FootWords[a.Text]
}

// TextAt is the text of an atom, nothing where there is none.
func TextAt(in []scan.Atom, i int) string { return measure.Reader{Atoms: in}.Word(i) }

// Numerals are the words of numbers.
var Numerals = sync.OnceValue(NumberWords)
