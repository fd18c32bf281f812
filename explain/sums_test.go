package explain

import (
	"go/ast"
	"go/parser"
	"go/token"
	"math/big"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
)

// The evaluator reads a printed sum with Go's own parser and works it out with math/big: it shares nothing with what
// wrote the sum.
var (
	mixedNumber = regexp.MustCompile(`\b(\d[\d,]*)-(\d+)/(\d+)\b`)
	fraction    = regexp.MustCompile(`(^|[ (])(\d+)/(\d+)\b`)
	signsOf     = strings.NewReplacer("×", "*", "÷", "/", "−", "-", ",", "")
)

func worked(t *testing.T, text string) *big.Rat {
	t.Helper()
	s := mixedNumber.ReplaceAllString(text, "($1+$2/$3)")
	s = fraction.ReplaceAllString(s, "$1($2/$3)")
	e, err := parser.ParseExpr(signsOf.Replace(s))
	require.NoError(t, err, "%s as %s", text, s)
	defer func() {
		if t.Failed() {
			t.Log(text, "as", s)
		}
	}()
	return evaluated(t, e)
}

func evaluated(t *testing.T, e ast.Expr) *big.Rat {
	t.Helper()
	switch e := e.(type) {
	case *ast.ParenExpr:
		return evaluated(t, e.X)
	case *ast.UnaryExpr:
		require.Equal(t, token.SUB, e.Op)
		return new(big.Rat).Neg(evaluated(t, e.X))
	case *ast.BasicLit:
		r, ok := new(big.Rat).SetString(e.Value)
		require.True(t, ok, e.Value)
		return r
	case *ast.BinaryExpr:
		a, b := evaluated(t, e.X), evaluated(t, e.Y)
		switch e.Op {
		case token.ADD:
			return a.Add(a, b)
		case token.SUB:
			return a.Sub(a, b)
		case token.MUL:
			return a.Mul(a, b)
		case token.QUO:
			return a.Quo(a, b)
		}
	}
	require.Failf(t, "no arithmetic", "%T %v", e, e)
	return nil
}

// equations are all "left = right" of a text in which the left side is a sum: the longest run of figures and signs on
// either side of each equals sign.
var equation = regexp.MustCompile(`([\d(][\d,./() ×÷−-]*[×÷+−][\d,./() ×÷+−-]*) = (\(?−?[\d,]+(?:\.\d+|-\d+/\d+|/\d+)?\)?)`)

// columns parts a text into lines, and lines into what stands in their columns.
var columns = regexp.MustCompile(`\n|  +`)

// checkText works out every equation of a text again, and returns how many there were.
func checkText(t *testing.T, text string) int {
	t.Helper()
	n := 0
	for _, line := range columns.Split(text, -1) {
		for _, m := range equation.FindAllStringSubmatch(line, -1) {
			require.Zero(t, worked(t, m[1]).Cmp(worked(t, m[2])), "%s\nin %s", m[0], text)
			n++
		}
	}
	return n
}

// checkWork works out a line of work as it is said; a comparison says both sides, each worked out where it is a sum.
func checkWork(t *testing.T, w solver.Work) {
	t.Helper()
	require.NotEmpty(t, w.Says)
	says := strings.TrimSuffix(strings.TrimSuffix(strings.TrimSuffix(strings.TrimSuffix(w.Says, " in"), " mm"), " sq"), " ")
	if w.Expr.IsComparison() {
		checkText(t, w.Says)
		return
	}
	left, right, ok := strings.Cut(says, " = ")
	if !ok {
		worked(t, says)
		return
	}
	require.Zero(t, worked(t, left).Cmp(worked(t, right)), w.Says)
}

func TestEverySumIsTrue(t *testing.T) {
	texts, lines := 0, 0
	eachAnswer(t, Options{Width: 100}, func(t *testing.T, a *solver.Answer) {
		texts += checkText(t, a.Text)
		for _, w := range a.Work {
			checkWork(t, w)
			lines++
		}
		for _, c := range a.Conflicts {
			for _, w := range c.Work {
				checkWork(t, w)
				lines++
			}
		}
		for _, c := range a.Check {
			for _, w := range c.Work {
				checkWork(t, w)
			}
		}
	})
	t.Logf("%d sums in texts, %d lines of work", texts, lines)
	require.Greater(t, texts, 250)
	require.Greater(t, lines, 500)
}

// The evaluator itself: sums worked out by hand, and wrong ones that it must refuse.
func TestTheEvaluator(t *testing.T) {
	for _, s := range []string{
		"5 × 5-1/2 = 27-1/2   wood", "40 − 27-1/2 − 8 = 4-1/2", "17 ÷ 6 = 2-5/6", "38-1/2 + 12 = 50-1/2, and the wall is 50",
		"(50 − 7 × 5-1/2) ÷ 6 = 1-11/12", "4 × 2-13/16 + 2 × 2-7/8 = 17", "5/16 × 8 ÷ 40 = 1/16", "2 × 2.38125 = 4.7625",
		"10 × 192 + 91 = 2011", "1,920 + 91 = 2,011",
	} {
		require.Equal(t, 1, checkText(t, s), s)
	}
	for _, s := range []string{"5 × 5-1/2 = 27", "17 ÷ 6 = 2-5/7", "40 − 27-1/2 = 12"} {
		m := equation.FindStringSubmatch(s)
		require.NotNil(t, m, s)
		require.NotZero(t, worked(t, m[1]).Cmp(worked(t, m[2])), s)
	}
}
