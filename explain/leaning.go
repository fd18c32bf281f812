package explain

import (
	"strings"

	"saywright/solver"
)

// leans reports whether a value names another quantity.
func leans(value string) bool {
	if isLength(value) && !strings.Contains(value, " + ") && !strings.Contains(value, " - ") {
		return false
	}
	_, name, _ := leaning(value)
	_, q, _ := thingOf(name)
	return q != ""
}

// leaning takes "2 * gap + 1/2 in" apart.
func leaning(value string) (factor, name, more string) {
	name = value
	for _, sign := range []string{" + ", " - "} {
		if head, tail, ok := strings.Cut(name, sign); ok {
			name, more = head, strings.TrimSpace(sign)+" "+tail
			break
		}
	}
	if head, tail, ok := strings.Cut(name, " * "); ok {
		factor, name = head, tail
	}
	return factor, name, more
}

// leaning says a relation to another quantity: "the gap underneath the same as the gap", "posts 2 above the wall".
func (v *voice) leaning(f form) string {
	factor, name, more := leaning(f.value)
	other := v.the(name)
	amount := strings.TrimPrefix(strings.TrimPrefix(more, "+ "), "- ")
	switch {
	case f.name == string(solver.BracketEar) && f.value == "1/2 * "+string(solver.BracketClearance):
		return "brackets that stand past their rail by half of what they need between two"
	case f.name == string(solver.BottomGap) && f.value == string(solver.Gap) && f.op == "=":
		return "the same gap underneath"
	case f.name == string(solver.PostHeight) && name == string(solver.WallHeight) && factor == "" && strings.HasPrefix(more, "+") && f.op == "=":
		return "posts " + v.figureOf(amount) + " above the wall"
	case factor == "2":
		other = "twice " + other
	case factor == "1/2":
		other = "half of " + other
	case factor != "":
		other = factor + " times " + other
	}
	switch {
	case strings.HasPrefix(more, "+") && f.op == "=":
		return v.the(f.name) + " " + v.figureOf(amount) + " more than " + other
	case strings.HasPrefix(more, "-") && f.op == "=":
		return v.the(f.name) + " " + v.figureOf(amount) + " less than " + other
	case strings.HasPrefix(more, "+"):
		other += " and " + v.figureOf(amount)
	case strings.HasPrefix(more, "-"):
		other += " less " + v.figureOf(amount)
	}
	return v.the(f.name) + " " + relation(f.op) + " " + other
}

func relation(op string) string {
	switch op {
	case "<=":
		return "no more than"
	case ">=":
		return "no less than"
	case "<":
		return "less than"
	case ">":
		return "more than"
	case "~":
		return "about"
	}
	return "the same as"
}

// goal says a wish or a flag: "the smallest gap", "equal bays".
func (v *voice) goal(name string) string {
	for _, best := range []string{"smallest ", "largest ", "fewest ", "most ", "least "} {
		if strings.HasPrefix(name, best) {
			return "the " + quoted(name)
		}
	}
	switch name {
	case "same length":
		return "all rails of a bay cut to one length"
	case "even gaps":
		return "even gaps, each mark rounded by itself"
	case "cheapest":
		return "the lowest cost"
	}
	if strings.HasPrefix(name, "floor falls ") {
		return "a floor that " + v.unitFigures(strings.TrimPrefix(name, "floor "))
	}
	if strings.HasPrefix(name, "post ") && strings.Contains(name, " leans ") {
		return v.unitFigures(name)
	}
	if strings.Contains(name, " leans ") {
		return "the " + v.unitFigures(name)
	}
	return quoted(name)
}

// unitFigures turns each length inside a form of its own shape into a figure: "leans 3/8 in right in 48 in".
func (v *voice) unitFigures(s string) string {
	words := strings.Fields(quoted(s))
	var out []string
	for i := 0; i < len(words); i++ {
		if i+1 < len(words) && (words[i+1] == "in" || words[i+1] == "mm") {
			if r, ok := length(words[i] + " " + words[i+1]); ok {
				out = append(out, v.length(r))
				i++
				continue
			}
		}
		out = append(out, words[i])
	}
	return strings.Join(out, " ")
}
