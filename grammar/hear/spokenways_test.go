package hear

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/scan"
	"saywright/grammar/ways"
)

// Looked for only where a line holds what it needs, a way is found in all lines where the expression itself finds it.
func TestWaysAreFoundAsExpressionsFindThem(t *testing.T) {
	files, err := filepath.Glob("../../testdata/phrases/*.tsv")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, f := range files {
		text, err := os.ReadFile(f)
		require.NoError(t, err)
		for _, line := range strings.Split(string(text), "\n") {
			line, _, _ = strings.Cut(line, "\t")
			letters, _ := scan.Fold(line)
			said := scan.Text(scan.Split(letters))
			for _, w := range OpenWays {
				require.Equal(t, w.Way.MatchString(said), ways.MatchesWay(w.Way, said), "%s: %s", w.Way, said)
			}
		}
	}
}
