package grammar

import (
	"regexp"
	"strings"

	"saywright/solver"
)

// heldFrom are the ways to say from where to where a length is held, and what is measured so.
var heldFrom = []struct {
	way *regexp.Regexp
	of  solver.Quantity
}{
	{regexp.MustCompile(`^(?:from )?(?:(?:the )?faces? to (?:the )?faces?|in the clear|clear|(?:the )?inside(?: to inside)?|(?:in )?between (?:the |the end )?posts|post to post inside|inside faces?)$`), solver.Span},
	{regexp.MustCompile(`^(?:from )?(?:(?:the )?(?:cent(?:er|re)s?|middles?) to (?:the )?(?:cent(?:er|re)s?|middles?)|on cent(?:er|re)s?|o\.? ?c\.?|cent(?:er|re)s?|c to c)$`), solver.Centers},
	{regexp.MustCompile(`^(?:from )?(?:(?:the )?outside(?: to (?:the )?outside)?|outer to outer|overall|in all|end to end)$`), solver.Overall},
}

// choiceByFaces finds the one choice that is a length held so: "center to center".
func choiceByFaces(line string, choices []string) int {
	if len(choices) < 2 {
		return -1
	}
	said := bareAnswer(line)
	for _, h := range heldFrom {
		if !h.way.MatchString(said) {
			continue
		}
		found := -1
		for i, ch := range choices {
			if !strings.HasPrefix(ch, string(h.of)+" ") {
				continue
			}
			if found >= 0 {
				return -1
			}
			found = i
		}
		return found
	}
	return -1
}
