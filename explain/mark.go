package explain

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"saywright/explain/figure"
	"saywright/solver"
	"saywright/solver/exact"
)

// A sentence is written once and read in two ways: by the eye and by the ear. Its figures stand in it as marks, a kind
// and an exact value between two control characters, and are turned into figures or number words at the end. Words that
// came from a person are cleaned of such characters before they enter a sentence (quoted).
const (
	markOpen  = '\x01'
	markClose = '\x02'
	eyeOpen   = '\x03' // what stands between eyeOpen and eyeClose is for the eye alone
	eyeClose  = '\x04'
)

// The kinds of figure in a sentence.
const (
	exactly     = 'L' // a length as it is: 2-5/6
	bareNearest = 'K' // the same without its unit, for lists and tables that tell the unit once
	nearest     = 'T' // the nearest mark of the tape, said to be that by the words around it
	onTape      = 'A' // a length as a tape shows it: "about 2-13/16" where it lies off the marks
	bothWays    = 'B' // exactly, and where it lies off the marks also as a tape shows it
	oneWay      = 'Q' // exactly where that is a simple figure, else as a tape shows it
	cutDown     = 'D' // a length rounded down to the tape
	howMany     = 'C' // a count: a word up to twelve
	plain       = 'N' // a plain number
	decimal     = 'J' // a number in decimals
	inSum       = 'R' // a length as a number of a sum: exact for the ear too
	operator    = 'o' // a sign of arithmetic inside a sentence
	percent     = 'P'
	cashExact   = 'X' // money that may have broken cents
	cashed      = 'M' // money
	sized       = 'S' // a lumber size
	oneByOne    = 'O' // a length read back: the ear hears a -teen and a -ty also digit by digit
	eachOf      = 'E' // a length without its unit, for lists that tell the unit once
	begins      = 'H' // a count at the beginning of a sentence
	inWords     = 'W' // a count, always as a word where there is one
	withUnit    = 'U' // a length with its unit, where the words around it would leave that open: "4 in"
)

func mark(kind rune, value string) string {
	return string(markOpen) + string(kind) + value + string(markClose)
}

func (v *voice) length(r exact.Rat) string { return mark(exactly, r.String()) }
func (v *voice) about(r exact.Rat) string  { return mark(onTape, r.String()) }
func (v *voice) both(r exact.Rat) string   { return mark(bothWays, r.String()) }
func (v *voice) short(r exact.Rat) string  { return mark(oneWay, r.String()) }
func (v *voice) onMark(r exact.Rat) string { return mark(bareNearest, r.String()) }
func (v *voice) bare(r exact.Rat) string   { return mark(eachOf, r.String()) }

// atMost writes a length that something stays under: a fraction that nobody reads off anything is rounded up to a thousandth.
func (v *voice) atMost(r exact.Rat) string {
	thousand := exact.Int(1000)
	if _, den := r.Frac(); !v.Metric && den.IsInt64() && den.Int64() > 64 {
		r = r.Mul(thousand).Ceil().Div(thousand)
	}
	return v.length(r)
}

func count(n int) string        { return mark(howMany, strconv.Itoa(n)) }
func number(r exact.Rat) string { return mark(plain, r.String()) }
func money(r exact.Rat) string  { return mark(cashed, r.String()) }
func size(s string) string      { return mark(sized, quoted(s)) }

// forEye is left out of what is said aloud.
func forEye(s string) string { return string(eyeOpen) + s + string(eyeClose) }

// quoted makes a person's own words safe to stand in a sentence: control characters and bytes that are not UTF-8 go.
func quoted(s string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\t':
			return ' '
		case unicode.IsControl(r) || r == utf8.RuneError || r >= 0x202a && r <= 0x202e || r >= 0x2066 && r <= 0x2069:
			return -1
		}
		return r
	}, s)
}

// written turns the marks of a sentence into figures.
func written(s string, style figure.Style) string {
	return unmark(s, func(kind rune, value string) string { return eyed(kind, value, style) }, true)
}

