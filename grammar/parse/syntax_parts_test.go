package parse

import (
	"math/rand/v2"
	"testing"

	"github.com/alecthomas/participle/v2/lexer"
	"github.com/stretchr/testify/require"

	"saywright/grammar/lex"
	"saywright/grammar/lexicon"
	"saywright/grammar/measure"
)

// TestItemsInParts: tokens parsed part by part, and remembered, make the items that they make when they are parsed as a whole.
func TestItemsInParts(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 26))
	for range 4000 {
		tokens := make([]lex.Token, rng.IntN(14))
		for i := range tokens {
			tokens[i].Kind = []lexicon.Kind{
				lexicon.Num, lexicon.Num, lexicon.Num, lexicon.Size, lexicon.Part, lexicon.Loc, lexicon.Dim, lexicon.Ordinal, lexicon.Index, lexicon.Rel, lexicon.Under, lexicon.Over, lexicon.Lim, lexicon.Bound, lexicon.About, lexicon.Between, lexicon.From, lexicon.To, lexicon.And, lexicon.Dots, lexicon.Dash, lexicon.Comma, lexicon.Cmd, lexicon.Unknown,
			}[rng.IntN(24)]
			tokens[i].Amt = &measure.Amount{}
		}
		lex, err := lexer.Upgrade(&lex.TokenStream{Tokens: tokens})
		require.NoError(t, err)
		ast, err := parser().ParseFromLexer(lex)
		require.NoError(t, err)
		var want []Item
		for _, p := range ast.Phrases {
			want = append(want, itemBuilder{tokens}.item(p))
		}
		got, err := Items(tokens)
		require.NoError(t, err)
		require.Len(t, got, len(want), "%v", tokens)
		for i := range want {
			require.Same(t, want[i].Token, got[i].Token)
			require.Equal(t, want[i].lim, got[i].lim)
		}
	}
}
