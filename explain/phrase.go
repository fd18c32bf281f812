package explain

import (
	"strconv"
	"strings"

	"saywright/solver"
	"saywright/solver/exact"
)

// the names what a normal form speaks of: "the gap", "bay 2", "rail 3's top".
func (v *voice) the(name string) string {
	t, q, part := thingOf(name)
	switch {
	case q == "" || t.the == "":
		return v.itself(name)
	case part == "":
		return t.the
	case q == solver.Bay || q == solver.Opening:
		return part
	case q == solver.Stock || q == solver.Boards:
		return "the " + part + " boards"
	case strings.HasPrefix(part, "bay"):
		return t.the + " in " + part
	}
	return part + "'s " + strings.TrimPrefix(t.the, "the ")
}

// itself says a name of a shape of its own.
func (v *voice) itself(name string) string {
	words := strings.Fields(name)
	switch {
	case strings.HasSuffix(name, " top") && strings.HasPrefix(name, "rail "):
		return "the top of rail " + words[1]
	case strings.HasPrefix(name, "fixed rail "):
		return "the top of rail " + words[2] + ", which is up"
	case strings.HasPrefix(name, "post ") && strings.Contains(name, " from "):
		return "post " + words[1] + "'s place from the " + words[len(words)-1]
	case strings.HasPrefix(name, "measured "):
		return v.measuredPlace(strings.TrimPrefix(name, "measured "))
	case strings.HasPrefix(name, "price "):
		return "the price of " + v.sold(strings.TrimPrefix(name, "price "))
	case strings.HasPrefix(name, "cut "):
		return v.cutPlace(strings.TrimPrefix(name, "cut "))
	case name == "marks":
		return "the marks"
	}
	return quoted(name)
}

// amount says what a quantity is held to: "48", "48 or more", "under 4", "about 48", "40 to 50".
func (v *voice) held(f form) string { return related(f.op, v.figureOf(f.value), v.figureOf(f.upper)) }

func related(op, value, upper string) string {
	switch op {
	case "<=":
		return value + " or less"
	case ">=":
		return value + " or more"
	case "<":
		return "less than " + value
	case ">":
		return "more than " + value
	case "~":
		return "about " + value
	case "in":
		return value + " to " + upper
	}
	return value
}

// phrase puts a normal form into words that can stand in a list: "six rails", "a gap of 2-1/2", "2x6 rails".
func (v *voice) phrase(s string) string {
	f := read(s)
	p := v.phraseOf(f)
	if f.wall != "" {
		p = quoted(f.wall) + ": " + p
	}
	return p
}

var unitWords = map[string]string{"metric": "millimeters", "customary": "feet and inches"}

func (v *voice) phraseOf(f form) string {
	t, q, part := thingOf(f.name)
	if f.op != "" {
		if s, ok := v.shaped(f); ok {
			return s
		}
	}
	switch {
	case f.op == "":
		return v.goal(f.name)
	case f.name == string(solver.Units):
		return unitWords[f.value]
	case leans(f.value):
		return v.leaning(f)
	case q == "":
		return v.itself(f.name) + " at " + v.held(f)
	case t.one != "":
		return v.counted(t, f) + inPart(part)
	case solver.KindOf(q) == solver.Size:
		return size(f.value) + " " + strings.TrimPrefix(strings.TrimPrefix(t.a, "a "), "an ")
	}
	return v.measured(t, q, part, f)
}

func inPart(part string) string {
	if part == "" {
		return ""
	}
	return " in " + part
}

// counted says a count: "six rails", "six rails or more", "five to seven rails".
func (v *voice) counted(t thing, f form) string {
	n, err := strconv.Atoi(f.value)
	if err != nil {
		return related(f.op, f.value, f.upper) + " " + t.many
	}
	name := t.many
	if n == 1 && f.upper == "" {
		name = t.one
	}
	switch f.op {
	case "<=":
		return count(n) + " " + name + " or fewer"
	case ">=":
		return count(n) + " " + name + " or more"
	case "<":
		return "fewer than " + count(n) + " " + name
	case "in":
		if m, err := strconv.Atoi(f.upper); err == nil {
			return count(n) + " to " + count(m) + " " + name
		}
	}
	return related(f.op, count(n), "") + " " + name
}

// measured says a length, and the few quantities whose words are their own.
func (v *voice) measured(t thing, q solver.Quantity, part string, f form) string {
	value := v.held(f)
	switch q {
	case solver.OpeningSide:
		return v.theOpening(part) + " " + sideWords(f.value)
	case solver.BracketClearance:
		return "brackets that need " + value + " between rails"
	case solver.FloorAtRight:
		if r, ok := length(f.value); ok && r.Sign() == 0 {
			return "a level floor"
		}
		return "the floor at the right at " + value
	case solver.Bay:
		if part == "" {
			return "bays of " + value
		}
		return part + " at " + value
	case solver.Opening:
		if part != "" {
			return part + " at " + value
		}
	case solver.OpeningFromLeft:
		return v.theOpening(part) + " " + value + " from the left post"
	case solver.OpeningFromRight:
		return v.theOpening(part) + " " + value + " from the right post"
	case solver.Stock:
		if part != "" {
			return part + " boards of " + value
		}
	case solver.Centers:
		return "end posts " + value + " center to center"
	case solver.Fit:
		return value + " of play in all"
	case solver.BaseHeight:
		return "a base that lifts the post " + value
	case solver.Kerf:
		return "a saw cut of " + value
	case solver.Tape:
		return "marks to " + value
	case solver.Spare:
		if strings.HasSuffix(f.value, "%") {
			return value + " of lumber to spare"
		}
		if f.value == "1" {
			return value + " board to spare"
		}
		return value + " boards to spare"
	}
	if part != "" {
		return v.the(f.name) + " at " + value
	}
	return t.a + " of " + value
}

func (v *voice) theOpening(part string) string {
	if part == "" {
		return "the opening"
	}
	return part
}

func sideWords(side string) string {
	if side == "middle" {
		return "in the middle"
	}
	return "against the " + quoted(side) + " post"
}

// plural says a count with its noun: "one added post", "two bays".
func plural(n int, one, many string) string {
	if n == 1 {
		return count(n) + " " + one
	}
	return count(n) + " " + many
}

func ints(list []exact.Rat) []int {
	out := make([]int, len(list))
	for i, r := range list {
		n, _ := r.Int64()
		out[i] = int(n)
	}
	return out
}
