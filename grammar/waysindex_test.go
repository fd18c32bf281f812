package grammar

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestWayIndex: a table that is looked through by what its ways need finds what its expressions find.
func TestWayIndex(t *testing.T) {
	for _, table := range [][]openWay{openWays, elsewhereSaid, meantOtherwise} {
		index, found := indexWays(waysOf(table)), 0
		for n, line := range linesIn(t, "../testdata/phrases/*.tsv", "../testdata/phrases/later/lookalikes*.tsv") {
			if n%6 != 0 {
				continue
			}
			letters, _ := foldLine(line)
			said := textOf(split(letters))
			may := index.in(said)
			for i, w := range table {
				is := w.way.MatchString(said)
				require.Equal(t, is, may.has(int32(i)) && index.matches(i, said), "%s: %s", w.way, said)
				if is {
					found++
				}
			}
		}
		t.Log(len(table), "ways,", found, "found")
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
