package draw

import (
	"fmt"
	"math/rand"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
	"saywright/solver/exact"
)

// saying makes a book of equations: "wall height", "48", "rails", "6", …; lengths in inches.
func saying(t testing.TB, pairs ...string) solver.Book {
	var all []solver.Statement
	for i := 0; i+1 < len(pairs); i += 2 {
		quantity := solver.Quantity(pairs[i])
		value := solver.Value{Word: pairs[i+1]}
		if quantity == solver.Stock {
			value = solver.Value{List: []solver.Value{solver.Inches(q(pairs[i+1]))}}
			all = append(all, solver.Of(quantity, solver.Eq, value))
			continue
		}
		if r, err := exact.Parse(pairs[i+1]); err == nil {
			value = solver.Value{Num: r}
			if solver.KindOf(quantity) == solver.Length {
				value.Unit = solver.Inch
			}
		}
		all = append(all, solver.Of(quantity, solver.Eq, value))
	}
	b, _, _, err := solver.Book{}.WithAll(all, nil)
	require.NoError(t, err)
	return b
}

// TestDrawingsOfTheSolver draws what the solver really answers: the walls that the tests made by hand were only stand-ins.
func TestDrawingsOfTheSolver(t *testing.T) {
	a := solver.Solve(saying(t, "wall height", "40", "gap", "5/2", "span", "149", "opening", "30", "opening side", "right"))
	require.Equal(t, solver.Fits, a.Verdict)
	made := walls()["upstream"].Layout
	require.Equal(t, made.Marks, a.Layout.Marks)
	require.Equal(t, made.Bays, a.Layout.Bays)
	svg, err := SVG(a, Sheet{Wall: "Saltreed Landing"})
	require.NoError(t, err)
	shapes := reread(t, svg)
	requireShows(t, a, found(t, shapes), "upstream")
	requireTidyShapes(t, shapes, "upstream")
	for _, view := range []string{"elevation", "section", "plan"} {
		requireSays(t, string(svg), `data-view="`+view+`"`)
	}
}

// TestRandomDrawingsOfTheSolver says random walls, and draws those that fit and the conflicts of those that do not.
func TestRandomDrawingsOfTheSolver(t *testing.T) {
	r := rand.New(rand.NewSource(41))
	drawn, blocked, pictures := 0, 0, 0
	for i := range 120 {
		a := solver.Solve(saying(t, randomWords(r)...))
		name := "solved wall " + strconv.Itoa(i)
		if a.Verdict == solver.Blocked {
			blocked++
			for _, c := range a.Conflicts {
				if svg := ClashSVG(a, c); svg != nil {
					requireTidy(t, svg, name)
					requireFits(t, Clash(a, c, Options{Width: 40, ASCII: true}), Options{Width: 40, ASCII: true}, name)
					pictures++
				}
			}
			continue
		}
		if a.Layout == nil || a.Layout.Up == nil && a.Layout.Along == nil {
			continue
		}
		drawn++
		svg, err := SVG(a, Sheet{Wall: name})
		require.NoError(t, err, name)
		shapes := reread(t, svg)
		requireShows(t, a, found(t, shapes), name)
		requireTidyShapes(t, shapes, name)
		requireFits(t, Elevation(a, Options{Width: 60}), Options{Width: 60}, name)
	}
	t.Logf("%d drawn, %d blocked with %d pictures", drawn, blocked, pictures)
	require.Greater(t, drawn, 40)
	require.Greater(t, pictures, 10)
}

func randomWords(r *rand.Rand) []string {
	var out []string
	add := func(chance int, q, value string) {
		if r.Intn(100) < chance {
			out = append(out, q, value)
		}
	}
	add(90, "wall height", fmt.Sprint(24+r.Intn(60)))
	add(40, "gap", fmt.Sprintf("%d/16", 24+r.Intn(48)))
	add(20, "rails", fmt.Sprint(2+r.Intn(9)))
	add(20, "bottom gap", fmt.Sprintf("%d/8", r.Intn(48)))
	add(85, "span", fmt.Sprint(60+r.Intn(300)))
	add(50, "opening", fmt.Sprint(24+r.Intn(24)))
	add(30, "opening side", []string{"left", "right", "middle"}[r.Intn(3)])
	add(20, "added posts", fmt.Sprint(r.Intn(4)))
	add(15, "floor at right", fmt.Sprintf("-%d/4", r.Intn(8)))
	add(15, "post height", fmt.Sprint(30+r.Intn(50)))
	return out
}

// TestClashesOfTheSolver holds the pictures against conflicts as the solver tells them.
func TestClashesOfTheSolver(t *testing.T) {
	for want, words := range map[clashKind][]string{
		bracketsMeet:  {"wall height", "48", "gap", "3/2"},
		overHeight:    {"wall height", "50", "rails", "7", "rail size", "2x6"},
		earMeetsFloor: {"bottom gap", "1/2"},
		earPastPost:   {"post height", "40", "wall height", "40", "span", "100", "opening", "30"},
		bayOverBoard:  {"span", "400", "bays", "1", "stock", "192"},
		overSpan:      {"span", "60", "opening", "30", "opening from left", "40"},
	} {
		a := solver.Solve(saying(t, words...))
		require.Equal(t, solver.Blocked, a.Verdict, want)
		kinds := map[clashKind]bool{}
		for _, conflict := range a.Conflicts {
			if c, ok := clashOf(conflict); ok {
				kinds[c.kind] = true
			}
		}
		require.True(t, kinds[want], "%s: got %v", want, kinds)
	}
}

// TestRandomPages holds every picture of job sheets and story poles to the care of a sheet.
func TestRandomPages(t *testing.T) {
	for i, a := range randomWalls(60) {
		name := "random wall " + strconv.Itoa(i)
		job, err := JobSheet(a, Sheet{Wall: name})
		require.NoError(t, err)
		requirePictures(t, job, name+", job")
		if a.Layout.Up == nil {
			continue
		}
		pole, err := StoryPole(a, Sheet{Wall: name, Page: "a4"})
		require.NoError(t, err)
		requirePictures(t, pole, name+", pole")
	}
}
