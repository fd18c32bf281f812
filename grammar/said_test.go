package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/parse"
	"saywright/grammar/phrase"
	"saywright/grammar/scan"
)

// TestSetPhrasesHold holds what the set phrases read against harmless sentences with the same words.
func TestSetPhrasesHold(t *testing.T) {
	for _, c := range []struct{ line, want string }{
		{"we had the gap at 40 mm but I'd like 50 now", "gap = 50 mm"},
		{"the gap can be as small as 40 mm and as big as 60", "gap in 40 mm..60 mm"},
		{"the yard has a ten footer", "stock = 120 in"},
		{"open porch", "open porch"},
		{"open every gap up a quarter", "gap += 1/4 in"},
		{"half as many rails", "rails *= 1/2"},
		{"twice the gap", "gap *= 2"},
		{"cut the rails an eighth short", "fit = 1/8 in"},
		{"they sell tens and twelves, 2x6", "stock 2x6 = 120 in, 144 in"},
	} {
		r := Read(c.line, act.Context{})
		require.Equal(t, c.want, parse.Normal(r.Acts), c.line)
	}
	for _, line := range []string{"he said three inches, so that's the gap, I doubt it", "we talked about a 40 inch wall", "the lowest is nice", "we want the wall as low as 36"} {
		require.NotNil(t, Read(line, act.Context{}).Ask, line)
	}
}

// TestPatternsOfSetPhrases holds the language of set phrases: groups, what is kept, places, and that the longest wins.
func TestPatternsOfSetPhrases(t *testing.T) {
	b := phrase.BookOf([]phrase.Placed{
		{"cats|(small dogs)|birds sleep", "pets rest", nil},
		{"?(so that) they !(come in|go out) at ##", "$1 $2", nil},
		{"cats sleep # long", "cats $1", nil},
		{"^ hush !.. please $$", "say $1", nil},
		{"mind", "heed", func(_, after []scan.Atom) bool { return len(after) > 0 }},
		{`pay \$`, "pay money", nil},
	})
	for said, want := range map[string]string{
		"the small dogs sleep":              "the pets rest",
		"cats sleep two feet long":          "cats two feet",
		"so that they go out at 3 feet":     "go out 3 feet",
		"well, hush the cat, please.":       "well , say the cat ,",
		"mind the step":                     "heed the step",
		"never mind":                        "never mind",
		"pay $ 3":                           "pay money 3",
		"the cats of the neighbors sleep":   "the cats of the neighbors sleep",
		"they come in late, they go out at": "they come in late , they go out at",
	} {
		letters, _ := scan.Fold(said)
		require.Equal(t, want, scan.Text(b.SetIn(scan.Split(letters))), said)
	}
}