// heard turns the marks of a sentence into words.
func heard(s string, style figure.Style) string {
	return unmark(s, func(kind rune, value string) string { return eared(kind, value, style) }, false)
}

// readBack says a text for the ear with every length also digit by digit where ears mix it up.
func readBack(s string, style figure.Style) string {
	text := unmark(s, func(kind rune, value string) string {
		if kind == exactly || kind == eachOf {
			kind = oneByOne
		}
		return eared(kind, value, style)
	}, false)
	return spokenSentence(text)
}

// unmark replaces each mark.
func unmark(s string, word func(rune, string) string, eye bool) string {
	var b strings.Builder
	hidden := false
	for len(s) > 0 {
		r, n := utf8.DecodeRuneInString(s)
		switch {
		case r == eyeOpen:
			hidden = !eye
		case r == eyeClose:
			hidden = false
		case hidden:
		case r == markOpen:
			end := strings.IndexByte(s, markClose)
			if end < 3 {
				break
			}
			kind := rune(s[1])
			if kind == begins {
				b.WriteString(upper(word(howMany, s[2:end])))
			} else {
				b.WriteString(word(kind, s[2:end]))
			}
			s = s[end+1:]
			continue
		default:
			b.WriteRune(r)
		}
		s = s[n:]
	}
	return b.String()
}

// eyed writes one figure.
func eyed(kind rune, value string, style figure.Style) string {
	switch kind {
	case sized:
		return value
	case operator:
		return signOf(value)
	case howMany:
		if n, err := strconv.Atoi(value); err == nil && n >= 0 && n <= 12 {
			return small[n]
		}
		return value
	}
	r := exact.Must(value)
	unit := ""
	if style.Metric {
		unit = " mm"
	}
	switch kind {
	case exactly, oneByOne:
		return style.Length(r) + unit
	case bareNearest:
		near, _ := style.Near(r)
		return near
	case nearest:
		near, _ := style.Near(r)
		return near + unit
	case onTape:
		return style.About(r) + unit
	case bothWays:
		return both(r, style, unit)
	case oneWay:
		text, _, _ := strings.Cut(both(r, style, unit), " (")
		return text
	case cutDown:
		return style.Down(r) + unit
	case eachOf, inSum:
		return style.Length(r)
	case withUnit:
		return style.Length(r) + " " + style.Unit()
	case cashed:
		return thousands(solver.Cents(r))
	case cashExact:
		return cash(r)
	case percent:
		return solver.Decimal(r) + "%"
	case decimal:
		return solver.Decimal(r)
	case plain:
		return thousands(solver.Fraction(r))
	}
	return value
}

// both writes a length exactly, and the nearest mark beside it where the tape does not show it. A fraction that nobody
// has in the head is left to the nearest mark alone.
func both(r exact.Rat, style figure.Style, unit string) string {
	near, on := style.Near(r)
	_, den := r.Frac()
	switch {
	case on:
		return near + unit
	case style.Metric || !den.IsInt64() || den.Int64() > 20:
		return "about " + near + unit
	}
	return style.Length(r) + unit + " (about " + near + unit + ")"
}

// thousands sets commas into a whole number of five digits or more.
func thousands(s string) string {
	whole, rest := s, ""
	if i := strings.IndexAny(s, ".-/"); i > 0 {
		whole, rest = s[:i], s[i:]
	}
	if len(whole) < 5 || strings.HasPrefix(rest, "/") {
		return s
	}
	for i := len(whole) - 3; i > 0; i -= 3 {
		whole = whole[:i] + "," + whole[i:]
	}
	return whole + rest
}

// upper makes the first letter a capital, also that of a count which is still to be put into a word.
func upper(s string) string {
	if strings.HasPrefix(s, string(markOpen)+string(howMany)) {
		return string(markOpen) + string(begins) + s[2:]
	}
	r, n := utf8.DecodeRuneInString(s)
	if !unicode.IsLetter(r) {
		return s
	}
	return string(unicode.ToUpper(r)) + s[n:]
}
