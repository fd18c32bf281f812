// Package draw makes pictures of an answer: the elevation in a terminal, a conflict drawn small, before and after
// side by side, a measured drawing as SVG, a story pole at full size, and the job sheet for the shop wall.
//
// Everything is drawn from one solver.Answer, the same that the words are made from: a drawing scales and places
// labels, and computes no geometry of its own. It knows no rules of the trade, reads no words and writes no files.
package draw

import (
	"errors"
	"strconv"
	"strings"

	"saywright/explain/figure"
	"saywright/solver"
)

// Options is how a picture in the terminal is drawn.
type Options struct {
	Width  int    // columns, 20 to 200 (outside it is taken as 80 or 200); 40 and more is comfortable
	ASCII  bool   // plain ASCII, for terminals that are not UTF-8
	Color  bool   // ANSI color on the part that the sentence is about
	Metric bool   // millimeters, even where the answer is in inches
	Mark   string // what the sentence is about: "gap", "rails", "rail 3", "opening", "bay 1", "post 1", "bottom gap", "wall height", "marks", …
}

// Sheet is what a drawing on paper carries beside the answer.
type Sheet struct {
	Wall string // the wall's name as the person gave it; "" is "half wall"
	Date string // as it is to be read, such as 2031-05-04; "" leaves the field blank
	Page string // "letter" (also ""), or "a4"
}

// ErrNothing says that an answer carries no layout, so that there is nothing to draw yet.
var ErrNothing = errors.New("nothing to draw yet: got no layout, want a wall height or a span first")

func (o Options) width() int {
	switch {
	case o.Width < 20:
		return 80
	case o.Width > 200:
		return 200
	}
	return o.Width
}

func (o Options) reading(a *solver.Answer) reading {
	r := reading{Style: figure.Of(a), near: "≈"}
	r.Metric = r.Metric || o.Metric
	if o.ASCII {
		r.near = "about "
	}
	return r
}

func (s Sheet) name() string {
	if name := strings.TrimSpace(printable(s.Wall)); name != "" {
		return name
	}
	return "half wall"
}

// printable makes one line of text that a page can show and XML can hold: see shown.
func printable(s string) string {
	return shown(oneLine.Replace(s))
}

var oneLine = strings.NewReplacer("\t", " ", "\n", " ", "\r", " ")

// shown drops control characters, bytes that are not UTF-8, and marks that would turn the text around them.
func shown(s string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\n' || r == '\t':
			return r
		case r < 0x20 || r >= 0x7f && r < 0xa0 || r == 0xfffd || r == 0xfffe || r == 0xffff:
			return -1
		case r >= 0x202a && r <= 0x202e || r >= 0x2066 && r <= 0x2069:
			return -1
		}
		return r
	}, strings.ToValidUTF8(s, ""))
}

// subject is what a sentence is about: a kind of part, and which one (0: all of them).
type subject struct {
	kind string
	n    int
}

func subjectOf(mark string) subject {
	mark = strings.TrimSpace(mark)
	if i := strings.LastIndexByte(mark, ' '); i > 0 {
		if n, err := strconv.Atoi(mark[i+1:]); err == nil {
			return subject{kind: singular(mark[:i]), n: n}
		}
	}
	return subject{kind: singular(mark)}
}

// singular folds the plurals of the vocabulary: "rails" and "rail 3" are about the same kind of part.
func singular(kind string) string {
	switch kind {
	case "rails", "bays", "posts", "openings", "gaps", "stiffeners", "marks":
		return strings.TrimSuffix(kind, "s")
	case "added posts", "added post", "post from left", "post from right":
		return "post"
	case "rail size", "rail face", "rail top":
		return "rail"
	case "opening from left", "opening from right", "opening side":
		return "opening"
	case "stiffener spacing", "stiffener size":
		return "stiffener"
	case "overall", "centers":
		return "span"
	}
	return kind
}

type subjects []subject

// about reports whether part n of a kind is among them.
func (s subjects) about(kind string, n int) bool {
	for _, one := range s {
		if one.kind == kind && (one.n == 0 || one.n == n) {
			return true
		}
	}
	return false
}
