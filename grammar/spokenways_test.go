package grammar

import (
	"os"
	"path/filepath"
	"regexp"
	"regexp/syntax"
	"strings"
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
	require.True(t, matchesWay(regexp.MustCompile(`.`), "gap"))
}

// Looked for only where a line holds what it needs, a way is found in all lines where the expression itself finds it.
func TestWaysAreFoundAsExpressionsFindThem(t *testing.T) {
	files, err := filepath.Glob("../testdata/phrases/*.tsv")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, f := range files {
		text, err := os.ReadFile(f)
		require.NoError(t, err)
		for _, line := range strings.Split(string(text), "\n") {
			line, _, _ = strings.Cut(line, "\t")
			letters, _ := foldLine(line)
			said := textOf(split(letters))
			for _, w := range openWays {
				require.Equal(t, w.way.MatchString(said), matchesWay(w.way, said), "%s: %s", w.way, said)
			}
		}
	}
}
