package explain

import (
	"strconv"
	"strings"
)

// shaped says a normal form whose name has a shape of its own: measured, have, extra, price, cut, marks, short, a rail
// or a post that is placed.
func (v *voice) shaped(f form) (string, bool) {
	verb, rest, _ := strings.Cut(f.name, " ")
	value := v.held(f)
	switch verb {
	case "measured":
		return v.measuredPlace(rest) + " measures " + value, true
	case "have":
		return v.item(f.value, rest) + " at hand", true
	case "extra":
		return v.item(f.value, rest) + " besides", true
	case "price":
		if n, err := strconv.Atoi(lastWord(rest)); err == nil && !isLength(rest) {
			return mark(plain, itoa(n)) + " " + quoted(strings.TrimSuffix(rest, " "+itoa(n))) + " at " + value, true
		}
		return v.sold(rest) + " at " + value, true
	case "cut":
		return v.cutPlace(rest) + " cut at " + value, true
	case "marks":
		return "marks at " + value, true
	case "boards":
		return v.item(f.value, rest), true
	case "short":
		return v.measuredPlace(rest) + ", " + value + " short", true
	case "fixed":
		return "rail " + between(rest, "rail ", " top") + " up already, its top at " + value, true
	}
	switch {
	case strings.HasPrefix(f.name, "rail ") && strings.HasSuffix(f.name, " top"):
		return "the top of rail " + between(f.name, "rail ", " top") + " at " + value, true
	case verb == "post" && strings.Contains(f.name, " from "):
		return "post " + strings.Fields(f.name)[1] + " at " + value + " from the " + lastWord(f.name), true
	}
	return "", false
}

func lastWord(s string) string { return s[strings.LastIndex(s, " ")+1:] }

func between(s, before, after string) string {
	return quoted(strings.TrimSuffix(strings.TrimPrefix(s, before), after))
}

// measuredPlace says where a tape was held: "bay 1 at the bottom", "rail 3 of bay 1", "the opening".
func (v *voice) measuredPlace(name string) string {
	w := strings.Fields(quoted(name))
	switch {
	case len(w) == 4 && w[2] == "rail":
		return "rail " + w[3] + " of bay " + w[1]
	case len(w) == 3 && w[0] == "bay":
		return "bay " + w[1] + " at the " + w[2]
	case len(w) == 1 && w[0] == "opening":
		return "the opening"
	}
	return strings.Join(w, " ")
}

func (v *voice) cutPlace(name string) string {
	switch {
	case name == "post" || name == "stiffener":
		return name + "s"
	case strings.HasPrefix(name, "bay ") && !strings.Contains(name[4:], " "):
		return "the rails of " + quoted(name)
	}
	return v.measuredPlace(name)
}

// sold says what is sold: "a 2x6 of 192", "a bracket".
func (v *voice) sold(item string) string {
	name, long := v.itemParts(item)
	if long == "" {
		if strings.HasSuffix(item, "s") {
			return name
		}
		return "a " + name
	}
	if strings.HasSuffix(name, "s") {
		return name + " of " + long // "rails of 120"
	}
	return "a " + name + " of " + long
}

// item says so many of something: "two 2x6 of 192", "12 brackets".
func (v *voice) item(n, item string) string {
	name, long := v.itemParts(item)
	k, err := strconv.Atoi(n)
	if err != nil {
		return quoted(n) + " " + name
	}
	if long == "" {
		return count(k) + " " + itemName(item, k)
	}
	return count(k) + " " + name + " of " + long
}

// itemParts takes "2x6 192 in" apart into what it is and how long.
func (v *voice) itemParts(item string) (name, long string) {
	if isLength(item) {
		w := strings.Fields(item)
		if len(w) >= 3 {
			if r, ok := length(strings.Join(w[len(w)-2:], " ")); ok {
				return v.figureOf(strings.Join(w[:len(w)-2], " ")), v.length(r)
			}
		}
	}
	return v.figureOf(item), ""
}
