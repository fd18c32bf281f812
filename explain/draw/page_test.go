package draw

import (
	"html"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"saywright/solver"
)

// requirePictures holds every SVG inside a page to the same care as a sheet.
func requirePictures(t testing.TB, page []byte, name string) (pictures [][]byte) {
	rest := string(page)
	for {
		_, after, found := strings.Cut(rest, "<svg ")
		if !found {
			return pictures
		}
		body, tail, found := strings.Cut(after, "</svg>")
		require.True(t, found, name)
		svg := []byte("<svg " + body + "</svg>")
		requireTidy(t, svg, name+", picture "+strconv.Itoa(len(pictures)+1))
		pictures, rest = append(pictures, svg), tail
	}
}

func TestJobSheetHoldsEverything(t *testing.T) {
	a := fullJob()
	page, err := JobSheet(a, Sheet{Wall: "Saltreed Landing", Date: "2031-05-04"})
	require.NoError(t, err)
	requireSelfContained(t, page)
	requirePictures(t, page, "job")
	reread(t, page) // well formed
	s := html.UnescapeString(string(page))
	for _, want := range []string{"Saltreed Landing", "2031-05-04", "left end post", "post 1", "right end post", "40-1/2",
		"114-15/16", "41", "76-7/8 left", "at hand", "screw 1-5/8 in, exterior", "33.60", "Together 52.25", "silica dust",
		"held only at its foot", "bottom gap = gap", "27-1/2 + 12-1/2 = 40", "149 − 30 − 3-1/2 = 115-1/2", "2 ≤ 2-1/2"} {
		requireSays(t, s, want)
	}
	marks := 5 * 3
	cuts := 5 + 2 + 1
	boards := 1 + 2 + 1 + 1 + 1
	require.Equal(t, 3+marks+cuts+boards+len(a.Shopping)+len(a.Steps), strings.Count(s, `class="box"`), "a box to tick for each thing to do")
	require.NotContains(t, s, "wall height: 5 ×", "a line put into words stands as it was put")
}

func TestBoardsAreDrawnToScale(t *testing.T) {
	a := fullJob()
	page, err := JobSheet(a, Sheet{})
	require.NoError(t, err)
	board := -1
	kerf := 0.125 // what is left over in the fixture leaves an eighth for each cut
	for _, svg := range requirePictures(t, page, "job") {
		at, seen := 0.0, 0
		for _, s := range reread(t, svg) {
			if s.at["data-part"] != "piece" {
				continue
			}
			if seen == 0 {
				board++
			}
			view := shape{at: s.view}
			k := view.num(t, "data-scale") / perInch
			require.InDelta(t, at, (s.num(t, "x")-view.num(t, "data-left"))*k, 0.01)
			require.InDelta(t, a.Plan[board].Pieces[seen].Float(), s.num(t, "width")*k, 0.01)
			at += a.Plan[board].Pieces[seen].Float() + kerf
			seen++
		}
		if seen > 0 {
			require.Len(t, a.Plan[board].Pieces, seen)
		}
	}
	require.Equal(t, len(a.Plan)-1, board)
}

// TestStoryPoleIsFullSize lays the pages on each other as a person would, and measures each mark from the floor.
func TestStoryPoleIsFullSize(t *testing.T) {
	for name, a := range walls() {
		for _, paper := range []string{"letter", "a4"} {
			page, err := StoryPole(a, Sheet{Wall: name, Page: paper})
			if a.Layout.Up == nil {
				require.ErrorIs(t, err, ErrNothing)
				continue
			}
			require.NoError(t, err)
			requireSelfContained(t, page)
			holes, edges := map[string][]float64{}, 0
			floor := 0.0 // millimeters of strip under this page, once glued
			for _, svg := range requirePictures(t, page, name) {
				shapes := reread(t, svg)
				require.Equal(t, map[string]string{"letter": "215.9mm", "a4": "210mm"}[paper], shapes[0].at["width"])
				cut, join := 0.0, 0.0
				for _, s := range shapes {
					switch s.at["data-part"] {
					case "cut":
						cut = s.num(t, "y1")
					case "join":
						join = s.num(t, "y1")
					}
				}
				for _, s := range shapes {
					switch s.at["data-part"] {
					case "mark":
						up := floor + cut - s.num(t, "y1")
						holes[s.at["data-n"]] = append(holes[s.at["data-n"]], up/perInch)
					case "top", "underside":
						edges++
					}
				}
				if floor += cut - join; join == 0 {
					floor = 0 // the last page: the next pole starts at the floor
				}
			}
			for _, m := range append(a.Marks, solver.PostMark{Rows: levelMarks(a.Layout.Up)}) {
				for _, row := range m.Rows {
					require.True(t, slices.ContainsFunc(holes[strconv.Itoa(row.Rail)], func(y float64) bool { return near(y, row.Hole.Float()) }),
						"%s: %s rail %d", name, m.Post, row.Rail)
				}
			}
			require.Len(t, holes, a.Layout.Rails)
			require.NotZero(t, edges)
		}
	}
}

