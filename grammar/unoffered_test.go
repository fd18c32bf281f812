package grammar

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/grammar/act"
	"saywright/grammar/lex"
)

// A misspelled word is taken only for one that is spelled well.
func TestNoMisspelledWordIsOffered(t *testing.T) {
	for was, now := range map[string]string{"bottm": "bottom", "wth": "with", "rials": "rails", "chnaged": "changed", "brakets": "brackets", "stifenrs": "stiffeners"} {
		near := lex.Words().Near(was)
		require.NotEmpty(t, near, was)
		require.Equal(t, now, near[0], was)
	}
	for line, now := range map[string]string{"opening 30 wth 5 rails": "with", "bottm gap 4": "bottom", "four rials": "rails", "stifenrs 2": "stiffeners"} {
		r := Read(line, act.Context{})
		require.Nil(t, r.Ask, line)
		require.Len(t, r.Taken, 1, line)
		require.Equal(t, now, r.Taken[0].Now, line)
	}
}

// What may be a number misspelled is never left out of an offer: what is left of the figure would say something else.
func TestNoPieceOfAFigureIsOffered(t *testing.T) {
	for _, line := range []string{"opening thrity two on the lfet", "put the opning at forthy two", "wall frty eight"} {
		r := Read(line, act.Context{})
		require.NotNil(t, r.Ask, line)
		require.Empty(t, Offer(line, act.Context{}, r.Ask), line)
	}
}
