package grammar

import (
	"encoding/xml"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// spellRule is one rule of Unicode CLDR's rule-based number format (UTS 35, part 3, "Rule-Based Number Formatting"): from
// base on, a number is written as text, in which ←← stands for the quotient by the rule's divisor, →→ for what is left
// over, =%set= for the number itself by another set of rules, and brackets for what falls away where nothing is left over.
type spellRule struct {
	base, divisor int
	text          string
}

type spellRules map[string][]spellRule

// readSpellRules reads the rules for whole numbers that stand in testdata/published/cldr-en-rbnf.xml (Unicode CLDR 41,
// common/rbnf/en.xml).
func readSpellRules(t *testing.T) spellRules {
	raw, err := os.ReadFile("../testdata/published/cldr-en-rbnf.xml")
	require.NoError(t, err)
	var doc struct {
		Sets []struct {
			Type  string `xml:"type,attr"`
			Rules []struct {
				Value string `xml:"value,attr"`
				Radix string `xml:"radix,attr"`
				Text  string `xml:",chardata"`
			} `xml:"rbnfrule"`
		} `xml:"rbnf>rulesetGrouping>ruleset"`
	}
	require.NoError(t, xml.Unmarshal(raw, &doc))
	out := spellRules{}
	for _, s := range doc.Sets {
		for _, r := range s.Rules {
			base, err := strconv.Atoi(r.Value)
			if err != nil || base > 1_000_000 {
				continue // "-x", "x.x", "Inf": no whole number of a wall
			}
			radix := 10
			if r.Radix != "" {
				radix, err = strconv.Atoi(r.Radix)
				require.NoError(t, err)
			}
			rule := spellRule{base: base, divisor: 1, text: strings.TrimPrefix(strings.TrimSuffix(r.Text, ";"), "'")}
			for rule.divisor*radix <= base {
				rule.divisor *= radix
			}
			out[s.Type] = append(out[s.Type], rule)
		}
	}
	require.NotEmpty(t, out["spellout-cardinal"])
	require.NotEmpty(t, out["spellout-ordinal"])
	return out
}

// spell writes n by a set of rules.
func (s spellRules) spell(set string, n int) string {
	rule := s[set][0]
	for _, r := range s[set] {
		if r.base <= n {
			rule = r
		}
	}
	text := rule.text
	if i, j := strings.Index(text, "["), strings.Index(text, "]"); i >= 0 && j > i {
		inside := text[i+1 : j]
		if n%rule.divisor == 0 {
			inside = ""
		}
		text = text[:i] + inside + text[j+1:]
	}
	for mark, value := range map[string]int{"←": n / rule.divisor, "→": n % rule.divisor, "=": n} {
		text = s.substitute(text, mark, set, value)
	}
	return text
}

// substitute puts a number in the place of what stands between two marks: "←←", "→%%and→", "=%spellout-numbering=".
func (s spellRules) substitute(text, mark, set string, n int) string {
	i := strings.Index(text, mark)
	if i < 0 {
		return text
	}
	rest := text[i+len(mark):]
	j := strings.Index(rest, mark)
	if name := strings.TrimLeft(rest[:j], "%"); name != "" {
		set = name
	}
	return text[:i] + s.spell(set, n) + rest[j+len(mark):]
}

// TestSpellRules holds the interpreter of the rules to examples of UTS 35 and of plain English.
func TestSpellRules(t *testing.T) {
	s := readSpellRules(t)
	for n, want := range map[int]string{0: "zero", 7: "seven", 13: "thirteen", 40: "forty", 42: "forty-two", 100: "one hundred", 144: "one hundred forty-four", 1000: "one thousand", 1234: "one thousand two hundred thirty-four"} {
		require.Equal(t, want, s.spell("spellout-cardinal", n))
	}
	for n, want := range map[int]string{101: "one hundred and one", 144: "one hundred and forty-four", 1012: "one thousand and twelve", 2345: "two thousand three hundred and forty-five"} {
		require.Equal(t, want, s.spell("spellout-cardinal-verbose", n))
	}
	for n, want := range map[int]string{3: "third", 8: "eighth", 16: "sixteenth", 20: "twentieth", 32: "thirty-second", 64: "sixty-fourth", 100: "one hundredth", 128: "one hundred twenty-eighth"} {
		require.Equal(t, want, s.spell("spellout-ordinal", n))
	}
}
