package solver

import (
	"go/ast"
	"go/parser"
	"go/token"
	"math/big"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

// evaluate reads written arithmetic with Go's own parser and computes it with math/big: it shares nothing with Expr.
func evaluate(t *testing.T, s string) exact.Rat {
	t.Helper()
	e, err := parser.ParseExpr(s)
	require.NoError(t, err, s)
	return exact.FromBig(valueOf(t, e))
}

func valueOf(t *testing.T, e ast.Expr) *big.Rat {
	t.Helper()
	switch e := e.(type) {
	case *ast.ParenExpr:
		return valueOf(t, e.X)
	case *ast.BasicLit:
		r, ok := new(big.Rat).SetString(e.Value)
		require.True(t, ok, e.Value)
		return r
	case *ast.UnaryExpr:
		require.Equal(t, token.SUB, e.Op)
		return new(big.Rat).Neg(valueOf(t, e.X))
	case *ast.BinaryExpr:
		a, b := valueOf(t, e.X), valueOf(t, e.Y)
		switch e.Op {
		case token.ADD:
			return new(big.Rat).Add(a, b)
		case token.SUB:
			return new(big.Rat).Sub(a, b)
		case token.MUL:
			return new(big.Rat).Mul(a, b)
		case token.QUO:
			return new(big.Rat).Quo(a, b)
		}
	}
	require.Failf(t, "no arithmetic", "%T", e)
	return nil
}
