package explain

import (
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// form is a normal form as far as words need it: what is spoken of, the relation, and what it is held to.
type form struct {
	name  string // "bay 2 stiffeners"
	wall  string // "north wall"
	op    string // "=", "~", "<", "<=", ">", ">=", "in", "x"; "" for a goal or a bare word
	value string // as written: "2-1/2 in", "gap", "wall height + 2 in", "2x6"
	upper string // of a range
}

var relations = []string{" += ", " -= ", " *= ", " <= ", " >= ", " = ", " ~ ", " < ", " > "}

// read takes a normal form apart. What has no relation is a name alone.
func read(s string) form {
	var f form
	if wall, rest, ok := strings.Cut(s, ": "); ok {
		f.wall, s = wall, rest
	}
	at := len(s)
	for _, r := range relations {
		if i := strings.Index(s, r); i > 0 && i < at {
			at, f.op = i, strings.TrimSpace(r)
		}
	}
	if f.op != "" {
		f.name, f.value = s[:at], s[at+len(f.op)+2:]
		return f
	}
	if i := strings.Index(s, " in "); i > 0 && strings.Contains(s[i:], "..") {
		f.name, f.op = s[:i], "in"
		f.value, f.upper, _ = strings.Cut(s[i+4:], "..")
		return f
	}
	if i := strings.LastIndex(s, " x "); i > 0 && (strings.HasPrefix(s, "have ") || strings.HasPrefix(s, "extra ")) {
		return form{wall: f.wall, name: s[:i], op: "x", value: s[i+3:]}
	}
	f.name = s
	return f
}

// length reads "2-1/2 in" or "63.5 mm" in inches.
func length(s string) (exact.Rat, bool) {
	s = strings.TrimSpace(s)
	mm := strings.HasSuffix(s, " mm")
	s, isLength := strings.CutSuffix(strings.TrimSuffix(s, " mm")+" in", " in")
	s = strings.TrimSuffix(s, " in")
	if !isLength {
		return exact.Rat{}, false
	}
	r, ok := mixed(s)
	if mm && ok {
		r = r.Div(solver.PerInch)
	}
	return r, ok
}

// mixed reads a number as normal forms write it: 2-1/2, 3/8, 144, 2.37, -1-1/2.
func mixed(s string) (exact.Rat, bool) {
	neg := strings.HasPrefix(s, "-")
	s = strings.TrimPrefix(s, "-")
	whole, part, has := strings.Cut(s, "-")
	r, err := exact.Parse(whole)
	if err != nil {
		return exact.Rat{}, false
	}
	if has {
		p, err := exact.Parse(part)
		if err != nil {
			return exact.Rat{}, false
		}
		r = r.Add(p)
	}
	if neg {
		r = r.Neg()
	}
	return r, true
}

// isLength reports whether a written value carries a unit of length.
func isLength(s string) bool { return strings.HasSuffix(s, " in") || strings.HasSuffix(s, " mm") }

// figureOf turns a written value into a figure of a sentence: a length, a size, a plain number, or the words themselves.
func (v *voice) figureOf(s string) string {
	if mm, ok := strings.CutSuffix(s, " mm"); ok && !v.Metric { // what was said in millimeters is told so, though the rest is in inches
		if r, ok := mixed(mm); ok {
			return number(r) + " millimeters"
		}
	}
	if isLength(s) {
		if r, ok := length(s); ok {
			return v.length(r)
		}
	}
	if r, ok := mixed(s); ok {
		if i := strings.IndexByte(s, '.'); i > 0 && len(s) == i+3 {
			return money(r) // only money is written with two decimals
		}
		return number(r)
	}
	if share, ok := strings.CutSuffix(s, "%"); ok {
		if r, ok := mixed(share); ok {
			return mark(percent, r.String())
		}
	}
	if strings.Contains(s, "x") && strings.ContainsAny(s, "0123456789") && !strings.Contains(s, " ") {
		return size(s)
	}
	if list := strings.Split(s, ", "); len(list) > 1 {
		for i := range list {
			list[i] = v.figureOf(list[i])
		}
		return and(list)
	}
	return quoted(s)
}

// shownOf is figureOf for what is sold or set by the tape: lengths stand as a tape shows them, and "about" is said once for all.
func (v *voice) shownOf(s string) string {
	var at []exact.Rat
	for _, one := range strings.Split(s, ", ") {
		r, ok := length(one)
		if !ok || !isLength(one) {
			return v.figureOf(s)
		}
		at = append(at, r)
	}
	return v.places(at)
}

// and joins words as a person lists them: "a, b and c".
func and(list []string) string { return joined(list, "and") }

func joined(list []string, word string) string {
	switch len(list) {
	case 0:
		return ""
	case 1:
		return list[0]
	}
	return strings.Join(list[:len(list)-1], ", ") + " " + word + " " + list[len(list)-1]
}
