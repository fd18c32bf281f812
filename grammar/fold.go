package grammar

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// atom is a smallest piece of a line: a word, a run of digits, or a sign, folded to lower case and plain signs.
type atom struct {
	text    string
	kind    atomKind
	at, end int  // place in the line, in runes
	glued   bool // nothing stands between it and the atom before
}

// atomKind tells a word, digits, a fraction and a sign apart.
type atomKind uint8

// The kinds of atom.
const (
	aWord   atomKind = iota + 1
	aDigits          // "12", "2.5", "62,5", "1,200", ".11"
	aVulgar          // "½", held as "1/2"
	aSign
)

// plain maps signs that look alike, or that a keyboard makes of others, to one.
var plain = map[rune]string{
	'’': "'", '‘': "'", '′': "'", '`': "'", '´': "'", 'ʹ': "'", '“': `"`, '”': `"`, '″': `"`, '„': `"`, '‟': `"`, '＂': `"`,
	'–': "-", '—': "--", '−': "-", '‐': "-", '‑': "-", '‒': "-", '×': "x", '✕': "x", '✖': "x", '⁄': "/", '∕': "/", '÷': "/",
	'≤': "<=", '≥': ">=", '⩽': "<=", '⩾': ">=", '≈': "~", '≅': "~", '∼': "~", '…': "...", '•': ",", '·': ",", '；': ";", '，': ",",
	'：': ":", '？': "?", '！': "!", '（': "(", '）': ")", '\u00a0': " ", '\u2009': " ", '\u202f': " ", '\u2007': " ", '\u3000': " ",
	'\u200b': "", '\u200c': "", '\u200d': "", '\ufeff': "", '\u00ad': "", '＝': "=", '＋': "+", '％': "%", '＆': "&",
	'é': "e", 'è': "e", 'ê': "e", 'ö': "o", 'ü': "u", 'ä': "a", 'ï': "i",
}

// vulgar are the fractions that Unicode has as one sign.
var vulgar = map[rune]string{
	'½': "1/2", '⅓': "1/3", '⅔': "2/3", '¼': "1/4", '¾': "3/4", '⅕': "1/5", '⅖': "2/5", '⅗': "3/5", '⅘': "4/5",
	'⅙': "1/6", '⅚': "5/6", '⅛': "1/8", '⅜': "3/8", '⅝': "5/8", '⅞': "7/8", '⅐': "1/7", '⅑': "1/9", '⅒': "1/10",
}

// letter is one rune of the line after folding, with the place it came from.
type letter struct {
	r    rune
	at   int32
	frac rune // the sign of a fraction in one sign
}

// foldLine lowers and unifies a line; bad is the place of bytes that are no text, -1 when there are none.
func foldLine(line string) (out []letter, bad int) {
	bad = -1
	out = make([]letter, 0, len(line)+2)
	at := 0
	for i := 0; i < len(line); {
		r, n := utf8.DecodeRuneInString(line[i:])
		if r == utf8.RuneError && n <= 1 && bad < 0 {
			bad = at
		}
		out = appendFolded(out, r, at)
		i += n
		at++
	}
	return out, bad
}

func appendFolded(out []letter, r rune, at int) []letter {
	if r < utf8.RuneSelf && r != '`' {
		if r < ' ' || r == 0x7f {
			r = ' '
		}
		return append(out, letter{r: unicode.ToLower(r), at: int32(at)})
	}
	if vulgar[r] != "" {
		return append(out, letter{r: '½', at: int32(at), frac: r})
	}
	if s, ok := plain[unicode.ToLower(r)]; ok {
		for _, p := range s {
			out = append(out, letter{r: p, at: int32(at)})
		}
		return out
	}
	if r >= '０' && r <= '９' {
		r = r - '０' + '0'
	}
	if unicode.IsSpace(r) || unicode.IsControl(r) {
		r = ' '
	}
	return append(out, letter{r: unicode.ToLower(r), at: int32(at)})
}

// split cuts a folded line into atoms.
func split(in []letter) []atom {
	out := make([]atom, 0, len(in)/4+2)
	whole := asOneText(in)
	for i := 0; i < len(in); {
		switch {
		case in[i].r == ' ':
			i++
			continue
		case in[i].frac != 0:
			out = glue(out, in, i, i+1, aVulgar, vulgar[in[i].frac])
			i++
		case digitAt(in, i) || in[i].r == '.' && digitAt(in, i+1) && !(i > 0 && (in[i-1].r == '.' || digitAt(in, i-1))):
			j := digitsEnd(in, i)
			out = glue(out, in, i, j, aDigits, spelledBy(in, whole, i, j))
			i = j
		case isLetter(in[i].r):
			j := wordEnd(in, i)
			out = glue(out, in, i, j, aWord, spelledBy(in, whole, i, j))
			i = j
		default:
			j := signEnd(in, i)
			out = glue(out, in, i, j, aSign, spelledBy(in, whole, i, j))
			i = j
		}
	}
	return contractions(slashesParting(out))
}

