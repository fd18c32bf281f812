package solver

import (
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver/exact"
)

func leaning(n Name, by, way, over string) Statement {
	v := inches(by)
	v.Word = way
	n.Quantity = PostLeans
	return Statement{Name: n, Value: v, Upper: inches(over)}
}

// A post that leans into the opening narrows it at the post's top; one that leans out of it does not, and two that lean alike don't either.
func TestOpeningAtItsNarrowest(t *testing.T) {
	wall := []Statement{Of(WallHeight, Eq, inches("40")), Of(Gap, Eq, inches("5/2")), Of(Span, Eq, inches("149")),
		Of(Opening, Eq, inches("32")), Of(OpeningSide, Eq, Value{Word: "right"})}
	post, right, left := Name{Post: 1}, Name{At: "right"}, Name{At: "left"}
	for _, row := range []struct {
		name  string
		leans []Statement
		least string // "" where it is nowhere narrower
	}{
		{"into it", []Statement{leaning(post, "1/2", "right", "48")}, "505/16"}, // 32 − 1/2 × 42 ÷ 48
		{"out of it", []Statement{leaning(post, "1/2", "left", "48")}, ""},
		{"the end post into it", []Statement{leaning(right, "3/8", "left", "48")}, "2027/64"},
		{"both into it", []Statement{leaning(post, "1/2", "right", "48"), leaning(right, "3/8", "left", "48")}, "1999/64"},
		{"both alike", []Statement{leaning(post, "1/2", "right", "48"), leaning(right, "1/2", "right", "48")}, ""},
		{"the other end post", []Statement{leaning(left, "1/2", "right", "48")}, ""},
	} {
		a := Solve(bookSaying(t, append(wall, row.leans...)...))
		var told *Caution
		for i := range a.Cautions {
			if a.Cautions[i].Key == "leans in" {
				told = &a.Cautions[i]
			}
		}
		if row.least == "" {
			require.Nil(t, told, row.name)
			continue
		}
		require.NotNil(t, told, row.name)
		require.True(t, told.Facts[0].Nums[2].Eq(inches(row.least).Num), row.name)
		require.True(t, told.Work[0].Expr.Value.Eq(inches(row.least).Num), row.name)
		require.True(t, told.Facts[0].Nums[3].Eq(exact.Int(42)), "as high as the post stands")
	}
}

// Nothing that is asked of safety is answered by a yes: what passes and what does not are told as figures.
func TestSafetyFigures(t *testing.T) {
	b := bookSaying(t, Of(WallHeight, Eq, inches("48")), Of(Rails, Eq, Number(5)), Of(Span, Eq, inches("149")), Of(Opening, Eq, inches("30")))
	a := Ask(b, Solve(b), "guard", nil)
	f, ok := nearFact(a, "ball")
	require.True(t, ok)
	require.True(t, f.Nums[0].Eq(inches("33/8").Num), "4-1/10 each; the widest that a tape makes of them")
	false1 := 0
	for _, w := range a.Work {
		if w.Note == "ball stopped" && w.Equals == "false" {
			false1++
		}
	}
	require.Equal(t, 2, false1, "between the rails and underneath")
	low := bookSaying(t, Of(WallHeight, Eq, inches("30")), Of(Gap, Eq, inches("5/2")))
	tall, ok := nearFact(Ask(low, Solve(low), "guard", nil), "tall")
	require.True(t, ok)
	require.True(t, tall.Nums[0].Less(tall.Nums[1]), "a wall of 30 is no guard")
	only := bookSaying(t, Of(Gap, Eq, inches("5/2")), Of(Opening, Eq, inches("36")))
	f, ok = nearFact(Ask(only, Solve(only), "guard", nil), "ball")
	require.True(t, ok, "the gap alone tells it")
	require.True(t, f.Nums[0].Eq(inches("5/2").Num))
	f, ok = nearFact(Ask(only, Solve(only), "passage", nil), "passes")
	require.True(t, ok, "the opening alone tells it")
	require.True(t, f.Nums[2].Eq(inches("36").Num))
	a = Ask(b, Solve(b), "passage", nil)
	short := map[string]string{}
	for _, w := range a.Work {
		if w.Note == "short of" {
			short[w.From] = w.Equals
		}
	}
	require.Equal(t, map[string]string{"36": "6", "32": "2"}, short)
	require.Equal(t, Open, Ask(Book{}, Solve(Book{}), "strength", nil).Verdict)
}
