package grammar

import (
	"regexp"
	"strings"

	"saywright/grammar/act"
	"saywright/solver"
)

// A post that leans "in 1/4 at the top" leans so over the wall's height, where that is told in the same line or stands: the top is the wall's.

var (
	endPostSaid = regexp.MustCompile(`\b(?:the |my |our )?(?:left|right)(?:[- ]hand)?(?: end)? post\b`)
	leansAtTop  = regexp.MustCompile(`,? (?:at|in|up at) the top\b`)
	leansOver   = regexp.MustCompile(`\b(?:over|per|high)\b|\bin (?:[0-9]+|a|one|two|three|four|five|six) ?(?:in|inch|inches|ft|foot|feet|mm|cm|m|meters?)\b.*\bin (?:[0-9]|a |one|two|three|four|five|six)`)
)

// leanAtTop reads how far an end post leans at the top of the wall.
func leanAtTop(line string, c act.Context) (act.Reading, bool) {
	if c.Deep || !strings.Contains(line, "post") || !strings.Contains(line, "top") {
		return act.Reading{}, false
	}
	said := strings.ToLower(strings.TrimRight(strings.Join(strings.Fields(line), " "), " .!"))
	at, top := endPostSaid.FindStringIndex(said), leansAtTop.FindStringIndex(said)
	if at == nil || top == nil || top[0] < at[1] || top[1] != len(said) || strings.Contains(said, "?") || !leansSaid.MatchString(said[at[1]:]) || leansOver.MatchString(said[at[1]:]) {
		return act.Reading{}, false
	}
	c.Deep = true
	head := strings.TrimRight(strings.TrimSuffix(strings.TrimRight(said[:at[0]], " ,.;"), " and"), " ,.;")
	var told act.Reading
	high := ""
	if head != "" {
		if told = Read(head, c); told.Ask != nil {
			return act.Reading{}, false
		}
		for _, a := range told.Acts {
			if a.Kind != act.State {
				return act.Reading{}, false
			}
			for _, s := range a.Statements {
				if s.Name == (solver.Name{Quantity: solver.WallHeight}) && s.Op == solver.Eq && s.Value.Of == nil {
					_, high, _ = strings.Cut(a.String(), " = ")
				}
			}
		}
	} else if c.Now != nil {
		if h, ok := c.Now(solver.Name{Quantity: solver.WallHeight}); ok && h.Sign() > 0 {
			high = solver.Fraction(h) + " in"
			if c.Metric {
				high = solver.Decimal(h.Mul(solver.PerInch)) + " mm"
			}
		}
	}
	if high == "" {
		return act.Reading{}, false
	}
	lean, ok := readsLean(said[at[0]:top[0]]+" over "+high, line, c)
	if !ok {
		return act.Reading{}, false
	}
	return act.Reading{Acts: append(told.Acts, lean.Acts...)}, true
}
