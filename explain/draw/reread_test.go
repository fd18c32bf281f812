package draw

import (
	"bytes"
	"encoding/xml"
	"errors"
	"io"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// shape is one element of an SVG that was read back.
type shape struct {
	name string
	at   map[string]string
	says string
	view map[string]string // attributes of the view that it stands in
}

func (s shape) num(t testing.TB, name string) float64 {
	v, err := strconv.ParseFloat(s.at[name], 64)
	if err != nil {
		t.Fatalf("%s of %v: %v", name, s.at, err)
	}
	return v
}

// reread reads an SVG with the strict reader of encoding/xml.
func reread(t testing.TB, svg []byte) []shape {
	d := xml.NewDecoder(bytes.NewReader(svg))
	var out []shape
	var stack []map[string]string
	for {
		tok, err := d.Token()
		if errors.Is(err, io.EOF) {
			return out
		}
		if err != nil {
			t.Fatal(err)
		}
		switch e := tok.(type) {
		case xml.StartElement:
			at := map[string]string{}
			for _, a := range e.Attr {
				at[a.Name.Local] = a.Value
			}
			view := map[string]string{}
			if len(stack) > 0 {
				view = stack[len(stack)-1]
			}
			if at["data-view"] != "" {
				view = at
			}
			stack = append(stack, view)
			out = append(out, shape{name: e.Name.Local, at: at, view: view})
		case xml.EndElement:
			stack = stack[:len(stack)-1]
		case xml.CharData:
			if len(out) > 0 {
				out[len(out)-1].says += string(e)
			}
		}
	}
}

// label is where a text lies by the model of letter.go, which the Chromium test holds against real type.
func labelBox(t testing.TB, s shape) box {
	x := text{x: s.num(t, "x"), y: s.num(t, "y"), size: s.num(t, "font-size"), anchor: s.at["text-anchor"],
		bold: s.at["font-weight"] == "bold", turned: strings.HasPrefix(s.at["transform"], "rotate(-90"), says: strings.TrimRight(s.says, "\n")}
	return x.box()
}

func overlap(a, b box) bool {
	const hair = 1e-6
	return a.x < b.right()-hair && b.x < a.right()-hair && a.y < b.bottom()-hair && b.y < a.bottom()-hair
}

type segment struct{ x1, y1, x2, y2 float64 }

// segments lists every line that a shape draws.
func segments(t testing.TB, s shape) []segment {
	switch s.name {
	case "line":
		return []segment{{s.num(t, "x1"), s.num(t, "y1"), s.num(t, "x2"), s.num(t, "y2")}}
	case "rect":
		if s.at["x"] == "" {
			return nil // the paper
		}
		x, y, w, h := s.num(t, "x"), s.num(t, "y"), s.num(t, "width"), s.num(t, "height")
		return []segment{{x, y, x + w, y}, {x, y + h, x + w, y + h}, {x, y, x, y + h}, {x + w, y, x + w, y + h}}
	case "circle":
		x, y, r := s.num(t, "cx"), s.num(t, "cy"), s.num(t, "r")
		return []segment{{x - r, y, x + r, y}, {x, y - r, x, y + r}}
	case "path":
		var nums []float64
		for _, f := range strings.Fields(strings.NewReplacer("M", " ", "L", " ", "Z", " ").Replace(s.at["d"])) {
			v, err := strconv.ParseFloat(f, 64)
			require.NoError(t, err)
			nums = append(nums, v)
		}
		var out []segment
		for i := 0; i+3 < len(nums); i += 2 {
			out = append(out, segment{nums[i], nums[i+1], nums[i+2], nums[i+3]})
		}
		return out
	}
	return nil
}

// crosses reports whether a segment passes through a box (Liang and Barsky's clipping).
func (s segment) crosses(b box) bool {
	t0, t1 := 0.0, 1.0
	dx, dy := s.x2-s.x1, s.y2-s.y1
	for _, e := range [][2]float64{{-dx, s.x1 - b.x}, {dx, b.right() - s.x1}, {-dy, s.y1 - b.y}, {dy, b.bottom() - s.y1}} {
		p, q := e[0], e[1]
		switch {
		case p == 0 && q <= 0:
			return false
		case p < 0:
			t0 = max(t0, q/p)
		case p > 0:
			t1 = min(t1, q/p)
		}
	}
	return t0 < t1-1e-9
}

// requireTidy holds a sheet to what a careful drafter keeps: no label on another, none off the page, none crossed by
// a line. It returns how many labels there are.
func requireTidy(t testing.TB, svg []byte, name string) int {
	return requireTidyShapes(t, reread(t, svg), name)
}

func requireTidyShapes(t testing.TB, shapes []shape, name string) int {
	require.Equal(t, "svg", shapes[0].name)
	size := strings.Fields(shapes[0].at["viewBox"])
	w, _ := strconv.ParseFloat(size[2], 64)
	h, _ := strconv.ParseFloat(size[3], 64)
	var labels []box
	var says []string
	for _, s := range shapes {
		if s.name != "text" {
			continue
		}
		b := labelBox(t, s)
		if b.x < 0 || b.y < 0 || b.right() > w || b.bottom() > h {
			t.Fatalf("%s: %q leaves the page: %+v", name, s.says, b)
		}
		for i, other := range labels {
			if overlap(b, other) {
				t.Fatalf("%s: %q lies on %q: %+v %+v", name, s.says, says[i], b, other)
			}
		}
		labels, says = append(labels, b), append(says, s.says)
	}
	for _, s := range shapes {
		for _, line := range segments(t, s) {
			for i, b := range labels {
				// The model's box has room for accents and tails; figures stand in the middle of it.
				if line.crosses(box{b.x + 0.06*b.w, b.y + 0.12*b.h, 0.88 * b.w, 0.66 * b.h}) {
					t.Fatalf("%s: a line (%s %v) passes through %q %+v", name, s.name, s.at, says[i], b)
				}
			}
		}
	}
	return len(labels)
}

// requireSelfContained finds nothing that a page would fetch or run.
func requireSelfContained(t testing.TB, doc []byte) {
	s := strings.ToLower(string(doc))
	s = strings.ReplaceAll(s, `xmlns="http://www.w3.org/2000/svg"`, "")
	s = strings.ReplaceAll(s, `xmlns="http://www.w3.org/1999/xhtml"`, "")
	for _, bad := range []string{"http:", "https:", "<script", "url(", "javascript:", "@import", "<link", "<iframe", "<image", "<img", "<object", "<foreignobject", " src=", " href=", "<!doctype svg", "<!entity", " onload", " onclick"} {
		require.NotContains(t, s, bad)
	}
}

func near(a, b float64) bool { return math.Abs(a-b) < 0.01 }

// wordsOf is all that a drawing says, labels folded over lines put together again.
func wordsOf(shapes []shape) string {
	var words []string
	for _, s := range shapes {
		words = append(words, strings.Fields(s.says)...)
	}
	return strings.Join(words, " ")
}

// requireSays is require.Contains for long documents: it does not print them.
func requireSays(t testing.TB, doc, want string) {
	t.Helper()
	require.True(t, strings.Contains(doc, want), "does not say %q", want)
}
