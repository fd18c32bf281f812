package grammar

import (
	"strings"

	"saywright/solver"
)

// answer reads the reply to an open question: "1", "the second", "feet", "4 ft"; and to ways out that were offered.
func answer(line string, c Context) ([]Act, bool) {
	if len(c.Choices) == 0 && c.Ways == 0 {
		return nil, false
	}
	letters, _ := foldLine(line)
	tokens := lex(split(letters), c)
	n, ok := choiceNumber(tokens)
	switch {
	case len(c.Choices) == 0:
		if ok && n <= c.Ways && n > 0 {
			return []Act{{Kind: Take, N: n, End: len([]rune(line))}}, true
		}
		return nil, false
	case ok && n >= 1 && n <= len(c.Choices):
		return parsed(c.Choices[n-1], line)
	case ok && n == -1:
		return parsed(c.Choices[len(c.Choices)-1], line)
	}
	if len(c.Choices) == 1 && saysOnly(line, agrees) {
		return parsed(c.Choices[0], line)
	}
	for _, ch := range c.Choices {
		if strings.TrimSpace(strings.ToLower(line)) == ch {
			return parsed(ch, line)
		}
	}
	if i := choiceByUnit(tokens, c.Choices); i >= 0 {
		return parsed(c.Choices[i], line)
	}
	return nil, false
}

func parsed(normal, line string) ([]Act, bool) {
	acts, err := Parse(normal)
	for i := range acts {
		acts[i].End = len([]rune(line))
	}
	return acts, err == nil
}

// choiceNumber reads "1", "the second one", "number two", "the last", "yes" to a single choice.
func choiceNumber(tokens []token) (int, bool) {
	n := 0
	for i := range tokens {
		t := &tokens[i]
		switch {
		case t.kind == kNum && n == 0 && t.amt.unit == bare && t.amt.val.IsInt() && t.amt.bad == "":
			v, _ := t.amt.val.Int64()
			n = int(v)
		case t.kind == kNum && n > 0 && t.text == "one":
		case t.kind == kOrdinal && n == 0:
			n = t.index
		case t.kind == kWayOut || t.is(kKnowing) || t.kind == kFill || t.kind == kStop || t.kind == kComma || t.kind == kCmd && t.key() == "take" || t.kind == kHead && t.key() == "state":
		default:
			return 0, false
		}
	}
	return n, n != 0
}

// choiceByUnit finds the one choice that a unit or a value names: "feet", "4 ft".
func choiceByUnit(tokens []token, choices []string) int {
	var unit string
	var v *amount
	for i := range tokens {
		switch t := &tokens[i]; t.kind {
		case kUnit:
			unit = t.text
		case kNum:
			v = t.amt
		case kUnits:
			unit = t.key()
		case kIt, kStop, kComma, kFill:
		default:
			return -1
		}
	}
	found := -1
	for i, ch := range choices {
		acts, err := Parse(ch)
		if err != nil || len(acts) != 1 || len(acts[0].Statements) != 1 {
			continue
		}
		if !chosen(acts[0].Statements[0], choices, unit, v) {
			continue
		}
		if found >= 0 {
			return -1
		}
		found = i
	}
	return found
}

func chosen(st solver.Statement, choices []string, unit string, v *amount) bool {
	val := st.Value
	if v != nil {
		if v.unit == bare {
			return false
		}
		return v.size != "" && v.size == val.Word || v.size == "" && v.val.Eq(val.Num)
	}
	first, err := Parse(choices[0])
	if err != nil || len(first) != 1 || len(first[0].Statements) != 1 {
		return false
	}
	base := first[0].Statements[0].Value
	switch {
	case footWords[unit]:
		return val.Num.Eq(base.Num.Mul(twelve))
	case inchWords[unit] || unit == "customary":
		return val.Unit == solver.Inch && val.Num.Eq(base.Num)
	case unit == "metric":
		return val.Unit == solver.Millimeter
	}
	size, ok := metricWords[unit]
	return ok && val.Unit == solver.Millimeter && val.Num.Eq(base.Num.Mul(size))
}

// agrees are answers that take the one thing that is offered, and declines those that take nothing of it.
var (
	agrees   = wordSet("yes yeah yep yup yea aye sure right correct exactly ok okay please that it is i do this one do mean the did s")
	declines = wordSet("no nope nah neither none of them those not that either one nothing thanks")
)

// saysOnly reports whether a line says nothing but words of a set.
func saysOnly(line string, set map[string]bool) bool {
	words := strings.FieldsFunc(strings.ToLower(line), func(r rune) bool { return r < 'a' || r > 'z' })
	for _, w := range words {
		if !set[w] {
			return false
		}
	}
	return len(words) > 0 && len(words) < 6
}

// Declines reports whether a line takes nothing of what a question offers: "no", "neither of them".
func Declines(line string) bool {
	words := strings.Fields(strings.ToLower(line))
	return saysOnly(line, declines) && words[0] != "that" && words[0] != "them" && words[0] != "those" && words[0] != "one"
}
