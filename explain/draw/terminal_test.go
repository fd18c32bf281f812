package draw

import (
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
	"saywright/solver/exact"
)

var terminalWidths = []int{40, 80, 120, 200}

// requireFits holds a picture to the terminal: no line too wide, plain ASCII where asked, no blanks at line ends.
func requireFits(t testing.TB, picture string, o Options, name string) {
	require.True(t, strings.HasSuffix(picture, "\n"), name)
	for _, line := range strings.Split(picture, "\n") {
		require.LessOrEqual(t, columns(line), o.width(), "%s at %d: %q", name, o.Width, line)
		require.False(t, strings.HasSuffix(line, " "), "%s: %q", name, line)
		if !o.ASCII {
			continue
		}
		for _, r := range line {
			require.True(t, r == '\x1b' || r >= ' ' && r < 0x7f, "%s: %q is not plain ASCII", name, line)
		}
	}
}

func TestPicturesFitTheTerminal(t *testing.T) {
	list := randomWalls(30)
	for _, a := range walls() {
		list = append(list, a)
	}
	for i, a := range list {
		for _, w := range terminalWidths {
			for _, o := range []Options{{Width: w}, {Width: w, ASCII: true}, {Width: w, Color: true, Mark: "gap"}, {Width: w, Metric: true, ASCII: true, Mark: "opening"}} {
				name := fmt.Sprint("wall ", i)
				requireFits(t, Elevation(a, o), o, name)
				requireFits(t, SideBySide(a, list[(i+1)%len(list)], o), o, name)
			}
		}
	}
	for name, c := range conflicts() {
		for _, w := range []int{20, 40, 80} {
			for _, o := range []Options{{Width: w}, {Width: w, ASCII: true, Color: true}} {
				if p := Clash(nil, c, o); p != "" {
					requireFits(t, p, o, name)
				}
			}
		}
	}
}

var scaleNote = regexp.MustCompile(`a\s+column\s+is\s+(\S+),\s+a\s+row\s+(\S+)\.`)

// scaleIn reads the scale that a picture says it has: inches to a column and to a row.
func scaleIn(t testing.TB, picture string) (col, row float64) {
	m := scaleNote.FindStringSubmatch(picture)
	require.NotNil(t, m, "no scale in\n%s", picture)
	return mixed(t, m[1]), mixed(t, m[2])
}

func mixed(t testing.TB, s string) float64 {
	whole, part, two := strings.Cut(s, "-")
	r, err := exact.Parse(whole)
	require.NoError(t, err)
	if two {
		p, err := exact.Parse(part)
		require.NoError(t, err)
		r = r.Add(p)
	}
	return r.Float()
}

// TestElevationIsToScale reads pictures back by eye's means: where posts begin in the top rows, where wood and gaps
// change down a bay's first column; each within a character of where the answer has it.
func TestElevationIsToScale(t *testing.T) {
	for name, a := range walls() {
		if a.Layout.Up == nil || a.Layout.Along == nil || a.Metric {
			continue
		}
		for _, w := range terminalWidths {
			picture := Elevation(a, Options{Width: w, ASCII: true})
			col, row := scaleIn(t, picture)
			lines := strings.Split(picture, "\n")
			floor := floorRow(t, lines)
			l := a.Layout
			for i, p := range l.Posts {
				x := p.FromLeft.Add(l.EndPostFace).Float() / col
				top := lines[floor-int(math.Round(l.PostHeight.Float()/row)+0.1)]
				require.True(t, nearChar(top, x, '#'), "%s at %d: post %d at column %.2f of %q", name, w, i+1, x, top)
			}
			requireStack(t, lines, floor, l, col, row, fmt.Sprint(name, " at ", w))
		}
	}
}

func floorRow(t testing.TB, lines []string) int {
	for i, l := range lines {
		if strings.HasPrefix(l, "--") {
			return i
		}
	}
	t.Fatalf("no floor in\n%s", strings.Join(lines, "\n"))
	return 0
}

// nearChar reports whether c begins within one character of the place x.
func nearChar(line string, x float64, c byte) bool {
	for i := int(x) - 1; i <= int(x)+1; i++ {
		if i >= 0 && i < len(line) && line[i] == c && math.Abs(float64(i)-x) <= 1.001 {
			return true
		}
	}
	return false
}

// requireStack looks down one column in the middle of the first bay, clear of stiffeners.
func requireStack(t testing.TB, lines []string, floor int, l *solver.Layout, col, row float64, name string) {
	bay := l.Bays[0]
	left := bay.FromLeft.Add(l.EndPostFace).Float() / col
	x := int(left + bay.Width.Float()/col/6)
	at := func(y float64) byte { // what is drawn at a height
		line := lines[floor-1-int(y/row)]
		if x >= len(line) {
			return ' '
		}
		return line[x]
	}
	if at(l.Tops[0].Float()-0.1) == '|' || bay.Width.Float()/col < 4 {
		return
	}
	for i, top := range l.Tops {
		under := top.Sub(l.RailFace).Float()
		if l.RailFace.Float() >= 2*row { // farther than a character from both edges: wood for certain
			require.Equal(t, byte('='), at((under+top.Float())/2), "%s: rail %d", name, i+1)
		}
		if below := l.BottomGap.Float(); i == 0 && below >= 2*row {
			require.Equal(t, byte(' '), at(below/2), "%s: under the bottom rail", name)
		}
	}
	require.Equal(t, len(l.Tops), stripes(lines[:floor], x), "%s: rails that are seen", name)
}

