package explain

import (
	"strings"
	"unicode"
)

// cells is how many columns a text takes in a terminal: marks that combine take none, East Asian wide characters two.
func cells(s string) int {
	n := 0
	for _, r := range s {
		n += cellsOf(r)
	}
	return n
}

// cellsOf follows the wide blocks of Unicode's East Asian Width property (UAX 11), by range.
func cellsOf(r rune) int {
	switch {
	case unicode.In(r, unicode.Mn, unicode.Me, unicode.Cf):
		return 0
	case r >= 0x1100 && r <= 0x115f, r >= 0x2e80 && r <= 0x303e, r >= 0x3041 && r <= 0xa4cf, r >= 0xac00 && r <= 0xd7a3,
		r >= 0xf900 && r <= 0xfaff, r >= 0xfe30 && r <= 0xfe6f, r >= 0xff00 && r <= 0xff60, r >= 0xffe0 && r <= 0xffe6,
		r >= 0x1f300 && r <= 0x1faff, r >= 0x20000 && r <= 0x3fffd:
		return 2
	}
	return 1
}

// wrap breaks a text at spaces so that no line is wider than width, but for a word that is wider by itself. A figure
// keeps its sign and its unit: no line begins with "= 12" or "mm" alone.
func wrap(text string, width int) []string {
	var lines []string
	for _, part := range strings.Split(text, "\n") {
		lines = append(lines, wrapLine(part, width)...)
	}
	return lines
}

func wrapLine(text string, width int) []string {
	words := bound(strings.Fields(text), width)
	if len(words) == 0 {
		return []string{""}
	}
	var lines []string
	line := words[0]
	for _, w := range words[1:] {
		if cells(line)+1+cells(w) > width {
			lines = append(lines, line)
			line = w
			continue
		}
		line += " " + w
	}
	return append(lines, line)
}

// bound ties the words of one sum together, so that a line break never cuts one short into another that looks whole.
// A sum that is wider than the line is left to break.
func bound(words []string, width int) []string {
	var out []string
	for i := 0; i < len(words); {
		j := i + 1
		for j < len(words) && (isSign(words[j]) || isSign(words[j-1]) || isUnit(words[j])) && !strings.ContainsAny(words[j-1][len(words[j-1])-1:], ",;:") {
			j++
		}
		tied := strings.Join(words[i:j], " ")
		if j > i+1 && cells(tied) <= width {
			out = append(out, tied)
		} else {
			out = append(out, words[i:j]...)
		}
		i = j
	}
	return out
}

func isSign(w string) bool {
	switch w {
	case "+", "−", "-", "×", "x", "÷", "/", "=", "*":
		return true
	}
	return false
}

func isUnit(w string) bool { return strings.TrimRight(w, ".,;:)") == "mm" }
