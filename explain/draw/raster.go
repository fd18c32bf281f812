package draw

import (
	"math"
	"strings"
)

// material is what fills a cell of a picture in the terminal.
type material byte

const (
	air material = iota
	wood
	post
	upright // a stiffener
	ground
	steel // a bracket
	void  // an empty place that the sentence is about
	line  // the height line of a conflict
)

// raster is a picture in the terminal. Each row is split into sub rows: two where half blocks can be shown, else one.
type raster struct {
	cols, rows, sub int
	ascii           bool
	cells           []material // sub rows from the top, cols each
	hot             []bool     // the part that the sentence is about
}

func newRaster(cols, rows int, ascii bool) *raster {
	sub := 2
	if ascii {
		sub = 1
	}
	return &raster{cols: cols, rows: rows, sub: sub, ascii: ascii,
		cells: make([]material, cols*rows*sub), hot: make([]bool, cols*rows*sub)}
}

// fill lays m over columns x0 to x1 and sub rows y0 to y1, the ends not reached; what lies outside is left off.
func (r *raster) fill(x0, x1, y0, y1 int, m material, hot bool) {
	for y := max(y0, 0); y < min(y1, r.rows*r.sub); y++ {
		for x := max(x0, 0); x < min(x1, r.cols); x++ {
			r.cells[y*r.cols+x], r.hot[y*r.cols+x] = m, hot
		}
	}
}

// glyph shows two sub rows of one place as one character.
func (r *raster) glyph(upper, lower material, hot bool) rune {
	if r.ascii {
		return plain(upper, hot)
	}
	for _, m := range []material{upright, post, line, ground, steel, void} {
		if upper == m || lower == m {
			return fine(m, hot)
		}
	}
	switch {
	case upper == wood && lower == wood && hot:
		return '▓'
	case upper == wood && lower == wood:
		return '█'
	case upper == wood:
		return '▀'
	case lower == wood:
		return '▄'
	}
	return ' '
}

// fine and plain are how each material looks; what the sentence is about looks different without color too.
func fine(m material, hot bool) rune {
	switch m {
	case upright:
		return choice(hot, '║', '┃')
	case post:
		return choice(hot, '▓', '▒')
	case ground:
		return '▔'
	case steel:
		return choice(hot, '▚', '┇')
	case line:
		return '╌'
	case void:
		return '·'
	}
	return ' '
}

func plain(m material, hot bool) rune {
	switch m {
	case wood:
		return choice(hot, '*', '=')
	case upright:
		return choice(hot, '!', '|')
	case post:
		return choice(hot, '@', '#')
	case ground:
		return '-'
	case steel:
		return choice(hot, 'X', ':')
	case line:
		return '~'
	case void:
		return '.'
	}
	return ' '
}

// row writes one row, its hot places in color where wanted, without blanks at its end.
func (r *raster) row(i int, color bool) string {
	var b strings.Builder
	var in bool
	last := -1
	runes := make([]rune, r.cols)
	warm := make([]bool, r.cols)
	for x := range r.cols {
		upper := i * r.sub * r.cols
		lower := (i*r.sub + r.sub - 1) * r.cols
		warm[x] = r.hot[upper+x] || r.hot[lower+x]
		if runes[x] = r.glyph(r.cells[upper+x], r.cells[lower+x], warm[x]); runes[x] != ' ' {
			last = x
		}
	}
	for x := 0; x <= last; x++ {
		if on := warm[x] && color && runes[x] != ' '; on != in {
			b.WriteString(ink(on))
			in = on
		}
		b.WriteRune(runes[x])
	}
	if in {
		b.WriteString(ink(false))
	}
	return b.String()
}

// ink switches the color of what the sentence is about on and off: bold cyan, readable on dark and on light.
func ink(on bool) string {
	if on {
		return "\x1b[1;36m"
	}
	return "\x1b[0m"
}

func inked(s string, on bool) string {
	if !on || s == "" {
		return s
	}
	return ink(true) + s + ink(false)
}

// columns counts the characters of s that are shown, color not among them.
func columns(s string) int {
	count, escape := 0, false
	for _, c := range s {
		switch {
		case c == '\x1b':
			escape = true
		case escape:
			escape = c != 'm'
		default:
			count++
		}
	}
	return count
}

func pad(s string, width int) string {
	return s + strings.Repeat(" ", max(width-columns(s), 0))
}

// cut shortens s to width characters; s has no color in it.
func cut(s string, width int) string {
	if r := []rune(s); len(r) > width {
		return string(r[:max(width, 0)])
	}
	return s
}

func round(x float64) int { return int(math.Floor(x + 0.5)) }
