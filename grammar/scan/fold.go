package scan

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// Atom is a smallest piece of a line: a word, a run of digits, or a sign, folded to lower case and plain signs.
type Atom struct {
	Text    string
	Kind    AtomKind
	At, End int  // place in the line, in runes
	Glued   bool // nothing stands between it and the atom before
}

// AtomKind tells a word, digits, a fraction and a sign apart.
type AtomKind uint8

// The kinds of atom.
const (
	Word   AtomKind = iota + 1
	Digits          // "12", "2.5", "62,5", "1,200", ".11"
	Vulgar          // "½", held as "1/2"
	Sign
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

// Letter is one rune of the line after folding, with the place it came from.
type Letter struct {
	r    rune
	at   int32
	frac rune // the sign of a fraction in one sign
}

// Fold lowers and unifies a line; bad is the place of bytes that are no text, -1 when there are none.
func Fold(line string) (out []Letter, bad int) {
	bad = -1
	out = make([]Letter, 0, len(line)+2)
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

func appendFolded(out []Letter, r rune, at int) []Letter {
	if r < utf8.RuneSelf && r != '`' {
		if r < ' ' || r == 0x7f {
			r = ' '
		}
		return append(out, Letter{r: unicode.ToLower(r), at: int32(at)})
	}
	if vulgar[r] != "" {
		return append(out, Letter{r: '½', at: int32(at), frac: r})
	}
	if s, ok := plain[unicode.ToLower(r)]; ok {
		for _, p := range s {
			out = append(out, Letter{r: p, at: int32(at)})
		}
		return out
	}
	if r >= '０' && r <= '９' {
		r = r - '０' + '0'
	}
	if pictured(r) {
		r = ' '
	}
	if unicode.IsSpace(r) || unicode.IsControl(r) {
		r = ' '
	}
	return append(out, Letter{r: unicode.ToLower(r), at: int32(at)})
}

// Split cuts a folded line into atoms.
func Split(in []Letter) []Atom {
	out := make([]Atom, 0, len(in)/4+2)
	whole := asOneText(in)
	for i := 0; i < len(in); {
		switch {
		case in[i].r == ' ':
			i++
			continue
		case in[i].frac != 0:
			out = glue(out, in, i, i+1, Vulgar, vulgar[in[i].frac])
			i++
		case digitAt(in, i) || in[i].r == '.' && digitAt(in, i+1) && !(i > 0 && (in[i-1].r == '.' || digitAt(in, i-1))):
			j := digitsEnd(in, i)
			out = glue(out, in, i, j, Digits, spelledBy(in, whole, i, j))
			i = j
		case isLetter(in[i].r):
			j := wordEnd(in, i)
			out = glue(out, in, i, j, Word, spelledBy(in, whole, i, j))
			i = j
		default:
			j := signEnd(in, i)
			if n := len(out); n > 0 && (in[i].r == '!' || in[i].r == ';') && out[n-1].Kind == Sign && out[n-1].Text == string(in[i].r) {
				i = j // said once is enough, and a thousand of them would take long to read
				continue
			}
			out = glue(out, in, i, j, Sign, spelledBy(in, whole, i, j))
			i = j
		}
	}
	return Contractions(slashesParting(out))
}

// slashesParting takes a stroke that stands free between two notes for the comma that it is: "ht 45 / 5 rails", "2 per bay / 1x3". Between
// two figures it may part a fraction or a choice, and stays; so does one behind "per" and units ("9.50 / board").
func slashesParting(in []Atom) []Atom {
	for i := 1; i+1 < len(in); i++ {
		if in[i].Text != "/" || in[i].Glued || in[i+1].Glued || i == 1 && len(in) == 3 && in[2].Text == "2" {
			continue // "gap / 2", and nothing more, divides
		}
		before, after := in[i-1], in[i+1]
		sized := i > 2 && in[i-2].Text == "x" && in[i-3].Kind == Digits
		if (sized || before.Kind == Word || before.Kind == Digits) && startsNote[after.Text] && !choosing[before.Text] || sized && after.Kind == Digits {
			in[i].Text = ","
			continue
		}
		if before.Kind == Word && !choosing[before.Text] && (after.Kind != Word || i > 1 && in[i-2].Kind == Digits) || before.Kind != Word && after.Kind == Word && i+2 < len(in) && in[i+2].Kind == Digits {
			in[i].Text = ","
		}
	}
	return in
}

// startsNote are words that begin a note behind a stroke.
var startsNote = WordSet("what how where which show draw all both left right no what's wall ht")

// choosing are words beside which a stroke leaves a choice or a rate.
var choosing = WordSet("and or either per left right low high upper lower")

// asOneText is the letters as one text of which each is a byte, "" where they do not fit.
func asOneText(in []Letter) string {
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
func spelledBy(in []Letter, whole string, i, j int) string {
	if whole != "" {
		return whole[i:j]
	}
	var b strings.Builder
	for _, l := range in[i:j] {
		b.WriteRune(l.r)
	}
	return b.String()
}

func glue(out []Atom, in []Letter, i, j int, k AtomKind, text string) []Atom {
	return append(out, Atom{Text: text, Kind: k, At: int(in[i].at), End: int(in[j-1].at) + 1, Glued: i > 0 && in[i-1].r != ' '})
}

func digitAt(in []Letter, i int) bool {
	return i < len(in) && in[i].r >= '0' && in[i].r <= '9'
}

func isLetter(r rune) bool { return unicode.IsLetter(r) || r == '_' }

// digitsEnd takes digits, and a point or comma that has digits on both sides.
func digitsEnd(in []Letter, i int) int {
	if in[i].r == '.' {
		i++
	}
	for digitAt(in, i) || i < len(in) && (in[i].r == '.' || in[i].r == ',') && digitAt(in, i+1) && digitAt(in, i-1) {
		i++
	}
	return i
}

// wordEnd takes letters, an apostrophe between letters, and the dots or the slash of abbreviations ("o.c.", "c/c").
func wordEnd(in []Letter, i int) int {
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
func unitQuote(in []Letter, i int) bool { return i > 0 && !isLetter(in[i-1].r) }

func signEnd(in []Letter, i int) int {
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

// pictured reports whether a rune is a little picture that only shows a mood; one that says no or stop stays, and is asked about.
func pictured(r rune) bool {
	return (r >= 0x1F300 && r <= 0x1FAFF || r >= 0x2600 && r <= 0x26FF || r == 0xFE0F) && !strings.ContainsRune("👎🚫🙅🛑⛔🤔🙄❓", r)
}
