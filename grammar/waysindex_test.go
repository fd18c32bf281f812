package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// TestWayIndex: a table that is looked through by what its ways need finds what its expressions find.
func TestWayIndex(t *testing.T) {
	for _, table := range [][]openWay{openWays, elsewhereSaid, meantOtherwise} {
		index, found := indexWays(table), 0
		for n, p := range append(phraseLists(t), listsIn(t, "../testdata/phrases/later/lookalikes*.tsv")...) {
			if n%6 != 0 {
				continue
			}
			letters, _ := foldLine(p.said)
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
