package guard

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/hear"
	"saywright/grammar/scan"
	"saywright/grammar/ways"
)

// TestWayIndex: a table that is looked through by what its ways need finds what its expressions find.
func TestWayIndex(t *testing.T) {
	for _, table := range [][]hear.OpenWay{hear.OpenWays, elsewhereSaid, meantOtherwise} {
		index, found := ways.IndexWays(hear.WaysOf(table)), 0
		for n, line := range linesIn(t, "../../testdata/phrases/*.tsv", "../../testdata/phrases/later/lookalikes*.tsv") {
			if n%6 != 0 && len(table) > 10 {
				continue // a large table finds enough in a sixth of the lines
			}
			letters, _ := scan.Fold(line)
			said := scan.Text(scan.Split(letters))
			may := index.In(said)
			for i, w := range table {
				is := w.Way.MatchString(said)
				require.Equal(t, is, may.Has(int32(i)) && index.Matches(i, said), "%s: %s", w.Way, said)
				if is {
					found++
				}
			}
		}
		require.Positive(t, found, "of %d ways none stands in any line: nothing was compared", len(table))
	}
}

// linesIn are the lines that the lists say.
func linesIn(t *testing.T, patterns ...string) (lines []string) {
	for _, pattern := range patterns {
		files, err := filepath.Glob(pattern)
		require.NoError(t, err)
		require.NotEmpty(t, files, pattern)
		for _, f := range files {
			text, err := os.ReadFile(f)
			require.NoError(t, err)
			for _, line := range strings.Split(string(text), "\n") {
				said, _, _ := strings.Cut(line, "\t")
				lines = append(lines, said)
			}
		}
	}
	return lines
}
