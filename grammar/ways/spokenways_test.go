package ways

import (
	"regexp"
	"regexp/syntax"
	"testing"

	"github.com/stretchr/testify/require"
)

// What an expression cannot do without is found, and a match is found as the expression itself finds it.
func TestWayKeys(t *testing.T) {
	for way, keys := range map[string][]string{
		`\b(?:i|we) (?:wonder|ponder)s? about\b`: {"i wonders about", "i wonder about", "i ponders about", "i ponder about", "we wonders about", "we wonder about", "we ponders about", "we ponder about"},
		`^(?:so )*which (?:is|are)`:              {"which is", "which are"},
		`(?:abc|defg)(?:x|y)?`:                   {"abcx", "abcy", "abc", "defgx", "defgy", "defg"},
		`(?:a|bc)[0-9]`:                          nil,
		`x*`:                                     nil,
	} {
		tree, err := syntax.Parse(way, syntax.Perl)
		require.NoError(t, err)
		require.Equal(t, keys, neededIn(tree.Simplify()), way)
	}
	require.True(t, MatchesWay(regexp.MustCompile(`.`), "gap"))
}
