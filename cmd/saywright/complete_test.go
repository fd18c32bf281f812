package main

import (
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
)

func TestCompleterAddsWhatIsShared(t *testing.T) {
	require.Equal(t, []string{"ing", "ings"}, endings("open", []string{"opening", "openings", "gap"}))
	require.Equal(t, []string{"ing"}, endings("OPEN", []string{"opening"}))
	require.Equal(t, "ing", sharedStart([]string{"ing", "ings"}))
	require.Equal(t, "", sharedStart([]string{"½", "¼"}), "two characters that share a byte share nothing")
}

func TestColumnsFitTheWidth(t *testing.T) {
	ends := strings.Fields("ap ottom uilding ay ays racket-clearance racket-ear racket-reach ase-height")
	for width := 20; width <= 120; width++ {
		for _, row := range strings.Split(inColumns("b", ends, width), "\n") {
			require.LessOrEqual(t, utf8.RuneCountInString(strings.TrimRight(row, " ")), width-1)
		}
	}
	require.Equal(t, len(ends), strings.Count(inColumns("b", ends, 5), "\n"), "one a row where it is narrow")
}