// stripes counts the runs of wood down a column.
func stripes(lines []string, x int) int {
	count, in := 0, false
	for _, l := range lines {
		wood := x < len(l) && l[x] == '='
		if wood && !in {
			count++
		}
		in = wood
	}
	return count
}

func TestMarkedPartIsSeenWithoutColor(t *testing.T) {
	a := walls()["upstream"]
	plainPicture := Elevation(a, Options{Width: 80, ASCII: true})
	for mark, sign := range map[string]string{
		"gap": "< 2-1/2 gap", "bottom gap": "< 2-1/2 under", "wall height": "< 40 wall", "rails": "< 5-1/2 rail",
		"rail 2": "< 5-1/2 rail", "post height": "< 42 post", "opening": "> 30 <", "bay 1": "> 115-1/2 <", "span": "> 149 <",
		"marks": "< 8-1/2 mark 1", "post 1": "@", "stiffeners": "!",
	} {
		picture := Elevation(a, Options{Width: 80, ASCII: true, Mark: mark})
		require.Contains(t, picture, sign, mark)
		require.NotContains(t, plainPicture, sign, mark)
		require.Contains(t, Elevation(a, Options{Width: 80, Color: true, Mark: mark}), "\x1b[", mark)
		require.NotContains(t, picture, "\x1b", mark)
	}
}

func TestNothingToDraw(t *testing.T) {
	for name, a := range map[string]*solver.Answer{
		"nil": nil, "empty": {}, "no layout": {Layout: &solver.Layout{}},
		"no tops": {Layout: &solver.Layout{Up: &solver.Up{Rails: 3, RailFace: q("11/2")}}},
		"no face": {Layout: &solver.Layout{Up: &solver.Up{Rails: 1, Tops: []exact.Rat{n(9)}}}},
		"no span": {Layout: &solver.Layout{Along: &solver.Along{}}},
	} {
		require.Empty(t, Elevation(a, Options{}), name)
		require.Empty(t, SideBySide(a, a, Options{}), name)
		for _, f := range []func(*solver.Answer, Sheet) ([]byte, error){SVG, StoryPole, JobSheet} {
			b, err := f(a, Sheet{})
			require.Error(t, err, name)
			require.Nil(t, b, name)
		}
	}
	require.Empty(t, Clash(nil, conflicts()["count"], Options{}))
	require.Nil(t, ClashSVG(nil, conflicts()["none"]))
}

func TestSideBySideListsWhatMoved(t *testing.T) {
	a := walls()["upstream"]
	b := wallOf(common(5, "5/2", "bbo", 1, n(56), n(56), n(30))) // a second post in the long bay: (149 − 30 − 7) / 2 = 56
	picture := SideBySide(a, b, Options{Width: 80, ASCII: true})
	for _, s := range []string{"before", "after", "> added posts 1 -> 2", "> bay 1 115-1/2 -> 56", "> bay 2 56, new", "@"} {
		require.Contains(t, picture, s)
	}
	require.NotContains(t, picture, "> gap")
	b.Change = []solver.Moved{{Of: "post 1 from left", From: "231/2", To: "56"}, {Of: "rail size", From: "2x6", To: "2x4"}}
	picture = SideBySide(a, b, Options{Width: 40, ASCII: true})
	require.Contains(t, picture, "> post 1 from left 115-1/2 -> 56")
	require.Contains(t, picture, "> rail size 2x6 -> 2x4")
	require.Less(t, strings.Index(picture, "before"), strings.Index(picture, "after"))
	blocked := SideBySide(a, &solver.Answer{Verdict: solver.Blocked}, Options{Width: 80})
	require.Contains(t, blocked, "(does not fit)")
}

func TestClashReadsTheSums(t *testing.T) {
	for name, want := range map[string]struct {
		kind           clashKind
		need, has, off string
	}{
		"brackets": {bracketsMeet, "2", "13/8", "3/8"},
		"seven":    {overHeight, "101/2", "50", "1/2"},
		"three":    {underHeight, "48", "57/2", "39/2"},
		"floor":    {earMeetsFloor, "1", "1/2", "1/2"},
		"post":     {earPastPost, "41", "40", "1"},
		"guard":    {gapWide, "5", "4", "1"},
		"touch":    {gapWide, "4", "4", "0"},
		"board":    {bayOverBoard, "200", "3075/16", "125/16"},
		"opening":  {openingNarrow, "24", "20", "4"},
		"span":     {overSpan, "116", "100", "16"},
		"short":    {underSpan, "100", "163/2", "37/2"},
		"tied":     {twoLengths, "12", "10", "2"},
	} {
		c, ok := clashOf(conflicts()[name])
		require.True(t, ok, name)
		require.Equal(t, want.kind, c.kind, name)
		off := c.off()
		require.Equal(t, []string{want.need, want.has, want.off}, []string{c.need.String(), c.has.String(), off.String()}, name)
		text := Clash(nil, conflicts()[name], Options{Width: 60, ASCII: true})
		if c.off().Sign() > 0 {
			require.Contains(t, text, "< "+solver.Fraction(c.off())+" ", name)
		}
		svg := ClashSVG(nil, conflicts()[name])
		requireTidy(t, svg, name)
		requireSelfContained(t, svg)
	}
}
