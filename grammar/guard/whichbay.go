package guard

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"saywright/grammar/act"
	"saywright/grammar/askback"
	"saywright/grammar/parse"
	"saywright/grammar/ways"
	"saywright/solver"
	"saywright/solver/exact"
)

// What was measured "between the posts" or at "the bottom" is the first bay's only where no other bay stands: else it is asked which bay it is.

var (
	bayIsNamed = regexp.MustCompile(`\b(?:bays?|sections?|panels?|stretch) (?:(?:no|number|#) )?(?:[1-9]|one|two|three|four|five|six|a|b|c)\b|\b(?:first|1 st|second|third|fourth|last|left|right|leftmost) (?:hand )?(?:bay|section|panel|stretch)\b|\b(?:first|second|third|left|right) (?:one|bay)\b`)
	atAnEnd    = regexp.MustCompile(`\b(?:bottom|floor|foot|slab|concrete|deck|base|low|top|high|rail|between|bay)\b`)
	leastBay   = exact.Int(12)
)

// WhichBay asks which bay was measured, where a line names none and several stand, or where the figure is none of a bay.
func WhichBay(r act.Reading, said string, c act.Context) act.Reading {
	if r.Ask != nil || !slices.ContainsFunc(r.Acts, measuresFirst) || ways.MatchesWay(bayIsNamed, said) || !ways.MatchesWay(atAnEnd, said) {
		return r
	}
	stand, odd := baysStanding(c), false
	several := c.ManyBays || stand > 1
	for _, a := range r.Acts {
		for _, s := range a.Statements {
			several = several || s.Name.Quantity == solver.Bays && exact.Int(1).Less(s.Value.Num) || s.Name.Quantity == solver.AddedPosts && s.Value.Num.Sign() > 0
			odd = odd || s.Name.Quantity == solver.Measured && s.Value.Num.Less(leastBay)
		}
	}
	at := 0
	q := askback.WhichBayIs.Offering("bay 1 bottom measures 68-3/8")
	q.At = &at
	form := parse.Normal(r.Acts)
	switch {
	case odd || c.Subject != nil && c.Subject.Quantity == solver.Opening && strings.HasPrefix(said, "it "):
		q = solver.Question{At: &at, Text: "Is that the width of bay 1?", Example: q.Example, Choices: []string{form}}
	case several:
		for i := range min(max(stand, 2), mostChoices) {
			q.Choices = append(q.Choices, strings.ReplaceAll(form, "bay 1", "bay "+strconv.FormatInt(i+1, 10)))
		}
	default:
		return r
	}
	return act.Reading{Ask: &q, Own: true}
}

// measuresFirst reports whether an act tells what the first bay measures.
func measuresFirst(a act.Act) bool {
	return a.Kind == act.State && slices.ContainsFunc(a.Statements, func(s solver.Statement) bool {
		return s.Name.Quantity == solver.Measured && s.Name.Bay == 1
	})
}

// mostChoices is how many bays are offered at most.
const mostChoices = 6

// baysStanding is how many bays the layout that stands has; 0 where there is none.
func baysStanding(c act.Context) int64 {
	if c.Now == nil {
		return 0
	}
	n, ok := c.Now(solver.Name{Quantity: solver.Bays})
	if !ok {
		return 0
	}
	count, _ := n.Int64()
	return count
}
