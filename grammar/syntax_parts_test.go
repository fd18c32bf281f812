package grammar

import (
	"math/rand/v2"
	"testing"

	"github.com/alecthomas/participle/v2/lexer"
	"github.com/stretchr/testify/require"
)

// TestItemsInParts: tokens parsed part by part, and remembered, make the items that they make when they are parsed as a whole.
func TestItemsInParts(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 26))
	for range 4000 {
		tokens := make([]token, rng.IntN(14))
		for i := range tokens {
			tokens[i].kind = []tokenKind{
				kNum, kNum, kNum, kSize, kPart, kLoc, kDim, kOrdinal, kIndex, kRel, kUnder, kOver, kLim, kBound, kAbout, kBetween, kFrom, kTo, kAnd, kDots, kDash, kComma, kCmd, kUnknown,
			}[rng.IntN(24)]
			tokens[i].amt = &amount{}
		}
		lex, err := lexer.Upgrade(&tokenStream{tokens: tokens})
		require.NoError(t, err)
		ast, err := parser().ParseFromLexer(lex)
		require.NoError(t, err)
		var want []item
		for _, p := range ast.Phrases {
			want = append(want, itemBuilder{tokens}.item(p))
		}
		got, err := items(tokens)
		require.NoError(t, err)
		require.Len(t, got, len(want), "%v", tokens)
		for i := range want {
			require.Same(t, want[i].token, got[i].token)
			require.Equal(t, want[i].lim, got[i].lim)
		}
	}
}