// TestFilesNameTheirMaker: a file is written over only where its beginning says that this program wrote it.
func TestFilesNameTheirMaker(t *testing.T) {
	for _, made := range []func(*solver.Answer, Sheet) ([]byte, error){SVG, JobSheet, StoryPole} {
		doc, err := made(fullJob(), Sheet{Wall: strings.Repeat("long name ", 50)})
		require.NoError(t, err)
		requireSays(t, string(doc[:4096]), "saywright")
	}
}

func TestBlockedJobSheetShowsTheConflict(t *testing.T) {
	page, err := JobSheet(blockedJob(), Sheet{Wall: "Saltreed Landing"})
	require.NoError(t, err)
	requireSelfContained(t, page)
	require.Len(t, requirePictures(t, page, "blocked"), 1)
	for _, want := range []string{"What does not fit", "7 × 5-1/2 = 38-1/2", "50-1/2 ≤ 50, which is not so", "1/2 too high"} {
		requireSays(t, html.UnescapeString(string(page)), want)
	}
}

// TestNamesAreSafe: whatever a person calls a wall stays text.
func TestNamesAreSafe(t *testing.T) {
	for _, name := range []string{
		`<script>alert(1)</script>`, `"><image href="http://example.invalid/x"/>`, `]]>`, `&amp; & &#0;`, "a\x00b\x1b[31m\x7f", "\xff\xfe bad bytes",
		`{{.Title}}`, `</title></style></svg>`, strings.Repeat("wide ", 500), strings.Repeat("W", 5000), "板壁 の ½″ ︎", "\u202eturned", "", "  ", "url(x)",
	} {
		sheet := Sheet{Wall: name, Date: name}
		svg, err := SVG(walls()["upstream"], sheet)
		require.NoError(t, err)
		requireTidy(t, svg, "a name")
		a := fullJob()
		a.Assumed, a.Cautions[0].Text, a.Steps[0].Do = []string{name}, name, name
		a.Shopping[0].Item, a.Cuts[0].Piece, a.Work[0].Says = name, name, name
		job, err := JobSheet(a, sheet)
		require.NoError(t, err)
		reread(t, job)
		pole, err := StoryPole(a, sheet)
		require.NoError(t, err)
		reread(t, pole)
		for _, doc := range [][]byte{svg, job, pole} {
			for _, s := range reread(t, doc) {
				require.NotContains(t, []string{"script", "image"}, s.name)
				for k := range s.at {
					require.False(t, k == "href" || strings.HasPrefix(k, "on"), "%s has %s", s.name, k)
				}
			}
		}
	}
}

func BenchmarkSVG(b *testing.B) {
	a := walls()["upstream"]
	for b.Loop() {
		if _, err := SVG(a, Sheet{Wall: "Saltreed Landing"}); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkElevation(b *testing.B) {
	a := walls()["upstream"]
	for b.Loop() {
		Elevation(a, Options{Width: 80, Mark: "gap"})
	}
}

func BenchmarkJobSheet(b *testing.B) {
	a := fullJob()
	for b.Loop() {
		if _, err := JobSheet(a, Sheet{Wall: "Saltreed Landing"}); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkClash(b *testing.B) {
	c := conflicts()["seven"]
	for b.Loop() {
		Clash(nil, c, Options{Width: 60})
	}
}