// slashesParting takes a stroke that stands free between two notes for the comma that it is: "ht 45 / 5 rails", "2 per bay / 1x3". Between
// two figures it may part a fraction or a choice, and stays; so does one behind "per" and units ("9.50 / board").
func slashesParting(in []atom) []atom {
	for i := 1; i+1 < len(in); i++ {
		if in[i].text != "/" || in[i].glued || in[i+1].glued || i == 1 && len(in) == 3 && in[2].text == "2" {
			continue // "gap / 2", and nothing more, divides
		}
		before, after := in[i-1], in[i+1]
		sized := i > 2 && in[i-2].text == "x" && in[i-3].kind == aDigits
		if (sized || before.kind == aWord || before.kind == aDigits) && startsNote[after.text] && !choosing[before.text] || sized && after.kind == aDigits {
			in[i].text = ","
			continue
		}
		if before.kind == aWord && !choosing[before.text] && (after.kind != aWord || i > 1 && in[i-2].kind == aDigits) || before.kind != aWord && after.kind == aWord && i+2 < len(in) && in[i+2].kind == aDigits {
			in[i].text = ","
		}
	}
	return in
}

// startsNote are words that begin a note behind a stroke.
var startsNote = wordSet("what how where which show draw all both left right no what's wall ht")

// choosing are words beside which a stroke leaves a choice or a rate.
var choosing = wordSet("and or either per left right low high upper lower")

// asOneText is the letters as one text of which each is a byte, "" where they do not fit.
func asOneText(in []letter) string {
	text := make([]byte, len(in))
	for i, l := range in {
		if l.r >= utf8.RuneSelf {
			return ""
		}
		text[i] = byte(l.r)
	}
	return string(text)
}

// spelledBy is the text of letters, out of the whole where there is one: the words of a line share it.
func spelledBy(in []letter, whole string, i, j int) string {
	if whole != "" {
		return whole[i:j]
	}
	var b strings.Builder
	for _, l := range in[i:j] {
		b.WriteRune(l.r)
	}
	return b.String()
}

func glue(out []atom, in []letter, i, j int, k atomKind, text string) []atom {
	return append(out, atom{text: text, kind: k, at: int(in[i].at), end: int(in[j-1].at) + 1, glued: i > 0 && in[i-1].r != ' '})
}

func digitAt(in []letter, i int) bool {
	return i < len(in) && in[i].r >= '0' && in[i].r <= '9'
}

func isLetter(r rune) bool { return unicode.IsLetter(r) || r == '_' }

// digitsEnd takes digits, and a point or comma that has digits on both sides.
func digitsEnd(in []letter, i int) int {
	if in[i].r == '.' {
		i++
	}
	for digitAt(in, i) || i < len(in) && (in[i].r == '.' || in[i].r == ',') && digitAt(in, i+1) && digitAt(in, i-1) {
		i++
	}
	return i
}

// wordEnd takes letters, an apostrophe between letters, and the dots or the slash of abbreviations ("o.c.", "c/c").
func wordEnd(in []letter, i int) int {
	start := i
	for i < len(in) && (isLetter(in[i].r) || in[i].r == '\'' && i+1 < len(in) && isLetter(in[i+1].r) && !unitQuote(in, i)) {
		i++
	}
	if i == start+1 && i+1 < len(in) && isLetter(in[i+1].r) && (i+2 >= len(in) || !isLetter(in[i+2].r)) && (in[i].r == '.' || in[i].r == '/' || in[i].r == '-') {
		end := i + 2
		if in[i].r == '.' && end < len(in) && in[end].r == '.' {
			end++
		}
		if abbreviations[string([]rune{in[start].r, in[i+1].r})] {
			return end
		}
	}
	return i
}

// abbreviations of two letters that are written with dots, a slash or a hyphen: on center, center to center,
// outside to outside, face to face, for example.
var abbreviations = map[string]bool{"oc": true, "cc": true, "oo": true, "ff": true, "ea": true, "eg": true, "ie": true}

// unitQuote reports whether the apostrophe at i is a foot mark: the word before it holds no letter.
func unitQuote(in []letter, i int) bool { return i > 0 && !isLetter(in[i-1].r) }

func signEnd(in []letter, i int) int {
	two := func(a, b rune) bool { return in[i].r == a && i+1 < len(in) && in[i+1].r == b }
	switch {
	case two('<', '=') || two('>', '=') || two('=', '<') || two('=', '>') || two('+', '=') || two('-', '=') || two('*', '=') || two('-', '-') || two('=', '=') || two('~', '='):
		return i + 2
	case two('+', '/') && i+2 < len(in) && in[i+2].r == '-':
		return i + 3
	case two('.', '.'):
		j := i
		for j < len(in) && in[j].r == '.' {
			j++
		}
		return j
	}
	return i + 1
}
