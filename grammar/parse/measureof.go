package parse

import (
	"slices"
	"strings"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
	"saywright/grammar/scan"
)

// A change by so much has its figure beside the word that compares ("two more rails", "an inch wider", "two rails fewer"). A figure that is said
// of one thing while another is more or less ("do six rails weigh more", "with six rails is the wall taller") is no measure of that word.

// ofAnother reports whether the figure is said of another thing than what is more or less.
func (k *clause) ofAnother() bool {
	if len(k.values) != 1 {
		return false
	}
	v := k.values[0]
	if k.onePieceGoes(v) {
		return true
	}
	for _, w := range k.words {
		t := k.items[w].Token
		switch {
		case !t.Is(lexicon.More) && t.Kind != lexicon.Change:
		case w > v && t.As(lexicon.More) != nil && k.partsFrom(v, w):
			return true
		case w < v && saidWith[lex.LastWord(k.leadBefore(v))] && k.partAfter(v):
			return true
		}
	}
	return false
}

// onePieceGoes reports whether one piece comes or goes by the word of change, and the figure at v is of a length that is named beside it: "would
// dropping a rail make the gap three".
func (k *clause) onePieceGoes(v int) bool {
	if !k.lengthAt(v-1) && !k.lengthAt(v+1) {
		return false
	}
	for i := 1; i < len(k.items); i++ {
		it := k.items[i]
		if it.value() || it.Kind != lexicon.Part || it.Plural() || !countedPiece[it.Key()] || !oneOfThem[lex.LastWord(it.Before)] {
			continue
		}
		if !k.items[i-1].value() && i != v-1 && i != v+1 {
			return true
		}
	}
	return false
}

// lengthAt reports whether the part at i is one that has a length.
func (k *clause) lengthAt(i int) bool {
	if i < 0 || i >= len(k.items) || k.items[i].value() || k.items[i].Kind != lexicon.Part {
		return false
	}
	return lengthPart[k.items[i].Key()]
}

// leadBefore are the empty words before the figure at i, and before the words that bound it.
func (k *clause) leadBefore(i int) string {
	if lead := k.items[i].lim.lead; len(lead) > 0 {
		return lead[0].Before
	}
	return k.items[i].Before
}

// partsFrom reports whether what stands between the figure at v and the word that compares at w parts the two: a verb, a pause, or another thing
// that is named before or behind that word.
func (k *clause) partsFrom(v, w int) bool {
	named := 0
	if lim := k.items[v].lim; lim.lo.Unit != measure.Bare && aSuch[lex.LastWord(k.leadBefore(v))] && w > v+1 && k.items[v+1].Kind == lexicon.Part {
		return true // "is a 50 inch wall taller": that high it is
	}
	for i := v + 1; i <= w; i++ {
		it := k.items[i]
		if it.breaks() || it.value() || i < w && (it.Kind == lexicon.GoesIn || it.Kind == lexicon.Unknown) {
			return true
		}
		if i < w && it.Kind == lexicon.Part && !it.Is(lexicon.More) {
			named++
		}
		words := strings.Fields(it.Before)
		if i < w && it.Kind != lexicon.Part {
			words = append(words, strings.Fields(it.Text)...) // "seven rails take longer"
		}
		if slices.ContainsFunc(words, func(word string) bool { return partsMeasure[word] }) {
			return true
		}
	}
	if named > 1 {
		return true // "five rails waste less"
	}
	if w+1 < len(k.items) && named > 0 {
		next := k.items[w+1]
		if !next.value() && next.Text == "work" {
			return strings.HasPrefix(k.leadBefore(v), "is") // "is five rails less work": no wall that works
		}
		return !next.value() && next.Kind == lexicon.Part && next.Before == "" && next.Index == 0
	}
	return false
}

var (
	countedPiece = map[string]bool{"rail": true, "post": true, "added post": true, "stiffener": true}
	lengthPart   = map[string]bool{"gap": true, "bottom gap": true, "opening": true, "wall height": true, "wall": true, "bay": true}
	oneOfThem    = scan.WordSet("a an one another")
	aSuch        = scan.WordSet("a an")
	saidWith     = scan.WordSet("with at for")
	partsMeasure = scan.WordSet("is are be was were do does did need needs will would should could can get gets got have has had make makes made mean means give gives take takes leave leaves come comes came there if when look looks looked stand stands run runs cost costs last lasts feel feels")
)
