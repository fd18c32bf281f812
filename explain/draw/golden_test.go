package draw

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"sort"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the drawings of testdata/draw anew, to be looked at before they are kept")

const drawings = "../../testdata/draw"

func requireGolden(t *testing.T, name string, got []byte) {
	path := filepath.Join(drawings, name)
	if *update {
		require.NoError(t, os.MkdirAll(drawings, 0o755))
		require.NoError(t, os.WriteFile(path, got, 0o644))
	}
	want, err := os.ReadFile(path)
	require.NoError(t, err, "run go test ./explain/draw -update, and look at what it wrote")
	if string(want) != string(got) {
		t.Fatalf("%s is drawn otherwise than before, first at line %d: look at it, then run with -update", name, firstChange(string(want), string(got)))
	}
}

func firstChange(a, b string) int {
	x, y := strings.Split(a, "\n"), strings.Split(b, "\n")
	for i := range x {
		if i >= len(y) || x[i] != y[i] {
			return i + 1
		}
	}
	return len(x) + 1
}

func sortedNames[T any](m map[string]T) []string {
	var out []string
	for name := range m {
		out = append(out, name)
	}
	sort.Strings(out)
	return out
}

func TestGoldenText(t *testing.T) {
	all := walls()
	var elevations, clashes, beside strings.Builder
	for _, name := range sortedNames(all) {
		fmt.Fprintf(&elevations, "%s, 80 columns\n\n%s\n", name, Elevation(all[name], Options{Width: 80}))
		fmt.Fprintf(&elevations, "%s, 40 columns, plain ASCII, about its gaps\n\n%s\n", name, Elevation(all[name], Options{Width: 40, ASCII: true, Mark: "gap"}))
	}
	for _, name := range drawable() {
		fmt.Fprintf(&clashes, "%s\n\n%s\n%s\n", name, Clash(nil, conflicts()[name], Options{Width: 60}), Clash(nil, conflicts()[name], Options{Width: 40, ASCII: true}))
	}
	other := wallOf(common(5, "5/2", "bbo", 1, n(56), n(56), n(30)))
	beside.WriteString(SideBySide(all["upstream"], other, Options{Width: 80}))
	beside.WriteString("\n" + SideBySide(all["upstream"], other, Options{Width: 40, ASCII: true}))
	requireGolden(t, "elevations.txt", []byte(elevations.String()))
	requireGolden(t, "clashes.txt", []byte(clashes.String()))
	requireGolden(t, "beside.txt", []byte(beside.String()))
}

func TestGoldenPaper(t *testing.T) {
	all := walls()
	for name, page := range map[string]string{"upstream": "letter", "two": "a4", "metric": "a4", "gaps-differ": "letter", "falling": "letter"} {
		svg, err := SVG(all[name], Sheet{Wall: "Saltreed Landing, " + name, Date: "2031-05-04", Page: page})
		require.NoError(t, err)
		requireGolden(t, name+".svg", svg)
	}
	for _, name := range []string{"brackets", "seven", "board", "opening"} {
		requireGolden(t, "clash-"+name+".svg", ClashSVG(nil, conflicts()[name]))
	}
	sheet := Sheet{Wall: "Saltreed Landing, upstream side", Date: "2031-05-04"}
	job, err := JobSheet(fullJob(), sheet)
	require.NoError(t, err)
	requireGolden(t, "job.html", job)
	pole, err := StoryPole(fullJob(), sheet)
	require.NoError(t, err)
	requireGolden(t, "pole.html", pole)
}
